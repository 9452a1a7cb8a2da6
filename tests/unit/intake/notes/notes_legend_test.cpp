// Protects: codes that the writer of the notes explains are read as explained, and only those. How:
// short notes with a line of codes, against the items a careful reader would list.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::Not;
using testing::UnorderedElementsAre;

TEST(NotesLegend, CodesBeforeTheThing) {
    EXPECT_THAT(itemsOf("code - K stays / N old out new in / X out, nothing back / F fix / "
                        "A never had one\n\nKITCHEN\nK sink; N faucet\nX wallpaper\nF back door\n"
                        "A dishwasher\n"),
                UnorderedElementsAre("kitchen: keep sink", "kitchen: replace faucet",
                                     "kitchen: remove wallpaper", "kitchen: repair back door",
                                     "kitchen: add dishwasher"));
}

TEST(NotesLegend, CodesAfterTheThing) {
    EXPECT_THAT(itemsOf("abbr: R/R = tear out + new. NIC = leave alone. INV = find out.\n\n"
                        "KITCHEN\ncabs R/R 14 lf. snk NIC. vent hood INV\n"),
                UnorderedElementsAre("kitchen: replace cabinets", "kitchen: keep sink",
                                     "kitchen: inspect range hood"));
}

TEST(NotesLegend, AShortNameOfTheWritersOwn) {
    EXPECT_THAT(itemsOf("Abbreviations: ZQ = counter, RP = repair\n\nKITCHEN\nRP ZQ\n"),
                ElementsAre("kitchen: repair countertop"));
}

TEST(NotesLegend, TheUsualLettersNeedNoTellingWhereTheyAreUsedThroughout) {
    EXPECT_THAT(itemsOf("KITCHEN\nK sink, R faucet, R stove\nBATH\nK tub, R toilet, P vanity\n"),
                UnorderedElementsAre("kitchen: keep sink", "kitchen: replace faucet",
                                     "kitchen: replace stove", "bath: keep bathtub",
                                     "bath: replace toilet", "bath: refinish vanity"));
}

TEST(NotesLegend, ASignInTheMiddleOfALineExplainsNothing) {
    EXPECT_THAT(itemsOf("KIT: cabs ok, keep. ctop = tile, cracked > new. hood = none > add 1\n"
                        "BA: toilet rocks > new. flr = vinyl > new\n"),
                UnorderedElementsAre("kitchen: keep cabinets", "kitchen: replace countertop",
                                     "kitchen: add range hood", "bathroom: replace toilet",
                                     "bathroom: replace floor"));
}

TEST(NotesLegend, ALetterAloneIsNoCode) {
    EXPECT_THAT(itemsOf("Kitchen. Plan K is to replace the sink."),
                Not(Contains("kitchen: keep sink")));
}

}  // namespace
}  // namespace ledgerboard::intake
