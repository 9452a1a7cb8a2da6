// What does a meeting with the peer come to, in words and as JSON?
#pragma once

#include <string>

#include <nlohmann/json_fwd.hpp>

#include "sync/link/meet.h"

namespace ledgerboard::cli {

// Sentences for a person, of a meeting that ended in Met. `clashes` are fields with two values now.
[[nodiscard]] std::string meetingText(const sync::MeetReport& report, const sync::Place& place,
                                      std::size_t clashes);

// Why there was none, or only half of one, and what waits; never for Met.
[[nodiscard]] std::string noMeetingText(const sync::MeetReport& report);

[[nodiscard]] nlohmann::json meetingJson(const sync::MeetReport& report, const sync::Place& place);

}  // namespace ledgerboard::cli
