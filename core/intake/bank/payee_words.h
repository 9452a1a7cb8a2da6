// Do two texts name the same payee? What a bank writes ("POS PURCHASE 0442 QUINCE TIMBER 14 MILL
// RD") beside what a person calls it ("Quince Timber").
//
// Compared by words that name somebody: letters alone, folded to lower case, without numbers and
// without the words that banks put before a name or that half of all firms bear.
// Source: project decision, common practice.
// Threads: any number may ask.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace ledgerboard::intake {

// The words of `text` that name somebody, in its order, each once. Empty: it names nobody.
[[nodiscard]] std::vector<std::string> payeeWords(std::string_view text);

enum class SamePayee {
    Unknown,  // one of them names nobody
    No,
    Yes,  // every naming word of `known` stands in `written`, whole or cut off by the bank
};

[[nodiscard]] SamePayee samePayee(std::string_view known, std::string_view written);

}  // namespace ledgerboard::intake
