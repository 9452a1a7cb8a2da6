#include "desktop/cli/keep_dates.h"

#include "core/report/money_text.h"

namespace ledgerboard::cli {

namespace f = model::field;

model::Result<std::size_t> keepDates(Session& session, const model::JobRows& rows,
                                     const std::vector<DatesToKeep>& dates, model::Date today) {
    store::Book& book = *session.book().value();
    store::Action action("keep the plan of " + today.toString(), book.position());
    std::size_t count = 0;
    for (const DatesToKeep& one : dates) {
        const model::Item& row = rows.items[one.item];
        const bool setStart = !one.isUnderWay || !row.plannedStartOn;
        const bool newStart = setStart && row.plannedStartOn != one.startOn;
        const bool newFinish = row.plannedFinishOn != one.finishOn;
        if (newStart) {
            action.set(row.id.raw(), f::Item::plannedStartOn, model::valueOf(one.startOn));
        }
        if (newFinish) {
            action.set(row.id.raw(), f::Item::plannedFinishOn, model::valueOf(one.finishOn));
        }
        count += newStart || newFinish ? 1 : 0;
    }
    if (!action.empty()) {
        if (auto done = book.commit(action, session.now()); !done.ok()) {
            return done.error();
        }
        session.forgetRows();
    }
    return count;
}

std::string keptText(std::size_t count) {
    if (count == 0) {
        return "\nThe planned dates of the items are these already.\n";
    }
    return "\nKept as the planned dates of " +
           report::countText(static_cast<std::int64_t>(count), "item", "items") +
           "; 'ledgerboard undo' takes that back.\n";
}

}  // namespace ledgerboard::cli
