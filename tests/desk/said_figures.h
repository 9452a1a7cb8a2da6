// How does a page write the exact figures that the command line's JSON gives? Written apart from
// the client's own words, so that both can be wrong only in different ways.
#pragma once

#include <cstdlib>
#include <string>

#include <nlohmann/json.hpp>

#include <QString>

namespace ledgerboard::ui {

// "98892.13" is "98,892"; half a unit goes away from zero.
inline QString wholeOf(const std::string& exact, bool withSign = false) {
    const bool below = exact.front() == '-';
    const std::string digits = below ? exact.substr(1) : exact;
    const auto dot = digits.find('.');
    long long units = std::atoll(digits.substr(0, dot).c_str());
    if (dot != std::string::npos && digits[dot + 1] >= '5') {
        ++units;
    }
    QString text;
    for (const QChar c : QString::number(units)) {
        text += c;
    }
    for (qsizetype at = text.size() - 3; at > 0; at -= 3) {
        text.insert(at, QLatin1Char(','));
    }
    if (units == 0) {
        return text;
    }
    return (below ? QStringLiteral("\u2212") : withSign ? QStringLiteral("+") : QString()) + text;
}

inline QString wholeOf(const nlohmann::json& money, bool withSign = false) {
    return wholeOf(money.get<std::string>(), withSign);
}

// "2026-06-08" is "Mon 8 Jun", in 2026.
inline QString dayOf(const nlohmann::json& date) {
    const std::string text = date.get<std::string>();
    const QDate day = QDate::fromString(QString::fromStdString(text), Qt::ISODate);
    static const char* kDays[] = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};
    static const char* kMonths[] = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                    "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    return QStringLiteral("%1 %2 %3")
        .arg(QLatin1String(kDays[day.dayOfWeek() - 1]))
        .arg(day.day())
        .arg(QLatin1String(kMonths[day.month() - 1]));
}

}  // namespace ledgerboard::ui
