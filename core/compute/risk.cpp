#include "core/compute/risk.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/compute/risk_parts.h"
#include "core/compute/seeded_numbers.h"
#include "core/model/check.h"
#include "core/model/overflow.h"

namespace ledgerboard::compute {

namespace {

using model::addChecked;
using model::subtractChecked;

constexpr std::uint64_t kAllPlaces = std::uint64_t{1} << 32U;
constexpr unsigned kGradeShift = 16;  // from a 32-bit place to a 16-bit grade

// A spread ready to be drawn from.
struct Varying {
    std::size_t item = 0;
    std::int64_t low = 0;
    std::int64_t width = 0;
    const QuantileTable* table = nullptr;
    std::int64_t least = 0;  // of a time: what is drawn below it counts as this

    [[nodiscard]] std::int64_t at(std::uint32_t place) const {
        constexpr model::Wide kHalf = QuantileTable::kOne / 2;
        return low + static_cast<std::int64_t>((model::Wide{width} * table->at(place) + kHalf) >>
                                               QuantileTable::kOneBits);
    }
};

struct UnknownDraw {
    std::uint64_t chance = 0;  // of 2^32
    Varying cost;
    Varying delay;  // without a table where it is certain
    std::optional<std::size_t> item;
};

std::uint64_t of32Bits(double share) {
    return static_cast<std::uint64_t>(std::llround(share * static_cast<double>(kAllPlaces)));
}

void requireOrder(const Spread& spread) {
    model::require(spread.low <= spread.likely && spread.likely <= spread.high,
                   "low, likely and high in order");
}

class Simulation {
  public:
    explicit Simulation(const RiskInput& input)
        : input_(input),
          numbers_(input.seed),
          network_(activitiesOf(input), input.precedences),
          sharing_(of32Bits(std::sqrt(input.correlation))),
          certainCost_(input.certainCost) {
        for (std::size_t k = 0; k < input.items.size(); ++k) {
            prepare(k, input.items[k].duration, DriverKind::ItemDuration, durations_);
        }
        for (std::size_t k = 0; k < input.items.size(); ++k) {
            const std::size_t before = readies_.size();
            prepare(k, input.items[k].ready, DriverKind::ItemReady, readies_);
            if (readies_.size() > before) {
                readies_.back().least = input.items[k].notBefore;
            }
        }
        for (std::size_t k = 0; k < input.unknowns.size(); ++k) {
            prepareUnknown(k);
        }
        for (std::size_t k = 0; k < input.items.size(); ++k) {
            const Spread& cost = input.items[k].cost;
            prepare(k, cost, DriverKind::ItemCost, costs_);
            certainCost_ += cost.isCertain() ? cost.low : 0;
        }
        if (input.profit) {
            prepare(0, input.profit->income, DriverKind::Income, income_);
        }
        for (const Activity& activity : network_.activities()) {
            usualDurations_.push_back(activity.duration);
            release_.push_back(activity.release);
        }
        duration_ = usualDurations_;
        start_.resize(duration_.size());
        finish_.resize(duration_.size());
    }

    RiskResult run() {
        RiskResult out;
        grades_.trials = std::min(input_.trials, kDriverTrials);
        const std::size_t columns = grades_.causes.size();
        grades_.places.resize(grades_.trials * columns);
        grades_.correlation = input_.correlation;
        std::vector<std::uint16_t> scratch(columns);
        out.costs.reserve(input_.trials);
        out.finishes.reserve(input_.trials);
        for (std::size_t trial = 0; trial < input_.trials; ++trial) {
            grade_ =
                trial < grades_.trials ? grades_.places.data() + trial * columns : scratch.data();
            shared_ = static_cast<std::uint32_t>(numbers_.next() >> 32U);
            if (trial < grades_.trials) {
                grades_.shared.push_back(static_cast<std::uint16_t>(shared_ >> kGradeShift));
            }
            const std::int64_t finish = drawFinish();
            out.costs.push_back(addChecked(drawCosts(), unknownCost_));
            out.finishes.push_back(finish);
            if (input_.profit) {
                out.profits.push_back(profitOf(out.costs.back(), finish));
            }
        }
        summarize(out);
        return out;
    }

  private:
    static std::vector<Activity> activitiesOf(const RiskInput& input) {
        std::vector<Activity> out;
        for (const RiskItem& item : input.items) {
            out.push_back(
                {item.duration.low, std::max(item.ready.low, item.notBefore), std::nullopt});
        }
        return out;
    }

    [[nodiscard]] Varying varying(std::size_t item, const Spread& spread) {
        requireOrder(spread);
        Varying out;
        out.item = item;
        out.low = spread.low;
        out.width = subtractChecked(spread.high, spread.low);
        if (out.width > 0) {
            const double mode =
                (static_cast<double>(spread.likely) - static_cast<double>(spread.low)) /
                static_cast<double>(out.width);
            out.table = &tables_.try_emplace(mode, input_.shape, mode).first->second;
        }
        return out;
    }

    void prepare(std::size_t item, const Spread& spread, DriverKind kind,
                 std::vector<Varying>& list) {
        const Varying made = varying(item, spread);
        if (made.table != nullptr) {
            list.push_back(made);
            grades_.causes.push_back({kind, item});
        }
    }

    void prepareUnknown(std::size_t k) {
        const RiskUnknown& unknown = input_.unknowns[k];
        model::require(unknown.chance >= 0 && unknown.chance <= 1, "a chance from 0 to 1");
        model::require(!unknown.item || *unknown.item < input_.items.size(),
                       "an unknown's item in range");
        model::require(unknown.delay.low >= 0, "a delay not below 0");
        unknowns_.push_back({of32Bits(unknown.chance), varying(k, unknown.cost),
                             varying(k, unknown.delay), unknown.item});
        grades_.causes.push_back({DriverKind::Unknown, k});
    }

    // Draws places, and keeps them as grades. It works on a copy of the generator, which a compiler
    // can keep at hand, and gives it back in the end.
    class Draws {
      public:
        explicit Draws(Simulation& of)
            : of_(of),
              numbers_(of.numbers_),
              shared_(of.shared_),
              sharing_(of.sharing_),
              grade_(of.grade_) {}

        Draws(const Draws&) = delete;
        Draws& operator=(const Draws&) = delete;

        ~Draws() {
            of_.numbers_ = numbers_;
            of_.grade_ = grade_;
        }

        std::uint64_t bits() { return numbers_.next(); }

        // A place for one spread: the house's, or one of its own.
        std::uint32_t place() {
            const std::uint64_t drawn = numbers_.next();
            const auto own = static_cast<std::uint32_t>(drawn >> 32U);
            // Without a branch, for nobody could foretell it.
            const std::uint32_t shares = (drawn & 0xffffffffU) < sharing_ ? 1 : 0;
            return own ^ ((own ^ shared_) & (0U - shares));
        }

        void grade(std::uint64_t place) {
            *grade_++ = static_cast<std::uint16_t>(place >> kGradeShift);
        }

        std::int64_t value(const Varying& from) {
            const std::uint32_t drawn = place();
            grade(drawn);
            return from.at(drawn);
        }

      private:
        Simulation& of_;
        SeededNumbers numbers_;
        std::uint32_t shared_;
        std::uint64_t sharing_;
        std::uint16_t* grade_;
    };

    std::int64_t drawCosts() {
        Draws draws(*this);
        std::int64_t sum = certainCost_;
        for (const Varying& cost : costs_) {
            sum += draws.value(cost);
        }
        return sum;
    }

    // Leaves what the unknowns cost in unknownCost_.
    std::int64_t drawFinish() {
        drawInto(durations_, duration_);
        drawInto(readies_, release_);
        const std::int64_t late = drawUnknowns();
        const std::int64_t length = network_.forward(duration_, release_, start_, finish_);
        if (!unknowns_.empty()) {
            duration_ = usualDurations_;
        }
        return addChecked(length, late);
    }

    void drawInto(const std::vector<Varying>& spreads, std::span<std::int64_t> values) {
        Draws draws(*this);
        for (const Varying& spread : spreads) {
            values[spread.item] = std::max(draws.value(spread), spread.least);
        }
    }

    // Lengthens the items struck; returns what strikes the whole.
    std::int64_t drawUnknowns() {
        Draws draws(*this);
        std::int64_t late = 0;
        unknownCost_ = 0;
        for (const UnknownDraw& unknown : unknowns_) {
            const bool strikes = (draws.bits() >> 32U) < unknown.chance;
            const std::uint32_t place = draws.place();
            const std::int64_t cost =
                unknown.cost.table != nullptr ? unknown.cost.at(place) : unknown.cost.low;
            const std::int64_t delay = unknown.delay.table != nullptr
                                           ? unknown.delay.at(draws.place())
                                           : unknown.delay.low;
            // Among all outcomes those without it come first, as one.
            const std::uint64_t spared = kAllPlaces - unknown.chance;
            draws.grade(std::min(strikes ? spared + ((unknown.chance * place) >> 32U) : spared / 2,
                                 kAllPlaces - 1));
            if (strikes) {
                unknownCost_ = addChecked(unknownCost_, cost);
                std::int64_t& struck = unknown.item ? duration_[*unknown.item] : late;
                struck = addChecked(struck, delay);
            }
        }
        return late;
    }

    std::int64_t profitOf(std::int64_t cost, std::int64_t finish) {
        const RiskProfit& profit = *input_.profit;
        const std::int64_t income =
            income_.empty() ? profit.income.low : Draws(*this).value(income_.front());
        const std::int64_t others = profit.otherCosts ? profit.otherCosts(finish) : 0;
        return subtractChecked(subtractChecked(income, cost), others);
    }

    void summarize(RiskResult& out) const {
        out.cost = summaryOf(out.costs);
        out.finish = summaryOf(out.finishes);
        out.profit = summaryOf(out.profits);
        out.costDrivers = driversOf(grades_, Total::Cost, out.costs);
        out.finishDrivers = driversOf(grades_, Total::Finish, out.finishes);
        if (input_.profit) {
            out.profitDrivers = driversOf(grades_, Total::Profit, out.profits);
        }
    }

    const RiskInput& input_;
    SeededNumbers numbers_;
    Network network_;
    std::map<double, QuantileTable> tables_;  // by mode: one for each shape that an estimate has
    std::uint64_t sharing_;                   // chance of the house's place, of 2^32
    std::int64_t certainCost_;
    std::vector<Varying> costs_;
    std::vector<Varying> durations_;
    std::vector<Varying> readies_;
    std::vector<UnknownDraw> unknowns_;
    std::vector<Varying> income_;  // one, or none where it is certain

    // Of the trial under way.
    std::uint32_t shared_ = 0;
    std::uint16_t* grade_ = nullptr;
    std::int64_t unknownCost_ = 0;
    std::vector<std::int64_t> usualDurations_;
    std::vector<std::int64_t> duration_;
    std::vector<std::int64_t> release_;
    std::vector<std::int64_t> start_;
    std::vector<std::int64_t> finish_;

    Grades grades_;
};

// No sum of a trial can leave 64 bits: the trials add without looking.
void requireRoom(const RiskInput& input) {
    std::int64_t most = input.certainCost;
    std::int64_t least = input.certainCost;
    for (const RiskItem& item : input.items) {
        most = addChecked(most, std::max<std::int64_t>(item.cost.high, 0));
        least = addChecked(least, std::min<std::int64_t>(item.cost.low, 0));
    }
}

}  // namespace

LikelyOutcome likelyOutcome(const RiskInput& input) {
    LikelyOutcome out;
    out.cost = input.certainCost;
    std::vector<Activity> activities;
    for (const RiskItem& item : input.items) {
        out.cost = addChecked(out.cost, item.cost.likely);
        activities.push_back(
            {item.duration.likely, std::max(item.ready.likely, item.notBefore), std::nullopt});
    }
    out.finish = Network(std::move(activities), input.precedences).times().length;
    return out;
}

RiskResult simulateRisk(const RiskInput& input) {
    model::require(input.trials >= 1 && input.trials <= kMostTrials, "1 to a million trials");
    model::require(input.correlation >= 0 && input.correlation <= 1, "a correlation from 0 to 1");
    requireRoom(input);
    return Simulation(input).run();
}

}  // namespace ledgerboard::compute
