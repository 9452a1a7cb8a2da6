// How a sentence changes where the speaker is.
#include <algorithm>

#include "core/intake/notes/role_signs.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/walk.h"
#include "core/intake/notes/walk_passed.h"

namespace ledgerboard::intake {

namespace {

// Whether a clause ends at this token for good: what stands beyond speaks of something else.
bool closesClause(const Token& token) {
    return isMark(token, ".;!?");
}

// "Porch first, the porch floor …": where a space is entered by its name, the name is no object of
// its own, as long as the sentence has another. "DR paint": a door by the same letters is none.
void dropNamesake(Spots& spots, const SpaceSpot& space) {
    const Span& span = space.span;
    const bool others =
        space.key == "dining room" ||
        std::any_of(spots.objects.begin(), spots.objects.end(),
                    [&](const ObjectSpot& object) { return object.span.begin >= span.end; });
    if (others) {
        std::erase_if(spots.objects, [&](const ObjectSpot& object) {
            return span.begin <= object.span.begin && object.span.end <= span.end;
        });
    }
}

// "the bits about the loft", "a view of the garden": no one goes there.
bool saysOnlyWhere(const Sentence& sentence, const Spots& spots, std::size_t at) {
    // "Off the end of it is a sunroom.": there it is.
    while (at > 0 && spots.endOf(Cue::Small, at - 1) == at && !wordIs(sentence, at - 1, "of") &&
           !wordIs(sentence, at - 1, "is")) {
        --at;
    }
    // "What about the kitchen?"
    if (at > 1 && wordIs(sentence, at - 1, "about") &&
        (wordIs(sentence, at - 2, "what") || wordIs(sentence, at - 2, "how"))) {
        return false;
    }
    for (const std::string_view word :
         {"from",    "about",  "of",      "like",    "than", "over",   "with", "without",
          "behind",  "beyond", "toward",  "under",   "off",  "across", "abov", "below",
          "beneath", "beside", "between", "opposit", "near", "outsid", "by",   "for"}) {
        if (at > 0 && wordIs(sentence, at - 1, word)) {
            return true;
        }
    }
    return false;
}

// "that's the kids' room", "this would be the study"
bool isNamed(const Sentence& sentence, const Spots& spots, std::size_t at) {
    while (at > 0 && spots.endOf(Cue::Small, at - 1) == at && !wordIs(sentence, at - 1, "is")) {
        --at;
    }
    return at > 0 && (wordIs(sentence, at - 1, "is") || wordIs(sentence, at - 1, "be") ||
                      sentence.tokens[at - 1].text.ends_with("'s"));
}

// "It's a greenhouse.", "In a basement.": what the room is like, its article before token `at`.
bool tellsSort(const Sentence& sentence, std::size_t at) {
    return at > 0 && (wordIs(sentence, at - 1, "a") || wordIs(sentence, at - 1, "an")) &&
           (wordIs(sentence, 0, "it") || wordIs(sentence, 0, "in"));
}

// ", the sports room has a hole": a space that is what a clause of its own is about.
bool beginsClause(const Sentence& sentence, const Spots& spots, std::size_t index,
                  std::size_t from) {
    const Span& name = spots.spaces[index].span;
    std::size_t at = name.begin;
    while (at > from && spots.endOf(Cue::Small, at - 1) == at) {
        --at;
    }
    const bool parted =
        at > from && (isMark(sentence.tokens[at - 1], ",-") || wordIs(sentence, at - 1, "and") ||
                      wordIs(sentence, at - 1, "but") || wordIs(sentence, at - 1, "so"));
    const bool subject = spots.endOf(Cue::Passive, name.end) > name.end ||
                         sentence.tokens[name.end - 1].text.ends_with("'s");
    const bool before = std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        return act.span.begin >= from && act.span.end <= name.begin;
    });
    return parted && subject && before;
}

// "Bath off of it, …", "the bathroom here", "the bath that goes with it": a room of the one where
// the speaker stands.
bool isBesideHere(const Sentence& sentence, std::size_t at) {
    // "Bath two, it's in there."
    if (at < sentence.tokens.size() && isMark(sentence.tokens[at], ",") &&
        wordIs(sentence, at + 1, "it") && wordIs(sentence, at + 2, "is") &&
        wordIs(sentence, at + 3, "in") &&
        (wordIs(sentence, at + 4, "here") || wordIs(sentence, at + 4, "there"))) {
        return true;
    }
    if (wordIs(sentence, at, "here") ||
        (wordIs(sentence, at, "in") && wordIs(sentence, at + 1, "here"))) {
        return true;
    }
    at += wordIs(sentence, at, "that") && wordIs(sentence, at + 1, "go") ? 1 : 0;
    for (const std::string_view joint : {"off", "next", "besid", "go", "attach"}) {
        if (wordIs(sentence, at, joint)) {
            const bool more = wordIs(sentence, at + 1, "of") || wordIs(sentence, at + 1, "to") ||
                              wordIs(sentence, at + 1, "with");
            const std::size_t to = at + (more ? 2 : 1);
            return wordIs(sentence, to, "it") || wordIs(sentence, to, "here") ||
                   wordIs(sentence, to, "that");
        }
    }
    return false;
}

// "Its own bath", "her bath": whose the room is that begins at `at`.
bool isItsOwn(const Sentence& sentence, std::size_t at) {
    at -= at > 0 && sentence.tokens[at - 1].plain == "own" ? 1 : 0;
    return at > 0 && (wordIs(sentence, at - 1, "her") || wordIs(sentence, at - 1, "his") ||
                      wordIs(sentence, at - 1, "it"));
}

// "paint in here, and plank everywhere downstairs": where the part of the sentence begins that
// alone speaks of the space; 0 where all of it does.
std::size_t ownPart(const Sentence& sentence, const Spots& spots, std::size_t index,
                    std::size_t from) {
    const std::size_t name = spots.spaces[index].span.begin;
    const auto orders = [](const ActSpot& act) {
        return tables().acts[act.row].weight > 1 && tables().acts[act.row].side != Side::Edge;
    };
    std::size_t part = 0;
    for (std::size_t i = from; i < name; ++i) {
        const bool parts = isMark(sentence.tokens[i], ",;") || wordIs(sentence, i, "and") ||
                           wordIs(sentence, i, "but") || wordIs(sentence, i, "so");
        const bool acts =
            std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
                return act.span.begin > i && act.span.end <= name && orders(act);
            });
        part = parts && acts ? i + 1 : part;
    }
    const auto inPart = [&](const ActSpot& act) {
        return act.span.begin >= part && act.span.end <= name && orders(act);
    };
    const auto own = std::find_if(spots.acts.begin(), spots.acts.end(), inPart);
    // "new toilet, new vanity, new fan in the hall bath": one thing said of them all.
    const bool other = own != spots.acts.end() &&
                       std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
                           return act.span.begin >= from && act.span.end <= part &&
                                  act.row != own->row && orders(act);
                       });
    return part > 0 && other ? part : 0;
}

// "The garage roof leaks, new roof on that.": what is said of the thing once more is of the same.
void placeAgain(Spots& spots, const Placed& placed) {
    for (std::size_t i = 0; i < spots.objects.size(); ++i) {
        ObjectSpot& object = spots.objects[i];
        const bool named =
            std::any_of(placed.parts.begin(), placed.parts.end(),
                        [&](const Placing& part) { return part.span.holds(object.span.begin); });
        for (std::size_t k = 0; k < i && object.place.empty() && !named; ++k) {
            if (spots.objects[k].object == object.object) {
                object.place = spots.objects[k].place;
            }
        }
    }
}

}  // namespace

// Ends the clause before token `end`, and with it what it says of another space.
void Walk::closeClause(Placed& placed, Clause& clause, std::size_t end) {
    if (!clause.keys.empty()) {
        if (clause.keys.size() > 1 || clause.keys.front().find('*') != std::string::npos) {
            lastPlaces_ = clause.keys;
            placesAge_ = 0;
        }
        placed.parts.push_back({{clause.begin, end}, clause.keys});
        clause.keys.clear();
    }
    clause.begin = end;
}

void Walk::takeMove(Spots& spots, std::size_t index, Placed& placed, Clause& clause) {
    const SpaceSpot spot = spots.spaces[index];
    dropNamesake(spots, spot);
    whole_ = false;
    if (clause.keys == std::vector<std::string>{"whole house"}) {
        clause.keys.clear();
    }
    if (clause.keys.empty() && spot.span.begin > clause.begin) {
        clause.keys = current_;  // what was said before the move stays where it was
    }
    closeClause(placed, clause, spot.span.begin);
    moveTo({&spot});
    lastMoved_ = index + 1;
    placed.moved = true;
}

void Walk::takeLocal(const Sentence& sentence, const SpaceSpot& spot, Clause& clause) {
    std::string key = resolve(spot);
    noteNamed(key);
    if (spot.kind == SpaceKind::Group) {
        key += "*" + std::to_string(spot.count);
    } else {
        learn(key, spot.shown, spot.kind);
    }
    // "here, in the hall, and in the bedrooms", "the hall too": also where one stands.
    for (std::size_t k = clause.begin; k < sentence.tokens.size() && clause.keys.empty(); ++k) {
        const bool joins = wordIs(sentence, k, "here") || wordIs(sentence, k, "too") ||
                           (wordIs(sentence, k, "as") && wordIs(sentence, k + 1, "well")) ||
                           listsThis(sentence);
        if (joins && !current_.empty() && k < spot.span.end + 2) {
            clause.keys = current_;
        }
    }
    if (whole_) {
        clause.keys.clear();
    }
    if (!contains(clause.keys, key)) {
        clause.keys.push_back(key);
    }
    // "Throughout, new trim. New doors.": what is said first of all holds for what follows.
    constexpr std::size_t kOpens = 3;
    constexpr std::size_t kBrief = 8;
    // "Then the whole house painted." tells of the paint alone.
    const bool heads = spot.span.end >= sentence.tokens.size() ||
                       sentence.tokens[spot.span.end].kind == TokenKind::Mark;
    whole_ = spot.kind == SpaceKind::Whole && clause.keys.size() == 1 && !isBreathless(sentence) &&
             ((spot.span.begin < kOpens && heads) ||
              (current_.empty() && sentence.tokens.size() <= kBrief));
}

void Walk::takeOfObject(Spots& spots, std::size_t index) {
    const SpaceSpot spot = spots.spaces[index];
    const std::string key = resolve(spot);
    const bool here = std::any_of(current_.begin(), current_.end(), [&](const std::string& at) {
        const bool bare = spot.key.find(' ') == std::string::npos;
        return at == key || (bare && headOf(at) == headOf(key)) ||
               at.find(spot.key) != std::string::npos;
    });
    for (ObjectSpot& object : spots.objects) {
        if (object.span.end > spot.span.begin && object.span.begin <= spot.span.end && !here &&
            spot.kind != SpaceKind::Group) {
            object.place = key;
        }
    }
    if (current_.empty()) {
        moveTo({&spot});
    }
}

// The space that a sentence without work brings up: "Across the hall is the son's room", "a tiny
// half bath off the entry". nullptr where there is none or more than one.
const SpaceSpot* Walk::broughtUp(const Sentence& sentence, const Spots& spots,
                                 std::size_t from) const {
    const SpaceSpot* only = nullptr;
    for (std::size_t i = 0; i < spots.spaces.size(); ++i) {
        const SpaceSpot& spot = spots.spaces[i];
        const bool room = spot.kind == SpaceKind::Room || spot.kind == SpaceKind::Outside;
        const std::size_t begin = spot.span.begin;
        const bool adverb =
            wordIs(sentence, begin, "outsid") && begin > 0 && spot.span.end == begin + 1;
        const bool counted =
            begin > 0 && tables().number(sentence.tokens[begin - 1].word).kind != NumberKind::None;
        // "a bedroom wall": the space only says which wall.
        const bool first = std::any_of(
            spots.objects.begin(), spots.objects.end(),
            [&](const ObjectSpot& object) { return object.span.begin == spot.span.end; });
        const bool short2 =
            spot.headingOnly && !(spot.kind == SpaceKind::Room && isNamed(sentence, spots, begin));
        const bool with =
            wordIs(sentence, spot.span.end, "with") && wordIs(sentence, spot.span.end + 1, "it");
        // "It's got its own bath. Carpet, paint.": still in the bedroom.
        const bool own = begin > 0 && sentence.tokens[begin - 1].plain == "own";
        if (begin < from || !room || with || own || isPartHere(sentence, spot) ||
            isUsedAs(sentence, begin) || short2 || isOnlyNamed(sentence, spots, i) || adverb ||
            counted || first || saysOnlyWhere(sentence, spots, begin)) {
            continue;
        }
        if (only != nullptr) {
            return nullptr;
        }
        only = &spot;
    }
    return only;
}

// "And that takes us into the bathroom.": nothing but the place is said.
void Walk::settleIdle(const Sentence& sentence, const Spots& spots, Placed& placed) {
    constexpr std::size_t kShort = 18;
    if (!lineKeys_.empty() || (sentence.bullet && !sentence.opensLine)) {
        return;
    }
    const bool idle = std::none_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
        return tables().acts[act.row].side != Side::Edge && tables().acts[act.row].weight > 1;
    });
    const bool talk = spots.has(Cue::Chatter) || spots.has(Cue::Same) || spots.has(Cue::Aside) ||
                      spots.has(Cue::Hypothetical) || spots.has(Cue::Open) ||
                      spots.has(Cue::Negation);
    const bool wished =
        std::any_of(sentence.tokens.begin(), sentence.tokens.end(), [](const Token& token) {
            return tables().is(token.word, "would") || tables().is(token.word, "could");
        });
    // "That goes for the hall and the den as well.": of both, and the speaker goes to neither.
    const bool goes = std::any_of(
        sentence.tokens.begin(), sentence.tokens.end(),
        [](const Token& token) { return tables().is(token.word, "well") || token.plain == "too"; });
    const bool row = goes && !placed.parts.empty() && placed.parts.front().keys.size() > 1;
    if (placed.moved || !idle || talk || wished || row || sentence.tokens.size() > kShort) {
        return;
    }
    const SpaceSpot* spot = broughtUp(sentence, spots, placed.from);
    // Things named beside it are spoken of in it only where it is what the sentence names.
    // "There's a deck off it."
    const bool beside = spot != nullptr && spot->kind == SpaceKind::Outside &&
                        wordIs(sentence, spot->span.end, "off");
    if (spot != nullptr &&
        (beside || tellsSort(sentence, spot->span.begin) || isSameRoom(sentence, *spot))) {
        return;
    }
    const bool named = spot != nullptr && isNamed(sentence, spots, spot->span.begin);
    // "First thing, the screen porch.", "Then the deck.": the thing is the name of the place.
    const bool bare =
        std::all_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
            return spot != nullptr && spot->kind == SpaceKind::Outside && spot->key != "shed" &&
                   spot->key != "exterior" && !sentence.terse &&
                   object.span.begin >= spot->span.begin && object.span.end <= spot->span.end;
        });
    if (spot != nullptr && (named || bare)) {
        moveTo({spot});
        placed.moved = true;
        placed.parts.clear();
        return;
    }
    // "And the dining room with it, 130.": that too, and the talk goes on where it was.
    const bool with =
        std::any_of(spots.spaces.begin(), spots.spaces.end(), [&](const SpaceSpot& other) {
            return wordIs(sentence, other.span.end, "with") &&
                   wordIs(sentence, other.span.end + 1, "it");
        });
    const bool one = !with && placed.parts.size() == 1 && placed.parts.front().keys.size() == 1 &&
                     placed.parts.front().keys.front() != "whole house";
    if (one && spots.objects.empty() && spots.acts.empty() && sentence.tokens.size() <= 11 &&
        !whole_) {
        stand(placed.parts.front().keys);
        placed.moved = true;
    }
}

void Walk::openLine(const Sentence& sentence) {
    if (!sentence.opensLine) {
        return;
    }
    labelled_ = sentence.labelled && sentence.terse;
    if (sentence.indent <= lineIndent_) {
        lineKeys_.clear();
    }
    // The next line of the list is under its heading again.
    if ((listing_ && sentence.bullet) || (sentence.roomless && headingIndent_ < 0)) {
        lineKeys_.clear();
        stand({});
    } else if (!headed_.empty()) {
        stand(headed_);
        headed_.clear();
    }
}

// The clause that a sentence begins with may already speak of other spaces.
Walk::Clause Walk::firstClause(const Sentence& sentence, const Spots& spots, std::size_t from) {
    Clause clause{from, {}};
    const auto rooms = std::find_if(spots.cues.begin(), spots.cues.end(),
                                    [](const CueSpot& cue) { return cue.cue == Cue::Rooms; });
    const bool named = rooms != spots.cues.end() && !spots.spaces.empty() &&
                       spots.spaces.front().span.begin < rooms->span.begin;
    constexpr int kLongAgo = 12;
    if (rooms != spots.cues.end() && !named) {
        const std::size_t last = rooms->span.end - 1;
        const bool fresh = !lastPlaces_.empty() && placesAge_ < kLongAgo;
        if (wordIs(sentence, last, "both")) {
            keepRun(2);
        } else if (!fresh && wordIs(sentence, last, "each")) {
            keepRun(0);
        }
    }
    if (spots.has(Cue::Rooms) && !lastPlaces_.empty() && placesAge_ < kLongAgo && !named) {
        clause.keys = lastPlaces_;
    } else if (whole_ && spots.has(Cue::Here)) {
        whole_ = false;
    } else if (whole_) {
        clause.keys = {"whole house"};
        learn("whole house", "whole house", SpaceKind::Whole);
    } else if (const std::string place = thatPlace(sentence); !place.empty()) {
        clause.keys = {place};
    }
    return clause;
}

// "Bedroom two, bedroom three, bedroom four, the same in all of them": the speaker speaks of each.
void Walk::takeRow(const Spots& spots, Placed& placed) {
    const auto rooms = std::find_if(spots.cues.begin(), spots.cues.end(),
                                    [](const CueSpot& cue) { return cue.cue == Cue::Rooms; });
    if (rooms == spots.cues.end() || !placed.moved) {
        return;
    }
    std::vector<std::string> keys;
    std::size_t end = 0;
    for (const SpaceSpot& spot : spots.spaces) {
        if (spot.kind == SpaceKind::Room && spot.span.end <= rooms->span.begin) {
            keys.push_back(resolve(spot));
            learn(keys.back(), spot.shown, spot.kind);
            end = spot.span.end;
        }
    }
    if (keys.size() > 1) {
        stand(keys);
        lastPlaces_ = std::move(keys);
        placesAge_ = 0;
        placed.parts.clear();
        placed.from = end;
    }
}

// "Her bath", said in the primary bedroom; "our bath" is not the one in the hall.
void Walk::nameOwnBath(const Sentence& sentence, SpaceSpot& spot) {
    const std::size_t at = spot.span.begin;
    if (spot.key != "bathroom") {
        return;
    }
    const bool ours = at > 0 && (wordIs(sentence, at - 1, "our") || wordIs(sentence, at - 1, "my"));
    if (!ours && !isItsOwn(sentence, at) && !isBesideHere(sentence, spot.span.end)) {
        return;
    }
    const std::string own = ownBath();
    if (!own.empty() && (!ours || contains(current_, "primary bedroom"))) {
        spot.key = spot.shown = own;
        learn(own, own, SpaceKind::Room);
        noteNamed(own);
    } else if (ours && find("hall bath") != nullptr) {
        spot.key = spot.shown = "our bath";
    }
}

// "Same as the lake bedroom": a name that a heading gave.
void Walk::useOwnNames(const Sentence& sentence, Spots& spots) {
    hearOwnRooms(sentence, spots);
    nameAsBedroom(sentence, spots);
    for (SpaceSpot& spot : spots.spaces) {
        namePlainly(sentence, spot);
        nameOwnBath(sentence, spot);
        if (spot.kind != SpaceKind::Room || spot.span.begin == 0) {
            continue;
        }
        std::string name;
        for (std::size_t i = spot.span.begin - 1; i < spot.span.end; ++i) {
            name += (name.empty() ? "" : " ") + sentence.tokens[i].plain;
        }
        if (find(name) != nullptr && name != spot.key) {
            spot.key = name;
            spot.shown = name;
            --spot.span.begin;
        }
    }
}

// Takes in the space that begins at a token of its own.
void Walk::takeSpace(const Sentence& sentence, Spots& spots, std::size_t index, Placed& placed,
                     Clause& clause) {
    const bool called =
        isCalledOut(sentence, spots, spots.spaces[index]) && opensSentence(sentence, spots, index);
    const Role role = called ? Role::Move : roleOf(sentence, spots, index);
    if (index > 0 && role != Role::OfObject &&
        isExcepted(sentence, spots, spots.spaces[index].span.begin)) {
        const SpaceSpot spot = spots.spaces[index];
        leaveOut(spot, clause);
        passed_ = 0;
        // "… except the back one, where it's vinyl": the rest is said of that one.
        const std::size_t end = spot.span.end;
        if (wordIs(sentence, end, "where") || wordIs(sentence, end + 1, "where")) {
            closeClause(placed, clause, spot.span.begin);
            takeLocal(sentence, spot, clause);
        }
        return;
    }
    passed_ = role == Role::Ignored ? index + 1 : index > 0 && passed_ == index ? passed_ : 0;
    // "KIT - stove dead. pantry light out. …": a line of the kitchen stays with it.
    // "… ens: jet tub out. shwr ok": a label within the line holds for the rest of it.
    const Span& name = spots.spaces[index].span;
    const bool label = name.begin == 0 && name.end < sentence.tokens.size() &&
                       isMark(sentence.tokens[name.end], ":");
    const bool entry = labelled_ && !sentence.opensLine && !current_.empty() && !label;
    const bool cupboard = role == Role::Move && isCupboardHere(sentence, spots, index);
    const bool aside =
        cupboard || (role == Role::Move && (entry || isAsideOfSection(sentence, spots, index)));
    if (cupboard) {
        dropNamesake(spots, spots.spaces[index]);
    }
    if (role == Role::Move && !aside) {
        if (isWhatPlainRoomIs(sentence, spots, index)) {
            parts_.emplace_back(spots.spaces[index - 1].key, spots.spaces[index].key);
        }
        takeMove(spots, index, placed, clause);
    } else if (aside || (role == Role::Local && !isWhereSystemIs(spots, index))) {
        if (beginsClause(sentence, spots, index, clause.begin)) {
            closeClause(placed, clause, spots.spaces[index].span.begin);
        } else if (const std::size_t part = ownPart(sentence, spots, index, clause.begin);
                   part > clause.begin) {
            closeClause(placed, clause, part);
        }
        if (index > 0 && passed_ == index && leadsRow(sentence, spots, index - 1)) {
            takeLocal(sentence, spots.spaces[index - 1], clause);
        }
        takeLocal(sentence, spots.spaces[index], clause);
    } else if (role == Role::OfObject) {
        takeOfObject(spots, index);
    }
}

// Whether the sentence is a heading over what follows: a title that names no space is none.
void Walk::noteHeading(const Sentence& sentence, const Placed& placed) {
    // "LDG: cpt > new" is an entry of its own, "The kitchen wants a new sink." a paragraph.
    const bool says = !placed.onlyPlace && !sentence.heading &&
                      (sentence.labelled || isMark(sentence.tokens.back(), ".!?"));
    const bool heads =
        sentence.opensLine && !says &&
        (sentence.heading || (sentence.alone && !sentence.bullet && !sentence.spoken));
    if (heads && (placed.moved || headingIndent_ >= 0)) {
        headingIndent_ = sentence.indent;
        listing_ = listing_ && !placed.onlyPlace;
        headings_ += placed.onlyPlace ? 1 : 0;
    }
}

// What is dropped, heard and counted before the sentence is read.
void Walk::beginSentence(const Sentence& sentence, Spots& spots) {
    dropOthers(sentence, spots);
    hearShortNames(sentence, spots);
    leaveUnit();
    hearUnit(sentence, spots);
    nameInUnit(spots);
    useOwnNames(sentence, spots);
    hearAll(sentence, spots);
    lastMoved_ = 0;
    passed_ = 0;
    saysStairs_ = std::any_of(spots.spaces.begin(), spots.spaces.end(), [](const SpaceSpot& spot) {
        return spot.key == "upstairs" || spot.key == "stairs";
    });
    ++stairsAge_;
    keepJoined(sentence, spots);
    ++sentences_;
    takeFixtures(sentence, spots);
    ++sinceMove_;
    ++placesAge_;
    learnOnes(sentence, spots);
    openLine(sentence);
    // What stands below the labelled lines is of none of their rooms.
    if (sentence.unlabelled && headingIndent_ < 0 && !sentence.bullet) {
        stand({});
    }
}

Placed Walk::take(const Sentence& sentence, Spots& spots) {
    Placed placed;
    beginSentence(sentence, spots);
    // A list line under a heading that begins with a space speaks of it, and the next does not.
    const bool entry = sentence.bullet || sentence.indent > headingIndent_;
    const bool listed =
        sentence.opensLine && headingIndent_ >= 0 &&
        (listing_ || ((!sentence.alone || sentence.bullet) && entry && !current_.empty()));
    const std::vector<std::string> heading = current_;
    placed.moved = takeQualified(sentence) || leaveStairs(sentence) ||
                   followThing(sentence, spots) || goBack(sentence, spots);
    takeHeading(sentence, spots, placed);
    // "KIT cabs new": the label is no part of the name.
    for (ObjectSpot& object : spots.objects) {
        if (object.span.begin < placed.from && placed.from < object.span.end) {
            object.span.begin = placed.from;
        }
    }
    if (sentence.opensLine || placed.moved) {
        whole_ = false;
    }
    Clause clause = firstClause(sentence, spots, placed.from);
    std::size_t next = 0;
    for (std::size_t i = placed.from; i < sentence.tokens.size(); ++i) {
        while (next < spots.spaces.size() && spots.spaces[next].span.begin < i) {
            ++next;
        }
        if (closesClause(sentence.tokens[i])) {
            closeClause(placed, clause, i + 1);
        }
        // "Bedrooms 1 to 4" names several at one place.
        for (; next < spots.spaces.size() && spots.spaces[next].span.begin == i; ++next) {
            takeSpace(sentence, spots, next, placed, clause);
        }
    }
    closeClause(placed, clause, sentence.tokens.size());
    takeRow(spots, placed);
    keepRow(spots, placed);
    keepThings(sentence, spots, placed);
    leftParagraph_ = !placed.moved && (leftParagraph_ || sentence.opensParagraph);
    noteHeading(sentence, placed);
    // "- living room, dining room, hall" under "PAINT": what the heading says is said of them.
    placed.onlyPlace = placed.onlyPlace && !(listing_ && sentence.bullet);
    if (listed && placed.moved && !placed.onlyPlace && current_ != heading) {
        lineKeys_ = current_;
        lineIndent_ = sentence.indent;
        current_ = heading;
    }
    if (!lineKeys_.empty() && placed.parts.empty() && !placed.onlyPlace) {
        placed.parts.push_back({{0, sentence.tokens.size()}, lineKeys_});
    }
    settleIdle(sentence, spots, placed);
    if (sentence.bullet && !sentence.opensLine && headingIndent_ >= 0 && headed_.empty() &&
        !heading.empty() && current_ != heading) {
        headed_ = heading;
    }
    takeBroughtUp(sentence, spots, placed);
    // "The carpet on the stairs": spoken of, and not only named.
    const bool stairs =
        std::any_of(placed.parts.begin(), placed.parts.end(),
                    [](const Placing& part) { return contains(part.keys, "stairs"); });
    stairsAge_ = stairs ? 0 : stairsAge_;
    takeEveryOne(sentence, spots);
    takeSystems(sentence, spots, placed);
    leaveRooms(sentence, spots, placed);
    placeRoofs(sentence, spots);
    placeAgain(spots, placed);
    return placed;
}

}  // namespace ledgerboard::intake
