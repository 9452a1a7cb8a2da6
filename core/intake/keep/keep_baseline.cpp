#include "core/intake/keep/keep_baseline.h"

#include "core/model/overflow.h"

namespace ledgerboard::intake {

using model::Kind;
using model::Result;

namespace {

Result<KeptBaseline> frozenRows(store::Book& book, const model::JobRows& rows, model::Date on,
                                const store::LogPosition& readAt, model::Instant at) {
    KeptBaseline kept;
    kept.frozen = compute::freeze(rows);
    if (kept.frozen.items.empty()) {
        return model::cannotBeMet(
            "there is no scope to freeze: read walk notes or bring a scope first");
    }
    model::Baseline baseline;
    baseline.id = kept.id = book.newId<Kind::Baseline>(at);
    baseline.job = rows.job.id;
    baseline.frozenOn = on;
    baseline.contingency = kept.frozen.contingency;
    baseline.finishOn = kept.frozen.finishOn;
    kept.action = store::Action("baseline of " + on.toString(), readAt);
    kept.action.add(baseline);
    for (const auto& item : kept.frozen.items) {
        model::BaselineItem one;
        one.id = book.newId<Kind::BaselineItem>(at);
        one.job = baseline.job;
        one.baseline = baseline.id;
        one.item = item.item;
        one.budget = item.budget;
        one.plannedStartOn = item.plannedStartOn;
        one.plannedFinishOn = item.plannedFinishOn;
        kept.action.add(one);
        kept.total += item.budget;
    }
    return kept;
}

}  // namespace

Result<KeptBaseline> keepBaseline(store::Book& book, const model::JobRows& rows, model::Date on,
                                  const store::LogPosition& readAt, model::Instant at) {
    for (const auto& earlier : rows.baselines) {
        if (earlier.frozenOn == on) {
            return model::cannotBeMet("there is a baseline of " + on.toString() +
                                      " already: name another day, or drop that one");
        }
    }
    return model::guarded([&] { return frozenRows(book, rows, on, readAt, at); });
}

}  // namespace ledgerboard::intake
