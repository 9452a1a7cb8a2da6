// In what words do the clients say dates, money, percents and what is done to what?
//
// In the language of the screens; numbers and dates by its locale. Threads: any.
#pragma once

#include <QCoreApplication>
#include <QString>

#include "core/model/result.h"
#include "core/model/rows.h"
#include "core/model/saying.h"

namespace ledgerboard::qml {

class Said {
    Q_DECLARE_TR_FUNCTIONS(Said)

  public:
    [[nodiscard]] static QString text(std::string_view utf8);

    // With a capital letter, as a sentence begins.
    [[nodiscard]] static QString begun(std::string_view utf8);

    // "Replace". Empty for none.
    [[nodiscard]] static QString treatment(model::Treatment treatment);

    // "72 %", "done"; never rounded up to 100, which always means finished.
    [[nodiscard]] static QString percent(model::Percent percent);
    [[nodiscard]] static QString done(model::Percent percent);
    // "15.0 %".
    [[nodiscard]] static QString tenths(model::Percent percent);

    // "1,350", whole, rounded half away from zero; "1,350.50" with cents.
    [[nodiscard]] static QString money(model::Money money);
    [[nodiscard]] static QString cents(model::Money money);
    // "+1,350", "−420", "0".
    [[nodiscard]] static QString change(model::Money money);
    // Without a sign.
    [[nodiscard]] static QString size(model::Money money);
    // Along an axis: "30k", "7.5k", "1.2M".
    [[nodiscard]] static QString axis(model::Money money);
    // Whether it shows as 0.
    [[nodiscard]] static bool isNothing(model::Money money);

    // "Fri 15 May"; the year is added where it is not that of `today`.
    [[nodiscard]] static QString day(model::Date day, model::Date today);
    // "Friday 15 May 2026".
    [[nodiscard]] static QString longDay(model::Date day);
    // "15 May".
    [[nodiscard]] static QString dayMonth(model::Date day);

    // What core says, in the language of the screens: the sentence from shared_es.ts, its figures
    // by the locale. What has no translation stays as it is; so do words that an owner wrote.
    [[nodiscard]] static QString told(const model::Saying& saying);

    // The same of a sentence that comes as its English: it is known again (known_sentences.h).
    [[nodiscard]] static QString told(std::string_view english);

    // What went wrong. Words of the core that are not translated are said to be in English.
    [[nodiscard]] static QString trouble(const model::Error& error);
    [[nodiscard]] static QString trouble(const std::string& message);

    // An error in words that are already those of the screens.
    [[nodiscard]] static model::Error refusal(const QString& words);
};

}  // namespace ledgerboard::qml
