#include "core/compute/contract_terms.h"

#include <algorithm>

#include "core/compute/papers.h"
#include "core/compute/positions.h"

namespace ledgerboard::compute {

using model::Money;

std::vector<BarOnPaying> barsOn(const model::JobRows& rows, const model::Contract& contract,
                                model::Date today) {
    std::vector<BarOnPaying> bars;
    if (contract.type == model::ContractKind::Order) {
        return bars;
    }
    const auto crew = Positions<model::Crew>(rows.crews).of(contract.crew);
    if (crew) {
        const model::Crew& who = rows.crews[*crew];
        const auto until = insuredUntil(rows, who);
        if (until && *until < today) {
            bars.push_back({Bar::InsuranceLapsed, who.name, until});
        }
        const bool awaited =
            std::any_of(rows.papers.begin(), rows.papers.end(), [&](const model::Paper& paper) {
                return paper.type == model::PaperKind::LienWaiver && paper.crew == who.id &&
                       !paper.receivedOn;
            });
        if (awaited) {
            bars.push_back({Bar::WaiverAwaited, who.name, {}});
        }
    }
    if (contract.acceptedOn && !contract.waiverReceivedOn) {
        bars.push_back({Bar::FinalWaiver, {}, {}});
    }
    return bars;
}

std::vector<std::string> barredBy(const model::JobRows& rows, const model::Contract& contract,
                                  model::Date today) {
    std::vector<std::string> reasons;
    for (const BarOnPaying& bar : barsOn(rows, contract, today)) {
        switch (bar.why) {
            case Bar::InsuranceLapsed:
                reasons.push_back("the insurance of " + bar.who + " lapsed on " +
                                  bar.on->toString());
                break;
            case Bar::WaiverAwaited:
                reasons.push_back("a lien waiver of " + bar.who + " has not come");
                break;
            case Bar::FinalWaiver:
                reasons.emplace_back(
                    "the work was accepted and the final lien waiver has not come");
                break;
        }
    }
    return reasons;
}

Money depositBeyondLimit(const model::Job& job, const model::Contract& contract, Money now) {
    if (!job.depositLimit || !contract.deposit || contract.type == model::ContractKind::Order) {
        return Money{};
    }
    const Money sum = contract.signedOn ? now : contract.sum.value_or(Money{});
    return std::max(Money{}, *contract.deposit - share(*job.depositLimit, sum));
}

std::vector<PaidAheadOf> paidAheadByCrew(const model::JobRows& rows, const JobFigures& figures) {
    const Positions<model::Crew> crews(rows.crews);
    std::vector<PaidAheadOf> out;
    for (const model::Crew& crew : rows.crews) {
        out.push_back({crew.id, crew.name, Money{}});
    }
    for (const ContractFigures& contract : figures.contracts) {
        const model::Contract& row = rows.contracts[contract.contract];
        if (const auto crew = crews.of(row.crew)) {
            out[*crew].amount += contract.paidAhead;
        } else {
            out.push_back({{}, row.name, contract.paidAhead});
        }
    }
    std::erase_if(out, [](const PaidAheadOf& one) { return one.amount == Money{}; });
    return out;
}

std::vector<BarredPayment> barredPayments(const model::JobRows& rows, const JobFigures& figures) {
    std::vector<BarredPayment> out;
    for (const ContractFigures& contract : figures.contracts) {
        if (!contract.barredBy.empty() && contract.payableOnceCleared > Money{}) {
            out.push_back({contract.contract, rows.contracts[contract.contract].name,
                           contract.payableOnceCleared, contract.barredBy});
        }
    }
    return out;
}

}  // namespace ledgerboard::compute
