// Protects: what is to be done is read by its meaning. How: short invented notes with the list a
// reader would make of them.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/intake/notes/names.h"

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::IsSupersetOf;
using testing::Not;

TEST(NotesTreatments, OrdersBeforeAndAfterTheirObjects) {
    EXPECT_THAT(itemsOf("Kitchen. Replace the sink, the faucet and the dishwasher."),
                IsSupersetOf({"kitchen: replace sink", "kitchen: replace faucet",
                              "kitchen: replace dishwasher"}));
    EXPECT_THAT(itemsOf("Kitchen. The cabinets have to go and the ceiling needs patching."),
                IsSupersetOf({"kitchen: replace cabinets", "kitchen: repair ceiling"}));
    EXPECT_THAT(itemsOf("Kitchen. Rip the old carpet out."), ElementsAre("kitchen: remove carpet"));
}

TEST(NotesTreatments, MeaningNotWord) {
    EXPECT_THAT(itemsOf("Kitchen. The faucet is shot."), ElementsAre("kitchen: replace faucet"));
    EXPECT_THAT(itemsOf("Den. The walls just need a coat of paint."),
                ElementsAre("den: refinish walls"));
    EXPECT_THAT(itemsOf("Kitchen. Swap out the faucet."), ElementsAre("kitchen: replace faucet"));
    EXPECT_THAT(itemsOf("Hall bath. No fan, add one."), ElementsAre("hall bath: add bath fan"));
}

TEST(NotesTreatments, KeptThings) {
    EXPECT_THAT(itemsOf("Kitchen. The windows are already double pane."),
                ElementsAre("kitchen: keep windows"));
    EXPECT_THAT(itemsOf("Outside. The roof was done in 2016."), ElementsAre("outside: keep roof"));
    EXPECT_THAT(itemsOf("Outside. Roof replaced 2019 after the hail."),
                ElementsAre("outside: keep roof"));
    EXPECT_THAT(itemsOf("Kitchen. Leave the cabinets as they are."),
                ElementsAre("kitchen: keep cabinets"));
}

TEST(NotesTreatments, ConditionsWithoutWorkAreInspected) {
    EXPECT_THAT(itemsOf("Dining room. There's a water stain on the ceiling."),
                ElementsAre("dining room: inspect ceiling"));
    EXPECT_THAT(itemsOf("Den. It smells of cats in here."), ElementsAre("den: inspect odor"));
}

TEST(NotesTreatments, NegationAndThoughtsPutAside) {
    EXPECT_THAT(itemsOf("Kitchen. We're not replacing the windows."),
                ElementsAre("kitchen: keep windows"));
    EXPECT_THAT(itemsOf("Kitchen. I thought about moving the wall but it's bearing, so no."),
                Not(Contains("kitchen: relocate walls")));
    EXPECT_THAT(itemsOf("Kitchen. I would love to add an island."),
                Not(Contains("kitchen: add kitchen island")));
}

TEST(NotesTreatments, ItAndThemMeanWhatWasNamed) {
    EXPECT_THAT(itemsOf("Kitchen. The dishwasher is ancient. Replace it."),
                ElementsAre("kitchen: replace dishwasher"));
    EXPECT_THAT(itemsOf("Foyer. The closet doors hang by a thread. Replace those."),
                ElementsAre("foyer: replace closet doors"));
}

TEST(NotesTreatments, TalkYieldsNothing) {
    EXPECT_THAT(itemsOf("Hello everyone and welcome. My grandmother had a sink like that and she "
                        "replaced the faucet every year."),
                IsEmpty());
    EXPECT_THAT(itemsOf("Across the street they put in a new fence and tore off the porch."),
                IsEmpty());
    EXPECT_THAT(itemsOf(""), IsEmpty());
}

TEST(NotesTreatments, OldOutAndNewInIsReplacing) {
    EXPECT_THAT(itemsOf("Den. Carpet out, vinyl plank in."),
                ElementsAre("den: replace vinyl plank"));
    EXPECT_THAT(itemsOf("Bath. Take out the vanity and put in a new vanity."),
                ElementsAre("bath: replace vanity"));
}

TEST(NotesTreatments, QuantityCostAndLeadTime) {
    const Draft draft = draftOf(
        "Kitchen. Replace the countertop, 42 sf. Add four outlets. New cabinets for $6,200, six "
        "weeks out.");
    ASSERT_EQ(draft.items.size(), 3U);
    EXPECT_EQ(draft.items[0].quantity->toString(), "42");
    EXPECT_EQ(draft.items[0].unit, "sq ft");
    EXPECT_EQ(draft.items[1].quantity->toString(), "4");
    EXPECT_EQ(draft.items[2].cost->toString(), "6200.00");
    EXPECT_EQ(draft.items[2].leadDays->toString(), "42");  // 6 x 7
    // 280 x 4.25 = 1190
    const Draft floor = draftOf("LR\n flr - refin oak 280 sf @ 4.25\n");
    ASSERT_EQ(floor.items.size(), 1U);
    EXPECT_EQ(floor.items[0].cost->toString(), "1190.00");
}

TEST(NotesTreatments, BritishWordsAndShorthand) {
    EXPECT_EQ(objectName("worktop"), objectName("countertop"));
    EXPECT_EQ(objectName("tap"), objectName("faucet"));
    EXPECT_EQ(objectName("plasterboard"), objectName("drywall"));
    EXPECT_EQ(objectName("skirting boards"), objectName("baseboard"));
    EXPECT_THAT(itemsOf("KIT\n ctop - repl 28 sf\n fct new\n"),
                IsSupersetOf({"kitchen: replace countertop", "kitchen: replace faucet"}));
}

TEST(NotesTreatments, EveryItemNamesItsSentenceAndLine) {
    const Draft draft = draftOf("Kitchen\n\nReplace the sink.\nThe faucet is fine.\n");
    ASSERT_EQ(draft.items.size(), 2U);
    EXPECT_EQ(draft.items[0].source.sentence, "Replace the sink.");
    EXPECT_EQ(draft.items[0].source.line, 3);
    EXPECT_EQ(draft.items[1].source.line, 4);
    EXPECT_EQ(draft.items[1].note, "The faucet is fine.");
}

TEST(NotesTreatments, FaultsWithoutWorkAreLookedInto) {
    EXPECT_THAT(itemsOf("Kitchen. The faucet is loose."), ElementsAre("kitchen: inspect faucet"));
    EXPECT_THAT(itemsOf("Kitchen. There's a soft spot in the floor by the sink."),
                ElementsAre("kitchen: inspect floor"));
    EXPECT_THAT(itemsOf("Kitchen. Mouse droppings in the drawers."),
                ElementsAre("kitchen: inspect rodents"));
}

TEST(NotesTreatments, WordsThatOnlyStressBreakNoPhrase) {
    EXPECT_THAT(itemsOf("Kitchen. The faucet is completely shot."),
                ElementsAre("kitchen: replace faucet"));
    EXPECT_THAT(itemsOf("Kitchen. The plaster's really sound."),
                ElementsAre("kitchen: keep plaster"));
}

TEST(NotesTreatments, PartsOfWhatWasSpokenOf) {
    EXPECT_THAT(itemsOf("Kitchen. Cabinets are solid. Doors get painted."),
                IsSupersetOf({"kitchen: refinish cabinet doors"}));
}

TEST(NotesTreatments, WhatEveryHouseHasIsReplaced) {
    EXPECT_THAT(itemsOf("Hall bath. The toilet has to go."),
                ElementsAre("hall bath: replace toilet"));
    EXPECT_THAT(itemsOf("Hall bath. Take the wallpaper down."),
                ElementsAre("hall bath: remove wallpaper"));
}

TEST(NotesTreatments, SaidToo) {
    EXPECT_THAT(itemsOf("Kitchen. Walls get two coats of white, ceiling too."),
                IsSupersetOf({"kitchen: refinish walls", "kitchen: refinish ceiling"}));
}

TEST(NotesTreatments, ConditionsAreNoOrders) {
    EXPECT_THAT(itemsOf("Kitchen. Have the ceiling tested before anyone paints it."),
                ElementsAre("kitchen: inspect ceiling"));
}

TEST(NotesTreatments, PartIsMendedAndTheRestKept) {
    EXPECT_THAT(itemsOf("Kitchen. Repair the plaster by the window, the rest of the plaster is "
                        "fine."),
                IsSupersetOf({"kitchen: repair plaster", "kitchen: keep plaster"}));
}

}  // namespace
}  // namespace ledgerboard::intake
