// What stands before the text of a line: when it was said, and who speaks?
#pragma once

#include <set>
#include <string_view>
#include <vector>

namespace ledgerboard::intake {

// Without the white space around it.
[[nodiscard]] std::string_view trimmed(std::string_view text);

// The length of a clock reading at the start: "0:45", "00:12:30", "00:00:12,345". 0 if none.
[[nodiscard]] std::size_t clockLength(std::string_view text);

// Takes "[00:12]", "(0:45)", "00:12 -", "[4/11/26, 9:14 AM]" off the front. True when there was
// one.
bool takeStamp(std::string_view& text);

// The name before a colon or a long dash at the start of a line, if it can be a speaker's: "DOT:",
// "Speaker 2:", "INES — "; and where what is said begins. Both empty where there is none.
struct LeadingName {
    std::string_view name;
    std::size_t length = 0;
};

[[nodiscard]] LeadingName leadingName(std::string_view text);

// The names that stand before more than one of the lines and mean nothing to the tables.
[[nodiscard]] std::set<std::string_view> speakersOf(const std::vector<std::string_view>& lines);

}  // namespace ledgerboard::intake
