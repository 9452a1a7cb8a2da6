#include "core/intake/notes/place_clues.h"

#include <algorithm>
#include <array>
#include <limits>

#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/weight_table.h"

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kLately = 8;  // sentences back to which a space that was named may be meant
// A bound on memory for hostile input: of those that are only named, no more are kept.
constexpr std::size_t kMostNamed = 2'000;
constexpr std::size_t kAll = std::numeric_limits<std::size_t>::max();

const WeightTable& weights() {
    static const WeightTable kWeights("places", {});
    return kWeights;
}

KnownSpace wholeHouse() {
    return {"whole house", "whole house", SpaceKind::Whole};
}

KnownSpace outside() {
    return {"exterior", "outside", SpaceKind::Outside};
}

// What sort of place: the last word of its name.
std::string sortOf(const std::string& key) {
    return key == "whole house" || key == "exterior" ? key : headOf(key);
}

std::string_view kindOf(const std::string& key) {
    return key == "whole house" ? "house" : key == "exterior" ? "outside" : "room";
}

const ClueWords& manyOf(std::size_t count) {
    static const std::array<ClueWords, 5> kMany = {ClueWords("none"), ClueWords("one"),
                                                   ClueWords("few"), ClueWords("some"),
                                                   ClueWords("many")};
    return kMany.at(count == 0 ? 0 : count == 1 ? 1 : count <= 3 ? 2 : count <= 7 ? 3 : 4);
}

bool holds(const std::vector<Spoken>& spaces, const Spoken& one) {
    return std::any_of(spaces.begin(), spaces.end(),
                       [&](const Spoken& other) { return other.space == one.space; });
}

std::size_t objectsWithin(const std::vector<ObjectSpot>& heard, std::size_t begin,
                          std::size_t end) {
    return static_cast<std::size_t>(
        std::count_if(heard.begin(), heard.end(), [&](const ObjectSpot& object) {
            return begin <= object.span.begin && object.span.begin < end;
        }));
}

// The words that clues of places begin with, and those that they tell with.
struct Words {
    const ClueWords beforeWord{"before word"};
    const ClueWords beforeWords{"before words"};
    const ClueWords beforeThen{"before then"};
    const ClueWords beforeFar{"before far"};
    const ClueWords beforeThings{"before things"};
    const ClueWords beforeJoined{"before joined"};
    const ClueWords beforeAt{"before at"};
    const ClueWords beforeFrom{"before from"};
    const ClueWords adjoins{"adjoins"};
    const ClueWords afterWord{"after word"};
    const ClueWords afterWords{"after words"};
    const ClueWords afterThen{"after then"};
    const ClueWords afterFar{"after far"};
    const ClueWords afterThings{"after things"};
    const ClueWords named{"named"};
    const ClueWords namedWord{"named word"};
    const ClueWords namedWords{"named words"};
    const ClueWords namedThen{"named then"};
    const ClueWords namedAt{"named at"};
    const ClueWords namedRank{"named rank"};
    const std::array<ClueWords, 4> ranks{ClueWords("1"), ClueWords("2"), ClueWords("3"),
                                         ClueWords("4")};
    const ClueWords marked{"marked"};
    const ClueWords unmarked{"unmarked"};
    const ClueWords joined{"and"};
    const ClueWords apart{"not"};
    const ClueWords last{"last"};
    const ClueWords within{"within"};
    const ClueWords is{"is"};
    const ClueWords all{"all"};
    const ClueWords plus{"+"};
    const ClueWords form{"form"};
    const ClueWords line{"line"};
    const ClueWords opens{"opens"};
    const ClueWords thingIn{"thing in"};
    const ClueWords familyIn{"family in"};
    const ClueWords tradeIn{"trade in"};
    const ClueWords thingAt{"thing at"};
    const ClueWords thing{"thing"};
    const ClueWords home{"home"};
    const ClueWords sort{"sort"};
    const ClueWords instead{"instead"};
    const ClueWords of{"of"};
    const ClueWords place{"place"};
    const ClueWords others{"others"};
    const ClueWords again{"again"};
    const ClueWords walked{"walked"};
    const ClueWords unwalked{"unwalked"};
};

const Words& words() {
    static const Words kWords;
    return kWords;
}

}  // namespace

SpokenSpace::SpokenSpace(const std::string& name, std::size_t count)
    : number(count),
      keyName(name),
      sortName(sortOf(name)),
      key(keyName),
      sort(sortName),
      kind(kindOf(name)) {}

// The space by its number; none where there are `most` others already.
Spoken PlaceClues::spokenOf(const KnownSpace& known, std::size_t most) {
    constexpr std::size_t kMostNames = 8;
    auto at = spaces_.find(known.key);
    if (at == spaces_.end()) {
        if (spaces_.size() >= most) {
            return {};
        }
        at = spaces_.try_emplace(known.key, known.key, spaces_.size()).first;
    }
    SpokenSpace& space = at->second;
    auto as = std::find_if(space.names.begin(), space.names.end(), [&](const KnownSpace& name) {
        return name.shown == known.shown && name.kind == known.kind;
    });
    if (as == space.names.end()) {
        as = space.names.size() < kMostNames ? space.names.insert(as, known) : std::prev(as);
    }
    return {&space, &*as};
}

std::vector<Spoken> PlaceClues::spacesOf(const std::vector<std::string>& keys, const Walk& walk) {
    std::vector<Spoken> spaces;
    for (const std::string& key : keys) {
        if (const KnownSpace* space = walk.find(key); space != nullptr) {
            spaces.push_back(spokenOf(*space, kAll));
        }
    }
    return spaces;
}

std::string_view PlaceClues::wordAt(std::size_t at) const {
    if (at >= sentence_->tokens.size()) {
        return "$";
    }
    const Token& token = sentence_->tokens[at];
    return token.kind == TokenKind::Number ? std::string_view("#")
           : token.kind == TokenKind::Mark ? std::string_view(&token.mark, 1)
                                           : std::string_view(token.plain);
}

// Keeps the spaces that the sentence names, with the words around each.
void PlaceClues::nameSpaces() {
    if (own_) {
        return;
    }
    own_ = lately_.size();
    for (const SpaceSpot& spot : spots_->spaces) {
        if (spot.kind == SpaceKind::Group) {
            continue;
        }
        const Spoken at = spokenOf({spot.key, spot.shown, spot.kind}, kMostNamed);
        if (at.space == nullptr) {
            continue;
        }
        const std::size_t begin = spot.span.begin;
        Named& named = lately_.emplace_back();
        named.sentence = number_;
        named.at = at;
        named.begin = begin;
        named.end = spot.span.end;
        named.last = begin + 2 >= sentence_->tokens.size();
        named.text = begin > 1 ? wordAt(begin - 2) : "^";
        named.text += ' ';
        const std::size_t one = named.text.size();
        named.text += begin > 0 ? wordAt(begin - 1) : "^";
        named.nextText = wordAt(spot.span.end);
        named.two = ClueWords(named.text);
        named.one = ClueWords(std::string_view(named.text).substr(one));
        named.next = ClueWords(named.nextText);
    }
}

void PlaceClues::begin(const Sentence& sentence, const Spots& spots, const Placed& placed,
                       const std::vector<std::string>& stood, const Walk& walk,
                       std::size_t number) {
    number_ = number;
    sentence_ = &sentence;
    spots_ = &spots;
    from_ = placed.from;
    own_.reset();
    here_ = spacesOf(walk.current(), walk);
    stood_ = spacesOf(stood, walk);
    for (const Spoken& at : stood_) {
        if (!trail_.empty() && trail_.front().space == at.space) {
            continue;
        }
        std::erase_if(trail_, [&](const Spoken& one) { return one.space == at.space; });
        trail_.insert(trail_.begin(), at);
        at.space->walked = true;
    }
    for (const Spoken& at : here_) {
        at.space->walked = true;
    }
    static const std::array<ClueWords, 3> kForms = {ClueWords("headed"), ClueWords("terse"),
                                                    ClueWords("plain")};
    form_ = &kForms.at(walk.underHeading() ? 0 : sentence.terse ? 1 : 2);
    since_ = &sinceMoveWords(walk.sinceMove());
}

PlaceClues::Candidate& PlaceClues::candidate(const Spoken& at, const ClueWords& role) {
    for (std::size_t i = 0; i < count_; ++i) {
        if (maybe_[i].at.space == at.space) {
            maybe_[i].roles.push_back(&role);
            return maybe_[i];
        }
    }
    if (count_ == maybe_.size()) {
        maybe_.emplace_back().clues = Clues(named_);
    }
    Candidate& fresh = maybe_[count_++];
    fresh.at = at;
    fresh.roles.assign(1, &role);
    fresh.clues.clear();
    return fresh;
}

void PlaceClues::addBefore(const Named& named, const Mention& mention,
                           const std::vector<ObjectSpot>& heard, const ClueWords& role) {
    const Words& to = words();
    bool mark = false;
    bool joined = false;
    for (std::size_t i = named.end; i < mention.begin; ++i) {
        mark = mark || isMark(sentence_->tokens[i], ",;:-.(");
        joined = joined || wordIs(*sentence_, i, "and");
    }
    const ClueWords& far = manyOf(mention.begin - named.end);
    Clues& clues = candidate(named.at, role).clues;
    clues.add(&to.beforeWord, &named.one);
    clues.add(&to.beforeWords, &named.two);
    clues.add(&to.beforeThen, &named.next);
    clues.add(&to.beforeFar, &far);
    clues.add(&to.beforeFar, &far, &named.one);
    clues.add(&role, mark ? &to.marked : &to.unmarked);
    clues.add(&to.beforeThings, &manyOf(objectsWithin(heard, named.end, mention.begin)));
    clues.add(&to.beforeJoined, joined ? &to.joined : &to.apart);
    clues.add(&to.beforeAt, &manyOf(named.begin));
    if (named.begin < from_) {
        clues.add(&to.beforeFrom);
    }
    if (named.end == mention.begin) {
        clues.add(&to.adjoins, &thingWords(mention.object).name);
    }
}

void PlaceClues::addAfter(const Named& named, const Mention& mention,
                          const std::vector<ObjectSpot>& heard, const ClueWords& role) {
    const Words& to = words();
    bool mark = false;
    for (std::size_t i = mention.begin + 1; i < named.begin; ++i) {
        mark = mark || isMark(sentence_->tokens[i], ",;:-.(");
    }
    Clues& clues = candidate(named.at, role).clues;
    clues.add(&to.afterWord, &named.one);
    clues.add(&to.afterWords, &named.two);
    clues.add(&to.afterThen, &named.next);
    clues.add(&to.afterFar, &manyOf(named.begin - mention.begin));
    clues.add(&role, mark ? &to.marked : &to.unmarked);
    clues.add(&to.afterThings, &manyOf(objectsWithin(heard, mention.begin + 1, named.begin)));
}

// What is named in the sentence itself.
void PlaceClues::addNear(const Mention& mention, const std::vector<ObjectSpot>& heard) {
    static const std::array<ClueWords, 3> kBefore = {ClueWords("before"), ClueWords("before that"),
                                                     ClueWords("before that")};
    static const std::array<ClueWords, 2> kAfter = {ClueWords("after"), ClueWords("after that")};
    std::size_t count = 0;
    for (std::size_t i = lately_.size(); i-- > *own_ && count < kBefore.size();) {
        if (lately_[i].end <= mention.begin) {
            addBefore(lately_[i], mention, heard, kBefore.at(count++));
        }
    }
    count = 0;
    for (std::size_t i = *own_; i < lately_.size() && count < kAfter.size(); ++i) {
        if (lately_[i].begin > mention.begin) {
            addAfter(lately_[i], mention, heard, kAfter.at(count++));
        }
    }
}

// Where the speaker has been, and what was named in the sentences before.
void PlaceClues::addEarlier() {
    static const std::array<ClueWords, 2> kTrail = {ClueWords("trail"), ClueWords("trail before")};
    static const std::array<ClueWords, 3> kNamed = {
        ClueWords("named just before"), ClueWords("named before"), ClueWords("named earlier")};
    std::size_t count = 0;
    for (std::size_t i = 0; i < trail_.size() && count < kTrail.size(); ++i) {
        if (!holds(here_, trail_[i])) {
            candidate(trail_[i], kTrail.at(count++));
        }
    }
    const Words& to = words();
    count = 0;
    for (std::size_t i = *own_; i-- > 0 && count < to.ranks.size();) {
        const Named& named = lately_[i];
        const std::size_t age = number_ - named.sentence;
        if (age > kLately) {
            return;
        }
        Clues& clues = candidate(named.at, kNamed.at(age == 1 ? 0 : age <= 3 ? 1 : 2)).clues;
        clues.add(&to.namedWord, &named.one);
        clues.add(&to.namedWords, &named.two);
        clues.add(&to.namedThen, &named.next);
        clues.add(&to.namedAt, &manyOf(named.begin));
        clues.add(&to.named, named.last ? &to.last : &to.within);
        clues.add(&to.namedRank, &to.ranks.at(count++));
    }
}

// What is usually in such a place, and how it came to be one of those it may be in.
void PlaceClues::addUsual(Candidate& maybe, std::uint32_t object, const SpokenSpace& ruled) {
    static const std::array<ClueWords, 4> kForms = {ClueWords("prose"), ClueWords("alone"),
                                                    ClueWords("bullet"), ClueWords("bullet alone")};
    const Words& to = words();
    const ThingWords& thing = thingWords(object);
    const SpokenSpace& at = *maybe.at.space;
    const ClueWords* main = maybe.roles.front();
    Clues& clues = maybe.clues;
    parts_.assign(1, &to.all);
    for (const ClueWords* role : maybe.roles) {
        clues.add(&to.is, role);
        if (parts_.size() > 1) {
            parts_.push_back(&to.plus);
        }
        parts_.push_back(role);
    }
    clues.add(parts_);
    parts_.push_back(form_);
    parts_.push_back(since_);
    clues.add(parts_);
    const ClueWords& form = kForms.at((sentence_->alone ? 1U : 0U) + (sentence_->bullet ? 2U : 0U));
    clues.add(&to.form, main, form_, &form);
    clues.add(&to.line, main, sentence_->opensLine ? &to.opens : &to.within);
    clues.add(&to.thingIn, &thing.name, &at.sort);
    clues.add(&to.familyIn, &thing.head, &at.sort);
    clues.add(&to.tradeIn, &thing.trade, &at.sort);
    clues.add(&to.thingAt, &thing.name, &at.key);
    clues.add(&to.thing, &thing.name, &at.kind, main);
    clues.add(&to.home, &thing.home, &at.kind);
    clues.add(&to.home, &thing.home, &at.kind, main);
    clues.add(&to.sort, &at.sort, main);
    clues.add(&to.instead, &at.sort, &to.of, &ruled.sort);
    clues.add(&to.place, &at.key, main);
}

void PlaceClues::add(std::size_t index, const Mention& mention,
                     const std::vector<ObjectSpot>& heard, const Walk& walk) {
    const KnownSpace* rule =
        mention.places.size() == 1 ? walk.find(mention.places.front()) : nullptr;
    if (rule == nullptr || rule->kind == SpaceKind::Group || mention.placed) {
        return;
    }
    static const ClueWords kRuled("ruled");
    static const ClueWords kHere("here");
    static const ClueWords kStood("stood");
    static const ClueWords kHouse("house");
    static const ClueWords kOutside("outside");
    nameSpaces();
    count_ = 0;
    const Spoken ruled = spokenOf(*rule, kAll);
    candidate(ruled, kRuled);
    for (const Spoken& at : here_) {
        candidate(at, kHere);
    }
    for (const Spoken& at : stood_) {
        if (!holds(here_, at)) {
            candidate(at, kStood);
        }
    }
    addNear(mention, heard);
    addEarlier();
    candidate(spokenOf(wholeHouse(), kAll), kHouse);
    candidate(spokenOf(outside(), kAll), kOutside);
    Whereabouts& where = all_.emplace_back(Whereabouts{index, number_, {}});
    where.places.reserve(count_);
    for (std::size_t i = 0; i < count_; ++i) {
        Candidate& maybe = maybe_[i];
        addUsual(maybe, mention.object, *ruled.space);
        where.places.push_back({maybe.at, maybe.roles.front(), weights().sumOf(maybe.clues.keys()),
                                maybe.clues.names()});
    }
}

void PlaceClues::end() {
    nameSpaces();
    while (!lately_.empty() && lately_.front().sentence + kLately < number_) {
        lately_.pop_front();
    }
}

void PlaceClues::finish(const std::vector<Mention>& mentions) {
    const auto thingAt = [](const SpokenSpace& space, const Mention& mention) {
        return space.number << 32U | mention.object;
    };
    std::unordered_map<std::uint64_t, std::size_t> same;
    for (const Mention& mention : mentions) {
        for (const std::string& key : mention.places) {
            if (const auto space = spaces_.find(key); space != spaces_.end()) {
                ++space->second.things;
                ++same[thingAt(space->second, mention)];
            }
        }
    }
    const Words& to = words();
    Clues late(named_);
    for (Whereabouts& where : all_) {
        const Mention& mention = mentions[where.mention];
        for (MaybePlace& maybe : where.places) {
            const std::size_t itself = &maybe == &where.places.front() ? 1 : 0;
            const auto alike = same.find(thingAt(*maybe.at.space, mention));
            const ClueWords& others = manyOf(maybe.at.space->things - itself);
            const ClueWords& again = manyOf(alike == same.end() ? 0 : alike->second - itself);
            late.clear();
            late.add(&to.others, &others);
            late.add(&to.others, &others, maybe.role);
            late.add(maybe.at.space->walked ? &to.walked : &to.unwalked, maybe.role);
            late.add(&to.again, &again);
            late.add(&to.again, &again, maybe.role);
            maybe.weight += weights().sumOf(late.keys());
            maybe.names.insert(maybe.names.end(), late.names().begin(), late.names().end());
        }
    }
}

const ClueWords& sinceMoveWords(int sentences) {
    static const std::array<ClueWords, 5> kSince = {
        ClueWords("now"), ClueWords("few"), ClueWords("some"), ClueWords("far"), ClueWords("long")};
    return kSince.at(sentences > 12  ? 4
                     : sentences > 5 ? 3
                     : sentences > 2 ? 2
                     : sentences > 0 ? 1
                                     : 0);
}

std::size_t likeliestPlace(const Whereabouts& where) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < where.places.size(); ++i) {
        best = where.places[i].weight > where.places[best].weight ? i : best;
    }
    return best;
}

const std::vector<std::string>& placeFaults() {
    return weights().faults();
}

}  // namespace ledgerboard::intake
