#include "core/report/week_answers.h"

#include <algorithm>

#include "core/model/saying.h"
#include "core/report/said_places.h"
#include "core/report/week_words.h"

namespace ledgerboard::report {

namespace {

using compute::ThisWeek;
using model::Date;
using model::JobRows;
using model::Money;
using model::Percent;
using model::Saying;
using model::saying;

constexpr Script kPage = Script::Unicode;
// Of a list so many are named; the others are counted, and stand in their own part of the page.
constexpr std::size_t kMostNamed = 4;

model::Place whole(Money money) {
    return wholePlace(money, kPage);
}

// "72" and "15.3", without the sign.
model::Place wholePercent(Percent percent) {
    const std::int64_t points = model::divideRounded(percent.basisPoints(), 100);
    std::string text = percentText(percent, kPage);
    text.resize(text.size() - 2);
    return {model::Place::Is::Percent, std::move(text), points * 100, {}};
}

model::Place tenths(Percent percent) {
    const std::int64_t count = model::divideRounded(percent.basisPoints(), 10);
    std::string text = tenthsText(percent, kPage);
    text.resize(text.size() - 2);
    return {model::Place::Is::Percent, std::move(text), count * 10, {}};
}

model::Place day(Date date, Date today) {
    const bool sameYear = date.year() == today.year();
    return {sameYear ? model::Place::Is::Day : model::Place::Is::FullDay,
            dateText(date, today),
            date.days(),
            {}};
}

// "a, b, c and 5 more"; "a; b and 5 more" where a name holds a comma itself.
Saying listed(const std::vector<Saying>& names, std::size_t most = kMostNamed) {
    const bool holdsComma = std::any_of(names.begin(), names.end(), [](const Saying& name) {
        return name.text().find(", ") != std::string::npos;
    });
    Saying text;
    const std::size_t shown = names.size() > most ? most : names.size();
    for (std::size_t k = 0; k < shown; ++k) {
        const bool isLast = k + 1 == shown && names.size() == shown;
        if (k == 0) {
            text = names[k];
        } else if (isLast) {
            text = holdsComma ? saying("%1; and %2", text, names[k])
                              : saying("%1 and %2", text, names[k]);
        } else {
            text = holdsComma ? saying("%1; %2", text, names[k]) : saying("%1, %2", text, names[k]);
        }
    }
    return names.size() > shown ? saying("%1 and %2 more", text, names.size() - shown) : text;
}

// Two sentences.
Saying both(const Saying& first, const Saying& second) {
    return saying("%1 %2", first, second);
}

Saying named(const std::string& name, Money amount) {
    return saying("%1 %2", name, whole(amount));
}

Saying headText(const HeadFigure& figure) {
    const std::string beside = figure.strong + figure.rest;
    return Saying(figure.figure + (beside.empty() ? "." : ": " + beside + "."));
}

// Compares, where the page knows what was.
Saying earnText(const WeekPage& page) {
    const auto& earn = page.earn;
    if (!earn.profit) {
        return saying("Not known: %1.", Saying(earn.whatIsMissing));
    }
    const Saying figure =
        earn.ofResale ? saying("%1, %2 % of resale", whole(*earn.profit), tenths(*earn.ofResale))
                      : saying("%1", whole(*earn.profit));
    const Saying text =
        *earn.profit >= Money{} ? saying("Yes, %1", figure) : saying("No: %1", figure);
    if (!earn.before) {
        return saying("%1.", text);
    }
    const Money moved = *earn.profit - *earn.before;
    if (moved == Money{}) {
        return saying("%1; as before.", text);
    }
    return moved < Money{} ? saying("%1; %2 less than before.", text, whole(-moved))
                           : saying("%1; %2 more than before.", text, whole(moved));
}

Saying paidText(const ThisWeek& week) {
    if (week.paidInAll == Money{}) {
        return saying("Nothing.");
    }
    std::vector<Saying> names;
    for (const auto& paid : week.paid) {
        const Saying who =
            paid.name.empty() ? saying("unnamed payees") : model::asWritten(paid.name);
        names.push_back(paid.ahead > Money{} ? saying("%1 %2 (now %3 ahead of work you have seen)",
                                                      who, whole(paid.amount), whole(paid.ahead))
                                             : saying("%1 %2", who, whole(paid.amount)));
    }
    return saying("%1 in all: %2.", whole(week.paidInAll), listed(names));
}

Saying aheadText(const JobRows& rows, const compute::JobFigures& figures) {
    std::vector<Saying> ahead;
    std::vector<Saying> owed;
    for (const auto& contract : figures.contracts) {
        const std::string& name = rows.contracts[contract.contract].name;
        if (contract.paidAhead > Money{}) {
            ahead.push_back(saying("%1 by %2, %3 % of it", name, whole(contract.paidAhead),
                                   wholePercent(contract.paidAheadPoints)));
        }
        if (contract.owed > Money{}) {
            owed.push_back(contract.payableToday < contract.owed
                               ? saying("%1 %2 (payable now %3)", name, whole(contract.owed),
                                        whole(contract.payableToday))
                               : named(name, contract.owed));
        }
    }
    return both(ahead.empty() ? saying("Nobody is ahead.") : saying("Ahead: %1.", listed(ahead)),
                owed.empty() ? saying("Nothing is owed.") : saying("Owed: %1.", listed(owed)));
}

std::vector<Saying> largestFirst(std::vector<std::pair<Money, std::string>> lines) {
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<Saying> names;
    names.reserve(lines.size());
    for (const auto& [amount, name] : lines) {
        names.push_back(named(name, amount));
    }
    return names;
}

Saying notBilledText(const JobRows& rows, const compute::JobFigures& figures) {
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
        return saying("Nothing.");
    }
    return saying("%1: %2.", whole(all), listed(largestFirst(std::move(open))));
}

Saying overText(const compute::JobFigures& figures) {
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
    return both(
        over.empty() ? saying("None is over.")
                     : saying("Over, and will stay so: %1.", listed(largestFirst(std::move(over)))),
        early.empty()
            ? saying("None is early.")
            : saying("Early, billed before plan: %1.", listed(largestFirst(std::move(early)))));
}

Saying contingencyAnswer(const WeekPage& page, const compute::JobFigures& figures) {
    if (!page.contingency || page.contingency->total <= Money{}) {
        return saying("No contingency was put aside.");
    }
    const Percent used = Percent::fromBasisPoints(
        model::divideRounded(model::multiplyWide(figures.contingency.used.minor(), 10'000),
                             page.contingency->total.minor()));
    return saying("%1 of %2 is left: %3 % used with %4 % of the work done.",
                  whole(page.contingency->left), whole(page.contingency->total), wholePercent(used),
                  wholePercent(page.progress.done));
}

Saying unsignedText(const JobRows& rows, const WeekPage& page) {
    if (page.outside.unsignedChanges == 0) {
        return saying("None.");
    }
    std::vector<Saying> names;
    for (const auto& change : rows.changes) {
        if (!change.signedOn && !change.refusedOn) {
            names.push_back(
                saying("%1 %2", change.name, signedPlace(compute::changeAmount(change), kPage)));
        }
    }
    return saying("%1.", listed(names));
}

Saying notDoneText(const JobRows& rows, const compute::JobFigures& figures, const ThisWeek& week,
                   Date today) {
    std::vector<Saying> late;
    for (const auto& one : week.notDone) {
        const std::string& name = figures.scope.lines[one.item].name;
        late.push_back(one.isStart ? saying("%1 was to begin %2", name, day(one.wantedOn, today))
                                   : saying("%1 at %2 % was to be done %3", name,
                                            wholePercent(one.shown), day(one.wantedOn, today)));
    }
    const Saying work = late.empty() ? saying("All that was planned for the week is done.")
                                     : saying("%1.", listed(late));
    if (!week.knowsPresence) {
        return both(work, saying("Who came was not entered."));
    }
    std::vector<Saying> missing;
    for (const auto& one : week.notThere) {
        const std::string& crew = rows.crews[one.crew].name;
        const auto days = static_cast<std::int64_t>(one.days.size());
        missing.push_back(days == 1 ? saying("%1 on %2 day", crew, countPlace(days))
                                    : saying("%1 on %2 days", crew, countPlace(days)));
    }
    return both(work, missing.empty() ? saying("Every crew that was planned came.")
                                      : saying("Did not come: %1.", listed(missing)));
}

Saying nextSaid(const NextEvent& event) {
    switch (event.kind) {
        case compute::WaitKind::Order:
            return saying("Order %1", event.what);
        case compute::WaitKind::Decision:
            return saying("Decide: %1", event.what);
        default:
            return saying("Inspection: %1", event.what);
    }
}

Saying nextAnswer(const WeekPage& page) {
    std::vector<Saying> names;
    for (const auto& event : page.next) {
        if (event.kind != compute::WaitKind::Order && event.kind != compute::WaitKind::Decision &&
            event.kind != compute::WaitKind::Inspection) {
            continue;
        }
        const Saying when =
            event.on ? saying("%1", day(*event.on, page.today)) : saying("no day yet");
        names.push_back(event.isLate ? saying("%1, %2 (late)", nextSaid(event), when)
                                     : saying("%1, %2", nextSaid(event), when));
    }
    return names.empty() ? saying("Nothing.") : saying("%1.", listed(names));
}

Saying papersAnswer(const WeekPage& page) {
    std::vector<Saying> names;
    for (const auto& paper : page.papers) {
        names.emplace_back(paper.what);
    }
    return names.empty() ? saying("None.") : saying("%1.", listed(names));
}

// "Tile crew: go on with Bathroom/shower tile; begin ...; put right ...".
Saying crewText(const JobRows& rows, const compute::JobFigures& figures,
                const compute::CrewNews& work) {
    const auto items = [&](const std::vector<std::size_t>& places) {
        std::vector<Saying> names;
        names.reserve(places.size());
        for (const std::size_t k : places) {
            names.push_back(model::asWritten(figures.scope.lines[k].name));
        }
        return listed(names, 2);
    };
    Saying parts;
    const auto add = [&parts](const Saying& part) {
        parts = parts.isEmpty() ? part : saying("%1; %2", parts, part);
    };
    if (!work.going.empty()) {
        add(saying("go on with %1", items(work.going)));
    }
    if (!work.beginning.empty()) {
        add(saying("begin %1", items(work.beginning)));
    }
    if (!work.leaveOpen.empty()) {
        add(saying("leave open to be looked at: %1", items(work.leaveOpen)));
    }
    if (!work.punch.empty()) {
        const auto count = static_cast<std::int64_t>(work.punch.size());
        add(count == 1 ? saying("%1 punch item to put right", countPlace(count))
                       : saying("%1 punch items to put right", countPlace(count)));
    }
    return saying("%1: %2.", rows.crews[work.crew].name, parts);
}

Saying mondayText(const JobRows& rows, const compute::JobFigures& figures, const ThisWeek& week) {
    Saying text;
    for (const auto& crew : week.crews) {
        const Saying one = crewText(rows, figures, crew);
        text = text.isEmpty() ? one : saying("%1%2%3", text, "\n", one);
    }
    return text.isEmpty() ? saying("No crew has work planned for the week.") : text;
}

}  // namespace

std::vector<Answer> answersOf(const WeekPage& page, const JobRows& rows,
                              const compute::JobFigures& figures, const ThisWeek& week) {
    const auto head = headFigures(page, kPage);
    const auto answer = [](const Saying& question, const Saying& said) {
        return Answer{question.text(), said.text()};
    };
    return {
        answer(saying("Still earning?"), earnText(page)),
        answer(saying("Done when?"), headText(head[1])),
        answer(saying("Paid since %1, to whom, for work seen?", day(week.since, page.today)),
               paidText(week)),
        answer(saying("Who is ahead of their work, who is owed?"), aheadText(rows, figures)),
        answer(saying("Signed and not billed?"), notBilledText(rows, figures)),
        answer(saying("Which lines are over, which only early?"), overText(figures)),
        answer(saying("Contingency against what is still to be opened?"),
               contingencyAnswer(page, figures)),
        answer(saying("Asked and not signed?"), unsignedText(rows, page)),
        answer(saying("What did not happen, who did not come?"),
               notDoneText(rows, figures, week, page.today)),
        answer(saying("To order, decide, have inspected in 14 days?"), nextAnswer(page)),
        answer(saying("Cash?"), Saying(cashText(page, kPage))),
        answer(saying("Papers missing?"), papersAnswer(page)),
        answer(saying("What does each crew hear on Monday?"), mondayText(rows, figures, week)),
    };
}

}  // namespace ledgerboard::report
