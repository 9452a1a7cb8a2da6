#include "core/give/page_sheets.h"

#include "core/compute/waits.h"

namespace ledgerboard::give {

namespace {

using model::Date;
using model::Money;

template <class T>
Cell orEmpty(const std::optional<T>& value) {
    return value ? Cell(*value) : Cell();
}

Sheet headSheet(const report::WeekPage& page, const std::string& title) {
    Sheet sheet{"This week",
                title,
                {{"Figure", Form::Text, false, ""},
                 {"Amount", Form::Money, false, ""},
                 {"Day", Form::Date, false, ""},
                 {"Was", Form::Money, false, ""},
                 {"Was, day", Form::Date, false, ""}},
                {}};
    const auto money = [&](const char* name, const std::optional<Money>& amount,
                           const std::optional<Money>& before) {
        sheet.rows.push_back({std::string(name), orEmpty(amount), {}, orEmpty(before), {}});
    };
    money("Will cost", page.cost.forecast, page.cost.forecastBefore);
    money("Budget now", page.cost.budget, {});
    sheet.rows.push_back(
        {std::string("Will finish"), {}, orEmpty(page.finish.on), {}, orEmpty(page.finish.before)});
    sheet.rows.push_back({std::string("Planned finish"), {}, orEmpty(page.finish.planned), {}, {}});
    money("Will earn", page.earn.profit, page.earn.before);
    if (page.cash) {
        sheet.rows.push_back({std::string("Cash lowest"),
                              page.cash->lowest,
                              page.cash->on,
                              orEmpty(page.cash->before),
                              {}});
    }
    if (page.contingency) {
        money("Contingency", page.contingency->total, {});
        money("Contingency left", page.contingency->left, {});
    }
    return sheet;
}

Sheet tradeSheet(const report::WeekPage& page, const std::string& title) {
    Sheet sheet{"Money by trade",
                title,
                {{"Trade", Form::Text, false, ""},
                 {"Budget now", Form::Money, true, ""},
                 {"Committed", Form::Money, true, ""},
                 {"Billed", Form::Money, true, ""},
                 {"Held", Form::Money, true, ""},
                 {"Paid", Form::Money, true, ""},
                 {"Forecast", Form::Money, true, ""},
                 {"Over", Form::Money, true, "=G#-B#"}},
                {}};
    for (const auto& trade : page.trades) {
        const auto& money = trade.amounts;
        sheet.rows.push_back({trade.trade, money.budgetNow, money.committed, money.billed,
                              money.held, money.paid, money.forecast,
                              money.forecast - money.budgetNow});
    }
    return sheet;
}

Sheet roomSheet(const report::WeekPage& page, const std::string& title) {
    Sheet sheet{"By room",
                title,
                {{"Room", Form::Text, false, ""},
                 {"Items", Form::Count, true, ""},
                 {"Done", Form::Percent, false, ""},
                 {"Planned", Form::Percent, false, ""},
                 {"Over", Form::Money, true, ""}},
                {}};
    for (const auto& room : page.rooms) {
        sheet.rows.push_back({room.name, room.items, room.items > 0 ? Cell(room.done) : Cell(),
                              orEmpty(room.planned), room.over});
    }
    return sheet;
}

Sheet nextSheet(const report::WeekPage& page, const std::string& title) {
    Sheet sheet{"Next 14 days",
                title,
                {{"Day", Form::Date, false, ""},
                 {"What", Form::Text, false, ""},
                 {"For", Form::Text, false, ""},
                 {"Late", Form::Text, false, ""},
                 {"Amount", Form::Money, false, ""}},
                {}};
    for (const auto& event : page.next) {
        sheet.rows.push_back({orEmpty(event.on), std::string(compute::wordsFor(event.kind)),
                              event.what, std::string(event.isLate ? "late" : ""),
                              orEmpty(event.amount)});
    }
    return sheet;
}

Sheet mondaySheet(const report::WeekPage& page, const std::string& title) {
    Sheet sheet{"On Monday",
                title,
                {{"What to do", Form::Text, false, ""},
                 {"Because", Form::Text, false, ""},
                 {"Page", Form::Text, false, ""}},
                {}};
    for (const auto& thing : page.monday) {
        sheet.rows.push_back({thing.what, thing.because, thing.page});
    }
    return sheet;
}

Sheet askedSheet(const report::WeekPage& page, const std::string& title) {
    Sheet sheet{"Asked every week",
                title,
                {{"Question", Form::Text, false, ""}, {"Answer", Form::Text, false, ""}},
                {}};
    for (const auto& answer : page.answers) {
        sheet.rows.push_back({answer.question, answer.answer});
    }
    return sheet;
}

}  // namespace

std::vector<Sheet> weekSheets(const report::WeekPage& page) {
    const std::string title = page.job + ", week to " + page.today.toString();
    return {headSheet(page, title), tradeSheet(page, title),  roomSheet(page, title),
            nextSheet(page, title), mondaySheet(page, title), askedSheet(page, title)};
}

std::vector<Sheet> drawSheets(const compute::DrawsNow& now, const std::string& job, Date today) {
    Sheet sheet{"Draw",
                job + ", draw as of " + today.toString(),
                {{"Line", Form::Text, false, ""},
                 {"Amount", Form::Money, true, ""},
                 {"Lent", Form::Percent, false, ""},
                 {"Seen", Form::Percent, false, ""},
                 {"Held back", Form::Money, true, ""},
                 {"Paid or asked for before", Form::Money, true, ""},
                 {"This draw", Form::Money, true, ""},
                 {"Left on the line", Form::Money, true, "=ROUND(B#*C#,2)-F#-G#"},
                 {"Why not", Form::Text, false, ""}},
                {}};
    for (const auto& line : now.lines) {
        const Money lent = model::share(line.inPlace.share, line.inPlace.amount);
        sheet.rows.push_back({line.name, line.inPlace.amount, line.inPlace.share,
                              line.inPlace.allowed, line.heldBack, line.inPlace.paidBefore,
                              line.draw, lent - line.inPlace.paidBefore - line.draw, line.whyNot});
    }
    return {sheet};
}

}  // namespace ledgerboard::give
