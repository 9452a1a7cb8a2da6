// Protects: a word of the owner wins over the tables, for things no table holds as well; and a
// correction teaches what is plain and nothing else.
// How: small notes read with and without words; corrections of one sentence. What is right in each
// was decided by hand from the sentence.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/intake/notes/lessons.h"
#include "core/intake/notes/read_notes.h"

namespace ledgerboard::intake {
namespace {

using model::Treatment;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

std::vector<std::string> itemsWith(std::string_view notes, std::vector<OwnWord> words) {
    ReadOptions options;
    options.leastSure = 0;
    options.ownWords = std::move(words);
    const auto draft = readNotes(notes, options);
    std::vector<std::string> items;
    for (const DraftItem& item : draft.value().items) {
        items.push_back(item.space + ": " + item.treatment + " " + item.object);
    }
    return items;
}

OwnWord thing(const std::string& phrase, const std::string& object) {
    return {.phrase = phrase, .object = object};
}

TEST(NotesOwnWords, AThingOfTheTablesHasAnotherWord) {
    constexpr std::string_view kNotes = "Kitchen. Replace the chiller.";
    EXPECT_THAT(itemsWith(kNotes, {}), Not(Contains("kitchen: replace refrigerator")));
    EXPECT_THAT(itemsWith(kNotes, {thing("Chillers", "refrigerator")}),
                ElementsAre("kitchen: replace refrigerator"));
}

TEST(NotesOwnWords, AThingOfNoTableGoesByItsName) {
    constexpr std::string_view kNotes =
        "Kitchen. The zorb is loose. Repair it. Replace the sink. Hall. Replace the blue gizmo.";
    EXPECT_THAT(
        itemsWith(kNotes, {thing("zorb", "corner seat"), thing("blue gizmo", "bell board")}),
        testing::AllOf(Contains("kitchen: repair corner seat"), Contains("kitchen: replace sink"),
                       Contains("hall: replace bell board")));
}

TEST(NotesOwnWords, TheOwnersNameOfAThingIsShown) {
    EXPECT_THAT(itemsWith("Kitchen. Replace the chiller.", {thing("chiller", "icebox machine")}),
                ElementsAre("kitchen: replace icebox machine"));
}

TEST(NotesOwnWords, TheLongerPhraseAndTheLaterWordHold) {
    EXPECT_THAT(itemsWith("Kitchen. Replace the big chiller.",
                          {thing("chiller", "refrigerator"), thing("big chiller", "freezer box"),
                           thing("chiller", "dishwasher")}),
                ElementsAre("kitchen: replace freezer box"));
    EXPECT_THAT(itemsWith("Kitchen. Replace the chiller.",
                          {thing("chiller", "refrigerator"), thing("chiller", "dishwasher")}),
                ElementsAre("kitchen: replace dishwasher"));
}

// "Counter stools" are a thing of the tables: what "counter" means says nothing of them.
TEST(NotesOwnWords, ALongerNameOfTheTablesStands) {
    constexpr std::string_view kNotes = "Kitchen. Replace the tile backsplash.";
    const auto plain = itemsWith(kNotes, {});
    ASSERT_THAT(plain, testing::SizeIs(1));
    EXPECT_EQ(itemsWith(kNotes, {{.phrase = "tile", .nothing = true}}), plain);
    EXPECT_EQ(itemsWith(kNotes, {thing("tile", "sideboard")}), plain);
}

TEST(NotesOwnWords, WordsMaySayThatTheyAreNoObject) {
    constexpr std::string_view kNotes = "Kitchen. Replace the sink. Replace the tap.";
    ASSERT_THAT(itemsWith(kNotes, {}), Contains("kitchen: replace faucet"));
    EXPECT_THAT(itemsWith(kNotes, {{.phrase = "tap", .nothing = true}}),
                ElementsAre("kitchen: replace sink"));
}

TEST(NotesOwnWords, ASpaceHasAnotherWord) {
    EXPECT_THAT(
        itemsWith("Now we're in the snug. Paint the walls.", {{.phrase = "snug", .space = "den"}}),
        ElementsAre("den: refinish walls"));
}

TEST(NotesOwnWords, ATreatmentHasAnotherWord) {
    constexpr std::string_view kNotes = "Basement. The boiler is shot.";
    ASSERT_THAT(itemsWith(kNotes, {}), ElementsAre("basement: replace boiler"));
    EXPECT_THAT(itemsWith(kNotes, {{.phrase = "shot", .treatment = Treatment::Repair},
                                   {.phrase = "is shot", .treatment = Treatment::Repair}}),
                ElementsAre("basement: repair boiler"));
}

TEST(NotesOwnWords, TheDraftAndTheExplanationNameThoseUsed) {
    ReadOptions options;
    options.explain = true;
    options.ownWords = {thing("chiller", "refrigerator"), thing("zorb", "corner seat")};
    const auto reading = explainNotes("Kitchen. Replace the chiller.", options);
    ASSERT_TRUE(reading.ok());
    EXPECT_THAT(reading.value().draft.ownWords, ElementsAre("\"chiller\" means refrigerator"));
    std::string told;
    for (const auto& sentence : reading.value().explained) {
        for (const auto& stage : sentence.stages) {
            told += stage.stage + ": " + stage.made + "\n";
        }
    }
    EXPECT_THAT(told, HasSubstr("owner's words: \"chiller\" means refrigerator"));
}

TEST(NotesOwnWords, MoreThingsThanRowsAreLeftAlone) {
    std::vector<OwnWord> words;
    std::string notes = "Kitchen.";
    for (int i = 0; i < 90; ++i) {
        const std::string name(1, static_cast<char>('a' + i % 26));
        const std::string phrase = "zq" + name + std::string(static_cast<std::size_t>(i / 26), 'x');
        words.push_back(thing(phrase, "own " + phrase));
        notes += " Replace the " + phrase + ".";
    }
    EXPECT_GE(itemsWith(notes, words).size(), 60U);
}

Correction renamed(const std::string& sentence, const std::string& from, const std::string& to) {
    ItemSays before{.space = "kitchen", .treatment = Treatment::Replace, .object = from};
    ItemSays after = before;
    after.object = to;
    return {.sentence = sentence, .before = before, .after = after};
}

TEST(NotesLessons, ARenamedThingTeachesTheWordsThatNamedIt) {
    const auto lessons = lessonsOf(renamed("Replace the tap.", "faucet", "pot filler"));
    ASSERT_EQ(lessons.size(), 1U);
    EXPECT_EQ(lessons[0], thing("tap", "pot filler"));
    // Known already: nothing more.
    EXPECT_THAT(lessonsOf(renamed("Replace the tap.", "faucet", "pot filler"), lessons), IsEmpty());
}

TEST(NotesLessons, WhatIsNotPlainTeachesNothing) {
    // Two phrases name it; the sentence doesn't; a closer name; no sentence.
    EXPECT_THAT(lessonsOf(renamed("Replace the tap, that faucet.", "faucet", "pot filler")),
                IsEmpty());
    EXPECT_THAT(lessonsOf(renamed("Replace it.", "faucet", "pot filler")), IsEmpty());
    EXPECT_THAT(lessonsOf(renamed("Replace the sink.", "sink", "vessel sink")), IsEmpty());
    EXPECT_THAT(lessonsOf(renamed("", "faucet", "pot filler")), IsEmpty());
    EXPECT_THAT(lessonsOf(renamed("Replace the tap.", "faucet", "Faucets")), IsEmpty());
    EXPECT_THAT(lessonsOf(renamed("Replace the tap.", "faucet", "kitchen faucet")), IsEmpty());
}

TEST(NotesLessons, AChangedJudgementTeachesAChangedOrderDoesNot) {
    ItemSays before{.space = "basement", .treatment = Treatment::Replace, .object = "boiler"};
    ItemSays after = before;
    after.treatment = Treatment::Repair;
    const auto lessons =
        lessonsOf({.sentence = "The boiler is worn out.", .before = before, .after = after});
    ASSERT_EQ(lessons.size(), 1U);
    EXPECT_EQ(lessons[0].treatment, Treatment::Repair);
    EXPECT_THAT(lessons[0].phrase, HasSubstr("worn out"));
    EXPECT_THAT(lessonsOf({.sentence = "Replace the boiler.", .before = before, .after = after}),
                IsEmpty());
}

TEST(NotesLessons, ADropTeachesOnlyOfWordsThatAreNotTheThingsName) {
    ItemSays before{.space = "kitchen", .treatment = Treatment::Replace, .object = "faucet"};
    const auto lessons = lessonsOf({.sentence = "Replace the tap.", .before = before});
    ASSERT_EQ(lessons.size(), 1U);
    EXPECT_TRUE(lessons[0].nothing);
    EXPECT_EQ(lessons[0].phrase, "tap");
    EXPECT_THAT(lessonsOf({.sentence = "Replace the faucet.", .before = before}), IsEmpty());
}

TEST(NotesLessons, AnAddedThingTeachesItsWordWhereTheSentenceHoldsIt) {
    ItemSays after{.space = "kitchen", .treatment = Treatment::Repair, .object = "zorb"};
    const auto lessons = lessonsOf({.sentence = "The zorb is loose.", .after = after});
    ASSERT_EQ(lessons.size(), 1U);
    EXPECT_EQ(lessons[0], thing("zorb", "zorb"));
    EXPECT_THAT(lessonsOf({.sentence = "The seat is loose.", .after = after}), IsEmpty());
}

TEST(NotesLessons, ASpaceWithANameOfEveryHouseTeachesNothing) {
    ItemSays before{.space = "snuggery", .treatment = Treatment::Keep, .object = "walls"};
    ItemSays after = before;
    after.space = "den";
    Correction correction{.sentence = "Walls are fine.", .before = before, .after = after};
    EXPECT_THAT(lessonsOf(correction), IsEmpty());  // moved, not renamed
    correction.spaceRenamed = true;
    const auto lessons = lessonsOf(correction);
    ASSERT_EQ(lessons.size(), 1U);
    EXPECT_EQ(lessons[0].space, "den");
    correction.before->space = "kitchen";
    EXPECT_THAT(lessonsOf(correction), IsEmpty());
}

}  // namespace
}  // namespace ledgerboard::intake
