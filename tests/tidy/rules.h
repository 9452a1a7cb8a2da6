// Which rules hold over the sources? Two families, each a function from one file to what it breaks.
#pragma once

#include <string_view>
#include <vector>

#include "tests/tidy/source_text.h"

namespace ledgerboard::tidy {

// Who may lean on whom (arrows.cpp): "arrow", "include-from-root", "link-arrow", "sqlite",
// "httplib", "qt", "clock-and-chance".
[[nodiscard]] std::vector<Finding> brokenArrows(const SourceText& source);

// How a file looks (looks.cpp): "long-line", "tab", "pragma-once", "opening-comment", "left-over",
// "long-file".
[[nodiscard]] std::vector<Finding> brokenLooks(const SourceText& source);

// Runs every rule over its bad example: bad/RULE/PATH is inspected as if it stood at PATH, and must
// break RULE and no other. Prints what does not hold. Returns the number of rules without teeth.
[[nodiscard]] int selfTest(const std::string& badFolder);

// The whole of a file; empty where it cannot be read.
[[nodiscard]] std::string contentsOf(const std::string& path);

}  // namespace ledgerboard::tidy
