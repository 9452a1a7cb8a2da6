// Which of several rooms of one sort is meant: "front left", "the second", "the west one"?
#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/space_which.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/walk.h"
#include "core/intake/notes/walk_passed.h"

namespace ledgerboard::intake {

namespace {

// "front left bedroom"
bool isOfTwoWords(const std::vector<std::string>& keys) {
    return !keys.empty() && keys.front().ends_with(" bedroom") &&
           std::count(keys.front().begin(), keys.front().end(), ' ') == 2;
}

// "front bedroom", "bedroom 2"
std::string roomOf(const std::string& which, const std::string& room) {
    const bool number = which.size() == 1;
    return number ? room + " " + which : which + " " + room;
}

// "back bedroom", "small bedroom"
bool isOfSide(const std::string& key) {
    const std::string first = key.substr(0, key.find(' '));
    return key.ends_with(" bedroom") && (isSide(first) || first == "small" || first == "big");
}

// "The back one" after the downstairs front bedroom: down there too.
std::string storeyOf(const std::vector<std::string>& keys, const std::string& side) {
    for (const std::string_view storey : {"upstairs ", "downstairs "}) {
        const bool sided =
            keys.size() == 1 && keys.front().starts_with(storey) && isBedroom(keys.front());
        const std::string rest = sided ? keys.front().substr(storey.size()) : std::string();
        if (sided && isSide(side) &&
            (rest == "bedroom" || isSide(rest.substr(0, rest.find(' '))))) {
            return std::string(storey);
        }
    }
    return {};
}

// Whether the name that ends before token `at` is what the sentence speaks of.
bool isSaidOf(const Sentence& sentence, std::size_t at) {
    if (at > 0 && sentence.tokens[at - 1].text.ends_with("'s")) {
        return true;
    }
    if (at >= sentence.tokens.size()) {
        return false;
    }
    return isMark(sentence.tokens[at], ",:-.?") || wordIs(sentence, at, "have") ||
           wordIs(sentence, at, "has") || wordIs(sentence, at, "is") ||
           wordIs(sentence, at, "need") || wordIs(sentence, at, "want") ||
           wordIs(sentence, at, "get") || wordIs(sentence, at, "i") ||
           wordIs(sentence, at, "you") || wordIs(sentence, at, "we");
}

// 2 to 9 said in words at `at`; 0 if none.
int cardinalAt(const Sentence& sentence, std::size_t at) {
    if (at >= sentence.tokens.size() || sentence.tokens[at].kind != TokenKind::Word) {
        return 0;
    }
    const int number = smallNumber(sentence.tokens, at);
    return number > 1 ? number : 0;
}

// 2 to 9 said at token `at` as which of several: "the second", "two's"; 0 if none.
int ordinalAt(const Sentence& sentence, std::size_t at) {
    if (at >= sentence.tokens.size() || sentence.tokens[at].kind != TokenKind::Word ||
        sentence.tokens[at].word == kUnknown) {
        return 0;
    }
    const std::uint32_t node = tables().phrases.step(0, sentence.tokens[at].word);
    for (const Meaning& meaning : tables().phrases.at(node)) {
        if (node != 0 && meaning.from == From::Qualifier &&
            tables().qualifiers[meaning.row].size() == 1) {
            return tables().qualifiers[meaning.row].front() - '0';
        }
    }
    return 0;
}

// Where "The one on the" ends, before the side; 0 where the sentence opens otherwise.
std::size_t endOfTheOne(const Sentence& sentence) {
    const bool where = wordIs(sentence, 2, "on") || wordIs(sentence, 2, "in") ||
                       wordIs(sentence, 2, "at") || wordIs(sentence, 2, "to");
    if (!wordIs(sentence, 0, "the") || !wordIs(sentence, 1, "one") || !where) {
        return 0;
    }
    const std::size_t at = wordIs(sentence, 3, "the") ? 4 : 3;
    return at < sentence.tokens.size() && isSide(sentence.tokens[at].plain) ? at : 0;
}

// ", front, middle and back,": a side by itself in a list behind the group that ends at token
// `from`.
bool isListed(const Sentence& sentence, std::size_t at, std::size_t from) {
    const std::string& word = sentence.tokens[at].plain;
    const bool side = isSide(word) || isColor(word) || word == "end" || word == "rear";
    return side && at > from &&
           (isMark(sentence.tokens[at - 1], ",:(-") || wordIs(sentence, at - 1, "and")) &&
           (isMark(sentence.tokens[at + 1], ",.);:") || wordIs(sentence, at + 1, "and"));
}

// Whether the tables have a room of that name.
bool isRoomRow(const std::string& name) {
    return std::any_of(tables().spaces.begin(), tables().spaces.end(), [&](const SpaceRow& row) {
        return row.name == name && row.kind == SpaceKind::Room;
    });
}

// "Left front bedroom and left back bedroom. … Back one, no."
std::string fullNameOf(const std::vector<KnownSpace>& known, const std::string& key) {
    const bool named = std::any_of(known.begin(), known.end(),
                                   [&](const KnownSpace& space) { return space.key == key; });
    const auto longer = std::find_if(known.begin(), known.end(), [&](const KnownSpace& space) {
        return space.key.ends_with(" " + key);
    });
    return named || longer == known.end() ? key : longer->key;
}

}  // namespace

// "The second's much the same", "Two, same.", "Third one, …", "in four there's …": after a bedroom
// that goes by its number.
bool Walk::takeNumbered(const Sentence& sentence) {
    const bool in = wordIs(sentence, 0, "in");
    std::size_t at = in || wordIs(sentence, 0, "and") ? 1 : 0;
    const bool the = wordIs(sentence, at, "the");
    at += the ? 1 : 0;
    if (at >= sentence.tokens.size()) {
        return false;
    }
    const bool is = sentence.tokens[at].text.ends_with("'s");
    const int ordinal = ordinalAt(sentence, at);
    int number = ordinal > 0 ? ordinal : the ? 0 : cardinalAt(sentence, at);
    const auto known = [&](int which) {
        return find("bedroom " + std::to_string(which)) != nullptr;
    };
    std::size_t end = at + 1;
    end += ordinal > 0 && (wordIs(sentence, end, "one") || wordIs(sentence, end, "room")) ? 1 : 0;
    // "Third, paint.", "and three." right after the second bedroom, "One's got a crack" of
    // anything.
    const bool next = !in && !the && contains(current_, "bedroom " + std::to_string(number - 1)) &&
                      (end > at + 1 || ordinal > 0 ||
                       (end < sentence.tokens.size() && isMark(sentence.tokens[end], ",:.")));
    const bool named = (the && ordinal > 0) || ((is || in) && ordinal == 0 && known(number));
    const bool here = !current_.empty() && isBedroom(current_.front());
    if (number < 2 || !(next || named) || !(known(number - 1) || known(number)) || !here ||
        !(isSaidOf(sentence, end) || (next && end > at + 1))) {
        return false;
    }
    if (current_.size() > 1) {
        lastPlaces_ = current_;
        placesAge_ = 0;
    }
    const std::string key = "bedroom " + std::to_string(number);
    learn(key, key, SpaceKind::Room);
    stand({key});
    return true;
}

// "Front left, the windows …" after "Bedrooms.": the front left bedroom.
bool Walk::takeQualified(const Sentence& sentence) {
    if (takeNumbered(sentence)) {
        return true;
    }
    // "Two more bedrooms. Paint both. The one on the left, …"
    constexpr int kLately = 6;
    std::size_t at = endOfTheOne(sentence);
    const bool theOne = at > 0;
    if (group_.empty() && !(theOne && bedroomsAge_ < kLately)) {
        return false;
    }
    const std::size_t lead = at + 4;
    const std::string group = group_.empty() ? "bedroom" : group_;
    std::string key;
    std::size_t words = 0;
    while (at < sentence.tokens.size() && sentence.tokens[at].kind == TokenKind::Word &&
           at < lead) {
        const std::uint32_t node = tables().phrases.step(0, sentence.tokens[at].word);
        std::string name;
        for (const Meaning& meaning : tables().phrases.at(node)) {
            if (node != 0 && sentence.tokens[at].word != kUnknown &&
                meaning.from == From::Qualifier) {
                name = tables().qualifiers[meaning.row];
            }
        }
        // "Main first.": the order, and no number.
        if (name.empty() || (name.size() == 1 && words > 0)) {
            const bool leads =
                wordIs(sentence, at, "the") || (at == 0 && wordIs(sentence, at, "in"));
            if (at < 2 && key.empty() && leads) {
                ++at;
                continue;
            }
            break;
        }
        key += name + " ";
        ++words;
        ++at;
    }
    const bool the = wordIs(sentence, 0, "the") || wordIs(sentence, 1, "the");
    const bool one = !theOne && wordIs(sentence, at, "one") &&
                     ((at > 1 && the) || (words == 1 && at == 1 && isSaidOf(sentence, at + 1)));
    if (one || (words > 0 && (wordIs(sentence, at, "first") || wordIs(sentence, at, "next")))) {
        ++at;
    }
    // "Front right, purple" after "front left bedroom": named by the same two words.
    const bool corner = words == 2 && isOfTwoWords(current_);
    // "Middle, paint." right after "Back bedroom, …".
    const bool next = words == 1 && at == 1 && at < sentence.tokens.size() &&
                      isMark(sentence.tokens[at], ",") && current_.size() == 1 &&
                      isSide(key.substr(0, key.size() - 1)) && isOfSide(current_.front());
    if (groupLoose_ && !one && !corner && !next && !theOne) {
        return false;
    }
    const bool closes = one || (words > 0 && isSaidOf(sentence, at));
    // "Basement, water's getting in.": a space of its own.
    const std::string alone = words == 1 ? key.substr(0, key.size() - 1) : std::string();
    const bool space = !one && isRoomRow(alone);
    if (key.empty() || !closes || space) {
        return false;
    }
    key.pop_back();
    key =
        key.size() == 1 ? roomOf(key, group_) : storeyOf(current_, alone) + roomNamed(key, group_);
    key = fullNameOf(known_, key);
    learn(key, key, SpaceKind::Room);
    stand({key});
    return true;
}

// "Bedroom two, the carpet's bad. … Paint in both.", "… in all three": this one and those before
// it, where no so many were named together. All of a row of bedrooms or baths where `count` is 0.
void Walk::keepRun(std::size_t count) {
    if (current_.size() != 1 || (count > 0 && lastPlaces_.size() == count)) {
        return;
    }
    const bool bath = isBath(current_.front());
    std::vector<std::string> run;
    if (bath || isBedroom(current_.front())) {
        run = current_;
    }
    for (std::size_t i = trail_.size(); i-- > 0 && !run.empty();) {
        const std::string& key = trail_[i];
        const bool alike = bath ? isBath(key) : isBedroom(key);
        if ((count > 0 && run.size() == count) || (!alike && (bath || !isBath(key)))) {
            break;
        }
        if (alike && !contains(run, key)) {
            run.insert(run.begin(), key);
        }
    }
    // "The sleepout, and the bunk room off it. Carpet in both's all right.": the two named last.
    constexpr int kLately = 8;
    if (run.size() != count && count == 2 && !isBedroom(current_.front())) {
        run = {current_.front()};
        for (std::size_t i = named_.size(); i-- > 0 && run.size() < count;) {
            const KnownSpace* space = find(named_[i].key);
            const bool near = named_[i].sentence + kLately >= sentences_;
            if (near && space != nullptr && space->kind == SpaceKind::Room &&
                !contains(run, space->key) && (bath || !isBath(space->key))) {
                run.insert(run.begin(), space->key);
            }
        }
    }
    if (run.size() > 1 && (count == 0 || run.size() == count)) {
        lastPlaces_ = std::move(run);
        placesAge_ = 0;
    }
}

// Takes the space out of the rooms that the clause speaks of together.
void Walk::leaveOut(const SpaceSpot& spot, Clause& clause) const {
    const std::string out = find(spot.key) != nullptr ? spot.key : std::string();
    const auto group =
        std::find_if(clause.keys.begin(), clause.keys.end(),
                     [](const std::string& key) { return key.find('*') != std::string::npos; });
    if (group != clause.keys.end()) {
        const std::size_t star = group->find('*');
        const std::vector<std::string> members =
            membersOf(group->substr(0, star), std::stoi(group->substr(star + 1)));
        if (members.size() > 1) {
            clause.keys.erase(group);
            clause.keys.insert(clause.keys.end(), members.begin(), members.end());
        }
    }
    if (clause.keys.size() > 1 && !out.empty()) {
        std::erase(clause.keys, out);
    }
}

// "All three are carpeted.", "Paint, all four.": the bedrooms that the speaker came through, where
// no things were counted so just before.
void Walk::hearAll(const Sentence& sentence, Spots& spots) {
    static const std::vector<std::string_view> kCounts = {"three", "four", "five"};
    static const std::vector<std::string_view> kSaid = {"are", "get", "need", "have", "want", "to"};
    constexpr int kJust = 2;
    constexpr std::size_t kLeast = 3;
    const std::vector<std::string> before = std::move(counted_);
    counted_.clear();
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        const std::string& word = sentence.tokens[i].plain;
        const auto count = std::find(kCounts.begin(), kCounts.end(), word);
        if (count == kCounts.end()) {
            continue;
        }
        const bool closes = i + 1 >= sentence.tokens.size() ||
                            sentence.tokens[i + 1].kind == TokenKind::Mark ||
                            isOneOf(sentence.tokens[i + 1].plain, kSaid);
        const bool things = !spots.objects.empty() && spots.objects.front().span.begin < i;
        const std::size_t many = kLeast + static_cast<std::size_t>(count - kCounts.begin());
        const bool all = i > 0 && wordIs(sentence, i - 1, "all") && closes && !things &&
                         !contains(before, word) && current_.size() == 1;
        const bool rooms = all && isBedroom(current_.front());
        if (rooms) {
            keepRun(many);
        }
        // "Works to the bedrooms. All three to be decorated.": as many as were just spoken of.
        const bool group = all && bedroomsAge_ <= kJust && lastPlaces_.size() != many;
        if (group) {
            lastPlaces_ = {"bedrooms*" + std::to_string(many)};
            placesAge_ = 0;
        }
        if (!group && (!rooms || lastPlaces_.size() != many)) {
            counted_.push_back(word);
        } else if (!spots.has(Cue::Rooms)) {
            std::erase_if(spots.cues, [&](const CueSpot& cue) {
                return cue.span.begin <= i && cue.span.end >= i;
            });
            const auto at = std::find_if(spots.cues.begin(), spots.cues.end(),
                                         [&](const CueSpot& cue) { return cue.span.begin > i; });
            spots.cues.insert(at, {{i - 1, i + 1}, Cue::Rooms});
        }
    }
}

// "Bedroom 2 is pink, bedroom 3 is black.": which rooms "both" will mean.
void Walk::keepRow(const Spots& spots, const Placed& placed) {
    std::vector<std::string> rooms;
    const auto add = [&](const std::vector<std::string>& keys) {
        for (const std::string& key : keys) {
            if (isBedroom(key) && key.find('*') == std::string::npos && !contains(rooms, key)) {
                rooms.push_back(key);
            }
        }
    };
    if (placed.moved) {
        add(current_);
    }
    for (const SpaceSpot& spot : spots.spaces) {
        const bool side = isSide(spot.key.substr(0, spot.key.find(' ')));
        if (spots.objects.empty() && side && spot.kind == SpaceKind::Room) {
            add({spot.key});
        }
    }
    for (const Placing& part : placed.parts) {
        add(part.keys);
    }
    if (rooms.size() > 1) {
        // "Upstairs are the north bedroom and the south bedroom. South needs paint."
        const bool sided = std::all_of(rooms.begin(), rooms.end(), [](const std::string& key) {
            return isSide(key.substr(0, key.find(' ')));
        });
        if (sided) {
            group_ = "bedroom";
            groupLoose_ = false;
            for (const std::string& key : rooms) {
                learn(key, key, SpaceKind::Room);
            }
        }
        lastPlaces_ = std::move(rooms);
        placesAge_ = 0;
    }
}

// "In the oak room …": a room by the name that the speaker gave it before.
void Walk::hearOwnRooms(const Sentence& sentence, Spots& spots) {
    if (namesOwnRooms(sentence.tokens)) {
        for (const SpaceSpot& spot : spots.spaces) {
            if (spot.key.ends_with(" room")) {
                learn(spot.key, spot.shown, spot.kind);
            }
        }
    }
    for (std::size_t i = 0; i + 1 < sentence.tokens.size(); ++i) {
        if (!wordIs(sentence, i + 1, "room") || sentence.tokens[i].kind != TokenKind::Word) {
            continue;
        }
        const KnownSpace* known = find(sentence.tokens[i].plain + " room");
        const auto at = std::find_if(spots.spaces.begin(), spots.spaces.end(),
                                     [&](const SpaceSpot& spot) { return spot.span.end > i; });
        const bool taken = at != spots.spaces.end() && at->span.begin < i + 2;
        if (known == nullptr || taken) {
            continue;
        }
        SpaceSpot spot;
        spot.span = {i, i + 2};
        spot.key = known->key;
        spot.shown = known->shown;
        spot.kind = known->kind;
        spots.spaces.insert(at, spot);
        // "oak": no floor
        std::erase_if(spots.objects, [&](const ObjectSpot& object) {
            return object.span.begin == i && object.span.end == i + 1;
        });
    }
}

// "Front right room's a bedroom.", "Back right room, other bedroom.": what the room of that side
// is.
void Walk::nameAsBedroom(const Sentence& sentence, Spots& spots) {
    constexpr std::string_view kRoom = " room";
    if (spots.spaces.size() < 2) {
        return;
    }
    SpaceSpot& room = spots.spaces[0];
    const SpaceSpot& sort = spots.spaces[1];
    const std::size_t end = room.span.end;
    const bool is = sentence.tokens[end - 1].text.ends_with("'s") || wordIs(sentence, end, "is");
    const bool said =
        is && sort.span.begin <= end + 2 && wordIs(sentence, sort.span.begin - 1, "a");
    if (room.span.begin > 1 || !room.key.ends_with(kRoom) || sort.key != "bedroom" || !said ||
        !isSide(room.key.substr(0, room.key.find(' ')))) {
        return;
    }
    room.key.replace(room.key.size() - kRoom.size(), kRoom.size(), " bedroom");
    room.shown = room.key;
    spots.spaces.erase(spots.spaces.begin() + 1);
}

// "Little front bedroom", "… upstairs front bedroom it's got …" in speech without marks: the side
// tells which, as long as no other goes by it.
void Walk::namePlainly(const Sentence& sentence, SpaceSpot& spot) {
    // "Bath upstairs.": the bath, as long as there is no other.
    const bool here =
        wordIs(sentence, spot.span.end - 1, "here") || wordIs(sentence, spot.span.end - 1, "there");
    const std::string& said = sentence.tokens[spot.span.end - (here ? 2 : 1)].plain;
    const std::string last = said == "up" || said == "down" ? said + "stairs" : said;
    if ((houseUnits_.baths || houseUnits_.halfBath) && isBath(spot.key)) {
        // "The bathroom down there", said of the basement.
        if (here && spot.key == "downstairs bathroom" && contains(current_, "basement")) {
            spot.key = spot.shown = "basement bathroom";
        }
        return;
    }
    if (last + " bathroom" == spot.key && find(spot.key) == nullptr) {
        const bool another = std::any_of(known_.begin(), known_.end(), [](const KnownSpace& known) {
            return isBath(known.key) && known.key != "primary bath";
        });
        if (!another) {
            spot.key = "bathroom";
            spot.shown = "bath";
            bathStorey_ = last;
        }
        return;
    }
    if (last + " living room" == spot.key && find("living room") == nullptr) {
        spot.key = "living room";
        spot.shown = spot.key;
        return;
    }
    const std::size_t gap = spot.key.find(' ');
    if (gap == std::string::npos || find(spot.key) != nullptr) {
        return;
    }
    const std::string first = spot.key.substr(0, gap);
    const std::string rest = spot.key.substr(gap + 1);
    // "Downstairs family room": a house has one, where it has no flats.
    if (unit_.empty() && (first == "downstairs" || first == "upstairs") &&
        (rest == "family room" || rest == "bonus room") && find(rest) == nullptr) {
        spot.key = spot.shown = rest;
        return;
    }
    if (!isBedroom(spot.key)) {
        return;
    }
    const bool size = first == "small" || first == "big";
    const bool storey = (first == "upstairs" || first == "downstairs") && isBreathless(sentence);
    const KnownSpace* other = find(rest);
    if ((size || storey) && isSide(rest.substr(0, rest.find(' '))) &&
        (other == nullptr || contains(current_, rest))) {
        spot.key = spot.shown = rest;
    }
}

// "Bedrooms are the front one, the back one, and the box room.", "Bedrooms. Front one, back one."
void Walk::learnOnes(const Sentence& sentence, const Spots& spots) {
    const bool group = std::any_of(
        spots.spaces.begin(), spots.spaces.end(),
        [](const SpaceSpot& spot) { return spot.key == "bedrooms" || spot.key == "bathrooms"; });
    bedroomsAge_ = group && spots.spaces.front().key != "bathrooms" ? 0 : bedroomsAge_ + 1;
    if (!group && group_.empty()) {
        return;
    }
    const bool baths = group ? spots.spaces.front().key == "bathrooms" : group_ == "bathroom";
    std::vector<std::string> ones;
    bool bare = false;
    for (std::size_t i = 0; i + 1 < sentence.tokens.size(); ++i) {
        // "the northeast, the northwest and the south"; not "the kitchen and both baths"
        const bool space = std::any_of(spots.spaces.begin(), spots.spaces.end(),
                                       [&](const SpaceSpot& spot) { return spot.span.holds(i); });
        const bool closes =
            group && !space && i > 1 && wordIs(sentence, i - 1, "the") &&
            (isMark(sentence.tokens[i - 2], ",") || wordIs(sentence, i - 2, "and") ||
             wordIs(sentence, i - 2, "is")) &&
            (isMark(sentence.tokens[i + 1], ",.") || wordIs(sentence, i + 1, "and"));
        const bool listed = group && !space && isListed(sentence, i, spots.spaces.front().span.end);
        if ((!wordIs(sentence, i + 1, "one") && !closes && !listed) ||
            sentence.tokens[i].word == kUnknown) {
            continue;
        }
        const std::uint32_t node = tables().phrases.step(0, sentence.tokens[i].word);
        for (const Meaning& meaning : tables().phrases.at(node)) {
            if (node != 0 && meaning.from == From::Qualifier) {
                ones.push_back(
                    roomOf(tables().qualifiers[meaning.row], baths ? "bath" : "bedroom"));
                bare = bare || listed;
            }
        }
    }
    if (ones.size() < 2 && (!group || bare)) {
        return;
    }
    for (const std::string& name : ones) {
        learn(name, name, SpaceKind::Room);
    }
    if (ones.size() > 1) {
        lastPlaces_ = ones;
        placesAge_ = 0;
    }
    if (ones.size() > 1 && spots.acts.empty()) {
        stand(ones);
    }
}

// "Third floor. This is the fifth bedroom.": another name for where one stands.
bool Walk::isAlias(const Sentence& sentence) const {
    const KnownSpace* here = current_.empty() ? nullptr : find(current_.front());
    return sinceMove_ <= 1 && here != nullptr && here->kind == SpaceKind::Level &&
           wordIs(sentence, 0, "this");
}

// "Hall bath first. This is the kids' bath.": the same once more.
bool Walk::isSameRoom(const Sentence& sentence, const SpaceSpot& spot) const {
    const std::string here = current_.size() == 1 ? current_.front() : std::string();
    const bool thisIs = wordIs(sentence, 0, "this") || wordIs(sentence, 0, "that");
    return sinceMove_ <= 1 && thisIs && spot.kind == SpaceKind::Room && spot.span.begin <= 4 &&
           (isBath(here) || isBedroom(here)) && here.find(' ') != std::string::npos &&
           headOf(spot.key) == headOf(here) && find(spot.key) == nullptr;
}

// Whether the space is a thing of the garden where the speaker stands.
bool Walk::isOnGrounds(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) const {
    const bool part = spot.key == "deck" || spot.key == "patio";
    const std::string& here = current_.front();
    const bool garden = here.ends_with("yard") || here == "garden";
    return (garden || !part) && isThingOfGrounds(sentence, spots, spot);
}

}  // namespace ledgerboard::intake
