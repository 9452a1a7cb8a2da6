#include "core/compute/choices_plan.h"

#include "core/compute/plan.h"
#include "core/compute/positions.h"

namespace ledgerboard::compute {

PlanJob planJobAsOf(model::Date today) {
    return [today](const model::JobRows& rows) {
        const JobFigures figures = figuresOf(rows, today);
        const Plan plan = planOf(rows, figures, today);
        PlannedJob out;
        if (!plan.loop.empty()) {
            return out;
        }
        out.finishOn = plan.on;
        out.items.resize(rows.items.size());
        out.options.resize(rows.options.size());
        const Positions<model::Option> options(rows.options);
        for (const PlanItem& item : plan.items) {
            if (item.state == PlanState::Finished || !item.hasDays) {
                continue;
            }
            const PlannedItem planned{item.startOn, item.totalFloat};
            const ScopeLine& line = figures.scope.lines[item.line];
            if (line.kind == LineKind::Item) {
                out.items[item.line] = planned;
            } else if (const auto option = options.of(line.option)) {
                out.options[*option] = planned;
            }
        }
        return out;
    };
}

}  // namespace ledgerboard::compute
