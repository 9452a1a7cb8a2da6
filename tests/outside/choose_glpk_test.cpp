// Protects the best set against another solver: the same made-up cases as mixed integer programs to
// GLPK (the GNU Linear Programming Kit), and the highest net must agree to the half cent. 200 cases
// of each make-up; LEDGERBOARD_LONG=1 in the environment runs 5,000.
#include <cstdlib>
#include <gtest/gtest.h>

#include "tests/support/glpk_choose.h"
#include "tests/support/made_up_alternates.h"

namespace {

using ledgerboard::compute::bestSetOf;
using ledgerboard::tests::GlpkChoose;
using ledgerboard::tests::MadeUpAlternates;
using ledgerboard::tests::madeUpAlternates;

std::uint64_t cases() {
    const char* isLong = std::getenv("LEDGERBOARD_LONG");
    return isLong != nullptr && *isLong == '1' ? 5000 : 200;
}

void expectAgreement(MadeUpAlternates like, std::uint64_t firstSeed) {
    std::uint64_t withSet = 0;
    for (std::uint64_t seed = firstSeed; seed < firstSeed + cases(); ++seed) {
        like.alternates = 3 + seed % 8;
        like.options = 2 + seed % 4;
        const auto input = madeUpAlternates(like, seed);
        const auto ours = bestSetOf(input);
        ASSERT_TRUE(ours.ok() && ours.value().proven) << seed;
        const auto theirs = GlpkChoose(input).solve();
        ASSERT_EQ(ours.value().set.has_value(), theirs.has_value()) << "seed " << seed;
        if (theirs) {
            ++withSet;
            const double net = static_cast<double>(ours.value().set->net.minor()) / 100;
            EXPECT_NEAR(net, *theirs, 0.0051) << "seed " << seed;
        }
    }
    EXPECT_GT(withSet, cases() / 2);  // else the cases show little
}

TEST(ChooseAgainstGlpk, CashAndDays) {
    expectAgreement({}, 1000);
}

TEST(ChooseAgainstGlpk, NeedsAndExcludes) {
    expectAgreement({.pairs = 3}, 10'000);
}

TEST(ChooseAgainstGlpk, NeedsAndExcludesWithoutLimits) {
    expectAgreement({.pairs = 5, .hasLimits = false}, 20'000);
}

TEST(ChooseAgainstGlpk, CeilingSellingAndDayCosts) {
    expectAgreement({.hasCeiling = true, .hasDayCosts = true}, 30'000);
}

TEST(ChooseAgainstGlpk, AllTogether) {
    expectAgreement({.pairs = 2, .hasCeiling = true, .hasDayCosts = true}, 40'000);
}

}  // namespace
