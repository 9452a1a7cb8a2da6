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

TEST(NotesWalkHome, TheThingOutside) {
    EXPECT_THAT(itemsOf("Laundry. Paint the walls. The AC outside is dead, replace it. New floor "
                        "tile."),
                IsSupersetOf({"outside: replace air conditioner", "laundry: replace floor tile"}));
    EXPECT_THAT(itemsOf("Deck. Replace the deck boards. The AC's good."),
                Contains("outside: keep air conditioner"));
    EXPECT_THAT(itemsOf("Basement. New sump pump. The bulkhead door is rusted out, new one."),
                Contains("basement: replace bulkhead door"));
}

TEST(NotesWalkHome, AllTheWindowsAreTheHouses) {
    EXPECT_THAT(itemsOf("Living room. Paint the walls. All the windows are getting replaced. New "
                        "carpet."),
                IsSupersetOf({"whole house: replace windows", "living room: replace carpet"}));
    EXPECT_THAT(itemsOf("Living room. Paint the walls. The windows are all right."),
                Contains("living room: keep windows"));
}

TEST(NotesWalkHome, BothOfTheBedrooms) {
    EXPECT_THAT(itemsOf("Bedroom one. The carpet's good. Bedroom two. Replace the carpet. Paint "
                        "the walls in both."),
                IsSupersetOf({"bedroom 1: refinish walls", "bedroom 2: refinish walls"}));
}

TEST(NotesWalkHome, WhatIsSaidToBeThere) {
    EXPECT_THAT(itemsOf("Laundry's in the sunroom. New ceiling fan."),
                Contains("sunroom: replace ceiling fan"));
    EXPECT_THAT(itemsOf("Attic. Add insulation. Water comes through a pump in the crawl space, "
                        "the pump's fine. The water heater's down there too, replace it."),
                Contains("crawl space: replace water heater"));
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

TEST(NotesWalkHome, ABuildingBesideTheHouseHasARoofOfItsOwn) {
    EXPECT_THAT(itemsOf("Garage. One car. Roof's bad, new roof. Outside. House roof is good."),
                IsSupersetOf({"garage: replace roof", "outside: keep roof"}));
    EXPECT_THAT(itemsOf("Outside. Gutters are good. The garage roof leaks, new roof on that."),
                IsSupersetOf({"outside: keep gutters", "garage: replace roof"}));
    EXPECT_THAT(
        itemsOf("Carport. New posts, two. The roof on it is good. The main roof is good too."),
        IsSupersetOf({"carport: keep roof", "outside: keep roof"}));
}

}  // namespace
}  // namespace ledgerboard::intake
