// In what words does the phone say dates, money, percents and what is done to what?
//
// In the language of the screens; numbers and dates by its locale. Threads: the UI's.
#pragma once

#include <QCoreApplication>
#include <QString>

#include "core/compute/punch_list.h"
#include "core/model/rows.h"

namespace ledgerboard::phone {

class Said {
    Q_DECLARE_TR_FUNCTIONS(Said)

  public:
    [[nodiscard]] static QString text(std::string_view utf8);

    // With a capital letter, as a sentence begins.
    [[nodiscard]] static QString begun(std::string_view utf8);

    // "Replace". Empty for none.
    [[nodiscard]] static QString treatment(model::Treatment treatment);

    // "86 sq ft"; empty where nothing was entered.
    [[nodiscard]] static QString size(const model::Item& item);

    // "Replace wall tile, 86 sq ft"; says so where the object has no name.
    [[nodiscard]] static QString whatIsDone(const model::Item& item);

    // The letters of a space's swatch; a dash where it has none.
    [[nodiscard]] static QString chip(std::string_view shortName);

    // "72 %", "done".
    [[nodiscard]] static QString percent(model::Percent percent);
    [[nodiscard]] static QString done(model::Percent percent);

    // "1,350"; with cents where asked.
    [[nodiscard]] static QString money(model::Money money, bool cents = false);

    // "Fri 15 May".
    [[nodiscard]] static QString day(model::Date day);
    // "today", "yesterday", "Thursday" within six days ahead, else the day.
    [[nodiscard]] static QString near(model::Date day, model::Date today);

    // What core/compute/cautions.def says, in the language of the screens; words that an owner
    // wrote stay as they are.
    [[nodiscard]] static QString caution(std::string_view english);

    // What went wrong. Words of the core that are not translated are said to be in English.
    [[nodiscard]] static QString trouble(const model::Error& error);

    // "Tile crew, by Thursday": who puts a punch item right, and by when.
    [[nodiscard]] static QString whoAndWhen(const compute::PunchRead& read,
                                            const model::Punch& punch, model::Date today);
};

}  // namespace ledgerboard::phone
