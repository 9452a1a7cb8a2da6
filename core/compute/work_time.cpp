#include "core/compute/work_time.h"

#include <algorithm>

#include "core/model/check.h"
#include "core/model/overflow.h"

namespace ledgerboard::compute {

namespace {

using model::Date;

constexpr std::int64_t kHalfDay = kWorkDay / 2;
constexpr std::int64_t kLatest = 100'000'000'000;

}  // namespace

WorkTime::WorkTime(const model::Job& job, Date first)
    : calendar_(job), first_(first), daysOff_(static_cast<int>(job.holidays.size())) {
    for (const Date day : job.halfDays) {
        if (calendar_.isWorkDay(day)) {
            halfDays_.push_back(day);
        }
    }
    std::sort(halfDays_.begin(), halfDays_.end());
    halfDays_.erase(std::unique(halfDays_.begin(), halfDays_.end()), halfDays_.end());
}

std::int64_t WorkTime::before(Date day) const {
    const Date from = std::min(day, first_);
    const Date to = std::max(day, first_);
    const auto halves = std::lower_bound(halfDays_.begin(), halfDays_.end(), to) -
                        std::lower_bound(halfDays_.begin(), halfDays_.end(), from);
    const std::int64_t time = calendar_.workDays(from, to - 1) * kWorkDay - halves * kHalfDay;
    return day < first_ ? -time : time;
}

Date WorkTime::dayThat(std::int64_t at, bool endsLater) const {
    model::require(at >= 0, "a day is asked for from the first one on");
    if (at > kLatest) {
        throw model::OverflowError("a plan is longer than a calendar can hold");
    }
    constexpr int kDaysInWeek = 7;
    // Each week has a day worked but for holidays, and each day worked at least half its time.
    Date low = first_;
    Date high = first_ + static_cast<int>((at / kHalfDay + 2 + daysOff_) * kDaysInWeek);
    while (low < high) {
        const Date middle = low + (high - low) / 2;
        const std::int64_t end = through(middle);
        if (end > at || (!endsLater && end == at)) {
            high = middle;
        } else {
            low = middle + 1;
        }
    }
    return low;
}

Date WorkTime::startDay(std::int64_t at) const {
    return dayThat(at, true);
}

Date WorkTime::finishDay(std::int64_t at) const {
    return at == 0 ? dayThat(at, true) : dayThat(at, false);
}

int workDaysLate(const WorkCalendar& calendar, Date planned, Date on) {
    return on >= planned ? calendar.workDays(planned + 1, on) : -calendar.workDays(on + 1, planned);
}

}  // namespace ledgerboard::compute
