// Protects: ids never repeat, sort by time of making, and are what RFC 9562 says a version 7 UUID
// is. How: the bits of made ids against the layout of section 5.7, and the RFC's own example.
#include "core/model/id.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <set>

#include "tests/unit/model/test_text.h"

namespace ledgerboard::model {
namespace {

Instant at(std::int64_t milliseconds) {
    return Instant::fromMilliseconds(milliseconds);
}

// Chance that repeats: a plain counter, so that two ids differ and a test stays the same.
FillRandom counting() {
    return [next = std::uint8_t{0}](std::uint8_t* bytes, std::size_t count) mutable {
        for (std::size_t k = 0; k < count; ++k) {
            bytes[k] = next++;
        }
    };
}

std::int64_t millisecondsIn(const RawId& id) {
    std::int64_t out = 0;
    for (std::size_t k = 0; k < 6; ++k) {
        out = out << 8 | id.bytes()[k];
    }
    return out;
}

int versionOf(const RawId& id) {
    return id.bytes()[6] >> 4;
}

int variantOf(const RawId& id) {
    return id.bytes()[8] >> 6;
}

TEST(Id, TheExampleOfTheStandardReadsByTheLayout) {
    // Source: RFC 9562, appendix A.6 (from memory): the example of a version 7 UUID, made on
    // Tuesday 22 February 2022 at 2:22:22 PM, five hours west of UTC. Its own layout confirms it:
    // the first 48 bits are that instant, then version 0111 and variant 10.
    const auto example = RawId::parse("017F22E2-79B0-7CC3-98C4-DC0C0C07398F");
    ASSERT_TRUE(example.ok());
    EXPECT_EQ(millisecondsIn(example.value()),
              Instant::parse("2022-02-22T14:22:22-05:00").value().milliseconds());
    EXPECT_EQ(versionOf(example.value()), 7);
    EXPECT_EQ(variantOf(example.value()), 2);
}

TEST(Id, MadeIdsFollowTheLayout) {
    IdMaker maker([](std::uint8_t* bytes, std::size_t count) { std::fill_n(bytes, count, 0xff); });
    const RawId id = maker.next(at(0x017F22E279B0));
    // RFC 9562, 5.7: unix_ts_ms, version 7, rand_a (here the counter, 0), variant 10, rand_b (here
    // all ones, so that only the variant's two bits differ).
    EXPECT_EQ(id.toString(), "017f22e2-79b0-7000-bfff-ffffffffffff");
    EXPECT_EQ(maker.next(at(0x017F22E279B0)).toString(), "017f22e2-79b0-7001-bfff-ffffffffffff");
}

TEST(Id, RiseWithinOneMillisecondAndWhenTheClockStepsBack) {
    IdMaker maker(counting());
    RawId last = maker.next(at(1000));
    for (int k = 0; k < 10'000; ++k) {  // more than the 4,096 that one millisecond holds
        const RawId next = maker.next(at(k % 3 == 0 ? 900 : 1000));
        ASSERT_LT(last, next);
        ASSERT_EQ(versionOf(next), 7);
        ASSERT_EQ(variantOf(next), 2);
        last = next;
    }
    EXPECT_EQ(millisecondsIn(last), 1002);  // 10,001 ids fill two milliseconds and begin a third
    EXPECT_LT(last, maker.next(at(5000)));
}

TEST(Id, ReadsTheCanonicalFormAndTheDigitsAlone) {
    const auto id = RawId::parse("017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
    EXPECT_EQ(shown(id), "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
    EXPECT_EQ(shown(RawId::parse("017F22E279B07CC398C4DC0C0C07398F")), shown(id));
    EXPECT_EQ(id.value().hex(), "017f22e279b07cc398c4dc0c0c07398f");
}

TEST(Id, RefusesWhatIsNoId) {
    for (const auto* text :
         {"", "017f", "017f22e2-79b0-7cc3-98c4-dc0c0c07398",
          "017f22e2-79b0-7cc3-98c4-dc0c0c07398fa", "017f22e279b0-7cc3-98c4-dc0c0c07398f",
          "g17f22e2-79b0-7cc3-98c4-dc0c0c07398f", "017f22e2x79b0-7cc3-98c4-dc0c0c07398f",
          "017f22e2-79b07cc3-98c4-dc0c-0c07398f", "017f22e279b07cc398c4dc0c0c07398f00"}) {
        EXPECT_FALSE(RawId::parse(text).ok()) << text;
    }
}

TEST(Id, NilIsNoRecord) {
    EXPECT_TRUE(RawId().isNil());
    EXPECT_TRUE(Id<Kind::Job>().isNil());
    IdMaker maker(counting());
    const Id<Kind::Job> job(maker.next(at(1)));
    EXPECT_FALSE(job.isNil());
    EXPECT_NE(std::hash<Id<Kind::Job>>{}(job), std::hash<Id<Kind::Job>>{}(Id<Kind::Job>()));
}

RC_GTEST_PROP(IdProperty, TextFormsReadBack, ()) {
    std::array<std::uint8_t, RawId::kBytes> bytes{};
    for (auto& byte : bytes) {
        byte = *rc::gen::arbitrary<std::uint8_t>();
    }
    const RawId id(bytes);
    RC_ASSERT(RawId::parse(id.toString()).value() == id);
    RC_ASSERT(RawId::parse(id.hex()).value() == id);
}

RC_GTEST_PROP(IdProperty, OrderOfIdsIsOrderOfAsking, ()) {
    IdMaker maker(counting());
    std::vector<RawId> made;
    for (const auto milliseconds :
         *rc::gen::container<std::vector<std::int64_t>>(rc::gen::inRange<std::int64_t>(0, 20))) {
        made.push_back(maker.next(at(milliseconds)));
    }
    for (std::size_t k = 1; k < made.size(); ++k) {
        RC_ASSERT(made[k - 1] < made[k]);
    }
}

}  // namespace
}  // namespace ledgerboard::model
