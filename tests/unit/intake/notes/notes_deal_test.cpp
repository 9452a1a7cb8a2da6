// Protects: what the facts of the deal say of one another, where a figure stands without a word for
// it. How: short talk beside the facts a reader takes from it; the figures are invented.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::IsEmpty;
using testing::IsSupersetOf;
using testing::Not;
using testing::StartsWith;
using testing::UnorderedElementsAre;

TEST(NotesDeal, ABareSumAmongTheFactsIsThePrice) {
    EXPECT_THAT(
        factsOf("Three bedrooms, one bathroom. Two hundred and six thousand. We have a "
                "budget of forty thousand."),
        UnorderedElementsAre("bedrooms 3", "baths 1", "purchase 206000.00", "budget 40000.00"));
}

TEST(NotesDeal, ASumFarBelowThePriceIsTheWork) {
    EXPECT_THAT(factsOf("We paid $240,000. Thirty-five thousand, Ada."),
                UnorderedElementsAre("purchase 240000.00", "budget 35000.00"));
}

TEST(NotesDeal, ASumAboveThePriceIsTheSale) {
    EXPECT_THAT(factsOf("We paid $240,000. The fellow down there wrote $330,000 on an envelope."),
                UnorderedElementsAre("purchase 240000.00", "resale 330000.00"));
}

TEST(NotesDeal, TooMuchForTheWorkIsThePrice) {
    EXPECT_THAT(factsOf("We're into it for 410 thousand. It should sell for 590 thousand."),
                UnorderedElementsAre("purchase 410000.00", "resale 590000.00"));
}

TEST(NotesDeal, ASumInWorkIsNeverFilledIn) {
    EXPECT_THAT(factsOf("We paid $240,000. Replace the roof for $18,000."),
                UnorderedElementsAre("purchase 240000.00"));
}

TEST(NotesDeal, SaidOnceMoreToTheHundred) {
    EXPECT_THAT(factsOf("It was one ninety-two we paid. One ninety-two five."),
                UnorderedElementsAre("purchase 192500.00"));
}

TEST(NotesDeal, TheLastWordCounts) {
    EXPECT_THAT(factsOf("We paid $150,000. Sells at 229, eh, call it 225."),
                UnorderedElementsAre("purchase 150000.00", "resale 225000.00"));
    EXPECT_THAT(factsOf("We paid $150,000. Eight weeks, nine if it rains, so call it nine."),
                UnorderedElementsAre("purchase 150000.00", "duration_days 63"));  // 9 x 7
    EXPECT_THAT(factsOf("We're in at one fifty-two, no, I tell a lie, one forty-eight."),
                UnorderedElementsAre("purchase 148000.00"));
}

TEST(NotesDeal, FiguresOfOtherThings) {
    EXPECT_THAT(factsOf("We paid $150,000. Ask 289. It says 200 amp. You'd pay four hundred for "
                        "it in the city.\n"),
                UnorderedElementsAre("purchase 150000.00"));
    EXPECT_THAT(factsOf("Paid 150k, dues 285/mo.\n"), UnorderedElementsAre("purchase 150000.00"));
}

TEST(NotesDeal, TheSpeakersPriceAmongOtherTalk) {
    EXPECT_THAT(factsOf("I gave 212,000 and the neighbours think I'm soft."),
                UnorderedElementsAre("purchase 212000.00"));
    EXPECT_THAT(factsOf("My cousin paid 212,000 for hers."), Not(Contains(StartsWith("purchase"))));
}

TEST(NotesDeal, ALaterDayAmongTheFactsIsTheBeginning) {
    EXPECT_THAT(factsOf("12 November 2026\nPaid $212,000. Builders on 18 January 2027 and they "
                        "reckon four months."),
                UnorderedElementsAre("purchase 212000.00", "begin 2027-01-18",
                                     "duration_days 120"));  // 4 x 30
    EXPECT_THAT(factsOf("Paid $212,000. 8 mar 27 start."),
                UnorderedElementsAre("purchase 212000.00", "begin 2027-03-08"));
    EXPECT_THAT(factsOf("Paid $212,000. Start the fourth of January twenty-seven."),
                UnorderedElementsAre("purchase 212000.00", "begin 2027-01-04"));
    EXPECT_THAT(factsOf("Seen 12 November 2026. Paid $212,000."),
                UnorderedElementsAre("purchase 212000.00"));
}

TEST(NotesDeal, DaysOnTheMarket) {
    EXPECT_THAT(factsOf("Paid $212,000. Allow 30 days on the market."),
                UnorderedElementsAre("purchase 212000.00", "days_on_market 30"));
    EXPECT_THAT(factsOf("Paid $212,000. They're gone in 18 days."),
                UnorderedElementsAre("purchase 212000.00", "days_on_market 18"));
    EXPECT_THAT(factsOf("Paid $212,000. On the market I'd think a month and a half, say 45 days."),
                UnorderedElementsAre("purchase 212000.00", "days_on_market 45"));
}

TEST(NotesDeal, AnotherReadingOfTheArea) {
    // 96 x 10.764 = 1033.3; 102 x 10.764 = 1097.9
    EXPECT_THAT(factsOf("Three bedrooms, one bath. 96 m2 (valuer) / 102 (old listing)\n"),
                UnorderedElementsAre("bedrooms 3", "baths 1", "area_sqft 1033", "area_sqft 1098"));
    // 62 x 10.764 = 667.4; 66 x 10.764 = 710.4
    EXPECT_THAT(factsOf("Sixty-two square metres on the plan. Sixty-six, the advert says."),
                UnorderedElementsAre("area_sqft 667", "area_sqft 710"));
    // 55 x 10.764 = 592.0
    EXPECT_THAT(factsOf("Two bedrooms, one bath. Fifty-four square metres, sorry, fifty-five."),
                UnorderedElementsAre("bedrooms 2", "baths 1", "area_sqft 592"));
}

TEST(NotesDeal, YearsAndBaths) {
    EXPECT_THAT(factsOf("She was built nineteen and twenty-six."),
                UnorderedElementsAre("built 1926"));
    EXPECT_THAT(factsOf("Always told us it was built in '49. The tax roll says '51."),
                UnorderedElementsAre("built 1949", "built 1951"));
    EXPECT_THAT(factsOf("Four bedrooms and the one bathroom."),
                UnorderedElementsAre("bedrooms 4", "baths 1"));
    EXPECT_THAT(factsOf("Three bedrooms, one full bath and one half, all on one floor."),
                UnorderedElementsAre("bedrooms 3", "baths 1.5"));
}

TEST(NotesDeal, ThePriceIsNotTheSaleBesideIt) {
    EXPECT_THAT(factsOf("212k we paid, 290k after.\n"),
                UnorderedElementsAre("purchase 212000.00", "resale 290000.00"));
    EXPECT_THAT(factsOf("Paid $1.2m for it."), UnorderedElementsAre("purchase 1200000.00"));
    EXPECT_THAT(factsOf("Paid $212,000. I've got twenty-six thousand set aside. Old Harl wanted "
                        "$260,000 for his."),
                UnorderedElementsAre("purchase 212000.00", "budget 26000.00"));
}

TEST(NotesDeal, ShortWaysToSayASum) {
    EXPECT_THAT(factsOf("We closed at two hundred eighty-eight five."),
                Contains("purchase 288500.00"));
    EXPECT_THAT(factsOf("It will sell for one million six."), Contains("resale 1600000.00"));
}

TEST(NotesDeal, MillionsSaidShort) {
    EXPECT_THAT(factsOf("We paid one million one twenty."), Contains("purchase 1120000.00"));
    EXPECT_THAT(factsOf("Pd 1.31M, sell 1.4m.\n"),
                UnorderedElementsAre("purchase 1310000.00", "resale 1400000.00"));
    EXPECT_THAT(
        factsOf("We paid $820,000. It should get 1.1 to 1.15 million."),
        UnorderedElementsAre("purchase 820000.00", "resale 1100000.00", "resale 1150000.00"));
    EXPECT_THAT(factsOf("The budget is sixty-two thousand five."), Contains("budget 62500.00"));
}

TEST(NotesDeal, ALetterForTheCurrency) {
    EXPECT_THAT(factsOf("We got it for R1,150,000 and R280 000 is for the work."),
                UnorderedElementsAre("purchase 1150000.00", "budget 280000.00"));
    EXPECT_THAT(factsOf("Attic: R38 batts, we said."), IsEmpty());
}

TEST(NotesDeal, AddressesAndTimesAreNoSums) {
    EXPECT_THAT(factsOf("We are at 412 Larch Road. We paid $150,000."),
                UnorderedElementsAre("purchase 150000.00"));
}

// The surer of two prices is the house's, and a price without a phrase is none of the budget.
TEST(NotesDeal, ThePriceToldMostSurely) {
    EXPECT_THAT(factsOf("It was 240,000. We have got 60,000 for the work."),
                UnorderedElementsAre("purchase 240000.00", "budget 60000.00"));
    EXPECT_THAT(factsOf("The price came down, 259 > 251.5.\nBudget 61k.\n"),
                UnorderedElementsAre("purchase 251500.00", "budget 61000.00"));
}

// A phrase that stands right behind its figure is of that figure, whatever stands before it.
TEST(NotesDeal, APhraseBehindItsFigure) {
    EXPECT_THAT(factsOf("You told me $268,000 was the price, $54,000 is what there is to spend."),
                UnorderedElementsAre("purchase 268000.00", "budget 54000.00"));
    EXPECT_THAT(factsOf("149 purchase 58 budget 259 sale, 1958, 3/1, 1,080.\n"),
                IsSupersetOf({"purchase 149000.00", "budget 58000.00", "resale 259000.00"}));
    EXPECT_THAT(factsOf("I got it off the estate for one fifty-five, nobody could get in."),
                UnorderedElementsAre("purchase 155000.00"));
}

TEST(NotesDeal, PutInIsNoLength) {
    EXPECT_THAT(factsOf("We paid $265,000. I'd say 80 in work."),
                UnorderedElementsAre("purchase 265000.00", "budget 80000.00"));
    EXPECT_THAT(factsOf("Got it 92k. 38k in, 165k out.\n"),
                UnorderedElementsAre("purchase 92000.00", "budget 38000.00", "resale 165000.00"));
    EXPECT_THAT(factsOf("We paid $265,000. I'd cap the work at 40 thousand and six weeks."),
                UnorderedElementsAre("purchase 265000.00", "budget 40000.00", "duration_days 42"));
}

TEST(NotesDeal, AnAnswerTakesThePlaceOfWhatWasAsked) {
    EXPECT_THAT(factsOf("We paid $89,000. And the budget's sixty? The budget is sixty-four."),
                UnorderedElementsAre("purchase 89000.00", "budget 64000.00"));
}

TEST(NotesDeal, APriceWrittenOutFarFromTheFacts) {
    EXPECT_THAT(factsOf("The papers came back on Wednesday, $215,000 and the bottom field with it, "
                        "and your uncle's already talking about geese."),
                UnorderedElementsAre("purchase 215000.00"));
    EXPECT_THAT(factsOf("Gutter share $400, paid."), IsEmpty());
}

TEST(NotesDeal, AnAgentsOpinionIsTheSale) {
    EXPECT_THAT(factsOf("We paid $282,000. My agent thinks 399."),
                UnorderedElementsAre("purchase 282000.00", "resale 399000.00"));
    EXPECT_THAT(factsOf("We paid $282,000. She thinks she'll get four hundred for hers."),
                UnorderedElementsAre("purchase 282000.00"));
}

TEST(NotesDeal, SoManyOfSomethingIsNoSum) {
    EXPECT_THAT(factsOf("The cylinder leaks. Please put in a new one, 180 litres."), IsEmpty());
    EXPECT_THAT(factsOf("I have got forty minutes before my shift."), IsEmpty());
}

TEST(NotesDeal, TheDateAfterTheWordOfBeginning) {
    EXPECT_THAT(factsOf("Closing was 11/17/26, crew in from 12/1/26."),
                Contains("begin 2026-12-01"));
}

// A figure of two digits where notes open may be a year.
const std::string kWalk = "Kitchen. New sink. New faucet. Hall. Paint the walls. New light.\n";

TEST(NotesDeal, SumsWithoutAWordAreWeighedTogether) {
    EXPECT_THAT(
        factsOf(kWalk +
                "One sixty-two five. Thirty-six. Two forty-one. Four weeks if it stays dry."),
        UnorderedElementsAre("purchase 162500.00", "budget 36000.00", "resale 241000.00",
                             "duration_days 28"));
    EXPECT_THAT(factsOf(kWalk + "361 and we got 168. They sell done for 655."),
                UnorderedElementsAre("purchase 361000.00", "budget 168000.00", "resale 655000.00"));
    EXPECT_THAT(factsOf("Six hundred and eighty, it was. Figure on a hundred and twenty to do it."),
                UnorderedElementsAre("purchase 680000.00", "budget 120000.00"));
}

TEST(NotesDeal, PriceAndWorkTogetherAreNoFact) {
    EXPECT_THAT(
        factsOf("We paid $352,000 and the budget is $81,000. It comes to 433. Sells for 512."),
        UnorderedElementsAre("purchase 352000.00", "budget 81000.00", "resale 512000.00"));
}

TEST(NotesDeal, WhoSpeaksLastKnowsWhatWasPaid) {
    EXPECT_THAT(factsOf("A: And we paid four-eighteen.\nB: Four-eleven."),
                UnorderedElementsAre("purchase 411000.00"));
    EXPECT_THAT(factsOf("A: We paid one eighty-five.\nB: One eighty-seven.\nA: One eighty-five."),
                UnorderedElementsAre("purchase 185000.00"));
    EXPECT_THAT(factsOf(kWalk + "A: We paid $240,000. We've ninety to do it.\nB: Eighty-five."),
                UnorderedElementsAre("purchase 240000.00", "budget 90000.00", "budget 85000.00"));
}

}  // namespace
}  // namespace ledgerboard::intake
