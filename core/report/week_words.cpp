#include "core/report/week_words.h"

#include <algorithm>
#include <cstdlib>

#include "core/report/money_text.h"

namespace ledgerboard::report {

namespace {

using model::Money;

bool isNothing(Money money) {
    return wholeText(money, Script::Ascii) == "0";
}

Money size(Money money) {
    return money < Money{} ? -money : money;
}

// "2,140 over", "900 under", "on budget".
std::string overText(Money over, Script script) {
    if (isNothing(over)) {
        return "on budget";
    }
    return wholeText(size(over), script) + (over > Money{} ? " over" : " under");
}

std::string lateText(int workingDays) {
    if (workingDays == 0) {
        return "on time";
    }
    return countText(std::abs(workingDays), "working day", "working days") +
           (workingDays > 0 ? " late" : " early");
}

HeadFigure costFigure(const WeekPage& page, Script script) {
    const Money over = page.cost.forecast - page.cost.budget;
    HeadFigure figure{"Will cost", wholeText(page.cost.forecast, script), overText(over, script),
                      isNothing(over) ? "" : " budget"};
    if (page.unpriced == page.items) {
        return {figure.name, figure.figure, "", "no item is priced yet"};
    }
    if (page.cost.overBefore) {
        figure.rest += ", was " + overText(*page.cost.overBefore, script);
    }
    if (page.unpriced > 0) {
        figure.rest += "; " + std::to_string(page.unpriced) + " of " +
                       countText(page.items, "item", "items") + " without a price";
    }
    return figure;
}

HeadFigure finishFigure(const WeekPage& page) {
    const WillFinish& finish = page.finish;
    HeadFigure figure{"Will finish", "not known", "", "no item has days"};
    if (finish.hasLoop) {
        figure.rest = "items wait for each other in a loop: see plan";
    }
    if (!finish.on) {
        return figure;
    }
    figure.figure = dateText(*finish.on, page.today);
    if (finish.isFinished) {
        figure.name = "Finished";
    }
    figure.rest = "no finish was planned to compare with";
    if (finish.workingDaysLate) {
        figure.strong = lateText(*finish.workingDaysLate);
        figure.rest.clear();
    }
    if (finish.workingDaysLateBefore) {
        figure.rest += ", was " + lateText(*finish.workingDaysLateBefore);
    } else if (finish.before) {
        figure.rest += ", was " + dateText(*finish.before, page.today);
    }
    return figure;
}

HeadFigure earnFigure(const WeekPage& page, Script script) {
    const WillEarn& earn = page.earn;
    if (!earn.profit) {
        return {"Will earn", "not known", "", earn.whatIsMissing};
    }
    HeadFigure figure{"Will earn", wholeText(*earn.profit, script), "", ""};
    if (*earn.profit < Money{}) {
        figure.strong = "a loss";
    }
    if (earn.ofResale) {
        figure.rest =
            (figure.strong.empty() ? "" : ", ") + tenthsText(*earn.ofResale, script) + " of resale";
    }
    if (earn.before) {
        figure.rest += ", was " + wholeText(*earn.before, script);
    }
    if (!isNothing(earn.dayCosts)) {
        figure.rest += "; a day costs " + wholeText(earn.dayCosts, script);
    }
    return figure;
}

HeadFigure cashFigure(const WeekPage& page, Script script) {
    const CashLow& cash = *page.cash;
    HeadFigure figure{"Cash lowest", wholeText(cash.lowest, script), "",
                      "on " + dateText(cash.on, page.today)};
    if (cash.lowest < Money{}) {
        figure.strong = "short";
        figure.rest = " " + figure.rest;
    }
    if (cash.before) {
        figure.rest += ", was " + wholeText(*cash.before, script);
    }
    return figure;
}

// Puts how sure a figure is behind what is said beside it.
void addSpread(HeadFigure& figure, const std::string& low, const std::string& high) {
    figure.rest += (figure.strong + figure.rest).empty() ? "" : "; ";
    figure.rest += "8 in 10 between " + low + " and " + high;
}

}  // namespace

std::vector<HeadFigure> headFigures(const WeekPage& page, Script script) {
    std::vector<HeadFigure> out = {costFigure(page, script), finishFigure(page),
                                   earnFigure(page, script)};
    if (page.spreads.cost) {
        addSpread(out[0], wholeText(page.spreads.cost->low, script),
                  wholeText(page.spreads.cost->high, script));
    }
    if (page.spreads.finish && page.finish.on) {
        addSpread(out[1], dateText(page.spreads.finish->low, page.today),
                  dateText(page.spreads.finish->high, page.today));
    }
    if (page.spreads.earn && page.earn.profit) {
        addSpread(out[2], wholeText(page.spreads.earn->low, script),
                  wholeText(page.spreads.earn->high, script));
    }
    if (page.cash) {
        out.push_back(cashFigure(page, script));
    }
    return out;
}

std::string cashText(const WeekPage& page, Script script) {
    if (!page.cash) {
        return "Not known: enter \"Cash at start\" of the job to see it.";
    }
    const CashLow& cash = *page.cash;
    std::string text = "Lowest " + wholeText(cash.lowest, script) + " on " +
                       dateText(cash.on, page.today) + "; " + wholeText(cash.outNext14, script) +
                       " leaves in 14 days";
    if (cash.drawOn) {
        text += "; the next draw" +
                (cash.draw ? " of " + wholeText(*cash.draw, script) : std::string()) +
                " lands about " + dateText(*cash.drawOn, page.today);
    }
    return text + ".";
}

std::string buyerText(const WeekPage& page) {
    if (!page.buyer.day91On) {
        return {};
    }
    std::string text = "A buyer with a government-insured loan may sign from day 91, " +
                       dateText(*page.buyer.day91On, page.today) + ". Double the price: ";
    text += page.buyer.isDoublePrice ? "yes" : "no";
    if (page.buyer.isDoublePrice && page.buyer.day180On) {
        text += ", so a second appraisal up to " + dateText(*page.buyer.day180On, page.today);
    }
    return text + ".";
}

std::string titleText(const WeekPage& page) {
    return "This week, to " + longDateText(page.today);
}

std::string whenText(const WeekPage& page) {
    std::string text;
    if (page.week && *page.week >= 1) {
        text = "Week " + std::to_string(*page.week);
        // Past its last week a job is not in "week 10 of 8".
        text += page.weeks && *page.week <= *page.weeks ? " of " + std::to_string(*page.weeks)
                : page.weeks ? ", planned for " + std::to_string(*page.weeks)
                             : "";
        text += ". ";
    } else if (page.week) {
        text = "Work has not begun. ";
    }
    if (page.since.against == Against::Review && page.since.on) {
        return text + "Last review " + dateText(*page.since.on, page.today) + ".";
    }
    if (page.since.against == Against::Baseline && page.since.on) {
        return text + "Beside the baseline of " + dateText(*page.since.on, page.today) + ".";
    }
    return text + "No baseline yet, so nothing to compare with.";
}

std::string sinceText(const WeekPage& page) {
    if (!page.since.on) {
        return "In all";
    }
    const std::string day = dateText(*page.since.on, page.today);
    return page.since.against == Against::Baseline ? "Since the baseline of " + day
                                                   : "Since " + day;
}

std::string levelText(const Level& level, Script script) {
    if (isNothing(level.over)) {
        return "Will cost what was budgeted";
    }
    return "Will cost " + wholeText(size(level.over), script) +
           (level.over > Money{} ? " more than budget" : " less than budget");
}

std::string levelScaleText(const Level& level, Script script) {
    const std::string plusMinus = script == Script::Unicode ? "±" : "+/-";
    std::string text = "hairlines at " + plusMinus + "2 % of budget, ";
    text += level.endIsContingencyLeft
                ? "ends at the contingency left"
                : "ends at " + plusMinus + wholeText(level.end, script) +
                      ", for the contingency left is less than the hairlines";
    return text;
}

std::string progressText(const Progress& progress, Script script) {
    std::string text = "Done " + percentText(progress.done, script);
    if (progress.planned) {
        text += ", planned " + percentText(*progress.planned, script);
    }
    if (progress.spent) {
        text += ", spent " + percentText(*progress.spent, script);
    }
    if (progress.paid) {
        text += ", paid " + percentText(*progress.paid, script);
    }
    return text + " of budget.";
}

std::string methodsText(const WeekPage& page, Script script) {
    const Methods& methods = page.methods;
    if (methods.rules.empty()) {
        return {};
    }
    std::string text;
    for (const auto& rule : methods.rules) {
        text += (text.empty() ? "To go, line by line: " : "; ") + wholeText(rule.toGo, script) +
                " by " + rule.rule + " (" + countText(rule.lines, "line", "lines") + ")";
    }
    text += ".";
    if (methods.others.size() >= 2) {
        const OtherMethod& low = methods.others.front();
        const OtherMethod& high = methods.others.back();
        text += " Other methods, for the whole job: from " + wholeText(low.estimate, script) +
                " (" + low.method + ") to " + wholeText(high.estimate, script) + " (" +
                high.method + ").";
    }
    return text;
}

std::string askedText(const WeekPage& page, Script script) {
    const Outside& outside = page.outside;
    std::string text;
    if (outside.unsignedChanges > 0) {
        text = outside.unsignedChanges == 1 ? "If the unsigned change is signed: "
                                            : "If the " + std::to_string(outside.unsignedChanges) +
                                                  " unsigned changes are signed: ";
        text += signedText(outside.ifSigned, script) + ".";
    }
    if (!isNothing(outside.unknownsExpected)) {
        text += text.empty() ? "" : " ";
        text += "Unknowns expected: " + signedText(outside.unknownsExpected, script) + ".";
    }
    return text;
}

std::string contingencyText(const WeekPage& page, Script script) {
    if (!page.contingency) {
        return {};
    }
    std::string text = "Contingency left " + wholeText(page.contingency->left, script) + " of " +
                       wholeText(page.contingency->total, script);
    if (!isNothing(page.outside.unknownsExpected)) {
        text += ", against unknowns of " + wholeText(page.outside.unknownsExpected, script);
    }
    return text + ".";
}

std::string leftOutText(const WeekPage& page) {
    std::string text;
    auto say = [&text](std::int64_t count, const std::string& whole, const char* one,
                       const char* many) {
        if (count > 0) {
            text += (text.empty() ? "" : " ") + std::to_string(count) + whole +
                    (count == 1 ? one : many);
        }
    };
    const std::string of = " of " + countText(page.items, "item", "items");
    say(page.undated, of, " has no planned dates and is left out of what is planned.",
        " have no planned dates and are left out of what is planned.");
    say(page.withoutDays, of, " has neither days nor dates and takes no time in the plan.",
        " have neither days nor dates and take no time in the plan.");
    say(page.unpriced, of, " has no price and counts as nothing.",
        " have no price and count as nothing.");
    say(page.spendsWithoutAmount, "", " bill or receipt has no amount and counts nowhere.",
        " bills or receipts have no amount and count nowhere.");
    std::string inputs;
    for (const auto& heading : page.earn.countedAsNothing) {
        inputs += (inputs.empty() ? "" : ", ") + heading;
    }
    if (!inputs.empty()) {
        text +=
            (text.empty() ? "" : " ") + ("Not entered, so nothing in will earn: " + inputs) + ".";
    }
    return text;
}

std::string standingText(const TradeMoney& trade, Script script) {
    const Money over = trade.amounts.forecast - trade.amounts.budgetNow;
    if (over > Money{} && !isNothing(over)) {
        return "over " + shortText(over, script);
    }
    if (trade.early > Money{} && !isNothing(trade.early)) {
        return "early " + shortText(trade.early, script);
    }
    if (isNothing(over)) {
        return "on budget";
    }
    return "under " + shortText(-over, script);
}

std::string doneText(model::Percent done, Script script) {
    // 99.6 % is not done, however it rounds.
    if (done >= model::Percent::whole()) {
        return "done";
    }
    return done > model::Percent::of(99) ? "99 %" : percentText(done, script);
}

std::string roomDoneText(const RoomProgress& room, Script script) {
    return room.items == 0 ? "none" : doneText(room.done, script);
}

std::string roomPlanText(const RoomProgress& room, Script script) {
    return room.planned ? percentText(*room.planned, script) : "none";
}

std::string nextText(const NextEvent& event) {
    switch (event.kind) {
        case compute::WaitKind::Order:
            return "Order " + event.what;
        case compute::WaitKind::Delivery:
            return "Delivery of " + event.what;
        case compute::WaitKind::Decision:
            return "Decide: " + event.what;
        case compute::WaitKind::Inspection:
            return "Inspection: " + event.what;
        case compute::WaitKind::Payment:
            return "Pay " + event.what;
        case compute::WaitKind::Draw:
            return event.what + ", money expected";
    }
    return event.what;
}

std::string nextDayText(const NextEvent& event, model::Date today) {
    return event.on ? dateText(*event.on, today) : "no day yet";
}

std::string paperText(const MissingPaper& paper, Script script) {
    std::string text = paper.amount ? centsText(*paper.amount, script) : "";
    if (paper.days && *paper.days > 0) {
        text += (text.empty() ? "" : ", ") + countText(*paper.days, "day", "days");
    }
    return text;
}

std::string curveTitle(const WeekPage& page) {
    for (const auto& point : page.curve) {
        if (point.planned) {
            return "Planned, earned, spent";
        }
    }
    return "Earned, spent";
}

std::string othersText(const Movers& movers) {
    if (movers.otherCount > 0) {
        return "All others (" + std::to_string(movers.otherCount) + ")";
    }
    return isNothing(movers.others) ? "" : "All others";
}

std::string emptyJobText() {
    return "Nothing is in the scope of work yet. Read walk notes into it with: "
           "ledgerboard read FILE --keep";
}

std::string reminderText() {
    return "Reminders only: rules change by place; ask your building office and a licensed trade.";
}

bool showsBarred(const WeekPage& page) {
    return std::any_of(page.monday.begin(), page.monday.end(),
                       [](const ToDo& todo) { return todo.isBarred; });
}

}  // namespace ledgerboard::report
