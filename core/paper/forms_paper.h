// How do the papers handed to crews and firms read when printed: scope to bid on, punch sheets,
// blank forms?
//
// They show core/report/forms.h and hold no price: there is none in it. Threads: any number may
// ask.
#pragma once

#include <vector>

#include "core/paper/paper.h"
#include "core/report/forms.h"

namespace ledgerboard::paper {

// With room for a price and days on each line.
[[nodiscard]] Paper bidsPaper(const model::Job& job, const report::BidScope& scope,
                              model::Date today);

// A sheet for each crew, beginning on a page of its own; those without an open item are left out.
// None with any: one page that says so.
[[nodiscard]] Paper punchPaper(const model::Job& job, const std::vector<report::PunchSheet>& sheets,
                               model::Date today);

[[nodiscard]] Paper formPaper(const model::Job& job, const report::BlankForm& form,
                              model::Date today);

}  // namespace ledgerboard::paper
