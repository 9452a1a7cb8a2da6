// How much working time lies between two days, and on which day does work begin and end?
//
// Units: thousandths of a working day, counted from the start of a first day; less than 0 before
// it. A day of the work week that is no holiday has 1000, a half day off leaves 500 of it.
// Source: project decision. Threads: any number may ask.
#pragma once

#include <cstdint>
#include <vector>

#include "core/compute/planned_value.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

inline constexpr std::int64_t kWorkDay = 1000;

class WorkTime {
  public:
    // `first` itself need not be worked.
    WorkTime(const model::Job& job, model::Date first);

    [[nodiscard]] model::Date first() const { return first_; }

    [[nodiscard]] const WorkCalendar& calendar() const { return calendar_; }

    // Working time from the start of the first day to the start of `day`.
    [[nodiscard]] std::int64_t before(model::Date day) const;

    // ... to the end of `day`.
    [[nodiscard]] std::int64_t through(model::Date day) const { return before(day + 1); }

    // The day on which work goes on that is begun at `at`: at the end of a day it is the next one
    // worked. Requires: 0 <= at. Errors: OverflowError beyond 10^8 days.
    [[nodiscard]] model::Date startDay(std::int64_t at) const;
    // The day on which work ends that is over at `at`: at the end of a day it is that day.
    // 0: the first day worked. Requires and Errors: as startDay.
    [[nodiscard]] model::Date finishDay(std::int64_t at) const;

  private:
    // The first day whose end comes after, or no sooner than, `at`.
    [[nodiscard]] model::Date dayThat(std::int64_t at, bool endsLater) const;

    WorkCalendar calendar_;
    model::Date first_;
    std::vector<model::Date> halfDays_;  // those on days worked, sorted, no doubles
    int daysOff_ = 0;                    // holidays entered
};

// Working days by which `on` lies after `planned`; less than 0 where it lies before.
[[nodiscard]] int workDaysLate(const WorkCalendar& calendar, model::Date planned, model::Date on);

}  // namespace ledgerboard::compute
