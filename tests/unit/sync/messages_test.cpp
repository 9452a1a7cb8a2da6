// Protects the messages of the exchange: what is written is read back the same, and whatever else
// comes (cut short, too deep, out of range, of another form) is refused and never half read.
#include "sync/wire/messages.h"

#include <gtest/gtest.h>
#include <string>

#include "sync/wire/photo_messages.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::sync {
namespace {

using model::RawId;
using store::Entry;
using store::Lane;

RawId idOf(std::uint8_t tail) {
    std::array<std::uint8_t, RawId::kBytes> bytes{};
    bytes[0] = 1;
    bytes[15] = tail;
    return RawId(bytes);
}

Entry entryOf(model::Value value) {
    Entry entry;
    entry.name = {idOf(1), Lane::Shared, 7};
    entry.clock = model::HybridClock::fromRaw(116'000'000'000'000'123);
    entry.record = idOf(2);
    entry.field = 3007;
    entry.value = std::move(value);
    entry.replaces = {{idOf(3), Lane::OwnerOnly, 5}, {idOf(1), Lane::Sealed, INT64_MAX}};
    return entry;
}

void expectSame(const Entry& a, const Entry& b) {
    EXPECT_EQ(a.name, b.name);
    EXPECT_EQ(a.clock, b.clock);
    EXPECT_EQ(a.record, b.record);
    EXPECT_EQ(a.field, b.field);
    EXPECT_EQ(a.value, b.value);
    EXPECT_EQ(a.replaces, b.replaces);
}

TEST(Messages, EntriesComeBackAsTheyWent) {
    for (const model::Value& value :
         {model::Value{}, model::Value{std::int64_t{-5}}, model::Value{INT64_MAX},
          model::Value{INT64_MIN}, model::Value{std::string("grout \"open\"\n\xc3\xa4")},
          model::Value{idOf(9)}, model::Value{RawId{}}}) {
        const Entry entry = entryOf(value);
        const auto pushed = readPushAsk(write(PushAsk{{entry}}));
        ASSERT_TRUE(pushed.ok());
        ASSERT_EQ(pushed.value().entries.size(), 1u);
        expectSame(pushed.value().entries[0], entry);
        PullAnswer answer;
        answer.cursor = "l.x";
        answer.more = true;
        answer.drops = {{idOf(4), 3000}};
        answer.entries = {entry};
        answer.asides = {{0, entry, model::Instant::fromMilliseconds(5), "why"}};
        const auto pulled = readPullAnswer(write(answer));
        ASSERT_TRUE(pulled.ok());
        EXPECT_EQ(pulled.value().cursor, "l.x");
        EXPECT_TRUE(pulled.value().more);
        EXPECT_FALSE(pulled.value().fresh);
        EXPECT_EQ(pulled.value().drops, answer.drops);
        expectSame(pulled.value().entries.at(0), entry);
        expectSame(pulled.value().asides.at(0).entry, entry);
        EXPECT_EQ(pulled.value().asides.at(0).why, "why");
    }
}

TEST(Messages, HelloComesBackAsItWent) {
    const HelloAsk ask{1, idOf(5), {3, 4}, true, idOf(6)};
    const auto read = readHelloAsk(write(ask)).value();
    EXPECT_EQ(read.epoch, ask.epoch);
    EXPECT_EQ(read.last, ask.last);
    EXPECT_TRUE(read.wantOthers);
    EXPECT_EQ(read.renew, ask.renew);
    HelloAnswer answer;
    answer.epoch = idOf(5);
    answer.time = model::Instant::fromMilliseconds(1'775'476'800'000);
    answer.device = idOf(2);
    answer.role = "crew lead";
    answer.others = {{idOf(1), {8, 9}}};
    const auto back = readHelloAnswer(write(answer)).value();
    EXPECT_EQ(back.time, answer.time);
    EXPECT_EQ(back.device, answer.device);
    EXPECT_EQ(back.role, answer.role);
    EXPECT_EQ(back.others, answer.others);
}

TEST(Messages, CutShortAnywhereTheyAreRefused) {
    const std::string push = write(PushAsk{{entryOf(idOf(9)), entryOf(std::int64_t{1})}});
    const std::string hello = write(HelloAsk{});
    for (std::size_t size = 0; size < push.size(); ++size) {
        EXPECT_FALSE(readPushAsk(push.substr(0, size)).ok()) << size;
        if (size < hello.size()) {
            EXPECT_FALSE(readHelloAsk(hello.substr(0, size)).ok()) << size;
        }
    }
}

TEST(Messages, WithAnyByteChangedNothingWorseHappensThanARefusal) {
    const std::string whole = write(PushAsk{{entryOf(idOf(9)), entryOf(std::string("text"))}});
    std::size_t refused = 0;
    for (std::size_t at = 0; at < whole.size(); ++at) {
        for (const char c : {'\0', '"', '[', '}', '9', '-', '\xff'}) {
            std::string changed = whole;
            changed[at] = c;
            const auto read = readPushAsk(changed);
            refused += read.ok() ? 0 : 1;
            for (const auto& entry : read.ok() ? read.value().entries : std::vector<Entry>()) {
                EXPECT_FALSE(entry.record.isNil());
                EXPECT_GE(entry.name.number, 1);
                EXPECT_LE(static_cast<int>(entry.name.lane), 2);
            }
        }
    }
    EXPECT_GT(refused, whole.size());
}

TEST(Messages, WhatIsOutOfRangeIsRefused) {
    const std::string ids = R"({"ids":["01000000000000000000000000000001"],"entries":)";
    const auto push = [&](const std::string& entry) {
        return readPushAsk(ids + "[" + entry + "]}").ok();
    };
    EXPECT_TRUE(push("[0,1,1,5,0,3007,null]"));
    for (const auto* bad :
         {"[1,1,1,5,0,3007,null]", "[-1,1,1,5,0,3007,null]", "[0,3,1,5,0,3007,null]",
          "[0,-1,1,5,0,3007,null]", "[0,1,0,5,0,3007,null]", "[0,1,1,-5,0,3007,null]",
          "[0,1,1,5,7,3007,null]", "[0,1,1,5,0,999,null]", "[0,1,1,5,0,1000000,null]",
          "[0,1,1,5,0,3007,1.5]", "[0,1,1,5,0,3007,true]", "[0,1,1,5,0,3007,[3]]",
          "[0,1,1,5,0,3007,{}]", "[0,1,1,5,0,3007]", "[0,1,1,5,0,3007,null,[0,1]]",
          "[0,1,1,5,0,3007,null,[0,9,1]]", "[0,1,1,99999999999999999999,0,3007,null]", "7",
          "[0,1,1,5,0,3007,[[[[[1]]]]]]"}) {
        EXPECT_FALSE(push(bad)) << bad;
    }
    std::string many = "[0,1,1,5,0,3007,null]";
    for (std::size_t k = 0; k < kMostEntries; ++k) {
        many += ",[0,1,1,5,0,3007,null]";
    }
    EXPECT_FALSE(push(many));
    EXPECT_FALSE(readPushAsk(R"({"ids":["00000000000000000000000000000000"],"entries":[]})").ok());
    EXPECT_FALSE(readPullAsk(R"({"cursor":")" + std::string(97, 'x') + "\"}").ok());
}

TEST(Messages, PhotoPartsCarryTheirBytesAsTheyAre) {
    const std::string digest(64, 'a');
    const std::string bytes("\0\n\xff{", 4);
    const auto part = readPhotoPart(write(PhotoPart{digest, 10, 2, bytes})).value();
    EXPECT_EQ(part.digest, digest);
    EXPECT_EQ(part.size, 10);
    EXPECT_EQ(part.offset, 2);
    EXPECT_EQ(part.bytes, bytes);
    EXPECT_FALSE(readPhotoPart(write(PhotoPart{digest, 3, 2, bytes})).ok());  // beyond its size
    EXPECT_FALSE(readPhotoPart(write(PhotoPart{"../" + digest, 10, 2, bytes})).ok());
    EXPECT_FALSE(readPhotoPart(write(GetPhotoAsk{digest, {}, 0})).ok());
    EXPECT_EQ(readGetPhotoAsk(write(GetPhotoAsk{digest, {}, 5})).value().offset, 5);
    EXPECT_FALSE(readGetPhotoAsk(write(GetPhotoAsk{"../x", {}, 5})).ok());
    EXPECT_FALSE(readGetPhotoAsk(write(GetPhotoAsk{})).ok());
}

}  // namespace
}  // namespace ledgerboard::sync
