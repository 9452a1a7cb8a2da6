// The facts that are dates and spans of time.
#include <algorithm>
#include <array>
#include <cstdlib>
#include <optional>
#include <vector>

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

// "The hard money guy gave us six months": when money must be back.
bool isLoanTerm(const Sentence& sentence, const Amount& amount) {
    constexpr std::size_t kFar = 7;
    for (std::size_t i = amount.begin > kFar ? amount.begin - kFar : 0; i < amount.begin; ++i) {
        const std::string word = lower(sentence, i);
        const bool lends = word == "loan" || word == "lender" || word == "money" || word == "note";
        if (lends && !markIs(sentence, i + 1, ',') && !markIs(sentence, i + 1, '.')) {
            return true;
        }
    }
    return lower(sentence, amount.end) == "loan" || lower(sentence, amount.end) == "note";
}

}  // namespace

bool isMonth(const Sentence& sentence, std::size_t at) {
    return at < sentence.tokens.size() && monthAt(sentence, at) != 0;
}

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
    // "Fourteen weeks from 11 January 2027."
    bool span = false;
    for (const Amount& amount : spots.amounts) {
        span = span || (daysOf(amount).value_or(0) >= 14 && spots.acts.empty());
    }
    bool from = false;
    for (std::size_t i = 0; span && i + 1 < sentence.tokens.size(); ++i) {
        from = from || (lower(sentence, i) == "from" && i + 1 < sentence.tokens.size());
    }
    if (!speaksOf(spots, "begin") && !goes && !from) {
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
            if (amount.begin > i && amount.begin <= i + 6 && yearOf(sentence, amount) >= 2020) {
                year = yearOf(sentence, amount);
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

namespace {

// A span of time and what it may be of.
struct TimeSpan {
    std::size_t begin = 0;
    std::size_t end = 0;
    std::int64_t days = 0;
    std::string fact;  // as the nearest phrase says; empty where none is near
    bool loose = false;
};

// The spans of time said, in order: those in figures, "a month" and "wk 13".
std::vector<TimeSpan> spansOf(const Sentence& sentence, const Spots& spots) {
    std::vector<TimeSpan> spans;
    for (const Amount& amount : spots.amounts) {
        const bool whole = amount.kind == AmountKind::Plain && amount.value % 1000 == 0;
        const std::string before = amount.begin > 0 ? lower(sentence, amount.begin - 1) : "";
        // "DOM 30", "25 DOM": days without their unit.
        const bool dom = whole && (lower(sentence, amount.end) == "dom" ||
                                   (before == "dom" && amount.value < 400'000));
        if (dom) {
            spans.push_back(
                {amount.begin, amount.end, amount.value / 1000, "days_on_market", false});
        } else if (whole && (before == "wk" || before == "wks") && amount.value < 100'000) {
            spans.push_back(
                {amount.begin, amount.end, amount.value / 1000 * 7, "duration_days", false});
        } else if (const auto days = daysOf(amount);
                   days && *days >= 1 && *days <= 2000 && !isLoanTerm(sentence, amount)) {
            spans.push_back({amount.begin, amount.end, *days, {}, false});
        }
    }
    for (std::size_t i = 0; i + 1 < sentence.tokens.size(); ++i) {
        const std::string next = lower(sentence, i + 1);
        const std::string after = lower(sentence, i + 2);
        const bool one =
            lower(sentence, i) == "a" && after != "ago" && after != "later" && after != "apart";
        if (one && (next == "week" || next == "month")) {
            spans.push_back({i, i + 2, next == "week" ? 7 : 30, {}, true});
        }
    }
    return spans;
}

// Gives each span the nearest phrase, each phrase once.
void pairTimes(const Sentence& sentence, const Spots& spots, std::vector<TimeSpan>& spans) {
    constexpr double kFar = 12.0;

    struct Pair {
        double far;
        std::size_t span;
        std::size_t cue;
    };

    // "9 wks / 28 DOM": the days on the market have their own figure.
    const bool counted = std::any_of(spans.begin(), spans.end(), [](const TimeSpan& span) {
        return span.fact == "days_on_market";
    });
    std::vector<Pair> pairs;
    for (std::size_t s = 0; s < spans.size(); ++s) {
        for (std::size_t c = 0; c < spots.facts.size(); ++c) {
            const std::string& fact = tables().facts[spots.facts[c].row];
            const auto& cue = spots.facts[c].span;
            if ((fact != "days_on_market" || counted) && fact != "duration_days" &&
                fact != "begin") {
                continue;
            }
            const bool before = cue.end <= spans[s].begin;
            // "forty | days to sell": the phrase may hold the unit.
            const std::size_t begin = before ? cue.end : std::min(spans[s].end, cue.begin);
            const std::size_t end = before ? spans[s].begin : cue.begin;
            double far = static_cast<double>(end - begin) + (before ? 0.0 : 0.5);
            far += strokesBetween(sentence, begin, end);
            for (const TimeSpan& other : spans) {
                far += other.begin >= begin && other.end <= end ? kFar : 0.0;
            }
            // "A month" is said of many things: it must stand by its phrase.
            constexpr double kBeside = 4.0;
            if (far < (spans[s].loose ? kBeside : kFar)) {
                pairs.push_back({far, s, c});
            }
        }
    }
    std::stable_sort(pairs.begin(), pairs.end(),
                     [](const Pair& a, const Pair& b) { return a.far < b.far; });
    std::vector<bool> used(spots.facts.size(), false);
    for (const Pair& pair : pairs) {
        if (!used[pair.cue] && spans[pair.span].fact.empty()) {
            const std::string& fact = tables().facts[spots.facts[pair.cue].row];
            spans[pair.span].fact = fact == "begin" ? "duration_days" : fact;
            for (std::size_t c = 0; c < spots.facts.size(); ++c) {
                used[c] = used[c] || spots.facts[c].span.begin == spots.facts[pair.cue].span.begin;
            }
        }
    }
}

}  // namespace

bool FactReader::takeTimes(const Sentence& sentence, const Spots& spots) {
    const bool market =
        says(sentence, "market") || speaksOf(spots, "days_on_market") || askedMarket_;
    const bool deal = lastDeal_ + 1 >= taken_;
    std::vector<TimeSpan> spans = spansOf(sentence, spots);
    pairTimes(sentence, spots, spans);
    bool any = false;
    for (const TimeSpan& span : spans) {
        const bool ofMarket = span.fact == "days_on_market" || (askedMarket_ && market) ||
                              (span.fact.empty() && lower(sentence, span.end) == "dom");
        const bool ofWork = span.fact == "duration_days" && !ofMarket;
        // "Twelve weeks.": all that is said.
        constexpr std::size_t kBrief = 9;
        constexpr std::int64_t kLeast = 28;  // days
        const bool alone = sentence.tokens.size() <= kBrief && spots.acts.empty() &&
                           span.days >= kLeast && (has("purchase") || has("budget"));
        if (span.loose && !ofMarket) {
            continue;
        }
        if (ofMarket && !has("days_on_market")) {
            add(sentence, "days_on_market", std::to_string(span.days), 88);
            any = true;
        } else if (!ofMarket && span.days >= 14 && !has("duration_days") && spots.objects.empty() &&
                   (ofWork || deal || alone)) {
            add(sentence, "duration_days", std::to_string(span.days), ofWork && deal ? 88 : 75);
            any = true;
        }
    }
    return any;
}

}  // namespace ledgerboard::intake
