// Where does a heading end, and which space does it say the speaker is in?
#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/walk.h"
#include "core/intake/notes/walk_passed.h"

namespace ledgerboard::intake {

namespace {

using Named = std::vector<const SpaceSpot*>;

// "Lake bedroom": a room under a word that no table knows, and all there is in the line.
bool isStrangeRoom(const Sentence& sentence, const Spots& spots) {
    const SpaceSpot& room = spots.spaces.front();
    return sentence.alone && spots.acts.empty() && spots.objects.empty() &&
           sentence.tokens.size() <= 4 && spots.spaces.size() == 1 &&
           (room.kind == SpaceKind::Room || room.key == "barn" || room.key == "shed" ||
            room.key == "garage") &&
           room.span.begin <= 2 && (sentence.heading || sentence.tokens.front().capital) &&
           room.span.end + 1 >= sentence.tokens.size() &&
           sentence.tokens.front().kind == TokenKind::Word &&
           (sentence.tokens.front().word == kUnknown || spots.endOf(Cue::Material, 0) > 0);
}

// "Pantry cupboard: fine": the name of a thing that begins with the space.
bool beginsThing(const Spots& spots, const Span& space) {
    return std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
        // "Hall closet: …" may be a place of its own.
        static const std::vector<std::string_view> kPlaces = {
            "closet", "porch", "deck", "patio", "stairs", "shower", "balcony", "shed"};
        const std::string& thing = tables().objects[object.object].name;
        // "Attic stair: …"
        if (object.span.begin == space.begin && object.span.end == space.end &&
            space.end > space.begin + 1 && thing == "attic ladder") {
            return true;
        }
        return object.span.begin <= space.begin && object.span.end > space.end &&
               !isOneOf(thing, kPlaces);
    });
}

// Spaces that stand side by side, "Living room / dining room", and where the last of them ends.
struct Row {
    std::size_t count = 0;
    std::size_t end = 0;
};

// "Mudroom slash laundry": the mark, said aloud.
bool isSlash(const Sentence& sentence, std::size_t at) {
    return isMark(sentence.tokens[at], "/") || sentence.tokens[at].plain == "slash";
}

Row rowOfSpaces(const Sentence& sentence, const Spots& spots, std::size_t at) {
    std::size_t spaces = 0;
    while (spaces < spots.spaces.size() && spots.spaces[spaces].span.begin == at) {
        at = spots.spaces[spaces].span.end;
        ++spaces;
        // "Bathroom's the back hall": what it is.
        if (sentence.tokens[at - 1].text.ends_with("'s")) {
            break;
        }
        const std::size_t joint = at;
        const auto begins = [&](std::size_t i) {
            return spaces < spots.spaces.size() && spots.spaces[spaces].span.begin == i;
        };
        while (at < sentence.tokens.size() && !begins(at) &&
               (isMark(sentence.tokens[at], ",/&+") || wordIs(sentence, at, "and") ||
                isSlash(sentence, at) || spots.endOf(Cue::Small, at) > at)) {
            at = std::max(at + 1, spots.endOf(Cue::Small, at));
        }
        // "The three kids' rooms are down the hall.": where they are.
        const bool rooms = begins(at) && at > joint + 1 &&
                           spots.spaces[spaces - 1].kind == SpaceKind::Room &&
                           spots.spaces[spaces].kind == SpaceKind::Room;
        const bool joined = std::any_of(
            sentence.tokens.begin() + static_cast<std::ptrdiff_t>(joint),
            sentence.tokens.begin() + static_cast<std::ptrdiff_t>(at), [](const Token& token) {
                return token.kind == TokenKind::Mark || tables().is(token.word, "and") ||
                       token.plain == "slash";
            });
        // "MBA gdn tub": the label is done where the small letters begin.
        const bool small = begins(at) && at == joint && isInCapitals(sentence, {at - 1, at}) &&
                           !isInCapitals(sentence, spots.spaces[spaces].span);
        // "The hall and the den are all about the same.": no row goes on with "all".
        const bool other = begins(at) && at > joint && spots.spaces[spaces].headingOnly;
        if (!begins(at) || ((rooms || other) && !joined) || small) {
            at = joint;
            break;
        }
    }
    return {spaces, at};
}

// "The living room and dining room need only paint": a row of rooms that the sentence begins with
// is what it speaks of, and no heading. "The kitchen is an ell": two names of one room.
bool isRowOfRooms(const Sentence& sentence, const Spots& spots, const Row& row) {
    if (row.count < 2 || row.end >= sentence.tokens.size() || isBreathless(sentence) ||
        listsThis(sentence)) {
        return false;
    }
    for (std::size_t i = 0; i < row.count; ++i) {
        const SpaceSpot& spot = spots.spaces[i];
        if (spot.kind != SpaceKind::Room || spot.headingOnly) {
            return false;
        }
        const std::size_t next = i + 1 < row.count ? spots.spaces[i + 1].span.begin : spot.span.end;
        bool joined = i + 1 == row.count;
        for (std::size_t at = spot.span.end; at < next; ++at) {
            const bool joint = isMark(sentence.tokens[at], ",&+") || wordIs(sentence, at, "and");
            if (!joint && !wordIs(sentence, at, "the")) {
                return false;
            }
            joined = joined || joint;
        }
        if (!joined) {
            return false;
        }
    }
    return !beginsThing(spots, spots.spaces[row.count - 1].span);
}

// "DECK frame sound.", "BR3 carpet 15 sy": a label in capitals, and the rest, from token `at`, in
// small letters. Two letters may be a word of the line: "WC ok".
bool isLabelInCapitals(const Sentence& sentence, const Spots& spots, std::size_t at) {
    const std::size_t begin = spots.spaces.front().span.begin;
    std::size_t letters = 0;
    bool capitals = sentence.opensLine;
    bool figure = false;
    for (std::size_t i = begin; i < at && capitals; ++i) {
        for (const char c : sentence.tokens[i].text) {
            figure = figure || (c >= '0' && c <= '9');
            capitals = capitals && (c < 'a' || c > 'z');
        }
        letters = std::max(letters, sentence.tokens[i].text.size());
    }
    // "LR flr oak", in notes whose lines open so.
    const bool room = (sentence.labelled || sentence.bullet) &&
                      spots.spaces.front().kind == SpaceKind::Room &&
                      spots.spaces.front().key != "half bath";
    const std::size_t least = room || (sentence.terse && figure) ? 2 : sentence.terse ? 3 : 4;
    return capitals && letters >= least && at < sentence.tokens.size() &&
           sentence.tokens[at].kind == TokenKind::Word && !sentence.tokens[at].capital;
}

// "off", "between": a word that leads on to where something is.
bool leadsWhere(const Token& token) {
    static const std::vector<std::string_view> kWhere = {
        "over", "above", "below", "under", "off",     "behind", "beside",
        "by",   "near",  "at",    "in",    "between", "betw",   "btwn"};
    return isOneOf(token.plain, kWhere);
}

// Whether a token only tells where the room of a label lies: "Util betw kit/gar:".
bool isPartOfWhere(const Sentence& sentence, const Spots& spots, std::size_t from, std::size_t at) {
    const bool where = leadsWhere(sentence.tokens[from]);
    return where && (at == from || wordIs(sentence, at, "the") || wordIs(sentence, at, "and") ||
                     std::any_of(spots.spaces.begin(), spots.spaces.end(),
                                 [&](const SpaceSpot& spot) { return spot.span.holds(at); }));
}

// "Living / carpet / replace 250": the first column of a row, up to token `at`.
bool isColumn(const Sentence& sentence, std::size_t at) {
    return sentence.opensLine && at > 0 && at + 1 < sentence.tokens.size() &&
           isMark(sentence.tokens[at], "/|") && !sentence.tokens[at].glued &&
           !sentence.tokens[at + 1].glued;
}

// "Roof 2017.", "Deck, 2019": the year a thing is of, and no part of a heading.
bool isDated(const Sentence& sentence, const Spots& spots, std::size_t at) {
    constexpr std::int64_t kEarly = 1900;
    constexpr std::int64_t kLate = 2040;
    constexpr std::size_t kNear = 2;
    return !sentence.heading && spots.spaces.front().kind == SpaceKind::Outside &&
           std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
               return amount.kind == AmountKind::Plain && amount.begin >= at &&
                      amount.begin <= at + kNear && amount.value >= kEarly * 1000 &&
                      amount.value <= kLate * 1000;
           });
}

// Where a heading ends whose spaces end at token `at`; 0 where the sentence is none.
std::size_t endOfRemark(const Sentence& sentence, const Spots& spots, std::size_t at) {
    if (isColumn(sentence, at)) {
        return at + 1;
    }
    // A size or a remark in brackets may follow: "Kitchen 12x14:", "BR3 (up)".
    std::size_t end = at;
    int other = 0;
    int where = 0;
    while (end < sentence.tokens.size() && !isMark(sentence.tokens[end], ":-.") &&
           !(end + 1 == sentence.tokens.size() && isMark(sentence.tokens[end], ","))) {
        const bool word = sentence.tokens[end].kind == TokenKind::Word;
        (isPartOfWhere(sentence, spots, at, end) ? where : other) += word ? 1 : 0;
        ++end;
    }
    const bool closed = end < sentence.tokens.size();
    // "Laundry's in the sunroom." is no heading.
    const bool label = closed && !isMark(sentence.tokens[end], ".");
    other += label ? 0 : where;
    const bool bracket = at < sentence.tokens.size() && isMark(sentence.tokens[at], "(");
    const bool more = end + 1 < sentence.tokens.size();  // "Kitchen: new cabinets"
    // "Pantry door rubs" is no heading, whatever it begins with.
    const bool said = std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        return act.span.begin >= at && tables().acts[act.row].weight > 0;
    });
    const int most = spots.spaces.front().headingOnly ? 0 : 2;
    // "- hall bath tub" in a list: a thing of that room.
    const bool thing = sentence.bullet &&
                       std::any_of(spots.objects.begin(), spots.objects.end(),
                                   [&](const ObjectSpot& object) { return object.span.end > at; });
    const bool named = sentence.alone && other <= most && !said && !thing && !sentence.spoken;
    if (!more && (sentence.heading || named || bracket)) {
        return bracket && !sentence.alone ? at : sentence.tokens.size();
    }
    if (sentence.heading || (bracket && !sentence.alone)) {
        return sentence.heading ? sentence.tokens.size() : at;
    }
    // "Bathroom. …" opens it, "Bathroom works." and "it all goes" do not.
    const bool strict = !label || spots.spaces.front().headingOnly;
    if (closed && other <= (strict ? 0 : 1) && end - at <= 4) {
        return end + 1;
    }
    // "others fine", "elec to check": no heading with work in it.
    const bool work = other > 0 && (spots.spaces.front().headingOnly || said || thing);
    return closed || other > 2 || work ? 0 : sentence.tokens.size();
}

// "It's electric.", "So then it's three bedrooms.", "Where's the rest of it?": a word that is a
// space in a heading alone, or a count, in a sentence of its own.
bool isSaid(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    if (!spot.headingOnly && spot.kind != SpaceKind::Group) {
        return false;
    }
    // "dr: bottom panel dented" is of a door, "dr: pnt. lt new" among labels a room.
    const bool thing =
        std::any_of(spots.objects.begin(), spots.objects.end(),
                    [&](const ObjectSpot& object) { return object.span.begin == spot.span.begin; });
    const bool labels = sentence.labelled && spot.span.begin == 0;
    if (thing && spot.headingOnly && sentence.terse && !sentence.alone && !labels &&
        !isInCapitals(sentence, spot.span)) {
        return true;
    }
    // "MECH: furnace 2009, any good?", "DR - cpt out, match??"
    const bool label = spot.span.begin == 0 && spot.span.end < sentence.tokens.size() &&
                       isMark(sentence.tokens[spot.span.end], ":-");
    if (spot.headingOnly && !label && !sentence.tokens.empty() &&
        isMark(sentence.tokens.back(), "?")) {
        return true;
    }
    for (std::size_t i = 0; i < spot.span.begin; ++i) {
        const Token& token = sentence.tokens[i];
        if (wordIs(sentence, i, "is") || wordIs(sentence, i, "it") ||
            (token.kind == TokenKind::Word && token.text.ends_with("'s"))) {
            return true;
        }
    }
    return false;
}

// "Your brother's study: …", "bk/kit: …", "Eaves / attic": a label whose last word is the room.
bool isLabelOfRoom(const Sentence& sentence, const Spots& spots) {
    constexpr std::size_t kFew = 3;
    const SpaceSpot& room = spots.spaces.front();
    const std::size_t at = room.span.begin;
    const bool label = room.span.end + 1 < sentence.tokens.size() &&
                       isMark(sentence.tokens[room.span.end], ":") && sentence.opensLine;
    const bool closed = label || (sentence.alone && room.span.end >= sentence.tokens.size() &&
                                  isMark(sentence.tokens[at - 1], "/"));
    if (!closed || at > kFew || room.kind != SpaceKind::Room || room.headingOnly ||
        afterPreposition(sentence, spots, at)) {
        return false;
    }
    const auto before = [&](const auto& spot) { return spot.span.begin < at; };
    const bool words = std::all_of(
        sentence.tokens.begin(), sentence.tokens.begin() + static_cast<std::ptrdiff_t>(at),
        [](const Token& token) { return token.kind == TokenKind::Word || isMark(token, "/'&"); });
    return words && std::none_of(spots.acts.begin(), spots.acts.end(), before) &&
           std::none_of(spots.objects.begin(), spots.objects.end(), before);
}

// Where a heading ends: "Kitchen:", "Living room / dining room", "BR1 - ". 0 if there is none.
std::size_t headingEnd(const Sentence& sentence, const Spots& spots) {
    if (spots.spaces.empty()) {
        return 0;
    }
    // "Whole house.": a small word may belong to the name.
    const Span& first = spots.spaces.front().span;
    const std::size_t at = std::min(skipSmall(sentence, spots, 0), first.begin);
    if (first.begin != at) {
        return isStrangeRoom(sentence, spots)   ? sentence.tokens.size()
               : isLabelOfRoom(sentence, spots) ? std::min(first.end + 1, sentence.tokens.size())
                                                : 0;
    }
    const Row row = rowOfSpaces(sentence, spots, at);
    const bool label = row.count > 0 && isLabelInCapitals(sentence, spots, row.end);
    // "KIT cabs new", "hall cpt clean", in notes whose lines open so.
    const bool words =
        row.end < sentence.tokens.size() && sentence.tokens[row.end].kind == TokenKind::Word;
    if (row.count > 0 && words && sentence.labelled && sentence.terse && first.begin == 0 &&
        (label || spots.spaces.front().kind == SpaceKind::Room)) {
        return row.end;
    }
    // "No hall.": there is none.
    const bool none = first.begin > 0 && wordIs(sentence, first.begin - 1, "no");
    // "It's carpet. In a bathroom.": nobody goes there.
    const bool any =
        first.begin > 1 && wordIs(sentence, first.begin - 2, "in") &&
        (wordIs(sentence, first.begin - 1, "a") || wordIs(sentence, first.begin - 1, "an"));
    if (((beginsThing(spots, first) && !label) || none || any || isUsedAs(sentence, first.begin) ||
         isSaid(sentence, spots, spots.spaces.front())) &&
        !sentence.heading) {
        return 0;
    }
    if (label) {
        return row.end;
    }
    if (isDated(sentence, spots, row.end)) {
        return 0;
    }
    const std::size_t end = endOfRemark(sentence, spots, row.end);
    return end == 0 && isRowOfRooms(sentence, spots, row) ? row.end : end;
}

// Whether a word from `begin` to `end` leads on to where something is.
bool saysWhere(const Sentence& sentence, std::size_t begin, std::size_t end) {
    for (std::size_t i = begin; i < end; ++i) {
        if (leadsWhere(sentence.tokens[i])) {
            return true;
        }
    }
    return false;
}

// The spaces that a heading up to token `end` names.
Named namedIn(const Sentence& sentence, const Spots& spots, std::size_t end) {
    Named named;
    // "MILK ROOM (the back entry)": what stands in brackets is another name for it.
    std::size_t bracket = 0;
    while (bracket < sentence.tokens.size() && !isMark(sentence.tokens[bracket], "(")) {
        ++bracket;
    }
    for (const SpaceSpot& spot : spots.spaces) {
        // "Bonus room over the garage": the second says where the first is.
        if (!named.empty() && saysWhere(sentence, named.back()->span.end, spot.span.begin)) {
            break;
        }
        if (spot.span.end <= end && (spot.span.begin < bracket || named.empty())) {
            named.push_back(&spot);
        }
        // "FRONT RM (BED 1)": the room is a bedroom.
        const bool inside =
            spot.span.begin == bracket + 1 && spot.span.end < sentence.tokens.size();
        if (inside && named.size() == 1 && isBedroom(spot.key) && !isBedroom(named[0]->key) &&
            named[0]->kind == SpaceKind::Room && isMark(sentence.tokens[spot.span.end], ")")) {
            named = {&spot};
        }
    }
    return named;
}

// "Roof: two layers, replace": a label that is a thing of the place as well.
bool isThingToo(const Sentence& sentence, const Spots& spots, const Named& named, std::size_t end) {
    if (named.size() != 1 || !named.front()->headingOnly) {
        return false;
    }
    const Span& name = named.front()->span;
    const bool more = end < sentence.tokens.size() ||
                      std::any_of(spots.acts.begin(), spots.acts.end(),
                                  [&](const ActSpot& act) { return act.span.begin >= name.end; });
    // "DR: …" is the dining room, "dr new" in a list a door.
    const bool label =
        (named.front()->kind == SpaceKind::Room || named.front()->key == "pool area") &&
        name.end < sentence.tokens.size() && isMark(sentence.tokens[name.end], ":-.(");
    // "- DR light fixture": in a list a room by its letters.
    const bool letters = named.front()->kind == SpaceKind::Room && sentence.opensLine &&
                         (sentence.bullet || sentence.labelled) && isInCapitals(sentence, name);
    return more && !label && !letters &&
           std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
               return object.span.begin <= name.begin && object.span.end >= name.end;
           });
}

// "LIVING / DINING", "Back room/kitchen": one open room, which goes by its first plain name.
// "LR/DR" are two.
void dropOpenPart(const Sentence& sentence, Named& named) {
    if (named.size() != 2 || !isSlash(sentence, named[0]->span.end)) {
        return;
    }
    const auto open = [&](const SpaceSpot* spot) {
        return spot->kind == SpaceKind::Room && !isBedroom(spot->key) && !isBath(spot->key) &&
               spot->key != "half bath" && spot->key != "stairs" && spot->key != "hall";
    };
    const std::size_t last = named[1]->span.end - 1;
    const bool two = wordIs(sentence, last, "room") || sentence.tokens[last].text.size() < 3;
    if (open(named[0]) && open(named[1]) && !two) {
        const bool plain = named[0]->key == "back room" || named[0]->key == "front room";
        named.erase(plain ? named.begin() : named.begin() + 1);
    }
}

// "OUTSIDE THE HOUSE": the whole house is not meant where a part of it is named.
void dropWhole(Named& named) {
    const bool part = std::any_of(named.begin(), named.end(), [](const SpaceSpot* spot) {
        return spot->kind != SpaceKind::Whole;
    });
    if (part) {
        std::erase_if(named, [](const SpaceSpot* spot) { return spot->kind == SpaceKind::Whole; });
    }
}

// "Three bedrooms upstairs.": the storey only says where they are.
void dropStorey(Named& named) {
    const bool group = std::any_of(named.begin(), named.end(), [](const SpaceSpot* spot) {
        return spot->kind == SpaceKind::Group;
    });
    if (group) {
        std::erase_if(named, [](const SpaceSpot* spot) { return spot->kind == SpaceKind::Level; });
    }
}

// "Downstairs bedroom, the primary.", "back bed = primary": two names of one room. "Underneath,
// there's a cellar.": the first says where the second is.
void dropFirstName(const Sentence& sentence, Named& named) {
    if (named.size() != 2) {
        return;
    }
    const std::size_t at = named[0]->span.end;
    const bool comma = isMark(sentence.tokens[at], ",");
    const bool same =
        (comma && wordIs(sentence, at + 1, "the")) || isMark(sentence.tokens[at], "=");
    const bool primary = same && named[1]->key == "primary bedroom" &&
                         named[0]->kind == SpaceKind::Room && named[1]->span.begin <= at + 2;
    const bool under = named[0]->key == "crawl space" && named[1]->key == "basement" &&
                       !sentence.alone && named[1]->span.begin > named[0]->span.end + 1;
    // "Patio, out the back.": where it is.
    if (comma && named[1]->key == "exterior" && named[0]->kind == SpaceKind::Outside) {
        named.pop_back();
        return;
    }
    if (primary || under) {
        named.erase(named.begin());
    }
}

// "LAUNDRY PORCH": one name made of two.
bool isOneName(const Named& named) {
    return named.size() == 2 && named[0]->span.end == named[1]->span.begin &&
           named[1]->kind != SpaceKind::Level && named[0]->kind == SpaceKind::Room;
}

}  // namespace

// "SHOWER ROOM" after "BATHROOM", or the other way round: two rooms of one sort, each with a name.
bool Walk::isOtherName(const SpaceSpot& spot) const {
    const KnownSpace* known = find(spot.key);
    if (known == nullptr || spot.kind != SpaceKind::Room || known->shown == spot.shown ||
        headOf(known->shown) == headOf(spot.shown)) {
        return false;
    }
    const auto named = [](const std::string& name) { return name.find(' ') != std::string::npos; };
    return (known->shown != spot.key && named(spot.shown)) ||
           (known->shown != known->key && named(known->shown) && spot.shown == spot.key);
}

// "BATHROOM" after "DOWNSTAIRS SHOWER ROOM": a heading of a plain name is another room than one
// that had a heading with its storey or side.
void Walk::keepApart(const SpaceSpot& spot) {
    const bool plain = spot.kind == SpaceKind::Room && spot.key.find(' ') == std::string::npos;
    if (!plain || find(spot.key) != nullptr || spot.headingOnly) {
        return;
    }
    const std::string other = resolve(spot);
    const bool sided = other.starts_with("upstairs ") || other.starts_with("downstairs ") ||
                       other.starts_with("basement ") || other.starts_with("back ") ||
                       other.starts_with("front ");
    if (sided && (contains(current_, other) || contains(trail_, other))) {
        learn(spot.key, spot.shown, spot.kind);
    }
}

// "Lake bedroom", "Shower bath": what a heading says before a room that the tables know tells it
// from the others of its sort.
void Walk::nameFully(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot,
                     std::size_t end) {
    const bool whole = end >= sentence.tokens.size() && spot.kind == SpaceKind::Room;
    std::string name;
    bool strange = false;
    for (std::size_t i = 0; whole && i < spot.span.end; ++i) {
        const Token& token = sentence.tokens[i];
        if (token.kind != TokenKind::Word) {
            return moveTo({&spot});
        }
        name += (name.empty() ? "" : " ") + token.plain;
        const bool cue = std::any_of(spots.cues.begin(), spots.cues.end(), [&](const CueSpot& one) {
            return one.cue != Cue::Material && one.span.holds(i);
        });
        strange = strange || (i < spot.span.begin && !cue);
        if (i < spot.span.begin && cue) {
            return moveTo({&spot});
        }
    }
    if (!strange || sentence.spoken || spot.span.begin > 1) {
        return moveTo({&spot});
    }
    SpaceSpot named = spot;
    named.key = name;
    named.shown = name;
    moveTo({&named});
}

// "Bath, upstairs": the storey tells the room from others; "Upstairs, the bathroom" says only where
// one goes. False where the heading names no storey with a room.
bool Walk::enterOnStorey(const Sentence& sentence, const std::vector<const SpaceSpot*>& named) {
    if (named.size() != 2 ||
        (named[0]->kind == SpaceKind::Level) == (named[1]->kind == SpaceKind::Level)) {
        return false;
    }
    const SpaceSpot* level = named[0]->kind == SpaceKind::Level ? named[0] : named[1];
    SpaceSpot room = *(level == named[0] ? named[1] : named[0]);
    if (room.kind != SpaceKind::Room) {
        return false;
    }
    level_ = level->key;
    const bool bare = room.key.find(' ') == std::string::npos;
    if (bare && sentence.alone && level == named[1]) {
        room.key = level->key + " " + room.key;
        room.shown = level->shown + " " + room.shown;
    }
    moveTo({&room});
    return true;
}

// Moves to what the heading up to token `end` names.
void Walk::enterNamed(const Sentence& sentence, const Spots& spots,
                      const std::vector<const SpaceSpot*>& named, std::size_t end) {
    // "DOWNSTAIRS BEDROOM AND BATH": both are down there.
    const bool row = named.size() == 2 && named[1]->key == "bathroom" &&
                     sentence.tokens[named[1]->span.begin - 1].kind == TokenKind::Word;
    for (const std::string_view storey : {"downstairs ", "upstairs "}) {
        const bool heads = sentence.heading ||
                           (sentence.alone && isInCapitals(sentence, {0, sentence.tokens.size()}));
        if (row && heads && named[0]->key.starts_with(storey)) {
            SpaceSpot bath = *named[1];
            bath.key = std::string(storey) + bath.key;
            bath.shown = std::string(storey) + bath.shown;
            return moveTo({named[0], &bath});
        }
    }
    if (enterOnStorey(sentence, named)) {
        return;
    }
    // "Kitchen extension": how the room was built.
    const bool built = isOneName(named) && (named[1]->key == "extension" || named[1]->key == "ell");
    if (built) {
        moveTo({named[0]});
    } else if (isOneName(named)) {
        SpaceSpot whole = *named[1];
        whole.span.begin = named[0]->span.begin;
        whole.key = named[0]->shown + " " + named[1]->shown;
        whole.shown = whole.key;
        whole.kind = SpaceKind::Room;
        moveTo({&whole});
    } else if (named.size() == 1 && end >= sentence.tokens.size() && isOtherName(*named.front())) {
        SpaceSpot other = *named.front();
        // The plain name is taken: the room keeps its own under another key.
        other.key = other.shown == other.key ? "the " + other.shown : other.shown;
        moveTo({&other});
    } else if (named.size() == 1) {
        if (end >= sentence.tokens.size()) {
            keepApart(*named.front());
        }
        nameFully(sentence, spots, *named.front(), end);
    } else {
        moveTo(named);
    }
}

void Walk::takeHeading(const Sentence& sentence, const Spots& spots, Placed& placed) {
    // "K dw new. fr - new. patio - ok": within a line that has its label, things and places by the
    // way.
    const bool within = labelled_ && !sentence.opensLine && !spots.spaces.empty() &&
                        spots.spaces.front().span.end < sentence.tokens.size() &&
                        isMark(sentence.tokens[spots.spaces.front().span.end], "-");
    const bool none = !spots.spaces.empty() && (isOnlyShed(sentence, spots, spots.spaces.front()) ||
                                                isSameRoom(sentence, spots.spaces.front()));
    // "Deck. Off the living."
    const bool where = sinceMove_ == 1 && !spots.spaces.empty() && !sentence.opensLine &&
                       saysWhereItIs(sentence, spots.spaces.front().span.begin);
    const bool part = !spots.spaces.empty() && isPartHere(sentence, spots.spaces.front());
    const bool served = !spots.spaces.empty() && !current_.empty() &&
                        isServed(sentence, spots, spots.spaces.front(), current_.front());
    const std::size_t end =
        within || none || where || part || served ? 0 : headingEnd(sentence, spots);
    if (end == 0) {
        takeLabel(sentence, spots, placed);
        return;
    }
    Named named = namedIn(sentence, spots, end);
    if (isThingToo(sentence, spots, named, end)) {
        const KnownSpace* here = current_.empty() ? nullptr : find(current_.front());
        if (here == nullptr || here->kind != named.front()->kind) {
            moveTo(named);
            placed.moved = true;
        }
        return;
    }
    dropWhole(named);
    dropStorey(named);
    dropFirstName(sentence, named);
    dropOpenPart(sentence, named);
    enterNamed(sentence, spots, named, end);
    if (current_.size() > 1) {
        lastPlaces_ = current_;
        placesAge_ = 0;
    }
    placed.from = end;
    placed.moved = true;
    placed.onlyPlace = end >= sentence.tokens.size();
}

}  // namespace ledgerboard::intake
