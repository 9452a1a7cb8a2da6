#include "core/intake/notes/place_clues.h"

#include <algorithm>
#include <array>

#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/weight_table.h"

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kLately = 8;  // sentences back to which a space that was named may be meant

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
std::string sortOf(const KnownSpace& space) {
    return space.key == "whole house" || space.key == "exterior" ? space.key : headOf(space.key);
}

std::string_view kindOf(const KnownSpace& space) {
    return space.key == "whole house" ? "house" : space.key == "exterior" ? "outside" : "room";
}

std::string_view farOf(std::size_t count) {
    return count == 0   ? "none"
           : count == 1 ? "one"
           : count <= 3 ? "few"
           : count <= 7 ? "some"
                        : "many";
}

std::string_view sinceOf(int sentences) {
    return sentences > 12  ? "long"
           : sentences > 5 ? "far"
           : sentences > 2 ? "some"
           : sentences > 0 ? "few"
                           : "now";
}

std::vector<KnownSpace> spacesOf(const std::vector<std::string>& keys, const Walk& walk) {
    std::vector<KnownSpace> spaces;
    for (const std::string& key : keys) {
        if (const KnownSpace* space = walk.find(key); space != nullptr) {
            spaces.push_back(*space);
        }
    }
    return spaces;
}

bool holds(const std::vector<KnownSpace>& spaces, const std::string& key) {
    return std::any_of(spaces.begin(), spaces.end(),
                       [&](const KnownSpace& space) { return space.key == key; });
}

std::size_t objectsWithin(const std::vector<ObjectSpot>& heard, std::size_t begin,
                          std::size_t end) {
    return static_cast<std::size_t>(
        std::count_if(heard.begin(), heard.end(), [&](const ObjectSpot& object) {
            return begin <= object.span.begin && object.span.begin < end;
        }));
}

}  // namespace

std::string PlaceClues::wordAt(std::size_t at) const {
    if (at >= sentence_->tokens.size()) {
        return "$";
    }
    const Token& token = sentence_->tokens[at];
    return token.kind == TokenKind::Number ? "#"
           : token.kind == TokenKind::Mark ? std::string(1, token.mark)
                                           : token.plain;
}

PlaceClues::Named PlaceClues::namedAt(const SpaceSpot& spot) const {
    const std::size_t begin = spot.span.begin;
    Named named;
    named.sentence = number_;
    named.space = {spot.key, spot.shown, spot.kind};
    named.one = begin > 0 ? wordAt(begin - 1) : "^";
    named.two = (begin > 1 ? wordAt(begin - 2) : "^") + " " + named.one;
    named.next = wordAt(spot.span.end);
    named.begin = begin;
    named.last = begin + 2 >= sentence_->tokens.size();
    return named;
}

void PlaceClues::begin(const Sentence& sentence, const Spots& spots, const Placed& placed,
                       const std::vector<std::string>& stood, const Walk& walk,
                       std::size_t number) {
    number_ = number;
    sentence_ = &sentence;
    spots_ = &spots;
    from_ = placed.from;
    here_ = spacesOf(walk.current(), walk);
    stood_ = spacesOf(stood, walk);
    for (const KnownSpace& space : stood_) {
        if (!trail_.empty() && trail_.front().key == space.key) {
            continue;
        }
        std::erase_if(trail_, [&](const KnownSpace& one) { return one.key == space.key; });
        trail_.insert(trail_.begin(), space);
        walked_.insert(space.key);
    }
    for (const KnownSpace& space : here_) {
        walked_.insert(space.key);
    }
    form_ = walk.underHeading() ? "headed" : sentence.terse ? "terse" : "plain";
    since_ = sinceOf(walk.sinceMove());
}

MaybePlace& PlaceClues::place(Whereabouts& where, const KnownSpace& space,
                              std::string_view role) const {
    const auto known =
        std::find_if(where.places.begin(), where.places.end(),
                     [&](const MaybePlace& maybe) { return maybe.space.key == space.key; });
    if (known != where.places.end()) {
        known->roles.push_back(role);
        return *known;
    }
    where.places.push_back({space, {role}, Clues(named_)});
    return where.places.back();
}

void PlaceClues::addBefore(MaybePlace& maybe, const SpaceSpot& spot, const Mention& mention,
                           const std::vector<ObjectSpot>& heard, std::string_view role) const {
    const std::size_t end = spot.span.end;
    const Named named = namedAt(spot);
    bool mark = false;
    bool joined = false;
    for (std::size_t i = end; i < mention.begin; ++i) {
        mark = mark || isMark(sentence_->tokens[i], ",;:-.(");
        joined = joined || wordIs(*sentence_, i, "and");
    }
    const std::string_view far = farOf(mention.begin - end);
    Clues& clues = maybe.clues;
    clues.add("before word", named.one);
    clues.add("before words", named.two);
    clues.add("before then", named.next);
    clues.add("before far", far);
    clues.add("before far", far, named.one);
    clues.add(role, mark ? "marked" : "unmarked");
    clues.add("before things", farOf(objectsWithin(heard, end, mention.begin)));
    clues.add("before joined", joined ? "and" : "not");
    clues.add("before at", farOf(named.begin));
    if (named.begin < from_) {
        clues.add("before from");
    }
    if (end == mention.begin) {
        clues.add("adjoins", tables().objects[mention.object].name);
    }
}

void PlaceClues::addAfter(MaybePlace& maybe, const SpaceSpot& spot, const Mention& mention,
                          const std::vector<ObjectSpot>& heard, std::string_view role) const {
    const Named named = namedAt(spot);
    bool mark = false;
    for (std::size_t i = mention.begin + 1; i < named.begin; ++i) {
        mark = mark || isMark(sentence_->tokens[i], ",;:-.(");
    }
    Clues& clues = maybe.clues;
    clues.add("after word", named.one);
    clues.add("after words", named.two);
    clues.add("after then", named.next);
    clues.add("after far", farOf(named.begin - mention.begin));
    clues.add(role, mark ? "marked" : "unmarked");
    clues.add("after things", farOf(objectsWithin(heard, mention.begin + 1, named.begin)));
}

// What is named in the sentence itself.
void PlaceClues::addNear(Whereabouts& where, const Mention& mention,
                         const std::vector<ObjectSpot>& heard) const {
    constexpr std::array<std::string_view, 3> kBefore = {"before", "before that", "before that"};
    constexpr std::array<std::string_view, 2> kAfter = {"after", "after that"};
    const std::vector<SpaceSpot>& spaces = spots_->spaces;
    std::size_t count = 0;
    for (std::size_t i = spaces.size(); i-- > 0 && count < kBefore.size();) {
        if (spaces[i].span.end <= mention.begin && spaces[i].kind != SpaceKind::Group) {
            const std::string_view role = kBefore[count++];
            addBefore(place(where, namedAt(spaces[i]).space, role), spaces[i], mention, heard,
                      role);
        }
    }
    count = 0;
    for (std::size_t i = 0; i < spaces.size() && count < kAfter.size(); ++i) {
        if (spaces[i].span.begin > mention.begin && spaces[i].kind != SpaceKind::Group) {
            const std::string_view role = kAfter[count++];
            addAfter(place(where, namedAt(spaces[i]).space, role), spaces[i], mention, heard, role);
        }
    }
}

// Where the speaker has been, and what was named in the sentences before.
void PlaceClues::addEarlier(Whereabouts& where) const {
    constexpr std::array<std::string_view, 2> kTrail = {"trail", "trail before"};
    std::size_t count = 0;
    for (const KnownSpace& space : trail_) {
        if (count < kTrail.size() && !holds(here_, space.key)) {
            place(where, space, kTrail[count++]);
        }
    }
    constexpr std::array<std::string_view, 4> kRank = {"1", "2", "3", "4"};
    count = 0;
    for (std::size_t i = lately_.size(); i-- > 0 && count < kRank.size();) {
        const Named& named = lately_[i];
        const std::size_t age = number_ - named.sentence;
        if (age > kLately) {
            return;
        }
        const std::string_view role = age == 1   ? "named just before"
                                      : age <= 3 ? "named before"
                                                 : "named earlier";
        Clues& clues = place(where, named.space, role).clues;
        clues.add("named word", named.one);
        clues.add("named words", named.two);
        clues.add("named then", named.next);
        clues.add("named at", farOf(named.begin));
        clues.add("named", named.last ? "last" : "within");
        clues.add("named rank", kRank[count++]);
    }
}

// What is usually in such a place, and how it came to be one of those it may be in.
void PlaceClues::addUsual(MaybePlace& maybe, const Mention& mention,
                          const std::string& ruled) const {
    const ObjectRow& object = tables().objects[mention.object];
    const std::string sort = sortOf(maybe.space);
    const std::string_view kind = kindOf(maybe.space);
    const std::string_view main = maybe.roles.front();
    Clues& clues = maybe.clues;
    std::string roles;
    for (const std::string_view role : maybe.roles) {
        clues.add("is", role);
        roles += (roles.empty() ? "" : " + ") + std::string(role);
    }
    clues.add("all", roles);
    clues.add("all", roles, form_, since_);
    clues.add("form", main, form_,
              sentence_->alone ? (sentence_->bullet ? "bullet alone" : "alone")
                               : (sentence_->bullet ? "bullet" : "prose"));
    clues.add("line", main, sentence_->opensLine ? "opens" : "within");
    clues.add("thing in", object.name, sort);
    clues.add("family in", headOf(object.name), sort);
    clues.add("trade in", object.trade, sort);
    clues.add("thing at", object.name, maybe.space.key);
    clues.add("thing", object.name, kind, main);
    constexpr std::array<std::string_view, 8> kHomes = {"any",   "room", "stairs", "outside",
                                                        "house", "deck", "garage", "self"};
    constexpr std::array<std::string_view, 3> kWhere = {"in", "any", "out"};
    const std::string home = std::string(kHomes.at(static_cast<std::size_t>(object.home))) + " " +
                             std::string(kWhere.at(static_cast<std::size_t>(object.place)));
    clues.add("home", home, kind);
    clues.add("home", home, kind, main);
    clues.add("sort", sort, main);
    clues.add("instead", sort, "of", ruled);
    clues.add("place", maybe.space.key, main);
}

// Adds what the clues weigh; of long notes they would fill much memory, and are not kept.
void PlaceClues::weigh(MaybePlace& maybe) const {
    maybe.weight += weights().sumOf(maybe.clues.keys());
    if (!named_) {
        maybe.clues = Clues();
    }
}

void PlaceClues::add(std::size_t index, const Mention& mention,
                     const std::vector<ObjectSpot>& heard, const Walk& walk) {
    const KnownSpace* rule =
        mention.places.size() == 1 ? walk.find(mention.places.front()) : nullptr;
    if (rule == nullptr || rule->kind == SpaceKind::Group) {
        return;
    }
    Whereabouts where;
    where.mention = index;
    where.sentence = number_;
    where.places.reserve(12);
    place(where, *rule, "ruled");
    for (const KnownSpace& space : here_) {
        place(where, space, "here");
    }
    for (const KnownSpace& space : stood_) {
        if (!holds(here_, space.key)) {
            place(where, space, "stood");
        }
    }
    addNear(where, mention, heard);
    addEarlier(where);
    place(where, wholeHouse(), "house");
    place(where, outside(), "outside");
    const std::string ruled = sortOf(*rule);
    for (MaybePlace& maybe : where.places) {
        addUsual(maybe, mention, ruled);
        weigh(maybe);
    }
    all_.push_back(std::move(where));
}

void PlaceClues::end() {
    for (const SpaceSpot& spot : spots_->spaces) {
        if (spot.kind != SpaceKind::Group) {
            lately_.push_back(namedAt(spot));
        }
    }
    const auto old = std::find_if(lately_.begin(), lately_.end(), [&](const Named& named) {
        return named.sentence + kLately >= number_;
    });
    lately_.erase(lately_.begin(), old);
}

void PlaceClues::finish(const std::vector<Mention>& mentions) {
    std::map<std::string, std::size_t> within;
    std::map<std::pair<std::string, std::uint32_t>, std::size_t> same;
    for (const Mention& mention : mentions) {
        for (const std::string& key : mention.places) {
            ++within[key];
            ++same[{key, mention.object}];
        }
    }
    for (Whereabouts& where : all_) {
        const std::uint32_t object = mentions[where.mention].object;
        for (MaybePlace& maybe : where.places) {
            const std::string& key = maybe.space.key;
            const std::string_view main = maybe.roles.front();
            const std::size_t itself = &maybe == &where.places.front() ? 1 : 0;
            const std::string_view others = farOf(within[key] - itself);
            const std::string_view again = farOf(same[{key, object}] - itself);
            Clues late = named_ ? Clues(true) : Clues();
            late.add("others", others);
            late.add("others", others, main);
            late.add(walked_.contains(key) ? "walked" : "unwalked", main);
            late.add("again", again);
            late.add("again", again, main);
            maybe.weight += weights().sumOf(late.keys());
            maybe.clues.addNames(late);
        }
    }
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
