// Protects the wording of the figures: over and under, late and early, a loss said as one, and
// nothing called good because little was paid.
#include "core/report/week_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/report/pages.h"

namespace ledgerboard::report {

namespace {

using model::Date;
using model::Money;
using model::Percent;

constexpr Script kUnicode = Script::Unicode;

std::string said(const WeekPage& page, std::size_t figure) {
    const auto figures = headFigures(page, kUnicode);
    return figures[figure].figure + " | " + figures[figure].strong + figures[figure].rest;
}

TEST(HeadFigures, SayOverUnderAndOnBudget) {
    auto page = test::fullPage();
    EXPECT_EQ(said(page, 0), "123,320 | 2,140 over budget, was 900 over");
    page.cost = {Money::of(90), Money::of(100), Money::of(100), Money{}};
    EXPECT_EQ(said(page, 0), "90 | 10 under budget, was on budget");
    page.cost = {Money::fromMinor(10'049), Money::of(100), {}, {}};
    EXPECT_EQ(said(page, 0), "100 | on budget");
    page.items = 24;
    page.unpriced = 18;
    EXPECT_EQ(said(page, 0), "100 | on budget; 18 of 24 items without a price");
}

TEST(HeadFigures, SayLateEarlyAndOnTime) {
    auto page = test::fullPage();
    page.finish.workingDaysLate = 1;
    page.finish.workingDaysLateBefore = -3;
    EXPECT_EQ(said(page, 1), "Tue 2 Jun | 1 working day late, was 3 working days early");
    page.finish.workingDaysLate = 0;
    page.finish.workingDaysLateBefore = {};
    page.finish.before = {};
    EXPECT_EQ(said(page, 1), "Tue 2 Jun | on time");
    page.finish = {page.finish.on, {}, {}, {}, {}, false};
    EXPECT_EQ(said(page, 1), "Tue 2 Jun | no finish was planned to compare with");
    page.finish.isFinished = true;
    EXPECT_EQ(headFigures(page, kUnicode)[1].name, "Finished");
}

TEST(HeadFigures, SayALossAsOne) {
    auto page = test::fullPage();
    page.earn = {
        Money::of(-12'300), Percent::fromBasisPoints(-412), Money::of(800), Money{}, "", {}};
    EXPECT_EQ(said(page, 2), "−12,300 | a loss, −4.1 % of resale, was 800");
    page.earn = {{}, {}, {}, Money{}, "not entered: Resale", {}};
    EXPECT_EQ(said(page, 2), "not known | not entered: Resale");
}

TEST(WhenText, KnowsWeeksBeforeWithinAndAfter) {
    auto page = test::fullPage();
    page.week = 10;
    EXPECT_EQ(whenText(page), "Week 10, planned for 8. Last review Fri 8 May.");
    page.week = 0;
    page.since = {Against::Baseline, page.today};
    EXPECT_EQ(whenText(page), "Work has not begun. Beside the baseline of Fri 15 May.");
    page.week = {};
    page.since = {};
    EXPECT_EQ(whenText(page), "No baseline yet, so nothing to compare with.");
}

TEST(LevelText, SaysMoreLessAndWhereTheEndsAre) {
    Level level{Money::of(2'140), Money::of(2'000), Money::of(3'350), true};
    EXPECT_EQ(levelText(level, kUnicode), "Will cost 2,140 more than budget");
    level.over = Money::of(-5);
    EXPECT_EQ(levelText(level, kUnicode), "Will cost 5 less than budget");
    level.over = Money{};
    EXPECT_EQ(levelText(level, kUnicode), "Will cost what was budgeted");
    level.endIsContingencyLeft = false;
    EXPECT_EQ(levelScaleText(level, Script::Ascii),
              "hairlines at +/-2 % of budget, ends at +/-3,350, for the contingency left is less "
              "than the hairlines");
}

TEST(StandingText, TellsOverFromEarly) {
    auto trade = [](std::int64_t budget, std::int64_t forecast, std::int64_t early) {
        TradeMoney out;
        out.amounts.budgetNow = Money::of(budget);
        out.amounts.forecast = Money::of(forecast);
        out.early = Money::of(early);
        return standingText(out, kUnicode);
    };
    EXPECT_EQ(trade(100, 110, 0), "over 10");
    EXPECT_EQ(trade(100, 110, 30), "over 10");  // over is never softened to early
    EXPECT_EQ(trade(100, 100, 30), "early 30");
    EXPECT_EQ(trade(100, 90, 0), "under 10");
    EXPECT_EQ(trade(100, 100, 0), "on budget");
}

TEST(DoneText, CallsNothingDoneThatIsNot) {
    EXPECT_EQ(doneText(Percent::whole(), kUnicode), "done");
    EXPECT_EQ(doneText(Percent::fromBasisPoints(9'999), kUnicode), "99 %");
    EXPECT_EQ(doneText(Percent::fromBasisPoints(9'950), kUnicode), "99 %");
    EXPECT_EQ(doneText(Percent::of(72), kUnicode), "72 %");
    EXPECT_EQ(doneText(Percent{}, kUnicode), "0 %");
}

TEST(AskedText, StandsApartFromTheForecast) {
    auto page = test::fullPage();
    page.outside = {2, Money::of(-500), Money{}};
    EXPECT_EQ(askedText(page, kUnicode), "If the 2 unsigned changes are signed: −500.");
    page.outside = {0, Money{}, Money::of(610)};
    EXPECT_EQ(askedText(page, kUnicode), "Unknowns expected: +610.");
    page.outside = {};
    EXPECT_EQ(askedText(page, kUnicode), "");
}

TEST(MethodsText, SaysTheRulesAndTheRangeOfTheOthers) {
    WeekPage page;
    EXPECT_EQ(methodsText(page, kUnicode), "");
    page.methods.rules = {{"contract now less billed", 2, Money::of(23'063)},
                          {"budget left", 1, Money::of(900)}};
    EXPECT_EQ(methodsText(page, kUnicode),
              "To go, line by line: 23,063 by contract now less billed (2 lines); 900 by budget "
              "left (1 line).");
    page.methods.others = {{"the rest at budget", Money::of(95'900)},
                           {"at CPI", Money::of(100'000)},
                           {"at CPI x SPI", Money::of(106'300)}};
    EXPECT_THAT(methodsText(page, kUnicode),
                testing::EndsWith(" Other methods, for the whole job: from 95,900 (the rest at "
                                  "budget) to 106,300 (at CPI x SPI)."));
}

TEST(HeadFigures, CashAndHowSureTheOthersAre) {
    auto page = test::fullPage();
    page.spreads.cost = {Money::of(121'000), Money::of(127'500)};
    page.spreads.finish = {*page.finish.on, *page.finish.on + 7};
    page.spreads.earn = {Money::of(44'000), Money::of(53'000)};
    page.cash =
        CashLow{Money::of(-1'200), *page.finish.on, Money::of(300), Money::of(8'300), {}, {}};
    EXPECT_THAT(said(page, 0), testing::EndsWith("; 8 in 10 between 121,000 and 127,500"));
    EXPECT_THAT(said(page, 1), testing::EndsWith("; 8 in 10 between Tue 2 Jun and Tue 9 Jun"));
    EXPECT_THAT(said(page, 2), testing::EndsWith("; 8 in 10 between 44,000 and 53,000"));
    EXPECT_EQ(said(page, 3), "−1,200 | short on Tue 2 Jun, was 300");
    EXPECT_EQ(cashText(page, kUnicode), "Lowest −1,200 on Tue 2 Jun; 8,300 leaves in 14 days.");
}

TEST(LeftOutText, CountsAloud) {
    WeekPage page;
    page.items = 12;
    EXPECT_EQ(leftOutText(page), "");
    page.undated = 1;
    page.unpriced = 3;
    page.withoutDays = 2;
    page.spendsWithoutAmount = 1;
    EXPECT_EQ(leftOutText(page),
              "1 of 12 items has no planned dates and is left out of what is planned. "
              "2 of 12 items have neither days nor dates and take no time in the plan. "
              "3 of 12 items have no price and count as nothing. "
              "1 bill or receipt has no amount and counts nowhere.");
    WeekPage deal;
    deal.earn.countedAsNothing = {"Loan rate", "Commission"};
    EXPECT_EQ(leftOutText(deal), "Not entered, so nothing in will earn: Loan rate, Commission.");
}

TEST(OthersText, CountsItemsAndOwnsUpToTheRest) {
    EXPECT_EQ(othersText({{}, Money::of(5), 12, Money::of(5)}), "All others (12)");
    EXPECT_EQ(othersText({{}, Money::of(23), 0, Money::of(23)}), "All others");
    EXPECT_EQ(othersText({{}, Money{}, 0, Money{}}), "");
}

TEST(RoomText, SaysNoneWhereThereIsNone) {
    RoomProgress room;
    EXPECT_EQ(roomDoneText(room, kUnicode), "none");
    EXPECT_EQ(roomPlanText(room, kUnicode), "none");
    room.items = 1;
    room.planned = Percent::of(61);
    EXPECT_EQ(roomDoneText(room, kUnicode), "0 %");
    EXPECT_EQ(roomPlanText(room, kUnicode), "61 %");
}

TEST(NextText, SaysWhatToDo) {
    using compute::WaitKind;
    EXPECT_EQ(nextText({WaitKind::Order, {}, false, "Bath/tub", {}}), "Order Bath/tub");
    EXPECT_EQ(nextText({WaitKind::Draw, {}, false, "Draw 4", {}}), "Draw 4, money expected");
    EXPECT_EQ(nextText({WaitKind::Decision, {}, false, "Keep the wall?", {}}),
              "Decide: Keep the wall?");
}

}  // namespace

}  // namespace ledgerboard::report
