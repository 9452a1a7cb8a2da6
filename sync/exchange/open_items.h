// Which items are only one way of an open decision, and which marks are voided? Both are left out
// of what other roles see.
#pragma once

#include <set>
#include <vector>

#include "core/model/rows.h"

namespace ledgerboard::sync {

// Items of options that were not chosen.
[[nodiscard]] inline std::set<model::RawId> itemsOfOpenOptions(
    const std::vector<model::Item>& items, const std::vector<model::Alternate>& alternates) {
    std::set<model::RawId> chosen;
    for (const auto& alternate : alternates) {
        chosen.insert(alternate.chosen.raw());
    }
    std::set<model::RawId> open;
    for (const auto& item : items) {
        if (!item.option.isNil() && !chosen.contains(item.option.raw())) {
            open.insert(item.id.raw());
        }
    }
    return open;
}

[[nodiscard]] inline std::set<model::RawId> voidedMarks(const std::vector<model::Mark>& marks) {
    std::set<model::RawId> voided;
    for (const auto& mark : marks) {
        if (!mark.voids.isNil()) {
            voided.insert(mark.voids.raw());
        }
    }
    return voided;
}

}  // namespace ledgerboard::sync
