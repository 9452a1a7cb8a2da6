// Protects what must hold for any job whatever: parts add up to their whole to the cent, sums by
// space, trade and crew are the job's, percents stay within 0 and 100, movers add up, the S-curve
// ends with today's figures. Jobs are drawn at random; a failure prints its seed.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include "core/compute/as_of.h"
#include "core/compute/budget.h"
#include "core/compute/concerns.h"
#include "core/compute/movers.h"
#include "core/compute/plan.h"
#include "core/compute/series.h"
#include "core/compute/waits.h"

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kBegin = day("2026-04-06");
const Date kToday = day("2026-05-22");

int from(int low, int high) {
    return *rc::gen::inRange(low, high + 1);
}

bool oneIn(int n) {
    return from(1, n) == 1;
}

Money someMoney(int low, int high) {
    return Money::fromMinor(from(low, high));
}

Date someDay() {
    return kBegin + from(-5, 60);
}

// Nil now and then, and now and then of a record that is not there.
template <Kind K, class Row>
Id<K> oneOf(const std::vector<Row>& rows) {
    const int number = from(0, static_cast<int>(rows.size()) + 1);
    return number == 0 ? Id<K>() : id<K>(static_cast<std::uint32_t>(number));
}

void addScope(SampleJob& job) {
    for (int k = from(0, 3); k > 0; --k) {
        job.add(job.rows.spaces).name = "space";
    }
    for (int k = from(0, 3); k > 0; --k) {
        job.add(job.rows.crews).trade = k % 2 == 0 ? "Tile" : "paint";
    }
    for (int k = from(0, 3); k > 0; --k) {
        Contract& contract = job.contract("contract", "0", "");
        contract.sum = someMoney(0, 500'000);
        contract.crew = oneOf<Kind::Crew>(job.rows.crews);
        contract.retainage = Percent::of(from(0, 20));
        contract.signedOn = oneIn(4) ? std::nullopt : std::optional<Date>(someDay());
    }
    for (int k = from(0, 2); k > 0; --k) {
        const Id<Kind::Alternate> alternate = job.add(job.rows.alternates).id;
        for (int option = 0; option < 2; ++option) {
            Option& added = job.add(job.rows.options);
            added.alternate = alternate;
            added.cost = oneIn(2) ? std::optional<Money>(someMoney(0, 90'000)) : std::nullopt;
        }
        job.rows.alternates.back().carried = oneOf<Kind::Option>(job.rows.options);
        job.rows.alternates.back().chosen =
            oneIn(2) ? oneOf<Kind::Option>(job.rows.options) : Id<Kind::Option>();
    }
    for (int k = from(0, 12); k > 0; --k) {
        Item& item = job.item("item", "0");
        item.lumpSum = someMoney(0, 200'000);
        item.treatment = static_cast<Treatment>(from(0, 9));
        item.measure = static_cast<Measure>(from(0, 5));
        item.quantity = Quantity::fromThousandths(from(0, 20'000));
        item.space = oneOf<Kind::Space>(job.rows.spaces);
        item.crew = oneOf<Kind::Crew>(job.rows.crews);
        item.contract = oneOf<Kind::Contract>(job.rows.contracts);
        item.option = oneIn(3) ? oneOf<Kind::Option>(job.rows.options) : Id<Kind::Option>();
        item.trade = oneIn(2) ? "tile" : "";
        item.boughtGoods = oneIn(4);
        item.costLow = oneIn(3) ? std::optional<Money>(someMoney(0, 200'000)) : std::nullopt;
        item.costHigh = oneIn(3) ? std::optional<Money>(someMoney(0, 300'000)) : std::nullopt;
        item.daysLikely = Quantity::fromThousandths(from(0, 9'000));
        if (!oneIn(5)) {
            item.plannedStartOn = someDay();
            item.plannedFinishOn = *item.plannedStartOn + from(0, 10);
        }
    }
}

void addMoney(SampleJob& job) {
    for (int k = from(0, 6); k > 0; --k) {
        Change& change = job.change("change", "0", "");
        change.amount = someMoney(-50'000, 50'000);
        change.askedOn = someDay();
        change.signedOn = oneIn(3) ? std::nullopt : std::optional<Date>(*change.askedOn + 1);
        change.contract = oneOf<Kind::Contract>(job.rows.contracts);
        change.paidFrom = oneIn(2) ? PaidFrom::Contingency : PaidFrom::NewMoney;
        for (int item = from(0, 3); item > 0; --item) {
            change.items.push_back(oneOf<Kind::Item>(job.rows.items));
        }
        if (oneIn(3)) {
            change.split = {{oneOf<Kind::Item>(job.rows.items), someMoney(-9'000, 9'000)}};
        }
    }
    for (int k = from(0, 25); k > 0; --k) {
        Spend& spend = job.spend(static_cast<SpendKind>(from(0, 5)), "2026-05-01", "0");
        spend.amount = oneIn(10) ? std::nullopt : std::optional<Money>(someMoney(-1'000, 90'000));
        spend.spentOn = someDay();
        spend.dueOn = someDay();
        spend.item = oneOf<Kind::Item>(job.rows.items);
        spend.contract = oneOf<Kind::Contract>(job.rows.contracts);
        spend.crew = oneOf<Kind::Crew>(job.rows.crews);
        spend.held = oneIn(2) ? std::optional<Money>(someMoney(0, 5'000)) : std::nullopt;
        spend.pays = oneOf<Kind::Spend>(job.rows.spends);
        spend.voids = oneIn(8) ? oneOf<Kind::Spend>(job.rows.spends) : Id<Kind::Spend>();
        if (oneIn(3)) {
            spend.split = {{oneOf<Kind::Item>(job.rows.items), someMoney(0, 30'000)},
                           {oneOf<Kind::Item>(job.rows.items), someMoney(0, 30'000)}};
        }
    }
}

void addMarks(SampleJob& job) {
    for (int k = from(0, 40); k > 0; --k) {
        Mark& mark = job.mark(1, "2026-05-01", "0", static_cast<std::uint32_t>(from(1, 2)));
        mark.item = oneOf<Kind::Item>(job.rows.items);
        mark.markedOn = someDay();
        mark.percent = Percent::fromBasisPoints(from(-500, 12'000));
        if (oneIn(4)) {
            mark.percent.reset();
            mark.count = Quantity::fromThousandths(from(-100, 30'000));
        }
    }
}

// Mostly from an earlier item to a later one; now and then any two, so that there are loops too.
void addLinks(SampleJob& job) {
    const auto items = static_cast<int>(job.rows.items.size());
    for (int k = from(0, 6); k > 0 && items > 1; --k) {
        Link& link = job.add(job.rows.links);
        const int to = from(2, items);
        const int before = oneIn(10) ? from(1, items) : from(1, to - 1);
        link.fromItem = id<Kind::Item>(static_cast<std::uint32_t>(before));
        link.toItem = id<Kind::Item>(static_cast<std::uint32_t>(to));
        link.type = static_cast<LinkKind>(from(0, 4));
        link.lag = Quantity::fromThousandths(from(-3000, 3000));
    }
}

SampleJob someJob() {
    SampleJob job;
    job.rows.job.contingency = Percent::of(from(0, 20));
    addScope(job);
    if (oneIn(2)) {
        const Frozen frozen = freeze(job.rows);
        Baseline& baseline = job.add(job.rows.baselines);
        baseline.frozenOn = kBegin;
        const Id<Kind::Baseline> of = baseline.id;
        for (const FrozenItem& item : frozen.items) {
            BaselineItem& row = job.add(job.rows.baseline_items);
            row.baseline = of;
            row.item = item.item;
            row.budget = item.budget;
            row.plannedStartOn = item.plannedStartOn;
            row.plannedFinishOn = item.plannedFinishOn;
        }
        for (Alternate& alternate : job.rows.alternates) {  // and then minds are changed
            alternate.chosen = oneOf<Kind::Option>(job.rows.options);
        }
    }
    addMoney(job);
    addMarks(job);
    addLinks(job);
    return job;
}

// The sums of a list of figures, as one.
template <class Rows>
Figures sumOf(const Rows& rows) {
    Figures sum;
    for (const Figures& row : rows) {
        sum.baseline += row.baseline;
        sum.signedChanges += row.signedChanges;
        sum.budgetNow += row.budgetNow;
        sum.committed += row.committed;
        sum.billed += row.billed;
        sum.paid += row.paid;
        sum.held += row.held;
        sum.owed += row.owed;
        sum.earned += row.earned;
        sum.planned += row.planned;
        sum.billedUnplanned += row.billedUnplanned;
        sum.toGo += row.toGo;
        sum.forecast += row.forecast;
        sum.items += row.items;
    }
    return sum;
}

Figures withoutPercents(Figures figures) {
    figures.shown = Percent{};
    figures.seen = Percent{};
    return figures;
}

bool isPercent(Percent percent) {
    return percent >= Percent{} && percent <= Percent::whole();
}

RC_GTEST_PROP(AnyJob, SumsBySpaceTradeAndCrewAreTheJobs, ()) {
    const JobFigures out = figuresOf(asOf(someJob().rows, kToday), kToday);
    const Figures job = withoutPercents(out.job);
    RC_ASSERT(sumOf(out.lines) == job);
    RC_ASSERT(sumOf(out.spaces) == job);
    RC_ASSERT(sumOf(out.trades) == job);
    RC_ASSERT(sumOf(out.crews) == job);
    RC_ASSERT(job.budgetNow == job.baseline + job.signedChanges);
    RC_ASSERT(job.forecast == job.billed + job.toGo);
    RC_ASSERT(job.owed == job.billed - job.held - job.paid);
}

RC_GTEST_PROP(AnyJob, NothingIsLostOnTheWayFromTheRows, ()) {
    const JobRows rows = asOf(someJob().rows, kToday);
    const JobFigures out = figuresOf(rows, kToday);
    Money billed;
    Money paid;
    for (const Spend& spend : rows.spends) {
        const Money amount = spend.amount.value_or(Money{});
        const bool both = spend.type == SpendKind::Receipt || spend.type == SpendKind::Fee;
        billed += both || spend.type == SpendKind::Invoice ? amount : Money{};
        paid += both || spend.type == SpendKind::Payment ? amount : Money{};
        if (spend.type == SpendKind::Refund) {
            billed -= amount;
            paid -= amount;
        }
    }
    RC_ASSERT(out.job.billed == billed);
    RC_ASSERT(out.job.paid == paid);
    Money changes;
    for (const Change& change : rows.changes) {
        changes += change.signedOn ? changeAmount(change) : Money{};
    }
    RC_ASSERT(out.job.signedChanges == changes);
    Money held;
    Money committed;
    for (const SpendRead& read : out.spending) {
        Money parts;
        for (const LineAmount& part : read.parts) {
            parts += part.amount;
        }
        RC_ASSERT(parts == *rows.spends[read.spend].amount);
        held += read.effect.held;
    }
    for (const ContractFigures& contract : out.contracts) {
        committed += contract.now;
    }
    RC_ASSERT(out.job.held == held);
    RC_ASSERT(out.job.committed == committed);
}

RC_GTEST_PROP(AnyJob, FrozenMoneyStaysWhateverIsChosen, ()) {
    const JobRows rows = someJob().rows;
    const ScopeLines scope = scopeLinesOf(rows);
    Money lines;
    Money options;
    for (const ScopeLine& line : scope.lines) {
        lines += line.baseline;
        options += line.kind == LineKind::Option ? line.baseline : Money{};
    }
    RC_ASSERT(lines == scope.baselineTotal);
    Money frozen;
    for (const BaselineItem& item : rows.baseline_items) {
        frozen += *item.budget;
    }
    // An option without items can't be frozen, so its cost may stand on top.
    RC_ASSERT(!scope.baseline || (frozen <= lines && lines <= frozen + options));
}

RC_GTEST_PROP(AnyJob, PercentsStayWithinAHundred, ()) {
    const JobFigures out = figuresOf(asOf(someJob().rows, kToday), kToday);
    for (const LineFigures& line : out.lines) {
        RC_ASSERT(isPercent(line.shown) && isPercent(line.seen));
        RC_ASSERT(line.toGo >= Money{});
    }
    for (const auto* groups : {&out.spaces, &out.trades, &out.crews}) {
        for (const GroupFigures& group : *groups) {
            RC_ASSERT(isPercent(group.shown) && isPercent(group.seen));
        }
    }
    for (const ContractFigures& contract : out.contracts) {
        RC_ASSERT(isPercent(contract.shown) && isPercent(contract.seen));
        RC_ASSERT(contract.payableToday >= Money{} && contract.paidAhead >= Money{});
    }
    RC_ASSERT(isPercent(out.job.shown) && isPercent(out.job.seen));
}

RC_GTEST_PROP(AnyJob, MoversAddUpToTheChangeInWhatItWillCost, ()) {
    SampleJob job = someJob();
    const Date then = kToday - 7;
    Review review = reviewOf(figuresOf(asOf(job.rows, then), then), then);
    review.id = id<Kind::Review>(1);
    job.rows.reviews.push_back(review);
    const JobRows rows = asOf(job.rows, kToday);
    const JobFigures now = figuresOf(rows, kToday);
    const Movers out = moversOf(rows, now, kToday);
    Money sum = out.others;
    for (const Mover& mover : out.largest) {
        sum += mover.moved;
    }
    RC_ASSERT(out.largest.size() <= 5U);
    RC_ASSERT(sum == out.willCostNow - out.willCostThen);
    RC_ASSERT(out.willCostNow == now.job.forecast);
}

RC_GTEST_PROP(AnyJob, TheCurveEndsWithTodaysFigures, ()) {
    const JobRows rows = asOf(someJob().rows, kToday);
    const JobFigures now = figuresOf(rows, kToday);
    const auto points = seriesOf(rows, now.scope, kBegin - 10, kToday, kToday, Every::Week);
    RC_ASSERT(points.back().on == kToday);
    RC_ASSERT(points.back().planned == now.job.planned);
    RC_ASSERT(points.back().earned == now.job.earned);
    RC_ASSERT(points.back().billed == now.job.billed);
}

RC_GTEST_PROP(AnyJob, CanBeAskedEverything, ()) {
    // No row, however odd, may stop a page from being made.
    const JobRows rows = asOf(someJob().rows, kToday);
    const JobFigures now = figuresOf(rows, kToday);
    const Plan plan = planOf(rows, now, kToday);
    for (const Concern& concern : concernsOf(rows, now, plan, kToday)) {
        RC_ASSERT(!concern.rule.isEmpty());
    }
    for (const Wait& wait : waitsOf(rows, now, plan, kToday)) {
        RC_ASSERT(!wait.on || *wait.on <= kToday + 14);
    }
    RC_ASSERT(!plan.on || plan.isFinished || *plan.on > kToday);
    for (const PlanItem& item : plan.items) {
        RC_ASSERT(item.totalFloat >= 0 && item.freeFloat >= 0);
        RC_ASSERT(item.state == PlanState::Finished || !plan.loop.empty() ||
                  (item.finishOn > kToday && item.latestFinishOn >= item.finishOn));
    }
    for (const Pace& pace : plan.paces) {
        RC_ASSERT(pace.thousandths >= 800 && pace.thousandths <= 2000);
    }
}

RC_GTEST_PROP(Split, AddsUpToTheCent, (std::vector<std::int32_t> weights, std::int32_t total)) {
    std::vector<Money> budgets;
    for (const std::int32_t weight : weights) {
        budgets.push_back(Money::fromMinor(weight));
    }
    const auto parts = splitByBudget(Money::fromMinor(total), budgets);
    Money sum;
    for (const Money part : parts) {
        sum += part;
    }
    RC_ASSERT(parts.size() == budgets.size());
    RC_ASSERT(parts.empty() || sum == Money::fromMinor(total));
}

}  // namespace
