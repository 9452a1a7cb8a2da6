#include "core/compute/deal.h"

#include <algorithm>
#include <string>

#include "core/compute/interest.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;
using model::Percent;
using model::Wide;

constexpr std::int64_t kWholeBasisPoints = 10'000;
constexpr std::int64_t kDoubledWholeBasisPoints = 20'000;
constexpr std::int64_t kMonthsPerYear = 12;
constexpr std::int64_t kDaysPerYear = 365;
constexpr int kLeastDaysExtended = 30;
constexpr int kInsuredLoanDay = 91;
constexpr Percent kRuleOfThumb = Percent::of(70);

// The job's figures with nothing where nothing was entered; what is absent stands in Deal.
struct Terms {
    Money price;
    Money purchaseLoan;
    Money workLoan;
    Percent rate;
    Percent sellingShare;  // selling costs + commission
    Money monthlyHolding;
    DayCount basis = DayCount::Actual365;
};

model::Error below(std::string_view heading) {
    return model::cannotBeMet(std::string(heading) + " is below 0: set it to what it is");
}

model::Result<void> checkSigns(const model::Job& job, const DealFigures& figures) {
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
    return {};
}

Terms termsOf(const model::Job& job) {
    Terms terms;
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
    return *finish + static_cast<int>(days);
}

// Names what the loans need and lacks.
void noteLoanInputs(const model::Job& job, const Terms& terms, Deal& out) {
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

void noteAbsent(const model::Job& job, const DealFigures& figures, const Terms& terms, Deal& out) {
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

// Twice the sum of principal x days (in the basis' own parts of a year) up to the sale; twice, so
// that the half of what is not yet drawn stays whole.
Wide doubledPrincipalTime(const model::Job& job, const DealFigures& figures, const Terms& terms,
                          Date sale) {
    const Date bought = *job.purchasedOn;
    Wide sum = 0;
    const auto charge = [&](Money principal, Date from, int times) {
        if (from < sale) {
            const YearFraction time = yearFraction(from, sale, terms.basis);
            sum +=
                model::multiplyWide(model::multiplyWide(principal.minor(), time.numerator), times);
        }
    };
    charge(terms.purchaseLoan, bought, 2);
    if (job.interestOn == model::ChargedOn::Whole) {
        charge(terms.workLoan, bought, 2);
        return sum;
    }
    Money drawn;
    Date restFrom = bought;
    for (const DatedAmount& draw : figures.workDraws) {
        charge(draw.amount, draw.on, 2);
        drawn += draw.amount;
        restFrom = std::max(restFrom, draw.on);
    }
    if (figures.asOf) {
        restFrom = std::max(bought, *figures.asOf);
    }
    if (drawn < terms.workLoan) {
        charge(terms.workLoan - drawn, restFrom, 1);
    }
    return sum;
}

void costOfTime(const model::Job& job, const DealFigures& figures, const Terms& terms, Deal& out) {
    const Money loans = terms.purchaseLoan + terms.workLoan;
    out.interestPerDay =
        model::roundedMoney(model::multiplyWide(loans.minor(), terms.rate.basisPoints()),
                            model::multiplyWide(daysInYear(terms.basis), kWholeBasisPoints));
    out.holdingPerDay = model::roundedMoney(
        model::multiplyWide(terms.monthlyHolding.minor(), kMonthsPerYear), kDaysPerYear);
    if (out.saleOn && job.termEndOn) {
        out.daysToTermEnd = *job.termEndOn - *out.saleOn;
        if (*out.daysToTermEnd < 0) {
            out.extensionFee = model::share(job.extensionFee.value_or(Percent{}), loans);
            out.extensionPerDay = model::roundedMoney(
                out.extensionFee.minor(), std::max(-*out.daysToTermEnd, kLeastDaysExtended));
        }
    }
    out.dayCosts = out.interestPerDay + out.holdingPerDay + out.extensionPerDay;
    if (!out.saleOn || !job.purchasedOn) {
        return;
    }
    const Date sale = *out.saleOn;
    out.daysHeld = sale - *job.purchasedOn;
    out.holding = model::roundedMoney(
        model::multiplyWide(model::multiplyWide(terms.monthlyHolding.minor(), kMonthsPerYear),
                            *out.daysHeld),
        kDaysPerYear);
    const std::int64_t parts = yearFraction(sale, sale, terms.basis).denominator;
    out.interest =
        model::roundedMoney(model::multiplyWide(doubledPrincipalTime(job, figures, terms, sale),
                                                terms.rate.basisPoints()),
                            model::multiplyWide(kDoubledWholeBasisPoints, parts));
}

double asPercent(Money part, double whole) {
    return 100 * static_cast<double>(part.minor()) / whole;
}

// What comes out once price, resale and work are known. Requires: all three.
void result(const model::Job& job, const DealFigures& figures, const Terms& terms, Deal& out) {
    const Money resale = *job.resaleLikely;
    out.selling = model::share(terms.sellingShare, resale);
    const Money beforeSelling = terms.price + out.buyingCosts + out.points + out.lenderFees +
                                out.interest + out.extensionFee + out.holding + *figures.work;
    const auto profitAt = [&](Money value) {
        return value - beforeSelling - model::share(terms.sellingShare, value);
    };
    out.allIn = beforeSelling + out.selling;
    out.profit = profitAt(resale);
    if (job.resaleLow) {
        out.profitLow = profitAt(*job.resaleLow);
    }
    if (job.resaleHigh) {
        out.profitHigh = profitAt(*job.resaleHigh);
    }
    const std::int64_t keptShare = kWholeBasisPoints - terms.sellingShare.basisPoints();
    out.breakEvenResale = model::roundedMoney(
        model::multiplyWide(beforeSelling.minor(), kWholeBasisPoints), keptShare);
    if (resale > Money{}) {
        const auto whole = static_cast<double>(resale.minor());
        out.marginPercent = asPercent(*out.profit, whole);
        out.resaleDropPercent = asPercent(*out.profit, whole * static_cast<double>(keptShare) /
                                                           static_cast<double>(kWholeBasisPoints));
    }
    out.ruleOfThumbOffer = model::share(kRuleOfThumb, resale) - *figures.work;
    if (job.wantedProfit) {
        out.topOffer = resale - out.selling - (beforeSelling - terms.price) -
                       figures.contingencyLeft.value_or(Money{}) - *job.wantedProfit;
    }
}

}  // namespace

model::Result<Deal> deal(const model::Job& job, const DealFigures& figures) {
    if (auto fine = checkSigns(job, figures); !fine.ok()) {
        return fine.error();
    }
    const Terms terms = termsOf(job);
    if (terms.sellingShare >= Percent::whole()) {
        return model::cannotBeMet(
            "Selling costs and Commission together are 100 % or more: set them to what they are");
    }
    Deal out;
    out.saleOn = saleDay(job, figures);
    if (out.saleOn && job.purchasedOn && *out.saleOn < *job.purchasedOn) {
        return model::cannotBeMet("the sale (" + out.saleOn->toString() +
                                  ") comes before Purchased (" + job.purchasedOn->toString() +
                                  "): check Purchased, Finish and Days to resale");
    }
    noteAbsent(job, figures, terms, out);
    if (job.purchasedOn) {
        out.day91On = *job.purchasedOn + kInsuredLoanDay;
    }
    out.buyingCosts = model::share(job.buyingCosts.value_or(Percent{}), terms.price);
    out.points = model::share(job.purchasePoints.value_or(Percent{}), terms.purchaseLoan) +
                 model::share(job.workPoints.value_or(Percent{}), terms.workLoan);
    out.lenderFees = job.lenderFees.value_or(Money{});
    if (job.purchasePrice) {
        out.cashAtClosing =
            terms.price - terms.purchaseLoan + out.buyingCosts + out.points + out.lenderFees;
    }
    costOfTime(job, figures, terms, out);
    if (out.missing.empty()) {
        result(job, figures, terms, out);
    }
    return out;
}

}  // namespace ledgerboard::compute
