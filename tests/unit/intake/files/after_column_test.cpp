// Protects the scope's column After: how a cell is read and printed, that it becomes links once and
// only once, that a changed cell changes the link, and that a wrong one is refused by row and
// column with the book as it was.
#include "core/intake/files/after_column.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unordered_map>

#include "tests/unit/intake/files/bring_house.h"

namespace {

using namespace ledgerboard;
using intake::AfterEntry;
using intake::parseAfter;
using intake::printAfter;
using model::LinkKind;

AfterEntry one(std::string_view text) {
    const auto entries = parseAfter(text);
    EXPECT_TRUE(entries.ok()) << text;
    EXPECT_EQ(entries.value().size(), 1U) << text;
    return entries.value().at(0);
}

TEST(AfterColumn, ReadsNamesKindsAndLags) {
    EXPECT_EQ(one("Kitchen/cabinets").item, "Kitchen/cabinets");
    EXPECT_EQ(one("Kitchen/cabinets").kind, LinkKind::FinishToStart);
    EXPECT_EQ(one("Hall bath/tile SS+2").item, "Hall bath/tile");
    EXPECT_EQ(one("Hall bath/tile SS+2").kind, LinkKind::StartToStart);
    EXPECT_EQ(one("Hall bath/tile SS+2").lag, 2000);
    EXPECT_EQ(one("Hall bath/tile ff -1.5").lag, -1500);
    EXPECT_EQ(one("Hall bath/tile ff -1.5").kind, LinkKind::FinishToFinish);
    EXPECT_EQ(one("Hall bath/tile SF").kind, LinkKind::StartToFinish);
    EXPECT_EQ(one("Hall bath/tile +3").lag, 3000);
    EXPECT_EQ(one("Bedroom-2/floor").item, "Bedroom-2/floor");
    EXPECT_EQ(one("Hall/bed-2").item, "Hall/bed-2");
    EXPECT_EQ(parseAfter("a; ; b SS;").value().size(), 2U);
    EXPECT_TRUE(parseAfter(" ; ").value().empty());
}

TEST(AfterColumn, RefusesWhatNamesNoItemAndLagsBeyondReason) {
    EXPECT_FALSE(parseAfter("SS+2").ok());
    EXPECT_FALSE(parseAfter("Kitchen/cabinets +4000").ok());
    EXPECT_FALSE(parseAfter("Kitchen/cabinets +1.23456").ok());
}

TEST(AfterColumn, PrintsAsItReads) {
    for (const auto* text : {"Kitchen/cabinets", "Hall bath/tile SS+2", "Hall bath/tile FF-1.5",
                             "Hall bath/tile FS+1", "Hall bath/tile SF"}) {
        EXPECT_EQ(printAfter(one(text)), text);
    }
}

}  // namespace

namespace ledgerboard::intake {
namespace {

using testing::HasSubstr;

// Bath: tub, tile and fan, each after what the cell says.
constexpr const char* kLinked =
    "Space,Treatment,Object,After\n"
    "Bath,replace,tile,Bath/tub\n"
    "Bath,add,fan,Bath/tile SS+2; Kitchen/cabinets\n";

class AfterTest : public BringHouse {
  protected:
    // "tub>tile FS 0": in the order of making.
    std::string links() {
        std::unordered_map<model::RawId, std::string, model::RawIdHash> names;
        for (const auto& item : rows<model::Item>()) {
            names.emplace(item.id.raw(), item.object);
        }
        std::string text;
        for (const auto& link : rows<model::Link>()) {
            text += (text.empty() ? "" : ", ") + names[link.fromItem.raw()] + ">" +
                    names[link.toItem.raw()] + " " + std::string(model::wordOf(link.type)) + " " +
                    link.lag.value_or(model::Quantity{}).toString();
        }
        return text;
    }

    std::string refusal(const std::string& text) {
        const std::size_t before = entryCount();
        const auto done = bringText("scope", text);
        EXPECT_FALSE(done.ok()) << text;
        EXPECT_EQ(entryCount(), before);
        return done.ok() ? "" : done.error().message;
    }
};

TEST_F(AfterTest, BecomesLinksOnceAndOnlyOnce) {
    buildHouse();
    const auto report = bringGood("scope", kLinked);
    EXPECT_EQ(report.changed, 2U);
    EXPECT_EQ(report.lines[0].detail, "after Bath/tub");
    EXPECT_EQ(links(),
              "tub>tile finish to start 0, tile>fan start to start 2, "
              "cabinets>fan finish to start 0");
    const std::string before = dump();
    EXPECT_EQ(bringGood("scope", kLinked).unchanged, 2U);
    EXPECT_EQ(dump(), before);
}

TEST_F(AfterTest, MayNameItemsThatTheSameFileMakes) {
    bringGood("scope",
              "Space,Treatment,Object,After\n"
              "Hall,replace,trim,Hall/floor\n"
              "Hall,refinish,floor,\n");
    EXPECT_EQ(links(), "floor>trim finish to start 0");
}

TEST_F(AfterTest, AChangedCellChangesTheLinkAndAnEmptyOneLeavesIt) {
    buildHouse();
    bringGood("scope", kLinked);
    bringGood("scope",
              "Space,Treatment,Object,After\nBath,replace,tile,Bath/tub FS+1\n"
              "Bath,add,fan,\n");
    EXPECT_EQ(links(),
              "tub>tile finish to start 1, tile>fan start to start 2, "
              "cabinets>fan finish to start 0");
    bringGood("scope", "Space,Treatment,Object,After\nBath,replace,tile,Bath/tub SS\n");
    EXPECT_EQ(links().substr(0, 25), "tub>tile start to start 0");
}

TEST_F(AfterTest, ALinkTheOwnerDroppedStaysDropped) {
    buildHouse();
    bringGood("scope", kLinked);
    store::Action drop("drop");
    drop.set(rows<model::Link>()[0].id.raw(), model::goneCode(model::Kind::Link),
             model::Value{std::int64_t{1}});
    commit(drop);
    EXPECT_EQ(bringGood("scope", kLinked).unchanged, 2U);
    EXPECT_EQ(rows<model::Link>().size(), 2U);
}

TEST_F(AfterTest, AWrongCellIsNamedByRowAndColumnAndBringsNothing) {
    buildHouse();
    const std::string head = "Space,Treatment,Object,After\nBath,replace,tub,\n";
    EXPECT_THAT(refusal(head + "Bath,replace,tile,Bath/bathtub\n"),
                HasSubstr("rows.csv:3: column \"After\""));
    EXPECT_THAT(refusal(head + "Bath,replace,tile,Bath/tile SS+1\n"),
                HasSubstr("does not wait for itself"));
    EXPECT_THAT(refusal(head + "Bath,replace,tile,SS+1\n"), HasSubstr("names no item"));
    EXPECT_THAT(refusal(head + "Bath,replace,tile,Bath/tub; Bath/tub +2\n"), HasSubstr("twice"));
    EXPECT_EQ(rows<model::Link>().size(), 0U);
}

TEST_F(AfterTest, ALoopIsRefusedByNames) {
    buildHouse();
    const std::string text = refusal(
        "Space,Treatment,Object,After\nBath,replace,tub,Bath/fan\n"
        "Bath,replace,tile,Bath/tub\nBath,add,fan,Bath/tile\n");
    EXPECT_THAT(text, HasSubstr("wait for each other in a loop"));
    EXPECT_THAT(text, HasSubstr("Bath/fan > Bath/tub > Bath/tile > Bath/fan"));
}

}  // namespace
}  // namespace ledgerboard::intake
