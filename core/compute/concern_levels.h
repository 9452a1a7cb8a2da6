// From which level on is something of concern? The usual levels, and the owner's own.
//
// Source: common practice, no source.
// An owner changes a level by its name in the job's "concern levels": "line over act money 1000".
// A percent or a number of days is written as a plain number there too.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/rows.h"

namespace ledgerboard::compute {

struct ConcernLevels {
    model::Percent lineOverWatchPercent = model::Percent::of(5);
    model::Money lineOverWatchMoney = model::Money::of(250);
    model::Percent lineOverActPercent = model::Percent::of(10);
    model::Money lineOverActMoney = model::Money::of(750);
    model::Percent contingencyActPoints = model::Percent::of(20);  // used % beyond done %
    model::Percent paidAheadActPoints = model::Percent::of(10);
    model::Money paidAheadActMoney = model::Money::of(1000);
    int unsignedChangeDays = 2;
    int orderDays = 7;
    int orderCheckDays = 3;  // between arrival and the day it is needed, to look it over
    int paperDays = 3;
    int insuranceDays = 14;
    int notMarkedWatchDays = 7;
    int notMarkedActDays = 10;
    int finishWatchDays = 3;  // working days that the finish slips
    int finishActDays = 7;
    int termEndDays = 14;   // calendar days the finish keeps clear of the term end
    int noShowActDays = 2;  // in a row
    int cashDays = 14;      // of bills that cash is to cover at its lowest
};

// The names an owner may use, in the order above.
[[nodiscard]] std::vector<std::string_view> concernLevelNames();

// The usual levels with the job's own over them. A name that is not one of the above, or a value
// below 0, changes nothing.
[[nodiscard]] ConcernLevels concernLevelsOf(const model::Job& job);

// The names in the job's levels that are not known, in order: for telling the owner.
[[nodiscard]] std::vector<std::string> unknownLevelNames(const model::Job& job);

}  // namespace ledgerboard::compute
