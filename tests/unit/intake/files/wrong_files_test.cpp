// Protects: a wrong file names the place and the mend, everything wrong with it at once, and leaves
// the book byte for byte as it was. Each case is one file that a person could really bring.
#include <filesystem>
#include <gmock/gmock.h>
#include <map>
#include <sstream>
#include <vector>

#include "tests/unit/intake/files/bring_house.h"

namespace ledgerboard::intake {
namespace {

using testing::HasSubstr;

struct WrongFile {
    std::string kind;
    std::string text;
    int line;             // of the file; 0: the file as a whole
    std::string heading;  // empty: the row or file as a whole
    std::string mend;     // a piece of what the message must say
};

// Rows of each kind under the headings beside it; `at` counts rows from line 2.
std::vector<WrongFile> wrongFiles() {
    const std::string spend =
        "Kind,Date,Amount,Item,Crew,Contract,Tax,Held,Due,Pays,Split,Bank id\n";
    const std::string scope =
        "Space,Treatment,Object,Quantity,Unit,Lump sum,Cost low,Cost high,Days,Crew,Contract,"
        "Planned start,Planned finish,Waste,Measured by,Steps,Lead days\n";
    const std::string prices = "Object,Treatment,Unit,Material,Labour,Low,High,Waste,As of\n";
    const std::string crews = "Crew,Insured until,Capacity,Daily rate\n";
    const std::string contracts =
        "Contract,Crew,Kind,Sum,Deposit,Retainage,Payment steps,Signed,Start,Finish,Insurance "
        "seen\n";
    const std::string changes =
        "Change,Contract,Items,Amount,Split,Asked,Signed,Refused,Paid from\n";
    const std::string marks = "Item,Percent,Count,Steps done,Date\n";
    const std::string draws = "Draw,Asked,Inspected,Funded,Amount,Held back,Fee\n";
    const std::string punch = "Space,What,Crew,Due,Found,Charge back to,Charge back\n";
    return {
        // Spend.
        {"spend", spend + "invoice,2026-03-20,\"12,5\"\n", 2, "Amount",
         "a comma where none belongs"},
        {"spend", spend + "invoice,2026-03-20,\"1.250,00\"\n", 2, "Amount",
         "with a point for decimals"},
        {"spend", spend + "invoice,2026-03-20,12.345\n", 2, "Amount", "round it"},
        {"spend", spend + "invoice,2026-03-20,about 50\n", 2, "Amount", "not a number"},
        {"spend", spend + "invoice,2026-03-20,-50\n", 2, "Amount", "the kind refund"},
        {"spend", spend + "invoice,2026-03-20,(50.00)\n", 2, "Amount", "without a minus"},
        {"spend", spend + "invoice,2026-03-20,9999999999999999\n", 2, "Amount", "too large"},
        {"spend", spend + "invoice,2026-03-20,\n", 2, "Amount", "only a receipt"},
        {"spend", spend + "receipt,2026-03-20,#REF!\n", 2, "Amount", "mend the sheet"},
        {"spend", spend + "receipt,2026-03-20,5\nloan,2026-03-20,5\n", 3, "Kind",
         "invoice, payment, receipt, fee, refund"},
        {"spend", spend + ",2026-03-20,5\n", 2, "Kind", "is empty"},
        {"spend", spend + "receipt,,5\n", 2, "Date", "is empty"},
        {"spend", spend + "receipt,5/6/2026,5\n", 2, "Date", "two different days"},
        {"spend", spend + "receipt,5/6/2026,5\nfee,25/6/2026,5\nfee,6/25/2026,5\n", 2, "Date",
         "some dates day first"},
        {"spend", spend + "receipt,5/6/26,5\n", 2, "Date", "two-digit year"},
        {"spend", spend + "receipt,2026-02-30,5\n", 2, "Date", "check the day"},
        {"spend", spend + "receipt,soon,5\n", 2, "Date", "write it like 2026-05-15"},
        {"spend", spend + "receipt,1899-12-31,5\n", 2, "Date", "before 1900"},
        {"spend", spend + "receipt,2062-03-20,5\n", 2, "Date", "five years from the beginning"},
        {"spend", spend + "receipt,2016-03-20,5\n", 2, "Date", "check the year"},
        {"spend", spend + "receipt,2026-03-20,5,Kitchen/cabinet\n", 2, "Item",
         "did you mean \"Kitchen/cabinets\"?"},
        {"spend", spend + "receipt,2026-03-20,5,,Tyle crew\n", 2, "Crew", "\"Tile crew\""},
        {"spend", spend + "receipt,2026-03-20,5,,,Roofing\n", 2, "Contract", "bring contracts"},
        {"spend", spend + "receipt,2026-03-20,5,,,,6\n", 2, "Amount", "is less than \"Tax\""},
        {"spend", spend + "receipt,2026-03-20,5,,,,,1\n", 2, "Held", "held from invoices"},
        {"spend", spend + "invoice,2026-03-20,5,,,,,,2026-03-19\n", 2, "Due", "is before \"Date\""},
        {"spend", spend + "receipt,2026-03-20,5,,,,,,,inv-1\n", 2, "Pays", "only a payment pays"},
        {"spend", spend + "payment,2026-03-20,5,,,,,,,rec-1\n", 2, "Pays",
         "only invoices are paid"},
        {"spend", spend + "payment,2026-03-20,5,,,,,,,inv-2\n", 2, "Pays", "\"inv-1\""},
        {"spend", spend + "fee,2026-03-20,5,,,,,,,,Bath/tub=4\n", 2, "Split", "add up to 4.00"},
        {"spend", spend + "fee,2026-03-20,5,Bath/fan,,,,,,,Bath/tub=5\n", 2, "Split", "leave one"},
        {"spend", spend + "fee,2026-03-20,5,,,,,,,,Bath/tub\n", 2, "Split", "needs a name"},
        {"spend", spend + "invoice,2026-03-20,1300,,,,,,,,,inv-1\n", 2, "Amount",
         "1200.00 there, 1300.00 here"},
        {"spend", spend + "invoice,2026-03-22,1200,,,,,,,,,inv-1\n", 2, "Date", "inv-1"},
        {"spend", spend + "fee,2026-03-20,5,,,,,,,,,f1\nfee,2026-03-20,5,,,,,,,,,f1\n", 3,
         "Bank id", "line 2"},
        {"spend", "Kind,Date\nreceipt,2026-03-20\n", 1, "Amount", "is missing"},
        {"spend", "Kind,Date,Amount,Colour\nfee,2026-03-20,5,red\n", 1, "Colour", "Colour=-"},
        {"spend", "Kind,Date,Amount,Room\nfee,2026-03-20,5,Bath\n", 2, "Room", "names no item"},
        {"spend", "Kind,Date,Amount,Total\nfee,2026-03-20,5,5\n", 1, "Total", "\"Amount\""},
        {"spend", "Kind,Date,Amount,\nfee,2026-03-20,5,stray\n", 1, "4", "no heading"},
        {"spend", "2026-03-20,Hardware,45.50\n2026-03-21,Shop,12\n", 1, "", "the first line"},
        {"spend", "Kind,Date,Amount\nfee,2026-03-20,1,250.00\n", 2, "", "quotation marks"},
        // Scope.
        {"scope", scope + "Kitchen,,sink\n", 2, "Treatment", "what is done"},
        {"scope", scope + "Kitchen,beautify,sink\n", 2, "Treatment", "refinish"},
        {"scope", scope + ",replace,sink\n", 2, "Space", "is empty"},
        {"scope", scope + "Kitchen,replace,\n", 2, "Object", "is empty"},
        {"scope", scope + "Kitchen,replace,sink,-1\n", 2, "Quantity", "below 0"},
        {"scope", scope + "Kitchen,replace,sink,1.2345\n", 2, "Quantity", "round it"},
        {"scope", scope + "Kitchen,replace,sink,a few\n", 2, "Quantity", "not a number"},
        {"scope", scope + "Kitchen,replace,sink,,,,500,400\n", 2, "Cost high", "is less than"},
        {"scope", scope + "Kitchen,replace,sink,,,,,,,Masons\n", 2, "Crew", "bring crews"},
        {"scope", scope + "Kitchen,replace,sink,,,,,,,,,2026-03-10,2026-03-09\n", 2,
         "Planned finish", "is before"},
        {"scope", scope + "Kitchen,replace,sink,,,,,,,,,,,120\n", 2, "Waste", "0 to 100"},
        {"scope", scope + "Kitchen,keep,stove,,,150\n", 2, "Lump sum", "what is kept"},
        {"scope", scope + "Kitchen,replace,sink,,,,,,,,,,,,weighted steps\n", 2, "Steps",
         "prep 20; set 60"},
        {"scope", scope + "Kitchen,replace,sink,,,,,,,,,,,,weighted steps,a 20; b 60\n", 2, "Steps",
         "add up to 80"},
        {"scope", scope + "Kitchen,replace,sink,,,,,,,,,,,,counted units\n", 2, "Quantity",
         "how many"},
        {"scope", scope + "Kitchen,replace,sink\nKitchen,Replace,Sink\n", 3, "Object", "line 2"},
        {"scope", scope + "Kitchen,replace,sink,,,,,,,,,,,,,,12.5\n", 2, "Lead days", "round it"},
        {"scope", "Space,Treatment,Object,Percent\nBath,add,fan,50\n", 1, "Percent", "marks"},
        {"scope",
         "Space,Treatment,Object,Cost high\nKitchen,replace,cabinets,5\n"
         "Bath,replace,tub,x\n",
         3, "Cost high", "not a number"},
        // Prices.
        {"prices", prices + "tub,replace,,100\n", 2, "Unit", "is empty"},
        {"prices", prices + "tub,,each,100\n", 2, "Treatment", "is empty"},
        {"prices", prices + "tub,replace,each,100,,90,80\n", 2, "High", "is less than"},
        {"prices", prices + "tub,replace,each,-100\n", 2, "Material", "below 0"},
        {"prices", prices + "tub,replace,each,1\ntub,Replace,ea,2\n", 3, "Unit", "line 2"},
        {"prices", prices + "tub,replace,each,1,,,,,2126-01-01\n", 2, "As of", "check the year"},
        {"prices", "Object,Treatment,Unit,Price\ntub,replace,each,5\n", 1, "Price", "two parts"},
        // Crews.
        {"crews", crews + ",2026-12-31\n", 2, "Crew", "is empty"},
        {"crews", crews + "Roof crew,31/12\n", 2, "Insured until", "not a date"},
        {"crews", crews + "Roof crew,,two\n", 2, "Capacity", "not a number"},
        {"crews", crews + "Roof crew\nroof-crew\n", 3, "Crew", "line 2"},
        {"crews", crews + "Roof crew,,,620 a day\n", 2, "Daily rate", "not a number"},
        // Contracts.
        {"contracts", contracts + "Roof,Roof crew\n", 2, "Crew", "bring crews"},
        {"contracts", contracts + "Roof,Tile crew,handshake\n", 2, "Kind", "subcontract, order"},
        {"contracts", contracts + "Roof,Tile crew,,500,600\n", 2, "Sum", "is less than"},
        {"contracts", contracts + "Roof,Tile crew,,500,,110\n", 2, "Retainage", "100 percent"},
        {"contracts", contracts + "Roof,Tile crew,,500,,,start 50; done 40\n", 2, "Payment steps",
         "add up to 90"},
        {"contracts", contracts + "Roof,Tile crew,,500,,,start\n", 2, "Payment steps",
         "a name and a figure"},
        {"contracts", contracts + "Roof,Tile crew,,,,,,,,,maybe\n", 2, "Insurance seen",
         "neither yes nor no"},
        // Changes.
        {"changes", changes + ",Tile work\n", 2, "Change", "is empty"},
        {"changes", changes + "Extra,Tile works\n", 2, "Contract", "\"Tile work\""},
        {"changes", changes + "Extra,,Bath/tube\n", 2, "Items", "\"Bath/tub\""},
        {"changes", changes + "Extra,,,100,Bath/tub=60; Bath/tile=30\n", 2, "Split", "90.00"},
        {"changes", changes + "Extra,,,100,,,2026-03-10,2026-03-11\n", 2, "Refused", "either"},
        {"changes", changes + "Extra,,,100,,2026-03-12,2026-03-10\n", 2, "Signed", "is before"},
        {"changes", changes + "Extra,,,100,,,,,savings\n", 2, "Paid from", "new money"},
        // Marks.
        {"marks", marks + "Kitchen/cabinets,101,,,2026-03-10\n", 2, "Percent", "0 to 100"},
        {"marks", marks + "Kitchen/cabinets,-5,,,2026-03-10\n", 2, "Percent", "below 0"},
        {"marks", marks + "Kitchen/wood floor,50,,,2026-03-10\n", 2, "Percent", "is kept"},
        {"marks", marks + "Kitchen/cabinets,,,,2026-03-10\n", 2, "Percent", "says nothing"},
        {"marks", marks + "Kitchen/cabinets,50,,,\n", 2, "Date", "is empty"},
        {"marks", marks + ",50,,,2026-03-10\n", 2, "Item", "is empty"},
        {"marks", marks + "Bath/tub,50,,,2026-03-10\n", 2, "Percent", "none or done"},
        {"marks", marks + "Bath/fan,60,,,2026-03-10\n", 2, "Percent", "0, 50 or 100"},
        {"marks", marks + "Kitchen/old tile,,41,,2026-03-10\n", 2, "Count", "from 0 to 40"},
        {"marks", marks + "Bath/tile,,,paint,2026-03-10\n", 2, "Steps done", "prep; set; grout"},
        {"marks", marks + "Kitchen/old tile,50,20,,2026-03-10\n", 2, "Count", "more than one"},
        {"marks", marks + "Bath,50,,,2026-03-10\n", 2, "Item", "SPACE/OBJECT"},
        // Draws.
        {"draws", draws + "0,2026-04-01\n", 2, "Draw", "from 1"},
        {"draws", draws + "first,2026-04-01\n", 2, "Draw", "not a number"},
        {"draws", draws + "1,2026-04-01\n1,2026-05-01\n", 3, "Draw", "line 2"},
        {"draws", draws + "1,2026-04-05,2026-04-01\n", 2, "Inspected", "is before \"Asked\""},
        {"draws", draws + "1,,,,-9000\n", 2, "Amount", "below 0"},
        // Punch.
        {"punch", punch + "Bath,\n", 2, "What", "is empty"},
        {"punch", punch + "Attic,loose board\n", 2, "Space", "there is no space"},
        {"punch", punch + "Bath,chip,,2026-05-01,2026-05-10\n", 2, "Due", "is before \"Found\""},
        {"punch", punch + "Bath,chip,,,,,60\n", 2, "Charge back to", "name the crew"},
        {"punch", "What,Status\nchip,open\n", 1, "Status", "a look at it"},
        // Whole files.
        {"spend", "", 0, "", "is empty"},
        {"spend", std::string("Kind,Date\0,Amount\n", 18), 1, "", "CSV UTF-8"},
        {"spend", "\xFF\xFEK\1i\1", 0, "", "UTF-16"},
        {"spend", "Kind,Date,Amount,Payee\nfee,2026-03-20,5,\"Shop\n", 2, "", "never closed"},
        {"spend", "Kind,Date,Amount,Payee\nfee,2026-03-20,5,Caf\xE9\n", 2, "", "UTF-8"},
    };
}

class WrongFilesTest : public BringHouse {
  protected:
    // The bytes of the book and of what stands beside it, apart from the shared memory that any
    // reader touches.
    std::map<std::string, std::string> bytes() {
        std::map<std::string, std::string> out;
        for (const auto& entry : std::filesystem::directory_iterator(folder_.path())) {
            const std::string name = entry.path().filename().string();
            if (!name.ends_with("-shm")) {
                std::ifstream in(entry.path(), std::ios::binary);
                out[name] = std::string(std::istreambuf_iterator<char>(in), {});
            }
        }
        return out;
    }
};

TEST_F(WrongFilesTest, EachNamesThePlaceAndTheMendAndLeavesTheBookAsItWas) {
    buildHouse();
    const auto files = wrongFiles();
    EXPECT_GE(files.size(), 60U);
    const auto bytesBefore = bytes();
    const auto dumpBefore = dump();
    ASSERT_FALSE(bytesBefore.empty());
    for (const auto& wrong : files) {
        SCOPED_TRACE(wrong.kind + ":\n" + wrong.text);
        const auto done = bringText(wrong.kind, wrong.text);
        ASSERT_FALSE(done.ok());
        const std::string place =
            (wrong.line > 0 ? "rows.csv:" + std::to_string(wrong.line) : std::string("rows.csv")) +
            ": " + (wrong.heading.empty() ? "" : "column \"" + wrong.heading + "\": ");
        EXPECT_THAT(done.error().message, HasSubstr(place));
        EXPECT_THAT(done.error().message, HasSubstr(wrong.mend));
    }
    EXPECT_EQ(dump(), dumpBefore);
    EXPECT_TRUE(bytes() == bytesBefore);
}

TEST_F(WrongFilesTest, EverythingWrongIsToldAtOnceInOrder) {
    buildHouse();
    const auto done = bringText("spend",
                                "Kind,Date,Amount,Crew\n"
                                "loan,2026-03-20,5,Tile crew\n"
                                "fee,2026-03-20,5,\n"
                                "fee,2026-13-20,x,Masons\n");
    ASSERT_FALSE(done.ok());
    EXPECT_EQ(done.error().code, model::ErrorCode::CannotBeMet);
    std::vector<std::string> lines;
    std::istringstream text(done.error().message);
    for (std::string line; std::getline(text, line);) {
        lines.push_back(line);
    }
    EXPECT_THAT(
        lines,
        testing::ElementsAre(
            HasSubstr("rows.csv: nothing was brought in, 4 things are to be mended"),
            HasSubstr("rows.csv:2: column \"Kind\""), HasSubstr("rows.csv:4: column \"Date\""),
            HasSubstr("rows.csv:4: column \"Amount\""), HasSubstr("rows.csv:4: column \"Crew\"")));
}

// Good rows beside a wrong one stay out too, and so do the spaces they would have made.
TEST_F(WrongFilesTest, AllOrNothing) {
    const auto before = dump();
    EXPECT_FALSE(
        bringText("scope", "Space,Treatment,Object\nKitchen,replace,sink\nDen,polish,floor\n")
            .ok());
    EXPECT_EQ(dump(), before);
    EXPECT_TRUE(rows<model::Space>().empty());
}

// Cuts and mangled bytes of a good file never crash, never half come in.
TEST_F(WrongFilesTest, AnyCutOrChangedByteEitherComesInWholeOrNotAtAll) {
    buildHouse();
    const std::string good =
        "Kind,Date,Amount,Item,Payee\r\n\"receipt\",2026-03-20,\"1,250.00\",Bath/tub,\"A \"\"B\"\" "
        "shop\"\r\nfee,20.3.2026,5,,\r\n";
    const auto before = dump();
    std::size_t refused = 0;
    for (std::size_t k = 0; k < good.size(); ++k) {
        for (const std::string& text :
             {good.substr(0, k), good.substr(0, k) + "\"" + good.substr(k + 1),
              good.substr(0, k) + "\xFF" + good.substr(k + 1),
              good.substr(0, k) + "\n" + good.substr(k + 1)}) {
            const auto done = bringText("spend", text, "", true);
            refused += done.ok() ? 0 : 1;
            if (!done.ok()) {
                EXPECT_THAT(done.error().message, HasSubstr("rows.csv")) << text;
            }
        }
    }
    EXPECT_GT(refused, good.size());
    EXPECT_EQ(dump(), before);
}

}  // namespace
}  // namespace ledgerboard::intake
