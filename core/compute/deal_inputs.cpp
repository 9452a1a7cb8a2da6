// What the deal is told: whether it makes sense, and what is absent.
#include <algorithm>
#include <string>

#include "core/compute/deal_parts.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;
using model::Percent;

model::Error below(std::string_view heading) {
    return model::cannotBeMet(model::saying("%1 is below 0: set it to what it is", heading));
}

// Names what the loans need and lacks.
void noteLoanInputs(const model::Job& job, const DealTerms& terms, Deal& out) {
    if (terms.purchaseLoan + terms.workLoan == Money{}) {
        return;
    }
    if (!job.loanRate) {
        out.leftOut.push_back({"Loan rate", "loan_rate"});
    }
    if (terms.purchaseLoan > Money{} && !job.purchasePoints) {
        out.leftOut.push_back({"Points on the purchase loan", "purchase_points"});
    }
    if (terms.workLoan > Money{} && !job.workPoints) {
        out.leftOut.push_back({"Points on the work loan", "work_points"});
    }
    if (!job.lenderFees) {
        out.leftOut.push_back({"Lender fees", "lender_fees"});
    }
    if (!job.termEndOn) {
        out.leftOut.push_back({"Term end", "term_end_on"});
    } else if (out.saleOn && *out.saleOn > *job.termEndOn && !job.extensionFee) {
        out.leftOut.push_back({"Extension fee", "extension_fee"});
    }
}

}  // namespace

model::Result<void> checkDealInputs(const model::Job& job, const DealFigures& figures) {
    const std::pair<std::string_view, std::optional<Money>> amounts[] = {
        {"Purchase price", job.purchasePrice}, {"Resale low", job.resaleLow},
        {"Resale", job.resaleLikely},          {"Resale high", job.resaleHigh},
        {"Purchase loan", job.purchaseLoan},   {"Work loan", job.workLoan},
        {"Lender fees", job.lenderFees},       {"Wanted profit", job.wantedProfit},
        {"Forecast of the work", figures.work}};
    for (const auto& [heading, amount] : amounts) {
        if (amount.value_or(Money{}) < Money{}) {
            return below(heading);
        }
    }
    const std::pair<std::string_view, std::optional<Percent>> percents[] = {
        {"Buying costs", job.buyingCosts},
        {"Selling costs", job.sellingCosts},
        {"Commission", job.commission},
        {"Loan rate", job.loanRate},
        {"Points on the purchase loan", job.purchasePoints},
        {"Points on the work loan", job.workPoints},
        {"Extension fee", job.extensionFee}};
    for (const auto& [heading, percent] : percents) {
        if (percent.value_or(Percent{}) < Percent{}) {
            return below(heading);
        }
    }
    for (const model::NamedAmount& cost : job.holdingCosts) {
        if (cost.amount < Money{}) {
            return below("Holding costs, " + cost.name + ",");
        }
    }
    for (const model::NamedAmount& drop : job.seasonDrop) {
        if (!Date::parse(drop.name).ok()) {
            return model::cannotBeMet(
                model::saying("Season drop names \"%1\", which is no day: write the last good day "
                              "of the season and what a later sale brings less, as 2026-08-31 6000",
                              drop.name));
        }
        if (drop.amount < Money{}) {
            return below("Season drop, " + drop.name + ",");
        }
    }
    return {};
}

DealTerms dealTermsOf(const model::Job& job) {
    DealTerms terms;
    terms.price = job.purchasePrice.value_or(Money{});
    terms.purchaseLoan = job.purchaseLoan.value_or(Money{});
    terms.workLoan = job.workLoan.value_or(Money{});
    terms.rate = job.loanRate.value_or(Percent{});
    terms.sellingShare = job.sellingCosts.value_or(Percent{}) + job.commission.value_or(Percent{});
    for (const model::NamedAmount& cost : job.holdingCosts) {
        terms.monthlyHolding += cost.amount;
    }
    terms.basis = dayCountOf(job.interestBasis);
    return terms;
}

std::optional<Date> saleDay(const model::Job& job, const DealFigures& figures) {
    if (figures.saleOn) {
        return figures.saleOn;
    }
    const auto finish = figures.willFinishOn ? figures.willFinishOn : job.targetFinishOn;
    if (!finish) {
        return std::nullopt;
    }
    constexpr std::int64_t kMostDays = 36'500;
    const std::int64_t days = std::clamp<std::int64_t>(job.resaleDays.value_or(0), 0, kMostDays);
    const Date sale = *finish + static_cast<int>(days);
    return figures.asOf ? std::max(sale, *figures.asOf) : sale;
}

Money seasonDropOn(const model::Job& job, Date sale) {
    Money sum;
    for (const model::NamedAmount& drop : job.seasonDrop) {
        const auto last = Date::parse(drop.name);
        if (last.ok() && sale > last.value()) {
            sum += drop.amount;
        }
    }
    return sum;
}

void noteAbsent(const model::Job& job, const DealFigures& figures, const DealTerms& terms,
                Deal& out) {
    if (!job.purchasePrice) {
        out.missing.push_back({"Purchase price", "purchase_price"});
    }
    if (!job.resaleLikely) {
        out.missing.push_back({"Resale", "resale_likely"});
    }
    if (!figures.work) {
        out.missing.push_back({"Forecast of the work", ""});
    }
    if (!job.buyingCosts) {
        out.leftOut.push_back({"Buying costs", "buying_costs"});
    }
    if (!job.sellingCosts) {
        out.leftOut.push_back({"Selling costs", "selling_costs"});
    }
    if (!job.commission) {
        out.leftOut.push_back({"Commission", "commission"});
    }
    if (job.holdingCosts.empty()) {
        out.leftOut.push_back({"Holding costs", "holding_costs"});
    }
    if (!job.purchasedOn) {
        out.leftOut.push_back({"Purchased", "purchased_on"});
    }
    if (!out.saleOn) {
        out.leftOut.push_back({"Finish", "target_finish_on"});
    } else if (!figures.saleOn && !job.resaleDays) {
        out.leftOut.push_back({"Days to resale", "resale_days"});
    }
    noteLoanInputs(job, terms, out);
}

}  // namespace ledgerboard::compute
