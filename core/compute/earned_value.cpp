#include "core/compute/earned_value.h"

#include <cmath>

namespace ledgerboard::compute {

namespace {

constexpr double kCostWeight = 0.8;
constexpr double kScheduleWeight = 0.2;

// numerator / divisor; empty where the divisor is not above 0 or the result does not fit.
std::optional<double> ratio(double numerator, std::optional<double> divisor) {
    if (!divisor || !(*divisor > 0)) {
        return std::nullopt;
    }
    const double result = numerator / *divisor;
    return std::isfinite(result) ? std::optional<double>(result) : std::nullopt;
}

std::optional<double> plus(double base, std::optional<double> more) {
    return more ? std::optional<double>(base + *more) : std::nullopt;
}

EstimatesAtCompletion estimates(const EarnedValueInput& in, std::optional<double> cpi,
                                std::optional<double> spi) {
    const double left = in.bac - in.ev;
    EstimatesAtCompletion eac;
    eac.remainingAtBudget = in.ac + left;
    eac.remainingAtCpi = plus(in.ac, ratio(left, cpi));
    eac.remainingAtSpiT = plus(in.ac, ratio(left, in.spiT));
    if (cpi && spi) {
        eac.remainingAtCpiSpi = plus(in.ac, ratio(left, *cpi * *spi));
        eac.remainingAtWeighted =
            plus(in.ac, ratio(left, kCostWeight * *cpi + kScheduleWeight * *spi));
    }
    return eac;
}

}  // namespace

EarnedValue earnedValue(const EarnedValueInput& in) {
    EarnedValue out;
    out.bac = in.bac;
    out.pv = in.pv;
    out.ev = in.ev;
    out.ac = in.ac;
    out.cv = in.ev - in.ac;
    out.sv = in.ev - in.pv;
    out.cpi = ratio(in.ev, in.ac);
    out.spi = ratio(in.ev, in.pv);
    out.eac = estimates(in, out.cpi, out.spi);
    const std::optional<double> eac = in.eac ? in.eac : out.eac.remainingAtCpi;
    const double left = in.bac - in.ev;
    if (eac) {
        out.etc = *eac - in.ac;
        out.vac = in.bac - *eac;
        out.tcpiToEstimate = ratio(left, *eac - in.ac);
    }
    out.tcpiToBudget = ratio(left, in.bac - in.ac);
    out.percentComplete = ratio(100 * in.ev, in.bac);
    out.percentSpent = ratio(100 * in.ac, in.bac);
    return out;
}

EarnedValue earnedValue(model::Money bac, model::Money pv, model::Money ev, model::Money ac,
                        std::optional<double> spiT) {
    EarnedValueInput in;
    in.bac = toDollars(bac);
    in.pv = toDollars(pv);
    in.ev = toDollars(ev);
    in.ac = toDollars(ac);
    in.spiT = spiT;
    return earnedValue(in);
}

EarnedValueInput addUp(std::span<const EarnedValueItem> items) {
    EarnedValueInput sum;
    for (const EarnedValueItem& item : items) {
        sum.bac += item.budget;
        sum.pv += item.budget * item.plannedPercent / 100;
        sum.ev += item.budget * item.percent / 100;
        sum.ac += item.actual;
    }
    return sum;
}

double toDollars(model::Money money) {
    return static_cast<double>(money.minor()) / 100;
}

}  // namespace ledgerboard::compute
