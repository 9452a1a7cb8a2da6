// Protects who is wanted in two places at once, and when, on plans read by hand.
#include "core/compute/stacked.h"

#include <gtest/gtest.h>

namespace ledgerboard::compute {
namespace {

CrewedItem item(std::int64_t days, std::vector<CrewNeed> needs,
                std::optional<std::size_t> space = std::nullopt) {
    CrewedItem out;
    out.activity.duration = days;
    out.needs = std::move(needs);
    out.space = space;
    return out;
}

using Times = std::vector<std::int64_t>;

TEST(Stacked, NothingWantedTwice) {
    CrewPlanInput input;
    EXPECT_TRUE(stackedIn(input, Times{}).empty());
    input.crews = {{"tile", 1}};
    input.items = {item(2, {{0}}), item(3, {{0}}), item(0, {{0}})};
    EXPECT_TRUE(stackedIn(input, Times{0, 2, 1}).empty());  // the milestone wants nothing
}

// The crew: 0 to 4, 2 to 6, 5 to 7: wanted twice from 2 to 4 and from 5 to 6.
TEST(Stacked, ACrewInTwoPlaces) {
    CrewPlanInput input;
    input.crews = {{"paint", 5}, {"tile", 1}};
    input.items = {item(4, {{1}}), item(4, {{1}}), item(2, {{1}}), item(9, {{0, 5}})};
    const auto stacked = stackedIn(input, Times{0, 2, 5, 0});
    ASSERT_EQ(stacked.size(), 2U);
    EXPECT_EQ(stacked[0].crew, 1U);
    EXPECT_FALSE(stacked[0].space);
    EXPECT_EQ(stacked[0].from, 2);
    EXPECT_EQ(stacked[0].to, 4);
    EXPECT_EQ(stacked[0].wanted, 2);
    EXPECT_EQ(stacked[0].items, (std::vector<std::size_t>{0, 1}));
    EXPECT_EQ(stacked[1].from, 5);
    EXPECT_EQ(stacked[1].to, 6);
    EXPECT_EQ(stacked[1].items, (std::vector<std::size_t>{1, 2}));
}

// A crew of two: 3 + 1 places at most, without a gap from 1 to 5 though the items change.
TEST(Stacked, OneStretchWhileItIsTooMuch) {
    CrewPlanInput input;
    input.crews = {{"carpenters", 2}};
    input.items = {item(3, {{0, 2}}), item(4, {{0, 1}}), item(2, {{0, 2}})};
    const auto stacked = stackedIn(input, Times{0, 1, 3});
    ASSERT_EQ(stacked.size(), 1U);
    EXPECT_EQ(stacked[0].from, 1);
    EXPECT_EQ(stacked[0].to, 5);
    EXPECT_EQ(stacked[0].wanted, 3);
    EXPECT_EQ(stacked[0].items, (std::vector<std::size_t>{0, 1, 2}));
}

// One crew twice in a space is fine; another crew, or work by nobody in particular, is not.
TEST(Stacked, TwoPartiesInASpace) {
    CrewPlanInput input;
    input.crews = {{"tile", 2}, {"paint", 1}};
    input.spaces = {"Hall bath"};
    input.items = {item(3, {{0}}, 0), item(3, {{0}}, 0), item(1, {{1}}, 0), item(1, {}, 0)};
    EXPECT_TRUE(stackedIn(input, Times{0, 1, 4, 5}).empty());
    const auto crews = stackedIn(input, Times{0, 1, 3, 5});
    ASSERT_EQ(crews.size(), 1U);
    EXPECT_EQ(crews[0].space, 0U);
    EXPECT_FALSE(crews[0].crew);
    EXPECT_EQ(crews[0].from, 3);
    EXPECT_EQ(crews[0].to, 4);
    EXPECT_EQ(crews[0].wanted, 2);
    EXPECT_EQ(crews[0].items, (std::vector<std::size_t>{1, 2}));
    EXPECT_EQ(stackedIn(input, Times{0, 1, 3, 3}).at(0).wanted, 3);
}

}  // namespace
}  // namespace ledgerboard::compute
