#include "desktop/client/mark_work.h"

#include "core/compute/progress.h"
#include "core/model/overflow.h"

#include "desktop/client/scope_edit.h"

namespace ledgerboard::desk {

using model::Kind;
using model::Percent;
using model::Result;
namespace f = model::field;

namespace {

struct Saying {
    const compute::MarkWish& wish;
    model::Date on;
    model::Instant at;
};

Result<MarkedWork> marksOf(store::Book& book, const JobNow& now,
                           const std::vector<std::size_t>& items, const Saying& saying) {
    MarkedWork made;
    made.action =
        store::Action("mark " + (items.size() == 1 ? itemName(now, items.front())
                                                   : std::to_string(items.size()) + " items"));
    const auto cautions = compute::cautionsOf(now.rows, saying.on);
    for (const std::size_t k : items) {
        const model::Item& item = now.rows.items[k];
        const bool counts = now.figures.scope.lines[k].counting == compute::Counting::Counts;
        const bool again = saying.wish.percent == Percent::whole() &&
                           now.figures.lines[k].shown >= Percent::whole();
        if (again || (!counts && items.size() > 1)) {
            continue;
        }
        auto mark = compute::markOf(item, saying.wish, saying.on);
        if (!mark.ok()) {
            return mark.error();
        }
        model::Mark& one = mark.value();
        made.shown = compute::percentOf(item, one).value_or(Percent{});
        const bool isBegun = made.shown > Percent{};
        for (const auto* caution : cautions.holdingUp(item.id)) {
            if (isBegun) {
                made.heldUp.push_back(*caution);
            }
        }
        one.id = book.newId<Kind::Mark>(saying.at);
        one.by = book.meAsKept();
        one.onDevice = book.thisDeviceAsKept();
        one.inSpiteOfCaution = compute::isInSpite(cautions, item.id, one.markedOn, isBegun);
        made.action.add(one);
        ++made.marked;
    }
    return made;
}

}  // namespace

Result<MarkedWork> markWork(store::Book& book, const JobNow& now,
                            const std::vector<std::size_t>& items, const compute::MarkWish& wish,
                            model::Date on, model::Instant at) {
    return model::guarded([&] { return marksOf(book, now, items, {wish, on, at}); });
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
    action.set(record, f::Caution::acknowledgedBy, model::valueOf(book.meAsKept()));
    action.set(record, f::Caution::acknowledgedOn, model::Value{std::int64_t{now.today.days()}});
    if (!found.empty()) {
        action.set(record, f::Caution::testResult, model::Value{found});
    }
    return action;
}

}  // namespace ledgerboard::desk
