#include <algorithm>

#include "core/compute/job_risk_parts.h"
#include "core/compute/positions.h"

namespace ledgerboard::compute {

namespace {

using model::Money;
using model::Percent;
using model::Quantity;

constexpr std::int64_t kWholePercent = 100;
constexpr double kWholeBasisPoints = 10'000;

std::int64_t scaled(std::int64_t value, model::Wide by, model::Wide of) {
    return model::divideRounded(model::multiplyWide(value, by), of);
}

// The same as a value of likely: never above or below it on the wrong side.
Spread around(std::int64_t low, std::int64_t likely, std::int64_t high) {
    return {std::min(low, likely), likely, std::max(high, likely)};
}

Spread usual(std::int64_t likely, const UsualRange& range) {
    return around(scaled(likely, range.low, kWholePercent), likely,
                  scaled(likely, range.high, kWholePercent));
}

class Reader {
  public:
    Reader(const model::JobRows& rows, const JobFigures& figures, const JobNetwork& network)
        : rows_(rows), figures_(figures), network_(network), items_(rows.items) {}

    JobRiskInput read() {
        activityOf_.resize(figures_.scope.lines.size());
        for (std::size_t k = 0; k < network_.activities.size(); ++k) {
            activityOf_[network_.activities[k].line] = k;
        }
        readLines();
        for (const JobActivity& activity : network_.activities) {
            addActivity(activity);
        }
        out_.risk.precedences = network_.precedences;
        const auto turns = turnsOf(rows_, network_);
        out_.basis.turns = turns.size();
        out_.risk.precedences.insert(out_.risk.precedences.end(), turns.begin(), turns.end());
        for (const model::Unknown& unknown : rows_.unknowns) {
            addUnknown(unknown);
        }
        for (const model::Change& change : rows_.changes) {
            addUnsigned(change);
        }
        return std::move(out_);
    }

  private:
    // What is certain: billed, and the to go of lines that are no activities.
    void readLines() {
        Money certain = figures_.job.billed;
        for (std::size_t line = 0; line < figures_.lines.size(); ++line) {
            if (activityOf_[line]) {
                continue;
            }
            certain += figures_.lines[line].toGo;
            const ScopeLine& scope = figures_.scope.lines[line];
            out_.basis.finished += scope.isWork() && scope.counting == Counting::Counts ? 1 : 0;
        }
        out_.risk.certainCost = certain.minor();
    }

    const model::Item* itemOf(const JobActivity& activity) const {
        return activity.isOption ? nullptr : &rows_.items[activity.line];
    }

    void addActivity(const JobActivity& activity) {
        ++out_.basis.open;
        RiskItem item;
        item.cost = costOf(activity);
        item.duration = daysOf(activity);
        item.notBefore = activity.release;
        item.ready = readyOf(activity);
        out_.risk.items.push_back(item);
    }

    Spread costOf(const JobActivity& activity) {
        const LineFigures& line = figures_.lines[activity.line];
        const std::int64_t toGo = line.toGo.minor();
        if (line.rule == ToGoRule::Commitment || line.rule == ToGoRule::OwnEstimate) {
            ++(line.rule == ToGoRule::Commitment ? out_.basis.byContract : out_.basis.byEstimate);
            return Spread::certain(toGo);
        }
        const ScopeLine& scope = figures_.scope.lines[activity.line];
        const Pricing& pricing = scope.pricing;
        const Money price = pricing.line > Money{} ? pricing.line : scope.baseline;
        if (toGo <= 0) {
            const model::Item* of = itemOf(activity);
            const bool isUnpriced = pricing.by == PricedBy::Nothing && price <= Money{} &&
                                    of != nullptr && of->treatment != model::Treatment::Inspect;
            ++(isUnpriced ? out_.basis.unpriced : out_.basis.costRanged);
            return Spread::certain(toGo);
        }
        Spread spread = usual(toGo, kUsualCost);
        if ((!pricing.low && !pricing.high) || price <= Money{}) {
            ++out_.basis.costUsual;
            return spread;
        }
        ++out_.basis.costRanged;
        if (pricing.low) {
            spread.low = std::min(toGo, scaled(toGo, pricing.low->minor(), price.minor()));
        }
        if (pricing.high) {
            spread.high = std::max(toGo, scaled(toGo, pricing.high->minor(), price.minor()));
        }
        return keptInRange(spread, itemOf(activity), line);
    }

    // Billed + to go within the item's own low to high, moved by its signed changes, as the
    // forecast is kept (to_go.cpp).
    static Spread keptInRange(Spread spread, const model::Item* item, const LineFigures& line) {
        if (item == nullptr ||
            (item->costLow && item->costHigh && *item->costLow > *item->costHigh)) {
            return spread;
        }
        const Money moved = line.signedChanges - line.billed;
        if (item->costLow) {
            spread.low = std::clamp((*item->costLow + moved).minor(), spread.low, spread.likely);
        }
        if (item->costHigh) {
            spread.high = std::clamp((*item->costHigh + moved).minor(), spread.likely, spread.high);
        }
        return spread;
    }

    Spread daysOf(const JobActivity& activity) {
        if (activity.left == 0) {
            out_.basis.withoutDays += activity.hasDays ? 0 : 1;
            return {};
        }
        const auto left = [&](std::int64_t days) {
            return leftOf(std::max<std::int64_t>(days, 0), activity.shown, activity.pace);
        };
        const model::Item* item = itemOf(activity);
        const bool isSaid = item != nullptr && (item->daysLow || item->daysHigh);
        ++(isSaid ? out_.basis.daysRanged : out_.basis.daysUsual);
        Spread spread = usual(activity.left, kUsualDays);
        if (item != nullptr && item->daysLow) {
            spread.low =
                std::min(activity.left, left(item->daysLow->thousandths() + activity.changeDays));
        }
        if (item != nullptr && item->daysHigh) {
            const std::int64_t most = std::min(item->daysHigh->thousandths(), kMostDays);
            spread.high = std::max(activity.left, left(most + activity.changeDays));
        }
        return spread;
    }

    // Goods that are awaited come as planned or later.
    Spread readyOf(const JobActivity& activity) {
        if (!activity.goodsOn) {
            return Spread::certain(0);
        }
        ++out_.basis.goodsAwaited;
        const model::Item& item = rows_.items[activity.line];
        const auto lead = std::clamp<std::int64_t>(item.leadDays.value_or(0), 0, kMostLead);
        const int late = std::max(kLateGoodsDays, static_cast<int>(lead / 2));
        const model::Date ready = *activity.goodsOn + network_.checkDays;
        const std::int64_t planned = std::max<std::int64_t>(network_.time.before(ready), 0);
        return around(planned, planned, network_.time.before(ready + late));
    }

    void addUnknown(const model::Unknown& unknown) {
        if (unknown.cameTrueOn) {
            return;
        }
        if (!unknown.chance || *unknown.chance == Percent{}) {
            ++out_.basis.unknownsWithoutChance;
            return;
        }
        RiskUnknown risk;
        risk.chance = static_cast<double>(unknown.chance->basisPoints()) / kWholeBasisPoints;
        if (!unknown.item.isNil()) {
            const auto line = items_.of(unknown.item);
            risk.item = line ? activityOf_[*line] : std::nullopt;
            if (line && !risk.item) {
                ++out_.basis.unknownsPast;
                return;
            }
        }
        const auto& first = unknown.costLow ? unknown.costLow : unknown.costHigh;
        const Money some = first.value_or(Money{});
        const Money low = unknown.costLow.value_or(unknown.costLikely.value_or(some));
        const Money high = unknown.costHigh.value_or(unknown.costLikely.value_or(some));
        const Money likely = unknown.costLikely.value_or(
            model::roundedMoney(model::Wide{low.minor()} + high.minor(), 2));
        risk.cost = around(low.minor(), likely.minor(), high.minor());
        risk.delay = Spread::certain(daysIn(unknown.days));
        ++out_.basis.unknowns;
        out_.risk.unknowns.push_back(risk);
        out_.unknowns.push_back(unknown.what.empty() ? "an unknown" : unknown.what);
    }

    static std::int64_t daysIn(const std::optional<Quantity>& days) {
        return std::clamp<std::int64_t>(days.value_or(Quantity{}).thousandths(), 0, kMostDays);
    }

    void addUnsigned(const model::Change& change) {
        if (change.signedOn || change.refusedOn) {
            return;
        }
        RiskUnknown risk;
        risk.chance = kUnsignedChance;
        risk.cost = Spread::certain(changeAmount(change).minor());
        risk.delay = Spread::certain(daysIn(change.days));
        for (const auto& id : change.items) {
            const auto line = items_.of(id);
            if (line && activityOf_[*line]) {
                risk.item = activityOf_[*line];
                break;
            }
        }
        ++out_.basis.unsignedChanges;
        out_.risk.unknowns.push_back(risk);
        out_.unknowns.push_back(change.name.empty() ? "an unsigned change" : change.name);
    }

    static constexpr std::int64_t kMostDays = 3650 * kWorkDay;  // ten years

    const model::JobRows& rows_;
    const JobFigures& figures_;
    const JobNetwork& network_;
    Positions<model::Item> items_;
    std::vector<std::optional<std::size_t>> activityOf_;  // by line
    JobRiskInput out_;
};

}  // namespace

JobRiskInput jobRiskInputOf(const model::JobRows& rows, const JobFigures& figures,
                            const JobNetwork& network) {
    return Reader(rows, figures, network).read();
}

}  // namespace ledgerboard::compute
