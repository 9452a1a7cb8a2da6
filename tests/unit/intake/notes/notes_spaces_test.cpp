// Protects: every item lands in the right space. How: short invented notes with the list a reader
// would make of them.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/intake/notes/names.h"

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::AllOf;
using testing::Contains;
using testing::ElementsAre;
using testing::IsSupersetOf;
using testing::Not;

TEST(NotesSpaces, OneNameForOneSpace) {
    EXPECT_EQ(spaceName("Master Bath"), spaceName("primary bathroom"));
    EXPECT_EQ(spaceName("lounge"), spaceName("living room"));
    EXPECT_EQ(spaceName("second bedroom"), spaceName("BR2"));
    EXPECT_EQ(spaceName("foyer"), spaceName("entry"));
    EXPECT_NE(spaceName("hall bath"), spaceName("upstairs bath"));
    EXPECT_NE(spaceName("front bedroom"), spaceName("back bedroom"));
    EXPECT_EQ(spaceName("the turret"), "the turret");
}

TEST(NotesSpaces, HeadingsAndLabelsMove) {
    EXPECT_THAT(itemsOf("KITCHEN\n- sink: replace\nHALL BATH\n- toilet: replace\n"),
                ElementsAre("kitchen: replace sink", "hall bath: replace toilet"));
    EXPECT_THAT(itemsOf("kit: sink repl\nmbr: cpt repl\n"),
                ElementsAre("kitchen: replace sink", "primary bedroom: replace carpet"));
}

TEST(NotesSpaces, SpokenMoves) {
    EXPECT_THAT(
        itemsOf("Okay, now we're in the kitchen. Replace the sink. Moving on to the laundry. "
                "The floor needs replacing."),
        ElementsAre("kitchen: replace sink", "laundry: replace floor"));
}

TEST(NotesSpaces, SpeechWithoutMarks) {
    EXPECT_THAT(
        itemsOf("okay the living room the carpet has to go then the dining room replace the "
                "chandelier and then the kitchen new sink new faucet"),
        IsSupersetOf({"living room: remove carpet", "dining room: replace chandelier",
                      "kitchen: replace sink", "kitchen: replace faucet"}));
}

TEST(NotesSpaces, NamedInPassingIsNoMove) {
    EXPECT_THAT(itemsOf("Kitchen. The door to the garage sticks, replace it. New sink."),
                Contains("kitchen: replace sink"));
    EXPECT_THAT(itemsOf("Kitchen. New sink. Replace the toilet in the half bath. New faucet."),
                IsSupersetOf({"kitchen: replace sink", "half bath: replace toilet",
                              "kitchen: replace faucet"}));
}

TEST(NotesSpaces, GroupsAreSpelledOut) {
    EXPECT_THAT(
        itemsOf("Front bedroom. New window. Back bedroom. New door. All the bedrooms: paint "
                "the walls."),
        IsSupersetOf({"front bedroom: refinish walls", "back bedroom: refinish walls"}));
    EXPECT_THAT(itemsOf("Bedrooms 1 and 2: replace the carpet."),
                ElementsAre("bedroom 1: replace carpet", "bedroom 2: replace carpet"));
}

TEST(NotesSpaces, SameInHere) {
    EXPECT_THAT(itemsOf("Front bedroom. Paint the walls and replace the carpet. Back bedroom. Same "
                        "in here."),
                IsSupersetOf({"back bedroom: refinish walls", "back bedroom: replace carpet"}));
    EXPECT_THAT(itemsOf("Our room: paint and new carpet.\n\nMike's room: the same, and the closet "
                        "door needs mending.\n\nAnn's room: same."),
                IsSupersetOf({"mike's room: refinish walls", "mike's room: replace carpet",
                              "ann's room: refinish walls", "ann's room: replace carpet"}));
    EXPECT_THAT(itemsOf("In the living room the carpet goes. Same in the hall and the dining "
                        "room."),
                IsSupersetOf({"hall: remove carpet", "dining room: remove carpet"}));
}

TEST(NotesSpaces, SameIsWhatRoomsHaveInCommon) {
    // What stands in one room is not in the next.
    EXPECT_THAT(itemsOf("Front bedroom. Paint the walls. The fireplace stays. New radiator. Back "
                        "bedroom, same."),
                AllOf(Contains("back bedroom: refinish walls"),
                      Not(Contains("back bedroom: keep fireplace")),
                      Not(Contains("back bedroom: replace radiators"))));
    // It is said what.
    EXPECT_THAT(itemsOf("Front bedroom. Paint the walls and the ceiling. New carpet. Back bedroom, "
                        "same as the front, paint the walls."),
                Not(Contains("back bedroom: refinish ceiling")));
}

TEST(NotesSpaces, WhatWasSaidLastHoldsInOtherRoomsToo) {
    EXPECT_THAT(itemsOf("Living room. Sand the oak. The dining room too."),
                Contains("dining room: refinish wood floor"));
    EXPECT_THAT(itemsOf("Living room. Carpet out. That goes for the hall and the den as well."),
                IsSupersetOf({"hall: remove carpet", "den: remove carpet"}));
    EXPECT_THAT(itemsOf("Entry. New plank through the downstairs. Living room, kitchen and den."),
                IsSupersetOf({"living room: replace vinyl plank", "kitchen: replace vinyl plank",
                              "den: replace vinyl plank"}));
    // A thing of one room is not in the next.
    EXPECT_THAT(itemsOf("Living room. New light fixture. The dining room too is fine."),
                Not(Contains("dining room: replace light fixtures")));
}

TEST(NotesSpaces, AllThreeAreTheRoomsOneCameThrough) {
    EXPECT_THAT(itemsOf("North bedroom. New window. South bedroom. New door. East bedroom. The "
                        "outlet is dead. Paint for all three."),
                IsSupersetOf({"north bedroom: refinish walls", "south bedroom: refinish walls",
                              "east bedroom: refinish walls"}));
    EXPECT_THAT(itemsOf("North bedroom. New window. South bedroom. New door. East bedroom. Three "
                        "windows are rotten. Replace all three."),
                Not(Contains("north bedroom: replace windows, 3 each")));
}

TEST(NotesSpaces, ARowOfRoomsIsNotCutInTwo) {
    EXPECT_THAT(itemsOf("Kitchen. New sink.\n- paint: den 120 and hall 60\n"),
                IsSupersetOf({"den: refinish walls", "hall: refinish walls"}));
    EXPECT_THAT(
        itemsOf("The carpet on this floor is to be removed once we own it and the oak flooring "
                "refinished in the living room, the dining room, the hall "
                "and the front bedroom."),
        IsSupersetOf({"living room: refinish wood floor", "dining room: refinish wood floor",
                      "hall: refinish wood floor", "front bedroom: refinish wood floor"}));
}

TEST(NotesSpaces, OutdoorsAndWholeHouse) {
    EXPECT_THAT(itemsOf("Kitchen. The roof has to be replaced."),
                ElementsAre("outside: replace roof"));
    EXPECT_THAT(itemsOf("Kitchen. New sink. Paint the walls throughout the house."),
                Contains("whole house: refinish walls"));
}

TEST(NotesSpaces, BathsAreKeptApart) {
    const auto items = itemsOf(
        "Hall bath. Replace the toilet. Primary bath. Replace the vanity. Half bath. New faucet.");
    EXPECT_THAT(items, ElementsAre("hall bath: replace toilet", "primary bath: replace vanity",
                                   "half bath: replace faucet"));
}

TEST(NotesSpaces, CorrectionsTakeTheLatter) {
    const auto items =
        itemsOf("In the primary bath, no, make that the hall bath, replace the toilet.");
    EXPECT_THAT(items, ElementsAre("hall bath: replace toilet"));
    EXPECT_THAT(items, Not(Contains("primary bath: replace toilet")));
}

}  // namespace
}  // namespace ledgerboard::intake
