#include "core/intake/bank/match_line.h"

#include <algorithm>
#include <cstdlib>

#include "core/intake/bank/payee_words.h"
#include "core/intake/bank/row_of.h"

namespace ledgerboard::intake {

namespace {

using model::Money;
using model::Spend;
using model::SpendKind;

constexpr int kDaysBefore = 10;  // a card or a check is booked later than it was handed over
constexpr int kDaysAfter = 3;    // a paper may bear a later day
constexpr std::size_t kOftenAlike = 3;

bool isOut(const model::BankLine& line) {
    return line.amount && *line.amount < Money{};
}

Money sumOf(const model::BankLine& line) {
    const Money amount = line.amount.value_or(Money{});
    return amount < Money{} ? -amount : amount;
}

bool movesMoney(const Spend& spend, bool out) {
    return out ? spend.type == SpendKind::Payment || spend.type == SpendKind::Receipt ||
                     spend.type == SpendKind::Fee
               : spend.type == SpendKind::Refund;
}

std::string dayText(const Spend& spend) {
    return spend.spentOn ? " of " + spend.spentOn->toString() : "";
}

bool filedAlike(const Spend& a, const Spend& b) {
    return a.item == b.item && a.contract == b.contract && a.crew == b.crew;
}

}  // namespace

std::string writtenOn(const model::BankLine& line) {
    return line.payee + " " + line.memo;
}

void fileUnder(Spend& spend, const model::JobRows& rows) {
    if (const auto* contract = rowOf(rows.contracts, spend.contract);
        contract != nullptr && spend.crew.isNil()) {
        spend.crew = contract->crew;
    }
    if (const auto* crew = rowOf(rows.crews, spend.crew); crew != nullptr && spend.payee.empty()) {
        spend.payee = crew->name;
    }
}

BankMatcher::BankMatcher(const model::JobRows& rows) : rows_(rows) {
    for (const auto& line : rows.bank_lines) {
        if (!line.spend.isNil()) {
            taken_.insert(line.spend.raw());
        }
        if (!line.draw.isNil()) {
            taken_.insert(line.draw.raw());
        }
    }
}

void BankMatcher::take(const LineMatch& match) {
    for (const auto& id : {match.spend.raw(), match.draw.raw(), match.fresh.pays.raw()}) {
        if (!id.isNil()) {
            taken_.insert(id);
        }
    }
}

Money BankMatcher::unpaidOf(const Spend& invoice) const {
    Money unpaid = invoice.amount.value_or(Money{}) - invoice.held.value_or(Money{});
    for (const auto& spend : rows_.spends) {
        if (spend.pays == invoice.id && spend.type == SpendKind::Payment) {
            unpaid -= spend.amount.value_or(Money{});
        }
    }
    return unpaid;
}

std::string BankMatcher::crewName(model::Id<model::Kind::Crew> crew) const {
    const auto* row = rowOf(rows_.crews, crew);
    return row == nullptr ? "" : row->name;
}

Spend BankMatcher::spendFor(const model::BankLine& line) const {
    Spend spend;
    spend.job = rows_.job.id;
    spend.type = isOut(line) ? SpendKind::Receipt : SpendKind::Refund;
    spend.spentOn = line.postedOn;
    spend.amount = sumOf(line);
    spend.bankId = line.bankId;
    return spend;
}

LineMatch BankMatcher::match(const model::BankLine& line) const {
    LineMatch best;
    if (!line.amount || *line.amount == Money{} || !line.postedOn) {
        return best;
    }
    for (const auto way : {&BankMatcher::sameSpend, &BankMatcher::paysInvoice, &BankMatcher::byRule,
                           &BankMatcher::fundsDraw, &BankMatcher::byCrew, &BankMatcher::asBefore,
                           &BankMatcher::refund}) {
        LineMatch guess = (this->*way)(line);
        if (guess.is != LineIs::Unknown && guess.sure > best.sure) {
            best = std::move(guess);
        }
    }
    if (best.is == LineIs::NewSpend && best.fresh.payee.empty()) {
        best.fresh.payee = line.payee;
    }
    return best;
}

LineMatch BankMatcher::sameSpend(const model::BankLine& line) const {
    struct Near {
        const Spend* spend;
        SamePayee name;
        int days;
    };

    std::vector<Near> near;
    for (const auto& spend : rows_.spends) {
        if (!movesMoney(spend, isOut(line)) || spend.amount != sumOf(line) || !spend.spentOn ||
            !spend.bankId.empty() || taken_.contains(spend.id.raw())) {
            continue;
        }
        const int later = *line.postedOn - *spend.spentOn;
        if (later < -kDaysAfter || later > kDaysBefore) {
            continue;
        }
        const std::string known = spend.payee.empty() ? crewName(spend.crew) : spend.payee;
        near.push_back({&spend, samePayee(known, writtenOn(line)), std::abs(later)});
    }
    if (near.empty()) {
        return {};
    }
    // The name counts more than the day.
    std::stable_sort(near.begin(), near.end(), [](const Near& a, const Near& b) {
        const auto rank = [](const Near& one) {
            return one.name == SamePayee::Yes ? 0 : one.name == SamePayee::Unknown ? 1 : 2;
        };
        return std::pair(rank(a), a.days) < std::pair(rank(b), b.days);
    });
    const Near& first = near.front();
    const bool alone =
        near.size() == 1 || (first.name == SamePayee::Yes && near[1].name != SamePayee::Yes);
    LineMatch match;
    match.is = LineIs::Filed;
    match.spend = first.spend->id;
    match.reason =
        "same sum as the " + std::string(model::wordOf(first.spend->type)) + dayText(*first.spend);
    switch (first.name) {
        case SamePayee::Yes:
            match.sure = alone ? 97 : 90;
            match.reason += ", and its payee";
            break;
        case SamePayee::Unknown:
            match.sure = alone ? 82 : 60;
            match.reason += alone ? ", the only one" : ", one of several";
            break;
        case SamePayee::No:
            match.sure = 55;
            match.reason += ", but another payee";
            break;
    }
    return match;
}

LineMatch BankMatcher::paysInvoice(const model::BankLine& line) const {
    if (!isOut(line)) {
        return {};
    }
    std::vector<const Spend*> open;
    const Spend* named = nullptr;
    for (const auto& spend : rows_.spends) {
        if (spend.type != SpendKind::Invoice || taken_.contains(spend.id.raw()) ||
            unpaidOf(spend) != sumOf(line)) {
            continue;
        }
        open.push_back(&spend);
        const bool isNamed = samePayee(spend.payee, writtenOn(line)) == SamePayee::Yes ||
                             samePayee(crewName(spend.crew), writtenOn(line)) == SamePayee::Yes;
        named = named == nullptr && isNamed ? &spend : named;
    }
    if (open.empty()) {
        return {};
    }
    const Spend& invoice = named != nullptr ? *named : *open.front();
    LineMatch match;
    match.is = LineIs::NewSpend;
    match.sure = named != nullptr ? 95 : open.size() == 1 ? 65 : 45;
    match.fresh = spendFor(line);
    match.fresh.type = SpendKind::Payment;
    match.fresh.pays = invoice.id;
    match.fresh.item = invoice.item;
    match.fresh.contract = invoice.contract;
    match.fresh.crew = invoice.crew;
    match.fresh.split = {};
    match.fresh.payee = invoice.payee;
    fileUnder(match.fresh, rows_);
    const std::string who = match.fresh.payee.empty() ? "" : " of " + match.fresh.payee;
    match.reason = "what is open of the invoice" + dayText(invoice) + who +
                   (named != nullptr ? ", and its name" : "");
    return match;
}

LineMatch BankMatcher::byRule(const model::BankLine& line) const {
    const model::PayeeRule* best = nullptr;
    std::size_t mostWords = 0;
    for (const auto& rule : rows_.payee_rules) {
        const std::size_t words = payeeWords(rule.words).size();
        const bool isOfThisJob =
            (rule.item.isNil() || rowOf(rows_.items, rule.item) != nullptr) &&
            (rule.contract.isNil() || rowOf(rows_.contracts, rule.contract) != nullptr);
        if (words > mostWords && isOfThisJob &&
            samePayee(rule.words, writtenOn(line)) == SamePayee::Yes) {
            best = &rule;
            mostWords = words;
        }
    }
    if (best == nullptr) {
        return {};
    }
    LineMatch match;
    match.sure = 92;
    match.reason = "your rule for \"" + best->words + "\"";
    if (best->notOurs) {
        match.is = LineIs::NotOurs;
        return match;
    }
    match.is = LineIs::NewSpend;
    match.fresh = spendFor(line);
    match.fresh.item = best->item;
    match.fresh.contract = best->contract;
    match.fresh.crew = best->crew;
    match.fresh.payee = best->payee;
    if (!best->contract.isNil() && isOut(line)) {
        match.fresh.type = SpendKind::Payment;
    }
    fileUnder(match.fresh, rows_);
    return match;
}

LineMatch BankMatcher::fundsDraw(const model::BankLine& line) const {
    if (isOut(line)) {
        return {};
    }
    const model::Draw* open = nullptr;
    const model::Draw* same = nullptr;
    for (const auto& draw : rows_.draws) {
        if (!draw.askedOn || draw.fundedOn || taken_.contains(draw.id.raw()) ||
            *draw.askedOn > *line.postedOn) {
            continue;
        }
        open = open == nullptr ? &draw : open;
        same = same == nullptr && draw.amount == line.amount ? &draw : same;
    }
    if (open == nullptr) {
        return {};
    }
    const model::Draw& draw = same != nullptr ? *same : *open;
    LineMatch match;
    match.is = LineIs::Draw;
    match.draw = draw.id;
    match.sure = same != nullptr ? 95 : 55;
    match.reason = "draw" + (draw.number ? " " + std::to_string(*draw.number) : "") +
                   " was asked for on " + draw.askedOn->toString() +
                   (same != nullptr ? ", and the sum is the same" : " and has not come");
    return match;
}

LineMatch BankMatcher::byCrew(const model::BankLine& line) const {
    if (!isOut(line)) {
        return {};
    }
    for (const auto& crew : rows_.crews) {
        if (samePayee(crew.name, writtenOn(line)) != SamePayee::Yes &&
            samePayee(crew.lead, writtenOn(line)) != SamePayee::Yes) {
            continue;
        }
        std::vector<const model::Contract*> contracts;
        for (const auto& contract : rows_.contracts) {
            if (contract.crew == crew.id && contract.signedOn) {
                contracts.push_back(&contract);
            }
        }
        LineMatch match;
        match.is = LineIs::NewSpend;
        match.fresh = spendFor(line);
        match.fresh.crew = crew.id;
        match.fresh.payee = crew.name;
        match.reason = "it names " + crew.name;
        if (contracts.empty()) {
            match.sure = 75;
            match.reason += ", who has no signed contract here";
            return match;
        }
        match.sure = contracts.size() == 1 ? 85 : 60;
        match.fresh.contract = contracts.front()->id;
        match.fresh.type = SpendKind::Payment;
        match.reason += contracts.size() == 1
                            ? ", who has one contract here: " + contracts.front()->name
                            : ", who has several contracts here";
        return match;
    }
    return {};
}

LineMatch BankMatcher::asBefore(const model::BankLine& line) const {
    if (!isOut(line)) {
        return {};
    }
    std::vector<const Spend*> before;
    for (const auto& spend : rows_.spends) {
        if (movesMoney(spend, true) && spend.pays.isNil() && spend.split.empty() &&
            samePayee(spend.payee, writtenOn(line)) == SamePayee::Yes) {
            before.push_back(&spend);
        }
    }
    if (before.empty()) {
        return {};
    }
    const Spend& last = *before.back();
    const bool alike = std::all_of(before.begin(), before.end(),
                                   [&](const Spend* one) { return filedAlike(*one, last); });
    LineMatch match;
    match.is = LineIs::NewSpend;
    match.sure = !alike ? 50 : before.size() >= kOftenAlike ? 85 : 70;
    match.fresh = spendFor(line);
    match.fresh.item = last.item;
    match.fresh.contract = last.contract;
    match.fresh.crew = last.crew;
    match.fresh.payee = last.payee;
    match.fresh.type = last.contract.isNil() ? SpendKind::Receipt : SpendKind::Payment;
    match.reason = last.payee + " before: " + std::to_string(before.size()) +
                   (alike ? (before.size() == 1 ? " row" : " rows, filed alike")
                          : " rows, filed in different ways");
    return match;
}

LineMatch BankMatcher::refund(const model::BankLine& line) const {
    if (isOut(line)) {
        return {};
    }
    for (auto spend = rows_.spends.rbegin(); spend != rows_.spends.rend(); ++spend) {
        if (movesMoney(*spend, true) &&
            samePayee(spend->payee, writtenOn(line)) == SamePayee::Yes) {
            LineMatch match;
            match.is = LineIs::NewSpend;
            match.sure = 65;
            match.reason = spend->payee + " was paid before: perhaps a refund";
            match.fresh = spendFor(line);
            match.fresh.item = spend->item;
            match.fresh.contract = spend->contract;
            match.fresh.crew = spend->crew;
            match.fresh.payee = spend->payee;
            return match;
        }
    }
    return {};
}

}  // namespace ledgerboard::intake
