#include "core/intake/notes/links.h"

#include <algorithm>

#include "core/intake/notes/clauses.h"
#include "core/intake/notes/link_rules.h"
#include "core/intake/notes/link_spots.h"

namespace ledgerboard::intake {

namespace {

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
        bondThings();
        takeToo();
        takeContrast();
        takeAsWell();
        takeColonList();
        takeLists();
        linkIdle();
        return std::move(linked_);
    }

  private:
    [[nodiscard]] const ActRow& row(const ActSpot& act) const { return tables().acts[act.row]; }

    [[nodiscard]] bool word(std::size_t at, std::string_view stem) const {
        return at < sentence_.tokens.size() && tables().is(sentence_.tokens[at].word, stem);
    }

    // Carpet is not painted and a furnace not stained: what a treatment cannot be meant for.
    [[nodiscard]] bool takes(const ActSpot& act, const ObjectSpot& object) const {
        const ObjectRow& thing = tables().objects[object.object];
        return row(act).treatment != model::Treatment::Refinish || row(act).fresh ||
               canBeRefinished(thing);
    }

    // A treatment that is implied, not said, as if it stood at `span`.
    std::uint32_t actOf(std::string_view phrase, const Span& span) {
        const auto& acts = tables().acts;
        const auto row = std::find_if(acts.begin(), acts.end(),
                                      [&](const ActRow& one) { return one.phrase == phrase; });
        ActSpot made;
        made.span = span;
        made.row = row == acts.end() ? 0 : static_cast<std::uint32_t>(row - acts.begin());
        spots_.acts.push_back(made);
        taken_.push_back(true);
        return static_cast<std::uint32_t>(spots_.acts.size() - 1);
    }

    // What the clauses say, less what only comes with something else.
    void bondThings() {
        Bonds bonds = bondsOf(sentence_, spots_, from_);
        taken_.assign(spots_.acts.size(), false);
        std::vector<bool> bonded(spots_.objects.size(), false);
        for (const Bond& bond : bonds.bonds) {
            const ObjectSpot& object = spots_.objects[bond.spot];
            if (bond.wanted || bond.kept) {
                const std::string_view phrase = bond.kept ? "stays put" : "implied by the list";
                bonded[bond.spot] = true;
                linked_.said.push_back(Said{.object = object.object,
                                            .act = actOf(phrase, object.span),
                                            .at = object.span.begin,
                                            .spot = bond.spot});
                continue;
            }
            taken_[bond.act] = true;
            bonded[bond.spot] = true;
            if (object.with && onlyComesWith(bond.spot)) {
                continue;
            }
            linked_.said.push_back(
                Said{.object = object.object,
                     .act = bond.part ? actOf("implied by the part", spots_.acts[bond.act].span)
                                      : bond.act,
                     .at = object.span.begin,
                     .spot = bond.spot});
        }
        for (std::size_t i = 0; i < spots_.objects.size(); ++i) {
            const ObjectSpot& object = spots_.objects[i];
            if (!bonded[i] && !object.landmark && !object.material) {
                linked_.loose.push_back(i);
            }
        }
        idle_ = std::move(bonds.idle);
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
        // "reset with a new wax ring": what it is mended with.
        const ActSpot* order = nullptr;
        for (const ActSpot& one : spots_.acts) {
            if (one.span.end <= act->span.begin && one.span.end + 2 >= act->span.begin) {
                order = &one;
            }
        }
        if (row(*act).fresh && order != nullptr && row(*order).weight > 1 &&
            (row(*order).treatment == model::Treatment::Repair ||
             row(*order).treatment == model::Treatment::Refinish ||
             row(*order).treatment == model::Treatment::Clean)) {
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
        if (old == object.object) {
            return false;  // "counters split, replace with butcher block"
        }
        const std::string& family = old == kNone ? std::string() : tables().objects[old].family;
        if (!family.empty() && family == tables().objects[object.object].family) {
            return false;
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

    // "The blinds stay, the curtains don't.": the contrary of what was said last.
    void takeContrast() {
        std::erase_if(linked_.loose, [&](std::size_t loose) {
            const ObjectSpot& object = spots_.objects[loose];
            const auto denied =
                std::find_if(spots_.cues.begin(), spots_.cues.end(), [&](const CueSpot& cue) {
                    return cue.cue == Cue::Negation && cue.span.begin >= object.span.end &&
                           cue.span.begin <= object.span.end + 1 &&
                           (cue.span.end >= sentence_.tokens.size() ||
                            sentence_.tokens[cue.span.end].kind == TokenKind::Mark);
                });
            if (denied == spots_.cues.end() || linked_.said.empty()) {
                return false;
            }
            const ActSpot& last = spots_.acts[linked_.said.back().act];
            if (last.span.begin > object.span.begin || last.negated || row(last).weight < 3) {
                return false;
            }
            ActSpot contrary{.span = denied->span, .tail = {}, .row = last.row};
            contrary.negated = true;
            spots_.acts.push_back(contrary);
            taken_.push_back(true);
            linked_.said.push_back(Said{.object = object.object,
                                        .act = static_cast<std::uint32_t>(spots_.acts.size() - 1),
                                        .at = object.span.begin,
                                        .spot = loose});
            return true;
        });
    }

    // "Paint, ceiling too.": what the treatment is always meant for, and that as well.
    void takeAsWell() {
        const std::size_t count = linked_.said.size();
        for (std::size_t i = 0; i < count; ++i) {
            const Said said = linked_.said[i];
            const std::uint32_t own = row(spots_.acts[said.act]).object;
            const std::size_t end = spanOf(said.act).end;
            const bool comma = said.spot != kNone && end < sentence_.tokens.size() &&
                               end < said.at && cueIsComma(end);
            const bool other = own != kNone && own != said.object;
            if (!comma || !other || !saysToo(spots_.objects[said.spot])) {
                continue;
            }
            linked_.said.push_back(Said{
                .object = own, .act = said.act, .at = spanOf(said.act).begin, .assumed = true});
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
               (word(end, "with") && (word(end + 1, "it") || word(end + 1, "them"))) ||
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
        // "Interior doors: hollow core, new knobs only."
        const bool only = word(spots_.objects.back().span.end, "onli");
        if (!one || only || !row(spots_.acts[act]).fresh ||
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

    // "sand 120 sf", "refinish, 115": floors are what is sanded by the foot.
    [[nodiscard]] bool finishesFloor(const ActSpot& act) const {
        const std::string& phrase = row(act).phrase;
        const bool sands = phrase.starts_with("sand");
        const bool bare = act.span.end >= sentence_.tokens.size() ||
                          sentence_.tokens[act.span.end].kind != TokenKind::Word;
        return row(act).treatment == model::Treatment::Refinish &&
               (sands || (bare && (phrase == "refinish" || phrase == "recoat")));
    }

    // Treatments that found nothing in the sentence.
    void linkIdle() {
        for (const Idle& idle : idle_) {
            const ActSpot& act = spots_.acts[idle.act];
            if (taken_[idle.act]) {
                continue;
            }
            const bool pronoun =
                idle.pronoun || hasPronoun(act) || (row(act).fresh && oneAfter(act));
            if (nameAgain(idle.act) || goesAlong(idle.act) || takeMissing(idle.act)) {
                continue;
            }
            if (row(act).fresh && row(act).side == Side::After && !oneAfter(act) &&
                !(row(act).phrase.ends_with("new") && closesAfter(act))) {
                continue;
            }
            constexpr std::size_t kNamesIt = 4;  // "clean up the yard"
            const bool own = row(act).object != kNone;
            const bool names =
                row(act).names || (own && act.span.end - act.span.begin >= kNamesIt && !pronoun);
            if (!names && (!own || pronoun || loose_) && fromBefore(idle.act, pronoun)) {
                continue;
            }
            if (!own && shareAssumed(idle.act)) {
                continue;
            }
            if (!own && before_.empty() && finishesFloor(act)) {
                static const std::uint32_t kWoodFloor = tables().objectNamed("wood floor");
                linked_.said.push_back(Said{
                    .object = kWoodFloor, .act = idle.act, .at = act.span.begin, .assumed = true});
            }
            // "Under the house smells damp."
            if (!own && row(act).phrase.starts_with("smell") &&
                row(act).treatment == model::Treatment::Inspect) {
                static const std::uint32_t kOdor = tables().objectNamed("odor");
                linked_.said.push_back(
                    Said{.object = kOdor, .act = idle.act, .at = act.span.begin, .assumed = true});
            }
            if (!own && isSpot(act)) {
                static const std::uint32_t kWalls = tables().objectNamed("walls");
                linked_.said.push_back(
                    Said{.object = kWalls, .act = idle.act, .at = act.span.begin, .assumed = true});
            }
            if (own && takeSubject(idle.act)) {
                continue;
            }
            // "paint it?", of what takes no paint.
            const bool ofIt = row(act).phrase.ends_with(" it") && !before_.empty();
            if (own && !ofIt) {
                linked_.said.push_back(Said{.object = row(act).object,
                                            .act = idle.act,
                                            .at = act.span.begin,
                                            .assumed = true});
            }
        }
    }

    // "The front door's fine, solid, just needs a coat of paint.": what the sentence began with,
    // where no other subject stands between.
    bool takeSubject(std::uint32_t index) {
        const ActSpot& act = spots_.acts[index];
        const std::string& phrase = row(act).phrase;
        const bool wants = row(act).side == Side::Before || phrase.starts_with("need") ||
                           phrase.starts_with("want") || phrase.starts_with("get") ||
                           paintsKept(act);
        if (!wants || spots_.objects.empty()) {
            return false;
        }
        std::size_t at = act.span.begin;
        while (at > 0 && (word(at - 1, "just") || word(at - 1, "onli") || word(at - 1, "but") ||
                          word(at - 1, "and") || word(at - 1, "still"))) {
            --at;
        }
        const bool joins = at > 0 && (at < act.span.begin || cueIsComma(at - 1));
        std::size_t subject = kNone;
        for (std::size_t i = 0; i < spots_.objects.size(); ++i) {
            subject = spots_.objects[i].span.end <= act.span.begin ? i : subject;
        }
        if (!joins || subject == kNone) {
            return false;
        }
        const ObjectSpot& object = spots_.objects[subject];
        const bool said = std::any_of(linked_.said.begin(), linked_.said.end(),
                                      [&](const Said& one) { return one.spot == subject; });
        if (!said || object.landmark || object.material || !takes(act, object)) {
            return false;
        }
        linked_.said.push_back(
            Said{.object = object.object, .act = index, .at = object.span.begin, .spot = subject});
        return true;
    }

    // "Cabinets stay, paint.": the only thing that is spoken of, unless it is walked on.
    [[nodiscard]] bool paintsKept(const ActSpot& act) const {
        const auto keeps = [&](const Said& said) {
            return row(spots_.acts[said.act]).treatment == model::Treatment::Keep;
        };
        return row(act).treatment == model::Treatment::Refinish && closesAfter(act) &&
               spots_.objects.size() == 1 && linked_.said.size() == 1 &&
               keeps(linked_.said.front()) &&
               tables().objects[spots_.objects.front().object].family != "floor";
    }

    [[nodiscard]] bool cueIsComma(std::size_t at) const {
        return sentence_.tokens[at].kind == TokenKind::Mark &&
               (sentence_.tokens[at].mark == ',' || sentence_.tokens[at].mark == '-');
    }

    // "A wet spot under the window.": what has it is a wall, where nothing else is spoken of.
    [[nodiscard]] bool isSpot(const ActSpot& act) const {
        constexpr std::size_t kBrief = 14;
        if (row(act).treatment != model::Treatment::Inspect || spots_.objects.empty() ||
            sentence_.tokens.size() > kBrief) {
            return false;
        }
        const bool landmarks = std::all_of(
            spots_.objects.begin(), spots_.objects.end(), [&](const ObjectSpot& object) {
                return object.landmark && object.span.begin >= act.span.end;
            });
        const std::string& phrase = row(act).phrase;
        bool spot = false;
        for (const std::string_view word : {"spot", "patch", "stain", "crack", "hole", "bulge"}) {
            spot = spot || phrase.find(word) != std::string::npos;
        }
        return landmarks && spot;
    }

    // "The vanity top is yellow. New top.": the last word of what was spoken of.
    bool nameAgain(std::uint32_t index) {
        const ActSpot& act = spots_.acts[index];
        const std::size_t at = act.span.end;
        if (!row(act).fresh || before_.empty() || at >= sentence_.tokens.size() ||
            sentence_.tokens[at].kind != TokenKind::Word) {
            return false;
        }
        const std::string& name = tables().objects[before_.front()].name;
        const std::string& said = sentence_.tokens[at].plain;
        const bool again =
            std::find(context_.heads.begin(), context_.heads.end(), said) != context_.heads.end();
        const std::string head = again ? said : name.substr(name.rfind(' ') + 1);
        const bool closes =
            at + 1 >= sentence_.tokens.size() || sentence_.tokens[at + 1].kind == TokenKind::Mark;
        if (!closes || said.size() < 3 || (said != head && said + "s" != head)) {
            return false;
        }
        linked_.said.push_back(Said{
            .object = before_.front(), .act = index, .at = act.span.begin, .fromBefore = true});
        return true;
    }

    // "No vapor barrier. Lay 1300 sf.": what was just said to be missing.
    bool takeMissing(std::uint32_t index) {
        const ActSpot& act = spots_.acts[index];
        const bool measured =
            std::any_of(spots_.amounts.begin(), spots_.amounts.end(),
                        [&](const Amount& amount) { return amount.begin == act.span.end; });
        // "Hood: none. Install."
        const bool bare = closesAfter(act) && act.span.begin <= from_ + 1;
        const bool adds = row(act).fresh || row(act).treatment == model::Treatment::Add;
        if (!adds || row(act).object != kNone || !(measured || bare) || before_.empty() ||
            std::find(context_.absent.begin(), context_.absent.end(), before_.front()) ==
                context_.absent.end()) {
            return false;
        }
        linked_.said.push_back(Said{
            .object = before_.front(), .act = index, .at = act.span.begin, .fromBefore = true});
        return true;
    }

    // "Ceiling: two cracks. Patch and paint.": both are done to it.
    bool goesAlong(std::uint32_t index) {
        const ActSpot& act = spots_.acts[index];
        if (!row(act).phrase.starts_with("and ") || linked_.said.empty() ||
            row(act).treatment != model::Treatment::Refinish) {
            return false;
        }
        const Said last = linked_.said.back();
        const ObjectRow& object = tables().objects[last.object];
        if (!last.fromBefore || spots_.acts[last.act].span.end != act.span.begin ||
            !canBeRefinished(object) || object.name == "wallpaper" || object.family == "floor") {
            return false;
        }
        linked_.said.push_back(
            Said{.object = last.object, .act = index, .at = act.span.begin, .fromBefore = true});
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
        const std::size_t saidBefore = linked_.said.size();
        for (const std::uint32_t object : before_) {
            if (some && absent(object) != wants) {
                continue;
            }
            const bool fits = row(act).treatment != model::Treatment::Refinish || row(act).fresh ||
                              canBeRefinished(tables().objects[object]);
            // "The floor's oak. Paint.", "refinish that one, and paint": the walls.
            const std::size_t last = act.span.end - 1;
            const bool walls = row(act).object != kNone && !saysIt(act) &&
                               (word(last, "paint") || word(last, "repaint")) &&
                               !sentence_.tokens[last].plain.ends_with("ed") &&
                               tables().objects[object].family == "floor";
            if (!fits || walls) {
                continue;
            }
            linked_.said.push_back(Said{.object = object,
                                        .act = static_cast<std::uint32_t>(index),
                                        .at = act.span.begin,
                                        .fromBefore = true});
        }
        // "The light is loose. Paint.": no lamp is painted, so it is what is always meant.
        return linked_.said.size() > saidBefore || row(act).object == kNone;
    }

    // "paint it": the word that stands for the thing is said with the treatment.
    [[nodiscard]] bool saysIt(const ActSpot& act) const {
        return row(act).phrase.ends_with(" it") ||
               std::any_of(spots_.cues.begin(), spots_.cues.end(), [&](const CueSpot& cue) {
                   return cue.cue == Cue::Pronoun && cue.span.begin >= act.span.end &&
                          cue.span.begin < act.span.end + 2;
               });
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
    std::vector<Idle> idle_;
};

}  // namespace

Linked linkSentence(const Sentence& sentence, Spots& spots, std::size_t from,
                    const Context& context) {
    return Linker(sentence, spots, from, context).run();
}

}  // namespace ledgerboard::intake
