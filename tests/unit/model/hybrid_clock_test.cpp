// Protects: every entry gets a later reading than all that were seen before it, even where a clock
// stands still or steps back, and "known at an instant" takes in exactly what was made by then.
// How: readings by hand from the layout (milliseconds << 16 | counter), and generated clocks.
#include "core/model/hybrid_clock.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <vector>

namespace ledgerboard::model {
namespace {

Instant at(std::int64_t milliseconds) {
    return Instant::fromMilliseconds(milliseconds);
}

TEST(HybridClock, FollowsTheWallClockWhileItRises) {
    const HybridClock first = HybridClock().next(at(1000));
    EXPECT_EQ(first.raw(), 1000LL << 16);
    EXPECT_EQ(first.instant(), at(1000));
    EXPECT_EQ(first.next(at(1001)).raw(), 1001LL << 16);
}

TEST(HybridClock, CountsOnWhereTheWallClockDoesNotRise) {
    const HybridClock first = HybridClock().next(at(1000));
    EXPECT_EQ(first.next(at(1000)).raw(), (1000LL << 16) + 1);
    EXPECT_EQ(first.next(at(500)).raw(), (1000LL << 16) + 1);
    // A full counter runs into the next millisecond.
    EXPECT_EQ(HybridClock::fromRaw((1000LL << 16) + 0xffff).next(at(1000)).raw(), 1001LL << 16);
}

TEST(HybridClock, EndOfAnInstantTakesInTheWholeMillisecond) {
    const HybridClock end = HybridClock::endOf(at(1000));
    EXPECT_LE(HybridClock::fromRaw(1000LL << 16), end);
    EXPECT_LE(HybridClock::fromRaw((1000LL << 16) + 0xffff), end);
    EXPECT_GT(HybridClock::fromRaw(1001LL << 16), end);
}

RC_GTEST_PROP(HybridClockProperty, ReadingsAlwaysRiseAndNeverLagTheWall, ()) {
    const auto wall = *rc::gen::container<std::vector<std::int64_t>>(
        rc::gen::inRange<std::int64_t>(0, 4'000'000'000'000));
    HybridClock clock;
    for (const auto milliseconds : wall) {
        const HybridClock next = clock.next(at(milliseconds));
        RC_ASSERT(next > clock);
        RC_ASSERT(next.instant() >= at(milliseconds));
        clock = next;
    }
}

}  // namespace
}  // namespace ledgerboard::model
