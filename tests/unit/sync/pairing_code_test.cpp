// Protects: a code has 100 secret bits, is read as people type it, and every single slip is found.
// The worked check was made by another program (the polynomial summed in Python).
#include "sync/identity/pairing_code.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

#include "sync/identity/invitation.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::sync {
namespace {

using testing::HasSubstr;
using tests::fixedChance;

constexpr std::string_view kAlphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
constexpr const char* kWorked = "7K3Q0123456789ABCDEFGHJKS";

TEST(PairingCode, IsReadAsTyped) {
    const auto code = PairingCode::parse("7k3q0-i2345-6789a bcdef ghjks");
    ASSERT_TRUE(code.ok()) << code.error().message;
    EXPECT_EQ(code.value().plain(), kWorked);
    EXPECT_EQ(code.value().toText(), "7K3Q0-12345-6789A-BCDEF-GHJKS");
    EXPECT_EQ(code.value().handle(), "7K3Q");
    EXPECT_EQ(code.value().secret(), "0123456789ABCDEFGHJK");
    EXPECT_EQ(PairingCode::parse("7K3QO-L2345-6789A-BCDEF-GHJKS").value(), code.value());
}

TEST(PairingCode, SaysWhatIsWrong) {
    EXPECT_THAT(PairingCode::parse("7K3Q0-1234").error().message, HasSubstr("9 characters of 25"));
    EXPECT_THAT(PairingCode::parse("").error().message, HasSubstr("0 characters of 25"));
    EXPECT_THAT(PairingCode::parse("7K3Q0-1U345").error().message, HasSubstr("group 2"));
    EXPECT_THAT(PairingCode::parse(std::string(kWorked) + "0").error().message,
                HasSubstr("too long"));
}

TEST(PairingCode, FindsEveryWrongCharacterAndEverySwap) {
    int slips = 0;
    for (std::size_t k = 0; k < PairingCode::kLength; ++k) {
        for (const char c : kAlphabet) {
            std::string wrong = kWorked;
            wrong[k] = c;
            if (wrong != kWorked) {
                EXPECT_FALSE(PairingCode::parse(wrong).ok()) << wrong;
                ++slips;
            }
        }
        for (std::size_t other = k + 1; other < PairingCode::kLength; ++other) {
            std::string swapped = kWorked;
            std::swap(swapped[k], swapped[other]);
            EXPECT_EQ(PairingCode::parse(swapped).ok(), swapped == kWorked) << swapped;
            ++slips;
        }
    }
    EXPECT_EQ(slips, 25 * 31 + 25 * 24 / 2);
}

TEST(PairingCode, FreshOnesDifferAndUseTheWholeAlphabet) {
    const auto chance = fixedChance(3);
    std::set<std::string> codes;
    std::set<char> characters;
    for (int k = 0; k < 200; ++k) {
        const auto code = PairingCode::fresh(chance);
        EXPECT_EQ(PairingCode::parse(code.toText()).value(), code);
        codes.insert(std::string(code.secret()));
        characters.insert(code.plain().begin(), code.plain().end());
    }
    EXPECT_EQ(codes.size(), 200u);
    EXPECT_EQ(characters.size(), kAlphabet.size());
}

TEST(Invitation, ComesBackFromItsPicture) {
    Invitation invitation{PairingCode::parse(kWorked).value(), {}, {"peer.example", 7440}};
    invitation.certificate.fill(0xab);
    const std::string text = pictureText(invitation);
    EXPECT_EQ(
        text, "LEDGERBOARD:1:7K3Q0123456789ABCDEFGHJKS:" + [] {
            std::string digest;
            for (int k = 0; k < 32; ++k) {
                digest += "AB";
            }
            return digest;
        }() + ":7440:PEER.EXAMPLE");
    for (const auto* host : {"peer.example", "192.0.2.7", "2001:db8::7"}) {
        invitation.place.host = host;
        const auto read = parseInvitation(pictureText(invitation));
        ASSERT_TRUE(read.ok()) << host;
        EXPECT_EQ(read.value().place, invitation.place);
        EXPECT_EQ(read.value().code, invitation.code);
        EXPECT_EQ(read.value().certificate, invitation.certificate);
    }
    for (std::size_t length = 0; length < text.size() - 12; ++length) {
        EXPECT_FALSE(parseInvitation(text.substr(0, length)).ok()) << length;
    }
    EXPECT_FALSE(parseInvitation("LEDGERBOARD:2:" + text.substr(14)).ok());
    EXPECT_FALSE(parseInvitation(text + "/evil").ok());
}

TEST(Place, IsHostAndPort) {
    EXPECT_EQ(parsePlace("192.0.2.7:7440").value(), (Place{"192.0.2.7", 7440}));
    EXPECT_EQ(parsePlace("[2001:db8::7]:80").value(), (Place{"2001:db8::7", 80}));
    EXPECT_EQ(toText(Place{"2001:db8::7", 80}), "[2001:db8::7]:80");
    EXPECT_EQ(toText(Place{"peer.example", 80}), "peer.example:80");
    for (const auto* text : {"", "peer", "peer:", ":80", "peer:0", "peer:65536", "peer:80x",
                             "2001:db8::7:80", "[]:80", "a b:80", "https://peer:80", "u@h:80"}) {
        EXPECT_FALSE(parsePlace(text).ok()) << text;
    }
}

}  // namespace
}  // namespace ledgerboard::sync
