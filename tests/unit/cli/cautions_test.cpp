// Protects: on the command line, work isn't marked begun while a caution of it is open; what is
// acknowledged is written down whole and can be undone; brought marks are kept and flagged. How: a
// small house of 1936, with the commands a person would type.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/compute/caution_rules.h"
#include "core/intake/tables/embedded.h"

#include "tests/unit/cli/command_line.h"

namespace ledgerboard::cli {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::Not;
using tests::TestFolder;

class CautionsCliTest : public testing::Test {
  protected:
    TestFolder folder_{"cautions"};
    std::string book_ = folder_.file("house.book");
    CommandLine line_{book_};

    void SetUp() override {
        text({"start", "Test house", "--built", "1936", "--owner", "Wren"});
        text({"add", "space", "Space=Kitchen"});
        text({"add", "space", "Space=Hall"});
        text(
            {"add", "scope", "Space=Kitchen", "Treatment=replace", "Object=range", "Lump sum=890"});
        text({"add", "scope", "Space=Kitchen", "Treatment=repair", "Object=ceiling", "Quantity=40",
              "Unit=sq ft"});
        text({"add", "scope", "Space=Hall", "Treatment=add", "Object=shelves", "Lump sum=90"});
    }

    std::string text(const std::vector<std::string>& arguments) {
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, kDone) << answer.err;
        return answer.out;
    }

    json document(std::vector<std::string> arguments) {
        arguments.insert(arguments.begin(), "--json");
        json parsed = json::parse(text(arguments), nullptr, false);
        EXPECT_FALSE(parsed.is_discarded());
        return parsed;
    }

    std::string refused(const std::vector<std::string>& arguments) {
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, kCannotBeMet) << answer.out;
        EXPECT_EQ(answer.out, "");
        return answer.err;
    }

    // The caution of an item in the JSON of `cautions`.
    json cautionOf(const std::string& item, const std::string& about) {
        const json document = this->document({"cautions", "--as-of", "2026-04-30"});
        for (const auto& one : document["items"]) {
            for (const auto& caution : one["cautions"]) {
                if (one["name"] == item && caution["about"] == about) {
                    return caution;
                }
            }
        }
        ADD_FAILURE() << item << " has no " << about;
        return {};
    }
};

TEST_F(CautionsCliTest, WorkIsNotBegunWhileACautionIsOpen) {
    const std::string said = refused({"mark", "kitchen/range", "50", "--at", "2026-04-09"});
    EXPECT_THAT(said, HasSubstr("Kitchen/range isn't marked begun"));
    EXPECT_THAT(said, HasSubstr("ledgerboard acknowledge Kitchen/range gas --result"));
    EXPECT_THAT(said, HasSubstr("Reminder only"));
    text({"mark", "kitchen/range", "0", "--at", "2026-04-09"});  // not begun says nothing wrong
    text({"mark", "hall/shelves", "50", "--at", "2026-04-09"});  // raises none
    text({"acknowledge", "kitchen/range", "--result", "plumber booked, leak test on the day",
          "--at", "2026-04-08"});
    text({"mark", "kitchen/range", "50", "--at", "2026-04-09"});
    const json gas = cautionOf("Kitchen/range", "gas");
    EXPECT_EQ(gas["state"], "acknowledged");
    EXPECT_EQ(gas["acknowledged_by"], "Wren");
    EXPECT_EQ(gas["acknowledged_on"], "2026-04-08");
    EXPECT_EQ(gas["test_result"], "plumber booked, leak test on the day");
    EXPECT_THAT(gas["source"], HasSubstr("common practice, no source"));
}

TEST_F(CautionsCliTest, UndoOpensItAgain) {
    text({"acknowledge", "kitchen/range", "gas"});
    EXPECT_EQ(cautionOf("Kitchen/range", "gas")["state"], "acknowledged");
    EXPECT_THAT(text({"undo"}), HasSubstr("Undone: acknowledge gas"));
    EXPECT_EQ(cautionOf("Kitchen/range", "gas")["state"], "open");
    refused({"mark", "kitchen/range", "50"});
}

// A house of 1936: the ceiling's 40 sq ft are more than minor work on lead paint, and its plaster
// may hold asbestos.
TEST_F(CautionsCliTest, OneOfSeveralMustBeNamed) {
    const std::string said = refused({"acknowledge", "kitchen/ceiling"});
    EXPECT_THAT(said, HasSubstr("several open cautions"));
    EXPECT_THAT(said, HasSubstr("Kitchen/ceiling \"lead paint\""));
    text({"acknowledge", "kitchen/ceiling", "lead"});  // another of its names
    EXPECT_EQ(cautionOf("Kitchen/ceiling", "lead paint")["state"], "acknowledged");
    EXPECT_EQ(cautionOf("Kitchen/ceiling", "asbestos")["state"], "open");
    EXPECT_THAT(refused({"acknowledge", "kitchen/ceiling", "lead paint"}),
                HasSubstr("acknowledged already"));
    text({"acknowledge", "kitchen/ceiling", "lead paint", "--result", "positive, 2.1 mg"});
    EXPECT_EQ(cautionOf("Kitchen/ceiling", "lead paint")["test_result"], "positive, 2.1 mg");
    text({"acknowledge", "kitchen/ceiling"});  // one is left
    text({"mark", "kitchen/ceiling", "10"});
}

TEST_F(CautionsCliTest, AllOfOneNameAndOneByItsId) {
    text({"add", "scope", "Space=Hall", "Treatment=refinish", "Object=walls", "Lump sum=90"});
    const json done = document({"acknowledge", "lead paint", "--all", "--result", "as if lead"});
    EXPECT_EQ(done["acknowledged"].size(), 2U);  // ceiling and walls
    EXPECT_THAT(refused({"acknowledge", "lead paint", "--all"}), HasSubstr("no open caution"));
    EXPECT_THAT(refused({"acknowledge", "asbestoss", "--all"}),
                HasSubstr("did you mean \"asbestos\"?"));
    text({"add", "caution", "Item=Hall/shelves", "Caution=beehive in the wall"});
    refused({"mark", "hall/shelves", "50"});
    const std::string id = cautionOf("Hall/shelves", "beehive in the wall")["caution"];
    text({"acknowledge", id.substr(id.size() - 6), "--result", "moved by a keeper"});
    text({"mark", "hall/shelves", "50"});
    text({"acknowledge", "house", "what buyers must be told"});
    EXPECT_THAT(refused({"acknowledge", "house", "ghosts"}), HasSubstr("no caution \"ghosts\""));
}

TEST_F(CautionsCliTest, AnAcknowledgementAfterTheMarkFlagsIt) {
    text({"acknowledge", "kitchen/range", "gas", "--at", "2026-04-10"});
    EXPECT_THAT(text({"mark", "kitchen/range", "50", "--at", "2026-04-09"}), HasSubstr("Flagged"));
    const json all = document({"cautions", "--as-of", "2026-04-30"});
    ASSERT_EQ(all["marks_in_spite"].size(), 1U);
    EXPECT_EQ(all["marks_in_spite"][0]["item"], "Kitchen/range");
    EXPECT_THAT(text({"mark", "kitchen/range", "60", "--at", "2026-04-10"}),
                Not(HasSubstr("Flagged")));
}

TEST_F(CautionsCliTest, BroughtMarksAreKeptAndFlagged) {
    const std::string file = folder_.file("marks.csv");
    std::ofstream(file) << "Item,Percent,Date\nKitchen/range,0,2026-04-08\n"
                           "Kitchen/range,100,2026-04-09\nHall/shelves,100,2026-04-09\n";
    const std::string said = text({"bring", "marks", file});
    EXPECT_THAT(said, HasSubstr("1 mark says that work was begun while a caution was open"));
    EXPECT_THAT(said, HasSubstr("Kitchen/range"));
    EXPECT_EQ(document({"cautions", "--as-of", "2026-04-30"})["marks_in_spite"].size(), 1U);
    EXPECT_EQ(document({"list", "marks"})["marks"].size(), 3U);
    EXPECT_THAT(text({"bring", "marks", file}), Not(HasSubstr("while a caution")));
    EXPECT_EQ(document({"list", "marks"})["marks"].size(), 3U);
}

TEST_F(CautionsCliTest, ThePageSaysWhatIsOpenAndWhereItIsFrom) {
    const std::string page = text({"cautions"});
    EXPECT_THAT(page, HasSubstr("Kitchen/range"));
    EXPECT_THAT(page, HasSubstr("40 CFR 745.83"));
    EXPECT_THAT(page, HasSubstr("If not: "));
    EXPECT_THAT(page, HasSubstr("Reminder only. Rules change by place."));
    std::istringstream lines(page);
    for (std::string line; std::getline(lines, line);) {
        EXPECT_LE(line.size(), 80U) << line;
    }
    // As of a day before the acknowledgement it was open.
    text({"acknowledge", "kitchen/range", "gas", "--at", "2026-04-10"});
    EXPECT_EQ(document({"--as-of", "2026-04-09", "cautions"})["open"], 3);
    EXPECT_EQ(document({"--as-of", "2026-04-10", "cautions"})["open"], 2);
}

TEST_F(CautionsCliTest, OfOneItem) {
    const json one = document({"cautions", "kitchen/range"});
    ASSERT_EQ(one["items"].size(), 1U);
    EXPECT_EQ(one["items"][0]["cautions"].size(), 1U);
    EXPECT_EQ(one["house"].size(), 0U);
    EXPECT_THAT(text({"cautions", "hall/shelves"}), HasSubstr("raise no caution for Hall/shelves"));
    EXPECT_EQ(line_({"cautions", "attic/ghosts"}).status, kCannotBeMet);
}

// Two items of one object: the command names the one that is meant.
TEST_F(CautionsCliTest, TheCommandTellsNamesakesApart) {
    text({"add", "scope", "Space=Kitchen", "Treatment=refinish", "Object=ceiling", "Quantity=40",
          "Unit=sq ft"});
    const std::string said = refused({"mark", "kitchen/repair ceiling", "50"});
    EXPECT_THAT(said, HasSubstr("acknowledge \"Kitchen/repair ceiling\" \"lead paint\""));
}

TEST(CautionsOfAnEmptyJob, SayWhatToDoNext) {
    TestFolder folder("no-cautions");
    CommandLine line(folder.file("house.book"));
    line({"start", "Test house"});
    const Answer answer = line({"cautions"});
    EXPECT_EQ(answer.status, kDone);
    EXPECT_THAT(answer.out, HasSubstr("no cautions"));
    EXPECT_THAT(answer.out, HasSubstr("ledgerboard read"));
}

// What the notes' reader calls a caution, the rules know too.
TEST(CautionNames, OfTheNotesAreThoseOfTheRules) {
    std::istringstream table{std::string(intake::embeddedTable("cautions"))};
    std::size_t tried = 0;
    for (std::string row; std::getline(table, row);) {
        if (row.empty() || row[0] == '#') {
            continue;
        }
        const std::size_t first = row.find('\t');
        const std::string about = row.substr(first + 1, row.find('\t', first + 1) - first - 1);
        EXPECT_NE(compute::cautionNamed(about), nullptr) << about;
        ++tried;
    }
    EXPECT_GT(tried, 8U);
}

}  // namespace
}  // namespace ledgerboard::cli
