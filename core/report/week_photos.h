// Which pictures tell most about the week?
//
// Source: project decision. The page has room for three; the owner wants to see what is new, rather
// finished than begun, and in as many rooms as there are pictures.
#pragma once

#include <vector>

#include "core/model/date.h"
#include "core/model/rows.h"

namespace ledgerboard::report {

// Days, today among them, whose pictures are new on a weekly page.
inline constexpr int kNewDays = 7;

// The site photos of `rows` that have a picture and were taken by the end of `today` (its UTC day),
// best first: those of the last kNewDays before older ones; among these after, then during, then
// before the work; then the later one, then the one entered later. Of each space (of none is a
// space too) the best comes before the second best of any. A photo without a purpose is a site
// photo; one without a time is older than any. Pictures that cannot be shown are the caller's to
// skip: that is why all of them are given.
[[nodiscard]] std::vector<const model::Photo*> weekPhotos(const model::JobRows& rows,
                                                          model::Date today);

}  // namespace ledgerboard::report
