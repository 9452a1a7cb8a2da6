// How do the rows of one kind become a sheet of a workbook?
//
// Every field of the catalog but the job, in its own form; money columns are added up. Scope items
// have their figures beside them: budget now, done, earned, billed, paid, forecast, and what it is
// over as a formula.
#pragma once

#include <map>
#include <vector>

#include "core/compute/budget.h"
#include "core/give/workbook.h"
#include "core/model/value.h"
#include "core/store/book.h"

namespace ledgerboard::give {

// `figures` is empty for any kind but scope items. `name` names records; `title` is printed.
[[nodiscard]] Sheet recordSheet(model::Kind kind, const std::vector<store::Record>& records,
                                const std::map<model::RawId, compute::LineFigures>& figures,
                                const model::NameRecord& name, const std::string& title);

}  // namespace ledgerboard::give
