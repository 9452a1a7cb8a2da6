// work earned-schedule: how the work stands in time, and how long the whole will take.
#include <vector>

#include "core/compute/earned_schedule.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"

namespace ledgerboard::work {

namespace {

using nlohmann::json;

constexpr Range kPeriodsRange{0, 1e6};

constexpr std::string_view kTakes =
    "  pv   planned value at the end of periods 1, 2, 3 ..., each with all before it\n"
    "  ev   earned value so far\n"
    "  at   periods gone by\n";

constexpr std::string_view kGives =
    "  es     periods of the plan that are earned\n"
    "  sv_t   es less at: below 0 is late\n"
    "  spi_t  es over at; null where at is 0\n"
    "  forecast_duration  periods the plan has, until pv reaches its last value, over\n"
    "         spi_t; null while nothing is earned\n";

// The entries of pv; a slip where they are no numbers, or fall.
std::vector<double> readPlanned(Fields& fields) {
    std::vector<double> planned;
    const json* list = fields.list("pv");
    if (list == nullptr) {
        return planned;
    }
    for (const json& entry : *list) {
        const std::string which = " (entry " + std::to_string(planned.size() + 1) + ")";
        if (!entry.is_number()) {
            fields.slip("pv", which + " must be a number");
            return planned;
        }
        const double value = entry.get<double>();
        const double before = planned.empty() ? 0 : planned.back();
        if (!(value >= before && value <= kMoneyRange.most)) {
            fields.slip("pv", which + " is " + shownNumber(value) +
                                  ": it must be from what is planned by the period before, " +
                                  shownNumber(before) + ", to " + shownNumber(kMoneyRange.most));
            return planned;
        }
        planned.push_back(value);
    }
    if (!(planned.back() > 0)) {
        fields.slip("pv", " never rises above 0: nothing is planned");
    }
    return planned;
}

model::Result<json> run(const json& input) {
    Fields fields(input);
    const std::vector<double> planned = readPlanned(fields);
    const double earned = fields.number("ev", kMoneyRange);
    const double at = fields.number("at", kPeriodsRange);
    if (!planned.empty() && earned > planned.back()) {
        fields.slip(
            "ev", " is more than the last of pv (" + shownNumber(planned.back()) + "): check both");
    }
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    const auto out = compute::earnedSchedule(planned, earned, at);
    return json{{"es", printed(out.es)},
                {"sv_t", printed(out.sv)},
                {"spi_t", printed(out.spi)},
                {"forecast_duration", printed(out.forecastDuration)}};
}

}  // namespace

Calculation earnedScheduleCalculation() {
    return {"earned-schedule",
            "ahead or behind in time, and how long the whole will take",
            kTakes,
            kGives,
            R"({"pv":[10,30,60,100],"ev":40,"at":3})",
            run};
}

}  // namespace ledgerboard::work
