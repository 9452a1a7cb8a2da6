// Protects, over made-up jobs from fixed seeds: cash ends where the deal says, to the cent;
// payments so far and ahead add up to the forecast; draws never exceed work in place less holdback;
// sums by trade, space and crew add up with contracts without items among them; nothing is NaN or
// infinite. Ten times as many jobs where LEDGERBOARD_LONG=1 is set.
#include <cmath>
#include <cstdlib>
#include <gtest/gtest.h>
#include <random>
#include <string_view>

#include "core/compute/cash_plan.h"
#include "core/compute/deal_return.h"
#include "core/compute/profit_table.h"

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");

// Makes jobs up. Everything entered is allowed by the catalog; much of it is odd.
class MadeUp {
  public:
    explicit MadeUp(std::uint32_t seed) : chance_(seed) {}

    SampleJob job() {
        SampleJob job;
        fillJob(job.rows.job);
        const int crews = upTo(3);
        for (int k = 0; k < crews; ++k) {
            Crew& crew = job.add(job.rows.crews);
            crew.name = "Crew " + std::to_string(k);
            crew.trade = k == 0 ? "tile" : "paint";
            crew.insuredUntil = sometimes() ? std::optional(near()) : std::nullopt;
        }
        const int lines = sometimes() ? 1 + upTo(3) : 0;
        for (int k = 0; k < lines; ++k) {
            LenderLine& line = job.add(job.rows.lender_lines);
            line.name = "Line " + std::to_string(k);
            line.amount = cents(2'000'000);
            line.shareLent = sometimes() ? std::optional(anyPercent()) : std::nullopt;
        }
        const int contracts = upTo(4);
        for (int k = 0; k < contracts; ++k) {
            addContract(job, crews);
        }
        const int items = upTo(8);
        for (int k = 0; k < items; ++k) {
            addItem(job, contracts, crews, lines);
        }
        const int spends = upTo(20);
        for (int k = 0; k < spends; ++k) {
            addSpend(job, items, contracts);
        }
        const int draws = upTo(3);
        for (int k = 0; k < draws; ++k) {
            addDraw(job, lines);
        }
        return job;
    }

  private:
    int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(chance_); }

    bool sometimes() { return upTo(1) == 1; }

    Money cents(std::int64_t most) {
        return Money::fromMinor(std::uniform_int_distribution<std::int64_t>(0, most)(chance_));
    }

    Percent anyPercent() { return Percent::fromBasisPoints(upTo(10'000)); }

    Date near() { return kToday + upTo(120) - 60; }

    Date past() { return kToday - upTo(60); }

    void fillJob(Job& job) {
        job.purchasePrice = cents(30'000'000);
        job.purchasedOn = kToday - upTo(120);
        job.resaleLikely = cents(60'000'000);
        job.buyingCosts = Percent::fromBasisPoints(upTo(500));
        job.sellingCosts = Percent::fromBasisPoints(upTo(900));
        job.targetFinishOn = near();
        job.resaleDays = upTo(90);
        job.loanRate = Percent::fromBasisPoints(upTo(1'500));
        job.interestBasis = static_cast<InterestBasis>(upTo(4));
        job.interestOn = static_cast<ChargedOn>(upTo(2));
        job.purchaseLoan = sometimes() ? std::optional(cents(20'000'000)) : std::nullopt;
        job.workLoan = sometimes() ? std::optional(cents(9'000'000)) : std::nullopt;
        job.drawLimit = sometimes() ? std::optional(cents(9'000'000)) : std::nullopt;
        job.purchasePoints = Percent::fromBasisPoints(upTo(300));
        job.workPoints = Percent::fromBasisPoints(upTo(300));
        job.lenderFees = cents(200'000);
        job.holdback = sometimes() ? std::optional(Percent::of(upTo(20))) : std::nullopt;
        job.visitFee = cents(30'000);
        job.visitDays = upTo(5);
        job.fundDays = upTo(5);
        job.termEndOn = sometimes() ? std::optional(near()) : std::nullopt;
        job.extensionFee = Percent::fromBasisPoints(upTo(100));
        job.holdingCosts = {{"taxes", cents(50'000)}, {"utilities", cents(30'000)}};
        job.cashAtStart = sometimes() ? std::optional(cents(9'000'000)) : std::nullopt;
        if (sometimes()) {
            job.seasonDrop = {{near().toString(), cents(2'000'000)}};
        }
    }

    void addContract(SampleJob& job, int crews) {
        Contract& contract = job.contract("Contract", "0", "");
        contract.sum = cents(1'500'000);
        contract.type = sometimes() ? ContractKind::Subcontract : ContractKind::Order;
        contract.signedOn = upTo(3) > 0 ? std::optional(past()) : std::nullopt;
        contract.deposit = sometimes() ? std::optional(cents(300'000)) : std::nullopt;
        contract.retainage = sometimes() ? std::optional(Percent::of(upTo(15))) : std::nullopt;
        contract.retainageUntil = sometimes() ? std::optional(anyPercent()) : std::nullopt;
        contract.finishOn = sometimes() ? std::optional(near()) : std::nullopt;
        contract.acceptedOn = upTo(3) == 0 ? std::optional(past()) : std::nullopt;
        contract.waiverReceivedOn = upTo(3) == 0 ? std::optional(past()) : std::nullopt;
        if (sometimes()) {
            contract.paymentSteps = {{"begun", Percent::of(upTo(60))},
                                     {"done", Percent::of(upTo(60))}};
        }
        if (crews > 0) {
            contract.crew = id<Kind::Crew>(static_cast<std::uint32_t>(1 + upTo(crews - 1)));
        }
    }

    void addItem(SampleJob& job, int contracts, int crews, int lines) {
        Item& item = job.item("item " + std::to_string(job.rows.items.size()), "0");
        item.lumpSum = cents(1'500'000);
        item.boughtGoods = upTo(4) == 0;
        item.estimateToFinish = upTo(5) == 0 ? std::optional(cents(500'000)) : std::nullopt;
        item.contract =
            contracts > 0 && sometimes()
                ? id<Kind::Contract>(static_cast<std::uint32_t>(1 + upTo(contracts - 1)))
                : Id<Kind::Contract>();
        item.crew = crews > 0 && sometimes()
                        ? id<Kind::Crew>(static_cast<std::uint32_t>(1 + upTo(crews - 1)))
                        : Id<Kind::Crew>();
        item.lenderLine =
            lines > 0 ? id<Kind::LenderLine>(static_cast<std::uint32_t>(1 + upTo(lines - 1)))
                      : Id<Kind::LenderLine>();
        if (sometimes()) {
            item.plannedStartOn = near();
            item.plannedFinishOn = *item.plannedStartOn + upTo(20);
        }
        item.daysLikely =
            sometimes() ? std::optional(Quantity::fromThousandths(upTo(9'000))) : std::nullopt;
        const int marks = upTo(2);
        const auto number = static_cast<std::uint32_t>(job.rows.items.size());
        for (int k = 0; k < marks; ++k) {
            job.mark(number, past().toString(), anyPercent().toString(),
                     static_cast<std::uint32_t>(1 + upTo(1)));
        }
    }

    void addSpend(SampleJob& job, int items, int contracts) {
        constexpr SpendKind kKinds[] = {SpendKind::Invoice, SpendKind::Payment, SpendKind::Receipt,
                                        SpendKind::Fee, SpendKind::Refund};
        Spend& spend = job.spend(kKinds[upTo(4)], past().toString(), "0");
        spend.amount = cents(600'000);
        if (items > 0 && sometimes()) {
            spend.item = id<Kind::Item>(static_cast<std::uint32_t>(1 + upTo(items - 1)));
        }
        if (contracts > 0 && sometimes()) {
            spend.contract =
                id<Kind::Contract>(static_cast<std::uint32_t>(1 + upTo(contracts - 1)));
        }
        if (spend.type == SpendKind::Invoice) {
            spend.dueOn = sometimes() ? std::optional(near()) : std::nullopt;
            spend.held = upTo(3) == 0 ? std::optional(cents(spend.amount->minor())) : std::nullopt;
        }
        if (upTo(9) == 0) {
            spend.spentOn.reset();
        }
    }

    void addDraw(SampleJob& job, int lines) {
        Draw& draw = job.add(job.rows.draws);
        draw.number = static_cast<std::int64_t>(job.rows.draws.size());
        draw.askedOn = past();
        draw.fundedOn = sometimes() ? std::optional(past()) : std::nullopt;
        draw.amount = sometimes() ? std::optional(cents(1'000'000)) : std::nullopt;
        draw.fee = sometimes() ? std::optional(cents(20'000)) : std::nullopt;
        for (int k = 0; k < lines && sometimes(); ++k) {
            DrawLine& part = job.add(job.rows.draw_lines);
            part.draw = draw.id;
            part.lenderLine = id<Kind::LenderLine>(static_cast<std::uint32_t>(k + 1));
            part.asked = anyPercent();
            part.allowed = sometimes() ? std::optional(anyPercent()) : std::nullopt;
        }
    }

    std::mt19937 chance_;
};

std::uint32_t jobs() {
    const char* asked = std::getenv("LEDGERBOARD_LONG");
    return asked != nullptr && std::string_view(asked) == "1" ? 20'000U : 2'000U;
}

void expectCashEndsWhereTheDealSays(const SampleJob& job, const JobFigures& figures,
                                    const CashPlan& plan) {
    Money work;
    for (const CashMove& move : plan.work) {
        work -= move.amount;
    }
    ASSERT_EQ(work, figures.job.forecast);
    const auto again = deal(job.rows.job, plan.figures);
    ASSERT_TRUE(again.ok());
    ASSERT_EQ(again.value().profit, plan.line.deal.profit);
    if (plan.figures.work) {
        ASSERT_TRUE(plan.line.reachesSale);
        ASSERT_EQ(plan.line.end - plan.line.start, plan.line.deal.profit);
    }
    ASSERT_EQ(balanceOn(plan.line, kToday + 100'000), plan.line.end);
}

void expectDrawsWithinWorkInPlace(const SampleJob& job, const DrawsNow& now) {
    const Percent holdback = now.isFinal ? Percent{} : job.rows.job.holdback.value_or(Percent{});
    Money total;
    for (const LenderLineFigures& line : now.lines) {
        ASSERT_GE(line.draw, Money{});
        if (line.draw > Money{}) {
            ASSERT_LE(line.inPlace.paidBefore + line.draw, lentInPlace(line.inPlace, holdback));
        } else {
            ASSERT_FALSE(line.whyNot.empty());
        }
        total += line.draw;
    }
    ASSERT_EQ(total, now.total);
    if (now.limit && now.total > Money{}) {
        ASSERT_LE(now.paidBefore + now.total, *now.limit);
    }
}

void expectGroupsAddUp(const JobFigures& figures) {
    for (const auto* groups : {&figures.spaces, &figures.trades, &figures.crews}) {
        Money forecast;
        Money committed;
        Money held;
        for (const GroupFigures& group : *groups) {
            forecast += group.forecast;
            committed += group.committed;
            held += group.held;
        }
        ASSERT_EQ(forecast, figures.job.forecast);
        ASSERT_EQ(committed, figures.job.committed);
        ASSERT_EQ(held, figures.job.held);
    }
    ASSERT_EQ(figures.job.owed, figures.job.billed - figures.job.held - figures.job.paid);
}

void expectFinite(const DealReturn& earned) {
    for (const auto& rate :
         {earned.onCashPercent, earned.yearlySimplePercent, earned.yearlyDatedPercent}) {
        ASSERT_TRUE(!rate || std::isfinite(*rate));
    }
}

TEST(CashProperty, OverMadeUpJobs) {
    int withProfit = 0;
    int withDraw = 0;
    int withContractLine = 0;
    for (std::uint32_t seed = 1; seed <= jobs() && !HasFatalFailure(); ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        const SampleJob job = MadeUp(seed).job();
        const JobFigures figures = figuresOf(job.rows, kToday);
        const auto plan = cashPlanOf(
            job.rows, figures, workAheadOf(job.rows, figures, planOf(job.rows, figures, kToday)),
            std::nullopt, kToday);
        if (figures.job.forecast < Money{}) {  // more refunded than was ever billed
            ASSERT_FALSE(plan.ok());
            ASSERT_NE(plan.error().message.find("Forecast of the work"), std::string::npos);
            continue;
        }
        ASSERT_TRUE(plan.ok()) << plan.error().message;
        expectCashEndsWhereTheDealSays(job, figures, plan.value());
        expectDrawsWithinWorkInPlace(job, plan.value().drawsNow);
        expectGroupsAddUp(figures);
        expectFinite(dealReturnOf(plan.value().line));
        ASSERT_TRUE(profitTableOf(job.rows.job, plan.value().figures).ok());
        withProfit += plan.value().line.deal.profit ? 1 : 0;
        withDraw += plan.value().drawsNow.total > Money{} ? 1 : 0;
        for (const ScopeLine& line : figures.scope.lines) {
            withContractLine += line.kind == LineKind::Contract ? 1 : 0;
        }
    }
    // The jobs made up do reach what is checked.
    EXPECT_GT(withProfit, 100);
    EXPECT_GT(withDraw, 100);
    EXPECT_GT(withContractLine, 100);
}

}  // namespace
