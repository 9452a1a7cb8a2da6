#include <algorithm>

#include "core/compute/budget_parts.h"

namespace ledgerboard::compute {

namespace {

using model::Money;

Money notBelowZero(Money money) {
    return std::max(money, Money{});
}

// (budget now - earned) / CPI = (budget now - earned) x billed / earned. Requires: earned > 0.
Money remainingAtCpi(const ToGoInput& in) {
    const Money remaining = notBelowZero(in.budgetNow - in.earned);
    return model::roundedMoney(model::multiplyWide(remaining.minor(), in.tradeBilled.minor()),
                               in.tradeEarned.minor());
}

ToGo byRule(const ToGoInput& in) {
    const Money budgetLeft = notBelowZero(in.budgetNow - in.billed);
    ToGo out;
    if (!in.counts && in.budgetNow == Money{}) {
        out.rule = ToGoRule::NotCounted;
    } else if (in.item != nullptr && in.counts && in.item->estimateToFinish) {
        out.rule = ToGoRule::OwnEstimate;
        out.asComputed = notBelowZero(*in.item->estimateToFinish);
    } else if (in.isCommitted && in.counts) {
        out.rule = ToGoRule::Commitment;
        out.asComputed = notBelowZero(in.contractNow - in.billedOnCommitment);
    } else if (in.item != nullptr && in.item->boughtGoods && in.item->quote) {
        out.rule = ToGoRule::Quote;
        out.asComputed = notBelowZero(*in.item->quote - in.billed);
    } else if (in.item != nullptr && in.counts && in.shown == model::Percent::whole()) {
        out.rule = ToGoRule::Finished;
    } else if (in.item != nullptr && in.item->boughtGoods) {
        out.rule = ToGoRule::GoodsBudgetLeft;
        out.asComputed = budgetLeft;
    } else if (in.shown > model::Percent::of(20) && in.tradeEarned > Money{} &&
               in.tradeBilled > Money{}) {
        out.rule = ToGoRule::TradeCpi;
        out.asComputed = remainingAtCpi(in);
    } else {
        out.rule = ToGoRule::BudgetLeft;
        out.asComputed = budgetLeft;
    }
    return out;
}

bool isKeptInRange(ToGoRule rule) {
    return rule != ToGoRule::NotCounted && rule != ToGoRule::OwnEstimate &&
           rule != ToGoRule::Commitment && rule != ToGoRule::Finished;
}

}  // namespace

std::string_view wordsFor(ToGoRule rule) {
    switch (rule) {
        case ToGoRule::NotCounted:
            return "not counted";
        case ToGoRule::OwnEstimate:
            return "the owner's own estimate";
        case ToGoRule::Commitment:
            return "contract now less billed";
        case ToGoRule::Quote:
            return "quote less billed";
        case ToGoRule::Finished:
            return "finished, nothing left";
        case ToGoRule::GoodsBudgetLeft:
            return "budget left for bought goods";
        case ToGoRule::TradeCpi:
            return "work left at what its trade has cost so far";
        case ToGoRule::BudgetLeft:
            return "budget left";
    }
    return "";
}

std::string_view wordsFor(Kept kept) {
    switch (kept) {
        case Kept::AsComputed:
            return "";
        case Kept::RaisedToLow:
            return "raised to the least it may cost";
        case Kept::LoweredToHigh:
            return "lowered to the most it may cost";
    }
    return "";
}

ToGo toGoOf(const ToGoInput& in) {
    ToGo out = byRule(in);
    out.amount = out.asComputed;
    if (!isKeptInRange(out.rule) || in.item == nullptr) {
        return out;
    }
    const auto& low = in.item->costLow;
    const auto& high = in.item->costHigh;
    if (low && high && *low > *high) {
        return out;  // no range at all
    }
    // Signed changes move what it may cost as they move its budget.
    if (low) {
        const Money least = notBelowZero(*low + in.signedChanges - in.billed);
        if (out.amount < least) {
            out.amount = least;
            out.kept = Kept::RaisedToLow;
        }
    }
    if (high) {
        const Money most = notBelowZero(*high + in.signedChanges - in.billed);
        if (out.amount > most) {
            out.amount = most;
            out.kept = Kept::LoweredToHigh;
        }
    }
    return out;
}

}  // namespace ledgerboard::compute
