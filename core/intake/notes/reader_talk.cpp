// The part of the reader that tells talk from work, and where else what was said last holds.
#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/reader.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

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
// only names rooms says where the last one holds: the speaker stood in one of them, or the last one
// spoke of a storey or of all rooms.
bool Reader::spreads(const Sentence& sentence, const std::vector<std::string>& stood) const {
    const std::vector<std::string>& now = walk_.current();
    const std::size_t least = last_.ofAll ? 2 : 3;
    return !sentence.opensLine && !sentence.heading && stood.size() == 1 && now.size() >= least &&
           (last_.found < found_.size() || last_.mentions < mentions_.size()) &&
           (last_.ofAll || contains(now, stood.front()));
}

// What was said last of walls and floors holds in these places as well.
void Reader::copyLast(const std::vector<std::string>& places) {
    const std::vector<Found> last(found_.begin() + static_cast<std::ptrdiff_t>(last_.found),
                                  found_.end());
    for (const Found& found : last) {
        for (const std::string& key : places) {
            if (isFinish(found.object) && key != found.place && found_.size() < kMostItems) {
                found_.push_back(found);
                found_.back().place = key;
                found_.back().signs.push_back(signOf(SignFlag::Copied));
            }
        }
    }
    const std::size_t mentions = mentions_.size();
    for (std::size_t i = last_.mentions; i < mentions; ++i) {
        const Mention mention = mentions_[i];
        for (const std::string& key : places) {
            if (!mention.aside && isFinish(mention.object) && mention.places.size() == 1 &&
                key != mention.places.front()) {
                copyMention(mention.object, mention.places.front(), key, mention.item.source);
            }
        }
    }
}

// "The dining room too.", "That goes for the hall and the bedrooms as well.": what was said last
// holds there.
bool Reader::saysAlso(const Sentence& sentence, const Spots& spots) const {
    static const std::vector<std::string_view> kWords = {"too", "also", "both", "likewise",
                                                         "ditto"};
    const bool works = std::any_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
        return tables().acts[act.row].weight > 1;
    });
    if (works || spots.spaces.empty() || isDead(sentence, spots, 0, 2)) {
        return false;
    }
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        const std::string& word = sentence.tokens[i].plain;
        const std::string next =
            i + 1 < sentence.tokens.size() ? sentence.tokens[i + 1].plain : std::string();
        if (isOneOf(word, kWords) || (word == "as" && next == "well") ||
            (word == "goes" && next == "for")) {
            return true;
        }
    }
    return false;
}

void Reader::extendPlaces(const Sentence& sentence, const Spots& spots, const Placed& placed,
                          const Linked& linked) {
    // "… and the hall too, because you can't stop at a doorway."
    const bool things = !spots.objects.empty() && !spots.spaces.empty() &&
                        spots.objects.front().span.begin <= spots.spaces.back().span.end + 1;
    if (!linked.said.empty() || things || (placed.parts.empty() && !placed.moved) ||
        !saysAlso(sentence, spots)) {
        return;
    }
    std::vector<std::string> places =
        placed.parts.empty() ? std::vector<std::string>() : placed.parts.front().keys;
    if (placed.moved) {
        places.insert(places.end(), walk_.current().begin(), walk_.current().end());
    }
    copyLast(places);
}

}  // namespace ledgerboard::intake
