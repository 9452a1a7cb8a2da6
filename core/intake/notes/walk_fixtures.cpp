// When is the name of a room a fixture of the room where the speaker stands?
#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/walk.h"

namespace ledgerboard::intake {

namespace {

// "The loo is next door": a room of its own, whose name ends before token `at`.
bool liesElsewhere(const Sentence& sentence, std::size_t at) {
    at += wordIs(sentence, at, "is") ? 1 : 0;
    for (const std::string_view word :
         {"next", "separ", "across", "along", "off", "down", "in", "on", "at", "under"}) {
        if (wordIs(sentence, at, word)) {
            return true;
        }
    }
    return false;
}

// "corner bath", "pink bath": what a tub is like, and not which bathroom.
bool tellsShape(const Sentence& sentence, std::size_t at) {
    static const std::vector<std::string_view> kShapes = {
        "corner",  "old",   "big",   "large", "small", "little",  "blue",    "pink",  "green",
        "yellow",  "white", "brown", "gray",  "grey",  "orange",  "purple",  "tiny",  "red",
        "avocado", "peach", "cream", "steel", "iron",  "plastic", "acrylic", "enamel"};
    return isOneOf(sentence.tokens[at].plain, kShapes);
}

// "loo's fine", "Bath, loo, basin.", "Loo and basin are white"
bool isOneOfFixtures(const Sentence& sentence, const Spots& spots, const Span& name) {
    if (sentence.tokens[name.end - 1].text.ends_with("'s") && name.begin > 0) {
        return true;
    }
    const auto joins = [&](std::size_t at) {
        return at < sentence.tokens.size() &&
               (isMark(sentence.tokens[at], ",&") || wordIs(sentence, at, "and"));
    };
    return std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
        const bool after = object.span.begin == name.end + 1 && joins(name.end);
        const bool before = object.span.end + 1 == name.begin && joins(object.span.end);
        const bool longer = object.span.begin == name.begin && object.span.end > name.end;
        return after || before || longer;
    });
}

// "MBA van ok, wc new", "Bathroom: the bath's fine": the line opens with the room.
bool opensWithBath(const Sentence& sentence, const Spots& spots) {
    if (spots.spaces.empty()) {
        return false;
    }
    const SpaceSpot& room = spots.spaces.front();
    const bool label =
        room.span.end < sentence.tokens.size() && isMark(sentence.tokens[room.span.end], ":");
    return room.span.begin == 0 && room.key.find("bath") != std::string::npos &&
           (sentence.terse || label);
}

// Whether the sentence is more than a name: "WC > 240" is said of the fixture.
bool saysMore(const Sentence& sentence) {
    const auto words =
        std::count_if(sentence.tokens.begin(), sentence.tokens.end(),
                      [](const Token& token) { return token.kind == TokenKind::Word; });
    return words > 1 || sentence.tokens.size() > 2;
}

// "The roof on it's fine", "its roof": of what was spoken of just before.
bool isOfIt(const Sentence& sentence, const Span& name) {
    if (name.begin > 0 && wordIs(sentence, name.begin - 1, "it")) {
        return true;
    }
    const std::size_t at = name.end;
    const bool joins =
        wordIs(sentence, at, "on") || wordIs(sentence, at, "over") || wordIs(sentence, at, "of");
    return joins && (wordIs(sentence, at + 1, "it") || wordIs(sentence, at + 1, "that") ||
                     wordIs(sentence, at + 1, "there") || wordIs(sentence, at + 1, "them"));
}

// "House roof's okay", "the main roof"
bool isOfHouse(const Sentence& sentence, const Span& name) {
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        if (wordIs(sentence, i, "hous") || wordIs(sentence, i, "main")) {
            return i + 1 == name.begin || i >= name.end;
        }
    }
    return false;
}

}  // namespace

// "Garage. One car. Roof's bad.": a building beside the house has a roof of its own.
void Walk::placeRoofs(const Sentence& sentence, Spots& spots) const {
    static const std::uint32_t kRoof = tables().objectNamed("roof");
    static const std::uint32_t kFlatRoof = tables().objectNamed("flat roof");
    constexpr int kLately = 2;
    const std::vector<std::string>& keys = lineKeys_.empty() ? current_ : lineKeys_;
    const std::string here = keys.size() == 1 ? keys.front() : std::string();
    // A shed is but a thing of the yard, where no heading names it.
    if (!isOutbuilding(here) || (here == "shed" && headingIndent_ < 0)) {
        return;
    }
    for (ObjectSpot& object : spots.objects) {
        const bool roof = object.object == kRoof || object.object == kFlatRoof;
        if (!roof || !object.place.empty()) {
            continue;
        }
        if (isOfHouse(sentence, object.span)) {
            object.place = "exterior";
        } else if (sinceMove_ <= kLately || isOfIt(sentence, object.span)) {
            object.place = here;
        }
    }
}

// "Bath, basin and WC all out", said in a bathroom: fixtures, not rooms.
void Walk::takeFixtures(const Sentence& sentence, Spots& spots) const {
    static const std::uint32_t kTub = tables().objectNamed("bathtub");
    static const std::uint32_t kToilet = tables().objectNamed("toilet");
    const std::vector<std::string>& keys =
        lineKeys_.empty() || sentence.opensLine ? current_ : lineKeys_;
    const bool here = !keys.empty() && keys.front().find("bath") != std::string::npos;
    const bool opens = !here && opensWithBath(sentence, spots);
    if (!(here || opens) || !saysMore(sentence) || sentence.heading) {
        return;
    }
    const bool labelled = opensWithLabel(sentence, spots);
    std::erase_if(spots.spaces, [&](const SpaceSpot& spot) {
        if ((opens || labelled) && spot.span.begin == 0) {
            return false;
        }
        std::string word = sentence.tokens[spot.span.end - 1].plain;
        if (word.ends_with("'s")) {
            word.resize(word.size() - 2);  // "the loo's fine"
        }
        const bool article =
            spot.span.end == spot.span.begin + 2 && wordIs(sentence, spot.span.begin, "the");
        // "In the small bath …": nobody stands in a tub.
        const bool in = spot.span.begin > 1 && wordIs(sentence, spot.span.begin - 2, "in") &&
                        wordIs(sentence, spot.span.begin - 1, "the");
        // "The small bath" of a house that has more than one.
        const bool small = houseUnits_.baths && (wordIs(sentence, spot.span.begin, "small") ||
                                                 wordIs(sentence, spot.span.begin, "little"));
        const bool shaped = spot.span.end == spot.span.begin + 2 && word == "bath" && !in &&
                            !small && find(spot.key) == nullptr &&
                            tellsShape(sentence, spot.span.begin);
        const bool tub = word == "bath" && (spot.key == "bathroom" || shaped);
        const auto overlaps = [&](const ObjectSpot& object) {
            return object.span.begin < spot.span.end + 1 && spot.span.begin < object.span.end;
        };
        const auto over = std::find_if(spots.objects.begin(), spots.objects.end(), overlaps);
        const bool taken = over != spots.objects.end();
        // "The loo's fine": the toilet was seen as well.
        const bool same =
            taken && over->span.begin == spot.span.begin && over->span.end == spot.span.end;
        // "Toilet (separate)"
        const bool apart = word == "toilet" && !spot.headingOnly;
        if (taken && !apart && over->object == kToilet && over->span.end >= spot.span.end &&
            (article || same || isOneOfFixtures(sentence, spots, spot.span)) &&
            !liesElsewhere(sentence, spot.span.end)) {
            return true;
        }
        if (shaped && taken && over->object == kTub) {
            return true;
        }
        // "WC - sep. pan gd" under "BTHRM - …": a label of its own.
        const bool label = sentence.labelled && spot.span.begin == 0 &&
                           spot.span.end < sentence.tokens.size() &&
                           isMark(sentence.tokens[spot.span.end], ":-");
        const bool named =
            label || (spot.span.begin > 0 && wordIs(sentence, spot.span.begin - 1, "this"));
        if ((spot.span.end != spot.span.begin + 1 && !article && !shaped) || taken || named ||
            !(tub || word == "wc" || word == "loo")) {
            return false;
        }
        ObjectSpot object;
        object.span = spot.span;
        object.object = tub ? kTub : kToilet;
        const auto at = std::find_if(
            spots.objects.begin(), spots.objects.end(),
            [&](const ObjectSpot& other) { return other.span.begin > spot.span.begin; });
        spots.objects.insert(at, object);
        return true;
    });
}

}  // namespace ledgerboard::intake
