// How does a job's schedule get into the calendar people already use?
//
// As iCalendar (RFC 5545), written by libical. An entry's UID is the record and what of it the day
// is about, so a second export updates the entries of the first instead of doubling them; DTSTAMP
// and LAST-MODIFIED say which of two exports is the newer. Whole days that block nobody's time
// (TRANSP:TRANSPARENT). The calendar itself has what RFC 7986 gives it: NAME (5.1), DESCRIPTION
// (5.2), UID (5.3), the same for the same job and crew each time, LAST-MODIFIED (5.4), and
// REFRESH-INTERVAL (5.7) of a day, for programs that fetch it from where it is put.
// Threads: any number may ask.
#pragma once

#include <string>

#include "core/compute/schedule_days.h"
#include "core/model/date.h"

namespace ledgerboard::give {

struct CalendarName {
    std::string id;     // of the job, with the crew's where it is one crew's
    std::string name;   // "14 Quince Row, Tile crew"
    std::string place;  // where it all is
};

// Lines end in CR LF, as the standard has it. Errors: CannotBeMet where memory ran out.
[[nodiscard]] model::Result<std::string> scheduleIcs(const compute::ScheduleDays& schedule,
                                                     const CalendarName& called,
                                                     model::Instant now);

}  // namespace ledgerboard::give
