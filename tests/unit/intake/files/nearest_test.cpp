// Protects: the name that a message suggests is the one a person would have meant, and no name is
// suggested where none is near. Distances are counted by hand.
#include "core/intake/files/nearest.h"

#include <gtest/gtest.h>

namespace ledgerboard::intake {
namespace {

TEST(NearestTest, CountsEdits) {
    EXPECT_EQ(editDistance("", ""), 0U);
    EXPECT_EQ(editDistance("tile", "tile"), 0U);
    EXPECT_EQ(editDistance("", "tile"), 4U);
    EXPECT_EQ(editDistance("tile", "tils"), 1U);      // one changed
    EXPECT_EQ(editDistance("tile", "til"), 1U);       // one taken out
    EXPECT_EQ(editDistance("tile", "tiles"), 1U);     // one put in
    EXPECT_EQ(editDistance("amuont", "amount"), 1U);  // two neighbours swapped
    // kitten, sitten, sittin, sitting: three changes, the usual example.
    EXPECT_EQ(editDistance("kitten", "sitting"), 3U);
    EXPECT_EQ(editDistance("sitting", "kitten"), 3U);
}

TEST(NearestTest, SuggestsWhatWasMeant) {
    const std::vector<std::string> names = {"Tile crew", "Plumbing crew", "Paint crew"};
    EXPECT_EQ(nearestName("tyle crew", names), "Tile crew");
    EXPECT_EQ(nearestName("PLUMBING-CREW", names), "Plumbing crew");
    EXPECT_EQ(nearestName("plumbing", names), "Plumbing crew");
}

TEST(NearestTest, SuggestsNothingFarAway) {
    EXPECT_EQ(nearestName("chandelier", {"Tile crew", "roof"}), "");
    EXPECT_EQ(nearestName("", {"Tile crew"}), "");
    EXPECT_EQ(nearestName("tile", {}), "");
}

}  // namespace
}  // namespace ledgerboard::intake
