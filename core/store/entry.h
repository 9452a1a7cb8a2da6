// What stands in the log? One entry: which field of which record got which value, when by the
// hybrid clock, from which device, as which number in that device's lane. Never edited.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/model/catalog.h"
#include "core/model/hybrid_clock.h"
#include "core/model/id.h"
#include "core/model/value.h"

namespace ledgerboard::store {

// Do not renumber: stored in the log and sent.
enum class Lane : std::uint8_t {
    OwnerOnly = 0,  // no one but owners may ever hold it
    Shared = 1,     // some other role may read it
    // As a device of another role than owner receives it: numbered by a keyed digest, so that
    // numbers tell nothing of what it does not receive. Never at the device that wrote the entry.
    Sealed = 2,
};

// Names one entry in the whole world.
struct EntryName {
    model::RawId device;
    Lane lane = Lane::OwnerOnly;
    std::int64_t number = 0;  // 1, 2, 3 ... per device and lane, without holes (Sealed: any)
    friend auto operator<=>(const EntryName&, const EntryName&) = default;
};

struct Entry {
    EntryName name;
    model::HybridClock clock;  // entries of one action share one reading
    model::RawId record;
    model::FieldCode field = 0;
    model::Value value;
    // Of a checked field: the entries whose values the writer had before them.
    std::vector<EntryName> replaces;
};

// Whether `a` wins over `b` in a cell, by the field's merge rule. Total and the same on every
// device: the later clock (the earlier one for kept facts), then the higher (lower) device id. A
// sound device never writes one cell twice at one reading; should one do so, lane and number
// decide.
[[nodiscard]] bool beats(model::Merge merge, model::HybridClock aClock, const EntryName& a,
                         model::HybridClock bClock, const EntryName& b);

// The lane of a field, by who may read it. Fixed when the entry is written.
[[nodiscard]] Lane laneOf(const model::Field& field);
// The lane of the gone cell: owner-only where nobody else may read any field of the kind.
[[nodiscard]] Lane laneOfGone(model::Kind kind);

}  // namespace ledgerboard::store
