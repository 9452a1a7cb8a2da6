// Which rules hold over the sources? Two families, each a function from one file to what it breaks,
// and one that holds over all files together.
#pragma once

#include <map>
#include <string>
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

// Names of types over all files read (names.cpp): "one-name".
class NamesTaken {
  public:
    // Adds what `source` breaks, given the files read before it.
    void read(const SourceText& source, std::vector<Finding>& out);

  private:
    std::map<std::string, std::string> places_;  // a type's whole name: the file it stands in
};

// Runs every rule over its bad example: bad/RULE/PATH is inspected as if it stood at PATH, and must
// break RULE and no other. Prints what does not hold. Returns the number of rules without teeth.
[[nodiscard]] int selfTest(const std::string& badFolder);

// The whole of a file; empty where it cannot be read.
[[nodiscard]] std::string contentsOf(const std::string& path);

}  // namespace ledgerboard::tidy
