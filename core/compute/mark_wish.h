// What is said of an item by pulling a rule? A place on it, steps, or finished, made into a mark.
//
// A rule has stops: one for each 5 % of judged percent, one for each unit counted (a hundredth of
// the quantity where it is not a whole number up to 200), two for half and half, one for none or
// done. Source: project decision (a drag snaps to 5).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/model/result.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

struct MarkWish {
    std::optional<model::Percent> percent;
    std::optional<model::Quantity> count;
    std::vector<std::string> steps;
    std::string note;
};

// Stops of an item's rule beyond 0. Steps have none of their own: 20, to be looked at only.
[[nodiscard]] int stopsOf(const model::Item& item);

// The stop nearest to a percent, 0 to stopsOf(item); the last only where it is finished.
[[nodiscard]] int stopAt(const model::Item& item, model::Percent percent);

// What a stop says: a count for counted units, else a percent. Requires: 0 <= stop <= stopsOf.
[[nodiscard]] MarkWish wishAt(const model::Item& item, int stop);

// The percent of a stop, for the figure beside the rule.
[[nodiscard]] model::Percent percentAt(const model::Item& item, int stop);

[[nodiscard]] inline MarkWish finishedWish() {
    MarkWish wish;
    wish.percent = model::Percent::whole();
    return wish;
}

// The mark that says it, without id. Errors: as compute::checkMark.
[[nodiscard]] model::Result<model::Mark> markOf(const model::Item& item, const MarkWish& wish,
                                                model::Date today);

}  // namespace ledgerboard::compute
