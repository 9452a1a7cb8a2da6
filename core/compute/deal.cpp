#include "core/compute/deal.h"

#include <algorithm>
#include <string>

#include "core/compute/deal_parts.h"
#include "core/model/saying.h"

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
constexpr int kSecondAppraisalDay = 180;
constexpr Percent kRuleOfThumb = Percent::of(70);

// Twice the sum of principal x days (in the basis' own parts of a year) up to the sale; twice, so
// that the half of what is not yet drawn stays whole.
Wide doubledPrincipalTime(const model::Job& job, const DealFigures& figures, const DealTerms& terms,
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
    if (figures.drawsAhead) {
        for (const DatedAmount& draw : *figures.drawsAhead) {
            charge(draw.amount, draw.on, 2);
        }
        return sum;
    }
    if (figures.asOf) {
        restFrom = std::max(bought, *figures.asOf);
    }
    if (drawn < terms.workLoan) {
        charge(terms.workLoan - drawn, restFrom, 1);
    }
    return sum;
}

void costOfTime(const model::Job& job, const DealFigures& figures, const DealTerms& terms,
                Deal& out) {
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
    out.holding = holdingBy(job, terms, sale);
    out.interest = interestBy(job, figures, terms, sale);
}

double asPercent(Money part, double whole) {
    return 100 * static_cast<double>(part.minor()) / whole;
}

// What comes out once price, resale and work are known. Requires: all three.
void result(const model::Job& job, const DealFigures& figures, const DealTerms& terms, Deal& out) {
    const Money resale = std::max(Money{}, *job.resaleLikely - out.seasonDrop);
    out.selling = model::share(terms.sellingShare, resale);
    const Money beforeSelling = terms.price + out.buyingCosts + out.points + out.lenderFees +
                                out.visitFees + out.interest + out.extensionFee + out.holding +
                                *figures.work;
    const auto profitAt = [&](Money listed) {
        const Money value = std::max(Money{}, listed - out.seasonDrop);
        return value - beforeSelling - model::share(terms.sellingShare, value);
    };
    out.allIn = beforeSelling + out.selling;
    out.profit = profitAt(*job.resaleLikely);
    if (job.resaleLow) {
        out.profitLow = profitAt(*job.resaleLow);
    }
    if (job.resaleHigh) {
        out.profitHigh = profitAt(*job.resaleHigh);
    }
    const std::int64_t keptShare = kWholeBasisPoints - terms.sellingShare.basisPoints();
    out.breakEvenResale = model::roundedMoney(
        model::multiplyWide(beforeSelling.minor(), kWholeBasisPoints), keptShare);
    out.resale = resale;
    out.isDoublePrice = resale.minor() / 2 >= terms.price.minor();
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

Money interestBy(const model::Job& job, const DealFigures& figures, const DealTerms& terms,
                 Date to) {
    const std::int64_t parts = yearFraction(to, to, terms.basis).denominator;
    return model::roundedMoney(model::multiplyWide(doubledPrincipalTime(job, figures, terms, to),
                                                   terms.rate.basisPoints()),
                               model::multiplyWide(kDoubledWholeBasisPoints, parts));
}

Money holdingBy(const model::Job& job, const DealTerms& terms, Date to) {
    return model::roundedMoney(
        model::multiplyWide(model::multiplyWide(terms.monthlyHolding.minor(), kMonthsPerYear),
                            to - *job.purchasedOn),
        kDaysPerYear);
}

model::Result<Deal> deal(const model::Job& job, const DealFigures& figures) {
    if (auto fine = checkDealInputs(job, figures); !fine.ok()) {
        return fine.error();
    }
    const DealTerms terms = dealTermsOf(job);
    if (terms.sellingShare >= Percent::whole()) {
        return model::cannotBeMet(
            "Selling costs and Commission together are 100 % or more: set them to what they are");
    }
    Deal out;
    out.saleOn = saleDay(job, figures);
    if (out.saleOn && job.purchasedOn && *out.saleOn < *job.purchasedOn) {
        return model::cannotBeMet(model::saying(
            "the sale (%1) comes before Purchased (%2): check Purchased, Finish and Days to resale",
            out.saleOn->toString(), job.purchasedOn->toString()));
    }
    noteAbsent(job, figures, terms, out);
    if (job.purchasedOn) {
        out.day91On = *job.purchasedOn + kInsuredLoanDay;
        out.day180On = *job.purchasedOn + kSecondAppraisalDay;
    }
    out.buyingCosts = model::share(job.buyingCosts.value_or(Percent{}), terms.price);
    out.points = model::share(job.purchasePoints.value_or(Percent{}), terms.purchaseLoan) +
                 model::share(job.workPoints.value_or(Percent{}), terms.workLoan);
    out.lenderFees = job.lenderFees.value_or(Money{});
    out.visitFees = figures.visitFees;
    out.seasonDrop = out.saleOn ? seasonDropOn(job, *out.saleOn) : Money{};
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
