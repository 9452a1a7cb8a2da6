// What has been read so far, before repetitions are merged and groups of rooms are spelled out?
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/intake/notes/amounts.h"
#include "core/intake/notes/draft.h"
#include "core/intake/notes/signs.h"
#include "core/intake/notes/tables.h"
#include "core/intake/notes/walk.h"

namespace ledgerboard::intake {

struct Found {
    std::string place;  // key of a space; "bedrooms*3" stands for all three bedrooms
    model::Treatment treatment = model::Treatment::Unset;
    std::uint32_t object = kNone;
    int weight = 0;            // as ActRow::weight
    bool fresh = false;        // a new one was asked for
    bool own = false;          // the owner says what the phrase means
    bool fromNo = false;       // read from a negation: "not replacing the windows"
    bool rest = false;         // kept apart from the part that gets work: "leave the rest"
    bool lot = false;          // one of two lots of it, of which one is kept
    std::size_t sentence = 0;  // of the notes, by its number
    bool takenOut = false;     // said to go, no more: what every house has is then replaced
    std::vector<Sign> signs;   // how it came about
    DraftItem item;            // note, quantity, unit, cost, days, lead, source
};

// Whether anything is done to the thing.
[[nodiscard]] inline bool isWork(model::Treatment treatment) {
    return treatment != model::Treatment::Keep && treatment != model::Treatment::Inspect;
}

// Walls, ceilings and floors: what rooms that are spoken of together have in common.
[[nodiscard]] bool isFinish(std::uint32_t object);

// Merges what was said more than once of one object in one space, spells out groups of rooms, and
// settles what contradicts itself: an order outranks a remark, the later order the earlier.
// In: `found` in the order of the notes. Out: in the order in which each thing was first spoken of,
// with the signs of the whole; their items are not named yet.
[[nodiscard]] std::vector<Found> mergeFound(std::vector<Found> found, Walk& walk);

}  // namespace ledgerboard::intake
