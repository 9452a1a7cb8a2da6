#include "core/report/cash_text.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "core/compute/contract_terms.h"
#include "core/report/money_text.h"

namespace ledgerboard::report {

namespace {

using compute::CashKind;
using compute::CashLine;
using compute::CashMove;
using model::Date;
using model::Money;

constexpr int kFriday = 4;
constexpr int kDaysPerWeek = 7;
constexpr int kTwoWeeks = 14;

Date weekEnd(Date day) {
    return day + (kFriday - day.weekday() + kDaysPerWeek) % kDaysPerWeek;
}

std::string heading(const std::string& text, const TableStyle& style) {
    const std::string rule = style.script == Script::Unicode ? "─" : "-";
    std::string out = "\n" + text + "\n";
    for (std::size_t k = 0; k < style.width; ++k) {
        out += rule;
    }
    return out + "\n";
}

// Today, the lowest day, and when it gets short.
std::string summary(const CashLine& line, Date today, const TableStyle& style) {
    const auto money = [&](Money amount) { return wholeText(amount, style.script); };
    std::string text = "Today " + money(line.today) + ".";
    const bool isLowerAhead = line.lowestAhead && line.lowestAhead->on > today;
    if (isLowerAhead) {
        text += " Lowest ahead: " + money(line.lowestAhead->balance) + " on " +
                dateText(line.lowestAhead->on, today) + ".";
    }
    if (line.lowest && !(isLowerAhead && line.lowest->on == line.lowestAhead->on)) {
        text += " Lowest of all: " + money(line.lowest->balance) + " on " +
                dateText(line.lowest->on, today) + ".";
    }
    // A line that begins at 0 is below it anyway: what it asks of the owner is said instead.
    const bool isStartKnown =
        line.leftOut.empty() || line.leftOut.front().heading != "Cash at start";
    if (isStartKnown && line.underZeroOn) {
        text += " Under zero from " + dateText(*line.underZeroOn, today) + ".";
    } else if (isStartKnown && line.underTwoWeeksOn) {
        text += " From " + dateText(*line.underTwoWeeksOn, today) +
                " on it does not cover the two weeks of bills that follow.";
    }
    if (line.reachesSale && line.deal.profit) {
        text += " After the sale on " + dateText(*line.deal.saleOn, today) +
                " and the last payment " + money(line.end) + ": the start and a profit of " +
                money(*line.deal.profit) + ".";
    } else {
        text += " The line does not reach the sale: 'ledgerboard deal' says what is missing.";
    }
    return wrappedLines(text, style.width);
}

std::string asksText(const compute::CashPlan& plan, Date today, const TableStyle& style) {
    if (plan.drawsAhead.empty()) {
        return wrappedLines("No draw is in sight by the work planned and the loan entered.",
                            style.width);
    }
    Table table{
        {{"Ask on", false}, {"Money on", false}, {"Draw", true}, {"Fee", true}, {"Why", false}},
        {}};
    for (const compute::DrawAhead& draw : plan.drawsAhead) {
        table.rows.push_back({draw.askOn ? dateText(*draw.askOn, today) : "asked",
                              dateText(draw.moneyOn, today), wholeText(draw.total, style.script),
                              wholeText(draw.fee, style.script), draw.why});
    }
    return printTable(table, style);
}

// What goes out in the next two weeks, by name.
std::string soonText(const CashLine& line, Date today, const TableStyle& style) {
    std::map<std::pair<Date, std::string>, Money> sums;  // what goes to one on one day
    Money all;
    for (const CashMove& move : line.moves) {
        if (move.on > today && move.on <= today + kTwoWeeks && move.amount < Money{} &&
            move.kind != CashKind::Payoff) {
            sums[{move.on, move.what}] -= move.amount;
            all -= move.amount;
        }
    }
    Table table{{{"Leaves on", false}, {"To", false}, {"Amount", true}}, {}};
    for (const auto& [where, amount] : sums) {
        table.rows.push_back(
            {dateText(where.first, today), where.second, centsText(amount, style.script)});
    }
    if (table.rows.size() > 1) {
        table.rows.push_back({"All", "", centsText(all, style.script)});
        table.endsWithTotal = true;
    }
    return table.rows.empty() ? wrappedLines("Nothing.", style.width) : printTable(table, style);
}

std::string contractsText(const model::JobRows& rows, const compute::JobFigures& figures,
                          const TableStyle& style) {
    std::string text;
    const auto money = [&](Money amount) { return centsText(amount, style.script); };
    for (const auto& barred : compute::barredPayments(rows, figures)) {
        std::string why;
        for (const std::string& reason : barred.reasons) {
            why += (why.empty() ? "" : "; ") + reason;
        }
        text += wrappedLines("Barred: " + barred.name + ", " + money(barred.amount) +
                                 " would be payable, but " + why + ".",
                             style.width);
    }
    for (const auto& ahead : compute::paidAheadByCrew(rows, figures)) {
        text += wrappedLines(
            "Paid ahead of work seen: " + ahead.name + ", " + money(ahead.amount) + ".",
            style.width);
    }
    for (const auto& contract : figures.contracts) {
        if (contract.depositBeyondLimit > Money{}) {
            text +=
                wrappedLines("Deposit beyond the limit of " + rows.job.depositLimit->toString() +
                                 " %: " + rows.contracts[contract.contract].name + ", by " +
                                 money(contract.depositBeyondLimit) + ".",
                             style.width);
        }
    }
    return text;
}

std::string restsOn(const CashLine& line, const TableStyle& style) {
    std::string text =
        "It takes that: bills leave less retainage on their due dates; what is still to go of a "
        "contract leaves by its payment steps, of an order on its agreed finish, of bought goods "
        "when they are put in, of all else on the Fridays of its remaining planned days; retainage "
        "leaves in one sum five working days after the contract's last item; interest and holding "
        "leave on the first of each month; draws come after the lender's days, as much as the plan "
        "puts in place. A lender's visit often allows 5 to 15 points less (common practice, no "
        "source). Before income tax.";
    return wrappedLines(text, style.width) +
           wrappedLines(leftOutSentence(line.leftOut), style.width);
}

}  // namespace

std::string wrappedLines(std::string_view text, std::size_t width, std::string_view indent) {
    std::string out;
    if (text.empty()) {
        return out;
    }
    for (const std::string& line : wrapped(text, width - indent.size())) {
        out += std::string(indent) + line + "\n";
    }
    return out;
}

std::string leftOutSentence(const std::vector<compute::AbsentInput>& inputs) {
    std::string text;
    for (const auto& input : inputs) {
        text += (text.empty() ? "" : ", ") + std::string(input.heading);
    }
    return text.empty() ? "" : "Counted as nothing, for it was not entered: " + text + ".";
}

std::string howToEnter(const std::vector<compute::AbsentInput>& inputs) {
    std::string text;
    for (const auto& input : inputs) {
        if (!input.field.empty()) {
            text += "  ledgerboard set job \"" + std::string(input.heading) + "\" VALUE\n";
        }
    }
    return text;
}

Table cashWeeks(const CashLine& line, Date today, Script script) {
    Table table{{{"Week to", false},
                 {"Draws", true},
                 {"Work", true},
                 {"All else", true},
                 {"Balance", true},
                 {"Lowest", true},
                 {"", false}},
                {}};
    if (line.moves.empty()) {
        return table;
    }
    std::size_t nextMove = 0;
    std::size_t nextDay = 0;
    Money balance = line.start;
    const auto text = [&](Money money) {
        return money == Money{} ? std::string() : shortText(money, script);
    };
    for (Date end = weekEnd(line.moves.front().on); nextMove < line.moves.size();
         end = end + kDaysPerWeek) {
        Money draws;
        Money work;
        Money other;
        for (; nextMove < line.moves.size() && line.moves[nextMove].on <= end; ++nextMove) {
            const CashMove& move = line.moves[nextMove];
            const bool isWork = move.kind == CashKind::Work || move.kind == CashKind::Retainage;
            (isWork ? work : move.kind == CashKind::Draw ? draws : other) += move.amount;
        }
        Money lowest = balance;
        for (; nextDay < line.days.size() && line.days[nextDay].on <= end; ++nextDay) {
            balance = line.days[nextDay].balance;
            lowest = std::min(lowest, balance);
        }
        std::string note;
        if (line.lowest && line.lowest->on <= end && line.lowest->on > end - kDaysPerWeek) {
            note = "lowest of all";
        }
        if (line.lowestAhead && line.lowestAhead->on > today && line.lowestAhead->on <= end &&
            line.lowestAhead->on > end - kDaysPerWeek && note.empty()) {
            note = "lowest ahead";
        }
        if (today <= end && today > end - kDaysPerWeek) {
            note += note.empty() ? "this week" : ", this week";
        }
        if (line.reachesSale && *line.deal.saleOn <= end &&
            *line.deal.saleOn > end - kDaysPerWeek) {
            note += note.empty() ? "sale" : ", sale";
        }
        table.rows.push_back({dayMonthText(end), text(draws), text(work), text(other),
                              shortText(balance, script), shortText(lowest, script), note});
    }
    return table;
}

std::string cashDrawing(const CashLine& line, Date today, int height, const TableStyle& style) {
    if (line.days.size() < 2 || height < 2) {
        return "";
    }
    const bool unicode = style.script == Script::Unicode;
    constexpr std::size_t kAxis = 9;
    const auto columns = static_cast<int>(std::max<std::size_t>(20, style.width) - kAxis);
    // The day after the sale dwarfs everything: drawn up to the day before it.
    const Date first = line.days.front().on;
    Date last = line.days.back().on;
    if (line.reachesSale) {
        last = std::min(last, *line.deal.saleOn - 1);
    }
    const int days = std::max(1, last - first);
    Money top;
    Money bottom;
    std::vector<Money> lows;
    for (int c = 0; c < columns; ++c) {
        const Date from = first + c * days / columns;
        const Date to = std::max(from, first + (c + 1) * days / columns - 1);
        Money low = compute::balanceOn(line, from);
        for (Date day = from; day <= to; day = day + 1) {
            low = std::min(low, compute::balanceOn(line, day));
        }
        lows.push_back(low);
        top = std::max(top, low);
        bottom = std::min(bottom, low);
    }
    if (top == bottom) {
        return "";
    }
    const auto rowOf = [&](Money money) {
        const auto up = static_cast<double>((money - bottom).minor()) /
                        static_cast<double>((top - bottom).minor());
        return static_cast<int>(std::lround(up * (height - 1)));
    };
    std::string out;
    for (int row = height - 1; row >= 0; --row) {
        const bool isZero = row == rowOf(Money{});
        std::string label;
        if (row == height - 1) {
            label = axisText(top, style.script);
        } else if (isZero) {
            label = "0";
        } else if (row == 0) {
            label = axisText(bottom, style.script);
        }
        out += paddedLeft(label, kAxis - 2) + (unicode ? " ┤" : " |");
        for (int c = 0; c < columns; ++c) {
            const bool isPast = first + c * days / columns <= today;
            if (rowOf(lows[static_cast<std::size_t>(c)]) == row) {
                out += isPast ? (unicode ? "●" : "#") : (unicode ? "○" : "o");
            } else {
                out += isZero ? (unicode ? "·" : ".") : " ";
            }
        }
        out += "\n";
    }
    const std::string ends = dayMonthText(first);
    const std::string lastText = dayMonthText(last);
    out += std::string(kAxis, ' ') + ends +
           paddedLeft(lastText, static_cast<std::size_t>(columns) - columnsOf(ends)) + "\n";
    out += std::string(unicode ? "● so far, ○ ahead" : "# so far, o ahead") +
           (line.reachesSale ? "; up to the day before the sale\n" : "\n");
    return out;
}

std::string cashText(const model::JobRows& rows, const compute::JobFigures& figures,
                     const compute::CashPlan& plan, Date today, const TableStyle& style) {
    const CashLine& line = plan.line;
    std::string out = "Cash of " + shownText(rows.job.name, style.script) + ", on " +
                      longDateText(today) + "\n\n";
    if (!line.missing.empty()) {
        std::string names;
        for (const auto& input : line.missing) {
            names += (names.empty() ? "" : ", ") + std::string(input.heading);
        }
        out += wrappedLines(
            "There is no cash line yet. It begins with the purchase, so it needs: " + names +
                ". Enter it with",
            style.width);
        return out + howToEnter(line.missing) + "and what you have for this house with\n" +
               "  ledgerboard set job \"Cash at start\" VALUE\n";
    }
    out += summary(line, today, style);
    if (!rows.job.cashAtStart) {
        out += wrappedLines(
            "The cash at the start was not entered, so the line begins at 0: its lowest figure is "
            "what the house asks of the owner's own, " +
                wholeText(line.peakCashIn, style.script) + " at the most. Enter it with",
            style.width);
        out += "  ledgerboard set job \"Cash at start\" VALUE\n";
    }
    out += "\n" + cashDrawing(line, today, 10, style);
    out += heading("Week by week", style) + printTable(cashWeeks(line, today, style.script), style);
    out += heading("Leaves in the next two weeks", style) + soonText(line, today, style);
    out += contractsText(rows, figures, style);
    out += heading("What to ask the lender for, and when", style) + asksText(plan, today, style);
    return out + "\n" + restsOn(line, style);
}

}  // namespace ledgerboard::report
