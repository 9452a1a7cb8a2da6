// Protects: a device's key is made once, stays in a file that nobody else may read, and signs as
// published in RFC 8032, section 7.1.
#include "sync/identity/device_key.h"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "sync/identity/private_file.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::sync {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;
using tests::fixedChance;
using tests::TestFolder;

// RFC 8032, section 7.1, TEST 1.
constexpr const char* kSeed = "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60";
constexpr const char* kPublic = "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a";
constexpr const char* kSignedEmpty =
    "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b4"
    "6"
    "bd25bf5f0595bbe24655141438e7a100b";

std::size_t filesIn(const fs::path& folder) {
    return static_cast<std::size_t>(
        std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

TEST(DeviceKey, SignsAsPublished) {
    const DeviceKey key(*fromHex<DeviceKey::Seed>(kSeed));
    EXPECT_EQ(hexOf(key.publicKey()), kPublic);
    EXPECT_EQ(hexOf(key.sign("")), kSignedEmpty);
    EXPECT_TRUE(isSignedBy(key.publicKey(), "", key.sign("")));
    EXPECT_FALSE(isSignedBy(key.publicKey(), "x", key.sign("")));
    // The all-zero key is a point of small order, for which signatures could be made up.
    EXPECT_FALSE(isSignedBy(PublicKey{}, "", Signature{}));
}

TEST(DeviceKey, IsMadeOnceAndKeptToItself) {
    const TestFolder folder("key");
    const std::string path = folder.file("house.book.key");
    auto first = DeviceKey::keptAt(path, fixedChance(1));
    auto second = DeviceKey::keptAt(path, fixedChance(2));
    ASSERT_TRUE(first.ok() && second.ok());
    EXPECT_EQ(first.value().publicKey(), second.value().publicKey());
    EXPECT_EQ(fs::status(path).permissions(), fs::perms::owner_read | fs::perms::owner_write);
    EXPECT_EQ(filesIn(folder.path()), 1u);  // nothing left aside
}

TEST(DeviceKey, RefusesAFileThatOthersCanReach) {
    const TestFolder folder("key");
    const std::string path = folder.file("key");
    ASSERT_TRUE(DeviceKey::keptAt(path, fixedChance(1)).ok());
    fs::permissions(path, fs::perms::group_read, fs::perm_options::add);
    const auto opened = DeviceKey::keptAt(path, fixedChance(1));
    ASSERT_FALSE(opened.ok());
    EXPECT_THAT(opened.error().message, HasSubstr("chmod 600 " + path));
}

TEST(DeviceKey, RefusesWhatIsNoKey) {
    const TestFolder folder("key");
    for (const std::string& text : {std::string(), std::string("ledgerboard device key 1\n"),
                                    "ledgerboard device key 2\n" + std::string(kSeed) + "\n",
                                    "ledgerboard device key 1\n" + std::string(64, 'g') + "\n"}) {
        const std::string path = folder.file("key");
        ASSERT_TRUE(replacePrivate(path, text).ok());
        const auto opened = DeviceKey::keptAt(path, fixedChance(1));
        ASSERT_FALSE(opened.ok()) << text;
        EXPECT_EQ(opened.error().code, model::ErrorCode::Damaged);
        EXPECT_EQ(readPrivate(path).value(), text);  // and leaves it as it is
    }
    fs::create_directory(folder.file("folder"));
    EXPECT_FALSE(DeviceKey::keptAt(folder.file("folder"), fixedChance(1)).ok());
    fs::create_symlink(folder.file("key"), folder.file("link"));
    EXPECT_FALSE(DeviceKey::keptAt(folder.file("link"), fixedChance(1)).ok());
    EXPECT_FALSE(DeviceKey::keptAt(folder.file("none/key"), fixedChance(1)).ok());
}

TEST(PrivateFile, IsNeverMadeTwice) {
    const TestFolder folder("private");
    const std::string path = folder.file("secret");
    EXPECT_EQ(readPrivate(path).value(), std::nullopt);
    EXPECT_TRUE(makePrivate(path, "one").value());
    EXPECT_FALSE(makePrivate(path, "two").value());
    EXPECT_EQ(readPrivate(path).value(), "one");
    EXPECT_TRUE(replacePrivate(path, "three").ok());
    EXPECT_EQ(readPrivate(path).value(), "three");
    EXPECT_EQ(filesIn(folder.path()), 1u);
}

TEST(Bytes, HaveOneSpelling) {
    EXPECT_EQ(hexOf(Bytes<3>{0, 10, 255}), "000aff");
    EXPECT_EQ((fromHex<Bytes<3>>("000aff")), (Bytes<3>{0, 10, 255}));
    for (const auto* hex : {"", "000af", "000aff0", "000AFF", "000ag0", "0x0aff", " 00aff"}) {
        EXPECT_FALSE(fromHex<Bytes<3>>(hex)) << hex;
    }
}

}  // namespace
}  // namespace ledgerboard::sync
