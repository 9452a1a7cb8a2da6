// Protects: what is told, asked or passed by in talk is no work: others' deeds, questions, rooms
// named on the way, the coverings over a floor that stays. How: short invented notes with the items
// a reader would list.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::Not;

TEST(NotesTold, WhatOthersDidIsNotOrdered) {
    EXPECT_THAT(itemsOf("Den. They've boxed in the beam. Somebody painted the mantel pink. The "
                        "carpet goes."),
                ElementsAre("den: remove carpet"));
    EXPECT_THAT(itemsOf("Den. Oswin painted the walls last spring."),
                ElementsAre("den: keep walls"));
    EXPECT_THAT(itemsOf("Den. I painted the one at home black. New window."),
                ElementsAre("den: replace windows"));
}

TEST(NotesTold, ThatItIsNewIsNoOrder) {
    EXPECT_THAT(itemsOf("Hall. The carpet's new, leave it."), ElementsAre("hall: keep carpet"));
    EXPECT_THAT(itemsOf("Kitchen. The faucet's new."), ElementsAre("kitchen: keep faucet"));
}

TEST(NotesTold, WhoIsToComeIsNoThing) {
    EXPECT_THAT(itemsOf("Den. I want somebody to have a look at the beam."),
                ElementsAre("den: inspect beam"));
}

TEST(NotesTold, LeaveThatIsNotGiven) {
    EXPECT_THAT(itemsOf("ODA: Kitchen. New sink.\nBEN: Can we knock out this soffit?\n"
                        "ODA: The drain runs in it.\nBEN: Pity.\n"),
                ElementsAre("kitchen: replace sink"));
    EXPECT_THAT(itemsOf("ODA: Kitchen. New sink.\nBEN: Can we knock out this soffit?\n"
                        "ODA: Yes please.\nBEN: Right.\n"),
                Contains("kitchen: remove soffit"));
}

TEST(NotesTold, HowManyIsAQuestion) {
    EXPECT_THAT(itemsOf("Stairs. How many spindles are gone? New carpet."),
                ElementsAre("stairs: replace carpet"));
}

TEST(NotesTold, RoomsNamedOnTheWay) {
    EXPECT_THAT(itemsOf("Dining room. That wall is carrying half of the second floor. Paint the "
                        "ceiling."),
                ElementsAre("dining room: refinish ceiling"));
    EXPECT_THAT(itemsOf("Back room. There's a serving hatch through to the kitchen. Paint the "
                        "walls."),
                Contains("back room: refinish walls"));
}

TEST(NotesTold, AFloorUnderAFloor) {
    EXPECT_THAT(itemsOf("Den. The laminate is coming up and we sand the boards under it."),
                ElementsAre("den: remove laminate floor", "den: refinish wood floor"));
}

TEST(NotesTold, WhatIsInTheGarden) {
    EXPECT_THAT(itemsOf("Back garden. Shed's a good one, leave it. Fence, ten metres, new."),
                ElementsAre("back garden: keep shed", "back garden: replace fence"));
}

TEST(NotesTold, BedroomsByAWordOfTheirOwn) {
    EXPECT_THAT(itemsOf("Bath. New tub. The lake bedroom needs paint. In the road bedroom the "
                        "carpet goes."),
                ElementsAre("bath: replace bathtub", "lake bedroom: refinish walls",
                            "road bedroom: remove carpet"));
}

TEST(NotesTold, ALikenessToNowhere) {
    EXPECT_THAT(itemsOf("Cellar. New boiler. Den. She lived on a street just like this one."),
                Not(Contains("den: replace boiler")));
}

TEST(NotesTold, RoomsInARow) {
    EXPECT_THAT(itemsOf("Bedroom two, bedroom three, it's the same in both of them, new carpet."),
                ElementsAre("bedroom 2: replace carpet", "bedroom 3: replace carpet"));
    EXPECT_THAT(itemsOf("Den. Carpet out, vinyl plank in. Den, dining room and the hall. Paint the "
                        "ceiling."),
                ElementsAre("den: replace vinyl plank", "den: refinish ceiling",
                            "dining room: replace vinyl plank", "hall: replace vinyl plank"));
}

TEST(NotesTold, OnesInstead) {
    EXPECT_THAT(itemsOf("Kitchen. The wall tiles are brown. Off. White ones instead."),
                ElementsAre("kitchen: replace backsplash"));
    EXPECT_THAT(itemsOf("Porch. The light is a bare bulb. I want a proper lantern."),
                ElementsAre("porch: replace exterior lights"));
}

TEST(NotesTold, AllOfItNew) {
    EXPECT_THAT(itemsOf("Kitchen, I want the whole thing new. Fridge. Dishwasher."),
                ElementsAre("kitchen: replace refrigerator", "kitchen: replace dishwasher"));
}

TEST(NotesTold, AnOrderWithAQuestionMarkIsNone) {
    EXPECT_THAT(itemsOf("Den. New window. Build a closet in the corner? It would cost 1,600."),
                ElementsAre("den: replace windows"));
}

TEST(NotesTold, WhatAThingIsMadeOf) {
    EXPECT_THAT(itemsOf("Outside. The front steps are railroad ties, rotten, and I "
                        "would replace the whole lot."),
                ElementsAre("outside: replace steps"));
    EXPECT_THAT(itemsOf("Main room. The knotty pine walls have darkened and I won't have them "
                        "painted, whatever your sister says."),
                ElementsAre("main room: keep paneling"));
}

TEST(NotesTold, OutAndBackIn) {
    EXPECT_THAT(itemsOf("Outside. The steps need to come out and get bedded again."),
                ElementsAre("outside: repair steps"));
}

TEST(NotesTold, AVanIsAVanityInShorthandAlone) {
    EXPECT_THAT(itemsOf("Bath. New tub. Somebody should look at the van outside."),
                Not(Contains("bath: inspect vanity")));
}

TEST(NotesTold, OrIsNotAlwaysAChoice) {
    EXPECT_THAT(itemsOf("Crawl space. The water lines split some winter or other and have to be "
                        "replaced."),
                ElementsAre("crawl space: replace water supply"));
    EXPECT_THAT(itemsOf("Porch. In either case the porch floor needs a coat of paint."),
                ElementsAre("porch: refinish porch floor"));
}

TEST(NotesTold, WhereSomethingWasDoneIsNotMeant) {
    EXPECT_THAT(
        itemsOf("Cellar. The water heater is loud. I held a match by the flue. Get somebody "
                "to look at it."),
        Not(Contains("cellar: inspect flue")));
}

TEST(NotesTold, ALikingIsNoLikeness) {
    EXPECT_THAT(itemsOf("Entry. I like the iron railing. Sand it and paint it black."),
                ElementsAre("entry: refinish railing"));
}

TEST(NotesTold, AFloorGoesDown) {
    EXPECT_THAT(itemsOf("Den. The carpet comes out and vinyl plank goes down in this one."),
                ElementsAre("den: replace vinyl plank"));
}

TEST(NotesTold, WhatIsOutOfTheWayIsTakenOut) {
    EXPECT_THAT(itemsOf("Basement. This toilet, in the open like a throne, that goes."),
                ElementsAre("basement: remove toilet"));
}

TEST(NotesTold, ATestIsWaitedFor) {
    EXPECT_THAT(itemsOf("Den. The ceiling gets tested, and then we'll see."),
                ElementsAre("den: inspect ceiling"));
}

TEST(NotesTold, HowManyRoomsIsNoRoom) {
    EXPECT_THAT(itemsOf("three bedrooms one and a half baths and the front steps are loose so "
                        "repoint those"),
                ElementsAre("outside: repair steps"));
}

TEST(NotesTold, PlacesEnteredInThePast) {
    EXPECT_THAT(itemsOf("The cellar step says 1942. I came in by the kitchen, as everybody does. "
                        "The faucet drips."),
                ElementsAre("kitchen: inspect faucet"));
    EXPECT_THAT(itemsOf("Bath. New tub. I crawled under, you'll be proud. New toilet."),
                ElementsAre("bath: replace bathtub", "bath: replace toilet"));
}

TEST(NotesTold, WhatIsPutIsNewWhereItIsNotThere) {
    EXPECT_THAT(itemsOf("Den. I'd put recessed lights in the ceiling."),
                ElementsAre("den: add recessed lights"));
    EXPECT_THAT(itemsOf("Den. New window. I'd put the heater over there."),
                Not(Contains("den: replace room heaters")));
}

TEST(NotesTold, AThingAfterAPlaceIsMeant) {
    EXPECT_THAT(itemsOf("In the kitchen the cabinets have to be replaced and the sink is cracked."),
                Contains("kitchen: replace cabinets"));
}

}  // namespace
}  // namespace ledgerboard::intake
