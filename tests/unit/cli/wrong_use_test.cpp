// Protects: every wrong turn on the command line gets a message that names the place and the mend,
// the right exit status, nothing on standard output, and a book left byte for byte as it was.
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/cli/command_line.h"

namespace ledgerboard::cli {
namespace {

using testing::HasSubstr;
using tests::TestFolder;

std::string bytesOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::stringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

struct Wrong {
    std::vector<std::string> arguments;
    int status;
    const char* says;
    std::string in = "";
};

class WrongUseTest : public testing::Test {
  protected:
    TestFolder folder_{"wrong-use"};
    std::string book_ = folder_.file("house.book");
    CommandLine line_{book_};

    void SetUp() override {
        ok({"start", "Test house", "--built", "1936", "--budget", "100000"});
        ok({"add", "space", "Space=Kitchen"});
        ok({"add", "space", "Space=Hall"});
        ok({"add", "crew", "Crew=Tile crew", "Trade=tile"});
        ok({"add", "scope", "Space=Kitchen", "Treatment=replace", "Object=cabinets",
            "Lump sum=4200"});
        ok({"add", "scope", "Space=Kitchen", "Treatment=keep", "Object=window"});
        ok({"add", "scope", "Space=Hall", "Treatment=repair", "Object=stairs",
            "Measured by=weighted steps", "Steps=treads 60; rail 40"});
        ok({"add", "scope", "Space=Hall", "Treatment=add", "Object=outlets", "Quantity=6",
            "Measured by=counted units"});
    }

    void ok(const std::vector<std::string>& arguments) {
        const Answer answer = line_(arguments);
        ASSERT_EQ(answer.status, kDone) << answer.err;
    }

    std::string write(const std::string& name, const std::string& bytes) {
        std::ofstream(folder_.file(name), std::ios::binary) << bytes;
        return folder_.file(name);
    }

    void refuses(const std::vector<Wrong>& cases) {
        // A first opening may tidy the write-ahead log; from here on nothing may change.
        line_({"list", "scope"});
        const std::string before = bytesOf(book_);
        for (const auto& one : cases) {
            std::string said;
            for (const auto& argument : one.arguments) {
                said += " " + argument;
            }
            const Answer answer = line_(one.arguments, one.in);
            EXPECT_EQ(answer.status, one.status) << said << "\n" << answer.err;
            EXPECT_THAT(answer.err, HasSubstr(one.says)) << said;
            EXPECT_EQ(answer.out, "") << said;
            EXPECT_TRUE(bytesOf(book_) == before) << said << ": the book was changed";
        }
    }
};

TEST_F(WrongUseTest, SlipsThatHaveANearMend) {
    refuses({
        {{"set", "kitchen/cabinets", "Lum sum", "3"}, kWrongUse, "did you mean \"Lump sum\"?"},
        {{"week", "--keep=3"}, kWrongUse, "--keep"},
        {{"plan", "--keep", "--link"}, kWrongUse, "one at a time"},
        {{"plan", "--keep"}, kCannotBeMet, "no dates to keep"},
        {{"plan", "--link", "--as-of", "2026-05-01"}, kWrongUse, "--as-of"},
        {{"add", "link", "From=kitchen/cabinets", "To=kitchen/cabinets"},
         kCannotBeMet,
         "does not wait for itself"},
        {{"add", "link", "From=kitchen/cabinets"}, kCannotBeMet, "To is missing"},
        {{"--job", "Elsewhere", "week"}, kCannotBeMet, "ledgerboard start NAME"},
        {{"set", "job", "Time zone", "Nowhere/Atall"}, kCannotBeMet, "Time zone"},
        {{"set", "kitchen/cabinets", "Dropped", "yes"}, kWrongUse, "ledgerboard drop RECORD"},
        {{"set", "kitchen/cabinets", "Dropped", "no"}, kCannotBeMet, "nothing that was dropped"},
        {{"set", "00000000", "Dropped", "no"}, kCannotBeMet, "nothing that was dropped"},
        {{"backup", folder_.file("no/such/folder/b.book")}, kCannotBeMet, "there is no folder"},
    });
}

TEST_F(WrongUseTest, VerbsAndOptions) {
    refuses({
        {{"wek"}, kWrongUse, "did you mean 'week'"},
        {{"frobnicate"}, kWrongUse, "there is no verb \"frobnicate\""},
        {{"--jsn", "week"}, kWrongUse, "--help"},
        {{"week", "--bok", "x"}, kWrongUse, "there is no option \"--bok\" here"},
        {{"mark", "kitchen", "cabinets", "50"}, kWrongUse, "\"50\" is one word too many"},
        {{"--json"}, kWrongUse, "say a VERB, such as 'ledgerboard week'"},
        {{"mark"}, kWrongUse, "ITEM is required"},
        {{"set", "kitchen/cabinets"}, kWrongUse, "FIELD is required"},
        {{"bring", "spend"}, kWrongUse, "FILE is required"},
        {{"list"}, kWrongUse, "KIND is required"},
        {{"list", "gadgets"}, kWrongUse, "there is no kind \"gadgets\""},
        {{"add", "gadget", "Name=x"}, kWrongUse, "there is no kind \"gadget\""},
        {{"week", "--as-of", "yesterday"}, kWrongUse, "--as-of: \"yesterday\" is not a date"},
        {{"week", "--as-of", "5/6/2026"}, kWrongUse, "two different days"},
        {{"week", "--known-at", "2026-05-01"}, kWrongUse, "--known-at"},
        {{"week", "--job", "Other house"}, kCannotBeMet, "--job"},
        {{"week", "extra"}, kWrongUse, "--help"},
    });
}

TEST_F(WrongUseTest, Edits) {
    refuses({
        {{"set", "kitchen/cabinets", "percent", "50"}, kWrongUse, "mark"},
        {{"set", "kitchen/cabinets", "Colour of money", "5"}, kWrongUse, "has no field"},
        {{"set", "kitchen/cabinets", "Quantity", "lots"}, kWrongUse, "Quantity: \"lots\""},
        {{"set", "kitchen/cabinets", "Quantity", "1.2345"}, kWrongUse, "more than 3 decimals"},
        {{"set", "kitchen/cabinets", "Lump sum", "12,34"}, kWrongUse, "comma"},
        {{"set", "kitchen/cabinets", "Lump sum", "-5"}, kWrongUse, "Lump sum"},
        {{"set", "kitchen/cabinets", "Treatment", "smash"}, kWrongUse, "keep, inspect, clean"},
        {{"set", "kitchen/cabinets", "Crew", "No such crew"}, kCannotBeMet, "Crew:"},
        {{"set", "kitchen/cabinets", "Planned start", "2026-02-30"}, kWrongUse, "Planned start"},
        {{"set", "kitchen/cabinets", "Waste", "250"}, kWrongUse, "Waste"},
        {{"set", "kitchen/cupboards", "Note", "x"}, kCannotBeMet, "kitchen/cupboards"},
        {{"set", "job", "Built", "nineteen"}, kWrongUse, "Built"},
        {{"set", "job", "Built", "19588"}, kWrongUse, "Built: \"19588\" is not a year"},
        {{"set", "job", "Built", "0"}, kWrongUse, "four digits"},
        {{"set", "job", "Work week", "Funday"}, kWrongUse, "not a work week"},
        {{"set", "job", "Holding costs", "taxes"}, kWrongUse, "a name and a figure"},
        {{"add", "crew"}, kWrongUse, "required"},
        {{"add", "crew", "Tile crew"}, kWrongUse, "is not FIELD=VALUE"},
        {{"add", "crew", "Hat size=7"}, kWrongUse, "has no field \"Hat size\". It has: Crew"},
        {{"add", "crew", "Crew="}, kWrongUse, "at least one"},
        {{"add", "job", "Job=Another"}, kWrongUse, "ledgerboard start"},
        {{"drop", "attic/ghosts"}, kCannotBeMet, "attic/ghosts"},
        {{"start", "Test house"}, kCannotBeMet, "already a job"},
        {{"start", ""}, kWrongUse, "NAME"},
        {{"start", "B", "--budget", "a lot"}, kWrongUse, "--budget: \"a lot\""},
        {{"start", "B", "--built", "-3"}, kWrongUse, "--built"},
        {{"start", "B", "--built", "193"}, kWrongUse, "--built: \"193\" is not a year"},
        {{"redo"}, kCannotBeMet, "nothing to redo"},
    });
}

// As of a row of a file: what is entered whole must go together.
TEST_F(WrongUseTest, RecordsThatContradictThemselves) {
    refuses({
        {{"add", "spend", "Amount=5"}, kWrongUse, "Kind is missing: invoice, payment"},
        {{"add", "spend", "Kind=receipt", "Amount=5"}, kWrongUse, "Date is missing: day on"},
        {{"add", "spend", "Kind=invoice", "Date=2026-05-01"}, kWrongUse, "Amount: is empty"},
        {{"add", "spend", "Kind=receipt", "Date=2026-05-01", "Amount=5", "Tax=6"},
         kWrongUse,
         "Amount: 5.00 is less than \"Tax\" (6.00)"},
        {{"add", "contract", "Contract=Tile", "Sum=5000", "Deposit=9000"},
         kWrongUse,
         "Sum: 5000.00 is less than \"Deposit\" (9000.00)"},
        {{"add", "punch", "What=gap", "Found=2026-05-08", "Due=2026-05-01"},
         kWrongUse,
         "Due: 2026-05-01 is before \"Found\" (2026-05-08)"},
        {{"add", "scope", "Space=Hall", "Treatment=keep", "Object=door", "Lump sum=5"},
         kWrongUse,
         "Lump sum: what is kept has no cost"},
    });
}

// A field alone may be ahead of the other; it is kept, and told once.
TEST_F(WrongUseTest, FieldsThatDisagreeAreKeptAndTold) {
    ok({"set", "kitchen/cabinets", "Planned finish", "2026-05-05"});
    const Answer ahead = line_({"set", "kitchen/cabinets", "Planned start", "2026-05-11"});
    EXPECT_EQ(ahead.status, kDone) << ahead.err;
    EXPECT_THAT(ahead.out, HasSubstr("Planned finish: 2026-05-05 is before \"Planned start\" "
                                     "(2026-05-11): mend one of the two\n"));
    const Answer other = line_({"set", "kitchen/cabinets", "Note", "ordered"});
    EXPECT_EQ(other.out, "Kitchen/cabinets, Note: ordered\n");
    const Answer mended = line_({"set", "kitchen/cabinets", "Planned finish", "2026-05-15"});
    EXPECT_EQ(mended.out, "Kitchen/cabinets, Planned finish: 2026-05-15 (was 2026-05-05)\n");
}

TEST_F(WrongUseTest, Marks) {
    refuses({
        {{"add", "mark", "Item=kitchen/cabinets", "Percent=50", "Date=2026-05-01"},
         kWrongUse,
         "'ledgerboard mark ITEM PERCENT'"},
        {{"mark", "kitchen/cabinets"}, kWrongUse, "say one of"},
        {{"mark", "kitchen/cabinets", "50", "--count", "3"}, kWrongUse, "say one of"},
        {{"mark", "kitchen/cabinets", "150"}, kWrongUse, "0 to 100"},
        {{"mark", "kitchen/cabinets", "half"}, kWrongUse, "PERCENT: \"half\""},
        {{"mark", "kitchen/cabinets", "50", "--at", "soon"}, kWrongUse, "--at: \"soon\""},
        {{"mark", "kitchen/window", "50"}, kCannotBeMet, "change its treatment"},
        {{"mark", "hall/stairs", "--step", "paint"}, kWrongUse, "treads"},
        {{"mark", "hall/outlets", "--count", "9"}, kWrongUse, "6"},
        {{"mark", "hall/outlets", "--count", "-1"}, kWrongUse, "0 to 6"},
        {{"mark", "pantry/shelves", "50"}, kCannotBeMet, "pantry/shelves"},
        {{"mark", "kitchen/cabinets", "50"}, kCannotBeMet, "acknowledge Kitchen/cabinets"},
    });
}

// It may be meant, so it is kept; a slip of the year must not pass unseen.
TEST_F(WrongUseTest, AMarkOfADayToComeIsKeptAndTold) {
    ok({"acknowledge", "kitchen/cabinets"});
    const Answer ahead = line_({"mark", "kitchen/cabinets", "50", "--at", "2062-04-09"});
    EXPECT_EQ(ahead.status, kDone) << ahead.err;
    EXPECT_THAT(ahead.out, HasSubstr("50 % on 2062-04-09.\nThat day is still to come"));
    EXPECT_THAT(line_({"mark", "kitchen/cabinets", "20"}).out,
                testing::Not(HasSubstr("still to come")));
}

TEST_F(WrongUseTest, Cautions) {
    refuses({
        {{"acknowledge"}, kWrongUse, "CAUTION is required"},
        {{"acknowledge", "pantry/shelves", "gas"}, kCannotBeMet, "CAUTION: "},
        {{"acknowledge", "kitchen/cabinets", "gas"}, kCannotBeMet, "no caution \"gas\"; it has"},
        {{"acknowledge", "kitchen/cabinets", "--at", "soon"}, kWrongUse, "--at: \"soon\""},
        {{"acknowledge", "kitchen/cabinets", "--known-at", "2026-05-01T00:00Z"},
         kWrongUse,
         "--known-at looks back"},
        {{"acknowledge", "lead paint", "kitchen/cabinets", "--all"}, kWrongUse, "with --all"},
        {{"acknowledge", "kitchen/cabinets", "--result", "  "}, kWrongUse, "--result is blank"},
        {{"acknowledge", "gas", "--all"}, kCannotBeMet, "no open caution is called \"gas\""},
        {{"acknowledge", "house", "gas"}, kCannotBeMet, "the house has no caution \"gas\""},
        {{"cautions", "--as-of", "soon"}, kWrongUse, "--as-of: \"soon\""},
    });
}

TEST_F(WrongUseTest, FilesThatAreNot) {
    const std::string binary = write("binary.txt", std::string("\x89PNG\r\n\0\0\1\2\3", 11));
    const std::string wrong =
        write("wrong.csv", "Kind,Date,Amount\nreceipt,soon,12\nreceipt,2026-05-01,-4.555\n");
    const std::string noHead = write("none.csv", "");
    const std::string notes = write("notes.txt", "Kitchen. New sink.");
    const std::string sound = folder_.file("sound.book");
    ok({"backup", sound});
    refuses({
        {{"read", folder_.file("missing.txt")}, kCannotBeMet, "missing.txt"},
        {{"read", binary}, kCannotBeMet, "binary.txt"},
        {{"bring", "spend", folder_.file("missing.csv")}, kCannotBeMet, "missing.csv"},
        {{"bring", "spend", noHead}, kCannotBeMet, "none.csv"},
        {{"bring", "spend", wrong}, kCannotBeMet, "wrong.csv:2: column \"Date\""},
        {{"bring", "spend", wrong}, kCannotBeMet, "wrong.csv:3: column \"Amount\""},
        {{"bring", "gadgets", wrong}, kWrongUse, "gadgets"},
        {{"give", "week", "txt", folder_.file("w.txt")}, kWrongUse, "html, json, pdf or xlsx"},
        {{"give", "scope", "html", folder_.file("s.html")}, kWrongUse, "csv, json or xlsx"},
        {{"give", "schedule", "csv", folder_.file("s.csv")}, kWrongUse, "given as ics"},
        {{"give", "scope", "csv", folder_.file("s.csv"), "--crew", "Tile"}, kWrongUse, "--crew"},
        {{"give", "schedule", "ics", folder_.file("s.ics"), "--crew", "nobody"},
         kCannotBeMet,
         "--crew"},
        {{"give", "weather", "csv", folder_.file("s.csv")}, kWrongUse, "WHAT"},
        {{"give", "scope", "csv", folder_.file("no/such/folder.csv")}, kCannotBeMet, "written"},
        {{"give", "scope", "csv", book_}, kCannotBeMet, "database"},
        {{"backup", book_}, kCannotBeMet, "already something"},
        {{"restore", sound}, kCannotBeMet, "--replace"},
        {{"restore", notes, "--replace"}, kDamaged, "not a Ledgerboard book"},
        {{"restore", folder_.file("missing.book"), "--replace"}, kCannotBeMet, "missing.book"},
        {{"read", notes, "--keep", "--as-of", "2026-05-01"}, kWrongUse, "--as-of looks back"},
        {{"set", "job", "Built", "1930", "--known-at", "2026-05-01T00:00Z"},
         kWrongUse,
         "--known-at looks back"},
    });
    EXPECT_FALSE(std::filesystem::exists(folder_.file("w.pdf")));
}

TEST_F(WrongUseTest, Work) {
    refuses({
        {{"work", "alchemy"}, kWrongUse, "alchemy", "{}"},
        {{"work", "earned-value"}, kWrongUse, "not JSON", "{bac:1}"},
        {{"work", "earned-value"}, kWrongUse, "not JSON", ""},
        {{"work", "earned-value"}, kWrongUse, "too large", R"({"bac":1e400})"},
        {{"work", "earned-value"}, kWrongUse, "bad", R"({"bad":1})"},
        {{"work", "take-off"}, kWrongUse, "what", R"({})"},
    });
}

TEST(WrongUseWithoutABook, SaysHowToBegin) {
    TestFolder folder("no-book");
    CommandLine line(folder.file("none.book"));
    for (const auto& verb : std::vector<std::vector<std::string>>{{"week"},
                                                                  {"list", "scope"},
                                                                  {"undo"},
                                                                  {"verify"},
                                                                  {"deal"},
                                                                  {"mark", "a/b", "5"},
                                                                  {"cautions"},
                                                                  {"acknowledge", "a/b"},
                                                                  {"punch"},
                                                                  {"close"},
                                                                  {"taught"}}) {
        const Answer answer = line(verb);
        EXPECT_EQ(answer.status, kDamaged) << verb[0];
        EXPECT_THAT(answer.err, HasSubstr("ledgerboard start NAME")) << verb[0];
        EXPECT_FALSE(std::filesystem::exists(folder.file("none.book"))) << verb[0];
    }
    const Answer bare = line({});
    EXPECT_EQ(bare.status, kDone);
    EXPECT_THAT(bare.out, HasSubstr("To begin"));
    EXPECT_THAT(bare.out, HasSubstr("[OPTIONS] VERB\n"));
    const Answer version = line({"--version"});
    EXPECT_EQ(version.status, kDone);
    EXPECT_THAT(version.out, testing::StartsWith("ledgerboard 0."));
}

}  // namespace
}  // namespace ledgerboard::cli
