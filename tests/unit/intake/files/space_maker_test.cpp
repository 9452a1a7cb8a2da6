// Protects: every space of a job has two letters of its own and a colour, however many there are.
#include "core/intake/files/space_maker.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

#include "core/model/catalog.h"

namespace ledgerboard::intake {
namespace {

TEST(SpaceMakerTest, LettersComeFromTheName) {
    SpaceMaker maker({});
    EXPECT_EQ(maker.make({}, {}, "Kitchen").shortName, "Ki");
    EXPECT_EQ(maker.make({}, {}, "Hall bath").shortName, "Hb");
    EXPECT_EQ(maker.make({}, {}, "Half bath").shortName, "Ha");
    EXPECT_EQ(maker.make({}, {}, "bedroom 2").shortName, "B2");
}

TEST(SpaceMakerTest, FollowsTheSpacesThatAreThere) {
    model::Space old;
    old.shortName = "KI";
    old.walkOrder = 7;
    SpaceMaker maker({old});
    const auto space = maker.make({}, {}, "Kitchen");
    EXPECT_EQ(space.shortName, "Kt");
    EXPECT_EQ(space.walkOrder, 8);
    EXPECT_EQ(maker.make({}, {}, "Den").walkOrder, 9);
}

TEST(SpaceMakerTest, ThreeHundredSpacesOfOneNameDiffer) {
    SpaceMaker maker({});
    std::set<std::string> letters;
    for (int k = 0; k < 300; ++k) {
        const auto space = maker.make({}, {}, k % 3 == 0 ? "\xC3\x89tage" : "Room");
        EXPECT_EQ(space.shortName.size(), 2U);
        letters.insert(model::folded(space.shortName));
        EXPECT_THAT(space.swatch, testing::MatchesRegex("#[0-9A-F]{6}"));
    }
    EXPECT_EQ(letters.size(), 300U);
}

}  // namespace
}  // namespace ledgerboard::intake
