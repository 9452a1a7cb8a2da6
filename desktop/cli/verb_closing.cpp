// punch and close: what is left to put right, and what still stands between this job and finished.
#include <algorithm>
#include <iterator>

#include <nlohmann/json.hpp>

#include "core/compute/budget.h"
#include "core/compute/closing.h"
#include "core/compute/punch_list.h"
#include "core/report/money_text.h"

#include "desktop/cli/paragraphs.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

using compute::Closing;
using compute::PunchList;
using compute::PunchRead;
using compute::Release;
using model::Kind;
using model::Money;
using nlohmann::json;

constexpr std::size_t kIndent = 26;

std::string money(Session& session, Money amount) {
    return report::centsText(amount, session.script());
}

json moneyJson(const std::optional<Money>& amount) {
    return amount ? json(amount->toString()) : json(nullptr);
}

std::string count(std::size_t number, const char* one, const char* many) {
    return report::countText(static_cast<std::int64_t>(number), one, many);
}

// "; 140.00, charged back to Paint crew: 140.00".
std::string costOf(Session& session, const PunchRead& read) {
    std::string text = read.cost ? "; " + money(session, *read.cost) : "";
    if (!read.chargeBackTo.empty()) {
        text +=
            (text.empty() ? "; " : ", ") + ("charged back to " + read.chargeBackTo) +
            (read.chargeBack ? ": " + money(session, *read.chargeBack) : ", amount not entered");
    }
    return text;
}

std::string notPriced(std::size_t without) {
    return without == 0 ? "" : ", " + std::to_string(without) + " without a cost";
}

std::string punchBySpace(Session& session, const std::vector<const PunchRead*>& open) {
    std::string out;
    std::string space;
    for (const PunchRead* read : open) {
        const std::string name = read->space.empty() ? "No space" : read->space;
        out += beside(session, name == space ? "" : name, kIndent,
                      read->sentence + costOf(session, *read));
        space = name;
    }
    return out;
}

std::string punchByCrew(Session& session, const PunchList& list) {
    std::string out = "\nBy crew\n";
    for (const auto& crew : list.crews) {
        std::string text = count(crew.open, "item", "items");
        text += crew.late > 0 ? ", " + std::to_string(crew.late) + " late" : "";
        text += crew.cost > Money{} ? ", " + money(session, crew.cost) : "";
        out += beside(session, crew.name.empty() ? "Nobody yet" : crew.name, kIndent,
                      text + notPriced(crew.withoutCost));
    }
    return out;
}

std::string chargeBacksText(Session& session, const PunchList& list) {
    std::string out;
    for (const auto& charge : list.chargeBacks) {
        out +=
            beside(session, charge.name, kIndent,
                   money(session, charge.amount) + " for " + count(charge.items, "item", "items") +
                       (charge.withoutAmount == 0
                            ? ""
                            : ", " + std::to_string(charge.withoutAmount) + " without an amount"));
    }
    return out.empty()
               ? ""
               : "\nCharged back, to tell in writing within two days with the photo\n" + out;
}

std::string punchText(Session& session, const model::JobRows& rows, const PunchList& list,
                      const std::vector<const PunchRead*>& open, const std::string& crew,
                      model::Date today) {
    if (rows.punches.empty()) {
        return rows.job.name +
               ": nothing to put right is entered.\nNext: ledgerboard bring punch punch.csv\n"
               "  or: ledgerboard add punch Space=Kitchen What=\"grout open\" Crew=\"Tile crew\"\n";
    }
    std::size_t late = 0;
    Money cost;
    std::size_t without = 0;
    for (const PunchRead* read : open) {
        late += read->isLate ? 1 : 0;
        cost += read->cost.value_or(Money{});
        without += read->cost ? 0 : 1;
    }
    const std::string costs = open.empty()             ? ""
                              : without == open.size() ? "; no cost is entered"
                                                       : "; " + money(session, cost) +
                                                             " to put right" + notPriced(without);
    std::string out = paragraph(
        session, rows.job.name + (crew.empty() ? "" : ", " + crew) + ": " +
                     count(open.size(), "item is", "items are") + " left to put right" +
                     (late == 0 ? "" : ", " + std::to_string(late) + " late") + costs + ".");
    if (open.empty()) {
        return out + "Everything that was found has been looked at and accepted.\n";
    }
    if (!list.isReadyToWalk()) {
        out +=
            paragraph(session, "With more than about " + std::to_string(compute::kMostPunchToWalk) +
                                   " it is not ready to walk: let the crews go round first "
                                   "(common practice, no source).");
    }
    out += "\n" + punchBySpace(session, open);
    if (crew.empty()) {
        out += punchByCrew(session, list) + chargeBacksText(session, list);
    }
    return out + "\n" +
           paragraph(session, "A look closes one: ledgerboard add look \"Punch item=" +
                                  rows.punches[open.front()->punch].what +
                                  "\" Said=accepted Date=" + today.toString());
}

json punchJson(const model::JobRows& rows, const PunchList& list,
               const std::vector<const PunchRead*>& open) {
    json items = json::array();
    for (const PunchRead* read : open) {
        const model::Punch& punch = rows.punches[read->punch];
        items.push_back({{"punch", punch.id.raw().toString()},
                         {"space", read->space},
                         {"crew", read->crew},
                         {"what", punch.what},
                         {"due_on", punch.dueOn ? json(punch.dueOn->toString()) : json(nullptr)},
                         {"sentence", read->sentence},
                         {"late", read->isLate},
                         {"last_look", std::string(model::wordOf(read->lastSaid))},
                         {"cost", moneyJson(read->cost)},
                         {"charge_back_to", read->chargeBackTo},
                         {"charge_back", moneyJson(read->chargeBack)}});
    }
    json crews = json::array();
    for (const auto& crew : list.crews) {
        crews.push_back({{"crew", crew.name},
                         {"open", crew.open},
                         {"late", crew.late},
                         {"cost", crew.cost.toString()},
                         {"without_cost", crew.withoutCost}});
    }
    json charges = json::array();
    for (const auto& charge : list.chargeBacks) {
        charges.push_back({{"crew", charge.name},
                           {"items", charge.items},
                           {"amount", charge.amount.toString()},
                           {"without_amount", charge.withoutAmount}});
    }
    return {{"open", open.size()},
            {"ready_to_walk", list.isReadyToWalk()},
            {"items", std::move(items)},
            {"crews", std::move(crews)},
            {"charge_backs", std::move(charges)}};
}

std::string standsText(Session& session, const Closing& closing) {
    std::string out;
    const compute::StandsBetween* before = nullptr;
    for (const auto& one : closing.stands) {
        if (before == nullptr || before->part != one.part) {
            const auto number =
                std::count_if(closing.stands.begin(), closing.stands.end(),
                              [&](const auto& other) { return other.part == one.part; });
            std::string title(compute::wordsFor(one.part));
            title[0] = static_cast<char>(title[0] - 'a' + 'A');
            out +=
                "\n" + title + ": " + std::to_string(number) +
                (one.part == compute::ClosingPart::Punch ? ", as 'ledgerboard punch' lists them\n"
                                                         : "\n");
        }
        before = &one;
        if (one.part == compute::ClosingPart::Punch) {
            continue;  // 'punch' lists them
        }
        out += beside(
            session, "  " + one.what.text(), kIndent,
            one.why.text() + (one.money && *one.money != Money{}
                                  ? (one.why.isEmpty() ? "" : "; ") + money(session, *one.money)
                                  : ""));
    }
    return out;
}

const char* wordFor(const std::optional<bool>& done) {
    return !done ? "have you?" : *done ? "done" : "not yet";
}

// "10,445.00 of 12,350.00 ".
std::string amountsOf(Session& session, const compute::ReleaseStep& step) {
    if (!step.amount || !step.of) {
        return "";
    }
    return money(session, *step.amount) + " of " + money(session, *step.of) + " ";
}

std::string releaseText(Session& session, const Release& release) {
    std::string out = "\n" + report::shownText(release.name, session.script()) + ": held " +
                      money(session, release.held) + ", left to pay " +
                      money(session, release.leftToPay) + "\n";
    for (const auto& step : release.steps) {
        out += beside(session, std::string("  ") + wordFor(step.done), 13,
                      step.what.text() + (step.says.isEmpty() ? "" : ": ") +
                          amountsOf(session, step) + step.says.text());
    }
    if (release.leftToDo > Money{}) {
        out += paragraph(
            session,
            "Keep back " + money(session, release.holdLow) + " to " +
                money(session, release.holdHigh) + ", 1.5 to 2 times the " +
                money(session, release.leftToDo) + " left to do" +
                notPriced(release.punchWithoutCost) +
                (release.leftToPay < release.holdLow ? "; less than that is left to pay" : "") +
                ".",
            2);
    }
    return out;
}

std::string closingText(Session& session, const model::JobRows& rows, const Closing& closing) {
    if (closing.items == 0) {
        return rows.job.name +
               ": there is no scope yet, so nothing to finish.\n"
               "Next: ledgerboard read walk-notes.txt --keep\n";
    }
    std::string out = paragraph(
        session, rows.job.name + ": " + std::to_string(closing.finished) + " of " +
                     count(closing.items, "item", "items") + " finished; " +
                     (closing.stands.empty()
                          ? "nothing that the book knows of stands between this job and finished."
                          : count(closing.stands.size(), "thing stands", "things stand") +
                                " between this job and finished."));
    out += standsText(session, closing);
    if (!closing.releases.empty()) {
        out += "\nWhat releases each crew, in this order (common practice, no source)\n";
    }
    for (const Release& release : closing.releases) {
        out += releaseText(session, release);
    }
    out += "\nThe folder of the house\n";
    for (const auto& paper : closing.papers) {
        out += beside(session, std::string("  ") + wordFor(paper.known), 13,
                      paper.what.text() + (paper.says.isEmpty() ? "" : ": " + paper.says.text()));
    }
    return out + "\n" +
           paragraph(session,
                     "Forms of waivers, retainage and leave to occupy differ by place: a local "
                     "lawyer and the building office decide.");
}

json closingJson(const model::JobRows& rows, const Closing& closing) {
    json stands = json::array();
    for (const auto& one : closing.stands) {
        stands.push_back({{"part", std::string(compute::wordsFor(one.part))},
                          {"what", one.what.text()},
                          {"why", one.why.text()},
                          {"amount", moneyJson(one.money)},
                          {"record", one.record.toString()}});
    }
    json releases = json::array();
    for (const Release& release : closing.releases) {
        json steps = json::array();
        for (const auto& step : release.steps) {
            steps.push_back({{"what", step.what.text()},
                             {"done", step.done ? json(*step.done) : json(nullptr)},
                             {"says", step.says.text()},
                             {"amount", moneyJson(step.amount)},
                             {"of", moneyJson(step.of)}});
        }
        releases.push_back({{"contract", rows.contracts[release.contract].id.raw().toString()},
                            {"name", release.name},
                            {"held", release.held.toString()},
                            {"left_to_pay", release.leftToPay.toString()},
                            {"left_to_do", release.leftToDo.toString()},
                            {"punch_without_cost", release.punchWithoutCost},
                            {"keep_back_low", release.holdLow.toString()},
                            {"keep_back_high", release.holdHigh.toString()},
                            {"next", release.next ? json(release.steps[*release.next].what.text())
                                                  : json(nullptr)},
                            {"steps", std::move(steps)}});
    }
    json papers = json::array();
    for (const auto& paper : closing.papers) {
        papers.push_back({{"what", paper.what.text()},
                          {"known", paper.known ? json(*paper.known) : json(nullptr)},
                          {"says", paper.says.text()}});
    }
    return {{"items", closing.items},          {"finished", closing.finished},
            {"done", closing.isFinished()},    {"stands_between", std::move(stands)},
            {"releases", std::move(releases)}, {"folder", std::move(papers)}};
}

}  // namespace

Done verbPunch(Session& session, const std::string& crewName) {
    auto job = session.jobOnDay();
    if (!job.ok()) {
        return job.error();
    }
    const model::JobRows& rows = job.value().rows;
    const model::Date today = job.value().today;
    std::string name;
    model::Id<Kind::Crew> crew;
    if (!crewName.empty()) {
        auto finder = session.finder();
        if (!finder.ok()) {
            return finder.error();
        }
        auto found = finder.value()->find(Kind::Crew, crewName);
        if (!found.ok()) {
            return model::Error{found.error().code, "--crew: " + found.error().message};
        }
        crew = model::Id<Kind::Crew>(found.value());
        name = finder.value()->nameOf(found.value());
    }
    return model::guarded([&]() -> Done {
        const PunchList list = compute::punchListOf(rows, today);
        std::vector<const PunchRead*> open;
        for (const PunchRead& read : list.all) {
            const bool isTheirs = crew.isNil() || rows.punches[read.punch].crew == crew;
            if (read.isOpen && isTheirs) {
                open.push_back(&read);
            }
        }
        if (session.json()) {
            session.printJson(punchJson(rows, list, open));
        } else {
            session.print(punchText(session, rows, list, open, name, today));
        }
        return {};
    });
}

Done verbClose(Session& session) {
    auto job = session.jobOnDay();
    if (!job.ok()) {
        return job.error();
    }
    const model::JobRows& rows = job.value().rows;
    const model::Date today = job.value().today;
    return model::guarded([&]() -> Done {
        const auto figures = compute::figuresOf(rows, today);
        const Closing closing = compute::closingOf(rows, figures, today);
        if (session.json()) {
            session.printJson(closingJson(rows, closing));
        } else {
            session.print(closingText(session, rows, closing));
        }
        return {};
    });
}

}  // namespace ledgerboard::cli
