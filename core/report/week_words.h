// In what words does the week's page say its figures? One wording for the terminal and the HTML.
//
// Good and bad are told by words and sign: "over", "late", "a loss". No sentence calls an item good
// because little was paid for it yet.
#pragma once

#include <string>
#include <vector>

#include "core/report/plain_text.h"
#include "core/report/week_page.h"

namespace ledgerboard::report {

// A figure of the page's head: what it is, how large, and what is said beside it. `strong` comes
// before `rest`, with a space or a comma already in `rest`; either may be empty.
struct HeadFigure {
    std::string name;    // "Will cost"
    std::string figure;  // "123,320"
    std::string strong;  // "2,140 over"
    std::string rest;    // " budget, was 900 over"
};

// Will cost, will finish, will earn, cash lowest; what cannot be told is left out or says what is
// missing.
[[nodiscard]] std::vector<HeadFigure> headFigures(const WeekPage& page, Script script);

// "−12,400 on Tue 9 Jun; 8,300 leaves in 14 days; a draw of 12,000 lands Mon 1 Jun."
[[nodiscard]] std::string cashText(const WeekPage& page, Script script);

// "A buyer with a government-insured loan may sign from day 91, Fri 19 Jun. Double the price: no."
// Empty where the purchase is not dated.
[[nodiscard]] std::string buyerText(const WeekPage& page);

// "This week, to Friday 15 May 2026".
[[nodiscard]] std::string titleText(const WeekPage& page);

// "Week 6 of 8. Last review Fri 8 May."
[[nodiscard]] std::string whenText(const WeekPage& page);

// "Since Fri 8 May", "Since the baseline of Fri 3 Apr".
[[nodiscard]] std::string sinceText(const WeekPage& page);

// "Will cost 2,140 more than budget".
[[nodiscard]] std::string levelText(const Level& level, Script script);

// "Hairlines at 2 % of budget, ends at the contingency left".
[[nodiscard]] std::string levelScaleText(const Level& level, Script script);

// "Done 62 %, planned 68 %, spent 65 %, paid 60 %."
[[nodiscard]] std::string progressText(const Progress& progress, Script script);

// "To go, line by line: by contract now less billed 23,063 (19 lines), ... Other methods, for the
// whole job: from 95,900 (the rest at budget) to 106,300 (at CPI x SPI)." Empty where nothing is to
// go.
[[nodiscard]] std::string methodsText(const WeekPage& page, Script script);

// "If the 2 unsigned changes are signed: +1,350. Unknowns expected: +610." Empty where neither is.
[[nodiscard]] std::string askedText(const WeekPage& page, Script script);

// "Contingency left 3,350 of 9,000, against unknowns of 2,900." Empty where there is none.
[[nodiscard]] std::string contingencyText(const WeekPage& page, Script script);

// What the page leaves out, aloud: items without dates, days or price, bills without an amount,
// inputs of the deal that were not entered.
// Empty where none.
[[nodiscard]] std::string leftOutText(const WeekPage& page);

// "over 410", "early 300", "under 120", "on budget".
[[nodiscard]] std::string standingText(const TradeMoney& trade, Script script);

// "done", "72 %".
[[nodiscard]] std::string doneText(model::Percent done, Script script);

// The same of a room, "none" where only money was booked on it; its plan, "none" without one.
[[nodiscard]] std::string roomDoneText(const RoomProgress& room, Script script);
[[nodiscard]] std::string roomPlanText(const RoomProgress& room, Script script);

// "Order shower door", "Decide: keep the pantry wall?", "Inspection: rough plumbing", "Pay ...".
[[nodiscard]] std::string nextText(const NextEvent& event);

// "Tue 12 May", "no day yet".
[[nodiscard]] std::string nextDayText(const NextEvent& event, model::Date today);

// "214.60, 12 days", either part, or empty.
[[nodiscard]] std::string paperText(const MissingPaper& paper, Script script);

// "Planned, earned, spent" and the like: a heading for the curve from what it holds.
[[nodiscard]] std::string curveTitle(const WeekPage& page);

// "All others" with how many: "All others (12)". Empty where nothing else moved. Money booked on no
// item is among them but is no item, so there may be others without a count.
[[nodiscard]] std::string othersText(const Movers& movers);

// What an empty job says, and what to do next.
[[nodiscard]] std::string emptyJobText();

// Stands on every page that shows a hazard.
[[nodiscard]] std::string reminderText();

// True where the page shows a hazard or a barred payment.
[[nodiscard]] bool showsBarred(const WeekPage& page);

}  // namespace ledgerboard::report
