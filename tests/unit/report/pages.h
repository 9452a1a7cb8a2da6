// Pages made by hand for the tests of the renderers: a full week, and the edges.
#pragma once

#include "core/report/week_page.h"

namespace ledgerboard::report::test {

// A job in its sixth week: every part has something in it.
[[nodiscard]] WeekPage fullPage();

// A job with nothing in it.
[[nodiscard]] WeekPage emptyPage();

// One item, no baseline, no dates, no price.
[[nodiscard]] WeekPage oneItemPage();

// Names with markup, quotes, accents and control characters, far too long, and sums as large as
// money goes; a loss.
[[nodiscard]] WeekPage hostilePage();

}  // namespace ledgerboard::report::test
