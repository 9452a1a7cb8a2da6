#include "core/intake/notes/weight_table.h"

#include <charconv>

#include "core/intake/notes/clues.h"
#include "core/intake/tables/embedded.h"

namespace ledgerboard::intake {

WeightTable::WeightTable(std::string_view name, std::map<std::string, int, std::less<>> settings)
    : settings_(std::move(settings)) {
    std::string_view text = embeddedTable(name);
    for (int line = 1; !text.empty(); ++line) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        const std::string_view row = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        if (!row.empty() && row.front() != '#' && !take(row)) {
            faults_.push_back(std::string(name) + ".tsv:" + std::to_string(line) +
                              ": not a clue, a tab and a weight from -30000 to 30000");
        }
    }
}

bool WeightTable::take(std::string_view row) {
    const std::size_t tab = row.find('\t');
    if (tab == std::string_view::npos) {
        return false;
    }
    const std::string_view clue = row.substr(0, tab);
    int weight = 0;
    const char* last = row.data() + row.size();
    const auto [stop, error] = std::from_chars(row.data() + tab + 1, last, weight);
    if (error != std::errc() || stop != last || weight < -30'000 || weight > 30'000) {
        return false;
    }
    if (const auto setting = settings_.find(clue); setting != settings_.end()) {
        setting->second = weight;
        return true;
    }
    return rows_.add(clueKey(clue), static_cast<std::int16_t>(weight));
}

int WeightTable::sumOf(const std::vector<std::uint64_t>& clues) const {
    int sum = 0;
    rows_.each(clues, [&](std::int16_t weight) { sum += weight; });
    return sum;
}

}  // namespace ledgerboard::intake
