// Protects the walk with typed notes: the items they would become are shown, one can be dropped,
// and the others stand in the space afterwards.
#include "tests/ui/phone_test.h"

namespace ledgerboard::ui {
namespace {

class DraftTest : public PhoneTest {};

TEST_P(DraftTest, NotesBecomeItemsOfThisSpace) {
    Thumb& thumb = hold();
    thumb.tap("chipAT");  // nothing is written down for the attic
    thumb.scrollTo("addItems");
    thumb.tap("addItems");
    thumb.type("walkNotes", "Add insulation, 800 square feet. Replace the window.");
    EXPECT_TRUE(thumb.wait([&] { return thumb.all("draftItem").size() == 2; }))
        << thumb.texts().join(" | ").toStdString();
    thumb.tapText("draftItem", "window");
    thumb.tap("keepTool");
    const auto rows = rowsOf(house_);
    std::vector<std::string> inAttic;
    for (const auto& item : rows.items) {
        if (item.space == rows.spaces.back().id) {
            inAttic.push_back(item.object);
        }
    }
    EXPECT_EQ(rows.spaces.size(), 4u);
    EXPECT_EQ(inAttic, std::vector<std::string>{"insulation"});
    EXPECT_TRUE(thumb.wait([&] { return thumb.says("insulation"); }));
}

TEST_P(DraftTest, WhatHoldsNoWorkSaysSo) {
    Thumb& thumb = hold();
    thumb.scrollTo("addItems");
    thumb.tap("addItems");
    thumb.type("walkNotes", "nice morning");
    EXPECT_TRUE(thumb.wait([&] { return thumb.says("No work was read from that"); }));
}

INSTANTIATE_TEST_SUITE_P(Sizes, DraftTest, everySize());

}  // namespace
}  // namespace ledgerboard::ui
