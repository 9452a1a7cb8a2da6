// Protects how `work` reads its input and prints its answers: strict keys, messages that name the
// key, ten digits, no NaN or infinity, help that lists every key. The arithmetic is checked in
// tests/outside and tests/unit/compute.
#include "desktop/cli/work/work.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <sstream>
#include <string>
#include <vector>

#include "core/compute/take_off.h"

namespace {

using ledgerboard::work::runWork;
using ledgerboard::work::workExample;
using ledgerboard::work::workHelp;
using ledgerboard::work::workNames;
using nlohmann::json;

struct Wrong {
    const char* name;
    const char* input;
    const char* named;  // the key (or, where there is none, the word) that the message must hold
};

void PrintTo(const Wrong& wrong, std::ostream* out) {
    *out << wrong.name << " " << wrong.input;
}

class WorkRefuses : public testing::TestWithParam<Wrong> {};

TEST_P(WorkRefuses, NamingTheKey) {
    const Wrong& wrong = GetParam();
    const auto out = runWork(wrong.name, json::parse(wrong.input));
    ASSERT_FALSE(out.ok()) << out.value().dump();
    EXPECT_EQ(out.error().code, ledgerboard::model::ErrorCode::WrongUse);
    EXPECT_NE(out.error().message.find(wrong.named), std::string::npos) << out.error().message;
}

constexpr Wrong kWrongEarnedValue[] = {
    {"earned-value", R"({})", "bac"},
    {"earned-value", R"([1,2])", "one JSON object"},
    {"earned-value", R"(null)", "one JSON object"},
    {"earned-value", R"(7)", "one JSON object"},
    {"earned-value", R"({"bac":1,"pv":1,"ev":1})", "ac is missing"},
    {"earned-value", R"({"bac":1,"pv":1,"ac":1})", "ev is missing"},
    {"earned-value", R"({"bac":1,"ev":1,"ac":1})", "pv is missing"},
    {"earned-value", R"({"bac":1,"pv":1,"ev":1,"ac":1,"cost":2})", "unknown key \"cost\""},
    {"earned-value", R"({"bac":1,"pv":1,"ev":1,"ac":1,"BAC":2})", "unknown key \"BAC\""},
    {"earned-value", R"({"bac":1,"pv":1,"ev":1,"ac":1,"":2})", "unknown key \"\""},
    {"earned-value", R"({"bac":-1,"pv":0,"ev":0,"ac":0})", "bac is -1"},
    {"earned-value", R"({"bac":1,"pv":-0.01,"ev":0,"ac":0})", "pv is -0.01"},
    {"earned-value", R"({"bac":1,"pv":0,"ev":-5,"ac":0})", "ev is -5"},
    {"earned-value", R"({"bac":1,"pv":0,"ev":0,"ac":-5})", "ac is -5"},
    {"earned-value", R"({"bac":1e13,"pv":0,"ev":0,"ac":0})", "bac is 1e+13"},
    {"earned-value", R"({"bac":1e308,"pv":0,"ev":0,"ac":0})", "bac is 1e+308"},
    {"earned-value", R"({"bac":"much","pv":0,"ev":0,"ac":0})", "bac: \"much\""},
    {"earned-value", R"({"bac":"1,5","pv":0,"ev":0,"ac":0})", "bac: \"1,5\""},
    {"earned-value", R"({"bac":"","pv":0,"ev":0,"ac":0})", "bac: \"\""},
    {"earned-value", R"({"bac":true,"pv":0,"ev":0,"ac":0})", "bac must be a number"},
    {"earned-value", R"({"bac":null,"pv":0,"ev":0,"ac":0})", "bac must be a number"},
    {"earned-value", R"({"bac":[4],"pv":0,"ev":0,"ac":0})", "bac must be a number"},
    {"earned-value", R"({"bac":4,"pv":{},"ev":0,"ac":0})", "pv must be a number"},
    {"earned-value", R"({"bac":4,"pv":5,"ev":0,"ac":0})", "pv is more than bac"},
    {"earned-value", R"({"bac":4,"pv":4,"ev":5,"ac":0})", "ev is more than bac"},
    {"earned-value", R"({"bac":4,"pv":4,"ev":4,"ac":4,"eac":null})", "eac must be a number"},
    {"earned-value", R"({"bac":4,"pv":4,"ev":4,"ac":4,"eac":-4})", "eac is -4"},
    {"earned-value", R"({"bac":4,"pv":4,"ev":4,"ac":4,"spi_t":-1})", "spi_t is -1"},
    {"earned-value", R"({"bac":4,"pv":4,"ev":4,"ac":4,"spi_t":1001})", "spi_t is 1001"},
    {"earned-value", R"({"items":[]})", "items must be a list"},
    {"earned-value", R"({"items":{}})", "items must be a list"},
    {"earned-value", R"({"items":null})", "items must be a list"},
    {"earned-value", R"({"items":[5]})", "item 1 in items"},
    {"earned-value", R"({"items":[{}]})", "item 1 in items: budget is missing"},
    {"earned-value",
     R"({"items":[{"budget":1,"planned_percent":1,"percent":1,"actual":1},
                  {"budget":1,"planned_percent":1,"percent":1}]})",
     "item 2 in items: actual is missing"},
    {"earned-value", R"({"items":[{"budget":1,"planned_percent":101,"percent":1,"actual":1}]})",
     "planned_percent is 101"},
    {"earned-value", R"({"items":[{"budget":1,"planned_percent":1,"percent":-1,"actual":1}]})",
     "percent is -1"},
    {"earned-value", R"({"items":[{"budget":-1,"planned_percent":1,"percent":1,"actual":1}]})",
     "budget is -1"},
    {"earned-value",
     R"({"items":[{"budget":1,"planned_percent":1,"percent":1,"actual":1,"done":1}]})",
     "unknown key \"done\""},
    {"earned-value",
     R"({"items":[{"budget":1,"planned_percent":1,"percent":1,"actual":1}],"bac":1})",
     "unknown key \"bac\""},
};

constexpr Wrong kWrongInterest[] = {
    {"interest", R"({})", "principal is missing"},
    {"interest",
     R"({"principal":1,"rate":1,"from":"2026-01-01","to":"2026-01-02","basis":"30/360"})",
     "basis is \"30/360\""},
    {"interest", R"({"principal":1,"rate":1,"from":"2026-01-01","to":"2026-01-02"})",
     "basis is missing"},
    {"interest", R"({"principal":1,"rate":1,"from":"2026-01-01","to":"2026-01-02","basis":365})",
     "basis must be a text"},
    {"interest",
     R"({"principal":1,"rate":1,"from":"2026-02-30","to":"2026-03-02","basis":"actual/365"})",
     "from: "},
    {"interest",
     R"({"principal":1,"rate":1,"from":"1/2/2026","to":"2026-03-02","basis":"actual/365"})",
     "from: "},
    {"interest",
     R"({"principal":1,"rate":1,"from":20260101,"to":"2026-03-02","basis":"actual/365"})",
     "from must be a date"},
    {"interest", R"({"principal":1,"rate":1,"from":"2026-01-01","basis":"actual/365"})",
     "to is missing"},
    {"interest",
     R"({"principal":1,"rate":1,"from":"2026-03-02","to":"2026-03-01","basis":"actual/365"})",
     "to is before from"},
    {"interest",
     R"({"principal":1,"rate":101,"from":"2026-01-01","to":"2026-03-01","basis":"actual/365"})",
     "rate is 101"},
    {"interest",
     R"({"principal":-1,"rate":1,"from":"2026-01-01","to":"2026-03-01","basis":"actual/365"})",
     "principal is -1"},
    {"interest",
     R"({"principal":1,"rate":1,"from":"2026-01-01","to":"2026-03-01","basis":"actual/365",
         "days":3})",
     "unknown key \"days\""},
};

constexpr Wrong kWrongTakeOff[] = {
    {"take-off", R"([])", "one JSON object"},
    {"take-off", R"({})", "what is missing"},
    {"take-off", R"({"what":7})", "what must be a text"},
    {"take-off", R"({"what":"fence"})", "what is \"fence\""},
    {"take-off", R"({"what":"slab"})", "length_ft is missing"},
    {"take-off", R"({"what":"sod","area_sqft":true})", "area_sqft must be a number"},
    {"take-off", R"({"what":"sod","area_sqft":null})", "area_sqft must be a number"},
    {"take-off", R"({"what":"sod","area_sqft":[]})", "area_sqft must be a number"},
    {"take-off", R"({"what":"sod","area_sqft":["a"]})", "area_sqft must be a number"},
    {"take-off", R"({"what":"sod","area_sqft":"40"})", "area_sqft must be a number"},
    {"take-off", R"({"what":"sod","area_sqft":-40})", "area_sqft is -40"},
    {"take-off", R"({"what":"sod","area_sqft":0})", "area_sqft is 0"},
    {"take-off", R"({"what":"sod","area_sqft":1e9})", "area_sqft is 1000000000"},
    {"take-off", R"({"what":"sod","area_sqft":40,"rise_in":6})", "unknown key \"rise_in\""},
    {"take-off", R"({"what":"sod","area_sqft":40,"waste_percent":51})", "waste_percent is 51"},
    {"take-off", R"({"what":"tile","area_sqft":40,"pattern":5})", "pattern must be one of"},
};

constexpr Wrong kWrongCriticalPath[] = {
    {"critical-path", R"({})", "items is missing"},
    {"critical-path", R"({"items":[]})", "items must be a list"},
    {"critical-path", R"({"items":[{"days":1}]})", "item 1 in items: id is missing"},
    {"critical-path", R"({"items":[{"id":1,"days":1}]})", "id must be a text"},
    {"critical-path", R"({"items":[{"id":"a"}]})", "days is missing"},
    {"critical-path", R"({"items":[{"id":"a","days":-1}]})", "days is -1"},
    {"critical-path", R"({"items":[{"id":"a","days":1e7}]})", "days is 10000000"},
    {"critical-path", R"({"items":[{"id":"a","days":1,"crew":"x"}]})", "unknown key \"crew\""},
    {"critical-path", R"({"items":[{"id":"a","days":1}],"by":3})", "unknown key \"by\""},
    {"critical-path", R"({"items":[{"id":"a","days":1},{"id":"a","days":1}]})",
     "item 2 in items: id \"a\" is given twice"},
    {"critical-path", R"({"items":[{"id":"a","days":1,"after":["b"]}]})", "after names \"b\""},
    {"critical-path", R"({"items":[{"id":"a","days":1,"after":"b"}]})", "after must be a list"},
    {"critical-path", R"({"items":[{"id":"a","days":1,"after":[3]}]})", "entry 1 of after"},
    {"critical-path", R"({"items":[{"id":"a","days":1,"after":[{"id":"b","wait":3}]}]})",
     "unknown key \"wait\""},
    {"critical-path", R"({"items":[{"id":"a","days":1,"after":[{"id":"b","kind":"FX"}]}]})",
     "kind is \"FX\""},
    {"critical-path", R"({"items":[{"id":"a","days":1,"after":[{"id":"b","lag":"long"}]}]})",
     "lag: \"long\""},
    {"critical-path", R"({"items":[{"id":"a","days":1,"after":["a"]}]})", "\"a\" > \"a\""},
    {"critical-path",
     R"({"items":[{"id":"a","days":1,"after":["c"]},{"id":"b","days":1,"after":["a"]},
                  {"id":"c","days":1,"after":["b"]},{"id":"d","days":1,"after":["c"]}]})",
     "\"a\" > \"b\" > \"c\" > \"a\""},
};

constexpr Wrong kWrongCrewPlan[] = {
    {"crew-plan", R"({})", "items is missing"},
    {"crew-plan", R"({"items":[{"id":"a","days":-1}]})", "item 1 in items: days is -1"},
    {"crew-plan", R"({"items":[{"id":"a","days":1,"uses":{"tile":1}}]})",
     R"(item 1 in items: uses names "tile", and crews has no such crew)"},
    {"crew-plan", R"({"items":[{"id":"a","days":1,"uses":{"tile":3}}],"crews":{"tile":2}})",
     R"(item 1 in items: uses asks for 3 of "tile", which has only 2)"},
    {"crew-plan", R"({"items":[{"id":"a","days":1,"uses":{"tile":0}}],"crews":{"tile":2}})",
     "item 1 in items: uses: tile is 0"},
    {"crew-plan", R"({"items":[{"id":"a","days":1,"uses":{"tile":1.5}}],"crews":{"tile":2}})",
     "item 1 in items: uses: tile is 1.5: it must be a whole number"},
    {"crew-plan", R"({"items":[{"id":"a","days":1,"uses":["tile"]}],"crews":{"tile":2}})",
     "item 1 in items: uses must be an object"},
    {"crew-plan", R"({"items":[{"id":"a","days":1,"space":7}]})",
     "item 1 in items: space must be a text"},
    {"crew-plan", R"({"items":[{"id":"a","days":1}],"crews":{"tile":-2}})", "crews: tile is -2"},
    {"crew-plan", R"({"items":[{"id":"a","days":1}],"crews":{"tile":"two"}})", "crews: tile"},
    {"crew-plan", R"({"items":[{"id":"a","days":1}],"crews":[1]})", "crews must be an object"},
    {"crew-plan", R"({"items":[{"id":"a","days":1}],"tries":0})", "tries is 0"},
    {"crew-plan", R"({"items":[{"id":"a","days":1}],"tries":2.5})", "tries is 2.5"},
    {"crew-plan", R"({"items":[{"id":"a","days":1}],"seed":-1})", "seed is -1"},
    {"crew-plan", R"({"items":[{"id":"a","days":1}],"seconds":0})", "seconds is 0"},
    {"crew-plan", R"({"items":[{"id":"a","days":1}],"seconds":1})", "seconds can't be measured"},
    {"crew-plan", R"({"items":[{"id":"a","days":1}],"seconds":1,"tries":5})",
     "seconds and tries are both given"},
    {"crew-plan", R"({"items":[{"id":"a","days":1}],"crew":{}})", "unknown key \"crew\""},
    {"crew-plan",
     R"({"items":[{"id":"a","days":1,"after":["b"]},{"id":"b","days":1,"after":["a"]}]})",
     "\"a\" > \"b\" > \"a\""},
    {"crew-plan", R"({"items":[{"id":"a","days":1,"after":["c"]}]})", "\"c\""},
};

constexpr Wrong kWrongRisk[] = {
    {"risk", R"({})", "items is missing"},
    {"risk", R"({"items":[]})", "items"},
    {"risk", R"({"items":[{"id":"a"}]})", "cost and days are both missing"},
    {"risk", R"({"items":[{"cost":1}]})", "id is missing"},
    {"risk", R"({"items":[{"id":"a","cost":1,"price":1}]})", "unknown key \"price\""},
    {"risk", R"({"items":[{"id":"a","cost":1}],"chance":1})", "unknown key \"chance\""},
    {"risk", R"({"items":[{"id":"a","cost":-1}]})", "item 1 in items: cost is -1"},
    {"risk", R"({"items":[{"id":"a","days":1e9}]})", "days is 1000000000"},
    {"risk", R"({"items":[{"id":"a","cost":"much"}]})", "cost"},
    {"risk", R"({"items":[{"id":"a","cost":[1,2,3]}]})", "cost must be a number"},
    {"risk", R"({"items":[{"id":"a","cost":{"low":1,"high":2}}]})", "cost: likely is missing"},
    {"risk", R"({"items":[{"id":"a","cost":{"low":3,"likely":2,"high":4}}]})",
     "cost: likely is less than low (3)"},
    {"risk", R"({"items":[{"id":"a","days":{"low":1,"likely":5,"high":4}}]})",
     "days: high is less than likely (5)"},
    {"risk", R"({"items":[{"id":"a","cost":{"low":1,"likely":2,"high":3,"mean":2}}]})",
     "cost: unknown key \"mean\""},
    {"risk", R"({"items":[{"id":"a","days":1,"lead_days":-1}]})", "lead_days is -1"},
    {"risk", R"({"items":[{"id":"a","days":1,"after":["b"]}]})", "\"b\""},
    {"risk", R"({"items":[{"id":"a","days":1,"after":["a"]}]})", "loop"},
    {"risk", R"({"items":[{"id":"a","cost":1}],"unknowns":[{"cost":1}]})", "chance is missing"},
    {"risk", R"({"items":[{"id":"a","cost":1}],"unknowns":[{"chance":101,"cost":1}]})",
     "unknown 1 in unknowns: chance is 101"},
    {"risk", R"({"items":[{"id":"a","cost":1}],"unknowns":[{"chance":10}]})", "cost and days"},
    {"risk", R"({"items":[{"id":"a","cost":1}],"unknowns":[{"chance":1,"cost":1,"item":"b"}]})",
     "item is \"b\", and no item has that id"},
    {"risk", R"({"items":[{"id":"a","cost":1}],"trials":0})", "trials is 0"},
    {"risk", R"({"items":[{"id":"a","cost":1}],"trials":2000000})", "trials"},
    {"risk", R"({"items":[{"id":"a","cost":1}],"trials":10.5})", "trials is 10.5"},
    {"risk", R"({"items":[{"id":"a","cost":1}],"seed":-1})", "seed is -1"},
    {"risk", R"({"items":[{"id":"a","cost":1}],"correlation":1.1})", "correlation is 1.1"},
    {"risk", R"({"items":[{"id":"a","cost":1}],"shape":"bell"})", "shape is \"bell\""},
    {"risk", R"({"items":[{"id":"a","cost":1}],"fixed":5})", "resale is missing"},
    {"risk", R"({"items":[{"id":"a","cost":1}],"day_costs":5})", "resale is missing"},
};

constexpr Wrong kWrongThreePoint[] = {
    {"three-point", R"({})", "items is missing"},
    {"three-point", R"([])", "items must be a list"},
    {"three-point", R"(7)", "one JSON object"},
    {"three-point", R"([{"low":1,"likely":2}])", "item 1 in items: high is missing"},
    {"three-point", R"([{"low":3,"likely":2,"high":4}])", "likely is less than low"},
    {"three-point", R"([{"low":1,"likely":5,"high":4}])", "high is less than likely"},
    {"three-point", R"([{"low":-1,"likely":5,"high":6}])", "low is -1"},
    {"three-point", R"([{"low":1,"likely":2,"high":3,"mid":2}])", "unknown key \"mid\""},
    {"three-point", R"({"items":[{"low":1,"likely":2,"high":3}],"by":-1})", "by is -1"},
    {"three-point", R"({"items":[{"low":1,"likely":2,"high":3}],"limit":1})",
     "unknown key \"limit\""},
};

constexpr Wrong kWrongEarnedSchedule[] = {
    {"earned-schedule", R"({})", "pv is missing"},
    {"earned-schedule", R"({"pv":[],"ev":1,"at":1})", "pv must be a list"},
    {"earned-schedule", R"({"pv":5,"ev":1,"at":1})", "pv must be a list"},
    {"earned-schedule", R"({"pv":["a"],"ev":1,"at":1})", "pv (entry 1) must be a number"},
    {"earned-schedule", R"({"pv":[5,4],"ev":1,"at":1})", "pv (entry 2) is 4"},
    {"earned-schedule", R"({"pv":[-5],"ev":1,"at":1})", "pv (entry 1) is -5"},
    {"earned-schedule", R"({"pv":[0,0],"ev":0,"at":1})", "pv never rises"},
    {"earned-schedule", R"({"pv":[5],"at":1})", "ev is missing"},
    {"earned-schedule", R"({"pv":[5],"ev":6,"at":1})", "ev is more than the last of pv (5)"},
    {"earned-schedule", R"({"pv":[5],"ev":1})", "at is missing"},
    {"earned-schedule", R"({"pv":[5],"ev":1,"at":-1})", "at is -1"},
    {"earned-schedule", R"({"pv":[5],"ev":1,"at":1,"ac":1})", "unknown key \"ac\""},
};

INSTANTIATE_TEST_SUITE_P(CriticalPath, WorkRefuses, testing::ValuesIn(kWrongCriticalPath));
INSTANTIATE_TEST_SUITE_P(CrewPlan, WorkRefuses, testing::ValuesIn(kWrongCrewPlan));
INSTANTIATE_TEST_SUITE_P(EarnedSchedule, WorkRefuses, testing::ValuesIn(kWrongEarnedSchedule));
constexpr Wrong kWrongChoose[] = {
    {"choose", R"({})", "alternates is missing"},
    {"choose", R"({"alternates":[]})", "alternates must be a list of at least one"},
    {"choose", R"({"alternates":[7]})", "alternate 1 in alternates: the input must be"},
    {"choose", R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2}]}],"cach":1})",
     "unknown key \"cach\""},
    {"choose", R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2}]}],"cash":-1})",
     "cash is -1"},
    {"choose", R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2}]}],"days":-1})",
     "days is -1"},
    {"choose",
     R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2}]}],"resale":9})",
     "ceiling is missing"},
    {"choose",
     R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2}]}],"ceiling":9})",
     "resale is missing"},
    {"choose", R"({"alternates":[{"options":[{"id":"x","cost":1,"value":2}]}]})",
     "alternate 1 in alternates: id is missing"},
    {"choose", R"({"alternates":[{"id":"a"}]})", "alternate 1 in alternates: options is missing"},
    {"choose", R"({"alternates":[{"id":"a","options":[]}]})", "options must be a list of at least"},
    {"choose", R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2}],"why":""}]})",
     "alternate 1 in alternates: unknown key \"why\""},
    {"choose",
     R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2}]},)"
     R"({"id":"a","options":[{"id":"y","cost":1,"value":2}]}]})",
     "alternate 2 in alternates: id \"a\" is given to another"},
    {"choose",
     R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2}]},)"
     R"({"id":"b","options":[{"id":"x","cost":1,"value":2}]}]})",
     "alternate 2, option 1 in options: id \"x\" is given to another"},
    {"choose", R"({"alternates":[{"id":"a","options":[{"id":"x","value":2}]}]})",
     "alternate 1, option 1 in options: cost is missing"},
    {"choose", R"({"alternates":[{"id":"a","options":[{"id":"x","cost":-2,"value":2}]}]})",
     "alternate 1, option 1 in options: cost is -2"},
    {"choose", R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1}]}]})",
     "value is missing"},
    {"choose", R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":1e13}]}]})",
     "value is 1e+13"},
    {"choose", R"({"alternates":[{"id":"a","options":[{"id":"x","cost":0.001,"value":2}]}]})",
     "cost is 0.001: it is counted in cents"},
    {"choose",
     R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2,"days":0.0001}]}]})",
     "days is 0.0001: it is counted in thousandths"},
    {"choose", R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2,"days":-1}]}]})",
     "days is -1"},
    {"choose",
     R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2,"needs":"y"}]}]})",
     "needs must be a list of texts"},
    {"choose",
     R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2,"excludes":[1]}]}]})",
     "excludes must be a list of texts"},
    {"choose",
     R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2,"needs":["y"]}]}]})",
     "needs names \"y\", and no option has that id"},
    {"choose",
     R"({"alternates":[{"id":"a","options":[{"id":"x","cost":1,"value":2,"exclude":[]}]}]})",
     "alternate 1, option 1 in options: unknown key \"exclude\""},
};

INSTANTIATE_TEST_SUITE_P(Choose, WorkRefuses, testing::ValuesIn(kWrongChoose));
INSTANTIATE_TEST_SUITE_P(EarnedValue, WorkRefuses, testing::ValuesIn(kWrongEarnedValue));
INSTANTIATE_TEST_SUITE_P(Interest, WorkRefuses, testing::ValuesIn(kWrongInterest));
INSTANTIATE_TEST_SUITE_P(Risk, WorkRefuses, testing::ValuesIn(kWrongRisk));
INSTANTIATE_TEST_SUITE_P(TakeOff, WorkRefuses, testing::ValuesIn(kWrongTakeOff));
INSTANTIATE_TEST_SUITE_P(ThreePoint, WorkRefuses, testing::ValuesIn(kWrongThreePoint));

TEST(Work, AnUnknownNameListsTheKnownOnes) {
    const auto out = runWork("earned-valu", json::object());
    ASSERT_FALSE(out.ok());
    for (const std::string_view name : workNames()) {
        EXPECT_NE(out.error().message.find(name), std::string::npos) << name;
    }
}

// JSON can't say these, code can.
TEST(Work, NanAndInfinityAreRefused) {
    for (const double wrong :
         {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        const auto out =
            runWork("earned-value", json{{"bac", wrong}, {"pv", 1}, {"ev", 1}, {"ac", 1}});
        ASSERT_FALSE(out.ok());
        EXPECT_EQ(out.error().message.rfind("bac is ", 0), 0U) << out.error().message;
        EXPECT_FALSE(runWork("take-off", json{{"what", "sod"}, {"area_sqft", wrong}}).ok());
    }
}

// A long key in another script is cut between characters, so that the message stays UTF-8.
TEST(Work, MessagesStayPrintable) {
    std::string key = "x";
    for (int k = 0; k < 60; ++k) {
        key += "\xC3\xA9";
    }
    for (const char* name : {"earned-value", "take-off"}) {
        const auto out = runWork(name, json{{"what", "sod"}, {key, 1}});
        ASSERT_FALSE(out.ok());
        EXPECT_NO_THROW((void)json(out.error().message).dump()) << name;
    }
}

TEST(Work, MoneyMayBeADecimalText) {
    const auto out = runWork("earned-value",
                             json{{"bac", "4,000.00"}, {"pv", "3000"}, {"ev", 2500}, {"ac", 2800}});
    ASSERT_TRUE(out.ok()) << out.error().message;
    EXPECT_EQ(out.value().at("bac"), 4000);
    EXPECT_EQ(out.value().at("cv"), -300);
}

// 2500 / 2800 = 0.89285714285714...
TEST(Work, TenSignificantDigits) {
    const auto out =
        runWork("earned-value", json{{"bac", 4000}, {"pv", 3000}, {"ev", 2500}, {"ac", 2800}});
    ASSERT_TRUE(out.ok());
    EXPECT_EQ(out.value().at("cpi").dump(), "0.8928571429");
    EXPECT_EQ(out.value().at("sv").dump(), "-500");
    EXPECT_EQ(out.value().at("tcpi").at("to_budget").dump(), "1.25");
}

TEST(Work, ZeroDivisorsAreNull) {
    const auto out = runWork("earned-value", json{{"bac", 0}, {"pv", 0}, {"ev", 0}, {"ac", 0}});
    ASSERT_TRUE(out.ok());
    for (const char* key : {"cpi", "spi", "etc", "vac", "percent_complete", "percent_spent"}) {
        EXPECT_TRUE(out.value().at(key).is_null()) << key;
    }
    EXPECT_TRUE(out.value().at("tcpi").at("to_budget").is_null());
    EXPECT_EQ(out.value().at("eac").at("remaining_at_budget"), 0);
}

// The keys out are part of the command's contract, those without a figure too.
TEST(Work, EarnedValueAlwaysHasAllItsKeys) {
    const auto out = runWork("earned-value", json{{"bac", 9}, {"pv", 1}, {"ev", 1}, {"ac", 1}});
    ASSERT_TRUE(out.ok());
    std::vector<std::string> keys;
    for (const auto& [key, value] : out.value().items()) {
        keys.push_back(key);
    }
    const std::vector<std::string> expected = {
        "ac", "bac", "cpi", "cv",   "eac", "etc", "ev", "percent_complete", "percent_spent",
        "pv", "spi", "sv",  "tcpi", "vac"};
    EXPECT_EQ(keys, expected);
    const json& eac = out.value().at("eac");
    EXPECT_EQ(eac.size(), 5U);
    EXPECT_TRUE(eac.contains("remaining_at_spi_t") && eac.at("remaining_at_spi_t").is_null());
    EXPECT_TRUE(eac.contains("remaining_at_weighted") && eac.contains("remaining_at_cpi_spi"));
    EXPECT_TRUE(out.value().at("tcpi").contains("to_estimate"));
}

// Well said, and yet no set can be had: the message says what would.
TEST(Work, ChooseSaysWhatStandsInTheWay) {
    const auto says = [](const char* limits, const char* ties) {
        const auto out = runWork(
            "choose",
            json::parse(std::string("{") + limits +
                        R"("alternates":[{"id":"a","options":[{"id":"slow","cost":10,"days":9,)"
                        R"("value":0},{"id":"quick","cost":40,"days":2,"value":0}]},)"
                        R"({"id":"b","options":[{"id":"only","cost":5,"value":0)" +
                        ties + "}]}]}"));
        EXPECT_FALSE(out.ok());
        EXPECT_EQ(out.error().code, ledgerboard::model::ErrorCode::CannotBeMet);
        return out.error().message;
    };
    EXPECT_NE(says(R"("cash":14.99,)", "").find("costs 15, more than cash (14.99)"),
              std::string::npos);
    EXPECT_NE(says(R"("days":1.5,)", "").find("takes 2 days, more than days (1.5)"),
              std::string::npos);
    EXPECT_NE(says(R"("cash":44,"days":8,)", "").find("no more than days costs 45"),
              std::string::npos);
    EXPECT_NE(says("", R"(,"excludes":["slow","quick"])").find("contradict each other"),
              std::string::npos);
}

TEST(Work, ChooseHasAllItsKeys) {
    const auto out = runWork(
        "choose", json::parse(R"({"resale":100,"ceiling":"103.50","alternates":[)"
                              R"({"id":"a","options":[{"id":"x","cost":"1.25","value":5}]}]})"));
    ASSERT_TRUE(out.ok()) << out.error().message;
    // 103.50 - 100 = 3.50 is left of 5; less 1.25 that is 2.25.
    EXPECT_EQ(out.value().dump(),
              R"({"best":{"added":3.5,"cost":1.25,"days":0,"options":["x"],"value":5,)"
              R"("value_less_cost":2.25},"frontier":[{"added":3.5,"cost":1.25,"days":0,)"
              R"("options":["x"],"value":5,"value_less_cost":2.25}],"frontier_cut":false,)"
              R"("proven":true})");
}

// Nothing spreads here, so all can be told by hand: 3 + 4 days one after the other; 60 + 40 of
// cost; 500 - 100 - 100 - 10 x 7 = 230.
TEST(Work, RiskHasAllItsKeys) {
    const auto out = runWork(
        "risk", json::parse(R"({"items":[{"id":"a","cost":60,"days":3},)"
                            R"({"id":"b","cost":"40.00","days":4,"after":["a"]}],)"
                            R"("resale":500,"fixed":100,"day_costs":10,"trials":20,"seed":3})"));
    ASSERT_TRUE(out.ok()) << out.error().message;
    const auto same = [](int value) {
        const std::string number = std::to_string(value);
        return R"({"deviation":0,"mean":)" + number + R"(,"p10":)" + number + R"(,"p50":)" +
               number + R"(,"p80":)" + number + R"(,"p90":)" + number + "}";
    };
    EXPECT_EQ(out.value().dump(), R"({"contingency_80":0,"correlation":0.2,"cost":)" + same(100) +
                                      R"(,"days":)" + same(7) +
                                      R"(,"drivers":{"cost":[],"days":[],"profit":[]},)" +
                                      R"("likely":{"cost":100,"days":7},"profit":)" + same(230) +
                                      R"(,"seed":3,"shape":"pert-beta","trials":20})");
}

// Amounts at the end of what can be kept: an answer or an error, never a figure that is none.
TEST(Work, RiskOfLargeAmounts) {
    const json items = json::parse(R"([{"id":"a","cost":{"low":0,"likely":1,"high":1e12},)"
                                   R"("days":{"low":0,"likely":1,"high":1e6}}])");
    const auto out = runWork("risk", json{{"items", items}, {"trials", 50}});
    ASSERT_TRUE(out.ok()) << out.error().message;
    EXPECT_TRUE(out.value().at("profit").is_null());
    EXPECT_TRUE(out.value().at("cost").at("mean").is_number());
    EXPECT_TRUE(out.value().at("days").at("deviation").is_number());
    const auto tooLarge =
        runWork("risk", json{{"items", items}, {"trials", 50}, {"resale", 1}, {"day_costs", 1e12}});
    ASSERT_FALSE(tooLarge.ok());
    EXPECT_NE(tooLarge.error().message.find("day_costs"), std::string::npos);
}

// A stopwatch that is handed in: it stands still while the input is read, then each look at it
// takes a tenth of a second; half a second is over after a few plans of a job that is never proven.
TEST(Work, CrewPlanStopsAfterItsSeconds) {
    json input = {{"items", json::array()}, {"crews", {{"a", 2}}}, {"seconds", 0.5}};
    for (int k = 0; k < 5; ++k) {
        input["items"].push_back({{"id", std::to_string(k)}, {"days", 3}, {"uses", {{"a", 1}}}});
    }
    double seconds = 0;
    int looks = 0;
    const auto out = runWork("crew-plan", input, [&] {
        ++looks;
        return seconds += 0.1;
    });
    ASSERT_TRUE(out.ok()) << out.error().message;
    EXPECT_EQ(out.value().at("days"), 9);
    EXPECT_LE(looks, 12);
}

TEST(Work, EveryExampleWorks) {
    ASSERT_FALSE(workNames().empty());
    for (const std::string_view name : workNames()) {
        const auto out = runWork(name, json::parse(workExample(name)));
        EXPECT_TRUE(out.ok()) << name << ": " << out.error().message;
        EXPECT_NE(workHelp(name).find(workExample(name)), std::string::npos) << name;
        EXPECT_NE(workHelp("").find(name), std::string::npos);
    }
    for (const auto& kind : ledgerboard::compute::takeOffKinds()) {
        const auto out = runWork("take-off", json::parse(kind.example));
        EXPECT_TRUE(out.ok()) << kind.what << ": " << out.error().message;
    }
}

TEST(Work, HelpListsEveryKeyOfEveryKindIn80Columns) {
    const std::string help = workHelp("take-off");
    for (const auto& kind : ledgerboard::compute::takeOffKinds()) {
        const auto at = help.find("\n" + std::string(kind.what) + ": ");
        ASSERT_NE(at, std::string::npos) << kind.what;
        for (const auto& key : kind.keys) {
            EXPECT_NE(help.find("\n  " + std::string(key.name), at), std::string::npos) << key.name;
        }
    }
    for (const std::string_view name : workNames()) {
        std::istringstream lines(workHelp(name));
        for (std::string line; std::getline(lines, line);) {
            const bool isExample = line.find('{') != std::string::npos;
            EXPECT_TRUE(isExample || line.size() <= 80) << line;
        }
    }
}

}  // namespace
