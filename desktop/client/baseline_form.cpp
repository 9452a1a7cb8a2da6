#include "desktop/client/baseline_form.h"

#include "desktop/client/desk.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using intake::KeptBaseline;

model::Result<KeptBaseline> BaselineForm::worked() {
    Desk& desk = *Desk::here();
    const auto now = desk.now();
    if (now == nullptr || !desk.hasBook()) {
        return Said::refusal(tr("The job is still being read: try again."));
    }
    if (now->figures.scope.baseline &&
        now->rows.baselines[*now->figures.scope.baseline].frozenOn == now->today) {
        return Said::refusal(
            tr("The baseline of today is fixed already. Ctrl+Z takes it back, if it was the last "
               "thing done."));
    }
    return intake::keepBaseline(desk.book(), now->rows, now->today, desk.position(),
                                desk.instant());
}

void BaselineForm::begin() {
    Desk& desk = *Desk::here();
    auto kept = worked();
    if (!kept.ok()) {
        desk.sayNotKept(desk.now() != nullptr && desk.now()->rows.items.empty()
                            ? tr("There is no scope to fix yet: enter what is to be done first.")
                            : Said::trouble(kept.error()));
        return;
    }
    const auto now = desk.now();
    const auto& frozen = kept.value().frozen;
    const QString items = tr("%n item(s)", nullptr, static_cast<int>(frozen.items.size()));
    words_ = {tr("%1 at %2, contingency %3, as of %4.")
                  .arg(items, Said::money(kept.value().total), Said::money(frozen.contingency),
                       Said::longDay(now->today))};
    words_ << (frozen.finishOn
                   ? tr("The last of it is planned to finish on %1.")
                         .arg(Said::longDay(*frozen.finishOn))
                   : tr("Nothing in it is planned yet: there is no finish to compare with."));
    if (frozen.unpriced > 0) {
        words_ << tr("%n of them have no price and count as 0.", nullptr,
                     static_cast<int>(frozen.unpriced));
    }
    if (frozen.undated > 0) {
        words_ << tr(
            "%n of them have no planned dates and are left out of the plan; the schedule "
            "can keep its days first (Ctrl+5, then Ctrl+K).",
            nullptr, static_cast<int>(frozen.undated));
    }
    words_ << (now->figures.scope.baseline
                   ? tr("The week then compares with this one. The baseline of %1 stays in the "
                        "book.")
                         .arg(Said::longDay(now->rows.baselines[*now->figures.scope.baseline]
                                                .frozenOn.value_or(now->today)))
                   : tr("The week then compares with it. From there on, more or less money comes "
                        "by signed changes."));
    isOpen_ = true;
    emit changed();
}

bool BaselineForm::keep() {
    if (!isOpen_) {
        return false;
    }
    Desk& desk = *Desk::here();
    auto kept = worked();
    if (!kept.ok()) {
        desk.sayNotKept(Said::trouble(kept.error()));
        return false;
    }
    if (!desk.keep(kept.value().action,
                   tr("The baseline is fixed: %1").arg(Said::money(kept.value().total)))) {
        return false;
    }
    close();
    return true;
}

void BaselineForm::close() {
    isOpen_ = false;
    emit changed();
}

}  // namespace ledgerboard::desk
