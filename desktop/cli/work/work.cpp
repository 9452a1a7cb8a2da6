#include "desktop/cli/work/work.h"

#include <vector>

#include "core/compute/in_quotes.h"

#include "desktop/cli/work/calculation.h"

namespace ledgerboard::work {

namespace {

// One line a NAME.
const std::vector<Calculation>& calculations() {
    static const std::vector<Calculation> kAll = {
        cashCalculation(),           chooseCalculation(),       criticalPathCalculation(),
        crewPlanCalculation(),       dealCalculation(),         drawsCalculation(),
        earnedScheduleCalculation(), earnedValueCalculation(),  interestCalculation(),
        levelPaymentCalculation(),   loanInterestCalculation(), returnCalculation(),
        riskCalculation(),           takeOffCalculation(),      threePointCalculation(),
    };
    return kAll;
}

const Calculation* find(std::string_view name) {
    for (const Calculation& calculation : calculations()) {
        if (calculation.name == name) {
            return &calculation;
        }
    }
    return nullptr;
}

std::string listOfNames() {
    constexpr std::size_t kColumn = 17;
    std::string text =
        "work NAME < in.json > out.json: the arithmetic alone, no book needed\n\n"
        "Rates and percents are 0 to 100; money is unrounded, numbers have 10 digits.\n\n";
    for (const Calculation& calculation : calculations()) {
        std::string name(calculation.name);
        name.resize(kColumn, ' ');
        text += "  " + name + std::string(calculation.says) + "\n";
    }
    return text + "\nwork NAME --help tells what each takes.\n";
}

}  // namespace

std::vector<std::string_view> workNames() {
    std::vector<std::string_view> names;
    for (const Calculation& calculation : calculations()) {
        names.push_back(calculation.name);
    }
    return names;
}

model::Result<nlohmann::json> runWork(std::string_view name, const nlohmann::json& input,
                                      const Stopwatch& stopwatch) {
    const Calculation* calculation = find(name);
    if (calculation == nullptr) {
        std::string names;
        for (const std::string_view known : workNames()) {
            names += (names.empty() ? "" : ", ") + std::string(known);
        }
        return model::wrongUse("work has no " + compute::inQuotes(name) + ": it knows " + names);
    }
    return calculation->timed != nullptr ? calculation->timed(input, stopwatch)
                                         : calculation->run(input);
}

std::string workHelp(std::string_view name) {
    const Calculation* calculation = find(name);
    if (calculation == nullptr) {
        return listOfNames();
    }
    std::string text = "work " + std::string(calculation->name) + ": " +
                       std::string(calculation->says) + "\n\nIn:\n" +
                       std::string(calculation->takes) + "\nOut:\n" +
                       std::string(calculation->gives) + "\nExample:\n  echo '" +
                       std::string(calculation->example) + "' |\n  ledgerboard work " +
                       std::string(calculation->name) + "\n";
    if (calculation->more != nullptr) {
        text += "\n" + calculation->more();
    }
    return text;
}

std::string_view workExample(std::string_view name) {
    const Calculation* calculation = find(name);
    return calculation == nullptr ? std::string_view{} : calculation->example;
}

}  // namespace ledgerboard::work
