#include "core/compute/scope_lines.h"

#include <algorithm>
#include <cstdint>
#include <numeric>
#include <tuple>
#include <unordered_map>
#include <unordered_set>
#include <utility>

#include "core/compute/positions.h"

namespace ledgerboard::compute {

namespace {

using model::Money;
using OptionId = model::Id<model::Kind::Option>;

// Puts the lines together. Lives for one call of scopeLinesOf.
class Builder {
  public:
    explicit Builder(const model::JobRows& rows)
        : rows_(rows),
          items_(rows.items),
          spaces_(rows.spaces),
          crews_(rows.crews),
          contracts_(rows.contracts),
          alternates_(rows.alternates),
          options_(rows.options),
          book_(rows.prices) {}

    ScopeLines build() {
        scope_.baseline = latestBaseline(rows_);
        addItems();
        addOptions();
        addContracts();
        ScopeLine whole;
        whole.kind = LineKind::WholeJob;
        whole.name = "Whole-job spend";
        scope_.lines.push_back(whole);
        for (std::size_t& line : scope_.contractLines) {
            line = std::min(line, scope_.lines.size() - 1);
        }
        findHeirs();
        if (scope_.baseline) {
            addFrozen();
        } else {
            for (ScopeLine& line : scope_.lines) {
                line.baseline = line.counting == Counting::Counts ? line.pricing.line : Money{};
            }
        }
        for (const ScopeLine& line : scope_.lines) {
            scope_.baselineTotal += line.baseline;
            budgets_.push_back(line.baseline);
        }
        addChanges();
        return std::move(scope_);
    }

  private:
    void addItems() {
        const std::vector<Counting> counting = countingOf(rows_);
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            const model::Item& item = rows_.items[k];
            ScopeLine line;
            line.counting = counting[k];
            line.item = item.id;
            line.option = item.option;
            line.space = item.space;
            line.contract = item.contract;
            line.pricing = priceOf(item, book_);
            line.startOn = item.plannedStartOn;
            line.finishOn = item.plannedFinishOn;
            const auto contract = contracts_.of(item.contract);
            line.crew = item.crew.isNil() && contract ? rows_.contracts[*contract].crew : item.crew;
            line.trade = tradeOf(item, line);
            line.name = placed(item.space, item.object);
            scope_.lines.push_back(std::move(line));
        }
    }

    std::string tradeOf(const model::Item& item, const ScopeLine& line) const {
        if (!folded(item.trade).empty()) {
            return item.trade;
        }
        const auto crew = crews_.of(line.crew);
        if (crew && !folded(rows_.crews[*crew].trade).empty()) {
            return rows_.crews[*crew].trade;
        }
        const model::Price* price = book_.find(item.object, item.treatment, item.unit, nullptr);
        return price == nullptr ? std::string() : price->trade;
    }

    std::string placed(model::Id<model::Kind::Space> space, const std::string& object) const {
        const auto k = spaces_.of(space);
        return k ? rows_.spaces[*k].name + "/" + object : object;
    }

    // Options that count, have a cost, and no items of their own.
    void addOptions() {
        std::unordered_set<OptionId> withItems;
        for (const model::Item& item : rows_.items) {
            withItems.insert(item.option);
        }
        for (const model::Alternate& alternate : rows_.alternates) {
            const auto option = options_.of(countingOption(alternate));
            if (!option || !rows_.options[*option].cost ||
                withItems.contains(rows_.options[*option].id)) {
                continue;
            }
            ScopeLine line;
            line.kind = LineKind::Option;
            line.option = rows_.options[*option].id;
            line.space = alternate.space;
            line.pricing.by = PricedBy::LumpSum;
            line.pricing.line = *rows_.options[*option].cost;
            line.name = placed(alternate.space, rows_.options[*option].name);
            scope_.lines.push_back(std::move(line));
        }
    }

    // Signed contracts that no counting item points at: what is promised stands on a line of its
    // own, outside any item's budget.
    void addContracts() {
        std::unordered_set<model::Id<model::Kind::Contract>> withItems;
        for (const ScopeLine& line : scope_.lines) {
            if (line.counting == Counting::Counts) {
                withItems.insert(line.contract);
            }
        }
        scope_.contractLines.assign(rows_.contracts.size(), SIZE_MAX);
        for (std::size_t k = 0; k < rows_.contracts.size(); ++k) {
            const model::Contract& contract = rows_.contracts[k];
            if (!contract.signedOn || withItems.contains(contract.id)) {
                continue;
            }
            ScopeLine line;
            line.kind = LineKind::Contract;
            line.contract = contract.id;
            line.crew = contract.crew;
            const auto crew = crews_.of(contract.crew);
            line.trade = crew ? rows_.crews[*crew].trade : std::string();
            line.name = contract.name.empty() ? "A contract without a name" : contract.name;
            scope_.contractLines[k] = scope_.lines.size();
            scope_.lines.push_back(std::move(line));
        }
    }

    // For each line of an option that does not count: the lines of the option that does.
    void findHeirs() {
        std::unordered_map<OptionId, std::vector<std::size_t>> byOption;
        for (std::size_t k = 0; k < scope_.lines.size(); ++k) {
            const ScopeLine& line = scope_.lines[k];
            if (line.counting == Counting::Counts && !line.option.isNil()) {
                byOption[line.option].push_back(k);
            }
        }
        for (std::size_t k = 0; k < scope_.lines.size(); ++k) {
            const auto option = options_.of(scope_.lines[k].option);
            if (scope_.lines[k].counting != Counting::NotCarried || !option) {
                continue;
            }
            const auto alternate = alternates_.of(rows_.options[*option].alternate);
            const auto found = alternate
                                   ? byOption.find(countingOption(rows_.alternates[*alternate]))
                                   : byOption.end();
            if (found != byOption.end()) {
                heirs_[k] = found->second;
            }
        }
    }

    // `amount` of line k, on k itself or over its heirs by price.
    std::vector<std::pair<std::size_t, Money>> passedOn(std::size_t k, Money amount) const {
        const auto found = heirs_.find(k);
        if (found == heirs_.end()) {
            return {{k, amount}};
        }
        std::vector<Money> prices;
        for (const std::size_t heir : found->second) {
            prices.push_back(scope_.lines[heir].pricing.line);
        }
        const std::vector<Money> parts = splitByBudget(amount, prices);
        std::vector<std::pair<std::size_t, Money>> out;
        for (std::size_t p = 0; p < parts.size(); ++p) {
            out.emplace_back(found->second[p], parts[p]);
        }
        return out;
    }

    // Baselines as frozen. What was frozen for an item no longer in the job stays with the job.
    void addFrozen() {
        std::vector<bool> inherited(scope_.lines.size(), false);
        for (const model::BaselineItem& frozen : rows_.baseline_items) {
            if (frozen.baseline != rows_.baselines[*scope_.baseline].id) {
                continue;
            }
            const auto item = items_.of(frozen.item);
            const std::size_t k = item.value_or(scope_.lines.size() - 1);
            if (item) {
                scope_.lines[k].inBaseline = true;
                scope_.lines[k].startOn = frozen.plannedStartOn;
                scope_.lines[k].finishOn = frozen.plannedFinishOn;
            }
            for (const auto& [line, amount] : passedOn(k, frozen.budget.value_or(Money{}))) {
                scope_.lines[line].baseline += amount;
                inherited[line] = true;
            }
        }
        // An option without items cannot be frozen: its cost stands, unless what was frozen for
        // another option of its alternate has come to it.
        for (std::size_t k = 0; k < scope_.lines.size(); ++k) {
            if (scope_.lines[k].kind == LineKind::Option && !inherited[k]) {
                scope_.lines[k].baseline = scope_.lines[k].pricing.line;
            }
        }
    }

    void addChanges() {
        std::vector<std::size_t> order;
        for (std::size_t k = 0; k < rows_.changes.size(); ++k) {
            if (rows_.changes[k].signedOn) {
                order.push_back(k);
            }
        }
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return std::make_tuple(rows_.changes[a].signedOn, rows_.changes[a].id, a) <
                   std::make_tuple(rows_.changes[b].signedOn, rows_.changes[b].id, b);
        });
        for (const std::size_t k : order) {
            addChange(k);
        }
    }

    void addChange(std::size_t change) {
        Money left = changeAmount(rows_.changes[change]);
        for (const model::ItemAmount& part : rows_.changes[change].split) {
            if (const auto item = items_.of(part.item)) {
                for (const auto& [line, amount] : passedOn(*item, part.amount)) {
                    addPart(line, change, amount);
                }
                left -= part.amount;
            }
        }
        const std::vector<std::size_t> lines = linesOf(rows_.changes[change]);
        std::vector<Money> budgets;
        budgets.reserve(lines.size());
        for (const std::size_t line : lines) {
            budgets.push_back(budgets_[line]);
        }
        const std::vector<Money> parts = splitByBudget(left, budgets);
        for (std::size_t p = 0; p < parts.size(); ++p) {
            addPart(lines[p], change, parts[p]);
        }
    }

    void addPart(std::size_t line, std::size_t change, Money amount) {
        if (amount != Money{}) {
            scope_.lines[line].changes.push_back({change, *rows_.changes[change].signedOn, amount});
            budgets_[line] += amount;
        }
    }

    // The lines an undivided change goes over: its items, else its contract's items, else its
    // contract's own line, else the whole job.
    std::vector<std::size_t> linesOf(const model::Change& change) const {
        std::vector<std::size_t> named;
        for (const auto& item : change.items) {
            if (const auto k = items_.of(item)) {
                named.push_back(*k);
            }
        }
        if (named.empty() && !change.contract.isNil()) {
            for (std::size_t k = 0; k < rows_.items.size(); ++k) {
                if (rows_.items[k].contract == change.contract &&
                    scope_.lines[k].counting == Counting::Counts) {
                    named.push_back(k);
                }
            }
        }
        std::vector<std::size_t> out;
        for (const std::size_t k : named) {
            const auto heirs = heirs_.find(k);
            if (heirs == heirs_.end()) {
                out.push_back(k);
            } else {
                out.insert(out.end(), heirs->second.begin(), heirs->second.end());
            }
        }
        std::sort(out.begin(), out.end());
        out.erase(std::unique(out.begin(), out.end()), out.end());
        if (out.empty()) {
            const auto contract = contracts_.of(change.contract);
            out.push_back(contract ? scope_.contractLines[*contract] : scope_.lines.size() - 1);
        }
        return out;
    }

    const model::JobRows& rows_;
    Positions<model::Item> items_;
    Positions<model::Space> spaces_;
    Positions<model::Crew> crews_;
    Positions<model::Contract> contracts_;
    Positions<model::Alternate> alternates_;
    Positions<model::Option> options_;
    PriceBook book_;
    ScopeLines scope_;
    std::unordered_map<std::size_t, std::vector<std::size_t>> heirs_;
    std::vector<Money> budgets_;  // of the lines, as changes are added
};

}  // namespace

Money changeAmount(const model::Change& change) {
    if (change.amount) {
        return *change.amount;
    }
    Money sum;
    for (const model::ItemAmount& part : change.split) {
        sum += part.amount;
    }
    return sum;
}

Money ScopeLine::signedChanges() const {
    Money sum;
    for (const ChangePart& part : changes) {
        sum += part.amount;
    }
    return sum;
}

Money ScopeLine::budgetNow() const {
    return baseline + signedChanges();
}

Money ScopeLine::budgetOn(model::Date day) const {
    Money sum = baseline;
    for (const ChangePart& part : changes) {
        if (part.signedOn <= day) {
            sum += part.amount;
        }
    }
    return sum;
}

bool ScopeLine::isWork() const {
    return kind == LineKind::Item || kind == LineKind::Option;
}

bool ScopeLine::isBudgeted() const {
    return kind == LineKind::WholeJob || counting == Counting::Counts || budgetNow() != Money{};
}

std::optional<std::size_t> latestBaseline(const model::JobRows& rows) {
    std::optional<std::size_t> latest;
    for (std::size_t k = 0; k < rows.baselines.size(); ++k) {
        if (!latest || std::tie(rows.baselines[*latest].frozenOn, rows.baselines[*latest].id) <
                           std::tie(rows.baselines[k].frozenOn, rows.baselines[k].id)) {
            latest = k;
        }
    }
    return latest;
}

ScopeLines scopeLinesOf(const model::JobRows& rows) {
    return Builder(rows).build();
}

Frozen freeze(const model::JobRows& rows) {
    const PriceBook book(rows.prices);
    const std::vector<Counting> counting = countingOf(rows);
    Frozen out;
    Money sum;
    for (std::size_t k = 0; k < rows.items.size(); ++k) {
        if (counting[k] != Counting::Counts) {
            continue;
        }
        const model::Item& item = rows.items[k];
        const Pricing pricing = priceOf(item, book);
        out.items.push_back({item.id, pricing.line, item.plannedStartOn, item.plannedFinishOn});
        sum += pricing.line;
        out.unpriced += pricing.by == PricedBy::Nothing ? 1 : 0;
        out.undated += item.plannedStartOn && item.plannedFinishOn ? 0 : 1;
        if (item.plannedFinishOn && (!out.finishOn || *out.finishOn < *item.plannedFinishOn)) {
            out.finishOn = item.plannedFinishOn;
        }
    }
    out.contingency = share(rows.job.contingency.value_or(model::Percent{}), sum);
    return out;
}

std::vector<Money> splitByBudget(Money total, const std::vector<Money>& weights) {
    std::vector<std::int64_t> minor;
    minor.reserve(weights.size());
    for (const Money weight : weights) {
        minor.push_back(std::max<std::int64_t>(0, weight.minor()));
    }
    return allocate(total, minor);
}

}  // namespace ledgerboard::compute
