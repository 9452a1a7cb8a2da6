// What does a speaker take back in the same breath: "the main bath, no, make that the hall bath"?
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

namespace {

template <class Spot>
Span spanOf(const Spot& spot) {
    return spot.span;
}

Span spanOf(const Amount& amount) {
    return {amount.begin, amount.end};
}

constexpr std::size_t kAhead = 5;
constexpr std::size_t kBack = 8;

// The tokens from what was recognised last before `cue` to what comes first after it, of one sort:
// the first is taken back. Empty where there are not two of that sort close by.
template <class Spot>
Span takenBack(const std::vector<Spot>& spots, const Span& cue) {
    Span back;
    bool before = false;
    for (const Spot& spot : spots) {
        const Span span = spanOf(spot);
        if (span.end <= cue.begin && span.end + kBack >= cue.begin) {
            back.begin = span.begin;
            before = true;
        } else if (before && span.begin >= cue.end && span.begin <= cue.end + kAhead) {
            back.end = span.begin;
            return back;
        }
    }
    return {};
}

}  // namespace

Span correction(const Spots& spots) {
    for (const CueSpot& cue : spots.cues) {
        if (cue.cue != Cue::Correction) {
            continue;
        }
        for (const Span& back :
             {takenBack(spots.spaces, cue.span), takenBack(spots.objects, cue.span),
              takenBack(spots.acts, cue.span), takenBack(spots.amounts, cue.span)}) {
            if (back.end > back.begin) {
                return back;
            }
        }
    }
    return {};
}

}  // namespace ledgerboard::intake
