// Protects how samples are summed up: by hand, on lists short enough to see.
#include "core/compute/samples.h"

#include <cmath>
#include <gtest/gtest.h>

namespace {

using namespace ledgerboard::compute;

using List = std::vector<std::int64_t>;

// 2, 4, 4, 4, 5, 5, 7, 9: mean 5, squares off it 9 + 1 + 1 + 1 + 0 + 0 + 4 + 16 = 32, over 7.
TEST(Samples, MeanAndDeviation) {
    const Summary out = summaryOf(List{9, 4, 5, 2, 4, 7, 4, 5});
    EXPECT_DOUBLE_EQ(out.mean, 5);
    EXPECT_DOUBLE_EQ(out.deviation, std::sqrt(32.0 / 7));
    EXPECT_EQ(out.least, 2);
    EXPECT_EQ(out.most, 9);
}

// Nearest rank of 1 to 10: the 1st, 5th, 8th and 9th; of 1 to 11: the 2nd (1.1 rounded up), 6th,
// 9th (8.8) and 10th (9.9).
TEST(Samples, NearestRanks) {
    const Summary ten = summaryOf(List{10, 3, 8, 1, 6, 5, 7, 4, 9, 2});
    EXPECT_EQ(ten.p10, 1);
    EXPECT_EQ(ten.p50, 5);
    EXPECT_EQ(ten.p80, 8);
    EXPECT_EQ(ten.p90, 9);
    const Summary eleven = summaryOf(List{11, 10, 3, 8, 1, 6, 5, 7, 4, 9, 2});
    EXPECT_EQ(eleven.p10, 2);
    EXPECT_EQ(eleven.p50, 6);
    EXPECT_EQ(eleven.p80, 9);
    EXPECT_EQ(eleven.p90, 10);
}

TEST(Samples, NoneAndOne) {
    const Summary none = summaryOf({});
    EXPECT_EQ(none.mean, 0);
    EXPECT_EQ(none.p80, 0);
    EXPECT_EQ(percentAtMost({}, 5), 0);
    const Summary one = summaryOf(List{-7});
    EXPECT_EQ(one.mean, -7);
    EXPECT_EQ(one.deviation, 0);
    EXPECT_EQ(one.p10, -7);
    EXPECT_EQ(one.p90, -7);
}

// A cent in a million million still shows: the variance of {x, x, x + 1, x + 1} is 4 x 0.25 / 3.
TEST(Samples, LargeNumbersKeepTheirDigits) {
    constexpr std::int64_t kLarge = 100'000'000'000'000'000;
    const Summary out = summaryOf(List{kLarge, kLarge, kLarge + 1, kLarge + 1});
    EXPECT_DOUBLE_EQ(out.deviation, std::sqrt(1.0 / 3));
}

TEST(Samples, ChancesIncludeTheLimit) {
    const List list{1, 2, 2, 3};
    EXPECT_EQ(percentAtMost(list, 2), 75);
    EXPECT_EQ(percentAtLeast(list, 2), 75);
    EXPECT_EQ(percentAtMost(list, 0), 0);
    EXPECT_EQ(percentAtLeast(list, 4), 0);
    EXPECT_EQ(percentAtMost(list, 3), 100);
}

TEST(Samples, CountsInBins) {
    // 0 to 10 in two: 0 to under 5, and 5 to 10 with its end.
    EXPECT_EQ(countsOf(List{0, 1, 5, 10, 11, -1}, 2, 0, 10), (std::vector<std::size_t>{2, 2}));
    EXPECT_EQ(countsOf(List{4, 4}, 3, 4, 4), (std::vector<std::size_t>{2, 0, 0}));
    EXPECT_EQ(countsOf({}, 2, 0, 1), (std::vector<std::size_t>{0, 0}));
}

}  // namespace
