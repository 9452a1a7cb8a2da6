// Protects: what a good file says is what the book holds afterwards, no more and no less, however
// the file was written; and a row speaks of the record it should.
#include "core/intake/files/bring.h"

#include <algorithm>
#include <functional>
#include <gmock/gmock.h>

#include "tests/unit/intake/files/bring_house.h"

namespace ledgerboard::intake {
namespace {

using model::Date;
using model::Kind;
using model::Money;
using model::Percent;
using model::Quantity;
using testing::ElementsAre;
using testing::HasSubstr;

Date day(int year, int month, int dayOfMonth) {
    return Date::fromYmd(year, month, dayOfMonth).value();
}

class BringTest : public BringHouse {
  protected:
    template <class Row>
    Row only(const std::function<bool(const Row&)>& wanted) {
        std::vector<Row> out;
        for (const auto& row : rows<Row>()) {
            if (wanted(row)) {
                out.push_back(row);
            }
        }
        EXPECT_EQ(out.size(), 1U);
        return out.empty() ? Row{} : out.front();
    }

    model::Item item(const std::string& object) {
        return only<model::Item>([&](const model::Item& row) { return row.object == object; });
    }
};

TEST_F(BringTest, ScopeMakesSpacesInWalkingOrder) {
    const auto report = bringGood(
        "scope",
        "Room,Treatment,Object,Qty,Unit,Material per unit,Labor per unit,Waste (%),Allowance\n"
        "Kitchen,replace,cabinets,12,EA,\"$1,250.00\",80,5%,yes\n"
        "Hall bath,Clean,tile,40.5,SF,,,,\n"
        "kitchen,keep,floor,,,,,,no\n");
    EXPECT_EQ(report.added, 3U);
    EXPECT_TRUE(report.written);
    EXPECT_THAT(report.newSpaces, ElementsAre("Kitchen", "Hall bath"));
    const auto spaces = rows<model::Space>();
    ASSERT_EQ(spaces.size(), 2U);
    EXPECT_EQ(spaces[0].walkOrder, 1);
    EXPECT_EQ(spaces[1].walkOrder, 2);
    EXPECT_EQ(spaces[1].shortName, "Hb");
    const auto cabinets = item("cabinets");
    EXPECT_EQ(cabinets.space, spaces[0].id);
    EXPECT_EQ(cabinets.job, job_);
    EXPECT_EQ(cabinets.treatment, model::Treatment::Replace);
    EXPECT_EQ(cabinets.quantity, Quantity::of(12));
    EXPECT_EQ(cabinets.unit, "each");
    EXPECT_EQ(cabinets.unitCostMaterial, Money::of(1250));
    EXPECT_EQ(cabinets.unitCostLabour, Money::of(80));
    EXPECT_EQ(cabinets.waste, Percent::of(5));
    EXPECT_TRUE(cabinets.allowance);
    EXPECT_EQ(item("tile").unit, "sq ft");
    EXPECT_EQ(item("tile").quantity, Quantity::fromThousandths(40500));
    EXPECT_EQ(item("floor").space, spaces[0].id);
}

TEST_F(BringTest, TakesSemicolonsAMarkQuotedBreaksAndUsualDates) {
    bringGood("scope", "Space,Treatment,Object\nBath,replace,tub\n");
    const auto report =
        bringGood("spend",
                  "\xEF\xBB\xBFType;Date;Amount;Vendor;Memo;Room;Item\r\n"
                  "Bill;5/6/2026;$1,250.00;\"Tub\nshop\";\"two\r\nlines\";Bath;tub\r\n"
                  "receipt;13/6/2026;12.5;Hardware;;;Bath/tub\r\n"
                  "receipt;14 June 2026;;Hardware;;;\r\n");
    EXPECT_EQ(report.added, 3U);
    const auto spends = rows<model::Spend>();
    ASSERT_EQ(spends.size(), 3U);
    EXPECT_EQ(spends[0].type, model::SpendKind::Invoice);
    EXPECT_EQ(spends[0].spentOn, day(2026, 6, 5));  // the next row shows that the day stands first
    EXPECT_EQ(spends[0].amount, Money::of(1250));
    EXPECT_EQ(spends[0].payee, "Tub shop");
    EXPECT_EQ(spends[0].note, "two\nlines");
    EXPECT_EQ(spends[0].item, item("tub").id);
    EXPECT_EQ(spends[1].item, item("tub").id);
    EXPECT_EQ(spends[1].spentOn, day(2026, 6, 13));
    EXPECT_FALSE(spends[2].amount.has_value());  // a receipt may still lack its amount
    EXPECT_EQ(report.lines[1].line, 5);          // the quoted breaks count as lines of the file
}

TEST_F(BringTest, MarksAreTheOwnersOwn) {
    buildHouse();
    bringGood("marks",
              "Item,Percent,Count,Steps,Date,Note\n"
              "Kitchen/cabinets,40,,,2026-03-10,boxes are in\n"
              "Kitchen/old tile,,25,,2026-03-10,\n"
              "Bath/tile,,,prep; set,2026-03-11,\n"
              "Bath/fan,50,,,2026-03-11,\n");
    const auto marks = rows<model::Mark>();
    ASSERT_EQ(marks.size(), 4U);
    EXPECT_EQ(marks[0].percent, Percent::of(40));
    EXPECT_EQ(marks[0].item, item("cabinets").id);
    EXPECT_EQ(marks[0].note, "boxes are in");
    EXPECT_EQ(marks[1].count, Quantity::of(25));
    EXPECT_EQ(marks[2].stepsDone, "prep; set");
    for (const auto& mark : marks) {
        EXPECT_EQ(mark.by, book_->me());
        EXPECT_EQ(mark.onDevice, book_->thisDevice());
        EXPECT_EQ(mark.job, job_);
    }
}

TEST_F(BringTest, PaymentsNameInvoicesOfTheFileOrTheBook) {
    buildHouse();
    bringGood("spend",
              "Kind,Date,Amount,Pays,Bank id\n"
              "payment,2026-03-28,500,inv-9,pay-1\n"
              "payment,2026-03-28,700,INV-1,pay-2\n"
              "invoice,2026-03-25,500,,inv-9\n");
    const auto byBankId = [&](const std::string& bankId) {
        return only<model::Spend>([&](const model::Spend& row) { return row.bankId == bankId; });
    };
    EXPECT_EQ(byBankId("pay-1").pays, byBankId("inv-9").id);
    EXPECT_EQ(byBankId("pay-2").pays, byBankId("inv-1").id);
}

TEST_F(BringTest, OtherKindsComeInWhole) {
    buildHouse();
    bringGood("prices",
              "Object,Treatment,Unit,Material,Labor,Low,High,Lead time,Source,As of\n"
              "cabinets,replace,EA,300,80,250,600,42,own last house,2019-05-01\n");
    const auto price = rows<model::Price>().at(0);
    EXPECT_EQ(price.labour, Money::of(80));
    EXPECT_EQ(price.asOf, day(2019, 5, 1));
    bringGood("changes",
              "Change,Contract,Items,Amount,Days,Split,Signed,Paid from\n"
              "Warm floor,Tile work,Bath/tile; Bath/tub,-150.00,-1,Bath/tile=-100; Bath/tub=-50,"
              "2026-03-30,new money\n");
    const auto change = rows<model::Change>().at(0);
    EXPECT_EQ(change.amount, Money::of(-150));
    EXPECT_THAT(change.items, ElementsAre(item("tile").id, item("tub").id));
    ASSERT_EQ(change.split.size(), 2U);
    EXPECT_EQ(change.split[1].amount, Money::of(-50));
    EXPECT_EQ(change.paidFrom, model::PaidFrom::NewMoney);
    bringGood("draws", "#,Requested,Received,Amount,Holdback\n1,2026-04-01,2026-04-06,9000,1000\n");
    EXPECT_EQ(rows<model::Draw>().at(0).holdback, Money::of(1000));
    bringGood("punch",
              "Room,Description,Who,By when,Found,Charge back to,Charge back\n"
              "Bath,grout open at tub,Tile crew,2026-05-20,2026-05-12,Tile crew,60\n"
              ",touch up paint throughout,,,,,\n");
    const auto punch = rows<model::Punch>();
    ASSERT_EQ(punch.size(), 2U);
    EXPECT_EQ(punch[0].chargeBack, Money::of(60));
    EXPECT_TRUE(punch[1].space.isNil());
}

TEST_F(BringTest, AKeyFindsTheRecordAndOnlyWhatDiffersIsWritten) {
    buildHouse();
    const auto before = item("cabinets");
    const auto entries = entryCount();
    const auto report = bringGood("scope",
                                  "Space,Treatment,Object,Quantity,Unit,Lump sum,Note\n"
                                  "kitchen,Replace,CABINETS,14,each,,\n"
                                  "Bath,replace,tub,1,,900,\n");
    EXPECT_EQ(report.added, 0U);
    EXPECT_EQ(report.changed, 1U);
    EXPECT_EQ(report.unchanged, 1U);
    EXPECT_EQ(entryCount(), entries + 1);  // the quantity alone
    const auto after = item("cabinets");
    EXPECT_EQ(after.id, before.id);
    EXPECT_EQ(after.quantity, Quantity::of(14));
    EXPECT_EQ(after.lumpSum, Money::of(4200));  // an empty cell clears nothing
    EXPECT_EQ(report.lines[0].detail, "Quantity 14, was 12");
}

TEST_F(BringTest, ContractsOfOneNameDifferByCrew) {
    buildHouse();
    bringGood("contracts", "Contract,Crew,Sum\nTile work,Plumbing crew,500\n");
    EXPECT_EQ(rows<model::Contract>().size(), 2U);
    bringGood("contracts", "Contract,Crew,Sum\nTile work,Tile crew,6500\n");
    const auto contracts = rows<model::Contract>();
    ASSERT_EQ(contracts.size(), 2U);
    EXPECT_EQ(contracts[0].sum, Money::of(6500));
    EXPECT_EQ(contracts[1].sum, Money::of(500));
    const auto unclear = bringText("contracts", "Contract,Sum\nTile work,100\n");
    ASSERT_FALSE(unclear.ok());
    EXPECT_THAT(unclear.error().message, HasSubstr("may mean 2 records"));
}

TEST_F(BringTest, AContractTakesItsCrewLaterAndAPunchItemKeepsItsPlace) {
    buildHouse();
    bringGood("contracts", "Contract,Crew,Sum\nPipes,,800\n");
    const auto report = bringGood("contracts", "Contract,Crew,Sum\nPipes,Plumbing crew,800\n");
    EXPECT_EQ(report.changed, 1U);
    EXPECT_EQ(report.lines[0].detail, "Crew Plumbing crew, was empty");
    bringGood("punch", "Space,What\n,touch up paint\n");
    EXPECT_EQ(bringGood("punch", "Space,What\nBath,touch up paint\n").added, 1U);
    EXPECT_EQ(bringGood("punch", "Space,What,Due\n,touch up paint,2026-05-20\n").changed, 1U);
}

TEST_F(BringTest, PricesAndCrewsNeedNoJob) {
    EXPECT_TRUE(bring(*book_, {}, "crews", "c.csv", "Crew\nRoof crew\n", {}, now_()).ok());
    EXPECT_TRUE(bring(*book_, {}, "prices", "p.csv", "Object,Treatment,Unit\nroof,repair,each\n",
                      {}, now_())
                    .ok());
    const auto scope = bring(*book_, {}, "scope", "s.csv", "Space,Treatment,Object\n", {}, now_());
    ASSERT_FALSE(scope.ok());
    EXPECT_EQ(scope.error().code, model::ErrorCode::WrongUse);
    EXPECT_THAT(scope.error().message, HasSubstr("--job NAME"));
}

TEST_F(BringTest, TryingShowsEverythingAndWritesNothing) {
    const std::string text = "Space,Treatment,Object,Quantity\nKitchen,replace,sink,1\n";
    const auto before = dump();
    const auto tried = bringText("scope", text, "", true);
    ASSERT_TRUE(tried.ok());
    EXPECT_EQ(tried.value().added, 1U);
    EXPECT_FALSE(tried.value().written);
    EXPECT_THAT(tried.value().newSpaces, ElementsAre("Kitchen"));
    EXPECT_EQ(tried.value().lines[0].name, "Kitchen/replace sink");
    EXPECT_THAT(tried.value().lines[0].detail, HasSubstr("Quantity 1"));
    EXPECT_EQ(dump(), before);
}

TEST_F(BringTest, ItIsOneActionThatUndoTakesBack) {
    const auto before = rows<model::Item>().size();
    bringGood("scope", "Space,Treatment,Object\nKitchen,replace,sink\nDen,clean,floor\n");
    EXPECT_EQ(rows<model::Item>().size(), before + 2);
    const auto undone = book_->undo(now_());
    ASSERT_TRUE(undone.ok());
    EXPECT_EQ(undone.value().what, "bring scope rows.csv");
    EXPECT_EQ(rows<model::Item>().size(), before);
    EXPECT_TRUE(rows<model::Space>().empty());
}

TEST_F(BringTest, ASlipInASpaceIsRemarkedOn) {
    bringGood("scope", "Space,Treatment,Object\nKitchen,replace,sink\nBedroom 1,clean,floor\n");
    const auto report =
        bringGood("scope", "Space,Treatment,Object\nKichen,clean,oven\nBedroom 2,clean,floor\n");
    ASSERT_EQ(report.remarks.size(), 1U);
    EXPECT_THAT(report.remarks[0],
                HasSubstr("\"Kichen\" (line 2) is written much like \"Kitchen\""));
}

TEST_F(BringTest, HeadingsAloneBringNothingAndSaySo) {
    const auto report = bringGood("crews", "Crew,Trade\n");
    EXPECT_FALSE(report.written);
    EXPECT_THAT(report.remarks, ElementsAre(HasSubstr("headings and no rows")));
}

TEST_F(BringTest, MatchesHeadingsAsTold) {
    bringGood("crews", "Mannschaft,Gewerk,Farbe\nTile crew,tile,blue\n",
              "Mannschaft=Crew, Gewerk=trade, Farbe=-");
    EXPECT_EQ(rows<model::Crew>().at(0).trade, "tile");
}

TEST_F(BringTest, FilesAreReadByPathAndCalledByName) {
    std::ofstream(folder_.file("april.csv")) << "Crew\nTile crew\n";
    const auto done = bringFile(*book_, job_, "crews", folder_.file("april.csv"), {}, now_());
    ASSERT_TRUE(done.ok());
    EXPECT_EQ(done.value().file, "april.csv");
    const auto missing = bringFile(*book_, job_, "crews", folder_.file("may.csv"), {}, now_());
    ASSERT_FALSE(missing.ok());
    EXPECT_THAT(missing.error().message, HasSubstr("no such file"));
}

TEST_F(BringTest, UnknownKindsAreWrongUse) {
    const auto done = bringText("spends", "Kind\n");
    ASSERT_FALSE(done.ok());  // the column Date is missing, the kind is understood
    EXPECT_EQ(done.error().code, model::ErrorCode::CannotBeMet);
    const auto wrong = bringText("scop", "A\n");
    ASSERT_FALSE(wrong.ok());
    EXPECT_EQ(wrong.error().code, model::ErrorCode::WrongUse);
    EXPECT_THAT(wrong.error().message, HasSubstr("did you mean scope?"));
    EXPECT_FALSE(bringText("photos", "A\n").ok());
}

// What is tried says every row that is wrong, and what the others would bring; nothing is written.
TEST_F(BringTest, TryingTellsTheWrongRowsFromTheRest) {
    const std::string file =
        "Space,Treatment,Object,Qty,Unit,After\n"
        "Kitchen,replace,sink,1,each,\n"
        "Kitchen,polish,counter,1,each,\n"
        "Kitchen,add,shelf,many,each,\n"
        "Kitchen,repair,faucet,1,each,Kitchen/shelf\n"
        "Kitchen,clean,tile,1,each,Kitchen/sink\n";
    const auto trial = tryBring(*book_, job_, "scope", "f.csv", file, now_());
    ASSERT_TRUE(trial.ok()) << trial.error().message;
    EXPECT_EQ(trial.value().rows, 5U);
    // Row 5 waits for an item that does not come in.
    EXPECT_THAT(trial.value().wrongLines, ElementsAre(3, 4, 5));
    EXPECT_EQ(trial.value().rest.added, 2U);
    EXPECT_FALSE(trial.value().rest.written);
    EXPECT_TRUE(rows<model::Item>().empty());

    BringOptions options;
    options.leaveOut = trial.value().wrongLines;
    const auto report = bring(*book_, job_, "scope", "f.csv", file, options, now_());
    ASSERT_TRUE(report.ok()) << report.error().message;
    EXPECT_EQ(report.value().added, 2U);
    EXPECT_EQ(rows<model::Item>().size(), 2U);
}

TEST_F(BringTest, AFileThatIsNoTableIsNotTried) {
    EXPECT_FALSE(tryBring(*book_, job_, "scope", "f.csv", "", now_()).ok());
    EXPECT_FALSE(tryBring(*book_, job_, "scope", "f.csv", "Colour,Size\nred,2\n", now_()).ok());
}

}  // namespace
}  // namespace ledgerboard::intake
