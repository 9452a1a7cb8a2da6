// How does a verb print names with sentences beside them, within the width of the terminal?
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "desktop/cli/session.h"

namespace ledgerboard::cli {

// `lead` at the left and `text` wrapped beside it from column `indent` on; a lead too long for that
// stands on a line of its own. Each line ends in a line break; empty text: the lead alone.
[[nodiscard]] std::string beside(Session& session, std::string_view lead, std::size_t indent,
                                 std::string_view text);

// `text` wrapped, each line behind `indent` blanks.
[[nodiscard]] std::string paragraph(Session& session, std::string_view text,
                                    std::size_t indent = 0);

}  // namespace ledgerboard::cli
