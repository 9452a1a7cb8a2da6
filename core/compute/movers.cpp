#include "core/compute/movers.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>

#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;
using model::saying;
using ItemId = model::Id<model::Kind::Item>;

constexpr std::size_t kLargest = 5;

std::int64_t sizeOf(Money money) {
    return money.minor() < 0 ? model::negateChecked(money.minor()) : money.minor();
}

// What was known at the last look: each item's forecast, and their sum with all else.
struct Then {
    std::unordered_map<ItemId, Money> items;
    Money willCost;
};

Then fromReview(const model::Review& review) {
    Then then;
    Money sum;
    for (const model::ItemAmount& kept : review.forecasts) {
        then.items[kept.item] += kept.amount;
        sum += kept.amount;
    }
    then.willCost = keptFigure(review, kWillCost).value_or(sum);
    return then;
}

Then fromBaseline(const model::JobRows& rows, const model::Baseline& baseline) {
    Then then;
    for (const model::BaselineItem& frozen : rows.baseline_items) {
        if (frozen.baseline == baseline.id) {
            const Money budget = frozen.budget.value_or(Money{});
            then.items[frozen.item] += budget;
            then.willCost += budget;
        }
    }
    return then;
}

// The changes signed since that fall on a line, by name.
std::string changesSince(const model::JobRows& rows, const ScopeLine& line,
                         std::optional<Date> since) {
    std::string names;
    for (const ChangePart& part : line.changes) {
        if (since && part.signedOn <= *since) {
            continue;
        }
        const std::string& name = rows.changes[part.change].name;
        names += (names.empty() ? "" : ", ") + (name.empty() ? "unnamed" : name);
    }
    return names;
}

void explain(Mover& mover, const model::JobRows& rows, const JobFigures& figures,
             std::optional<Date> since, bool wasThere) {
    const ScopeLine& scope = figures.scope.lines[mover.line];
    const LineFigures& line = figures.lines[mover.line];
    const std::string changes = changesSince(rows, scope, since);
    const bool isItem = scope.kind == LineKind::Item;
    if (!changes.empty()) {
        mover.reason = MoveReason::SignedChange;
        mover.why = saying("change signed: %1", changes);
    } else if (line.rule == ToGoRule::OwnEstimate) {
        const std::string& reason = rows.items[mover.line].estimateReason;
        mover.reason = MoveReason::OwnEstimate;
        mover.why = reason.empty() ? saying("the owner's own estimate")
                                   : saying("the owner's own estimate: %1", reason);
    } else if (scope.counting != Counting::Counts) {
        mover.reason = MoveReason::NoLongerCounted;
        mover.why = scope.counting == Counting::Kept ? saying("it is kept now")
                                                     : saying("another option counts");
    } else if (line.rule == ToGoRule::Commitment && line.billedOnCommitment > line.committed) {
        mover.reason = MoveReason::BilledBeyondContract;
        mover.why = saying("billed beyond its contract");
    } else if (line.rule == ToGoRule::Commitment) {
        mover.reason = MoveReason::Contract;
        mover.why = saying("at its contract now");
    } else if (line.billed > line.budgetNow) {
        mover.reason = MoveReason::BilledBeyondBudget;
        mover.why = saying("billed beyond its budget");
    } else if (line.rule == ToGoRule::Finished) {
        mover.reason = MoveReason::Finished;
        mover.why = saying("finished, at what was billed");
    } else if (line.rule == ToGoRule::TradeCpi) {
        mover.reason = MoveReason::TradeCpi;
        mover.why = scope.trade.empty()
                        ? saying("work left at what its trade has cost so far")
                        : saying("work left at what %1 has cost so far", scope.trade);
    } else if (isItem && !wasThere) {
        mover.reason = MoveReason::NewItem;
        mover.why = saying("it was not there then");
    }
}

Movers startOf(const model::JobRows& rows, const JobFigures& figures, Date today, Then& then) {
    Movers out;
    out.willCostNow = figures.job.forecast;
    if (const auto review = lastReview(rows, today)) {
        out.since = Since::Review;
        out.sinceOn = rows.reviews[*review].reviewedOn;
        then = fromReview(rows.reviews[*review]);
    } else if (figures.scope.baseline) {
        const model::Baseline& baseline = rows.baselines[*figures.scope.baseline];
        out.since = Since::Baseline;
        out.sinceOn = baseline.frozenOn;
        then = fromBaseline(rows, baseline);
    }
    return out;
}

}  // namespace

model::Review reviewOf(const JobFigures& figures, Date today) {
    model::Review review;
    review.reviewedOn = today;
    const auto keep = [&](std::string_view name, Money amount) {
        review.figures.push_back({std::string(name), amount});
    };
    keep(kWillCost, figures.job.forecast);
    keep(kBudgetNow, figures.job.budgetNow);
    keep(kBilled, figures.job.billed);
    keep(kPaid, figures.job.paid);
    keep(kEarned, figures.job.earned);
    keep(kPlanned, figures.job.planned);
    keep(kContingencyLeft, figures.contingency.left);
    for (std::size_t k = 0; k < figures.lines.size(); ++k) {
        const ScopeLine& scope = figures.scope.lines[k];
        const Money forecast = figures.lines[k].forecast;
        if (scope.kind == LineKind::Item &&
            (scope.counting == Counting::Counts || forecast != Money{})) {
            review.forecasts.push_back({scope.item, forecast});
        }
    }
    return review;
}

std::optional<Money> keptFigure(const model::Review& review, std::string_view name) {
    for (const model::NamedAmount& figure : review.figures) {
        if (figure.name == name) {
            return figure.amount;
        }
    }
    return std::nullopt;
}

std::optional<std::size_t> lastReview(const model::JobRows& rows, Date today) {
    std::optional<std::size_t> last;
    for (std::size_t k = 0; k < rows.reviews.size(); ++k) {
        const model::Review& review = rows.reviews[k];
        if (!review.reviewedOn || *review.reviewedOn >= today) {
            continue;
        }
        if (!last || std::tie(rows.reviews[*last].reviewedOn, rows.reviews[*last].id) <
                         std::tie(review.reviewedOn, review.id)) {
            last = k;
        }
    }
    return last;
}

Movers moversOf(const model::JobRows& rows, const JobFigures& figures, Date today) {
    Then then;
    Movers out = startOf(rows, figures, today, then);
    if (out.since == Since::Nothing) {
        out.willCostThen = out.willCostNow;
        return out;
    }
    out.willCostThen = then.willCost;
    out.moved = out.willCostNow - out.willCostThen;
    std::vector<Mover> moved;
    for (std::size_t k = 0; k < figures.lines.size(); ++k) {
        const ScopeLine& scope = figures.scope.lines[k];
        if (scope.kind != LineKind::Item) {
            continue;  // kept with the total alone: among the others
        }
        const auto before = then.items.find(scope.item);
        Mover mover;
        mover.line = k;
        mover.then = before == then.items.end() ? Money{} : before->second;
        mover.now = figures.lines[k].forecast;
        mover.moved = mover.now - mover.then;
        if (mover.moved != Money{}) {
            explain(mover, rows, figures, out.sinceOn, before != then.items.end());
            moved.push_back(std::move(mover));
        }
    }
    std::stable_sort(moved.begin(), moved.end(), [](const Mover& a, const Mover& b) {
        return sizeOf(a.moved) > sizeOf(b.moved);
    });
    out.others = out.moved;
    for (std::size_t k = 0; k < std::min(kLargest, moved.size()); ++k) {
        out.others -= moved[k].moved;
        out.largest.push_back(moved[k]);
    }
    out.othersCount = moved.size() - out.largest.size();
    return out;
}

}  // namespace ledgerboard::compute
