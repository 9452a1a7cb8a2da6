// Protects the chance numbers of simulations: the same on every machine, as their authors' own
// programs print them.
#include "core/compute/seeded_numbers.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>

namespace {

using ledgerboard::compute::SeededNumbers;
using ledgerboard::compute::SplitMix64;

// From memory: the first numbers that the public-domain C program splitmix64.c gives for the seed
// 1234567.
TEST(SeededNumbers, SplitMixAsPublished) {
    SplitMix64 numbers(1234567);
    for (const std::uint64_t expected :
         {6457827717110365317U, 3203168211198807973U, 9817491932198370423U, 4593380528125082431U,
          16408922859458223821U}) {
        EXPECT_EQ(numbers.next(), expected);
    }
}

// The first three by hand, with s = {1, 2, 3, 4}: rotl(2 x 5, 7) x 9 = 10 x 128 x 9 = 11520. Then
// s1 = 2 ^ (3 ^ 1) = 0, so 0. Then s1 = 0 ^ ((3 ^ 1) ^ (2 << 17) ^ 7) = 262149, and
// 262149 x 5 x 128 x 9 = 1509978240. The rest from memory of the C program xoshiro256starstar.c.
TEST(SeededNumbers, XoshiroAsPublished) {
    SeededNumbers numbers({1, 2, 3, 4});
    for (const std::uint64_t expected : {11520U, 0U, 1509978240U}) {
        EXPECT_EQ(numbers.next(), expected);
    }
    for (const std::uint64_t expected :
         {1215971899390074240U, 1216172134540287360U, 607988272756665600U, 16172922978634559625U}) {
        EXPECT_EQ(numbers.next(), expected);
    }
}

// Mean 1/2 and variance 1/12 within three standard errors (of the variance: sqrt(1/180 / n)).
TEST(SeededNumbers, UniformOverTheUnitInterval) {
    constexpr int kCount = 200'000;
    SeededNumbers numbers(7);
    double sum = 0;
    double squares = 0;
    for (int k = 0; k < kCount; ++k) {
        const double drawn = numbers.uniform();
        ASSERT_GE(drawn, 0);
        ASSERT_LT(drawn, 1);
        sum += drawn;
        squares += (drawn - 0.5) * (drawn - 0.5);
    }
    EXPECT_NEAR(sum / kCount, 0.5, 3 * std::sqrt(1.0 / 12 / kCount));
    EXPECT_NEAR(squares / kCount, 1.0 / 12, 3 * std::sqrt(1.0 / 180 / kCount));
}

TEST(SeededNumbers, EveryNumberBelowTheEndAndNoOther) {
    SeededNumbers chance(7);
    std::array<int, 6> seen{};
    for (int k = 0; k < 6000; ++k) {
        ++seen.at(chance.below(6));
    }
    for (const int count : seen) {
        // 1,000 expected, with a deviation of sqrt(6000 x 1/6 x 5/6) = 29: five of them either way.
        EXPECT_NEAR(count, 1000, 145);
    }
    EXPECT_EQ(chance.below(1), 0U);
}

TEST(SeededNumbers, OneSeedOneSequence) {
    SeededNumbers a(5);
    SeededNumbers b(5);
    SeededNumbers other(6);
    const std::uint64_t first = a.next();
    EXPECT_EQ(first, b.next());
    EXPECT_NE(first, other.next());
}

}  // namespace
