// What does an owner mean by a word of their own?
#pragma once

#include <string>

#include "core/model/words.h"

namespace ledgerboard::intake {

struct OwnWord {
    std::string phrase;  // as said: "the credenza"; case and endings don't matter
    // One of these is what it means:
    std::string object{};
    std::string space{};
    model::Treatment treatment = model::Treatment::Unset;
    bool nothing = false;  // these words are no object

    bool operator==(const OwnWord&) const = default;
};

// "“credenza” means sideboard", for whoever is told which words were used.
[[nodiscard]] std::string saidOf(const OwnWord& word);

}  // namespace ledgerboard::intake
