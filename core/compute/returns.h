// At what yearly rate does money that went out come back: the return of dated flows?
//
// Units: rates are fractions (0.25 is 25 %); flows in any one currency; time in years.
// Source: the rate r at which sum(amount / (1 + r)^years) = 0, the internal rate of return; years
// of dated flows are actual/365 from the first one, as spreadsheets count them.
//
// With x = ln(1 + r) the sum is one of exponentials, and such a sum has at most as many roots as
// its amounts, in order of time, change sign (Descartes' rule, generalized). All of them are found:
// multiplied by e^(x t), with t between two flows of different sign, the sum keeps its roots, and
// its derivative changes sign one time less, so its roots split the line into parts on each of
// which there is at most one root; the derivative's own are found in the same way.
// Threads: no state.
#pragma once

#include <string>
#include <vector>

#include "core/model/date.h"
#include "core/model/money.h"
#include "core/model/result.h"

namespace ledgerboard::compute {

struct TimedFlow {
    double years = 0;
    double amount = 0;  // less than 0 where it goes out
};

// sum(amount / (1 + rate)^years). Requires: rate > -1.
[[nodiscard]] double valueAt(const std::vector<TimedFlow>& flows, double rate);

// Every rate from -99.9999 % to 100,000,000 % a year at which the flows are worth nothing, lowest
// first; one at which they only touch nothing counts once. Empty: none.
// Errors (CannotBeMet): fewer than two flows, all of one sign or all nothing, more than 60 changes
// of sign.
[[nodiscard]] model::Result<std::vector<double>> ratesOf(std::vector<TimedFlow> flows);

struct Return {
    double rate = 0;                    // where several solve it, the one nearest to nothing
    std::vector<double> all;            // every rate that solves it, lowest first
    std::vector<std::string> warnings;  // names all of them where there are several
};

// Errors: as ratesOf, and where no rate solves it.
[[nodiscard]] model::Result<Return> returnOf(std::vector<TimedFlow> flows);

struct DatedFlow {
    model::Date on;
    model::Money amount;
};

// Years on actual/365 from the earliest day. Flows of one day are added up. In order of day.
[[nodiscard]] std::vector<TimedFlow> timed(const std::vector<DatedFlow>& flows);

}  // namespace ledgerboard::compute
