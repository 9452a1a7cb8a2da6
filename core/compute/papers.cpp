#include "core/compute/papers.h"

#include <algorithm>

#include "core/compute/pricing.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Saying;
using model::saying;
using Kind = MissingPaper::Kind;

Saying titleOf(model::SpendKind kind) {
    switch (kind) {
        case model::SpendKind::Invoice:
            return saying("Invoice");
        case model::SpendKind::Receipt:
            return saying("Receipt");
        case model::SpendKind::Payment:
            return saying("Payment");
        case model::SpendKind::Refund:
            return saying("Refund");
        case model::SpendKind::Fee:
            return saying("Fee");
        case model::SpendKind::Unset:
            break;
    }
    return {};
}

Saying titleOf(model::PaperKind kind) {
    switch (kind) {
        case model::PaperKind::Permit:
            return saying("Permit");
        case model::PaperKind::Insurance:
            return saying("Insurance");
        case model::PaperKind::Licence:
            return saying("Licence");
        case model::PaperKind::TaxForm:
            return saying("Tax form");
        case model::PaperKind::LienWaiver:
            return saying("Lien waiver");
        case model::PaperKind::Warranty:
            return saying("Warranty");
        case model::PaperKind::Clearance:
            return saying("Clearance");
        case model::PaperKind::Unset:
            break;
    }
    return saying("Paper");
}

// "Receipt, Hardware store, 2026-05-21".
Saying nameOf(const model::Spend& spend, const model::JobRows& rows) {
    std::string who = spend.payee;
    for (const model::Crew& crew : rows.crews) {
        if (who.empty() && !spend.crew.isNil() && crew.id == spend.crew) {
            who = crew.name;
        }
    }
    Saying name = titleOf(spend.type);
    if (!who.empty()) {
        name = saying("%1, %2", name, who);
    }
    return spend.spentOn ? saying("%1, %2", name, spend.spentOn->toString()) : name;
}

std::optional<int> daysSince(const std::optional<Date>& day, Date today) {
    return day ? std::optional<int>(today - *day) : std::nullopt;
}

void addSpends(std::vector<MissingPaper>& out, const model::JobRows& rows, Date today) {
    for (const model::Spend& spend : rows.spends) {
        const auto days = daysSince(spend.spentOn, today);
        if (!spend.amount) {
            out.push_back({Kind::Amount, nameOf(spend, rows), std::nullopt, days,
                           model::Kind::Spend, spend.id.raw()});
        } else if (isPaperUnseen(spend)) {
            const bool isBill = spend.type == model::SpendKind::Invoice;
            out.push_back({isBill ? Kind::Bill : Kind::Receipt, nameOf(spend, rows), spend.amount,
                           days, model::Kind::Spend, spend.id.raw()});
        }
    }
}

void addInsurance(std::vector<MissingPaper>& out, const model::JobRows& rows) {
    for (const model::Contract& contract : rows.contracts) {
        if (contract.type == model::ContractKind::Order || !contract.signedOn ||
            contract.acceptedOn || contract.insuranceSeen) {
            continue;
        }
        const auto crew =
            std::find_if(rows.crews.begin(), rows.crews.end(),
                         [&](const model::Crew& row) { return row.id == contract.crew; });
        const std::string name = crew == rows.crews.end() ? contract.name : crew->name;
        out.push_back({Kind::Insurance, saying("Insurance, %1", name), std::nullopt, std::nullopt,
                       model::Kind::Contract, contract.id.raw()});
    }
}

void addWaivers(std::vector<MissingPaper>& out, const model::JobRows& rows, Date today) {
    for (const model::Contract& contract : rows.contracts) {
        if (contract.acceptedOn && !contract.waiverReceivedOn &&
            contract.type != model::ContractKind::Order) {
            out.push_back({Kind::Waiver, saying("Final waiver, %1", contract.name), std::nullopt,
                           daysSince(contract.acceptedOn, today), model::Kind::Contract,
                           contract.id.raw()});
        }
    }
}

}  // namespace

bool isPaperUnseen(const model::Spend& spend) {
    const bool hasPaper = spend.type == model::SpendKind::Invoice ||
                          spend.type == model::SpendKind::Receipt ||
                          spend.type == model::SpendKind::Fee;
    return hasPaper && spend.amount && !spend.paperSeen && spend.photo.isNil();
}

std::optional<Date> insuredUntil(const model::JobRows& rows, const model::Crew& crew) {
    std::optional<Date> until = crew.insuredUntil;
    for (const model::Paper& paper : rows.papers) {
        if (paper.type == model::PaperKind::Insurance && paper.crew == crew.id &&
            paper.receivedOn) {
            until = std::max(until, paper.validUntil);
        }
    }
    return until;
}

std::vector<MissingPaper> missingPapersOf(const model::JobRows& rows, Date today) {
    std::vector<MissingPaper> out;
    addSpends(out, rows, today);
    addInsurance(out, rows);
    addWaivers(out, rows, today);
    for (const model::Paper& paper : rows.papers) {
        if (!paper.receivedOn) {
            const Saying word = titleOf(paper.type);
            out.push_back({Kind::Expected,
                           paper.forWhat.empty() ? word : saying("%1, %2", word, paper.forWhat),
                           std::nullopt, std::nullopt, model::Kind::Paper, paper.id.raw()});
        }
    }
    return out;
}

}  // namespace ledgerboard::compute
