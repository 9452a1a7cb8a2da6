// Protects invite, join, sync, devices and revoke as a person uses them: through the real peer
// program on loopback, two owners' books agree, a crew lead gets the work alone, every wrong turn
// says what to do, being out of reach loses nothing, and a device that is shut out is refused and
// loses its copy.
#include <filesystem>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/store/book.h"

#include "tests/support/peer_process.h"
#include "tests/unit/cli/command_line.h"

namespace ledgerboard::cli {
namespace {

using nlohmann::json;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

class DevicesTest : public testing::Test {
  protected:
    void SetUp() override {
        ok(laptop_, {"start", "14 Quince Row", "--owner", "Wren", "--budget", "105000"});
        ok(laptop_, {"add", "space", "Space=Kitchen"});
        ok(laptop_, {"add", "crew", "Crew=Tile crew", "Trade=tile"});
        ok(laptop_, {"add", "scope", "Space=Kitchen", "Treatment=repair", "Object=shelf",
                     "Lump sum=4200", "Crew=Tile crew"});
    }

    static std::string ok(CommandLine& line, const std::vector<std::string>& arguments) {
        return said(line, arguments, kDone).out;
    }

    static std::string no(CommandLine& line, const std::vector<std::string>& arguments,
                          int status = kCannotBeMet) {
        return said(line, arguments, status).err;
    }

    static Answer said(CommandLine& line, const std::vector<std::string>& arguments, int status) {
        Answer answer = line(arguments);
        EXPECT_EQ(answer.status, status) << arguments.front() << ": " << answer.out << answer.err;
        return answer;
    }

    std::string address() const { return sync::toText(peer_.place()); }

    void joinLaptop() {
        ok(laptop_, {"join", address(), peer_.code().toText(), "--called", "Wren's laptop"});
    }

    // Joins by what the picture says.
    void joinInvited(CommandLine& line, std::vector<std::string> invite,
                     const std::string& called) {
        invite.insert(invite.begin(), "--json");
        const json said = json::parse(ok(laptop_, invite));
        ok(line, {"join", said["picture"].get<std::string>(), "--called", called});
    }

    // The device of that name as `devices` lists it.
    json listed(const std::string& name) {
        const json all = json::parse(ok(laptop_, {"--json", "devices"}));
        for (const auto& one : all["devices"]) {
            if (one["name"] == name) {
                return one;
            }
        }
        ADD_FAILURE() << name << " is not in " << all;
        return {{"person", ""}, {"role", ""}, {"heard", nullptr}};
    }

    std::string path(const char* name) const { return peer_.folder().file(name); }

    std::string dump(const char* name) const {
        return store::Book::open(path(name), tests::fixedChance(3)).value().dump().value();
    }

    tests::PeerProcess peer_;
    CommandLine laptop_{path("laptop.book")};
    CommandLine phone_{path("phone.book"), 5};
    CommandLine lead_{path("lead.book"), 6};
};

TEST_F(DevicesTest, TwoOwnersAgreeAndNobodyIsMadeUp) {
    EXPECT_THAT(no(laptop_, {"sync"}), HasSubstr("ledgerboard join ADDRESS CODE"));
    joinLaptop();
    EXPECT_THAT(no(laptop_, {"join", address(), peer_.code().toText()}), HasSubstr("has joined"));
    joinInvited(phone_, {"invite", "owner"}, "Wren's phone");
    ok(phone_, {"set", "job", "Budget", "99000"});
    EXPECT_THAT(ok(phone_, {"sync"}),
                AllOf(HasSubstr("Up:    1 change."), HasSubstr("nothing new")));
    // The budget, and the phone itself: whose it is and what it is called.
    EXPECT_THAT(ok(laptop_, {"sync"}), HasSubstr("Down:  3 changes."));
    EXPECT_THAT(ok(laptop_, {"sync"}),
                AllOf(HasSubstr("Up:    nothing new."), HasSubstr("Down:  nothing new.")));
    EXPECT_EQ(dump("laptop.book"), dump("phone.book"));
    const json people = json::parse(ok(laptop_, {"--json", "list", "people"}));
    EXPECT_EQ(people.dump().find("peer"), std::string::npos) << people;
    const auto book = store::Book::open(path("laptop.book"), tests::fixedChance(3));
    EXPECT_EQ(book.value().rows<model::Person>().value().size(), 1U);
    const auto devices = book.value().rows<model::Device>().value();
    ASSERT_EQ(devices.size(), 2U);
    EXPECT_EQ(devices[0].person, devices[1].person);
    for (const char* file : {"laptop.book.peer", "laptop.book.key"}) {
        EXPECT_EQ(std::filesystem::status(path(file)).permissions(),
                  std::filesystem::perms::owner_read | std::filesystem::perms::owner_write)
            << file;
    }
}

TEST_F(DevicesTest, ACrewLeadGetsTheWorkAndIsListedByName) {
    joinLaptop();
    joinInvited(lead_, {"invite", "crew-lead", "Tile crew", "--name", "Robin"}, "Robin's phone");
    EXPECT_THAT(dump("lead.book"),
                AllOf(HasSubstr("shelf"), Not(HasSubstr("420000")), Not(HasSubstr("10500000"))));
    const json device = listed("Robin's phone");
    EXPECT_EQ(device["person"], "Robin");
    EXPECT_EQ(device["role"], "crew lead");
    EXPECT_FALSE(device["heard"].is_null());
    // A second device of the same lead is the same person's.
    CommandLine second{path("second.book"), 7};
    joinInvited(second, {"invite", "crew-lead", "Tile crew"}, "Robin's tablet");
    EXPECT_EQ(listed("Robin's tablet")["person"], "Robin");
    // What is not a lead's to write is set aside, and the lead is told.
    ok(lead_, {"set", "kitchen/shelf", "Lump sum", "1"});
    EXPECT_THAT(ok(lead_, {"sync"}), HasSubstr("Set aside: 1 change is not this device's to make"));
    ok(laptop_, {"sync"});
    EXPECT_THAT(ok(laptop_, {"aside"}), HasSubstr("Lump sum"));
    EXPECT_THAT(no(lead_, {"invite", "owner"}), HasSubstr("only an owner invites"));
    EXPECT_THAT(no(lead_, {"revoke", "laptop"}), HasSubstr("only an owner"));
}

TEST_F(DevicesTest, OutOfReachLosesNothing) {
    joinLaptop();
    peer_.stop();
    ok(laptop_, {"set", "job", "Budget", "99000"});
    const std::string why = no(laptop_, {"sync"});
    EXPECT_THAT(why,
                AllOf(HasSubstr("does not answer"), HasSubstr("nothing is lost: 1 change waits"),
                      HasSubstr("Run 'ledgerboard sync' again")));
    const json told = json::parse(said(laptop_, {"--json", "sync"}, kCannotBeMet).out);
    EXPECT_EQ(told["end"], "offline");
    EXPECT_EQ(told["waiting"]["changes"], 1);
    EXPECT_THAT(ok(laptop_, {"devices"}), HasSubstr("does not answer"));
    EXPECT_THAT(no(laptop_, {"invite", "owner"}), HasSubstr("must be in reach"));
    peer_.start();
    EXPECT_THAT(ok(laptop_, {"sync"}), HasSubstr("Up:    1 change."));
}

TEST_F(DevicesTest, ADeviceThatIsShutOutLosesItsCopy) {
    joinLaptop();
    joinInvited(phone_, {"invite", "owner"}, "Wren's phone");
    EXPECT_THAT(no(laptop_, {"revoke", "Wren's laptop"}), HasSubstr("this very device"));
    EXPECT_THAT(no(laptop_, {"revoke", "Nobody's"}), HasSubstr("'ledgerboard devices' lists them"));
    EXPECT_THAT(ok(laptop_, {"revoke", "Wren's phone"}), HasSubstr("is shut out"));
    // At the door, before anything is answered.
    const std::string log = peer_.logged();
    ok(phone_, {"add", "space", "Space=Attic"});
    EXPECT_THAT(no(phone_, {"sync"}), HasSubstr("an owner shut this device out"));
    EXPECT_THAT(peer_.logged().substr(log.size()), HasSubstr(R"("code":"revoked")"));
    for (const char* tail : {"", "-wal", "-shm", ".photos", ".key", ".peer"}) {
        EXPECT_FALSE(std::filesystem::exists(path("phone.book") + tail)) << tail;
    }
    EXPECT_THAT(ok(laptop_, {"devices"}), HasSubstr("shut out"));
    // What it wrote too late is not in the book, and not lost to the owner's eyes.
    ok(laptop_, {"sync"});
    EXPECT_THAT(ok(laptop_, {"list", "spaces"}), Not(HasSubstr("Attic")));
    EXPECT_THAT(ok(laptop_, {"aside"}), AllOf(HasSubstr("Attic"), HasSubstr("shut out")));
}

TEST_F(DevicesTest, WrongTurnsSayWhatToDo) {
    EXPECT_THAT(no(laptop_, {"join", "nowhere", "X"}, kWrongUse), HasSubstr("host:port"));
    EXPECT_THAT(no(laptop_, {"join", address()}, kWrongUse), HasSubstr("join takes both"));
    EXPECT_THAT(no(laptop_, {"join", "LEDGERBOARD:1:x"}, kWrongUse), HasSubstr("invitation"));
    EXPECT_THAT(no(laptop_, {"join", address(), "00000-00000-00000-00000-00000"}),
                HasSubstr("No invitation of this code"));
    joinLaptop();
    EXPECT_THAT(no(laptop_, {"invite", "boss"}, kWrongUse), HasSubstr("owner, crew-lead, viewer"));
    EXPECT_THAT(no(laptop_, {"invite", "crew-lead"}, kWrongUse), HasSubstr("say which crew"));
    EXPECT_THAT(no(laptop_, {"invite", "crew-lead", "Roofers"}), HasSubstr("no crew"));
    EXPECT_THAT(no(laptop_, {"invite", "viewer"}, kWrongUse), HasSubstr("say which job"));
    EXPECT_THAT(no(laptop_, {"invite", "owner", "Tile crew"}, kWrongUse), HasSubstr("--name"));
    EXPECT_THAT(no(laptop_, {"sync", "--address", "nonsense"}, kWrongUse), HasSubstr("--address"));
    EXPECT_THAT(no(laptop_, {"--as-of", "2026-05-01", "sync"}, kWrongUse),
                HasSubstr("leave it out"));
    // A book of one's own cannot become a crew lead's.
    const json said = json::parse(ok(laptop_, {"--json", "invite", "crew-lead", "Tile crew"}));
    ok(phone_, {"start", "Another house"});
    EXPECT_THAT(no(phone_, {"join", address(), said["code"].get<std::string>()}),
                HasSubstr("join into a new file"));
    ok(lead_, {"join", address(), said["code"].get<std::string>()});
    // A peer of another certificate in the same place.
    tests::PeerProcess other;
    EXPECT_THAT(no(laptop_, {"sync", "--address", sync::toText(other.place())}),
                HasSubstr("another than the peer"));
}

}  // namespace
}  // namespace ledgerboard::cli
