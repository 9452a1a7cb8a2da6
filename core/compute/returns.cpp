#include "core/compute/returns.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <limits>
#include <map>
#include <optional>

#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

// ln(1 + r) at -99.9999 % and, mirrored, at 100,000,000 %.
const double kFarthest = std::log(1e6);
constexpr double kNothing = 1e-13;  // of the sum of absolute amounts
constexpr std::size_t kMostChanges = 60;
constexpr double kDaysPerYear = 365;

// -1, 0 or 1: the sign of the sum at x = ln(1 + r), 0 where it is nothing but rounding. Each term
// is taken relative to the largest, so that none overflows.
int signAt(const std::vector<TimedFlow>& flows, double x) {
    double largest = -std::numeric_limits<double>::infinity();
    for (const TimedFlow& flow : flows) {
        largest = std::max(largest, -x * flow.years + std::log(std::abs(flow.amount)));
    }
    double sum = 0;
    double absolute = 0;
    for (const TimedFlow& flow : flows) {
        const double term = std::exp(-x * flow.years + std::log(std::abs(flow.amount)) - largest);
        sum += flow.amount > 0 ? term : -term;
        absolute += term;
    }
    if (std::abs(sum) <= kNothing * absolute) {
        return 0;
    }
    return sum > 0 ? 1 : -1;
}

// The first of two neighbours whose signs differ. Requires: no amount is 0.
std::optional<std::size_t> firstChange(const std::vector<TimedFlow>& flows) {
    for (std::size_t k = 0; k + 1 < flows.size(); ++k) {
        if ((flows[k].amount > 0) != (flows[k + 1].amount > 0)) {
            return k;
        }
    }
    return std::nullopt;
}

std::size_t changesOfSign(const std::vector<TimedFlow>& flows) {
    std::size_t changes = 0;
    for (std::size_t k = 0; k + 1 < flows.size(); ++k) {
        changes += (flows[k].amount > 0) != (flows[k + 1].amount > 0) ? 1 : 0;
    }
    return changes;
}

// The root between a and b, where the signs differ.
double halved(const std::vector<TimedFlow>& flows, double a, double b) {
    const int signA = signAt(flows, a);
    constexpr int kSteps = 200;
    for (int step = 0; step < kSteps; ++step) {
        const double middle = a + (b - a) / 2;
        if (middle <= a || middle >= b) {
            break;
        }
        const int sign = signAt(flows, middle);
        if (sign == 0) {
            return middle;
        }
        (sign == signA ? a : b) = middle;
    }
    return a + (b - a) / 2;
}

// All roots in x, lowest first. Requires: in order of time, no two at one time, no amount 0.
std::vector<double> rootsOf(const std::vector<TimedFlow>& flows) {
    const auto change = firstChange(flows);
    if (!change) {
        return {};
    }
    const double between = flows[*change].years / 2 + flows[*change + 1].years / 2;
    std::vector<TimedFlow> derivative;
    for (const TimedFlow& flow : flows) {
        const double amount = flow.amount * (between - flow.years);
        if (amount != 0) {
            derivative.push_back({flow.years, amount});
        }
    }
    std::vector<double> edges = rootsOf(derivative);
    edges.insert(edges.begin(), -kFarthest);
    edges.push_back(kFarthest);
    std::vector<double> roots;
    for (std::size_t k = 0; k + 1 < edges.size(); ++k) {
        const int before = signAt(flows, edges[k]);
        const int after = signAt(flows, edges[k + 1]);
        if (before * after < 0) {
            roots.push_back(halved(flows, edges[k], edges[k + 1]));
        } else if (after == 0) {
            roots.push_back(edges[k + 1]);
        }
    }
    return roots;
}

std::string percentText(double rate) {
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%.4g", rate * 100);
    return text.data() + std::string(" %");
}

}  // namespace

double valueAt(const std::vector<TimedFlow>& flows, double rate) {
    double sum = 0;
    for (const TimedFlow& flow : flows) {
        sum += flow.amount * std::exp(-flow.years * std::log1p(rate));
    }
    return sum;
}

model::Result<std::vector<double>> ratesOf(std::vector<TimedFlow> flows) {
    std::map<double, double> byTime;
    for (const TimedFlow& flow : flows) {
        byTime[flow.years] += flow.amount;
    }
    flows.clear();
    for (const auto& [years, amount] : byTime) {
        if (amount != 0) {
            flows.push_back({years, amount});
        }
    }
    const std::size_t changes = changesOfSign(flows);
    if (changes == 0) {
        return model::cannotBeMet(
            "the flows have no sign change: money must both go out (below 0) and come back (above "
            "0), on different days, for there to be a return");
    }
    if (changes > kMostChanges) {
        return model::cannotBeMet(model::saying(
            "the flows change sign %1 times, more than 60: add up the flows of a week or a month",
            changes));
    }
    std::vector<double> rates;
    for (const double root : rootsOf(flows)) {
        rates.push_back(std::expm1(root));
    }
    return rates;
}

model::Result<Return> returnOf(std::vector<TimedFlow> flows) {
    auto rates = ratesOf(std::move(flows));
    if (!rates.ok()) {
        return rates.error();
    }
    Return out;
    out.all = rates.value();
    if (out.all.empty()) {
        return model::cannotBeMet(
            "no yearly rate from -99.9999 % to 100,000,000 % makes these flows worth nothing: "
            "there is no return to show");
    }
    out.rate = *std::min_element(out.all.begin(), out.all.end(),
                                 [](double a, double b) { return std::abs(a) < std::abs(b); });
    if (out.all.size() > 1) {
        std::string names;
        for (std::size_t k = 0; k < out.all.size(); ++k) {
            const bool last = k + 1 == out.all.size();
            names += (k == 0 ? "" : last ? " and " : ", ") + percentText(out.all[k]);
        }
        out.warnings.push_back("several rates solve it: " + names +
                               "; none of them alone is the return, so compare values at a rate "
                               "of your own instead");
    }
    return out;
}

std::vector<TimedFlow> timed(const std::vector<DatedFlow>& flows) {
    std::map<model::Date, model::Money> byDay;
    for (const DatedFlow& flow : flows) {
        byDay[flow.on] += flow.amount;
    }
    std::vector<TimedFlow> out;
    out.reserve(byDay.size());
    for (const auto& [on, amount] : byDay) {
        out.push_back({(on - byDay.begin()->first) / kDaysPerYear,
                       static_cast<double>(amount.minor()) / 100});
    }
    return out;
}

}  // namespace ledgerboard::compute
