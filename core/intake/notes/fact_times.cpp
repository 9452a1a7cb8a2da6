// The facts that are dates and spans of time.
#include <algorithm>
#include <array>
#include <cstdlib>
#include <optional>

#include "core/intake/notes/fact_words.h"
#include "core/intake/notes/facts.h"

namespace ledgerboard::intake {

namespace {

constexpr std::array<std::string_view, 12> kMonths = {
    "january", "february", "march",     "april",   "may",      "june",
    "july",    "august",   "september", "october", "november", "december"};

int monthAt(const Sentence& sentence, std::size_t at) {
    const std::string word = lower(sentence, at);
    if (word.size() < 3) {
        return 0;
    }
    for (std::size_t i = 0; i < kMonths.size(); ++i) {
        const bool short3 = word.size() <= 4 && kMonths[i].starts_with(word.substr(0, 3)) &&
                            kMonths[i].starts_with(word);
        if (word == kMonths[i] || short3 || (word == "sept" && i == 8)) {
            // "may" and "march" are words too: they must be written as names.
            const bool word2 = (i == 4 || i == 2) && !sentence.tokens[at].capital;
            return word2 ? 0 : static_cast<int>(i + 1);
        }
    }
    return 0;
}

constexpr std::array<std::string_view, 31> kOrdinals = {
    "first",        "second",         "third",         "fourth",        "fifth",
    "sixth",        "seventh",        "eighth",        "ninth",         "tenth",
    "eleventh",     "twelfth",        "thirteenth",    "fourteenth",    "fifteenth",
    "sixteenth",    "seventeenth",    "eighteenth",    "nineteenth",    "twentieth",
    "twenty-first", "twenty-second",  "twenty-third",  "twenty-fourth", "twenty-fifth",
    "twenty-sixth", "twenty-seventh", "twenty-eighth", "twenty-ninth",  "thirtieth",
    "thirty-first"};

int dayAt(const Sentence& sentence, std::size_t at) {
    if (at >= sentence.tokens.size()) {
        return 0;
    }
    const Token& token = sentence.tokens[at];
    if (token.kind == TokenKind::Number) {
        const std::int64_t day = token.value / 1000;
        return token.value % 1000 == 0 && day >= 1 && day <= 31 ? static_cast<int>(day) : 0;
    }
    const std::string word = lower(sentence, at);
    if (word.size() >= 3 && word[0] >= '0' && word[0] <= '9') {
        return std::atoi(word.c_str());
    }
    if (word == "twenty" || word == "thirty") {
        const std::string whole = word + "-" + lower(sentence, at + 2);
        for (std::size_t i = 20; i < kOrdinals.size(); ++i) {
            if (markIs(sentence, at + 1, '-') && kOrdinals[i] == whole) {
                return static_cast<int>(i + 1);
            }
        }
    }
    for (std::size_t i = 0; i < kOrdinals.size(); ++i) {
        if (kOrdinals[i] == word) {
            return static_cast<int>(i + 1);
        }
    }
    return 0;
}

std::optional<std::int64_t> daysOf(const Amount& amount) {
    const UnitRow* unit = unitOf(amount);
    if (unit == nullptr || unit->measure != Measure::Time) {
        return std::nullopt;
    }
    std::int64_t perUnit = 0;
    if (unit->name == "day") {
        perUnit = 1;
    } else if (unit->name == "week") {
        perUnit = 7;
    } else if (unit->name == "month") {
        perUnit = 30;
    }
    return perUnit == 0 ? std::nullopt : std::optional<std::int64_t>(amount.value * perUnit / 1000);
}

}  // namespace

// "4/15/26": month, day and year with strokes between; the day first where the other way is none.
// Empty where there is no such date.
std::string FactReader::strokeDate(const Sentence& sentence) {
    for (std::size_t i = 0; i + 4 < sentence.tokens.size(); ++i) {
        const auto number = [&](std::size_t at) {
            const Token& token = sentence.tokens[at];
            return token.kind == TokenKind::Number && token.value % 1000 == 0
                       ? static_cast<int>(token.value / 1000)
                       : 0;
        };
        if (!markIs(sentence, i + 1, '/') || !markIs(sentence, i + 3, '/')) {
            continue;
        }
        int month = number(i);
        int day = number(i + 2);
        int year = number(i + 4);
        year = year > 0 && year < 100 ? year + 2000 : year;
        if (month > 12) {
            std::swap(month, day);
        }
        if (month >= 1 && month <= 12 && day >= 1 && day <= 31 && year >= 2020 && year <= 2060) {
            const auto two = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
            return std::to_string(year) + "-" + two(month) + "-" + two(day);
        }
    }
    return {};
}

bool FactReader::takeBegin(const Sentence& sentence, const Spots& spots) {
    bool goes = false;
    for (std::size_t i = 0; i + 1 < sentence.tokens.size(); ++i) {
        goes = goes || (lower(sentence, i) == "go" && (dayAt(sentence, i + 1) > 0 || i == 0)) ||
               (lower(sentence, i) == "strt" && dayAt(sentence, i + 1) > 0);
    }
    if (!speaksOf(spots, "begin") && !goes) {
        return false;
    }
    if (const std::string date = strokeDate(sentence); !date.empty()) {
        add(sentence, "begin", date, 88);
        return true;
    }
    bool any = false;
    std::string value;
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        const int month = monthAt(sentence, i);
        if (month == 0) {
            continue;
        }
        std::size_t after = i + 1;
        while (lower(sentence, after) == "the" || markIs(sentence, after, '.')) {
            ++after;
        }
        int day = dayAt(sentence, after);
        // "7 sep 26": the day stands before, the year after.
        const bool daysFirst = day > 23 && i > 0 && dayAt(sentence, i - 1) > 0 &&
                               sentence.tokens[i - 1].kind == TokenKind::Number;
        if ((day == 0 && i > 0) || daysFirst) {
            day = dayAt(sentence, i - 1);
            if (lower(sentence, i - 1) == "of" && i > 1) {
                day = dayAt(sentence, i - 2);
            }
        }
        int year = yearSaid_;
        for (const Amount& amount : spots.amounts) {
            if (amount.begin > i && amount.begin <= i + 6 && yearOf(amount) >= 2020) {
                year = yearOf(amount);
            }
        }
        const int shortYear = daysFirst ? dayAt(sentence, after) : 0;
        year = shortYear > 0 ? 2000 + shortYear : year;
        if (day == 0 || year == 0) {
            continue;
        }
        const auto two = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
        // The last date after a word of beginning: "close Friday 8 May, crew in Monday 11 May".
        const bool follows =
            std::any_of(spots.facts.begin(), spots.facts.end(), [&](const RowSpot& cue) {
                return tables().facts[cue.row] == "begin" && cue.span.begin <= i;
            });
        if (follows || value.empty()) {
            value = std::to_string(year) + "-" + two(month) + "-" + two(day);
            any = true;
        }
    }
    if (any) {
        add(sentence, "begin", value, 90);
    }
    return any;
}

bool FactReader::takeTimes(const Sentence& sentence, const Spots& spots) {
    bool any = false;
    const bool market =
        says(sentence, "market") || speaksOf(spots, "days_on_market") || askedMarket_;
    const bool deal = lastDeal_ + 1 >= taken_;
    for (const Amount& amount : spots.amounts) {
        // "DOM 30", "25 DOM": days without their unit.
        const bool bare = amount.kind == AmountKind::Plain && amount.value % 1000 == 0 &&
                          (lower(sentence, amount.end) == "dom" ||
                           (amount.begin > 0 && lower(sentence, amount.begin - 1) == "dom"));
        if (bare && !has("days_on_market")) {
            add(sentence, "days_on_market", std::to_string(amount.value / 1000), 90);
            any = true;
            continue;
        }
        // "wk 13": a count of weeks.
        const std::string before = amount.begin > 0 ? lower(sentence, amount.begin - 1) : "";
        const bool weeks = (before == "wk" || before == "wks") &&
                           amount.kind == AmountKind::Plain && amount.value % 1000 == 0 &&
                           amount.value < 100'000;
        if (weeks && !has("duration_days")) {
            add(sentence, "duration_days", std::to_string(amount.value / 1000 * 7), 80);
            any = true;
            continue;
        }
        const std::optional<std::int64_t> days = daysOf(amount);
        if (!days || *days < 1 || *days > 2000) {
            continue;
        }
        bool ofMarket = false;
        bool ofWork = false;
        double nearest = 12.0;
        for (const RowSpot& cue : spots.facts) {
            const std::string& fact = tables().facts[cue.row];
            const double strokes = strokesBetween(sentence, std::min(cue.span.end, amount.end),
                                                  std::max(cue.span.begin, amount.begin));
            const double far = strokes + (cue.span.end <= amount.begin
                                              ? static_cast<double>(amount.begin - cue.span.end)
                                              : static_cast<double>(cue.span.begin) -
                                                    static_cast<double>(amount.end) + 0.5);
            // "four months, and fourteen days on the market": the nearer span is meant.
            const bool between =
                std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& other) {
                    return daysOf(other).has_value() && other.begin != amount.begin &&
                           other.begin >= std::min(cue.span.end, amount.end) &&
                           other.end <= std::max(cue.span.begin, amount.begin);
                });
            const bool times = !between && (fact == "days_on_market" || fact == "duration_days" ||
                                            fact == "begin");
            if (times && far < nearest) {
                nearest = far;
                ofMarket = fact == "days_on_market";
                ofWork = !ofMarket;
            }
        }
        ofMarket = ofMarket || (askedMarket_ && market);
        // "Twelve weeks.": all that is said.
        constexpr std::size_t kBrief = 9;
        constexpr std::int64_t kLeast = 28;  // days
        const bool alone = sentence.tokens.size() <= kBrief && spots.acts.empty() &&
                           *days >= kLeast && (has("purchase") || has("budget"));
        if (ofMarket && market && !has("days_on_market")) {
            add(sentence, "days_on_market", std::to_string(*days), 90);
            any = true;
        } else if (!ofMarket && *days >= 14 && !has("duration_days") && spots.objects.empty() &&
                   (ofWork || deal || alone)) {
            add(sentence, "duration_days", std::to_string(*days), ofWork && deal ? 90 : 75);
            any = true;
        }
    }
    return any;
}

}  // namespace ledgerboard::intake
