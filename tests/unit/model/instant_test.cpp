// Protects: an instant is one point in time, whatever zone it was written in. How: the same point
// written in several ways, and what is refused.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/model/date.h"

#include "tests/unit/model/test_text.h"

namespace ledgerboard::model {
namespace {

TEST(Instant, TheSamePointInSeveralZones) {
    // Noon in UTC is 14:00 two hours east of it and 07:00 five hours west (RFC 3339, 4.2).
    for (const auto* text :
         {"2026-05-15T12:00Z", "2026-05-15T12:00:00Z", "2026-05-15T12:00:00.000Z",
          "2026-05-15 12:00:00z", "2026-05-15T14:00+02:00", "2026-05-15T07:00:00-05:00",
          "2026-05-15T17:30+05:30", "2026-05-16T00:00:00.0+12:00"}) {
        EXPECT_EQ(shown(Instant::parse(text)), "2026-05-15T12:00:00.000Z") << text;
    }
}

TEST(Instant, ExamplesOfTheStandard) {
    // Source: RFC 3339, section 5.8: 16:39:57-08:00 on 1996-12-19 is 1996-12-20T00:39:57Z; and
    // 1985-04-12T23:20:50.52Z. By hand, 1996-12-20 is day 9,850: 26 years of 365 days, the leap
    // days of 72 to 92 (6), and 354 days of 1996, itself a leap year, before it.
    EXPECT_EQ(shown(Instant::parse("1996-12-19T16:39:57-08:00")), "1996-12-20T00:39:57.000Z");
    EXPECT_EQ(Instant::parse("1996-12-19T16:39:57-08:00").value().milliseconds(),
              (9850LL * 86'400 + 39 * 60 + 57) * 1000);
    EXPECT_EQ(shown(Instant::parse("1985-04-12T23:20:50.52Z")), "1985-04-12T23:20:50.520Z");
}

TEST(Instant, KeepsMilliseconds) {
    EXPECT_EQ(shown(Instant::parse("2026-05-15T12:00:00.5Z")), "2026-05-15T12:00:00.500Z");
    EXPECT_EQ(shown(Instant::parse("2026-05-15T12:00:00.123456Z")), "2026-05-15T12:00:00.123Z");
}

TEST(Instant, RefusesWhatItWouldHaveToGuess) {
    for (const auto* text :
         {"", "2026-05-15", "2026-05-15T12:00", "2026-05-15T12:00:00", "2026-05-15T24:00Z",
          "2026-05-15T12:60Z", "2026-05-15T12:00:61Z", "2026-02-30T12:00Z",
          "2026-05-15T12:00+15:00", "2026-05-15T12:00+02:60", "2026-05-15T12:00:00.Z",
          "2026-05-15T12:00:00.1234junkZ", "2026-05-15T12:0Z", "2026-05-15T12:00:0Z",
          "2026-05-15T12.00.00Z", "2026-05-15T+02:00", "2026-05-15T12:00 +0200",
          "yesterday at noon"}) {
        EXPECT_FALSE(Instant::parse(text).ok()) << text;
    }
}

TEST(Instant, FallsOnItsUtcDay) {
    EXPECT_EQ(Instant::fromMilliseconds(0).utcDate().days(), 0);
    EXPECT_EQ(Instant::fromMilliseconds(-1).utcDate().days(), -1);
    EXPECT_EQ(Instant::fromMilliseconds(86'400'000).utcDate().days(), 1);
    EXPECT_EQ(Instant::fromMilliseconds(-86'400'000).utcDate().days(), -1);
    EXPECT_EQ(Instant::fromMilliseconds(-86'400'001).utcDate().days(), -2);
    EXPECT_EQ(Instant::fromMilliseconds(-1).toString(), "1969-12-31T23:59:59.999Z");
}

RC_GTEST_PROP(InstantProperty, PrintedInstantsReadBack, ()) {
    // Within the years that a Date takes.
    const auto milliseconds =
        *rc::gen::inRange<std::int64_t>(-135'140LL * 86'400'000, 376'200LL * 86'400'000);
    const auto instant = Instant::fromMilliseconds(milliseconds);
    const auto again = Instant::parse(instant.toString());
    RC_ASSERT(again.ok());
    RC_ASSERT(again.value() == instant);
}

}  // namespace
}  // namespace ledgerboard::model
