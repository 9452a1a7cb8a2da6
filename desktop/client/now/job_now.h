// How does the job whose folder is open stand? Its rows and every figure of its lines, read once
// and then looked at by all pages.
//
// Threads: made on any one, then only read.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/compute/budget.h"
#include "core/model/rows.h"

namespace ledgerboard::desk {

struct JobNow {
    explicit JobNow(model::JobRows all) : rows(std::move(all)) {}

    JobNow(const JobNow&) = delete;
    JobNow& operator=(const JobNow&) = delete;

    model::JobRows rows;  // as of today
    model::Date today;
    compute::JobFigures figures;
    std::vector<std::string> haystacks;  // of each of rows.items: what typing filters by, folded
};

// Requires: `rows` as read from the book. Errors: OverflowError.
[[nodiscard]] std::shared_ptr<const JobNow> jobNowOf(model::JobRows rows, model::Date today);

// The name of a space or crew; "" where there is none of that id.
[[nodiscard]] std::string spaceName(const model::JobRows& rows,
                                    const model::Id<model::Kind::Space>& id);
[[nodiscard]] std::string crewName(const model::JobRows& rows,
                                   const model::Id<model::Kind::Crew>& id);

}  // namespace ledgerboard::desk
