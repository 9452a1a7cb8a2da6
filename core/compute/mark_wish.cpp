#include "core/compute/mark_wish.h"

#include <algorithm>

#include "core/compute/progress.h"
#include "core/model/overflow.h"

namespace ledgerboard::compute {

using model::Measure;
using model::Percent;
using model::Quantity;

namespace {

constexpr int kPercentStops = 20;
constexpr int kMostUnitStops = 200;
constexpr int kHundredths = 100;
constexpr std::int64_t kWholeBasisPoints = 10'000;

}  // namespace

int stopsOf(const model::Item& item) {
    switch (compute::measureOf(item)) {
        case Measure::NoneOrDone:
            return 1;
        case Measure::HalfAndHalf:
            return 2;
        case Measure::CountedUnits: {
            const auto thousandths = item.quantity.value_or(Quantity{}).thousandths();
            if (thousandths <= 0) {
                return 1;  // nothing to count: only none or finished can be said
            }
            const bool isWhole = thousandths % 1000 == 0 && thousandths / 1000 <= kMostUnitStops;
            return isWhole ? static_cast<int>(thousandths / 1000) : kHundredths;
        }
        case Measure::Unset:
        case Measure::WeightedSteps:
        case Measure::JudgedPercent:
            break;
    }
    return kPercentStops;
}

int stopAt(const model::Item& item, Percent percent) {
    const int stops = stopsOf(item);
    if (percent >= Percent::whole()) {
        return stops;
    }
    const auto near =
        model::divideRounded(model::multiplyWide(percent.basisPoints(), stops), kWholeBasisPoints);
    return std::clamp(static_cast<int>(near), 0, stops - 1);
}

Percent percentAt(const model::Item& item, int stop) {
    return Percent::fromBasisPoints(
        model::divideRounded(model::multiplyWide(stop, kWholeBasisPoints), stopsOf(item)));
}

MarkWish wishAt(const model::Item& item, int stop) {
    MarkWish wish;
    const int stops = stopsOf(item);
    const bool isCounted = compute::measureOf(item) == Measure::CountedUnits && item.quantity;
    if (isCounted && stop < stops) {
        wish.count = Quantity::fromThousandths(
            model::divideRounded(model::multiplyWide(item.quantity->thousandths(), stop), stops));
    } else {
        wish.percent = percentAt(item, stop);
    }
    return wish;
}

model::Result<model::Mark> markOf(const model::Item& item, const MarkWish& wish,
                                  model::Date today) {
    model::Mark mark;
    mark.job = item.job;
    mark.item = item.id;
    mark.percent = wish.percent;
    mark.count = wish.count;
    for (const auto& step : wish.steps) {
        mark.stepsDone += (mark.stepsDone.empty() ? "" : "; ") + step;
    }
    mark.markedOn = today;
    mark.note = wish.note;
    if (auto good = compute::checkMark(item, mark, item.object); !good.ok()) {
        return good.error();
    }
    return mark;
}

}  // namespace ledgerboard::compute
