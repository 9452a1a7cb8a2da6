// What do the reader's tables hold? Their text, put into the program by the build.
#pragma once

#include <string_view>

namespace ledgerboard::intake {

// The text of the table `name` ("objects"), as in core/intake/tables/NAME.tsv; empty when there is
// no such table.
[[nodiscard]] std::string_view embeddedTable(std::string_view name);

}  // namespace ledgerboard::intake
