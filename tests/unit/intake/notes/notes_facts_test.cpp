// Protects: the facts of the deal, both where the notes disagree. How: sentences beside the facts a
// reader takes from them.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::UnorderedElementsAre;

TEST(NotesFacts, DealInOneBreath) {
    EXPECT_THAT(
        factsOf("Built 1962. About 1,540 square feet, three bedrooms and two baths. We paid "
                "$167,000 for it and the budget is fifty-two thousand."),
        UnorderedElementsAre("built 1962", "area_sqft 1540", "bedrooms 3", "baths 2",
                             "purchase 167000.00", "budget 52000.00"));
}

TEST(NotesFacts, Shorthand) {
    EXPECT_THAT(factsOf("cape 1948  1180 sf  3/1\nPP 96k   rehab 41k   ARV 178-182\n"),
                UnorderedElementsAre("built 1948", "area_sqft 1180", "bedrooms 3", "baths 1",
                                     "purchase 96000.00", "budget 41000.00", "resale 178000.00",
                                     "resale 182000.00"));
}

TEST(NotesFacts, AYearByItselfAmongTheFactsAtTheEnd) {
    const std::string walk =
        "Kitchen. New sink. New faucet. Cabinets stay. Hall. Paint the walls. New light.\n"
        "Bath. New tub. New toilet. The vanity stays. Porch. Fix the steps. Paint the rail.\n";
    EXPECT_THAT(factsOf(walk + "We paid $210,000 for it. 1899.\n"),
                UnorderedElementsAre("purchase 210000.00", "built 1899"));
    // Far from any fact it may be of anything.
    EXPECT_THAT(factsOf(walk + "Attic. How old? 1988.\nYard. Mow the lawn.\n"), IsEmpty());
}

TEST(NotesFacts, SumsByThemselvesWhereTheNotesClose) {
    const std::string walk =
        "Kitchen. New sink. New faucet. Cabinets stay. Hall. Paint the walls. New light.\n"
        "Bath. New tub. New toilet. The vanity stays. Porch. Fix the steps. Paint the rail.\n";
    EXPECT_THAT(factsOf(walk + "172/28/229."),
                UnorderedElementsAre("purchase 172000.00", "budget 28000.00", "resale 229000.00"));
    EXPECT_THAT(factsOf(walk + "Two fifteen, and twenty six for this. Three beds.\n"),
                UnorderedElementsAre("purchase 215000.00", "budget 26000.00", "bedrooms 3"));
}

TEST(NotesFacts, WhatOtherHousesBroughtIsNoFact) {
    EXPECT_THAT(factsOf("We paid 83,000, and the one two doors down got 199,000.\n"),
                UnorderedElementsAre("purchase 83000.00"));
    EXPECT_THAT(factsOf("The agent said 340,000 as is and 415,000 fixed.\n"),
                UnorderedElementsAre("resale 415000.00"));
}

TEST(NotesFacts, RoomsInFiguresAndAYearOfTwo) {
    EXPECT_THAT(factsOf("brick ranch 75.\n3/2/2.\n1,620.\n"),
                UnorderedElementsAre("built 1975", "bedrooms 3", "baths 2", "area_sqft 1620"));
    EXPECT_THAT(factsOf("3b/1ba, 80 m2.\n"),
                UnorderedElementsAre("bedrooms 3", "baths 1", "area_sqft 861"));
}

TEST(NotesFacts, TheDayOfTheWorkIsNotThatOfTheSale) {
    EXPECT_THAT(factsOf("We complete on the eleventh of December 2026, and Tony can start on the "
                        "fourteenth.\n"),
                UnorderedElementsAre("begin 2026-12-14"));
    EXPECT_THAT(factsOf("Start 1-25-27, 10 weeks.\n"),
                UnorderedElementsAre("begin 2027-01-25", "duration_days 70"));
}

TEST(NotesFacts, SquareMetresBecomeFeet) {
    // 118 x 10.764 = 1270.15
    EXPECT_THAT(factsOf("Built 1985, 118 m2 inside."),
                UnorderedElementsAre("built 1985", "area_sqft 1270"));
}

TEST(NotesFacts, DatesAndDurations) {
    EXPECT_THAT(factsOf("Today is 10 February 2026. We begin on March the second and I'm giving it "
                        "eleven weeks."),
                UnorderedElementsAre("begin 2026-03-02", "duration_days 77"));  // 11 x 7
}

TEST(NotesFacts, PricesOfWorkAreNoFacts) {
    EXPECT_THAT(factsOf("Kitchen. New cabinets for $9,000. The beam would be seven thousand."),
                IsEmpty());
}

TEST(NotesFacts, PricesSaidShort) {
    EXPECT_THAT(factsOf("Closed at two eighteen five."),
                UnorderedElementsAre("purchase 218500.00"));
    EXPECT_THAT(factsOf("I paid two oh five for it. Should bring four and a quarter."),
                UnorderedElementsAre("purchase 205000.00", "resale 425000.00"));
    EXPECT_THAT(factsOf("The budget is sixty, no, sixty-five thousand."),
                UnorderedElementsAre("budget 65000.00"));
}

TEST(NotesFacts, StrokesPartTheFactsOfALine) {
    EXPECT_THAT(factsOf("pd 265k // out @ 362k // max spend 52k // start 7 sep 26, 70 d // DOM 30"),
                UnorderedElementsAre("purchase 265000.00", "resale 362000.00", "budget 52000.00",
                                     "begin 2026-09-07", "duration_days 70", "days_on_market 30"));
    EXPECT_THAT(factsOf("go 4/15/26, 55 days. ~25 DOM"),
                UnorderedElementsAre("begin 2026-04-15", "duration_days 55", "days_on_market 25"));
}

TEST(NotesFacts, PartsOfABath) {
    EXPECT_THAT(factsOf("Three bedrooms, one and three quarter baths."),
                UnorderedElementsAre("bedrooms 3", "baths 1.75"));
    EXPECT_THAT(factsOf("Two full baths and a powder room."), UnorderedElementsAre("baths 2.5"));
}

TEST(NotesFacts, EachFigureHasItsOwnPhrase) {
    EXPECT_THAT(factsOf("buy 98k / reno 37k / sell 169k / 9 wks / 28 DOM\n"),
                UnorderedElementsAre("purchase 98000.00", "budget 37000.00", "resale 169000.00",
                                     "duration_days 63", "days_on_market 28"));  // 9 x 7
    EXPECT_THAT(factsOf("Two hundred thousand to buy, sixty to fix, three twenty-five to sell."),
                UnorderedElementsAre("purchase 200000.00", "budget 60000.00", "resale 325000.00"));
}

TEST(NotesFacts, LabelsOfALine) {
    EXPECT_THAT(factsOf("Purchase price: $142,000\nYear built: 1961\nBedrooms: 3\nBaths: 1\n"),
                UnorderedElementsAre("purchase 142000.00", "built 1961", "bedrooms 3", "baths 1"));
    EXPECT_THAT(factsOf("BED 1: new carpet\n"), IsEmpty());
}

TEST(NotesFacts, QuestionsAndTheirAnswers) {
    EXPECT_THAT(factsOf("LEE: Built?\nJO: Seventy-nine.\nLEE: Square feet?\nJO: Sixteen hundred.\n"
                        "LEE: Paying?\nJO: Two thirty-one.\n"),
                UnorderedElementsAre("built 1979", "area_sqft 1600", "purchase 231000.00"));
}

TEST(NotesFacts, ASumIsCorrectedInTheNextSentence) {
    EXPECT_THAT(factsOf("The budget is fifty thousand dollars. No, make that forty-six thousand."),
                UnorderedElementsAre("budget 46000.00"));
    EXPECT_THAT(factsOf("We gave one eighty-seven for it, one eighty-seven five."),
                UnorderedElementsAre("purchase 187500.00"));
}

TEST(NotesFacts, WhatOthersAskedIsNoFact) {
    EXPECT_THAT(factsOf("Price: $199,000 (they asked $215,000)."),
                UnorderedElementsAre("purchase 199000.00"));
    EXPECT_THAT(factsOf("Rehab: $58,000, contingency of $5,000 on top."),
                UnorderedElementsAre("budget 58000.00"));
}

TEST(NotesFacts, CountsOfRooms) {
    EXPECT_THAT(factsOf("Built in 1983. It has nine rooms, four of them bedrooms, three baths."),
                UnorderedElementsAre("built 1983", "rooms 9", "bedrooms 4", "baths 3"));
    EXPECT_THAT(factsOf("Built in 1922, two bedrooms upstairs and one down and a single bath."),
                UnorderedElementsAre("built 1922", "bedrooms 3", "baths 1"));
    // Two homes, each with two bedrooms and a bath.
    EXPECT_THAT(factsOf("Built in 1947, each side is two bedrooms and one bath."),
                UnorderedElementsAre("built 1947", "bedrooms 4", "baths 2"));
}

TEST(NotesFacts, RoomsWithoutTheirWords) {
    EXPECT_THAT(factsOf("Built 1975, three two, two car carport."),
                UnorderedElementsAre("built 1975", "bedrooms 3", "baths 2"));
    EXPECT_THAT(factsOf("Two bedrooms, bathroom downstairs at the back."),
                UnorderedElementsAre("bedrooms 2", "baths 1"));
    EXPECT_THAT(factsOf("Four bedrooms, two baths upstairs and one below."),
                UnorderedElementsAre("bedrooms 4", "baths 3"));
    EXPECT_THAT(factsOf("Three bedrooms, bath and half."),
                UnorderedElementsAre("bedrooms 3", "baths 1.5"));
}

TEST(NotesFacts, TheYearOfTheHouseWhereverItIsTold) {
    const std::string walk =
        "Kitchen: new sink. New tap. New hood. New range. New floor. Bath: "
        "new tub. New toilet. New vanity. New mirror. New fan. Hall: paint. "
        "New light. New rail. Furnace, gas, 2001. New filter.\n";
    EXPECT_THAT(factsOf(walk + "The building's '72, so mind the ceiling."),
                ElementsAre("built 1972"));
    EXPECT_THAT(factsOf(walk + "It's a 1949 house."), ElementsAre("built 1949"));
}

TEST(NotesFacts, AFloorIsNotTheHouse) {
    EXPECT_THAT(factsOf("Living room: carpet goes, plank in. Paint it. Hall the same. Paint. Den "
                        "the same. Paint. New light.\n780 square feet, give or take.\nPaint."),
                IsEmpty());
}

TEST(NotesFacts, AFigureWithACommaIsNoYear) {
    EXPECT_THAT(factsOf("1,950 sf on the tax roll but I paced it at 1,880.\n"),
                UnorderedElementsAre("area_sqft 1950", "area_sqft 1880"));
}

TEST(NotesFacts, ATermOfALoanIsNoDuration) {
    EXPECT_THAT(factsOf("We paid 279,000. The hard money guy gave us six months but I want to be "
                        "done in fifteen weeks."),
                UnorderedElementsAre("purchase 279000.00", "duration_days 105"));  // 15 x 7
}

TEST(NotesFacts, YearsOfTheFirstDecade) {
    EXPECT_THAT(factsOf("This is the terrace on the hill, nineteen oh seven."),
                UnorderedElementsAre("built 1907"));
    EXPECT_THAT(factsOf("Built in nineteen aught six."), UnorderedElementsAre("built 1906"));
}

TEST(NotesFacts, BedroomsToldAsWorkAreOfTheHouse) {
    EXPECT_THAT(factsOf("Kitchen: new sink. Bath: new tub. All three bedrooms get new carpet."),
                ElementsAre("bedrooms 3"));
    EXPECT_THAT(factsOf("Kitchen: new sink. The two bedrooms in back get new carpet."), IsEmpty());
    EXPECT_THAT(factsOf("Built in '71. Three bedrooms up, one down, so four."),
                UnorderedElementsAre("built 1971", "bedrooms 4"));
    EXPECT_THAT(factsOf("3+1 bd, 2 ba"), UnorderedElementsAre("bedrooms 4", "baths 2"));
}

TEST(NotesFacts, WhereTheNotesCloseTheHouseIsDescribedAsWhereTheyOpen) {
    const std::string walk =
        "Kitchen. New sink. New faucet. Cabinets stay. Hall. Paint the walls. New light.\n"
        "Bath. New tub. New toilet. The vanity stays. Porch. Fix the steps. Paint the rail.\n";
    EXPECT_THAT(factsOf(walk + "I have $41,000 set aside. The house is 1,180 square feet, built in "
                               "1959, in case the painter asks."),
                UnorderedElementsAre("budget 41000.00", "area_sqft 1180", "built 1959"));
    EXPECT_THAT(factsOf("2nd flr condo, 93, 2/2. 189k in."),
                UnorderedElementsAre("built 1993", "bedrooms 2", "baths 2", "purchase 189000.00"));
}

TEST(NotesFacts, MillionsAndHundredsSaidShort) {
    EXPECT_THAT(
        factsOf("1.1 to buy, 1.65 out, 220 for the job."),
        UnorderedElementsAre("purchase 1100000.00", "resale 1650000.00", "budget 220000.00"));
    EXPECT_THAT(factsOf("We paid 189. Sells in the low 300s."), ElementsAre("purchase 189000.00"));
    EXPECT_THAT(factsOf("Cost me 148 as is. Should go for 279 when it's done."),
                UnorderedElementsAre("purchase 148000.00", "resale 279000.00"));
}

TEST(NotesFacts, WhatPartsComeToIsTheBudget) {
    EXPECT_THAT(factsOf("You put $22,000, I put $22,000, that's all there is, so $44,000."),
                ElementsAre("budget 44000.00"));
}

TEST(NotesFacts, ADayWithoutItsYearIsOfTheYearOfTheNotes) {
    EXPECT_THAT(factsOf("Walked 9/19/26.\nKitchen: new sink.\nStart Oct 5."),
                ElementsAre("begin 2026-10-05"));
    EXPECT_THAT(factsOf("Walked 11/20/26.\nKitchen: new sink.\nStart Jan 4."),
                ElementsAre("begin 2027-01-04"));
}

TEST(NotesFacts, CountsBehindTheirLabels) {
    EXPECT_THAT(factsOf("BR 4 BA 2.5"), UnorderedElementsAre("bedrooms 4", "baths 2.5"));
    EXPECT_THAT(factsOf("3 beds, 2 full 1 half"), UnorderedElementsAre("bedrooms 3", "baths 2.5"));
    EXPECT_THAT(factsOf("2b1b, 780 sf"),
                UnorderedElementsAre("bedrooms 2", "baths 1", "area_sqft 780"));
}

}  // namespace
}  // namespace ledgerboard::intake
