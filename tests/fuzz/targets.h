// Which readers take bytes from outside? Each with good examples to begin from.
//
// A reader may say no to anything; it may not crash, hang, or say yes to what it then writes
// differently. What breaks a promise ends the program (model::require).
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace ledgerboard::fuzz {

struct Target {
    std::string name;
    void (*read)(std::string_view bytes);
    std::vector<std::string> examples;
    int share = 1;  // of the tries: slow readers get fewer
};

[[nodiscard]] std::vector<Target> targets();

}  // namespace ledgerboard::fuzz
