// Protects: bringing the same file twice adds nothing, whatever good file it is, however it is
// written, and whatever the owner did to the records in between. Files are generated; the seed is
// printed where a run fails.
#include <gmock/gmock.h>
#include <random>

#include "tests/unit/intake/files/bring_house.h"

namespace ledgerboard::intake {
namespace {

using model::Kind;
using model::Money;

// Good files at random: other separators, line ends, quoting, headings, order of columns.
class GoodFile {
  public:
    explicit GoodFile(std::uint32_t seed) : random_(seed), seed_(static_cast<int>(seed)) {}

    std::string make(std::string_view kind) {
        if (kind == "crews") {
            column({"Crew", "NAME", "crew_name"}, [&](int k) { return "Crew " + number(k); });
            column({"Trade"}, [&](int) { return maybe(pick({"tile", "paint, inside", "roof"})); });
            column({"Daily rate", "Rate"}, [&](int) { return maybe(money()); });
        } else if (kind == "prices") {
            column({"Object", "Item"}, [&](int k) { return "object " + number(k / 2); });
            column({"Treatment"}, [&](int k) { return k % 2 == 0 ? "Replace" : "repair"; });
            column({"Unit", "UOM"}, [&](int) { return pick({"each", "SF", "lin. ft."}); });
            column({"Material", "Materials"}, [&](int) { return maybe(money()); });
            column({"As of"}, [&](int) { return maybe(date()); });
        } else if (kind == "scope") {
            column({"Space", "ROOM"}, [&](int) { return pick({"Kitchen", "Hall bath", "Den"}); });
            column({"Treatment", "Action"}, [&](int) {
                return pick({"replace", "Clean", "demo"});
            });
            column({"Object", "Task"}, [&](int k) { return "thing " + number(k); });
            column({"Quantity", "qty."}, [&](int) { return maybe(number(upTo(500))); });
            column({"Lump sum", "Total"}, [&](int) { return maybe(money()); });
            column({"Note"}, [&](int) { return maybe("two\nlines, \"quoted\""); });
        } else if (kind == "contracts") {
            column({"Contract"}, [&](int k) { return "Work " + number(k / 2); });
            column({"Crew"}, [&](int k) { return k % 2 == 0 ? "Tile crew" : "Plumbing crew"; });
            column({"Sum", "Amount"}, [&](int) { return maybe(money()); });
            column({"Signed"}, [&](int) { return maybe(date()); });
        } else if (kind == "changes") {
            column({"Change"}, [&](int k) { return "change " + number(k); });
            column({"Amount"}, [&](int) { return (upTo(2) == 0 ? "-" : "") + number(upTo(900)); });
            column({"Items"}, [&](int) { return maybe("Bath/tub; Bath/tile"); });
        } else if (kind == "spend") {
            column({"Kind", "Type"}, [&](int) { return pick({"receipt", "Fee", "bill"}); });
            column({"Date", "posted"}, [&](int) { return date(); });
            column({"Amount", "total ($)"}, [&](int) { return pick({"$12.50", "(0)", "40"}); });
            column({"Payee", "Vendor"}, [&](int) { return maybe(pick({"Shop", "Tile crew"})); });
            column({"Item"}, [&](int) { return maybe(pick({"Bath/tub", "Kitchen/cabinets"})); });
            column({"Bank id"},
                   [&](int k) { return maybe("bk-" + number(seed_) + "-" + number(k)); });
        } else if (kind == "marks") {
            column({"Item"}, [&](int) { return pick({"Kitchen/cabinets", "Kitchen/old tile"}); });
            column({"Percent", "% done"}, [&](int) { return pick({"0", "100", "100 %"}); });
            column({"Date"}, [&](int) { return date(); });
            column({"Note", "Memo"}, [&](int) { return maybe("seen"); });
        } else if (kind == "draws") {
            column({"Draw", "#"}, [&](int k) { return number(k + 1); });
            column({"Amount"}, [&](int) { return maybe(money()); });
            column({"Asked"}, [&](int) { return maybe(date()); });
        } else if (kind == "lender-lines") {
            column({"Lender line"}, [&](int k) { return "Line " + number(k); });
            column({"Amount"}, [&](int) { return money(); });
            column({"Share lent"}, [&](int) { return maybe(number(upTo(100))); });
        } else if (kind == "draw-lines") {
            column({"Draw"}, [&](int) { return std::string("1"); });
            column({"Lender line"}, [&](int k) { return "Part " + number(k); });
            column({"Allowed"}, [&](int) { return maybe(number(upTo(100))); });
        } else {
            column({"Space", "Room"}, [&](int) { return maybe(pick({"Kitchen", "Bath"})); });
            column({"What", "Issue"}, [&](int k) { return "wrong thing " + number(k); });
            column({"Found"}, [&](int) { return maybe("2026-03-10"); });
            column({"Due"}, [&](int) { return maybe("15 May 2026"); });
        }
        return written();
    }

  private:
    struct Generated {
        std::string heading;
        std::vector<std::string> cells;
    };

    int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(random_); }

    std::string pick(const std::vector<std::string>& from) {
        return from[static_cast<std::size_t>(upTo(static_cast<int>(from.size()) - 1))];
    }

    std::string maybe(const std::string& text) { return upTo(2) == 0 ? "" : text; }

    static std::string number(int value) { return std::to_string(value); }

    std::string money() { return pick({"$1,250.00", "80", "99.5", "12,000", "0.01"}); }

    std::string date() { return pick({"2026-03-10", "3/25/2026", "3/4/2026", "2 April 2026"}); }

    template <class Cell>
    void column(const std::vector<std::string>& headings, Cell&& cell) {
        if (columns_.empty()) {
            rows_ = 1 + upTo(12);
        }
        Generated made{pick(headings), {}};
        for (int k = 0; k < rows_; ++k) {
            made.cells.push_back(cell(k));
        }
        if (made.heading == "Date" || made.heading == "posted" || made.heading == "As of" ||
            made.heading == "Asked" || made.heading == "Signed") {
            made.cells.back() = "3/25/2026";  // shows that the month stands first
        }
        columns_.push_back(std::move(made));
    }

    std::string written() {
        std::shuffle(columns_.begin(), columns_.end(), random_);
        const std::string separator = pick({",", ";", "\t"});
        const std::string lineEnd = pick({"\n", "\r\n"});
        std::string out = pick({"", "\xEF\xBB\xBF"});
        const auto quoted = [&](const std::string& cell) {
            if (upTo(3) != 0 && cell.find_first_of(",;\t\n\"") == std::string::npos) {
                return cell;
            }
            std::string body;
            for (const char c : cell) {
                body += c == '"' ? std::string("\"\"") : std::string(1, c);
            }
            return "\"" + body + "\"";
        };
        for (int row = -1; row < rows_; ++row) {
            for (std::size_t k = 0; k < columns_.size(); ++k) {
                out += k == 0 ? "" : separator;
                out += quoted(row < 0 ? columns_[k].heading
                                      : columns_[k].cells[static_cast<std::size_t>(row)]);
            }
            out += lineEnd + (upTo(5) == 0 ? lineEnd : "");
        }
        return out;
    }

    std::mt19937 random_;
    int seed_;
    int rows_ = 0;
    std::vector<Generated> columns_;
};

class BringTwiceTest : public BringHouse {};

TEST_F(BringTwiceTest, AnyGoodFileAddsNothingTheSecondTime) {
    buildHouse();
    std::string parts = "Lender line,Amount\n";  // as many as a file of draw lines may name
    for (int k = 0; k <= 12; ++k) {
        parts += "Part " + std::to_string(k) + ",1000\n";
    }
    bringGood("lender-lines", parts);
    std::size_t added = 0;
    for (std::uint32_t seed = 1; seed <= 12; ++seed) {
        for (const auto& kind : bringKinds()) {
            GoodFile file(seed * 100 + static_cast<std::uint32_t>(kind.kind));
            const std::string text = file.make(kind.word);
            SCOPED_TRACE("seed " + std::to_string(seed) + " " + std::string(kind.word) + ":\n" +
                         text);
            const auto first = bringText(kind.word, text);
            ASSERT_TRUE(first.ok()) << first.error().message;
            added += first.value().added;
            const auto before = dump();
            const auto second = bringText(kind.word, text);
            ASSERT_TRUE(second.ok()) << second.error().message;
            EXPECT_EQ(second.value().added, 0U);
            EXPECT_EQ(second.value().changed, 0U);
            EXPECT_EQ(second.value().unchanged, second.value().lines.size());
            EXPECT_FALSE(second.value().written);
            ASSERT_EQ(dump(), before);
        }
    }
    EXPECT_GT(added, 250U);
}

TEST_F(BringTwiceTest, TwoEqualReceiptsInOneFileAreTwo) {
    const std::string row = "receipt,2026-03-20,45.50,Shop\n";
    const std::string head = "Kind,Date,Amount,Payee\n";
    EXPECT_EQ(bringGood("spend", head + row + row).added, 2U);
    EXPECT_EQ(bringGood("spend", head + row + row).added, 0U);
    EXPECT_EQ(bringGood("spend", head + row).added, 0U);
    const auto third = bringGood("spend", head + row + row + row);
    EXPECT_EQ(third.added, 1U);
    EXPECT_EQ(third.unchanged, 2U);
    EXPECT_EQ(rows<model::Spend>().size(), 3U);
}

TEST_F(BringTwiceTest, WhatTheOwnerFiledAnewStaysAndIsNotAddedAgain) {
    buildHouse();
    const std::string text =
        "Kind,Date,Amount,Payee,Item,Bank id\n"
        "receipt,2026-03-25,10,Shop,Bath/tub,\n"
        "receipt,2026-03-25,20,Shop,Bath/tub,bk-1\n";
    bringGood("spend", text);
    store::Action action("file anew");
    const auto cabinets = rows<model::Item>()[0].id;
    for (const auto& spend : rows<model::Spend>()) {
        action.set(spend.id.raw(), model::field::Spend::item, model::Value{cabinets.raw()});
        action.set(spend.id.raw(), model::field::Spend::payee, model::Value{std::string("Other")});
    }
    commit(action);
    const auto before = dump();
    const auto again = bringGood("spend", text);
    EXPECT_EQ(again.unchanged, 2U);
    EXPECT_EQ(dump(), before);
}

TEST_F(BringTwiceTest, WhatTheFileFilesLaterIsFilledIn) {
    buildHouse();
    bringGood("spend", "Kind,Date,Amount,Payee\nreceipt,2026-03-25,10,Shop\n");
    const auto report =
        bringGood("spend", "Kind,Date,Amount,Payee,Item\nreceipt,2026-03-25,10,Shop,Bath/tub\n");
    EXPECT_EQ(report.changed, 1U);
    EXPECT_EQ(report.lines[0].detail, "Item Bath/tub, was empty");
}

TEST_F(BringTwiceTest, AnotherReceiptOfTheDayIsAddedAndRemarkedOn) {
    bringGood("spend", "Kind,Date,Amount,Payee\nreceipt,2026-03-25,10,Shop\n");
    const auto report =
        bringGood("spend", "Kind,Date,Amount,Payee\nreceipt,2026-03-25,10,Hardware\n");
    EXPECT_EQ(report.added, 1U);
    ASSERT_EQ(report.remarks.size(), 1U);
    EXPECT_THAT(report.remarks[0], testing::HasSubstr("drop one if they are one and the same"));
}

TEST_F(BringTwiceTest, ACorrectedAmountIsRemarkedOnForBothWouldCount) {
    const std::string head = "Kind,Date,Amount,Payee\nreceipt,2026-03-25,9.00,Other shop\n";
    bringGood("spend", head + "receipt,2026-03-25,10,Shop\n");
    const auto report = bringGood("spend", head + "receipt,2026-03-25,12,Shop\n");
    EXPECT_EQ(report.added, 1U);
    EXPECT_EQ(report.unchanged, 1U);
    ASSERT_EQ(report.remarks.size(), 1U);
    EXPECT_THAT(report.remarks[0], testing::HasSubstr("but for the amount (10.00 there, 12.00"));
    EXPECT_THAT(report.remarks[0], testing::HasSubstr("drop that one, or both count"));
}

TEST_F(BringTwiceTest, WhatWasDroppedStaysDropped) {
    buildHouse();
    const std::string scope = "Space,Treatment,Object,Quantity\nBath,replace,sink,1\n";
    const std::string spend =
        "Kind,Date,Amount,Bank id\nfee,2026-03-25,10,\nfee,2026-03-25,11,b-1\n";
    bringGood("scope", scope);
    bringGood("spend", spend);
    store::Action edit("set quantity");
    edit.set(rows<model::Item>().back().id.raw(), model::field::Item::quantity,
             model::valueOf(model::Quantity::of(3)));
    commit(edit);
    store::Action action("drop");
    action.drop(Kind::Item, rows<model::Item>().back().id.raw());
    for (const auto& row : rows<model::Spend>()) {
        if (row.type == model::SpendKind::Fee) {
            action.drop(Kind::Spend, row.id.raw());
        }
    }
    commit(action);
    const auto before = dump();
    const auto report = bringGood("scope", scope);
    EXPECT_EQ(report.unchanged, 1U);
    ASSERT_EQ(report.remarks.size(), 1U);
    EXPECT_THAT(report.remarks[0], testing::HasSubstr("dropped from the book and stays so"));
    EXPECT_EQ(bringGood("spend", spend).unchanged, 2U);
    EXPECT_EQ(dump(), before);
    // New figures for it are a new decision.
    EXPECT_EQ(bringGood("scope", "Space,Treatment,Object,Quantity\nBath,replace,sink,2\n").added,
              1U);
}

TEST_F(BringTwiceTest, ASpendThatWasVoidedAndWrittenAnewIsKnownAgain) {
    bringGood("spend", "Kind,Date,Amount,Bank id\ninvoice,2026-03-25,100,b-1\n");
    model::Spend anew = rows<model::Spend>().at(0);
    anew.voids = anew.id;
    anew.id = id<Kind::Spend>();
    anew.amount = Money::of(110);
    store::Action action("correct");
    action.add(anew);
    commit(action);
    const auto before = dump();
    EXPECT_EQ(
        bringGood("spend", "Kind,Date,Amount,Bank id\ninvoice,2026-03-25,100,b-1\n").unchanged, 1U);
    EXPECT_EQ(
        bringGood("spend", "Kind,Date,Amount,Bank id\ninvoice,2026-03-25,110,b-1\n").unchanged, 1U);
    // What a row says beyond that is not filed on the row that no longer counts.
    EXPECT_EQ(
        bringGood("spend", "Kind,Date,Amount,Bank id,Note\ninvoice,2026-03-25,100,b-1,deposit\n")
            .unchanged,
        1U);
    EXPECT_EQ(dump(), before);
    EXPECT_FALSE(bringText("spend", "Kind,Date,Amount,Bank id\ninvoice,2026-03-25,120,b-1\n").ok());
}

}  // namespace
}  // namespace ledgerboard::intake
