#include "core/intake/notes/walk.h"

#include <algorithm>

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
    for (const KnownSpace& space : known_) {
        if (space.key == key) {
            return &space;
        }
    }
    return nullptr;
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
    constexpr std::size_t kMostSpaces = 400;
    if (find(key) == nullptr && known_.size() < kMostSpaces) {
        known_.push_back({key, shown.empty() ? key : shown, kind});
    }
}

void Walk::stand(std::vector<std::string> keys) {
    for (const std::string& key : current_) {
        if (!contains(keys, key)) {
            trail_.push_back(key);
        }
    }
    current_ = std::move(keys);
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
        name += (name.empty() ? "" : " ") + plainWord(token.text);
        ++words;
    }
    if (words == 0 || words > 2 || !strange) {
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
                   space.key != "laundry room" && space.key != "main room") {
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
    if (members.empty() || (count > 2 && static_cast<int>(members.size()) + 1 < count)) {
        members = {key};
    }
    return members;
}

std::string Walk::resolve(const SpaceSpot& spot) {
    std::string key = spot.key;
    if (key == "bathroom 1" || key == "bathroom 2") {
        return key;
    }
    // "The bath" of the primary bedroom, where the house has another.
    const bool another = std::any_of(known_.begin(), known_.end(), [](const KnownSpace& space) {
        return isBath(space.key) && space.key != "primary bath";
    });
    if (headOf(key) == "bath" && another && (key == "bath" || key == "bathroom") &&
        contains(current_, "primary bedroom")) {
        return "primary bath";
    }
    if (find(key) != nullptr || spot.kind == SpaceKind::Whole || spot.kind == SpaceKind::Group) {
        return key;
    }
    // "the bathroom" is the one just named or the only one of its sort.
    const bool bare = key.find(' ') == std::string::npos;
    if (bare) {
        const std::string head = headOf(key);
        std::string only;
        int count = 0;
        for (const KnownSpace& space : known_) {
            // "The upstairs hall" is not the front hall.
            const bool called = spot.shown.find(' ') == std::string::npos &&
                                headOf(space.shown) == head &&
                                space.shown.find(" the ") == std::string::npos;
            if (headOf(space.key) == head || called) {
                if (contains(current_, space.key) && space.key != "half bath") {
                    return space.key;
                }
                only = space.key;
                ++count;
            }
        }
        const bool sortsApart = head == "bath" || head == "bedroom";
        const bool lesser = only == "primary bath" || only == "half bath";
        if (count == 1 && !(sortsApart && lesser) && only != "primary bedroom") {
            return only;
        }
    }
    return key;
}

void Walk::moveTo(const std::vector<const SpaceSpot*>& spots) {
    std::vector<std::string> keys;
    for (const SpaceSpot* spot : spots) {
        std::string key = resolve(*spot);
        std::string shown = spot->shown;
        if (spot->kind == SpaceKind::Level) {
            level_ = key;
        } else if (spot->kind == SpaceKind::Outside || key == "basement") {
            level_.clear();
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

// "Front left, the windows …" after "Bedrooms.": the front left bedroom.
bool Walk::takeQualified(const Sentence& sentence) {
    if (group_.empty()) {
        return false;
    }
    std::string key;
    std::size_t at = 0;
    while (at < sentence.tokens.size() && sentence.tokens[at].kind == TokenKind::Word && at < 4) {
        const std::uint32_t node = tables().phrases.step(0, sentence.tokens[at].word);
        std::string name;
        for (const Meaning& meaning : tables().phrases.at(node)) {
            if (node != 0 && sentence.tokens[at].word != kUnknown &&
                meaning.from == From::Qualifier) {
                name = tables().qualifiers[meaning.row];
            }
        }
        if (name.empty()) {
            const bool leads =
                wordIs(sentence, at, "the") || (at == 0 && wordIs(sentence, at, "in"));
            if (at < 2 && key.empty() && leads) {
                ++at;
                continue;
            }
            break;
        }
        key += name + " ";
        ++at;
    }
    const bool one = at > 1 && wordIs(sentence, at, "one") &&
                     (wordIs(sentence, 0, "the") || wordIs(sentence, 1, "the"));
    if (one) {
        ++at;
    }
    if (groupLoose_ && !one) {
        return false;
    }
    const bool closes =
        one || (at < sentence.tokens.size() &&
                (isMark(sentence.tokens[at], ",:-.") || wordIs(sentence, at, "have") ||
                 wordIs(sentence, at, "is") || wordIs(sentence, at, "need")));
    if (key.empty() || !closes) {
        return false;
    }
    key += group_;
    learn(key, key, SpaceKind::Room);
    stand({key});
    return true;
}

// "Bedrooms are the front one, the back one, and the box room.", "Bedrooms. Front one, back one."
void Walk::learnOnes(const Sentence& sentence, const Spots& spots) {
    const bool group = std::any_of(
        spots.spaces.begin(), spots.spaces.end(),
        [](const SpaceSpot& spot) { return spot.key == "bedrooms" || spot.key == "bathrooms"; });
    if (!group && group_.empty()) {
        return;
    }
    const bool baths = group ? spots.spaces.front().key == "bathrooms" : group_ == "bathroom";
    std::vector<std::string> ones;
    for (std::size_t i = 0; i + 1 < sentence.tokens.size(); ++i) {
        // "the northeast, the northwest and the south"
        const bool closes =
            group && i > 1 && wordIs(sentence, i - 1, "the") &&
            (isMark(sentence.tokens[i - 2], ",") || wordIs(sentence, i - 2, "and") ||
             wordIs(sentence, i - 2, "is")) &&
            (isMark(sentence.tokens[i + 1], ",.") || wordIs(sentence, i + 1, "and"));
        if ((!wordIs(sentence, i + 1, "one") && !closes) || sentence.tokens[i].word == kUnknown) {
            continue;
        }
        const std::uint32_t node = tables().phrases.step(0, sentence.tokens[i].word);
        for (const Meaning& meaning : tables().phrases.at(node)) {
            if (node != 0 && meaning.from == From::Qualifier) {
                ones.push_back(tables().qualifiers[meaning.row] + (baths ? " bath" : " bedroom"));
            }
        }
    }
    if (!group && ones.size() < 2) {
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

}  // namespace ledgerboard::intake
