#include "core/intake/notes/spaces.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/space_rows.h"
#include "core/intake/notes/space_which.h"

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kMostQualifiers = 3;

class Finder {
  public:
    explicit Finder(std::span<const Token> tokens) : tokens_(tokens) {}

    std::vector<SpaceSpot> run() {
        std::size_t at = takeNamedRoom();
        row_ = namesOwnRooms(tokens_);
        while (at < tokens_.size()) {
            const bool half = tokens_[at].value == 500 && tokens_[at].word != kUnknown;
            at = tokens_[at].kind == TokenKind::Word || half ? takeAt(at) : at + 1;
        }
        return std::move(spots_);
    }

  private:
    // "Unit 3F", "Apt 2F": the name of a flat, not a storey.
    [[nodiscard]] bool isFlatNumber(std::size_t at) const {
        static const std::vector<std::string_view> kFlats = {"unit", "apt", "apartment", "flat",
                                                             "suite"};
        const std::string_view text = tokens_[at].text;
        return at > 0 && text.front() >= '0' && text.front() <= '9' &&
               isOneOf(tokens_[at - 1].plain, kFlats);
    }

    std::size_t takeAt(std::size_t at) {
        if (isFlatNumber(at)) {
            return at + 1;
        }
        if (const std::size_t end = takeSeveral(at); end > at) {
            return end;
        }
        RowFound whole = longestRow(tokens_, at, From::Space);
        // "the roof space" is not the roof.
        if (whole.end == at + 2 && whole.end < tokens_.size() &&
            longestRow(tokens_, at + 1, From::Space).end > whole.end) {
            return at + 1;
        }
        if (whole.end == at + 1 && isWhatSomebodyDid(tokens_[at])) {
            whole = {};
        }
        if (const std::size_t end = whole.row == kNone ? takeNamedSort(at) : at; end > at) {
            return end;
        }
        const bool called = whole.row == kNone && isCalledRoom(tokens_, at);
        if (called || (row_ && isOwnRoom(tokens_, at))) {
            push(at, at + 2, tokens_[at].plain + " room", SpaceKind::Room, false);
            return at + 2;
        }
        std::size_t base = at;
        std::vector<std::string> names;
        for (std::size_t i = 0; i < kMostQualifiers; ++i) {
            const RowFound qualifier = longestRow(tokens_, base, From::Qualifier);
            if (qualifier.row == kNone) {
                break;
            }
            // "down the hall first bedroom": the hall is passed on the way.
            const std::string& last = names.empty() ? std::string() : names.back();
            const bool passed = last == "hall" && tables().qualifiers[qualifier.row].size() == 1;
            if (passed) {
                names.clear();
                at = qualifier.end - 1;
            }
            names.push_back(tables().qualifiers[qualifier.row]);
            base = qualifier.end;
            if (base < tokens_.size() && (isHyphen(tokens_, base) || isApostrophe(base))) {
                ++base;
            }
            const RowFound room = longestRow(tokens_, base, From::Space);
            // "1F DR": a short name that means a room in a heading alone.
            const bool alone = at == 0 && (room.end >= tokens_.size() ||
                                           tokens_[room.end].kind == TokenKind::Mark);
            if (room.row != kNone && room.end > whole.end && isOnStorey(at, room.row) &&
                qualifies(tables().spaces[room.row], alone ? 0 : room.flag)) {
                return makeQualified(at, names, room);
            }
            if (base < tokens_.size() && isRoomWord(base) && base + 1 > whole.end) {
                return makeRoom(at, base + 1, names);
            }
            if (at == 0 && isBedLabel(base) && base + 1 > whole.end) {
                if (const int number = smallNumber(tokens_, base + 1); number > 0) {
                    names.push_back(std::to_string(number));
                }
                const std::size_t end = base + (names.back().size() == 1 ? 2 : 1);
                makeQualified(at, names, {end, bedroomRow(), 0});
                spots_.back().shown = spots_.back().key;
                return end;
            }
        }
        if (whole.row == kNone) {
            return takeUnlisted(at);
        }
        return makePlain(at, whole);
    }

    // Takes the rooms that stand at `at` in a row. Their end; `at` where there are none.
    std::size_t takeSeveral(std::size_t at) {
        std::vector<SpaceSpot> rooms = roomsInRow(tokens_, at);
        if (rooms.empty() && !spots_.empty()) {
            rooms = otherOfSort(tokens_, at, spots_.back());
        }
        const std::size_t end = rooms.empty() ? at : rooms.back().span.end;
        std::move(rooms.begin(), rooms.end(), std::back_inserter(spots_));
        return end;
    }

    // "Front bed: sand the floor", "Upstairs bed 3": before the mark of a label, a bedroom.
    [[nodiscard]] bool isBedLabel(std::size_t at) const {
        static const WordId kBed = tables().id("bed");
        if (at >= tokens_.size() || tokens_[at].word != kBed || tokens_[at].plain != "bed") {
            return false;
        }
        const std::size_t end = at + (smallNumber(tokens_, at + 1) > 0 ? 2 : 1);
        return end >= tokens_.size() || (tokens_[end].kind == TokenKind::Mark &&
                                         (tokens_[end].mark == ':' || tokens_[end].mark == '-' ||
                                          (tokens_[end].mark == '/' && end == at + 2)));
    }

    // "Beds 1 to 4", "Beds 2 and 3"
    [[nodiscard]] bool isRow(std::size_t at) const {
        static const WordId kAnd = tables().id("and");
        return at + 2 < tokens_.size() && smallNumber(tokens_, at + 2) > 0 &&
               (isTo(at + 1) || tokens_[at + 1].word == kAnd);
    }

    // "1 to 4", "2-4", "two through five"
    [[nodiscard]] bool isTo(std::size_t at) const {
        static const WordId kTo = tables().id("to");
        static const WordId kThrough = tables().id("through");
        return at < tokens_.size() &&
               (tokens_[at].word == kTo || tokens_[at].word == kThrough || isHyphen(tokens_, at));
    }

    // Which bedroom a label "b1" means; 0 where there is none.
    [[nodiscard]] int bedByLetter(std::size_t at) const {
        const std::string& word = tokens_[at].plain;
        const bool label =
            at == 0 && word.size() == 2 && word[0] == 'b' && word[1] > '0' && word[1] <= '9';
        return label ? word[1] - '0' : 0;
    }

    [[nodiscard]] static std::uint32_t bedroomRow() {
        static const std::uint32_t kRow = [] {
            const auto& rows = tables().spaces;
            const auto at = std::find_if(rows.begin(), rows.end(),
                                         [](const SpaceRow& row) { return row.name == "bedroom"; });
            return static_cast<std::uint32_t>(at - rows.begin());
        }();
        return kRow;
    }

    // "bed 1", "b1 - new carpet": a bedroom, not a bed.
    std::size_t takeUnlisted(std::size_t at) {
        static const WordId kBed = tables().id("bed");
        const std::size_t next = at + 1;
        if (const std::size_t end = takeOwned(at); end > at) {
            return end;
        }
        // "beds (3) - paint"
        if (at == 0 && tokens_[at].plain == "beds" && next < tokens_.size() &&
            tokens_[next].kind == TokenKind::Mark) {
            const bool bracket = tokens_[next].mark == '(' && next + 1 < tokens_.size();
            push(at, next, "bedrooms", SpaceKind::Group, false,
                 bracket ? smallNumber(tokens_, next + 1) : 0);
            return next;
        }
        if (const auto [name, end] = at == 0 && tokens_[at].word == kBed
                                         ? whichAfter(tokens_, at, next)
                                         : std::pair(std::string(), at);
            !name.empty()) {
            push(at, end, roomNamed(name, "bedroom"), SpaceKind::Room, false);
            spots_.back().shown = spots_.back().key;
            return end;
        }
        if (const int number = bedByLetter(at); number > 0) {
            push(at, next, "bedroom " + std::to_string(number), SpaceKind::Room, false);
            spots_.back().shown = spots_.back().key;
            return next;
        }
        if (next >= tokens_.size() || tokens_[at].word == kUnknown) {
            return next;
        }
        // "Bed one carpet replaced, …": as a sentence begins, too.
        if (tokens_[at].word == kBed && smallNumber(tokens_, next) > 0 &&
            (next + 1 >= tokens_.size() || tokens_[next + 1].kind == TokenKind::Mark ||
             (at == 0 && (tokens_[next].kind == TokenKind::Word || isRow(next) ||
                          (tokens_[at].plain == "bed" && !tokens_[next + 1].glued))))) {
            return makeNumbered(at, next, tables().spaces[bedroomRow()]);
        }
        return next;
    }

    // "The lake bedroom": which of several, by a word that no table knows as such. The end of it;
    // `at` where there is none.
    std::size_t takeNamedSort(std::size_t at) {
        static const std::vector<std::string_view> kPlain = {
            "last",   "next",  "same",   "only", "nice",      "whole",     "entire",   "new",
            "good",   "extra", "actual", "real", "existing",  "current",   "original", "finished",
            "nicest", "best",  "worst",  "one",  "remaining", "adjoining", "adjacent", "proper"};
        static const WordId kThe = tables().id("the");
        const bool article = at > 0 && tokens_[at - 1].word == kThe;
        if (!article && at > 0) {
            return at;
        }
        const RowFound room = longestRow(tokens_, at + 1, From::Space);
        const std::string& word = tokens_[at].plain;
        if (room.row == kNone || room.end != at + 2 ||
            tables().spaces[room.row].name != "bedroom" || word.ends_with("'s") ||
            tokens_[at + 1].text.ends_with('s') ||
            tables().number(tokens_[at].word).kind != NumberKind::None || isOneOf(word, kPlain)) {
            return at;
        }
        const std::uint32_t node =
            tokens_[at].word == kUnknown ? 0 : tables().phrases.step(0, tokens_[at].word);
        for (const Meaning& meaning : tables().phrases.at(node)) {
            if (node != 0 && (meaning.from == From::Cue || meaning.from == From::Qualifier ||
                              meaning.from == From::Act || meaning.from == From::Object)) {
                return at;
            }
        }
        push(at, at + 2, word + " bedroom", SpaceKind::Room, false);
        return at + 2;
    }

    // "Milk room. …": what stands before "room" where a sentence begins, if no table knows it.
    std::size_t takeNamedRoom() {
        static const WordId kThe = tables().id("the");
        static const WordId kIn = tables().id("in");
        const bool in = tokens_.size() > 2 && tokens_[0].word == kIn && tokens_[1].word == kThe;
        static const std::vector<std::string_view> kJoints = {"the", "so", "and", "now", "okay"};
        const bool joint = !tokens_.empty() && isOneOf(tokens_[0].plain, kJoints);
        const std::size_t at = in ? 2 : joint ? 1 : 0;
        if (longestRow(tokens_, at, From::Space).row != kNone) {
            return 0;
        }
        static const WordId kNext = tables().id("next");
        static const std::vector<WordId> kSays = {
            tables().id("is"),   tables().id("has"), tables().id("have"), tables().id("need"),
            tables().id("want"), tables().id("was"), tables().id("at"),   tables().id("over"),
            tables().id("off"),  tables().id("i"),   tables().id("get"),  tables().id("will")};
        const bool said =
            at + 2 < tokens_.size() && tokens_[at + 2].word != kUnknown &&
            std::find(kSays.begin(), kSays.end(), tokens_[at + 2].word) != kSays.end();
        const bool closes = ((in || said) && namesRoom(tokens_[at].plain)) ||
                            at + 2 >= tokens_.size() || tokens_[at + 2].kind == TokenKind::Mark ||
                            tokens_[at + 2].word == kNext;
        if (at + 1 >= tokens_.size() || tokens_[at].kind != TokenKind::Word ||
            !isRoomWord(at + 1) || !closes ||
            tables().number(tokens_[at].word).kind != NumberKind::None) {
            return 0;
        }
        const std::uint32_t node =
            tokens_[at].word == kUnknown ? 0 : tables().phrases.step(0, tokens_[at].word);
        for (const Meaning& meaning : tables().phrases.at(node)) {
            if (node != 0 && (meaning.from == From::Cue || meaning.from == From::Qualifier) &&
                !namesRoom(tokens_[at].plain)) {
                return 0;
            }
        }
        push(at, at + 2, tokens_[at].plain + " room", SpaceKind::Room, false);
        return at + 2;
    }

    // "kids'": the mark belongs to the word.
    [[nodiscard]] bool isApostrophe(std::size_t at) const {
        return at < tokens_.size() && tokens_[at].kind == TokenKind::Mark &&
               tokens_[at].mark == '\'' && tokens_[at].glued;
    }

    // "Dad's room", "the girls' room": a room known by whose it is. Its end; `at` where there is
    // none.
    std::size_t takeOwned(std::size_t at) {
        const std::string& word = tokens_[at].plain;
        const bool single = word.size() > 3 && word.ends_with("'s");
        const bool plural = word.size() > 2 && word.ends_with('s') && isApostrophe(at + 1);
        std::size_t room = at + (plural ? 2 : 1);
        // "it's room enough"
        static const std::vector<std::string_view> kNone = {"it's",   "that's", "there's", "here's",
                                                            "what's", "he's",   "she's",   "who's"};
        if ((!single && !plural) || room >= tokens_.size() || isOneOf(word, kNone)) {
            return at;
        }
        static const WordId kOld = tables().id("old");
        room += tokens_[room].word == kOld && room + 1 < tokens_.size() ? 1 : 0;
        // "somebody's" is two words of one text.
        while (room < tokens_.size() && tokens_[room].text.data() == tokens_[at].text.data()) {
            ++room;
        }
        if (room >= tokens_.size() || !isRoomWord(room)) {
            return at;
        }
        const std::string key = word + (plural ? "'" : "") + " room";
        push(at, room + 1, key, SpaceKind::Room, false);
        spots_.back().shown = key;
        return room + 1;
    }

    // "Down kitchen" of a house of two flats, and not the way down to the cellar.
    [[nodiscard]] bool isOnStorey(std::size_t at, std::uint32_t room) const {
        static const std::vector<std::string_view> kRooms = {"kitchen", "living room",
                                                             "dining room", "bathroom", "bedroom"};
        const bool way = tokens_[at].plain == "up" || tokens_[at].plain == "down";
        return !way ||
               (at == 0 && tokens_[0].capital && isOneOf(tables().spaces[room].name, kRooms));
    }

    [[nodiscard]] static bool qualifies(const SpaceRow& row, std::uint8_t flag) {
        return flag != kHeadingOnly && row.name != "exterior" &&
               (row.kind == SpaceKind::Room || row.kind == SpaceKind::Outside);
    }

    [[nodiscard]] bool isRoomWord(std::size_t at) const {
        static const WordId kRoom = tables().id("room");
        return tokens_[at].word == kRoom && kRoom != kUnknown;
    }

    void push(std::size_t begin, std::size_t end, std::string key, SpaceKind kind, bool headingOnly,
              int count = 0) {
        SpaceSpot spot;
        spot.span = {begin, end};
        static const WordId kThe = tables().id("the");
        const bool article = begin + 1 < end && tokens_[begin].word == kThe;
        spot.shown = spoken(tokens_, article ? begin + 1 : begin, end);
        spot.kind = kind;
        spot.count = count;
        spot.headingOnly = headingOnly;
        if (spot.shown.empty() || kind == SpaceKind::Whole || headingOnly) {
            spot.shown = key;
        }
        spot.key = std::move(key);
        spots_.push_back(std::move(spot));
    }

    // "front left bedroom", "upstairs bath", "second bedroom".
    std::size_t makeQualified(std::size_t begin, const std::vector<std::string>& names,
                              const RowFound& room) {
        const SpaceRow& row = tables().spaces[room.row];
        std::string key;
        std::string number;
        for (const std::string& name : names) {
            // Which of several bedrooms; of a hall or a half bath it is only said how big it is.
            const bool size = name == "small" || name == "big" || name == "old" ||
                              name == "other" || name == "formal" || name == "main floor";
            if (name.size() == 1) {
                number = row.name == "bedroom" || row.name == "bathroom" ? name : "";
            } else if ((!size && !isColor(name)) || row.name == "bedroom" ||
                       ((isColor(name) || name == "other") && row.name == "bathroom")) {
                key += name + " ";
            }
        }
        if (row.name == "primary bedroom") {
            key.clear();  // wherever it lies
        }
        // "front veranda", where the table's own name is "front porch"
        const std::string first = row.name.substr(0, row.name.find(' ')) + " ";
        key = first == key ? row.name : key + row.name;
        if (!number.empty()) {
            key += " " + number;
        }
        if (key == "primary bathroom" || key == "main bedroom") {
            key = key == "main bedroom" ? "primary bedroom" : "primary bath";
        }
        std::size_t end = room.end;
        if (const std::string letter = letterAt(end, row.name); !letter.empty()) {
            key += letter;
            ++end;
        }
        push(begin, end, key, row.kind, false);
        return end;
    }

    // "bedroom A", "BR B": which of several goes by a letter.
    [[nodiscard]] std::string letterAt(std::size_t at, const std::string& room) const {
        const bool several = room == "bedroom" || room == "bathroom";
        if (!several || at >= tokens_.size() || tokens_[at].text.size() != 1 ||
            tokens_[at].text[0] < 'A' || tokens_[at].text[0] > 'F') {
            return {};
        }
        const bool closes = at + 1 >= tokens_.size() || tokens_[at + 1].kind == TokenKind::Mark;
        return closes ? " " + tokens_[at].plain : std::string();
    }

    // "blue room", "kids' room", "sewing room": a room known by its word alone.
    std::size_t makeRoom(std::size_t begin, std::size_t end,
                         const std::vector<std::string>& names) {
        const std::string& first = names.back();
        if (names.size() > 2 || first.size() == 1 || first == "other" || first == "big" ||
            first == "small" || first == "main") {
            if (first != "main") {
                return begin + 1;
            }
        }
        std::string key;
        for (const std::string& name : names) {
            key += name + " ";
        }
        push(begin, end, key + "room", SpaceKind::Room, false);
        return end;
    }

    // How many of a group: "all three bedrooms"; 0 where it is not said.
    [[nodiscard]] int countedAt(std::size_t begin, std::size_t end) const {
        int count = 0;
        for (std::size_t i = begin > 3 ? begin - 3 : 0; i < end; ++i) {
            const int said = smallNumber(tokens_, i);
            count = said > 1 ? said : count;
        }
        return count;
    }

    // "Bedrooms, all three just paint": how many, said after them; 0 where it is not.
    [[nodiscard]] int countAfter(std::size_t at) const {
        at += at < tokens_.size() && tokens_[at].kind == TokenKind::Mark ? 1 : 0;
        const bool all = at + 1 < tokens_.size() && tokens_[at].plain == "all";
        return all ? smallNumber(tokens_, at + 1) : 0;
    }

    // "Bedroom number 2", "bath 1": the end of a room that goes by its number; 0 where it has none.
    std::size_t takeNumber(std::size_t begin, const RowFound& whole, const SpaceRow& row) {
        const bool numbered = row.name == "bedroom" || row.name == "bathroom" ||
                              row.name == "bedrooms" || row.name == "bathrooms";
        // "three bedrooms one bath": a count, not a name.
        static const WordId kBedroom = tables().id("bedroom");
        const bool first = whole.end > begin + 1 && smallNumber(tokens_, begin) > 0 &&
                           (begin == 0 || tokens_[begin - 1].word != kBedroom);
        const bool counted = first || (begin > 0 && smallNumber(tokens_, begin - 1) > 0);
        if (!numbered || counted) {
            return 0;
        }
        std::size_t at = whole.end;
        static const WordId kNumber = tables().id("number");
        const bool sign =
            at < tokens_.size() && tokens_[at].kind == TokenKind::Mark && tokens_[at].mark == '#';
        const bool word = at < tokens_.size() && tokens_[at].word == kNumber;
        at += sign || (kNumber != kUnknown && word) ? 1 : 0;
        const std::size_t end = makeNumbered(begin, at, row);
        return end > at ? takeItsBath(end) : 0;
    }

    std::size_t makePlain(std::size_t begin, const RowFound& whole) {
        const SpaceRow& row = tables().spaces[whole.row];
        if (const std::size_t end = takeNumber(begin, whole, row); end != 0) {
            return end;
        }
        if (const std::size_t end = takeFigure(begin, whole, row); end > whole.end) {
            return end;
        }
        if (const std::string letter = letterAt(whole.end, row.name); !letter.empty()) {
            push(begin, whole.end + 1, row.name + letter, row.kind, false);
            spots_.back().shown = row.name + letter;
            return whole.end + 1;
        }
        int count = row.kind == SpaceKind::Group ? countedAt(begin, whole.end) : 0;
        // Said in the plural, as the stem does not tell: "bedrooms".
        const std::string_view last = tokens_[whole.end - 1].text;
        const bool is = last.ends_with("'s") || last.ends_with("\xE2\x80\x99s");  // "bathroom's"
        const bool plural = !is && (last.ends_with('s') || last.ends_with('S'));
        std::string key = row.name;
        SpaceKind kind = row.kind;
        if (!plural && kind == SpaceKind::Group &&
            (tables().is(tokens_[begin].word, "the") || whole.end == begin + 1)) {
            key.pop_back();  // "the bath" has the stem of "the baths"
            kind = SpaceKind::Room;
        } else if (!plural && kind == SpaceKind::Group && key == "bedrooms" &&
                   tokens_[begin].word == tables().id("other")) {
            key = "other bedroom";
            kind = SpaceKind::Room;
        }
        if (plural && (key == "bedroom" || key == "bathroom")) {
            key += "s";
            kind = SpaceKind::Group;
            for (std::size_t i = begin > 2 ? begin - 2 : 0; i < begin; ++i) {
                count = std::max(count, smallNumber(tokens_, i));
            }
        }
        if (kind == SpaceKind::Group && count == 0) {
            count = countAfter(whole.end);
        }
        const bool sort =
            whole.flag == 0 && !is &&
            (key == "bedroom" || key == "bathroom" || key == "porch" || key == "hall" ||
             (key == "living room" && whole.end < tokens_.size() &&
              tables().is(tokens_[whole.end].word, "upstair")));
        if (const auto [name, end] =
                sort ? whichAfter(tokens_, begin, whole.end) : std::pair(std::string(), whole.end);
            !name.empty()) {
            push(begin, end, roomNamed(name, key), kind, false, count);
            spots_.back().shown = spots_.back().key;
            return end;
        }
        // "Stairs down.": the way they go is part of the name.
        if (key == "stairs" && isWay(whole.end)) {
            push(begin, whole.end + 1, key, kind, false);
            spots_.back().shown = key;
            return whole.end + 1;
        }
        const bool heads = whole.flag != 0 && !isPrimaryAlone(begin, whole.end, key);
        push(begin, whole.end, key, kind, heads, count);
        if (whole.flag != 0 && !heads) {
            spots_.back().shown = key;
        }
        return whole.end;
    }

    // "KITCHEN 2", "BEDROOM 1A": a heading or a label in a house that has several. Its end; that of
    // the room where there is no figure.
    std::size_t takeFigure(std::size_t begin, const RowFound& whole, const SpaceRow& row) {
        const std::size_t at = whole.end;
        const int number = begin == 0 && row.kind == SpaceKind::Room && whole.flag == 0
                               ? smallNumber(tokens_, at)
                               : 0;
        if (number == 0 || tokens_[at].kind != TokenKind::Number) {
            return at;
        }
        const bool letter = at + 1 < tokens_.size() && tokens_[at + 1].glued &&
                            tokens_[at + 1].kind == TokenKind::Word &&
                            tokens_[at + 1].plain.size() == 1;
        const std::size_t end = at + (letter ? 2 : 1);
        if (end < tokens_.size() &&
            !(tokens_[end].kind == TokenKind::Mark &&
              (tokens_[end].mark == ':' || tokens_[end].mark == '-' || tokens_[end].mark == '('))) {
            return at;
        }
        push(begin, end,
             row.name + " " + std::to_string(number) + (letter ? tokens_[at + 1].plain : ""),
             row.kind, false);
        spots_.back().shown = spots_.back().key;
        return end;
    }

    // "up", "down", and nothing behind it.
    [[nodiscard]] bool isWay(std::size_t at) const {
        return at < tokens_.size() && (tokens_[at].plain == "up" || tokens_[at].plain == "down") &&
               (at + 1 >= tokens_.size() || tokens_[at + 1].kind == TokenKind::Mark);
    }

    // "Primary's on the ground floor", "her room, the primary": the bedroom, and not the first.
    [[nodiscard]] bool isPrimaryAlone(std::size_t begin, std::size_t end,
                                      const std::string& key) const {
        static const WordId kThe = tables().id("the");
        const bool is = tokens_[begin].text.ends_with("'s");
        const bool the = begin > 0 && tokens_[begin - 1].word == kThe;
        static const std::vector<std::string_view> kSaid = {"is",  "in",    "on",    "at",  "has",
                                                            "got", "needs", "wants", "gets"};
        const bool closes = end >= tokens_.size() || tokens_[end].kind == TokenKind::Mark || is;
        const bool said = end < tokens_.size() && isOneOf(tokens_[end].plain, kSaid);
        return key == "primary bedroom" && (closes || said) &&
               (the || (begin == 0 && (is || said)));
    }

    // "Bedroom 2 bath": the bath of the bedroom that ends before `at`. The end of it all.
    std::size_t takeItsBath(std::size_t at) {
        const RowFound bath = longestRow(tokens_, at, From::Space);
        SpaceSpot& room = spots_.back();
        if (bath.row == kNone || tables().spaces[bath.row].name != "bathroom" ||
            !isBedroom(room.key)) {
            return at;
        }
        room.key += " bath";
        room.shown = room.key;
        room.span.end = bath.end;
        return bath.end;
    }

    // "bedroom 2", "bedrooms 1, 2 and 3", "bedrooms 1 to 4".
    std::size_t makeNumbered(std::size_t begin, std::size_t at, const SpaceRow& row) {
        static const WordId kAnd = tables().id("and");
        const std::string base = row.name.starts_with("bed") ? "bedroom" : "bathroom";
        std::size_t end = at;
        while (at < tokens_.size()) {
            const int number = smallNumber(tokens_, at);
            const bool unit = at + 1 < tokens_.size() && tokens_[at + 1].glued &&
                              tokens_[at + 1].kind == TokenKind::Word;
            if (number == 0 || unit) {
                break;
            }
            push(end == at ? begin : at, at + 1, base + " " + std::to_string(number),
                 SpaceKind::Room, false);
            spots_.back().shown = spots_.back().key;
            end = ++at;
            const int last = isTo(at) ? smallNumber(tokens_, at + 1) : 0;
            for (int i = number + 1; i < last; ++i) {
                push(at, at, base + " " + std::to_string(i), SpaceKind::Room, false);
                spots_.back().shown = spots_.back().key;
            }
            if (last > number) {
                push(at, at + 2, base + " " + std::to_string(last), SpaceKind::Room, false);
                spots_.back().shown = spots_.back().key;
                end = at += 2;
            }
            const bool comma = at < tokens_.size() && tokens_[at].kind == TokenKind::Mark &&
                               (tokens_[at].mark == ',' || tokens_[at].mark == '&');
            const bool joined = at < tokens_.size() && tokens_[at].word == kAnd && kAnd != kUnknown;
            at += comma || joined ? 1 : 0;
            if (!comma && !joined) {
                break;
            }
        }
        return end;
    }

    std::span<const Token> tokens_;
    std::vector<SpaceSpot> spots_;
    bool row_ = false;  // of rooms by the speaker's own names
};

}  // namespace

std::vector<SpaceSpot> spacesIn(std::span<const Token> tokens) {
    return Finder(tokens).run();
}

}  // namespace ledgerboard::intake
