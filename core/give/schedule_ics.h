// How does a job's schedule get into the calendar people already use?
//
// As iCalendar (RFC 5545; NAME of RFC 7986), written by libical. An entry's UID is the record and
// what of it the day is about, so a second export updates the entries of the first instead of
// doubling them; DTSTAMP and LAST-MODIFIED say which of two exports is the newer. Whole days that
// block nobody's time (TRANSP:TRANSPARENT).
// Threads: any number may ask.
#pragma once

#include <string>

#include "core/compute/schedule_days.h"
#include "core/model/date.h"

namespace ledgerboard::give {

// `name` is what the calendar is called ("14 Quince Row, Tile crew"), `place` where it all is.
// Lines end in CR LF, as the standard has it. Errors: CannotBeMet where memory ran out.
[[nodiscard]] model::Result<std::string> scheduleIcs(const compute::ScheduleDays& schedule,
                                                     const std::string& name,
                                                     const std::string& place, model::Instant now);

}  // namespace ledgerboard::give
