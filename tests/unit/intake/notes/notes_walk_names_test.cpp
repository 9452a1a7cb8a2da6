// Protects: of several rooms of one sort each goes by its own name: several named in one breath,
// the bath of a bedroom, the same room on another storey. How: short invented notes with the items
// a reader would list.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsSupersetOf;
using testing::Not;
using testing::UnorderedElementsAre;

TEST(NotesWalkNames, SeveralRoomsInOneBreath) {
    EXPECT_THAT(itemsOf("Front and back bedrooms: new carpet in both.\n"),
                IsSupersetOf({"front bedroom: replace carpet", "back bedroom: replace carpet"}));
    EXPECT_THAT(itemsOf("Beds 2 to 4\n- new carpet\n"),
                ElementsAre("bedroom 2: replace carpet", "bedroom 3: replace carpet",
                            "bedroom 4: replace carpet"));
    EXPECT_THAT(itemsOf("The front bedroom and the middle one need new carpet."),
                IsSupersetOf({"front bedroom: replace carpet", "middle bedroom: replace carpet"}));
    // Not a row: a hall and a bedroom.
    EXPECT_THAT(itemsOf("The hall and front bedroom get new carpet."),
                Contains("front bedroom: replace carpet"));
}

TEST(NotesWalkNames, WhichOfSeveralInAHeading) {
    EXPECT_THAT(itemsOf("BATH (hall)\n- new toilet\n\nBEDROOM LEFT\n- new carpet\n\n"
                        "Upstairs bed 3\n- new carpet\n"),
                ElementsAre("hall bath: replace toilet", "left bedroom: replace carpet",
                            "upstairs bedroom 3: replace carpet"));
    // A storey in brackets says only where the room is.
    EXPECT_THAT(itemsOf("BATHROOM (up)\n- new toilet\n"), ElementsAre("bathroom: replace toilet"));
    EXPECT_THAT(itemsOf("KITCHEN 2\n- new sink\n"), ElementsAre("kitchen 2: replace sink"));
}

TEST(NotesWalkNames, WhichOfSeveralSaidAfter) {
    EXPECT_THAT(itemsOf("Next, bedroom, the small one. Replace the carpet. Bedroom on the lake "
                        "side: patch the ceiling."),
                ElementsAre("small bedroom: replace carpet", "lake side bedroom: repair ceiling"));
}

TEST(NotesWalkNames, TheBathOfABedroom) {
    EXPECT_THAT(itemsOf("Three bedrooms, two baths. Primary bedroom. New carpet. The bathroom. "
                        "New toilet."),
                ElementsAre("primary bedroom: replace carpet", "primary bath: replace toilet"));
    EXPECT_THAT(itemsOf("Three bedrooms, one bath. Primary bedroom. New carpet. The bathroom. "
                        "New toilet."),
                ElementsAre("primary bedroom: replace carpet", "bathroom: replace toilet"));
    EXPECT_THAT(itemsOf("Bedroom two. It's got its own bath. New carpet. Bath, new toilet."),
                ElementsAre("bedroom 2: replace carpet", "bedroom 2 bath: replace toilet"));
    EXPECT_THAT(itemsOf("Hall bath. New sink. Our bath, replace the toilet."),
                ElementsAre("hall bath: replace sink", "our bath: replace toilet"));
}

TEST(NotesWalkNames, ABathOfItsOwnIsSpokenOfInIt) {
    EXPECT_THAT(itemsOf("Two baths. Downstairs bedroom. Paint the walls. It has its own bath with "
                        "a cracked tub. Replace the tub."),
                IsSupersetOf({"downstairs bedroom: refinish walls",
                              "downstairs bathroom: replace bathtub"}));
    EXPECT_THAT(itemsOf("Our room. New carpet. The bath in here, new toilet."),
                ElementsAre("our room: replace carpet", "primary bath: replace toilet"));
    EXPECT_THAT(itemsOf("Downstairs bedroom = primary\n- new carpet\nits bath:\n- new toilet\n"),
                ElementsAre("primary bedroom: replace carpet", "primary bath: replace toilet"));
}

TEST(NotesWalkNames, AnotherBath) {
    EXPECT_THAT(itemsOf("Hall bath: new sink. Other bath: new toilet."),
                ElementsAre("hall bath: replace sink", "other bath: replace toilet"));
    EXPECT_THAT(itemsOf("Hall bath. This is the kids' bath. New toilet."),
                ElementsAre("hall bath: replace toilet"));
    EXPECT_THAT(itemsOf("Fourth bedroom. You could put a second bathroom in here. Bathroom. New "
                        "toilet."),
                Contains("bathroom: replace toilet"));
}

TEST(NotesWalkNames, TheBathDownThere) {
    EXPECT_THAT(itemsOf("Two baths. Basement. The bathroom down there has a rusted shower. New "
                        "toilet."),
                Contains("basement bathroom: replace toilet"));
    EXPECT_THAT(itemsOf("One and a half baths. Bath upstairs. New toilet."),
                ElementsAre("upstairs bathroom: replace toilet"));
}

TEST(NotesWalkNames, AToiletOfItsOwn) {
    EXPECT_THAT(itemsOf("Bathroom. New tub. The toilet's in a separate room. New vinyl floor in "
                        "there."),
                ElementsAre("bathroom: replace bathtub", "half bath: replace vinyl floor"));
}

TEST(NotesWalkNames, TheOneOnTheLeft) {
    EXPECT_THAT(itemsOf("Upstairs. Two more bedrooms. The one on the left, new carpet. The one on "
                        "the right, patch "
                        "the ceiling."),
                ElementsAre("left bedroom: replace carpet", "right bedroom: repair ceiling"));
    EXPECT_THAT(itemsOf("Downstairs bedrooms. The front one needs new carpet."),
                ElementsAre("downstairs front bedroom: replace carpet"));
    EXPECT_THAT(itemsOf("Now bedrooms. Main first. New carpet."),
                ElementsAre("primary bedroom: replace carpet"));
    EXPECT_THAT(itemsOf("Front right room's a bedroom. New carpet."),
                ElementsAre("front right bedroom: replace carpet"));
}

TEST(NotesWalkNames, TheNextByItsNumberAlone) {
    EXPECT_THAT(itemsOf("Bedroom one, new carpet. Two, new carpet. Three, patch the ceiling. In "
                        "two, the window's cracked, new window."),
                IsSupersetOf({"bedroom 2: replace carpet", "bedroom 3: repair ceiling",
                              "bedroom 2: replace windows"}));
}

TEST(NotesWalkNames, TheSameNameOnAnotherStorey) {
    EXPECT_THAT(itemsOf("Second floor. Front bedroom: new carpet. Third floor. Front bedroom: "
                        "patch the ceiling."),
                ElementsAre("second floor front bedroom: replace carpet",
                            "third floor front bedroom: repair ceiling"));
}

// A storey in figures and capitals heads its rooms like one in words, and a line under it that
// opens with a room and its thing is of that room.
TEST(NotesWalkNames, AStoreyInFiguresHeadsItsRooms) {
    EXPECT_THAT(itemsOf("2ND FLOOR\n- hall floor sand\n- bath: toilet new\n\n"
                        "3RD FLOOR\n- BR: carpet out\n- bath: sink new\n"),
                UnorderedElementsAre("hall: refinish wood floor", "upstairs bath: replace toilet",
                                     "bedroom: remove carpet", "third floor bath: replace sink"));
}

// A line of a list under a storey that opens with several rooms at once is of them.
TEST(NotesWalkNames, ALineOpensWithSeveralRooms) {
    EXPECT_THAT(itemsOf("UPSTAIRS\n- hall: new light\n- both bedrooms paint and carpet\n"),
                IsSupersetOf({"bedrooms: refinish walls", "bedrooms: replace carpet"}));
}

}  // namespace
}  // namespace ledgerboard::intake
