// Protects: where the sentences of a letter stand: what is said of several rooms at once is of each
// of them, and the room that a paragraph begins with is what it is about. How: short invented notes
// with the items a reader would list.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsSupersetOf;
using testing::Not;
using testing::UnorderedElementsAre;

TEST(NotesWalkProse, ARowOfRoomsIsSpokenOfTogether) {
    EXPECT_THAT(
        itemsOf("The den and the hall need paint. Replace the carpet.\n\n"
                "Kitchen: new sink."),
        UnorderedElementsAre("den: refinish walls", "hall: refinish walls", "den: replace carpet",
                             "hall: replace carpet", "kitchen: replace sink"));
    // Two names of one room are one room.
    EXPECT_THAT(itemsOf("The kitchen is an ell on the back. Replace the sink."),
                ElementsAre("kitchen: replace sink"));
}

TEST(NotesWalkProse, BedroomsGoByTheirSides) {
    EXPECT_THAT(itemsOf("The three bedrooms, front, middle and end, get paint. Replace the carpet "
                        "in the end one."),
                IsSupersetOf({"front bedroom: refinish walls", "middle bedroom: refinish walls",
                              "end bedroom: refinish walls", "end bedroom: replace carpet"}));
    // Where none has a name they are counted.
    EXPECT_THAT(itemsOf("Paint all three bedrooms."),
                ElementsAre("bedroom 1: refinish walls", "bedroom 2: refinish walls",
                            "bedroom 3: refinish walls"));
}

TEST(NotesWalkProse, AParagraphIsAboutTheRoomItBeginsWith) {
    EXPECT_THAT(itemsOf("The hall gets paint.\n\n"
                        "I wouldn't do anything to the living room except get that carpet up. "
                        "Replace the window.\n"),
                Contains("living room: replace windows"));
    EXPECT_THAT(itemsOf("The hall gets paint. It's a good hall.\n\n"
                        "The bathroom suite is peach. Replace the toilet.\n"),
                Contains("bathroom: replace toilet"));
    EXPECT_THAT(itemsOf("Bedroom: paint the walls.\n\n"
                        "On the main floor: living room carpet comes up, and there is oak under "
                        "it. Replace the window.\n"),
                Contains("living room: replace windows"));
}

TEST(NotesWalkProse, ASmallRoomIsARoom) {
    EXPECT_THAT(itemsOf("North bedroom: paint.\n\nThe little room at the back is a mess. Replace "
                        "the carpet."),
                Contains("little room: replace carpet"));
}

TEST(NotesWalkProse, ANumberedParagraphIsAParagraph) {
    EXPECT_THAT(itemsOf("Some answers to what you asked about the work there.\n\n"
                        "1. The family room carpet is staying, so just steam clean it for us.\n\n"
                        "2. The kitchen cabinets stay and so does the range hood. Replace the "
                        "sink.\n"),
                Contains("kitchen: replace sink"));
}

TEST(NotesWalkProse, WhatAKitchenIsMadeOfIsInTheKitchen) {
    EXPECT_THAT(itemsOf("The den is a good room. Carpet in there: replace. The kitchen cabinets "
                        "are peeling by the oven. Replace the dishwasher.\n"),
                Contains("kitchen: replace dishwasher"));
    EXPECT_THAT(itemsOf("The den is a good room. The hall carpet is the same. Replace the "
                        "windows.\n"),
                Contains("den: replace windows"));
}

TEST(NotesWalkProse, AParagraphIsAboutTheRoomThatIsLeftAlone) {
    EXPECT_THAT(itemsOf("The hall gets paint. It's a good hall.\n\n"
                        "We won't change the front room much. Replace the carpet.\n"),
                Contains("front room: replace carpet"));
    // Where rooms are is no row of rooms.
    EXPECT_THAT(itemsOf("Kitchen: new sink.\n\n"
                        "The kids' rooms are down the hall. Replace the carpet.\n"),
                Not(Contains("hall: replace carpet")));
    EXPECT_THAT(itemsOf("Kitchen: new sink. New stove.\n\n"
                        "Exterior trim is rotted at the back. Replace the gutters and the walk.\n"),
                Contains("outside: replace gutters"));
}

TEST(NotesWalkProse, AParagraphWithoutARoomHasLeftTheLast) {
    // The bathroom was only come to within a paragraph.
    EXPECT_THAT(
        itemsOf("New carpet in the den. The bathroom has tile that we're keeping.\n\n"
                "All interior doors painted. All trim painted too.\n"),
        IsSupersetOf({"whole house: refinish interior doors", "whole house: refinish trim"}));
    // Most paragraphs begin with rooms.
    EXPECT_THAT(itemsOf("Kitchen: new sink. New stove.\n\nDen: new carpet. Paint.\n\n"
                        "Hall: new carpet. Paint.\n\nMini split, one head. Add it.\n"),
                Contains("whole house: add mini split"));
    EXPECT_THAT(itemsOf("Kitchen: new sink. New stove.\n\nDen: new carpet. Paint.\n\n"
                        "Hall: new carpet. Paint.\n\nThe closet door sticks. Replace it.\n"),
                Contains("hall: replace closet doors"));
}

TEST(NotesWalkProse, ALabelIsARoomWhereTheLinesOpenWithRooms) {
    const std::string rooms =
        "Kitchen: new sink. New stove.\n\nHall: new carpet. Paint.\n\n"
        "Den: new carpet. Paint.\n\nBathroom: new tub. New vanity.\n\n";
    EXPECT_THAT(itemsOf(rooms + "Toilet: new vinyl floor. Paint.\n"),
                IsSupersetOf({"half bath: replace vinyl floor", "half bath: refinish walls"}));
    EXPECT_THAT(itemsOf(rooms + "Toilet is fine. New vinyl floor.\n"),
                Contains("bathroom: replace vinyl floor"));
}

TEST(NotesWalkProse, AHouseHasOneFamilyRoom) {
    EXPECT_THAT(itemsOf("Downstairs family room: new carpet. Paint.\n"),
                IsSupersetOf({"family room: replace carpet", "family room: refinish walls"}));
}

TEST(NotesWalkProse, ThePantryIsOfTheKitchen) {
    EXPECT_THAT(itemsOf("The hall gets paint.\n\nKitchen. New sink. The larder is good and cool "
                        "and we'd keep it. New vinyl floor.\n"),
                IsSupersetOf({"kitchen: keep pantry", "kitchen: replace vinyl floor"}));
}

TEST(NotesWalkProse, BedroomsOnTheirStoreyGoByTheirSides) {
    EXPECT_THAT(itemsOf("A house of three bedrooms.\n\nStairs: add a railing.\n\n"
                        "Three bedrooms upstairs. The north one needs carpet. Replace the window "
                        "in the small one.\n"),
                IsSupersetOf({"north bedroom: replace carpet"}));
}

TEST(NotesWalkProse, WhoALetterIsToIsNoRoom) {
    EXPECT_THAT(itemsOf("From: Odo\nTo: Wilma\nRe: the house\n\nReplace the furnace.\n"),
                ElementsAre("whole house: replace furnace"));
}

}  // namespace
}  // namespace ledgerboard::intake
