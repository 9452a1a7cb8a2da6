#include "core/compute/draws.h"

#include <algorithm>

namespace ledgerboard::compute {

namespace {

using model::Money;
using model::Percent;

constexpr std::int64_t kWhole = 10'000;  // basis points

}  // namespace

Money lentInPlace(const LineInPlace& line, Percent holdback) {
    const std::int64_t allowed = std::min(line.allowed.basisPoints(), kWhole);
    const model::Wide parts = model::multiplyWide(
        model::multiplyWide(allowed, line.share.basisPoints()), kWhole - holdback.basisPoints());
    return model::roundedMoney(model::multiplyWide(line.amount.minor(), parts),
                               model::Wide{kWhole} * kWhole * kWhole);
}

Drawn drawnOf(const std::vector<LineInPlace>& lines, const DrawTerms& terms) {
    const Percent holdback = terms.isFinal ? Percent{} : terms.holdback;
    Money before;
    Money wanted;
    std::vector<std::int64_t> draws;
    for (const LineInPlace& line : lines) {
        const Money draw = std::max(Money{}, lentInPlace(line, holdback) - line.paidBefore);
        before += line.paidBefore;
        wanted += draw;
        draws.push_back(draw.minor());
    }
    Drawn out;
    out.total = wanted;
    if (terms.limit) {
        out.total = std::clamp(*terms.limit - before, Money{}, wanted);
        out.cutByLimit = wanted - out.total;
    }
    const std::vector<Money> parts =
        wanted > Money{} ? allocate(out.total, draws) : std::vector<Money>(lines.size());
    for (std::size_t k = 0; k < lines.size(); ++k) {
        const Money held = lentInPlace(lines[k], Percent{}) - lentInPlace(lines[k], holdback);
        out.lines.push_back({parts[k], held});
    }
    return out;
}

PlainDrawn drawnOf(const std::vector<PlainLine>& lines, double holdbackPercent,
                   std::optional<double> limit, bool isFinal) {
    const double holdback = isFinal ? 0 : holdbackPercent / 100;
    PlainDrawn out;
    double before = 0;
    double wanted = 0;
    for (const PlainLine& line : lines) {
        const double lent = std::min(line.amount, line.amount * line.allowedPercent / 100) *
                            line.sharePercent / 100;
        const double draw = std::max(0.0, lent * (1 - holdback) - line.paidBefore);
        out.draws.push_back(draw);
        out.heldBack.push_back(lent * holdback);
        before += line.paidBefore;
        wanted += draw;
    }
    out.total = limit ? std::clamp(*limit - before, 0.0, wanted) : wanted;
    out.cutByLimit = wanted - out.total;
    if (out.cutByLimit > 0) {
        for (double& draw : out.draws) {
            draw *= out.total / wanted;
        }
    }
    return out;
}

}  // namespace ledgerboard::compute
