// risk: the spread of cost, finish and earnings, and what drives it.
#include <nlohmann/json.hpp>

#include "core/compute/budget.h"
#include "core/compute/job_network.h"
#include "core/compute/job_risk.h"
#include "core/compute/plan.h"
#include "core/model/decimal.h"
#include "core/report/deal_figures.h"
#include "core/report/risk_text.h"

#include "desktop/cli/risk_json.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

using model::Result;

// A whole number of an option. Errors name it.
Result<std::int64_t> wholeOption(const char* option, const std::string& text, std::int64_t least,
                                 std::int64_t most) {
    auto number = model::parseDecimal(text, 0);
    if (!number.ok()) {
        return model::wrongUse(std::string(option) + ": " + number.error().message);
    }
    if (number.value() < least || number.value() > most) {
        return model::wrongUse(std::string(option) + " is " + text +
                               ": it must be a whole number from " + std::to_string(least) +
                               " to " + std::to_string(most));
    }
    return number.value();
}

Result<compute::RiskManner> mannerOf(const RiskOptions& options) {
    compute::RiskManner manner;
    if (!options.trials.empty()) {
        auto trials = wholeOption("--trials", options.trials, 1, compute::kMostTrials);
        if (!trials.ok()) {
            return trials.error();
        }
        manner.trials = static_cast<std::size_t>(trials.value());
    }
    if (!options.seed.empty()) {
        constexpr std::int64_t kMostSeed = 9'007'199'254'740'992;  // whole in every JSON reader
        auto seed = wholeOption("--seed", options.seed, 0, kMostSeed);
        if (!seed.ok()) {
            return seed.error();
        }
        manner.seed = static_cast<std::uint64_t>(seed.value());
    }
    return manner;
}

}  // namespace

Done verbRisk(Session& session, const RiskOptions& options) {
    auto manner = mannerOf(options);
    if (!manner.ok()) {
        return manner.error();
    }
    auto job = session.jobOnDay();
    if (!job.ok()) {
        return job.error();
    }
    const model::JobRows& rows = job.value().rows;
    const model::Date today = job.value().today;
    return model::guarded([&]() -> Done {
        const auto figures = compute::figuresOf(rows, today);
        const auto network = compute::jobNetworkOf(rows, figures, today);
        const auto plan = compute::planOf(rows, figures, network);
        auto risk =
            compute::jobRiskOf(rows, figures, network,
                               report::dealFiguresOf(rows, figures, plan, today), manner.value());
        if (!risk.ok()) {
            return risk.error();
        }
        if (session.json()) {
            session.printJson(riskJson(risk.value()));
            return {};
        }
        session.print(report::riskText(
            {rows, risk.value(), today, session.surroundings().width, session.script(),
             session.surroundings().isTerminal && session.surroundings().unicode}));
        return {};
    });
}

}  // namespace ledgerboard::cli
