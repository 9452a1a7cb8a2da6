// Protects: an order is told from a remark, and meant for the thing it names. How: sentences that
// once gave an item too many or too few, each a sort of sentence, with what a reader would list.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <string>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::IsSupersetOf;
using testing::Not;
using testing::UnorderedElementsAre;

TEST(NotesOrders, TheOrderAnswersTheCondition) {
    EXPECT_THAT(itemsOf("Outside. The flashing is loose at the chimney, so repair the roof there."),
                ElementsAre("outside: repair roof"));
}

TEST(NotesOrders, WhatOthersDidIsNoOrder) {
    EXPECT_THAT(itemsOf("Outside. The siding is sound, somebody painted it about four years ago."),
                ElementsAre("outside: keep siding"));
    EXPECT_THAT(itemsOf("Kitchen. Tear-out is the plumber's."), IsEmpty());
}

TEST(NotesOrders, NeedIsNoPastForm) {
    EXPECT_THAT(itemsOf("Kitchen. We need a dishwasher."), ElementsAre("kitchen: add dishwasher"));
}

TEST(NotesOrders, LookedAtAndLookAt) {
    EXPECT_THAT(itemsOf("Den. Have the flue looked at."), ElementsAre("den: inspect flue"));
    EXPECT_THAT(itemsOf("Den. Somebody should look at the flue."),
                ElementsAre("den: inspect flue"));
}

TEST(NotesOrders, KeepingOutranksARemark) {
    EXPECT_THAT(itemsOf("Basement. Furnace has a service card on it, keep the furnace."),
                ElementsAre("basement: keep furnace"));
}

TEST(NotesOrders, AnUnknownThingIsNotTheOneBefore) {
    EXPECT_THAT(itemsOf("Outside. The retaining wall is leaning. Take down the dead gazump."),
                Not(Contains("outside: remove retaining wall")));
}

TEST(NotesOrders, PaintGoesWhereItCan) {
    EXPECT_THAT(itemsOf("Back bedroom. New carpet, paint."),
                ElementsAre("back bedroom: replace carpet", "back bedroom: refinish walls"));
    EXPECT_THAT(itemsOf("Hall. Woodchip, strip that."), ElementsAre("hall: remove wallpaper"));
}

TEST(NotesOrders, OneOrderForAList) {
    EXPECT_THAT(itemsOf("Hall bath, gut it. Tub, toilet, vanity, new exhaust fan."),
                IsSupersetOf({"hall bath: replace bathtub", "hall bath: replace toilet",
                              "hall bath: replace vanity"}));
    const Draft draft =
        draftOf("Kitchen. New cabinets, 18 feet, new counter top, 40 square feet, sink.");
    ASSERT_EQ(draft.items.size(), 3U);
    EXPECT_EQ(draft.items[0].quantity->toString(), "18");
    EXPECT_EQ(draft.items[1].quantity->toString(), "40");
    EXPECT_EQ(draft.items[2].object, "sink");
}

TEST(NotesOrders, ALabelIsWhatItsLineIsAbout) {
    EXPECT_THAT(
        itemsOf("KITCHEN\n- Cabinets: plywood, homemade, doors that do not meet. All new.\n"),
        Contains("kitchen: replace cabinets"));
}

TEST(NotesOrders, FormsOfDoingAreNoThings) {
    EXPECT_THAT(itemsOf("Outside. Front steps have pulled away; replace."),
                ElementsAre("outside: replace steps"));
}

TEST(NotesOrders, AQuestionThatIsAnsweredNo) {
    EXPECT_THAT(itemsOf("Kitchen. Move the fridge to the far wall? I thought about it, so no."),
                IsEmpty());
}

TEST(NotesOrders, AUnitIsNoThing) {
    EXPECT_THAT(itemsOf("Basement. Replace the supply pipe, eight fixtures."),
                ElementsAre("basement: replace water supply"));
}

TEST(NotesOrders, WeeksAreALeadTimeOnlyWhereSomethingIsWaitedFor) {
    // 3 weeks at 5 working days; 3 weeks at 7 days from the order.
    const Draft work = draftOf("Kitchen. New cabinets, three weeks.");
    ASSERT_EQ(work.items.size(), 1U);
    ASSERT_TRUE(work.items[0].days.has_value());
    EXPECT_EQ(work.items[0].days->toString(), "15");
    EXPECT_FALSE(work.items[0].leadDays.has_value());
    const Draft wait = draftOf("Kitchen. New cabinets, three weeks from the order.");
    ASSERT_EQ(wait.items.size(), 1U);
    ASSERT_TRUE(wait.items[0].leadDays.has_value());
    EXPECT_EQ(wait.items[0].leadDays->toString(), "21");
}

TEST(NotesOrders, AHintIsLessSureThanAnOrder) {
    const auto draft = readNotes("Kitchen. Paint the walls. The faucet drips.");
    ASSERT_TRUE(draft.ok());
    ASSERT_EQ(draft.value().items.size(), 2U);
    // How high the scale reaches is weighed on talk (leanings.h); the order of the two is not.
    EXPECT_GE(draft.value().items[0].source.sure, draft.value().items[1].source.sure + 10);
}

TEST(NotesOrders, ReplaceIsNoAdding) {
    EXPECT_THAT(itemsOf("Hall bath. The fan makes noise but doesn't move any air. Replace it."),
                ElementsAre("hall bath: replace bath fan"));
}

TEST(NotesOrders, AListBehindItsOrder) {
    EXPECT_THAT(itemsOf("Hall. Paint everything, walls, ceilings and trim."),
                UnorderedElementsAre("hall: refinish walls", "hall: refinish ceiling",
                                     "hall: refinish trim"));
    EXPECT_THAT(itemsOf("Bathroom. Everything is to be replaced, tub, sink and toilet."),
                UnorderedElementsAre("bathroom: replace bathtub", "bathroom: replace sink",
                                     "bathroom: replace toilet"));
}

TEST(NotesOrders, TightenAndPaint) {
    EXPECT_THAT(itemsOf("Hall. Railing is loose; tighten and paint."),
                UnorderedElementsAre("hall: repair railing", "hall: refinish railing"));
}

TEST(NotesOrders, CarpetAndPaint) {
    EXPECT_THAT(itemsOf("Den. Carpet and paint."),
                UnorderedElementsAre("den: replace carpet", "den: refinish walls"));
}

TEST(NotesOrders, SomePiecesAreNotTheWhole) {
    EXPECT_THAT(itemsOf("Outside. A few shingles are missing, replace those."),
                ElementsAre("outside: repair roof"));
    EXPECT_THAT(itemsOf("Outside. The roof is slate, and twelve slates to be replaced."),
                ElementsAre("outside: repair roof"));
    EXPECT_THAT(itemsOf("Outside. Three slates have slipped. Replace those."),
                ElementsAre("outside: repair roof"));
    EXPECT_THAT(itemsOf("Kitchen. One window won't stay up: new balance."),
                ElementsAre("kitchen: repair windows"));
}

TEST(NotesOrders, TwoLotsOfAThingEachGetTheirOwn) {
    EXPECT_THAT(itemsOf("Outside. Shingles look young, but repair the roof at the back."),
                Not(Contains("outside: keep roof")))
        << "one roof, by two names";
    EXPECT_THAT(itemsOf("Kitchen. The uppers are going, the lowers stay."),
                UnorderedElementsAre("kitchen: remove cabinets", "kitchen: keep cabinets"));
}

TEST(NotesOrders, TheContraryOfWhatWasSaidLast) {
    EXPECT_THAT(itemsOf("Den. The mantel stays, the wallpaper doesn't."),
                UnorderedElementsAre("den: keep mantel", "den: remove wallpaper"));
}

TEST(NotesOrders, SoIsTheOther) {
    EXPECT_THAT(itemsOf("Bathroom. The sink is fine and so is the toilet."),
                UnorderedElementsAre("bathroom: keep sink", "bathroom: keep toilet"));
}

TEST(NotesOrders, WhatStaysIsPainted) {
    EXPECT_THAT(itemsOf("Kitchen. The cabinets stay, paint."),
                Contains("kitchen: refinish cabinets"));
}

TEST(NotesOrders, WhereAThingLeadsIsNoRemoval) {
    EXPECT_THAT(itemsOf("Kitchen. The stove stays so the hood can go straight out."),
                ElementsAre("kitchen: keep stove"));
}

TEST(NotesOrders, OkayByItselfSaysNothing) {
    EXPECT_THAT(itemsOf("Kitchen. That wall's soft. Okay."), ElementsAre("kitchen: inspect walls"));
}

// Thirty words of which hardly one is small: what the reader takes for shorthand.
constexpr const char* kTerse =
    "KIT: cabs keep, ctop new, sink new, faucet new, stove keep, fridge keep, disposal new\n"
    "BR1: carpet new, closet doors new, window keep, ceiling fan keep, blinds new\n"
    "BR2: carpet keep, closet doors new, window keep, ceiling fan new, blinds new\n";

TEST(NotesOrders, ShorthandIsShortForWordsOfTheTables) {
    EXPECT_THAT(itemsOf(std::string(kTerse) + "DR: chand swap, wains keep\nBATH: vnty new\n"),
                IsSupersetOf({"dining room: replace chandelier", "dining room: keep wainscot",
                              "bath: replace vanity"}));
}

TEST(NotesOrders, EntriesOfShorthandStandByThemselves) {
    EXPECT_THAT(itemsOf(std::string(kTerse) + "LR: carpet r/r, wls pnt, FP r/r\nMBR: cpt, paint\n"),
                IsSupersetOf({"living room: replace carpet", "living room: refinish walls",
                              "living room: replace fireplace", "primary bedroom: replace carpet",
                              "primary bedroom: refinish walls"}));
}

TEST(NotesOrders, AVerbBeforeACommaIsSaidAndDoneWith) {
    EXPECT_THAT(itemsOf("Bedroom 1 - floor good, paint, window AC out\n"),
                IsSupersetOf({"bedroom 1: keep floor", "bedroom 1: refinish walls",
                              "bedroom 1: remove window air conditioner"}));
    EXPECT_THAT(
        itemsOf("Second bedroom. Oak floor. Refinish that one, 130 square feet, and paint."),
        IsSupersetOf({"second bedroom: refinish wood floor", "second bedroom: refinish walls"}));
}

}  // namespace
}  // namespace ledgerboard::intake
