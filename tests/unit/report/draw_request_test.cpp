// Protects: a request for a draw says what can be asked for now, or what the draw in the book asks;
// it shows the lender only pictures marked for the lender, and none of the owner's captions. How: a
// small loan by hand, sums beside them.
#include "core/report/draw_request.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::report;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");

// Plumbing 12,000 with an item half seen; paint 5,000, nothing seen; a tenth held back.
struct Lent : SampleJob {
    Lent() {
        rows.job.workLoan = money("17000");
        rows.job.holdback = percent("10");
        for (const auto& [name, amount] : {std::pair{"Plumbing", "12000"}, {"Paint", "5000"}}) {
            LenderLine& line = add(rows.lender_lines);
            line.name = name;
            line.amount = money(amount);
        }
        item("pipe", "10000").lenderLine = id<Kind::LenderLine>(1);
        item("walls", "4000").lenderLine = id<Kind::LenderLine>(2);
        mark(1, "2026-05-10", "50");
    }

    Photo& photo(std::uint32_t item, bool forLender, const char* takenAt) {
        Photo& photo = add(rows.photos);
        photo.item = id<Kind::Item>(item);
        photo.forLender = forLender;
        photo.digest = std::string(64, 'a');
        photo.caption = "paid too much for this";
        photo.takenAt = Instant::parse(takenAt).value();
        return photo;
    }

    void ask(std::string_view on, std::string_view percentAsked) {
        Draw& draw = add(rows.draws);
        draw.number = 4;
        draw.askedOn = day(on);
        DrawLine& part = add(rows.draw_lines);
        part.draw = draw.id;
        part.lenderLine = id<Kind::LenderLine>(1);
        part.asked = percent(percentAsked);
    }
};

TEST(DrawRequest, WhatCanBeAskedForNow) {
    const Lent job;
    const auto request = drawRequestOf(job.rows, kToday);
    EXPECT_FALSE(request.isAsked);
    EXPECT_EQ(request.number, 1);
    EXPECT_EQ(request.day, kToday);
    EXPECT_EQ(request.now.total, money("5400"));  // 12,000 x .5 x .9
    ASSERT_EQ(request.lines.size(), 2U);
    ASSERT_EQ(request.lines[0].work.size(), 1U);
    EXPECT_THAT(request.lines[0].work[0].what, testing::HasSubstr("pipe"));
    EXPECT_EQ(request.lines[0].work[0].seen, percent("50"));
}

TEST(DrawRequest, ADrawInTheBookAtThePercentsItAsks) {
    Lent job;
    job.ask("2026-05-15", "40");
    job.mark(1, "2026-05-20", "75");  // seen since: not in what was asked
    job.mark(2, "2026-05-12", "10");  // seen before, but not asked for
    const auto request = drawRequestOf(job.rows, kToday);
    EXPECT_TRUE(request.isAsked);
    EXPECT_EQ(request.number, 4);
    EXPECT_EQ(request.day, day("2026-05-15"));
    EXPECT_EQ(request.now.total, money("4320"));  // 12,000 x .4 x .9
    EXPECT_EQ(request.lines[0].figures.draw, money("4320"));
    EXPECT_EQ(request.lines[0].figures.heldBack, money("480"));
    EXPECT_EQ(request.lines[0].work[0].seen, percent("50"));
    EXPECT_FALSE(request.lines[1].isAsked);
    EXPECT_EQ(request.lines[1].figures.draw, money("0"));
}

TEST(DrawRequest, OnceLookedAtItIsNoRequestAnyMore) {
    Lent job;
    job.ask("2026-05-15", "40");
    job.rows.draws[0].inspectedOn = day("2026-05-17");
    const auto request = drawRequestOf(job.rows, kToday);
    EXPECT_FALSE(request.isAsked);
    EXPECT_EQ(request.number, 5);
    EXPECT_EQ(request.now.total, money("1080"));  // 12,000 x (.5 - .4) x .9
}

TEST(DrawRequest, PicturesForTheLenderLatestFirstWithoutCaptions) {
    Lent job;
    job.photo(1, true, "2026-05-01T15:00:00Z");
    job.photo(1, true, "2026-05-09T15:00:00Z").stage = Stage::During;
    job.photo(1, false, "2026-05-10T15:00:00Z");
    job.photo(1, true, "2026-05-11T15:00:00Z").purpose = Purpose::Receipt;
    const auto request = drawRequestOf(job.rows, kToday);
    const auto& photos = request.lines[0].photos;
    ASSERT_EQ(photos.size(), 2U);
    EXPECT_LT(photos[1].photo.takenAt, photos[0].photo.takenAt);
    EXPECT_THAT(photos[0].shows, testing::EndsWith("pipe, during"));
    EXPECT_THAT(photos[0].shows, testing::Not(testing::HasSubstr("paid")));
    for (int k = 0; k < 5; ++k) {
        job.photo(1, true, "2026-05-12T15:00:00Z");
    }
    EXPECT_EQ(drawRequestOf(job.rows, kToday).lines[0].photos.size(), kMostPicturesALine);
}

TEST(DrawRequest, TheWholeLoanAsOneLineShowsAllWorkThatCounts) {
    Lent job;
    job.rows.lender_lines.clear();
    job.item("siding", "0").treatment = Treatment::Keep;  // which is no work
    const auto request = drawRequestOf(job.rows, kToday);
    ASSERT_EQ(request.lines.size(), 1U);
    ASSERT_EQ(request.lines[0].work.size(), 2U);
    EXPECT_THAT(request.lines[0].work[1].what, testing::HasSubstr("walls"));
}

TEST(DrawRequest, WithoutALoanThereAreNoLines) {
    const SampleJob job;
    EXPECT_TRUE(drawRequestOf(job.rows, kToday).lines.empty());
}

}  // namespace
