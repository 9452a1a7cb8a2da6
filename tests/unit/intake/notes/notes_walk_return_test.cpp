// Protects: the talk goes back to a room by what is spoken of, a line of a list stays with its
// label, several rooms named in one breath are meant together, and a word that only looks like a
// room moves nobody. How: short invented notes with the items a reader would list.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsSupersetOf;
using testing::Not;

TEST(NotesWalkReturn, ARangeIsOfTheKitchenThatWasLeftForThePantry) {
    EXPECT_THAT(itemsOf("Kitchen. New sink. The pantry has good shelves, keep them. The gas range "
                        "is dead, replace it. Patch the ceiling."),
                IsSupersetOf({"pantry: keep shelving", "kitchen: replace stove",
                              "kitchen: repair ceiling"}));
}

TEST(NotesWalkReturn, AShowerIsOfTheBathThatWasNamed) {
    EXPECT_THAT(itemsOf("Primary bedroom. New carpet. Shall I look in the en suite? Go on. "
                        "Vanity's rotten, replace it. Regrout the floor tile."),
                IsSupersetOf({"primary bedroom: replace carpet", "en suite: replace vanity",
                              "en suite: repair floor tile"}));
}

TEST(NotesWalkReturn, AtTheFootOfTheStairs) {
    EXPECT_THAT(itemsOf("Basement stairs, there's no rail, add a rail. Down here, the furnace is "
                        "dead, replace it."),
                Contains("basement: replace furnace"));
}

TEST(NotesWalkReturn, ALineStaysWithItsLabel) {
    EXPECT_THAT(itemsOf("HALL - pnt. flr sand 7 m2.\nKIT - pantry shelves ok. sink cracked > new.\n"
                        "BED 1 - pnt. cpt new.\nBED 2 - pnt. cpt new.\n"),
                Contains("kitchen: replace sink"));
}

TEST(NotesWalkReturn, SeveralRoomsInOneBreath) {
    EXPECT_THAT(itemsOf("Upstairs. Bedroom 2 is orange, bedroom 3 is purple. Both rooms need new "
                        "carpet."),
                IsSupersetOf({"bedroom 2: replace carpet", "bedroom 3: replace carpet"}));
}

TEST(NotesWalkReturn, TheOtherBedroomIsOne) {
    EXPECT_THAT(itemsOf("Bedroom. Paint the walls. Other bedroom used to be a porch. New window."),
                IsSupersetOf({"bedroom: refinish walls", "other bedroom: replace windows"}));
}

TEST(NotesWalkReturn, AFrontRoomThatIsABedroom) {
    EXPECT_THAT(itemsOf("FRONT RM (BED 1): carpet > new.\nBED 2: pnt.\nLIVING: pnt.\n"),
                Contains("bedroom 1: replace carpet"));
}

TEST(NotesWalkReturn, WhatIsNoRoomMovesNobody) {
    EXPECT_THAT(
        itemsOf("Bathroom. The tub has a chip. There's a kit for that. Replace the toilet."),
        Contains("bathroom: replace toilet"));
    EXPECT_THAT(itemsOf("Hall. It's like the way into a swimming baths. Replace the front door."),
                Contains("hall: replace front door"));
    EXPECT_THAT(itemsOf("Family room. There's a patch of it gone brown there, right over by the "
                        "window, under the bath. Replace the window."),
                Contains("family room: replace windows"));
}

TEST(NotesWalkReturn, WhatRunsThroughTheHouseLeavesTheRest) {
    EXPECT_THAT(itemsOf("Basement. New supply lines, all through the house. The sump pump is dead, "
                        "replace it."),
                Contains("basement: replace sump pump"));
}

TEST(NotesWalkReturn, ARoomTheSpeakerNames) {
    EXPECT_THAT(itemsOf("Living room. New carpet. The room to the left, which was Ama's, I will "
                        "call the west bedroom. Replace the window."),
                Contains("west bedroom: replace windows"));
}

TEST(NotesWalkReturn, WhereAThingIs) {
    EXPECT_THAT(itemsOf("Attic. Add insulation. The boiler, it's in the kitchen cupboard, it's "
                        "dead, replace it."),
                Contains("kitchen: replace boiler"));
    EXPECT_THAT(itemsOf("Hall. New carpet. The fuse box is under the stairs, replace it."),
                Contains("stairs: replace electrical panel"));
}

TEST(NotesWalkReturn, ThePanelOfALaterParagraphIsTheHouses) {
    EXPECT_THAT(
        itemsOf("Dear Ilse\n\nThe bathroom is small. Replace the tub.\n\nI looked at the "
                "old fuse box with Otmar. Replace the fuse box.\n"),
        IsSupersetOf({"bathroom: replace bathtub", "whole house: replace electrical panel"}));
}

TEST(NotesWalkReturn, TheFirstRoomOneComesInBy) {
    EXPECT_THAT(itemsOf("You come in by a tiny lobby. Replace the floor tile. Then the kitchen. "
                        "New sink."),
                ElementsAre("tiny lobby: replace floor tile", "kitchen: replace sink"));
}

TEST(NotesWalkReturn, AThingSpokenOfOverAParagraph) {
    EXPECT_THAT(itemsOf("You come in by a tiny lobby. Paint the walls. It stops at the lounge "
                        "where the carpet begins.\n\nThat carpet! Replace it. Paint the walls.\n"),
                IsSupersetOf({"tiny lobby: refinish walls", "lounge: refinish walls"}));
}

TEST(NotesWalkReturn, TheSideTellsWhich) {
    EXPECT_THAT(itemsOf("Little front bedroom. New carpet. Back bedroom. Paint the walls."),
                ElementsAre("front bedroom: replace carpet", "back bedroom: refinish walls"));
    EXPECT_THAT(itemsOf("Big front bedroom. New carpet. Little front bedroom. Paint the walls. "
                        "Kitchen. New sink."),
                Contains("kitchen: replace sink"));
    EXPECT_THAT(itemsOf("Downstairs front bedroom. New carpet. The back one is fine. Paint the "
                        "ceiling."),
                Contains("downstairs back bedroom: refinish ceiling"));
}

TEST(NotesWalkReturn, ABathSaidToBeUpstairs) {
    EXPECT_THAT(itemsOf("Kitchen. New sink. Bath upstairs. New toilet."),
                ElementsAre("kitchen: replace sink", "bath: replace toilet"));
    EXPECT_THAT(
        itemsOf("Bath upstairs. New toilet. Bath downstairs. New vanity."),
        ElementsAre("upstairs bath: replace toilet", "downstairs bathroom: replace vanity"));
}

TEST(NotesWalkReturn, OneRoomUnderTwoNamesInItsHeading) {
    EXPECT_THAT(itemsOf("Downstairs bedroom, the primary. New carpet."),
                ElementsAre("primary bedroom: replace carpet"));
    EXPECT_THAT(itemsOf("Kitchen. New sink. Underneath, there's a cellar. Replace the furnace."),
                Contains("cellar: replace furnace"));
}

TEST(NotesWalkReturn, WhatTheTalkTurnsTo) {
    EXPECT_THAT(itemsOf("Outside. The roof's good. My part's the patio, the pavers have heaved. "
                        "Add a pergola."),
                Contains("patio: add pergola"));
}

TEST(NotesWalkReturn, ACarpetOnTheStairs) {
    EXPECT_THAT(itemsOf("Half bath. New toilet.\n\nStairs carpet is threadbare. Replace the "
                        "railing.\n"),
                Contains("stairs: replace railing"));
    EXPECT_THAT(itemsOf("Hall. Paint the walls. Carpet on the stairs is brand new, keep it."),
                Contains("stairs: keep carpet"));
}

TEST(NotesWalkReturn, ARailBesideTheSteps) {
    EXPECT_THAT(itemsOf("Build new front steps, and add a railing.\n\nKitchen. New sink.\n"),
                Contains("outside: add railing"));
}

TEST(NotesWalkReturn, OneSpeakerWaitsElsewhere) {
    EXPECT_THAT(itemsOf("Ada: Back bedroom.\nAda: You do this one, I'm going to wait in the hall."
                        "\nIdo: Paint the walls.\n"),
                Contains("back bedroom: refinish walls"));
}

TEST(NotesWalkReturn, RoomsByTheSpeakersOwnNames) {
    EXPECT_THAT(
        itemsOf("The bedrooms are the elm room, the creek room and the tin room. In the elm "
                "room the window is broken, replace it. In the tin room, new carpet."),
        IsSupersetOf({"elm room: replace windows", "tin room: replace carpet"}));
    EXPECT_THAT(itemsOf("Kitchen. New sink. Upstairs are two more, the north bedroom and the south "
                        "bedroom. South needs new carpet."),
                Contains("south bedroom: replace carpet"));
    EXPECT_THAT(itemsOf("The big room is the heart of it. Replace the window."),
                Contains("big room: replace windows"));
}

TEST(NotesWalkReturn, WhatIsOnlyComparedOrKept) {
    EXPECT_THAT(itemsOf("Hall. The ceiling is hanging down like wet laundry. Replace the ceiling."),
                Contains("hall: replace ceiling"));
    EXPECT_THAT(itemsOf("Bathroom. The floor is carpet. In a basement. Replace the toilet."),
                Contains("bathroom: replace toilet"));
    EXPECT_THAT(itemsOf("Mudroom. It's a shed somebody nailed on. Replace the floor."),
                Contains("mudroom: replace floor"));
    EXPECT_THAT(itemsOf("Main roof. New flashing in the valley."),
                Contains("outside: replace flashing"));
    EXPECT_THAT(itemsOf("Sunday evening\n\nBuild new front steps.\n"),
                Contains("outside: replace steps"));
}

TEST(NotesWalkReturn, TwoRoomsThatAreOne) {
    EXPECT_THAT(itemsOf("Living room and kitchen are one big room, and I'll call it the living "
                        "room. New carpet. The kitchen end, new sink. Bath. New toilet."),
                IsSupersetOf({"living room: replace carpet", "living room: replace sink"}));
    EXPECT_THAT(itemsOf("Living room. Paint the walls. And the dining room with it. Replace the "
                        "window."),
                Contains("living room: replace windows"));
}

TEST(NotesWalkReturn, WhatARoomIsUsedAs) {
    EXPECT_THAT(itemsOf("Bedroom 4. Used as an office. New carpet."),
                ElementsAre("bedroom 4: replace carpet"));
    EXPECT_THAT(itemsOf("The big bedroom is the primary, I guess. New carpet."),
                ElementsAre("primary bedroom: replace carpet"));
    EXPECT_THAT(itemsOf("Upstairs. The bedroom on the left, which I'm going to call the moon room. "
                        "New carpet."),
                Contains("moon room: replace carpet"));
}

TEST(NotesWalkReturn, WhatLiesBesideARoom) {
    EXPECT_THAT(itemsOf("Primary bedroom. There's a deck off it. Replace the window."),
                ElementsAre("primary bedroom: replace windows"));
    EXPECT_THAT(
        itemsOf("Hall bath. New tub. Hall. New carpet. The small bath is worse. New toilet."),
        Contains("small bath: replace toilet"));
    EXPECT_THAT(itemsOf("Rear garden. New fence. The shed is rotten, get rid of it. Cut the lawn."),
                Not(Contains(testing::StartsWith("shed:"))));
}

}  // namespace
}  // namespace ledgerboard::intake
