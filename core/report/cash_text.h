// How is the cash line told on a terminal: what matters first, a drawing, a table by the week, what
// to ask the lender for and when, and what it all rests on.
#pragma once

#include <string>

#include "core/compute/budget.h"
#include "core/compute/cash_plan.h"
#include "core/model/rows.h"
#include "core/report/table.h"

namespace ledgerboard::report {

// In lines no wider than the style's width. Where there is no line: what is missing and how to
// enter it. Requires: `plan` and `figures` of these rows on `today`.
[[nodiscard]] std::string cashText(const model::JobRows& rows, const compute::JobFigures& figures,
                                   const compute::CashPlan& plan, model::Date today,
                                   const TableStyle& style);

// The balance day by day as a drawing of `height` lines, the zero line marked where it is in it.
// Empty where there are fewer than two days.
[[nodiscard]] std::string cashDrawing(const compute::CashLine& line, model::Date today, int height,
                                      const TableStyle& style);

// Money by the week, weeks ending on Friday.
[[nodiscard]] Table cashWeeks(const compute::CashLine& line, model::Date today, Script script);

// "Counted as nothing, for it was not entered: ..." with the headings; empty where none.
[[nodiscard]] std::string leftOutSentence(const std::vector<compute::AbsentInput>& inputs);

// One line for each: how to enter it.
[[nodiscard]] std::string howToEnter(const std::vector<compute::AbsentInput>& inputs);

// `text` in lines of at most `width`, each ended by a line break.
[[nodiscard]] std::string wrappedLines(std::string_view text, std::size_t width,
                                       std::string_view indent = "");

}  // namespace ledgerboard::report
