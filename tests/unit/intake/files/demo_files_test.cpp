// Protects: every CSV file of the demo house comes in as it stands, and adds nothing a second time.
// Rows are counted here by their line ends; no cell of the demo files holds a line break. Nobody
// has acknowledged a caution here, so the marks come with one remark that says so.
#include <fstream>
#include <sstream>

#include "tests/unit/intake/files/bring_house.h"

namespace ledgerboard::intake {
namespace {

class DemoFilesTest : public BringHouse {};

TEST_F(DemoFilesTest, ComeInWholeAndOnlyOnce) {
    for (const int round : {1, 2}) {
        for (const auto* kind : {"crews", "prices", "contracts", "lender-lines", "scope", "changes",
                                 "spend", "marks", "draws", "draw-lines", "punch"}) {
            SCOPED_TRACE(std::string(kind) + ", round " + std::to_string(round));
            const std::string path = std::string(DEMO_FOLDER) + "/" + kind + ".csv";
            std::ifstream in(path, std::ios::binary);
            std::size_t rows = 0;
            for (std::string line; std::getline(in, line);) {
                ++rows;
            }
            ASSERT_GT(rows, 1U) << path;
            const auto done = bringFile(*book_, job_, kind, path, {}, now_());
            ASSERT_TRUE(done.ok()) << done.error().message;
            EXPECT_EQ(round == 1 ? done.value().added : done.value().unchanged, rows - 1);
            const bool isFirstMarks = round == 1 && std::string(kind) == "marks";
            EXPECT_EQ(done.value().remarks.size(), isFirstMarks ? 1U : 0U);
            if (isFirstMarks) {
                EXPECT_NE(done.value().remarks[0].find("while a caution was open"),
                          std::string::npos);
            }
        }
    }
}

}  // namespace
}  // namespace ledgerboard::intake
