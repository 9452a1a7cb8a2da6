// Sets of options: what is carried now, the best one and why, and the frontier.
#include <algorithm>

#include "core/compute/choices_parts.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Money;
using model::Quantity;
using model::Result;
using model::saying;
using OptionId = model::Id<model::Kind::Option>;

class Weigher {
  public:
    Weigher(const ChoicesInput& in, Choices& out) : in_(in), out_(out), rows_(in.rows) {}

    Result<void> weigh() {
        leaveOutWhatNeedsWhatIsLeftOut();
        if (auto made = makeInput(); !made.ok()) {
            return made;
        }
        if (auto now = weighNow(); !now.ok()) {
            return now;
        }
        auto best = compute::bestSetOf(input_);
        if (!best.ok()) {
            return best.error();
        }
        out_.proven = best.value().proven;
        if (!best.value().set) {
            return sayWhyNone();
        }
        out_.best = setChoice(*best.value().set);
        if (auto told = tellWhy(*best.value().set); !told.ok()) {
            return told;
        }
        return addFrontierAndChance();
    }

  private:
    // Whether `id` may be chosen in a set: an option of an open alternate that is offered.
    [[nodiscard]] bool isOffered(const OptionId& id) const {
        for (const AlternateChoice& alternate : out_.alternates) {
            for (const OptionChoice& option : alternate.options) {
                if (rows_.options[option.option].id == id) {
                    return option.whyNotOffered.isEmpty();
                }
            }
        }
        return false;
    }

    [[nodiscard]] bool isChosen(const OptionId& id) const {
        return std::any_of(
            rows_.alternates.begin(), rows_.alternates.end(),
            [&](const model::Alternate& alternate) { return alternate.chosen == id; });
    }

    void leaveOutWhatNeedsWhatIsLeftOut() {
        for (bool goesOn = true; goesOn;) {
            goesOn = false;
            for (AlternateChoice& alternate : out_.alternates) {
                for (OptionChoice& option : alternate.options) {
                    const model::Option& row = rows_.options[option.option];
                    for (const OptionId& need : row.needs) {
                        if (option.whyNotOffered.isEmpty() && !isOffered(need) && !isChosen(need)) {
                            option.whyNotOffered =
                                saying("it needs \"%1\", which can't be chosen yet", nameOf(need));
                            goesOn = true;
                        }
                    }
                }
            }
        }
    }

    [[nodiscard]] std::string nameOf(const OptionId& id) const {
        for (const model::Option& option : rows_.options) {
            if (option.id == id) {
                return option.name;
            }
        }
        return "an option no longer in the job";
    }

    Result<void> makeInput() {
        input_ = chooseTermsOf(out_);
        for (std::size_t k = 0; k < out_.alternates.size(); ++k) {
            std::vector<std::size_t> offered;
            for (std::size_t p = 0; p < out_.alternates[k].options.size(); ++p) {
                if (out_.alternates[k].options[p].whyNotOffered.isEmpty()) {
                    offered.push_back(p);
                }
            }
            if (!offered.empty()) {
                alternates_.push_back(k);
                offered_.push_back(offered);
            }
        }
        for (std::size_t a = 0; a < alternates_.size(); ++a) {
            input_.alternates.emplace_back();
            for (const std::size_t p : offered_[a]) {
                input_.alternates.back().push_back(
                    weighed(out_.alternates[alternates_[a]].options[p]));
            }
        }
        input_.cash = in_.ask.cash;
        if (in_.ask.finishOn) {
            if (!out_.finishWithout) {
                return model::cannotBeMet(
                    "nothing tells when the work ends, so no finish can be kept: give scope items "
                    "their Days, or the job its Finish");
            }
            input_.days = Quantity::of(*in_.ask.finishOn - *out_.finishWithout);
        }
        return {};
    }

    [[nodiscard]] static WeighedOption figuresOf(const OptionChoice& option) {
        WeighedOption out;
        out.cost = option.cost;
        out.days = Quantity::of(option.finishDays);
        out.value = option.valueExpected;
        out.valueDeviation = option.valueDeviation;
        return out;
    }

    [[nodiscard]] WeighedOption weighed(const OptionChoice& option) const {
        WeighedOption out = figuresOf(option);
        const model::Option& row = rows_.options[option.option];
        for (const OptionId& id : row.needs) {
            if (const auto place = placeOf(id)) {
                out.needs.push_back(*place);
            }
        }
        for (const OptionId& id : row.excludes) {
            if (const auto place = placeOf(id)) {
                out.excludes.push_back(*place);
            }
        }
        return out;
    }

    [[nodiscard]] std::optional<OptionPlace> placeOf(const OptionId& id) const {
        for (std::size_t a = 0; a < alternates_.size(); ++a) {
            for (std::size_t p = 0; p < offered_[a].size(); ++p) {
                const auto& option = out_.alternates[alternates_[a]].options[offered_[a][p]];
                if (rows_.options[option.option].id == id) {
                    return OptionPlace{a, p};
                }
            }
        }
        return std::nullopt;
    }

    // The carried options whatever they are, and nothing where none is carried.
    Result<void> weighNow() {
        ChooseInput now = chooseTermsOf(out_);
        SetChoice& set = out_.now;
        for (const AlternateChoice& alternate : out_.alternates) {
            set.options.push_back(alternate.carried);
            now.alternates.push_back({WeighedOption{}});
            if (alternate.carried) {
                now.alternates.back().front() = figuresOf(alternate.options[*alternate.carried]);
            }
        }
        const std::vector<std::size_t> only(now.alternates.size(), 0);
        auto figures = figuresOfSet(now, only);
        if (!figures.ok()) {
            return figures.error();
        }
        fill(set, figures.value());
        if (in_.ask.chance) {
            now.deviations = out_.deviations;
            set.netAtChance = figuresOfSet(now, only).value().net;
        }
        return {};
    }

    void fill(SetChoice& set, const OptionSet& figures, bool isPlanned = true) const {
        set.cost = figures.cost;
        set.finishDays = static_cast<int>(figures.days.thousandths() / 1000);
        set.added = figures.added;
        set.net = figures.net;
        set.finishOn = isPlanned ? finishOf(set) : finishAfter(rows_.job, out_, set.finishDays);
    }

    [[nodiscard]] std::optional<model::Date> finishOf(const SetChoice& set) const {
        if (!out_.hasPlan) {
            return finishAfter(rows_.job, out_, set.finishDays);
        }
        model::JobRows rows = rows_;
        for (std::size_t k = 0; k < out_.alternates.size(); ++k) {
            const AlternateChoice& alternate = out_.alternates[k];
            const auto option = set.options[k];
            count(rows, alternate.alternate,
                  option ? rows.options[alternate.options[*option].option].id : OptionId{});
        }
        const auto planned = in_.plan(rows).finishOn;
        return planned ? planned : finishAfter(rows_.job, out_, set.finishDays);
    }

    // With the finish by the sum of days alone: for many sets, each plan of which would take time.
    [[nodiscard]] SetChoice setChoice(const OptionSet& figures, bool isPlanned = true) const {
        SetChoice set;
        set.options.resize(out_.alternates.size());
        for (std::size_t a = 0; a < alternates_.size(); ++a) {
            set.options[alternates_[a]] = offered_[a][figures.options[a]];
        }
        fill(set, figures, isPlanned);
        if (in_.ask.chance) {
            ChooseInput at = input_;
            at.deviations = out_.deviations;
            set.netAtChance = figuresOfSet(at, figures.options).value().net;
        }
        return set;
    }

    // For each alternate: how much less is earned without the best set's option.
    Result<void> tellWhy(const OptionSet& best) {
        for (std::size_t a = 0; a < alternates_.size(); ++a) {
            AlternateChoice& alternate = out_.alternates[alternates_[a]];
            alternate.best = offered_[a][best.options[a]];
            ChooseInput without = input_;
            const OptionPlace barred{a, best.options[a]};
            without.alternates[a][best.options[a]].excludes.push_back(barred);  // rules itself out
            auto other = bestSetOf(without);
            if (!other.ok()) {
                return other.error();
            }
            if (other.value().set && other.value().proven) {
                alternate.otherwise = offered_[a][other.value().set->options[a]];
                alternate.worth = best.net - other.value().set->net;
            }
        }
        return {};
    }

    Result<void> addFrontierAndChance() {
        ChooseInput input = input_;
        if (in_.ask.chance) {
            input.deviations = out_.deviations;
            auto best = bestSetOf(input);
            if (!best.ok()) {
                return best.error();
            }
            out_.proven = out_.proven && best.value().proven;
            if (best.value().set) {
                out_.bestAtChance = setChoice(expected(best.value().set->options));
            }
        }
        auto frontier = frontierOf(input);
        if (!frontier.ok()) {
            return frontier.error();
        }
        out_.frontierCut = frontier.value().cut;
        for (const OptionSet& set : frontier.value().sets) {
            out_.frontier.push_back(setChoice(expected(set.options), false));
        }
        return {};
    }

    [[nodiscard]] OptionSet expected(const std::vector<std::size_t>& options) const {
        return figuresOfSet(input_, options).value();
    }

    Result<void> sayWhyNone() {
        if (!out_.proven) {
            out_.whyNone = saying(
                "the search was stopped before a set was found: decide some alternates "
                "first");
            return {};
        }
        auto least = leastSetsOf(input_);
        if (!least.ok()) {
            return least.error();
        }
        const LeastSets& sets = least.value();
        const auto finish = [&](const OptionSet& set) {
            return finishAfter(rows_.job, out_, static_cast<int>(set.days.thousandths() / 1000))
                ->toString();
        };
        if (!sets.cheapest) {
            out_.whyNone = saying(
                "no options go together: what they need and exclude contradicts itself "
                "whatever is chosen");
        } else if (input_.cash && sets.cheapest->cost > *input_.cash) {
            out_.whyNone = saying("the cheapest set that goes together costs %1, more than %2",
                                  sets.cheapest->cost, *input_.cash);
        } else if (input_.days && sets.fastest->days > *input_.days) {
            out_.whyNone = saying("even the quickest set that goes together ends on %1, after %2",
                                  finish(*sets.fastest), in_.ask.finishOn->toString());
        } else {
            out_.whyNone = saying(
                "no set keeps the cash and the finish at once: the cheapest that ends in "
                "time costs %1",
                sets.cheapestInTime->cost);
        }
        return {};
    }

    const ChoicesInput& in_;
    Choices& out_;
    const model::JobRows& rows_;
    ChooseInput input_;
    std::vector<std::size_t> alternates_;            // in out_.alternates, by input alternate
    std::vector<std::vector<std::size_t>> offered_;  // in their options, by input option
};

}  // namespace

ChooseInput chooseTermsOf(const Choices& choices) {
    ChooseInput input;
    input.keptShare = choices.keptShare;
    input.dayCosts = choices.dayCosts;
    if (choices.resale && choices.ceiling) {
        input.resale = *choices.resale + choices.decidedValue;
        input.ceiling = choices.ceiling;
    }
    return input;
}

Result<void> weighSets(const ChoicesInput& in, Choices& out) {
    return Weigher(in, out).weigh();
}

}  // namespace ledgerboard::compute
