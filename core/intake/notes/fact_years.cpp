// The fact that is a year: when the house was built.
#include <algorithm>
#include <array>
#include <cstdlib>

#include "core/intake/notes/fact_sums.h"
#include "core/intake/notes/fact_words.h"
#include "core/intake/notes/facts.h"

namespace ledgerboard::intake {

namespace {

// Words of building right before a year: "built in", "went up in", "dates from", "year:".
bool saysBuilt(const Sentence& sentence, std::size_t begin) {
    static constexpr std::array<std::string_view, 16> kWords = {
        "built", "build",  "blt",     "bl", "bld",   "constructed", "erected", "dates",
        "dated", "dating", "vintage", "yr", "circa", "c",           "cape",    "ranch"};
    constexpr std::size_t kFar = 10;
    constexpr std::size_t kNear = 5;
    for (std::size_t i = begin > kFar ? begin - kFar : 0; i < begin; ++i) {
        const std::string_view word = lower(sentence, i);
        // "built by two brothers in 1907"
        if (word != "built" && i + kNear < begin) {
            continue;
        }
        const std::string_view before = i > 0 ? lower(sentence, i - 1) : "";
        const bool up = word == "up" && (before == "put" || before == "went" || before == "going");
        const bool year = word == "year" && (i == 0 || before == "the" || before == "house" ||
                                             sentence.tokens[i - 1].kind == TokenKind::Mark);
        const bool near = i + 2 >= begin || (word != "c" && word != "cape" && word != "ranch");
        if (near && (up || year || isOneOf(word, kWords))) {
            return true;
        }
    }
    return false;
}

bool isHouse(std::string_view word) {
    static constexpr std::array<std::string_view, 52> kHouses = {
        "flat",       "flats",        "shotgun",    "row",       "rowhouse",   "cabin",
        "condo",      "chalet",       "lodge",      "saltbox",   "twin",       "triplex",
        "adobe",      "contemporary", "building",   "detached",  "maisonette", "apartment",
        "contemp",    "house",        "foursquare", "ranch",     "cape",       "bungalow",
        "semi",       "colonial",     "cottage",    "victorian", "terrace",    "split",
        "duplex",     "place",        "home",       "farmhouse", "townhouse",  "rambler",
        "tudor",      "terraced",     "tract",      "walk-up",   "craftsman",  "two-story",
        "two-storey", "story",        "storey",     "bung",      "rnch",       "rancher",
        "tri-level",  "bi-level",     "veneer",     "model"};
    return isOneOf(word, kHouses);
}

// Whether a sort of house is named in the tokens [begin, end), or the rooms are counted there.
bool namesHouse(const Sentence& sentence, std::size_t begin, std::size_t end) {
    for (std::size_t i = begin; i < end && i < sentence.tokens.size(); ++i) {
        const std::string_view word = lower(sentence, i);
        if (isHouse(word) || word == "bedrooms" || word == "bedroom" || word == "bed" ||
            word == "beds" || word == "baths") {
            return true;
        }
    }
    return false;
}

// "The house is a '91", "1915 building", "the 1964 ranch": of the house wherever it is said.
bool isYearOfHouse(const Sentence& sentence, const Amount& amount) {
    static constexpr std::array<std::string_view, 6> kOthers = {"permit", "code",    "addition",
                                                                "roof",   "kitchen", "style"};
    const std::string_view then = lower(sentence, amount.end + 1);
    if (isHouse(lower(sentence, amount.end)) && !isOneOf(then, kOthers)) {
        return true;
    }
    std::size_t at = amount.begin;
    while (at > 0 && (isOneOf(lower(sentence, at - 1),
                              {"a", "about", "around", "from", "circa", "the", "only", "all"}) ||
                      markIs(sentence, at - 1, '\''))) {
        --at;
    }
    const std::string_view verb = at > 0 ? lower(sentence, at - 1) : "";
    const std::string_view before = at > 1 ? lower(sentence, at - 2) : "";
    const bool is = verb == "is" || verb == "was" || verb == "dates";
    const std::string_view subject =
        verb.ends_with("'s") ? verb.substr(0, verb.size() - 2) : std::string_view{};
    return (is && isHouse(before)) || isHouse(subject);
}

// "Built 1951 or maybe 1953": the second is another reading, and not the year of an addition.
bool saysOtherwise(const Sentence& sentence, std::size_t begin, std::size_t end) {
    static constexpr std::array<std::string_view, 9> kWords = {
        "but", "or", "says", "say", "said", "claims", "swears", "maybe", "thinks"};
    for (std::size_t i = begin; i < end && i < sentence.tokens.size(); ++i) {
        if (isOneOf(lower(sentence, i), kWords)) {
            return true;
        }
    }
    return false;
}

}  // namespace

// The year a figure says the house is of; 0 for none. "'38" and "in thirty-eight" are 1938.
int FactReader::yearSaid(const Sentence& sentence, const Spots& spots, const Amount& amount) const {
    if (const int year = yearOf(sentence, amount); year != 0) {
        return year;
    }
    const bool decade = sentence.tokens[amount.end - 1].text.ends_with("ties");
    const bool two = !decade && amount.kind == AmountKind::Plain && amount.value >= 10'000 &&
                     amount.value < 100'000 && amount.value % 1000 == 0;
    // "'51", "it's a fifty three"
    const std::string_view third = amount.begin > 1 ? lower(sentence, amount.begin - 2) : "";
    const bool isA = amount.begin > 1 && lower(sentence, amount.begin - 1) == "a" &&
                     (third == "is" || third.ends_with("'s")) && amount.value >= 20'000 &&
                     (amount.end >= sentence.tokens.size() || markIs(sentence, amount.end, '.') ||
                      markIs(sentence, amount.end, ','));
    const bool ofHouse = amount.value >= 20'000 &&
                         !lower(sentence, amount.end).starts_with("amp") &&
                         isYearOfHouse(sentence, amount) && !isHouse(lower(sentence, amount.end));
    const bool shortForm =
        isA || ofHouse || (amount.begin > 0 && markIs(sentence, amount.begin - 1, '\''));
    const bool spoken = amount.begin > 1 && lower(sentence, amount.begin - 1) == "in" &&
                        saysBuilt(sentence, amount.begin) && amount.value >= 30'000;
    const bool answers = asked_ == "built" && spots.amounts.size() == 1;
    // "tract 99", "blt 57": right behind the word.
    const std::string_view before = amount.begin > 0 ? lower(sentence, amount.begin - 1) : "";
    const std::string_view before2 = amount.begin > 1 && markIs(sentence, amount.begin - 1, ',')
                                         ? lower(sentence, amount.begin - 2)
                                         : "";
    // "2nd floor condo, 94, 2/2", "Seventy-six, block, thirteen hundred forty square feet"
    const bool closes =
        amount.end >= sentence.tokens.size() || sentence.tokens[amount.end].kind == TokenKind::Mark;
    const bool setOff = closes && (amount.begin == 0 || markIs(sentence, amount.begin - 1, ',')) &&
                        !markIs(sentence, amount.end, '/') && !markIs(sentence, amount.end, '-') &&
                        namesHouse(sentence, 0, sentence.tokens.size());
    const bool behind =
        taken_ <= 3 && amount.value >= 30'000 &&
        (setOff || isHouse(before) || before == "blt" || before == "built" || before == "yr" ||
         isHouse(before2) || isHouse(lower(sentence, amount.end)));
    return two && (shortForm || spoken || answers || behind)
               ? 1900 + static_cast<int>(amount.value / 1000)
               : 0;
}

namespace {

// ", 1964, ": by itself between two marks.
bool isSetOff(const Sentence& sentence, const Amount& amount) {
    return amount.begin > 0 && markIs(sentence, amount.begin - 1, ',') &&
           markIs(sentence, amount.end, ',');
}

}  // namespace

// "The tax roll says '51.", right after a year was told: another reading of it.
void FactReader::takeOtherYear(const Sentence& sentence, const Spots& spots) {
    constexpr int kNear = 3;
    constexpr std::size_t kBrief = 9;
    if (spots.amounts.size() != 1 || !spots.objects.empty() || sentence.tokens.size() > kBrief) {
        return;
    }
    const bool near = std::any_of(told_.begin(), told_.end(), [&](const ToldFact& told) {
        return told.fact.name == "built" && taken_ - told.at <= kNear && taken_ > told.at;
    });
    if (!near || !says(sentence, "say")) {
        return;
    }
    const int year = yearSaid(sentence, spots, spots.amounts.front());
    if (year != 0 && std::abs(year - built_) <= 30 && year <= 2025) {
        add(sentence, "built", std::to_string(year), 80);
    }
}

// A year told where the notes open, for want of a better one: "It's the tri-level, 1964, …". One
// that is told later counts among other facts: "Two ten for it. 1899.", "1960. I gave 455."
void FactReader::addLooseYear(const Sentence& sentence, const Spots& spots, const Amount& amount,
                              int year) {
    constexpr int kOpening = 10;
    constexpr int kNew = 2015;
    const std::string_view before = amount.begin > 0 ? lower(sentence, amount.begin - 1) : "";
    if (year >= kNew || before == "since" || before == "until") {
        return;
    }
    // "It's from 1912." keeps nothing.
    constexpr std::size_t kBrief = 7;
    const bool isFromYear = before == "from" && year < 1990 && sentence.tokens.size() <= kBrief;
    if (taken_ <= kOpening) {
        addLoose(sentence, LooseFigure::Of::Year, year, {}, wordsBesideFigures(sentence, spots));
    } else if (spots.objects.empty() && (spots.acts.empty() || isFromYear)) {
        addLoose(sentence, LooseFigure::Of::LateYear, year, {},
                 wordsBesideFigures(sentence, spots));
    }
}

bool FactReader::takeYear(const Sentence& sentence, const Spots& spots) {
    if (has("built")) {
        takeOtherYear(sentence, spots);
        return false;
    }
    constexpr int kTop = 4;
    std::size_t last = 0;
    for (const Amount& amount : spots.amounts) {
        const int year = yearSaid(sentence, spots, amount);
        if (year == 0 || year > 2025 || isTakenBack(sentence, spots, amount)) {
            continue;
        }
        const std::string_view before = amount.begin > 0 ? lower(sentence, amount.begin - 1) : "";
        // "1910 by the county, but the neighbour says 1906": both.
        constexpr std::size_t kFar = 8;
        const bool other = has("built") && amount.begin <= last + kFar &&
                           saysOtherwise(sentence, last, amount.begin);
        // "The paneling went up in '75", "water heater, dated 2019": no year of the house.
        const bool ofThing = taken_ > kTop && lower(sentence, 0) != "built" &&
                             !(spots.objects.empty() && spots.spaces.empty()) &&
                             !namesHouse(sentence, 0, sentence.tokens.size());
        const bool built = (saysBuilt(sentence, amount.begin) && !ofThing) || asked_ == "built";
        // Talk tells of other houses as well: there the year must stand by the house.
        constexpr std::size_t kBeside = 4;
        const bool talk = spots.has(Cue::Chatter);
        const bool house = talk ? namesHouse(sentence, amount.begin > 3 ? amount.begin - 3 : 0,
                                             amount.end + kBeside)
                                : namesHouse(sentence, 0, sentence.tokens.size());
        const bool is = before == "is" || before.ends_with("'s");
        const bool alone = amount.begin == 0 && amount.end + 3 >= sentence.tokens.size();
        const bool early = isEarly(14) && year < 2015;
        const bool since = before == "since" || before == "in" || before == "around";
        // "It's from 1957.", "1924, by the plaque, …", "1944 by the county, my aunt says 1946".
        constexpr std::size_t kShort = 8;
        const bool brief = sentence.tokens.size() <= kShort && before != "since" &&
                           (taken_ <= 4 || (spots.acts.empty() && spots.objects.empty()));
        const bool opens = amount.begin == 0;
        const bool twice =
            std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& next) {
                return next.begin > amount.begin && next.begin <= amount.end + kFar &&
                       yearOf(sentence, next) != 0 &&
                       saysOtherwise(sentence, amount.end, next.begin);
            });
        const bool two = std::any_of(
            spots.amounts.begin(), spots.amounts.end(),
            [&](const Amount& next) { return &next != &amount && yearOf(sentence, next) != 0; });
        const bool told =
            (!talk && year < 2015 && isYearOfHouse(sentence, amount)) ||
            (early && !talk && (brief || opens || twice)) || built ||
            (early && !(since && !house) &&
             (house || (!talk && (alone || is || has("area_sqft") || lastDeal_ + 2 >= taken_))));
        if (has("built") ? other : told) {
            built_ = built_ == 0 ? year : built_;
            const bool outright = built && !twice && !two && spots.spaces.empty() &&
                                  spots.objects.empty() && spots.acts.empty();
            add(sentence, "built", std::to_string(year), outright ? 95 : 85);
            last = amount.end;
        } else if (!told && (spots.acts.empty() || before == "from" || taken_ <= 6 ||
                             isSetOff(sentence, amount))) {
            addLooseYear(sentence, spots, amount, year);
        }
    }
    return has("built");
}

}  // namespace ledgerboard::intake
