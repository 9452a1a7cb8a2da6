// Protects: where work on old paint stops being minor and where asbestos calls for notice, at the
// very edges of the limits. How: the figures of the regulations, with document and section beside
// each, put into small scopes; sums and days worked by hand here.
#include "core/compute/caution_sizes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace ledgerboard::compute {
namespace {

using model::Kind;
using model::Treatment;
using testing::HasSubstr;
using tests::amountOf;
using tests::day;
using tests::id;
using tests::SampleJob;

class CautionSizes : public testing::Test {
  protected:
    SampleJob job_;

    void SetUp() override {
        for (const char* name : {"Kitchen", "Hall", "Outside", "Back porch"}) {
            job_.add(job_.rows.spaces).name = name;
        }
    }

    // Space 1 is the kitchen, 2 the hall, 3 outside, 4 the back porch, which is outdoors too.
    model::Item& work(std::uint32_t space, const char* object, const char* quantity,
                      const char* unit = "sq ft", Treatment treatment = Treatment::Repair) {
        model::Item& item = job_.add(job_.rows.items);
        item.space = id<Kind::Space>(space);
        item.object = object;
        item.treatment = treatment;
        item.unit = unit;
        if (*quantity != '\0') {
            item.quantity = amountOf(quantity);
        }
        return item;
    }

    static void dated(model::Item& item, const char* start, const char* finish) {
        item.plannedStartOn = day(start);
        item.plannedFinishOn = day(finish);
    }

    [[nodiscard]] LeadSize sizeOf(std::size_t item) const {
        const auto sizes = leadSizesOf(job_.rows, std::vector<bool>(job_.rows.items.size(), true));
        return sizes.at(item).value();
    }

    [[nodiscard]] std::string notice() const {
        return asbestosNotice(job_.rows, std::vector<bool>(job_.rows.items.size(), true)).text();
    }
};

// 40 CFR 745.83, "Minor repair and maintenance activities": 6 square feet or less of painted
// surface per room for interior activities.
TEST_F(CautionSizes, SixSquareFeetInsideAreStillMinor) {
    work(1, "plaster", "6");
    work(2, "plaster", "6.01");
    EXPECT_TRUE(sizeOf(0).isMinor) << sizeOf(0).why.text();
    EXPECT_FALSE(sizeOf(1).isMinor);
    EXPECT_THAT(sizeOf(1).why.text(), HasSubstr("6.01 sq ft, more than the 6 sq ft a room"));
}

// The same: 20 square feet or less for exterior activities.
TEST_F(CautionSizes, TwentySquareFeetOutsideAreStillMinor) {
    work(3, "siding", "20");
    EXPECT_TRUE(sizeOf(0).isMinor) << sizeOf(0).why.text();
    job_.rows.items[0].quantity = amountOf("20.01");
    EXPECT_FALSE(sizeOf(0).isMinor);
    EXPECT_THAT(sizeOf(0).why.text(), HasSubstr("more than the 20 sq ft outside"));
}

// A square inch is a 144th of a square foot (by hand), so 6 sq ft are 864 sq in. EPA's answers: a
// strip of 1 inch off a door 36 inches wide is 36 sq in of painted surface.
TEST_F(CautionSizes, UnitsAreTurnedIntoSquareFeet) {
    work(1, "door", "36", "sq in");
    EXPECT_TRUE(sizeOf(0).isMinor) << sizeOf(0).why.text();
    EXPECT_THAT(sizeOf(0).why.text(), HasSubstr("0.25 sq ft"));
    job_.rows.items[0].quantity = amountOf("864");
    EXPECT_TRUE(sizeOf(0).isMinor) << sizeOf(0).why.text();
    job_.rows.items[0].quantity = amountOf("864.001");
    EXPECT_FALSE(sizeOf(0).isMinor);
    job_.rows.items[0].unit = "sq. yd.";
    job_.rows.items[0].quantity = amountOf("0.666");  // 5.994 sq ft
    EXPECT_TRUE(sizeOf(0).isMinor) << sizeOf(0).why.text();
    job_.rows.items[0].quantity = amountOf("0.667");  // 6.003 sq ft
    EXPECT_FALSE(sizeOf(0).isMinor);
}

// 40 CFR 745.83, the same: "the entire surface area removed is the amount of painted surface
// disturbed": what is replaced counts with all of its quantity.
TEST_F(CautionSizes, ARemovedPartCountsWhole) {
    work(1, "trim", "6", "sq ft", Treatment::Replace);
    EXPECT_TRUE(sizeOf(0).isMinor) << sizeOf(0).why.text();
    job_.rows.items[0].quantity = amountOf("6.5");
    EXPECT_FALSE(sizeOf(0).isMinor);
}

// The same: work in the same room within the same 30 days is one job. 3 + 3 = 6 is minor, 3 + 3.01
// is not; the thirtieth day from 1 April is 30 April, so work on 1 May is another job.
TEST_F(CautionSizes, WorkInOneRoomWithinThirtyDaysAddsUp) {
    dated(work(1, "plaster", "3"), "2026-04-01", "2026-04-01");
    dated(work(1, "trim", "3"), "2026-04-30", "2026-04-30");
    EXPECT_TRUE(sizeOf(0).isMinor) << sizeOf(0).why.text();
    job_.rows.items[1].quantity = amountOf("3.01");
    EXPECT_FALSE(sizeOf(0).isMinor);
    EXPECT_FALSE(sizeOf(1).isMinor);
    EXPECT_THAT(sizeOf(0).why.text(), HasSubstr("within 30 days 6.01"));
    dated(job_.rows.items[1], "2026-05-01", "2026-05-01");
    EXPECT_TRUE(sizeOf(0).isMinor) << sizeOf(0).why.text();
    EXPECT_TRUE(sizeOf(1).isMinor) << sizeOf(1).why.text();
    // The hall is another room.
    dated(job_.rows.items[1], "2026-04-02", "2026-04-02");
    job_.rows.items[1].space = id<Kind::Space>(2);
    EXPECT_TRUE(sizeOf(0).isMinor) << sizeOf(0).why.text();
}

// Three pieces of 2.5 over 58 days: any 30 days hold two of them at most, 5 sq ft; moved within 30
// days they hold all three, 7.5.
TEST_F(CautionSizes, AnyThirtyDaysAreLookedAt) {
    dated(work(1, "plaster", "2.5"), "2026-04-01", "2026-04-02");
    dated(work(1, "trim", "2.5"), "2026-04-20", "2026-04-21");
    dated(work(1, "door", "2.5"), "2026-05-18", "2026-05-19");
    EXPECT_TRUE(sizeOf(0).isMinor) << sizeOf(0).why.text();
    EXPECT_TRUE(sizeOf(1).isMinor) << sizeOf(1).why.text();
    EXPECT_TRUE(sizeOf(2).isMinor) << sizeOf(2).why.text();
    dated(job_.rows.items[2], "2026-05-01", "2026-05-02");  // 2 April to 1 May are 30 days
    EXPECT_FALSE(sizeOf(0).isMinor);
    EXPECT_FALSE(sizeOf(1).isMinor);
    EXPECT_FALSE(sizeOf(2).isMinor);
    EXPECT_THAT(sizeOf(2).why.text(), HasSubstr("7.5"));
}

// Project decision: what has no dates counts with every day.
TEST_F(CautionSizes, UndatedWorkCountsWithAllOfItsRoom) {
    dated(work(1, "plaster", "4"), "2026-04-01", "2026-04-01");
    work(1, "trim", "4");
    EXPECT_FALSE(sizeOf(0).isMinor);
    EXPECT_FALSE(sizeOf(1).isMinor);
}

// Project decision: outdoors is one place.
TEST_F(CautionSizes, OutdoorSpacesAreOnePlace) {
    work(3, "siding", "12");
    work(4, "porch floor", "12");
    EXPECT_FALSE(sizeOf(0).isMinor);
    EXPECT_THAT(sizeOf(0).why.text(), HasSubstr("24"));
}

// 40 CFR 745.83, the same: not where "the work involves window replacement or demolition of
// painted surface areas"; and then nothing else of that job is minor.
TEST_F(CautionSizes, WindowsAndTearingOutAreNeverMinor) {
    work(1, "window", "2", "sq ft", Treatment::Replace);
    work(2, "plaster wall", "2", "sq ft", Treatment::Remove);
    work(1, "trim", "1");
    EXPECT_THAT(sizeOf(0).why.text(), HasSubstr("replacing windows is never minor"));
    EXPECT_THAT(sizeOf(1).why.text(), HasSubstr("tearing out painted surfaces is never minor"));
    EXPECT_FALSE(sizeOf(0).isMinor);
    EXPECT_FALSE(sizeOf(1).isMinor);
    EXPECT_FALSE(sizeOf(2).isMinor);
    EXPECT_THAT(sizeOf(2).why.text(), HasSubstr("isn't minor"));
    // Storm windows stand outside the painted sash, and repairing a window does not replace it.
    job_.rows.items[0].treatment = Treatment::Repair;
    EXPECT_TRUE(sizeOf(0).isMinor) << sizeOf(0).why.text();
    EXPECT_TRUE(sizeOf(2).isMinor) << sizeOf(2).why.text();
}

// Project decision: without an area nothing is minor.
TEST_F(CautionSizes, WithoutAnAreaNothingIsMinor) {
    work(1, "door", "");
    work(2, "door", "2", "each");
    EXPECT_FALSE(sizeOf(0).isMinor);
    EXPECT_FALSE(sizeOf(1).isMinor);
    EXPECT_THAT(sizeOf(1).why.text(), HasSubstr("isn't entered as an area"));
}

TEST_F(CautionSizes, WhatIsntAskedAboutIsLeftOut) {
    work(1, "plaster", "4");
    work(1, "trim", "4");
    const auto sizes = leadSizesOf(job_.rows, {true, false});
    EXPECT_TRUE(sizes[0]->isMinor) << sizes[0]->why.text();
    EXPECT_FALSE(sizes[1].has_value());
}

// 40 CFR 61.145(a)(1) and (a)(4): at least 260 linear feet on pipes, at least 160 square feet on
// other components, at least 35 cubic feet.
TEST_F(CautionSizes, AsbestosCallsForNoticeFromItsLimitsOn) {
    work(1, "pipe insulation", "259.999", "lin ft");
    EXPECT_EQ(notice(), "");
    job_.rows.items[0].quantity = amountOf("260");
    EXPECT_THAT(notice(), HasSubstr("260 lin ft of pipe"));
    job_.rows.items.clear();
    work(1, "ceiling", "100");
    work(2, "vinyl floor", "59.999");
    EXPECT_EQ(notice(), "");
    job_.rows.items[1].quantity = amountOf("60");  // 100 + 60
    EXPECT_THAT(notice(), HasSubstr("160 sq ft"));
    job_.rows.items.clear();
    work(1, "debris", "34.999", "cu ft");
    EXPECT_EQ(notice(), "");
    job_.rows.items[0].quantity = amountOf("35");
    EXPECT_THAT(notice(), HasSubstr("35 cu ft"));
    job_.rows.items[0].quantity = amountOf("1.296");  // 1.296 x 27 = 34.992
    job_.rows.items[0].unit = "cu yd";
    EXPECT_EQ(notice(), "");
    job_.rows.items[0].quantity = amountOf("1.297");  // 35.019
    EXPECT_THAT(notice(), HasSubstr("35.019 cu ft"));
}

// Baseboard is measured in feet too, and is no pipe.
TEST_F(CautionSizes, FeetOfWhatIsNoPipeAreNotCounted) {
    work(1, "baseboard", "900", "lin ft");
    EXPECT_EQ(notice(), "");
}

}  // namespace
}  // namespace ledgerboard::compute
