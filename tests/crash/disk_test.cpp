// Protects what was acknowledged from the disk. How: a fixed script (script.h) over a disk that
// fails (faulty_disk.h): at every write there is, once and then for good, torn, and full; and over
// one whose power goes at every write, with what was not synchronised gone or torn.
#include <gtest/gtest.h>

#include "tests/crash/script.h"
#include "tests/support/faulty_disk.h"

namespace ledgerboard::tests {
namespace {

class DiskTest : public ::testing::Test {
  protected:
    DiskTest() : folder_((preferMemory(), "disk")), script_(folder_.file("house.book")) {
        script_.begin();
        disk_.mend();
        states_.push_back(script_.holds());
        for (int k = 0; k < Script::steps(); ++k) {
            EXPECT_TRUE(script_.step(k).ok());
            states_.push_back(script_.holds());
        }
        script_.close();
        operations_ = disk_.operations();
        disk_.mend();
    }

    // Steps from `first` on until one fails; which one that was, or their number.
    int run(int first, std::string& said) {
        for (int k = first; k < Script::steps(); ++k) {
            if (const auto done = script_.step(k); !done.ok()) {
                said = done.error().message;
                return k;
            }
        }
        return Script::steps();
    }

    // Opened again, the book adds up and holds the first `done` steps, maybe the one after as well.
    void mustHold(int done, const std::string& when) {
        const auto opened = script_.open();
        ASSERT_TRUE(opened.ok()) << when << ": " << opened.error().message;
        EXPECT_EQ(script_.wrong(), "") << when;
        const std::string now = script_.holds();
        const auto at = static_cast<std::size_t>(done);
        const bool next = at + 1 < states_.size() && now == states_[at + 1];
        EXPECT_TRUE(now == states_[at] || next) << when << ", after " << done << " steps:\n" << now;
    }

    TestFolder folder_;
    FaultyDisk disk_;
    Script script_;
    std::vector<std::string> states_;  // what the book holds after so many steps
    std::int64_t operations_ = 0;
};

TEST_F(DiskTest, AnywhereItFailsForGoodNothingAcknowledgedIsLost) {
    ASSERT_GT(operations_, 50);
    for (const auto fault : {Fault::Error, Fault::Torn}) {
        for (std::int64_t at = 1; at <= operations_; ++at) {
            const std::string when = "operation " + std::to_string(at);
            script_.begin();
            disk_.arm(fault, at, true);
            std::string said;
            const int done = run(0, said);
            script_.close();
            EXPECT_TRUE(disk_.struck()) << when;
            EXPECT_EQ(said.empty(), done == Script::steps()) << when;
            disk_.mend();
            mustHold(done, when);
            if (HasFailure()) {
                return;
            }
        }
    }
}

TEST_F(DiskTest, AnywhereItFailsOnceTheSameCanBeDoneAgain) {
    for (const auto fault : {Fault::Error, Fault::Full}) {
        for (std::int64_t at = 1; at <= operations_; ++at) {
            const std::string when = "operation " + std::to_string(at);
            script_.begin();
            disk_.arm(fault, at, false);
            std::string said;
            const int failed = run(0, said);
            if (failed < Script::steps()) {
                if (fault == Fault::Full) {
                    EXPECT_EQ(said,
                              "the disk is full: nothing was written; free some space and do it "
                              "again")
                        << when;
                }
                if (failed == 5) {
                    ASSERT_TRUE(script_.open().ok()) << when;  // step 5 opens the book
                }
                EXPECT_EQ(script_.holds(), states_[static_cast<std::size_t>(failed)]) << when;
                EXPECT_EQ(run(failed, said), Script::steps()) << when << ": " << said;
            }
            EXPECT_EQ(script_.holds(), states_.back()) << when;
            script_.close();
            mustHold(Script::steps(), when);
            if (HasFailure()) {
                return;
            }
        }
    }
}

TEST_F(DiskTest, WhereverThePowerGoesNothingAcknowledgedIsLost) {
    const std::uint64_t seeds = isLong() ? 10 : 1;
    for (std::int64_t at = 1; at <= operations_ + 1; ++at) {
        for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
            const std::string when = "power gone at operation " + std::to_string(at);
            disk_.watchPower();
            script_.begin();
            disk_.arm(Fault::Error, at, true);
            std::string said;
            const int done = run(0, said);
            script_.close();
            disk_.mend();
            disk_.restorePower(static_cast<std::uint64_t>(at) * 100 + seed);
            mustHold(done, when);
            if (HasFailure()) {
                return;
            }
        }
    }
}

// The power goes right after a step was acknowledged: whether the book holds it.
bool isDurable(Script& script, FaultyDisk& disk, std::uint64_t seed,
               const std::vector<std::string>& states) {
    disk.watchPower();
    script.begin();
    EXPECT_TRUE(script.step(0).ok());
    EXPECT_TRUE(script.step(1).ok());
    disk.arm(Fault::Error, 1, true);
    script.close();
    disk.mend();
    disk.restorePower(seed);
    return script.open().ok() && script.wrong().empty() && script.holds() == states[2];
}

TEST_F(DiskTest, ABookThatDoesNotSynchroniseIsCaughtLosingWhatItAcknowledged) {
    int lostBefore = 0;
    int lost = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        lostBefore += isDurable(script_, disk_, seed, states_) ? 0 : 1;
    }
    disk_.neverSynchronise();  // as synchronous=OFF
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        lost += isDurable(script_, disk_, seed, states_) ? 0 : 1;
    }
    EXPECT_EQ(lostBefore, 0);
    EXPECT_GT(lost, 10);
}

}  // namespace
}  // namespace ledgerboard::tests
