// bring spend with a bank's download, and bank: what the bank's lines are for.
#include <nlohmann/json.hpp>

#include "core/compute/as_of.h"
#include "core/intake/bank/bring_bank.h"
#include "core/intake/bank/settle_line.h"
#include "core/report/money_text.h"

#include "desktop/cli/bank_text.h"
#include "desktop/cli/paragraphs.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

using intake::LineOutcome;
using model::Kind;
using model::Result;
using nlohmann::json;

constexpr std::size_t kIdFigures = 8;

std::string shortId(const model::BankLine& line) {
    const std::string hex = line.id.raw().hex();
    return hex.substr(hex.size() - kIdFigures);
}

std::string lead(Session& session, const model::BankLine& line) {
    return (line.postedOn ? line.postedOn->toString() : std::string()) + "  " +
           report::centsText(line.amount.value_or(model::Money{}), session.script()) + "  " +
           (line.payee.empty() ? line.memo : line.payee);
}

// "receipt for Kitchen/cabinets (85): Quince Timber before: 4 rows, filed alike".
std::string guessText(const intake::LineMatch& match, const intake::Finder& finder) {
    const std::string text = matchText(match, finder);
    return text.empty() ? "nothing in the book says what it is for"
                        : text + " (" + std::to_string(match.sure) + "): " + match.reason;
}

std::string linesText(std::size_t count) {
    return report::countText(static_cast<std::int64_t>(count), "line", "lines");
}

std::string waitText(std::size_t count) {
    return linesText(count) + (count == 1 ? " waits" : " wait");
}

void printBrought(Session& session, const intake::BankReport& report, const std::string& file,
                  const intake::Finder& finder, bool tryOnly) {
    std::array<std::size_t, 3> counts{};
    json lines = json::array();
    for (const auto& brought : report.lines) {
        ++counts.at(static_cast<std::size_t>(brought.outcome));
        lines.push_back(lineJson(brought.line, brought.match, finder));
        static constexpr const char* kOutcomes[] = {"filed", "waiting", "known"};
        lines.back()["outcome"] = kOutcomes[static_cast<std::size_t>(brought.outcome)];
    }
    const std::size_t waiting = counts[static_cast<std::size_t>(LineOutcome::Waiting)];
    if (session.json()) {
        session.printJson({{"filed", counts[0]},
                           {"waiting", waiting},
                           {"known", counts[2]},
                           {"written", report.written},
                           {"lines", std::move(lines)}});
        return;
    }
    for (const auto& brought : report.lines) {
        if (brought.outcome == LineOutcome::Filed) {
            session.print(lead(session, brought.line) + "\n" +
                          paragraph(session, guessText(brought.match, finder), 2));
        }
    }
    session.print(file + ": " + linesText(report.lines.size()) + " of the bank: " +
                  std::to_string(counts[0]) + " filed, " + std::to_string(waiting) +
                  " waiting for a decision, " + std::to_string(counts[2]) + " known already" +
                  (tryOnly ? "; tried only, nothing is written.\n" : ".\n"));
    if (waiting > 0 && !tryOnly) {
        session.print("Next: 'ledgerboard bank' lists what waits.\n");
    }
}

Done printWaiting(Session& session) {
    auto rows = session.jobOnDay();
    auto finder = session.finder();
    if (!rows.ok() || !finder.ok()) {
        return rows.ok() ? finder.error() : rows.error();
    }
    return model::guarded([&]() -> Done {
        const auto waiting = intake::waitingLines(rows.value().rows);
        if (session.json()) {
            json lines = json::array();
            for (const auto& one : waiting) {
                lines.push_back(lineJson(one.line, one.match, *finder.value()));
            }
            session.printJson({{"waiting", std::move(lines)}});
            return {};
        }
        if (waiting.empty()) {
            session.print(rows.value().rows.bank_lines.empty()
                              ? "No lines of the bank yet: download them as OFX or QFX, then\n"
                                "  ledgerboard bring spend april.ofx\n"
                              : "No line of the bank waits for a decision.\n");
            return {};
        }
        session.print(waitText(waiting.size()) + " for a decision and " +
                      (waiting.size() == 1 ? "counts" : "count") + " nowhere until then:\n\n");
        for (const auto& one : waiting) {
            session.print(shortId(one.line) + "  " + lead(session, one.line) + "\n" +
                          paragraph(session, guessText(one.match, *finder.value()), 10));
        }
        const std::string say = "  ledgerboard bank " + shortId(waiting.front().line);
        session.print("\nSay what each is, as in\n" + say + " --yes\n" + say +
                      " --for kitchen/cabinets\n" + say +
                      " --not-ours\nAfter --for: an item, a contract, a crew, an invoice it pays, "
                      "another row of spend,\na draw, or 'job'.\n");
        return {};
    });
}

Result<intake::LineDecision> decisionOf(const intake::Finder& finder, const BankOptions& options) {
    intake::LineDecision decision;
    decision.takeGuess = options.yes;
    decision.notOurs = options.notOurs;
    decision.learn = !options.once;
    const int said =
        (options.yes ? 1 : 0) + (options.notOurs ? 1 : 0) + (options.target.empty() ? 0 : 1);
    if (said != 1) {
        return model::wrongUse(
            "say one of --yes, --for RECORD and --not-ours: 'ledgerboard bank --help' tells more");
    }
    if (!options.target.empty() && model::folded(options.target) != "job") {
        auto found = finder.findAny(options.target);
        if (!found.ok()) {
            return model::Error{found.error().code, "--for: " + found.error().message};
        }
        decision.kind = found.value().first;
        decision.target = found.value().second;
    }
    return decision;
}

}  // namespace

Done bringDownload(Session& session, const BringOptions& options) {
    if (!options.match.empty()) {
        return model::wrongUse("--match is for CSV: a bank's download has no headings");
    }
    auto job = session.job();
    if (!job.ok()) {
        return job.error();
    }
    const auto& readDownload = session.surroundings().readDownload;
    if (!readDownload) {
        return model::cannotBeMet(options.file + ": bank downloads can't be read here");
    }
    auto printed = readDownload(options.file, zoneOf(*session.book().value(), job.value()));
    if (!printed.ok()) {
        return printed.error();
    }
    auto statement = intake::parseStatement(printed.value(), options.file);
    if (!statement.ok()) {
        return statement.error();
    }
    auto report = intake::bringBank(*session.book().value(), job.value(), statement.value(),
                                    options.file, options.tryOnly, session.now());
    if (!report.ok()) {
        return report.error();
    }
    session.forgetRows();
    auto finder = session.finder();
    if (!finder.ok()) {
        return finder.error();
    }
    printBrought(session, report.value(), options.file, *finder.value(), options.tryOnly);
    return {};
}

Done verbBank(Session& session, const BankOptions& options) {
    if (options.line.empty()) {
        if (options.yes || options.notOurs || !options.target.empty() || options.once) {
            return model::wrongUse(
                "LINE: say which line; 'ledgerboard bank' lists those that wait");
        }
        return printWaiting(session);
    }
    if (auto good = session.refusePast("bank", false); !good.ok()) {
        return good.error();
    }
    auto job = session.job();
    auto finder = session.finder();
    if (!job.ok() || !finder.ok()) {
        return job.ok() ? finder.error() : job.error();
    }
    auto line = finder.value()->find(Kind::BankLine, "line " + options.line);
    if (!line.ok()) {
        line = finder.value()->find(Kind::BankLine, options.line);
    }
    if (!line.ok()) {
        return model::Error{line.error().code, "LINE: " + line.error().message};
    }
    auto decision = decisionOf(*finder.value(), options);
    if (!decision.ok()) {
        return decision.error();
    }
    auto decided = intake::settleLine(*session.book().value(), job.value(),
                                      model::Id<Kind::BankLine>(line.value()), decision.value(),
                                      session.now());
    if (!decided.ok()) {
        return decided.error();
    }
    const auto& done = decided.value();
    const std::string what = matchText(done.match, *finder.value());
    if (session.json()) {
        json also = json::array();
        for (const auto& one : done.also) {
            also.push_back(lineJson(one.line, one.match, *finder.value()));
        }
        session.printJson({{"for", what}, {"rule", done.rule}, {"also", std::move(also)}});
        return {};
    }
    session.print("Settled: " + what + ".\n");
    if (!done.rule.empty()) {
        session.print(
            paragraph(session, "From now on \"" + done.rule +
                                   "\" is taken for the same ('ledgerboard list "
                                   "rules' shows such rules, 'drop' takes one away).") +
            (done.also.empty() ? "" : "So " + waitText(done.also.size()) + " no longer.\n"));
    }
    return {};
}

}  // namespace ledgerboard::cli
