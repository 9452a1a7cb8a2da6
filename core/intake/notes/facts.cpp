#include "core/intake/notes/facts.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <optional>

namespace ledgerboard::intake {

namespace {

constexpr std::int64_t kThousand = 1'000'000;  // thousandths

constexpr std::array<std::string_view, 12> kMonths = {
    "january", "february", "march",     "april",   "may",      "june",
    "july",    "august",   "september", "october", "november", "december"};

bool isMark(const Sentence& sentence, std::size_t at, char mark) {
    return at < sentence.tokens.size() && sentence.tokens[at].kind == TokenKind::Mark &&
           sentence.tokens[at].mark == mark;
}

std::string lower(const Sentence& sentence, std::size_t at) {
    return at < sentence.tokens.size() && sentence.tokens[at].kind == TokenKind::Word
               ? plainWord(sentence.tokens[at].text)
               : std::string();
}

std::string moneyText(std::int64_t thousandths) {
    return model::Money::fromMinor(thousandths / 10).toString();
}

std::string countText(std::int64_t thousandths) {
    return model::Quantity::fromThousandths(thousandths).toString();
}

const UnitRow* unitOf(const Amount& amount) {
    return amount.unit == kNone ? nullptr : &tables().units[amount.unit];
}

// Least sensible value of each money fact, in dollars: below it the figure is another one.
std::int64_t leastOf(const std::string& fact) {
    if (fact == "profit") {
        return 2'000;
    }
    return fact == "budget" ? 4'000 : 20'000;
}

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
            if (isMark(sentence, at + 1, '-') && kOrdinals[i] == whole) {
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

// A year of building or of our day that begins at `at`.
int yearOf(const Amount& amount) {
    const std::int64_t year = amount.value / 1000;
    const bool bare = amount.kind == AmountKind::Plain && amount.value % 1000 == 0;
    return bare && year >= 1780 && year <= 2060 ? static_cast<int>(year) : 0;
}

bool says(const Sentence& sentence, std::string_view word) {
    const WordId id = tables().id(word);
    return id != kUnknown && std::any_of(sentence.tokens.begin(), sentence.tokens.end(),
                                         [&](const Token& token) { return token.word == id; });
}

bool speaksOf(const Spots& spots, std::string_view fact) {
    return std::any_of(spots.facts.begin(), spots.facts.end(),
                       [&](const RowSpot& spot) { return tables().facts[spot.row] == fact; });
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

bool FactReader::has(const std::string& name) const {
    return std::any_of(facts_.begin(), facts_.end(),
                       [&](const DraftFact& fact) { return fact.name == name; });
}

void FactReader::add(const Sentence& sentence, const std::string& name, const std::string& value,
                     int sure) {
    constexpr std::size_t kMostFacts = 200;
    for (const DraftFact& fact : facts_) {
        if (fact.name == name && fact.value == value) {
            return;
        }
    }
    if (facts_.size() < kMostFacts) {
        facts_.push_back({name, value, {sourceOf(sentence), sentence.line, sure}});
        lastDeal_ = taken_;
    }
}

bool FactReader::take(const Sentence& sentence, const Spots& spots) {
    ++taken_;
    for (const Amount& amount : spots.amounts) {
        if (const int year = yearOf(amount); year >= 2020 && yearSaid_ == 0) {
            yearSaid_ = year;
        }
    }
    if (spots.has(Cue::Chatter)) {
        return false;
    }
    bool deal = takeMoney(sentence, spots);
    deal = takeArea(sentence, spots) || deal;
    deal = takeRooms(sentence, spots) || deal;
    deal = takeYear(sentence, spots) || deal;
    deal = takeBegin(sentence, spots) || deal;
    deal = takeTimes(sentence, spots) || deal;
    askedMarket_ = says(sentence, "sit") && isMark(sentence, sentence.tokens.size() - 1, '?');
    return deal;
}

bool FactReader::takeMoney(const Sentence& sentence, const Spots& spots) {
    if (!spots.objects.empty() && !spots.acts.empty()) {
        return false;  // a price of work
    }
    bool any = false;
    std::string last;
    std::size_t lastEnd = 0;
    for (const Amount& amount : spots.amounts) {
        if (amount.kind == AmountKind::Measured || amount.kind == AmountKind::Time ||
            amount.perUnit || yearOf(amount) != 0) {
            continue;
        }
        std::string best;
        double nearest = 14.0;
        for (const RowSpot& cue : spots.facts) {
            const std::string& fact = tables().facts[cue.row];
            const bool money =
                fact == "purchase" || fact == "resale" || fact == "budget" || fact == "profit";
            if (!money) {
                continue;
            }
            const bool before = cue.span.end <= amount.begin;
            double far = before ? static_cast<double>(amount.begin - cue.span.end)
                                : static_cast<double>(cue.span.begin) -
                                      static_cast<double>(amount.end) + 1.5;
            for (const Amount& other : spots.amounts) {
                const bool between = before
                                         ? other.begin >= cue.span.end && other.end <= amount.begin
                                         : other.begin >= amount.end && other.end <= cue.span.begin;
                far += between && other.value >= 20 * 1000 ? 4.0 : 0.0;
            }
            if (far >= 0 && far < nearest) {
                nearest = far;
                best = fact;
            }
        }
        std::int64_t value = amount.value;
        // "178-182" and "two forty, maybe two thirty": two readings of one fact.
        const bool follows = !last.empty() && amount.begin <= lastEnd + 8 && best != last &&
                             (best.empty() || nearest > 4.0);
        if (follows) {
            best = last;
        }
        if (best.empty()) {
            continue;
        }
        if (value < kThousand && (value >= 15'000 || amount.paired)) {
            value *= 1000;
        }
        if (value < leastOf(best) * 1000 || value > 100'000 * kThousand) {
            continue;
        }
        const bool item = !spots.objects.empty() || spots.has(Cue::Open);
        if (item && (best == "budget" || best == "profit" || spots.has(Cue::Open))) {
            continue;
        }
        if (best == "resale" && purchase_ > 0 && value < purchase_ / 10 * 6) {
            best = value <= purchase_ / 2 && !has("budget") ? "budget" : "";
        }
        if (best.empty()) {
            continue;
        }
        if (best == "purchase") {
            purchase_ = value;
        }
        add(sentence, best, moneyText(value), nearest < 5.0 ? 92 : 75);
        last = best;
        lastEnd = amount.end;
        any = true;
    }
    return any;
}

bool FactReader::takeArea(const Sentence& sentence, const Spots& spots) {
    bool any = false;
    for (std::size_t i = 0; i < spots.amounts.size(); ++i) {
        const Amount& amount = spots.amounts[i];
        const UnitRow* unit = unitOf(amount);
        const bool area = unit != nullptr && unit->measure == Measure::Area &&
                          (unit->name == "sq ft" || unit->name == "sq m");
        if (!area) {
            continue;
        }
        std::int64_t feet = amount.value;
        if (unit->name == "sq m") {
            feet = (amount.value * 10'764 / 1000 + 500) / 1000 * 1000;
        }
        const bool ofObject = !spots.objects.empty() || (taken_ > 12 && !spots.acts.empty());
        if (feet < 450'000 || feet > 20'000'000 || ofObject || (taken_ > 40 && has("area_sqft"))) {
            continue;
        }
        add(sentence, "area_sqft", countText(feet), 92);
        any = true;
        // "says 1,610, I measured and got 1,540": a bare figure of the same size.
        for (const Amount& other : spots.amounts) {
            const bool close = other.kind == AmountKind::Plain && yearOf(other) == 0 &&
                               other.value > feet / 5 * 4 && other.value < feet / 4 * 5 &&
                               other.value != feet;
            if (close && unit->name == "sq ft") {
                add(sentence, "area_sqft", countText(other.value), 80);
            }
        }
    }
    return any;
}

bool FactReader::takeRooms(const Sentence& sentence, const Spots& spots) {
    const auto countBefore = [&](std::size_t at) -> const Amount* {
        for (const Amount& amount : spots.amounts) {
            const bool unitless = amount.kind == AmountKind::Plain ||
                                  (amount.unit == kNone && amount.kind == AmountKind::Measured);
            if (unitless && (amount.end == at || amount.end + 1 == at) && amount.value <= 20'000) {
                return &amount;
            }
        }
        return nullptr;
    };
    const Amount* beds = nullptr;
    const Amount* baths = nullptr;
    const Amount* rooms = nullptr;
    static const WordId kBed = tables().id("bed");
    static const WordId kBath = tables().id("bath");
    static const WordId kBedroom = tables().id("bedroom");
    static const WordId kBathroom = tables().id("bathroom");
    static const WordId kRoom = tables().id("room");
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        const WordId word = sentence.tokens[i].word;
        if (word == kUnknown || countBefore(i) == nullptr) {
            continue;
        }
        if (word == kBed || word == kBedroom) {
            beds = beds == nullptr ? countBefore(i) : beds;
        } else if (word == kBath || word == kBathroom) {
            baths = baths == nullptr ? countBefore(i) : baths;
        } else if (word == kRoom) {
            rooms = rooms == nullptr ? countBefore(i) : rooms;
        }
    }
    // "3/1" and "3/2.5" beside the area.
    if (beds == nullptr && baths == nullptr) {
        for (std::size_t i = 0; i + 2 < sentence.tokens.size(); ++i) {
            const bool figures = sentence.tokens[i].kind == TokenKind::Number &&
                                 isMark(sentence, i + 1, '/') &&
                                 sentence.tokens[i + 2].kind == TokenKind::Number &&
                                 sentence.tokens[i + 1].glued && sentence.tokens[i + 2].glued;
            const std::int64_t first = sentence.tokens[i].value;
            if (figures && taken_ <= 12 && first >= 1000 && first <= 9000 &&
                sentence.tokens[i + 2].value <= 6000 && !isMark(sentence, i + 3, '/')) {
                add(sentence, "bedrooms", countText(first), 85);
                add(sentence, "baths", countText(sentence.tokens[i + 2].value), 85);
                return true;
            }
        }
    }
    if (beds == nullptr || baths == nullptr) {
        return false;
    }
    add(sentence, "bedrooms", countText(beds->value), 93);
    add(sentence, "baths", countText(baths->value), 93);
    if (rooms != nullptr) {
        add(sentence, "rooms", countText(rooms->value), 90);
    }
    return true;
}

bool FactReader::takeYear(const Sentence& sentence, const Spots& spots) {
    if (has("built")) {
        return false;
    }
    for (const Amount& amount : spots.amounts) {
        const int year = yearOf(amount);
        if (year == 0 || year > 2025) {
            continue;
        }
        const std::string before = amount.begin > 0 ? lower(sentence, amount.begin - 1) : "";
        const std::string before2 = amount.begin > 1 ? lower(sentence, amount.begin - 2) : "";
        const bool built = before == "built" || before2 == "built" || before == "c" ||
                           before == "circa" || before == "cape" || before == "ranch";
        static constexpr std::array<std::string_view, 18> kHouses = {
            "house",    "foursquare", "ranch",     "cape",      "bungalow", "semi",
            "colonial", "cottage",    "victorian", "terrace",   "split",    "duplex",
            "place",    "home",       "farmhouse", "townhouse", "rambler",  "tudor"};
        bool house = false;
        for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
            const std::string word = lower(sentence, i);
            house = house || std::find(kHouses.begin(), kHouses.end(), word) != kHouses.end();
        }
        const bool alone = amount.begin == 0 && amount.end + 1 >= sentence.tokens.size();
        const bool early = taken_ <= 14 && year < 2015;
        const bool since = before == "since" || before == "in" || before == "around";
        if (built || (early && (house || alone || has("area_sqft") || lastDeal_ + 2 >= taken_) &&
                      !(since && !house))) {
            built_ = year;
            add(sentence, "built", std::to_string(year), built ? 95 : 85);
            return true;
        }
    }
    return false;
}

bool FactReader::takeBegin(const Sentence& sentence, const Spots& spots) {
    if (!speaksOf(spots, "begin")) {
        return false;
    }
    bool any = false;
    std::string value;
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        const int month = monthAt(sentence, i);
        if (month == 0) {
            continue;
        }
        std::size_t after = i + 1;
        while (lower(sentence, after) == "the" || isMark(sentence, after, '.')) {
            ++after;
        }
        int day = dayAt(sentence, after);
        if (day == 0 && i > 0) {
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
        const std::optional<std::int64_t> days = daysOf(amount);
        if (!days || *days < 1 || *days > 2000) {
            continue;
        }
        bool ofMarket = false;
        bool ofWork = false;
        double nearest = 12.0;
        for (const RowSpot& cue : spots.facts) {
            const std::string& fact = tables().facts[cue.row];
            const double far =
                cue.span.end <= amount.begin
                    ? static_cast<double>(amount.begin - cue.span.end)
                    : static_cast<double>(cue.span.begin) - static_cast<double>(amount.end) + 0.5;
            const bool times =
                fact == "days_on_market" || fact == "duration_days" || fact == "begin";
            if (times && far < nearest) {
                nearest = far;
                ofMarket = fact == "days_on_market";
                ofWork = !ofMarket;
            }
        }
        ofMarket = ofMarket || (askedMarket_ && market);
        if (ofMarket && market && !has("days_on_market")) {
            add(sentence, "days_on_market", std::to_string(*days), 90);
            any = true;
        } else if (!ofMarket && *days >= 14 && !has("duration_days") && spots.objects.empty() &&
                   (ofWork || deal)) {
            add(sentence, "duration_days", std::to_string(*days), ofWork && deal ? 90 : 75);
            any = true;
        }
    }
    return any;
}

}  // namespace ledgerboard::intake
