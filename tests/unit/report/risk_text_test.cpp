// Protects the bars that a spread is drawn with: by hand. The page around them is protected through
// the verb, in tests/unit/cli/risk_test.cpp.
#include "core/report/risk_text.h"

#include <gtest/gtest.h>

namespace {

using namespace ledgerboard::report;

// Eighths of the largest, rounded up: 0, 1 of 80 (a tenth of an eighth), 40 (four), 41 (just over
// four), 80.
TEST(RiskText, BarsByEighthsOfTheLargest) {
    EXPECT_EQ(barsText({0, 1, 40, 41, 80}, Script::Unicode), " ▁▄▅█");
    EXPECT_EQ(barsText({0, 1, 40, 41, 80}, Script::Ascii), " .-=#");
}

TEST(RiskText, NoBars) {
    EXPECT_EQ(barsText({}, Script::Unicode), "");
    EXPECT_EQ(barsText({0, 0}, Script::Unicode), "  ");
    EXPECT_EQ(barsText({3}, Script::Unicode), "█");
}

}  // namespace
