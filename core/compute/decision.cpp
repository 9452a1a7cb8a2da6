#include "core/compute/decision.h"

#include <algorithm>

#include "core/compute/scope_lines.h"

namespace ledgerboard::compute {

using model::Money;
using model::Quantity;

std::optional<model::Item> itemMadeBy(const model::JobRows& rows, std::size_t alternate,
                                      std::size_t option) {
    const model::Option& chosen = rows.options[option];
    const bool hasItems =
        std::any_of(rows.items.begin(), rows.items.end(),
                    [&](const model::Item& item) { return item.option == chosen.id; });
    const bool hasCost = chosen.cost && *chosen.cost > Money{};
    const bool hasDays = chosen.days && *chosen.days > Quantity{};
    if (hasItems || (!hasCost && !hasDays)) {
        return std::nullopt;
    }
    model::Item item;
    item.job = rows.job.id;
    item.space = rows.alternates[alternate].space;
    item.object = chosen.name;
    item.lumpSum = chosen.cost;
    item.daysLikely = chosen.days;
    item.option = chosen.id;
    item.source = rows.alternates[alternate].source;
    return item;
}

Difference differenceOf(const model::JobRows& rows, std::size_t alternate) {
    const auto isOfIt = [&](const ScopeLine& line) {
        return !line.option.isNil() &&
               std::any_of(rows.options.begin(), rows.options.end(),
                           [&](const model::Option& option) {
                               return option.id == line.option &&
                                      option.alternate == rows.alternates[alternate].id;
                           });
    };
    const ScopeLines scope = scopeLinesOf(rows);
    Difference out;
    if (!scope.baseline) {
        return out;
    }
    out.baselineOn = rows.baselines[*scope.baseline].frozenOn;
    std::vector<model::Id<model::Kind::Item>> givenBack;
    for (const ScopeLine& line : scope.lines) {
        if (!isOfIt(line)) {
            continue;
        }
        out.amount -= line.budgetNow();
        if (line.counting == Counting::Counts) {
            out.amount += line.pricing.line;
            if (!line.item.isNil()) {
                out.items.push_back(line.item);
            }
        } else if (line.budgetNow() != Money{}) {
            givenBack.push_back(line.item);
        }
    }
    if (out.items.empty()) {
        out.items = std::move(givenBack);
    }
    return out;
}

}  // namespace ledgerboard::compute
