// Protects: the table of weights can be used whole, chances are chances, what is less sure than
// asked for is not made and is counted, and one thing is never kept and replaced at once.
// How: the embedded table; small invented notes read with floors of 0 and 100. How well the weights
// hold is no matter for a unit test: score-notes prints it on talk left out.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <map>
#include <numeric>
#include <set>

#include "core/intake/notes/leanings.h"
#include "core/intake/notes/read_notes.h"
#include "core/intake/notes/senses.h"

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using model::Treatment;
using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr std::string_view kNotes =
    "Kitchen. Replace the sink. I guess somebody might have painted over the old tile, who knows, "
    "the neighbor had it done. Fridge is newish, it can live. The range has to go.\n"
    "Hall bath: tub is chipped. Toilet fine.\n";

std::vector<std::string> sensesOf(const std::vector<std::string_view>& stems) {
    std::vector<std::string> names;
    const std::vector<ClueWords> words(stems.begin(), stems.end());
    std::vector<const ClueWords*> said;
    for (const ClueWords& word : words) {
        said.push_back(&word);
    }
    for (const SenseSpot& spot : sensesIn(said)) {
        names.push_back((spot.denied ? "not " : "") + std::string(senseWords(spot.sense).text()));
    }
    return names;
}

TEST(NotesLeanings, EveryRowCanBeUsed) {
    EXPECT_THAT(leaningFaults(), IsEmpty());
    EXPECT_GT(leastSure(), 0);
    EXPECT_LT(leastSure(), 50);
}

TEST(NotesLeanings, ChancesOfNothingKnownAreEven) {
    const Chances chances = chancesOf(Evidence{});
    for (const double chance : chances) {
        EXPECT_NEAR(chance, 1.0 / static_cast<double>(chances.size()), 1e-12);
    }
}

TEST(NotesLeanings, ChancesAddUpToOne) {
    Evidence evidence;
    evidence.thing.add("every");
    evidence.thing.add("made", "replace");
    evidence.thing.add("no such clue");
    evidence.mentions.resize(2);
    evidence.mentions.front().add("after says", "rotten");
    const Chances chances = chancesOf(evidence);
    EXPECT_NEAR(std::accumulate(chances.begin(), chances.end(), 0.0), 1.0, 1e-12);
    for (const double chance : chances) {
        EXPECT_GE(chance, 0.0);
    }
}

// Named five times in passing and once with what is to be done: the one time decides.
TEST(NotesLeanings, TheMentionThatTellsMostDecides) {
    const auto surest = [](int times) {
        Evidence evidence;
        evidence.mentions.resize(static_cast<std::size_t>(times));
        evidence.mentions.back().add("after says", "rotten");
        evidence.mentions.back().add("act before", "replace", "3");
        const Chances chances = chancesOf(evidence);
        return std::max_element(chances.begin() + 1, chances.end()) - chances.begin();
    };
    EXPECT_EQ(surest(1), static_cast<int>(Treatment::Replace));
    EXPECT_EQ(surest(6), surest(1));
}

TEST(NotesLeanings, WhatIsSaidIsKnownByItsThingToo) {
    Clues clues(true);
    clues.addSaid(ClueWords("after says"), ClueWords("rotten"));
    clues.add("right after", "is");
    clues.addSaidOf(ClueWords("thing"), ClueWords("window sill"));
    clues.settle();
    ASSERT_EQ(clues.names().size(), 3U);
    EXPECT_EQ(clues.names().back(), "thing window sill && after says rotten");
    EXPECT_THAT(clues.keys(), Contains(clueKey("thing window sill && after says rotten")));
}

TEST(NotesLeanings, AClueIsKnownByItsWords) {
    Clues clues(true);
    clues.add("after says", "near", "good");
    clues.add("after says", "near", "good");
    clues.settle();
    ASSERT_EQ(clues.keys().size(), 1U);
    ASSERT_EQ(clues.names().size(), 1U);
    EXPECT_EQ(clues.names().front(), "after says near good");
    EXPECT_EQ(clues.keys().front(), clueKey("after says near good"));
}

TEST(NotesLeanings, TheLongestSayingIsTheOneMeant) {
    EXPECT_THAT(sensesOf({"it", "is", "on", "it", "last", "leg"}), Contains("dead"));
    EXPECT_THAT(sensesOf({"not", "good"}), Contains("not good"));
}

TEST(NotesLeanings, WhatIsLessSureThanAskedForIsNotMade) {
    ReadOptions all;
    all.leastSure = 0;
    ReadOptions none;
    none.leastSure = 100;
    const auto whole = readNotes(kNotes, all);
    const auto plain = readNotes(kNotes);
    const auto empty = readNotes(kNotes, none);
    ASSERT_TRUE(whole.ok() && plain.ok() && empty.ok());
    EXPECT_GE(whole.value().items.size(), plain.value().items.size());
    EXPECT_THAT(empty.value().items, IsEmpty());
    EXPECT_EQ(whole.value().leftOut, 0);
    EXPECT_EQ(static_cast<std::size_t>(empty.value().leftOut), whole.value().items.size());
    ASSERT_FALSE(plain.value().items.empty());
    EXPECT_EQ(plain.value().items.front().object, "sink");
    for (const DraftItem& item : plain.value().items) {
        EXPECT_GE(item.source.sure, leastSure());
    }
}

TEST(NotesLeanings, ARoomGetsOneNewFloor) {
    EXPECT_THAT(itemsOf("Den. Carpet out, plank in, 200 sf."),
                testing::ElementsAre("den: replace vinyl plank"));
    EXPECT_THAT(itemsOf("Hall. Tile at the door, 20 square feet of new tile, and new carpet in the "
                        "rest of it, 90."),
                testing::UnorderedElementsAre("hall: replace floor tile", "hall: replace carpet"))
        << "each measured by itself";
}

TEST(NotesLeanings, OneThingIsNotKeptAndWorkedOn) {
    ReadOptions all;
    all.leastSure = 0;
    const auto draft = readNotes(kNotes, all);
    ASSERT_TRUE(draft.ok());
    std::map<std::string, std::set<std::string>> treatments;
    for (const DraftItem& item : draft.value().items) {
        treatments[item.space + "|" + item.object].insert(item.treatment);
    }
    EXPECT_GT(treatments.size(), 3U);
    for (const auto& [thing, all_] : treatments) {
        if (all_.contains("keep") || all_.contains("replace")) {
            EXPECT_EQ(all_.size(), 1U) << thing;
        }
    }
}

// "Patch the walls and paint": the two share out their chance, and yet both are to be done.
TEST(NotesLeanings, OfTwoWorksTheSecondIsAsSureAsItIsAmongTheOthers) {
    std::vector<Found> made(2);
    made.front().treatment = Treatment::Repair;
    made.back().treatment = Treatment::Refinish;
    Thing thing;
    thing.made = {0, 1};
    Chances chances{};
    chances[static_cast<std::size_t>(Treatment::Repair)] = 0.75;
    chances[static_cast<std::size_t>(Treatment::Refinish)] = 0.25;
    const std::vector<Leaning> leanings = leaningsOf(thing, chances, made);
    ASSERT_EQ(leanings.size(), 2U);
    EXPECT_EQ(leanings.front().treatment, Treatment::Repair);
    EXPECT_GT(leanings.back().sure, leanings.front().sure);
}

TEST(NotesLeanings, ExplainTellsHowLikelyEachTreatmentIs) {
    const auto reading = explained(kNotes);
    ASSERT_TRUE(reading.ok());
    std::string told;
    for (const ExplainedSentence& sentence : reading.value().explained) {
        for (const StageWords& stage : sentence.stages) {
            told += stage.stage == "leanings" ? stage.made + "\n" : "";
        }
    }
    EXPECT_THAT(told, HasSubstr("sink: replace "));
    EXPECT_THAT(told, HasSubstr(" %"));
}

TEST(NotesLeanings, NothingButRulesWhereTheyAreAskedForAlone) {
    ReadOptions rules;
    rules.rulesAlone = true;
    const auto draft = readNotes(kNotes, rules);
    ASSERT_TRUE(draft.ok());
    ASSERT_FALSE(draft.value().items.empty());
    for (const DraftItem& item : draft.value().items) {
        EXPECT_EQ(item.source.sure, 0);
    }
}

}  // namespace
}  // namespace ledgerboard::intake
