#include "core/intake/notes/role_signs.h"

#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/walk_passed.h"

namespace ledgerboard::intake {

namespace {

// "then you drop down into the …", "we come through to the …": somebody goes there.
bool goesThere(const Sentence& sentence, std::size_t at) {
    constexpr std::size_t kFar = 7;
    for (std::size_t i = at > kFar ? at - kFar : 0; i < at; ++i) {
        for (const std::string_view word :
             {"drop", "go", "come", "step", "walk", "head", "climb", "cross", "get", "pass", "turn",
              "open", "duck", "squeez", "up", "down", "back", "through", "on"}) {
            if (wordIs(sentence, i, word)) {
                return true;
            }
        }
    }
    return false;
}

// "There's one bedroom, and it wants carpet.", "… a loo, which needs a new pan": what follows the
// name of the room is said of it.
bool goesOnAbout(const Sentence& sentence, std::size_t at) {
    at += at < sentence.tokens.size() && isMark(sentence.tokens[at], ",-") ? 1 : 0;
    at += wordIs(sentence, at, "and") || wordIs(sentence, at, "but") ? 1 : 0;
    return wordIs(sentence, at, "it") || wordIs(sentence, at, "which") ||
           wordIs(sentence, at, "where");
}

// "A kitchenette is tucked in one corner.", "an internal bathroom with no fan": there it is.
bool opensWithSuch(const Sentence& sentence, const SpaceSpot& spot) {
    static const std::vector<std::string_view> kThere = {
        "with", "opens", "sits", "lies", "leads", "follows", "comes", "runs", "stands"};
    constexpr std::size_t kOpens = 2;
    const std::size_t end = spot.span.end;
    if (spot.span.begin > kOpens || end + 1 >= sentence.tokens.size() ||
        !(wordIs(sentence, 0, "a") || wordIs(sentence, 0, "an"))) {
        return false;
    }
    const bool tucked = wordIs(sentence, end, "is") && wordIs(sentence, end + 1, "tuck");
    return tucked || isOneOf(sentence.tokens[end].plain, kThere);
}

}  // namespace

bool isAdverb(const Sentence& sentence, const Spots& spots, std::size_t index) {
    const Span& name = spots.spaces[index].span;
    if (!wordIs(sentence, name.begin, "outsid") || name.end != name.begin + 1 || name.begin == 0 ||
        sentence.tokens[name.begin - 1].kind == TokenKind::Mark) {
        return false;
    }
    // "the old outside privy"
    if (index > 0 && wordIs(sentence, name.begin - 1, "old")) {
        return true;
    }
    for (const std::string_view word : {"go", "head", "step", "now", "okay", "and", "the", "so",
                                        "then", "back", "here", "right", "come"}) {
        if (wordIs(sentence, name.begin - 1, word)) {
            return false;
        }
    }
    return true;
}

bool opensParagraph(const Sentence& sentence, const SpaceSpot& spot) {
    const bool place = spot.kind == SpaceKind::Room || spot.key == "carport" ||
                       spot.key == "deck" || spot.key == "balcony" || spot.key.ends_with("porch");
    return sentence.opensLine && !sentence.bullet && !sentence.alone && !sentence.heading &&
           !sentence.terse && !sentence.spoken && place && spot.span.begin <= 1 &&
           (spot.span.begin == 0 || wordIs(sentence, 0, "the"));
}

bool opensInBreath(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot,
                   bool inside) {
    const std::size_t begin = spot.span.begin;
    return spot.kind == SpaceKind::Room && (!inside || (sentence.opensLine && begin == 0)) &&
           isBreathless(sentence) && !afterPreposition(sentence, spots, begin);
}

bool isAtticLadder(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    static const std::uint32_t kLadder = tables().objectNamed("attic ladder");
    return spot.key == "attic stairs" && !sentence.heading && !spots.acts.empty() &&
           std::any_of(spots.objects.begin(), spots.objects.end(),
                       [](const ObjectSpot& object) { return object.object == kLadder; });
}

bool isThingOfHall(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    // Where a paragraph begins with them, they are what it is about.
    if (spot.key != "stairs" || sentence.heading || opensParagraph(sentence, spot)) {
        return false;
    }
    // "Stairs up to the second floor.": which way they go.
    if (wordIs(sentence, spot.span.end, "up") || wordIs(sentence, spot.span.end, "down")) {
        return false;
    }
    // "The staircase stays"
    const bool onlyStairs =
        !spots.acts.empty() && !spots.objects.empty() &&
        std::all_of(spots.objects.begin(), spots.objects.end(), [](const ObjectSpot& object) {
            return tables().objects[object.object].name == "stairs";
        });
    // "stairs R/R": what is done to them follows at once.
    return onlyStairs || std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
               const ActRow& row = tables().acts[act.row];
               return act.span.begin == spot.span.end && !(row.fresh && row.side == Side::After);
           });
}

bool thereIsSuch(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    const std::size_t begin = spot.span.begin;
    std::size_t lead = begin;
    while (lead > 0 && (wordIs(sentence, lead - 1, "one") || wordIs(sentence, lead - 1, "just") ||
                        wordIs(sentence, lead - 1, "onli"))) {
        --lead;
    }
    const bool only = lead < begin && lead > 1 && wordIs(sentence, lead - 2, "there");
    const bool thereIs = only || (begin > 2 && (wordIs(sentence, begin - 3, "there") ||
                                                wordIs(sentence, begin - 2, "there")));
    const bool idle = std::none_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
        return tables().acts[act.row].weight > 1 && tables().acts[act.row].side != Side::Edge;
    });
    return thereIs && spot.kind == SpaceKind::Room &&
           (sentence.tokens.size() > 14 || idle || goesOnAbout(sentence, spot.span.end)) &&
           !afterPreposition(sentence, spots, begin);
}

bool liesThatWay(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    static const std::vector<std::string_view> kSides = {"left",  "right", "end", "back",
                                                         "front", "rear",  "top", "bottom"};
    static const std::vector<std::string_view> kWays = {
        "opposite", "behind", "beyond",  "past",  "across",   "through", "off",    "above",
        "below",    "beside", "further", "along", "straight", "next",    "halfway"};
    constexpr std::size_t kFar = 7;
    std::size_t at = spot.span.begin;
    while (at > 0 && (wordIs(sentence, at - 1, "the") || wordIs(sentence, at - 1, "a") ||
                      wordIs(sentence, at - 1, "an") || wordIs(sentence, at - 1, "our"))) {
        --at;
    }
    const bool parted =
        at > 1 && (isMark(sentence.tokens[at - 1], ",-") || wordIs(sentence, at - 1, "that") ||
                   wordIs(sentence, at - 1, "it"));
    if (!parted || at > kFar || sentence.bullet || sentence.heading || spot.headingOnly ||
        !(spot.kind == SpaceKind::Room || spot.kind == SpaceKind::Outside)) {
        return false;
    }
    const auto before = [&](const auto& named) {
        return std::any_of(named.begin(), named.end(),
                           [&](const auto& one) { return one.span.begin < at; });
    };
    const std::size_t from = skipSmall(sentence, spots, 0);
    const bool side = (wordIs(sentence, 0, "to") || wordIs(sentence, 0, "on") ||
                       wordIs(sentence, 0, "at") || wordIs(sentence, 0, "in")) &&
                      isOneOf(sentence.tokens[at - 2].plain, kSides);
    const bool way = from < at && isOneOf(sentence.tokens[from].plain, kWays);
    return (side || way) && !before(spots.objects) && !before(spots.acts);
}

bool isOwnWith(const Sentence& sentence, const SpaceSpot& spot) {
    std::size_t at = spot.span.end;
    at += at < sentence.tokens.size() && isMark(sentence.tokens[at], ",") ? 1 : 0;
    return spot.span.begin > 0 && sentence.tokens[spot.span.begin - 1].plain == "own" &&
           spot.kind == SpaceKind::Room && wordIs(sentence, at, "with");
}

bool isYetToBe(const Sentence& sentence, const SpaceSpot& spot) {
    const std::size_t begin = spot.span.begin;
    if (begin > 1 && sentence.tokens[begin - 1].text.ends_with("'s") &&
        (wordIs(sentence, begin - 2, "a") || wordIs(sentence, begin - 2, "an"))) {
        return true;
    }
    return begin > 0 && !opensWithSuch(sentence, spot) &&
           (wordIs(sentence, begin - 1, "a") || wordIs(sentence, begin - 1, "an") ||
            wordIs(sentence, begin - 1, "anoth") || wordIs(sentence, begin - 1, "extra")) &&
           (spot.kind == SpaceKind::Room || spot.kind == SpaceKind::Outside);
}

bool isMadeInto(const Sentence& sentence, const SpaceSpot& spot) {
    const std::size_t begin = spot.span.begin;
    if (begin < 4 || spot.kind != SpaceKind::Room || spot.headingOnly ||
        !(wordIs(sentence, begin - 1, "a") || wordIs(sentence, begin - 1, "an")) ||
        !wordIs(sentence, begin - 2, "into")) {
        return false;
    }
    const std::string& made = sentence.tokens[begin - 3].plain;
    const std::string& was = sentence.tokens[begin - 4].plain;
    return (made == "turned" || made == "made" || made == "converted") &&
           (was == "was" || was == "been" || was == "is" || was == "got" || was == "were");
}

bool isBeyond(const Sentence& sentence, const Spots& spots, std::size_t begin) {
    return std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
        return object.span.end < begin && object.span.end + 3 >= begin &&
               (wordIs(sentence, object.span.end, "onto") ||
                wordIs(sentence, object.span.end, "into") ||
                wordIs(sentence, object.span.end, "to"));
    });
}

bool isLaidThrough(const Sentence& sentence, const Spots& spots, std::size_t begin) {
    constexpr std::size_t kFar = 7;
    std::size_t at = begin;
    while (at > 0 && wordIs(sentence, at - 1, "the")) {
        --at;
    }
    // "… and carry that through the hall, the half bath and the kitchen"
    constexpr std::size_t kNear = 4;
    for (std::size_t i = at > kNear ? at - kNear : 0; i + 1 < at; ++i) {
        if (wordIs(sentence, at - 1, "through") &&
            (wordIs(sentence, i, "carri") || wordIs(sentence, i, "run") ||
             wordIs(sentence, i, "extend") || wordIs(sentence, i, "continu"))) {
            return true;
        }
    }
    return at > 0 && wordIs(sentence, at - 1, "through") &&
           std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
               return tables().acts[act.row].fresh && act.span.end <= at &&
                      act.span.end + kFar >= at;
           });
}

bool isPrimaryToo(const Sentence& sentence, const Spots& spots, std::size_t index) {
    const SpaceSpot& spot = spots.spaces[index];
    std::size_t at = spot.span.begin;
    while (at > 0 && wordIs(sentence, at - 1, "the")) {
        --at;
    }
    const bool is =
        at > 0 && (wordIs(sentence, at - 1, "is") || sentence.tokens[at - 1].text.ends_with("'s"));
    return spot.key == "primary bedroom" && is && index > 0 &&
           isBedroom(spots.spaces[index - 1].key);
}

bool talkTurnsTo(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    const std::size_t begin = spot.span.begin;
    const bool worked = std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        return act.span.begin < begin && tables().acts[act.row].weight > 0;
    });
    const bool things = !spots.objects.empty() && spots.objects.front().span.begin < begin;
    const std::size_t lead =
        begin > 0 && spots.endOf(Cue::Small, begin - 1) == begin ? begin - 1 : begin;
    const bool opensClause =
        lead > 0 && (isMark(sentence.tokens[lead - 1], ",;:-") ||
                     wordIs(sentence, lead - 1, "and") || wordIs(sentence, lead - 1, "but"));
    const bool is = spots.endOf(Cue::Passive, spot.span.end) > spot.span.end ||
                    wordIs(sentence, spot.span.end, "has") ||
                    wordIs(sentence, spot.span.end, "have");
    return spot.kind == SpaceKind::Room && opensClause && is && !worked && !things;
}

bool isStoreyTurnedTo(const Sentence& sentence, const SpaceSpot& spot) {
    constexpr std::size_t kOpens = 2;
    return spot.kind == SpaceKind::Level && sentence.opensLine && !sentence.terse &&
           spot.span.begin > 0 && spot.span.begin <= kOpens && wordIs(sentence, 0, "on") &&
           spot.span.end < sentence.tokens.size() && isMark(sentence.tokens[spot.span.end], ":,");
}

bool turnsByThing(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot,
                  const ObjectSpot& object) {
    static const std::vector<std::string_view> kKitchen = {
        "cabinets", "countertop", "sink", "stove", "backsplash", "kitchen island"};
    static const std::vector<std::string_view> kBath = {"vanity", "bathtub", "toilet", "shower",
                                                        "sink"};
    const bool kitchen = spot.key == "kitchen";
    const std::vector<std::string_view>& things = kitchen ? kKitchen : kBath;
    return (kitchen || isBath(spot.key)) && !sentence.bullet && !sentence.terse &&
           !sentence.alone && spot.span.begin <= 1 && &spots.spaces.front() == &spot &&
           isOneOf(tables().objects[object.object].name, things);
}

bool isExteriorOfParagraph(const Sentence& sentence, const Spots& spots, std::size_t index) {
    const SpaceSpot& spot = spots.spaces[index];
    return spot.key == "exterior" && sentence.opensParagraph && spot.span.begin == 0 &&
           std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
               return object.span.begin == spot.span.end;
           });
}

bool isSteppedInto(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    const std::size_t begin = spot.span.begin;
    const bool before =
        std::any_of(spots.objects.begin(), spots.objects.end(),
                    [&](const ObjectSpot& object) { return object.span.end <= begin; });
    return spot.kind == SpaceKind::Room && stepsInto(sentence, begin) &&
           (isBreathless(sentence) || (!before && goesThere(sentence, begin)));
}

bool onlySaysWhich(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    const std::size_t behind = spot.span.end;
    return sentence.terse && behind < sentence.tokens.size() &&
           sentence.tokens[behind].kind == TokenKind::Word &&
           std::none_of(spots.acts.begin(), spots.acts.end(),
                        [&](const ActSpot& act) { return act.span.holds(behind); }) &&
           std::none_of(spots.cues.begin(), spots.cues.end(),
                        [&](const CueSpot& cue) { return cue.span.begin == behind; });
}

bool isWhichFloor(const Sentence& sentence, std::size_t begin) {
    return sentence.terse && begin > 0 && sentence.tokens[begin - 1].kind == TokenKind::Word &&
           !wordIs(sentence, begin - 1, "and") && !wordIs(sentence, begin - 1, "the");
}

bool isSameAgain(const Sentence& sentence, const Spots& spots, std::size_t index) {
    const Span& name = spots.spaces[index].span;
    for (std::size_t i = 0; i < index; ++i) {
        const Span& other = spots.spaces[i].span;
        const bool alike = headOf(spots.spaces[i].key) == headOf(spots.spaces[index].key);
        const bool is = wordIs(sentence, other.end, "is") ||
                        sentence.tokens[other.end - 1].text.ends_with("'s");
        const bool parted = name.begin > 0 && isMark(sentence.tokens[name.begin - 1], ",;");
        const bool primary = spots.spaces[index].key == "primary bedroom";
        if (alike && is && !parted && !primary && name.begin <= other.end + 5 &&
            name.begin > other.end) {
            return true;
        }
    }
    return false;
}

bool opensListLine(const Sentence& sentence, const SpaceSpot& spot, const ObjectSpot& object) {
    const Span& name = spot.span;
    const bool longer = object.span.begin <= name.end && object.span.end > name.end;
    return sentence.bullet && sentence.opensLine && name.begin == 0 && longer &&
           tables().objects[object.object].family != "trouble" &&
           !sentence.tokens[object.span.end - 1].text.ends_with("'s") &&
           (spot.kind == SpaceKind::Room || spot.kind == SpaceKind::Outside ||
            spot.kind == SpaceKind::Group);
}

bool isStopped(const Spots& spots, const Span& name) {
    return std::any_of(spots.cues.begin(), spots.cues.end(), [&](const CueSpot& cue) {
        return cue.cue == Cue::Stop && cue.span.overlaps(name) &&
               (cue.span.begin < name.begin || cue.span.end > name.end);
    });
}

bool isKnockedThrough(const Sentence& sentence, const Spots& spots, const Span& name) {
    return std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        return act.span.end > act.span.begin + 1 && act.span.end <= name.begin &&
               act.span.end + 3 >= name.begin && tables().acts[act.row].weight > 1 &&
               wordIs(sentence, act.span.end - 1, "through");
    });
}

bool isSpeakersOwn(const Sentence& sentence, const SpaceSpot& spot) {
    const std::size_t at = spot.span.begin;
    return at > 1 && wordIs(sentence, at - 1, "my") &&
           (wordIs(sentence, at - 2, "in") || wordIs(sentence, at - 2, "at")) &&
           spot.kind == SpaceKind::Outside;
}

bool isStoreyOfRoom(const Sentence& sentence, const Spots& spots, std::size_t index) {
    if (index == 0 || spots.spaces[index].kind != SpaceKind::Level ||
        spots.spaces[index - 1].kind != SpaceKind::Room) {
        return false;
    }
    const std::size_t begin = spots.spaces[index].span.begin;
    const std::size_t end = spots.spaces[index - 1].span.end;
    return (end == begin && sentence.tokens[begin - 1].text.ends_with("'s")) ||
           (end + 1 == begin && wordIs(sentence, begin - 1, "is"));
}

bool othersCallItSo(const Sentence& sentence, std::size_t begin) {
    return begin > 1 && wordIs(sentence, begin - 1, "it") && wordIs(sentence, begin - 2, "call");
}

bool isWorkedOn(const Spots& spots, std::size_t begin) {
    return std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        std::size_t to = act.span.end;
        while (to < begin && spots.endOf(Cue::Small, to) > to) {
            to = spots.endOf(Cue::Small, to);
        }
        return to == begin && tables().acts[act.row].object != kNone;
    });
}

bool headsRow(const Sentence& sentence, const Spots& spots, std::size_t index) {
    const Span& name = spots.spaces[index].span;
    if (name.begin == 0 || index + 1 >= spots.spaces.size() ||
        spots.spaces[index + 1].span.begin > name.end + 3) {
        return false;
    }
    return isMark(sentence.tokens[name.begin - 1], ":") ||
           std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
               return act.span.end == name.begin && tables().acts[act.row].side == Side::After &&
                      !tables().acts[act.row].fresh;
           });
}

bool isExcepted(const Sentence& sentence, const Spots& spots, std::size_t at) {
    static const std::vector<std::string_view> kLeads = {"for", "from", "than", "in", "the",
                                                         "my",  "that", "of",   "on"};
    const auto leads = [&](std::size_t i) {
        return spots.endOf(Cue::Small, i) == i + 1 || isOneOf(sentence.tokens[i].plain, kLeads);
    };
    std::size_t from = at;
    while (from > 0 && leads(from - 1) && sentence.tokens[from - 1].plain != "but") {
        --from;
    }
    if (from == 0) {
        return false;
    }
    const std::string& word = sentence.tokens[from - 1].plain;
    static const std::vector<std::string_view> kExcept = {"except", "excluding", "bar", "minus"};
    const bool apart =
        (word == "apart" || word == "aside" || word == "other") && from < at &&
        (sentence.tokens[from].plain == "from" || sentence.tokens[from].plain == "than");
    const bool butFor = word == "but" && from < at && sentence.tokens[from].plain == "for";
    // "all the bedrooms but the back one"
    const bool all = word == "but" && !spots.spaces.empty() &&
                     spots.spaces.front().kind == SpaceKind::Group && at > from &&
                     spots.spaces.front().span.end + 1 == from;
    return apart || butFor || all || isOneOf(word, kExcept);
}

bool leadsRow(const Sentence& sentence, const Spots& spots, std::size_t index) {
    const SpaceSpot& spot = spots.spaces[index];
    const std::size_t next = spots.spaces[index + 1].span.begin;
    bool joined = false;
    for (std::size_t i = spot.span.end; i < next; ++i) {
        const bool joint = isMark(sentence.tokens[i], ",&+") || wordIs(sentence, i, "and");
        if (!joint && spots.endOf(Cue::Small, i) <= i) {
            return false;
        }
        joined = joined || joint;
    }
    std::size_t at = spot.span.begin;
    while (at > 0 && spots.endOf(Cue::Small, at - 1) == at && !wordIs(sentence, at - 1, "of")) {
        --at;
    }
    const bool covers =
        at > 0 && (wordIs(sentence, at - 1, "through") || wordIs(sentence, at - 1, "into") ||
                   wordIs(sentence, at - 1, "of") || wordIs(sentence, at - 1, "to"));
    return joined && covers && spot.kind == SpaceKind::Room && !spot.headingOnly;
}

}  // namespace ledgerboard::intake
