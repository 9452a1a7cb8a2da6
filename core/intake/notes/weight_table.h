// A table of clues that have one weight each: openings.tsv, places.tsv.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/intake/notes/clue_table.h"

namespace ledgerboard::intake {

// A row is a clue, a tab, its weight in thousandths. A row may also be a setting of the table.
class WeightTable {
  public:
    // `settings`: what the table may say of itself, each with what holds where it doesn't.
    explicit WeightTable(std::string_view name, std::map<std::string, int, std::less<>> settings);

    // Thousandths: the weights of all clues that have one, each clue once, added up.
    [[nodiscard]] int sumOf(const std::vector<std::uint64_t>& clues) const;

    [[nodiscard]] int setting(std::string_view name) const { return settings_.find(name)->second; }

    // Rows that cannot be used, each with its line.
    [[nodiscard]] const std::vector<std::string>& faults() const { return faults_; }

  private:
    bool take(std::string_view row);

    ClueTable<std::int16_t> rows_;
    std::map<std::string, int, std::less<>> settings_;
    std::vector<std::string> faults_;
};

}  // namespace ledgerboard::intake
