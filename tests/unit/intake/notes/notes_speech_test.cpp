// Talk as it is spoken: flats gone through one after the other, question and answer over turns,
// rooms moved between in few words.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsSupersetOf;

TEST(NotesSpeech, RoomsOfAFlatAreItsOwn) {
    EXPECT_THAT(itemsOf("Pat: Lower unit first. Kitchen. New sink.\nLou: Bath. New toilet.\n"
                        "Pat: Upper kitchen. New faucet.\nLou: Bath. New tub.\n"
                        "Pat: Basement. New furnace.\n"),
                IsSupersetOf({"downstairs kitchen: replace sink", "downstairs bath: replace toilet",
                              "upper kitchen: replace faucet", "upstairs bath: replace bathtub",
                              "basement: replace furnace"}));
    EXPECT_THAT(itemsOf("Unit A, that's the left. A kitchen. New sink. Bedroom one. New carpet. "
                        "Okay, unit B. Kitchen. New stove. Outside. New roof."),
                IsSupersetOf({"unit a kitchen: replace sink", "unit a bedroom 1: replace carpet",
                              "unit b kitchen: replace stove", "outside: replace roof"}));
}

TEST(NotesSpeech, AHouseOfOneFlatHasNone) {
    EXPECT_THAT(itemsOf("Unit 2. Kitchen. New sink."), ElementsAre("kitchen: replace sink"));
    EXPECT_THAT(itemsOf("Downstairs. Kitchen. New sink."), ElementsAre("kitchen: replace sink"));
}

}  // namespace
}  // namespace ledgerboard::intake
