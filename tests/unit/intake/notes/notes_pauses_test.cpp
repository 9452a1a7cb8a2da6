// Protects: talk that a phone wrote down without a mark is read as sentences. How: what is put
// between the words, and what becomes of it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/intake/notes/pauses.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/tables.h"

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::IsEmpty;
using testing::IsSupersetOf;
using testing::Not;

// A walk without a mark, long enough to be known for one.
constexpr std::string_view kWalk =
    "so we come in the front door and the storm door is bent that goes the living room has carpet "
    "pull that up there is oak under it refinish the oak the fireplace is fine leave it alone "
    "kitchen the cabinets are solid we keep those the countertop is burned replace it the faucet "
    "drips replace it the dishwasher is dead get a new one then the hall bath the toilet runs "
    "replace it the tub is chipped reglaze it the vanity stays okay outside the roof is ten years "
    "old it's fine";

std::string restored(std::string_view text) {
    Speller speller(tables().lexicon);
    Stems stems(tables().lexicon);
    std::vector<Token> tokens;
    cutTokens(text, 1, speller, tables().lexicon, tokens);
    restorePauses(tokens, 0, stems);
    std::string told;
    for (const Token& token : tokens) {
        told += token.kind == TokenKind::Mark ? std::string(1, token.mark)
                                              : (told.empty() ? "" : " ") + std::string(token.text);
    }
    return told;
}

TEST(NotesPauses, EveryRowCanBeUsed) {
    EXPECT_THAT(pauseFaults(), IsEmpty());
}

TEST(NotesPauses, WhatIsWrittenStaysAsItIs) {
    EXPECT_THAT(sentencesOf(kWalk), Contains("the fireplace is fine"));
    std::string all;
    for (const std::string& sentence : sentencesOf(kWalk)) {
        all += (all.empty() ? "" : " ") + sentence;
    }
    EXPECT_EQ(all, kWalk);
}

TEST(NotesPauses, ItemsAreReadOfThem) {
    const std::vector<std::string> items = itemsOf(kWalk);
    EXPECT_THAT(items, IsSupersetOf({"kitchen: keep cabinets", "kitchen: replace countertop",
                                     "kitchen: replace faucet", "kitchen: replace dishwasher",
                                     "hall bath: replace toilet", "hall bath: refinish bathtub"}));
    EXPECT_THAT(items, Not(Contains("kitchen: replace cabinets")));
}

TEST(NotesPauses, NoneWithinAFigureOrTheNameOfAThing) {
    EXPECT_EQ(restored("one eighty seven five"), "one eighty seven five");
    EXPECT_EQ(restored("the garage door opener"), "the garage door opener");
}

TEST(NotesPauses, MarksThatAreThereAreNotDoubled) {
    EXPECT_EQ(restored("The sink is fine. Leave it."), "The sink is fine. Leave it.");
    EXPECT_EQ(restored(""), "");
    EXPECT_EQ(restored("kitchen"), "kitchen");
}

TEST(NotesPauses, NotesWithMarksKeepTheirOwn) {
    EXPECT_THAT(sentencesOf("The sink, which is old and which nobody likes but me, stays."),
                testing::SizeIs(1));
}

// A line that breaks off where no page ends is the speaker's own.
TEST(NotesPauses, LongLinesEndSentences) {
    const std::string line =
        "kitchen the cabinets are solid we keep those and the countertop is burned so we replace "
        "it and the faucet drips and the dishwasher is dead";
    const std::vector<std::string> sentences =
        sentencesOf(line + "\nhall bath the toilet runs\n" + line + "\n" + line);
    EXPECT_THAT(sentences, Contains(testing::StartsWith("hall bath")));
}

}  // namespace
}  // namespace ledgerboard::intake
