// Protects: a list under a heading that names no room is read for what the heading says: what is
// done to the things that a line only names, and that each line is of its own room. How: short
// notes against the items a careful reader would list.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::IsSupersetOf;
using testing::Not;
using testing::UnorderedElementsAre;

TEST(NotesSections, AHeadingSaysWhatIsDoneToWhatItLists) {
    EXPECT_THAT(
        itemsOf("WHAT STAYS\n- kitchen cabinets\n- hall bath tub\n\n"
                "TO FIX\n- bedroom 2 closet door off track\n\n"
                "TO CHECK\n- dryer vent\n"),
        UnorderedElementsAre("kitchen: keep cabinets", "hall bath: keep bathtub",
                             "bedroom 2: repair closet doors", "whole house: inspect dryer vent"));
}

TEST(NotesSections, ALinesOwnOrderStandsAboveTheHeading) {
    EXPECT_THAT(itemsOf("TO FIX\n- kitchen drawer\n- hall mirror, throw it out\n"),
                UnorderedElementsAre("kitchen: repair drawer fronts", "hall: remove mirror"));
}

TEST(NotesSections, RoomsAloneGetWhatTheHeadingDoes) {
    EXPECT_THAT(itemsOf("PAINT\n- living room, dining room\n- kitchen ceiling too\n"),
                UnorderedElementsAre("living room: refinish walls", "dining room: refinish walls",
                                     "kitchen: refinish ceiling"));
}

TEST(NotesSections, ATradeIsNoRoomAndNoOrder) {
    EXPECT_THAT(itemsOf("PLUMBING\n- kitchen sink + faucet\n\n"
                        "CARPENTRY\n- bedroom 2 door won't shut, plane it\n"),
                UnorderedElementsAre("kitchen: replace sink", "kitchen: replace faucet",
                                     "bedroom 2: repair interior doors"));
}

TEST(NotesSections, TheListEndsWhereItsLinesEnd) {
    EXPECT_THAT(itemsOf("WHAT GOES\n- kitchen faucet\n\nThe stove is fine.\n"),
                UnorderedElementsAre("kitchen: replace faucet", "kitchen: keep stove"));
}

TEST(NotesSections, ALineOfAListOpensWithItsRoom) {
    EXPECT_THAT(
        itemsOf("- LR paint\n- DR light fixture, new\n- kitchen cabinets, paint\n"
                "- bath toilet\n"),
        UnorderedElementsAre("living room: refinish walls", "dining room: replace light fixtures",
                             "kitchen: refinish cabinets", "bath: replace toilet"));
}

TEST(NotesSections, UnderTheHeadingOfARoomAThingStaysInIt) {
    EXPECT_THAT(itemsOf("Kitchen\n- hall door sticks, plane it\n- new sink\n"),
                Contains("kitchen: replace sink"));
}

TEST(NotesSections, WhatIsTickedIsThereAlready) {
    EXPECT_THAT(itemsOf("Kitchen\n[ ] sink\n[x] fridge\n[ ] walls, paint\n"),
                UnorderedElementsAre("kitchen: replace sink", "kitchen: keep refrigerator",
                                     "kitchen: refinish walls"));
}

TEST(NotesSections, ALineWithoutARoomIsOfTheHouse) {
    EXPECT_THAT(itemsOf("- kitchen: new sink\n- bath: new toilet\n- hall: paint\n"
                        "- bedroom 1: paint\n- replace the furnace\n"),
                Contains("whole house: replace furnace"));
}

}  // namespace
}  // namespace ledgerboard::intake
