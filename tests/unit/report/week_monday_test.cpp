// Protects what the owner is told to do: the pressing before the rest, sentences that name the
// thing and the sum, no list too long to read, and hazards before they are touched.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/report/week_page.h"

#include "tests/unit/report/jobs.h"

namespace ledgerboard::report {

namespace {

using model::Money;
using test::may;

std::vector<std::string> saidOn(const WeekPage& page) {
    std::vector<std::string> said;
    for (const auto& todo : page.monday) {
        said.push_back(todo.what);
    }
    return said;
}

TEST(Monday, NamesTheThingAndTheSum) {
    const WeekPage page = weekPage(test::smallJob(), may(15));
    // Work on the tile went on since the change was asked for: pressing. The cabinets are 300 over
    // 4,000, 7.5 %: to be watched from 5 %, to be acted on from 10 % or 750.
    EXPECT_THAT(saidOn(page), ::testing::ElementsAre(
                                  "Sign or refuse shower niche: +250",
                                  "Look into Kitchen/cabinets: 300 over budget",
                                  "The whole job is 100 over its first budget, changes included"));
    EXPECT_TRUE(page.monday[0].isPressing);
    EXPECT_FALSE(page.monday[0].isBarred);
    EXPECT_EQ(page.monday[0].because,
              "work begun on a change that is not signed; asked 3 days ago");
    EXPECT_EQ(page.monday[0].page, "Contracts and orders");
    EXPECT_FALSE(page.monday[1].isPressing);
}

TEST(Monday, BarsPaymentToACrewWhoseInsuranceLapsed) {
    auto rows = test::smallJob();
    model::Crew crew;
    crew.id = decltype(crew.id)(rows.job.id.raw());
    crew.name = "Tile crew";
    crew.insuredUntil = may(11);
    rows.crews = {crew};
    rows.items[1].crew = crew.id;
    const WeekPage page = weekPage(rows, may(15));
    const auto barred = std::find_if(page.monday.begin(), page.monday.end(),
                                     [](const ToDo& t) { return t.isBarred; });
    ASSERT_NE(barred, page.monday.end());
    EXPECT_EQ(barred->what, "Pay Tile crew nothing until its insurance is renewed");
    EXPECT_EQ(barred->because, "insurance has lapsed and work is left, 4 days ago");
}

TEST(Monday, StaysShortWhateverTheJob) {
    auto rows = test::smallJob();
    for (int k = 0; k < 9; ++k) {
        auto change = rows.changes[0];
        auto bytes = change.id.raw().bytes();
        bytes[8] = static_cast<std::uint8_t>(k + 1);
        change.id = decltype(change.id)(model::RawId(bytes));
        rows.changes.push_back(change);
    }
    const WeekPage page = weekPage(rows, may(15));
    // Ten alike: three by name, seven as one line.
    EXPECT_EQ(page.monday.size(), 3U + 1U + 2U);
    EXPECT_EQ(page.monday[3].what, "And 7 more of the same: unsigned change");
}

TEST(Monday, NamesHazardsOfWorkThatIsNear) {
    auto rows = test::smallJob();
    model::Caution near;
    near.about = "old sheet floor may hold asbestos";
    near.why = "house built before 1980";
    near.item = rows.items[1].id;  // begun
    model::Caution far = near;
    far.item = rows.items[2].id;  // no dates, not begun
    model::Caution past = near;
    past.item = rows.items[0].id;  // done
    model::Caution settled = near;
    settled.about = "sharp edges";
    settled.acknowledgedOn = may(12);
    for (const auto& caution : {near, far, past, settled}) {
        rows.cautions.push_back(caution);
    }
    const WeekPage page = weekPage(rows, may(15));
    ASSERT_GE(page.monday.size(), 2U);
    EXPECT_EQ(page.monday[0].what,
              "Before it is touched: hall bath/tile, old sheet floor may hold asbestos");
    EXPECT_EQ(page.monday[0].because,
              "house built before 1980; local codes and licensed practice decide");
    EXPECT_TRUE(page.monday[0].isBarred);
    // The fan is not near; the cabinets are done, so their hazard is past.
    EXPECT_EQ(page.monday[1].what, "1 hazard of later work is not acknowledged yet");
}

}  // namespace

}  // namespace ledgerboard::report
