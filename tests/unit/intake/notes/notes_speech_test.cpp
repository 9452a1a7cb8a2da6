// Talk as it is spoken: flats gone through one after the other, question and answer over turns,
// rooms moved between in few words.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsSupersetOf;
using testing::Not;

TEST(NotesSpeech, RoomsOfAFlatAreItsOwn) {
    EXPECT_THAT(itemsOf("Pat: Lower unit first. Kitchen. New sink.\nLou: Bath. New toilet.\n"
                        "Pat: Upper kitchen. New faucet.\nLou: Bath. New tub.\n"
                        "Pat: Basement. New furnace.\n"),
                IsSupersetOf({"downstairs kitchen: replace sink", "downstairs bath: replace toilet",
                              "upper kitchen: replace faucet", "upstairs bath: replace bathtub",
                              "basement: replace furnace"}));
    EXPECT_THAT(itemsOf("Unit A, that's the left. A kitchen. New sink. Bedroom one. New carpet. "
                        "Okay, unit B. Kitchen. New stove. Outside. New roof."),
                IsSupersetOf({"unit a kitchen: replace sink", "unit a bedroom 1: replace carpet",
                              "unit b kitchen: replace stove", "outside: replace roof"}));
}

TEST(NotesSpeech, WhichRoomIsSaidInFewWords) {
    EXPECT_THAT(
        itemsOf("Kitchen. New sink. Stairs up to the second floor. No handrail. Put one "
                "in. Bath up. New tub. Bath down. New toilet."),
        ElementsAre("kitchen: replace sink", "stairs: add railing",
                    "upstairs bath: replace bathtub", "downstairs bathroom: replace toilet"));
    EXPECT_THAT(itemsOf("Bedroom on the left. New carpet. Bed two carpet replaced. Back bedroom, "
                        "new door. Middle, new carpet. Small one, paint."),
                IsSupersetOf({"left bedroom: replace carpet", "bedroom 2: replace carpet",
                              "middle bedroom: replace carpet", "small bedroom: refinish walls"}));
    EXPECT_THAT(itemsOf("Hall bath. New tub. Then the primary is on the far side. New carpet. The "
                        "bathroom here, new toilet."),
                ElementsAre("hall bath: replace bathtub", "primary bedroom: replace carpet",
                            "primary bath: replace toilet"));
}

TEST(NotesSpeech, ItIsWhereTheThingIs) {
    EXPECT_THAT(
        itemsOf("Front bedroom. New door. Back bedroom. New door. Kitchen. New sink. There's "
                "carpet in the front bedroom. Rip it out."),
        Contains("front bedroom: remove carpet"));
}

TEST(NotesSpeech, AStepOutdoorsInFewWords) {
    EXPECT_THAT(itemsOf("Hall. New door. First thing outside, the screen porch. New screens. Then "
                        "the deck. New railing."),
                IsSupersetOf({"screen porch: replace porch screens", "deck: replace railing"}));
}

TEST(NotesSpeech, ALongRunIsPartedAtANumberedBedroom) {
    EXPECT_THAT(
        itemsOf("bedroom one refinish the floor paint closet doors are off the track so put "
                "em on bedroom two new carpet and paint the window in there is cracked so "
                "new glass and then bedroom three it has nothing wrong with it at all\n"),
        IsSupersetOf({"bedroom 2: replace carpet", "bedroom 2: refinish walls"}));
}

TEST(NotesSpeech, OneReadsAndTheOtherSays) {
    EXPECT_THAT(
        itemsOf("Ed: Living room carpet.\nJoan: Out.\nEd: Kitchen cabinets.\nJoan: Those are "
                "going to be painted.\nEd: Stove.\nJoan: New.\n"),
        IsSupersetOf({"kitchen: refinish cabinets", "kitchen: replace stove"}));
}

TEST(NotesSpeech, WhatIsOfNoRoomWhereItIsSaid) {
    EXPECT_THAT(itemsOf("Back yard. New fence. Shed. Shed's sound, leave it."),
                Contains("back yard: keep shed"));
    EXPECT_THAT(itemsOf("Upstairs. The stairs are steep. There's no railing, put one in."),
                Contains("stairs: add railing"));
    EXPECT_THAT(itemsOf("Kitchen. New stove. Breakfast nook. Paint the walls. Countertop, new."),
                Contains("kitchen: replace countertop"));
}

TEST(NotesSpeech, PartsAndPanels) {
    EXPECT_THAT(itemsOf("Back bedroom. The window's broken. New pane. Bath. The toilet runs. New "
                        "flapper. Front porch. New railing. And a new panel."),
                IsSupersetOf({"back bedroom: replace windows", "bath: replace toilet tank",
                              "whole house: replace electrical panel"}));
}

TEST(NotesSpeech, PaintAloneIsOfTheWalls) {
    EXPECT_THAT(itemsOf("Living room. Hardwoods have been done. Paint and that's it."),
                Contains("living room: refinish walls"));
    EXPECT_THAT(itemsOf("Living room. The floor is oak. Paint."),
                Contains("living room: refinish walls"));
    EXPECT_THAT(itemsOf("Living room. The floor is pine. Paint it."),
                Not(Contains("living room: refinish walls")));
}

TEST(NotesSpeech, AnOrdinalAloneAfterTheOneBefore) {
    EXPECT_THAT(itemsOf("Second bedroom, new carpet. Third, new door."),
                ElementsAre("second bedroom: replace carpet", "bedroom 3: replace interior doors"));
}

TEST(NotesSpeech, AHouseOfOneFlatHasNone) {
    EXPECT_THAT(itemsOf("Unit 2. Kitchen. New sink."), ElementsAre("kitchen: replace sink"));
    EXPECT_THAT(itemsOf("Downstairs. Kitchen. New sink."), ElementsAre("kitchen: replace sink"));
}

}  // namespace
}  // namespace ledgerboard::intake
