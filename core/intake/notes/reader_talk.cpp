// The part of the reader that tells talk from work, and where else what was said last holds.
#include <algorithm>

#include "core/intake/notes/reader.h"
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

}  // namespace ledgerboard::intake
