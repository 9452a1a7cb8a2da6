// A small job made by hand, for what is computed for the page.
#pragma once

#include "core/model/rows.h"

namespace ledgerboard::report::test {

// Two rooms, three items, a baseline of Fri 1 May 2026, an invoice, a receipt and an unsigned
// change. Worked out by hand, as of Fri 15 May:
//   cabinets  budget 4,000, done, billed 4,300: forecast 4,300, 300 over
//   tile      budget 2,000, half done, billed 900; CPI 1,000 / 900, so to go 1,000 x 0.9 = 900:
//             forecast 1,800, 200 under; planned 5 of its 10 working days: 1,000
//   fan       budget 300, without dates, days or marks: forecast 300
//   every hazard of the work is acknowledged
//   in all    budget 6,300, earned 5,000, planned 5,000, billed 5,200, paid 900, forecast 6,400
[[nodiscard]] model::JobRows smallJob();

[[nodiscard]] model::Date may(int dayOfMonth);

}  // namespace ledgerboard::report::test
