// work choose: the best set of options, one from each alternate, and the frontier beside it.
#include <cmath>
#include <map>
#include <string>
#include <vector>

#include "core/compute/choose.h"
#include "core/compute/in_quotes.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"

namespace ledgerboard::work {

namespace {

using nlohmann::json;

constexpr std::string_view kTakes =
    "  cash        most that the set may cost (may be left out)\n"
    "  days        most days that it may take (may be left out)\n"
    "  alternates  a list of {\"id\", \"options\"}; exactly one option of each is taken,\n"
    "              so \"none\" is an option to list\n"
    "  options     a list of {\"id\", \"cost\", \"value\", \"days\", \"needs\", \"excludes\"}: "
    "value\n"
    "              is what it adds to the sale; days are 0 and needs and excludes,\n"
    "              lists of option ids, empty where left out. To need an option is\n"
    "              to need all that are listed; excluding goes both ways\n"
    "  resale, ceiling  (both or neither) what the house brings without any of them,\n"
    "              and the most it can bring: the sum of values is cut there\n"
    "Amounts are in whole cents, days in thousandths at the finest.\n";

constexpr std::string_view kGives =
    "  best        {\"options\", \"cost\", \"days\", \"value\", \"value_less_cost\"}: the set\n"
    "              within cash and days with the highest value less cost; of equal\n"
    "              ones the cheapest, then that with the fewest days, then the first\n"
    "              listed. value is the sum; added, given with a ceiling, what is\n"
    "              left of it under the ceiling, from which the cost is taken\n"
    "  proven      false where the search was stopped before it was sure of best\n"
    "  frontier    the sets within cash and days that no other beats in cost, days\n"
    "              and value less cost, by cost; of equal ones one stands for all\n"
    "  frontier_cut  true where there were too many to be looked at\n"
    "That no set goes together within the limits is an error that says what would.\n";

constexpr Range kValueRange{-1e12, 1e12};
constexpr Range kDaysRange{0, 1e6};

struct Ids {
    std::vector<std::vector<std::string>> options;
    std::map<std::string, compute::OptionPlace> places;
};

// `number` as a whole count of 1 / units; a slip where it is finer than that.
std::int64_t counted(Fields& fields, std::string_view key, double number, double units,
                     const char* unit) {
    const double count = number * units;
    const double whole = std::round(count);
    if (std::abs(count - whole) > 1e-4) {
        fields.slip(key, " is " + shownNumber(number) + ": it is counted in " + unit +
                             " and can't be finer");
    }
    return static_cast<std::int64_t>(whole);
}

model::Money money(Fields& fields, std::string_view key, double number) {
    return model::Money::fromMinor(counted(fields, key, number, 100, "cents"));
}

model::Quantity days(Fields& fields, std::string_view key, double number) {
    return model::Quantity::fromThousandths(
        counted(fields, key, number, 1000, "thousandths of a day"));
}

std::string placeOf(std::size_t alternate) {
    return "alternate " + std::to_string(alternate + 1) + " in alternates: ";
}

std::string placeOf(std::size_t alternate, std::size_t option) {
    return "alternate " + std::to_string(alternate + 1) + ", option " + std::to_string(option + 1) +
           " in options: ";
}

model::Result<compute::WeighedOption> readOption(const json& entry, compute::OptionPlace place,
                                                 Ids& ids) {
    Fields one(entry, placeOf(place.alternate, place.option));
    compute::WeighedOption option;
    const std::string id = one.text("id");
    option.cost = money(one, "cost", one.number("cost", kMoneyRange));
    option.value = money(one, "value", one.number("value", kValueRange));
    option.days = days(one, "days", one.numberIfGiven("days", kDaysRange).value_or(0));
    (void)one.textsIfGiven("needs");
    (void)one.textsIfGiven("excludes");
    if (!ids.places.emplace(id, place).second) {
        one.slip("id", " " + compute::inQuotes(id) +
                           " is given to another option too: each needs its own");
    }
    if (auto fine = one.done(); !fine.ok()) {
        return fine.error();
    }
    ids.options.back().push_back(id);
    return option;
}

// Needs and excludes, once every option is known.
model::Result<void> readTies(const json& entry, compute::OptionPlace place, const Ids& ids,
                             compute::WeighedOption& option) {
    Fields one(entry, placeOf(place.alternate, place.option));
    const std::pair<const char*, std::vector<compute::OptionPlace>*> lists[] = {
        {"needs", &option.needs}, {"excludes", &option.excludes}};
    for (const auto& [key, into] : lists) {
        for (const std::string& id : one.textsIfGiven(key)) {
            const auto found = ids.places.find(id);
            if (found == ids.places.end()) {
                return model::wrongUse(placeOf(place.alternate, place.option) + key + " names " +
                                       compute::inQuotes(id) + ", and no option has that id");
            }
            into->push_back(found->second);
        }
    }
    return {};
}

model::Result<void> readAlternates(const json& list, compute::ChooseInput& in, Ids& ids) {
    std::map<std::string, std::size_t> alternateIds;
    for (std::size_t k = 0; k < list.size(); ++k) {
        Fields one(list[k], placeOf(k));
        const std::string id = one.text("id");
        const json* options = one.list("options");
        if (!alternateIds.emplace(id, k).second) {
            one.slip("id", " " + compute::inQuotes(id) +
                               " is given to another alternate too: each needs its own");
        }
        if (auto fine = one.done(); !fine.ok()) {
            return fine.error();
        }
        in.alternates.emplace_back();
        ids.options.emplace_back();
        for (std::size_t p = 0; p < options->size(); ++p) {
            auto option = readOption((*options)[p], {k, p}, ids);
            if (!option.ok()) {
                return option.error();
            }
            in.alternates.back().push_back(option.value());
        }
    }
    for (std::size_t k = 0; k < list.size(); ++k) {
        for (std::size_t p = 0; p < in.alternates[k].size(); ++p) {
            auto fine = readTies(list[k].at("options")[p], {k, p}, ids, in.alternates[k][p]);
            if (!fine.ok()) {
                return fine.error();
            }
        }
    }
    return {};
}

void readLimits(Fields& fields, compute::ChooseInput& in) {
    if (const auto cash = fields.numberIfGiven("cash", kMoneyRange)) {
        in.cash = money(fields, "cash", *cash);
    }
    if (const auto most = fields.numberIfGiven("days", kDaysRange)) {
        in.days = days(fields, "days", *most);
    }
    const auto resale = fields.numberIfGiven("resale", kMoneyRange);
    const auto ceiling = fields.numberIfGiven("ceiling", kMoneyRange);
    if (resale && ceiling) {
        in.resale = money(fields, "resale", *resale);
        in.ceiling = money(fields, "ceiling", *ceiling);
    } else if (resale || ceiling) {
        fields.slip(resale ? "ceiling" : "resale",
                    std::string(" is missing: it goes with ") + (resale ? "resale" : "ceiling"));
    }
}

double shown(model::Money amount) {
    return static_cast<double>(amount.minor()) / 100;
}

double shown(model::Quantity amount) {
    return static_cast<double>(amount.thousandths()) / 1000;
}

json setJson(const compute::ChooseInput& in, const Ids& ids, const compute::OptionSet& set) {
    json options = json::array();
    for (std::size_t k = 0; k < set.options.size(); ++k) {
        options.push_back(ids.options[k][set.options[k]]);
    }
    json out{{"options", options},
             {"cost", printed(shown(set.cost))},
             {"days", printed(shown(set.days))},
             {"value", printed(shown(set.value))},
             {"value_less_cost", printed(shown(set.net))}};
    if (in.ceiling) {
        out["added"] = printed(shown(set.added));
    }
    return out;
}

// Says what stands in the way of any set.
model::Error nothingFits(const compute::ChooseInput& in) {
    auto least = compute::leastSetsOf(in);
    if (!least.ok()) {
        return least.error();
    }
    const compute::LeastSets& sets = least.value();
    if (!sets.cheapest) {
        return model::cannotBeMet(
            "no set goes together: needs and excludes contradict each other whatever is chosen");
    }
    if (in.cash && sets.cheapest->cost > *in.cash) {
        return model::cannotBeMet("the cheapest set that goes together costs " +
                                  shownNumber(shown(sets.cheapest->cost)) + ", more than cash (" +
                                  shownNumber(shown(*in.cash)) + ")");
    }
    if (in.days && sets.fastest->days > *in.days) {
        return model::cannotBeMet("the fastest set that goes together takes " +
                                  shownNumber(shown(sets.fastest->days)) +
                                  " days, more than days (" + shownNumber(shown(*in.days)) + ")");
    }
    return model::cannotBeMet(
        "no set keeps cash and days at once: the cheapest that takes no more "
        "than days costs " +
        shownNumber(shown(sets.cheapestInTime->cost)));
}

model::Result<json> run(const json& input) {
    Fields fields(input);
    compute::ChooseInput in;
    Ids ids;
    readLimits(fields, in);
    const json* list = fields.list("alternates");
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    if (auto fine = readAlternates(*list, in, ids); !fine.ok()) {
        return fine.error();
    }
    auto best = compute::bestSetOf(in);
    if (!best.ok()) {
        return best.error();
    }
    if (!best.value().set) {
        return best.value().proven ? nothingFits(in)
                                   : model::cannotBeMet(
                                         "the search was stopped before a set was found: give "
                                         "fewer alternates at a time");
    }
    auto frontier = compute::frontierOf(in);
    if (!frontier.ok()) {
        return frontier.error();
    }
    json sets = json::array();
    for (const compute::OptionSet& set : frontier.value().sets) {
        sets.push_back(setJson(in, ids, set));
    }
    return json{{"best", setJson(in, ids, *best.value().set)},
                {"proven", best.value().proven},
                {"frontier", std::move(sets)},
                {"frontier_cut", frontier.value().cut}};
}

}  // namespace

Calculation chooseCalculation() {
    return {"choose",
            "the best set of options under cash and days",
            kTakes,
            kGives,
            R"({"cash":9000,"days":8,"alternates":[)"
            R"({"id":"bath","options":[{"id":"no bath","cost":0,"value":0},)"
            R"({"id":"half bath","cost":6500,"days":6,"value":11000}]},)"
            R"({"id":"wall","options":[{"id":"leave","cost":0,"value":0},)"
            R"({"id":"open","cost":5200,"days":4,"value":7000,"excludes":["half bath"]}]}]})",
            run};
}

}  // namespace ledgerboard::work
