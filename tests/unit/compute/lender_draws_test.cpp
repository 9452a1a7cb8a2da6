// Protects what can be drawn now, line by line: seen work, what was paid and asked for before, why
// not, what was refused; and when to ask next. Sums are worked by hand beside them.
#include "core/compute/lender_draws.h"

#include <gtest/gtest.h>

#include "core/compute/cash_plan.h"

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");

// Two lines: plumbing 12,000 with an item half seen, paint 5,000 lent at 80 %.
struct Lent : SampleJob {
    Lent() {
        rows.job.workLoan = money("17000");
        rows.job.holdback = percent("10");
        rows.job.visitFee = money("175");
        rows.job.visitDays = 2;
        rows.job.fundDays = 4;
        line("Plumbing", "12000");
        line("Paint", "5000").shareLent = percent("80");
        item("pipe", "10000").lenderLine = id<Kind::LenderLine>(1);
        item("walls", "4000").lenderLine = id<Kind::LenderLine>(2);
        mark(1, "2026-05-10", "50");
        mark(1, "2026-05-20", "90", 2);  // a crew's word is not seen
    }

    LenderLine& line(std::string_view name, std::string_view amount) {
        LenderLine& line = add(rows.lender_lines);
        line.name = name;
        line.amount = money(amount);
        return line;
    }

    Draw& draw(std::int64_t number, std::string_view asked) {
        Draw& draw = add(rows.draws);
        draw.number = number;
        draw.askedOn = day(asked);
        return draw;
    }

    DrawLine& drawLine(std::uint32_t draw, std::uint32_t line, std::string_view asked) {
        DrawLine& part = add(rows.draw_lines);
        part.draw = id<Kind::Draw>(draw);
        part.lenderLine = id<Kind::LenderLine>(line);
        part.asked = percent(asked);
        return part;
    }

    [[nodiscard]] DrawsNow now() const { return drawsNowOf(rows, figuresOf(rows, kToday)); }
};

TEST(DrawsNow, LineByLine) {
    Lent job;
    job.mark(2, "2026-05-12", "25");
    const DrawsNow now = job.now();
    ASSERT_EQ(now.lines.size(), 2U);
    EXPECT_EQ(now.lines[0].draw, money("5400"));  // 12,000 x .5 x .9
    EXPECT_EQ(now.lines[0].heldBack, money("600"));
    EXPECT_EQ(now.lines[1].draw, money("900"));  // 5,000 x .25 x .8 x .9
    EXPECT_EQ(now.total, money("6300"));
    EXPECT_FALSE(now.isFinal);
    EXPECT_TRUE(now.byLines);
}

TEST(DrawsNow, WhatWasPaidAndRefusedBefore) {
    Lent job;
    Draw& first = job.draw(1, "2026-05-01");
    first.inspectedOn = day("2026-05-03");
    first.fundedOn = day("2026-05-07");
    first.amount = money("2525");
    first.fee = money("175");
    DrawLine& part = job.drawLine(1, 1, "40");
    part.allowed = percent("25");
    part.whyRefused = "fixtures not on site";
    const DrawsNow now = job.now();
    EXPECT_EQ(now.lines[0].inPlace.paidBefore, money("2700"));  // 12,000 x .25 x .9
    EXPECT_EQ(now.lines[0].draw, money("2700"));
    ASSERT_TRUE(now.lines[0].refused);
    EXPECT_EQ(now.lines[0].refused->number, 1);
    EXPECT_EQ(now.lines[0].refused->asked, percent("40"));
    EXPECT_EQ(now.lines[0].refused->why, "fixtures not on site");
    EXPECT_EQ(now.lines[1].draw, Money{});
    EXPECT_EQ(now.lines[1].whyNot, "nothing of it has been seen in place");
}

TEST(DrawsNow, WhatIsAskedForIsNotAskedTwice) {
    Lent job;
    job.draw(1, "2026-05-21");
    job.drawLine(1, 1, "50");
    const DrawsNow now = job.now();
    EXPECT_EQ(now.lines[0].askedOpen, money("5400"));
    EXPECT_EQ(now.total, Money{});
    EXPECT_EQ(now.lines[0].whyNot, "asked for already");
    // Asked 21 May, visit in 2 days, money 4 later: 27 May.
    const auto open = openDrawsOf(job.rows, now, kToday);
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open[0].moneyOn, day("2026-05-27"));
    EXPECT_EQ(open[0].total, money("5400"));
    EXPECT_EQ(open[0].fee, money("175"));
}

// A draw that does not say its lines goes where work is seen: 2,700 of the 5,400 seen on plumbing.
TEST(DrawsNow, ADrawWithoutLinesGoesWhereWorkIsSeen) {
    Lent job;
    Draw& first = job.draw(1, "2026-05-01");
    first.fundedOn = day("2026-05-07");
    first.amount = money("2700");
    EXPECT_EQ(job.now().lines[0].inPlace.paidBefore, money("2700"));
    EXPECT_EQ(job.now().lines[1].inPlace.paidBefore, Money{});
}

TEST(DrawsNow, TheLimitCutsAndTheFinalReleases) {
    Lent job;
    job.rows.job.drawLimit = money("5000");
    EXPECT_EQ(job.now().total, money("5000"));
    EXPECT_EQ(job.now().cutByLimit, money("400"));
    job.rows.job.drawLimit.reset();
    job.mark(1, "2026-05-21", "100");
    job.mark(2, "2026-05-21", "100");
    const DrawsNow now = job.now();
    EXPECT_TRUE(now.isFinal);              // all is seen, and no contract waits for a waiver
    EXPECT_EQ(now.total, money("16000"));  // 12,000 + 5,000 x .8
    EXPECT_EQ(now.heldBack, Money{});
    job.contract("Pipes", "9000", "2026-05-01");
    EXPECT_FALSE(job.now().isFinal);
    EXPECT_EQ(job.now().total, money("14400"));  // a tenth held
}

TEST(DrawsNow, WithoutLinesTheLoanIsOne) {
    Lent job;
    job.rows.lender_lines.clear();
    // Seen 5,000 of 14,000: 35.71 % of 17,000 x .9.
    const DrawsNow now = job.now();
    ASSERT_EQ(now.lines.size(), 1U);
    EXPECT_FALSE(now.byLines);
    EXPECT_EQ(now.total, money("5463.63"));
    job.rows.job.workLoan.reset();
    EXPECT_TRUE(job.now().lines.empty());
}

// Nothing is planned, so nothing more comes into place; 5,400 is less than 8,000 but is asked for
// as the last there is, and the final draw's holdback of 600 with what is left.
TEST(DrawsAhead, TheLastDrawsAreAskedForWhenTheWorkEnds) {
    Lent job;
    job.rows.items[0].daysLikely = amountOf("50");  // 90 % shown: 5 left, Mon 25 to Fri 29 May
    job.mark(2, "2026-05-20", "100");
    const JobFigures figures = figuresOf(job.rows, kToday);
    const auto plan = cashPlanOf(job.rows, figures,
                                 workAheadOf(job.rows, figures, planOf(job.rows, figures, kToday)),
                                 std::nullopt, kToday);
    ASSERT_TRUE(plan.ok()) << plan.error().message;
    const auto& ahead = plan.value().drawsAhead;
    ASSERT_EQ(ahead.size(), 3U);
    // Today: 5,400 + 5,000 x .8 x .9 = 9,000, worth the visit.
    EXPECT_EQ(ahead[0].askOn, kToday);
    EXPECT_EQ(ahead[0].moneyOn, day("2026-05-28"));
    EXPECT_EQ(ahead[0].total, money("9000"));
    // Friday 29 May: the other half of plumbing, 5,400.
    EXPECT_EQ(ahead[1].askOn, day("2026-05-29"));
    EXPECT_EQ(ahead[1].total, money("5400"));
    // The fifth working day after it: the holdback, 16,000 - 14,400.
    EXPECT_EQ(ahead[2].askOn, day("2026-06-05"));
    EXPECT_TRUE(ahead[2].isFinal);
    EXPECT_EQ(ahead[2].total, money("1600"));
}

}  // namespace
