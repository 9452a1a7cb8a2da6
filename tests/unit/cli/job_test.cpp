// Protects: the whole job can be done on the command line, from walk notes to the week's page, and
// what each verb prints as JSON is what the book holds; history, undo, as-of and known-at tell the
// same story.
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/unit/cli/command_line.h"

namespace ledgerboard::cli {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::Not;
using tests::TestFolder;

class JobTest : public testing::Test {
  protected:
    TestFolder folder_{"job"};
    std::string book_ = folder_.file("house.book");
    CommandLine line_{book_};

    std::string text(const std::vector<std::string>& arguments, const std::string& in = "") {
        const Answer answer = line_(arguments, in);
        EXPECT_EQ(answer.status, kDone) << answer.err;
        EXPECT_EQ(answer.err, "");
        return answer.out;
    }

    json document(std::vector<std::string> arguments, const std::string& in = "") {
        arguments.insert(arguments.begin(), "--json");
        const std::string out = text(arguments, in);
        json parsed = json::parse(out, nullptr, false);
        EXPECT_FALSE(parsed.is_discarded()) << out;
        return parsed;
    }

    std::string write(const std::string& name, const std::string& bytes) {
        std::ofstream(folder_.file(name), std::ios::binary) << bytes;
        return folder_.file(name);
    }
};

// Nothing that a person could take for done or known when it isn't goes by without a word.
TEST_F(JobTest, SaysWhatIsDoubledOrNotPriced) {
    text({"start", "Test house"});
    EXPECT_THAT(text({"read", write("empty.txt", ""), "--keep"}), HasSubstr("Nothing to keep."));
    EXPECT_EQ(text({"add", "crew", "Name=Tile crew"}), "Added crew Tile crew.\n");
    EXPECT_THAT(text({"add", "crew", "Name=tile crew"}),
                HasSubstr("There is another crew of that name"));
    text({"read", write("walk.txt", "Kitchen. Replace the tap.\n"), "--keep"});
    EXPECT_THAT(text({"list", "scope"}), HasSubstr("nothing prices it yet"));
    text({"set", "kitchen/faucet", "Lump sum", "240"});
    EXPECT_THAT(text({"list", "scope"}), Not(HasSubstr("nothing prices it yet")));
}

// A word corrected on one house is right on the next; taken back or forgotten, it is wrong again.
TEST_F(JobTest, ACorrectionTeachesTheNextHouse) {
    text({"start", "Test house"});
    const std::string notes = write("walk.txt", "Kitchen. Replace the tap.\n");
    text({"read", notes, "--keep"});
    const std::string before = document({"history", "kitchen/faucet"})["history"].back()["at"];
    const auto told = document({"set", "kitchen/faucet", "Object", "pot filler"});
    EXPECT_EQ(told["own_words"], json::array({"\"tap\" means pot filler"}));
    const auto words = document({"list", "words"})["own_words"];
    ASSERT_EQ(words.size(), 1U);
    EXPECT_EQ(words[0]["phrase"], "tap");
    // The next house, in the same book.
    text({"start", "Other house"});
    const std::string next = write("next.txt", "Bath. Replace the taps.\n");
    const std::vector<std::string> read = {"--job", "Other house", "read", next};
    EXPECT_EQ(document(read)["items"][0]["object"], "pot filler");
    EXPECT_EQ(document(read)["own_words"], json::array({"\"tap\" means pot filler"}));
    EXPECT_EQ(document({"--known-at", before, "read", next})["items"][0]["object"], "faucet");
    text({"--job", "Other house", "drop", "word tap"});
    EXPECT_EQ(document(read)["items"][0]["object"], "faucet");
    EXPECT_EQ(document(read)["own_words"], json::array());
}

TEST_F(JobTest, WhatIsUndoneTeachesNothing) {
    text({"start", "Test house"});
    text({"read", write("walk.txt", "Kitchen. Replace the tap.\n"), "--keep"});
    text({"set", "kitchen/faucet", "Object", "pot filler"});
    text({"undo"});
    EXPECT_EQ(document({"list", "words"})["own_words"].size(), 0U);
}

TEST_F(JobTest, ADropTeachesTheSecondTime) {
    text({"start", "Test house"});
    const std::string notes = "Kitchen. Replace the tap.\nBath. Swap that tap out.\n";
    text({"read", write("walk.txt", notes), "--keep"});
    // While another stays, one dropped is a change of plan.
    EXPECT_EQ(document({"drop", "kitchen/faucet"})["own_words"], json::array());
    EXPECT_EQ(document({"list", "words"})["own_words"].size(), 0U);
    EXPECT_EQ(document({"drop", "bath/faucet"})["own_words"], json::array());
    EXPECT_EQ(document({"list", "words"})["own_words"].size(), 1U);
    const std::string again = write("next.txt", "Hall bath. Replace the tap.\n");
    EXPECT_EQ(document({"read", again})["items"].size(), 1U);
    text({"read", again, "--keep"});
    EXPECT_EQ(document({"drop", "hall bath/faucet"})["own_words"],
              json::array({"\"tap\" means no object"}));
    EXPECT_EQ(document({"read", again})["items"].size(), 0U);
}

TEST_F(JobTest, AWordIsAddedByHandAndMustMeanOneThing) {
    text({"start", "Test house"});
    EXPECT_THAT(line_({"add", "word", "Said=tap"}).err, HasSubstr("means one thing"));
    EXPECT_THAT(line_({"add", "word", "Object=pot filler"}).err, HasSubstr("Said"));
    EXPECT_THAT(line_({"add", "word", "Said=42", "Object=pot filler"}).err,
                HasSubstr("no word in it"));
    text({"add", "word", "Said=zorb", "Object=corner seat"});
    const auto draft = document({"read", write("walk.txt", "Kitchen. Replace the zorb.\n")});
    ASSERT_EQ(draft["items"].size(), 1U);
    EXPECT_EQ(draft["items"][0]["object"], "corner seat");
    EXPECT_THAT(line_({"add", "word", "Said=zorbs", "Object=bench"}).err, HasSubstr("already"));
    EXPECT_THAT(line_({"add", "word", "Said=zork", "Nothing=no"}).err, HasSubstr("one thing"));
    EXPECT_THAT(line_({"set", "word zorb", "Space", "den"}).err, HasSubstr("mean two"));
    EXPECT_THAT(line_({"set", "word zorb", "Object", ""}).err, HasSubstr("mean none"));
}

TEST_F(JobTest, WhatWasDroppedCanBeBroughtBackAtAnyTime) {
    text({"start", "Test house"});
    text({"add", "crew", "Crew=Tile crew"});
    const std::string said = text({"drop", "Tile crew"});
    const auto at = said.find("ledgerboard set ");
    ASSERT_NE(at, std::string::npos) << said;
    const std::string id = said.substr(at + 16, 8);
    text({"add", "space", "Space=Hall"});  // undo would no longer reach it
    EXPECT_EQ(document({"list", "crews"})["crews"].size(), 0U);
    const std::string file = write("crews.csv", "Crew\nTile crew\n");
    EXPECT_THAT(text({"bring", "crews", file}), HasSubstr("set " + id + " Dropped no"));
    EXPECT_THAT(text({"set", id, "Dropped", "no"}), HasSubstr("Brought back crew Tile crew"));
    EXPECT_EQ(document({"list", "crews"})["crews"].size(), 1U);
    text({"undo"});
    EXPECT_EQ(document({"list", "crews"})["crews"].size(), 0U);
}

TEST_F(JobTest, AnItemWithoutPriceShowsADashAndNotZero) {
    text({"start", "Test house"});
    text({"add", "space", "Space=Hall"});
    text({"add", "scope", "Space=Hall", "Treatment=replace", "Object=door"});
    EXPECT_THAT(text({"list", "scope"}), HasSubstr("–"));
    text({"set", "hall/door", "Lump sum", "265k"});
    const std::string priced = text({"list", "scope"});
    EXPECT_THAT(priced, testing::Not(HasSubstr("–")));
    EXPECT_THAT(priced, HasSubstr("265,000"));
}

TEST_F(JobTest, HelpIsAVerbToo) {
    EXPECT_EQ(text({"help"}), text({"--help"}));
    EXPECT_EQ(text({"help", "mark"}), text({"mark", "--help"}));
}

TEST_F(JobTest, FromNotesToTheWeek) {
    text({"start", "Test house", "--built", "1936", "--budget", "10000", "--begin", "2026-04-06",
          "--finish", "2026-04-17", "--purchase", "100000", "--resale", "150000"});
    text({"set", "job", "Contingency", "10"});
    const std::string notes =
        write("notes.txt",
              "Kitchen\nReplace the cabinets, 12 linear feet. Keep the range.\n"
              "Hall\nRefinish the wood floor, 100 square feet.\n");
    const json draft = document({"read", notes});
    ASSERT_EQ(draft["items"].size(), 3U) << draft.dump(1);
    EXPECT_EQ(document({"list", "scope"})["items"].size(), 0U);  // reading alone keeps nothing
    EXPECT_EQ(document({"read", notes, "--keep"})["kept"]["items"], 3);
    EXPECT_EQ(document({"read", notes, "--keep"})["kept"]["items"], 0);  // twice adds nothing
    EXPECT_THAT(text({"read", notes, "--keep"}), testing::Not(HasSubstr("undo")));

    // Price book: 12 lin ft at 100 + 50; 100 sq ft at 1 + 3.
    text({"bring", "prices",
          write("prices.csv",
                "Object,Treatment,Unit,Material,Labour\n"
                "cabinets,replace,lin ft,100,50\nwood floor,refinish,sq ft,1,3\n")});
    text({"set", "kitchen/cabinets", "Planned start", "2026-04-06"});
    text({"set", "kitchen/cabinets", "Planned finish", "2026-04-10"});
    text({"set", "hall/wood floor", "Planned start", "2026-04-13"});
    text({"set", "hall/wood floor", "Planned finish", "2026-04-17"});
    const json baseline = document({"baseline", "--on", "2026-04-06"});
    EXPECT_EQ(baseline["budget"], "2200.00");      // 1,800 + 400
    EXPECT_EQ(baseline["contingency"], "220.00");  // 10 % of it
    text({"bring", "spend",
          write("spend.csv",
                "Kind,Date,Amount,Item,Payee\n"
                "receipt,2026-04-08,\"$1,000.00\",kitchen/cabinets,Cabinet shop\n"
                "receipt,2026-04-15,300,hall/wood floor,Floor supplier\n")});
    // A house of 1936: cabinets may carry lead paint, and finishing a floor makes fumes.
    text({"acknowledge", "lead paint", "--all", "--at", "2026-04-06"});
    text({"acknowledge", "floor finishes and strippers", "--all", "--at", "2026-04-06"});
    text({"mark", "kitchen/cabinets", "50", "--at", "2026-04-09"});
    text({"mark", "kitchen/cabinets", "100", "--at", "2026-04-14"});
    text({"mark", "hall/wood floor", "20", "--at", "2026-04-14"});

    const json week = document({"--as-of", "2026-04-10", "week"});
    const json items = document({"--as-of", "2026-04-10", "list", "scope"})["items"];
    for (const auto& item : items) {
        if (item["object"] == "cabinets") {
            EXPECT_EQ(item["figures"]["earned"], "900.00");  // half of 1,800
            EXPECT_EQ(item["figures"]["billed"], "1000.00");
            EXPECT_EQ(item["figures"]["planned"], "1800.00");  // its five days are over
        }
    }
    EXPECT_EQ(week["today"], "2026-04-10");
    EXPECT_THAT(text({"--as-of", "2026-04-17", "week"}), HasSubstr("This week"));
    EXPECT_THAT(text({"verify"}), HasSubstr("all of it holds"));
    const std::string page = folder_.file("week.html");
    text({"--as-of", "2026-04-17", "give", "week", "html", page});
    EXPECT_GT(std::filesystem::file_size(page), 4000U);
}

TEST_F(JobTest, SetUndoRedoAndHistoryTellOneStory) {
    text({"start", "Test house"});
    text({"add", "space", "Space=Kitchen"});
    text({"add", "scope", "Space=Kitchen", "Treatment=replace", "Object=sink", "Lump sum=300"});
    EXPECT_THAT(text({"set", "kitchen/sink", "Lump sum", "350"}), HasSubstr("was 300.00"));
    EXPECT_THAT(text({"undo"}), HasSubstr("Undone: set"));
    EXPECT_EQ(document({"list", "scope"})["items"][0]["lump_sum"], "300.00");
    text({"redo"});
    EXPECT_EQ(document({"list", "scope"})["items"][0]["lump_sum"], "350.00");
    const json history = document({"history", "kitchen/sink"})["history"];
    std::vector<std::string> sums;
    for (const auto& entry : history) {
        if (entry["field"] == "lump_sum") {
            sums.push_back(entry["value"].get<std::string>());
        }
    }
    EXPECT_THAT(sums, testing::ElementsAre("300.00", "350.00", "300.00", "350.00"));
    EXPECT_EQ(history.back()["current"], true);
    text({"drop", "kitchen/sink"});
    EXPECT_EQ(document({"list", "scope"})["items"].size(), 0U);
    text({"undo"});
    EXPECT_EQ(document({"list", "scope"})["items"].size(), 1U);
}

TEST_F(JobTest, KnownAtShowsWhatTheBookKnewAndAsOfWhatWasDated) {
    text({"start", "Test house"});
    text({"add", "space", "Space=Kitchen"});
    text({"add", "scope", "Space=Kitchen", "Treatment=replace", "Object=sink", "Lump sum=300"});
    text({"mark", "kitchen/sink", "40", "--at", "2026-04-01"});
    const std::string between = document({"history", "kitchen/sink"})["history"].back()["at"];
    text({"mark", "kitchen/sink", "90", "--at", "2026-04-03"});
    auto shown = [&](const std::vector<std::string>& globals) {
        auto arguments = globals;
        arguments.insert(arguments.end(), {"list", "scope"});
        return document(arguments)["items"][0]["figures"]["shown"].get<double>();
    };
    EXPECT_EQ(shown({}), 90);
    EXPECT_EQ(shown({"--as-of", "2026-04-02"}), 40);
    EXPECT_EQ(shown({"--as-of", "2026-03-31"}), 0);
    // The item was known at its last entry's instant; neither mark was made yet.
    EXPECT_EQ(shown({"--known-at", between}), 0);
}

TEST_F(JobTest, CsvGivenOutComesBackUnchanged) {
    text({"start", "Test house"});
    text({"bring", "crews", write("crews.csv", "Crew,Trade\nTile crew,tile\n")});
    text({"bring", "scope",
          write("scope.csv",
                "Space,Treatment,Object,Quantity,Unit,Crew,Lump sum\n"
                "Kitchen,replace,sink,1,each,Tile crew,300\n"
                "Hall,refinish,\"wood floor, oak\",,,,\n")});
    const std::string given = folder_.file("given.csv");
    text({"give", "scope", "csv", given});
    const json back = document({"bring", "scope", given});
    EXPECT_EQ(back["added"], 0) << back.dump(1);
    EXPECT_EQ(back["changed"], 0) << back.dump(1);
    EXPECT_EQ(back["unchanged"], 2);
}

TEST_F(JobTest, BackupAndRestore) {
    text({"start", "Test house"});
    text({"add", "space", "Space=Kitchen"});
    const std::string copy = folder_.file("copy.book");
    text({"backup", copy});
    text({"add", "space", "Space=Hall"});
    EXPECT_THAT(text({"restore", copy, "--replace"}), HasSubstr("is now"));
    EXPECT_EQ(document({"list", "spaces"})["spaces"].size(), 1U);
    EXPECT_THAT(text({"verify"}), HasSubstr("all of it holds"));
}

TEST_F(JobTest, SeveralJobsInOneBook) {
    text({"start", "First house"});
    text({"start", "Second house"});
    const Answer unsaid = line_({"week"});
    EXPECT_EQ(unsaid.status, kCannotBeMet);
    EXPECT_THAT(unsaid.err, HasSubstr("--job \"Second house\""));
    text({"--job", "second house", "add", "space", "Space=Kitchen"});
    EXPECT_EQ(document({"--job", "Second house", "list", "spaces"})["spaces"].size(), 1U);
    EXPECT_EQ(document({"--job", "First house", "list", "spaces"})["spaces"].size(), 0U);
}

TEST_F(JobTest, WhatIsTheWholeBooksIsListedWhicheverJob) {
    text({"start", "One"});
    text({"add", "crew", "Name=Tile crew"});
    text({"start", "Two"});
    EXPECT_EQ(document({"list", "jobs"})["jobs"].size(), 2U);
    EXPECT_EQ(document({"list", "crews"})["crews"].size(), 1U);
    EXPECT_NE(line_({"list", "spaces"}).status, kDone);
}

TEST_F(JobTest, ASpaceWithWorkInItIsNotDropped) {
    text({"start", "One"});
    text({"add", "space", "Name=Kitchen"});
    text({"add", "item", "Space=Kitchen", "Object=cabinets", "Treatment=replace"});
    const Answer refused = line_({"drop", "kitchen"});
    EXPECT_EQ(refused.status, kCannotBeMet);
    EXPECT_THAT(refused.err, HasSubstr("1 scope item"));
    text({"drop", "kitchen/cabinets"});
    text({"drop", "kitchen"});
}

TEST_F(JobTest, GivingFollowsALinkAndWritesIntoADevice) {
    text({"start", "One"});
    const std::string real = write("real.csv", "old");
    const std::string link = folder_.file("link.csv");
    std::filesystem::create_symlink(real, link);
    text({"give", "scope", "csv", link});
    EXPECT_TRUE(std::filesystem::is_symlink(link));
    EXPECT_GT(std::filesystem::file_size(real), 3U);
    const std::string device = folder_.file("device");
    std::filesystem::create_symlink("/dev/null", device);
    text({"give", "scope", "csv", device});
    EXPECT_TRUE(std::filesystem::is_character_file(device));
}

TEST_F(JobTest, EveryVerbHelpsWithAnExample) {
    for (const auto* verb :
         {"start", "read", "bring", "set", "add", "drop", "undo", "redo", "list", "mark",
          "baseline", "week", "deal", "history", "give", "verify", "backup", "restore"}) {
        EXPECT_THAT(text({verb, "--help"}), HasSubstr("Example")) << verb;
    }
    EXPECT_THAT(text({"work", "earned-value", "--help"}), HasSubstr("bac"));
    EXPECT_THAT(text({"work", "--help"}), HasSubstr("take-off"));
}

TEST_F(JobTest, WorkIsAWordLikeAnyOtherWhereItIsNoVerb) {
    text({"start", "work"});
    EXPECT_THAT(text({"set", "job", "Address", "work"}), HasSubstr("Address: work"));
}

TEST_F(JobTest, WorkNeedsNoBook) {
    const json out =
        document({"work", "earned-value"}, R"({"bac":4000,"pv":3000,"ev":2500,"ac":2800})");
    EXPECT_EQ(out["cv"], -300);
    EXPECT_FALSE(std::filesystem::exists(book_));
}

}  // namespace
}  // namespace ledgerboard::cli
