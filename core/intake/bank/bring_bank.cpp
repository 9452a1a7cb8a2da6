#include "core/intake/bank/bring_bank.h"

#include <set>
#include <utility>

#include "core/compute/bank_lines.h"
#include "core/intake/bank/file_line.h"
#include "core/model/overflow.h"
#include "core/model/saying.h"

namespace ledgerboard::intake {

using model::BankLine;
using model::Kind;
using model::Result;

namespace {

// Every line of the book, whatever its job.
Result<std::set<std::pair<std::string, std::string>>> knownLines(const store::Book& book) {
    std::set<std::pair<std::string, std::string>> known;
    auto lines = book.rows<BankLine>();
    if (!lines.ok()) {
        return lines.error();
    }
    for (const auto& line : lines.value()) {
        known.emplace(line.account, line.bankId);
    }
    return known;
}

BroughtLine broughtOf(const StatementLine& line, model::Id<Kind::Job> job) {
    BroughtLine brought;
    brought.line.job = job;
    brought.line.account = line.account;
    brought.line.bankId = line.bankId;
    brought.line.postedOn = line.postedOn;
    brought.line.amount = line.amount;
    brought.line.payee = line.payee;
    brought.line.memo = line.memo;
    return brought;
}

}  // namespace

Result<BankReport> bringBank(store::Book& book, model::Id<Kind::Job> job,
                             const Statement& statement, const std::string& fileName, bool tryOnly,
                             model::Instant now, const BankGoesOn& goOn) {
    const auto position = book.position();
    auto read = bankRows(book, job);
    if (!read.ok()) {
        return read.error();
    }
    const model::JobRows& rows = read.value();
    const std::string& currency = rows.job.currency;
    if (!currency.empty() && !statement.currency.empty() && currency != statement.currency) {
        return model::cannotBeMet(model::saying("%1: its amounts are in %2, the job's in %3",
                                                fileName, statement.currency, currency));
    }
    auto known = knownLines(book);
    if (!known.ok()) {
        return known.error();
    }
    const compute::SettledLines filed(rows);
    return model::guarded([&]() -> Result<BankReport> {
        BankReport report;
        BankMatcher matcher(rows);
        store::Action action("bring spend " + fileName, position);
        for (const auto& line : statement.lines) {
            if (goOn && !goOn(report.lines.size(), statement.lines.size())) {
                return model::cannotBeMet(fileName + ": stopped, nothing of it came in");
            }
            BroughtLine brought = broughtOf(line, job);
            const bool isNew = known.value().emplace(line.account, line.bankId).second;
            if (isNew && !filed.hasBankId(line.bankId)) {
                brought.match = matcher.match(brought.line);
                const bool files = brought.match.isSureEnough();
                brought.outcome = files ? LineOutcome::Filed : LineOutcome::Waiting;
                brought.line.id = book.newId<Kind::BankLine>(now);
                action.add(brought.line);
                if (files) {
                    fileLine(action, book, brought.line, brought.match, now);
                    matcher.take(brought.match);
                }
            }
            report.lines.push_back(std::move(brought));
        }
        if (!tryOnly && !action.empty()) {
            if (auto done = book.commit(action, now); !done.ok()) {
                return done.error();
            }
            report.written = true;
        }
        return report;
    });
}

}  // namespace ledgerboard::intake
