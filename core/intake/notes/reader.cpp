#include "core/intake/notes/reader.h"

#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/questions.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

// "… so we buy one. Okay, hall": what is said before the move is of where one was.
bool isSaidBeforeMove(const Spots& spots) {
    return !spots.acts.empty() && !spots.spaces.empty() &&
           spots.acts.front().span.end <= spots.spaces.front().span.begin;
}

// "Three bedrooms upstairs. The north one …": a count of rooms, and where the paragraph stands.
bool turnsToGroup(const Sentence& sentence, const Spots& spots) {
    const auto groups =
        std::count_if(spots.spaces.begin(), spots.spaces.end(),
                      [](const SpaceSpot& spot) { return spot.kind == SpaceKind::Group; });
    const auto levels =
        std::count_if(spots.spaces.begin(), spots.spaces.end(),
                      [](const SpaceSpot& spot) { return spot.kind == SpaceKind::Level; });
    return sentence.opensParagraph && groups == 1 && levels == 1 && spots.spaces.size() == 2;
}

// "Plank through the downstairs.", "Paint every room."
bool speaksOfAll(const Spots& spots) {
    return std::any_of(spots.spaces.begin(), spots.spaces.end(), [](const SpaceSpot& spot) {
        return spot.kind == SpaceKind::Level || spot.kind == SpaceKind::Whole;
    });
}

// "SHED: demo and haul": the place is a thing as well. kNone where it is none.
std::uint32_t thingOfPlace(const std::vector<std::string>& here) {
    static const std::vector<std::string_view> kThings = {
        "deck", "shed", "barn", "dock", "greenhouse", "carport", "patio", "garage", "stairs"};
    const std::string head = here.size() == 1 ? headOf(here.front()) : std::string();
    return isOneOf(head, kThings) ? tables().objectNamed(head) : kNone;
}

}  // namespace

// Leaves out what the speaker corrects in the same breath.
void Reader::takeBack(Sentence& sentence, Spots& spots) {
    constexpr int kMostCorrections = 4;
    for (int i = 0; i < kMostCorrections; ++i) {
        const Span back = correction(spots);
        if (back.end <= back.begin) {
            return;
        }
        if (sentence.whole.empty()) {
            sentence.whole = sentence.tokens;
        }
        sentence.tokens.erase(sentence.tokens.begin() + static_cast<std::ptrdiff_t>(back.begin),
                              sentence.tokens.begin() + static_cast<std::ptrdiff_t>(back.end));
        spots = spotsOf(sentence);
    }
}

// "I'd have the chimney swept" is an order; "I'd have kept it" is a thought put aside.
void Reader::dropHadDone(const Sentence& sentence, Spots& spots) {
    static const std::vector<std::string_view> kThings = {
        "the",  "that", "this", "it",  "them", "a",        "those",   "these",
        "both", "all",  "him",  "her", "an",   "somebody", "someone", "my"};
    std::erase_if(spots.cues, [&](const CueSpot& cue) {
        if (cue.cue != Cue::Hypothetical || cue.span.end >= sentence.tokens.size() ||
            sentence.tokens[cue.span.end - 1].plain != "have") {
            return false;
        }
        const std::string& next = sentence.tokens[cue.span.end].plain;
        return isOneOf(next, kThings);
    });
}

// What the tables recognise, and above them the owner's own words.
Spots Reader::spotsOf(const Sentence& sentence) {
    Spots spots = findSpots(sentence.tokens);
    owner_.here = owner_.words.apply(sentence.tokens, spots);
    owner_.used.insert(owner_.here.begin(), owner_.here.end());
    return spots;
}

// Much that is read in one sentence keeps its text.
const std::string& Reader::written(const Sentence& sentence) {
    if (!written_) {
        written_ = sourceOf(sentence);
    }
    return *written_;
}

void Reader::take(Sentence& sentence, const Around& around) {
    written_.reset();
    ++sentences_;
    ++choice_.age;
    ++spaceMeant_.age;
    ++meant_.age;
    Spots spots = spotsOf(sentence);
    takeBack(sentence, spots);
    dropHadDone(sentence, spots);
    if (takeSection(sentence, spots, around)) {
        return;
    }
    if (walk_.inList() && sentence.opensLine && !sentence.bullet) {
        walk_.endList();
        section_ = {};
    }
    const bool deal = facts_.take(sentence, spots);
    const bool onlyDeal = deal && spots.acts.empty() && !turnsToGroup(sentence, spots);
    const std::vector<std::string> stood = walk_.current();
    const Placed placed = onlyDeal ? Placed{} : walk_.take(sentence, spots);
    placeClues_.begin(sentence, spots, placed, stood, walk_, static_cast<std::size_t>(sentences_));
    if (placed.onlyPlace && spreads(sentence, stood)) {
        copyLast(walk_.current());
        walk_.stand(stood);
    } else if (placed.onlyPlace && !sentence.opensLine && saysAlso(sentence, spots)) {
        copyLast(walk_.current());
        arrive(sentence);
    } else if (placed.moved && !isSaidBeforeMove(spots)) {
        arrive(sentence);
    }
    if (sentence.bullet && sentence.opensLine && !placed.moved && !spots.objects.empty()) {
        meant_.objects.clear();
    }
    if (meant_.age > 3) {
        meant_.objects.clear();
    }
    const std::size_t foundBefore = found_.size();
    const std::size_t mentionsBefore = mentions_.size();
    Linked linked;
    if (!placed.onlyPlace) {
        namePlaceItself(sentence, spots);
        const std::vector<ObjectSpot> heard = spots.objects;
        linked = takeWork(sentence, spots, placed, deal, around);
        noteMentions(sentence, spots, heard, placed, foundBefore);
    }
    placeClues_.end();
    for (std::size_t i = std::min(foundBefore, found_.size()); i < found_.size(); ++i) {
        found_[i].sentence = static_cast<std::size_t>(sentences_);
    }
    // "Roof. It's rubber, it's good.": the place is named by the thing.
    if (placed.onlyPlace && !spots.objects.empty() &&
        walk_.current() == std::vector<std::string>{"exterior"}) {
        meant_.objects = {spots.objects.front().object};
        meant_.places.clear();
        meant_.age = 0;
        meant_.loose = true;
    }
    takeAnswer(sentence, spots, std::min(foundBefore, found_.size()));
    keepTopic(sentence, spots);
    keepLastWords(sentence, spots);
    last_.found = std::min(foundBefore, found_.size());
    last_.mentions = std::min(mentionsBefore, mentions_.size());
    last_.ofAll = speaksOfAll(spots);
    if (options_.explain) {
        explain(sentence, spots, placed, linked, foundBefore);
    }
}

// In another space, nothing said before is meant any more.
void Reader::arrive(const Sentence& sentence) {
    meant_.objects.clear();
    meant_.places.clear();
    here_ = {};
    if ((sentence.heading || (sentence.alone && !sentence.bullet)) && !walk_.inList()) {
        section_ = {};
    }
    const std::uint32_t thing = thingOfPlace(walk_.current());
    if (thing != kNone) {
        meant_.objects = {thing};
        meant_.age = 0;
        meant_.loose = true;
    }
}

// Links what the sentence says of things, and takes it as a choice or as items.
Linked Reader::takeWork(const Sentence& sentence, Spots& spots, const Placed& placed, bool deal,
                        const Around& around) {
    takeSame(sentence, spots, placed);
    Openness open = opennessOf(sentence, spots);
    // "We could take it down. I'll ask my wife."
    open.surely =
        open.surely || (open.asks && last_.thought) || (open.otherwise && last_.condition);
    last_.thought = open.thought;
    last_.condition = open.condition;
    recall(sentence, spots);
    Linked linked = linkSentence(sentence, spots, placed.from,
                                 {meant_.objects, meant_.loose, walk_.placeWord(), here_.absent,
                                  last_.words, last_.act, meant_.heads, latelySaid()});
    takeHeaded(sentence, spots, linked);
    takeFragment(sentence, spots, placed, linked);
    takeOnes(sentence, spots, placed, linked);
    takeMeasured(sentence, spots, placed, linked);
    takeLaid(sentence, spots, linked);
    takeCountOfAbsent(sentence, spots, linked);
    takeStuff(sentence, spots, linked);
    takeTroubles(spots, linked);
    takeYears(sentence, spots, linked);
    noteCautions(sentence, spots);
    extendPlaces(sentence, spots, placed, linked);
    // What the ways of a choice cost is no fact of the deal.
    choice_.chance = 0;
    const bool money = deal && !open.priced && (spots.acts.empty() || spots.objects.empty());
    if (!money && !takeChoice(sentence, spots, placed, linked, open, around)) {
        takeItems(sentence, spots, placed, linked, open);
        cleanPlace(sentence, spots, placed, linked);
    }
    remember(sentence, spots, placed, linked);
    rememberSpace(sentence, spots, placed);
    return linked;
}

// "Move the fridge? I thought about it, no.": takes back what the question before asked for, where
// the answer is no and this sentence added nothing to the first `foundBefore` found, or where leave
// was asked of another and not given.
void Reader::takeAnswer(const Sentence& sentence, const Spots& spots, std::size_t foundBefore) {
    const bool no = last_.asked &&
                    (spots.has(Cue::Hypothetical) || spots.has(Cue::Refused) ||
                     (!sentence.tokens.empty() && tables().is(sentence.tokens.front().word, "no")));
    const bool denied = last_.proposed && !agrees(sentence) && !sentence.terse;
    if (no && found_.size() == foundBefore && last_.found < found_.size()) {
        found_.resize(last_.found);
    } else if (denied && last_.found < foundBefore) {
        const auto begin = found_.begin() + static_cast<std::ptrdiff_t>(last_.found);
        const auto end = found_.begin() + static_cast<std::ptrdiff_t>(foundBefore);
        found_.erase(std::remove_if(begin, end,
                                    [](const Found& found) {
                                        return found.treatment != Treatment::Keep &&
                                               found.treatment != Treatment::Inspect;
                                    }),
                     end);
    }
    const Asks asks = asksFor(sentence);
    last_.asked = asks != Asks::Nothing;
    speakers_ = speakers_ || sentence.spoken;
    last_.proposed = asks == Asks::Other || (asks == Asks::Leave && speakers_);
}

// Inside the reading a thing that no table holds goes by the name of its row.
void Reader::nameOwnThings() {
    Draft& draft = reading_.draft;
    for (const std::size_t used : owner_.used) {
        draft.ownWords.push_back(saidOf(owner_.words.all()[used]));
    }
    if (owner_.used.empty()) {
        return;
    }
    for (DraftItem& item : draft.items) {
        item.object = owner_.words.nameOf(item.object);
    }
    for (DraftAlternate& alternate : draft.alternates) {
        owner_.words.nameIn(alternate.question);
        for (DraftOption& option : alternate.options) {
            owner_.words.nameIn(option.name);
            owner_.words.nameIn(option.needs);
        }
    }
    for (ExplainedSentence& sentence : reading_.explained) {
        for (StageWords& stage : sentence.stages) {
            owner_.words.nameIn(stage.made);
        }
    }
}

Reading Reader::finish() {
    Draft& draft = reading_.draft;
    makeItems();
    draft.alternates = std::move(alternates_);
    for (DraftAlternate& alternate : draft.alternates) {
        if (alternate.options.size() < 2) {
            alternate.options.push_back({"leave as is", {}, {}, {}});
        }
    }
    draft.facts = facts_.facts();
    draft.cautions = std::move(cautions_);
    cautionItems(draft);
    nameOwnThings();
    listSpaces();
    return std::move(reading_);
}

}  // namespace ledgerboard::intake
