#include "core/intake/files/nearest.h"

#include <algorithm>

#include "core/model/catalog.h"

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kLongestCompared = 80;  // bytes; keeps one comparison cheap on any input

}  // namespace

std::size_t editDistance(std::string_view a, std::string_view b) {
    a = a.substr(0, kLongestCompared);
    b = b.substr(0, kLongestCompared);
    std::vector<std::size_t> beforeLast(b.size() + 1);
    std::vector<std::size_t> last(b.size() + 1);
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t k = 0; k <= b.size(); ++k) {
        last[k] = k;
    }
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = i;
        for (std::size_t k = 1; k <= b.size(); ++k) {
            const std::size_t change = last[k - 1] + (a[i - 1] == b[k - 1] ? 0 : 1);
            row[k] = std::min({last[k] + 1, row[k - 1] + 1, change});
            if (i > 1 && k > 1 && a[i - 1] == b[k - 2] && a[i - 2] == b[k - 1]) {
                row[k] = std::min(row[k], beforeLast[k - 2] + 1);
            }
        }
        std::swap(beforeLast, last);
        std::swap(last, row);
    }
    return last[b.size()];
}

std::string nearestName(std::string_view text, const std::vector<std::string>& names) {
    const std::string wanted = model::folded(text);
    if (wanted.empty()) {
        return "";
    }
    const std::string* best = nullptr;
    std::size_t bestDistance = std::max<std::size_t>(1, wanted.size() / 3) + 1;
    for (const auto& name : names) {
        const std::size_t distance = editDistance(wanted, model::folded(name));
        if (distance < bestDistance) {
            best = &name;
            bestDistance = distance;
        }
    }
    if (best == nullptr && wanted.size() >= 3) {
        for (const auto& name : names) {
            const std::string other = model::folded(name);
            if (other.find(wanted) != std::string::npos ||
                (other.size() >= 3 && wanted.find(other) != std::string::npos)) {
                return name;
            }
        }
    }
    return best != nullptr ? *best : "";
}

}  // namespace ledgerboard::intake
