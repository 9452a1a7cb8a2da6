#include "tests/tidy/source_text.h"

namespace ledgerboard::tidy {

namespace {

// Takes comments out of one line. `inBlock` carries over from line to line. Strings are kept, and a
// "//" inside one begins no comment.
std::string withoutComments(std::string_view line, bool& inBlock) {
    std::string out;
    bool inString = false;
    for (std::size_t k = 0; k < line.size(); ++k) {
        const std::string_view two = line.substr(k, 2);
        if (inBlock) {
            if (two == "*/") {
                inBlock = false;
                ++k;
            }
        } else if (!inString && two == "//") {
            break;
        } else if (!inString && two == "/*") {
            inBlock = true;
            ++k;
        } else {
            if (line[k] == '\\' && inString) {
                out += line[k++];
            } else if (line[k] == '"') {
                inString = !inString;
            }
            out += k < line.size() ? line[k] : ' ';
        }
    }
    return out;
}

}  // namespace

SourceText sourceText(std::string path, std::string_view contents) {
    SourceText source;
    source.path = std::move(path);
    bool inBlock = false;
    while (!contents.empty()) {
        const auto end = contents.find('\n');
        const std::string_view line = contents.substr(0, end);
        source.lines.emplace_back(line);
        source.code.push_back(withoutComments(line, inBlock));
        contents = end == std::string_view::npos ? std::string_view{} : contents.substr(end + 1);
    }
    return source;
}

bool isUnder(std::string_view path, std::string_view folder) {
    return path.size() > folder.size() && path.substr(0, folder.size()) == folder &&
           path[folder.size()] == '/';
}

bool endsWith(std::string_view text, std::string_view ending) {
    return text.size() >= ending.size() && text.substr(text.size() - ending.size()) == ending;
}

bool isCpp(const SourceText& source) {
    return endsWith(source.path, ".h") || endsWith(source.path, ".cpp");
}

std::string_view includedBy(std::string_view line, bool& quoted) {
    const auto hash = line.find_first_not_of(" \t");
    if (hash == std::string_view::npos || line[hash] != '#') {
        return {};
    }
    const auto word = line.find_first_not_of(" \t", hash + 1);
    if (word == std::string_view::npos || line.substr(word, 7) != "include") {
        return {};
    }
    const auto open = line.find_first_of("\"<", word);
    if (open == std::string_view::npos) {
        return {};
    }
    quoted = line[open] == '"';
    const auto close = line.find(quoted ? '"' : '>', open + 1);
    return close == std::string_view::npos ? std::string_view{}
                                           : line.substr(open + 1, close - open - 1);
}

}  // namespace ledgerboard::tidy
