// The part of the reader that sees open choices and hazards.
#include <algorithm>

#include "core/intake/notes/choice_options.h"
#include "core/intake/notes/names.h"
#include "core/intake/notes/openings.h"
#include "core/intake/notes/questions.h"
#include "core/intake/notes/reader.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

constexpr std::size_t kMostAlternates = 500;
constexpr int kChoiceGoesOn = 3;  // sentences
constexpr int kSpaceLately = 2;   // sentences
constexpr int kLeastHint = 5;     // percent

// Percent: how likely it is that one of the two leaves the choice open.
int chanceOfBoth(int one, int other) {
    return 100 - (100 - one) * (100 - other) / 100;
}

// "Soapstone is fifty-four hundred.", of a soapstone that was named before.
bool isSameOption(const DraftOption& one, const DraftOption& other) {
    const std::vector<std::string> words = stemsIn(one.name);
    const std::vector<std::string> others = stemsIn(other.name);
    return !words.empty() && std::all_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::find(others.begin(), others.end(), word) != others.end();
    });
}

void addOptions(DraftAlternate& alternate, std::vector<DraftOption> options) {
    constexpr std::size_t kMostOptions = 6;
    for (DraftOption& option : options) {
        const auto known =
            std::find_if(alternate.options.begin(), alternate.options.end(),
                         [&](const DraftOption& one) { return isSameOption(option, one); });
        if (known != alternate.options.end()) {
            known->cost = known->cost ? known->cost : option.cost;
            known->days = known->days ? known->days : option.days;
        } else if (alternate.options.size() < kMostOptions) {
            alternate.options.push_back(std::move(option));
        }
    }
}

// "Only if there is money left after the roof": the roof is what the money goes to first.
bool isPaidFirst(const Sentence& sentence, const ObjectSpot& object) {
    std::size_t at = object.span.begin;
    while (at > 0 && (wordIs(sentence, at - 1, "the") || wordIs(sentence, at - 1, "that"))) {
        --at;
    }
    return at > 1 && wordIs(sentence, at - 1, "after") &&
           (wordIs(sentence, at - 2, "left") || wordIs(sentence, at - 2, "over") ||
            wordIs(sentence, at - 2, "money"));
}

// "Vinyl floor, new; the counters in laminate or granite": what was named last before the "or"
// between two materials. kNone where there is none.
std::uint32_t madeOfEither(const Sentence& sentence, const Spots& spots, std::size_t from) {
    std::size_t material = 0;  // where the one before the "or" ends
    std::size_t last = 0;
    for (const CueSpot& cue : spots.cues) {
        if (cue.cue != Cue::Material || cue.span.begin < from) {
            continue;
        }
        for (std::size_t i = last; i < cue.span.begin && last > 0 && material == 0; ++i) {
            material = wordIs(sentence, i, "or") ? last : 0;
        }
        last = cue.span.end;
    }
    std::uint32_t object = kNone;
    for (const ObjectSpot& spot : spots.objects) {
        if (from <= spot.span.begin && spot.span.end < material && !spot.material) {
            object = spot.object;
        }
    }
    return object;
}

// Whether the space that is named there may be what a choice is about. A yard is where things are,
// and a pantry, stairs or a hall are parts of what is around them.
bool mayBeMatter(const SpaceSpot& spot) {
    static const std::vector<std::string_view> kParts = {"pantry", "stairs", "hall",  "exterior",
                                                         "garden", "dock",   "patio", "courtyard"};
    const bool place = spot.kind == SpaceKind::Room || spot.kind == SpaceKind::Outside;
    return place && !spot.headingOnly && !spot.key.ends_with("yard") &&
           std::none_of(kParts.begin(), kParts.end(),
                        [&](std::string_view part) { return spot.key.ends_with(part); });
}

// "What to do with the third bedroom".
bool doesWith(const Sentence& sentence, std::size_t at) {
    return at > 1 && wordIs(sentence, at - 1, "with") && wordIs(sentence, at - 2, "do");
}

// "Make the attic a loft", "the back porch could be closed in", "leave it a carport": a space that
// is not only where something is. nullptr where none is named so.
const SpaceSpot* spaceItself(const Sentence& sentence, const Spots& spots, std::size_t from) {
    static const std::vector<std::string_view> kArticles = {"the", "that", "this", "our",
                                                            "my",  "his",  "her",  "their"};
    static const std::vector<std::string_view> kWhere = {
        "in",     "from",  "of",   "between", "off", "to",    "into",  "at",
        "by",     "under", "near", "with",    "on",  "where", "or",    "over",
        "behind", "above", "past", "for",     "out", "up",    "beside"};
    const auto is = [&](std::size_t at, const std::vector<std::string_view>& words) {
        return at > from && std::any_of(words.begin(), words.end(), [&](std::string_view word) {
                   return wordIs(sentence, at - 1, word);
               });
    };
    for (const SpaceSpot& spot : spots.spaces) {
        const bool ofThing = std::any_of(
            spots.objects.begin(), spots.objects.end(),
            [&](const ObjectSpot& object) { return object.span.begin == spot.span.end; });
        if (spot.span.begin < from || !mayBeMatter(spot) || ofThing) {
            continue;
        }
        const bool the = is(spot.span.begin, kArticles);
        const bool other = is(spot.span.begin, {"a", "an"});
        const std::size_t at = spot.span.begin - (the || other ? 1U : 0U);
        const bool stays =
            std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
                return tables().acts[act.row].treatment == Treatment::Keep &&
                       std::max(act.span.end, act.tail.end) == at;
            });
        if (stays || (the && (!is(at, kWhere) || doesWith(sentence, at))) ||
            (!other && at == from)) {
            return &spot;
        }
    }
    return nullptr;
}

// What a choice is about, as far as the sentence says it.
std::vector<std::uint32_t> matterOf(const Sentence& sentence, const Spots& spots,
                                    const Placed& placed, const Linked& linked) {
    std::vector<std::uint32_t> matter;
    for (const ObjectSpot& object : spots.objects) {
        if (object.span.begin >= placed.from && !isPaidFirst(sentence, object)) {
            matter.push_back(object.object);
        }
    }
    if (matter.empty() && !linked.said.empty()) {
        matter.push_back(linked.said.front().object);
    }
    const auto meant =
        std::find(matter.begin(), matter.end(), madeOfEither(sentence, spots, placed.from));
    if (meant != matter.end()) {
        std::rotate(matter.begin(), meant, meant + 1);
    }
    return matter;
}

// "Take it out, it's eight thousand with the beam": what was spoken of before is the matter.
bool saysItFirst(const Sentence& sentence, const Spots& spots) {
    if (spots.acts.empty()) {
        return false;
    }
    const std::size_t at = spots.acts.front().span.begin;
    const bool it = wordIs(sentence, at + 1, "it") || wordIs(sentence, at + 1, "them") ||
                    wordIs(sentence, at + 1, "that");
    const bool first = spots.objects.empty() || spots.objects.front().span.begin > at;
    return it && first;
}

// "… or that quartz for 2,800, my wife says quartz": talk after the choice leaves it a choice.
bool opensBeforeTalk(const Sentence& sentence, const Spots& spots) {
    std::size_t first = sentence.tokens.size();
    std::size_t chatter = sentence.tokens.size() + 1;
    for (const CueSpot& cue : spots.cues) {
        first = cue.cue == Cue::Open || cue.cue == Cue::Either ? std::min(first, cue.span.begin)
                                                               : first;
        chatter = cue.cue == Cue::Chatter ? std::min(chatter, cue.span.begin) : chatter;
    }
    return first < chatter;
}

// "Maybe we paint it": a thought; with what it costs, or "or", a choice.
bool isOnlyThought(const Sentence& sentence, const Spots& spots, const Openness& open) {
    const bool could = wordIs(sentence, open.hintAt + 1, "could");
    return spots.amounts.empty() && !open.both && !could;
}

}  // namespace

// Whether what is said of a choice is talk, a thought put aside, or under "NOT DOING".
bool Reader::isDeadChoice(const Sentence& sentence, const Spots& spots,
                          const Openness& open) const {
    const bool talk =
        !spots.acts.empty() && isDead(sentence, spots, spots.acts.front().span.begin, 3);
    const bool after = (open.surely || open.priced) && opensBeforeTalk(sentence, spots);
    return ((talk || spots.has(Cue::Chatter)) && !after) || section_.is == Section::NotDoing;
}

// "Either it comes down or we put a roof on it", said in the barn: the barn itself.
bool Reader::isWholeBuilding(const Spots& spots, const std::string& place) const {
    return isOutbuilding(place) &&
           std::any_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
               return tables().acts[act.row].phrase.ends_with("down");
           });
}

// What a choice is about: what the sentence names, or what was spoken of before.
Reader::Matter Reader::matterOfChoice(const Sentence& sentence, const Spots& spots,
                                      const Placed& placed, const Linked& linked,
                                      const std::string& place, bool choice) const {
    Matter matter;
    matter.objects = matterOf(sentence, spots, placed, linked);
    const SpaceSpot* named = spaceItself(sentence, spots, placed.from);
    const auto first =
        std::find_if(spots.objects.begin(), spots.objects.end(),
                     [&](const ObjectSpot& spot) { return spot.span.begin >= placed.from; });
    // "The garage out back is leaning. Do we knock it down?"
    if (named == nullptr && matter.objects.empty() && spots.spaces.empty() &&
        spaceMeant_.age <= kSpaceLately && spaceMeant_.age < meant_.age) {
        named = &spaceMeant_.space;
    }
    // "The conservatory": a thing and a place.
    const bool ofSpace =
        named != nullptr && (matter.objects.empty() || first == spots.objects.end() ||
                             first->span.overlaps(named->span));
    // "Glass or iron in its place": no thing is named by its stuff there.
    const bool stuffs =
        !matter.objects.empty() && !meant_.objects.empty() &&
        std::all_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
            return object.material || object.span.begin < placed.from ||
                   spots.endOf(Cue::Material, object.span.begin) == object.span.end;
        });
    if (matter.objects.empty() || stuffs || saysItFirst(sentence, spots)) {
        matter.objects.insert(matter.objects.begin(), meant_.objects.begin(), meant_.objects.end());
    }
    if (ofSpace) {
        matter.objects.clear();
        matter.space = named;
        matter.name = named->shown;
    } else if (choice && isWholeBuilding(spots, place)) {
        matter.objects.clear();
        matter.name = shownAs(place);
    } else if (!matter.objects.empty()) {
        matter.name = tables().objects[matter.objects.front()].name;
    } else if (choice && place != "whole house") {
        // "The garage itself: tear it down or prop it up?"
        matter.name = shownAs(place);
    } else {
        return matter;
    }
    matter.known = true;
    return matter;
}

// Keeps a choice that the sentence opens.
void Reader::addChoice(const Sentence& sentence, const Spots& spots, const Placed& placed,
                       const Openness& open, const Matter& matter, const ChoicePlace& home,
                       bool hasMatter) {
    const std::string& place = home.place;
    DraftAlternate alternate;
    alternate.space = shownAs(place);
    alternate.question = matter.name;
    if (walk_.find(place) == nullptr) {
        walk_.learn(place, alternate.space, SpaceKind::Room);
    }
    alternate.source = {sourceOf(sentence), sentence.line, open.surely ? 88 : 70};
    doubtWhatWasSaid(open, hasMatter, alternate);
    if (hasMatter || open.both) {
        addOptions(alternate, optionsOf(sentence, spots, placed.from));
    }
    if (alternates_.size() < kMostAlternates) {
        alternates_.push_back(std::move(alternate));
        choicePlaces_.push_back(home);
        choice_.age = 0;
    }
    choice_.object = matter.objects.empty() ? kNone : matter.objects.front();
    choice_.materials.clear();
    if (open.materials > 0) {
        countMaterials(sentence, spots, place);
    }
}

// What the rules make of the sentence, said at `place`.
ChoiceSigns Reader::signsOfChoice(const Sentence& sentence, const Spots& spots,
                                  const Placed& placed, const Linked& linked, const Openness& open,
                                  const std::string& place) const {
    ChoiceSigns signs;
    signs.dead = isDeadChoice(sentence, spots, open);
    signs.matter = !spots.objects.empty() || !linked.said.empty();
    signs.section = section_.is == Section::Open && (signs.matter || !spots.spaces.empty());
    signs.goesOn =
        !placed.moved && !signs.dead && goesOn(sentence, spots, open, shownAs(place), signs.matter);
    signs.pending = choice_.pending && signs.matter;
    const bool said = open.surely || open.choice;
    const bool faint = open.hinted && !said && !signs.section && !signs.pending;
    const bool idle = faint && (isOnlyThought(sentence, spots, open) || linked.said.empty());
    const bool decided = spots.has(Cue::Decided) && !open.surely;
    signs.opens =
        !signs.dead && !idle && !decided && (said || open.hinted || signs.section || signs.pending);
    return signs;
}

// Percent: how likely it is that a choice is open in the sentence, by all that bears on it; by the
// rules alone 0 or 100.
int Reader::chanceOfChoice(const Sentence& sentence, const Spots& spots, const Openness& open,
                           const ChoiceSigns& signs, const Around& around,
                           const std::string& place) {
    if (options_.rulesAlone) {
        return signs.opens ? 100 : 0;
    }
    const bool answered = around.next != nullptr && answers(*around.next, sentence);
    if (answered || (!signs.opens && !ChoiceClues::mayOpen(sentence))) {
        return 0;
    }
    const Clues clues = choiceClues_.read(sentence, spots, open, signs, around, options_.explain);
    if (options_.explain) {
        reading_.choices.push_back({shownAs(place), sourceOf(sentence), clues.names()});
    }
    return chanceOpen(clues.keys());
}

// Whether a choice that is open in the sentence is the one just spoken of: where only the words
// around tell of it, what is said close by is taken for one.
bool Reader::isSameChoice(const Sentence& sentence, const Spots& spots, const ChoiceSigns& signs,
                          const std::string& place) const {
    if (alternates_.empty() || choice_.age > 2 || choice_.place != shownAs(place)) {
        return false;
    }
    const bool named =
        std::any_of(spots.objects.begin(), spots.objects.end(),
                    [&](const ObjectSpot& spot) { return spot.object == choice_.object; });
    return !signs.matter || named || wordIs(sentence, 0, "or") ||
           (!options_.rulesAlone && !(signs.opens && choice_.ruled));
}

// Whether the sentence is about an open choice; then what it says of treatments is no item.
bool Reader::takeChoice(const Sentence& sentence, const Spots& spots, const Placed& placed,
                        const Linked& linked, const Openness& open, const Around& around) {
    const std::string place = placeOfChoice(spots, placed);
    const ChoiceSigns signs = signsOfChoice(sentence, spots, placed, linked, open, place);
    const int chance = chanceOfChoice(sentence, spots, open, signs, around, place);
    choice_.chance = chance;
    const bool opens = chance >= (options_.rulesAlone ? 100 : leastOpen(signs.opens));
    if (signs.goesOn || (opens && isSameChoice(sentence, spots, signs, place))) {
        addToChoice(sentence, spots, placed, signs, open, place);
        return true;
    }
    const bool joins = !opens && joinsHint(spots, signs, place, chance);
    if (joins && (hint_->signs.matter || !signs.matter) && takeHint(chance)) {
        addToChoice(sentence, spots, placed, signs, open, place);
        return true;
    }
    choice_.pending = false;
    if (!opens && !joins) {
        if (chance >= kLeastHint && !options_.rulesAlone) {
            hint_ = Hint{sentence, spots, placed, linked, open, signs, place, chance, sentences_};
        }
        return false;
    }
    const Matter matter =
        matterOfChoice(sentence, spots, placed, linked, place, open.choice || open.both || joins);
    if (!matter.known) {
        choice_.pending = open.surely;
        return open.surely;
    }
    choice_.place = shownAs(place);
    choice_.ruled = signs.opens;
    addChoice(sentence, spots, placed, open, matter,
              homeOfChoice(sentence, spots, placed, matter, place, open.both), signs.matter);
    if (!options_.rulesAlone) {
        alternates_.back().source.sure = std::min(chance, 99);
    }
    if (joins) {
        addOptions(alternates_.back(), optionsOf(hint_->sentence, hint_->spots, 0));
        dropHinted(matter.objects);
    }
    hint_.reset();
    return !open.hinted || open.surely || open.choice || joins;
}

// Keeps a space that the next sentences may mean by "it".
void Reader::rememberSpace(const Sentence& sentence, const Spots& spots, const Placed& placed) {
    if (spots.spaces.empty()) {
        return;
    }
    if (const SpaceSpot* named = spaceItself(sentence, spots, placed.from)) {
        spaceMeant_.space = *named;
        spaceMeant_.age = 0;
    }
}

// Whether the hint just before and this sentence leave a choice open together: not where they name
// things and none of them alike.
bool Reader::joinsHint(const Spots& spots, const ChoiceSigns& signs, const std::string& place,
                       int chance) const {
    constexpr int kLately = 2;  // sentences
    if (!hint_ || chance < kLeastHint || signs.dead || hint_->number + kLately < sentences_ ||
        hint_->place != place) {
        return false;
    }
    const std::vector<ObjectSpot>& hinted = hint_->spots.objects;
    const auto isHinted = [&](const ObjectSpot& one) {
        return std::any_of(hinted.begin(), hinted.end(),
                           [&](const ObjectSpot& other) { return other.object == one.object; });
    };
    if (!hinted.empty() && !spots.objects.empty() &&
        std::none_of(spots.objects.begin(), spots.objects.end(), isHinted)) {
        return false;
    }
    return chanceOfBoth(hint_->chance, chance) >= leastOpen(signs.opens || hint_->signs.opens);
}

// "Strip the ceiling? … Leave it white?": opens the choice that was hinted at, as it was said
// there. False where nothing says what it is about.
bool Reader::takeHint(int chance) {
    const Hint& hint = *hint_;
    const Matter matter =
        matterOfChoice(hint.sentence, hint.spots, hint.placed, hint.linked, hint.place, true);
    if (!matter.known) {
        return false;
    }
    choice_.place = shownAs(hint.place);
    choice_.ruled = hint.signs.opens;
    dropHinted(matter.objects);
    addChoice(
        hint.sentence, hint.spots, hint.placed, hint.open, matter,
        homeOfChoice(hint.sentence, hint.spots, hint.placed, matter, hint.place, hint.open.both),
        hint.signs.matter);
    alternates_.back().source.sure = std::min(chanceOfBoth(hint.chance, chance), 99);
    hint_.reset();
    return true;
}

// What was read of a hint as work that is settled.
void Reader::dropHinted(const std::vector<std::uint32_t>& objects) {
    std::erase_if(found_, [&](const Found& found) {
        return found.sentence == static_cast<std::size_t>(hint_->number) &&
               std::find(objects.begin(), objects.end(), found.object) != objects.end();
    });
}

// What the sentence says of the last choice.
void Reader::addToChoice(const Sentence& sentence, const Spots& spots, const Placed& placed,
                         const ChoiceSigns& signs, const Openness& open, const std::string& place) {
    if (signs.matter || open.both || open.materials > 0 || !spots.amounts.empty()) {
        const auto options = optionsOf(sentence, spots, placed.from);
        // "I keep looking at that wall. Either open it up or leave it.": the second says what
        // may be done.
        if (!choice_.ruled && signs.opens && options.size() > 1) {
            alternates_.back().options.clear();
            alternates_.back().source.sentence = sourceOf(sentence);
            alternates_.back().source.line = sentence.line;
            choice_.ruled = true;
        }
        addOptions(alternates_.back(), options);
    }
    choice_.age = 0;
    countMaterials(sentence, spots, place);
}

// How the place of a choice is written.
std::string Reader::shownAs(const std::string& place) const {
    const KnownSpace* known = walk_.find(place);
    return known == nullptr ? place.substr(0, place.find('*')) : known->shown;
}

// Whether the sentence adds to the last choice, which was spoken of a moment ago.
bool Reader::goesOn(const Sentence& sentence, const Spots& spots, const Openness& open,
                    const std::string& shown, bool hasMatter) const {
    const bool remark = open.surely && !hasMatter && choice_.age <= 1;  // "I go back and forth."
    if (choice_.age > kChoiceGoesOn || alternates_.empty() || (!remark && choice_.place != shown)) {
        return false;
    }
    const bool more = open.surely || open.choice || wordIs(sentence, 0, "or") ||
                      (open.materials > 0 && !spots.amounts.empty() && !sentence.opensLine);
    const bool freshBullet = sentence.bullet && sentence.opensLine && hasMatter;
    return more && !freshBullet;
}

// What the sentence before said of the same thing was not decided either.
void Reader::doubtWhatWasSaid(const Openness& open, bool hasMatter, DraftAlternate& alternate) {
    const bool onlySays = open.surely && !hasMatter;
    if (onlySays && last_.found < found_.size()) {
        std::vector<Found> doubted(found_.begin() + static_cast<std::ptrdiff_t>(last_.found),
                                   found_.end());
        for (const Found& found : doubted) {
            alternate.options.push_back(
                {found.item.source.sentence, found.item.cost, found.item.days, {}});
        }
        if (open.materials < 2) {
            found_.resize(last_.found);
        }
    }
}

// A choice between materials alone: that the thing is replaced is decided.
void Reader::countMaterials(const Sentence& sentence, const Spots& spots,
                            const std::string& place) {
    const std::size_t before = choice_.materials.size();
    for (const CueSpot& cue : spots.cues) {
        if (cue.cue == Cue::Material) {
            choice_.materials.insert(sentence.tokens[cue.span.begin].word);
        }
    }
    if (before > 1 || choice_.materials.size() < 2 || choice_.object == kNone) {
        return;
    }
    alternates_.back().question += " material";
    alternates_.back().materialOf = tables().objects[choice_.object].name;
    Found found;
    found.object = choice_.object;
    found.treatment = Treatment::Replace;
    found.weight = 3;
    found.fresh = true;
    found.place = place;
    found.signs = {{}, {SignKind::Object, found.object}, signOf(SignFlag::Choice)};
    found.item.source = {sourceOf(sentence), sentence.line, 0};
    found.sentence = static_cast<std::size_t>(sentences_);
    addMeasure(sentence, spots, found);
    found_.push_back(std::move(found));
}

// "Counter: 42 sq ft, quartz or granite": the thing has its measure whatever it is made of; what
// it costs, the materials tell.
void Reader::addMeasure(const Sentence& sentence, const Spots& spots, Found& found) {
    for (std::uint32_t i = 0; i < spots.objects.size(); ++i) {
        if (spots.objects[i].object == found.object && !found.item.quantity) {
            Found figures;
            addAmounts(sentence, spots,
                       {.object = found.object, .at = spots.objects[i].span.begin, .spot = i},
                       figures);
            found.item.quantity = figures.item.quantity;
            found.item.unit = figures.item.unit;
        }
    }
}

void Reader::noteCautions(const Sentence& sentence, const Spots& spots) {
    for (const RowSpot& spot : spots.cautions) {
        const CautionRow& row = tables().cautions[spot.row];
        const bool known =
            std::any_of(cautions_.begin(), cautions_.end(),
                        [&](const DraftCaution& caution) { return caution.about == row.about; });
        if (!known && !isDead(sentence, spots, spot.span.begin, 2)) {
            cautions_.push_back({row.about, row.why, {sourceOf(sentence), sentence.line, 85}});
        }
    }
}

// Hazards that an object of this age and what is done to it bring along.
void Reader::cautionItems(Draft& draft) const {
    for (const DraftItem& item : draft.items) {
        const std::uint32_t object = tables().objectNamed(item.object);
        for (const CautionRow& row : tables().cautions) {
            const auto& hazards = tables().objects[object].hazards;
            const bool hazard = std::find(hazards.begin(), hazards.end(), row.key) != hazards.end();
            const bool treated =
                row.treatments.empty() ||
                std::any_of(row.treatments.begin(), row.treatments.end(), [&](Treatment one) {
                    return model::wordsOf<Treatment>()[static_cast<std::size_t>(one)] ==
                           item.treatment;
                });
            const bool aged =
                row.builtBefore == 0 || (facts_.built() != 0 && facts_.built() < row.builtBefore);
            const bool known = std::any_of(
                draft.cautions.begin(), draft.cautions.end(),
                [&](const DraftCaution& caution) { return caution.about == row.about; });
            if (hazard && treated && aged && !known) {
                draft.cautions.push_back({row.about, row.why, item.source});
                draft.cautions.back().source.sure = std::min(80, item.source.sure);
            }
        }
    }
}

}  // namespace ledgerboard::intake
