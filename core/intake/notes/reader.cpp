#include "core/intake/notes/reader.h"

#include <algorithm>
#include <span>

#include "core/intake/notes/questions.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/sureness.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

bool shouted(const Sentence& sentence) {
    bool letters = false;
    for (const Token& token : sentence.tokens) {
        for (const char c : token.text) {
            if (c >= 'a' && c <= 'z') {
                return false;
            }
            letters = letters || (c >= 'A' && c <= 'Z');
        }
    }
    return letters;
}

std::size_t wordCount(const Sentence& sentence) {
    return static_cast<std::size_t>(
        std::count_if(sentence.tokens.begin(), sentence.tokens.end(),
                      [](const Token& token) { return token.kind == TokenKind::Word; }));
}

// "I held a match by the hood": where something was done.
bool standsBy(const Sentence& sentence, std::size_t begin) {
    static const std::vector<std::string_view> kBy = {"by",    "near",  "behind",  "beside",
                                                      "under", "below", "against", "beneath"};
    std::size_t at = begin;
    while (at > 0 && (plainWord(sentence.tokens[at - 1].text) == "the" ||
                      plainWord(sentence.tokens[at - 1].text) == "that")) {
        --at;
    }
    return at > 0 &&
           std::find(kBy.begin(), kBy.end(), plainWord(sentence.tokens[at - 1].text)) != kBy.end();
}

// "… so we buy one. Okay, hall": what is said before the move is of where one was.
bool isSaidBeforeMove(const Spots& spots) {
    return !spots.acts.empty() && !spots.spaces.empty() &&
           spots.acts.front().span.end <= spots.spaces.front().span.begin;
}

// Whether the line is nothing but the name of a closet.
bool headsCloset(const Sentence& sentence, const Spots& spots) {
    if (spots.objects.size() != 1 || !spots.acts.empty() || !spots.spaces.empty()) {
        return false;
    }
    const ObjectSpot& object = spots.objects.front();
    const bool all =
        object.span.begin == 0 &&
        (object.span.end == sentence.tokens.size() ||
         (object.span.end + 1 == sentence.tokens.size() && isMark(sentence.tokens.back(), ":")));
    return all && tables().objects[object.object].name == "closet" && object.span.end > 1;
}

bool inBrackets(const Sentence& sentence, std::size_t at) {
    int open = 0;
    for (std::size_t i = 0; i < at; ++i) {
        open += isMark(sentence.tokens[i], "(") ? 1 : isMark(sentence.tokens[i], ")") ? -1 : 0;
    }
    return open > 0;
}

// "SHED: demo and haul": the place is a thing as well. kNone where it is none.
std::uint32_t thingOfPlace(const std::vector<std::string>& here) {
    static const std::vector<std::string_view> kThings = {
        "deck", "shed", "barn", "dock", "greenhouse", "carport", "patio", "garage"};
    const std::string head = here.size() == 1 ? headOf(here.front()) : std::string();
    return std::find(kThings.begin(), kThings.end(), head) == kThings.end()
               ? kNone
               : tables().objectNamed(head);
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
        spots = findSpots(sentence.tokens);
    }
}

// "I'd have the chimney swept" is an order; "I'd have kept it" is a thought put aside.
void Reader::dropHadDone(const Sentence& sentence, Spots& spots) {
    static const std::vector<std::string_view> kThings = {
        "the",  "that", "this", "it",  "them", "a",        "those",   "these",
        "both", "all",  "him",  "her", "an",   "somebody", "someone", "my"};
    std::erase_if(spots.cues, [&](const CueSpot& cue) {
        if (cue.cue != Cue::Hypothetical || cue.span.end >= sentence.tokens.size() ||
            plainWord(sentence.tokens[cue.span.end - 1].text) != "have") {
            return false;
        }
        const std::string next = plainWord(sentence.tokens[cue.span.end].text);
        return std::find(kThings.begin(), kThings.end(), next) != kThings.end();
    });
}

void Reader::take(Sentence& sentence) {
    ++sentences_;
    ++choiceAge_;
    ++beforeAge_;
    Spots spots = findSpots(sentence.tokens);
    takeBack(sentence, spots);
    dropHadDone(sentence, spots);
    if (takeSection(sentence, spots)) {
        return;
    }
    const bool deal = facts_.take(sentence, spots);
    const bool onlyDeal = deal && spots.acts.empty();
    const std::vector<std::string> stood = walk_.current();
    const Placed placed = onlyDeal ? Placed{} : walk_.take(sentence, spots);
    if (placed.onlyPlace && spreads(sentence, stood)) {
        copyLast(walk_.current());
        walk_.stand(stood);
    } else if (placed.moved && !isSaidBeforeMove(spots)) {
        arrive(sentence);
    }
    if (sentence.bullet && sentence.opensLine && !placed.moved && !spots.objects.empty()) {
        before_.clear();
    }
    if (beforeAge_ > 3) {
        before_.clear();
    }
    const std::size_t foundBefore = found_.size();
    Linked linked;
    if (!placed.onlyPlace) {
        linked = takeWork(sentence, spots, placed, deal);
    }
    // "Roof. It's rubber, it's good.": the place is named by the thing.
    if (placed.onlyPlace && !spots.objects.empty() &&
        walk_.current() == std::vector<std::string>{"exterior"}) {
        before_ = {spots.objects.front().object};
        beforeAge_ = 0;
        looseBefore_ = true;
    }
    takeAnswer(sentence, spots, foundBefore);
    keepTopic(sentence, spots);
    keepLastWords(sentence, spots);
    lastFound_ = std::min(foundBefore, found_.size());
    if (options_.explain) {
        explain(sentence, spots, placed, linked, foundBefore);
    }
}

// In another space, nothing said before is meant any more.
void Reader::arrive(const Sentence& sentence) {
    before_.clear();
    absent_.clear();
    recent_.clear();
    if (sentence.heading || (sentence.alone && !sentence.bullet)) {
        section_ = Section::Plain;
    }
    const std::uint32_t thing = thingOfPlace(walk_.current());
    if (thing != kNone) {
        before_ = {thing};
        beforeAge_ = 0;
        looseBefore_ = true;
    }
}

// Links what the sentence says of things, and takes it as a choice or as items.
Linked Reader::takeWork(const Sentence& sentence, Spots& spots, const Placed& placed, bool deal) {
    takeSame(sentence, spots, placed.from);
    const Openness open = opennessOf(sentence, spots);
    recall(sentence, spots);
    Linked linked = linkSentence(
        sentence, spots, placed.from,
        {before_, looseBefore_, walk_.placeWord(), absent_, lastWords_, lastAct_, heads_});
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
    const bool money = deal && !open.priced && (spots.acts.empty() || spots.objects.empty());
    if (!money && !takeChoice(sentence, spots, placed, linked, open)) {
        takeItems(sentence, spots, placed, linked, open);
        cleanPlace(sentence, spots, placed, linked);
    }
    remember(sentence, spots, linked);
    return linked;
}

// "Move the fridge? I thought about it, no.": takes back what the question before asked for, where
// the answer is no and this sentence added nothing to the first `foundBefore` found, or where leave
// was asked of another and not given.
void Reader::takeAnswer(const Sentence& sentence, const Spots& spots, std::size_t foundBefore) {
    const bool no =
        asked_ && (spots.has(Cue::Hypothetical) || spots.has(Cue::Refused) ||
                   (!sentence.tokens.empty() && sentence.tokens.front().word == tables().id("no")));
    const bool denied = proposed_ && !agrees(sentence) && !sentence.terse;
    if (no && found_.size() == foundBefore && lastFound_ < found_.size()) {
        found_.resize(lastFound_);
    } else if (denied && lastFound_ < foundBefore) {
        const auto begin = found_.begin() + static_cast<std::ptrdiff_t>(lastFound_);
        const auto end = found_.begin() + static_cast<std::ptrdiff_t>(foundBefore);
        found_.erase(std::remove_if(begin, end,
                                    [](const Found& found) {
                                        return found.treatment != Treatment::Keep &&
                                               found.treatment != Treatment::Inspect;
                                    }),
                     end);
    }
    const Asks asks = asksFor(sentence);
    asked_ = asks != Asks::Nothing;
    speakers_ = speakers_ || sentence.spoken;
    proposed_ = asks == Asks::Other || (asks == Asks::Leave && speakers_);
}

// The next sentence may name by these what no table knows.
void Reader::keepLastWords(const Sentence& sentence, const Spots& spots) {
    heads_.clear();
    for (const ObjectSpot& object : spots.objects) {
        if (!before_.empty() && object.object == before_.front()) {
            heads_.push_back(plainWord(sentence.tokens[object.span.end - 1].text));
        }
    }
    lastWords_.clear();
    for (const Token& token : sentence.tokens) {
        if (token.kind == TokenKind::Word && token.word == kUnknown) {
            lastWords_.push_back(token.text);
        }
    }
}

// "Undecided:", "NOT DOING", "Keep": a heading that names no space.
bool Reader::takeSection(const Sentence& sentence, const Spots& spots) {
    const bool colon = isMark(sentence.tokens.back(), ":");
    const bool heading =
        sentence.heading || (sentence.alone && !sentence.bullet && (colon || shouted(sentence)));
    const bool bare = sentence.alone && !sentence.bullet && wordCount(sentence) <= 3 &&
                      sentence.tokens.front().capital && !isMark(sentence.tokens.back(), ".!?");
    // "Linen closet", all there is in the line: the closet is where one stands.
    if ((heading || bare) && headsCloset(sentence, spots)) {
        const std::string name =
            writtenAs(std::span(sentence.tokens).first(spots.objects.front().span.end));
        walk_.learn(plainWord(name), plainWord(name), SpaceKind::Room);
        walk_.stand({plainWord(name)});
        section_ = Section::Plain;
        before_.clear();
        return true;
    }
    // "Budget: 41,500": a figure heads nothing.
    if ((!heading && !bare) || wordCount(sentence) > 5 || !spots.spaces.empty() ||
        !spots.objects.empty() || !spots.amounts.empty()) {
        return false;
    }
    if (spots.has(Cue::Refused) || spots.has(Cue::Negation)) {
        section_ = Section::NotDoing;
    } else if (spots.has(Cue::Open) || spots.has(Cue::Undecided)) {
        section_ = Section::Open;
    } else if (!spots.acts.empty() &&
               tables().acts[spots.acts.front().row].treatment == Treatment::Keep) {
        section_ = Section::Keep;
    } else if (!spots.acts.empty()) {
        return false;
    } else {
        section_ = Section::Plain;
    }
    if (section_ == Section::Plain && walk_.enterUnnamed(sentence)) {
        before_.clear();
        return true;
    }
    if (section_ != Section::Open) {
        walk_.stand({});
    }
    before_.clear();
    return true;
}

// Whether what stands at token `at` is talk, memory or a thought put aside.
bool Reader::isDead(const Sentence& sentence, const Spots& spots, std::size_t at,
                    int weight) const {
    // Talk that begins later in a long run says nothing of what was ordered before.
    const std::size_t reach = isBreathless(sentence) ? 8 : 14;  // tokens
    for (const CueSpot& cue : spots.cues) {
        const bool strong = cue.cue == Cue::Chatter;
        const bool thought = cue.cue == Cue::Hypothetical;
        const bool aside = cue.cue == Cue::Aside;
        if (!strong && !thought && !(aside && weight <= 2)) {
            continue;
        }
        const std::size_t begin = cue.span.begin;
        if (at >= begin) {
            // Ends where the talk comes back to this house.
            const bool back =
                partedBy(sentence, spots, begin, at) >= 3.4 ||
                std::any_of(spots.cues.begin(), spots.cues.end(), [&](const CueSpot& resume) {
                    return resume.cue == Cue::Resume && resume.span.begin > begin &&
                           resume.span.begin <= at;
                });
            if (!back) {
                return true;
            }
        } else if (!thought && weight <= 2 && begin - at < reach &&
                   partedBy(sentence, spots, at, begin) < 3.4) {
            return true;
        }
    }
    return false;
}

// "Carpet out, plank in. Living room, dining room and the upstairs hall.": whether a sentence that
// only names rooms, the one where the speaker stood among them, says where the last one holds.
bool Reader::spreads(const Sentence& sentence, const std::vector<std::string>& stood) const {
    constexpr std::size_t kLeast = 3;
    const std::vector<std::string>& now = walk_.current();
    return !sentence.opensLine && !sentence.heading && stood.size() == 1 && now.size() >= kLeast &&
           lastFound_ < found_.size() &&
           std::find(now.begin(), now.end(), stood.front()) != now.end();
}

// What was said last holds in these places as well.
void Reader::copyLast(const std::vector<std::string>& places) {
    const std::vector<Found> last(found_.begin() + static_cast<std::ptrdiff_t>(lastFound_),
                                  found_.end());
    for (const Found& found : last) {
        for (const std::string& key : places) {
            if (key != found.place && found_.size() < kMostItems) {
                found_.push_back(found);
                found_.back().place = key;
                found_.back().signs.push_back(signOf(SignFlag::Copied));
            }
        }
    }
}

// "This, the dining room, and the hall too.": what was said last holds there as well.
void Reader::extendPlaces(const Sentence& sentence, const Spots& spots, const Placed& placed,
                          const Linked& linked) {
    const bool bare =
        linked.said.empty() && !placed.parts.empty() && !placed.moved && lastFound_ < found_.size();
    static const WordId kToo = tables().id("too");
    static const WordId kBoth = tables().id("both");
    static const WordId kAlso = tables().id("also");
    const bool said =
        std::any_of(sentence.tokens.begin(), sentence.tokens.end(), [](const Token& token) {
            return token.word != kUnknown &&
                   (token.word == kToo || token.word == kBoth || token.word == kAlso);
        });
    if (!bare || !said || isDead(sentence, spots, 0, 2)) {
        return;
    }
    copyLast(placed.parts.front().keys);
}

// "Cabinets: plywood, homemade. All new.": the label is what the rest of the line is about.
void Reader::keepTopic(const Sentence& sentence, const Spots& spots) {
    topic_ = sentence.opensLine ? kNone : topic_;
    bool label = false;
    for (const ObjectSpot& object : spots.objects) {
        const std::size_t end = object.span.end;
        if (object.span.begin <= 2 && end < sentence.tokens.size() &&
            isMark(sentence.tokens[end], ":")) {
            topic_ = object.object;
            label = true;
        }
    }
    // "Closet: no door. Hang one.": what is not there.
    const bool missing =
        std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
            return object.object != topic_ &&
                   std::find(absent_.begin(), absent_.end(), object.object) != absent_.end();
        });
    if (topic_ != kNone && !missing && (sentence.opensLine || label || spots.objects.empty())) {
        before_ = {topic_};
        beforeAge_ = 0;
    }
}

// Keeps the objects that an "it" in the next sentence may mean.
void Reader::remember(const Sentence& sentence, const Spots& spots, const Linked& linked) {
    std::vector<std::uint32_t> objects;
    std::size_t last = 0;
    std::uint32_t act = kNone;
    for (const Said& said : linked.said) {
        if (said.spot != kNone && said.at >= last) {
            last = said.at;
            act = said.act;
        }
    }
    for (const Said& said : linked.said) {
        if (said.spot != kNone && said.act == act) {
            objects.push_back(said.object);
        }
    }
    for (const std::size_t loose : linked.loose) {
        // "It is sound (invoice in the drawer).": said by the way. "Not the drains", "with
        // a brick under it": not what is spoken of.
        const std::size_t begin = spots.objects[loose].span.begin;
        static const WordId kNot = tables().id("not");
        const bool denied = begin > 0 && (sentence.tokens[begin - 1].word == kNot ||
                                          sentence.tokens.front().word == kNot);
        const bool aside =
            spots.objects[loose].with || standsBy(sentence, begin) || inBrackets(sentence, begin);
        if (denied || (aside && !(objects.empty() && before_.empty()))) {
            continue;
        }
        if (spots.objects[loose].span.begin > last || objects.empty()) {
            // "There's no insulation, you can see lath. Blow some in.": what is missing comes
            // first.
            const bool missing = act != kNone && tables().acts[spots.acts[act].row].weight == 0;
            if (spots.objects[loose].span.begin > last && act != kNone && !missing) {
                objects.clear();
                act = kNone;
            }
            objects.push_back(spots.objects[loose].object);
        }
    }
    for (const ObjectSpot& object : spots.objects) {
        for (const CueSpot& cue : spots.cues) {
            const bool before =
                cue.span.end <= object.span.begin && cue.span.end + 3 >= object.span.begin;
            // "The cap is missing.", "The door is gone."
            const std::string ends = plainWord(sentence.tokens[cue.span.end - 1].text);
            const bool after = cue.span.begin >= object.span.end &&
                               cue.span.begin <= object.span.end + 1 &&
                               (ends == "missing" || ends == "gone");
            if (cue.cue == Cue::Absent && (before || after) && absent_.size() < 50) {
                absent_.push_back(object.object);
            }
        }
    }
    // "Microwave missing.", "fridge - gone"
    for (const ObjectSpot& object : spots.objects) {
        std::size_t at = object.span.end;
        at += at < sentence.tokens.size() && isMark(sentence.tokens[at], ":-,") ? 1 : 0;
        const std::string says =
            at < sentence.tokens.size() ? plainWord(sentence.tokens[at].text) : std::string();
        // Of "three balusters missing" the others are there.
        const bool some =
            object.span.begin > 0 &&
            (sentence.tokens[object.span.begin - 1].kind == TokenKind::Number ||
             tables().number(sentence.tokens[object.span.begin - 1].word).kind != NumberKind::None);
        if ((says == "missing" || says == "gone") && !some && absent_.size() < 50) {
            absent_.push_back(object.object);
        }
    }
    // "I thought of a closet, but it would eat the window, so no.": not what the talk is about.
    if (spots.has(Cue::Hypothetical) && linked.said.empty()) {
        objects.clear();
        looseBefore_ = false;
    }
    lastAct_ = linked.said.empty() ? kNone : spots.acts[linked.said.back().act].row;
    if (!objects.empty()) {
        // "Do we need to do the ceiling? Just paint.": nothing is said yet.
        looseBefore_ = act == kNone || asksFor(sentence) == Asks::Leave;
        // "The fireplace is a fake, there's no chimney. Take it out.": not the chimney.
        const bool missing = std::all_of(objects.begin(), objects.end(), [&](std::uint32_t object) {
            return std::find(absent_.begin(), absent_.end(), object) != absent_.end();
        });
        if (missing && before_.size() < 4) {
            objects.insert(objects.begin(), before_.begin(), before_.end());
        }
        before_ = std::move(objects);
        beforeAge_ = 0;
    } else if (!linked.said.empty()) {
        looseBefore_ = false;
    }
    for (const ObjectSpot& object : spots.objects) {
        if (object.material) {
            continue;
        }
        recent_.insert(recent_.begin(), object.object);
    }
    recent_.resize(std::min<std::size_t>(recent_.size(), 8));
}

Reading Reader::finish() {
    Draft& draft = reading_.draft;
    const int least = options_.leastSure.value_or(leastSure());
    for (Found& found : mergeFound(found_, walk_)) {
        if (found.item.source.sure < least) {
            ++draft.leftOut;
            continue;
        }
        draft.items.push_back(std::move(found.item));
        if (options_.explain) {
            reading_.signs.emplace_back();
            for (const Sign& sign : found.signs) {
                reading_.signs.back().push_back(
                    {std::string(kindName(sign.kind)), valueName(sign)});
            }
        }
    }
    draft.alternates = std::move(alternates_);
    draft.facts = facts_.facts();
    draft.cautions = std::move(cautions_);
    cautionItems(draft);
    for (const KnownSpace& space : walk_.known()) {
        if (space.kind != SpaceKind::Group) {
            draft.spaces.push_back({space.shown});
        }
    }
    return std::move(reading_);
}

}  // namespace ledgerboard::intake
