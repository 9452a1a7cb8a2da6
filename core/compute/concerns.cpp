#include "core/compute/concerns.h"

#include <algorithm>

#include "core/compute/concern_list.h"

namespace ledgerboard::compute {

std::string_view wordsFor(ConcernKind kind) {
    switch (kind) {
        case ConcernKind::LineOver:
            return "over";
        case ConcernKind::JobOver:
            return "whole job over";
        case ConcernKind::ContingencyRunsDown:
            return "contingency runs down";
        case ConcernKind::PaidAhead:
            return "paid ahead";
        case ConcernKind::BeyondContract:
            return "beyond contract";
        case ConcernKind::UnsignedChange:
            return "unsigned change";
        case ConcernKind::Order:
            return "order";
        case ConcernKind::ArrivesLate:
            return "arrives late";
        case ConcernKind::Unfinished:
            return "no amount";
        case ConcernKind::BankLineWaits:
            return "bank line waits";
        case ConcernKind::PaperNotSeen:
            return "paper not seen";
        case ConcernKind::WaiverMissing:
            return "waiver missing";
        case ConcernKind::Insurance:
            return "insurance";
        case ConcernKind::NotMarked:
            return "not marked";
        case ConcernKind::OutsideBaseline:
            return "outside the baseline";
        case ConcernKind::FinishSlips:
            return "finish slips";
        case ConcernKind::NoShow:
            return "did not come";
        case ConcernKind::Stacked:
            return "in two places at once";
        case ConcernKind::CashLow:
            return "cash low";
    }
    return "";
}

std::string_view wordsFor(Page page) {
    switch (page) {
        case Page::ThisWeek:
            return "This week";
        case Page::ScopeOfWork:
            return "Scope of work";
        case Page::Schedule:
            return "Schedule";
        case Page::ContractsAndOrders:
            return "Contracts and orders";
        case Page::Spend:
            return "Spend";
        case Page::Closing:
            return "Closing";
        case Page::Draws:
            return "Draws";
    }
    return "";
}

std::vector<Concern> concernsOf(const model::JobRows& rows, const JobFigures& figures,
                                const Plan& plan, model::Date today, const Outlook& outlook) {
    const ConcernsInput in{rows, figures, plan, today, outlook, concernLevelsOf(rows.job)};
    std::vector<Concern> out;
    addMoneyConcerns(in, out);
    addTimeConcerns(in, out);
    std::stable_sort(out.begin(), out.end(), [](const Concern& a, const Concern& b) {
        if (a.level != b.level) {
            return a.level == Level::Act;
        }
        const model::Money moneyA = a.money.value_or(model::Money{});
        const model::Money moneyB = b.money.value_or(model::Money{});
        return moneyA != moneyB ? moneyA > moneyB : a.days.value_or(0) > b.days.value_or(0);
    });
    return out;
}

}  // namespace ledgerboard::compute
