// Protects the calendar file: that a second export updates the first, that days are whole and end
// as RFC 5545 says, and that lines are folded and texts escaped. The demo's file is read by another
// program in tests/try.
#include "core/give/schedule_ics.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sstream>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard;
using namespace ledgerboard::tests;
using compute::ScheduleDay;
using compute::ScheduleDayKind;
using compute::ScheduleDays;
using testing::HasSubstr;
using testing::Not;

const auto kNow = model::Instant::fromMilliseconds(1'779'451'200'000);  // 2026-05-22T12:00Z

ScheduleDay tile() {
    return {ScheduleDayKind::Work,
            id<model::Kind::Item>(1).raw(),
            "Hall bath/tile",
            "Tile crew",
            "20 % shown; the finish waits, and so on",
            day("2026-05-25"),
            day("2026-05-29")};
}

std::string textOf(const ScheduleDays& days) {
    return give::scheduleIcs(days, {"job-and-crew", "14 Quince Row, Tile crew", "14 Quince Row"},
                             kNow)
        .value();
}

// RFC 5545, 3.6.1: DTEND is the first day after; 3.3.11: commas and semicolons take a backslash;
// 3.1: lines end in CR LF.
TEST(ScheduleIcs, WholeDaysUntilTheDayAfterTheLast) {
    const std::string text = textOf({{tile()}, 0});
    EXPECT_TRUE(text.starts_with("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"));
    EXPECT_THAT(text, HasSubstr("\r\nDTSTART;VALUE=DATE:20260525\r\n"));
    EXPECT_THAT(text, HasSubstr("\r\nDTEND;VALUE=DATE:20260530\r\n"));
    EXPECT_THAT(text, HasSubstr("\r\nDTSTAMP:20260522T120000Z\r\n"));
    EXPECT_THAT(text, HasSubstr("\r\nSUMMARY:Hall bath/tile (Tile crew)\r\n"));
    EXPECT_THAT(text, HasSubstr("20 % shown\\; the finish waits\\, and so on"));
    EXPECT_THAT(text, HasSubstr("\r\nNAME:14 Quince Row\\, Tile crew\r\n"));
    EXPECT_TRUE(text.ends_with("END:VCALENDAR\r\n"));
}

// RFC 7986, 5.1 to 5.4 and 5.7: of a whole calendar, before its entries.
TEST(ScheduleIcs, SaysOfItselfWhatARefresherWantsToKnow) {
    const std::string text = textOf({{tile()}, 0});
    const std::string head = text.substr(0, text.find("BEGIN:VEVENT"));
    EXPECT_THAT(head, HasSubstr("\r\nUID:job-and-crew\r\n"));
    EXPECT_THAT(head, HasSubstr("\r\nLAST-MODIFIED:20260522T120000Z\r\n"));
    EXPECT_THAT(head, HasSubstr("\r\nREFRESH-INTERVAL;VALUE=DURATION:P1D\r\n"));
    EXPECT_THAT(head, HasSubstr("\r\nDESCRIPTION:Work\\, deliveries"));
}

TEST(ScheduleIcs, TheSameThingKeepsItsUidAndTwoThingsOfOneItemDiffer) {
    ScheduleDay moved = tile();
    moved.from = day("2026-06-01");
    moved.to = day("2026-06-02");
    ScheduleDay order = tile();
    order.kind = ScheduleDayKind::OrderBy;
    const std::string uid = "UID:" + tile().record.toString();
    EXPECT_THAT(textOf({{tile()}, 0}), HasSubstr(uid + "-work\r\n"));
    const std::string later = textOf({{moved, order}, 0});
    EXPECT_THAT(later, HasSubstr(uid + "-work\r\n"));
    EXPECT_THAT(later, HasSubstr(uid + "-order-by\r\n"));
}

// RFC 5545, 3.1: no line is longer than 75 octets, and a character is not parted.
TEST(ScheduleIcs, LongLinesAreFolded) {
    ScheduleDay longest = tile();
    longest.what.clear();
    for (int k = 0; k < 60; ++k) {
        longest.what += "Küche ";
    }
    std::istringstream lines(textOf({{longest}, 0}));
    std::string unfolded;
    for (std::string line; std::getline(lines, line);) {
        ASSERT_TRUE(line.ends_with("\r"));
        line.pop_back();
        EXPECT_LE(line.size(), 75U) << line;
        unfolded += line.starts_with(" ") ? line.substr(1) : "\n" + line;
    }
    EXPECT_THAT(unfolded, HasSubstr("SUMMARY:" + longest.what + " (Tile crew)"));
}

// A crew hears of its own work, what comes for it and what it waits for, and of nothing else.
TEST(ScheduleDaysOf, ACrewGetsItsOwn) {
    SampleJob job;
    job.add(job.rows.crews).name = "Tile crew";
    job.add(job.rows.crews).name = "Paint crew";
    model::Item& tiles = job.item("tile", "3000");
    tiles.crew = id<model::Kind::Crew>(1);
    tiles.daysLikely = amountOf("2");
    tiles.leadDays = 5;
    model::Item& walls = job.item("walls", "900");
    walls.crew = id<model::Kind::Crew>(2);
    walls.daysLikely = amountOf("1");
    model::Delivery& delivery = job.add(job.rows.deliveries);
    delivery.item = id<model::Kind::Item>(2);
    delivery.promisedOn = day("2026-05-26");
    model::Alternate& alternate = job.add(job.rows.alternates);
    alternate.question = "which tile";
    alternate.decideBy = day("2026-05-28");
    const model::Date today = day("2026-05-22");
    const auto figures = compute::figuresOf(job.rows, today);
    const auto plan = compute::planOf(job.rows, figures, today);
    const auto kinds = [&](model::Id<model::Kind::Crew> crew) {
        std::vector<std::string> out;
        for (const auto& one : compute::scheduleDaysOf(job.rows, figures, plan, crew).days) {
            out.push_back(std::string(compute::wordsFor(one.kind)) + " " + one.what);
        }
        return out;
    };
    EXPECT_THAT(kinds({}),
                testing::UnorderedElementsAre("work tile", "work walls", "delivery walls",
                                              "order-by tile", "decision which tile"));
    EXPECT_THAT(kinds(id<model::Kind::Crew>(1)), testing::ElementsAre("work tile"));
    EXPECT_THAT(kinds(id<model::Kind::Crew>(2)),
                testing::UnorderedElementsAre("work walls", "delivery walls"));
}

TEST(ScheduleDaysOf, CountsWhatHasNoDay) {
    SampleJob job;
    job.item("odds and ends", "100");
    job.add(job.rows.inspections).what = "rough plumbing";
    const model::Date today = day("2026-05-22");
    const auto figures = compute::figuresOf(job.rows, today);
    const auto days =
        compute::scheduleDaysOf(job.rows, figures, compute::planOf(job.rows, figures, today));
    EXPECT_TRUE(days.days.empty());
    EXPECT_EQ(days.withoutDay, 2U);
}

}  // namespace
