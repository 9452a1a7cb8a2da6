// Which papers does an owner hand to others? Scope of work to bid on, a crew's punch sheet, and
// plain blank forms for a change order and a lien waiver: each one HTML file, made to be printed.
//
// None holds the owner's money: the scope to bid on has no prices, budgets or contracts in it, the
// punch sheet no costs. The forms are blank but for names, and say to check them with local law:
// what a change or a waiver must say differs from place to place.
// Source: common practice, no source.
// Threads: any number may ask.
#pragma once

#include <string>

#include "core/compute/budget.h"
#include "core/compute/punch_list.h"
#include "core/model/rows.h"

namespace ledgerboard::report {

// Work that counts, room by room in walking order, with sizes, selections, instructions and
// hazards, and room for a price and days on each line. With `crew` only what is that crew's. An
// empty scope says so. Requires: rows and figures as of one day.
[[nodiscard]] std::string bidsHtml(const model::JobRows& rows, const compute::JobFigures& figures,
                                   model::Id<model::Kind::Crew> crew, model::Date today);

// Open punch items by room, with what, by when, and a box to tick and initial. With `crew` only
// that crew's. Requires: list = punchListOf(rows, today).
[[nodiscard]] std::string punchHtml(const model::JobRows& rows, const compute::PunchList& list,
                                    model::Id<model::Kind::Crew> crew, model::Date today);

// A blank change order for this job.
[[nodiscard]] std::string changeFormHtml(const model::JobRows& rows);

// A blank lien waiver, conditional and unconditional, for this job.
[[nodiscard]] std::string waiverFormHtml(const model::JobRows& rows);

}  // namespace ledgerboard::report
