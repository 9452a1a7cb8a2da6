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
    const std::string_view word = lower(sentence, at);
    if (word.size() < 3) {
        return 0;
    }
    for (std::size_t i = 0; i < kMonths.size(); ++i) {
        if (kMonths[i].front() != word.front()) {
            continue;
        }
        const bool short3 = word.size() <= 4 && kMonths[i].starts_with(word.substr(0, 3)) &&
                            kMonths[i].starts_with(word);
        if (word == kMonths[i] || short3 || (word == "sept" && i == 8)) {
            // "may" and "march" are words too: they must be written as names, or stand by a day.
            const bool word2 = (word == "may" || word == "march") && !sentence.tokens[at].capital;
            const bool dayBefore = at > 0 && sentence.tokens[at - 1].kind == TokenKind::Number &&
                                   sentence.tokens[at - 1].value <= 31'000 &&
                                   at + 1 < sentence.tokens.size() &&
                                   sentence.tokens[at + 1].kind == TokenKind::Number;
            const bool dayAfter = at + 1 < sentence.tokens.size() &&
                                  sentence.tokens[at + 1].kind == TokenKind::Number &&
                                  sentence.tokens[at + 1].value <= 31'000;
            return word2 && !dayBefore && !dayAfter ? 0 : static_cast<int>(i + 1);
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
    const std::string_view word = lower(sentence, at);
    if (word.size() >= 3 && word[0] >= '0' && word[0] <= '9') {
        return std::atoi(sentence.tokens[at].plain.c_str());
    }
    if (word == "twenty" || word == "thirty") {
        const std::string whole = std::string(word) + "-" + std::string(lower(sentence, at + 2));
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
        const std::string_view word = lower(sentence, i);
        // "I've told the lender 11 weeks": what the owner said.
        const bool told =
            i > 1 && (lower(sentence, i - 2) == "told" || lower(sentence, i - 2) == "promised");
        const bool lends =
            !told && (word == "loan" || word == "lender" || word == "money" || word == "note");
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

// "4/15/26", "1-25-27": month, day and year with strokes between; the day first where the other way
// is none.
// Empty where there is no such date.
std::string FactReader::strokeDate(const Sentence& sentence, std::size_t from) const {
    for (std::size_t i = from; i + 4 < sentence.tokens.size(); ++i) {
        const auto number = [&](std::size_t at) {
            const Token& token = sentence.tokens[at];
            return token.kind == TokenKind::Number && token.value % 1000 == 0
                       ? static_cast<int>(token.value / 1000)
                       : 0;
        };
        const bool strokes = markIs(sentence, i + 1, '/') && markIs(sentence, i + 3, '/');
        const bool dashes = markIs(sentence, i + 1, '-') && markIs(sentence, i + 3, '-');
        if (!strokes && !dashes) {
            continue;
        }
        int month = number(i);
        int day = number(i + 2);
        int year = number(i + 4);
        year = year > 0 && year < 100 ? year + 2000 : year;
        // Who measures in metres says the day first.
        if (month > 12 || (areaMetres_ && day <= 12)) {
            std::swap(month, day);
        }
        if (month >= 1 && month <= 12 && day >= 1 && day <= 31 && year >= 2020 && year <= 2060) {
            const auto two = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
            return std::to_string(year) + "-" + two(month) + "-" + two(day);
        }
    }
    return {};
}

// A date that is said; empty where it lacks its day or its year.
std::string FactReader::dateAt(const Sentence& sentence, const Spots& spots, std::size_t at,
                               bool ownYear) const {
    const int month = monthAt(sentence, at);
    if (month == 0) {
        return {};
    }
    std::size_t after = at + 1;
    while (lower(sentence, after) == "the" || markIs(sentence, after, '.')) {
        ++after;
    }
    int day = dayAt(sentence, after);
    // "7 sep 26": the day stands before, the year after.
    const bool daysFirst = day > 23 && at > 0 && dayAt(sentence, at - 1) > 0 &&
                           sentence.tokens[at - 1].kind == TokenKind::Number;
    bool dayBefore = false;
    if ((day == 0 && at > 0) || daysFirst) {
        day = dayAt(sentence, at - 1);
        if (lower(sentence, at - 1) == "of" && at > 1) {
            day = dayAt(sentence, at - 2);
        }
        dayBefore = true;
    }
    int year = 0;
    for (const Amount& amount : spots.amounts) {
        const bool near = amount.begin > at && amount.begin <= at + 6;
        // "Of January twenty-seven", "mar 1 27", "Jan 18/27"
        const std::size_t left = dayBefore ? at + 1 : after + 1;
        const bool follows =
            amount.begin == left ||
            (amount.begin == left + 1 && sentence.tokens[left].kind == TokenKind::Mark &&
             !markIs(sentence, left, '.') && !markIs(sentence, left, '-'));
        if (near && yearOf(sentence, amount) >= 2020) {
            year = yearOf(sentence, amount);
        } else if (day > 0 && follows && amount.kind == AmountKind::Plain &&
                   amount.value >= 24'000 && amount.value < 60'000 && amount.value % 1000 == 0) {
            year = 2000 + static_cast<int>(amount.value / 1000);
        }
    }
    const int shortYear = daysFirst ? dayAt(sentence, after) : 0;
    year = shortYear > 0 ? 2000 + shortYear : year;
    const bool saysYear = year != 0;
    year = !saysYear && !ownYear ? yearSaid_ : year;
    if (day == 0 || year == 0) {
        return {};
    }
    const auto two = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
    const std::string rest = "-" + two(month) + "-" + two(day);
    // Written in November, January is that of the next year.
    const bool passed = !ownYear && year == yearSaid_ && !noted_.empty() &&
                        noted_.starts_with(std::to_string(year)) &&
                        std::to_string(year) + rest < noted_;
    return std::to_string(year + (passed && !saysYear ? 1 : 0)) + rest;
}

// "Walked 11/20/26" at the top: the day the notes are of, and the year of days without one.
void FactReader::noteDay(const Sentence& sentence, const Spots& spots) {
    constexpr int kTop = 3;
    if (taken_ > kTop || !noted_.empty() || speaksOf(spots, "begin")) {
        return;
    }
    noted_ = strokeDate(sentence, 0);
    for (std::size_t i = 0; noted_.empty() && i < sentence.tokens.size(); ++i) {
        noted_ = dateAt(sentence, spots, i, true);
    }
    if (!noted_.empty() && yearSaid_ == 0) {
        yearSaid_ = std::atoi(noted_.c_str());
    }
}

namespace {

// Whether one of the `far` words before `at` says that it is the day of the walk or of the sale:
// "viewed 3 December", "we complete on the eleventh".
bool isOfOtherDay(const Sentence& sentence, std::size_t at, std::size_t far) {
    static constexpr std::array<std::string_view, 19> kOther = {
        "walk",     "walked",    "saw",       "seen",       "viewed",  "viewing", "close",
        "closed",   "closes",    "visit",     "visited",    "closing", "settled", "settle",
        "complete", "completed", "completes", "possession", "poss"};
    for (std::size_t i = at > far ? at - far : 0; i < at; ++i) {
        if (isOneOf(lower(sentence, i), kOther)) {
            return true;
        }
    }
    return false;
}

// "We close May 15, I can start … the 18th": the day of `date`'s month that is told behind `from`.
std::string laterDay(const Sentence& sentence, const std::string& date, std::size_t from) {
    for (std::size_t i = from + 1; i < sentence.tokens.size(); ++i) {
        const int day = lower(sentence, i - 1) == "the" && monthAt(sentence, i + 1) == 0 &&
                                lower(sentence, i + 1) != "of"
                            ? dayAt(sentence, i)
                            : 0;
        if (day > 0 &&
            (i + 1 >= sentence.tokens.size() || sentence.tokens[i + 1].kind == TokenKind::Mark)) {
            return date.substr(0, date.size() - 2) + (day < 10 ? "0" : "") + std::to_string(day);
        }
    }
    return date;
}

}  // namespace

// "Builders are booked for 11 January 2027": a day without a word of beginning, kept until the
// notes are read.
void FactReader::addLooseDate(const Sentence& sentence, const Spots& spots) {
    if (!spots.objects.empty() && !spots.acts.empty()) {
        return;
    }
    std::string date = strokeDate(sentence, 0);
    for (std::size_t i = 0; date.empty() && i < sentence.tokens.size(); ++i) {
        date = dateAt(sentence, spots, i, true);
    }
    if (date.empty()) {
        return;
    }
    // The day of the walk stands at the top, whatever is said with it.
    const bool other = isOfOtherDay(sentence, sentence.tokens.size(), sentence.tokens.size());
    if (!other || taken_ <= 2) {
        addLoose(sentence, LooseFigure::Of::Date, 0, date);
    }
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
        addLooseDate(sentence, spots);
        return false;
    }
    // "Closing was 11/17/26, crew from 12/1/26": the date after the word of beginning.
    std::size_t word = 0;
    for (const RowSpot& cue : spots.facts) {
        word = tables().facts[cue.row] == "begin" ? cue.span.begin : word;
    }
    for (const std::size_t at : {word, std::size_t{0}}) {
        const bool other = at < word && isOfOtherDay(sentence, word, word);
        if (const std::string date = strokeDate(sentence, at); !date.empty() && !other) {
            add(sentence, "begin", date, 88);
            return true;
        }
    }
    constexpr std::size_t kNear = 5;
    constexpr std::size_t kBehind = 5;
    bool stands = false;
    std::string value;
    std::string other;
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        const std::string date = dateAt(sentence, spots, i, false);
        // The last date after a word of beginning: "close Friday 8 May, crew in Monday 11 May"; but
        // one right behind it stands.
        bool follows = false;
        bool behind = false;
        for (const RowSpot& cue : spots.facts) {
            const bool begins = tables().facts[cue.row] == "begin" && cue.span.begin <= i;
            follows = follows || begins;
            behind = behind || (begins && i <= cue.span.end + kBehind);
        }
        // "The 7th of December, no, the 11th of January": taken back.
        stands = stands && lower(sentence, i) != "no";
        if (!date.empty() && !behind && isOfOtherDay(sentence, i, kNear)) {
            other = date;
        } else if (!date.empty() && (behind || (follows && !stands) || value.empty())) {
            value = date;
            stands = behind;
        }
    }
    if (value.empty() && !other.empty()) {
        const std::string later = laterDay(sentence, other, word);
        value = later == other ? "" : later;
    }
    if (value.empty()) {
        addLooseDate(sentence, spots);
        return false;
    }
    add(sentence, "begin", value, 88);
    return true;
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
        const std::string_view before = amount.begin > 0 ? lower(sentence, amount.begin - 1) : "";
        // "DOM 30", "25 DOM": days without their unit.
        const bool dom = whole && (lower(sentence, amount.end) == "dom" ||
                                   (before == "dom" && amount.value < 400'000));
        if (dom) {
            spans.push_back(
                {amount.begin, amount.end, amount.value / 1000, "days_on_market", false});
        } else if (whole && (before == "wk" || before == "wks") && amount.value < 100'000 &&
                   !markIs(sentence, amount.end, '-') && !markIs(sentence, amount.end, '/')) {
            spans.push_back(
                {amount.begin, amount.end, amount.value / 1000 * 7, "duration_days", false});
        } else if (const auto days = daysOf(amount);
                   days && *days >= 1 && *days <= 2000 && !isLoanTerm(sentence, amount)) {
            spans.push_back({amount.begin, amount.end, *days, {}, false});
        }
    }
    for (std::size_t i = 0; i + 1 < sentence.tokens.size(); ++i) {
        const std::string_view next = lower(sentence, i + 1);
        const std::string_view after = lower(sentence, i + 2);
        const bool one =
            lower(sentence, i) == "a" && after != "ago" && after != "later" && after != "apart";
        if (one && (next == "week" || next == "month")) {
            // "a month and a half"
            const bool half =
                after == "and" && lower(sentence, i + 3) == "a" && lower(sentence, i + 4) == "half";
            const std::int64_t days = next == "week" ? 7 : half ? 45 : 30;
            spans.push_back({i, half ? i + 5 : i + 2, days, {}, true});
        }
    }
    std::stable_sort(spans.begin(), spans.end(),
                     [](const TimeSpan& a, const TimeSpan& b) { return a.begin < b.begin; });
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
            // "Allow 30 days on the market", "giving it 25 days to sell": what follows says of
            // what.
            far -= !before && fact == "days_on_market" && begin == end ? 1.0 : 0.0;
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

namespace {

// "Ten weeks, twelve if it rains, so call it twelve": the spans before the last word are taken
// back, and a bare figure after it is of their unit.
void takeLastWord(const Sentence& sentence, const Spots& spots, std::vector<TimeSpan>& spans) {
    constexpr std::size_t kNear = 2;
    const std::size_t last = afterLastWord(sentence);
    const UnitRow* unit = nullptr;
    for (const Amount& amount : spots.amounts) {
        const UnitRow* own = unitOf(amount);
        const bool time = own != nullptr && own->measure == Measure::Time;
        if (amount.begin < last) {
            unit = time ? own : unit;
            continue;
        }
        const bool bare = amount.kind == AmountKind::Plain && amount.value <= 400'000;
        if (unit == nullptr || amount.begin > last + kNear || !(time || bare)) {
            return;
        }
        const std::int64_t per = unit->name == "day" ? 1 : unit->name == "week" ? 7 : 30;
        const bool ofMarket = !spans.empty() && spans.front().fact == "days_on_market";
        std::erase_if(spans, [&](const TimeSpan& span) { return span.begin < last && !ofMarket; });
        if (bare && !ofMarket) {
            spans.push_back(
                {amount.begin, amount.end, amount.value * per / 1000, "duration_days", false});
        } else if (!ofMarket && !spans.empty()) {
            spans.front().fact = "duration_days";
        }
        return;
    }
}

// "We said eighteen days on the market", "days on market: 30", "days on the market, I said 18":
// bare figures after the phrase.
void takeBareDays(const Sentence& sentence, const Spots& spots, std::vector<TimeSpan>& spans) {
    constexpr std::size_t kFar = 4;
    for (const RowSpot& cue : spots.facts) {
        const std::string_view opens = lower(sentence, cue.span.begin);
        const bool days = tables().facts[cue.row] == "days_on_market" && opens == "days";
        for (const Amount& amount : spots.amounts) {
            const bool bare = amount.kind == AmountKind::Plain && amount.value >= 5'000 &&
                              amount.value <= 365'000 && amount.value % 1000 == 0;
            if (days && spans.empty() && bare && amount.begin >= cue.span.end &&
                amount.begin <= cue.span.end + kFar) {
                spans.push_back(
                    {amount.begin, amount.end, amount.value / 1000, "days_on_market", false});
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
    takeLastWord(sentence, spots, spans);
    takeBareDays(sentence, spots, spans);
    bool any = false;
    std::int64_t onMarket = 0;
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
        if (onMarket == span.days) {
            continue;  // "a month and a half, say 45 days"
        }
        if (ofMarket && !has("days_on_market")) {
            add(sentence, "days_on_market", std::to_string(span.days), 88);
            onMarket = span.days;
            any = true;
        } else if (!ofMarket && span.days >= 14 && !has("duration_days") &&
                   (spots.objects.empty() || (ofWork && deal && spots.acts.empty())) &&
                   (ofWork || deal || alone)) {
            add(sentence, "duration_days", std::to_string(span.days), ofWork && deal ? 88 : 75);
            any = true;
        } else if (!ofMarket && span.days >= 28 && spots.objects.empty() && !spots.has(Cue::Open)) {
            addLoose(sentence, LooseFigure::Of::Days, span.days);
        }
    }
    return any;
}

}  // namespace ledgerboard::intake
