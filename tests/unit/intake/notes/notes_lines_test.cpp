// Protects: stamps, speakers, bullets and page breaks are no part of what is said. How: one text in
// several forms.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/intake/notes/lines.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/tables.h"

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::ElementsAre;

std::vector<std::string> textsOf(std::string_view notes) {
    std::vector<std::string> texts;
    for (const NoteLine& line : noteLines(notes)) {
        texts.emplace_back(line.text);
    }
    return texts;
}

TEST(NotesLines, TimeStampsInAnyUsualForm) {
    for (const char* stamp : {"[00:01:20] ", "(0:45) ", "00:12 ", "1:02:03 - ", "[0:45] "}) {
        EXPECT_THAT(textsOf(std::string(stamp) + "Replace the sink."),
                    ElementsAre("Replace the sink."))
            << stamp;
    }
    EXPECT_THAT(textsOf("1\n00:00:02,000 --> 00:00:21,400\nReplace the sink.\n\n2\n"
                        "00:00:22,000 --> 00:00:23,000\nKeep the tub.\n"),
                ElementsAre("Replace the sink.", "Keep the tub."));
}

TEST(NotesLines, CaptionsGoOnFromOneToTheNext) {
    EXPECT_THAT(sentencesOf("[0:01] Replace the sink and\n[0:05] the faucet. Keep the tub.\n"),
                ElementsAre("Replace the sink and the faucet.", "Keep the tub."));
}

TEST(NotesLines, SpeakersAreTakenOff) {
    EXPECT_THAT(textsOf("DOT: Keep the tub.\nBRAM: Replace the sink.\nDOT: Fine.\nBRAM: Good.\n"),
                ElementsAre("Keep the tub.", "Replace the sink.", "Fine.", "Good."));
    EXPECT_THAT(
        textsOf("DOT - Keep the tub.\nBRAM - Replace the sink.\nDOT - Fine.\nBRAM - Good.\n"),
        ElementsAre("Keep the tub.", "Replace the sink.", "Fine.", "Good."));
    EXPECT_THAT(textsOf("N - faucet\nN - range\nBR2 - carpet\nBR2 - paint\n"),
                ElementsAre("N - faucet", "N - range", "BR2 - carpet", "BR2 - paint"));
    for (const char* time : {", 9:41:", " [9:41]", " (9:41):", ", 11/25/26, 9:41 am:"}) {
        const std::string dot = "Dot" + std::string(time);
        const std::string bram = "Bram" + std::string(time);
        EXPECT_THAT(textsOf(dot + " Keep the tub.\n" + bram + " Replace the sink.\n" + dot +
                            " Fine.\n" + bram + " Good.\n"),
                    ElementsAre("Keep the tub.", "Replace the sink.", "Fine.", "Good."))
            << time;
    }
    EXPECT_THAT(textsOf("Kitchen: sink\nKitchen: tub\n"),
                ElementsAre("Kitchen: sink", "Kitchen: tub"));
}

TEST(NotesLines, BulletsAndHeadings) {
    EXPECT_THAT(textsOf("## Kitchen\n- sink\n* tub\n1. stove\n"),
                ElementsAre("Kitchen", "sink", "tub", "stove"));
}

TEST(NotesLines, PageBreaksArePartOfNoSentence) {
    EXPECT_THAT(sentencesOf("The cabinets in this kitchen are original to the house and\n"
                            "they have to go before anybody paints a wall or a ceiling.\n"),
                ElementsAre("The cabinets in this kitchen are original to the house and they have "
                            "to go before anybody paints a wall or a ceiling."));
}

TEST(NotesLines, FormsReadAlike) {
    const auto plain = itemsOf("Kitchen. Replace the sink. Hall bath. Keep the tub.");
    EXPECT_EQ(itemsOf("[00:01] Kitchen. Replace the sink.\n[00:09] Hall bath. Keep the tub.\n"),
              plain);
    EXPECT_EQ(itemsOf("# Kitchen\n\n- Replace the sink.\n\n# Hall bath\n\n- Keep the tub.\n"),
              plain);
    EXPECT_EQ(itemsOf("KITCHEN\r\n  Replace the sink\r\nHALL BATH\r\n  Keep the tub\r\n"), plain);
}

TEST(NotesLines, WhoSpeaksIsWrittenInSeveralWays) {
    const std::vector<std::string> items = {"kitchen: replace sink", "hall: refinish walls"};
    EXPECT_EQ(
        itemsOf("Speaker 1: Kitchen.\nSpeaker 2: New sink.\nSpeaker 1: Hall.\nSpeaker 2: Paint "
                "the walls.\n"),
        items);
    EXPECT_EQ(itemsOf("INES \xE2\x80\x94 Kitchen.\nOTTO \xE2\x80\x94 New sink.\nINES \xE2\x80\x94 "
                      "Hall.\nOTTO \xE2\x80\x94 Paint the walls.\n"),
              items);
    EXPECT_EQ(itemsOf("[4/11/26, 9:14 AM] Ines: kitchen.\n[4/11/26, 9:14\xE2\x80\xAF"
                      "AM] Otto: new "
                      "sink.\n[4/11/26, 9:15 AM] Ines: hall.\n[4/11/26, 9:16 AM] Otto: paint the "
                      "walls.\n"),
              items);
    EXPECT_EQ(itemsOf("2026-11-04 09:14 Ines: kitchen.\n2026-11-04 09:15 Otto: new sink.\n"
                      "2026-11-04 09:16 Ines: hall.\n2026-11-04 09:17 Otto: paint the walls.\n"),
              items);
}

}  // namespace
}  // namespace ledgerboard::intake
