#include "core/intake/bank/settle_line.h"

#include <algorithm>

#include "core/compute/bank_lines.h"
#include "core/intake/bank/file_line.h"
#include "core/intake/bank/payee_words.h"
#include "core/intake/bank/row_of.h"
#include "core/model/overflow.h"
#include "core/model/saying.h"

namespace ledgerboard::intake {

namespace {

namespace f = model::field;
using model::BankLine;
using model::Kind;
using model::Result;
using model::Value;

constexpr std::size_t kWordsOfRule = 3;  // enough to tell a payee, few enough to fit every branch

// The line is of a row of spend that the owner named.
Result<void> matchSpend(const model::JobRows& rows, model::RawId target, LineMatch& match) {
    const auto* found = rowOf(rows.spends, model::Id<Kind::Spend>(target));
    if (found == nullptr) {
        return model::cannotBeMet("that row of spend is dropped or was replaced");
    }
    if (found->type == model::SpendKind::Invoice) {
        match.fresh.type = model::SpendKind::Payment;
        match.fresh.pays = found->id;
        match.fresh.item = found->item;
        match.fresh.contract = found->contract;
        match.fresh.crew = found->crew;
        match.fresh.payee = found->payee;
        return {};
    }
    if (found->amount != match.fresh.amount) {
        return model::cannotBeMet(model::saying(
            "the bank says %1 and the row of spend says %2: put the row right first, or let the "
            "line be a row of its own",
            match.fresh.amount.value_or(model::Money{}),
            found->amount ? model::placed(*found->amount)
                          : model::placed(model::saying("nothing"))));
    }
    match.is = LineIs::Filed;
    match.spend = found->id;
    return {};
}

// The line is for the record that the owner named.
Result<void> matchTarget(const model::JobRows& rows, const BankLine& line,
                         const LineDecision& decision, LineMatch& match) {
    const bool isOut = line.amount && *line.amount < model::Money{};
    switch (decision.kind) {
        case Kind::None:
            return {};
        case Kind::Item:
            match.fresh.item = model::Id<Kind::Item>(decision.target);
            return {};
        case Kind::Crew:
            match.fresh.crew = model::Id<Kind::Crew>(decision.target);
            return {};
        case Kind::Contract:
            match.fresh.contract = model::Id<Kind::Contract>(decision.target);
            match.fresh.type = isOut ? model::SpendKind::Payment : model::SpendKind::Refund;
            return {};
        case Kind::Draw:
            if (isOut) {
                return model::cannotBeMet("money left the account with this line: it is no draw");
            }
            match.is = LineIs::Draw;
            match.draw = model::Id<Kind::Draw>(decision.target);
            return {};
        case Kind::Spend:
            return matchSpend(rows, decision.target, match);
        default:
            return model::wrongUse(
                model::saying("a bank line is for an item, a contract, a crew, a row of spend or a "
                              "draw, not for a %1",
                              model::infoOf(decision.kind).title));
    }
}

// What the owner decided, as a match.
Result<LineMatch> matchOf(const model::JobRows& rows, const BankLine& line,
                          const LineDecision& decision) {
    const BankMatcher matcher(rows);
    if (decision.takeGuess) {
        LineMatch guess = matcher.match(line);
        if (guess.is == LineIs::Unknown) {
            return model::cannotBeMet(
                "nothing in the book says what that line is: name what it is for");
        }
        guess.sure = 100;
        guess.reason += "; you said so";
        return guess;
    }
    LineMatch match;
    match.sure = 100;
    match.reason = "you said so";
    if (decision.notOurs) {
        match.is = LineIs::NotOurs;
        return match;
    }
    match.is = LineIs::NewSpend;
    match.fresh = matcher.spendFor(line);
    if (auto good = matchTarget(rows, line, decision, match); !good.ok()) {
        return good.error();
    }
    fileUnder(match.fresh, rows);
    if (match.fresh.payee.empty()) {
        match.fresh.payee = line.payee;
    }
    return match;
}

// Whether rows of this payee stand for other things already: then one decision is no rule.
bool isFiledOtherwise(const model::JobRows& rows, const BankLine& line, const model::Spend& fresh) {
    return std::any_of(rows.spends.begin(), rows.spends.end(), [&](const model::Spend& spend) {
        return spend.pays.isNil() && spend.type != model::SpendKind::Invoice &&
               samePayee(spend.payee, writtenOn(line)) == SamePayee::Yes &&
               (spend.item != fresh.item || spend.contract != fresh.contract ||
                spend.crew != fresh.crew);
    });
}

// The rule that a decision teaches, new or changed; without words: none.
model::PayeeRule ruleOf(const model::JobRows& rows, const BankLine& line, const LineMatch& match) {
    model::PayeeRule rule;
    const bool teaches =
        match.is == LineIs::NotOurs || (match.is == LineIs::NewSpend && match.fresh.pays.isNil() &&
                                        !isFiledOtherwise(rows, line, match.fresh));
    auto words = payeeWords(line.payee);
    if (!teaches || words.empty()) {
        return rule;
    }
    words.resize(std::min(words.size(), kWordsOfRule));
    for (const auto& word : words) {
        rule.words += (rule.words.empty() ? "" : " ") + word;
    }
    rule.item = match.fresh.item;
    rule.contract = match.fresh.contract;
    rule.crew = match.fresh.crew;
    rule.notOurs = match.is == LineIs::NotOurs;
    if (match.fresh.payee != line.payee) {
        rule.payee = match.fresh.payee;
    }
    for (const auto& known : rows.payee_rules) {
        if (known.words == rule.words) {
            rule.id = known.id;
        }
    }
    return rule;
}

void write(store::Action& action, const model::PayeeRule& rule) {
    const model::RawId id = rule.id.raw();
    action.set(id, f::PayeeRule::words, Value{rule.words});
    action.set(id, f::PayeeRule::payee, model::valueOf(rule.payee));
    action.set(id, f::PayeeRule::item, model::valueOf(rule.item));
    action.set(id, f::PayeeRule::contract, model::valueOf(rule.contract));
    action.set(id, f::PayeeRule::crew, model::valueOf(rule.crew));
    action.set(id, f::PayeeRule::notOurs, model::valueOf(rule.notOurs));
}

// Files the other lines that wait and that `rule` is sure of.
std::vector<WaitingLine> fileOthers(store::Action& action, store::Book& book,
                                    const model::JobRows& rows, const compute::SettledLines& filed,
                                    const BankLine& line, const LineMatch& match,
                                    const std::string& words, model::Instant now) {
    std::vector<WaitingLine> others;
    BankMatcher matcher(rows);
    matcher.take(match);
    for (const auto& other : rows.bank_lines) {
        if (other.id == line.id || !filed.isWaiting(other) ||
            samePayee(words, writtenOn(other)) != SamePayee::Yes) {
            continue;
        }
        WaitingLine also{other, matcher.match(other)};
        if (also.match.isSureEnough()) {
            fileLine(action, book, other, also.match, now);
            matcher.take(also.match);
            others.push_back(std::move(also));
        }
    }
    return others;
}

Result<Decided> settleIn(store::Book& book, model::JobRows rows, model::Id<Kind::BankLine> id,
                         const LineDecision& decision, store::LogPosition position,
                         model::Instant now) {
    const compute::SettledLines filed(rows);
    const auto* found = rowOf(rows.bank_lines, id);
    if (found == nullptr || !filed.isWaiting(*found)) {
        return model::cannotBeMet(
            "that line is settled already: to take it back, 'ledgerboard undo', or drop its row of "
            "spend and it waits again");
    }
    const BankLine line = *found;
    auto match = matchOf(rows, line, decision);
    if (!match.ok()) {
        return match.error();
    }
    Decided decided;
    decided.match = std::move(match).value();
    store::Action action("settle bank line " + line.bankId, position);
    fileLine(action, book, line, decided.match, now);
    model::PayeeRule rule = ruleOf(rows, line, decided.match);
    if (decision.learn && !rule.words.empty()) {
        rule.id = rule.id.isNil() ? book.newId<Kind::PayeeRule>(now) : rule.id;
        write(action, rule);
        decided.rule = rule.words;
        std::erase_if(rows.payee_rules, [&](const auto& old) { return old.id == rule.id; });
        rows.payee_rules.push_back(rule);
        decided.also = fileOthers(action, book, rows, filed, line, decided.match, rule.words, now);
    }
    if (auto done = book.commit(action, now); !done.ok()) {
        return done.error();
    }
    return decided;
}

}  // namespace

std::vector<WaitingLine> waitingLines(const model::JobRows& rows) {
    const compute::SettledLines filed(rows);
    const BankMatcher matcher(rows);
    std::vector<WaitingLine> waiting;
    for (const auto& line : rows.bank_lines) {
        if (filed.isWaiting(line)) {
            waiting.push_back({line, matcher.match(line)});
        }
    }
    std::stable_sort(waiting.begin(), waiting.end(), [](const auto& a, const auto& b) {
        return a.line.postedOn < b.line.postedOn;
    });
    return waiting;
}

Result<Decided> settleLine(store::Book& book, model::Id<Kind::Job> job,
                           model::Id<Kind::BankLine> line, const LineDecision& decision,
                           model::Instant now) {
    const auto position = book.position();
    auto rows = bankRows(book, job);
    if (!rows.ok()) {
        return rows.error();
    }
    return model::guarded([&]() -> Result<Decided> {
        return settleIn(book, std::move(rows).value(), line, decision, position, now);
    });
}

}  // namespace ledgerboard::intake
