#include "core/compute/forecasts.h"

#include <algorithm>
#include <cmath>

#include "core/compute/earned_schedule.h"
#include "core/compute/planned_value.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;

constexpr int kAWeek = 7;
constexpr int kMostWeeks = 520;  // ten years: beyond it nothing is a plan

std::vector<RuleShare> rulesOf(const JobFigures& figures) {
    std::vector<RuleShare> rules;
    for (const LineFigures& line : figures.lines) {
        if (line.toGo == Money{}) {
            continue;
        }
        auto found = std::find_if(rules.begin(), rules.end(),
                                  [&](const RuleShare& share) { return share.rule == line.rule; });
        if (found == rules.end()) {
            found = rules.insert(rules.end(), RuleShare{line.rule, 0, Money{}});
        }
        ++found->lines;
        found->toGo += line.toGo;
    }
    std::stable_sort(rules.begin(), rules.end(),
                     [](const RuleShare& a, const RuleShare& b) { return a.toGo > b.toGo; });
    return rules;
}

// SPI(t) of the job; empty where nothing is planned yet or no day of the plan has passed.
std::optional<double> spiTOf(const model::JobRows& rows, const JobFigures& figures, Date today) {
    std::optional<Date> first;
    std::optional<Date> last;
    for (const ScopeLine& line : figures.scope.lines) {
        if (line.counting != Counting::Counts || !line.finishOn) {
            continue;
        }
        const Date start = line.startOn.value_or(*line.finishOn);
        first = first ? std::min(*first, start) : start;
        last = last ? std::max(*last, *line.finishOn) : *line.finishOn;
    }
    if (!first || today < *first || (*last - *first) / kAWeek > kMostWeeks) {
        return std::nullopt;
    }
    const PlannedValue plan = plannedValueOf(rows, figures.scope);
    std::vector<double> planned;
    for (Date end = *first + (kAWeek - 1);; end = end + kAWeek) {
        planned.push_back(std::max(0.0, toDollars(plan.by(end))));
        if (end >= *last) {
            break;
        }
    }
    // A saving signed for later lowers a plan; the schedule told in time needs one that never
    // falls.
    for (std::size_t k = 1; k < planned.size(); ++k) {
        planned[k] = std::max(planned[k], planned[k - 1]);
    }
    if (planned.back() <= 0) {
        return std::nullopt;
    }
    const double earned = std::clamp(toDollars(figures.job.earned), 0.0, planned.back());
    const double at = static_cast<double>(today - *first + 1) / kAWeek;
    return earnedSchedule(planned, earned, at).spi;
}

void addMethod(Forecasts& out, Method method, std::optional<double> dollars) {
    constexpr double kMost = 9e13;  // what Money holds, with room to add
    if (dollars && std::isfinite(*dollars) && std::abs(*dollars) < kMost) {
        out.methods.push_back({method, Money::fromMinor(std::llround(*dollars * 100))});
    }
}

}  // namespace

std::string_view wordsFor(Method method) {
    switch (method) {
        case Method::RemainingAtBudget:
            return "the rest at budget";
        case Method::RemainingAtCpi:
            return "at CPI";
        case Method::RemainingAtCpiSpi:
            return "at CPI x SPI";
        case Method::RemainingAtWeighted:
            return "at 0.8 CPI + 0.2 SPI";
        case Method::RemainingAtSpiT:
            return "at SPI(t)";
    }
    return "";
}

Forecasts forecastsOf(const model::JobRows& rows, const JobFigures& figures, Date today) {
    Forecasts out;
    out.rules = rulesOf(figures);
    const Figures& job = figures.job;
    out.earned = earnedValue(job.budgetNow, job.planned, job.earned, job.billed,
                             spiTOf(rows, figures, today));
    const EstimatesAtCompletion& eac = out.earned.eac;
    if (job.budgetNow > Money{} && job.earned > Money{}) {
        addMethod(out, Method::RemainingAtBudget, eac.remainingAtBudget);
        addMethod(out, Method::RemainingAtCpi, eac.remainingAtCpi);
        addMethod(out, Method::RemainingAtCpiSpi, eac.remainingAtCpiSpi);
        addMethod(out, Method::RemainingAtWeighted, eac.remainingAtWeighted);
        addMethod(out, Method::RemainingAtSpiT, eac.remainingAtSpiT);
    }
    std::stable_sort(
        out.methods.begin(), out.methods.end(),
        [](const MethodFigure& a, const MethodFigure& b) { return a.estimate < b.estimate; });
    return out;
}

}  // namespace ledgerboard::compute
