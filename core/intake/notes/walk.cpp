#include "core/intake/notes/walk.h"

#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

const std::string kOutside = "outside";

bool hasDigit(const std::string& key) {
    return !key.empty() && key.back() >= '0' && key.back() <= '9';
}

}  // namespace

const KnownSpace* Walk::find(const std::string& key) const {
    const auto at = byKey_.find(key);
    return at == byKey_.end() ? nullptr : &known_[at->second];
}

WordId Walk::placeWord() const {
    const std::vector<std::string>& keys = lineKeys_.empty() ? current_ : lineKeys_;
    if (keys.empty()) {
        return kUnknown;
    }
    return placeWordOf(headOf(keys.front()));
}

void Walk::learn(const std::string& key, const std::string& written, SpaceKind kind) {
    const bool plain = kind == SpaceKind::Whole || kind == SpaceKind::Level;
    const std::string& shown = key == "exterior" ? kOutside : plain ? key : written;
    // "Bath upstairs.", and then "bath downstairs": the first goes by its storey as well.
    if (!bathStorey_.empty() && isBath(key) && key != "primary bath" && key != "bathroom" &&
        find(key) == nullptr) {
        for (KnownSpace& space : known_) {
            if (space.key == "bathroom") {
                space.shown = bathStorey_ + " bath";
            }
        }
        bathStorey_.clear();
    }
    constexpr std::size_t kMostSpaces = 400;
    if (find(key) == nullptr && known_.size() < kMostSpaces) {
        byKey_.emplace(key, known_.size());
        known_.push_back({key, shown.empty() ? key : shown, kind, storey_});
    }
}

void Walk::stand(std::vector<std::string> keys) {
    for (const std::string& key : current_) {
        if (!contains(keys, key)) {
            trail_.push_back(key);
            noteNamed(key);
        }
    }
    current_ = std::move(keys);
}

void Walk::beginList(const Sentence& heading) {
    stand({});
    lineKeys_.clear();
    headed_.clear();
    headingIndent_ = heading.indent;
    listing_ = true;
}

void Walk::endList() {
    stand({});
    lineKeys_.clear();
    headingIndent_ = -1;
    listing_ = false;
}

bool Walk::enterUnnamed(const Sentence& heading) {
    std::string name;
    std::size_t words = 0;
    bool strange = false;
    for (const Token& token : heading.tokens) {
        if (token.kind == TokenKind::Mark && isMark(token, ".:-")) {
            continue;
        }
        if (token.kind != TokenKind::Word) {
            return false;
        }
        strange = strange || token.word == kUnknown;
        name += (name.empty() ? "" : " ") + token.plain;
        ++words;
    }
    static const std::vector<std::string_view> kDays = {
        "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"};
    const std::string first = name.substr(0, name.find(' '));
    // "To: Luis", over a letter
    static const std::vector<std::string_view> kPost = {"to", "from", "re",   "subject", "cc",
                                                        "fw", "fwd",  "attn", "date",    "sent"};
    if (isOneOf(first, kPost)) {
        return false;
    }
    if (words == 0 || words > 2 || !strange || isOneOf(first, kDays)) {
        return false;
    }
    learn(name, name, SpaceKind::Room);
    stand({name});
    return true;
}

std::string Walk::before(const std::string& key) const {
    const std::string head = headOf(key);
    for (std::size_t i = trail_.size(); i-- > 0;) {
        const bool alike = headOf(trail_[i]) == head || (isBedroom(trail_[i]) && isBedroom(key));
        if (alike && trail_[i] != key) {
            return trail_[i];
        }
    }
    for (std::size_t i = trail_.size(); i-- > 0;) {
        if (trail_[i] != key) {
            return trail_[i];
        }
    }
    return {};
}

std::string Walk::lastRoom() const {
    for (std::size_t i = trail_.size(); i-- > 0;) {
        const KnownSpace* space = find(trail_[i]);
        if (space != nullptr && space->kind == SpaceKind::Room) {
            return trail_[i];
        }
    }
    return {};
}

bool Walk::spokeOfStairs() const {
    constexpr int kFew = 4;
    return stairsAge_ <= std::min(kFew, sinceMove_);
}

KnownSpace Walk::groundsBefore() const {
    for (std::size_t i = known_.size(); i-- > 0;) {
        const std::string& key = known_[i].key;
        if (key == "exterior" || key == "garden" || key.ends_with("yard")) {
            return known_[i];
        }
    }
    return {"exterior", kOutside, SpaceKind::Outside};
}

std::vector<std::string> Walk::membersOf(const std::string& key, int count) const {
    std::vector<std::string> members;
    std::vector<std::string> maybe;
    const bool bedrooms = key == "bedrooms";
    for (const KnownSpace& space : known_) {
        if (space.kind == SpaceKind::Group) {
            continue;
        }
        if (bedrooms ? isBedroom(space.key) : isBath(space.key)) {
            members.push_back(space.key);
        } else if (bedrooms && space.key.ends_with(" room") && space.key != "living room" &&
                   space.key != "dining room" && space.key != "family room" &&
                   space.key != "laundry room" && space.key != "main room" &&
                   space.key != "mechanical room") {
            maybe.push_back(space.key);
        }
    }
    if (count > static_cast<int>(members.size())) {
        for (const std::string& key2 : maybe) {
            if (static_cast<int>(members.size()) < count) {
                members.push_back(key2);
            }
        }
    }
    // "all four bedrooms" of a house whose rooms go by number: those not named yet are the rest.
    if (bedrooms && count > static_cast<int>(members.size()) && count < 9) {
        const bool numbered = std::any_of(members.begin(), members.end(), hasDigit);
        const bool primary = contains(members, "primary bedroom");
        if (numbered) {
            for (int i = primary ? 2 : 1; i <= count; ++i) {
                const std::string made = "bedroom " + std::to_string(i);
                if (!contains(members, made)) {
                    members.push_back(made);
                }
            }
        }
    }
    // "All three bedrooms", and no name for any of them, or for the main one alone.
    const bool main = members == std::vector<std::string>{"primary bedroom"} && count > 2;
    if (bedrooms && (members.empty() || main) && count > 1 && count < 9) {
        for (int i = main ? 2 : 1; i <= count; ++i) {
            members.push_back("bedroom " + std::to_string(i));
        }
    }
    if (members.empty() || (count > 2 && static_cast<int>(members.size()) + 1 < count)) {
        members = {key};
    }
    return members;
}

std::string Walk::resolve(const SpaceSpot& spot) {
    std::string key = spot.key;
    for (const auto& [part, whole] : parts_) {
        if (part == key) {
            return whole;
        }
    }
    // "The second bath is down there": of the two the one below.
    if ((key == "bathroom" || key == "bathroom 2") && houseUnits_.baths &&
        contains(current_, "basement")) {
        return "basement bathroom";
    }
    if (key == "bathroom 1" || key == "bathroom 2") {
        return key;
    }
    // "The bath" of the primary bedroom, where the house has another.
    const bool another = (houseUnits_.baths && !houseUnits_.ownBath) ||
                         std::any_of(known_.begin(), known_.end(), [](const KnownSpace& space) {
                             return isBath(space.key) && space.key != "primary bath";
                         });
    if (headOf(key) == "bath" && another && (key == "bath" || key == "bathroom") &&
        contains(current_, "primary bedroom")) {
        return "primary bath";
    }
    if (std::string own = key == "bathroom" ? ownBath() : std::string();
        !own.empty() && find(own) != nullptr) {
        return own;
    }
    if (find(key) != nullptr || spot.kind == SpaceKind::Whole || spot.kind == SpaceKind::Group) {
        return key;
    }
    // "The small bath", where the hall bath is known: another.
    const bool small = spot.shown.starts_with("small ") || spot.shown.starts_with("little ");
    if (small && key == "bathroom" && find("hall bath") != nullptr) {
        return key;
    }
    // "the bathroom" is the one just named or the only one of its sort.
    const bool bare = key.find(' ') == std::string::npos;
    if (bare) {
        const std::string head = headOf(key);
        const bool sortsApart = head == "bath" || head == "bedroom";
        std::string only;
        int count = 0;
        for (const KnownSpace& space : known_) {
            // "The upstairs hall" is not the front hall.
            const bool called = spot.shown.find(' ') == std::string::npos &&
                                headOf(space.shown) == head &&
                                space.shown.find(" the ") == std::string::npos;
            const bool landing = spot.shown == "landing" && space.key == "entry";
            // "I could put a second bathroom in here": the bathroom is another.
            const bool numbered =
                sortsApart && hasDigit(space.key) && !contains(current_, space.key);
            if (!landing && !numbered && (headOf(space.key) == head || called)) {
                if (contains(current_, space.key) && space.key != "half bath") {
                    return space.key;
                }
                only = space.key;
                ++count;
            }
        }
        const bool lesser = only == "primary bath" || only == "half bath" ||
                            (contains(current_, "basement") && only.starts_with("upstairs "));
        // "Yard: …" after the front yard: the one that lies behind.
        const bool front = only == "front yard" || only == "side yard";
        if (count == 1 && !(sortsApart && lesser) && only != "primary bedroom" && !front) {
            return only;
        }
    }
    return key;
}

// The bath that belongs to the bedroom where the speaker stands; empty where that has none or gives
// no name to it.
std::string Walk::ownBath() const {
    const std::string room = current_.size() == 1 ? current_.front() : std::string();
    if (room == "primary bedroom" || room == "our room" || room == "my room") {
        return "primary bath";
    }
    // "Guest room": a room of guests, whatever else the tables take it for.
    const KnownSpace* known = find(room);
    if (known != nullptr && known->shown == "guest room") {
        return "guest bathroom";
    }
    if (!isBedroom(room)) {
        return {};
    }
    if (hasDigit(room)) {
        return room + " bath";
    }
    for (const std::string_view which :
         {"guest", "kids", "boys", "girls", "upstairs", "downstairs", "basement"}) {
        if (room == std::string(which) + " bedroom") {
            return std::string(which) + " bathroom";
        }
    }
    return {};
}

// "Third floor. Front bedroom, …", where the second floor has one: two rooms, and each goes by its
// storey.
void Walk::nameByStorey(std::string& key, std::string& shown) {
    const auto known = std::find_if(known_.begin(), known_.end(),
                                    [&](const KnownSpace& space) { return space.key == key; });
    const bool several = isBedroom(key) || isBath(key) || key == "kitchen" || key == "living room";
    if (known == known_.end() || !several || storey_.empty() || known->storey.empty() ||
        known->storey == storey_ || key == "primary bedroom" || key == "primary bath") {
        return;
    }
    if (!known->shown.starts_with(known->storey)) {
        known->shown = known->storey + " " + known->shown;
    }
    key = storey_ + " " + key;
    shown = storey_ + " " + shown;
}

void Walk::moveTo(const std::vector<const SpaceSpot*>& spots) {
    std::vector<std::string> keys;
    for (const SpaceSpot* spot : spots) {
        std::string key = resolve(*spot);
        // "The bath" of the primary bedroom is its own, whatever it is called.
        const bool named = key == "primary bath" || key == "basement bathroom";
        std::string shown = named && key != spot->key ? key : spot->shown;
        if (spot->kind == SpaceKind::Level) {
            level_ = key;
            storey_ = spot->shown;
        } else if (spot->kind == SpaceKind::Outside || key == "basement") {
            level_.clear();
            storey_.clear();
        }
        if (key == "bathroom" && level_ == "upstairs" && find(key) == nullptr && saysStairs_) {
            key = "upstairs bathroom";
            shown = "upstairs bath";
        }
        if (spot->kind == SpaceKind::Group) {
            keys.push_back(key + "*" + std::to_string(spot->count));
            group_ = key == "bathrooms" ? "bathroom" : "bedroom";
            groupLoose_ = false;
            continue;
        }
        nameByStorey(key, shown);
        if (!isBedroom(key) && !isBath(key)) {
            group_.clear();
        }
        // "The west one" after the east bedroom.
        if (group_.empty() && key.ends_with(" bedroom")) {
            group_ = "bedroom";
            groupLoose_ = true;
        }
        learn(key, shown, spot->kind);
        if (!contains(keys, key)) {
            keys.push_back(key);
        }
    }
    // "Outside, the deck.": the deck.
    if (keys.size() == 2 && keys.front() == "exterior" &&
        spots.back()->kind == SpaceKind::Outside) {
        keys.erase(keys.begin());
    }
    if (!keys.empty()) {
        sinceMove_ = 0;
        stand(std::move(keys));
    }
}

}  // namespace ledgerboard::intake
