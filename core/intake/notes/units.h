// Is the house parted into flats, each with rooms of its own? Has it more than one bath?
#pragma once

#include <string_view>

namespace ledgerboard::intake {

struct Units {
    bool lettered = false;  // more than one goes by a letter or figure: "Unit A … unit B"
    bool stacked = false;   // spoken of as a duplex or the like: a storey may be a flat
    bool baths = false;     // there are two and more, half baths apart
    bool halfBath = false;  // there is a half bath
    bool ownBath = false;  // one goes by the name of the primary bedroom: "primary bath", "ensuite"
};

// Looks through the whole notes once.
[[nodiscard]] Units unitsIn(std::string_view notes);

// Whether the word, in small letters, is a flat's name in short: "u1".
[[nodiscard]] bool isShortUnit(std::string_view word);

// Whether the word means a flat: "unit", "suite".
[[nodiscard]] bool isUnitWord(std::string_view word);

}  // namespace ledgerboard::intake
