// Protects: a room goes by the speaker's own name for it, which of several is meant is understood,
// and what is only named on the way moves nobody. How: short invented notes with the items a reader
// would list.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::AllOf;
using testing::Contains;
using testing::ElementsAre;
using testing::IsSupersetOf;
using testing::Not;
using testing::UnorderedElementsAre;

TEST(NotesWalkRooms, APlainWordNamesARoom) {
    EXPECT_THAT(itemsOf("Kitchen. New sink. The big room. Paint the walls. Our room next. Replace "
                        "the carpet. My room. Patch the ceiling."),
                ElementsAre("kitchen: replace sink", "big room: refinish walls",
                            "our room: replace carpet", "my room: repair ceiling"));
}

TEST(NotesWalkRooms, TheCornerRoomsGoByTwoWords) {
    EXPECT_THAT(
        itemsOf("Upstairs. Front left bedroom, red, just needs paint. Front right, stripes, "
                "replace the door. Back left I can't open. New window in here."),
        IsSupersetOf(
            {"front right bedroom: replace interior doors", "back left bedroom: replace windows"}));
}

TEST(NotesWalkRooms, TheNextGoesByItsNumber) {
    EXPECT_THAT(
        itemsOf("First bedroom. New carpet. The second is a bit smaller. Replace the window. "
                "In the third you can't open the door. Patch the ceiling."),
        ElementsAre("first bedroom: replace carpet", "bedroom 2: replace windows",
                    "bedroom 3: repair ceiling"));
    EXPECT_THAT(itemsOf("Hall. New sink. Bedroom two and three. Two's got a hole "
                        "in the door. New door. "
                        "Three's got a cracked window. New window."),
                IsSupersetOf({"bedroom 2: replace interior doors", "bedroom 3: replace windows"}));
}

TEST(NotesWalkRooms, ThePrimaryIsABedroom) {
    EXPECT_THAT(
        itemsOf("Half bath. New toilet. Primary's on the ground floor. Replace the carpet."),
        ElementsAre("half bath: replace toilet", "primary bedroom: replace carpet"));
}

TEST(NotesWalkRooms, ARoomThatIsOnlyNamedMovesNobody) {
    EXPECT_THAT(itemsOf("Bathroom. Off the kitchen there. New toilet."),
                ElementsAre("bathroom: replace toilet"));
    EXPECT_THAT(itemsOf("Living room. No hall. Paint the walls."),
                ElementsAre("living room: refinish walls"));
    EXPECT_THAT(itemsOf("Kitchen. So then it's three bedrooms. Replace the sink."),
                ElementsAre("kitchen: replace sink"));
    EXPECT_THAT(itemsOf("Back bedroom. Its window looks onto the orchard. New carpet."),
                Contains("back bedroom: replace carpet"));
    EXPECT_THAT(itemsOf("Kitchen. There's some slate in Ivo's shed. Replace the sink."),
                Contains("kitchen: replace sink"));
    EXPECT_THAT(itemsOf("Bathroom. Clawfoot tub. Outside's rusty and the inside's been drawn on. "
                        "Replace the toilet."),
                Contains("bathroom: replace toilet"));
}

TEST(NotesWalkRooms, TheLooOfABathroomIsItsToilet) {
    EXPECT_THAT(itemsOf("Bathroom. The loo's fine. Replace the sink."),
                ElementsAre("bathroom: keep toilet", "bathroom: replace sink"));
}

TEST(NotesWalkRooms, NewWiringIsTheWholeHouses) {
    EXPECT_THAT(itemsOf("Basement. Cloth wiring. Replace all the wiring. The wiring by the stairs "
                        "wants looking at by an electrician."),
                Contains("whole house: replace wiring"));
    EXPECT_THAT(itemsOf("Kitchen. New sink. Third floor. The third floor gets rewired."),
                Contains("third floor: replace wiring"));
    EXPECT_THAT(itemsOf("Laundry. Add two smoke alarms."),
                Contains("whole house: add smoke alarms"));
    EXPECT_THAT(itemsOf("Hall. Add a smoke alarm."), Contains("hall: add smoke alarms"));
}

TEST(NotesWalkRooms, WhatStandsAboutTheGroundsIsNotTheDecks) {
    EXPECT_THAT(itemsOf("Outside. Paint the siding. The deck. Stain the deck boards. Replace the "
                        "gate."),
                IsSupersetOf({"outside: replace gate", "deck: refinish deck boards"}));
    EXPECT_THAT(itemsOf("Back yard. Replace the roof. New fence."),
                IsSupersetOf({"outside: replace roof", "back yard: replace fence"}));
}

TEST(NotesWalkRooms, AParagraphOfProseSaysWhereItStands) {
    EXPECT_THAT(itemsOf("Here is what I saw on my walk through it.\n\n"
                        "The dining room wants very little. Paint the ceiling.\n\n"
                        "I hardly know what to tell you about the kitchen. Replace the sink. "
                        "The range stays.\n\n"
                        "The hall bath is pink. Replace the toilet.\n\n"
                        "The water heater is from 2001. Replace it.\n\n"
                        "The carport ceiling is sagging. Replace the post.\n"),
                IsSupersetOf({"kitchen: replace sink", "hall bath: replace toilet",
                              "whole house: replace water heater", "carport: replace post"}));
    EXPECT_THAT(itemsOf("Basement. The panel is fine.\n"),
                Not(Contains("whole house: keep electrical panel")));
}

TEST(NotesWalkRooms, ParagraphsThatNameNoRoom) {
    EXPECT_THAT(
        itemsOf("Here is what I saw on my walk through it.\n\n"
                "One goes up to the sitting room, by a stair that turns. Paint the walls.\n\n"
                "The stairs are like a cliff. Replace the railing.\n\n"
                "The bathroom is small. Replace the vanity. The loo's fine.\n\n"
                "Electricity came in 1950 and looks it. Replace the panel.\n\n"
                "The pantry is narrow. Add a shelf.\n\n"
                "The roof has to be done. The post is rotten, replace the post.\n"),
        IsSupersetOf({"sitting room: refinish walls", "stairs: replace railing",
                      "bathroom: keep toilet", "whole house: replace electrical panel",
                      "outside: replace post"}));
}

TEST(NotesWalkRooms, AWordOfTheSentenceIsNoHeading) {
    EXPECT_THAT(itemsOf("Laundry. The water heater leaks. It's electric. Replace the sink."),
                Contains("laundry: replace utility sink"));
    EXPECT_THAT(itemsOf("Kitchen. Where's the rest of it? Replace the sink."),
                ElementsAre("kitchen: replace sink"));
}

TEST(NotesWalkRooms, PartsOfTheStairsSpokenOf) {
    EXPECT_THAT(
        itemsOf("Foyer. New light fixture. The carpet on the stairs has a path worn in it, so "
                "new carpet on those. The railing's fine. Paint the ceiling."),
        IsSupersetOf({"stairs: keep railing", "foyer: refinish ceiling"}));
}

TEST(NotesWalkRooms, OneRoomByTwoNames) {
    EXPECT_THAT(itemsOf("South bedroom, that's the nicest so it's the primary. Paint the walls."),
                ElementsAre("primary bedroom: refinish walls"));
    EXPECT_THAT(itemsOf("Hall bath. New tub. Primary bedroom. New carpet. Its bath is tiny. "
                        "Replace the vanity."),
                Contains("primary bath: replace vanity"));
}

TEST(NotesWalkRooms, ASpeakerMayBeCalledLikeARoom) {
    EXPECT_THAT(itemsOf("Ana: Front bedroom.\nKit: Paint the walls.\nAna: Sure.\nKit: It's tidy.\n"
                        "Ana: The carpet?\nKit: Replace the carpet.\nAna: Fine.\n"
                        "Kit: Patch the ceiling.\n"),
                IsSupersetOf({"front bedroom: refinish walls", "front bedroom: replace carpet",
                              "front bedroom: repair ceiling"}));
}

TEST(NotesWalkRooms, ARoomBesideBothBathsIsNoBedroom) {
    const Draft draft = draftOf(
        "Front bedroom. Paint the walls.\nThe tear-out is the kitchen and both baths. Wiring up "
        "here is to be looked at.\n");
    std::vector<std::string> spaces;
    for (const DraftSpace& space : draft.spaces) {
        spaces.push_back(space.name);
    }
    EXPECT_THAT(spaces, testing::Contains("front bedroom"));
    EXPECT_THAT(spaces, testing::Not(testing::Contains("kitchen bedroom")));
}

TEST(NotesWalkRooms, ARoomAfterTheBedroomsIsItself) {
    EXPECT_THAT(itemsOf("Bedrooms, all three: paint the walls.\nBasement, the furnace is shot, "
                        "replace it.\n"),
                IsSupersetOf({"basement: replace furnace"}));
}

TEST(NotesWalkRooms, SeveralRoomsToldAtOnce) {
    EXPECT_THAT(itemsOf("Bathroom. New toilet. Works to the bedrooms. All three: new carpet."),
                IsSupersetOf({"bedroom 1: replace carpet", "bedroom 2: replace carpet",
                              "bedroom 3: replace carpet"}));
    EXPECT_THAT(itemsOf("Living room. Sand the floor. The den is off it. New carpet in both."),
                IsSupersetOf({"living room: replace carpet", "den: replace carpet"}));
    EXPECT_THAT(itemsOf("Entry. The floor in the hall needs refinishing, and that's true of the "
                        "living room and "
                        "the dining room as well."),
                IsSupersetOf({"hall: refinish wood floor", "living room: refinish wood floor",
                              "dining room: refinish wood floor"}));
    EXPECT_THAT(itemsOf("The hall and the den are all about the same. New windows."),
                IsSupersetOf({"hall: replace windows", "den: replace windows"}));
    EXPECT_THAT(itemsOf("Stairs and landing. New carpet."),
                IsSupersetOf({"stairs: replace carpet", "landing: replace carpet"}));
}

TEST(NotesWalkRooms, TheStoreyOfAFlatIsNoneOfItsRooms) {
    EXPECT_THAT(itemsOf("Top floor flat, 1898 building. Paid 200k.\nKitchen - new sink.\n"),
                ElementsAre("kitchen: replace sink"));
}

TEST(NotesWalkRooms, AllOfThemButOne) {
    const std::string rooms = "Front bedroom. New windows. Back bedroom. New windows. Hall. ";
    EXPECT_THAT(itemsOf(rooms + "New carpet in all the bedrooms except the back bedroom."),
                AllOf(Contains("front bedroom: replace carpet"),
                      Not(Contains("back bedroom: replace carpet")),
                      Not(Contains("hall: replace carpet"))));
    EXPECT_THAT(itemsOf("Hall. Paint, ceiling too."),
                UnorderedElementsAre("hall: refinish walls", "hall: refinish ceiling"));
}

}  // namespace
}  // namespace ledgerboard::intake
