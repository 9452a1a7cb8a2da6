// Protects: what the peer keeps of devices comes back after a restart and is never read by halves;
// its log has one JSON object a line whatever is in it; the picture shows exactly the code's
// modules; each answer of the exchange has a status of its own.
#include <filesystem>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>
#include <sstream>

#include <nlohmann/json.hpp>

#include "sync/identity/private_file.h"
#include "sync/identity/qr_picture.h"
#include "sync/peer/event_log.h"
#include "sync/peer/paired_devices.h"
#include "sync/wire/http_status.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::sync {
namespace {

using model::RawId;
using tests::TestFolder;

const auto kNow = model::Instant::fromMilliseconds(1'775'476'800'000);
const RawId kOne = RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1b").value();
const RawId kTwo = RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1c").value();
const RawId kThree = RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1d").value();

PublicKey keyOf(std::uint8_t byte) {
    PublicKey key{};
    key.fill(byte);
    return key;
}

TEST(PairedDevices, AreThereAfterARestart) {
    const TestFolder folder("devices");
    const std::string path = folder.file("house.book.devices");
    const Grant lead{model::Role::CrewLead, kThree, {}};
    {
        auto devices = PairedDevices::open(path).value();
        EXPECT_FALSE(std::filesystem::exists(path));
        EXPECT_EQ(devices->admit(kOne, keyOf(1), {}, kNow).value(), Refusal::None);
        EXPECT_EQ(devices->admit(kTwo, keyOf(2), lead, kNow).value(), Refusal::None);
        EXPECT_EQ(devices->admit(kTwo, keyOf(2), {}, kNow).value(), Refusal::None);
        EXPECT_EQ(devices->admit(kTwo, keyOf(3), lead, kNow).value(), Refusal::DeviceTaken);
        EXPECT_TRUE(devices->revoke(kOne, kNow).value());
        EXPECT_FALSE(devices->revoke(kOne, kNow).value());
        EXPECT_FALSE(devices->revoke(kThree, kNow).value());
        EXPECT_EQ(devices->admit(kOne, keyOf(1), {}, kNow).value(), Refusal::Revoked);
    }
    const auto devices = PairedDevices::open(path).value();
    EXPECT_EQ(devices->size(), 2u);
    EXPECT_TRUE(devices->find(kOne).value()->revoked);
    EXPECT_FALSE(devices->find(kTwo).value()->revoked);
    EXPECT_EQ(devices->find(kTwo).value()->key, keyOf(2));
    EXPECT_EQ(devices->find(kTwo).value()->grant, lead);  // the first grant stays
    EXPECT_FALSE(devices->find(kThree).value());
}

TEST(PairedDevices, AreReadWholeOrNotAtAll) {
    const TestFolder folder("devices");
    const std::string path = folder.file("devices");
    ASSERT_TRUE(PairedDevices::open(path)
                    .value()
                    ->admit(kOne, keyOf(1), {model::Role::Owner, {}, {}}, kNow)
                    .ok());
    const std::string good = *readPrivate(path).value();
    auto document = nlohmann::json::parse(good);
    ASSERT_TRUE(PairedDevices::open(path).ok());
    const auto opens = [&](const nlohmann::json& changed) {
        EXPECT_TRUE(replacePrivate(path, changed.dump()).ok());
        return PairedDevices::open(path).ok();
    };
    for (const auto* name : {"device", "key", "role", "crew", "job", "joined"}) {
        auto changed = document;
        changed["devices"][0][name] = "?";
        EXPECT_FALSE(opens(changed)) << name;
        changed["devices"][0].erase(name);
        EXPECT_FALSE(opens(changed)) << name;
    }
    auto maybeRevoked = document;
    maybeRevoked["devices"][0]["revoked"] = "?";
    EXPECT_FALSE(opens(maybeRevoked));
    auto newer = document;
    newer["version"] = 2;
    EXPECT_FALSE(opens(newer));
    for (std::size_t length = 0; length < good.size() - 1; length += 7) {
        ASSERT_TRUE(replacePrivate(path, good.substr(0, length)).ok());
        EXPECT_FALSE(PairedDevices::open(path).ok()) << length;
    }
    EXPECT_TRUE(opens(document));
}

TEST(EventLog, WritesOneObjectALine) {
    std::ostringstream out;
    EventLog log(out);
    Event event;
    event.what = "refused";
    event.code = "a \"quote\"\nand \xff a byte";
    event.device = kOne;
    event.status = 401;
    event.ms = 0;
    log.write(event, kNow);
    Event stopped;
    stopped.what = "stopped";
    log.write(stopped, kNow);
    std::istringstream lines(out.str());
    std::string line;
    ASSERT_TRUE(std::getline(lines, line));
    const auto first = nlohmann::json::parse(line);
    EXPECT_EQ(first["at"], "2026-04-06T12:00:00.000Z");
    EXPECT_EQ(first["device"], kOne.hex());
    EXPECT_EQ(first["ms"], 0);
    EXPECT_FALSE(first.contains("address"));
    ASSERT_TRUE(std::getline(lines, line));
    EXPECT_EQ(nlohmann::json::parse(line).size(), 2u);
    EXPECT_FALSE(std::getline(lines, line));
}

// Reads the picture back, two modules a character.
std::vector<std::vector<bool>> modulesIn(const std::string& picture, bool blocksAreDark) {
    std::vector<std::vector<bool>> rows;
    std::istringstream lines(picture);
    std::string line;
    while (std::getline(lines, line)) {
        rows.emplace_back();
        rows.emplace_back();
        for (std::size_t k = 0; k < line.size();) {
            const bool wide = (line[k] & 0x80) != 0;
            const std::string sign = line.substr(k, wide ? 3 : 1);
            k += sign.size();
            rows[rows.size() - 2].push_back((sign == "█" || sign == "▀") == blocksAreDark);
            rows[rows.size() - 1].push_back((sign == "█" || sign == "▄") == blocksAreDark);
        }
    }
    return rows;
}

TEST(QrPicture, ShowsTheModulesInALightBorder) {
    const auto modules = qrModules("LEDGERBOARD:1:" + std::string(110, 'A')).value();
    const std::size_t width = modules.size();
    EXPECT_EQ((width - 17) % 4, 0u);  // ISO/IEC 18004: 17 + 4 for each version
    const std::string plain = qrPicture(modules, false);
    const auto rows = modulesIn(plain, false);
    ASSERT_GE(rows.size(), width + 8);
    for (std::size_t row = 0; row < rows.size(); ++row) {
        ASSERT_EQ(rows[row].size(), width + 8);
        for (std::size_t column = 0; column < rows[row].size(); ++column) {
            const bool inside = row >= 4 && row < width + 4 && column >= 4 && column < width + 4;
            EXPECT_EQ(rows[row][column], inside && modules[row - 4][column - 4])
                << row << " " << column;
        }
    }
    std::string coloured = qrPicture(modules, true);
    for (const std::string code : {"\x1b[30;107m", "\x1b[0m"}) {
        for (auto at = coloured.find(code); at != std::string::npos; at = coloured.find(code)) {
            coloured.erase(at, code.size());
        }
    }
    EXPECT_EQ(modulesIn(coloured, true), rows);
    EXPECT_FALSE(qrModules(std::string(5'000, 'a')).ok());
    EXPECT_LE(width + 8, 80u);  // fits a terminal
}

TEST(HttpStatus, IsOneEach) {
    std::set<int> seen;
    for (int k = 0; k <= static_cast<int>(Status::Failed); ++k) {
        const auto status = static_cast<Status>(k);
        EXPECT_EQ(statusAt(httpStatusOf(status)), status) << k;
        seen.insert(httpStatusOf(status));
    }
    EXPECT_EQ(seen.size(), static_cast<std::size_t>(Status::Failed) + 1);
    EXPECT_FALSE(statusAt(503));
    EXPECT_FALSE(statusAt(401));
}

}  // namespace
}  // namespace ledgerboard::sync
