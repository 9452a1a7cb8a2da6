// What part does a space that is named play: does the speaker move there, speak of it for a clause,
// name the place of an object, or pass it?
#include <algorithm>

#include "core/intake/notes/role_signs.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/walk.h"
#include "core/intake/notes/walk_passed.h"

namespace ledgerboard::intake {

// "So we're in the kitchen. Extension, flat roof, …", "Utility. That's the extension.": how the
// room was built, and no other room.
bool Walk::isPartHere(const Sentence& sentence, const SpaceSpot& spot) const {
    constexpr int kLately = 3;
    const KnownSpace* here = current_.size() == 1 ? find(current_.front()) : nullptr;
    return spot.key == "extension" && sinceMove_ <= kLately && here != nullptr &&
           here->kind == SpaceKind::Room && here->key != spot.key && !sentence.heading &&
           !sentence.opensParagraph && !sentence.alone;
}

// Whether the sentence begins with the space.
bool Walk::opensSentence(const Sentence& sentence, const Spots& spots, std::size_t index) const {
    const std::size_t begin = spots.spaces[index].span.begin;
    bool first = begin <= skipSmall(sentence, spots, 0) && !listsThis(sentence);
    // "On the first floor the main bedroom …"
    if (index == 1 && spots.spaces[0].kind == SpaceKind::Level &&
        spots.spaces[0].span.end + 2 >= begin &&
        skipSmall(sentence, spots, 0) + 2 >= spots.spaces[0].span.begin &&
        (wordIs(sentence, 0, "on") || wordIs(sentence, 0, "up") || wordIs(sentence, 0, "down"))) {
        first = first ||
                !(wordIs(sentence, begin - 1, "and") || isMark(sentence.tokens[begin - 1], "/&+"));
    }
    // "Upstairs, the front bedroom …", "down the hall the hall bath …": the second is meant.
    if (index > 0 && spots.spaces[index - 1].span.end + 2 >= begin && lastMoved_ == index &&
        spots.spaces[index].kind != SpaceKind::Level &&
        (spots.spaces[index - 1].kind == SpaceKind::Level ||
         spots.spaces[index - 1].span.end + 1 >= begin)) {
        const std::size_t end = spots.spaces[index - 1].span.end;
        first = first || (!wordIs(sentence, end, "and") && !isMark(sentence.tokens[end], "/&+"));
    }
    return first;
}

// "the kitchen sink", "bath vent": the space stands right before the thing or opens its name.
Walk::Role Walk::roleWithThing(const Sentence& sentence, const Spots& spots, std::size_t index,
                               const ObjectSpot& object, bool first) const {
    const SpaceSpot& spot = spots.spaces[index];
    const std::size_t begin = spot.span.begin;
    const bool inside = object.span.begin <= begin;
    if (opensInBreath(sentence, spots, spot, inside)) {
        return Role::Move;
    }
    const bool article = begin > 0 && wordIs(sentence, begin - 1, "the");
    const bool opens =
        spot.kind == SpaceKind::Room && !sentence.bullet &&
        (index == 0 || (first && lastMoved_ == index)) && !sentence.alone &&
        std::none_of(spots.acts.begin(), spots.acts.end(),
                     [&](const ActSpot& act) {
                         return act.span.begin < begin && tables().acts[act.row].weight > 1;
                     }) &&
        spots.objects.front().span.end > begin && sentence.tokens.size() > 12;
    // "The bath vent pipe ends up here", under a heading: listed where the speaker stands.
    const bool stands = spot.kind == SpaceKind::Room && headingIndent_ >= 0 && !current_.empty() &&
                        current_.front() != "whole house";
    if (headingIndent_ < 0 && turnsByThing(sentence, spots, spot, object)) {
        return Role::Move;
    }
    const bool compound = inside && find(spot.key) == nullptr;
    if (!opensParagraph(sentence, spot) && !(opens && !inside && !article) &&
        ((stands && !inside) || compound)) {
        return Role::Ignored;
    }
    const bool moves = (opens && !article) || opensParagraph(sentence, spot);
    // "The bathroom suite is peach.": what a paragraph begins with is where it stands.
    return moves && (!inside || sentence.opensParagraph) ? Role::Move : Role::OfObject;
}

// "kitchen sink": the space of an object, or the first word of a room.
std::optional<Walk::Role> Walk::roleByObject(const Sentence& sentence, const Spots& spots,
                                             std::size_t index, bool first) const {
    const SpaceSpot& spot = spots.spaces[index];
    const std::size_t begin = spot.span.begin;
    for (const ObjectSpot& object : spots.objects) {
        const bool inside = object.span.begin <= begin && spot.span.end <= object.span.end;
        const bool smells = tables().objects[object.object].family == "trouble";
        const bool next = object.span.begin == spot.span.end && !smells;
        const bool named = spot.key == "stairs" ||
                           spot.key == tables().objects[object.object].name ||
                           (spot.kind == SpaceKind::Outside &&
                            (spot.key == "exterior" || spot.key.ends_with("yard")) &&
                            tables().objects[object.object].place != Place::Outside);
        // "whole house fan"
        if (spot.kind == SpaceKind::Whole && inside && object.span.end > spot.span.end) {
            return Role::Ignored;
        }
        // "Stairs carpet is threadbare.", "the carpet on the stairs": the stairs'.
        static const std::uint32_t kCarpet = tables().objectNamed("carpet");
        if (spot.key == "stairs" && inside && object.object == kCarpet && !sentence.bullet) {
            const bool opens = sentence.opensLine && first && headingIndent_ < 0;
            return opens                              ? Role::Move
                   : object.span.end == spot.span.end ? Role::Local
                                                      : Role::OfObject;
        }
        if (named && ((inside && object.span.end > spot.span.end) || next)) {
            return Role::Ignored;
        }
        const KnownSpace* here = current_.empty() ? nullptr : find(current_.front());
        const bool ofHouse = headingIndent_ < 0 || here == nullptr ||
                             here->kind == SpaceKind::Whole || here->kind == SpaceKind::Level;
        if (first && index == 0 && ofHouse && opensListLine(sentence, spot, object)) {
            return Role::Move;
        }
        // "Little bedroom's ceiling.", in talk: the speaker is there.
        if (next && first && index == 0 && headingIndent_ < 0 && !sentence.bullet &&
            !sentence.terse && isBedroom(spot.key) &&
            sentence.tokens[spot.span.end - 1].text.ends_with("'s")) {
            return Role::Move;
        }
        if ((inside && object.span.end > spot.span.end) || next) {
            return roleWithThing(sentence, spots, index, object, first);
        }
        if (inside && !first) {
            const bool alone = std::none_of(
                spots.objects.begin(), spots.objects.end(),
                [&](const ObjectSpot& other) { return other.span.begin != object.span.begin; });
            if (alone && !spots.acts.empty() && !cueBefore(sentence, spots, Cue::Move, begin)) {
                return Role::Ignored;
            }
        }
    }
    return std::nullopt;
}

// The ways to say that one enters a space.
std::optional<Walk::Role> Walk::roleEntering(const Sentence& sentence, const Spots& spots,
                                             std::size_t index, bool first) const {
    const SpaceSpot& spot = spots.spaces[index];
    const std::size_t begin = spot.span.begin;
    if (!current_.empty() && isServed(sentence, spots, spot, current_.front())) {
        return Role::Local;
    }
    if (!current_.empty() &&
        ((isThingOfHall(sentence, spots, spot) && !sentence.opensParagraph) ||
         isOnGrounds(sentence, spots, spot) || isAtticLadder(sentence, spots, spot))) {
        return Role::Ignored;
    }
    if (thereIsSuch(sentence, spots, spot) || isOwnWith(sentence, spot) ||
        liesThatWay(sentence, spots, spot)) {
        return Role::Move;
    }
    // "And the dining room with it, 130.": both.
    if (wordIs(sentence, spot.span.end, "with") && wordIs(sentence, spot.span.end + 1, "it") &&
        !current_.empty()) {
        return Role::Local;
    }
    // "Bedroom 4. Used as an office."
    if (isUsedAs(sentence, begin) && sinceMove_ <= 1 && !current_.empty()) {
        return Role::Ignored;
    }
    if (isFirstRoom(sentence, spot) || isStoreyTurnedTo(sentence, spot) ||
        isMadeInto(sentence, spot)) {
        return Role::Move;
    }
    if (isYetToBe(sentence, spot) ||
        (isBeyond(sentence, spots, begin) && !isBreathless(sentence))) {
        return Role::Ignored;
    }
    if (headingIndent_ >= 0 && othersCallItSo(sentence, begin)) {
        return Role::Ignored;
    }
    if (headingIndent_ < 0 && !sentence.terse && isTurnedTo(sentence, spots, spot)) {
        return Role::Move;
    }
    const bool alias = isAlias(sentence);
    if (cueBefore(sentence, spots, Cue::Enter, begin) && !alias) {
        return Role::Move;
    }
    if (begin > 0 && wordIs(sentence, begin - 1, "this") && spot.kind == SpaceKind::Room &&
        !alias) {
        return Role::Move;
    }
    // "The old staircase has been boxed in": the stairs, seen from where one stands.
    const bool seen = spot.key == "stairs" && !current_.empty() &&
                      spots.endOf(Cue::Passive, spot.span.end) > spot.span.end;
    if (first && seen && !opensParagraph(sentence, spot)) {
        return Role::Local;
    }
    if (first && !alias) {
        return spot.kind == SpaceKind::Whole ? Role::Local : Role::Move;
    }
    if (isCalledSo(sentence, spot) || isPrimaryToo(sentence, spots, index)) {
        return Role::Move;
    }
    if (cueBefore(sentence, spots, Cue::Passing, begin) && spot.kind != SpaceKind::Whole &&
        !isLaidThrough(sentence, spots, begin)) {
        return Role::Ignored;
    }
    if (talkTurnsTo(sentence, spots, spot) || isSteppedInto(sentence, spots, spot)) {
        return Role::Move;
    }
    const bool stands = spot.kind == SpaceKind::Room || spot.kind == SpaceKind::Outside;
    if (stands && isBreathless(sentence) && !afterPreposition(sentence, spots, begin)) {
        return Role::Move;
    }
    return std::nullopt;
}

// The whole house or all of some rooms, named within a clause.
Walk::Role Walk::roleOfWhole(const Sentence& sentence, const Spots& spots,
                             const SpaceSpot& spot) const {
    const std::size_t begin = spot.span.begin;
    // "Stain the whole house", said out in the yard: all its sides.
    const KnownSpace* stands = current_.empty() ? nullptr : find(current_.front());
    const bool indoors =
        std::any_of(spots.objects.begin(), spots.objects.end(), [](const ObjectSpot& object) {
            return tables().objects[object.object].place == Place::Inside;
        });
    if (spot.kind == SpaceKind::Whole && stands != nullptr && !indoors &&
        stands->kind == SpaceKind::Outside) {
        return Role::Ignored;
    }
    // "Paneling everywhere.", said in a room: all over the room; "trim's peeling everywhere",
    // said outside: all round.
    const bool inRoom = stands != nullptr &&
                        (stands->kind == SpaceKind::Room || stands->kind == SpaceKind::Outside);
    const bool every = wordIs(sentence, begin, "everywher") || wordIs(sentence, begin, "top") ||
                       (wordIs(sentence, begin, "all") && wordIs(sentence, begin + 1, "over"));
    return inRoom && every && spot.span.end <= begin + 3 ? Role::Ignored : Role::Local;
}

// A space named within a clause.
Walk::Role Walk::roleInClause(const Sentence& sentence, const Spots& spots,
                              std::size_t index) const {
    const SpaceSpot& spot = spots.spaces[index];
    const std::size_t begin = spot.span.begin;
    static const std::vector<std::string_view> kIn = {
        "in", "at", "on", "for", "through", "insid", "out", "throughout", "of"};
    std::size_t at = begin;
    while (at > 0 && spots.endOf(Cue::Small, at - 1) == at) {
        --at;
    }
    if (at > 0 && wordIs(sentence, at - 1, "at") && onlySaysWhich(sentence, spots, spot)) {
        return Role::Ignored;
    }
    if (at > 0) {
        for (const std::string_view word : kIn) {
            if (wordIs(sentence, at - 1, word)) {
                return Role::Local;
            }
        }
        // "plank through here and on into the hall"
        if (at > 1 && wordIs(sentence, at - 1, "into") && wordIs(sentence, at - 2, "on")) {
            return Role::Local;
        }
    }
    // "Half the posts under the house", "the tank out back"
    if (begin > 0 && (wordIs(sentence, begin, "under") || wordIs(sentence, begin, "behind") ||
                      wordIs(sentence, begin, "out"))) {
        return Role::Local;
    }
    if (spot.kind == SpaceKind::Whole || spot.kind == SpaceKind::Group) {
        return roleOfWhole(sentence, spots, spot);
    }
    if (spot.kind == SpaceKind::Level) {
        return isWhichFloor(sentence, begin) ? Role::Ignored : Role::Local;
    }
    if (isWorkedOn(spots, begin)) {
        return Role::Local;
    }
    // One of a row of spaces, or the subject of its clause: "the hall bath needs a new toilet".
    const bool joined = (index > 0 && spots.spaces[index - 1].span.end + 3 >= begin) ||
                        (index == 0 && listsThis(sentence));
    const bool subject =
        spots.endOf(Cue::Passive, spot.span.end) > spot.span.end ||
        wordIs(sentence, spot.span.end, "too") ||
        (wordIs(sentence, spot.span.end, "as") && wordIs(sentence, spot.span.end + 1, "well")) ||
        wordIs(sentence, spot.span.end, "both");
    const bool passing = cueBefore(sentence, spots, Cue::Landmark, begin);
    const bool follows = headsRow(sentence, spots, index) ||
                         (begin > 0 && isMark(sentence.tokens[begin - 1], ",-("));
    return (joined || subject || follows) && !passing ? Role::Local : Role::Ignored;
}

// "Fence ok. Shed keep.", spoken of out of doors: a thing that stands there.
bool Walk::isOnlyShed(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) const {
    constexpr std::size_t kBrief = 7;
    const KnownSpace* here = current_.empty() ? nullptr : find(current_.front());
    return spot.key == "shed" && !sentence.heading && here != nullptr &&
           here->kind == SpaceKind::Outside && here->key != "shed" &&
           (headingIndent_ >= 0 || !sentence.opensLine) && !spots.acts.empty() &&
           sentence.tokens.size() <= kBrief && spots.objects.size() == 1 &&
           spots.objects.front().span.begin == spot.span.begin;
}

Walk::Role Walk::roleOf(const Sentence& sentence, const Spots& spots, std::size_t index) const {
    // "the remnant yard" is none of the house's.
    const Span& name = spots.spaces[index].span;
    const bool stopped = isStopped(spots, name);
    if (isWhatPlainRoomIs(sentence, spots, index)) {
        return Role::Move;
    }
    if (isPartHere(sentence, spots.spaces[index])) {
        return Role::Ignored;
    }
    if (isAskedAbout(sentence, spots.spaces[index])) {
        return Role::Move;
    }
    if (index < 2 && isLaundryIn(sentence, spots)) {
        return index == 0 ? Role::Ignored : Role::Move;
    }
    if (isSameAgain(sentence, spots, index) || isOnlyShed(sentence, spots, spots.spaces[index]) ||
        isSameRoom(sentence, spots.spaces[index])) {
        return Role::Ignored;
    }
    if (isStoreyOfRoom(sentence, spots, index)) {
        return Role::Ignored;
    }
    // "This is the terrace on the hill": where notes open, the house itself.
    if (known_.empty() && spots.spaces[index].key == "patio" &&
        wordIs(sentence, name.begin, "terrac")) {
        return Role::Ignored;
    }
    if (isSpeakersOwn(sentence, spots.spaces[index])) {
        return Role::Ignored;
    }
    // "rewiring the house", "through the house"
    const bool house = spots.spaces[index].key == "whole house" && name.begin > 1 &&
                       wordIs(sentence, name.begin - 1, "the") && isWorkedOn(spots, name.begin);
    if (house) {
        return Role::Local;
    }
    const bool there = !sentence.terse && isWhereThingIs(sentence, spots, spots.spaces[index]);
    if (spots.spaces[index].headingOnly || stopped ||
        (!there && isAdverb(sentence, spots, index))) {
        return Role::Ignored;
    }
    // "knock through to the dining room": the wall goes, not the speaker.
    const bool reached = isKnockedThrough(sentence, spots, name);
    const bool side = wordIs(sentence, name.end, "side") || wordIs(sentence, name.end, "end");
    if (reached || (side && name.begin > 0)) {
        return Role::Ignored;
    }
    if (isOnlyNamed(sentence, spots, index) ||
        (sinceMove_ == 1 && saysWhereItIs(sentence, name.begin))) {
        return Role::Ignored;
    }
    if (there) {
        return Role::Local;
    }
    if (isExteriorOfParagraph(sentence, spots, index)) {
        return Role::Move;
    }
    const bool first = opensSentence(sentence, spots, index);
    if (const std::optional<Role> role = roleByObject(sentence, spots, index, first)) {
        return *role;
    }
    if (const std::optional<Role> role = roleEntering(sentence, spots, index, first)) {
        return *role;
    }
    return roleInClause(sentence, spots, index);
}

}  // namespace ledgerboard::intake
