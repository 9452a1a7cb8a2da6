#include "core/compute/choices.h"

#include <algorithm>
#include <cmath>

#include "core/compute/choices_parts.h"
#include "core/compute/planned_value.h"
#include "core/compute/pricing.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Money;
using model::Percent;
using OptionId = model::Id<model::Kind::Option>;

Percent keptShareOf(const model::Job& job) {
    return Percent::whole() - job.sellingCosts.value_or(Percent{}) -
           job.commission.value_or(Percent{});
}

std::vector<AbsentInput> absentOf(const model::Job& job, const Deal& deal) {
    std::vector<AbsentInput> out;
    if (!job.resaleLikely) {
        out.push_back({"Resale", "resale_likely"});
    }
    if (!job.streetCeiling) {
        out.push_back({"Ceiling of the street", "street_ceiling"});
    }
    if (!job.sellingCosts) {
        out.push_back({"Selling costs", "selling_costs"});
    }
    if (!job.commission) {
        out.push_back({"Commission", "commission"});
    }
    if (deal.dayCosts == Money{}) {
        out.push_back({"Holding costs", "holding_costs"});
    }
    return out;
}

}  // namespace

Money likelyValueOf(const model::Option& option) {
    if (option.valueLikely) {
        return *option.valueLikely;
    }
    const Money low = option.valueLow.value_or(option.valueHigh.value_or(Money{}));
    const Money high = option.valueHigh.value_or(low);
    return model::roundedMoney(low.minor() + high.minor(), 2);
}

double deviationsFor(Percent chance) {
    const double wanted = static_cast<double>(chance.basisPoints()) / 10'000;
    double low = -10;
    double high = 10;
    constexpr int kHalvings = 60;
    for (int k = 0; k < kHalvings; ++k) {
        const double middle = (low + high) / 2;
        const double reached = std::erfc(-middle / std::sqrt(2.0)) / 2;
        (reached < wanted ? low : high) = middle;
    }
    return (low + high) / 2;
}

OptionCost optionCostOf(const model::JobRows& rows, const model::Option& option) {
    const PriceBook book(rows.prices);
    OptionCost out;
    for (const model::Item& item : rows.items) {
        if (item.option != option.id) {
            continue;
        }
        ++out.items;
        const Pricing pricing = priceOf(item, book);
        const bool isKept = item.treatment == model::Treatment::Keep;
        out.unpriced += pricing.by == PricedBy::Nothing && !isKept ? 1 : 0;
        out.cost += pricing.line;
    }
    out.isEntered = option.cost.has_value();
    if (out.items == 0) {
        out.cost = option.cost.value_or(Money{});
    }
    return out;
}

model::Saying whyNotBesideDecided(const model::JobRows& rows, const model::Option& option) {
    const Positions<model::Option> options(rows.options);
    const Positions<model::Alternate> alternates(rows.alternates);
    const auto chosenFor = [&](const model::Option& of) -> OptionId {
        const auto at = alternates.of(of.alternate);
        return at && of.alternate != option.alternate ? rows.alternates[*at].chosen : OptionId{};
    };
    const auto names = [](const std::vector<OptionId>& list, const OptionId& id) {
        return std::find(list.begin(), list.end(), id) != list.end();
    };
    for (const OptionId& id : option.needs) {
        const auto needed = options.of(id);
        if (!needed) {
            return model::saying("it needs an option that is no longer in the job");
        }
        const OptionId chosen = chosenFor(rows.options[*needed]);
        const auto other = options.of(chosen);
        if (other && chosen != id) {
            return model::saying("it needs \"%1\", and \"%2\" was decided on",
                                 rows.options[*needed].name, rows.options[*other].name);
        }
    }
    for (const model::Alternate& alternate : rows.alternates) {
        const auto at =
            alternate.id == option.alternate ? std::nullopt : options.of(alternate.chosen);
        if (!at) {
            continue;
        }
        const model::Option& chosen = rows.options[*at];
        if (names(option.excludes, chosen.id) || names(chosen.excludes, option.id)) {
            return model::saying("it does not go with \"%1\", which was decided on", chosen.name);
        }
        for (const OptionId& id : chosen.needs) {
            const auto needed = options.of(id);
            if (needed && rows.options[*needed].alternate == option.alternate && id != option.id) {
                return model::saying("\"%1\", which was decided on, needs \"%2\"", chosen.name,
                                     rows.options[*needed].name);
            }
        }
    }
    return {};
}

std::optional<model::Date> finishAfter(const model::Job& job, const Choices& choices, int days) {
    if (!choices.finishWithout || days == 0) {
        return choices.finishWithout;
    }
    return WorkCalendar(job).onOrAfter(*choices.finishWithout + days);
}

void count(model::JobRows& rows, std::size_t alternate, OptionId option) {
    rows.alternates[alternate].chosen = option;
    rows.alternates[alternate].carried = OptionId{};
}

model::Result<Choices> choicesOf(const model::JobRows& rows, const JobFigures& figures,
                                 const Deal& deal, model::Date today, const ChoicesAsk& ask,
                                 const PlanJob& plan) {
    if (ask.chance && (*ask.chance <= Percent{} || *ask.chance >= Percent::whole())) {
        return model::cannotBeMet(
            model::saying("a chance of %1 % tells nothing: give one between 0 and 100, such as 80",
                          ask.chance->toString()));
    }
    Choices out;
    out.resale = rows.job.resaleLikely;
    out.ceiling = rows.job.streetCeiling;
    out.keptShare = keptShareOf(rows.job);
    out.dayCosts = deal.dayCosts;
    out.leftOut = absentOf(rows.job, deal);
    out.deviations = ask.chance ? deviationsFor(*ask.chance) : 0;
    const Positions<model::Option> options(rows.options);
    for (const model::Alternate& alternate : rows.alternates) {
        if (const auto chosen = options.of(alternate.chosen)) {
            ++out.decided;
            out.decidedValue += likelyValueOf(rows.options[*chosen]);
        }
    }
    const ChoicesInput in{rows, figures, today, ask, plan};
    if (auto read = readAlternates(in, out); !read.ok()) {
        return read.error();
    }
    if (auto weighed = weighSets(in, out); !weighed.ok()) {
        return weighed.error();
    }
    return out;
}

}  // namespace ledgerboard::compute
