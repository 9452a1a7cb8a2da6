#include "core/compute/papers.h"

#include <algorithm>

#include "core/compute/pricing.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using Kind = MissingPaper::Kind;

std::string titled(std::string_view word) {
    std::string out(word);
    if (!out.empty() && out[0] >= 'a' && out[0] <= 'z') {
        out[0] = static_cast<char>(out[0] - 'a' + 'A');
    }
    return out;
}

// "Receipt, Hardware store, 2026-05-21".
std::string nameOf(const model::Spend& spend, const model::JobRows& rows) {
    std::string who = spend.payee;
    for (const model::Crew& crew : rows.crews) {
        if (who.empty() && !spend.crew.isNil() && crew.id == spend.crew) {
            who = crew.name;
        }
    }
    return titled(wordOf(spend.type)) + (who.empty() ? "" : ", " + who) +
           (spend.spentOn ? ", " + spend.spentOn->toString() : "");
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
        out.push_back({Kind::Insurance, "Insurance, " + name, std::nullopt, std::nullopt,
                       model::Kind::Contract, contract.id.raw()});
    }
}

void addWaivers(std::vector<MissingPaper>& out, const model::JobRows& rows, Date today) {
    for (const model::Contract& contract : rows.contracts) {
        if (contract.acceptedOn && !contract.waiverReceivedOn &&
            contract.type != model::ContractKind::Order) {
            out.push_back({Kind::Waiver, "Final waiver, " + contract.name, std::nullopt,
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
            const std::string word = titled(wordOf(paper.type));
            out.push_back({Kind::Expected,
                           (word.empty() ? "Paper" : word) +
                               (paper.forWhat.empty() ? "" : ", " + paper.forWhat),
                           std::nullopt, std::nullopt, model::Kind::Paper, paper.id.raw()});
        }
    }
    return out;
}

}  // namespace ledgerboard::compute
