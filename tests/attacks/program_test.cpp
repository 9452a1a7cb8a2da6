// Protects: devices that meet through the real program: two books of one owner agree after two
// meetings each over TLS, a crew lead gets the work and none of the money, and what the program
// prints, keeps and logs gives nothing away.
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sstream>

#include "tests/attacks/device.h"

namespace ledgerboard::tests {
namespace {

namespace field = model::field;
using model::Id;
using model::Kind;
using model::RawId;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

// An amount that stands nowhere else.
constexpr std::int64_t kBudgetCents = 7'315'246'819;

std::string contentsOf(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
}

TEST(Program, BringsDevicesTogetherAndKeepsMoneyFromACrewLead) {
    PeerProcess peer;
    Device laptop(peer, peer.code(), 1);
    meet(laptop);
    store::Action begin("begin");
    const RawId job = laptop.book->newId(laptop.stamp());
    const RawId space = laptop.book->newId(laptop.stamp());
    const RawId crew = laptop.book->newId(laptop.stamp());
    const RawId item = laptop.book->newId(laptop.stamp());
    begin.set(job, field::Job::name, std::string("Elm Street"));
    begin.set(job, field::Job::budget, kBudgetCents);
    begin.set(space, field::Space::job, job);
    begin.set(space, field::Space::name, std::string("Bath"));
    begin.set(crew, field::Crew::name, std::string("Tilers"));
    begin.set(item, field::Item::job, job);
    begin.set(item, field::Item::space, space);
    begin.set(item, field::Item::treatment, std::string("replace"));
    begin.set(item, field::Item::object, std::string("floor"));
    begin.set(item, field::Item::crew, crew);
    begin.set(item, field::Item::lumpSum, kBudgetCents);
    write(laptop, begin);
    meet(laptop);

    Device phone(peer, laptop.invite({{"role", "owner"}}), 2);
    meet(phone);
    store::Action rename("rename");
    rename.set(space, field::Space::name, std::string("Upper bath"));
    write(phone, rename);
    meet(phone);
    meet(laptop);
    EXPECT_EQ(laptop.book->dump().value(), phone.book->dump().value());
    EXPECT_THAT(laptop.book->dump().value(), HasSubstr("Upper bath"));

    Device lead(peer, laptop.invite({{"role", "crew lead"}, {"crew", crew.hex()}}), 3);
    meet(lead);
    EXPECT_THAT(lead.book->dump().value(), HasSubstr("Upper bath"));
    EXPECT_THAT(lead.book->dump().value(), Not(HasSubstr(std::to_string(kBudgetCents))));
    EXPECT_EQ(lead.link->call(sync::Call::Invite, R"({"role":"owner"})").status, 403);
    EXPECT_EQ(laptop.link->call(sync::Call::Invite, R"({"role":"crew lead"})").status, 422);
    EXPECT_THAT(peer.logged(), Not(HasSubstr(std::to_string(kBudgetCents))));

    // Shut out by an owner: told so at the next call.
    store::Action revoke("revoke");
    revoke.set(lead.book->thisDevice().raw(), field::Device::revokedOn, std::int64_t{20'000});
    write(phone, revoke);
    meet(phone);
    const auto met = lead.meet();
    ASSERT_TRUE(met.ok()) << met.error().message;
    EXPECT_TRUE(met.value().revoked);
}

TEST(Program, RemembersAndGivesNothingAway) {
    PeerProcess peer;
    const auto code = peer.code();
    EXPECT_THAT(peer.printed(), HasSubstr("█"));
    Device laptop(peer, code, 1);
    meet(laptop);
    EXPECT_EQ(peer.stop(), 0);
    EXPECT_THAT(peer.logged(), HasSubstr(R"("event":"stopped")"));
    EXPECT_THAT(peer.logged(), HasSubstr(R"("event":"joined")"));
    for (const std::string& log :
         {peer.logged(), contentsOf(peer.folder().file("house.book.devices"))}) {
        EXPECT_THAT(log, Not(HasSubstr(std::string(code.secret()))));
    }
    for (const auto* file : {"house.book", "house.book.tls", "house.book.devices"}) {
        EXPECT_EQ(std::filesystem::status(peer.folder().file(file)).permissions(),
                  std::filesystem::perms::owner_read | std::filesystem::perms::owner_write)
            << file;
    }

    peer.start();  // the same certificate, the same devices, and no invitation
    meet(laptop);
    EXPECT_THAT(peer.printed(), IsEmpty());
    EXPECT_EQ(peer.stop(), 0);
}

}  // namespace
}  // namespace ledgerboard::tests
