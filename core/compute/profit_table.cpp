#include "core/compute/profit_table.h"

#include <algorithm>
#include <array>

namespace ledgerboard::compute {

namespace {

constexpr std::array<int, 5> kWeeksLater = {0, 1, 2, 4, 8};
constexpr int kDaysPerWeek = 7;

}  // namespace

model::Result<ProfitTable> profitTableOf(const model::Job& job, const DealFigures& figures) {
    ProfitTable out;
    const auto finish = figures.willFinishOn ? figures.willFinishOn : job.targetFinishOn;
    if (!finish || !job.resaleLikely) {
        return out;
    }
    for (const auto& value : {job.resaleLow, job.resaleLikely, job.resaleHigh}) {
        if (value) {
            out.values.push_back(*value);
        }
    }
    std::sort(out.values.begin(), out.values.end());
    out.values.erase(std::unique(out.values.begin(), out.values.end()), out.values.end());
    for (const int weeks : kWeeksLater) {
        DealFigures later = figures;
        later.willFinishOn = *finish + weeks * kDaysPerWeek;
        if (later.saleOn) {
            later.saleOn = *later.saleOn + weeks * kDaysPerWeek;
        }
        ProfitTable::Row row;
        row.weeksLater = weeks;
        row.finishOn = *later.willFinishOn;
        for (const model::Money value : out.values) {
            model::Job at = job;
            at.resaleLikely = value;
            auto worked = deal(at, later);
            if (!worked.ok()) {
                return worked.error();
            }
            if (!worked.value().profit || !worked.value().saleOn) {
                return ProfitTable{};
            }
            row.saleOn = *worked.value().saleOn;
            row.profits.push_back(*worked.value().profit);
        }
        out.rows.push_back(std::move(row));
    }
    return out;
}

}  // namespace ledgerboard::compute
