#include "core/intake/notes/link_spots.h"

#include <algorithm>

#include "core/intake/notes/arrows.h"
#include "core/intake/notes/likenesses.h"
#include "core/intake/notes/link_acts.h"
#include "core/intake/notes/one_of.h"
#include "core/intake/notes/spotted_words.h"
#include "core/intake/notes/told_acts.h"

namespace ledgerboard::intake {

namespace {

class Preparer : SpottedWords {
  public:
    Preparer(const Sentence& sentence, Spots& spots, const Context& context)
        : SpottedWords(sentence, spots),
          before_(context.before),
          placeWord_(context.placeWord),
          lately_(context.lately) {}

    void run() {
        dropAdjectives();
        readArrows(sentence_, spots_);
        joinCompounds();
        narrowKinds();
        markLandmarks();
        dropMaterials();
        readPricedArrows(sentence_, spots_);
    }

  private:
    // "new vinyl ones", "a steel one": what the one is like. "It could be asbestos": what it is
    // suspected to hold.
    void dropAdjectives() {
        static const std::uint32_t kAsbestos = tables().objectNamed("asbestos");
        static const std::uint32_t kLead = tables().objectNamed("lead paint");
        std::erase_if(spots_.objects, [&](const ObjectSpot& object) {
            const std::size_t end = object.span.end;
            // "wall-hung", "stone-effect": what another thing is like.
            const bool compound = end + 1 < sentence_.tokens.size() && cueIsMark(end, "-") &&
                                  sentence_.tokens[end].glued && sentence_.tokens[end + 1].glued &&
                                  sentence_.tokens[end + 1].kind == TokenKind::Word;
            if (word(end, "one") || compound) {
                return true;
            }
            // "and duct it outside": what is done with it.
            const std::size_t begin = object.span.begin;
            const bool does = (word(end, "it") || word(end, "them")) && end == begin + 1 &&
                              (begin == 0 || word(begin - 1, "and") || word(begin - 1, "to") ||
                               sentence_.tokens[begin - 1].kind == TokenKind::Mark);
            if (does) {
                return true;
            }
            const bool suspect = object.object == kAsbestos || object.object == kLead;
            const std::size_t at = object.span.begin;
            const bool other = !before_.empty() || spots_.objects.front().span.begin < at;
            return suspect && other && at > 0 &&
                   (word(at - 1, "be") || word(at - 1, "is") || word(at - 1, "like") ||
                    word(at - 1, "contain") || word(at - 1, "assum"));
        });
    }

    // "vanity light": the last of two objects side by side is meant.
    void joinCompounds() {
        auto& objects = spots_.objects;
        for (std::size_t i = 0; i + 1 < objects.size();) {
            const bool adjacent = objects[i].span.end == objects[i + 1].span.begin;
            const Token& last = sentence_.tokens[objects[i].span.end - 1];
            const std::string& plain = last.plain;
            // "clos" is short for closet, and no more than one.
            const bool plural =
                last.text.ends_with('s') &&
                (tables().lexicon.respelling(plain) == nullptr ||
                 tables().lexicon.respelling(plain.substr(0, plain.size() - 1)) != nullptr);
            if (adjacent && !plural && !objects[i + 1].material) {
                objects[i + 1].place = objects[i].place;
                objects.erase(objects.begin() + static_cast<std::ptrdiff_t>(i));
            } else {
                ++i;
            }
        }
    }

    // "The fan" of a bedroom hangs from its ceiling.
    void nameFan(ObjectSpot& object) const {
        static const std::uint32_t kBathFan = tables().objectNamed("bath fan");
        static const std::uint32_t kCeilingFan = tables().objectNamed("ceiling fan");
        static const std::vector<WordId> kDry = {tables().id("room"), tables().id("bedroom"),
                                                 tables().id("porch"), tables().id("loft"),
                                                 tables().id("sunroom")};
        const bool bare = object.object == kBathFan && object.span.end == object.span.begin + 1 &&
                          word(object.span.begin, "fan");
        if (bare && placeWord_ != kUnknown &&
            std::find(kDry.begin(), kDry.end(), placeWord_) != kDry.end()) {
            object.object = kCeilingFan;
        }
    }

    // "The doors" of a kitchen are its cabinets'.
    void nameDoors(ObjectSpot& object) const {
        static const std::uint32_t kDoors = tables().objectNamed("interior doors");
        static const std::uint32_t kCabinetDoors = tables().objectNamed("cabinet doors");
        static const WordId kKitchen = tables().id("kitchen");
        const bool bare = object.object == kDoors && object.span.end == object.span.begin + 1 &&
                          sentence_.tokens[object.span.begin].plain == "doors";
        if (bare && placeWord_ != kUnknown && placeWord_ == kKitchen) {
            object.object = kCabinetDoors;
        }
    }

    // "the floor is oak": a wood floor.
    void narrowKinds() {
        for (ObjectSpot& object : spots_.objects) {
            nameFan(object);
            nameDoors(object);
            for (const KindRow& kind : tables().kindsOf(object.object)) {
                if (kind.whole != kNone) {
                    continue;
                }
                static const std::uint32_t kTile = tables().objectNamed("tile");
                const bool laid = kind.place && object.object == kTile && speaksOfFloor();
                static const std::uint32_t kTrees = tables().objectNamed("trees");
                const bool sawn = kind.object == kTrees && word(object.span.end - 1, "board");
                if (laid || sawn) {
                    continue;
                }
                if (kind.lately  ? wasSaid(kind.word)
                    : kind.place ? kind.word == placeWord_
                                 : nearWord(object.span, kind.word)) {
                    object.object = kind.object;
                    break;
                }
            }
        }
        // "the floor is sheet vinyl": one thing, named twice.
        auto& objects = spots_.objects;
        for (std::size_t i = 0; i + 1 < objects.size();) {
            const std::string& family = tables().objects[objects[i].object].family;
            const bool alike =
                objects[i].object == objects[i + 1].object ||
                (!family.empty() && family == tables().objects[objects[i + 1].object].family);
            // "the mantel is a railroad tie": what it is, not another thing.
            const bool described =
                !alike && saysWhat(objects[i].span.end, objects[i + 1].span.begin);
            // "new floor (vinyl plank)"
            const bool bracket = alike && objects[i].span.end + 1 == objects[i + 1].span.begin &&
                                 cueIsMark(objects[i].span.end, "(");
            if (bracket) {
                objects[i].object = objects[i + 1].object;
                objects.erase(objects.begin() + static_cast<std::ptrdiff_t>(i + 1));
            } else if (described) {
                objects.erase(objects.begin() + static_cast<std::ptrdiff_t>(i + 1));
            } else if (alike && copulaBetween(objects[i].span.end, objects[i + 1].span.begin)) {
                const bool second = objects[i].object == objects[i + 1].object;
                if (second && objects[i].span.end + 1 == objects[i + 1].span.begin) {
                    objects[i].span.end = objects[i + 1].span.end;  // "flr: LVP 120 sf"
                }
                objects[second ? i : i + 1].place = objects[i].place;
                objects.erase(objects.begin() + static_cast<std::ptrdiff_t>(second ? i + 1 : i));
            } else {
                ++i;
            }
        }
    }

    // "siding: vinyl": a material is no object of its own where another is by it. A tile laid where
    // a floor is spoken of is floor tile.
    void dropMaterials() {
        // "the others are pine": what they are like.
        std::erase_if(spots_.objects, [&](const ObjectSpot& object) {
            const std::size_t begin = object.span.begin;
            return object.material && begin > 0 && sentence_.tokens[begin - 1].plain == "are";
        });
        static const std::uint32_t kTile = tables().objectNamed("tile");
        static const std::uint32_t kFloorTile = tables().objectNamed("floor tile");
        auto& objects = spots_.objects;
        const bool floor = speaksOfFloor();
        for (ObjectSpot& object : objects) {
            if (object.object == kTile && floor) {
                object.object = kFloorTile;
                object.material = false;
            }
        }
        std::erase_if(objects, [&](const ObjectSpot& object) { return isChosen(object); });
        // "The countertop is done for and we put in new laminate": what it is made of.
        static const std::uint32_t kCountertop = tables().objectNamed("countertop");
        static const std::uint32_t kLaminate = tables().objectNamed("laminate floor");
        const auto counter =
            std::find_if(objects.begin(), objects.end(),
                         [&](const ObjectSpot& object) { return object.object == kCountertop; });
        const bool floors =
            std::any_of(objects.begin(), objects.end(), [&](const ObjectSpot& object) {
                return object.object != kLaminate &&
                       tables().objects[object.object].family == "floor";
            });
        if (counter != objects.end() && !floors) {
            const std::size_t from = counter->span.end;
            std::erase_if(objects, [&](const ObjectSpot& object) {
                return object.object == kLaminate && object.span.begin >= from &&
                       object.span.end == object.span.begin + 1;
            });
        }
        std::erase_if(objects, [&](const ObjectSpot& object) {
            return object.material &&
                   std::any_of(objects.begin(), objects.end(), [&](const ObjectSpot& other) {
                       const std::size_t begin = std::min(object.span.end, other.span.end);
                       const std::size_t end = std::max(object.span.begin, other.span.begin);
                       // "the cabinets are original dark oak"
                       const bool said = other.span.end <= object.span.begin &&
                                         (word(other.span.end, "is") || endsInIs(other.span));
                       if (said && !other.material && end - begin < 6) {
                           return true;
                       }
                       return !other.material && !other.landmark && &other != &object &&
                              begin <= end && end - begin < 6 &&
                              partedBy(sentence_, spots_, begin, end) < 2.3 &&
                              !actBetween(begin, end);
                   });
        });
    }

    // "The counter is worn and I'm for plain laminate": what the thing before is to be made of.
    [[nodiscard]] bool isChosen(const ObjectSpot& object) const {
        static const std::vector<std::string_view> kChoose = {
            "i am for",      "i would go for",    "i would go with", "we will go with",
            "let's go with", "we are going with", "i am going with"};
        const bool before =
            !before_.empty() ||
            std::any_of(spots_.objects.begin(), spots_.objects.end(), [&](const ObjectSpot& one) {
                return one.span.end <= object.span.begin && !one.material;
            });
        constexpr std::size_t kNear = 2;
        return object.material && before &&
               std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
                   return act.span.end <= object.span.begin &&
                          act.span.end + kNear >= object.span.begin &&
                          isOneOf(row(act).phrase, kChoose);
               });
    }

    [[nodiscard]] bool endsInIs(const Span& span) const {
        return sentence_.tokens[span.end - 1].text.ends_with("'s");
    }

    [[nodiscard]] bool speaksOfFloor() const {
        const auto isFloor = [](std::uint32_t object) {
            return tables().objects[object].family == "floor" ||
                   tables().objects[object].name == "subfloor";
        };
        return std::any_of(spots_.objects.begin(), spots_.objects.end(),
                           [&](const ObjectSpot& object) { return isFloor(object.object); }) ||
               std::any_of(before_.begin(), before_.end(), isFloor);
    }

    [[nodiscard]] bool actBetween(std::size_t begin, std::size_t end) const {
        return std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
            return act.span.begin >= begin && act.span.end <= end && row(act).weight > 1;
        });
    }

    [[nodiscard]] bool copulaBetween(std::size_t begin, std::size_t end) const {
        bool copula = false;
        for (std::size_t i = begin; i < end; ++i) {
            const Token& token = sentence_.tokens[i];
            if (token.kind == TokenKind::Mark && token.mark != '-' && token.mark != ':' &&
                token.mark != ',') {
                return false;
            }
            if (spots_.endOf(Cue::Locus, i) > i) {
                return false;
            }
            copula = copula || word(i, "is") || (token.kind == TokenKind::Mark);
        }
        return copula && end - begin < 9 && !actBetween(begin, end);
    }

    // Whether nothing but "is a", "'s an old" stands from `begin` to `end`.
    [[nodiscard]] bool saysWhat(std::size_t begin, std::size_t end) const {
        while (begin < end && (spots_.endOf(Cue::Here, begin) > begin ||
                               (!word(begin, "is") && spots_.endOf(Cue::Small, begin) > begin))) {
            begin = std::max(spots_.endOf(Cue::Here, begin), spots_.endOf(Cue::Small, begin));
        }
        const bool is = word(begin, "is");
        const bool hidden = sentence_.tokens[begin - 1].text.ends_with("'s");
        const std::size_t at = is ? begin + 1 : begin;
        const bool points = word(at, "a") || word(at, "an") || word(at, "that") ||
                            word(at, "those") || word(at, "these");
        const bool bare = is && end == at;
        return (is || hidden) && (points || bare) && end <= at + 4 &&
               std::all_of(sentence_.tokens.begin() + static_cast<std::ptrdiff_t>(at),
                           sentence_.tokens.begin() + static_cast<std::ptrdiff_t>(end),
                           [](const Token& token) { return token.kind == TokenKind::Word; });
    }

    [[nodiscard]] bool nearWord(const Span& span, WordId wanted) const {
        const std::size_t begin = span.begin > 4 ? span.begin - 4 : 0;
        for (std::size_t i = begin; i < sentence_.tokens.size() && i < span.end + 5; ++i) {
            const bool mark = sentence_.tokens[i].kind == TokenKind::Mark;
            if (mark && i < span.begin && i >= begin) {
                continue;
            }
            if (mark && i >= span.end && sentence_.tokens[i].mark != '-' &&
                sentence_.tokens[i].mark != ':' && sentence_.tokens[i].mark != ',' &&
                sentence_.tokens[i].mark != '"') {
                return false;
            }
            if (sentence_.tokens[i].word == wanted && !span.holds(i) && !namesAnother(i)) {
                return true;
            }
        }
        return false;
    }

    // "The boiler is oil, 2011. The tank next to it is fine."
    [[nodiscard]] bool wasSaid(WordId wanted) const {
        return std::find(lately_.begin(), lately_.end(), wanted) != lately_.end() ||
               std::any_of(sentence_.tokens.begin(), sentence_.tokens.end(),
                           [&](const Token& token) { return token.word == wanted; });
    }

    // "gas heater in the fireplace": a word of another thing's name says nothing of this one.
    [[nodiscard]] bool namesAnother(std::size_t at) const {
        return std::any_of(spots_.objects.begin(), spots_.objects.end(),
                           [&](const ObjectSpot& object) {
                               return object.span.holds(at) && !object.material &&
                                      object.span.end > object.span.begin + 1;
                           });
    }

    // Where the words that lead up to an object begin: "under | the old kitchen | sink".
    [[nodiscard]] std::size_t leadOf(std::size_t at) const {
        int unknown = 0;
        while (at > 0) {
            const Token& token = sentence_.tokens[at - 1];
            const bool small = smallEnds(at);
            if (token.kind == TokenKind::Mark || word(at - 1, "is") || beginsAnother(at)) {
                break;
            }
            if (cueEnds(Cue::Landmark, at) || cueEnds(Cue::Locus, at) || cueEnds(Cue::With, at)) {
                break;
            }
            if (!small) {
                ++unknown;
            }
            if (unknown > 2) {
                break;
            }
            --at;
        }
        return at;
    }

    // "on the porch | the steps": a thing of its own, whatever leads to the name before it.
    [[nodiscard]] bool beginsAnother(std::size_t at) const {
        const bool article = word(at, "the") || word(at, "a") || word(at, "an") ||
                             word(at, "this") || word(at, "that");
        const auto ends = [&](const auto& spot) { return spot.span.end == at; };
        // "drywall on the ceiling and a new door"
        if (at > 0 && word(at - 1, "and") && (word(at, "a") || word(at, "an") || word(at, "new"))) {
            return true;
        }
        return article && (std::any_of(spots_.objects.begin(), spots_.objects.end(), ends) ||
                           std::any_of(spots_.spaces.begin(), spots_.spaces.end(), ends));
    }

    [[nodiscard]] bool smallEnds(std::size_t at) const { return cueEnds(Cue::Small, at); }

    [[nodiscard]] std::size_t lengthOfCue(Cue cue, std::size_t end) const {
        for (const CueSpot& spot : spots_.cues) {
            if (spot.cue == cue && spot.span.end == end) {
                return end - spot.span.begin;
            }
        }
        return 0;
    }

    [[nodiscard]] bool saysHowFar(std::size_t index) const {
        static const std::uint32_t kWalls = tables().objectNamed("walls");
        const ObjectSpot& wall = spots_.objects[index];
        const std::size_t begin = wall.span.begin;
        const std::size_t end = spots_.objects[index - 1].span.end;
        const bool whole = begin > 1 && word(begin - 1, "whole");
        const bool that = begin == end + 1 && (word(begin - 1, "that") || word(begin - 1, "this"));
        return wall.object == kWalls && begin >= end && begin - end < 4 && (whole || that);
    }

    void markLandmarks() {
        auto& objects = spots_.objects;
        for (std::size_t i = 0; i < objects.size(); ++i) {
            const std::size_t lead = leadOf(objects[i].span.begin);
            const bool pronoun = spots_.has(Cue::Pronoun) && objects[i].material;
            if (cueEnds(Cue::With, lead) && (i > 0 || pronoun)) {
                objects[i].with = true;
            }
            if (comesOff(objects[i].span)) {
                objects[i].landmark = true;
                continue;
            }
            if (i > 0 && lead > 0 && word(lead - 1, "for") && isExchanged(objects[i - 1].span)) {
                objects[i].with = true;
                continue;
            }
            // "new siding that wall", "new cabinets, the whole wall": how far, and where.
            if (i > 0 && saysHowFar(i)) {
                objects[i].landmark = true;
                continue;
            }
            // "I like the railing": it is what is liked.
            const bool liked =
                lead > 2 && word(lead - 2, "like") && (word(lead - 3, "i") || word(lead - 3, "we"));
            if ((cueEnds(Cue::Locus, lead) && !liked) ||
                (lead > 0 && i > 0 && word(lead - 1, "where"))) {
                objects[i].landmark = true;
                continue;
            }
            // "eighteen feet of cabinets": how much of it.
            const bool measured =
                lead > 0 && word(lead - 1, "of") &&
                std::any_of(spots_.amounts.begin(), spots_.amounts.end(),
                            [&](const Amount& amount) { return amount.end + 1 == lead; });
            if (measured) {
                continue;
            }
            const bool at = lead > 0 && cueIsMark(lead - 1, "@");
            if (!cueEnds(Cue::Landmark, lead) && !at) {
                continue;
            }
            objects[i].landmark = standsAside(i, lead);
        }
    }

    // Whether a thing after a word of place, which begins at token `lead`, is not what is spoken
    // of: something else, close by, must be.
    [[nodiscard]] bool standsAside(std::size_t i, std::size_t lead) const {
        const auto& objects = spots_.objects;
        // "six of them cracked by the faucet"
        const bool them =
            std::any_of(spots_.cues.begin(), spots_.cues.end(), [&](const CueSpot& cue) {
                return cue.cue == Cue::Pronoun && cue.span.end < lead &&
                       word(cue.span.begin, "them") && !before_.empty();
            });
        const bool earlier = them || (i > 0 && partedBy(sentence_, spots_, objects[i - 1].span.end,
                                                        objects[i].span.begin) < 3.0);
        const bool later =
            i + 1 < objects.size() &&
            partedBy(sentence_, spots_, objects[i].span.end, objects[i + 1].span.begin) < 4.0;
        const bool actBetween =
            i > 0 && std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
                return act.span.begin >= objects[i - 1].span.end &&
                       act.span.end <= objects[i].span.begin && row(act).side == Side::After &&
                       row(act).weight > 1;
            });
        // "a damp patch by the front door": the remark before it is not about the door.
        const bool remark =
            std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
                return act.span.end < lead && act.span.end + 6 >= lead && row(act).weight <= 2 &&
                       row(act).side == Side::Any && row(act).object != kNone &&
                       partedBy(sentence_, spots_, act.span.end, lead) < 1.0;
            });
        // "a soft spot in the floor by the sink": the floor is what the spot is in.
        const bool inside = lead > 0 && (word(lead - 1, "in") || word(lead - 1, "on") ||
                                         word(lead - 1, "of") || word(lead - 1, "across"));
        const bool fault =
            inside && std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
                return act.span.end == lead - lengthOfCue(Cue::Landmark, lead) &&
                       row(act).weight <= 2 && row(act).side != Side::Before &&
                       (row(act).object == kNone || isSurface(objects[i])) && !hasSubject(act, i) &&
                       row(act).treatment == model::Treatment::Inspect;
            });
        // "repair at windows": where, of what stands before.
        const bool place = lead > 0 && word(lead - 1, "at") && sentence_.terse && earlier;
        return !fault && ((earlier && !actBetween) || later || remark || place);
    }

    // "has come off its plugs": what it was on.
    [[nodiscard]] bool comesOff(const Span& span) const {
        constexpr std::size_t kNear = 2;
        return std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
            const bool off = word(act.span.end - 1, "off") || word(act.span.end - 1, "from");
            return off && row(act).side == Side::Before && row(act).weight < 3 &&
                   act.span.end <= span.begin && act.span.end + kNear >= span.begin;
        });
    }

    // "swap the tube for can lights", "trade the tub in for a shower".
    [[nodiscard]] bool isExchanged(const Span& old) const {
        return std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
            const std::string_view phrase = row(act).phrase;
            return act.span.end <= old.begin && act.span.end + 4 >= old.begin &&
                   row(act).treatment == model::Treatment::Replace &&
                   (phrase.starts_with("swap") || phrase.starts_with("trade") ||
                    phrase.starts_with("exchange") || phrase.starts_with("change") ||
                    phrase.starts_with("switch"));
        });
    }

    // "a water stain on the north wall": the wall, whatever such a stain is mostly on.
    [[nodiscard]] static bool isSurface(const ObjectSpot& object) {
        static const std::vector<std::string_view> kSurfaces = {
            "walls", "ceiling", "floor", "wood floor", "subfloor", "foundation"};
        return isOneOf(tables().objects[object.object].name, kSurfaces);
    }

    // Whether an object before `index` is what the remark is about: "the radiator leaks at …".
    [[nodiscard]] bool hasSubject(const ActSpot& act, std::size_t index) const {
        return std::any_of(
            spots_.objects.begin(), spots_.objects.begin() + static_cast<std::ptrdiff_t>(index),
            [&](const ObjectSpot& object) {
                return object.span.end <= act.span.begin &&
                       partedBy(sentence_, spots_, object.span.end, act.span.begin) < 1.0;
            });
    }

    const std::vector<std::uint32_t>& before_;
    WordId placeWord_;
    const std::vector<WordId>& lately_;
};

}  // namespace

void prepareSpots(const Sentence& sentence, Spots& spots, const Context& context) {
    dropEdgeActs(sentence, spots);
    dropLikenesses(sentence, spots, !context.before.empty());
    Preparer(sentence, spots, context).run();
    dropToldActs(sentence, spots);
    prepareActs(sentence, spots);
}

}  // namespace ledgerboard::intake
