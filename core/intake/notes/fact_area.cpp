// The fact that is the area of the house.
#include <algorithm>
#include <array>

#include "core/intake/notes/fact_words.h"
#include "core/intake/notes/facts.h"

namespace ledgerboard::intake {

namespace {

// "three bedrooms", "one bath"
bool namesRooms(const Sentence& sentence) {
    for (std::size_t i = 1; i < sentence.tokens.size(); ++i) {
        const std::string_view word = lower(sentence, i);
        if (word == "bedrooms" || word == "baths" || word == "beds" || word == "bathrooms" ||
            word == "bath" || word == "bed" || word == "br" || word == "bd") {
            return true;
        }
    }
    return false;
}

// "A ranch of 1,180 square feet and a two-story addition": the area may be of a part.
bool saysAddition(const Sentence& sentence) {
    return std::any_of(sentence.tokens.begin(), sentence.tokens.end(), [](const Token& token) {
        return isOneOf(token.plain, {"addition", "extension"});
    });
}

// Whether it tells the year or the rooms of the house.
bool describesHouse(const Sentence& sentence, const Spots& spots) {
    return namesRooms(sentence) ||
           std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
               const int year = yearOf(sentence, amount);
               return year != 0 && year < 2015;
           });
}

}  // namespace

// "Thirteen hundred feet even", "living area is 1,690": where the notes open, the house's own; in
// thousandths of a square foot, 0 where a figure says no area.
std::int64_t FactReader::looseArea(const Sentence& sentence, const Amount& amount,
                                   bool saysArea) const {
    constexpr int kOpening = 16;
    constexpr std::size_t kNear = 3;
    // "eighteen fifty on square feet"
    const bool follows = lower(sentence, amount.end) == "on" &&
                         lower(sentence, amount.end + 1) == "square" &&
                         amount.kind == AmountKind::Plain;
    if (follows && amount.value >= 500'000 && amount.value <= 6'000'000) {
        return amount.value;
    }
    if (amount.value < 500'000 || amount.value > 6'000'000 || yearOf(sentence, amount) != 0) {
        return 0;
    }
    const UnitRow* unit = unitOf(amount);
    const bool feet = unit != nullptr && unit->measure == Measure::Length && unit->name == "ft";
    bool named = false;
    for (std::size_t i = amount.begin > kNear ? amount.begin - kNear : 0; i < amount.begin; ++i) {
        const std::string_view word = lower(sentence, i);
        named = named || word == "area" || word == "footage" || word == "size";
    }
    const bool bare = amount.kind == AmountKind::Plain;
    // "Three bedroom two bath, fourteen hundred and fifty-six."
    const bool rooms = namesRooms(sentence);
    named = named || (isEarly(kOpening / 2) && rooms && !saysArea);
    // "Four bedrooms, two and a half baths, 2,700 feet.", where the notes close.
    return (feet && (isEarly(kOpening) || rooms)) || (bare && named) ? amount.value : 0;
}

namespace {

// Whether the first figure is taken back before the second: "fifty-nine, no, fifty-eight".
bool takenBackBetween(const Sentence& sentence, std::size_t begin, std::size_t end) {
    static constexpr std::array<std::string_view, 6> kWords = {"no",   "sorry",   "lie",
                                                               "wait", "scratch", "actually"};
    for (std::size_t i = begin; i < end; ++i) {
        if (isOneOf(lower(sentence, i), kWords)) {
            return true;
        }
    }
    return false;
}

// In thousandths of a square foot, whole feet.
std::int64_t toFeet(std::int64_t value, bool metres) {
    return metres ? (value * 10'764 / 1000 + 500) / 1000 * 1000 : value;
}

// A bare figure near enough to the area to be another reading of it.
bool isLikeArea(const Sentence& sentence, const Amount& amount, std::int64_t area) {
    return amount.kind == AmountKind::Plain && yearOf(sentence, amount) == 0 &&
           amount.value != area && amount.value > area / 5 * 4 && amount.value < area / 4 * 5;
}

}  // namespace

// "Sixty-six on the agent's.", right after the area: another reading, in the same unit.
bool FactReader::takeOtherArea(const Sentence& sentence, const Spots& spots) {
    constexpr int kNear = 2;
    constexpr std::size_t kBrief = 16;
    if (area_ == 0 || taken_ - areaAt_ > kNear || taken_ == areaAt_ || !spots.acts.empty() ||
        !spots.objects.empty() || lastDeal_ == taken_ || sentence.tokens.size() > kBrief) {
        return false;
    }
    for (const Amount& amount : spots.amounts) {
        if (isLikeArea(sentence, amount, area_) && amount.value > area_ / 8 * 7 &&
            amount.value < area_ / 7 * 8) {
            add(sentence, "area_sqft", countText(toFeet(amount.value, areaMetres_)), 75);
            return true;
        }
    }
    return false;
}

// What is taken back bears the unit: "Fifty-four square metres, sorry, fifty-five."
std::int64_t FactReader::mendedArea(const Sentence& sentence, const Amount& amount) {
    for (const Amount& said : amountsIn(sentence.whole)) {
        const UnitRow* unit = unitOf(said);
        const bool area = unit != nullptr && (unit->name == "sq ft" || unit->name == "sq m");
        if (area && isLikeArea(sentence, amount, said.value)) {
            return toFeet(amount.value, unit->name == "sq m");
        }
    }
    return 0;
}

// "3/2 1,440.", "3-1.5. 1,310.", "1,690 feet": a figure of that size beside the rooms, without its
// unit.
void FactReader::addLooseArea(const Sentence& sentence, const Spots& spots) {
    constexpr int kOpening = 8;
    const bool figures = tellsFigures(sentence, spots);
    if (!spots.objects.empty() || !spots.acts.empty() || (!isEarly(kOpening) && !figures)) {
        return;
    }
    for (const Amount& amount : spots.amounts) {
        const UnitRow* unit = unitOf(amount);
        const bool feet = unit != nullptr && unit->name == "ft";
        const bool bare = amount.kind == AmountKind::Plain && yearOf(sentence, amount) == 0;
        const bool alone = feet || isEarly(kOpening) || spots.amounts.size() == 1;
        if ((feet || bare) && alone && amount.value >= 500'000 && amount.value <= 5'000'000 &&
            amount.value % 1000 == 0 && (feet || amount.value >= 1'000'000)) {
            addLoose(sentence, LooseFigure::Of::Area, amount.value / 1000, countText(amount.value),
                     wordsBesideFigures(sentence, spots));
        }
    }
}

// Keeps the area a figure tells outright, and another reading of it in the same sentence.
void FactReader::tellArea(const Sentence& sentence, const Spots& spots, const Amount& amount,
                          bool metres) {
    const std::int64_t feet = toFeet(amount.value, metres);
    // "says 1,610, I measured and got 1,540": a bare figure of the same size.
    std::int64_t other = 0;
    bool instead = false;
    for (const Amount& next : spots.amounts) {
        if (isLikeArea(sentence, next, amount.value)) {
            other = toFeet(next.value, metres);
            instead = next.begin > amount.end && takenBackBetween(sentence, amount.end, next.begin);
        }
    }
    if (!instead) {
        // "1,080 sq ft up", "900 sf each": of a part.
        const std::string_view next = lower(sentence, amount.end);
        const bool part = next == "up" || next == "upstairs" || next == "each" || next == "per";
        // Of a house that is described beside it it is sure; not what was turned from metres.
        const bool opinion = says(sentence, "think") || says(sentence, "say") ||
                             says(sentence, "measure") || saysAddition(sentence);
        const bool outright = !metres && !opinion && other == 0 && spots.acts.empty() &&
                              describesHouse(sentence, spots);
        add(sentence, "area_sqft", countText(feet), part ? 75 : outright ? 92 : 86);
    }
    if (other != 0) {
        add(sentence, "area_sqft", countText(other), 80);
    }
    area_ = amount.value;
    areaMetres_ = metres;
    areaAt_ = taken_;
}

bool FactReader::takeArea(const Sentence& sentence, const Spots& spots) {
    bool any = takeOtherArea(sentence, spots);
    const bool saysArea =
        std::any_of(spots.amounts.begin(), spots.amounts.end(), [](const Amount& amount) {
            const UnitRow* unit = unitOf(amount);
            return unit != nullptr && (unit->name == "sq ft" || unit->name == "sq m");
        });
    // "Fourteen hundred and some, let me look, fourteen hundred and fifty-six": the last.
    for (std::size_t i = spots.amounts.size(); i-- > 0;) {
        const Amount& amount = spots.amounts[i];
        std::int64_t feet = has("area_sqft") ? 0 : looseArea(sentence, amount, saysArea);
        feet = feet == 0 && !has("area_sqft") ? mendedArea(sentence, amount) : feet;
        const bool work = !spots.acts.empty() || (taken_ > 16 && !spots.objects.empty());
        if (feet > 0 && (!work || (spots.objects.empty() && taken_ <= 8))) {
            add(sentence, "area_sqft", countText(feet), 80);
            return true;
        }
    }
    addLooseArea(sentence, spots);
    for (std::size_t i = 0; i < spots.amounts.size(); ++i) {
        const Amount& amount = spots.amounts[i];
        const UnitRow* unit = unitOf(amount);
        // "Hundred and four square, three bedrooms": metres.
        const bool square = unit != nullptr && unit->name == "square" && namesRooms(sentence) &&
                            amount.value >= 40'000;
        const bool area = unit != nullptr && unit->measure == Measure::Area &&
                          (unit->name == "sq ft" || unit->name == "sq m" || square);
        if (!area) {
            continue;
        }
        const bool metres = unit->name == "sq m" || square;
        const std::int64_t feet = toFeet(amount.value, metres);
        // A sentence that tells the year or the rooms beside it describes the house.
        const bool describes = describesHouse(sentence, spots);
        const bool opening =
            isEarly(14) && feet >= 600'000 && (spots.acts.empty() || taken_ <= 4 || describes);
        const bool plainly = says(sentence, "house") && describes;
        const bool ofObject = !plainly && ((!spots.objects.empty() && !opening) ||
                                           (!isEarly(14) && !spots.acts.empty()));
        if (feet < 450'000 || feet > 20'000'000 || ofObject || (taken_ > 40 && has("area_sqft"))) {
            continue;
        }
        // "780 square feet.", once the walk is begun: of a floor, unless it stands among facts.
        constexpr int kTop = 6;
        const bool ofHouse = describes || says(sentence, "house") || says(sentence, "flat") ||
                             lastDeal_ + 1 >= taken_;
        if (taken_ > kTop && !ofHouse) {
            addLoose(sentence, LooseFigure::Of::Area, feet / 1000, countText(feet),
                     wordsBesideFigures(sentence, spots));
            continue;
        }
        tellArea(sentence, spots, amount, metres);
        any = true;
    }
    return any;
}

}  // namespace ledgerboard::intake
