// Protects what a line costs and whether it counts. Expected sums are worked out by hand beside
// each check.
#include "core/compute/pricing.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

TEST(LineCost, AddsLabourAndWastedMaterial) {
    // 78 sq ft x 21.00 = 1,638.00; 78 x 1.12 x 7.20 = 628.992; together 2,266.992.
    EXPECT_EQ(lineCost(amountOf("78"), money("21.00"), money("7.20"), percent("12"), std::nullopt),
              money("2266.99"));
}

TEST(LineCost, RoundsOnceAtTheEnd) {
    // 0.333 x 0.05 = 0.01665 twice: each alone rounds to 0.02, together they are 0.0333.
    EXPECT_EQ(lineCost(amountOf("0.333"), money("0.05"), money("0.05"), Percent{}, std::nullopt),
              money("0.03"));
    // Half a cent goes away from zero: 0.5 x 0.01 = 0.005.
    EXPECT_EQ(lineCost(amountOf("0.5"), money("0.01"), Money{}, Percent{}, std::nullopt),
              money("0.01"));
}

TEST(LineCost, RoundsMaterialUpToWholePacks) {
    // 100 x 1.10 = 110 sq ft in packs of 18: 6.11, so 7 packs, 126 sq ft at 3.00 = 378.00; labour
    // is for the 100 laid: 200.00.
    EXPECT_EQ(
        lineCost(amountOf("100"), money("2.00"), money("3.00"), percent("10"), amountOf("18")),
        money("578.00"));
    EXPECT_EQ(materialQuantity(amountOf("100"), percent("10"), amountOf("18")), amountOf("126"));
    // Exactly five packs stay five; a hair more is six.
    EXPECT_EQ(materialQuantity(amountOf("90"), Percent{}, amountOf("18")), amountOf("90"));
    EXPECT_EQ(materialQuantity(amountOf("90.001"), Percent{}, amountOf("18")), amountOf("108"));
}

TEST(LineCost, APackOfNothingIsNoPack) {
    EXPECT_EQ(lineCost(amountOf("10"), Money{}, money("1.00"), Percent{}, Quantity{}),
              money("10.00"));
}

TEST(LineCost, RefusesToWrap) {
    EXPECT_THROW(
        (void)lineCost(Quantity::fromThousandths(1'000'000'000'000'000),
                       Money::fromMinor(1'000'000'000'000'000), Money{}, Percent{}, std::nullopt),
        OverflowError);
}

Price price(std::uint32_t number, std::string_view unit, std::string_view material,
            std::string_view labour) {
    Price row;
    row.id = id<Kind::Price>(number);
    row.object = "Tile floor";
    row.treatment = Treatment::Replace;
    row.unit = unit;
    row.material = money(material);
    row.labour = money(labour);
    return row;
}

Item tileFloor() {
    Item item;
    item.id = id<Kind::Item>(1);
    item.object = "tile  FLOOR";
    item.treatment = Treatment::Replace;
    item.quantity = amountOf("50");
    item.unit = "sqft";
    return item;
}

TEST(PriceOf, TakesTheLatestPriceOfTheUnit) {
    std::vector<Price> prices = {price(1, "sq ft", "6", "10"), price(2, "sq. ft.", "7", "11"),
                                 price(3, "each", "1", "1"), price(4, "sq ft", "5", "9")};
    prices[0].asOf = day("2026-01-01");
    prices[1].asOf = day("2026-03-01");
    prices[2].asOf = day("2026-05-01");
    prices[1].low = money("12");
    prices[1].high = money("25");
    prices[1].waste = percent("10");
    const Pricing priced = priceOf(tileFloor(), PriceBook(prices));
    EXPECT_EQ(priced.by, PricedBy::PriceBook);
    EXPECT_EQ(priced.price, id<Kind::Price>(2));
    // 50 x 11 + 50 x 1.10 x 7 = 550 + 385.
    EXPECT_EQ(priced.line, money("935"));
    EXPECT_EQ(priced.low, money("600"));
    EXPECT_EQ(priced.high, money("1250"));
}

TEST(PriceOf, OwnWasteStandsOverThePriceBooks) {
    std::vector<Price> prices = {price(1, "sq ft", "10", "0")};
    prices[0].waste = percent("10");
    Item item = tileFloor();
    item.waste = percent("20");
    EXPECT_EQ(priceOf(item, PriceBook(prices)).line, money("600"));  // 50 x 1.20 x 10
}

TEST(PriceOf, SaysWhyThereIsNoPrice) {
    const std::vector<Price> prices = {price(1, "each", "6", "10")};
    const PriceBook book(prices);
    EXPECT_EQ(priceOf(tileFloor(), book).whyNot, "the price book has it by each, not by sqft");
    Item other = tileFloor();
    other.object = "gutters";
    EXPECT_EQ(priceOf(other, book).whyNot, "the price book has no such object and treatment");
    Item none = tileFloor();
    none.quantity.reset();
    EXPECT_EQ(priceOf(none, book).whyNot, "it has no quantity");
    Item negative = tileFloor();
    negative.quantity = amountOf("-1");
    EXPECT_EQ(priceOf(negative, book).by, PricedBy::Nothing);
    EXPECT_EQ(priceOf(negative, book).line, Money{});
}

TEST(PriceOf, ALumpSumReplacesBoth) {
    Item item = tileFloor();
    item.unitCostLabour = money("3");
    item.lumpSum = money("1450");
    item.costLow = money("1250");
    const Pricing priced = priceOf(item, PriceBook({}));
    EXPECT_EQ(priced.by, PricedBy::LumpSum);
    EXPECT_EQ(priced.line, money("1450"));
    EXPECT_EQ(priced.low, money("1250"));
    EXPECT_FALSE(priced.high);
}

TEST(PriceOf, OwnUnitCostsKeepThePriceBookOut) {
    const std::vector<Price> prices = {price(1, "sq ft", "6", "10")};
    Item item = tileFloor();
    item.unitCostLabour = money("3");
    EXPECT_EQ(priceOf(item, PriceBook(prices)).line, money("150"));
}

TEST(PriceOf, AKeptItemCostsNothingAndAnInspectionNothingUntilPriced) {
    Item item = tileFloor();
    item.lumpSum = money("100");
    item.treatment = Treatment::Keep;
    EXPECT_EQ(priceOf(item, PriceBook({})).line, Money{});
    Item look;
    look.treatment = Treatment::Inspect;
    EXPECT_EQ(priceOf(look, PriceBook({})).line, Money{});
    look.lumpSum = money("240");
    EXPECT_EQ(priceOf(look, PriceBook({})).line, money("240"));
}

TEST(SameUnit, ForgivesSpacesDotsCaseAndAPlural) {
    EXPECT_TRUE(sameUnit("sq ft", "Sq. Ft."));
    EXPECT_TRUE(sameUnit("squares", "square"));
    EXPECT_FALSE(sameUnit("sq ft", "lin ft"));
    EXPECT_FALSE(sameUnit("", "each"));
}

TEST(Counting, TheChosenOptionElseTheCarriedOneCounts) {
    SampleJob job;
    Alternate& alternate = job.add(job.rows.alternates);
    for (int k = 0; k < 2; ++k) {
        job.add(job.rows.options).alternate = alternate.id;
    }
    job.item("oak floor", "900").option = id<Kind::Option>(1);
    job.item("tile floor", "700").option = id<Kind::Option>(2);
    job.item("mantel", "0").treatment = Treatment::Keep;
    const auto counting = [&] { return countingOf(job.rows); };
    using enum Counting;
    EXPECT_EQ(counting(), (std::vector{NotCarried, NotCarried, Kept}));
    alternate.carried = id<Kind::Option>(1);
    EXPECT_EQ(counting(), (std::vector{Counts, NotCarried, Kept}));
    alternate.chosen = id<Kind::Option>(2);
    EXPECT_EQ(counting(), (std::vector{NotCarried, Counts, Kept}));
}

}  // namespace
