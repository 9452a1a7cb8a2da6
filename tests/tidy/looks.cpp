// How does a file look? Lines that fit, no tabs, a header that says what it answers, nothing left
// over, and no file longer than one sitting.
#include <string>

#include "tests/tidy/rules.h"

namespace ledgerboard::tidy {

namespace {

constexpr std::size_t kLongestLine = 100;  // columns, of the house style
constexpr std::size_t kLongestFile = 700;  // lines; the catalog, one line a field, is excepted

// Columns that a line takes: bytes that begin a character in UTF-8.
std::size_t columnsOf(std::string_view line) {
    std::size_t columns = 0;
    for (const char c : line) {
        columns += (static_cast<unsigned char>(c) & 0xC0) != 0x80 ? 1 : 0;
    }
    return columns;
}

// The marks that people leave on unfinished work, written here so that this file has none itself.
bool hasLeftOver(const std::string& line) {
    for (const auto* mark : {"TO"
                             "DO",
                             "FIX"
                             "ME",
                             "XX"
                             "X"}) {
        if (line.find(mark) != std::string::npos) {
            return true;
        }
    }
    return false;
}

void checkLines(const SourceText& source, std::vector<Finding>& out) {
    for (std::size_t k = 0; k < source.lines.size(); ++k) {
        const auto& line = source.lines[k];
        if (isCpp(source) && columnsOf(line) > kLongestLine) {
            out.push_back({"long-line", source.path, k + 1, "more than 100 columns"});
        }
        if (line.find('\t') != std::string::npos) {
            out.push_back({"tab", source.path, k + 1, "a tab: indent with spaces"});
        }
        if (hasLeftOver(line)) {
            out.push_back({"left-over", source.path, k + 1, "finish it, or say so in the docs"});
        }
    }
}

bool isBlank(std::string_view line) {
    return line.find_first_not_of(" \t\r") == std::string_view::npos;
}

bool isComment(std::string_view line) {
    return line.substr(0, 2) == "//";
}

// Headers and test files open with a comment; a header goes on with #pragma once.
void checkOpening(const SourceText& source, std::vector<Finding>& out) {
    const bool header = endsWith(source.path, ".h");
    const bool test = endsWith(source.path, "_test.cpp");
    if (!header && !test) {
        return;
    }
    if (source.lines.empty() || !isComment(source.lines[0])) {
        out.push_back({"opening-comment", source.path, 1,
                       header ? "open with the question this header answers"
                              : "open with what this test protects and how"});
    }
    if (!header) {
        return;
    }
    std::size_t k = 0;
    while (k < source.lines.size() && (isComment(source.lines[k]) || isBlank(source.lines[k]))) {
        ++k;
    }
    if (k == source.lines.size() || source.lines[k] != "#pragma once") {
        out.push_back({"pragma-once", source.path, k + 1,
                       "#pragma once must be the first line after the opening comment"});
    }
}

}  // namespace

std::vector<Finding> brokenLooks(const SourceText& source) {
    std::vector<Finding> out;
    checkLines(source, out);
    checkOpening(source, out);
    if (isCpp(source) && source.lines.size() > kLongestFile) {
        out.push_back({"long-file", source.path, 0,
                       std::to_string(source.lines.size()) + " lines: more than one sitting"});
    }
    return out;
}

}  // namespace ledgerboard::tidy
