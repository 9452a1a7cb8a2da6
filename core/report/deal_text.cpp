#include "core/report/deal_text.h"

#include <cmath>

#include "core/report/cash_text.h"
#include "core/report/money_text.h"

namespace ledgerboard::report {

namespace {

using compute::Deal;
using model::Money;

constexpr int kFewDaysToTermEnd = 14;  // common practice, no source

std::string percentOf(double percent, Script script) {
    constexpr double kMost = 1e9;
    if (std::abs(percent) > kMost) {
        return percent < 0 ? "less than -1,000,000,000 %" : "more than 1,000,000,000 %";
    }
    return tenthsText(model::Percent::fromBasisPoints(std::llround(percent * 100)), script);
}

std::string sums(const model::Job& job, const compute::DealFigures& in, const Deal& deal,
                 const TableStyle& style) {
    struct Line {
        const char* words;
        std::optional<Money> money;
        bool evenIfNothing = true;
    };

    const Line lines[] = {
        {"Resale, likely", job.resaleLikely},
        {"Season drop, for a sale that late", deal.seasonDrop, false},
        {"Purchase price", job.purchasePrice},
        {"Buying costs", deal.buyingCosts},
        {"Points", deal.points},
        {"Lender fees", deal.lenderFees},
        {"Lender's visits", deal.visitFees, false},
        {"Interest", deal.interest},
        {"Extension fee", deal.extensionFee},
        {"Holding", deal.holding},
        {"Work, forecast", in.work},
        {"Selling", deal.selling},
        {"All in", deal.allIn},
        {"Profit, before income tax", deal.profit},
        {"... at the low resale", deal.profitLow},
        {"... at the high resale", deal.profitHigh},
        {"Break-even resale", deal.breakEvenResale},
        {"Cash at closing", deal.cashAtClosing},
        {"A day costs", deal.dayCosts},
        {"70 % of resale less work (common practice)", deal.ruleOfThumbOffer},
        {"Top offer for the wanted profit", deal.topOffer},
    };
    Table table{{{job.name, false}, {"Amount", true}}, {}};
    for (const Line& line : lines) {
        if (line.money && (line.evenIfNothing || *line.money != Money{})) {
            table.rows.push_back({line.words, centsText(*line.money, style.script)});
        }
    }
    return printTable(table, style);
}

std::string returns(const Deal& deal, const compute::DealReturn& earned, const TableStyle& style) {
    std::string text;
    if (deal.marginPercent) {
        text += "Margin " + percentOf(*deal.marginPercent, style.script) + " of resale.";
    }
    if (deal.resaleDropPercent && *deal.resaleDropPercent > 0) {
        text += " A resale lower by " + percentOf(*deal.resaleDropPercent, style.script) +
                " eats the profit.";
    }
    std::string out = wrappedLines(text, style.width);
    if (earned.onCashPercent) {
        out += wrappedLines("Return on cash " + percentOf(*earned.onCashPercent, style.script) +
                                " of the " + wholeText(*earned.peakCashIn, style.script) +
                                " of own money in at the peak.",
                            style.width);
    }
    if (earned.yearlySimplePercent) {
        out += wrappedLines(
            "A year, simple: " + percentOf(*earned.yearlySimplePercent, style.script) + ".",
            style.width);
    }
    if (earned.yearlyDatedPercent) {
        out += wrappedLines("A year, of the dated cash flows, compounded: " +
                                percentOf(*earned.yearlyDatedPercent, style.script) + ".",
                            style.width);
    }
    for (const std::string& note : earned.notes) {
        out += wrappedLines(note, style.width);
    }
    return out;
}

std::string table(const compute::ProfitTable& profits, const TableStyle& style) {
    if (profits.rows.empty()) {
        return "";
    }
    Table out{{{"Profit, finished", false}, {"sold", false}}, {}};
    for (const Money value : profits.values) {
        out.columns.push_back({"at " + wholeText(value, style.script), true});
    }
    for (const auto& row : profits.rows) {
        const std::string later = row.weeksLater == 0
                                      ? "as forecast"
                                      : countText(row.weeksLater, "week later", "weeks later");
        std::vector<std::string> cells = {later + ", " + dayMonthText(row.finishOn),
                                          dayMonthText(row.saleOn)};
        for (const Money profit : row.profits) {
            cells.push_back(wholeText(profit, style.script));
        }
        out.rows.push_back(std::move(cells));
    }
    return "\n" + printTable(out, style);
}

std::string dayCosts(const Deal& deal, const TableStyle& style) {
    const auto money = [&](Money amount) { return centsText(amount, style.script); };
    std::string text = "A day costs " + money(deal.dayCosts) + ": interest " +
                       money(deal.interestPerDay) + " with both loans drawn, holding " +
                       money(deal.holdingPerDay);
    text += deal.extensionPerDay > Money{}
                ? ", the extension fee spread " + money(deal.extensionPerDay)
                : std::string();
    return wrappedLines(text + ".", style.width);
}

std::string daysThatMatter(const model::Job& job, const Deal& deal, const TableStyle& style) {
    std::string text;
    if (deal.saleOn) {
        text += wrappedLines(
            "Money from the sale by " + longDateText(*deal.saleOn) +
                (deal.daysHeld ? ", " + std::to_string(*deal.daysHeld) + " days after buying"
                               : std::string()) +
                ".",
            style.width);
    }
    if (deal.daysToTermEnd && job.termEndOn) {
        const int days = *deal.daysToTermEnd;
        std::string spare = std::to_string(days) + " days of float to the term end on " +
                            longDateText(*job.termEndOn) + ".";
        if (days < 0) {
            spare = "The sale comes " + std::to_string(-days) + " days after the term end on " +
                    longDateText(*job.termEndOn) + ": the extension fee is counted.";
        } else if (days < kFewDaysToTermEnd) {
            spare += " That is under 14: talk to the lender now (common practice, no source).";
        }
        text += wrappedLines(spare, style.width);
    }
    if (deal.day91On) {
        text += wrappedLines(
            "Day 91, the first on which a buyer with a government-insured loan may sign: " +
                longDateText(*deal.day91On) + ".",
            style.width);
    }
    if (deal.day180On && deal.isDoublePrice) {
        text += wrappedLines(
            "The resale is double the price or more: until day 180, " +
                longDateText(*deal.day180On) +
                ", such a buyer's lender calls for a second appraisal, not paid by the buyer (HUD "
                "rules on resale within 91 to 180 days).",
            style.width);
    }
    for (const model::NamedAmount& drop : job.seasonDrop) {
        text +=
            wrappedLines("A sale after " + drop.name + " brings " +
                             centsText(drop.amount, style.script) + " less, by your own number.",
                         style.width);
    }
    return text;
}

}  // namespace

std::string dealText(const model::Job& job, const compute::DealFigures& figures, const Deal& deal,
                     const compute::DealReturn& earned, const compute::ProfitTable& profits,
                     const TableStyle& style) {
    std::string out = sums(job, figures, deal, style) + "\n";
    out += returns(deal, earned, style) + table(profits, style) + "\n";
    out += dayCosts(deal, style) + daysThatMatter(job, deal, style);
    if (!deal.missing.empty()) {
        std::string names;
        for (const auto& input : deal.missing) {
            names += (names.empty() ? "" : ", ") + std::string(input.heading);
        }
        out += wrappedLines("No profit can be told without: " + names + ". Enter it with",
                            style.width);
        out += howToEnter(deal.missing);
        for (const auto& input : deal.missing) {
            if (input.field.empty()) {
                out += "  ledgerboard bring scope FILE (or read FILE --keep), for the work\n";
            }
        }
    }
    out += wrappedLines(leftOutSentence(deal.leftOut), style.width);
    if (figures.drawsAhead && !figures.drawsAhead->empty()) {
        out += wrappedLines(
            "Interest is on what is drawn, draws to come on the days 'ledgerboard cash' plans "
            "them.",
            style.width);
    }
    return out + "The 70 % rule is common practice, no source. Before income tax.\n";
}

}  // namespace ledgerboard::report
