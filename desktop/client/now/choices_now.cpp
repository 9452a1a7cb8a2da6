#include "desktop/client/now/choices_now.h"

#include <algorithm>

#include "core/compute/choices_plan.h"
#include "core/compute/plan.h"
#include "core/report/choices_text.h"
#include "core/report/deal_figures.h"

namespace ledgerboard::desk {

using model::Result;

namespace {

const model::Option* chosenOf(const JobNow& now, std::size_t alternate) {
    for (const model::Option& option : now.rows.options) {
        if (option.id == now.rows.alternates[alternate].chosen) {
            return &option;
        }
    }
    return nullptr;
}

bool isAsked(const JobNow& now, const compute::Difference& difference) {
    return std::any_of(
        now.rows.changes.begin(), now.rows.changes.end(), [&](const model::Change& change) {
            return !change.signedOn && !change.refusedOn && change.items == difference.items &&
                   change.amount == difference.amount;
        });
}

}  // namespace

Result<compute::Choices> choicesNowOf(const JobNow& now, const compute::ChoicesAsk& ask) {
    const auto plan = compute::planOf(now.rows, now.figures, now.today);
    auto deal =
        compute::deal(now.rows.job, report::dealFiguresOf(now.rows, now.figures, plan, now.today));
    if (!deal.ok()) {
        return deal.error();
    }
    return compute::choicesOf(now.rows, now.figures, deal.value(), now.today, ask,
                              compute::planJobAsOf(now.today));
}

std::optional<model::Item> itemOfChoice(const JobNow& now, std::size_t alternate,
                                        std::size_t option) {
    model::JobRows rows = now.rows;
    rows.alternates[alternate].chosen = rows.options[option].id;
    return compute::itemMadeBy(rows, alternate, option);
}

std::optional<model::Change> changeWanted(const JobNow& now, std::size_t alternate) {
    const auto difference = compute::differenceOf(now.rows, alternate);
    const model::Option* chosen = chosenOf(now, alternate);
    if (!difference.baselineOn || difference.amount == model::Money{} || chosen == nullptr ||
        isAsked(now, difference)) {
        return std::nullopt;
    }
    model::Change change;
    change.job = now.rows.job.id;
    change.name = report::optionLabel(*chosen);
    change.why = now.rows.alternates[alternate].why;
    change.amount = difference.amount;
    change.items = difference.items;
    change.askedOn = now.today;
    return change;
}

bool isChangeAsked(const JobNow& now, std::size_t alternate) {
    const auto difference = compute::differenceOf(now.rows, alternate);
    return difference.baselineOn && difference.amount != model::Money{} && isAsked(now, difference);
}

}  // namespace ledgerboard::desk
