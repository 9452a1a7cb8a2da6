// Protects: each call has a path of its own and is found by it; JSON from outside is read without
// exceptions and to a depth that does not grow with the sender's patience.
#include "sync/wire/calls.h"

#include <gtest/gtest.h>
#include <set>

#include "sync/wire/bounded_json.h"

namespace ledgerboard::sync {
namespace {

TEST(Calls, HaveAPathEach) {
    std::set<std::string_view> paths;
    for (const Call call : {Call::Hello, Call::Push, Call::Pull, Call::Snapshot, Call::PhotoHave,
                            Call::PhotoPart, Call::Roster, Call::Invite}) {
        EXPECT_EQ(callAt(pathOf(call)), call);
        paths.insert(pathOf(call));
    }
    EXPECT_EQ(paths.size(), 8u);
    EXPECT_EQ(pathOf(Call::PhotoPart), "/1/photo-part");
    EXPECT_EQ(nameOf(Call::PhotoPart), "photo-part");
    for (const auto* path :
         {"", "/", "/1/", "/1/Push", "/1/push/", "/1/push?x", "/2/push", "/1/time", "/1/pair"}) {
        EXPECT_FALSE(callAt(path)) << path;
    }
}

TEST(BoundedJson, ReadsWhatIsShallowAndNothingElse) {
    EXPECT_EQ(readJson(R"({"a":[1,2]})", 2)->dump(), R"({"a":[1,2]})");
    EXPECT_FALSE(readJson(R"({"a":[1,[2]]})", 2));
    // Brackets within a string nest nothing, nor does an escaped quote end it.
    EXPECT_TRUE(readJson(R"(["[[[[ \" [[[["])", 1));
    for (const auto* text : {"", "{", "[1,]", "{\"a\":}", "nul", "\"\xff\"", "[1] [2]"}) {
        EXPECT_FALSE(readJson(text)) << text;
    }
    EXPECT_FALSE(readJson(std::string(1'000'000, '[')));
}

TEST(BoundedJson, TextAtFindsStringsAlone) {
    const auto object = *readJson(R"({"name":"tile","count":3})");
    EXPECT_EQ(textAt(object, "name"), "tile");
    EXPECT_FALSE(textAt(object, "count"));
    EXPECT_FALSE(textAt(object, "none"));
    EXPECT_FALSE(textAt(*readJson("[1]"), "name"));
}

}  // namespace
}  // namespace ledgerboard::sync
