// How is a network of items read from JSON, for critical-path and whatever else plans over one?
//
// Units: days come in as numbers and are kept in millionths of a day, finer than anyone counts, so
// that days with decimals (an expected value of 4.1667) are told apart.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "core/compute/network.h"

#include "desktop/cli/work/fields.h"

namespace ledgerboard::work {

inline constexpr double kUnitsPerDay = 1e6;

// The keys of an item that readItems reads, for the help text.
inline constexpr std::string_view kItemKeys =
    "  items   a list of {\"id\", \"days\", \"after\"}: id is a text; days 0 is a milestone;\n"
    "          after (may be left out) lists what it waits for, each an id, or\n"
    "          {\"id\", \"lag\", \"kind\"} with kind FS (where not said), SS, FF or SF and\n"
    "          the lag in days (0 where not said; less than 0 overlaps)\n";

struct NamedNetwork {
    std::vector<std::string> ids;
    std::vector<compute::Activity> activities;  // as the ids
    std::vector<compute::Precedence> precedences;
};

// Reads the list "items" of `fields`; `more`, where given, reads further keys of item k, and "days"
// too where `readsDays` (the activities then have none).
// Errors (WrongUse), each naming item and key: what Fields refuses; an id given twice, or that no
// item has; a kind that is none; a loop, printed as "A > B > A".
[[nodiscard]] model::Result<NamedNetwork> readItems(
    Fields& fields, const std::function<void(Fields& item, std::size_t k)>& more = {},
    bool readsDays = false);

// Days as they are printed.
[[nodiscard]] nlohmann::json printedDays(std::int64_t units);

}  // namespace ledgerboard::work
