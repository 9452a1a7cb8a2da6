// Protects the usual order of the trades: which step an item is part of, what it is linked after,
// that items with links are left alone, and that no loop comes of it.
#include "core/compute/usual_order.h"

#include <gtest/gtest.h>

#include "core/compute/links.h"

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");

std::string stepOf(std::string_view object, Treatment treatment = Treatment::Replace,
                   std::string_view trade = "") {
    Item item;
    item.object = object;
    item.treatment = treatment;
    item.trade = trade;
    const auto step = usualStepOf(item);
    return step ? std::string(usualSteps()[*step]) : "none";
}

TEST(UsualOrder, AnItemsStepIsToldByItsObjectThenItsTrade) {
    EXPECT_EQ(stepOf("Tile floor"), "tile and floors under cabinets");
    EXPECT_EQ(stepOf("tile backsplash"), "backsplash");
    EXPECT_EQ(stepOf("kitchen cabinets"), "cabinets");
    EXPECT_EQ(stepOf("cabinets", Treatment::Remove), "tear-out");
    EXPECT_EQ(stepOf("wood floor"), "wood floors");
    EXPECT_EQ(stepOf("something", Treatment::Repair, "plaster"), "drywall and plaster");
    EXPECT_EQ(stepOf("something"), "none");
    EXPECT_EQ(stepOf("final clean"), "final clean");
}

// Items of a kitchen (space 1), a bath (2), the whole house (3) and the yard (4).
struct House : SampleJob {
    House() {
        for (const auto* name : {"Kitchen", "Bath", "Whole house", "Outside"}) {
            add(rows.spaces).name = name;
        }
    }

    void put(std::uint32_t space, std::string_view object) {
        item(object, "100").space = id<Kind::Space>(space);
    }

    // "tile>cabinets ...": by objects.
    [[nodiscard]] std::string links() const {
        std::string text;
        for (const Link& link : usualLinks(rows, figuresOf(rows, kToday))) {
            text += (text.empty() ? "" : ", ") + name(link.fromItem) + ">" + name(link.toItem);
        }
        return text;
    }

    [[nodiscard]] std::string name(const Id<Kind::Item>& item) const {
        for (const Item& row : rows.items) {
            if (row.id == item) {
                return row.object;
            }
        }
        return "?";
    }
};

TEST(UsualOrder, EachItemWaitsForTheNearestStepOfItsSpaceOrTheHouse) {
    House house;
    house.put(1, "countertop");
    house.put(1, "cabinets");
    house.put(1, "tile floor");
    house.put(2, "vanity");
    house.put(3, "wiring");
    EXPECT_EQ(house.links(),
              "cabinets>countertop, tile floor>cabinets, wiring>tile floor, wiring>vanity");
}

TEST(UsualOrder, TheFinalCleanWaitsForAllThatNothingElseWaitsFor) {
    House house;
    house.put(3, "final clean");
    house.put(1, "cabinets");
    house.put(1, "countertop");
    house.put(4, "gutters");
    EXPECT_EQ(house.links(), "cabinets>countertop, countertop>final clean, gutters>final clean");
}

TEST(UsualOrder, ItemsThatHaveLinksOrAreFinishedAreLeftAlone) {
    House house;
    house.put(1, "cabinets");
    house.put(1, "countertop");
    house.put(1, "tile floor");
    Link& link = house.add(house.rows.links);
    link.fromItem = id<Kind::Item>(2);
    link.toItem = id<Kind::Item>(1);
    house.mark(3, "2026-05-20", "100");
    EXPECT_EQ(house.links(), "");
}

TEST(UsualOrder, MakesNoLoopAmongLinksTheOwnerTurnedRound) {
    House house;
    for (const auto* object : {"wiring", "tile floor", "cabinets", "countertop", "vanity"}) {
        house.put(1, object);
    }
    house.put(3, "final clean");
    Link& turned = house.add(house.rows.links);
    turned.fromItem = id<Kind::Item>(3);
    turned.toItem = id<Kind::Item>(2);
    auto all = usualLinks(house.rows, figuresOf(house.rows, kToday));
    EXPECT_FALSE(all.empty());
    all.push_back(turned);
    EXPECT_TRUE(ringOf(all).empty());
}

}  // namespace
