// What does a source file look like to the rules? Its path from the root and its lines, as they
// stand and with comments taken out.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace ledgerboard::tidy {

struct SourceText {
    std::string path;                // from the root, with forward slashes
    std::vector<std::string> lines;  // as they stand
    std::vector<std::string> code;   // the same lines without // and /* */ comments
};

// Something that breaks a rule. `line` counts from 1; 0 where it is the file as a whole.
struct Finding {
    std::string rule;
    std::string path;
    std::size_t line;
    std::string says;
};

[[nodiscard]] SourceText sourceText(std::string path, std::string_view contents);

// True where the path lies in the folder.
[[nodiscard]] bool isUnder(std::string_view path, std::string_view folder);

[[nodiscard]] bool endsWith(std::string_view text, std::string_view ending);

// A header or source in C++.
[[nodiscard]] bool isCpp(const SourceText& source);

// What an #include line names, between its quotes or brackets; empty where the line is none.
// `quoted` tells which it was.
[[nodiscard]] std::string_view includedBy(std::string_view line, bool& quoted);

}  // namespace ledgerboard::tidy
