// Protects: which treatment goes with which thing where a sentence has several of each. How: notes
// of a sentence or two, written for the rule they show, against the items a careful reader would
// list.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;
using testing::UnorderedElementsAre;

TEST(NotesClauses, AListBelongsToTheOrderThatOpensIt) {
    EXPECT_THAT(itemsOf("Bathroom. Replace the vanity, the mirror and the toilet."),
                UnorderedElementsAre("bathroom: replace vanity", "bathroom: replace mirror",
                                     "bathroom: replace toilet"));
}

TEST(NotesClauses, WhatATreatmentAfterItNeedsIsItsSubjectAndNotOnTheList) {
    EXPECT_THAT(itemsOf("Bathroom. Replace the vanity, the mirror and the toilet are fine."),
                UnorderedElementsAre("bathroom: replace vanity", "bathroom: keep mirror",
                                     "bathroom: keep toilet"));
}

TEST(NotesClauses, ATreatmentWithoutAThingSpeaksOfTheTopic) {
    EXPECT_THAT(itemsOf("Kitchen. The door drags, plane it."),
                Contains("kitchen: repair interior doors"));
    EXPECT_THAT(itemsOf("Kitchen. Gutters are fine, clean them out."),
                ElementsAre("outside: clean gutters"));
}

TEST(NotesClauses, WhatAThingHasIsNotWhatIsSpokenOf) {
    EXPECT_THAT(itemsOf("Bathroom. The vanity has swollen doors and has to be replaced."),
                Contains("bathroom: replace vanity"));
    EXPECT_THAT(itemsOf("Bedroom. One window has a rotten sill; repair."),
                Contains("bedroom: repair window sill"));
}

TEST(NotesClauses, ANewPartIsAMending) {
    EXPECT_THAT(itemsOf("Hall. The newel post gets a long bolt."),
                ElementsAre("hall: repair newel post"));
    EXPECT_THAT(itemsOf("Hall. The door needs a new door closer thingumabob."),
                Not(Contains("hall: replace interior doors")));
}

TEST(NotesClauses, WhatIsNeededIsSaidByTheTreatmentAfterIt) {
    EXPECT_THAT(itemsOf("Porch. The steps need to be jacked up."),
                ElementsAre("porch: repair steps"));
}

TEST(NotesClauses, WhatABracketSaysIsOfTheThingBeforeIt) {
    EXPECT_THAT(itemsOf("Kitchen. Range (white, one dead burner): replace."),
                Contains("kitchen: replace stove"));
    EXPECT_THAT(itemsOf("Kitchen. New floor (vinyl plank)."),
                ElementsAre("kitchen: replace vinyl plank"));
}

TEST(NotesClauses, WhatFollowsFromAFaultIsHad) {
    EXPECT_THAT(itemsOf("Kitchen. The cork is worn to the glue, so sheet vinyl."),
                Contains("kitchen: replace vinyl floor"));
}

TEST(NotesClauses, WhatWasDoneStays) {
    EXPECT_THAT(itemsOf("Basement. The heat pump was serviced in spring."),
                ElementsAre("basement: keep heat pump"));
    EXPECT_THAT(itemsOf("Bedroom. Walls were painted last month."),
                ElementsAre("bedroom: keep walls"));
    EXPECT_THAT(itemsOf("Kitchen. The window has been painted shut."),
                Not(Contains("kitchen: keep windows")));
}

TEST(NotesClauses, AMissingPartDoesNotMakeTheWholeMissing) {
    EXPECT_THAT(itemsOf("Bedroom. The ceiling light has no globe; new light."),
                Contains("bedroom: replace light fixtures"));
    EXPECT_THAT(itemsOf("Bathroom. No fan, put one in."), ElementsAre("bathroom: add bath fan"));
}

TEST(NotesClauses, WhatIsExceptedStays) {
    EXPECT_THAT(itemsOf("Kitchen. All the appliances go except the microwave."),
                UnorderedElementsAre("kitchen: remove appliances", "kitchen: keep microwave"));
}

TEST(NotesClauses, TalkToOneselfIsNoTreatment) {
    EXPECT_THAT(itemsOf("Kitchen. Okay, where is the tape."), IsEmpty());
}

}  // namespace
}  // namespace ledgerboard::intake
