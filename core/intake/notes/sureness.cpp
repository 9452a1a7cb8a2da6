#include "core/intake/notes/sureness.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <string_view>
#include <unordered_map>

#include "core/intake/tables/embedded.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

std::uint64_t keyOf(const Sign& sign, Treatment treatment) {
    return (static_cast<std::uint64_t>(sign.kind) << 48) |
           (static_cast<std::uint64_t>(treatment) << 32) | sign.value;
}

// The weights of sureness.tsv, in thousandths.
class Weights {
  public:
    Weights() {
        std::string_view text = embeddedTable("sureness");
        for (int line = 1; !text.empty(); ++line) {
            const std::size_t end = std::min(text.find('\n'), text.size());
            const std::string_view row = text.substr(0, end);
            text.remove_prefix(std::min(end + 1, text.size()));
            if (!row.empty() && row.front() != '#' && !take(row)) {
                faults_.push_back("sureness.tsv:" + std::to_string(line) +
                                  ": not a sign, its value, a treatment or any, and a weight");
            }
        }
    }

    // Treatment::Unset stands for any.
    [[nodiscard]] int of(const Sign& sign, Treatment treatment) const {
        const auto at = byKey_.find(keyOf(sign, treatment));
        return at == byKey_.end() ? 0 : at->second;
    }

    [[nodiscard]] int least() const { return least_; }

    [[nodiscard]] const std::vector<std::string>& faults() const { return faults_; }

  private:
    bool take(std::string_view row) {
        std::array<std::string_view, 4> cells;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const std::size_t end = std::min(row.find('\t'), row.size());
            cells[i] = row.substr(0, end);
            row.remove_prefix(std::min(end + 1, row.size()));
        }
        int weight = 0;
        const char* last = cells[3].data() + cells[3].size();
        const auto [end, error] = std::from_chars(cells[3].data(), last, weight);
        if (error != std::errc() || end != last || !row.empty()) {
            return false;
        }
        if (cells[0] == "least") {
            least_ = weight;
            return true;
        }
        const auto words = model::wordsOf<Treatment>();
        const auto word = std::find(words.begin(), words.end(), cells[2]);
        if (!isSignKind(cells[0]) || (cells[2] != "any" && word == words.end())) {
            return false;
        }
        const Treatment treatment =
            cells[2] == "any" ? Treatment::Unset : static_cast<Treatment>(word - words.begin());
        for (const Sign& sign : signsNamed(cells[0], cells[1])) {
            byKey_[keyOf(sign, treatment)] = weight;
        }
        return true;
    }

    std::unordered_map<std::uint64_t, int> byKey_;
    std::vector<std::string> faults_;
    int least_ = 0;
};

const Weights& weights() {
    static const Weights kWeights;
    return kWeights;
}

}  // namespace

int sureness(std::span<const Sign> signs, Treatment treatment) {
    int sum = 0;  // of weights in thousandths
    for (const Sign& sign : signs) {
        sum += weights().of(sign, Treatment::Unset) + weights().of(sign, treatment);
    }
    const double chance = 1.0 / (1.0 + std::exp(-sum / 1000.0));
    return std::clamp(static_cast<int>(std::lround(chance * 100.0)), 1, 99);
}

int leastSure() {
    return weights().least();
}

const std::vector<std::string>& surenessFaults() {
    return weights().faults();
}

}  // namespace ledgerboard::intake
