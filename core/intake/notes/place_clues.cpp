#include "core/intake/notes/place_clues.h"

#include <algorithm>
#include <array>
#include <unordered_map>

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

const ClueWords& manyOf(std::size_t count) {
    static const std::array<ClueWords, 5> kMany = {ClueWords("none"), ClueWords("one"),
                                                   ClueWords("few"), ClueWords("some"),
                                                   ClueWords("many")};
    return kMany.at(count == 0 ? 0 : count == 1 ? 1 : count <= 3 ? 2 : count <= 7 ? 3 : 4);
}

std::string_view farOf(std::size_t count) {
    return manyOf(count).text();
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
    static const std::array<ClueWords, 3> kForms = {ClueWords("headed"), ClueWords("terse"),
                                                    ClueWords("plain")};
    form_ = &kForms.at(walk.underHeading() ? 0 : sentence.terse ? 1 : 2);
    since_ = &sinceMoveWords(walk.sinceMove());
}

MaybePlace& PlaceClues::place(Whereabouts& where, const KnownSpace& space,
                              const ClueWords& role) const {
    const auto known =
        std::find_if(where.places.begin(), where.places.end(),
                     [&](const MaybePlace& maybe) { return maybe.space.key == space.key; });
    if (known != where.places.end()) {
        known->roles.push_back(&role);
        return *known;
    }
    where.places.push_back({space, {&role}, Clues(named_)});
    return where.places.back();
}

void PlaceClues::addBefore(MaybePlace& maybe, const SpaceSpot& spot, const Mention& mention,
                           const std::vector<ObjectSpot>& heard, const ClueWords& role) const {
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
    clues.add(role.text(), mark ? "marked" : "unmarked");
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
                          const std::vector<ObjectSpot>& heard, const ClueWords& role) const {
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
    clues.add(role.text(), mark ? "marked" : "unmarked");
    clues.add("after things", farOf(objectsWithin(heard, mention.begin + 1, named.begin)));
}

// What is named in the sentence itself.
void PlaceClues::addNear(Whereabouts& where, const Mention& mention,
                         const std::vector<ObjectSpot>& heard) const {
    static const std::array<ClueWords, 3> kBefore = {ClueWords("before"), ClueWords("before that"),
                                                     ClueWords("before that")};
    static const std::array<ClueWords, 2> kAfter = {ClueWords("after"), ClueWords("after that")};
    const std::vector<SpaceSpot>& spaces = spots_->spaces;
    std::size_t count = 0;
    for (std::size_t i = spaces.size(); i-- > 0 && count < kBefore.size();) {
        if (spaces[i].span.end <= mention.begin && spaces[i].kind != SpaceKind::Group) {
            const ClueWords& role = kBefore.at(count++);
            addBefore(place(where, namedAt(spaces[i]).space, role), spaces[i], mention, heard,
                      role);
        }
    }
    count = 0;
    for (std::size_t i = 0; i < spaces.size() && count < kAfter.size(); ++i) {
        if (spaces[i].span.begin > mention.begin && spaces[i].kind != SpaceKind::Group) {
            const ClueWords& role = kAfter.at(count++);
            addAfter(place(where, namedAt(spaces[i]).space, role), spaces[i], mention, heard, role);
        }
    }
}

// Where the speaker has been, and what was named in the sentences before.
void PlaceClues::addEarlier(Whereabouts& where) const {
    static const std::array<ClueWords, 2> kTrail = {ClueWords("trail"), ClueWords("trail before")};
    static const std::array<ClueWords, 3> kNamed = {
        ClueWords("named just before"), ClueWords("named before"), ClueWords("named earlier")};
    std::size_t count = 0;
    for (const KnownSpace& space : trail_) {
        if (count < kTrail.size() && !holds(here_, space.key)) {
            place(where, space, kTrail.at(count++));
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
        const ClueWords& role = kNamed.at(age == 1 ? 0 : age <= 3 ? 1 : 2);
        Clues& clues = place(where, named.space, role).clues;
        clues.add("named word", named.one);
        clues.add("named words", named.two);
        clues.add("named then", named.next);
        clues.add("named at", farOf(named.begin));
        clues.add("named", named.last ? "last" : "within");
        clues.add("named rank", kRank[count++]);
    }
}

struct PlaceClues::ThingWords {
    ThingWords(const ObjectRow& object, std::string_view ruledSort)
        : name(object.name), trade(object.trade), home(homes(object)), ruled(ruledSort) {
        const std::size_t blank = object.name.rfind(' ');
        family = ClueWords(
            std::string_view(object.name).substr(blank == std::string::npos ? 0 : blank + 1));
    }

    ClueWords name;
    ClueWords family{""};
    ClueWords trade;
    ClueWords home;
    ClueWords ruled;  // the sort of place where the rules put it

  private:
    // To what it belongs, and whether it stands indoors: "room in".
    static std::string_view homes(const ObjectRow& object) {
        constexpr std::array<std::array<std::string_view, 3>, 8> kHomes = {
            {{"any in", "any any", "any out"},
             {"room in", "room any", "room out"},
             {"stairs in", "stairs any", "stairs out"},
             {"outside in", "outside any", "outside out"},
             {"house in", "house any", "house out"},
             {"deck in", "deck any", "deck out"},
             {"garage in", "garage any", "garage out"},
             {"self in", "self any", "self out"}}};
        return kHomes.at(static_cast<std::size_t>(object.home))
            .at(static_cast<std::size_t>(object.place));
    }
};

// What is usually in such a place, and how it came to be one of those it may be in.
void PlaceClues::addUsual(MaybePlace& maybe, const ThingWords& thing) const {
    static const ClueWords kIs("is");
    static const ClueWords kAll("all");
    static const ClueWords kForm("form");
    static const ClueWords kLine("line");
    static const ClueWords kThingIn("thing in");
    static const ClueWords kFamilyIn("family in");
    static const ClueWords kTradeIn("trade in");
    static const ClueWords kThingAt("thing at");
    static const ClueWords kThing("thing");
    static const ClueWords kHome("home");
    static const ClueWords kSort("sort");
    static const ClueWords kInstead("instead");
    static const ClueWords kOf("of");
    static const ClueWords kPlace("place");
    static const std::array<ClueWords, 4> kForms = {ClueWords("prose"), ClueWords("alone"),
                                                    ClueWords("bullet"), ClueWords("bullet alone")};
    static const ClueWords kOpens("opens");
    static const ClueWords kWithin("within");
    const std::string sortName = sortOf(maybe.space);
    const ClueWords sort(sortName);
    const ClueWords key(maybe.space.key);
    const ClueWords kind(kindOf(maybe.space));
    const ClueWords& main = *maybe.roles.front();
    Clues& clues = maybe.clues;
    std::string all;
    for (const ClueWords* role : maybe.roles) {
        clues.add({&kIs, role});
        all += all.empty() ? "" : " + ";
        all += role->text();
    }
    const ClueWords roles(all);
    clues.add({&kAll, &roles});
    clues.add({&kAll, &roles, form_, since_});
    const ClueWords& form = kForms.at((sentence_->alone ? 1U : 0U) + (sentence_->bullet ? 2U : 0U));
    clues.add({&kForm, &main, form_, &form});
    clues.add({&kLine, &main, sentence_->opensLine ? &kOpens : &kWithin});
    clues.add({&kThingIn, &thing.name, &sort});
    clues.add({&kFamilyIn, &thing.family, &sort});
    clues.add({&kTradeIn, &thing.trade, &sort});
    clues.add({&kThingAt, &thing.name, &key});
    clues.add({&kThing, &thing.name, &kind, &main});
    clues.add({&kHome, &thing.home, &kind});
    clues.add({&kHome, &thing.home, &kind, &main});
    clues.add({&kSort, &sort, &main});
    clues.add({&kInstead, &sort, &kOf, &thing.ruled});
    clues.add({&kPlace, &key, &main});
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
    static const ClueWords kRuled("ruled");
    static const ClueWords kHere("here");
    static const ClueWords kStood("stood");
    static const ClueWords kHouse("house");
    static const ClueWords kOutside("outside");
    place(where, *rule, kRuled);
    for (const KnownSpace& space : here_) {
        place(where, space, kHere);
    }
    for (const KnownSpace& space : stood_) {
        if (!holds(here_, space.key)) {
            place(where, space, kStood);
        }
    }
    addNear(where, mention, heard);
    addEarlier(where);
    place(where, wholeHouse(), kHouse);
    place(where, outside(), kOutside);
    const std::string ruled = sortOf(*rule);
    const ThingWords thing(tables().objects[mention.object], ruled);
    for (MaybePlace& maybe : where.places) {
        addUsual(maybe, thing);
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
    std::unordered_map<std::string_view, std::uint32_t> numbers;
    const auto numberOf = [&](const std::string& key) {
        return numbers.try_emplace(key, static_cast<std::uint32_t>(numbers.size())).first->second;
    };
    const auto thingAt = [](std::uint32_t place, std::uint32_t object) {
        return std::uint64_t{place} << 32U | object;
    };
    std::unordered_map<std::uint32_t, std::size_t> within;
    std::unordered_map<std::uint64_t, std::size_t> same;
    for (const Mention& mention : mentions) {
        for (const std::string& key : mention.places) {
            const std::uint32_t place = numberOf(key);
            ++within[place];
            ++same[thingAt(place, mention.object)];
        }
    }
    static const ClueWords kOthers("others");
    static const ClueWords kWalked("walked");
    static const ClueWords kUnwalked("unwalked");
    static const ClueWords kAgain("again");
    Clues late(named_);
    for (Whereabouts& where : all_) {
        const std::uint32_t object = mentions[where.mention].object;
        for (MaybePlace& maybe : where.places) {
            const ClueWords& main = *maybe.roles.front();
            const std::uint32_t place = numberOf(maybe.space.key);
            const std::size_t itself = &maybe == &where.places.front() ? 1 : 0;
            const ClueWords& others = manyOf(within[place] - itself);
            const ClueWords& again = manyOf(same[thingAt(place, object)] - itself);
            late.clear();
            late.add({&kOthers, &others});
            late.add({&kOthers, &others, &main});
            late.add({walked_.contains(maybe.space.key) ? &kWalked : &kUnwalked, &main});
            late.add({&kAgain, &again});
            late.add({&kAgain, &again, &main});
            maybe.weight += weights().sumOf(late.keys());
            maybe.clues.addNames(late);
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
