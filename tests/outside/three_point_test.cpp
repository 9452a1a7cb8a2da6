// Protects three-point estimates (PERT) against published examples, through `work three-point` and
// `work critical-path` together, as the sources do it: expected days, then the critical path, then
// the variances along it. [S]: stands in the source; [C]: worked out from its inputs, exactly.
#include <gtest/gtest.h>
#include <string>
#include <vector>

#include "tests/outside/worked.h"

namespace {

using ledgerboard::outside::asPrinted;
using ledgerboard::outside::expectExact;
using ledgerboard::outside::figure;
using ledgerboard::outside::worked;
using nlohmann::json;

struct Activity {
    const char* id;
    double low;
    double likely;
    double high;
    std::vector<std::string> after;
};

json threePoint(const std::vector<Activity>& activities, const std::string& only = {},
                double by = 0) {
    json items = json::array();
    for (const Activity& one : activities) {
        if (only.empty() || only.find(one.id) != std::string::npos) {
            items.push_back({{"low", one.low}, {"likely", one.likely}, {"high", one.high}});
        }
    }
    return worked("three-point", json{{"items", items}, {"by", by}}.dump());
}

json timed(const std::vector<Activity>& activities) {
    const json expected = threePoint(activities);
    json items = json::array();
    for (std::size_t k = 0; k < activities.size(); ++k) {
        items.push_back({{"id", activities[k].id},
                         {"days", expected.at("items").at(k).at("expected")},
                         {"after", activities[k].after}});
    }
    return worked("critical-path", json{{"items", items}}.dump());
}

std::vector<double> column(const json& items, const char* key) {
    std::vector<double> values;
    for (const json& item : items) {
        values.push_back(item.at(key).get<double>());
    }
    return values;
}

std::string critical(const json& out) {
    std::string ids;
    for (const json& item : out.at("items")) {
        ids += item.at("critical").get<bool>() ? item.at("id").get<std::string>() : "";
    }
    return ids;
}

using Row = std::vector<double>;

// Porta-Vac: An Introduction to Management Science, ch. 9, pp. 383-387 [S].
const std::vector<Activity> kPortaVac{{"A", 4, 5, 12, {}},       {"B", 1, 1.5, 5, {}},
                                      {"C", 2, 3, 4, {"A"}},     {"D", 3, 4, 11, {"A"}},
                                      {"E", 2, 3, 4, {"A"}},     {"F", 1.5, 2, 2.5, {"C"}},
                                      {"G", 1.5, 3, 4.5, {"D"}}, {"H", 2.5, 3.5, 7.5, {"B", "E"}},
                                      {"I", 1.5, 2, 2.5, {"H"}}, {"J", 1, 2, 3, {"F", "G", "I"}}};

TEST(ThreePointOutside, PortaVacExpectedWeeksAndPath) {
    EXPECT_EQ(column(threePoint(kPortaVac).at("items"), "expected"),
              (Row{6, 2, 3, 5, 3, 2, 3, 4, 2, 2}));
    const json out = timed(kPortaVac);
    EXPECT_EQ(figure(out, "/days"), 17);
    EXPECT_EQ(critical(out), "AEHIJ");
    EXPECT_EQ(column(out.at("items"), "float"), (Row{0, 7, 4, 1, 0, 4, 1, 0, 0, 0}));
}

// Along A E H I J: (64 + 4 + 25 + 1 + 4) / 36 = 98/36.
TEST(ThreePointOutside, PortaVacWithinTwentyWeeks) {
    const json out = threePoint(kPortaVac, "AEHIJ", 20);
    expectExact(out, "/sum/expected", 17);
    EXPECT_EQ(asPrinted(figure(out, "/sum/variance"), 4), "2.7222");
    expectExact(out, "/sum/variance", 98.0 / 36.0);
    EXPECT_EQ(asPrinted(figure(out, "/z"), 2), "1.82");
    EXPECT_EQ(asPrinted(figure(out, "/chance"), 4), "0.9655");
}

// M. Vanhoucke, Integrated Project Management and Control, 2014: six activities [C].
const std::vector<Activity> kSixActivities{
    {"A", 2, 5, 8, {}},    {"B", 1, 2, 9, {"A"}},      {"C", .25, .5, 3.75, {"A"}},
    {"D", 1, 1, 7, {"B"}}, {"E", 1, 2, 9, {"B", "C"}}, {"F", 1, 3, 11, {"D", "E"}}};

// Means 5 3 1 2 3 4. A B E F: 15; variance (36 + 64 + 64 + 100) / 36 = 264/36. z(18) = 3 / 2.70801
// = 1.10783; the normal distribution there is .86603.
TEST(ThreePointOutside, SixActivities) {
    EXPECT_EQ(column(threePoint(kSixActivities).at("items"), "expected"), (Row{5, 3, 1, 2, 3, 4}));
    const json path = timed(kSixActivities);
    EXPECT_EQ(figure(path, "/days"), 15);
    EXPECT_EQ(critical(path), "ABEF");
    const json out = threePoint(kSixActivities, "ABEF", 18);
    expectExact(out, "/sum/expected", 15);
    expectExact(out, "/sum/variance", 264.0 / 36.0);
    EXPECT_EQ(asPrinted(figure(out, "/sum/variance"), 4), "7.3333");
    EXPECT_EQ(asPrinted(figure(out, "/chance"), 5), "0.86603");
}

// A list alone is enough; then there is no limit, and so no chance.
TEST(ThreePointOutside, AListAlone) {
    const json out = worked("three-point", R"([{"low":4,"likely":5,"high":12}])");
    expectExact(out, "/items/0/expected", 6);
    expectExact(out, "/items/0/deviation", 8.0 / 6.0);
    EXPECT_TRUE(out.at("z").is_null());
    EXPECT_TRUE(out.at("chance").is_null());
}

}  // namespace
