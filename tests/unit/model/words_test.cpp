// Protects: every word that is stored reads back as the value that wrote it, and no two values of
// one list share a word. How: all lists, all words.
#include "core/model/words.h"

#include <gtest/gtest.h>
#include <set>

namespace ledgerboard::model {
namespace {

template <class E>
class WordsOf : public testing::Test {};

using Lists =
    testing::Types<Treatment, Measure, LinkKind, ContractKind, SpendKind, PaidFrom, Stage, Purpose,
                   Verdict, PaperKind, Outcome, InterestBasis, ChargedOn, Role, Language>;
TYPED_TEST_SUITE(WordsOf, Lists);

TYPED_TEST(WordsOf, EveryWordReadsBackAndIsItsOwn) {
    const auto words = wordsOf<TypeParam>();
    ASSERT_GE(words.size(), 2u);
    EXPECT_EQ(words[0], "") << "the first value is 'not said'";
    std::set<std::string_view> seen;
    for (std::size_t k = 0; k < words.size(); ++k) {
        const auto value = static_cast<TypeParam>(k);
        EXPECT_TRUE(seen.insert(words[k]).second) << words[k];
        EXPECT_EQ(wordOf(value), words[k]);
        EXPECT_EQ(fromWord<TypeParam>(words[k]), value);
    }
}

TYPED_TEST(WordsOf, AnUnknownWordIsNone) {
    EXPECT_EQ(fromWord<TypeParam>("no such word"), std::nullopt);
}

TEST(Words, TheLastValueHasItsWord) {
    // Guards against an enum that grew without its list, the last value standing for all before.
    EXPECT_EQ(wordOf(Treatment::Relocate), "relocate");
    EXPECT_EQ(wordOf(Measure::JudgedPercent), "judged percent");
    EXPECT_EQ(wordOf(LinkKind::StartToFinish), "start to finish");
    EXPECT_EQ(wordOf(ContractKind::Order), "order");
    EXPECT_EQ(wordOf(SpendKind::Refund), "refund");
    EXPECT_EQ(wordOf(PaidFrom::NewMoney), "new money");
    EXPECT_EQ(wordOf(Stage::After), "after");
    EXPECT_EQ(wordOf(Purpose::Paper), "paper");
    EXPECT_EQ(wordOf(Verdict::NotRight), "not right");
    EXPECT_EQ(wordOf(PaperKind::Clearance), "clearance");
    EXPECT_EQ(wordOf(Outcome::Corrections), "corrections");
    EXPECT_EQ(wordOf(InterestBasis::Thirty360), "30/360");
    EXPECT_EQ(wordOf(ChargedOn::Whole), "whole");
    EXPECT_EQ(wordOf(Role::Viewer), "viewer");
    EXPECT_EQ(wordOf(Language::Spanish), "es");
}

}  // namespace
}  // namespace ledgerboard::model
