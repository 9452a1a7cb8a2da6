#include "core/qml/said.h"

#include <cstdlib>

#include <QDate>
#include <QLocale>

#include "core/report/money_text.h"

namespace ledgerboard::qml {

namespace {

// Troubles of the core that anybody may meet, as they are said there; said where they
// happen, and translated here. A test holds them against the core's.
[[maybe_unused]] constexpr const char* kTroubles[] = {
    QT_TRANSLATE_NOOP("Core",
                      "the disk is full: nothing was written; free some space and do it again"),
    QT_TRANSLATE_NOOP("Core", "another program is writing to this book: try again in a moment"),
    QT_TRANSLATE_NOOP("Core", "the book cannot be written: make the file and its folder writable"),
    QT_TRANSLATE_NOOP("Core",
                      "the book is damaged: run 'ledgerboard verify --mend', or restore a backup"),
};
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

QString Said::caution(std::string_view english) {
    return QCoreApplication::translate("Caution", std::string(english).c_str());
}

QString Said::trouble(const model::Error& error) {
    QString said = QCoreApplication::translate("Core", error.message.c_str());
    const QString english = text(error.message);
    if (said != english || QLocale().language() == QLocale::English) {
        return said;
    }
    //: Before words of the program that only exist in English
    return tr("in English: %1").arg(english);
}

}  // namespace ledgerboard::qml
