#include "core/compute/progress.h"

#include <algorithm>
#include <limits>
#include <tuple>
#include <unordered_map>
#include <unordered_set>

#include "core/compute/pricing.h"
#include "core/model/decimal.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Mark;
using model::Measure;
using model::Percent;
using model::Quantity;
using model::Wide;

constexpr std::int64_t kWhole = 10'000;  // basis points

// part / whole, to the nearest hundredth of a percent, 100 only where nothing is missing.
// Requires: 0 <= part, 0 < whole.
Percent fraction(Wide part, Wide whole) {
    if (part >= whole) {
        return Percent::whole();
    }
    const std::int64_t nearest = model::divideRounded(part * kWhole, whole);
    return Percent::fromBasisPoints(std::min(nearest, kWhole - 1));
}

Percent within(Wide basisPoints) {
    const Wide clamped = std::clamp<Wide>(basisPoints, 0, kWhole);
    return Percent::fromBasisPoints(static_cast<std::int64_t>(clamped));
}

const model::NamedShare* stepNamed(const model::Item& item, std::string_view name) {
    const std::string wanted = folded(name);
    for (const model::NamedShare& step : item.steps) {
        if (folded(step.name) == wanted) {
            return &step;
        }
    }
    return nullptr;
}

// The weights of the steps done over the weights of all.
Percent stepsPercent(const model::Item& item, std::string_view stepsDone) {
    std::unordered_set<const model::NamedShare*> done;
    for (const std::string& name : stepsIn(stepsDone)) {
        if (const model::NamedShare* step = stepNamed(item, name)) {
            done.insert(step);
        }
    }
    Wide all = 0;
    Wide sum = 0;
    for (const model::NamedShare& step : item.steps) {
        const std::int64_t weight = std::max<std::int64_t>(0, step.percent.basisPoints());
        all += weight;
        sum += done.contains(&step) ? weight : 0;
    }
    return all == 0 ? Percent{} : fraction(sum, all);
}

std::optional<Percent> rawPercent(const model::Item& item, const Mark& mark) {
    if (mark.percent) {
        return within(mark.percent->basisPoints());
    }
    if (mark.count) {
        if (!item.quantity || *item.quantity <= Quantity{}) {
            return std::nullopt;
        }
        const Wide done = std::max<std::int64_t>(0, mark.count->thousandths());
        return fraction(done, item.quantity->thousandths());
    }
    if (!stepsIn(mark.stepsDone).empty()) {
        return stepsPercent(item, mark.stepsDone);
    }
    return std::nullopt;
}

bool isOneOf(Percent percent, std::initializer_list<int> allowed) {
    return std::any_of(allowed.begin(), allowed.end(),
                       [&](int whole) { return percent == Percent::of(whole); });
}

std::string stepList(const model::Item& item) {
    std::string out;
    for (const model::NamedShare& step : item.steps) {
        out += (out.empty() ? "" : "; ") + step.name;
    }
    return out.empty() ? "none entered yet" : out;
}

// What a mark on this item may say.
std::string allowedOn(const model::Item& item) {
    switch (measureOf(item)) {
        case Measure::NoneOrDone:
            return "percent 0 or 100, since it is measured by none or done";
        case Measure::HalfAndHalf:
            return "percent 0, 50 or 100, since it is measured by half and half";
        case Measure::WeightedSteps:
            return "the names of the steps done (" + stepList(item) +
                   "), or percent 0 or 100, since it is measured by weighted steps";
        case Measure::CountedUnits:
            return "a count from 0 to " +
                   (item.quantity ? item.quantity->toString() : std::string("its quantity")) +
                   (item.unit.empty() ? "" : " " + item.unit) +
                   ", or percent 0 or 100, since it is measured by counted units";
        case Measure::Unset:
        case Measure::JudgedPercent:
            break;
    }
    return "a percent from 0 to 100, since it is judged";
}

bool isAllowed(const model::Item& item, const Mark& mark) {
    if (mark.percent) {
        switch (measureOf(item)) {
            case Measure::HalfAndHalf:
                return isOneOf(*mark.percent, {0, 50, 100});
            case Measure::NoneOrDone:
            case Measure::WeightedSteps:
            case Measure::CountedUnits:
                return isOneOf(*mark.percent, {0, 100});
            case Measure::Unset:
            case Measure::JudgedPercent:
                break;
        }
        return *mark.percent >= Percent{} && *mark.percent <= Percent::whole();
    }
    if (mark.count) {
        return measureOf(item) == Measure::CountedUnits && item.quantity &&
               *mark.count >= Quantity{} && *mark.count <= *item.quantity;
    }
    const auto steps = stepsIn(mark.stepsDone);
    return measureOf(item) == Measure::WeightedSteps &&
           std::all_of(steps.begin(), steps.end(),
                       [&](const std::string& name) { return stepNamed(item, name) != nullptr; });
}

// What the id was made at: 48 bits of UTC milliseconds, first in a version 7 id.
std::int64_t clockOf(const model::RawId& id) {
    std::int64_t milliseconds = 0;
    for (std::size_t k = 0; k < 6; ++k) {
        milliseconds = (milliseconds << 8) | id.bytes()[k];
    }
    return milliseconds;
}

bool isEarlier(const MarkRead& a, const MarkRead& b) {
    return std::make_tuple(a.on, clockOf(a.mark->id.raw()), a.mark->onDevice, a.mark->id) <
           std::make_tuple(b.on, clockOf(b.mark->id.raw()), b.mark->onDevice, b.mark->id);
}

Percent lastOf(std::span<const MarkRead> marks, bool ownersOnly) {
    for (auto mark = marks.rbegin(); mark != marks.rend(); ++mark) {
        if (mark->byOwner || !ownersOnly) {
            return mark->percent;
        }
    }
    return Percent{};
}

std::span<const MarkRead> until(std::span<const MarkRead> marks, Date day) {
    const auto end = std::upper_bound(
        marks.begin(), marks.end(), day,
        [](Date wanted, const MarkRead& mark) { return mark.on && wanted < *mark.on; });
    return marks.first(static_cast<std::size_t>(end - marks.begin()));
}

}  // namespace

Measure measureOf(const model::Item& item) {
    return item.measure == Measure::Unset ? Measure::JudgedPercent : item.measure;
}

std::vector<std::string> stepsIn(std::string_view stepsDone) {
    std::vector<std::string> out;
    while (!stepsDone.empty()) {
        const std::size_t end = std::min(stepsDone.find(';'), stepsDone.size());
        const std::string_view name = model::trimmed(stepsDone.substr(0, end));
        if (!name.empty()) {
            out.emplace_back(name);
        }
        stepsDone.remove_prefix(std::min(end + 1, stepsDone.size()));
    }
    return out;
}

model::Result<void> checkMark(const model::Item& item, const Mark& mark, std::string_view what) {
    const std::string name(what);
    if (item.treatment == model::Treatment::Keep) {
        return model::cannotBeMet(
            model::saying("%1 is kept, so there is nothing to mark: change its treatment first if "
                          "work is to be done on it",
                          name));
    }
    const int said =
        (mark.percent ? 1 : 0) + (mark.count ? 1 : 0) + (stepsIn(mark.stepsDone).empty() ? 0 : 1);
    if (said != 1) {
        return model::wrongUse(
            said == 0 ? model::saying("a mark on %1 says nothing: give %2", name, allowedOn(item))
                      : model::saying("a mark on %1 says more than one thing: give %2", name,
                                      allowedOn(item)));
    }
    if (mark.count && measureOf(item) == Measure::CountedUnits &&
        (!item.quantity || *item.quantity <= Quantity{})) {
        return model::cannotBeMet(
            model::saying("%1 is measured by counted units and has no quantity: set its quantity, "
                          "then mark the count",
                          name));
    }
    if (!isAllowed(item, mark)) {
        return model::wrongUse(
            model::saying("that mark cannot be made on %1: give %2", name, allowedOn(item)));
    }
    return {};
}

std::optional<Percent> percentOf(const model::Item& item, const Mark& mark) {
    const auto raw = rawPercent(item, mark);
    if (!raw) {
        return std::nullopt;
    }
    const bool finished = *raw == Percent::whole();
    switch (measureOf(item)) {
        case Measure::NoneOrDone:
            return finished ? Percent::whole() : Percent{};
        case Measure::HalfAndHalf:
            return finished || *raw == Percent{} ? *raw : Percent::of(50);
        default:
            return raw;
    }
}

Marks::Marks(const model::JobRows& rows) {
    std::unordered_set<model::Id<model::Kind::Person>> owners;
    for (const model::Person& person : rows.people) {
        if (person.role == model::Role::Owner) {
            owners.insert(person.id);
        }
    }
    std::unordered_map<model::Id<model::Kind::Item>, std::size_t> items;
    for (std::size_t k = 0; k < rows.items.size(); ++k) {
        items.emplace(rows.items[k].id, k);
    }
    std::vector<std::vector<MarkRead>> byItem(rows.items.size());
    for (const Mark& mark : rows.marks) {
        const auto item = items.find(mark.item);
        if (item == items.end()) {
            continue;
        }
        if (const auto percent = percentOf(rows.items[item->second], mark)) {
            byItem[item->second].push_back(
                {mark.markedOn, *percent, owners.contains(mark.by), &mark});
        }
    }
    read_.reserve(rows.marks.size());
    starts_.reserve(rows.items.size() + 1);
    for (std::vector<MarkRead>& marks : byItem) {
        std::sort(marks.begin(), marks.end(), isEarlier);
        starts_.push_back(read_.size());
        read_.insert(read_.end(), marks.begin(), marks.end());
    }
    starts_.push_back(read_.size());
}

std::span<const MarkRead> Marks::of(std::size_t item) const {
    return std::span<const MarkRead>(read_).subspan(starts_[item],
                                                    starts_[item + 1] - starts_[item]);
}

Percent Marks::shown(std::size_t item) const {
    return lastOf(of(item), false);
}

Percent Marks::seen(std::size_t item) const {
    return lastOf(of(item), true);
}

Percent Marks::shownOn(std::size_t item, Date day) const {
    return lastOf(until(of(item), day), false);
}

Percent Marks::seenOn(std::size_t item, Date day) const {
    return lastOf(until(of(item), day), true);
}

void WeightedPercent::add(model::Money budgetNow, Percent percent) {
    const Wide weight = std::max<std::int64_t>(0, budgetNow.minor());
    weighted_ += weight * percent.basisPoints();
    weights_ += weight;
    plain_ += percent.basisPoints();
    ++count_;
}

Percent WeightedPercent::value() const {
    if (weights_ > 0) {
        return Percent::fromBasisPoints(model::divideRounded(weighted_, weights_));
    }
    return count_ == 0 ? Percent{} : Percent::fromBasisPoints(model::divideRounded(plain_, count_));
}

model::Money WeightedPercent::of(model::Money money, Percent part) const {
    const Wide numerator = weights_ > 0 ? weighted_ : Wide{plain_};
    const Wide denominator = weights_ > 0 ? weights_ : Wide{count_};
    if (denominator == 0) {
        return model::Money{};
    }
    const Wide ofMoney = model::multiplyWide(money.minor(), part.basisPoints());
    return model::roundedMoney(model::multiplyWide(numerator, ofMoney),
                               model::multiplyWide(denominator, Wide{kWhole} * kWhole));
}

}  // namespace ledgerboard::compute
