#include "desktop/cli/plan_by_crews.h"

#include <limits>

#include "core/compute/job_crew_plan.h"
#include "core/compute/plan.h"
#include "core/report/crew_plan_text.h"

#include "desktop/cli/keep_dates.h"

namespace ledgerboard::cli {

namespace {

constexpr std::int64_t kMostTries = 100'000'000;
constexpr double kMostSeconds = 3600;

model::Result<compute::CrewPlanLimits> limitsOf(const CrewPlanOptions& options, Session& session) {
    if (!options.isWanted) {
        return model::wrongUse(
            "--tries, --seconds and --seed go with --crews: say --crews as well");
    }
    if (options.tries && options.seconds) {
        return model::wrongUse("say --tries or --seconds, one of them");
    }
    if (options.tries && (*options.tries < 1 || *options.tries > kMostTries)) {
        return model::wrongUse("--tries is " + std::to_string(*options.tries) +
                               ": it must be from 1 to 100000000");
    }
    if (options.seconds && !(*options.seconds > 0 && *options.seconds <= kMostSeconds)) {
        return model::wrongUse("--seconds must be more than 0 and at most 3600");
    }
    if (options.seed && *options.seed < 0) {
        return model::wrongUse("--seed is " + std::to_string(*options.seed) +
                               ": it must be 0 or more");
    }
    compute::CrewPlanLimits limits;
    limits.tries = options.tries.value_or(limits.tries);
    limits.seed = static_cast<std::uint64_t>(options.seed.value_or(1));
    if (options.seconds) {
        constexpr double kPerSecond = 1000;
        const auto now = [&session] { return session.surroundings().now().milliseconds(); };
        const std::int64_t end = now() + static_cast<std::int64_t>(*options.seconds * kPerSecond);
        limits.tries = std::numeric_limits<std::int64_t>::max();
        limits.goOn = [now, end] { return now() < end; };
    }
    return limits;
}

std::vector<DatesToKeep> datesOf(const model::JobRows& rows, const compute::JobFigures& figures,
                                 const compute::JobCrewPlan& plan) {
    std::vector<DatesToKeep> dates;
    for (const compute::CrewedDays& item : plan.items) {
        if (item.hasDays && item.line < rows.items.size()) {
            const bool isUnderWay = figures.lines[item.line].shown > model::Percent{};
            dates.push_back({item.line, item.startOn, item.finishOn, isUnderWay});
        }
    }
    return dates;
}

}  // namespace

bool saysCrews(const CrewPlanOptions& options) {
    return options.isWanted || options.tries || options.seconds || options.seed;
}

model::Result<void> planByCrews(Session& session, const CrewPlanOptions& options, bool keep,
                                const model::JobRows& rows, const compute::JobFigures& figures,
                                model::Date today) {
    const auto limits = limitsOf(options, session);
    if (!limits.ok()) {
        return limits.error();
    }
    const compute::JobNetwork network = compute::jobNetworkOf(rows, figures, today);
    if (!network.loop.empty()) {
        return model::cannotBeMet(
            "no dates can be told, for these items wait for each other in a loop: " +
            compute::loopText(compute::planOf(rows, figures, network), figures) +
            ". Drop one of the links between them: 'ledgerboard list link' names them");
    }
    const auto plan = compute::crewPlanOf(rows, figures, network, limits.value());
    if (!plan.ok()) {
        return plan.error();
    }
    std::optional<std::size_t> kept;
    if (keep) {
        auto written = keepDates(session, rows, datesOf(rows, figures, plan.value()), today);
        if (!written.ok()) {
            return written.error();
        }
        kept = written.value();
    }
    if (session.json()) {
        session.print(report::crewPlanJson(rows, figures, plan.value(), today, kept));
        return {};
    }
    const bool bold = session.surroundings().isTerminal && session.surroundings().unicode;
    session.print(report::crewPlanText(rows, figures, plan.value(), today,
                                       {session.surroundings().width, session.script(), bold}));
    if (kept) {
        session.print(keptText(*kept));
    }
    return {};
}

}  // namespace ledgerboard::cli
