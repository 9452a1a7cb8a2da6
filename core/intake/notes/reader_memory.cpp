// The part of the reader that keeps what the next sentence may mean by "it", "one" and "too".
#include <algorithm>

#include "core/intake/notes/item_names.h"
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
    line_.topic = sentence.opensLine ? kNone : line_.topic;
    bool label = false;
    for (const ObjectSpot& object : spots.objects) {
        const std::size_t end = object.span.end;
        if (object.span.begin <= 2 && end < sentence.tokens.size() &&
            isMark(sentence.tokens[end], ":")) {
            line_.topic = object.object;
            label = true;
        }
    }
    // "Closet: no door. Hang one.": what is not there.
    const bool missing =
        std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
            return object.object != line_.topic &&
                   std::find(here_.absent.begin(), here_.absent.end(), object.object) !=
                       here_.absent.end();
        });
    if (line_.topic != kNone && !missing &&
        (sentence.opensLine || label || spots.objects.empty())) {
        meant_.objects = {line_.topic};
        meant_.age = 0;
    }
}

// The next sentence may name by these what no table knows.
void Reader::keepLastWords(const Sentence& sentence, const Spots& spots) {
    meant_.heads.clear();
    for (const ObjectSpot& object : spots.objects) {
        if (!meant_.objects.empty() && object.object == meant_.objects.front()) {
            meant_.heads.push_back(sentence.tokens[object.span.end - 1].plain);
        }
    }
    last_.words.clear();
    constexpr int kLately = 2;  // sentences
    std::erase_if(here_.lately,
                  [&](const auto& one) { return one.second + kLately <= sentences_; });
    const std::vector<WordId>& asked = tables().lately;
    for (const Token& token : sentence.tokens) {
        if (token.kind == TokenKind::Word && token.word == kUnknown) {
            last_.words.push_back(token.text);
        } else if (std::find(asked.begin(), asked.end(), token.word) != asked.end()) {
            here_.lately.emplace_back(token.word, sentences_);
        }
    }
}

std::vector<WordId> Reader::latelySaid() const {
    std::vector<WordId> words;
    for (const auto& [word, sentence] : here_.lately) {
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
        if (denied || (aside && !(objects.empty() && meant_.objects.empty()))) {
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
            if (cue.cue == Cue::Absent && (before || after) && here_.absent.size() < 50) {
                here_.absent.push_back(object.object);
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
        if ((says == "missing" || says == "gone") && !some && here_.absent.size() < 50) {
            here_.absent.push_back(object.object);
        }
    }
}

// "The carpet's out in all three bedrooms. Burn it.": there as well.
void Reader::rememberPlaces(const Spots& spots, const Placed& placed) {
    meant_.places.clear();
    for (const ObjectSpot& object : spots.objects) {
        for (const Placing& part : placed.parts) {
            const KnownSpace* space = walk_.find(part.keys.front());
            const bool rooms =
                part.keys.size() > 1 || space == nullptr || space->kind == SpaceKind::Room;
            if (rooms && object.object == meant_.objects.front() && !object.landmark &&
                part.span.holds(object.span.begin)) {
                meant_.places = part.keys;
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
        meant_.loose = false;
    }
    last_.pieces.clear();
    for (const ObjectSpot& object : spots.objects) {
        if (isPartOf(sentence, spots, object.span)) {
            last_.pieces.push_back(object.object);
        }
    }
    last_.act = linked.said.empty() ? kNone : spots.acts[linked.said.back().act].row;
    if (!objects.empty()) {
        // "Do we need to do the ceiling? Just paint.": nothing is said yet.
        meant_.loose = act == kNone || asksFor(sentence) == Asks::Leave;
        // "The fireplace is a fake, there's no chimney. Take it out.": not the chimney.
        const bool missing = std::all_of(objects.begin(), objects.end(), [&](std::uint32_t object) {
            return std::find(here_.absent.begin(), here_.absent.end(), object) !=
                   here_.absent.end();
        });
        if (missing && meant_.objects.size() < 4) {
            objects.insert(objects.begin(), meant_.objects.begin(), meant_.objects.end());
        }
        meant_.objects = std::move(objects);
        meant_.age = 0;
        rememberPlaces(spots, placed);
    } else if (!linked.said.empty()) {
        meant_.loose = false;
    }
    for (const ObjectSpot& object : spots.objects) {
        if (object.material) {
            continue;
        }
        here_.recent.insert(here_.recent.begin(), object.object);
    }
    here_.recent.resize(std::min<std::size_t>(here_.recent.size(), 8));
}

}  // namespace ledgerboard::intake
