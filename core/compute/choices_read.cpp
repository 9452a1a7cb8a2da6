// The open alternates: each option by itself, and by when it must be decided.
#include <algorithm>

#include "core/compute/choices_parts.h"
#include "core/compute/concern_levels.h"
#include "core/compute/orders.h"
#include "core/compute/planned_value.h"
#include "core/compute/three_point.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;
using model::Quantity;
using model::Result;
using OptionId = model::Id<model::Kind::Option>;

// Ten years: beyond it nothing is a plan.
constexpr std::int64_t kMostDays = 3650;

model::Error contradiction(const model::Option& option, const char* low, const char* high) {
    return model::cannotBeMet(
        model::saying("option \"%1\": its %2 is more than its %3: mend one with 'ledgerboard set'",
                      option.name, low, high));
}

class Reader {
  public:
    Reader(const ChoicesInput& in, Choices& out)
        : in_(in), out_(out), calendar_(in.rows.job), orders_(in.rows), bare_(in.rows) {}

    Result<void> read() {
        for (std::size_t k = 0; k < in_.rows.alternates.size(); ++k) {
            if (!isDecided(in_.rows.alternates[k])) {
                count(bare_, k, OptionId{});
            }
        }
        findFinish();
        for (std::size_t k = 0; k < in_.rows.alternates.size(); ++k) {
            if (isDecided(in_.rows.alternates[k])) {
                continue;
            }
            if (auto done = readAlternate(k); !done.ok()) {
                return done;
            }
        }
        return {};
    }

  private:
    // An alternate whose chosen option is gone is open again.
    bool isDecided(const model::Alternate& alternate) const {
        return std::any_of(in_.rows.options.begin(), in_.rows.options.end(),
                           [&](const model::Option& option) {
                               return !alternate.chosen.isNil() && option.id == alternate.chosen;
                           });
    }

    void findFinish() {
        if (in_.plan) {
            out_.finishWithout = in_.plan(bare_).finishOn;
            out_.hasPlan = out_.finishWithout.has_value();
        }
        if (!out_.finishWithout) {
            out_.finishWithout = in_.rows.job.targetFinishOn;
        }
        if (out_.finishWithout) {
            out_.finishWithout = std::max(*out_.finishWithout, in_.today);
        }
    }

    Result<void> readAlternate(std::size_t k) {
        const model::Alternate& alternate = in_.rows.alternates[k];
        AlternateChoice choice;
        choice.alternate = k;
        for (const model::Space& space : in_.rows.spaces) {
            if (space.id == alternate.space && !alternate.space.isNil()) {
                choice.name = space.name + ": ";
            }
        }
        choice.name += alternate.question.empty() ? "(no question)" : alternate.question;
        for (std::size_t p = 0; p < in_.rows.options.size(); ++p) {
            if (in_.rows.options[p].alternate != alternate.id) {
                continue;
            }
            auto option = readOption(k, p, choice.waiting);
            if (!option.ok()) {
                return option.error();
            }
            choice.options.push_back(std::move(option).value());
        }
        std::stable_partition(choice.options.begin(), choice.options.end(),
                              [](const OptionChoice& option) { return option.isCarried; });
        if (!choice.options.empty() && choice.options.front().isCarried) {
            choice.carried = 0;
        }
        settleWaiting(alternate, choice.waiting);
        out_.alternates.push_back(std::move(choice));
        return {};
    }

    Result<OptionChoice> readOption(std::size_t alternate, std::size_t k, Waiting& waiting) {
        const model::Option& option = in_.rows.options[k];
        OptionChoice choice;
        choice.option = k;
        choice.isCarried = in_.rows.alternates[alternate].carried == option.id;
        const OptionCost cost = optionCostOf(in_.rows, option);
        choice.cost = cost.cost;
        choice.items = cost.items;
        choice.unpricedItems = cost.unpriced;
        if (auto read = readValue(option, choice); !read.ok()) {
            return read.error();
        }
        choice.leavesAsIs = saysNothing(option) && isAloneInThat(option);
        choice.isPriced = cost.items > 0 ? cost.unpriced == 0 : cost.isEntered || choice.leavesAsIs;
        choice.whyNotOffered = whyNotBesideDecided(in_.rows, option);
        if (choice.whyNotOffered.isEmpty() && !choice.isPriced) {
            choice.whyNotOffered = cost.items == 0 ? model::saying("it has no cost yet")
                                   : cost.items == 1
                                       ? model::saying("its item has no price yet")
                                       : model::saying("%1 of its %2 items have no price yet",
                                                       cost.unpriced, cost.items);
        }
        readDays(alternate, option, choice, waiting);
        if (auto weighed = weigh(choice); !weighed.ok()) {
            return weighed.error();
        }
        return choice;
    }

    // Neither items nor cost, days or value.
    bool saysNothing(const model::Option& option) const {
        const bool hasItems =
            std::any_of(in_.rows.items.begin(), in_.rows.items.end(),
                        [&](const model::Item& item) { return item.option == option.id; });
        return !hasItems && !option.cost && !(option.days && *option.days > Quantity{}) &&
               !option.valueLow && !option.valueLikely && !option.valueHigh;
    }

    // Of several options that say nothing it cannot be told which leaves things as they are.
    bool isAloneInThat(const model::Option& option) const {
        return std::none_of(in_.rows.options.begin(), in_.rows.options.end(),
                            [&](const model::Option& other) {
                                return other.alternate == option.alternate &&
                                       other.id != option.id && saysNothing(other);
                            });
    }

    static Result<void> readValue(const model::Option& option, OptionChoice& choice) {
        choice.hasValue = option.valueLow || option.valueLikely || option.valueHigh;
        if (!choice.hasValue) {
            return {};
        }
        const std::pair<std::optional<Money>, const char*> entered[] = {
            {option.valueLow, "Value low"},
            {option.valueLikely, "Value"},
            {option.valueHigh, "Value high"}};
        for (std::size_t a = 0; a < 3; ++a) {
            for (std::size_t b = a + 1; b < 3; ++b) {
                if (entered[a].first && entered[b].first && *entered[a].first > *entered[b].first) {
                    return contradiction(option, entered[a].second, entered[b].second);
                }
            }
        }
        const Money likely = likelyValueOf(option);
        choice.valueLikely = likely;
        choice.valueLow = option.valueLow.value_or(likely);
        choice.valueHigh = option.valueHigh.value_or(likely);
        choice.valueExpected = model::roundedMoney(
            choice.valueLow.minor() + 4 * likely.minor() + choice.valueHigh.minor(), 6);
        choice.valueDeviation = expectedOf({static_cast<double>(choice.valueLow.minor()),
                                            static_cast<double>(likely.minor()),
                                            static_cast<double>(choice.valueHigh.minor())})
                                    .deviation();
        return {};
    }

    // Calendar days by which the finish moves where it waits for `days` working days.
    int calendarDays(Quantity days) const {
        const std::int64_t whole =
            std::clamp<std::int64_t>((days.thousandths() + 999) / 1000, 0, kMostDays);
        const Date from = out_.finishWithout.value_or(in_.today);
        return whole == 0 ? 0 : calendar_.finishOf(from + 1, static_cast<int>(whole)) - from;
    }

    void readDays(std::size_t alternate, const model::Option& option, OptionChoice& choice,
                  Waiting& waiting) {
        Quantity itemDays;
        for (const model::Item& item : in_.rows.items) {
            if (item.option == option.id && item.treatment != model::Treatment::Keep) {
                itemDays += item.daysLikely.value_or(Quantity{});
            }
        }
        std::optional<PlannedJob> planned;
        if (out_.hasPlan) {
            model::JobRows with = bare_;
            count(with, alternate, option.id);
            planned = in_.plan(with);
        }
        if (planned && planned->finishOn) {
            choice.daysFrom = DaysFrom::Plan;
            choice.finishDays = *planned->finishOn - *out_.finishWithout;
        } else if (choice.items > 0) {
            choice.daysFrom = DaysFrom::ItemDays;
            choice.finishDays = calendarDays(itemDays);
        } else if (option.days) {
            choice.daysFrom = DaysFrom::OwnDays;
            choice.finishDays = calendarDays(*option.days);
        }
        lookAtItems(option, choice.option, planned ? *planned : PlannedJob{}, waiting);
    }

    // The earliest day that one of its items, or itself, needs the decision by; the least float.
    void lookAtItems(const model::Option& option, std::size_t position, const PlannedJob& planned,
                     Waiting& waiting) const {
        const int checkDays = concernLevelsOf(in_.rows.job).orderCheckDays;
        for (std::size_t k = 0; k < in_.rows.items.size(); ++k) {
            model::Item item = in_.rows.items[k];
            if (item.option != option.id || item.treatment == model::Treatment::Keep) {
                continue;
            }
            const PlannedItem plan = k < planned.items.size() ? planned.items[k] : PlannedItem{};
            item.plannedStartOn = plan.startOn ? plan.startOn : item.plannedStartOn;
            const bool waitsForGoods = item.leadDays.value_or(0) > 0 || item.orderOn;
            const auto by = waitsForGoods && !orders_.isOrdered(item) ? orderBy(item, checkDays)
                                                                      : item.plannedStartOn;
            noteFloat(plan, position, waiting);
            noteDecideBy(by, item.plannedStartOn, position, k, waiting);
        }
        if (position < planned.options.size()) {
            const PlannedItem& plan = planned.options[position];
            noteFloat(plan, position, waiting);
            noteDecideBy(plan.startOn, plan.startOn, position, std::nullopt, waiting);
        }
    }

    static void noteFloat(const PlannedItem& plan, std::size_t option, Waiting& waiting) {
        if (plan.floatThousandths &&
            (!waiting.floatThousandths || *plan.floatThousandths < *waiting.floatThousandths)) {
            waiting.floatThousandths = plan.floatThousandths;
            waiting.tightestOption = option;
        }
    }

    static void noteDecideBy(std::optional<Date> by, std::optional<Date> start, std::size_t option,
                             std::optional<std::size_t> item, Waiting& waiting) {
        if (by && (!waiting.decideBy || *by < *waiting.decideBy)) {
            waiting.decideBy = by;
            waiting.option = option;
            waiting.item = item;
            waiting.itemStartsOn = start;
            waiting.leadDays = start ? *start - *by : 0;
        }
    }

    void settleWaiting(const model::Alternate& alternate, Waiting& waiting) const {
        if (alternate.decideBy) {
            waiting.decideBy = alternate.decideBy;
            waiting.isEntered = true;
            waiting.option.reset();
            waiting.item.reset();
            waiting.itemStartsOn.reset();
            waiting.leadDays = 0;
        }
        waiting.isLate = waiting.decideBy && *waiting.decideBy < in_.today;
        if (waiting.floatThousandths && *waiting.floatThousandths <= 0) {
            waiting.perDay = out_.dayCosts;
        }
    }

    // By itself, with nothing for the other open alternates.
    Result<void> weigh(OptionChoice& choice) const {
        ChooseInput alone = chooseTermsOf(out_);
        WeighedOption option;
        option.cost = choice.cost;
        option.days = Quantity::of(choice.finishDays);
        const std::pair<Money, Money*> values[] = {{choice.valueLow, &choice.netLow},
                                                   {choice.valueHigh, &choice.netHigh},
                                                   {choice.valueLikely, &choice.netLikely}};
        OptionSet set;
        for (const auto& [value, net] : values) {
            option.value = value;
            alone.alternates = {{option}};
            auto figures = figuresOfSet(alone, {0});
            if (!figures.ok()) {
                return figures.error();
            }
            set = figures.value();
            *net = set.net;
        }
        choice.cutByCeiling = choice.valueLikely - set.added;
        if (out_.resale) {
            choice.resaleAfter = *out_.resale + out_.decidedValue + choice.valueLikely;
            if (out_.ceiling) {
                choice.resaleAfter = std::min(*choice.resaleAfter, *out_.ceiling);
            }
        }
        const Money outgo = choice.cost + model::times(option.days, out_.dayCosts);
        choice.breakEvenValue = model::roundedMoney(model::multiplyWide(outgo.minor(), 10'000),
                                                    out_.keptShare.basisPoints());
        return {};
    }

    const ChoicesInput& in_;
    Choices& out_;
    WorkCalendar calendar_;
    Orders orders_;
    model::JobRows bare_;  // with nothing counted for the open alternates
};

}  // namespace

Result<void> readAlternates(const ChoicesInput& in, Choices& out) {
    return Reader(in, out).read();
}

}  // namespace ledgerboard::compute
