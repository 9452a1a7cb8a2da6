#include "core/intake/notes/openings.h"

#include <charconv>
#include <cmath>
#include <cstdint>
#include <string_view>

#include "core/intake/notes/clue_table.h"
#include "core/intake/notes/clues.h"
#include "core/intake/tables/embedded.h"

namespace ledgerboard::intake {

namespace {

// openings.tsv: a clue, a tab, its weight in thousandths.
class Weights {
  public:
    Weights() {
        std::string_view text = embeddedTable("openings");
        for (int line = 1; !text.empty(); ++line) {
            const std::size_t end = std::min(text.find('\n'), text.size());
            const std::string_view row = text.substr(0, end);
            text.remove_prefix(std::min(end + 1, text.size()));
            if (!row.empty() && row.front() != '#' && !take(row)) {
                faults_.push_back("openings.tsv:" + std::to_string(line) +
                                  ": not a clue, a tab and a weight from -30000 to 30000");
            }
        }
    }

    [[nodiscard]] const ClueTable<std::int16_t>& rows() const { return rows_; }

    [[nodiscard]] int least(bool rules) const { return rules ? leastOfRules_ : least_; }

    [[nodiscard]] const std::vector<std::string>& faults() const { return faults_; }

  private:
    bool take(std::string_view row) {
        const std::size_t tab = row.find('\t');
        if (tab == row.npos) {
            return false;
        }
        const std::string_view clue = row.substr(0, tab);
        int weight = 0;
        const char* last = row.data() + row.size();
        const auto [stop, error] = std::from_chars(row.data() + tab + 1, last, weight);
        if (error != std::errc() || stop != last || weight < -30'000 || weight > 30'000) {
            return false;
        }
        if (clue == "least" || clue == "least of rules") {
            (clue == "least" ? least_ : leastOfRules_) = weight;
            return true;
        }
        return rows_.add(clueKey(clue), static_cast<std::int16_t>(weight));
    }

    ClueTable<std::int16_t> rows_;
    std::vector<std::string> faults_;
    int least_ = 50;  // percent
    int leastOfRules_ = 50;
};

const Weights& weights() {
    static const Weights kWeights;
    return kWeights;
}

}  // namespace

int chanceOpen(const std::vector<std::uint64_t>& clues) {
    int score = 0;  // thousandths
    for (const std::int16_t* weight : weights().rows().of(clues)) {
        score += *weight;
    }
    return static_cast<int>(std::lround(100.0 / (1.0 + std::exp(-score / 1000.0))));
}

int leastOpen(bool rules) {
    return weights().least(rules);
}

const std::vector<std::string>& openingFaults() {
    return weights().faults();
}

}  // namespace ledgerboard::intake
