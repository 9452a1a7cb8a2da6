#include "desktop/cli/choices_json.h"

#include <nlohmann/json.hpp>

namespace ledgerboard::cli {

namespace {

using compute::AlternateChoice;
using compute::Choices;
using compute::OptionChoice;
using compute::SetChoice;
using nlohmann::json;

json orNull(const std::optional<model::Money>& money) {
    return money ? json(money->toString()) : json(nullptr);
}

json orNull(const std::optional<model::Date>& date) {
    return date ? json(date->toString()) : json(nullptr);
}

const char* wordFor(compute::DaysFrom from) {
    switch (from) {
        case compute::DaysFrom::Plan:
            return "plan";
        case compute::DaysFrom::ItemDays:
            return "days of its items";
        case compute::DaysFrom::OwnDays:
            return "days of the option";
        case compute::DaysFrom::Nothing:
            break;
    }
    return "nothing entered";
}

json optionJson(const model::JobRows& rows, const OptionChoice& option) {
    const model::Option& row = rows.options[option.option];
    json out{{"id", row.id.raw().toString()},
             {"name", row.name},
             {"is_carried", option.isCarried},
             {"is_priced", option.isPriced},
             {"items", option.items},
             {"unpriced_items", option.unpricedItems},
             {"why_not_offered", option.whyNotOffered.text()},
             {"cost", option.cost.toString()},
             {"finish_days", option.finishDays},
             {"finish_days_from", wordFor(option.daysFrom)},
             {"value_low", option.valueLow.toString()},
             {"value_likely", option.valueLikely.toString()},
             {"value_high", option.valueHigh.toString()},
             {"value_expected", option.valueExpected.toString()},
             {"has_value", option.hasValue},
             {"resale_after", orNull(option.resaleAfter)},
             {"cut_by_ceiling", option.cutByCeiling.toString()}};
    // Without a price these would be figures that look better than they are.
    const auto priced = [&](model::Money money) {
        return option.isPriced ? json(money.toString()) : json(nullptr);
    };
    out["net_low"] = priced(option.netLow);
    out["net_likely"] = priced(option.netLikely);
    out["net_high"] = priced(option.netHigh);
    out["break_even_value"] = priced(option.breakEvenValue);
    return out;
}

std::string optionId(const model::JobRows& rows, const AlternateChoice& alternate,
                     std::size_t option) {
    return rows.options[alternate.options[option].option].id.raw().toString();
}

json alternateJson(const model::JobRows& rows, const AlternateChoice& alternate) {
    const model::Alternate& row = rows.alternates[alternate.alternate];
    const compute::Waiting& waiting = alternate.waiting;
    const auto idOrNull = [&](const std::optional<std::size_t>& option) {
        return option ? json(optionId(rows, alternate, *option)) : json(nullptr);
    };
    json options = json::array();
    for (const OptionChoice& option : alternate.options) {
        options.push_back(optionJson(rows, option));
    }
    return {{"id", row.id.raw().toString()},
            {"name", alternate.name},
            {"question", row.question},
            {"options", options},
            {"carried", idOrNull(alternate.carried)},
            {"decide_by", orNull(waiting.decideBy)},
            {"decide_by_entered", waiting.isEntered},
            {"decide_by_item",
             waiting.item ? json(rows.items[*waiting.item].id.raw().toString()) : json(nullptr)},
            {"is_late", waiting.isLate},
            {"waiting_costs_a_day", orNull(waiting.perDay)},
            {"float_days", waiting.floatThousandths
                               ? json(static_cast<double>(*waiting.floatThousandths) / 1000)
                               : json(nullptr)},
            {"best", idOrNull(alternate.best)},
            {"otherwise", idOrNull(alternate.otherwise)},
            {"worth", orNull(alternate.worth)}};
}

json setJson(const model::JobRows& rows, const Choices& choices, const SetChoice& set) {
    json options = json::array();
    for (std::size_t k = 0; k < set.options.size(); ++k) {
        if (set.options[k]) {
            options.push_back(optionId(rows, choices.alternates[k], *set.options[k]));
        }
    }
    return {{"options", options},
            {"cost", set.cost.toString()},
            {"finish_days", set.finishDays},
            {"finish_on", orNull(set.finishOn)},
            {"added", set.added.toString()},
            {"net", set.net.toString()},
            {"net_at_chance", orNull(set.netAtChance)}};
}

}  // namespace

json choicesJson(const model::JobRows& rows, const Choices& choices, model::Date today) {
    const auto setOrNull = [&](const std::optional<SetChoice>& set) {
        return set ? setJson(rows, choices, *set) : json(nullptr);
    };
    json alternates = json::array();
    for (const AlternateChoice& alternate : choices.alternates) {
        alternates.push_back(alternateJson(rows, alternate));
    }
    json frontier = json::array();
    for (const SetChoice& set : choices.frontier) {
        frontier.push_back(setJson(rows, choices, set));
    }
    json left = json::array();
    for (const auto& input : choices.leftOut) {
        left.push_back(std::string(input.heading));
    }
    return {{"date", today.toString()},
            {"alternates", alternates},
            {"decided", choices.decided},
            {"days_from_plan", choices.hasPlan},
            {"finish_without", orNull(choices.finishWithout)},
            {"resale", orNull(choices.resale)},
            {"decided_value", choices.decidedValue.toString()},
            {"ceiling", orNull(choices.ceiling)},
            {"kept_percent", json::parse(choices.keptShare.toString())},
            {"day_costs", choices.dayCosts.toString()},
            {"now", setJson(rows, choices, choices.now)},
            {"best", setOrNull(choices.best)},
            {"best_at_chance", setOrNull(choices.bestAtChance)},
            {"why_none", choices.whyNone.text()},
            {"proven", choices.proven},
            {"frontier", frontier},
            {"frontier_cut", choices.frontierCut},
            {"left_out", left}};
}

}  // namespace ledgerboard::cli
