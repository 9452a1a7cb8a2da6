// What does the phone say beside what both clients do?
//
// In the language of the screens; numbers and dates by its locale. Threads: any.
#pragma once

#include <QCoreApplication>
#include <QString>

#include "core/compute/punch_list.h"
#include "core/model/rows.h"
#include "core/qml/said.h"

namespace ledgerboard::phone {

class Said : public qml::Said {
    Q_DECLARE_TR_FUNCTIONS(SaidOnPhone)

  public:
    // "86 sq ft"; empty where nothing was entered.
    [[nodiscard]] static QString size(const model::Item& item);

    // "Replace wall tile, 86 sq ft"; says so where the object has no name.
    [[nodiscard]] static QString whatIsDone(const model::Item& item);

    // The letters of a space's swatch; a dash where it has none.
    [[nodiscard]] static QString chip(std::string_view shortName);

    // "Fri 15 May".
    [[nodiscard]] static QString day(model::Date day);
    // "today", "yesterday", "Thursday" within six days ahead, else the day.
    [[nodiscard]] static QString near(model::Date day, model::Date today);

    // "Tile crew, by Thursday": who puts a punch item right, and by when.
    [[nodiscard]] static QString whoAndWhen(const compute::PunchRead& read,
                                            const model::Punch& punch, model::Date today);
};

}  // namespace ledgerboard::phone
