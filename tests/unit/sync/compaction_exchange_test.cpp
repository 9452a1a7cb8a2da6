// Protects: the peer lets go of old values once every owner's device that is heard has them, and
// neither a device that was silent nor one that is new misses anything for it. How: days and months
// pass by the test's clock, with the limits the program has.
#include <gtest/gtest.h>

#include "tests/support/star.h"

namespace ledgerboard::sync {
namespace {

namespace field = model::field;
using model::RawId;
using store::Action;
using tests::Phone;
using tests::Star;

constexpr std::int64_t kDayMs = 24 * 3600 * 1000;

class CompactionExchangeTest : public testing::Test {
  protected:
    CompactionExchangeTest()
        : star_("compaction"),
          laptop_(star_.join(model::Role::Owner)),
          phone_(star_.join(model::Role::Owner)),
          space_(laptop_.book->newId(star_.now())) {}

    void name(Phone& by, const std::string& name) {
        star_.timeMs += 60'000;
        Action action("name");
        action.set(space_, field::Space::name, name);
        EXPECT_TRUE(by.book->commit(action, star_.stampOf(by)).ok());
    }

    void meet(Phone& phone) {
        star_.timeMs += 60'000;
        const auto met = star_.meet(phone);
        ASSERT_TRUE(met.ok()) << met.error().message;
    }

    void pass(int days) { star_.timeMs += days * kDayMs; }

    static std::size_t entriesIn(const store::Book& book) { return book.entries().value().size(); }

    Star star_;
    Phone laptop_;
    Phone phone_;
    RawId space_;
};

TEST_F(CompactionExchangeTest, WaitsForEveryDeviceThatIsHeardAndNotForOneThatIsSilent) {
    meet(phone_);
    for (const auto* one : {"Bath", "Bathroom", "Hall bath", "Bath up"}) {
        name(laptop_, one);
    }
    meet(laptop_);
    const auto whole = entriesIn(*star_.peerBook);
    pass(366);
    meet(phone_);  // comes with a cursor from before: it has not taken them yet
    EXPECT_EQ(entriesIn(*star_.peerBook), whole);
    pass(2);
    meet(laptop_);
    EXPECT_EQ(entriesIn(*star_.peerBook), whole);
    meet(phone_);  // and now with one that says it has
    pass(2);
    meet(laptop_);
    EXPECT_EQ(entriesIn(*star_.peerBook), whole - 3);
    EXPECT_EQ(laptop_.book->dump().value(), star_.peerBook->dump().value());
    EXPECT_EQ(entriesIn(*laptop_.book), whole - 3);
}

TEST_F(CompactionExchangeTest, ADeviceThatWasSilentSendsItsOwnAndMissesNothing) {
    meet(phone_);
    name(phone_, "Powder room");  // and then it lies in a drawer
    for (const auto* one : {"Bath", "Bathroom", "Hall bath"}) {
        name(laptop_, one);
    }
    meet(laptop_);
    const auto whole = entriesIn(*star_.peerBook);
    pass(400);
    meet(laptop_);
    pass(2);
    meet(laptop_);
    EXPECT_LT(entriesIn(*star_.peerBook), whole);
    meet(phone_);
    meet(laptop_);
    EXPECT_EQ(phone_.last.renewed, false);
    EXPECT_EQ(phone_.book->dump().value(), star_.peerBook->dump().value());
    EXPECT_EQ(laptop_.book->dump().value(), star_.peerBook->dump().value());
    Phone fresh = star_.join(model::Role::Owner);
    meet(fresh);
    EXPECT_EQ(fresh.book->dump().value(), star_.peerBook->dump().value());
    for (auto* book : {phone_.book.get(), laptop_.book.get(), star_.peerBook.get()}) {
        EXPECT_TRUE(book->verify(false).value().findings.empty());
    }
}

}  // namespace
}  // namespace ledgerboard::sync
