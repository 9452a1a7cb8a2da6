// The part of the reader that hears a new thing in what it is to be made of: "Laminate again, 34 sq
// ft.", "siding swollen, fiber cement, 1900 sq ft", "fascia rotten, 8 m in uPVC".
#include <algorithm>

#include "core/intake/notes/reader.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

// Where a run of materials ends that begins at `at`; `at` where none does.
std::size_t endOfStuff(const Spots& spots, std::size_t at) {
    std::size_t end = at;
    while (spots.endOf(Cue::Material, end) > end) {
        end = spots.endOf(Cue::Material, end);
    }
    return end;
}

bool isMeasure(const Spots& spots, std::size_t at) {
    return std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
        return amount.kind == AmountKind::Measured && amount.begin == at;
    });
}

// Whether a material and its measure stand by themselves from token `at` on, or a measure and then
// "in" a material.
bool isStuffToBuy(const Sentence& sentence, const Spots& spots, std::size_t at) {
    const std::size_t end = endOfStuff(spots, at);
    if (end > at && end + 1 < sentence.tokens.size() && isMark(sentence.tokens[end], ",") &&
        isMeasure(spots, end + 1)) {
        return at > 0 && isMark(sentence.tokens[at - 1], ",;-");
    }
    return std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
        return amount.kind == AmountKind::Measured && amount.begin == at &&
               wordIs(sentence, amount.end, "in") &&
               endOfStuff(spots, amount.end + 1) > amount.end + 1;
    });
}

}  // namespace

void Reader::takeStuff(const Sentence& sentence, Spots& spots, Linked& linked) {
    static const std::uint32_t kReplaced = [] {
        const auto& acts = tables().acts;
        const auto row = std::find_if(acts.begin(), acts.end(), [](const ActRow& act) {
            return act.phrase == "be replaced" && act.side == Side::Before;
        });
        return row == acts.end() ? kNone : static_cast<std::uint32_t>(row - acts.begin());
    }();
    for (const Cue cue : {Cue::Negation, Cue::Chatter, Cue::Open, Cue::Undecided, Cue::Aside,
                          Cue::Hypothetical, Cue::Same}) {
        if (spots.has(cue)) {
            return;
        }
    }
    const bool ordered = std::any_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
        return tables().acts[act.row].weight > 2;
    });
    if (kReplaced == kNone || ordered || sentence.tokens.back().mark == '?') {
        return;
    }
    const auto thing =
        std::find_if(spots.objects.begin(), spots.objects.end(),
                     [](const ObjectSpot& object) { return !object.landmark && !object.material; });
    const std::size_t first = endOfStuff(spots, 0);
    const bool again =
        first > 0 && (wordIs(sentence, first, "again") || wordIs(sentence, first, "instead"));
    // "Carpet out. Pine again.": what lies under it.
    const bool found = !meant_.objects.empty() &&
                       tables().objects[meant_.objects.front()].family == "floor" &&
                       spots.amounts.empty();
    std::size_t at = 0;
    if (again && !found && thing == spots.objects.end() && !meant_.objects.empty()) {
        spots.acts.push_back(ActSpot{.span = {0, 1}, .tail = {}, .row = kReplaced});
        linked.said.push_back(Said{.object = meant_.objects.front(),
                                   .act = static_cast<std::uint32_t>(spots.acts.size() - 1),
                                   .at = 0,
                                   .fromBefore = true});
        return;
    }
    if (thing == spots.objects.end()) {
        return;
    }
    for (at = thing->span.end; at < sentence.tokens.size(); ++at) {
        if (!isStuffToBuy(sentence, spots, at)) {
            continue;
        }
        const auto index = static_cast<std::size_t>(thing - spots.objects.begin());
        spots.acts.push_back(ActSpot{.span = {at, at + 1}, .tail = {}, .row = kReplaced});
        linked.said.push_back(Said{.object = thing->object,
                                   .act = static_cast<std::uint32_t>(spots.acts.size() - 1),
                                   .at = thing->span.begin,
                                   .spot = index});
        std::erase(linked.loose, index);
        return;
    }
}

}  // namespace ledgerboard::intake
