#include "desktop/client/finish_work.h"

#include "core/compute/progress.h"
#include "core/model/overflow.h"

#include "desktop/client/scope_edit.h"

namespace ledgerboard::desk {

using model::Kind;
using model::Percent;
using model::Result;
namespace f = model::field;

namespace {

Result<FinishedWork> marksOf(store::Book& book, const JobNow& now,
                             const std::vector<std::size_t>& items, model::Instant at) {
    FinishedWork made;
    made.action =
        store::Action("mark " + (items.size() == 1 ? itemName(now, items.front())
                                                   : std::to_string(items.size()) + " items"));
    const auto cautions = compute::cautionsOf(now.rows, now.today);
    for (const std::size_t k : items) {
        const model::Item& item = now.rows.items[k];
        const bool counts = now.figures.scope.lines[k].counting == compute::Counting::Counts;
        if (now.figures.lines[k].shown >= Percent::whole() || (!counts && items.size() > 1)) {
            continue;
        }
        for (const auto* caution : cautions.holdingUp(item.id)) {
            made.heldUp.push_back(*caution);
        }
        model::Mark mark;
        mark.id = book.newId<Kind::Mark>(at);
        mark.job = now.rows.job.id;
        mark.item = item.id;
        mark.percent = Percent::whole();
        mark.markedOn = now.today;
        mark.by = book.me();
        mark.onDevice = book.thisDevice();
        mark.inSpiteOfCaution = compute::isInSpite(cautions, item.id, mark.markedOn, true);
        if (auto good = compute::checkMark(item, mark, itemName(now, k)); !good.ok()) {
            return good.error();
        }
        made.action.add(mark);
        ++made.marked;
    }
    return made;
}

}  // namespace

Result<FinishedWork> finishWork(store::Book& book, const JobNow& now,
                                const std::vector<std::size_t>& items, model::Instant at) {
    return model::guarded([&] { return marksOf(book, now, items, at); });
}

store::Action acknowledgement(store::Book& book, const JobNow& now,
                              const compute::CautionRead& caution, const std::string& found,
                              model::Instant at) {
    store::Action action("acknowledge " + caution.about + " of " + caution.what);
    model::RawId record = caution.record.raw();
    if (record.isNil()) {
        model::Caution row = compute::keptCaution(caution, now.rows.job.id);
        row.id = book.newId<Kind::Caution>(at);
        record = row.id.raw();
        action.add(row);
    }
    action.set(record, f::Caution::acknowledgedBy, model::Value{book.me().raw()});
    action.set(record, f::Caution::acknowledgedOn, model::Value{std::int64_t{now.today.days()}});
    if (!found.empty()) {
        action.set(record, f::Caution::testResult, model::Value{found});
    }
    return action;
}

}  // namespace ledgerboard::desk
