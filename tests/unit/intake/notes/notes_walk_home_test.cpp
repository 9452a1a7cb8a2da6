// Protects: a thing is listed where it is, though it is spoken of elsewhere: what hangs on the
// walls of the house, what stands about the grounds, the furnace of the basement, the wires of
// another room. How: short invented notes with the items a reader would list.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::IsSupersetOf;

TEST(NotesWalkHome, TheWallsOfTheHouseAreOutside) {
    EXPECT_THAT(itemsOf("Front porch. Paint the porch floor. The gutters are full, clean them. "
                        "Replace the siding."),
                IsSupersetOf({"front porch: refinish porch floor", "outside: clean gutters",
                              "outside: replace siding"}));
    EXPECT_THAT(itemsOf("Dock. Replace the deck boards. The roof is good."),
                Contains("outside: keep roof"));
    EXPECT_THAT(itemsOf("Basement. Replace the sump pump. Repoint the chimney."),
                Contains("outside: repair chimney"));
}

TEST(NotesWalkHome, WhatStandsAboutTheGarden) {
    EXPECT_THAT(itemsOf("Back garden. Cut back the shrubs. Patio, half of the slabs rock, re-lay "
                        "it. Replace the fence."),
                IsSupersetOf({"back garden: repair patio", "back garden: replace fence"}));
}

TEST(NotesWalkHome, ARailOfNoStorey) {
    EXPECT_THAT(itemsOf("Upstairs. There's no handrail, put one in. Hall bath. New toilet."),
                IsSupersetOf({"stairs: add railing", "hall bath: replace toilet"}));
}

TEST(NotesWalkHome, APantryThatIsACupboard) {
    EXPECT_THAT(itemsOf("Kitchen. New sink. The pantry's good."), Contains("kitchen: keep pantry"));
}

TEST(NotesWalkHome, AFurnaceIsInNoBath) {
    EXPECT_THAT(itemsOf("Basement. Paint the walls. Half bath's down here, the toilet's fine. The "
                        "furnace is dead, new furnace. Replace the drop ceiling."),
                IsSupersetOf({"half bath: keep toilet", "basement: replace furnace",
                              "basement: replace drop ceiling"}));
    EXPECT_THAT(itemsOf("Hall bath. New tub. The furnace is dead, replace it. New toilet."),
                IsSupersetOf({"whole house: replace furnace", "hall bath: replace toilet"}));
    EXPECT_THAT(itemsOf("Attic. Add insulation. New panel, it's fuses."),
                Contains("whole house: replace electrical panel"));
}

TEST(NotesWalkHome, TheWiresOfAnotherRoom) {
    EXPECT_THAT(itemsOf("Basement. The panel's good. The kitchen and the bath get new wire. The "
                        "water heater leaks, replace it."),
                Contains("basement: replace water heater"));
}

TEST(NotesWalkHome, EverywhereOutside) {
    EXPECT_THAT(itemsOf("Outside. Trim's peeling everywhere, scrape it and paint it. The steps are "
                        "loose, fix them."),
                IsSupersetOf({"outside: refinish trim", "outside: repair steps"}));
}

TEST(NotesWalkHome, WhatIsAskedAbout) {
    EXPECT_THAT(itemsOf("Ann: Dining room. Paint the walls.\nBob: What about the lounge walls?\n"
                        "Ann: Wallpaper, all of it comes off.\nBob: What about outside?\n"
                        "Ann: Clean the gutters.\n"),
                IsSupersetOf({"lounge: remove wallpaper", "outside: clean gutters"}));
}

TEST(NotesWalkHome, ARoomThatComesWithIt) {
    EXPECT_THAT(itemsOf("Living room. Carpet out and plank in. And the dining room with it, one "
                        "thirty. The railing's loose, new railing."),
                Contains("living room: replace railing"));
}

TEST(NotesWalkHome, TheStairsToTheAttic) {
    EXPECT_THAT(itemsOf("Upstairs hall. Paint the walls. The attic stairs, they're fine. New "
                        "light."),
                IsSupersetOf(
                    {"upstairs hall: keep attic ladder", "upstairs hall: replace light fixtures"}));
}

}  // namespace
}  // namespace ledgerboard::intake
