// Protects: figures as people say and write them. How: phrases beside the figure they mean, by
// hand.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/intake/notes/amounts.h"
#include "core/model/quantity.h"

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

// "money 185000", "sq ft 42", "week 6", "1962" for each figure of the text.
std::vector<std::string> figures(std::string_view text) {
    Speller speller(tables().lexicon);
    std::vector<Token> tokens;
    cutTokens(text, 1, speller, tables().lexicon, tokens);
    std::vector<std::string> shown;
    for (const Amount& amount : amountsIn(tokens)) {
        const std::string value = model::Quantity::fromThousandths(amount.value).toString();
        const std::string unit = amount.unit == kNone ? "" : tables().units[amount.unit].name + " ";
        shown.push_back((amount.kind == AmountKind::Money ? "money " : unit) + value);
    }
    return shown;
}

using testing::ElementsAre;
using testing::IsEmpty;

TEST(NotesAmounts, MoneyInDigits) {
    EXPECT_THAT(figures("$167,000"), ElementsAre("money 167000"));
    EXPECT_THAT(figures("$1.2 million"), ElementsAre("money 1200000"));
    EXPECT_THAT(figures("185k and $22.5k"), ElementsAre("money 185000", "money 22500"));
    EXPECT_THAT(figures("\xC2\xA3"
                        "3,200"),
                ElementsAre("money 3200"));
}

TEST(NotesAmounts, MoneyInWords) {
    EXPECT_THAT(figures("ninety-five grand"), ElementsAre("money 95000"));
    EXPECT_THAT(figures("eight hundred quid"), ElementsAre("money 800"));
    EXPECT_THAT(figures("thirty-five thousand dollars"), ElementsAre("money 35000"));
    EXPECT_THAT(figures("a couple of hundred bucks"), ElementsAre("money 200"));
    EXPECT_THAT(figures("half a million dollars"), ElementsAre("money 500000"));
}

TEST(NotesAmounts, FiguresInWords) {
    EXPECT_THAT(figures("four and a half thousand"), ElementsAre("4500"));
    EXPECT_THAT(figures("a hundred eighteen thousand five hundred"), ElementsAre("118500"));
    EXPECT_THAT(figures("two hundred and forty thousand"), ElementsAre("240000"));
    EXPECT_THAT(figures("thirty-eight hundred"), ElementsAre("3800"));
    EXPECT_THAT(figures("one point two million"), ElementsAre("1200000"));
}

TEST(NotesAmounts, FiguresSaidInPairs) {
    EXPECT_THAT(figures("nineteen sixty-two"), ElementsAre("1962"));
    EXPECT_THAT(figures("one eighty-five"), ElementsAre("185"));
    EXPECT_THAT(figures("two forty-five"), ElementsAre("245"));
    EXPECT_THAT(figures("eleven fifty"), ElementsAre("1150"));
    EXPECT_THAT(figures("eighty-eight five"), ElementsAre("88.5"));
}

TEST(NotesAmounts, Measures) {
    EXPECT_THAT(figures("42 sf"), ElementsAre("sq ft 42"));
    EXPECT_THAT(figures("280 sq. ft."), ElementsAre("sq ft 280"));
    EXPECT_THAT(figures("eighty linear feet"), ElementsAre("lin ft 80"));
    EXPECT_THAT(figures("45 square metres"), ElementsAre("sq m 45"));
    EXPECT_THAT(figures("six weeks"), ElementsAre("week 6"));
    // Hand: 10 x 12 = 120, 12 x 16 = 192.
    EXPECT_THAT(figures("ten by twelve"), ElementsAre("sq ft 120"));
    EXPECT_THAT(figures("a 12x16 deck"), ElementsAre("sq ft 192"));
}

TEST(NotesAmounts, WordsThatAreNoFigures) {
    EXPECT_THAT(figures("that one goes, the new ones stay"), IsEmpty());
    EXPECT_THAT(figures("half of the wall"), IsEmpty());
    EXPECT_THAT(figures("a thousand and one dollars"), ElementsAre("money 1001"));
}

TEST(NotesAmounts, HugeFiguresStayBounded) {
    for (const char* text :
         {"999999999999999999999999 sf", "million million million million", "9999999999 million",
          "hundred hundred hundred hundred hundred hundred"}) {
        for (const std::string& figure : figures(text)) {
            EXPECT_LT(figure.size(), 32U) << text;
        }
    }
}

// A size is no count: a new 200 amp panel is one.
TEST(NotesAmounts, AmpsAreNoCount) {
    for (const char* text : {"Basement: the fuses are old, new 200 amp.", "New 200 amp panel."}) {
        const Draft draft = draftOf(text);
        ASSERT_EQ(draft.items.size(), 1U) << text;
        EXPECT_EQ(draft.items[0].object, "electrical panel") << text;
        EXPECT_FALSE(draft.items[0].quantity) << text;
    }
}

}  // namespace
}  // namespace ledgerboard::intake
