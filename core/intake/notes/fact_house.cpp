// The facts that measure the house: its rooms, bedrooms and baths.
#include <algorithm>
#include <array>

#include "core/intake/notes/fact_words.h"
#include "core/intake/notes/facts.h"

namespace ledgerboard::intake {

namespace {

bool namesBedrooms(const Sentence& sentence) {
    return says(sentence, "bedroom") || says(sentence, "bed");
}

// A figure or "one" to "nineteen", in thousandths; 0 for another word.
std::int64_t countSaid(const Token& token) {
    const NumberRow row = tables().number(token.word);
    return token.kind == TokenKind::Number ? token.value
           : row.kind == NumberKind::Unit  ? row.value
                                           : 0;
}

// "BR 4 BA 2.5": the figure right behind the label; nullptr where a count stands before that.
const Amount* countBehind(const Sentence& sentence, const Spots& spots,
                          std::array<WordId, 2> labels) {
    for (const Amount& amount : spots.amounts) {
        const std::size_t at = amount.begin;
        if (at == 0 || amount.value > 9'000 || sentence.tokens[at].kind != TokenKind::Number ||
            sentence.tokens[at - 1].word == kUnknown) {
            continue;
        }
        const WordId word = sentence.tokens[at - 1].word;
        const bool counted = at > 1 && sentence.tokens[at - 1].glued;
        if (!counted && (word == labels[0] || word == labels[1])) {
            return &amount;
        }
    }
    return nullptr;
}

// "2 full 1 half", "two full and one half": in thousandths; 0 where it is not said.
std::int64_t fullAndHalf(const Sentence& sentence) {
    constexpr std::size_t kFar = 4;
    for (std::size_t i = 0; i + 3 < sentence.tokens.size(); ++i) {
        for (std::size_t j = i + 2; lower(sentence, i + 1) == "full" && j < i + kFar; ++j) {
            if (lower(sentence, j + 1) == "half" && countSaid(sentence.tokens[j]) == 1000 &&
                countSaid(sentence.tokens[i]) > 0) {
                return countSaid(sentence.tokens[i]) + 500;
            }
        }
    }
    return 0;
}

}  // namespace

// "A bath and a half", "one and a half baths": in thousandths; 0 where it is not said.
std::int64_t FactReader::bathAndAHalf(const Sentence& sentence) {
    for (std::size_t i = 0; i + 2 < sentence.tokens.size(); ++i) {
        const std::string_view word = lower(sentence, i);
        const std::size_t half = i + (lower(sentence, i + 2) == "a" ? 3 : 2);
        if ((word == "bath" || word == "bathroom") && lower(sentence, i + 1) == "and" &&
            lower(sentence, half) == "half" && !lower(sentence, half + 1).starts_with("bath")) {
            return 1500;
        }
        if (word == "bath" && lower(sentence, i + 1) == "and" &&
            lower(sentence, i + 2) == "three" && lower(sentence, i + 3) == "quarters") {
            return 1750;
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
        const std::string_view word = lower(sentence, i);
        const std::string_view next = lower(sentence, i + 1);
        const bool half =
            (word == "half" &&
             (next.starts_with("bath") ||
              (lower(sentence, i - 1) == "one" && i + 1 < sentence.tokens.size() &&
               sentence.tokens[i + 1].kind == TokenKind::Mark))) ||
            word == "powder" || word == "cloakroom" || (word == "downstairs" && next == "loo") ||
            (word == "half" && lower(sentence, i - 1) == "a" && lower(sentence, i - 2) == "and");
        if (half && sentence.tokens[i - 1].kind == TokenKind::Word) {
            return baths.value + 500;
        }
    }
    return baths.value;
}

namespace {

// Whether "3/1", "4-2.5" or "3/2/2" (the last of them the garage) begins at `i`, and no date does.
bool areRoomFigures(const Sentence& sentence, std::size_t i, bool opening) {
    const auto number = [&](std::size_t at) {
        return at < sentence.tokens.size() && sentence.tokens[at].kind == TokenKind::Number;
    };
    const bool stroke = markIs(sentence, i + 1, '/');
    if (!number(i) || !number(i + 2) || !(stroke || (opening && markIs(sentence, i + 1, '-'))) ||
        !sentence.tokens[i + 1].glued || !sentence.tokens[i + 2].glued) {
        return false;
    }
    const std::int64_t first = sentence.tokens[i].value;
    const std::int64_t second = sentence.tokens[i + 2].value;
    const bool third = (markIs(sentence, i + 3, '/') || markIs(sentence, i + 3, '-')) &&
                       sentence.tokens[i + 3].glued;
    const bool garage = opening && third && number(i + 4) && sentence.tokens[i + 4].value <= 4000;
    const bool before = i > 0 && sentence.tokens[i].glued && !markIs(sentence, i - 1, '(');
    return first >= 1000 && first <= 9000 && first % 1000 == 0 && second >= 1000 &&
           second <= 6000 && (!third || garage) && !before;
}

}  // namespace

// "3/1" and "3/2.5" beside the area.
bool FactReader::takeFigures(const Sentence& sentence, const Spots& spots) {
    constexpr int kOpening = 12;
    constexpr int kTop = 5;
    const bool opens = taken_ <= kTop && spots.objects.empty();
    const bool among = spots.objects.empty() && spots.acts.empty() && lastDeal_ + 1 >= taken_;
    for (std::size_t i = 0; i + 1 < sentence.tokens.size(); ++i) {
        const std::int64_t first = sentence.tokens[i].value;
        // "2b1b"
        const std::string_view word = lower(sentence, i + 1);
        const bool joined = word.size() >= 3 && word.size() <= 4 && word[0] == 'b' &&
                            word[1] >= '1' && word[1] <= '6' && word[2] == 'b' &&
                            sentence.tokens[i + 1].glued && taken_ <= kOpening;
        if (joined && first >= 1000 && first <= 9000) {
            add(sentence, "bedrooms", countText(first), 85);
            add(sentence, "baths", countText(std::int64_t{1000} * (word[1] - '0')), 85);
            return true;
        }
        if ((taken_ <= kOpening || among) && areRoomFigures(sentence, i, opens)) {
            const std::int64_t units =
                ofEachUnit(sentence) && !markIs(sentence, i - 1, '=') ? 2 : 1;
            add(sentence, "bedrooms", countText(first * units), 85);
            add(sentence, "baths", countText(sentence.tokens[i + 2].value * units), 85);
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
        const std::int64_t value = countSaid(sentence.tokens[i + 1]);
        if (value > 0 && value < 10'000) {
            return value;
        }
    }
    return 0;
}

// "Two bedrooms upstairs and one down": how many more there are, in thousandths.
std::int64_t FactReader::moreOf(const Sentence& sentence, std::size_t at) {
    constexpr std::size_t kFar = 7;
    for (std::size_t i = at; i + 1 < sentence.tokens.size() && i < at + kFar; ++i) {
        if (i > at && lower(sentence, i).starts_with("bath")) {
            break;  // the rest is of the baths
        }
        const NumberRow row = tables().number(sentence.tokens[i].word);
        std::size_t next = i + 1;
        next += lower(sentence, next) == "more" ? 1 : 0;
        const std::string_view where = lower(sentence, next);
        const bool level = where == "up" || where == "upstairs" || where == "down" ||
                           where == "downstairs" || where == "below" || where == "above";
        if (sentence.tokens[i].kind == TokenKind::Word && row.kind == NumberKind::Unit && level) {
            return row.value;
        }
    }
    return 0;
}

// "Three bedrooms and a bath", "a single bathroom".
bool FactReader::saysOneBath(const Sentence& sentence) {
    for (std::size_t i = 1; i < sentence.tokens.size(); ++i) {
        const std::string_view word = lower(sentence, i);
        const std::string_view before = lower(sentence, i - 1);
        const bool bath = word == "bath" || word == "bathroom";
        const bool one = before == "single" || before == "one" || before == "a" || before == "the";
        // "two bedrooms, bathroom downstairs"
        const std::string_view next = lower(sentence, i + 1);
        const bool bare = (sentence.tokens[i - 1].kind == TokenKind::Mark || before == "and" ||
                           before == "with") &&
                          !isOneOf(next, {"and", "plus"}) && next.size() != 2 &&
                          !says(sentence, "loo") && !says(sentence, "rooms");
        const bool family = (before == "family" || before == "full" || before == "only") && i > 1 &&
                            (lower(sentence, i - 2) == "a" || lower(sentence, i - 2) == "one");
        if (bath && (one || family || bare)) {
            return true;
        }
    }
    return false;
}

// "Each side is …", "… per unit", "… each": counts are of one of two homes in the house.
bool FactReader::ofEachUnit(const Sentence& sentence) {
    static constexpr std::array<std::string_view, 9> kUnits = {
        "side", "unit", "flat", "half", "apartment", "one", "home", "of", "has"};
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        const std::string_view word = lower(sentence, i);
        const std::string_view next = lower(sentence, i + 1);
        const bool unit = isOneOf(next, kUnits);
        const bool closes =
            i + 1 >= sentence.tokens.size() || sentence.tokens[i + 1].kind == TokenKind::Mark;
        if ((word == "each" && (unit || closes)) || (word == "per" && unit)) {
            return true;
        }
    }
    return false;
}

// The figure right before the word at `at`, "four of them bedrooms" and "a single bathroom"
// included.
const Amount* FactReader::countOf(const Sentence& sentence, const Spots& spots, std::size_t at) {
    static constexpr std::array<std::string_view, 11> kBetween = {
        "of", "them", "those", "these", "are", "which", "full", "good", "double", "small", "whole"};
    std::size_t end = at;
    for (int i = 0; i < 3 && end > 0; ++i) {
        const std::string_view word = lower(sentence, end - 1);
        if (!isOneOf(word, kBetween)) {
            break;
        }
        --end;
    }
    for (const Amount& amount : spots.amounts) {
        const bool unitless = amount.kind == AmountKind::Plain ||
                              (amount.unit == kNone && amount.kind == AmountKind::Measured);
        if (unitless && (amount.end == end || amount.end == at || amount.end + 1 == at) &&
            amount.value <= 20'000) {
            return &amount;
        }
    }
    return nullptr;
}

// "Bedrooms: 3", "Year built: 1961", "Size: 1,080": a label and its figure; the answer to "Beds?"
// likewise.
bool FactReader::takeLabelled(const Sentence& sentence, const Spots& spots) {
    constexpr std::size_t kBrief = 8;
    if (spots.amounts.empty() || sentence.tokens.size() > kBrief) {
        return false;
    }
    const bool label =
        spots.acts.empty() && (markIs(sentence, 1, ':') || markIs(sentence, 2, ':') ||
                               lower(sentence, 1) == "is" || lower(sentence, 2) == "is");
    const std::string about = label ? roomFact(sentence) : asked_;
    const Amount& amount = spots.amounts.front();
    // "BED 1: new carpet": the figure is of the name.
    if (!spots.objects.empty() || (label && amount.begin < 2)) {
        return false;
    }
    const std::int64_t value = amount.value;
    if (amount.begin > 4) {
        return false;
    }
    if ((about == "bedrooms" || about == "baths" || about == "rooms") && value >= 1000 &&
        value <= 20'000 && !has(about)) {
        add(sentence, about, countText(value), 85);
        return label || sentence.tokens.size() < 4;
    }
    if (about == "area_sqft" && amount.kind == AmountKind::Plain && value >= 400'000 &&
        value <= 9'000'000 && !has(about)) {
        add(sentence, about, countText(value), 85);
        return true;
    }
    return false;
}

// Which count a question or a label asks for; empty for none.
std::string FactReader::roomFact(const Sentence& sentence) {
    const bool asks = markIs(sentence, sentence.tokens.size() - 1, '?');
    std::size_t from = 0;
    for (std::size_t i = 0; asks && i + 1 < sentence.tokens.size(); ++i) {
        from = lower(sentence, i) == "how" && lower(sentence, i + 1) == "many" ? i + 2 : from;
    }
    for (std::size_t i = from; i < sentence.tokens.size() && (asks || i < 4); ++i) {
        const std::string_view word = lower(sentence, i);
        if (word == "bedrooms" || word == "beds" || word == "bedroom" || word == "bed") {
            return "bedrooms";
        }
        if (word == "baths" || word == "bathrooms" || word == "bath" || word == "bathroom") {
            return "baths";
        }
        if (word == "rooms") {
            return "rooms";
        }
        if (word == "footage" || word == "size" || word == "area" ||
            (word == "square" && lower(sentence, i + 1).starts_with("f"))) {
            return "area_sqft";
        }
        if (word == "built" || word == "year" || word == "age") {
            return "built";
        }
    }
    return {};
}

namespace {

// "Five bedrooms when we're done", "4br/2.5ba after": as it is to be.
bool isPlanned(const Sentence& sentence) {
    const auto before = [&](std::size_t i, std::size_t back) {
        return i >= back ? lower(sentence, i - back) : std::string_view{};
    };
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        const std::string_view word = lower(sentence, i);
        const bool closes =
            i + 1 >= sentence.tokens.size() || sentence.tokens[i + 1].kind == TokenKind::Mark;
        // "when we're done", "when it is done"
        const bool done = word == "done" && (before(i, 2) == "when" || before(i, 3) == "when");
        if (done || word == "final" || (word == "plan" && before(i, 1) == "we") ||
            (word == "after" && closes)) {
            return true;
        }
    }
    return false;
}

// Whether a second count of the same is another opinion: "four bedrooms, or three".
bool saysOtherwise(const Sentence& sentence, std::size_t begin, std::size_t end) {
    for (std::size_t i = begin; i < end; ++i) {
        if (isOneOf(lower(sentence, i), {"or", "no", "not", "if", "says", "say", "said", "was",
                                         "counting", "so", "with", "of", "call", "each"})) {
            return true;
        }
    }
    return false;
}

}  // namespace

// How many more the sentence counts of what `first` counts: "three bedrooms up, one bedroom down".
std::int64_t FactReader::moreCounted(const Sentence& sentence, const Spots& spots,
                                     const Amount& first, std::string_view stem) {
    for (std::size_t i = first.end + 1; i < sentence.tokens.size(); ++i) {
        const bool word = lower(sentence, i).starts_with(stem);
        const Amount* next = word ? countOf(sentence, spots, i) : nullptr;
        if (next != nullptr && next->begin > first.end &&
            !saysOtherwise(sentence, first.end, next->begin)) {
            return next->value;
        }
    }
    return 0;
}

// The first figures that stand before a word for bedrooms, bathrooms and rooms; nullptr for none.
FactReader::RoomCounts FactReader::countsOf(const Sentence& sentence, const Spots& spots) {
    static const WordId kBed = tables().id("bed");
    static const WordId kBath = tables().id("bath");
    static const WordId kBedroom = tables().id("bedroom");
    static const WordId kBathroom = tables().id("bathroom");
    static const WordId kRoom = tables().id("room");
    RoomCounts counts;
    // "3b/1ba", "2b 1b": the first is of the bedrooms.
    const auto isB = [&](std::size_t i) {
        return lower(sentence, i) == "b" && sentence.tokens[i].glued;
    };
    for (std::size_t i = 1; i + 2 < sentence.tokens.size() && counts.beds == nullptr; ++i) {
        const std::size_t other = markIs(sentence, i + 1, '/') ? i + 3 : i + 2;
        const bool bath = other < sentence.tokens.size() && sentence.tokens[other].word == kBath;
        if (isB(i) && (isB(other) || bath)) {
            counts.beds = countOf(sentence, spots, i);
            counts.baths = countOf(sentence, spots, other);
        }
    }
    if (counts.beds == nullptr) {
        counts.beds = countBehind(sentence, spots, {kBed, kBedroom});
        counts.baths = countBehind(sentence, spots, {kBath, kBathroom});
        if (counts.beds != nullptr && counts.baths != nullptr) {
            return counts;
        }
        counts = {};
    }
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        const WordId word = sentence.tokens[i].word;
        const bool counted =
            word == kBed || word == kBedroom || word == kBath || word == kBathroom || word == kRoom;
        const Amount* count = counted && word != kUnknown ? countOf(sentence, spots, i) : nullptr;
        if (count == nullptr) {
            continue;
        }
        if (word == kBed || word == kBedroom) {
            counts.beds = counts.beds == nullptr ? count : counts.beds;
        } else if (word == kBath || word == kBathroom) {
            counts.baths = counts.baths == nullptr ? count : counts.baths;
        } else if (word == kRoom) {
            counts.rooms = counts.rooms == nullptr ? count : counts.rooms;
        }
    }
    // "Three bed, two and a half."
    for (const Amount& amount : spots.amounts) {
        const bool closes = amount.end >= sentence.tokens.size() ||
                            markIs(sentence, amount.end, '.') || markIs(sentence, amount.end, ',');
        if (counts.baths == nullptr && counts.beds != nullptr && amount.kind == AmountKind::Plain &&
            closes && amount.begin > counts.beds->end && amount.begin <= counts.beds->end + 2 &&
            lower(sentence, counts.beds->end).starts_with("bed") && amount.value >= 1000 &&
            amount.value <= 5000 && amount.value % 500 == 0) {
            counts.baths = &amount;
        }
    }
    return counts;
}

// "Two up, two down": the rooms upstairs are the bedrooms; 0 where it is not said.
std::int64_t FactReader::upAndDown(const Sentence& sentence, const Spots& spots) {
    for (std::size_t i = 0; i + 1 < spots.amounts.size(); ++i) {
        const Amount& up = spots.amounts[i];
        const Amount& down = spots.amounts[i + 1];
        if (up.kind == AmountKind::Plain && up.value >= 1000 && up.value <= 4000 &&
            lower(sentence, up.end) == "up" && down.begin <= up.end + 2 &&
            lower(sentence, down.end) == "down") {
            return up.value;
        }
    }
    return 0;
}

// Whether no other room or storey is told of that may count or not: "one bathroom and a loo",
// "upstairs three bedrooms".
bool FactReader::isPlainCount(const Sentence& sentence) {
    return std::none_of(sentence.tokens.begin(), sentence.tokens.end(), [](const Token& token) {
        return isOneOf(token.plain,
                       {"upstairs", "downstairs", "up",     "down",     "loo",       "lav",
                        "wc",       "toilet",     "shower", "powder",   "cloakroom", "en-suite",
                        "ensuite",  "attic",      "count",  "counting", "call",      "each",
                        "for",      "if",         "or",     "maybe"});
    });
}

// Keeps what a sentence counts of the house, or of one of two homes in it.
void FactReader::addRooms(const Sentence& sentence, const Spots& spots, const RoomCounts& counts,
                          std::int64_t bathsSaid, bool twice) {
    const Amount* beds = counts.beds;
    const Amount* baths = counts.baths;
    const Amount* rooms = counts.rooms;
    // Counts that were added up, or where more than one thing may count, are less sure; so are
    // those told after the walk, which somebody may yet put right.
    constexpr int kSum = 80;
    constexpr int kOpening = 16;
    const bool plain =
        taken_ <= kOpening && isPlainCount(sentence) && spots.objects.empty() && spots.acts.empty();
    const int outright = plain ? 93 : 86;
    if (beds != nullptr && !has("bedrooms")) {
        // "3+1 bd"
        const bool plus = beds->begin > 1 && markIs(sentence, beds->begin - 1, '+') &&
                          sentence.tokens[beds->begin - 2].kind == TokenKind::Number;
        const std::int64_t more = moreOf(sentence, beds->end) +
                                  moreCounted(sentence, spots, *beds, "bed") +
                                  (plus ? sentence.tokens[beds->begin - 2].value : 0);
        add(sentence, "bedrooms", countText(beds->value * (twice ? 2 : 1) + more),
            bathsSaid != 0 && more == 0 && !twice ? outright : kSum);
    }
    if (beds != nullptr && bathsSaid == 0 && saysOneBath(sentence) && !has("baths")) {
        add(sentence, "baths", "1", 80);
    }
    if (bathsSaid != 0 && !has("baths")) {
        const std::int64_t more =
            baths == nullptr
                ? 0
                : moreOf(sentence, baths->end) + moreCounted(sentence, spots, *baths, "bath");
        add(sentence, "baths", countText(bathsSaid + more),
            beds != nullptr && more == 0 && !twice && bathsSaid % 1000 % 500 == 0 ? outright
                                                                                  : kSum);
    }
    if (rooms != nullptr && rooms->value >= 3000) {
        add(sentence, "rooms", countText(rooms->value), 75);
    }
}

// "1975, three two, two car carport", "sixteen hundred feet, four and two": bedrooms and baths,
// said where the house is described.
bool FactReader::takeTwoCounts(const Sentence& sentence, const Spots& spots) {
    if (has("bedrooms") || !spots.acts.empty() || lastDeal_ + 1 < taken_) {
        return false;
    }
    for (std::size_t i = 0; i + 1 < spots.amounts.size(); ++i) {
        const Amount& beds = spots.amounts[i];
        const Amount& baths = spots.amounts[i + 1];
        const bool joined = baths.begin == beds.end ||
                            (baths.begin == beds.end + 1 && lower(sentence, beds.end) == "and");
        const bool setOff =
            beds.begin == 0 || sentence.tokens[beds.begin - 1].kind == TokenKind::Mark;
        const bool closes = baths.end >= sentence.tokens.size() ||
                            sentence.tokens[baths.end].kind == TokenKind::Mark;
        const bool counts = beds.kind == AmountKind::Plain && baths.kind == AmountKind::Plain &&
                            beds.value >= 1000 && beds.value <= 7000 && beds.value % 1000 == 0 &&
                            baths.value >= 1000 && baths.value <= 5000 && baths.value % 500 == 0;
        const bool words = sentence.tokens[beds.begin].kind == TokenKind::Word;
        if (joined && setOff && closes && counts && words) {
            add(sentence, "bedrooms", countText(beds.value), 80);
            add(sentence, "baths", countText(baths.value), 80);
            return true;
        }
    }
    return false;
}

// What is told of the rooms without a figure at "bedrooms" or "baths".
bool FactReader::takeUncounted(const Sentence& sentence, const Spots& spots, const Amount* rooms) {
    // "A full bath and a shower bath, so two."
    const std::int64_t sum = sumOf(sentence);
    if (sum > 0 && saysOneBath(sentence) && !has("baths")) {
        add(sentence, "baths", countText(sum), 80);
        return true;
    }
    if (takeTwoCounts(sentence, spots)) {
        return true;
    }
    const bool opening = taken_ <= 12 && spots.acts.empty() && spots.objects.empty();
    const bool known = has("built") || has("area_sqft") || has("purchase");
    if (rooms != nullptr && opening && known && rooms->value >= 3000 && !has("rooms")) {
        add(sentence, "rooms", countText(rooms->value), 80);
    }
    return false;
}

// "All three bedrooms get carpet", "Three bedrooms.", "upstairs there are five bedrooms": where
// work is spoken of, as many as the house has for want of a plainer count.
void FactReader::addAllBedrooms(const Sentence& sentence, const Spots& spots, const Amount& beds) {
    constexpr std::int64_t kLeast = 3000;
    constexpr std::int64_t kMost = 7000;
    constexpr int kSure = 60;
    const bool opens = beds.begin == 0 || sentence.tokens[beds.begin - 1].kind == TokenKind::Mark;
    const std::string_view before = opens ? "" : lower(sentence, beds.begin - 1);
    // "the three bedrooms in back", "three bedrooms up": some of them.
    const bool some =
        isOneOf(lower(sentence, beds.end + 1),
                {"in", "at", "on", "up", "upstairs", "down", "downstairs", "with", "over", "that"});
    const bool asks = markIs(sentence, sentence.tokens.size() - 1, '?');
    if ((opens || isOneOf(before, {"all", "the", "are", "okay", "of"})) && !some && !asks &&
        beds.value >= kLeast && beds.value <= kMost && beds.value % 1000 == 0) {
        addLoose(sentence, LooseFigure::Of::AllBeds, beds.value, countText(beds.value),
                 wordsBesideFigures(sentence, spots));
        loose_.back().source.sure = kSure;
    }
}

bool FactReader::takeRooms(const Sentence& sentence, const Spots& spots) {
    constexpr int kOpening = 16;
    const std::int64_t up = upAndDown(sentence, spots);
    if (up > 0 && taken_ <= 6 && !has("bedrooms") && !namesBedrooms(sentence)) {
        add(sentence, "bedrooms", countText(up), 80);
    }
    if (takeLabelled(sentence, spots)) {
        return true;
    }
    const RoomCounts counts = countsOf(sentence, spots);
    const Amount* beds = counts.beds;
    const Amount* baths = counts.baths;
    const Amount* rooms = counts.rooms;
    // "2bd/1ba each = 4/2": of each flat, not of the house.
    const bool figures = (beds == nullptr && baths == nullptr) || says(sentence, "each");
    if (figures && takeFigures(sentence, spots)) {
        return true;
    }
    // "each side is two bedrooms and one bath"
    const bool twice = beds != nullptr && baths != nullptr && ofEachUnit(sentence);
    const std::int64_t bathsSaid =
        (baths != nullptr ? bathsWithParts(sentence, *baths)
                          : std::max(bathAndAHalf(sentence), fullAndHalf(sentence))) *
        (twice ? 2 : 1);
    if (isPlanned(sentence)) {
        return false;
    }
    if (beds == nullptr && bathsSaid == 0) {
        return takeUncounted(sentence, spots, rooms);
    }
    // "Three beds.": of the house where the notes close.
    if (taken_ > kOpening && (beds == nullptr || bathsSaid == 0) && tellsFigures(sentence, spots)) {
        addLoose(sentence, beds != nullptr ? LooseFigure::Of::Beds : LooseFigure::Of::Baths, 0,
                 countText(beds != nullptr ? beds->value : bathsSaid),
                 wordsBesideFigures(sentence, spots));
    }
    // Counts of rooms alone may be of rooms that want work: they must stand early, without any.
    const bool ofHouse = has("area_sqft") || has("built") || has("purchase");
    const bool work = tellsWork(sentence, spots);
    const bool among = lastDeal_ == taken_ && spots.objects.empty() && !work;
    const bool early = among || (taken_ <= kOpening && (spots.objects.empty() || ofHouse) &&
                                 (!work || rooms != nullptr || lastDeal_ == taken_));
    if ((beds == nullptr || bathsSaid == 0) && !early) {
        if (beds != nullptr) {
            addAllBedrooms(sentence, spots, *beds);
        }
        return false;
    }
    // "Three bedrooms up, one down, so four."
    if (const std::int64_t sum = sumOf(sentence); sum > 0 && (beds == nullptr || bathsSaid == 0)) {
        add(sentence, beds != nullptr ? "bedrooms" : "baths", countText(sum), 85);
        return true;
    }
    // "Three up, one and a half baths."
    if (beds == nullptr && !has("bedrooms")) {
        for (const Amount& amount : spots.amounts) {
            if (amount.kind == AmountKind::Plain && amount.value >= 2000 && amount.value <= 6000 &&
                lower(sentence, amount.end) == "up" && markIs(sentence, amount.end + 1, ',')) {
                add(sentence, "bedrooms", countText(amount.value), 75);
            }
        }
    }
    addRooms(sentence, spots, counts, bathsSaid, twice);
    return true;
}

}  // namespace ledgerboard::intake
