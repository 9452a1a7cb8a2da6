// Is a word one of a few?
#pragma once

#include <algorithm>
#include <initializer_list>
#include <string_view>

namespace ledgerboard::intake {

// Mostly it is none of them, and its length and its first letter tell that.
template <class Words>
[[nodiscard]] bool isOneOf(std::string_view word, const Words& words) {
    return std::any_of(std::begin(words), std::end(words), [&](std::string_view one) {
        return one.size() == word.size() && (one.empty() || one.front() == word.front()) &&
               one == word;
    });
}

[[nodiscard]] inline bool isOneOf(std::string_view word,
                                  std::initializer_list<std::string_view> words) {
    return isOneOf<std::initializer_list<std::string_view>>(word, words);
}

}  // namespace ledgerboard::intake
