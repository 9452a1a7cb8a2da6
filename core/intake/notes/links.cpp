#include "core/intake/notes/links.h"

#include <algorithm>

#include "core/intake/notes/link_rules.h"
#include "core/intake/notes/link_spots.h"

namespace ledgerboard::intake {

namespace {

constexpr double kTooFar = 6.5;
constexpr double kPerToken = 0.12;
constexpr std::size_t kAdjectives = 5;  // between "new" and its object

class Linker {
  public:
    Linker(const Sentence& sentence, Spots& spots, std::size_t from, const Context& context)
        : sentence_(sentence),
          spots_(spots),
          from_(from),
          context_(context),
          before_(context.before),
          loose_(context.loose) {}

    Linked run() {
        std::erase_if(spots_.acts, [&](const ActSpot& act) { return act.span.begin < from_; });
        std::erase_if(spots_.objects,
                      [&](const ObjectSpot& object) { return object.span.begin < from_; });
        prepareSpots(sentence_, spots_, context_);
        linkObjects();
        takeToo();
        takeColonList();
        takeLists();
        linkBareActs();
        return std::move(linked_);
    }

  private:
    [[nodiscard]] const ActRow& row(const ActSpot& act) const { return tables().acts[act.row]; }

    [[nodiscard]] bool word(std::size_t at, std::string_view stem) const {
        return at < sentence_.tokens.size() && sentence_.tokens[at].word != kUnknown &&
               sentence_.tokens[at].word == tables().id(stem);
    }

    // Whether an object stands right of the treatment before anything parts them.
    [[nodiscard]] bool hasRight(std::size_t index) const {
        const ActSpot& act = spots_.acts[index];
        const std::size_t limit = index + 1 < spots_.acts.size() ? spots_.acts[index + 1].span.begin
                                                                 : sentence_.tokens.size();
        return std::any_of(
            spots_.objects.begin(), spots_.objects.end(), [&](const ObjectSpot& object) {
                return !object.landmark && object.span.begin >= act.span.end &&
                       object.span.begin < limit &&
                       partedBy(sentence_, spots_, act.span.end, object.span.begin) < 1.0;
            });
    }

    // How far the treatment is from the object; kTooFar and more: not meant for it.
    [[nodiscard]] double distance(const ObjectSpot& object, std::size_t index) const {
        const ActSpot& act = spots_.acts[index];
        const Side side = row(act).side;
        // A mere hint takes nothing; "no" takes what stands right after it.
        if (row(act).weight == 0 &&
            (row(act).treatment != model::Treatment::Add || object.span.begin > act.span.end + 2)) {
            return kTooFar;
        }
        if (act.tail.end > act.tail.begin && act.span.end <= object.span.begin &&
            object.span.end <= act.tail.begin) {
            return 0.0;
        }
        if (!takes(act, object) || bracketOf(object.span.begin) != bracketOf(act.span.begin)) {
            return kTooFar;
        }
        if (const ObjectSpot* own = attributed(act)) {
            return own == &object ? 0.05 : kTooFar;
        }
        if (object.span.begin >= act.span.end) {
            double far = partedBy(sentence_, spots_, act.span.end, object.span.begin) +
                         kPerToken * static_cast<double>(object.span.begin - act.span.end) +
                         3.0 * actsBetween(act.span.end, object.span.begin);
            const std::size_t gap = object.span.begin - act.span.end;
            // "replace both, and the steps …": its object is the pronoun.
            const std::size_t pronoun = spots_.endOf(Cue::Pronoun, act.span.end);
            if (pronoun > act.span.end && object.span.begin > pronoun) {
                return kTooFar;
            }
            const bool tied = row(act).phrase == "new" && !listReaches(act.span.end, object);
            if (tied && gap > kAdjectives) {
                return kTooFar;
            }
            if (row(act).fresh && gap > kAdjectives + 2 && !listReaches(act.span.end, object)) {
                return kTooFar;
            }
            if (side == Side::Before || side == Side::Edge || act.passive) {
                return kTooFar;
            }
            return far;
        }
        const std::size_t end = act.span.begin;
        double far = partedBy(sentence_, spots_, object.span.end, end) +
                     kPerToken * static_cast<double>(end - object.span.end) +
                     2.0 * actsBetween(object.span.end, end);
        if (row(act).fresh && side == Side::After && (row(act).weight < 3 && !closesAfter(act))) {
            return kTooFar;
        }
        // "the pan moves": what the thing does, not what is to be done.
        const std::string_view last = sentence_.tokens[act.span.end - 1].text;
        if (side == Side::After && !act.passive && last.ends_with('s') && !last.ends_with("ss")) {
            return kTooFar;
        }
        if ((side == Side::After) && !act.passive) {
            far += hasRight(index) || !endsClause(act) ? 5.0 : 0.8;
        }
        return far;
    }

    // "Range (white, one dead burner): replace": where the bracket opens that holds token `at`, one
    // past it; 0 where none does.
    [[nodiscard]] std::size_t bracketOf(std::size_t at) const {
        std::size_t open = 0;
        for (std::size_t i = 0; i < at && i < sentence_.tokens.size(); ++i) {
            if (sentence_.tokens[i].kind == TokenKind::Mark) {
                open = sentence_.tokens[i].mark == '('   ? i + 1
                       : sentence_.tokens[i].mark == ')' ? 0
                                                         : open;
            }
        }
        return open;
    }

    // "a rotten sill": the thing that a condition stands right before; nullptr where none does.
    [[nodiscard]] const ObjectSpot* attributed(const ActSpot& act) const {
        const bool one = act.span.end == act.span.begin + 1 && act.tail.end <= act.tail.begin;
        if (!one || row(act).weight > 1 || row(act).side != Side::Before) {
            return nullptr;
        }
        const auto next = std::find_if(
            spots_.objects.begin(), spots_.objects.end(),
            [&](const ObjectSpot& object) { return object.span.begin == act.span.end; });
        return next == spots_.objects.end() ? nullptr : &*next;
    }

    // Carpet is not painted and a furnace not stained: what a treatment cannot be meant for.
    [[nodiscard]] bool takes(const ActSpot& act, const ObjectSpot& object) const {
        const ObjectRow& thing = tables().objects[object.object];
        return row(act).treatment != model::Treatment::Refinish || row(act).fresh ||
               canBeRefinished(thing);
    }

    [[nodiscard]] bool endsClause(const ActSpot& act) const {
        const std::size_t end = std::max(act.span.end, act.tail.end);
        return end >= sentence_.tokens.size() || sentence_.tokens[end].kind != TokenKind::Word ||
               word(end, "and") || word(end, "so") || word(end, "but") || word(end, "with") ||
               word(end, "for") || word(end, "to") || spots_.endOf(Cue::Turn, end) > end;
    }

    // "new cabinets, counters and sink": whether a row of objects leads from `at` to `object`.
    [[nodiscard]] bool listReaches(std::size_t at, const ObjectSpot& object) const {
        for (const ObjectSpot& step : spots_.objects) {
            if (step.span.begin >= at && step.span.begin <= object.span.begin) {
                if (wordsBetween(sentence_, spots_, at, step.span.begin) > kAdjectives) {
                    return false;
                }
                at = step.span.end;
            }
        }
        return true;
    }

    [[nodiscard]] double actsBetween(std::size_t begin, std::size_t end) const {
        double count = 0;
        for (const ActSpot& act : spots_.acts) {
            if (act.span.begin >= begin && act.span.end <= end && row(act).weight > 0) {
                count += 1;
            }
        }
        return count;
    }

    void linkObjects() {
        taken_.assign(spots_.acts.size(), false);
        for (std::size_t i = 0; i < spots_.objects.size(); ++i) {
            const ObjectSpot& object = spots_.objects[i];
            if (object.landmark || (object.with && onlyComesWith(i))) {
                continue;
            }
            double best = kTooFar;
            std::uint32_t chosen = kNone;
            for (std::size_t a = 0; a < spots_.acts.size(); ++a) {
                const double far = distance(object, a);
                if (far < best) {
                    best = far;
                    chosen = static_cast<std::uint32_t>(a);
                }
            }
            if (chosen == kNone) {
                if (!object.material) {
                    linked_.loose.push_back(i);
                }
                continue;
            }
            taken_[chosen] = true;
            linked_.said.push_back(
                Said{.object = object.object, .act = chosen, .at = object.span.begin, .spot = i});
        }
    }

    // "the cabinet with the glass doors", "replace it with hard pipe": not an item of its own,
    // unless it is of the sort it takes the place of.
    [[nodiscard]] bool onlyComesWith(std::size_t index) const {
        const ObjectSpot& object = spots_.objects[index];
        const ActSpot* act = nullptr;
        for (const ActSpot& one : spots_.acts) {
            if (one.span.end <= object.span.begin) {
                act = &one;
            }
        }
        if (act == nullptr || row(*act).treatment != model::Treatment::Replace) {
            return true;
        }
        if (row(*act).fresh) {
            return false;
        }
        std::uint32_t old = before_.empty() ? kNone : before_.front();
        for (const ObjectSpot& other : spots_.objects) {
            const bool between = other.span.begin >= act->span.end &&
                                 other.span.end <= object.span.begin && !other.landmark;
            const bool left = other.span.end <= act->span.begin && !other.landmark;
            old = between || left ? other.object : old;
        }
        return old == kNone ||
               tables().objects[old].trade != tables().objects[object.object].trade ||
               tables().objects[object.object].name.find(' ') == std::string::npos;
    }

    // "Walls get two coats, ceiling too", "Faucet as well.": what was said last holds here too.
    void takeToo() {
        for (std::size_t i = 0; i < linked_.loose.size();) {
            const ObjectSpot& object = spots_.objects[linked_.loose[i]];
            const std::uint32_t act = saysToo(object) ? actToo(object.span.begin) : kNone;
            if (act == kNone) {
                ++i;
                continue;
            }
            linked_.said.push_back(Said{.object = object.object,
                                        .act = act,
                                        .at = object.span.begin,
                                        .spot = linked_.loose[i]});
            linked_.loose.erase(linked_.loose.begin() + static_cast<std::ptrdiff_t>(i));
        }
    }

    [[nodiscard]] bool saysToo(const ObjectSpot& object) const {
        const std::size_t end = object.span.end;
        const std::size_t begin = object.span.begin;
        const auto before = [&](std::string_view stem) {
            return (begin > 0 && word(begin - 1, stem)) || (begin > 1 && word(begin - 2, stem));
        };
        return word(end, "too") || word(end, "also") || word(end, "likewis") ||
               word(end, "ditto") || (word(end, "as") && word(end + 1, "well")) ||
               (word(end, "is") && word(end + 1, "too")) || (word(end, "same")) ||
               before("ditto") || before("likewis");
    }

    // The treatment said last before token `at`, of this sentence or of the one before.
    std::uint32_t actToo(std::size_t at) {
        std::uint32_t last = kNone;
        std::size_t lastAt = 0;
        for (const Said& said : linked_.said) {
            if (said.at < at && (last == kNone || said.at >= lastAt)) {
                last = said.act;
                lastAt = said.at;
            }
        }
        if (last != kNone || context_.lastAct == kNone || at > from_ + 4) {
            return last;
        }
        spots_.acts.push_back(ActSpot{.span = {at, at + 1}, .tail = {}, .row = context_.lastAct});
        taken_.push_back(true);
        return static_cast<std::uint32_t>(spots_.acts.size() - 1);
    }

    // "Everything in here gets replaced: cabinets, counters, sink.": what stands before the colon
    // holds for what is listed after it.
    void takeColonList() {
        for (std::size_t a = 0; a < spots_.acts.size(); ++a) {
            std::size_t colon = std::max(spots_.acts[a].span.end, spots_.acts[a].tail.end);
            while (colon < sentence_.tokens.size() &&
                   sentence_.tokens[colon].kind == TokenKind::Word) {
                ++colon;
            }
            const bool lists = colon < sentence_.tokens.size() &&
                               sentence_.tokens[colon].mark == ':' &&
                               row(spots_.acts[a]).weight > 1;
            const bool bare =
                std::none_of(spots_.objects.begin(), spots_.objects.end(),
                             [&](const ObjectSpot& object) { return object.span.begin < colon; });
            if (!lists || !bare || taken_[a]) {
                continue;
            }
            listFrom(static_cast<std::uint32_t>(a), colon);
        }
    }

    void listFrom(std::uint32_t act, std::size_t colon) {
        for (std::size_t i = 0; i < linked_.loose.size();) {
            const ObjectSpot& object = spots_.objects[linked_.loose[i]];
            if (object.span.begin < colon || !takes(spots_.acts[act], object)) {
                ++i;
                continue;
            }
            taken_[act] = true;
            linked_.said.push_back(Said{.object = object.object,
                                        .act = act,
                                        .at = object.span.begin,
                                        .spot = linked_.loose[i]});
            linked_.loose.erase(linked_.loose.begin() + static_cast<std::ptrdiff_t>(i));
        }
    }

    // "Tub, surround, toilet, new floor tile, fan": one "new" in a bare list is meant for all of
    // it.
    void takeLists() {
        if (linked_.said.empty() || linked_.loose.empty() || spots_.objects.size() < 3) {
            return;
        }
        const std::uint32_t act = linked_.said.front().act;
        const bool one = std::all_of(linked_.said.begin(), linked_.said.end(),
                                     [&](const Said& said) { return said.act == act; });
        const std::size_t begin = std::min(spots_.objects.front().span.begin, spanOf(act).begin);
        if (!one || !row(spots_.acts[act]).fresh ||
            otherWords(sentence_, spots_, begin, spots_.objects.back().span.end) > 1) {
            return;
        }
        for (const std::size_t loose : linked_.loose) {
            const ObjectSpot& object = spots_.objects[loose];
            linked_.said.push_back(
                Said{.object = object.object, .act = act, .at = object.span.begin, .spot = loose});
        }
        linked_.loose.clear();
    }

    [[nodiscard]] const Span& spanOf(std::uint32_t act) const { return spots_.acts[act].span; }

    // Treatments that no object chose.
    void linkBareActs() {
        const std::size_t direct = linked_.said.size();
        for (std::size_t a = 0; a < spots_.acts.size(); ++a) {
            const ActSpot& act = spots_.acts[a];
            if (taken_[a] || row(act).weight == 0) {
                continue;
            }
            if (shareWithNext(a, direct)) {
                continue;
            }
            const bool pronoun = hasPronoun(act) || (row(act).fresh && oneAfter(act));
            if (row(act).fresh && row(act).side == Side::After && !oneAfter(act) &&
                !(row(act).phrase.ends_with("new") && closesAfter(act))) {
                continue;
            }
            if (shareWithPrevious(a, direct, pronoun)) {
                continue;
            }
            constexpr std::size_t kNamesIt = 4;  // "clean up the yard"
            const bool own = row(act).object != kNone;
            const bool names = own && act.span.end - act.span.begin >= kNamesIt && !pronoun;
            if (!names && (!own || pronoun || loose_)) {
                if (fromLoose(a) || fromBefore(a, pronoun)) {
                    continue;
                }
            }
            if (!own && shareAssumed(a)) {
                continue;
            }
            if (own && row(act).weight > 0) {
                linked_.said.push_back(Said{.object = row(act).object,
                                            .act = static_cast<std::uint32_t>(a),
                                            .at = act.span.begin,
                                            .assumed = true});
            }
        }
    }

    // "sand and seal the floor": the first goes with the second's object.
    bool shareWithNext(std::size_t index, std::size_t direct) {
        const ActSpot& act = spots_.acts[index];
        if (index + 1 >= spots_.acts.size() || row(act).side != Side::After || act.passive) {
            return false;
        }
        const ActSpot& next = spots_.acts[index + 1];
        if (spots_.endOf(Cue::Pronoun, act.span.end) > act.span.end) {
            return false;  // "remove it, open up the hearth"
        }
        if (next.span.begin > act.span.end + 2 || row(next).side == Side::Before ||
            partedBy(sentence_, spots_, act.span.end, next.span.begin) > 2.5) {
            return false;
        }
        bool shared = false;
        for (std::size_t i = 0; i < direct; ++i) {
            const Said said = linked_.said[i];
            const bool fits = said.spot == kNone || takes(act, spots_.objects[said.spot]);
            if (said.act == index + 1 && said.at > next.span.begin && fits) {
                linked_.said.push_back(said);
                linked_.said.back().act = static_cast<std::uint32_t>(index);
                shared = true;
            }
        }
        return shared;
    }

    // "the cabinets are original and have to go", "the door drags, plane it".
    bool shareWithPrevious(std::size_t index, std::size_t direct, bool pronoun) {
        const ActSpot& act = spots_.acts[index];
        std::size_t nearest = 0;
        bool any = false;
        for (std::size_t i = 0; i < direct; ++i) {
            const Said& said = linked_.said[i];
            const bool aside = bracketOf(said.at) != 0 && bracketOf(act.span.begin) == 0;
            if (said.spot != kNone && said.at < act.span.begin && !aside) {
                nearest = !any || said.at > linked_.said[nearest].at ? i : nearest;
                any = true;
            }
        }
        if (!any) {
            return false;
        }
        const Said model = linked_.said[nearest];
        const double parted =
            partedBy(sentence_, spots_, spots_.objects[model.spot].span.end, act.span.begin);
        const bool weak = row(act).weight <= 1;
        const bool ownObject = row(act).object != kNone && !pronoun && parted > 2.0;
        if (!takes(act, spots_.objects[model.spot])) {
            return false;
        }
        if (ownObject || (weak && parted > 3.0) || (parted > 14.0 && !pronoun)) {
            return false;
        }
        for (std::size_t i = 0; i < direct; ++i) {
            const Said said = linked_.said[i];
            const bool together = said.act == model.act && said.spot != kNone &&
                                  said.at < act.span.begin && takes(act, spots_.objects[said.spot]);
            if (together) {
                linked_.said.push_back(said);
                linked_.said.back().act = static_cast<std::uint32_t>(index);
            }
        }
        return true;
    }

    // "a hole by the door, patch": what the remark before it implies.
    bool shareAssumed(std::size_t index) {
        if (linked_.said.empty() || !linked_.said.back().assumed ||
            spots_.acts[linked_.said.back().act].span.end > spots_.acts[index].span.begin) {
            return false;
        }
        const Said said = linked_.said.back();
        linked_.said.push_back(said);
        linked_.said.back().act = static_cast<std::uint32_t>(index);
        return true;
    }

    // An object of this sentence that has no treatment yet, before the treatment.
    bool fromLoose(std::size_t index) {
        const ActSpot& act = spots_.acts[index];
        for (std::size_t i = linked_.loose.size(); i-- > 0;) {
            const ObjectSpot& object = spots_.objects[linked_.loose[i]];
            if (object.span.end <= act.span.begin && row(act).weight > 1 && takes(act, object)) {
                linked_.said.push_back(Said{.object = object.object,
                                            .act = static_cast<std::uint32_t>(index),
                                            .at = object.span.begin,
                                            .spot = linked_.loose[i]});
                linked_.loose.erase(linked_.loose.begin() + static_cast<std::ptrdiff_t>(i));
                return true;
            }
        }
        return false;
    }

    bool fromBefore(std::size_t index, bool pronoun) {
        const ActSpot& act = spots_.acts[index];
        if (!pronoun && namesUnknown(sentence_, spots_, act, context_.words)) {
            return false;
        }
        const bool weak = row(act).weight <= 1;
        // A sentence with objects of its own seldom speaks of an earlier one without saying so.
        const bool others = std::any_of(
            spots_.objects.begin(), spots_.objects.end(), [&](const ObjectSpot& object) {
                return !object.landmark && object.span.end <= act.span.begin;
            });
        const bool bareNew = row(act).phrase == "new" && !closesAfter(act) && !oneAfter(act);
        if (before_.empty() || bareNew || (others && !pronoun) ||
            (weak && act.span.begin > from_ + 6)) {
            return false;
        }
        const bool wants = row(act).fresh || row(act).treatment == model::Treatment::Add;
        const auto absent = [&](std::uint32_t object) {
            return std::find(context_.absent.begin(), context_.absent.end(), object) !=
                   context_.absent.end();
        };
        const bool some = std::any_of(before_.begin(), before_.end(), absent) &&
                          !std::all_of(before_.begin(), before_.end(), absent);
        for (const std::uint32_t object : before_) {
            if (some && absent(object) != wants) {
                continue;
            }
            const bool fits = row(act).treatment != model::Treatment::Refinish || row(act).fresh ||
                              canBeRefinished(tables().objects[object]);
            if (!fits) {
                continue;
            }
            linked_.said.push_back(Said{.object = object,
                                        .act = static_cast<std::uint32_t>(index),
                                        .at = act.span.begin,
                                        .fromBefore = true});
        }
        return true;
    }

    // "add one", "need new ones"
    [[nodiscard]] bool oneAfter(const ActSpot& act) const {
        // "new programmable one", "a real steel one"
        for (std::size_t i = act.span.end;
             i < act.span.end + kAdjectives && i < sentence_.tokens.size() &&
             sentence_.tokens[i].kind == TokenKind::Word;
             ++i) {
            if (row(act).fresh && word(i, "one")) {
                return true;
            }
        }
        const std::size_t end = act.tail.end > act.tail.begin ? act.tail.begin : act.span.end + 2;
        return std::any_of(spots_.cues.begin(), spots_.cues.end(), [&](const CueSpot& cue) {
            return cue.cue == Cue::Pronoun && cue.span.begin >= act.span.end &&
                   cue.span.begin < end;
        });
    }

    // "All of it new.": nothing follows that could be its object.
    [[nodiscard]] bool closesAfter(const ActSpot& act) const {
        return act.span.end >= sentence_.tokens.size() ||
               sentence_.tokens[act.span.end].kind == TokenKind::Mark;
    }

    [[nodiscard]] bool hasPronoun(const ActSpot& act) const {
        const std::size_t end = act.tail.end > act.tail.begin ? act.tail.begin : act.span.end + 2;
        return std::any_of(spots_.cues.begin(), spots_.cues.end(), [&](const CueSpot& cue) {
            const bool after = cue.span.begin >= act.span.end && cue.span.begin < end;
            const bool within = cue.span.begin > act.span.begin && cue.span.end <= act.span.end;
            if (cue.cue == Cue::Pronoun && within && !before_.empty() &&
                (loose_ || tables().objects[before_.front()].place == Place::Outside)) {
                return true;  // "paint it", of the siding, or of what was just brought up
            }
            const bool subject =
                cue.span.end <= act.span.begin && cue.span.end + 5 >= act.span.begin;
            return cue.cue == Cue::Pronoun && (after || subject);
        });
    }

    const Sentence& sentence_;
    Spots& spots_;
    std::size_t from_;
    const Context& context_;
    const std::vector<std::uint32_t>& before_;
    bool loose_;
    Linked linked_;
    std::vector<bool> taken_;
};

}  // namespace

Linked linkSentence(const Sentence& sentence, Spots& spots, std::size_t from,
                    const Context& context) {
    return Linker(sentence, spots, from, context).run();
}

}  // namespace ledgerboard::intake
