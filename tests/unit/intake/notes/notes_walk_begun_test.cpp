// Protects: a room is begun where the talk turns to it, whatever stands before its name, and what
// only tells how a room is built, or where it lies, begins no other. How: short invented notes with
// the items a reader would list.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsSupersetOf;

TEST(NotesWalkBegun, AShortNameIsARoomWhereASentenceBeginsWithIt) {
    EXPECT_THAT(
        itemsOf("Living room. New carpet. Dining, paint the walls. Replace the chandelier."),
        ElementsAre("living room: replace carpet", "dining room: refinish walls",
                    "dining room: replace chandelier"));
    EXPECT_THAT(itemsOf("Kitchen. There's a dining table, leave it. New sink."),
                Contains("kitchen: replace sink"));
}

TEST(NotesWalkBegun, AShortNameIsARoomAmongRooms) {
    EXPECT_THAT(itemsOf("Hall. Paint. New carpet in the lounge, dining and study."),
                IsSupersetOf({"lounge: replace carpet", "dining room: replace carpet",
                              "study: replace carpet"}));
}

TEST(NotesWalkBegun, AQuestionTurnsToARoom) {
    EXPECT_THAT(itemsOf("Ana: Living room. New carpet.\nBob: What about the kitchen?\n"
                        "Ana: The sink is cracked. New sink.\nBob: And the walls, paint."),
                IsSupersetOf({"kitchen: replace sink", "kitchen: refinish walls"}));
}

TEST(NotesWalkBegun, WhatAPlainRoomIsNamesIt) {
    EXPECT_THAT(itemsOf("Back room's the dining room. Paint the walls. The back room gets a new "
                        "carpet."),
                ElementsAre("dining room: refinish walls", "dining room: replace carpet"));
}

TEST(NotesWalkBegun, AnExtensionIsTheRoomInIt) {
    EXPECT_THAT(itemsOf("So we're in the kitchen. Extension, flat roof, and it leaks. New sink."),
                Contains("kitchen: replace sink"));
}

TEST(NotesWalkBegun, ANookWithThingsInItIsOfTheKitchen) {
    EXPECT_THAT(itemsOf("Now the kitchen. There's a breakfast nook at the end with a built-in "
                        "bench that I want to keep. New cabinets. A new sink."),
                IsSupersetOf({"kitchen: replace cabinets", "kitchen: replace sink"}));
}

TEST(NotesWalkBegun, WhereARoomLiesBeginsNoOther) {
    EXPECT_THAT(itemsOf("Living room. Paint.\n\nDeck. Off the living. Replace the deck boards."),
                Contains("deck: replace deck boards"));
    EXPECT_THAT(itemsOf("Patio, out the back. The slab is cracked, patch it."),
                Contains("patio: repair patio"));
}

TEST(NotesWalkBegun, AYardIsNotTheFrontYard) {
    EXPECT_THAT(itemsOf("Front garden: remove the shrubs.\nOutside: paint the siding.\n"
                        "Yard: replace the fence."),
                Contains("yard: replace fence"));
}

TEST(NotesWalkBegun, TheFurnaceLeadsBackToTheBasement) {
    EXPECT_THAT(itemsOf("Basement. Paint the walls. The bathroom down there has a rusted shower, "
                        "new shower. Furnace: replace it. The water heater stays."),
                IsSupersetOf({"basement: replace furnace", "basement: keep water heater"}));
}

TEST(NotesWalkBegun, AColumnNamesTheRoom) {
    EXPECT_THAT(itemsOf("Entry / tile / keep\nLiving / carpet / replace 250\n"
                        "Living / walls / paint\nDining / light / replace\n"),
                IsSupersetOf({"living room: replace carpet", "living room: refinish walls",
                              "dining room: replace light fixtures"}));
}

TEST(NotesWalkBegun, ALabelEndsWithTheRoom) {
    EXPECT_THAT(itemsOf("Dining room: paint the walls.\n\nYour brother's study: the carpet is "
                        "worn out, replace it."),
                Contains("study: replace carpet"));
    EXPECT_THAT(itemsOf("Kit: snk new\nMBA gdn tub ok. wc new\nHALL cpt new\nLR pnt\n"),
                Contains("primary bath: replace toilet"));
}

TEST(NotesWalkBegun, StairsAreBegunWhicheverWayTheyGo) {
    EXPECT_THAT(itemsOf("Back bedroom. Paint.\n\nStairs down. Pull up the carpet.\n\n"
                        "Family room. Paint.\n\nGoing up the stairs. Repair the railing."),
                IsSupersetOf({"stairs: remove carpet", "stairs: repair railing"}));
}

TEST(NotesWalkBegun, UnderTheHouseIsAPlace) {
    EXPECT_THAT(itemsOf("Bathroom. New toilet. Under the house, there's no insulation, add it."),
                Contains("crawl space: add insulation"));
}

TEST(NotesWalkBegun, WhatLiesOffARoomIsEntered) {
    EXPECT_THAT(itemsOf("The living room has a good floor, leave it.\n\n"
                        "Off the end of it is a sunroom. The ceiling fan is new. Replace the "
                        "drywall."),
                Contains("sunroom: replace drywall"));
}

TEST(NotesWalkBegun, APatioInTheGardenIsAThingOfIt) {
    EXPECT_THAT(
        itemsOf("Garden. New fence. Patio, sunk in the middle, relay it. Trim the trees."),
        IsSupersetOf({"garden: replace fence", "garden: repair patio", "garden: clean trees"}));
}

TEST(NotesWalkBegun, APantryThatStaysIsAThingOfTheKitchen) {
    EXPECT_THAT(itemsOf("Kitchen. New sink. The pantry's good."), Contains("kitchen: keep pantry"));
}

TEST(NotesWalkBegun, ALabelInCapitalsNeedsNoMark) {
    EXPECT_THAT(itemsOf("LR cpt new\nKIT snk new\nBR2 cpt new, pnt\nUNDER joist rot, fix\n"
                        "OUT gutt new\n"),
                Contains("outside: replace gutters"));
}

TEST(NotesWalkBegun, WhatARoomWasMadeIntoIsEntered) {
    EXPECT_THAT(itemsOf("Kitchen. New sink. The garage was turned into a den. Replace the carpet."),
                Contains("den: replace carpet"));
}

TEST(NotesWalkBegun, WhereTheRoomOfALabelLiesIsNoOther) {
    EXPECT_THAT(itemsOf("Office: paint.\nUtility between kitchen and garage: replace the water "
                        "heater.\n"),
                Contains("laundry room: replace water heater"));
}

// A sentence that begins with the way to a room goes there, with or without a verb.
TEST(NotesWalkBegun, TheWayToARoomLeadsThere) {
    EXPECT_THAT(itemsOf("Kitchen. New sink. To the right, the dining room: sand the floor. "
                        "Opposite, the study has lost a shutter, make a new one. Off that, a half "
                        "bath. New toilet."),
                IsSupersetOf({"dining room: refinish wood floor", "study: replace shutters",
                              "half bath: replace toilet"}));
    EXPECT_THAT(itemsOf("Kitchen. New sink. There's one bedroom, and it wants a new carpet."),
                Contains("bedroom: replace carpet"));
}

// The short name of a room is heard where the sentence goes there: "in the utility".
TEST(NotesWalkBegun, AShortNameThatIsGoneInto) {
    EXPECT_THAT(
        itemsOf("Kitchen. New worktops. In the utility, a new sink. The utility has a dead "
                "boiler, replace it."),
        IsSupersetOf({"laundry room: replace utility sink", "laundry room: replace boiler"}));
    EXPECT_THAT(itemsOf("Unit one. Kitchen, new sink. Unit two now. Kitchen, new cabinets."),
                IsSupersetOf({"unit 1 kitchen: replace sink", "unit 2 kitchen: replace cabinets"}));
}

}  // namespace
}  // namespace ledgerboard::intake
