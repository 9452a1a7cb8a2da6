#include "mobile/said.h"

#include <cstdlib>

#include <QDate>
#include <QLocale>

namespace ledgerboard::phone {

namespace {

// Troubles of the core that anybody with a phone may meet, as they are said there; said where they
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

QString Said::size(const model::Item& item) {
    if (!item.quantity) {
        return {};
    }
    const QString number = text(item.quantity->toString());
    return item.unit.empty() ? number : number + QChar(0xa0) + text(item.unit);
}

QString Said::whatIsDone(const model::Item& item) {
    QString words = treatment(item.treatment) + QLatin1Char(' ') +
                    (item.object.empty() ? tr("something without a name") : text(item.object));
    if (const QString measured = size(item); !measured.isEmpty()) {
        words += QStringLiteral(", ") + measured;
    }
    return words.trimmed();
}

QString Said::chip(std::string_view shortName) {
    return shortName.empty() ? QStringLiteral("\u2013") : text(shortName).toUpper();
}

QString Said::percent(model::Percent percent) {
    // Never rounded up to 100, which always means finished.
    const auto whole = percent.basisPoints() >= 10'000 ? 100
                       : percent.basisPoints() > 9'900 ? 99
                                                       : (percent.basisPoints() + 50) / 100;
    return QLocale().toString(static_cast<qlonglong>(whole)) + QStringLiteral("\u00a0%");
}

QString Said::done(model::Percent shown) {
    return shown >= model::Percent::whole() ? tr("done") : percent(shown);
}

QString Said::money(model::Money money, bool cents) {
    const QLocale locale;
    const qlonglong minor = std::llabs(money.minor());
    const QString sign = money.minor() < 0 ? QStringLiteral("\u2212") : QString();
    if (!cents) {
        return sign + locale.toString((minor + 50) / 100);
    }
    return sign + locale.toString(minor / 100) + locale.decimalPoint() +
           QStringLiteral("%1").arg(minor % 100, 2, 10, QLatin1Char('0'));
}

QString Said::day(model::Date day) {
    //: How a day is written, in Qt's letters: "Fri 15 May"
    return QLocale().toString(qtDate(day), tr("ddd d MMM"));
}

QString Said::near(model::Date day, model::Date today) {
    const int ahead = day - today;
    if (ahead == 0) {
        return tr("today");
    }
    if (ahead == -1) {
        return tr("yesterday");
    }
    return ahead > 0 && ahead < 7 ? QLocale().dayName(day.weekday() + 1) : Said::day(day);
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

QString Said::whoAndWhen(const compute::PunchRead& read, const model::Punch& punch,
                         model::Date today) {
    QString who = read.crew.empty() ? tr("Nobody yet") : text(read.crew);
    if (!punch.dueOn) {
        return who;
    }
    return read.isLate ? tr("%1, due since %2").arg(who, day(*punch.dueOn))
                       : tr("%1, by %2").arg(who, near(*punch.dueOn, today));
}

}  // namespace ledgerboard::phone
