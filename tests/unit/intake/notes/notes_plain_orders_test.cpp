// Protects: orders said the way people talk: with a verb few tables would think of, in the sentence
// after, or about what another order leaves behind. How: a few sentences of each sort, with what a
// reader would list; and the clues that a sentence gives the thing named before it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <string>
#include <vector>

#include "core/intake/notes/read_notes.h"

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsSupersetOf;
using testing::Not;
using testing::UnorderedElementsAre;

std::vector<std::string> cluesOf(const std::string& notes, const std::string& object) {
    ReadOptions options;
    options.explain = true;
    const auto reading = explainNotes(notes, options);
    EXPECT_TRUE(reading.ok());
    for (const NamedThing& thing : reading.value().things) {
        if (thing.object == object) {
            std::vector<std::string> clues = thing.clues;
            for (const std::vector<std::string>& mention : thing.mentions) {
                clues.insert(clues.end(), mention.begin(), mention.end());
            }
            return clues;
        }
    }
    ADD_FAILURE() << "no " << object;
    return {};
}

TEST(NotesPlainOrders, OneMoreOfWhatThereAreSeveral) {
    EXPECT_THAT(itemsOf("Hall. Put in a light over the stairs."),
                ElementsAre("hall: add light fixtures"));
    EXPECT_THAT(itemsOf("Office. It needs a door."), ElementsAre("office: add interior doors"));
    EXPECT_THAT(itemsOf("Deck. The steps need a handrail."), Contains("deck: add railing"));
}

TEST(NotesPlainOrders, ABetterOneTakesThePlaceOfOne) {
    EXPECT_THAT(itemsOf("Hall. Put in a brighter light."),
                ElementsAre("hall: replace light fixtures"));
    EXPECT_THAT(itemsOf("Kitchen. The range hood rattles. It needs a range hood."),
                Contains("kitchen: replace range hood"));
    EXPECT_THAT(itemsOf("Kitchen. It needs a sink."), ElementsAre("kitchen: replace sink"));
}

TEST(NotesPlainOrders, AFloorIsNeverOneMore) {
    EXPECT_THAT(itemsOf("Den. Put in a cork floor."), ElementsAre("den: replace cork floor"));
    EXPECT_THAT(itemsOf("Den. Take the vinyl floor up."), ElementsAre("den: remove vinyl floor"));
}

TEST(NotesPlainOrders, WhatIsTakenOutLeavesAHole) {
    EXPECT_THAT(itemsOf("Hall. Chair rail off, fill and paint."),
                Not(Contains("hall: repair chair rail")));
    EXPECT_THAT(itemsOf("Bedroom. Take the chair rail down and patch."),
                ElementsAre("bedroom: remove chair rail"));
    EXPECT_THAT(itemsOf("Bedroom. The chair rail comes off. Fill and touch up."),
                Not(Contains("bedroom: repair chair rail")));
    EXPECT_THAT(itemsOf("Bedroom. Take the chair rail down and patch the ceiling."),
                UnorderedElementsAre("bedroom: remove chair rail", "bedroom: repair ceiling"));
}

TEST(NotesPlainOrders, EverydayVerbs) {
    EXPECT_THAT(itemsOf("Hall. The railing wobbles, strap it down."),
                ElementsAre("hall: repair railing"));
    EXPECT_THAT(itemsOf("Hall. Gate's rusty. Wire brush it."), Contains("outside: refinish gate"));
    EXPECT_THAT(itemsOf("Kitchen. Seal the countertop."),
                ElementsAre("kitchen: refinish countertop"));
    EXPECT_THAT(itemsOf("Basement. Rinse out the floor drain."),
                ElementsAre("basement: clean floor drain"));
    EXPECT_THAT(itemsOf("Basement. Check over the boiler."), Contains("basement: inspect boiler"));
}

TEST(NotesPlainOrders, GreaseAndLeavesAreNoOrders) {
    EXPECT_THAT(itemsOf("Kitchen. The range hood is all grease."),
                Not(Contains("kitchen: repair range hood")));
    EXPECT_THAT(itemsOf("Outside. The gutters have leaves."),
                Not(Contains("outside: remove gutters")));
}

TEST(NotesPlainOrders, TheSentenceAfterNextTellsToo) {
    const auto clues = cluesOf("Kitchen. The faucet drips. It's an old one. Replace it.", "faucet");
    EXPECT_THAT(clues, Contains("next old"));
    EXPECT_THAT(clues, Contains("then says in"));
    EXPECT_THAT(cluesOf("Kitchen. The faucet drips. The sink is old. Replace it.", "faucet"),
                Not(Contains("then says in")));
}

TEST(NotesPlainOrders, PaintAfterThePaperIsOfTheWalls) {
    EXPECT_THAT(itemsOf("Den. Wallpaper off and paint."),
                ElementsAre("den: remove wallpaper", "den: refinish walls"));
    EXPECT_THAT(itemsOf("Den. The wallpaper comes off and then paint."),
                ElementsAre("den: remove wallpaper", "den: refinish walls"));
    EXPECT_THAT(itemsOf("Den. New drywall, then paint."), Contains("den: refinish walls"));
}

TEST(NotesPlainOrders, WhatIsRefinishedWithoutANameIsTheFloor) {
    EXPECT_THAT(itemsOf("I'd refinish the den and the hall."),
                UnorderedElementsAre("den: refinish wood floor", "hall: refinish wood floor"));
    EXPECT_THAT(itemsOf("Kitchen. The cabinets are maple. Refinish."),
                ElementsAre("kitchen: refinish cabinets"));
}

TEST(NotesPlainOrders, ThePanelGoesWithTheWiring) {
    EXPECT_THAT(
        itemsOf("Hall: paint. Rewire the house and put in a new fuse board."),
        IsSupersetOf({"whole house: replace electrical panel", "whole house: replace wiring"}));
}

// A place is a thing too where work is done to the whole of it, and stays one place.
TEST(NotesPlainOrders, APlaceItselfIsCleanedKeptOrTakenDown) {
    EXPECT_THAT(itemsOf("Kitchen. New sink. Clean out the attic and the basement."),
                IsSupersetOf({"attic: clean attic", "basement: clean basement"}));
    EXPECT_THAT(itemsOf("Kitchen. New sink. The hall is fine and the garage is fine."),
                Contains("garage: keep garage"));
    EXPECT_THAT(itemsOf("Garage. The window in the garage is broken, new glass."),
                Not(Contains("garage: inspect garage")));
}

}  // namespace
}  // namespace ledgerboard::intake
