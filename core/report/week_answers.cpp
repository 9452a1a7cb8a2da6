#include "core/report/week_answers.h"

#include <algorithm>

#include "core/report/money_text.h"
#include "core/report/week_words.h"

namespace ledgerboard::report {

namespace {

using compute::ThisWeek;
using model::Date;
using model::JobRows;
using model::Money;
using model::Percent;

constexpr Script kPage = Script::Unicode;
// Of a list so many are named; the others are counted, and stand in their own part of the page.
constexpr std::size_t kMostNamed = 4;

std::string whole(Money money) {
    return wholeText(money, kPage);
}

// "a, b, c and 5 more"; "a; b and 5 more" where a name holds a comma itself.
std::string listed(const std::vector<std::string>& names, std::size_t most = kMostNamed) {
    const bool holdsComma = std::any_of(names.begin(), names.end(), [](const std::string& name) {
        return name.find(", ") != std::string::npos;
    });
    const char* between = holdsComma ? "; " : ", ";
    std::string text;
    const std::size_t shown = names.size() > most ? most : names.size();
    for (std::size_t k = 0; k < shown; ++k) {
        const bool isLast = k + 1 == shown && names.size() == shown;
        text += k == 0 ? "" : isLast ? (holdsComma ? "; and " : " and ") : between;
        text += names[k];
    }
    return names.size() > shown ? text + " and " + std::to_string(names.size() - shown) + " more"
                                : text;
}

std::string headText(const HeadFigure& figure) {
    const std::string beside = figure.strong + figure.rest;
    return figure.figure + (beside.empty() ? "." : ": " + beside + ".");
}

// Compares, where the page knows what was.
std::string earnText(const WeekPage& page) {
    const auto& earn = page.earn;
    if (!earn.profit) {
        return "Not known: " + earn.whatIsMissing + ".";
    }
    std::string text = *earn.profit >= Money{} ? "Yes, " : "No: ";
    text += whole(*earn.profit) +
            (earn.ofResale ? ", " + tenthsText(*earn.ofResale, kPage) + " of resale" : "");
    if (earn.before) {
        const Money moved = *earn.profit - *earn.before;
        text += moved == Money{} ? "; as before"
                                 : "; " + whole(moved < Money{} ? -moved : moved) +
                                       (moved < Money{} ? " less" : " more") + " than before";
    }
    return text + ".";
}

std::string paidText(const ThisWeek& week) {
    if (week.paidInAll == Money{}) {
        return "Nothing.";
    }
    std::vector<std::string> names;
    for (const auto& paid : week.paid) {
        names.push_back(
            (paid.name.empty() ? "unnamed payees" : paid.name) + " " + whole(paid.amount) +
            (paid.ahead > Money{} ? " (now " + whole(paid.ahead) + " ahead of work you have seen)"
                                  : ""));
    }
    return whole(week.paidInAll) + " in all: " + listed(names) + ".";
}

std::string aheadText(const JobRows& rows, const compute::JobFigures& figures) {
    std::vector<std::string> ahead;
    std::vector<std::string> owed;
    for (const auto& contract : figures.contracts) {
        const std::string& name = rows.contracts[contract.contract].name;
        if (contract.paidAhead > Money{}) {
            ahead.push_back(name + " by " + whole(contract.paidAhead) + ", " +
                            percentText(contract.paidAheadPoints, kPage) + " of it");
        }
        if (contract.owed > Money{}) {
            owed.push_back(name + " " + whole(contract.owed) +
                           (contract.payableToday < contract.owed
                                ? " (payable now " + whole(contract.payableToday) + ")"
                                : ""));
        }
    }
    return (ahead.empty() ? "Nobody is ahead. " : "Ahead: " + listed(ahead) + ". ") +
           (owed.empty() ? "Nothing is owed." : "Owed: " + listed(owed) + ".");
}

std::string notBilledText(const JobRows& rows, const compute::JobFigures& figures) {
    Money all;
    std::vector<std::pair<Money, std::string>> open;
    for (const auto& contract : figures.contracts) {
        const Money left = contract.now - contract.billed;
        if (contract.isSigned && left > Money{}) {
            all += left;
            open.emplace_back(left, rows.contracts[contract.contract].name);
        }
    }
    if (open.empty()) {
        return "Nothing.";
    }
    std::stable_sort(open.begin(), open.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<std::string> names;
    names.reserve(open.size());
    for (const auto& [left, name] : open) {
        names.push_back(name + " " + whole(left));
    }
    return whole(all) + ": " + listed(names) + ".";
}

std::string overText(const compute::JobFigures& figures) {
    std::vector<std::pair<Money, std::string>> over;
    std::vector<std::pair<Money, std::string>> early;
    for (std::size_t k = 0; k < figures.lines.size(); ++k) {
        const auto& line = figures.lines[k];
        const std::string& name = figures.scope.lines[k].name;
        if (line.standing() == compute::Standing::Over) {
            over.emplace_back(line.beyondBudget(), name);
        } else if (line.standing() == compute::Standing::Early) {
            early.emplace_back(line.billed - line.planned, name);
        }
    }
    const auto text = [](std::vector<std::pair<Money, std::string>>& lines) {
        std::stable_sort(lines.begin(), lines.end(),
                         [](const auto& a, const auto& b) { return a.first > b.first; });
        std::vector<std::string> names;
        names.reserve(lines.size());
        for (const auto& [amount, name] : lines) {
            names.push_back(name + " " + whole(amount));
        }
        return listed(names);
    };
    return (over.empty() ? "None is over. " : "Over, and will stay so: " + text(over) + ". ") +
           (early.empty() ? "None is early." : "Early, billed before plan: " + text(early) + ".");
}

std::string contingencyAnswer(const WeekPage& page, const compute::JobFigures& figures) {
    if (!page.contingency || page.contingency->total <= Money{}) {
        return "No contingency was put aside.";
    }
    const Percent used = Percent::fromBasisPoints(
        model::divideRounded(model::multiplyWide(figures.contingency.used.minor(), 10'000),
                             page.contingency->total.minor()));
    return whole(page.contingency->left) + " of " + whole(page.contingency->total) +
           " is left: " + percentText(used, kPage) + " used with " +
           percentText(page.progress.done, kPage) + " of the work done.";
}

std::string unsignedText(const JobRows& rows, const WeekPage& page) {
    if (page.outside.unsignedChanges == 0) {
        return "None.";
    }
    std::vector<std::string> names;
    for (const auto& change : rows.changes) {
        if (!change.signedOn && !change.refusedOn) {
            names.push_back(change.name + " " + signedText(compute::changeAmount(change), kPage));
        }
    }
    return listed(names) + ".";
}

std::string notDoneText(const JobRows& rows, const compute::JobFigures& figures,
                        const ThisWeek& week, Date today) {
    std::vector<std::string> late;
    for (const auto& one : week.notDone) {
        const std::string& name = figures.scope.lines[one.item].name;
        late.push_back(name +
                       (one.isStart ? " was to begin "
                                    : " at " + percentText(one.shown, kPage) + " was to be done ") +
                       dateText(one.wantedOn, today));
    }
    std::string text =
        late.empty() ? "All that was planned for the week is done. " : listed(late) + ". ";
    if (!week.knowsPresence) {
        return text + "Who came was not entered.";
    }
    std::vector<std::string> missing;
    for (const auto& one : week.notThere) {
        missing.push_back(rows.crews[one.crew].name + " on " +
                          countText(static_cast<std::int64_t>(one.days.size()), "day", "days"));
    }
    return text + (missing.empty() ? "Every crew that was planned came."
                                   : "Did not come: " + listed(missing) + ".");
}

std::string nextAnswer(const WeekPage& page) {
    std::vector<std::string> names;
    for (const auto& event : page.next) {
        if (event.kind == compute::WaitKind::Order || event.kind == compute::WaitKind::Decision ||
            event.kind == compute::WaitKind::Inspection) {
            names.push_back(nextText(event) + ", " + nextDayText(event, page.today) +
                            (event.isLate ? " (late)" : ""));
        }
    }
    return names.empty() ? "Nothing." : listed(names) + ".";
}

std::string papersAnswer(const WeekPage& page) {
    std::vector<std::string> names;
    for (const auto& paper : page.papers) {
        names.push_back(paper.what);
    }
    return names.empty() ? "None." : listed(names) + ".";
}

// "Tile crew: go on with Bathroom/shower tile; begin ...; put right ...".
std::string crewText(const JobRows& rows, const compute::JobFigures& figures,
                     const compute::CrewNews& work) {
    const auto items = [&](const std::vector<std::size_t>& places) {
        std::vector<std::string> names;
        names.reserve(places.size());
        for (const std::size_t k : places) {
            names.push_back(figures.scope.lines[k].name);
        }
        return listed(names, 2);
    };
    std::string text = rows.crews[work.crew].name + ": ";
    std::string parts;
    const auto add = [&parts](const std::string& part) {
        parts += (parts.empty() ? "" : "; ") + part;
    };
    if (!work.going.empty()) {
        add("go on with " + items(work.going));
    }
    if (!work.beginning.empty()) {
        add("begin " + items(work.beginning));
    }
    if (!work.leaveOpen.empty()) {
        add("leave open to be looked at: " + items(work.leaveOpen));
    }
    if (!work.punch.empty()) {
        add(countText(static_cast<std::int64_t>(work.punch.size()), "punch item", "punch items") +
            " to put right");
    }
    return text + parts + ".";
}

std::string mondayText(const JobRows& rows, const compute::JobFigures& figures,
                       const ThisWeek& week) {
    std::string text;
    for (const auto& crew : week.crews) {
        text += (text.empty() ? "" : "\n") + crewText(rows, figures, crew);
    }
    return text.empty() ? "No crew has work planned for the week." : text;
}

}  // namespace

std::vector<Answer> answersOf(const WeekPage& page, const JobRows& rows,
                              const compute::JobFigures& figures, const ThisWeek& week) {
    const auto head = headFigures(page, kPage);
    const std::string since = dateText(week.since, page.today);
    return {
        {"Still earning?", earnText(page)},
        {"Done when?", headText(head[1])},
        {"Paid since " + since + ", to whom, for work seen?", paidText(week)},
        {"Who is ahead of their work, who is owed?", aheadText(rows, figures)},
        {"Signed and not billed?", notBilledText(rows, figures)},
        {"Which lines are over, which only early?", overText(figures)},
        {"Contingency against what is still to be opened?", contingencyAnswer(page, figures)},
        {"Asked and not signed?", unsignedText(rows, page)},
        {"What did not happen, who did not come?", notDoneText(rows, figures, week, page.today)},
        {"To order, decide, have inspected in 14 days?", nextAnswer(page)},
        {"Cash?", cashText(page, kPage)},
        {"Papers missing?", papersAnswer(page)},
        {"What does each crew hear on Monday?", mondayText(rows, figures, week)},
    };
}

}  // namespace ledgerboard::report
