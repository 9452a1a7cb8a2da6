// Which rows does the scope sheet have, in which order, under which headings?
//
// Items in walking order of their spaces, then by trade or crew where grouped so; a heading stands
// before each group with what its lines come to. Typing filters: every word typed must be found in
// space, treatment, object, trade, crew or notes of an item, whatever its case.
// Source: project decision. Threads: any.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/model/money.h"

#include "desktop/client/now/job_now.h"

namespace ledgerboard::desk {

// Do not renumber: stored in the settings of the machine.
enum class GroupBy { Space = 0, Trade = 1, Crew = 2, Nothing = 3 };

struct ScopeRow {
    bool isHeading = false;
    std::size_t item = 0;    // in rows.items, where it is an item
    std::string heading;     // "" for what belongs to no space, trade or crew
    std::size_t count = 0;   // items under a heading that count
    model::Money line;       // what they cost by today's price
    model::Money budgetNow;  // and by the budget
    model::RawId group;      // of a heading by space or crew; nil for none
};

struct ScopeRows {
    std::vector<ScopeRow> rows;
    std::size_t items = 0;     // shown
    std::size_t counting = 0;  // of them, those that count
    std::size_t unpriced = 0;  // of those that count, without a price
    model::Money line;         // of those that count
    model::Money budgetNow;
};

// Errors: OverflowError.
[[nodiscard]] ScopeRows scopeRowsOf(const JobNow& now, GroupBy by, const std::string& filter);

}  // namespace ledgerboard::desk
