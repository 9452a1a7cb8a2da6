// The part of the reader that keeps what the next sentence may mean by "it", "one" and "too".
#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/questions.h"
#include "core/intake/notes/reader.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

// "I held a match by the hood": where something was done.
bool standsBy(const Sentence& sentence, std::size_t begin) {
    static const std::vector<std::string_view> kBy = {"by",    "near",  "behind",  "beside",
                                                      "under", "below", "against", "beneath"};
    std::size_t at = begin;
    while (at > 0 &&
           (sentence.tokens[at - 1].plain == "the" || sentence.tokens[at - 1].plain == "that")) {
        --at;
    }
    return at > 0 && isOneOf(sentence.tokens[at - 1].plain, kBy);
}

// "It is sound (invoice in the drawer)."
bool inBrackets(const Sentence& sentence, std::size_t at) {
    int open = 0;
    for (std::size_t i = 0; i < at; ++i) {
        open += isMark(sentence.tokens[i], "(") ? 1 : isMark(sentence.tokens[i], ")") ? -1 : 0;
    }
    return open > 0;
}

}  // namespace

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

// The next sentence may name by these what no table knows.
void Reader::keepLastWords(const Sentence& sentence, const Spots& spots) {
    heads_.clear();
    for (const ObjectSpot& object : spots.objects) {
        if (!before_.empty() && object.object == before_.front()) {
            heads_.push_back(sentence.tokens[object.span.end - 1].plain);
        }
    }
    lastWords_.clear();
    constexpr int kLately = 2;  // sentences
    std::erase_if(lately_, [&](const auto& one) { return one.second + kLately <= sentences_; });
    const std::vector<WordId>& asked = tables().lately;
    for (const Token& token : sentence.tokens) {
        if (token.kind == TokenKind::Word && token.word == kUnknown) {
            lastWords_.push_back(token.text);
        } else if (std::find(asked.begin(), asked.end(), token.word) != asked.end()) {
            lately_.emplace_back(token.word, sentences_);
        }
    }
}

std::vector<WordId> Reader::latelySaid() const {
    std::vector<WordId> words;
    for (const auto& [word, sentence] : lately_) {
        words.push_back(word);
    }
    return words;
}

// The things a sentence speaks of, and `act`, the treatment said of them last; kNone where they are
// only named.
std::vector<std::uint32_t> Reader::spokenOf(const Sentence& sentence, const Spots& spots,
                                            const Linked& linked, std::uint32_t& act) const {
    std::vector<std::uint32_t> objects;
    std::size_t last = 0;
    act = kNone;
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
    return objects;
}

// Keeps what is said to be missing.
void Reader::noteAbsent(const Sentence& sentence, const Spots& spots) {
    for (const ObjectSpot& object : spots.objects) {
        for (const CueSpot& cue : spots.cues) {
            const bool before =
                cue.span.end <= object.span.begin && cue.span.end + 3 >= object.span.begin;
            // "The cap is missing.", "The door is gone."
            const std::string& ends = sentence.tokens[cue.span.end - 1].plain;
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
            at < sentence.tokens.size() ? sentence.tokens[at].plain : std::string();
        // Of "three balusters missing" the others are there.
        const bool some =
            object.span.begin > 0 &&
            (sentence.tokens[object.span.begin - 1].kind == TokenKind::Number ||
             tables().number(sentence.tokens[object.span.begin - 1].word).kind != NumberKind::None);
        if ((says == "missing" || says == "gone") && !some && absent_.size() < 50) {
            absent_.push_back(object.object);
        }
    }
}

// "The carpet's out in all three bedrooms. Burn it.": there as well.
void Reader::rememberPlaces(const Spots& spots, const Placed& placed) {
    beforePlaces_.clear();
    for (const ObjectSpot& object : spots.objects) {
        for (const Placing& part : placed.parts) {
            const KnownSpace* space = walk_.find(part.keys.front());
            const bool rooms =
                part.keys.size() > 1 || space == nullptr || space->kind == SpaceKind::Room;
            if (rooms && object.object == before_.front() && !object.landmark &&
                part.span.holds(object.span.begin)) {
                beforePlaces_ = part.keys;
            }
        }
    }
}

// Keeps the objects that an "it" in the next sentence may mean.
void Reader::remember(const Sentence& sentence, const Spots& spots, const Placed& placed,
                      const Linked& linked) {
    std::uint32_t act = kNone;
    std::vector<std::uint32_t> objects = spokenOf(sentence, spots, linked, act);
    noteAbsent(sentence, spots);
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
        rememberPlaces(spots, placed);
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

}  // namespace ledgerboard::intake
