// Protects: the speaker is followed through the house by stamps, headings and fragments, and a room
// that is only named is not entered. How: short invented notes with the items a reader would list.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsSupersetOf;
using testing::Not;

TEST(NotesWalk, AStampBeginsARemarkWhereRemarksAreWhole) {
    const std::string notes =
        "0:10 front room. the mantel stays, I do not care what anybody tells you about white paint "
        "and "
        "how it sells. carpet has to go\n"
        "1:20 dining room. somebody hung a lamp here that I would not hang in a cellar if I had "
        "one. "
        "replace that window, and it wants doing soon\n";
    EXPECT_THAT(itemsOf(notes),
                IsSupersetOf({"front room: keep mantel", "front room: remove carpet",
                              "dining room: replace windows"}));
}

TEST(NotesWalk, AFragmentOpensARoomAndAPassingWordDoesNot) {
    EXPECT_THAT(itemsOf("Half bath. New toilet. Bathroom. It all goes. New tub."),
                ElementsAre("half bath: replace toilet", "bathroom: replace bathtub"));
    EXPECT_THAT(itemsOf("Attic. New insulation. Whole house. Add seven smoke alarms."),
                Contains("whole house: add smoke alarms"));
    EXPECT_THAT(itemsOf("Kitchen. It all works. New sink."), Contains("kitchen: replace sink"));
    EXPECT_THAT(itemsOf("Den. Paneling everywhere. Paint the paneling."),
                Contains("den: refinish paneling"));
}

TEST(NotesWalk, RoomsOfTheirOwnName) {
    EXPECT_THAT(itemsOf("MILK ROOM (the back entry)\nReplace the sink.\n"),
                ElementsAre("milk room: replace sink"));
    EXPECT_THAT(itemsOf("BED 1: cpt > LVP 14 m2\n"), ElementsAre("bedroom 1: replace vinyl plank"));
}

TEST(NotesWalk, TheBathIsOneBath) {
    EXPECT_THAT(itemsOf("Now the bath. The toilet is replaced."),
                Not(Contains("bathrooms: replace toilet")));
}

TEST(NotesWalk, APartOfTheHouseIsNotTheHouse) {
    EXPECT_THAT(itemsOf("OUTSIDE THE HOUSE\nThe gutters have rusted through, replace.\n"),
                ElementsAre("outside: replace gutters"));
    EXPECT_THAT(itemsOf("Dining room. The cabinets are the nicest in the house and stay."),
                ElementsAre("dining room: keep cabinets"));
}

TEST(NotesWalk, AnIndoorThingIsNotLeftOutdoors) {
    EXPECT_THAT(
        itemsOf("Kitchen. New sink. Out the back, the yard. Mow the lawn. The fridge stays."),
        Contains("kitchen: keep refrigerator"));
}

TEST(NotesWalk, StairsAndHallShareAHeading) {
    EXPECT_THAT(itemsOf("STAIRS AND UPSTAIRS HALL\nReplace one baluster. Paint the walls.\n"),
                ElementsAre("stairs: replace balusters", "upstairs hall: refinish walls"));
}

TEST(NotesWalk, ARunOfClausesIsCutAtRooms) {
    const std::string notes =
        "okay so the hall, wallpaper comes off and I want the ceiling looked at, hall bath, "
        "toilet stays, vanity is shot, first bedroom, closet doors are fine, primary bedroom, "
        "ceiling fan has to go, outside, gutters need cleaning, roof is two years old";
    EXPECT_THAT(itemsOf(notes),
                IsSupersetOf({"hall: remove wallpaper", "hall bath: keep toilet",
                              "hall bath: replace vanity", "first bedroom: keep closet doors",
                              "outside: clean gutters", "outside: keep roof"}));
}

TEST(NotesWalk, ARoomBroughtUpWithoutWorkIsEntered) {
    EXPECT_THAT(itemsOf("Entry. Wallpaper comes off. Around the corner is the den. New carpet in "
                        "here."),
                IsSupersetOf({"den: replace carpet"}));
    EXPECT_THAT(itemsOf("Entry. Wallpaper comes off. The wall behind the den is fine. New carpet "
                        "in here."),
                IsSupersetOf({"entry: replace carpet"}));
}

TEST(NotesWalk, TheBathroomsOwnS) {
    EXPECT_THAT(itemsOf("Bathroom's pink. The toilet stays."),
                ElementsAre("bathroom: keep toilet"));
}

TEST(NotesWalk, FixturesNamedLikeRooms) {
    EXPECT_THAT(itemsOf("Bathroom. New bath and a new WC."),
                IsSupersetOf({"bathroom: replace bathtub", "bathroom: replace toilet"}));
}

TEST(NotesWalk, ALabelThatIsAThing) {
    EXPECT_THAT(itemsOf("Outside\n- Roof: 2015, fine\n- Driveway: cracked, patch\n"),
                ElementsAre("outside: keep roof", "outside: repair driveway"));
}

TEST(NotesWalk, ARoomByWhoseItIs) {
    EXPECT_THAT(itemsOf("Den first. The girls' room. Carpet goes."),
                ElementsAre("girls' room: remove carpet"));
}

TEST(NotesWalk, WhichOfSeveralSaidAfter) {
    EXPECT_THAT(itemsOf("Hall first. Then the bedroom at the front. Carpet goes."),
                ElementsAre("front bedroom: remove carpet"));
}

TEST(NotesWalk, AStoreyBesideARoom) {
    EXPECT_THAT(itemsOf("Bath, upstairs\nToilet runs, rebuild the tank.\n"),
                ElementsAre("upstairs bath: repair toilet"));
}

TEST(NotesWalk, TheSameRoomOnceMore) {
    EXPECT_THAT(itemsOf("Hall bath is the only full bath. New toilet."),
                ElementsAre("hall bath: replace toilet"));
}

TEST(NotesWalk, TheEndOfTheHallIsNoTreatment) {
    EXPECT_THAT(itemsOf("Den. New window. At the end of the hall is the big bedroom. Carpet goes."),
                ElementsAre("den: replace windows", "big bedroom: remove carpet"));
}

TEST(NotesWalk, ALineOfAListStraysForItselfAlone) {
    EXPECT_THAT(itemsOf("Office\n- No window. Bedroom 5 could go in here one day\n- New baseboard\n"
                        "- Paint the walls\n"),
                IsSupersetOf({"office: replace baseboard", "office: refinish walls"}));
}

TEST(NotesWalk, WhatARoomWasOrIsNot) {
    EXPECT_THAT(itemsOf("Bedroom 3\n- was a nursery. Paint the ceiling\n- new carpet\n"),
                testing::Contains("bedroom 3: replace carpet"));
    EXPECT_THAT(itemsOf("You come in at the front and you're in the parlour. No hall. New carpet."),
                testing::Contains("parlour: replace carpet"));
}

TEST(NotesWalk, AParagraphOfTheHouseLeavesTheRoom) {
    EXPECT_THAT(itemsOf("The kitchen wants a new sink.\n\nThe laundry gets a new tap. The dryer is "
                        "fine.\n\nNow, the wiring. It's all to be replaced. The smoke alarms are "
                        "dead, so new ones.\n\nThe roof is tin and has to be painted. Repoint the "
                        "chimney.\n"),
                IsSupersetOf({"whole house: replace wiring", "whole house: replace smoke alarms",
                              "outside: refinish roof", "outside: repair chimney"}));
}

TEST(NotesWalk, UnderItsHeadingAParagraphStaysThere) {
    EXPECT_THAT(
        itemsOf("HALL\nNew carpet.\n\nBATH\nNew toilet.\n\nKITCHEN\nNew sink. Breakfast nook "
                "stays put, benches and all. Replace the countertop.\n\nSYSTEMS\nCloth wire "
                "in the attic, so rewire it.\n"),
        testing::AllOf(testing::Contains("kitchen: replace countertop"),
                       testing::Contains("whole house: replace wiring")));
}

TEST(NotesWalk, ATubInABathroomIsNoOtherRoom) {
    EXPECT_THAT(itemsOf("UPSTAIRS SHOWER ROOM\n- new fan\n\nBATHROOM\n- corner bath, cracked. New "
                        "one\n- loo and basin are white and stay\n- new blind\n"),
                testing::Contains("bathroom: replace blinds"));
}

TEST(NotesWalk, WhereTheBathroomIsDoesNotMoveTheSpeaker) {
    EXPECT_THAT(itemsOf("The kitchen gets a new sink.\n\nThe bathroom's downstairs in the old coal "
                        "store. New toilet.\n"),
                testing::Contains("bathroom: replace toilet"));
}

TEST(NotesWalk, TheRoofSpaceIsNotTheRoof) {
    EXPECT_THAT(itemsOf("Laundry. New tap. Replace the batts in the roof space."),
                Contains("roof space: replace insulation"));
}

TEST(NotesWalk, TopToBottomIsOfTheRoomWhereItIsSaid) {
    EXPECT_THAT(itemsOf("LOUNGE\n- walls are brown from top to bottom, paint them\n- new carpet\n"),
                Contains("lounge: refinish walls"));
}

}  // namespace
}  // namespace ledgerboard::intake
