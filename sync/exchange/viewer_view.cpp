// What a viewer sees of one job: lender lines, draws, shown percent, photos for the lender.
#include "sync/exchange/view.h"

#include "sync/exchange/open_items.h"

namespace ledgerboard::sync {

using model::Id;
using model::Kind;
using model::RawId;
using model::Result;

namespace {

template <class Row>
void showAll(View& view, const std::vector<Row>& rows) {
    for (const auto& row : rows) {
        view.records[row.id.raw()] = {Row::kKind, false};
    }
}

}  // namespace

Result<View> viewerView(store::Book& book, const Standing& standing) {
    View view;
    if (standing.job.isNil()) {
        return view;
    }
    auto all = book.jobRows(Id<Kind::Job>(standing.job));
    if (!all.ok()) {
        // No such job, or it was dropped: nothing to see. What is wrong with the file shows in
        // every other call.
        return view;
    }
    const model::JobRows& rows = all.value();
    view.records[rows.job.id.raw()] = {Kind::Job, false};
    showAll(view, rows.lender_lines);
    showAll(view, rows.draws);
    showAll(view, rows.draw_lines);
    showAll(view, rows.spaces);
    const auto open = itemsOfOpenOptions(rows.items, rows.alternates);
    for (const auto& item : rows.items) {
        if (!open.contains(item.id.raw())) {
            view.records[item.id.raw()] = {Kind::Item, false};
        }
    }
    // A voided mark would count on a phone that does not see what voids it.
    const auto voided = voidedMarks(rows.marks);
    for (const auto& mark : rows.marks) {
        if (!voided.contains(mark.id.raw()) && view.records.contains(mark.item.raw())) {
            view.records[mark.id.raw()] = {Kind::Mark, false};
        }
    }
    for (const auto& photo : rows.photos) {
        if (photo.forLender && photo.purpose == model::Purpose::Site) {
            view.records[photo.id.raw()] = {Kind::Photo, false};
        }
    }
    view.records[standing.person] = {Kind::Person, false};
    return view;
}

}  // namespace ledgerboard::sync
