// Protects: what finished work teaches the price book and the crews, and that unfinished or half
// billed work teaches nothing. How: one or two small houses with bills worked by hand per unit.
#include "core/compute/taught.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/compute/as_of.h"

#include "tests/unit/compute/sample_job.h"

namespace ledgerboard::compute {
namespace {

using model::Kind;
using model::SpendKind;
using testing::IsEmpty;
using tests::amountOf;
using tests::day;
using tests::id;
using tests::money;
using tests::percent;
using tests::SampleJob;

const model::Date kToday = day("2026-05-29");

class TaughtTest : public testing::Test {
  protected:
    SampleJob first_;
    SampleJob second_;

    // The book: tile floor, replace, at 4 material with 25 % waste and 5 labour a sq ft: 10 all in.
    void SetUp() override {
        for (SampleJob* job : {&first_, &second_}) {
            model::Price& price = job->add(job->rows.prices);
            price.object = "tile floor";
            price.treatment = model::Treatment::Repair;
            price.unit = "sq ft";
            price.material = money("4");
            price.labour = money("5");
            price.waste = percent("25");
            price.low = money("9");
            price.high = money("12");
        }
    }

    static model::Item& floor(SampleJob& job, const char* quantity) {
        model::Item& item = job.add(job.rows.items);
        item.object = "tile floor";
        item.treatment = model::Treatment::Repair;
        item.unit = "sq ft";
        item.quantity = amountOf(quantity);
        return item;
    }

    [[nodiscard]] static Taught taughtOf(std::initializer_list<const SampleJob*> jobs) {
        std::vector<model::JobRows> rows;
        std::vector<JobFigures> figures;
        for (const SampleJob* job : jobs) {
            rows.push_back(asOf(job->rows, kToday));
            figures.push_back(figuresOf(rows.back(), kToday));
        }
        std::vector<TaughtHouse> houses;
        for (std::size_t k = 0; k < rows.size(); ++k) {
            houses.push_back({&rows[k], &figures[k]});
        }
        return taughtBy(houses);
    }
};

TEST_F(TaughtTest, NothingBeforeSomethingIsFinished) {
    EXPECT_TRUE(taughtBy({}).isNothing());
    floor(first_, "100");
    first_.mark(1, "2026-05-01", "90");
    first_.spend(SpendKind::Receipt, "2026-05-02", "900", 1);
    const Taught taught = taughtOf({&first_});
    EXPECT_TRUE(taught.isNothing());
    EXPECT_EQ(taught.items, 1U);
    EXPECT_THAT(taught.prices, IsEmpty());
}

// One house, 100 sq ft for 1,200: 12.00 a sq ft where the book makes 10. Both parts times 1.2:
// material 4.80, labour 6.00; with 25 % waste on it again 12. High stays 12, low stays 9.
TEST_F(TaughtTest, OneItemOfOneHouse) {
    floor(first_, "100");
    first_.mark(1, "2026-05-01", "100");
    first_.spend(SpendKind::Receipt, "2026-05-02", "1200", 1);
    const Taught taught = taughtOf({&first_});
    ASSERT_EQ(taught.prices.size(), 1U);
    const TaughtPrice& price = taught.prices[0];
    EXPECT_EQ(price.items, 1U);
    EXPECT_EQ(price.houses, 1U);
    EXPECT_EQ(price.sharedBills, 0U);
    EXPECT_EQ(price.bookPerUnit, money("10"));
    EXPECT_EQ(price.billedPerUnit, money("12"));
    EXPECT_EQ(price.proposed.material, money("4.80"));
    EXPECT_EQ(price.proposed.labour, money("6.00"));
    EXPECT_EQ(price.proposed.low, money("9"));
    EXPECT_EQ(price.proposed.high, money("12"));
    EXPECT_TRUE(price.isChanged);
}

// Two houses: 100 sq ft for 1,200 and 300 sq ft for 2,400. Weighed by quantity 3,600 / 400 = 9.00,
// not the mean of 12 and 8. Both parts times 0.9: 3.60 and 4.50. Low is widened to 8.
TEST_F(TaughtTest, TwoHousesAreWeighedByQuantity) {
    floor(first_, "100");
    first_.mark(1, "2026-05-01", "100");
    first_.spend(SpendKind::Receipt, "2026-05-02", "1200", 1);
    floor(second_, "300");
    second_.mark(1, "2026-05-01", "100");
    second_.spend(SpendKind::Receipt, "2026-05-02", "2400", 1);
    const Taught taught = taughtOf({&first_, &second_});
    ASSERT_EQ(taught.prices.size(), 1U);
    const TaughtPrice& price = taught.prices[0];
    EXPECT_EQ(price.houses, 2U);
    EXPECT_EQ(price.items, 2U);
    EXPECT_EQ(price.billedPerUnit, money("9"));
    EXPECT_EQ(price.leastPerUnit, money("8"));
    EXPECT_EQ(price.mostPerUnit, money("12"));
    EXPECT_EQ(price.proposed.material, money("3.60"));
    EXPECT_EQ(price.proposed.labour, money("4.50"));
    EXPECT_EQ(price.proposed.low, money("8"));
    EXPECT_EQ(price.proposed.high, money("12"));
}

TEST_F(TaughtTest, ABookThatIsRightStaysAsItIs) {
    floor(first_, "100");
    first_.mark(1, "2026-05-01", "100");
    first_.spend(SpendKind::Receipt, "2026-05-02", "1000", 1);
    EXPECT_FALSE(taughtOf({&first_}).prices.at(0).isChanged);
}

TEST_F(TaughtTest, WhatIsLeftOutIsCounted) {
    floor(first_, "100");  // finished and never billed
    first_.mark(1, "2026-05-01", "100");
    floor(first_, "50").estimateToFinish = money("200");  // the owner expects another bill
    first_.mark(2, "2026-05-01", "100");
    first_.spend(SpendKind::Receipt, "2026-05-02", "300", 2);
    first_.item("mirror", "70");  // no quantity, and no price by each
    first_.mark(3, "2026-05-01", "100");
    first_.spend(SpendKind::Receipt, "2026-05-02", "70", 3);
    const Taught taught = taughtOf({&first_});
    EXPECT_EQ(taught.finished, 3U);
    EXPECT_EQ(taught.notBilled, 1U);
    EXPECT_EQ(taught.notAllBilled, 1U);
    EXPECT_EQ(taught.withoutQuantity, 1U);
    EXPECT_THAT(taught.prices, IsEmpty());
}

TEST_F(TaughtTest, ALumpSumCountsAsOneWhereTheBookPricesByEach) {
    model::Price& toilet = first_.add(first_.rows.prices);
    toilet.object = "toilet";
    toilet.treatment = model::Treatment::Repair;
    toilet.unit = "each";
    toilet.material = money("220");
    toilet.labour = money("180");
    first_.item("toilet", "410");
    first_.mark(1, "2026-05-01", "100");
    first_.spend(SpendKind::Receipt, "2026-05-02", "440", 1);
    const Taught taught = taughtOf({&first_});
    ASSERT_EQ(taught.prices.size(), 1U);
    // 440 for one where the book makes 400: times 1.1.
    EXPECT_EQ(taught.prices[0].proposed.material, money("242"));
    EXPECT_EQ(taught.prices[0].proposed.labour, money("198"));
    EXPECT_FALSE(taught.prices[0].proposed.low.has_value());
}

TEST_F(TaughtTest, WorkThatTheBookDoesNotHaveIsNamed) {
    model::Item& item = floor(first_, "8");
    item.object = "stone floor";
    item.lumpSum = money("100");
    first_.mark(1, "2026-05-01", "100");
    first_.spend(SpendKind::Receipt, "2026-05-02", "100", 1);
    const Taught taught = taughtOf({&first_});
    ASSERT_EQ(taught.notInBook.size(), 1U);
    EXPECT_EQ(taught.notInBook[0].object, "stone floor");
    EXPECT_EQ(taught.notInBook[0].billedPerUnit, money("12.50"));  // 100 / 8
}

// A bill of 1,500 on a contract over two items of one size: 750 each by budget, and said so.
TEST_F(TaughtTest, ABillOfAContractIsASharedOne) {
    first_.contract("Tile", "1500", "2026-04-01");
    for (int k = 0; k < 2; ++k) {
        floor(first_, "75").contract = id<Kind::Contract>(1);
        first_.mark(static_cast<std::uint32_t>(k) + 1, "2026-05-01", "100");
    }
    first_.spend(SpendKind::Invoice, "2026-05-02", "1500").contract = id<Kind::Contract>(1);
    const Taught taught = taughtOf({&first_});
    ASSERT_EQ(taught.prices.size(), 1U);
    EXPECT_EQ(taught.prices[0].items, 2U);
    EXPECT_EQ(taught.prices[0].sharedBills, 2U);
    EXPECT_EQ(taught.prices[0].billedPerUnit, money("10"));
}

// Begun Mon 4 May (the first mark above 0), finished Thu 7 May: four working days over two likely,
// so 2.00. Billed 1,200 over a budget of 1,000.
TEST_F(TaughtTest, OfTheCrews) {
    model::Crew& crew = first_.add(first_.rows.crews);
    crew.name = "Tile crew";
    model::Item& item = floor(first_, "100");
    item.crew = crew.id;
    item.daysLikely = amountOf("2");
    first_.mark(1, "2026-05-01", "0");
    first_.mark(1, "2026-05-04", "40");
    first_.mark(1, "2026-05-07", "100");
    first_.mark(1, "2026-05-12", "100");  // looked at again
    first_.spend(SpendKind::Receipt, "2026-05-08", "1200", 1);
    const Taught taught = taughtOf({&first_});
    ASSERT_EQ(taught.crews.size(), 1U);
    EXPECT_EQ(taught.crews[0].name, "Tile crew");
    EXPECT_EQ(taught.crews[0].over, 1U);
    EXPECT_EQ(taught.crews[0].budget, money("1000"));
    EXPECT_EQ(taught.crews[0].billed, money("1200"));
    EXPECT_EQ(taught.crews[0].paceHundredths(), std::optional<std::int64_t>(200));
    EXPECT_EQ(TaughtCrew{}.paceHundredths(), std::nullopt);
}

}  // namespace
}  // namespace ledgerboard::compute
