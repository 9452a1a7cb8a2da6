#include "core/qml/said.h"

#include <cstdlib>
#include <optional>
#include <string>
#include <vector>

#include <QDate>
#include <QLocale>

#include "core/qml/known_sentences.h"
#include "core/report/money_text.h"

namespace ledgerboard::qml {

namespace {

[[maybe_unused]] constexpr const char* kReminder = QT_TRANSLATE_NOOP(
    "Caution",
    "Reminder only. Rules change by place. Ask your building office and a licensed trade.");

QDate qtDate(model::Date day) {
    return {day.year(), day.month(), day.dayOfMonth()};
}

// Whole units, rounded half away from zero, without a sign.
qlonglong whole(model::Money money) {
    return (std::llabs(money.minor()) + 50) / 100;
}

QString minus() {
    return QStringLiteral("\u2212");
}

// The sentence in the language of the screens; empty where it has none.
QString translated(const QString& english) {
    for (const char* context : {"Core", "Caution"}) {
        QString words = QCoreApplication::translate(context, english.toUtf8().constData());
        if (words != english) {
            return words;
        }
    }
    return {};
}

QString filled(const QString& pattern, const QStringList& parts) {
    std::vector<std::string> all;
    for (const auto& part : parts) {
        all.push_back(part.toStdString());
    }
    return Said::text(model::Saying::filled(pattern.toStdString(), all));
}

// "Fri 15 May", with its year or without, as core writes a day.
std::optional<QDate> dayIn(const QString& part, bool* hasYear) {
    const QStringList words = part.split(QLatin1Char(' '));
    *hasYear = words.size() == 4;
    if (words.size() != 3 && !*hasYear) {
        return std::nullopt;
    }
    const QLocale english = QLocale::c();
    const QString written = words.mid(1).join(QLatin1Char(' '));
    // Of a day without its year the weekday says which: one of the next eleven has it.
    for (int year = 2020; year < 2048; ++year) {
        const QDate day =
            english.toDate(*hasYear ? written : written + QStringLiteral(" %1").arg(year),
                           QStringLiteral("d MMM yyyy"));
        if (day.isValid() && english.dayName(day.dayOfWeek(), QLocale::ShortFormat) == words[0]) {
            return day;
        }
        if (*hasYear) {
            break;
        }
    }
    return std::nullopt;
}

std::optional<QString> wholeTold(const QString& english, int depth);

// What stands in a place: a day, a clause of core, or words of the book. A single word is the
// book's: a space named "Paper" stays what it is.
QString partTold(const QString& part, int depth) {
    bool hasYear = false;
    if (const auto day = dayIn(part, &hasYear)) {
        const model::Date date =
            model::Date::fromYmd(day->year(), day->month(), day->day()).value();
        return hasYear ? Said::longDay(date) : Said::day(date, date);
    }
    for (int k = 1; k <= 7; ++k) {
        if (part == QLocale::c().dayName(k)) {
            return QLocale().dayName(k);
        }
    }
    return part.contains(QLatin1Char(' ')) ? wholeTold(part, depth + 1).value_or(part) : part;
}

std::optional<QString> clauseTold(const QString& english, int depth) {
    return english.contains(QLatin1Char(' ')) ? wholeTold(english, depth + 1) : std::nullopt;
}

// Both halves where a sentence parts at `mark` and one of them is core's.
std::optional<QString> halvesTold(const QString& english, const QString& mark, int depth) {
    const qsizetype at = english.indexOf(mark);
    if (at < 1) {
        return std::nullopt;
    }
    const QString first = english.left(at);
    const QString second = english.mid(at + mark.size());
    const auto a = clauseTold(first, depth);
    const auto b = clauseTold(second, depth);
    return a || b ? std::optional(a.value_or(first) + mark + b.value_or(second)) : std::nullopt;
}

// "Quantity: it can't be below 0" and "Spend, Amount: ...": the place before what is wrong there.
// Where `isKnown`, only where all of the place is known.
std::optional<QString> placeAndTold(const QString& english, bool isKnown, int depth) {
    const qsizetype at = english.indexOf(QLatin1String(": "));
    QStringList place = english.left(at).split(QStringLiteral(", "));
    for (auto& word : place) {
        const QString told = at < 1 ? QString() : translated(word);
        if (at < 1 || (isKnown && told.isEmpty())) {
            return std::nullopt;
        }
        word = told.isEmpty() ? word : told;
    }
    const auto wrong = clauseTold(english.mid(at + 2), depth);
    return wrong ? std::optional(place.join(QStringLiteral(", ")) + QStringLiteral(": ") + *wrong)
                 : std::nullopt;
}

// "replace cabinets": a treatment and what it is done to.
std::optional<QString> workTold(const QString& english) {
    const QString first = english.section(QLatin1Char(' '), 0, 0);
    const QString rest = english.section(QLatin1Char(' '), 1);
    for (const auto word : model::wordsOf<model::Treatment>()) {
        if (!word.empty() && !rest.isEmpty() && first == Said::text(word)) {
            const QString told = translated(first);
            return told.isEmpty() ? std::nullopt : std::optional(told + QLatin1Char(' ') + rest);
        }
    }
    return std::nullopt;
}

// Empty where it is nothing of core's.
std::optional<QString> wholeTold(const QString& english, int depth) {
    constexpr int kDeepest = 6;
    if (depth > kDeepest || english.isEmpty()) {
        return std::nullopt;
    }
    if (const QString words = translated(english); !words.isEmpty()) {
        return words;
    }
    if (auto told = placeAndTold(english, true, depth)) {
        return told;
    }
    if (const auto known = knownSentence(english)) {
        if (const QString words = translated(known->pattern); !words.isEmpty()) {
            QStringList parts;
            for (const auto& part : known->parts) {
                parts << partTold(part, depth);
            }
            return filled(words, parts);
        }
    }
    if (auto told = placeAndTold(english, false, depth)) {
        return told;
    }
    for (const char* mark : {"; ", ": ", ", "}) {
        if (auto told = halvesTold(english, QLatin1String(mark), depth)) {
            return told;
        }
    }
    return workTold(english);
}

QString sayingTold(const model::Saying& saying);

QString placeTold(const model::Place& place) {
    const auto day = [&place] { return model::Date::fromDays(static_cast<int>(place.number)); };
    switch (place.is) {
        case model::Place::Is::Words:
            break;
        case model::Place::Is::Count:
            return QLocale().toString(static_cast<qlonglong>(place.number));
        case model::Place::Is::Money:
            return Said::money(model::Money::fromMinor(place.number));
        case model::Place::Is::Cents:
            return Said::cents(model::Money::fromMinor(place.number));
        case model::Place::Is::Change:
            return Said::change(model::Money::fromMinor(place.number));
        case model::Place::Is::Percent:
            return QLocale().toString(static_cast<double>(place.number) / 100.0, 'g', 6);
        case model::Place::Is::Day:
            return Said::day(day(), day());
        case model::Place::Is::FullDay:
            return Said::longDay(day());
        case model::Place::Is::Weekday:
            return QLocale().dayName(day().weekday() + 1);
        case model::Place::Is::Saying:
            return sayingTold(place.saying.front());
    }
    return Said::text(place.text);
}

QString sayingTold(const model::Saying& saying) {
    const QString english = Said::text(saying.pattern());
    if (saying.places().empty()) {
        return Said::told(saying.pattern());
    }
    const QString words = translated(english);
    QStringList parts;
    for (const model::Place& place : saying.places()) {
        parts << placeTold(place);
    }
    return filled(words.isEmpty() ? english : words, parts);
}

// Before words that are those of the screens already: no sentence of core begins with it.
constexpr QChar kOwnWords(0x2060);

}  // namespace

QString Said::text(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QString Said::begun(std::string_view utf8) {
    QString words = text(utf8);
    if (!words.isEmpty()) {
        words[0] = words[0].toUpper();
    }
    return words;
}

QString Said::treatment(model::Treatment treatment) {
    switch (treatment) {
        case model::Treatment::Keep:
            return tr("Keep");
        case model::Treatment::Inspect:
            return tr("Inspect");
        case model::Treatment::Clean:
            return tr("Clean");
        case model::Treatment::Repair:
            return tr("Repair");
        case model::Treatment::Refinish:
            return tr("Refinish");
        case model::Treatment::Replace:
            return tr("Replace");
        case model::Treatment::Remove:
            return tr("Remove");
        case model::Treatment::Add:
            return tr("Add");
        case model::Treatment::Relocate:
            return tr("Relocate");
        case model::Treatment::Unset:
            break;
    }
    return {};
}

QString Said::percent(model::Percent percent) {
    const auto points = percent.basisPoints() >= 10'000 ? 100
                        : percent.basisPoints() > 9'900 ? 99
                                                        : (percent.basisPoints() + 50) / 100;
    return QLocale().toString(static_cast<qlonglong>(points)) + QStringLiteral("\u00a0%");
}

QString Said::done(model::Percent shown) {
    return shown >= model::Percent::whole() ? tr("done") : percent(shown);
}

QString Said::tenths(model::Percent percent) {
    return QLocale().toString(static_cast<double>(percent.basisPoints()) / 100.0, 'f', 1) +
           QStringLiteral("\u00a0%");
}

QString Said::money(model::Money money) {
    return (money.minor() < 0 && whole(money) != 0 ? minus() : QString()) + size(money);
}

QString Said::cents(model::Money money) {
    const QLocale locale;
    const qlonglong minor = std::llabs(money.minor());
    return (money.minor() < 0 ? minus() : QString()) + locale.toString(minor / 100) +
           locale.decimalPoint() + QStringLiteral("%1").arg(minor % 100, 2, 10, QLatin1Char('0'));
}

QString Said::change(model::Money money) {
    return isNothing(money) ? size(money)
                            : (money.minor() < 0 ? minus() : QStringLiteral("+")) + size(money);
}

QString Said::size(model::Money money) {
    return QLocale().toString(whole(money));
}

QString Said::axis(model::Money money) {
    return text(report::axisText(money, report::Script::Unicode));
}

bool Said::isNothing(model::Money money) {
    return whole(money) == 0;
}

QString Said::day(model::Date day, model::Date today) {
    //: How a day is written, in Qt's letters: "Fri 15 May"
    return QLocale().toString(qtDate(day), day.year() == today.year()
                                               ? tr("ddd d MMM")
                                               //: The same with its year: "Mon 4 Jan 2027"
                                               : tr("ddd d MMM yyyy"));
}

QString Said::longDay(model::Date day) {
    //: A day in full, in Qt's letters: "Friday 15 May 2026"
    return QLocale().toString(qtDate(day), tr("dddd d MMMM yyyy"));
}

QString Said::dayMonth(model::Date day) {
    //: A day along an axis, in Qt's letters: "15 May"
    return QLocale().toString(qtDate(day), tr("d MMM"));
}

QString Said::told(const model::Saying& saying) {
    return sayingTold(saying);
}

QString Said::told(std::string_view english) {
    const QString words = text(english);
    return QLocale().language() == QLocale::English ? words : wholeTold(words, 0).value_or(words);
}

QString Said::trouble(const model::Error& error) {
    return trouble(error.message);
}

QString Said::trouble(const std::string& message) {
    QString words = text(message);
    if (words.startsWith(kOwnWords)) {
        return words.mid(1);
    }
    if (words.isEmpty() || QLocale().language() == QLocale::English) {
        return words;
    }
    const auto told = wholeTold(words, 0);
    //: Before words of the program that only exist in English
    return told ? *told : tr("in English: %1").arg(words);
}

model::Error Said::refusal(const QString& words) {
    return model::wrongUse((kOwnWords + words).toStdString());
}

}  // namespace ledgerboard::qml
