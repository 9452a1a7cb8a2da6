#include "core/report/draw_text.h"

#include "core/report/cash_text.h"
#include "core/report/money_text.h"

namespace ledgerboard::report {

namespace {

using compute::DrawsNow;
using compute::LenderLineFigures;
using model::Date;
using model::Money;

constexpr const char* kHowToAddLines =
    "  ledgerboard add lender-line Name=Plumbing Amount=12000 \"Share lent=100\"\n"
    "  ledgerboard set basement/\"drain stack\" \"Lender line\" Plumbing\n"
    "or bring the lender's list, and the scope with a column \"Lender line\":\n"
    "  ledgerboard bring lender-lines lines.csv\n";

std::string linesTable(const DrawsNow& now, const TableStyle& style) {
    Table table{{{"Line", false},
                 {"Amount", true},
                 {"Lent", true},
                 {"Seen", true},
                 {"Held", true},
                 {"Before", true},
                 {"This draw", true},
                 {"Why not", false}},
                {}};
    const auto money = [&](Money amount) { return wholeText(amount, style.script); };
    Money amount;
    for (const LenderLineFigures& line : now.lines) {
        amount += line.inPlace.amount;
        table.rows.push_back({line.name, money(line.inPlace.amount),
                              percentText(line.inPlace.share, style.script),
                              percentText(line.inPlace.allowed, style.script), money(line.heldBack),
                              money(line.inPlace.paidBefore), money(line.draw), line.whyNot});
    }
    table.rows.push_back({"All", money(amount), "", "", money(now.heldBack), money(now.paidBefore),
                          money(now.total), ""});
    table.endsWithTotal = true;
    return printTable(table, style);
}

std::string refusals(const DrawsNow& now, const TableStyle& style) {
    std::string out;
    for (const LenderLineFigures& line : now.lines) {
        if (line.refused) {
            const auto& before = *line.refused;
            out += wrappedLines(
                "Refused before: " + line.name + ", " + before.asked.toString() + " % asked, " +
                    before.allowed.toString() + " % allowed" +
                    (before.number ? " in draw " + std::to_string(*before.number) : "") +
                    (before.why.empty() ? "" : ": " + before.why) + ".",
                style.width);
        }
    }
    return out;
}

std::string sumOf(const model::JobRows& rows, const DrawsNow& now, Date today,
                  const TableStyle& style) {
    const auto money = [&](Money amount) { return centsText(amount, style.script); };
    std::string text;
    if (now.total == Money{}) {
        text = "Nothing can be requested now.";
    } else {
        const int visit = static_cast<int>(rows.job.visitDays.value_or(0));
        const int fund = static_cast<int>(rows.job.fundDays.value_or(0));
        text = "Asked for today, " + dateText(today, today) + ": visit " +
               dateText(today + visit, today) + ", money " + dateText(today + visit + fund, today) +
               ", " + money(now.total) + " less the fee of " + money(now.fee) + " is " +
               money(now.total - now.fee) + ".";
        text += now.total <= now.fee ? " The fee eats it: wait." : "";
        text += now.isFinal ? " It is the final draw: it releases what was held back." : "";
    }
    if (now.limit) {
        text += " Limit " + money(*now.limit) + ", paid or asked for before " +
                money(now.paidBefore) + ".";
    }
    if (now.cutByLimit > Money{}) {
        text += " The limit cuts " + money(now.cutByLimit) + ".";
    }
    if (!now.isFinal && now.heldBack > Money{}) {
        text += " Held back so far " + money(now.heldBack) +
                ": released by the final draw, once everything is seen finished, accepted and "
                "waived.";
    }
    if (now.itemsWithoutLine > 0) {
        text += " " +
                countText(static_cast<std::int64_t>(now.itemsWithoutLine),
                          "item that counts points", "items that count point") +
                " at no lender line, so nothing is lent on " +
                (now.itemsWithoutLine == 1 ? "it." : "them.");
    }
    return wrappedLines(text, style.width);
}

std::string nextText(const std::vector<compute::DrawAhead>& ahead, Date today,
                     const TableStyle& style) {
    for (const compute::DrawAhead& draw : ahead) {
        if (draw.askOn) {
            return wrappedLines("By the plan, ask next on " + dateText(*draw.askOn, today) +
                                    " for " + wholeText(draw.total, style.script) + ", money " +
                                    dateText(draw.moneyOn, today) + ": " + draw.why + ".",
                                style.width);
        }
    }
    return "";
}

}  // namespace

std::string drawText(const model::JobRows& rows, const DrawsNow& now,
                     const std::vector<compute::DrawAhead>& ahead, Date today,
                     const TableStyle& style) {
    if (now.lines.empty()) {
        return wrappedLines("There is no loan for the work to draw on. Enter it with",
                            style.width) +
               "  ledgerboard set job \"Work loan\" VALUE\n" +
               wrappedLines("and the lender's lines, the schedule of values, with", style.width) +
               kHowToAddLines;
    }
    std::string out = linesTable(now, style) + "\n" + sumOf(rows, now, today, style) +
                      refusals(now, style) + nextText(ahead, today, style);
    if (!now.byLines) {
        out += wrappedLines(
            "There are no lender lines, so the whole work loan stands as one, seen as the job is. "
            "The lender's own lines make it true, and a draw can then be asked for with 'draw "
            "--ask'. Add them with",
            style.width);
        out += kHowToAddLines;
    }
    out += wrappedLines(leftOutSentence(now.leftOut), style.width);
    return out +
           wrappedLines(
               "Seen is what you marked yourself, not what a crew said. A visit often allows 5 "
               "to 15 points less (common practice, no source).",
               style.width);
}

}  // namespace ledgerboard::report
