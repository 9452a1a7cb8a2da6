// How is a programmer's mistake caught? By a check that stays on in every build.
//
// Never used on input: whatever a person or a file can cause is a Result.
#pragma once

#include <cstdio>
#include <cstdlib>

namespace ledgerboard::model {

// Ends the program with `what` when `holds` is false.
inline void require(bool holds, const char* what) {
    if (!holds) {
        std::fprintf(stderr, "ledgerboard: broken requirement: %s\n", what);
        std::abort();
    }
}

}  // namespace ledgerboard::model
