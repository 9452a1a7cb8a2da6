#include "core/compute/concerns.h"

#include <algorithm>

#include "core/compute/concern_list.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

model::Saying sayingFor(ConcernKind kind) {
    switch (kind) {
        case ConcernKind::LineOver:
            return model::saying("over");
        case ConcernKind::JobOver:
            return model::saying("whole job over");
        case ConcernKind::ContingencyRunsDown:
            return model::saying("contingency runs down");
        case ConcernKind::PaidAhead:
            return model::saying("paid ahead");
        case ConcernKind::BeyondContract:
            return model::saying("beyond contract");
        case ConcernKind::UnsignedChange:
            return model::saying("unsigned change");
        case ConcernKind::Order:
            return model::saying("order");
        case ConcernKind::ArrivesLate:
            return model::saying("arrives late");
        case ConcernKind::Unfinished:
            return model::saying("no amount");
        case ConcernKind::BankLineWaits:
            return model::saying("bank line waits");
        case ConcernKind::PaperNotSeen:
            return model::saying("paper not seen");
        case ConcernKind::WaiverMissing:
            return model::saying("waiver missing");
        case ConcernKind::Insurance:
            return model::saying("insurance");
        case ConcernKind::NotMarked:
            return model::saying("not marked");
        case ConcernKind::OutsideBaseline:
            return model::saying("outside the baseline");
        case ConcernKind::FinishSlips:
            return model::saying("finish slips");
        case ConcernKind::NoShow:
            return model::saying("did not come");
        case ConcernKind::Stacked:
            return model::saying("in two places at once");
        case ConcernKind::CashLow:
            return model::saying("cash low");
    }
    return {};
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
