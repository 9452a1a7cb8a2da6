#include "core/compute/job_risk.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <memory>
#include <unordered_map>

#include "core/compute/job_risk_parts.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;
using model::Percent;

Money rounded(double minor) {
    return Money::fromMinor(std::llround(minor));
}

MoneySpread moneySpread(const Summary& summary, const std::vector<std::int64_t>& samples) {
    MoneySpread out;
    out.mean = rounded(summary.mean);
    out.deviation = rounded(summary.deviation);
    out.least = Money::fromMinor(summary.least);
    out.p10 = Money::fromMinor(summary.p10);
    out.p50 = Money::fromMinor(summary.p50);
    out.p80 = Money::fromMinor(summary.p80);
    out.p90 = Money::fromMinor(summary.p90);
    out.most = Money::fromMinor(summary.most);
    out.counts = countsOf(samples, kRiskBins, summary.least, summary.most);
    return out;
}

FinishSpread finishSpread(const Summary& summary, const std::vector<std::int64_t>& samples,
                          const WorkTime& time) {
    FinishSpread out;
    out.mean = time.finishDay(std::llround(summary.mean));
    out.deviationDays = summary.deviation / static_cast<double>(kWorkDay);
    out.least = time.finishDay(summary.least);
    out.p10 = time.finishDay(summary.p10);
    out.p50 = time.finishDay(summary.p50);
    out.p80 = time.finishDay(summary.p80);
    out.p90 = time.finishDay(summary.p90);
    out.most = time.finishDay(summary.most);
    out.counts = countsOf(samples, kRiskBins, summary.least, summary.most);
    return out;
}

// The deal for each day of finishing, worked out once a day.
class DealByFinish {
  public:
    // `income`: what the sale leaves at the likely resale. Requires: a deal that tells a profit.
    DealByFinish(const model::Job& job, const DealFigures& figures, const WorkTime& time,
                 Money income, Money profit)
        : job_(job), figures_(figures), time_(time), income_(income), usual_(otherCosts(profit)) {}

    // All but income and work, where the work ends then; where a deal can't be had for that day,
    // as planned.
    std::int64_t operator()(std::int64_t finish) {
        constexpr std::int64_t kHalfDay = kWorkDay / 2;  // no day ends between two of these
        const std::int64_t half = (finish + kHalfDay - 1) / kHalfDay;
        const auto [at, isNew] = byHalfDay_.try_emplace(half, usual_);
        if (isNew) {
            DealFigures then = figures_;
            then.willFinishOn = time_.finishDay(half * kHalfDay);
            const auto worked = deal(job_, then);
            if (worked.ok() && worked.value().profit) {
                at->second = otherCosts(*worked.value().profit);
            }
        }
        return at->second;
    }

  private:
    std::int64_t otherCosts(Money profit) const {
        return (income_ - *figures_.work - profit).minor();
    }

    const model::Job& job_;
    const DealFigures& figures_;
    const WorkTime& time_;
    Money income_;
    std::int64_t usual_;
    std::unordered_map<std::int64_t, std::int64_t> byHalfDay_;
};

Money afterSelling(const model::Job& job, Money resale) {
    const Percent selling =
        job.sellingCosts.value_or(Percent{}) + job.commission.value_or(Percent{});
    return resale - model::share(selling, resale);
}

// From the sale, less what selling takes. Requires: a likely resale.
Spread incomeOf(const model::Job& job) {
    const std::int64_t likely = afterSelling(job, *job.resaleLikely).minor();
    const std::int64_t low = afterSelling(job, job.resaleLow.value_or(*job.resaleLikely)).minor();
    const std::int64_t high = afterSelling(job, job.resaleHigh.value_or(*job.resaleLikely)).minor();
    return {std::min(low, likely), likely, std::max(high, likely)};
}

class Teller {
  public:
    Teller(const model::JobRows& rows, const JobFigures& figures, const JobNetwork& network,
           const DealFigures& dealFigures, const RiskManner& manner)
        : rows_(rows),
          figures_(figures),
          network_(network),
          deal_(dealFigures),
          input_(jobRiskInputOf(rows, figures, network)) {
        input_.risk.trials = out_.trials = manner.trials;
        input_.risk.seed = out_.seed = manner.seed;
        input_.risk.correlation = out_.correlation = manner.correlation;
        deal_.work = figures.job.forecast;
    }

    JobRisk tell() {
        addProfit();
        out_.basis = input_.basis;
        result_ = simulateRisk(input_.risk);
        out_.cost = moneySpread(result_.cost, result_.costs);
        tellFinish();
        if (input_.risk.profit) {
            out_.profit = moneySpread(result_.profit, result_.profits);
        }
        out_.anySpread = result_.cost.deviation > 0 || result_.finish.deviation > 0 ||
                         result_.profit.deviation > 0;
        tellChances();
        addDrivers(result_.costDrivers, &JobDriver::costPercent, &JobDriver::costCorrelation);
        if (out_.finish) {
            addDrivers(result_.finishDrivers, &JobDriver::finishPercent,
                       &JobDriver::finishCorrelation);
        }
        addDrivers(result_.profitDrivers, &JobDriver::profitPercent, &JobDriver::profitCorrelation);
        const auto largest = [](const JobDriver& one) {
            return std::max({one.costPercent, one.finishPercent, one.profitPercent});
        };
        std::stable_sort(
            out_.drivers.begin(), out_.drivers.end(),
            [&](const JobDriver& a, const JobDriver& b) { return largest(a) > largest(b); });
        return std::move(out_);
    }

  private:
    void addProfit() {
        deal_.willFinishOn = plannedFinish();
        auto worked = deal(rows_.job, deal_);
        if (!worked.ok()) {
            out_.profitProblem = worked.error().message;
            return;
        }
        const Deal& now = worked.value();
        out_.profitMissing = now.missing;
        out_.dealProfit = now.profit;
        out_.dayCosts = now.dayCosts;
        if (!now.profit || !rows_.job.resaleLikely) {
            return;
        }
        const Spread income = incomeOf(rows_.job);
        input_.basis.resaleRanged = !income.isCertain();
        const auto others = std::make_shared<DealByFinish>(
            rows_.job, deal_, network_.time, Money::fromMinor(income.likely), *now.profit);
        const bool anyDays = deal_.willFinishOn && hasDays();
        const std::int64_t usual =
            (Money::fromMinor(income.likely) - *deal_.work - *now.profit).minor();
        input_.risk.profit = RiskProfit{income, [others, anyDays, usual](std::int64_t finish) {
                                            return anyDays ? (*others)(finish) : usual;
                                        }};
    }

    [[nodiscard]] bool hasDays() const {
        return std::any_of(network_.activities.begin(), network_.activities.end(),
                           [](const JobActivity& activity) { return activity.left > 0; });
    }

    std::optional<Date> plannedFinish() {
        if (!hasDays()) {
            return deal_.willFinishOn;
        }
        out_.planned = network_.time.finishDay(network_.network().times().length);
        return out_.planned;
    }

    void tellFinish() {
        if (hasDays()) {
            out_.finish = finishSpread(result_.finish, result_.finishes, network_.time);
        }
    }

    void tellChances() {
        const Money withContingency = figures_.job.budgetNow + figures_.contingency.left;
        out_.forecast = figures_.job.forecast;
        out_.contingency80 = out_.cost.p80 - figures_.job.budgetNow;
        out_.contingencyLeft = figures_.contingency.left;
        out_.withinBudget = percentAtMost(result_.costs, withContingency.minor());
        const model::Job& job = rows_.job;
        if (job.budget) {
            out_.withinCeiling = percentAtMost(result_.costs, job.budget->minor());
        }
        if (job.targetFinishOn && out_.finish) {
            const std::int64_t until = network_.time.through(*job.targetFinishOn);
            out_.byTarget = percentAtMost(result_.finishes, until);
        }
        if (out_.profit) {
            if (job.wantedProfit) {
                out_.earnsWanted = percentAtLeast(result_.profits, job.wantedProfit->minor());
            }
            out_.losesMoney = percentAtMost(result_.profits, -1);
        }
    }

    [[nodiscard]] std::string nameOf(const Driver& driver) const {
        switch (driver.kind) {
            case DriverKind::ItemCost:
            case DriverKind::ItemDuration:
            case DriverKind::ItemReady:
                return figures_.scope.lines[network_.activities[driver.index].line].name;
            case DriverKind::Unknown:
                return input_.unknowns[driver.index];
            case DriverKind::Income:
                return "Resale value";
        }
        return {};
    }

    void addDrivers(const std::vector<Driver>& drivers, double JobDriver::*percent,
                    double JobDriver::*correlation) {
        for (const Driver& driver : drivers) {
            const auto [at, isNew] =
                driverAt_.try_emplace(std::pair(driver.kind, driver.index), out_.drivers.size());
            if (isNew) {
                out_.drivers.emplace_back();
                out_.drivers.back().kind = driver.kind;
                out_.drivers.back().what = nameOf(driver);
            }
            out_.drivers[at->second].*percent = driver.sharePercent;
            out_.drivers[at->second].*correlation = driver.rankCorrelation;
        }
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    const JobNetwork& network_;
    DealFigures deal_;
    JobRiskInput input_;
    RiskResult result_;
    std::map<std::pair<DriverKind, std::size_t>, std::size_t> driverAt_;
    JobRisk out_;
};

model::Error loopError(const JobFigures& figures, const JobNetwork& network) {
    std::string ring;
    for (const std::size_t k : network.loop) {
        ring += figures.scope.lines[network.activities[k].line].name + " > ";
    }
    ring += figures.scope.lines[network.activities[network.loop[0]].line].name;
    return model::cannotBeMet(
        model::saying("items wait for each other in a loop: %1: drop one of these links "
                      "('ledgerboard list links')",
                      ring));
}

}  // namespace

model::Result<JobRisk> jobRiskOf(const model::JobRows& rows, const JobFigures& figures,
                                 const JobNetwork& network, const DealFigures& deal,
                                 const RiskManner& manner) {
    if (!network.loop.empty()) {
        return loopError(figures, network);
    }
    return Teller(rows, figures, network, deal, manner).tell();
}

}  // namespace ledgerboard::compute
