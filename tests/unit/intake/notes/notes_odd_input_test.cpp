// Protects: no input crashes the reader or makes it use memory without bound; refusals say why; the
// same notes give the same draft. How: binary data, endless lines, other languages, and some
// hundred splices and random strings from a seeded generator (the seed is printed when a check
// fails).
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <iterator>
#include <random>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::HasSubstr;

std::vector<std::string> openNotes() {
    std::vector<std::string> notes;
    for (const auto& entry : std::filesystem::directory_iterator(LEDGERBOARD_OPEN_NOTES)) {
        if (entry.path().extension() == ".txt") {
            std::ifstream in(entry.path(), std::ios::binary);
            notes.emplace_back(std::istreambuf_iterator<char>(in),
                               std::istreambuf_iterator<char>());
        }
    }
    return notes;
}

// Everything of a draft in one string.
std::string flat(const Draft& draft) {
    std::string text;
    for (const DraftItem& item : draft.items) {
        text += item.space + item.treatment + item.object + item.note + item.source.sentence +
                std::to_string(item.source.line) + std::to_string(item.source.sure) + "\n";
    }
    for (const DraftAlternate& alternate : draft.alternates) {
        text += alternate.space + alternate.question + alternate.source.sentence + "\n";
    }
    for (const DraftFact& fact : draft.facts) {
        text += fact.name + fact.value + "\n";
    }
    return text;
}

void checkSources(const Draft& draft, std::string_view notes) {
    const auto lines = 1 + std::count(notes.begin(), notes.end(), '\n');
    for (const DraftItem& item : draft.items) {
        EXPECT_FALSE(item.source.sentence.empty());
        EXPECT_GE(item.source.line, 1);
        EXPECT_LE(item.source.line, lines);
        EXPECT_GE(item.source.sure, 0);
        EXPECT_LE(item.source.sure, 100);
        EXPECT_FALSE(item.space.empty());
    }
}

TEST(NotesOddInput, BinaryDataIsRefusedWithTheReason) {
    const auto draft = readNotes(std::string_view("PK\x03\x04\x00\x00\xff\xfe junk", 17));
    ASSERT_FALSE(draft.ok());
    EXPECT_THAT(draft.error().message, HasSubstr("not plain text"));
}

TEST(NotesOddInput, EmptyAndBlankNotesGiveAnEmptyDraft) {
    for (const char* notes :
         {"", "\n\n\n", "   \t ", "----\n====\n", "...", "[00:01]\n[00:02]\n"}) {
        const auto draft = readNotes(notes);
        ASSERT_TRUE(draft.ok()) << notes;
        EXPECT_TRUE(draft.value().items.empty()) << notes;
    }
}

TEST(NotesOddInput, OtherLanguagesAreRefusedWithTheReason) {
    std::string notes;
    for (int i = 0; i < 12; ++i) {
        notes += "La cocina necesita muchas cosas nuevas porque los gabinetes ya no sirven. ";
    }
    const auto draft = readNotes(notes);
    ASSERT_FALSE(draft.ok());
    EXPECT_THAT(draft.error().message, HasSubstr("English"));
}

TEST(NotesOddInput, TooLongIsRefusedWithTheLimit) {
    ReadOptions options;
    options.mostBytes = 100;
    const auto draft = readNotes(std::string(101, 'a'), options);
    ASSERT_FALSE(draft.ok());
    EXPECT_THAT(draft.error().message, HasSubstr("100"));
}

TEST(NotesOddInput, EndlessLinesAreWorkedOff) {
    const std::string word(3'000'000, 'x');
    EXPECT_TRUE(readNotes(word).ok());
    std::string line = "kitchen ";
    while (line.size() < 1'000'000) {
        line += "replace the sink and the faucet ";
    }
    const auto draft = readNotes(line);
    ASSERT_TRUE(draft.ok());
    EXPECT_EQ(draft.value().items.size(), 2U);
}

TEST(NotesOddInput, ReadingIsDeterministic) {
    for (const std::string& notes : openNotes()) {
        EXPECT_EQ(flat(draftOf(notes)), flat(draftOf(notes)));
    }
}

TEST(NotesOddInput, EveryItemOfTheOpenNotesNamesItsSource) {
    const std::vector<std::string> all = openNotes();
    ASSERT_FALSE(all.empty());
    for (const std::string& notes : all) {
        checkSources(draftOf(notes), notes);
    }
}

TEST(NotesOddInput, SplicesOfNotesNeverCrash) {
    const std::vector<std::string> all = openNotes();
    ASSERT_FALSE(all.empty());
    for (unsigned seed = 1; seed <= 150; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        std::mt19937 random(seed);
        std::string notes;
        for (int i = 0; i < 20; ++i) {
            const std::string& from = all[random() % all.size()];
            const std::size_t at = random() % from.size();
            notes += from.substr(at, random() % 120);
        }
        for (int i = 0; i < 6; ++i) {
            notes[random() % notes.size()] = static_cast<char>(32 + random() % 95);
        }
        const auto draft = readNotes(notes);
        if (draft.ok()) {
            checkSources(draft.value(), notes);
        }
    }
}

TEST(NotesOddInput, RandomBytesNeverCrash) {
    for (unsigned seed = 1; seed <= 300; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        std::mt19937 random(seed);
        std::string notes(random() % 400, ' ');
        for (char& c : notes) {
            c = static_cast<char>(seed % 3 == 0 ? random() % 256 : 32 + random() % 95);
        }
        const auto draft = explained(notes);
        if (draft.ok()) {
            checkSources(draft.value().draft, notes);
        }
    }
}

TEST(NotesOddInput, ExplainTellsEachStage) {
    const auto reading = explained("Kitchen. Replace the sink.");
    ASSERT_TRUE(reading.ok());
    ASSERT_EQ(reading.value().explained.size(), 2U);
    const ExplainedSentence& told = reading.value().explained[1];
    EXPECT_EQ(told.sentence, "Replace the sink.");
    bool objects = false;
    for (const StageWords& stage : told.stages) {
        objects =
            objects || (stage.stage == "objects" && stage.made.find("sink") != std::string::npos);
    }
    EXPECT_TRUE(objects);
    EXPECT_TRUE(explainNotes("Kitchen.").value().explained.empty());
}

}  // namespace
}  // namespace ledgerboard::intake
