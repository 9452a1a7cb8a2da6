// Protects: what is not decided stays an open alternate and is no item. How: short invented notes.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/intake/notes/openings.h"

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::IsEmpty;
using testing::Not;

TEST(NotesChoices, EitherOr) {
    const Draft draft = draftOf(
        "Primary bath. Either we reglaze the tub for $600 or we take it out and build a shower for "
        "$6,400. Not sure yet.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].space, "primary bath");
    EXPECT_EQ(draft.alternates[0].options.size(), 2U);
    EXPECT_EQ(draft.alternates[0].options[0].cost->toString(), "600.00");
    EXPECT_EQ(draft.alternates[0].options[1].cost->toString(), "6400.00");
    EXPECT_THAT(draft.items, IsEmpty());
}

TEST(NotesChoices, WeCouldHasLeavingItAsItsOtherOption) {
    const Draft draft = draftOf("Kitchen. We could add an island. Replace the sink.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].options.back().name, "leave as is");
    EXPECT_THAT(itemsOf("Kitchen. We could add an island. Replace the sink."),
                testing::ElementsAre("kitchen: replace sink"));
}

TEST(NotesChoices, MaterialAloneLeavesTheItem) {
    const char* notes = "KIT\n ctop - repl 28 sf, laminate or quartz, tbd\n";
    EXPECT_EQ(draftOf(notes).alternates.size(), 1U);
    EXPECT_THAT(itemsOf(notes), Contains("kitchen: replace countertop"));
}

TEST(NotesChoices, SoftWordsLeaveNothingOpen) {
    const char* notes =
        "Kitchen. The walls could use a coat of paint. We might as well replace the sink. That "
        "might be asbestos. Maybe twenty shingles slipped.";
    EXPECT_THAT(draftOf(notes).alternates, IsEmpty());
    EXPECT_THAT(itemsOf(notes), Contains("kitchen: refinish walls"));
}

TEST(NotesChoices, ItIsWhatWasSpokenOfBefore) {
    const Draft draft = draftOf(
        "Kitchen. The wall to the dining room. Take it out, it's eight thousand with the beam, or "
        "leave it and spend the money on the bath. I go back and forth.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].space, "kitchen");
    EXPECT_EQ(draft.alternates[0].question, "walls");
}

TEST(NotesChoices, WhatOthersCouldNotDecideIsOver) {
    EXPECT_THAT(
        draftOf("Kitchen. The old owner couldn't decide between blue and green. Paint.").alternates,
        IsEmpty());
}

TEST(NotesChoices, TwoStuffsWithOrBetweenThem) {
    const Draft draft = draftOf("Kitchen. The worktop is burnt. Slate or maple, whichever.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].space, "kitchen");
    EXPECT_EQ(draft.alternates[0].question, "countertop material");
    EXPECT_THAT(draftOf("Kitchen. No slate or marble in here. New sink.").alternates, IsEmpty());
}

TEST(NotesChoices, WhoIsAskedLeavesOpenOnlyWhatWasThoughtOf) {
    EXPECT_EQ(draftOf("Den. We could take the paneling down. I'll ask my wife.").alternates.size(),
              1U);
    EXPECT_THAT(draftOf("Den. The paneling is walnut. I'll ask my wife who made it.").alternates,
                IsEmpty());
}

TEST(NotesChoices, WhatHangsOnTheMoney) {
    const Draft draft = draftOf(
        "Kitchen. New sink. If there's money left over I'd put an awning on the back, and if not, "
        "not.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].space, "outside");
    EXPECT_EQ(draft.alternates[0].question, "awning");
}

TEST(NotesChoices, HowWideACrackIsAndHowLongAgo) {
    EXPECT_THAT(draftOf("Porch. There's a crack in the slab you could drop a spoon in. The "
                        "windows were put in six or seven years ago.")
                    .alternates,
                IsEmpty());
}

TEST(NotesChoices, TheSecondWayAlone) {
    const Draft draft = draftOf("Den. Take the wet bar out. Or leave it.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].question, "wet bar");
}

TEST(NotesChoices, AShedIsItsOwnPlace) {
    const Draft draft =
        draftOf("Yard. Mow the lawn. Either we pull the shed down or we reroof it.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].space, "shed");
}

TEST(NotesChoices, EitherWayIsSettled) {
    EXPECT_THAT(itemsOf("Kitchen. Counters are going either way, new ones in quartz."),
                Contains("kitchen: replace countertop"));
}

TEST(NotesChoices, WhatTheMoneyGoesToFirstIsNotTheMatter) {
    const Draft draft = draftOf(
        "Bedroom. The mirror is cracked. New mirror, only if there is money left after the roof.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].question, "mirror");
}

TEST(NotesChoices, ThePlaceSaidRightAfterTheThing) {
    const Draft draft = draftOf(
        "Hall. Paint it. If there's money left over I'd like a wood stove in the den, else not.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].space, "den");
}

// Here the weights decide; each is said in a way that no rule knows.
TEST(NotesChoices, WaysThatNoPhraseHolds) {
    for (const std::string_view notes :
         {"Pantry. Counter: maple or slate? Rosa has to choose.",
          "Den. Gas insert or a wood stove, we haven't picked one yet.",
          "Hall bath. Should we do a tub or a shower? Undecided, ask Hal."}) {
        const auto draft = readNotes(notes);
        ASSERT_TRUE(draft.ok());
        EXPECT_EQ(draft.value().alternates.size(), 1U) << notes;
    }
}

TEST(NotesChoices, PlainTalkLeavesNothingOpen) {
    for (const std::string_view notes :
         {"Pantry. Replace the counter. The shelves are good.",
          "Den. The stove goes. Maybe thirty feet of baseboard is loose, nail it.",
          "Hall bath. Tub or shower? Shower, that's decided. New toilet."}) {
        const auto draft = readNotes(notes);
        ASSERT_TRUE(draft.ok());
        EXPECT_THAT(draft.value().alternates, IsEmpty()) << notes;
    }
}

TEST(NotesChoices, OneTalkIsOneChoice) {
    const auto draft = readNotes(
        "Den. The paneling, we can't decide. Either paint it or rip it out. Painting is nine "
        "hundred. My wife wants it out. We'll see.");
    ASSERT_TRUE(draft.ok());
    EXPECT_EQ(draft.value().alternates.size(), 1U);
}

// What either of two materials is for was named last before them, not first in the sentence.
TEST(NotesChoices, TwoMaterialsAreOfTheThingBeforeThem) {
    const Draft draft =
        draftOf("Kitchen. New cabinets, and for the counter either laminate or oak, not sure yet.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].question, "countertop material");
}

std::vector<std::string> optionsIn(const char* notes) {
    std::vector<std::string> names;
    for (const DraftAlternate& alternate : draftOf(notes).alternates) {
        for (const DraftOption& option : alternate.options) {
            names.push_back(option.name);
        }
    }
    return names;
}

// People read them in a list on a phone: no half sentences, no prices.
TEST(NotesChoices, OptionsAreCutToWhatNamesThem) {
    using testing::ElementsAre;
    EXPECT_THAT(optionsIn("Kitchen. New cabinets, 18 feet, countertop I'm thinking butcher block "
                          "or quartz."),
                ElementsAre("butcher block", "quartz"));
    EXPECT_THAT(optionsIn("Den. Either we paint the paneling for $600 or rip it out, not sure."),
                ElementsAre("paint the paneling", "rip it out"));
    EXPECT_THAT(optionsIn("Den. The paneling. If the price is right I'd paint it, otherwise leave "
                          "it."),
                ElementsAre("paint it", "leave it"));
    EXPECT_THAT(optionsIn("Kitchen. Counter: undecided between slate and maple."),
                ElementsAre("slate", "maple"));
}

TEST(NotesChoices, WhatAWayCostsIsToldOfTheWayNamedBefore) {
    const Draft draft =
        draftOf("Kitchen. The counter: slate or maple, not sure yet. Slate is fifty-four hundred.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    ASSERT_EQ(draft.alternates[0].options.size(), 2U);
    EXPECT_EQ(draft.alternates[0].options[0].cost->toString(), "5400.00");
}

TEST(NotesChoices, ASpaceItselfIsTheMatter) {
    for (const char* notes :
         {"Hall. Paint it. Whether to repair or replace the attic, undecided.",
          "Hall. Paint it. We're undecided about the attic: it could be a loft, or stay an attic.",
          "Hall. Paint it. Not sure yet whether to make the attic a loft."}) {
        const Draft draft = draftOf(notes);
        ASSERT_EQ(draft.alternates.size(), 1U) << notes;
        EXPECT_EQ(draft.alternates[0].space, "attic") << notes;
    }
}

TEST(NotesChoices, CountersAreTheKitchens) {
    const Draft draft =
        draftOf("Kitchen. Keep the sink. Yard. Mow it. Counters: quartz or granite, not sure yet.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].space, "kitchen");
}

// What was spoken of before is where that was, not where one stands.
TEST(NotesChoices, WhatIsMeantByItIsWhereItWas) {
    const auto draft = readNotes(
        "Basement. Paint the floor. The siding outside is dented. Either replace it or leave it, "
        "can't decide.");
    ASSERT_TRUE(draft.ok());
    ASSERT_EQ(draft.value().alternates.size(), 1U);
    EXPECT_EQ(draft.value().alternates[0].space, "outside");
}

// "As it is" stays whole, and what may be so is no option.
TEST(NotesChoices, LeavingAThingAsItIsIsAnOption) {
    const Draft draft = draftOf(
        "Dining room. Either open up the wall or leave the wall as it is. It might be holding up "
        "the bathroom, and I am not deciding that today.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    std::vector<std::string> options;
    for (const DraftOption& option : draft.alternates[0].options) {
        options.push_back(option.name);
    }
    EXPECT_THAT(options, testing::ElementsAre("open up the wall", "leave the wall as it is"));
}

// What two sentences only hint at by themselves is one choice, and no work.
TEST(NotesChoices, TwoHintsMakeAChoice) {
    const Draft draft = draftOf(
        "Living room. The ceiling is tongue and groove and someone painted it. Strip it? Or leave "
        "it white? Price both.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].space, "living room");
}

// A building is meant by "it" as a thing is.
TEST(NotesChoices, ItIsTheBuildingSpokenOfBefore) {
    const Draft draft = draftOf(
        "Outside. Paint the siding. The garage out back is leaning. Do we knock it down or "
        "straighten it? Not sure yet.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].space, "garage");
}

// A way to heat the house is the house's, though a heater stands where one speaks of it.
TEST(NotesChoices, WhatHeatsTheHouseIsTheHouses) {
    const Draft draft = draftOf(
        "Kitchen. Keep the sink. Hall. The floor furnace is dead. Either mini splits for eleven "
        "thousand or a real furnace with ducts, not sure yet.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].space, "whole house");
}

TEST(NotesChoices, EveryWeightCanBeUsed) {
    EXPECT_THAT(openingFaults(), IsEmpty());
    EXPECT_GT(leastOpen(true), 0);
    EXPECT_GE(leastOpen(false), leastOpen(true));
    EXPECT_LT(leastOpen(false), 100);
    EXPECT_EQ(chanceOpen({}), 50);  // e to the nought against one
}

// Protects: what is replaced whatever its material keeps the measure that was said, so that it can
// be priced, and no material's cost.
TEST(NotesChoices, AThingOfOpenMaterialHasItsMeasure) {
    const Draft draft = draftOf("Kitchen. Countertop 42 sf, quartz at 4,200 or granite TBD.");
    ASSERT_EQ(draft.alternates.size(), 1U);
    EXPECT_EQ(draft.alternates[0].materialOf, "countertop");
    ASSERT_EQ(draft.items.size(), 1U);
    ASSERT_TRUE(draft.items[0].quantity.has_value());
    EXPECT_EQ(draft.items[0].quantity->toString(), "42");
    EXPECT_EQ(draft.items[0].unit, "sq ft");
    EXPECT_FALSE(draft.items[0].cost.has_value());
}

}  // namespace
}  // namespace ledgerboard::intake
