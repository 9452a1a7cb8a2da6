// Protects: the table of weights of places can be used whole; a thing's places near by are gathered
// with what bears on them; where nothing is known of them the rules have the last word, and a thing
// that stays in one of several rooms at once is left there.
// How: the embedded table; small invented notes. How well the weights hold is no matter for a unit
// test: weigh-places prints it on talk left out.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/intake/notes/place_clues.h"
#include "core/intake/notes/read_notes.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;

// The first thing of that name in the notes.
NamedWhereabouts whereaboutsOf(std::string_view notes, const std::string& object) {
    ReadOptions options;
    options.explain = true;
    const auto reading = explainNotes(notes, options);
    for (const NamedWhereabouts& where : reading.value().whereabouts) {
        if (where.object == object) {
            return where;
        }
    }
    return {};
}

std::vector<std::string> spacesOf(const NamedWhereabouts& where) {
    std::vector<std::string> spaces;
    for (const NamedPlace& place : where.places) {
        spaces.push_back(place.space);
    }
    return spaces;
}

TEST(NotesPlaces, EveryRowCanBeUsed) {
    EXPECT_THAT(placeFaults(), IsEmpty());
}

TEST(NotesPlaces, TheRulesDecideWhereNothingIsKnown) {
    Whereabouts where;
    where.places.resize(3);
    EXPECT_EQ(likeliestPlace(where), 0U);
    EXPECT_EQ(likeliestPlace(Whereabouts{}), 0U);
}

TEST(NotesPlaces, OfTheRulesFirstThenWhatWasSpokenOf) {
    const NamedWhereabouts where = whereaboutsOf(
        "Kitchen. Replace the sink.\nHall. The light by the closet stays, and the switch too.\n",
        "light fixtures");
    ASSERT_THAT(where.ruled, ElementsAre("hall"));
    EXPECT_EQ(where.places.front().space, "hall");
    EXPECT_THAT(spacesOf(where), Contains("kitchen"));
    EXPECT_THAT(spacesOf(where), Contains("whole house"));
    EXPECT_THAT(spacesOf(where), Contains("outside"));
}

TEST(NotesPlaces, WhatStandsAroundTheNameOfAPlaceTells) {
    const NamedWhereabouts where =
        whereaboutsOf("Hall. There is a new faucet in the kitchen.\n", "faucet");
    ASSERT_THAT(spacesOf(where), Contains("kitchen"));
    for (const NamedPlace& place : where.places) {
        if (place.space == "kitchen") {
            EXPECT_THAT(place.clues, Contains("after word the"));
            EXPECT_THAT(place.clues, Contains("after words in the"));
            EXPECT_THAT(place.clues, Contains("thing in faucet kitchen"));
        } else {
            EXPECT_THAT(place.clues, Not(Contains("after word the")));
        }
    }
}

TEST(NotesPlaces, AThingOfSeveralRoomsStaysInThem) {
    const NamedWhereabouts where =
        whereaboutsOf("Living room and dining room: refinish the oak floor.\n", "wood floor");
    EXPECT_THAT(where.ruled, SizeIs(2));
    EXPECT_THAT(where.places, IsEmpty());
}

}  // namespace
}  // namespace ledgerboard::intake
