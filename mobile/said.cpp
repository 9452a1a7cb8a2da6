#include "mobile/said.h"

#include <QDate>
#include <QLocale>

namespace ledgerboard::phone {

namespace {

QDate qtDate(model::Date day) {
    return {day.year(), day.month(), day.dayOfMonth()};
}

}  // namespace

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
