#include "core/intake/notes/facts.h"

#include <algorithm>
#include <array>

#include "core/intake/notes/fact_words.h"

namespace ledgerboard::intake {

namespace {

constexpr std::int64_t kThousand = 1'000'000;  // thousandths

std::string moneyText(std::int64_t thousandths) {
    return model::Money::fromMinor(thousandths / 10).toString();
}

std::string countText(std::int64_t thousandths) {
    return model::Quantity::fromThousandths(thousandths).toString();
}

// Least sensible value of each money fact, in dollars: below it the figure is another one.
std::int64_t leastOf(const std::string& fact) {
    if (fact == "profit") {
        return 2'000;
    }
    return fact == "budget" ? 4'000 : 20'000;
}

// The fact whose phrase stands nearest to a figure, and how far it is; empty where none is near.
std::pair<std::string, double> nearestFact(const Sentence& sentence, const Spots& spots,
                                           const Amount& amount) {
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
        double far =
            before ? static_cast<double>(amount.begin - cue.span.end)
                   : static_cast<double>(cue.span.begin) - static_cast<double>(amount.end) + 1.5;
        far += strokesBetween(sentence, before ? cue.span.end : amount.end,
                              before ? amount.begin : cue.span.begin);
        for (const Amount& other : spots.amounts) {
            const bool between = before ? other.begin >= cue.span.end && other.end <= amount.begin
                                        : other.begin >= amount.end && other.end <= cue.span.begin;
            far += between && other.value >= 20'000 ? 4.0 : 0.0;
        }
        if (far >= 0 && far < nearest) {
            nearest = far;
            best = fact;
        }
    }
    return {best, nearest};
}

// "Asking was 240, we got it for 231": what others hoped for is no fact.
bool isAsked(const Sentence& sentence, const Amount& amount) {
    for (std::size_t i = amount.begin > 3 ? amount.begin - 3 : 0; i < amount.begin; ++i) {
        const std::string word = lower(sentence, i);
        const bool theirs = word == "want" || word == "wanted" || word == "wants";
        const std::string who = i > 0 ? lower(sentence, i - 1) : "";
        if (word == "asking" || word == "listed" || word == "asks" ||
            (theirs && (who == "they" || who == "he" || who == "she" || who == "seller" ||
                        who == "sellers" || who == "bank" || who == "owner"))) {
            return true;
        }
    }
    return false;
}

// "Three eighty nine was our first offer": no price that was paid.
bool wasOnlyOffered(const Sentence& sentence, const Amount& amount) {
    const std::string next = lower(sentence, amount.end);
    if (next != "was" && next != "is") {
        return false;
    }
    for (std::size_t i = amount.end + 1; i < amount.end + 6; ++i) {
        const std::string word = lower(sentence, i);
        if (word == "offer" || word == "ask" || word == "asking" || word == "list" ||
            word == "bid" || word == "listing") {
            return true;
        }
    }
    return false;
}

// "in 412k / out 589-610k": the short way to say for how much it is bought and sold.
std::string inOrOut(const Sentence& sentence, const Amount& amount, int taken) {
    constexpr int kOpening = 14;
    // "589-610k": both ends are of one size.
    const bool range = amount.value >= 100'000 && markIs(sentence, amount.end, '-');
    if (taken > kOpening || amount.begin == 0 || (amount.value < 20 * kThousand && !range)) {
        return {};
    }
    const bool opens = amount.begin == 1 ||
                       sentence.tokens[amount.begin - 2].kind != TokenKind::Word ||
                       sentence.tokens[amount.begin - 2].word == kUnknown;
    const std::string word = lower(sentence, amount.begin - 1);
    return word == "in" && opens ? "purchase" : word == "out" ? "resale" : "";
}

// "Sixty, no, sixty-five": what the next figure takes the place of.
bool isTakenBack(const Sentence& sentence, const Spots& spots, const Amount& amount) {
    std::size_t at = amount.end;
    while (markIs(sentence, at, ',') || markIs(sentence, at, '-') || markIs(sentence, at, '.')) {
        ++at;
    }
    const std::string word = lower(sentence, at);
    if (word != "no" && word != "sorry" && word != "wait" && word != "scratch") {
        return false;
    }
    return std::any_of(spots.amounts.begin(), spots.amounts.end(),
                       [&](const Amount& next) { return next.begin > at && next.begin <= at + 4; });
}

// "Two forty" is 240 thousand; beside "265k" a bare 26 is a year or a day, and no 26 thousand.
std::int64_t wholePrice(const Spots& spots, const Amount& amount, std::int64_t value) {
    const bool plain =
        value < 32'000 && !amount.paired &&
        std::any_of(spots.amounts.begin(), spots.amounts.end(), [](const Amount& other) {
            return other.value >= 10 * kThousand && yearOf(other) == 0;
        });
    return value < kThousand && !plain && (value >= 15'000 || amount.paired) ? value * 1000 : value;
}

// "Four and a quarter", of a house's price: hundreds of thousands.
bool isShortPrice(const Amount& amount) {
    const std::int64_t rest = amount.value % 1000;
    return amount.kind == AmountKind::Plain && amount.value > 1000 && amount.value < 10'000 &&
           (rest == 250 || rest == 500 || rest == 750) && amount.end > amount.begin + 2;
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
        // "Built 1951 by the grandfather": whoever built it, the year holds.
        const bool built = !sentence.tokens.empty() && lower(sentence, 0) == "built";
        return built && takeYear(sentence, spots);
    }
    // "What did we pay, one fifty one?": the answer counts.
    const std::string opens = lower(sentence, 0);
    const bool asks =
        (opens == "what" || opens == "how") && markIs(sentence, sentence.tokens.size() - 1, '?');
    bool deal = !asks && takeMoney(sentence, spots);
    deal = takeArea(sentence, spots) || deal;
    deal = takeRooms(sentence, spots) || deal;
    deal = takeYear(sentence, spots) || deal;
    deal = takeBegin(sentence, spots) || deal;
    deal = takeTimes(sentence, spots) || deal;
    asked_.clear();
    if (!sentence.tokens.empty() && markIs(sentence, sentence.tokens.size() - 1, '?')) {
        for (const RowSpot& cue : spots.facts) {
            const std::string& fact = tables().facts[cue.row];
            if (fact == "purchase" || fact == "resale" || fact == "budget" || fact == "profit") {
                asked_ = fact;
                break;
            }
        }
    }
    askedMarket_ = says(sentence, "sit") && markIs(sentence, sentence.tokens.size() - 1, '?');
    return deal;
}

bool FactReader::takeMoney(const Sentence& sentence, const Spots& spots) {
    // A price of work, but for what the opening of the notes says outright.
    constexpr int kOpening = 14;
    const bool ofWork = !spots.objects.empty() && !spots.acts.empty();
    if (ofWork && taken_ > kOpening) {
        return false;
    }
    bool any = false;
    std::string last;
    std::size_t lastEnd = 0;
    for (const Amount& amount : spots.amounts) {
        if (amount.kind == AmountKind::Measured || amount.kind == AmountKind::Time ||
            yearOf(amount) != 0) {
            continue;
        }
        const bool at = amount.begin > 0 && markIs(sentence, amount.begin - 1, '@');
        if (amount.perUnit && !(at && amount.value >= 20 * kThousand)) {
            continue;
        }
        auto [best, nearest] = nearestFact(sentence, spots, amount);
        // "What are you paying?" "One eighty-five."
        const bool answers = !asked_.empty() && !any && amount.kind != AmountKind::Measured &&
                             (best.empty() || nearest > 3.0 || best == "budget");
        if (const std::string way = inOrOut(sentence, amount, taken_); !way.empty()) {
            best = way;
            nearest = 0.5;
        }
        if (answers) {
            best = asked_;
            nearest = 4.0;
        }
        std::int64_t value = amount.value;
        // "178-182" and "two forty, maybe two thirty": two readings of one fact.
        const bool follows = !last.empty() && amount.begin <= lastEnd + 8 && best != last &&
                             (best.empty() || nearest > 4.0);
        const bool range =
            !last.empty() && amount.begin == lastEnd + 1 && markIs(sentence, lastEnd, '-');
        if (follows || range) {
            best = last;
            nearest = range ? 1.0 : nearest;
        }
        constexpr double kOutright = 3.0;
        const bool theirs = amount.begin > 0 && lower(sentence, amount.begin - 1) == "asks";
        if (best.empty() || theirs || (ofWork && nearest > kOutright) ||
            (best == "purchase" &&
             (isAsked(sentence, amount) || wasOnlyOffered(sentence, amount))) ||
            isTakenBack(sentence, spots, amount)) {
            continue;
        }
        if ((best == "purchase" || best == "resale") && isShortPrice(amount)) {
            value *= 100'000;
        }
        // "Budget 6,800 for a new one": of one thing.
        if (best == "budget" && has("budget") && taken_ > 20 && !spots.acts.empty()) {
            continue;
        }
        value = wholePrice(spots, amount, value);
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
        add(sentence, best, moneyText(value),
            nearest < 2.5 && amount.kind == AmountKind::Money ? 92
            : nearest < 5.0                                   ? 84
                                                              : 70);
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
        const bool opening = taken_ <= 14 && feet >= 600'000 && spots.acts.empty();
        const bool ofObject =
            (!spots.objects.empty() && !opening) || (taken_ > 12 && !spots.acts.empty());
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

// "A bath and a half", "one and a half baths": in thousandths; 0 where it is not said.
std::int64_t FactReader::bathAndAHalf(const Sentence& sentence) {
    for (std::size_t i = 0; i + 3 < sentence.tokens.size(); ++i) {
        const std::string word = lower(sentence, i);
        if ((word == "bath" || word == "bathroom") && lower(sentence, i + 1) == "and" &&
            lower(sentence, i + 2) == "a" && lower(sentence, i + 3) == "half") {
            return 1500;
        }
    }
    return 0;
}

// "One and three quarter baths", "two full baths and a half bath": in thousandths.
std::int64_t FactReader::bathsWithParts(const Sentence& sentence, const Amount& baths) {
    const std::size_t at = baths.begin;
    if (lower(sentence, baths.end) == "quarter" && at > 1 && lower(sentence, at - 1) == "and") {
        static constexpr std::array<std::string_view, 5> kWhole = {"zero", "one", "two", "three",
                                                                   "four"};
        for (std::size_t i = 0; i < kWhole.size(); ++i) {
            if (lower(sentence, at - 2) == kWhole[i]) {
                return static_cast<std::int64_t>(i) * 1000 + baths.value / 4;
            }
        }
    }
    if (baths.value % 1000 != 0) {
        return baths.value;
    }
    constexpr std::size_t kFar = 7;
    for (std::size_t i = baths.end; i < sentence.tokens.size() && i < baths.end + kFar; ++i) {
        const std::string word = lower(sentence, i);
        const std::string next = lower(sentence, i + 1);
        const bool half = (word == "half" && next.starts_with("bath")) || word == "powder" ||
                          word == "cloakroom" || (word == "downstairs" && next == "loo");
        if (half && sentence.tokens[i - 1].kind == TokenKind::Word) {
            return baths.value + 500;
        }
    }
    return baths.value;
}

// "3/1" and "3/2.5" beside the area.
bool FactReader::takeFigures(const Sentence& sentence) {
    for (std::size_t i = 0; i + 2 < sentence.tokens.size(); ++i) {
        const bool figures = sentence.tokens[i].kind == TokenKind::Number &&
                             markIs(sentence, i + 1, '/') &&
                             sentence.tokens[i + 2].kind == TokenKind::Number &&
                             sentence.tokens[i + 1].glued && sentence.tokens[i + 2].glued;
        const std::int64_t first = sentence.tokens[i].value;
        if (figures && taken_ <= 12 && first >= 1000 && first <= 9000 &&
            sentence.tokens[i + 2].value <= 6000 && !markIs(sentence, i + 3, '/')) {
            add(sentence, "bedrooms", countText(first), 85);
            add(sentence, "baths", countText(sentence.tokens[i + 2].value), 85);
            return true;
        }
    }
    return false;
}

// ", so four.": what a count comes to in the end; 0 where it does not.
std::int64_t FactReader::sumOf(const Sentence& sentence) {
    for (std::size_t i = 1; i + 2 < sentence.tokens.size(); ++i) {
        const bool closes =
            i + 3 >= sentence.tokens.size() || sentence.tokens[i + 2].kind == TokenKind::Mark;
        if (lower(sentence, i) != "so" || !closes) {
            continue;
        }
        const Token& token = sentence.tokens[i + 1];
        const NumberRow row = tables().number(token.word);
        const std::int64_t value = token.kind == TokenKind::Number ? token.value
                                   : row.kind == NumberKind::Unit  ? row.value
                                                                   : 0;
        if (value > 0 && value < 10'000) {
            return value;
        }
    }
    return 0;
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
    // "2bd/1ba each = 4/2": of each flat, not of the house.
    if (beds != nullptr && baths != nullptr && says(sentence, "each")) {
        beds = nullptr;
        baths = nullptr;
    }
    if (beds == nullptr && baths == nullptr && takeFigures(sentence)) {
        return true;
    }
    const std::int64_t bathsSaid =
        baths != nullptr ? bathsWithParts(sentence, *baths) : bathAndAHalf(sentence);
    if (beds == nullptr && bathsSaid == 0) {
        const bool opening = taken_ <= 12 && spots.acts.empty() && spots.objects.empty();
        const bool known = has("built") || has("area_sqft") || has("purchase");
        if (rooms != nullptr && opening && known && rooms->value >= 3000 && !has("rooms")) {
            add(sentence, "rooms", countText(rooms->value), 80);
        }
        return false;
    }
    // Counts of rooms alone may be of rooms that want work: they must stand early, without any.
    const bool early = taken_ <= 16 && spots.acts.empty() &&
                       (spots.objects.empty() || has("area_sqft") || has("built"));
    if ((beds == nullptr || bathsSaid == 0) && !early) {
        return false;
    }
    // "Three bedrooms up, one down, so four."
    if (const std::int64_t sum = sumOf(sentence); sum > 0 && (beds == nullptr || bathsSaid == 0)) {
        add(sentence, beds != nullptr ? "bedrooms" : "baths", countText(sum), 85);
        return true;
    }
    if (beds != nullptr && !has("bedrooms")) {
        add(sentence, "bedrooms", countText(beds->value), bathsSaid != 0 ? 93 : 80);
    }
    if (bathsSaid != 0 && !has("baths")) {
        add(sentence, "baths", countText(bathsSaid), beds != nullptr ? 93 : 80);
    }
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
        int year = yearOf(amount);
        // "built in '38"
        const bool shortForm = amount.begin > 0 && markIs(sentence, amount.begin - 1, '\'') &&
                               amount.kind == AmountKind::Plain && amount.value >= 10'000 &&
                               amount.value < 100'000;
        const bool spoken = amount.begin > 1 && lower(sentence, amount.begin - 1) == "in" &&
                            lower(sentence, amount.begin - 2) == "built" &&
                            amount.kind == AmountKind::Plain && amount.value >= 30'000 &&
                            amount.value < 100'000;
        year = shortForm || spoken ? 1900 + static_cast<int>(amount.value / 1000) : year;
        if (year == 0 || year > 2025) {
            continue;
        }
        const std::string before = amount.begin > 0 ? lower(sentence, amount.begin - 1) : "";
        const std::string before2 = amount.begin > 1 ? lower(sentence, amount.begin - 2) : "";
        bool said = false;
        for (std::size_t i = amount.begin > 4 ? amount.begin - 4 : 0; i < amount.begin; ++i) {
            const std::string word = lower(sentence, i);
            said = said || word == "built" || word == "dates" || word == "constructed" ||
                   word == "erected" ||
                   (word == "up" && i > 0 && lower(sentence, i - 1) == "put") ||
                   (word == "up" && i > 0 && lower(sentence, i - 1) == "went");
        }
        const bool built = said || before == "built" || before2 == "built" || before == "c" ||
                           before == "circa" || before == "cape" || before == "ranch";
        static constexpr std::array<std::string_view, 37> kHouses = {
            "flat",    "flats",        "shotgun",    "row",       "rowhouse",   "cabin",
            "condo",   "chalet",       "lodge",      "saltbox",   "twin",       "triplex",
            "adobe",   "contemporary", "building",   "detached",  "maisonette", "apartment",
            "contemp", "house",        "foursquare", "ranch",     "cape",       "bungalow",
            "semi",    "colonial",     "cottage",    "victorian", "terrace",    "split",
            "duplex",  "place",        "home",       "farmhouse", "townhouse",  "rambler",
            "tudor"};
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

}  // namespace ledgerboard::intake
