// How do figures stand in the places of a sentence (core/model/saying.h)? As a page writes them.
#pragma once

#include "core/model/saying.h"
#include "core/report/money_text.h"

namespace ledgerboard::report {

// wholeText and signedText.
[[nodiscard]] inline model::Place wholePlace(model::Money money, Script script) {
    return {model::Place::Is::Money, wholeText(money, script), money.minor(), {}};
}

[[nodiscard]] inline model::Place signedPlace(model::Money money, Script script) {
    return {model::Place::Is::Change, signedText(money, script), money.minor(), {}};
}

// "1,200": a count as countText writes it. Requires: count >= 0.
[[nodiscard]] inline model::Place countPlace(std::int64_t count) {
    std::string text = countText(count, "", "");
    text.pop_back();
    return {model::Place::Is::Count, std::move(text), count, {}};
}

}  // namespace ledgerboard::report
