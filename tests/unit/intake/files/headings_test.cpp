// Protects: a column is known by what people call it, is never guessed where two readings are
// possible, and is never left out unless the person says so.
#include "core/intake/files/headings.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <map>
#include <set>

namespace ledgerboard::intake {
namespace {

using testing::HasSubstr;

// "Amount=Total Date=Day": each catalog heading with the file's, or "refused: " and the messages.
std::string matched(std::string_view kind, const std::string& line, std::string_view match = "") {
    const auto table = readCsv(line + "\n", "rows.csv").value();
    Problems problems("rows.csv");
    const auto columns =
        matchHeadings(*bringKindNamed(kind), table, parseMatches(match).value(), problems);
    if (!problems.none()) {
        return "refused: " + problems.asError().message;
    }
    std::string out;
    for (const auto& column : columns) {
        out += (out.empty() ? "" : " ") +
               std::string(column.field != nullptr ? column.field->heading : "(space)") + "=" +
               column.heading;
    }
    return out;
}

TEST(HeadingsTest, ForgivesCaseSpacesPunctuationAndUnits) {
    EXPECT_EQ(matched("draws", "DRAW,held back,Fee:"), "Draw=DRAW Held back=held back Fee=Fee:");
    EXPECT_EQ(matched("draws", "draw_,Held-Back,amount ($)"),
              "Draw=draw_ Held back=Held-Back Amount=amount ($)");
    EXPECT_EQ(matched("draws", "number,asked_on"), "Draw=number Asked=asked_on");
}

TEST(HeadingsTest, ForgivesSignsOfPercentAndMoney) {
    EXPECT_EQ(matched("prices", "Item,Treatment,Per,Material $,Waste %"),
              "Object=Item Treatment=Treatment Unit=Per Material=Material $ Waste=Waste %");
}

TEST(HeadingsTest, KnowsWhatPeopleSay) {
    EXPECT_EQ(matched("scope", "Room,Action,Description,Qty,UOM,Total,Start,Finish"),
              "Space=Room Treatment=Action Object=Description Quantity=Qty Unit=UOM Lump sum=Total "
              "Planned start=Start Planned finish=Finish");
    EXPECT_EQ(matched("spend", "Type,Date,Total,Vendor,Memo,Reference"),
              "Kind=Type Date=Date Amount=Total Payee=Vendor Note=Memo Bank id=Reference");
    EXPECT_EQ(matched("spend", "Kind,Posted,Amount,Paid to"),
              "Kind=Kind Date=Posted Amount=Amount Payee=Paid to");
    EXPECT_EQ(matched("marks", "Room,Item,% done,When"),
              "(space)=Room Item=Item Percent=% done Date=When");
    EXPECT_EQ(matched("prices", "Item,Treatment,Per,Materials,Labor"),
              "Object=Item Treatment=Treatment Unit=Per Material=Materials Labour=Labor");
}

TEST(HeadingsTest, MatchesAsToldAndLeavesOutOnlyAsTold) {
    EXPECT_EQ(matched("draws", "Nr of it,Colour", "nr of it=Draw,Colour=-"), "Draw=Nr of it");
    EXPECT_EQ(matched("draws", "Draw,Sum,Amount", "Sum=-"), "Draw=Draw Amount=Amount");
    EXPECT_EQ(matched("draws", "Draw,,", ""), "Draw=Draw");
}

TEST(HeadingsTest, RefusesUnknownDoubledAndMissingOnes) {
    EXPECT_THAT(matched("spend", "Kind,Date,Amont"),
                HasSubstr("rows.csv:1: column \"Amont\": is no heading that spend has; did you "
                          "mean \"Amount\"?"));
    EXPECT_THAT(matched("draws", "Draw,Colour of it"), HasSubstr("--match \"Colour of it=-\""));
    EXPECT_THAT(matched("draws", "Draw,Amount,Total"),
                HasSubstr("column \"Total\": means the same as column \"Amount\""));
    EXPECT_THAT(matched("scope", "Space,Object"),
                HasSubstr("column \"Treatment\": is missing: scope needs it"));
    EXPECT_THAT(matched("scope", "1,2,3"), HasSubstr("none of its headings is known"));
    EXPECT_THAT(matched("scope", "Space,Treatment,Object,Percent"),
                HasSubstr("progress is never a field of an item"));
    EXPECT_THAT(matched("spend", "Kind,Date,Amount,Debit"), HasSubstr("without signs"));
}

TEST(HeadingsTest, RefusesMatchesThatNameNothing) {
    EXPECT_THAT(matched("draws", "Draw,Sum", "Summ=Amount"), HasSubstr("did you mean \"Sum\"?"));
    EXPECT_THAT(matched("draws", "Draw,Sum", "Sum=Amuont"), HasSubstr("did you mean \"Amount\"?"));
    for (const auto* bad : {"Sum", "=Amount", "Sum=", "a=b,c"}) {
        EXPECT_THAT(parseMatches(bad).error().message, HasSubstr("theirs=ours")) << bad;
    }
    EXPECT_TRUE(parseMatches(" ").value().empty());
}

// A word that could stand for two columns of one kind would make the second one unreachable.
TEST(HeadingsTest, NoSynonymMeansTwoColumnsOfAKind) {
    std::map<std::pair<model::Kind, std::string>, model::FieldCode> seen;
    for (const auto& kind : bringKinds()) {
        for (const auto* field : columnsOf(kind)) {
            seen.emplace(std::pair(kind.kind, headingKey(field->heading)), field->code);
        }
    }
    std::size_t words = 0;
    for (const auto& one : synonyms()) {
        ASSERT_NE(model::fieldOf(one.field), nullptr);
        std::string_view rest = one.words;
        while (!rest.empty()) {
            const auto end = rest.find(';');
            const std::string key = headingKey(rest.substr(0, end));
            const auto [place, isNew] =
                seen.emplace(std::pair(model::kindOf(one.field), key), one.field);
            EXPECT_TRUE(isNew || place->second == one.field)
                << key << " of " << model::fieldOf(one.field)->heading << " is also "
                << model::fieldOf(place->second)->heading;
            rest = end == std::string_view::npos ? std::string_view{} : rest.substr(end + 1);
            ++words;
        }
    }
    EXPECT_GT(words, 100U);
}

TEST(HeadingsTest, EveryColumnIsKnownByItsOwnHeadingAndName) {
    for (const auto& kind : bringKinds()) {
        for (const auto* field : columnsOf(kind)) {
            const auto table = readCsv("\"" + std::string(field->heading) + "\"\n", "x").value();
            Problems problems("x");
            const auto columns = matchHeadings(kind, table, {}, problems);
            ASSERT_EQ(columns.size(), 1U) << field->heading;
            EXPECT_EQ(columns[0].field, field) << kind.word << " " << field->heading;
        }
    }
}

}  // namespace
}  // namespace ledgerboard::intake
