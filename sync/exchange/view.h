// What of the book may a device see that isn't an owner's? Which records, and which cells of them.
//
// Source: docs/sync.md, "Who gets what"; who reads a field stands in the catalog.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <vector>

#include "core/store/sync_book.h"
#include "sync/exchange/standing.h"

namespace ledgerboard::sync {

// The entry that a device gets for a cell.
struct ViewCell {
    std::int64_t arrival = 0;  // in the peer's log
    // Of a cell that the peer builds: the value given in place of the entry's own.
    std::optional<model::Value> shownAs;
};

using ViewCells = std::map<store::CellName, ViewCell>;

// A record that is shown, and how much of it.
struct ShownRecord {
    model::Kind kind = model::Kind::None;
    bool neighbour = false;  // an item of another crew: only where, what and when
};

struct View {
    std::map<model::RawId, ShownRecord> records;
    // What a crew lead's own entries are judged by; all empty for a viewer.
    std::set<model::RawId> ownItems;
    std::set<model::RawId> ownPunches;
    std::set<model::RawId> ownJobs;
    std::set<model::RawId> ownSpaces;
    std::set<model::RawId> crewDevices;

    // Neighbours that are finished, and the cell that says so.
    struct Finished {
        store::CellName by;
        model::Value on;  // the day
    };

    std::map<model::RawId, Finished> finished;
};

// For a crew lead or a viewer. Requires: standing.known, and no owner. Errors: of the book.
[[nodiscard]] model::Result<View> viewOf(store::Book& book, const Standing& standing);

// The cells of a view. Errors: of the book.
[[nodiscard]] model::Result<ViewCells> cellsOf(store::SyncBook& book, const Standing& standing,
                                               const View& view);

// Whether a role may read a field, as the catalog says.
[[nodiscard]] bool mayRead(model::Role role, const model::Field& field);

// Inside sync/exchange.
[[nodiscard]] model::Result<View> leadView(store::Book& book, const Standing& standing);
[[nodiscard]] model::Result<View> viewerView(store::Book& book, const Standing& standing);

}  // namespace ledgerboard::sync
