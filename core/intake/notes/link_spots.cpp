#include "core/intake/notes/link_spots.h"

#include <algorithm>

namespace ledgerboard::intake {

namespace {

class Preparer {
  public:
    Preparer(const Sentence& sentence, Spots& spots, const Context& context)
        : sentence_(sentence),
          spots_(spots),
          before_(context.before),
          placeWord_(context.placeWord) {}

    void run() {
        readArrows();
        joinCompounds();
        narrowKinds();
        markLandmarks();
        dropMaterials();
        markActs();
    }

  private:
    [[nodiscard]] const ActRow& row(const ActSpot& act) const { return tables().acts[act.row]; }

    [[nodiscard]] bool word(std::size_t at, std::string_view stem) const {
        return at < sentence_.tokens.size() && sentence_.tokens[at].word != kUnknown &&
               sentence_.tokens[at].word == tables().id(stem);
    }

    // "carpet > plank" replaces one by the other, "windows -> vinyl" with a material.
    void readArrows() {
        static const std::uint32_t kNew = actNamed("new");
        static const std::uint32_t kReplaced = actNamed("be replaced");
        auto& objects = spots_.objects;
        for (std::size_t i = 1; i < objects.size(); ++i) {
            const std::size_t begin = objects[i - 1].span.end;
            const std::size_t end = objects[i].span.begin;
            std::size_t arrow = end;
            bool broken = false;
            for (std::size_t k = begin; k < end; ++k) {
                arrow = cueIsMark(k, ">") ? k : arrow;
                broken = broken || cueIsMark(k, ";.");
            }
            if (arrow == end || broken || end > arrow + 2 || actBetween(arrow, end)) {
                continue;
            }
            ActSpot act;
            act.span = {arrow, arrow + 1};
            act.row = objects[i].material ? kReplaced : kNew;
            if (act.row == kNone) {
                continue;
            }
            const auto at =
                std::find_if(spots_.acts.begin(), spots_.acts.end(),
                             [&](const ActSpot& other) { return other.span.begin >= arrow; });
            spots_.acts.insert(at, act);
            objects[objects[i].material ? i : i - 1].landmark = true;
        }
    }

    [[nodiscard]] static std::uint32_t actNamed(std::string_view phrase) {
        const auto& acts = tables().acts;
        const auto row = std::find_if(acts.begin(), acts.end(),
                                      [&](const ActRow& act) { return act.phrase == phrase; });
        return row == acts.end() ? kNone : static_cast<std::uint32_t>(row - acts.begin());
    }

    // "vanity light": the last of two objects side by side is meant.
    void joinCompounds() {
        auto& objects = spots_.objects;
        for (std::size_t i = 0; i + 1 < objects.size();) {
            const bool adjacent = objects[i].span.end == objects[i + 1].span.begin;
            const bool plural = sentence_.tokens[objects[i].span.end - 1].text.ends_with('s');
            if (adjacent && !plural && !objects[i + 1].material) {
                objects[i + 1].place = objects[i].place;
                objects.erase(objects.begin() + static_cast<std::ptrdiff_t>(i));
            } else {
                ++i;
            }
        }
    }

    // "the floor is oak": a wood floor.
    void narrowKinds() {
        for (ObjectSpot& object : spots_.objects) {
            for (const KindRow& kind : tables().kinds) {
                if (kind.general != object.object) {
                    continue;
                }
                if (kind.place ? kind.word == placeWord_ : nearWord(object.span, kind.word)) {
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
            if (alike && copulaBetween(objects[i].span.end, objects[i + 1].span.begin)) {
                const bool second = objects[i].object == objects[i + 1].object;
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
        std::erase_if(objects, [&](const ObjectSpot& object) {
            return object.material &&
                   std::any_of(objects.begin(), objects.end(), [&](const ObjectSpot& other) {
                       const std::size_t begin = std::min(object.span.end, other.span.end);
                       const std::size_t end = std::max(object.span.begin, other.span.begin);
                       return !other.material && !other.landmark && &other != &object &&
                              begin <= end && end - begin < 6 &&
                              partedBy(sentence_, spots_, begin, end) < 2.3 &&
                              !actBetween(begin, end);
                   });
        });
    }

    [[nodiscard]] bool speaksOfFloor() const {
        const auto isFloor = [](std::uint32_t object) {
            return tables().objects[object].family == "floor";
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
            copula = copula || word(i, "is") || (token.kind == TokenKind::Mark);
        }
        return copula && end - begin < 9 && !actBetween(begin, end);
    }

    [[nodiscard]] bool nearWord(const Span& span, WordId wanted) const {
        const std::size_t begin = span.begin > 4 ? span.begin - 4 : 0;
        for (std::size_t i = begin; i < sentence_.tokens.size() && i < span.end + 5; ++i) {
            const bool mark = sentence_.tokens[i].kind == TokenKind::Mark;
            if (mark && i < span.begin && i >= begin) {
                continue;
            }
            if (mark && i >= span.end && sentence_.tokens[i].mark != '-' &&
                sentence_.tokens[i].mark != ':' && sentence_.tokens[i].mark != ',') {
                return false;
            }
            if (sentence_.tokens[i].word == wanted && !span.holds(i)) {
                return true;
            }
        }
        return false;
    }

    // Where the words that lead up to an object begin: "under | the old kitchen | sink".
    [[nodiscard]] std::size_t leadOf(std::size_t at) const {
        int unknown = 0;
        while (at > 0) {
            const Token& token = sentence_.tokens[at - 1];
            const bool small = smallEnds(at);
            if (token.kind == TokenKind::Mark || word(at - 1, "is")) {
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

    [[nodiscard]] bool smallEnds(std::size_t at) const { return cueEnds(Cue::Small, at); }

    [[nodiscard]] bool cueEnds(Cue cue, std::size_t at) const {
        return std::any_of(spots_.cues.begin(), spots_.cues.end(), [&](const CueSpot& spot) {
            return spot.cue == cue && spot.span.end == at && !withinAct(spot.span);
        });
    }

    [[nodiscard]] std::size_t lengthOfCue(Cue cue, std::size_t end) const {
        for (const CueSpot& spot : spots_.cues) {
            if (spot.cue == cue && spot.span.end == end) {
                return end - spot.span.begin;
            }
        }
        return 0;
    }

    // "paint over the valve": the preposition belongs to the treatment.
    [[nodiscard]] bool withinAct(const Span& span) const {
        return std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
            return act.span.begin < span.begin && span.end <= act.span.end;
        });
    }

    void markLandmarks() {
        auto& objects = spots_.objects;
        for (std::size_t i = 0; i < objects.size(); ++i) {
            const std::size_t lead = leadOf(objects[i].span.begin);
            const bool pronoun = spots_.has(Cue::Pronoun) && objects[i].material;
            if (cueEnds(Cue::With, lead) && (i > 0 || pronoun)) {
                objects[i].with = true;
            }
            if (cueEnds(Cue::Locus, lead)) {
                objects[i].landmark = true;
                continue;
            }
            if (!cueEnds(Cue::Landmark, lead)) {
                continue;
            }
            // Something else must be what is spoken of, close by.
            const bool earlier = i > 0 && partedBy(sentence_, spots_, objects[i - 1].span.end,
                                                   objects[i].span.begin) < 3.0;
            const bool later =
                i + 1 < objects.size() &&
                partedBy(sentence_, spots_, objects[i].span.end, objects[i + 1].span.begin) < 4.0;
            const bool actBetween =
                i > 0 &&
                std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
                    return act.span.begin >= objects[i - 1].span.end &&
                           act.span.end <= objects[i].span.begin && row(act).side == Side::After &&
                           row(act).weight > 1;
                });
            // "a damp patch by the front door": the remark before it is not about the door.
            const bool remark =
                std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
                    return act.span.end == lead - lengthOfCue(Cue::Landmark, lead) &&
                           row(act).weight <= 2 && row(act).side == Side::Any &&
                           row(act).object != kNone;
                });
            objects[i].landmark = (earlier && !actBetween) || later || remark;
        }
    }

    void markActs() {
        for (ActSpot& act : spots_.acts) {
            for (const CueSpot& cue : spots_.cues) {
                if (cue.cue == Cue::Passive && cue.span.end == act.span.begin) {
                    // "we are replacing it" is no passive; "it wants replacing" is.
                    const std::string_view last = sentence_.tokens[act.span.end - 1].text;
                    act.passive = !last.ends_with("ing") || word(cue.span.begin, "need") ||
                                  word(cue.span.begin, "want");
                }
                const bool near =
                    cue.span.end <= act.span.begin && cue.span.end + 3 >= act.span.begin;
                // "walls skimmed and painted"
                const std::string_view last = sentence_.tokens[act.span.end - 1].text;
                act.passive = act.passive || (last.ends_with("ed") && last.size() > 4 &&
                                              row(act).side == Side::After && !row(act).fresh);
                if (cue.cue == Cue::Negation && near &&
                    partedBy(sentence_, spots_, cue.span.end, act.span.begin) < 1.0) {
                    act.negated = true;
                }
            }
        }
        // "gets painted": the second says what is done.
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            return row(act).fresh && row(act).side == Side::After &&
                   std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& next) {
                       return next.span.begin == act.span.end && row(next).side != Side::After;
                   });
        });
        // "I pulled the corner": told, not ordered.
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            const std::size_t at = act.span.begin;
            return at > 0 && row(act).side == Side::After &&
                   row(act).treatment != model::Treatment::Keep && isPast(at) &&
                   (word(at - 1, "i") || word(at - 1, "we") || word(at - 1, "they") ||
                    word(at - 1, "he") || word(at - 1, "she"));
        });
        std::erase_if(spots_.acts, [&](const ActSpot& act) { return isTold(act); });
        // "a moving blanket": no treatment.
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            const std::size_t at = act.span.begin;
            return at > 0 && act.span.end == at + 1 && sentence_.tokens[at].text.ends_with("ing") &&
                   (word(at - 1, "a") || word(at - 1, "the") || word(at - 1, "an"));
        });
        // "we will be hanging new drywall": not what is done to the things before.
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            return act.span.end > act.span.begin + 1 && row(act).side == Side::Before &&
                   sentence_.tokens[act.span.end - 1].text.ends_with("ing") &&
                   row(act).phrase.starts_with("be ");
        });
        // A word like "off" is a treatment only right after an object, where the clause ends.
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            return row(act).side == Side::Edge && !edgeHolds(act);
        });
    }

    // "somebody painted it four years ago", "tear-out is …", "before we paint": no order.
    [[nodiscard]] bool isTold(const ActSpot& act) const {
        const std::size_t begin = act.span.begin;
        const bool order = row(act).side == Side::After || row(act).side == Side::Any;
        if (!order || row(act).treatment == model::Treatment::Keep || act.passive) {
            return false;
        }
        if (begin == 0 && word(act.span.end, "is") && row(act).phrase != "new") {
            return true;
        }
        const bool past = begin > 0 && isPast(begin);
        if (past &&
            (word(begin - 1, "somebodi") || word(begin - 1, "someon") || word(begin - 1, "who") ||
             word(begin - 1, "whoever") || word(begin - 1, "owner") || word(begin - 1, "seller"))) {
            return true;
        }
        return past && agoFollows(act.span.end);
    }

    [[nodiscard]] bool isPast(std::size_t at) const {
        return sentence_.tokens[at].text.ends_with("ed") && !word(at, "need");
    }

    [[nodiscard]] bool agoFollows(std::size_t at) const {
        for (std::size_t i = at; i < sentence_.tokens.size() && i < at + 9; ++i) {
            if (word(i, "ago")) {
                return true;
            }
        }
        return false;
    }

    [[nodiscard]] bool edgeHolds(const ActSpot& act) const {
        // "Out.": all that is said of what was spoken of before.
        if (act.span.begin == 0 && act.span.end + 1 >= sentence_.tokens.size()) {
            return true;
        }
        const bool after = std::any_of(
            spots_.objects.begin(), spots_.objects.end(), [&](const ObjectSpot& object) {
                std::size_t at = object.span.end;
                while (at < act.span.begin &&
                       (spots_.endOf(Cue::Small, at) > at || cueIsMark(at, "-:,"))) {
                    ++at;
                }
                return at == act.span.begin;
            });
        if (!after) {
            return false;
        }
        if (act.span.end >= sentence_.tokens.size()) {
            return true;
        }
        return sentence_.tokens[act.span.end].kind == TokenKind::Mark ||
               word(act.span.end, "and") || word(act.span.end, "so") || word(act.span.end, "but") ||
               word(act.span.end, "of") || word(act.span.end, "then") ||
               (word(act.span.end, "in") &&
                (word(act.span.end + 1, "all") || word(act.span.end + 1, "here") ||
                 word(act.span.end + 1, "both") || word(act.span.end + 1, "everi")));
    }

    [[nodiscard]] bool cueIsMark(std::size_t at, std::string_view marks) const {
        return sentence_.tokens[at].kind == TokenKind::Mark &&
               marks.find(sentence_.tokens[at].mark) != std::string_view::npos;
    }

    const Sentence& sentence_;
    Spots& spots_;
    const std::vector<std::uint32_t>& before_;
    WordId placeWord_;
};

}  // namespace

void prepareSpots(const Sentence& sentence, Spots& spots, const Context& context) {
    Preparer(sentence, spots, context).run();
}

}  // namespace ledgerboard::intake
