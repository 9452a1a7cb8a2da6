#include "core/intake/notes/walk.h"

#include <algorithm>

namespace ledgerboard::intake {

namespace {

const std::string kOutside = "outside";

bool isMark(const Token& token, std::string_view marks) {
    return token.kind == TokenKind::Mark && marks.find(token.mark) != std::string_view::npos;
}

// Whether a clause ends at this token for good: what stands beyond speaks of something else.
bool closesClause(const Token& token) {
    return isMark(token, ".;!?");
}

bool contains(const std::vector<std::string>& keys, const std::string& key) {
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

// The rooms that may be meant by "bedrooms".
bool isBedroom(const std::string& key) {
    return key.find("bedroom") != std::string::npos || key == "nursery" || key == "box room";
}

bool isBath(const std::string& key) {
    return key.find("bath") != std::string::npos && key != "half bath";
}

// The last word of a space's name: what it is, without which of them.
std::string headOf(const std::string& name) {
    std::string text = name;
    while (!text.empty() && (text.back() >= '0' && text.back() <= '9')) {
        text.pop_back();
        while (!text.empty() && text.back() == ' ') {
            text.pop_back();
        }
    }
    const std::size_t gap = text.rfind(' ');
    std::string head = gap == std::string::npos ? text : text.substr(gap + 1);
    if (head == "bathroom") {
        head = "bath";
    }
    return head == "hallway" ? "hall" : head;
}

bool hasDigit(const std::string& key) {
    return !key.empty() && key.back() >= '0' && key.back() <= '9';
}

// The end of a run of words that may stand between the start and a space: articles, "okay", marks.
std::size_t skipSmall(const Sentence& sentence, const Spots& spots, std::size_t at) {
    while (at < sentence.tokens.size()) {
        std::size_t next = at;
        for (const Cue cue : {Cue::Move, Cue::Enter, Cue::Small, Cue::Filler, Cue::Split}) {
            next = std::max(next, spots.endOf(cue, at));
        }
        if (next == at && isMark(sentence.tokens[at], ",-.:()*#&+/\"'")) {
            next = at + 1;
        }
        if (next == at) {
            break;
        }
        at = next;
    }
    return at;
}

// Where a cue of this kind ends right before `at`, articles between them allowed.
bool cueBefore(const Sentence& sentence, const Spots& spots, Cue cue, std::size_t at) {
    for (const CueSpot& spot : spots.cues) {
        if (spot.cue != cue || spot.span.end > at || spot.span.end + 4 < at) {
            continue;
        }
        std::size_t i = spot.span.end;
        while (i < at) {
            const std::size_t next = spots.endOf(Cue::Small, i);
            if (next == i) {
                break;
            }
            i = next;
        }
        if (i == at ||
            (i + 1 == at && sentence.tokens[i].kind == TokenKind::Word && cue == Cue::Enter)) {
            return true;
        }
    }
    return false;
}

bool wordIs(const Sentence& sentence, std::size_t at, std::string_view word) {
    return at < sentence.tokens.size() && sentence.tokens[at].word != kUnknown &&
           sentence.tokens[at].word == tables().id(word);
}

// "This, the dining room, and the hall too": a list that begins with where one stands.
bool listsThis(const Sentence& sentence) {
    return sentence.tokens.size() > 2 &&
           (wordIs(sentence, 0, "this") || wordIs(sentence, 0, "here")) &&
           isMark(sentence.tokens[1], ",");
}

// Speech written down without marks.
bool isBreathless(const Sentence& sentence) {
    std::size_t marks = 0;
    for (const Token& token : sentence.tokens) {
        marks += token.kind == TokenKind::Mark ? 1 : 0;
    }
    return sentence.tokens.size() >= 8 && marks * 20 <= sentence.tokens.size() && !sentence.bullet;
}

// "in the", "paint the": a word before the space, articles aside, that makes it a part of its
// clause.
bool afterPreposition(const Sentence& sentence, const Spots& spots, std::size_t at) {
    static const std::vector<WordId> kArticles = [] {
        std::vector<WordId> ids;
        for (const std::string_view word : {"the", "a", "an", "this", "my", "our"}) {
            ids.push_back(tables().id(word));
        }
        return ids;
    }();
    const auto is = [&](std::size_t i, const std::vector<WordId>& words) {
        return std::find(words.begin(), words.end(), sentence.tokens[i].word) != words.end();
    };
    while (at > 0 && sentence.tokens[at - 1].word != kUnknown && is(at - 1, kArticles)) {
        --at;
    }
    if (at == 0) {
        return false;
    }
    const bool cue = std::any_of(spots.cues.begin(), spots.cues.end(), [&](const CueSpot& spot) {
        const bool kind =
            spot.cue == Cue::Landmark || spot.cue == Cue::Locus || spot.cue == Cue::With;
        return kind && spot.span.end == at;
    });
    const bool act = std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& spot) {
        return spot.span.end == at && tables().acts[spot.row].side == Side::After;
    });
    static const WordId kAnd = tables().id("and");
    static const WordId kOr = tables().id("or");
    const WordId before = sentence.tokens[at - 1].word;
    return cue || act || (before != kUnknown && (before == kAnd || before == kOr));
}

// "and then in the kitchen we …": in speech without marks this is how a room is entered.
bool stepsInto(const Sentence& sentence, std::size_t at) {
    while (at > 0 && (wordIs(sentence, at - 1, "the") || wordIs(sentence, at - 1, "this"))) {
        --at;
    }
    if (at == 0) {
        return false;
    }
    if (wordIs(sentence, at - 1, "in") || wordIs(sentence, at - 1, "into")) {
        return true;
    }
    const bool to = wordIs(sentence, at - 1, "to") || wordIs(sentence, at - 1, "in");
    if (!to || at < 2) {
        return false;
    }
    for (const std::string_view word : {"go", "going", "come", "over", "back", "up", "down", "on",
                                        "through", "next", "move", "head", "get"}) {
        if (wordIs(sentence, at - 2, word)) {
            return true;
        }
    }
    return false;
}

// "Porch first, the porch floor …": where a space is entered by its name, the name is no object of
// its own, as long as the sentence has another.
void dropNamesake(Spots& spots, const Span& span) {
    const bool others =
        std::any_of(spots.objects.begin(), spots.objects.end(),
                    [&](const ObjectSpot& object) { return object.span.begin >= span.end; });
    if (others) {
        std::erase_if(spots.objects, [&](const ObjectSpot& object) {
            return span.begin <= object.span.begin && object.span.end <= span.end;
        });
    }
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
    return tables().id(headOf(keys.front()));
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
    if (members.empty()) {
        members.push_back(key);
    }
    return members;
}

std::string Walk::resolve(const SpaceSpot& spot) {
    std::string key = spot.key;
    if (key == "bathroom 1" || key == "bathroom 2") {
        return key;
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
            if (headOf(space.key) == head || headOf(space.shown) == head) {
                if (contains(current_, space.key)) {
                    return space.key;
                }
                only = space.key;
                ++count;
            }
        }
        const bool sortsApart = head == "bath" || head == "bedroom";
        if (count == 1 && !(sortsApart && only == "primary bath") && only != "primary bedroom") {
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
        if (key == "bathroom" && level_ == "upstairs" && find(key) == nullptr) {
            key = "upstairs bathroom";
            shown = "upstairs bath";
        }
        if (spot->kind == SpaceKind::Group) {
            keys.push_back(key + "*" + std::to_string(spot->count));
            group_ = key == "bathrooms" ? "bathroom" : "bedroom";
            continue;
        }
        if (!isBedroom(key) && !isBath(key)) {
            group_.clear();
        }
        learn(key, shown, spot->kind);
        if (!contains(keys, key)) {
            keys.push_back(key);
        }
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
            if (at == 0 && wordIs(sentence, at, "the")) {
                ++at;
                continue;
            }
            break;
        }
        key += name + " ";
        ++at;
    }
    if (wordIs(sentence, at, "one")) {
        ++at;
    }
    const bool closes = at < sentence.tokens.size() &&
                        (isMark(sentence.tokens[at], ",:-.") || wordIs(sentence, at, "have") ||
                         wordIs(sentence, at, "is") || wordIs(sentence, at, "need"));
    if (key.empty() || !closes) {
        return false;
    }
    key += group_;
    learn(key, key, SpaceKind::Room);
    stand({key});
    return true;
}

// Where a heading ends: "Kitchen:", "Living room / dining room", "BR1 - ". 0 if there is none.
std::size_t Walk::headingEnd(const Sentence& sentence, const Spots& spots) const {
    std::size_t at = skipSmall(sentence, spots, 0);
    if (spots.spaces.empty() || spots.spaces.front().span.begin != at) {
        return 0;
    }
    std::size_t spaces = 0;
    while (spaces < spots.spaces.size() && spots.spaces[spaces].span.begin == at) {
        at = spots.spaces[spaces].span.end;
        ++spaces;
        const std::size_t joint = at;
        while (at < sentence.tokens.size() &&
               (isMark(sentence.tokens[at], ",/&+") || wordIs(sentence, at, "and") ||
                spots.endOf(Cue::Small, at) > at)) {
            at = std::max(at + 1, spots.endOf(Cue::Small, at));
        }
        if (spaces >= spots.spaces.size() || spots.spaces[spaces].span.begin != at) {
            at = joint;
            break;
        }
    }
    // A size or a remark in brackets may follow: "Kitchen 12x14:", "BR3 (up)".
    std::size_t end = at;
    int other = 0;
    while (end < sentence.tokens.size() && !isMark(sentence.tokens[end], ":-.")) {
        other += sentence.tokens[end].kind == TokenKind::Word ? 1 : 0;
        ++end;
    }
    const bool closed = end < sentence.tokens.size();
    const bool bracket = at < sentence.tokens.size() && isMark(sentence.tokens[at], "(");
    const bool more = end + 1 < sentence.tokens.size();  // "Kitchen: new cabinets"
    if (!more && (sentence.heading || (sentence.alone && other <= 2) || bracket)) {
        return bracket && !sentence.alone ? at : sentence.tokens.size();
    }
    if (sentence.heading || (bracket && !sentence.alone)) {
        return sentence.heading ? sentence.tokens.size() : at;
    }
    if (closed && other <= 1 && end - at <= 4) {
        return end + 1;
    }
    return closed || other > 2 ? 0 : sentence.tokens.size();
}

Walk::Role Walk::roleOf(const Sentence& sentence, const Spots& spots, std::size_t index) {
    const SpaceSpot& spot = spots.spaces[index];
    const std::size_t begin = spot.span.begin;
    bool first = begin <= skipSmall(sentence, spots, 0) && !listsThis(sentence);
    // "Upstairs, the front bedroom …", "down the hall the hall bath …": the second is meant.
    if (index > 0 && spots.spaces[index - 1].span.end + 2 >= begin && lastMoved_ == index &&
        (spots.spaces[index - 1].kind == SpaceKind::Level ||
         spots.spaces[index - 1].span.end + 1 >= begin)) {
        const std::size_t end = spots.spaces[index - 1].span.end;
        first = first || (!wordIs(sentence, end, "and") && !isMark(sentence.tokens[end], "/&+"));
    }
    if (spot.headingOnly) {
        return Role::Ignored;
    }
    for (const ObjectSpot& object : spots.objects) {
        const bool inside = object.span.begin <= begin && spot.span.end <= object.span.end;
        const bool next = object.span.begin == spot.span.end;
        const bool named = spot.key == "stairs" ||
                           spot.key == tables().objects[object.object].name ||
                           (spot.kind == SpaceKind::Outside &&
                            tables().objects[object.object].place != Place::Outside);
        if (named && ((inside && object.span.end > spot.span.end) || next)) {
            return Role::Ignored;
        }
        if ((inside && object.span.end > spot.span.end) || next) {
            // "Living room plaster's cracked …" begins a room as well.
            const bool breathless =
                isBreathless(sentence) && !afterPreposition(sentence, spots, begin);
            if (breathless && spot.kind == SpaceKind::Room && !inside) {
                return Role::Move;
            }
            const bool opens =
                spot.kind == SpaceKind::Room && !sentence.bullet && index == 0 && !sentence.alone &&
                std::none_of(spots.acts.begin(), spots.acts.end(),
                             [&](const ActSpot& act) {
                                 return act.span.begin < begin && tables().acts[act.row].weight > 1;
                             }) &&
                spots.objects.front().span.end > begin && sentence.tokens.size() > 12;
            return opens && !inside ? Role::Move : Role::OfObject;
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
    // "a powder room", "another bath": one that is not there yet.
    const bool thereIs =
        begin > 2 && (wordIs(sentence, begin - 3, "there") || wordIs(sentence, begin - 2, "there"));
    if (begin > 0 && thereIs && spot.kind == SpaceKind::Room && sentence.tokens.size() > 14) {
        return Role::Move;
    }
    if (begin > 0 &&
        (wordIs(sentence, begin - 1, "a") || wordIs(sentence, begin - 1, "an") ||
         wordIs(sentence, begin - 1, "anoth") || wordIs(sentence, begin - 1, "extra")) &&
        spot.kind == SpaceKind::Room) {
        return Role::Ignored;
    }
    // "Third floor. This is the fifth bedroom.": another name for where one stands.
    const KnownSpace* here = current_.empty() ? nullptr : find(current_.front());
    const bool alias = sinceMove_ <= 1 && here != nullptr && here->kind == SpaceKind::Level &&
                       wordIs(sentence, 0, "this");
    if (cueBefore(sentence, spots, Cue::Enter, begin) && !alias) {
        return Role::Move;
    }
    if (begin > 0 && wordIs(sentence, begin - 1, "this") && spot.kind == SpaceKind::Room &&
        !alias) {
        return Role::Move;
    }
    if (first && !alias) {
        return spot.kind == SpaceKind::Whole ? Role::Local : Role::Move;
    }
    if (cueBefore(sentence, spots, Cue::Passing, begin)) {
        return Role::Ignored;
    }
    const bool steps = isBreathless(sentence) && spot.kind == SpaceKind::Room &&
                       stepsInto(sentence, begin);
    if (steps) {
        return Role::Move;
    }
    const bool stands = spot.kind == SpaceKind::Room || spot.kind == SpaceKind::Outside;
    if (stands && isBreathless(sentence) && !afterPreposition(sentence, spots, begin)) {
        return Role::Move;
    }
    static const std::vector<std::string_view> kIn = {
        "in", "at", "on", "for", "through", "insid", "out", "throughout", "of"};
    std::size_t at = begin;
    while (at > 0 && spots.endOf(Cue::Small, at - 1) == at) {
        --at;
    }
    if (at > 0) {
        for (const std::string_view word : kIn) {
            if (wordIs(sentence, at - 1, word)) {
                return Role::Local;
            }
        }
    }
    if (spot.kind == SpaceKind::Whole || spot.kind == SpaceKind::Group) {
        return Role::Local;
    }
    if (spot.kind == SpaceKind::Level) {
        return Role::Local;
    }
    // "rewire the upstairs", "paint the bedroom".
    const bool worked = std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        std::size_t to = act.span.end;
        while (to < begin && spots.endOf(Cue::Small, to) > to) {
            to = spots.endOf(Cue::Small, to);
        }
        return to == begin && tables().acts[act.row].object != kNone;
    });
    if (worked) {
        return Role::Local;
    }
    // One of a row of spaces, or the subject of its clause: "the hall bath needs a new toilet".
    const bool joined = (index > 0 && spots.spaces[index - 1].span.end + 3 >= begin) ||
                        (index == 0 && listsThis(sentence));
    const bool subject = spots.endOf(Cue::Passive, spot.span.end) > spot.span.end ||
                         wordIs(sentence, spot.span.end, "too") ||
                         wordIs(sentence, spot.span.end, "both");
    const bool passing = cueBefore(sentence, spots, Cue::Landmark, begin);
    const bool follows = begin > 0 && isMark(sentence.tokens[begin - 1], ",-(");
    return (joined || subject || follows) && !passing ? Role::Local : Role::Ignored;
}

// "Bedrooms are the front one, the back one, and the box room."
void Walk::learnOnes(const Sentence& sentence, const Spots& spots) {
    const bool group = std::any_of(
        spots.spaces.begin(), spots.spaces.end(),
        [](const SpaceSpot& spot) { return spot.key == "bedrooms" || spot.key == "bathrooms"; });
    if (!group) {
        return;
    }
    const std::string base = spots.spaces.front().key == "bathrooms" ? " bath" : " bedroom";
    for (std::size_t i = 0; i + 1 < sentence.tokens.size(); ++i) {
        if (!wordIs(sentence, i + 1, "one") || sentence.tokens[i].word == kUnknown) {
            continue;
        }
        const std::uint32_t node = tables().phrases.step(0, sentence.tokens[i].word);
        for (const Meaning& meaning : tables().phrases.at(node)) {
            if (node != 0 && meaning.from == From::Qualifier) {
                const std::string name = tables().qualifiers[meaning.row] + base;
                learn(name, name, SpaceKind::Room);
            }
        }
    }
}

Placed Walk::take(const Sentence& sentence, Spots& spots) {
    Placed placed;
    lastMoved_ = 0;
    ++sinceMove_;
    learnOnes(sentence, spots);
    if (sentence.opensLine && sentence.indent <= lineIndent_) {
        lineKeys_.clear();
    }
    if (sentence.opensLine && (sentence.heading || (sentence.alone && !sentence.bullet))) {
        headingIndent_ = sentence.indent;
    }
    placed.moved = takeQualified(sentence);
    // A list line under a heading that begins with a space speaks of it, and the next does not.
    const bool listed = sentence.opensLine && !sentence.alone && headingIndent_ >= 0 &&
                        (sentence.bullet || sentence.indent > headingIndent_) && !current_.empty();
    const std::vector<std::string> heading = current_;
    if (const std::size_t end = headingEnd(sentence, spots); end > 0) {
        std::vector<const SpaceSpot*> named;
        for (const SpaceSpot& spot : spots.spaces) {
            if (spot.span.end <= end) {
                named.push_back(&spot);
            }
        }
        moveTo(named);
        placed.from = end;
        placed.moved = true;
        placed.onlyPlace = end >= sentence.tokens.size();
    }
    if (sentence.opensLine || placed.moved) {
        whole_ = false;
    }
    std::size_t clause = placed.from;
    Placing local;
    if (spots.has(Cue::Rooms) && !lastPlaces_.empty()) {
        local.keys = lastPlaces_;
    } else if (whole_ && spots.has(Cue::Here)) {
        whole_ = false;
    } else if (whole_) {
        local.keys = {"whole house"};
        learn("whole house", "whole house", SpaceKind::Whole);
    }
    const auto closeClause = [&](std::size_t end) {
        if (!local.keys.empty()) {
            if (local.keys.size() > 1 || local.keys.front().find('*') != std::string::npos) {
                lastPlaces_ = local.keys;
            }
            local.span = {clause, end};
            placed.parts.push_back(local);
            local = {};
        }
        clause = end;
    };
    std::size_t next = 0;
    for (std::size_t i = placed.from; i < sentence.tokens.size(); ++i) {
        while (next < spots.spaces.size() && spots.spaces[next].span.begin < i) {
            ++next;
        }
        if (closesClause(sentence.tokens[i])) {
            closeClause(i + 1);
            continue;
        }
        if (next >= spots.spaces.size() || spots.spaces[next].span.begin != i) {
            continue;
        }
        const SpaceSpot& spot = spots.spaces[next];
        const Role role = roleOf(sentence, spots, next);
        if (role == Role::Move) {
            dropNamesake(spots, spot.span);
            whole_ = false;
            if (local.keys == std::vector<std::string>{"whole house"}) {
                local.keys.clear();
            }
            if (local.keys.empty() && i > clause) {
                local.keys = current_;  // what was said before the move stays where it was
            }
            closeClause(i);
            moveTo({&spot});
            lastMoved_ = next + 1;
            placed.moved = true;
        } else if (role == Role::Local) {
            std::string key = resolve(spot);
            if (spot.kind == SpaceKind::Group) {
                key += "*" + std::to_string(spot.count);
            } else {
                learn(key, spot.shown, spot.kind);
            }
            // "here, in the hall, and in the bedrooms", "the hall too": also where one stands.
            static const WordId kHere = tables().id("here");
            static const WordId kToo = tables().id("too");
            for (std::size_t k = clause; k < sentence.tokens.size() && local.keys.empty(); ++k) {
                const WordId word = sentence.tokens[k].word;
                const bool joins =
                    (word != kUnknown && (word == kHere || word == kToo)) || listsThis(sentence);
                if (joins && k + 3 > clause && !current_.empty() && k < spot.span.end + 2) {
                    local.keys = current_;
                }
            }
            if (whole_) {
                local.keys.clear();
                whole_ = false;
            }
            if (!contains(local.keys, key)) {
                local.keys.push_back(key);
            }
            whole_ = spot.kind == SpaceKind::Whole && local.keys.size() == 1 &&
                     !isBreathless(sentence);
        } else if (role == Role::OfObject) {
            const std::string key = resolve(spot);
            const bool here =
                std::any_of(current_.begin(), current_.end(), [&](const std::string& at) {
                    return at == key || headOf(at) == headOf(key) ||
                           at.find(spot.key) != std::string::npos;
                });
            for (ObjectSpot& object : spots.objects) {
                if (object.span.end > spot.span.begin && object.span.begin <= spot.span.end &&
                    !here && spot.kind != SpaceKind::Group) {
                    object.place = key;
                }
            }
            if (current_.empty()) {
                moveTo({&spot});
            }
        }
    }
    closeClause(sentence.tokens.size());
    if (listed && placed.moved && current_ != heading) {
        lineKeys_ = current_;
        lineIndent_ = sentence.indent;
        current_ = heading;
    }
    if (!lineKeys_.empty() && placed.parts.empty() && !placed.onlyPlace) {
        placed.parts.push_back({{0, sentence.tokens.size()}, lineKeys_});
    }
    // "And that takes us into the bathroom.": nothing but the place is said.
    const bool idle = std::none_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
        return tables().acts[act.row].side != Side::Edge;
    });
    if (!placed.moved && idle && spots.objects.empty() && spots.spaces.size() == 1 &&
        sentence.tokens.size() <= 14 && lineKeys_.empty() && !spots.has(Cue::Chatter) &&
        !spots.has(Cue::Same) && !spots.has(Cue::Hypothetical) && !spots.has(Cue::Locus)) {
        const SpaceSpot& spot = spots.spaces.front();
        const bool room = spot.kind == SpaceKind::Room || spot.kind == SpaceKind::Outside;
        const bool counted =
            spot.span.begin > 0 &&
            tables().number(sentence.tokens[spot.span.begin - 1].word).kind != NumberKind::None;
        const bool ends = spot.span.end + 1 >= sentence.tokens.size() && !sentence.bullet;
        const bool from = spot.span.begin > 0 && wordIs(sentence, spot.span.begin - 1, "from");
        if (room && ends && !counted && !from && !spot.headingOnly) {
            moveTo({&spot});
            placed.moved = true;
            placed.parts.clear();
        }
    }
    if (!placed.moved && !placed.parts.empty() && spots.acts.empty() && spots.objects.empty() &&
        placed.parts.size() == 1 && placed.parts.front().keys.size() == 1 && lineKeys_.empty() &&
        sentence.tokens.size() <= 11 && !whole_) {
        stand(placed.parts.front().keys);
        placed.moved = true;
    }
    return placed;
}

}  // namespace ledgerboard::intake
