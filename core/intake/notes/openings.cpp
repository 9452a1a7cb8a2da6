#include "core/intake/notes/openings.h"

#include <cmath>

#include "core/intake/notes/weight_table.h"

namespace ledgerboard::intake {

namespace {

const WeightTable& weights() {
    static const WeightTable kWeights("openings", {{"least", 50}, {"least of rules", 50}});
    return kWeights;
}

}  // namespace

int chanceOpen(const std::vector<std::uint64_t>& clues) {
    const int score = weights().sumOf(clues);
    return static_cast<int>(std::lround(100.0 / (1.0 + std::exp(-score / 1000.0))));
}

int leastOpen(bool rules) {
    return weights().setting(rules ? "least of rules" : "least");
}

const std::vector<std::string>& openingFaults() {
    return weights().faults();
}

}  // namespace ledgerboard::intake
