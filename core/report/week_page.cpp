#include "core/report/week_page.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/compute/as_of.h"
#include "core/compute/budget.h"
#include "core/compute/deal.h"
#include "core/compute/forecasts.h"
#include "core/compute/job_crew_plan.h"
#include "core/compute/job_network.h"
#include "core/compute/job_risk.h"
#include "core/compute/movers.h"
#include "core/compute/plan.h"
#include "core/compute/planned_value.h"
#include "core/compute/series.h"
#include "core/compute/this_week.h"
#include "core/model/saying.h"
#include "core/report/deal_figures.h"
#include "core/report/week_answers.h"
#include "core/report/week_parts.h"

namespace ledgerboard::report {

namespace {

using compute::JobFigures;
using model::Date;
using model::JobRows;
using model::Money;
using model::Percent;
using model::Saying;
using model::saying;

constexpr std::size_t kMostPhotos = 3;

// All that is computed of a job, once.
struct Computed {
    JobRows rows;
    JobFigures figures;
    compute::Plan plan;
    compute::Movers movers;
    std::optional<compute::CashPlan> cash;  // the deal's inputs and its cash line
    std::optional<compute::Deal> deal;
    std::string dealError;
    std::optional<compute::JobRisk> risk;
    std::vector<compute::StackedDays> stacked;
};

// The page's spreads come out the same every time they are asked for.
constexpr compute::RiskManner kRisk{2'000, 1, compute::kUsualCorrelation};

Computed computedOf(const JobRows& rows, Date today) {
    Computed out{compute::asOf(rows, today), {}, {}, {}, {}, {}, {}, {}, {}};
    out.figures = compute::figuresOf(out.rows, today);
    const compute::JobNetwork network = compute::jobNetworkOf(out.rows, out.figures, today);
    out.plan = compute::planOf(out.rows, out.figures, network);
    if (out.plan.loop.empty()) {
        out.stacked = compute::stackedDaysOf(out.rows, out.figures, network);
    }
    out.movers = compute::moversOf(out.rows, out.figures, today);
    auto cash = cashPlanFor(out.rows, out.figures, out.plan, today);
    const compute::DealFigures figures =
        cash.ok() ? cash.value().figures
                  : compute::dealFiguresWithoutPlan(out.rows, out.figures, out.plan.on, today);
    auto deal = cash.ok() ? model::Result<compute::Deal>(cash.value().line.deal)
                          : compute::deal(out.rows.job, figures);
    if (deal.ok()) {
        out.deal = std::move(deal).value();
    } else {
        out.dealError = deal.error().message;
    }
    if (out.figures.job.items > 0 && !out.plan.isFinished) {
        auto risk = compute::jobRiskOf(out.rows, out.figures, network, figures, kRisk);
        if (risk.ok()) {
            out.risk = std::move(risk).value();
        }
    }
    if (cash.ok()) {
        out.cash = std::move(cash).value();
    }
    return out;
}

const model::Review* reviewBefore(const JobRows& rows, Date today) {
    const auto at = compute::lastReview(rows, today);
    return at ? &rows.reviews[*at] : nullptr;
}

const model::Baseline* baselineOf(const JobRows& rows) {
    const auto at = compute::latestBaseline(rows);
    return at ? &rows.baselines[*at] : nullptr;
}

WillCost willCost(const Computed& all, Date today) {
    WillCost cost{all.figures.job.forecast, all.figures.job.budgetNow, {}, {}};
    if (all.movers.since == compute::Since::Nothing) {
        return cost;
    }
    cost.forecastBefore = all.movers.willCostThen;
    if (all.movers.since == compute::Since::Baseline) {
        cost.overBefore = Money{};  // a baseline is its own budget
    } else if (const auto* review = reviewBefore(all.rows, today)) {
        if (const auto budget = compute::keptFigure(*review, compute::kBudgetNow)) {
            cost.overBefore = *cost.forecastBefore - *budget;
        }
    }
    return cost;
}

WillFinish willFinish(const Computed& all, Date today) {
    WillFinish finish;
    finish.on = all.plan.on;
    finish.isFinished = all.plan.isFinished;
    finish.hasLoop = !all.plan.loop.empty();
    const model::Baseline* baseline = baselineOf(all.rows);
    finish.planned = baseline != nullptr && baseline->finishOn ? baseline->finishOn
                                                               : all.rows.job.targetFinishOn;
    const compute::WorkCalendar calendar(all.rows.job);
    if (finish.planned && finish.on) {
        finish.workingDaysLate = compute::workDaysLate(calendar, *finish.planned, *finish.on);
    }
    if (const auto* review = reviewBefore(all.rows, today)) {
        finish.before = review->willFinishOn;
    } else if (baseline != nullptr) {
        finish.before = baseline->finishOn;
    }
    if (finish.planned && finish.before) {
        finish.workingDaysLateBefore =
            compute::workDaysLate(calendar, *finish.planned, *finish.before);
    }
    return finish;
}

// "not entered: Purchase price, Closing costs and Resale".
std::string askFor(const std::vector<compute::AbsentInput>& missing) {
    if (missing.empty()) {
        return saying("not enough is entered to tell").text();
    }
    Saying names(std::string(missing.front().heading));
    for (std::size_t k = 1; k < missing.size(); ++k) {
        const Saying next(std::string(missing[k].heading));
        names = k + 1 == missing.size() ? saying("%1 and %2", names, next)
                                        : saying("%1, %2", names, next);
    }
    return saying("not entered: %1", names).text();
}

WillEarn willEarn(const Computed& all, Date today) {
    WillEarn earn;
    if (!all.deal) {
        earn.whatIsMissing = all.dealError;
        return earn;
    }
    earn.profit = all.deal->profit;
    earn.dayCosts = all.deal->dayCosts;
    if (all.deal->marginPercent && std::isfinite(*all.deal->marginPercent)) {
        earn.ofResale = Percent::fromBasisPoints(std::llround(*all.deal->marginPercent * 100));
    }
    if (!earn.profit) {
        earn.whatIsMissing = askFor(all.deal->missing);
    } else {
        for (const auto& input : all.deal->leftOut) {
            earn.countedAsNothing.emplace_back(input.heading);
        }
    }
    if (const auto* review = reviewBefore(all.rows, today)) {
        earn.before = compute::keptFigure(*review, kWillEarn);
    }
    return earn;
}

// What leaves in the `days` after today.
Money leavingWithin(const compute::CashPlan& cash, Date today, int days) {
    Money out;
    for (const auto& move : cash.line.moves) {
        if (move.on > today && move.on <= today + days && move.amount < Money{}) {
            out -= move.amount;
        }
    }
    return out;
}

// Where cash was entered, and the deal has what a line of it needs.
std::optional<CashLow> cashLow(const Computed& all, Date today) {
    if (!all.cash || !all.rows.job.cashAtStart || !all.cash->line.missing.empty() ||
        !all.cash->line.lowestAhead) {
        return std::nullopt;
    }
    const compute::CashLine& line = all.cash->line;
    CashLow low{line.lowestAhead->balance,
                line.lowestAhead->on,
                {},
                leavingWithin(*all.cash, today, 14),
                {},
                {}};
    if (!all.cash->drawsAhead.empty()) {
        const auto& draw = all.cash->drawsAhead.front();
        low.drawOn = draw.moneyOn;
        low.draw = draw.total - draw.fee;
    }
    if (const auto* review = reviewBefore(all.rows, today)) {
        low.before = compute::keptFigure(*review, kCashLowest);
    }
    return low;
}

Spreads spreadsOf(const Computed& all) {
    Spreads spreads;
    if (!all.risk || !all.risk->anySpread) {
        return spreads;
    }
    const compute::JobRisk& risk = *all.risk;
    if (risk.cost.p10 != risk.cost.p90) {
        spreads.cost = Spread<Money>{risk.cost.p10, risk.cost.p90};
    }
    if (risk.finish && risk.finish->p10 != risk.finish->p90) {
        spreads.finish = Spread<Date>{risk.finish->p10, risk.finish->p90};
    }
    if (risk.profit && risk.profit->p10 != risk.profit->p90) {
        spreads.earn = Spread<Money>{risk.profit->p10, risk.profit->p90};
    }
    return spreads;
}

Methods methodsOf(const Computed& all, Date today) {
    const compute::Forecasts forecasts = compute::forecastsOf(all.rows, all.figures, today);
    Methods methods;
    for (const auto& rule : forecasts.rules) {
        methods.rules.push_back(
            {std::string(wordsFor(rule.rule)), static_cast<std::int64_t>(rule.lines), rule.toGo});
    }
    for (const auto& other : forecasts.methods) {
        methods.others.push_back({std::string(wordsFor(other.method)), other.estimate});
    }
    return methods;
}

std::optional<Level> levelOf(const JobFigures& figures) {
    if (figures.job.budgetNow <= Money{}) {
        return std::nullopt;
    }
    Level level;
    level.over = figures.job.beyondBudget();
    level.hairline = share(Percent::of(2), figures.job.budgetNow);
    level.end = figures.contingency.left;
    // The hairlines must stand within the vial.
    const Money least = model::roundedMoney(model::multiplyWide(level.hairline.minor(), 5), 4);
    if (level.end < least) {
        level.end = least;
        level.endIsContingencyLeft = false;
    }
    return level;
}

std::vector<CurvePoint> curveOf(const Computed& all, Date today) {
    std::vector<CurvePoint> curve;
    const auto span = compute::spanOf(all.rows, all.figures.scope, today);
    if (!span) {
        return curve;
    }
    bool isPlanned = false;
    for (const auto& point : compute::seriesOf(all.rows, all.figures.scope, span->first, span->last,
                                               today, compute::Every::Week)) {
        curve.push_back({point.on, point.planned, point.earned, point.billed});
        isPlanned = isPlanned || point.planned != Money{};
    }
    if (!isPlanned) {
        for (auto& point : curve) {
            point.planned.reset();
        }
    }
    return curve;
}

std::optional<Movers> moversOf(const Computed& all) {
    if (all.movers.since == compute::Since::Nothing) {
        return std::nullopt;
    }
    Movers movers;
    for (const auto& mover : all.movers.largest) {
        movers.largest.push_back(
            {all.figures.scope.lines[mover.line].name, mover.why.text(), mover.moved});
    }
    movers.others = all.movers.others;
    movers.otherCount = static_cast<std::int64_t>(all.movers.othersCount);
    movers.total = all.movers.moved;
    return movers;
}

void fillWeeks(const Computed& all, Date today, WeekPage& page) {
    const auto span = compute::spanOf(all.rows, all.figures.scope, today);
    std::optional<Date> begin = all.rows.job.beginOn;
    if (!begin && span) {
        begin = span->first;
    }
    if (!begin) {
        return;
    }
    const int days = today - *begin;
    page.week = days < 0 ? 0 : days / 7 + 1;
    if (page.finish.planned && *page.finish.planned >= *begin) {
        page.weeks = (*page.finish.planned - *begin) / 7 + 1;
    }
}

void fillCounts(const JobFigures& figures, const compute::Plan& plan, WeekPage& page) {
    auto count = [](std::size_t number) { return static_cast<std::int64_t>(number); };
    page.items = count(figures.job.items);
    page.undated = count(figures.undated);
    page.unpriced = count(figures.unpriced);
    page.withoutDays = count(plan.withoutDays);
    page.spendsWithoutAmount = count(figures.spendsWithoutAmount);
    page.outside = {count(figures.unsignedChanges), figures.ifAllSigned, figures.unknownsExpected};
}

Since sinceOf(const compute::Movers& movers) {
    switch (movers.since) {
        case compute::Since::Baseline:
            return {Against::Baseline, movers.sinceOn};
        case compute::Since::Review:
            return {Against::Review, movers.sinceOn};
        case compute::Since::Nothing:
            break;
    }
    return {};
}

// The week is what came after the last review, where that is not long ago; else the last 7 days.
Date weekBegan(const JobRows& rows, Date today) {
    constexpr int kAWeek = 7;
    constexpr int kLongAgo = 21;
    const auto* review = reviewBefore(rows, today);
    const bool isRecent =
        review != nullptr && review->reviewedOn && today - *review->reviewedOn <= kLongAgo;
    return isRecent ? *review->reviewedOn : today - kAWeek;
}

model::Review reviewOf(const Computed& all, const WeekPage& page) {
    model::Review review = compute::reviewOf(all.figures, page.today);
    review.job = all.rows.job.id;
    review.willFinishOn = page.finish.on;
    if (page.earn.profit) {
        review.figures.push_back({std::string(kWillEarn), *page.earn.profit});
    }
    if (page.cash) {
        review.figures.push_back({std::string(kCashLowest), page.cash->lowest});
    }
    return review;
}

}  // namespace

WeekPage weekPage(const JobRows& rows, Date today, std::vector<WeekPhoto> photos) {
    const Computed all = computedOf(rows, today);
    const JobFigures& figures = all.figures;
    WeekPage page;
    page.job = all.rows.job.name;
    page.jobId = all.rows.job.id.raw().toString();
    page.currency = all.rows.job.currency;
    page.today = today;
    page.since = sinceOf(all.movers);
    page.cost = willCost(all, today);
    page.finish = willFinish(all, today);
    page.earn = willEarn(all, today);
    fillWeeks(all, today, page);
    fillCounts(figures, all.plan, page);
    if (all.deal) {
        page.buyer = {all.deal->day91On, all.deal->day180On, all.deal->isDoublePrice};
    }
    page.cash = cashLow(all, today);
    page.spreads = spreadsOf(all);
    page.methods = methodsOf(all, today);
    page.level = levelOf(figures);
    page.progress = progressOf(figures);
    page.curve = curveOf(all, today);
    page.movers = moversOf(all);
    if (figures.contingency.total != Money{} || figures.contingency.left != Money{}) {
        page.contingency = Contingency{figures.contingency.total, figures.contingency.left};
    }
    page.trades = tradesOf(figures);
    page.total = amountsOf(figures.job);
    page.rooms = roomsOf(all.rows, figures);
    page.next = nextOf(all.rows, figures, all.plan, today);
    page.papers = papersOf(all.rows, today);
    const compute::ThisWeek week =
        compute::thisWeekOf(all.rows, figures, weekBegan(all.rows, today), today);
    compute::Outlook outlook;
    outlook.plannedFinishOn = page.finish.planned;
    outlook.notThere = week.notThere;
    outlook.stacked = all.stacked;
    if (page.cash) {
        outlook.lowestCash = page.cash->lowest;
        outlook.lowestCashOn = page.cash->on;
        outlook.billsAhead =
            leavingWithin(*all.cash, today, compute::concernLevelsOf(all.rows.job).cashDays);
    }
    page.monday = mondayOf(all.rows, figures, all.plan, today, outlook);
    page.answers = answersOf(page, all.rows, figures, week);
    page.review = reviewOf(all, page);
    photos.resize(std::min(photos.size(), kMostPhotos));
    page.photos = std::move(photos);
    return page;
}

}  // namespace ledgerboard::report
