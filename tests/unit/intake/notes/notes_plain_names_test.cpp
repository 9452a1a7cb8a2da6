// Protects: everyday names of things are understood by where and how they are said, and what a
// sentence began with is what the rest of it speaks of. How: short invented notes, against the
// items a careful reader would list.
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

TEST(NotesPlainNames, TileBeforeAMarkIsAThing) {
    EXPECT_THAT(itemsOf("Bathroom\nTile: ok\nToilet: replace\n"),
                UnorderedElementsAre("bathroom: keep wall tile", "bathroom: replace toilet"));
}

TEST(NotesPlainNames, ATopIsOfWhatStandsThere) {
    EXPECT_THAT(itemsOf("Primary bath. Vanity stays. Top is cracked, replace it."),
                Contains("primary bath: replace vanity top"));
    EXPECT_THAT(itemsOf("Kitchen. The top is cracked, replace it."),
                Contains("kitchen: replace countertop"));
    EXPECT_THAT(itemsOf("Hall. The coat of paint on top of the railing is fine."),
                Not(Contains("hall: keep countertop")));
}

TEST(NotesPlainNames, AWalkIsAPathOrAWalk) {
    EXPECT_THAT(itemsOf("Outside. The walk is heaved, replace it."),
                Contains("outside: replace walkway"));
    EXPECT_THAT(itemsOf("We walk through. Kitchen. Replace the sink."),
                ElementsAre("kitchen: replace sink"));
    EXPECT_THAT(itemsOf("Walk 12 Nov.\nKitchen. Replace the sink."),
                ElementsAre("kitchen: replace sink"));
}

TEST(NotesPlainNames, DoorsOfAKitchenAreItsCabinets) {
    EXPECT_THAT(itemsOf("Kitchen. Paint the doors. The door to the yard sticks."),
                Contains("kitchen: refinish cabinet doors"));
    EXPECT_THAT(itemsOf("Hall. Paint the doors."), ElementsAre("hall: refinish interior doors"));
}

TEST(NotesPlainNames, ASinkOrTubOfALaundry) {
    EXPECT_THAT(itemsOf("Laundry room. Replace the sink."),
                ElementsAre("laundry room: replace utility sink"));
    EXPECT_THAT(itemsOf("Utility room. Replace the tub."),
                ElementsAre("utility room: replace utility sink"));
}

TEST(NotesPlainNames, SwitchesAndOutletsAreTwoThings) {
    EXPECT_THAT(itemsOf("Hall. Replace the switches and outlets."),
                UnorderedElementsAre("hall: replace outlets", "hall: replace switches"));
}

TEST(NotesPlainNames, ASetIsEachOfItsThings) {
    EXPECT_THAT(itemsOf("Bathroom. Replace the suite."),
                UnorderedElementsAre("bathroom: replace bathtub", "bathroom: replace toilet",
                                     "bathroom: replace sink"));
    EXPECT_THAT(itemsOf("Laundry. The washer stays. Replace the dryer."),
                UnorderedElementsAre("laundry: keep washer", "laundry: replace dryer"));
    EXPECT_THAT(itemsOf("Laundry. W/D stay."),
                UnorderedElementsAre("laundry: keep washer", "laundry: keep dryer"));
}

TEST(NotesPlainNames, ATankIsNamedByWhatWasSaidAndWhereItIs) {
    EXPECT_THAT(itemsOf("Basement. The boiler is oil, replace it. Take out the tank next to it."),
                Contains("basement: remove oil tank"));
    EXPECT_THAT(itemsOf("Loft. Take out the tank."), ElementsAre("loft: remove water tank"));
    EXPECT_THAT(itemsOf("Furnace room. Replace the tank."),
                ElementsAre("furnace room: replace water heater"));
}

TEST(NotesPlainNames, AWordOfAnotherThingTellsNothing) {
    EXPECT_THAT(itemsOf("Living room. The fireplace is gas, replace it."),
                Contains("living room: replace gas fireplace"));
    EXPECT_THAT(itemsOf("Living room. The gas heater by the fireplace stays."),
                Not(Contains("living room: keep gas fireplace")));
}

TEST(NotesPlainNames, InsulationIsLaidOnAnything) {
    EXPECT_THAT(itemsOf("Attic. Insulate the roof slopes."), Contains("attic: add insulation"));
}

TEST(NotesPlainNames, ABathAfterTheNameOfItsRoomIsATub) {
    EXPECT_THAT(itemsOf("Bathroom: the bath's fine. Replace the toilet."),
                UnorderedElementsAre("bathroom: keep bathtub", "bathroom: replace toilet"));
}

TEST(NotesPlainNames, WhatTheSentenceBeganWithGetsThePaint) {
    EXPECT_THAT(itemsOf("Hall. The front door's solid, just needs a coat of paint."),
                Contains("hall: refinish front door"));
    EXPECT_THAT(itemsOf("Hall. The closet light has no cover. Paint."),
                Contains("hall: refinish walls"));
    // Carpet takes no paint.
    EXPECT_THAT(itemsOf("Hall. The carpet is new, needs paint."), Contains("hall: refinish walls"));
}

TEST(NotesPlainNames, OfACountertopLaminateIsWhatItIsMadeOf) {
    EXPECT_THAT(itemsOf("Kitchen. The counter is done for, put in new laminate."),
                Not(Contains("kitchen: replace laminate floor")));
}

TEST(NotesPlainNames, WhatIsSealedToLast) {
    EXPECT_THAT(itemsOf("Outside. Seal the driveway."), ElementsAre("outside: refinish driveway"));
}

TEST(NotesPlainNames, AnAnswerIsNoAbsence) {
    EXPECT_THAT(itemsOf("Kitchen. Replace the floor. No, the sink."),
                Not(Contains("kitchen: add sink")));
}

TEST(NotesPlainNames, WhatFollowsAPlaceAndANewArticle) {
    EXPECT_THAT(itemsOf("Garage. Put drywall on the ceiling and a new door in."),
                Contains("garage: replace garage door"));
}

TEST(NotesPlainNames, UnitsOfAHouseOfSeveral) {
    EXPECT_THAT(itemsOf("Unit A kitchen\n- replace sink\n\nUnit B kitchen\n- keep sink\n"),
                UnorderedElementsAre("unit a kitchen: replace sink", "unit b kitchen: keep sink"));
}

TEST(NotesPlainNames, ACountOfRoomsIsNoneOfThings) {
    const Draft draft = draftOf("Bedrooms, all three new carpet.");
    ASSERT_EQ(draft.items.size(), 3U);
    for (const DraftItem& item : draft.items) {
        EXPECT_FALSE(item.quantity.has_value());
    }
}

TEST(NotesPlainNames, AShortLineOverALongOneIsAHeading) {
    EXPECT_THAT(itemsOf("back porch\nthe screens are torn so all of those get replaced out here "
                        "and that is all\n\nkitchen\nthe cabinets are metal and they are in bad "
                        "shape so replace the cabinets and keep the sink\n"),
                IsSupersetOf({"kitchen: replace cabinets", "kitchen: keep sink"}));
}

TEST(NotesPlainNames, AWordOfSomeHeadingsInASentenceWithWork) {
    EXPECT_THAT(itemsOf("BEDROOM\nwindow: new sash. others fine\ncloset: replace door\n"),
                Contains("bedroom: replace closet doors"));
}

// Protects: a year behind what is also a place tells how old the thing is, and is no heading.
TEST(NotesPlainNames, AThingOfAYearIsNoHeading) {
    EXPECT_THAT(itemsOf("House from 1957.\n\nOutside.\n\nRoof 2017.\n"),
                Contains("outside: keep roof"));
}

TEST(NotesPlainNames, HandlesAreOfTheCabinetsInAKitchenAndElseOfDoors) {
    EXPECT_THAT(itemsOf("Kitchen. Paint the cupboards, new handles.\n\nHall. New handles."),
                IsSupersetOf({"kitchen: replace cabinet hardware", "hall: replace door hardware"}));
}

// Protects: the cleaning at the end is of the house, whatever was spoken of before.
TEST(NotesPlainNames, TheFinalCleanIsOfTheHouse) {
    EXPECT_THAT(itemsOf("Whole house:\n- four new smoke alarms\n- final clean\n"),
                Contains("whole house: clean house"));
}

TEST(NotesPlainNames, AMarkForAndIsReadAsTheWord) {
    EXPECT_THAT(itemsOf("Bathroom. Board & batten is fine. Toilet: new."),
                UnorderedElementsAre("bathroom: keep wainscot", "bathroom: replace toilet"));
}

TEST(NotesPlainNames, TileIsOfTheFloorThatItIsSpokenOfWith) {
    EXPECT_THAT(itemsOf("Hall bath. The carpet comes out, put tile down."),
                Contains("hall bath: replace floor tile"));
    EXPECT_THAT(itemsOf("Utility room. The dryer stays. Replace the vent."),
                Contains("utility room: replace dryer vent"));
}

}  // namespace
}  // namespace ledgerboard::intake
