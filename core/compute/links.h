// May these items wait for each other like this?
//
// Source: project decision: a link names two items, not one twice, and no items wait for each other
// in a ring.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/model/result.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

using ItemId = model::Id<model::Kind::Item>;
using NameItem = std::function<std::string(ItemId)>;

// The items of a ring, each waiting for the one before it, the first for the last. Empty where
// there is none. Links that lack an end are passed over.
[[nodiscard]] std::vector<ItemId> ringOf(const std::vector<model::Link>& links);

// "Hall bath/tile > Hall bath/vanity > Hall bath/tile". Empty where there is no ring.
[[nodiscard]] std::string ringText(const std::vector<ItemId>& ring, const NameItem& nameOf);

// Whether `link` may stand beside `others` (itself among them or not: by its id).
// Errors (CannotBeMet): an end that is missing, both ends one item, a ring, printed by names.
[[nodiscard]] model::Result<void> checkLink(const model::Link& link,
                                            const std::vector<model::Link>& others,
                                            const NameItem& nameOf);

}  // namespace ledgerboard::compute
