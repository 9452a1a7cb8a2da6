// Has every type a name of its own? Two types of one name in one namespace link without a word and
// then share a destructor: nothing a compiler sees, and a crash.
#include <regex>
#include <string>

#include "tests/tidy/rules.h"

namespace ledgerboard::tidy {

namespace {

// Each test program is linked by itself, so their names may be used again.
bool isChecked(const SourceText& source) {
    return isCpp(source) && !isUnder(source.path, "tests") && !isUnder(source.path, "demo-data");
}

}  // namespace

void NamesTaken::read(const SourceText& source, std::vector<Finding>& out) {
    static const std::regex kOpens("^namespace ([a-z_:]+) \\{");
    static const std::regex kType(
        "^(?:struct|class|enum class) ([A-Za-z0-9]+)(?: final)?(?: : .*)? \\{");
    if (!isChecked(source)) {
        return;
    }
    std::string within;
    bool isOpen = true;  // false within an unnamed namespace, whose names nobody else sees
    for (std::size_t k = 0; k < source.lines.size(); ++k) {
        const std::string& line = source.lines[k];
        std::smatch found;
        if (line == "namespace {") {
            isOpen = false;
        } else if (line == "}  // namespace") {
            isOpen = true;
        } else if (std::regex_search(line, found, kOpens)) {
            within = found[1];
        } else if (isOpen && std::regex_match(line, found, kType)) {
            const std::string name = within + "::" + found[1].str();
            const auto [first, isNew] = places_.emplace(name, source.path);
            if (!isNew) {
                out.push_back({"one-name", source.path, k + 1,
                               name + " is a type of " + first->second +
                                   " too: give one of them another name"});
            }
        }
    }
}

}  // namespace ledgerboard::tidy
