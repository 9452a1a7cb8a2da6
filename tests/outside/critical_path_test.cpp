// Protects the critical path against published networks, through `work critical-path`. Each test
// names its source. [S]: the number stands in the source; [C]: worked out by hand from the source's
// inputs; [M]: the source's table from memory, not looked up again.
#include <gtest/gtest.h>
#include <string>
#include <utility>
#include <vector>

#include "tests/outside/worked.h"

namespace {

using ledgerboard::outside::figure;
using ledgerboard::outside::worked;
using nlohmann::json;

using Links = std::vector<std::pair<int, int>>;

// Activities "1", "2", ... of these days, each link finish to start without lag.
json network(const std::vector<double>& days, const Links& links) {
    json items = json::array();
    for (std::size_t k = 0; k < days.size(); ++k) {
        items.push_back(
            {{"id", std::to_string(k + 1)}, {"days", days[k]}, {"after", json::array()}});
    }
    for (const auto& [from, to] : links) {
        items.at(static_cast<std::size_t>(to) - 1).at("after").push_back(std::to_string(from));
    }
    return {{"items", items}};
}

// Activities "A", "B", ... with the letters of what each waits for.
json lettered(const std::vector<std::pair<double, std::string>>& activities) {
    json items = json::array();
    for (const auto& [days, after] : activities) {
        json waitsFor = json::array();
        for (const char letter : after) {
            waitsFor.push_back(std::string(1, letter));
        }
        const char id = static_cast<char>('A' + items.size());
        items.push_back({{"id", std::string(1, id)}, {"days", days}, {"after", waitsFor}});
    }
    return {{"items", items}};
}

json timed(const json& input) {
    return worked("critical-path", input.dump());
}

std::vector<double> column(const json& out, const char* key) {
    std::vector<double> values;
    for (const json& item : out.at("items")) {
        values.push_back(item.at(key).get<double>());
    }
    return values;
}

std::string critical(const json& out) {
    std::string ids;
    for (const json& item : out.at("items")) {
        if (item.at("critical").get<bool>()) {
            ids += (ids.empty() ? "" : " ") + item.at("id").get<std::string>();
        }
    }
    return ids;
}

using Row = std::vector<double>;

const Row kCarriageHouseDays{2, 2, 4, 3, 4, 1, 1, 1, 1, 1, 3, 2, 1, 1, 2, 1, 1};
const Links kCarriageHouseLinks{
    {1, 2},  {2, 3},   {3, 4},   {4, 5},   {5, 6},   {6, 7},   {6, 8},   {6, 9},   {7, 10}, {8, 10},
    {9, 10}, {10, 11}, {10, 13}, {11, 12}, {12, 15}, {13, 14}, {14, 15}, {15, 16}, {16, 17}};

// M. Vanhoucke, Integrated Project Management and Control, 2014, p. 11: the renovation of a
// carriage house, its 19 links put in one by one [S].
TEST(CriticalPathOutside, CarriageHouseLinkByLink) {
    const Row lengths{4, 8, 11, 15, 16, 17, 17, 17, 18, 18, 18, 21, 21, 23, 25, 25, 25, 26, 27};
    Links links;
    for (std::size_t k = 0; k < kCarriageHouseLinks.size(); ++k) {
        links.push_back(kCarriageHouseLinks[k]);
        EXPECT_EQ(figure(timed(network(kCarriageHouseDays, links)), "/days"), lengths[k])
            << "with " << k + 1 << " links";
    }
}

// The same: 13 and 14 (2 days) run beside 11 and 12 (5 days), so both have 3 days of float; 13's
// finish holds 14, so it has no free float [C].
TEST(CriticalPathOutside, CarriageHouseFloats) {
    const json out = timed(network(kCarriageHouseDays, kCarriageHouseLinks));
    EXPECT_EQ(column(out, "float"), (Row{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 3, 3, 0, 0, 0}));
    EXPECT_EQ(column(out, "free_float"), (Row{0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 3, 0, 0, 0}));
}

// The same book, p. 6: a cost information system of 17 activities [S].
TEST(CriticalPathOutside, CostInformationSystem) {
    const Links links{{1, 2},   {1, 3},   {2, 4},   {2, 5},   {2, 6},   {3, 7},   {3, 8},
                      {3, 9},   {3, 10},  {4, 11},  {5, 11},  {6, 11},  {7, 12},  {8, 13},
                      {9, 14},  {10, 15}, {11, 16}, {11, 17}, {12, 16}, {12, 17}, {13, 16},
                      {13, 17}, {14, 16}, {14, 17}, {15, 16}, {15, 17}};
    const json out = timed(network({1, 2, 2, 4, 3, 3, 3, 2, 1, 1, 2, 1, 1, 1, 1, 2, 1}, links));
    EXPECT_EQ(figure(out, "/days"), 11);
    EXPECT_EQ(critical(out), "1 2 4 11 16");
    EXPECT_EQ(column(out, "es"), (Row{0, 1, 1, 3, 3, 3, 3, 3, 3, 3, 7, 6, 5, 4, 4, 9, 9}));
    EXPECT_EQ(column(out, "ls"), (Row{0, 1, 3, 3, 4, 4, 5, 6, 7, 7, 7, 8, 8, 8, 8, 9, 10}));
}

const Links kMilestoneLinks{{1, 2}, {1, 3}, {1, 4},  {2, 5},  {3, 10}, {4, 6},   {5, 9},
                            {6, 7}, {7, 8}, {7, 11}, {8, 12}, {9, 12}, {10, 12}, {11, 12}};

// M. Vanhoucke, Measuring Time, 2009, p. 18: twelve activities between two milestones of no
// length. Length and ES [S], float [C]: 16 less the longest way from the start of each to the end,
// less its ES; of 3: 9 + 3 = 12, 16 - 12 - 0 = 4.
TEST(CriticalPathOutside, MilestonesOfNoLength) {
    const json out = timed(network({0, 4, 9, 1, 4, 5, 1, 7, 8, 3, 3, 0}, kMilestoneLinks));
    EXPECT_EQ(figure(out, "/days"), 16);
    EXPECT_EQ(column(out, "es"), (Row{0, 0, 0, 0, 4, 1, 6, 7, 8, 9, 7, 16}));
    EXPECT_EQ(column(out, "float"), (Row{0, 0, 4, 2, 0, 2, 2, 2, 0, 4, 6, 0}));
}

// The same with the days it really took [S].
TEST(CriticalPathOutside, MilestonesWithTheDaysItTook) {
    const json out = timed(network({0, 6, 11, 1, 4, 3, 2, 8, 8, 5, 4, 0}, kMilestoneLinks));
    EXPECT_EQ(figure(out, "/days"), 18);
}

// Open course notes, seven nodes [S]. In order A, B, C, D, E, F, G.
TEST(CriticalPathOutside, SevenNodes) {
    const json out =
        timed(lettered({{6, ""}, {2, "A"}, {2, "A"}, {3, "B"}, {4, "DF"}, {2, "C"}, {1, "E"}}));
    EXPECT_EQ(figure(out, "/days"), 16);
    EXPECT_EQ(critical(out), "A B D E G");
    EXPECT_EQ(column(out, "float"), (Row{0, 0, 1, 0, 0, 1, 0}));
}

// Hillier and Lieberman, Introduction to Operations Research, ch. 22: building a plant. Durations
// [S], links and total [M].
TEST(CriticalPathOutside, NewPlant) {
    const json out = timed(lettered({{2, ""},       // A
                                     {4, "A"},      // B
                                     {10, "B"},     // C
                                     {6, "C"},      // D
                                     {4, "C"},      // E
                                     {5, "E"},      // F
                                     {7, "D"},      // G
                                     {9, "EG"},     // H
                                     {7, "C"},      // I
                                     {8, "FI"},     // J
                                     {4, "J"},      // K
                                     {5, "J"},      // L
                                     {2, "H"},      // M
                                     {6, "KL"}}));  // N
    EXPECT_EQ(figure(out, "/days"), 44);
    EXPECT_EQ(critical(out), "A B C E F J L N");
    //                                    A  B  C  D  E  F  G  H  I  J  K  L  M  N
    EXPECT_EQ(column(out, "float"), (Row{0, 0, 0, 4, 0, 0, 4, 4, 2, 0, 1, 0, 4, 0}));
}

struct LinkCase {
    const char* kind;
    double a;
    double b;
    double lag;
    double days;
};

void PrintTo(const LinkCase& one, std::ostream* out) {
    *out << one.kind << " A" << one.a << " B" << one.b << " lag " << one.lag;
}

class LinkTable : public testing::TestWithParam<LinkCase> {};

// Tests of an academic scheduling package [S]: A and B between a start and an end of one day each,
// those finish to start, B linked to A as said.
TEST_P(LinkTable, ComesToTheLengthOfTheSource) {
    const LinkCase& one = GetParam();
    const json out =
        timed({{"items",
                {{{"id", "start"}, {"days", 1}},
                 {{"id", "A"}, {"days", one.a}, {"after", {"start"}}},
                 {{"id", "B"},
                  {"days", one.b},
                  {"after", {"start", {{"id", "A"}, {"kind", one.kind}, {"lag", one.lag}}}}},
                 {{"id", "end"}, {"days", 1}, {"after", {"A", "B"}}}}}});
    EXPECT_EQ(figure(out, "/days"), one.days);
}

INSTANTIATE_TEST_SUITE_P(CriticalPathOutside, LinkTable,
                         testing::Values(LinkCase{"FS", 3, 3, 0, 8}, LinkCase{"FS", 3, 3, 2, 10},
                                         LinkCase{"FS", 3, 3, -2, 6}, LinkCase{"FS", 5, 3, 0, 10},
                                         LinkCase{"FS", 5, 3, 2, 12}, LinkCase{"FS", 5, 3, -2, 8},
                                         LinkCase{"SS", 3, 5, 0, 7}, LinkCase{"SS", 3, 5, 2, 9},
                                         LinkCase{"SS", 5, 3, 2, 7}, LinkCase{"FF", 3, 3, 2, 7},
                                         LinkCase{"FF", 5, 3, 0, 7}, LinkCase{"FF", 5, 3, 2, 9},
                                         LinkCase{"FF", 3, 5, 2, 7}));

// NAVEDTRA 14233 p. 44 [S], the rule for cure time: ES + days = EF; EF + lag = next ES; where
// several meet, the larger EF going forward, the smaller LS going back. A wall of figures by that
// rule [C]: footing 2 days, 3 days of cure, then block 4; drain 1 day after the footing without
// cure, then backfill 2 days after block and drain.
// Forward: footing 0-2; block 2 + 3 = 5, to 9; drain 2-3; backfill max(9, 3) = 9, to 11.
// Back: backfill 9-11; block finishes by 9, starts by 5; drain finishes by 9, starts by 8; footing
// finishes by min(5 - 3, 8) = 2.
TEST(CriticalPathOutside, CureTimeStandsBetweenFinishAndStart) {
    const json out = worked("critical-path", R"({"items":[
        {"id":"footing","days":2},
        {"id":"block","days":4,"after":[{"id":"footing","lag":3}]},
        {"id":"drain","days":1,"after":["footing"]},
        {"id":"backfill","days":2,"after":["block","drain"]}]})");
    EXPECT_EQ(column(out, "es"), (Row{0, 5, 2, 9}));
    EXPECT_EQ(column(out, "ef"), (Row{2, 9, 3, 11}));
    EXPECT_EQ(column(out, "ls"), (Row{0, 5, 8, 9}));
    EXPECT_EQ(column(out, "lf"), (Row{2, 9, 9, 11}));
    EXPECT_EQ(column(out, "float"), (Row{0, 0, 6, 0}));
}

}  // namespace
