#include "core/compute/budget.h"

#include <algorithm>
#include <map>
#include <unordered_map>

#include "core/compute/budget_parts.h"
#include "core/compute/planned_value.h"
#include "core/compute/positions.h"

namespace ledgerboard::compute {

namespace {

using model::Money;
using model::Percent;

// A sum of lines under way.
class Sum {
  public:
    void add(const LineFigures& line, const ScopeLine& scope) {
        figures_.baseline += line.baseline;
        figures_.signedChanges += line.signedChanges;
        figures_.budgetNow += line.budgetNow;
        figures_.committed += line.committed;
        figures_.billed += line.billed;
        figures_.paid += line.paid;
        figures_.held += line.held;
        figures_.owed += line.owed;
        figures_.earned += line.earned;
        figures_.planned += line.planned;
        figures_.billedUnplanned += line.billedUnplanned;
        figures_.toGo += line.toGo;
        figures_.forecast += line.forecast;
        figures_.items += line.items;
        if (scope.isWork() && scope.isBudgeted()) {
            shown_.add(line.budgetNow, line.shown);
            seen_.add(line.budgetNow, line.seen);
        }
    }

    [[nodiscard]] Figures value() const {
        Figures out = figures_;
        out.shown = shown_.value();
        out.seen = seen_.value();
        return out;
    }

    // Whether there is anything in it but empty lines.
    [[nodiscard]] bool hasAnything() const {
        Figures nothing;
        nothing.shown = value().shown;
        nothing.seen = value().seen;
        return value() != nothing;
    }

  private:
    Figures figures_;
    WeightedPercent shown_;
    WeightedPercent seen_;
};

// Computes the figures step by step. Lives for one call of figuresOf.
class Computer {
  public:
    Computer(const model::JobRows& rows, model::Date today)
        : rows_(rows), today_(today), marks_(rows), contracts_(rows.contracts) {}

    JobFigures compute() {
        out_.scope = scopeLinesOf(rows_);
        out_.spending = spendingOf(rows_, out_.scope);
        out_.lines.resize(out_.scope.lines.size());
        itemsOfContract_ = itemsOfContracts(rows_, out_.scope);
        out_.contracts =
            contractFiguresOf(rows_, out_.scope, marks_, out_.spending, itemsOfContract_, today_);
        setBudgets();
        addSpending();
        addCommitments();
        setEarned();
        setPlanned();
        setToGo();
        rollUp();
        setContingency();
        setBelowTheLine();
        return std::move(out_);
    }

  private:
    void setBudgets() {
        for (std::size_t k = 0; k < out_.lines.size(); ++k) {
            const ScopeLine& scope = out_.scope.lines[k];
            LineFigures& line = out_.lines[k];
            line.baseline = scope.baseline;
            line.signedChanges = scope.signedChanges();
            line.budgetNow = scope.budgetNow();
            const bool counts = scope.counting == Counting::Counts && scope.isWork();
            line.items = counts ? 1 : 0;
            const bool priced = scope.pricing.by != PricedBy::Nothing || line.budgetNow != Money{};
            if (scope.kind == LineKind::Item && counts && !priced &&
                rows_.items[k].treatment != model::Treatment::Inspect) {
                ++out_.unpriced;
            }
        }
    }

    void addSpending() {
        for (const SpendRead& read : out_.spending) {
            const bool isBilled = read.effect.billed != Money{};
            const bool isPaid = read.effect.paid != Money{};
            const bool isBack = rows_.spends[read.spend].type == model::SpendKind::Refund;
            std::vector<Money> amounts;
            for (const LineAmount& part : read.parts) {
                LineFigures& line = out_.lines[part.line];
                const Money signedAmount = isBack ? -part.amount : part.amount;
                line.billed += isBilled ? signedAmount : Money{};
                line.paid += isPaid ? signedAmount : Money{};
                amounts.push_back(part.amount);
                if (read.contract && isBilled && contractOf(part.line) == read.contract) {
                    line.billedOnCommitment += signedAmount;
                }
            }
            if (read.effect.held == Money{}) {
                continue;
            }
            const std::vector<Money> held = splitByBudget(read.effect.held, amounts);
            for (std::size_t p = 0; p < held.size(); ++p) {
                out_.lines[read.parts[p].line].held += held[p];
            }
        }
        for (LineFigures& line : out_.lines) {
            line.owed = line.billed - line.held - line.paid;
        }
    }

    // The contract of a line, by its position in rows.contracts.
    std::optional<std::size_t> contractOf(std::size_t line) const {
        return contracts_.of(out_.scope.lines[line].contract);
    }

    void addCommitments() {
        for (const ContractFigures& contract : out_.contracts) {
            const auto& items = itemsOfContract_[contract.contract];
            if (items.empty()) {
                out_.lines[out_.scope.contractLines[contract.contract]].committed += contract.now;
                continue;
            }
            std::vector<Money> budgets;
            for (const std::size_t item : items) {
                budgets.push_back(out_.lines[item].budgetNow);
            }
            const std::vector<Money> parts = splitByBudget(contract.now, budgets);
            for (std::size_t p = 0; p < parts.size(); ++p) {
                out_.lines[items[p]].committed += parts[p];
            }
        }
    }

    void setEarned() {
        WeightedPercent whole;
        WeightedPercent wholeSeen;
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            LineFigures& line = out_.lines[k];
            if (out_.scope.lines[k].counting != Counting::Counts) {
                continue;
            }
            line.shown = marks_.shown(k);
            line.seen = marks_.seen(k);
            const auto marks = marks_.of(k);
            line.markedOn = marks.empty() ? std::nullopt : marks.back().on;
        }
        for (std::size_t k = 0; k < out_.lines.size(); ++k) {
            if (out_.scope.lines[k].isWork() && out_.scope.lines[k].isBudgeted()) {
                whole.add(out_.lines[k].budgetNow, out_.lines[k].shown);
                wholeSeen.add(out_.lines[k].budgetNow, out_.lines[k].seen);
            }
        }
        // What belongs to the whole job, or to a contract alone, is earned as the items are.
        for (std::size_t k = 0; k < out_.lines.size(); ++k) {
            LineFigures& line = out_.lines[k];
            if (!out_.scope.lines[k].isWork()) {
                line.shown = whole.value();
                line.seen = wholeSeen.value();
            }
            line.earned = share(line.shown, line.budgetNow);
        }
    }

    void setPlanned() {
        const PlannedValue planned = plannedValueOf(rows_, out_.scope);
        out_.undated = planned.undated;
        out_.undatedBudget = planned.undatedBudget;
        for (std::size_t k = 0; k < out_.lines.size(); ++k) {
            LineFigures& line = out_.lines[k];
            if (planned.lines[k]) {
                line.planned = planned.lines[k]->plannedBy(today_, planned.calendar);
            } else {
                line.billedUnplanned = line.billed;
            }
        }
    }

    void setToGo() {
        struct Trade {
            Money earned;
            Money billed;
        };

        std::unordered_map<std::string, Trade> trades;
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            Trade& trade = trades[folded(out_.scope.lines[k].trade)];
            trade.earned += out_.lines[k].earned;
            trade.billed += out_.lines[k].billed;
        }
        for (std::size_t k = 0; k < out_.lines.size(); ++k) {
            const ScopeLine& scope = out_.scope.lines[k];
            LineFigures& line = out_.lines[k];
            const auto contract = contractOf(k);
            // Items of no trade have nothing in common: what one cost says nothing of another.
            const Trade trade = scope.trade.empty() ? Trade{} : trades[folded(scope.trade)];
            ToGoInput in;
            in.item = scope.kind == LineKind::Item ? &rows_.items[k] : nullptr;
            in.counts = scope.counting == Counting::Counts;
            in.isCommitted = contract && out_.contracts[*contract].isSigned &&
                             rows_.contracts[*contract].sum.has_value();
            in.contractNow = line.committed;
            in.billedOnCommitment = line.billedOnCommitment;
            in.budgetNow = line.budgetNow;
            in.billed = line.billed;
            in.earned = line.earned;
            in.shown = scope.isWork() ? line.shown : Percent{};
            in.tradeEarned = trade.earned;
            in.tradeBilled = trade.billed;
            in.signedChanges = line.signedChanges;
            const ToGo toGo = toGoOf(in);
            line.rule = toGo.rule;
            line.kept = toGo.kept;
            line.toGoAsComputed = toGo.asComputed;
            line.toGo = toGo.amount;
            line.forecast = line.billed + line.toGo;
        }
    }

    void rollUp() {
        std::unordered_map<model::Id<model::Kind::Space>, Sum> spaces;
        std::unordered_map<model::Id<model::Kind::Crew>, Sum> crews;
        std::map<std::string, std::pair<std::string, Sum>> trades;  // by folded name
        const Positions<model::Space> knownSpaces(rows_.spaces);
        const Positions<model::Crew> knownCrews(rows_.crews);
        Sum job;
        for (std::size_t k = 0; k < out_.lines.size(); ++k) {
            const ScopeLine& scope = out_.scope.lines[k];
            const LineFigures& line = out_.lines[k];
            job.add(line, scope);
            using SpaceId = model::Id<model::Kind::Space>;
            using CrewId = model::Id<model::Kind::Crew>;
            spaces[knownSpaces.of(scope.space) ? scope.space : SpaceId{}].add(line, scope);
            crews[knownCrews.of(scope.crew) ? scope.crew : CrewId{}].add(line, scope);
            auto& trade = trades[folded(scope.trade)];
            trade.first = trade.first.empty() ? scope.trade : trade.first;
            trade.second.add(line, scope);
        }
        out_.job = job.value();
        out_.spaces = grouped(inWalkingOrder(), spaces);
        out_.crews = grouped(rows_.crews, crews);
        for (const auto& [key, trade] : trades) {
            if (!key.empty()) {
                out_.trades.push_back({trade.second.value(), trade.first, {}});
            }
        }
        const auto noTrade = trades.find("");
        if (noTrade != trades.end() && noTrade->second.second.hasAnything()) {
            out_.trades.push_back({noTrade->second.second.value(), "", {}});
        }
    }

    std::vector<model::Space> inWalkingOrder() const {
        std::vector<model::Space> spaces = rows_.spaces;
        std::stable_sort(spaces.begin(), spaces.end(),
                         [](const model::Space& a, const model::Space& b) {
                             constexpr std::int64_t kLast = INT64_MAX;
                             return a.walkOrder.value_or(kLast) < b.walkOrder.value_or(kLast);
                         });
        return spaces;
    }

    // The sums in the order of `rows`, those without lines left out; what has none last.
    template <class Row, class Sums>
    static std::vector<GroupFigures> grouped(const std::vector<Row>& rows, const Sums& sums) {
        std::vector<GroupFigures> out;
        for (const Row& row : rows) {
            const auto found = sums.find(row.id);
            if (found != sums.end()) {
                out.push_back({found->second.value(), row.name, row.id.raw()});
            }
        }
        const auto none = sums.find({});
        if (none != sums.end() && none->second.hasAnything()) {
            out.push_back({none->second.value(), "", {}});
        }
        return out;
    }

    void setContingency() {
        Contingency& contingency = out_.contingency;
        const Percent percent = rows_.job.contingency.value_or(Percent{});
        contingency.total = share(percent, out_.scope.baselineTotal);
        if (out_.scope.baseline) {
            const auto& frozen = rows_.baselines[*out_.scope.baseline].contingency;
            contingency.total = frozen.value_or(contingency.total);
        }
        for (const model::Change& change : rows_.changes) {
            if (change.signedOn && change.paidFrom == model::PaidFrom::Contingency) {
                contingency.used += changeAmount(change);
            }
        }
        contingency.left = contingency.total - contingency.used;
        if (rows_.job.budget) {
            out_.underCeiling = *rows_.job.budget - out_.job.forecast - contingency.left;
        }
    }

    void setBelowTheLine() {
        for (const model::Change& change : rows_.changes) {
            if (!change.signedOn && !change.refusedOn) {
                out_.ifAllSigned += changeAmount(change);
                ++out_.unsignedChanges;
            }
        }
        for (const model::Unknown& unknown : rows_.unknowns) {
            if (!unknown.cameTrueOn) {
                out_.unknownsExpected += expectedOf(unknown);
            }
        }
        for (const model::Spend& spend : rows_.spends) {
            out_.spendsWithoutAmount += spend.amount ? 0 : 1;
        }
    }

    // chance x expected cost, rounded once.
    static Money expectedOf(const model::Unknown& unknown) {
        model::Wide sum = 0;  // of weighted costs
        std::int64_t weights = 0;
        if (unknown.costLow && unknown.costLikely && unknown.costHigh) {
            sum = model::Wide{unknown.costLow->minor()} +
                  4 * model::Wide{unknown.costLikely->minor()} + unknown.costHigh->minor();
            weights = 6;
        } else if (unknown.costLikely) {
            sum = unknown.costLikely->minor();
            weights = 1;
        } else {
            for (const auto& cost : {unknown.costLow, unknown.costHigh}) {
                sum += cost ? cost->minor() : 0;
                weights += cost ? 1 : 0;
            }
        }
        const std::int64_t chance = unknown.chance.value_or(Percent{}).basisPoints();
        return weights == 0 ? Money{}
                            : model::roundedMoney(model::multiplyWide(sum, chance),
                                                  model::Wide{weights} * 10'000);
    }

    const model::JobRows& rows_;
    model::Date today_;
    Marks marks_;
    Positions<model::Contract> contracts_;
    std::vector<std::vector<std::size_t>> itemsOfContract_;
    JobFigures out_;
};

}  // namespace

std::string_view wordsFor(Standing standing) {
    switch (standing) {
        case Standing::Within:
            return "";
        case Standing::Early:
            return "early";
        case Standing::Over:
            return "over";
    }
    return "";
}

Standing Figures::standing() const {
    if (forecast > budgetNow) {
        return Standing::Over;
    }
    return billed - billedUnplanned > planned ? Standing::Early : Standing::Within;
}

JobFigures figuresOf(const model::JobRows& rows, model::Date today) {
    return Computer(rows, today).compute();
}

}  // namespace ledgerboard::compute
