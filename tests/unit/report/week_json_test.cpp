// Protects the page as a program reads it: keys in snake_case, money as text with two decimals,
// dates in ISO 8601, null where nothing is known.
#include "core/report/week_json.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/unit/report/pages.h"

namespace ledgerboard::report {

namespace {

using Json = nlohmann::json;

// Every key of `json` and of what it holds.
void collectKeys(const Json& json, std::vector<std::string>& keys) {
    for (const auto& [key, value] : json.items()) {
        if (json.is_object()) {
            keys.push_back(key);
        }
        if (value.is_structured()) {
            collectKeys(value, keys);
        }
    }
}

TEST(WeekJson, IsOneDocumentWithKeysInSnakeCase) {
    for (const auto& page :
         {test::fullPage(), test::emptyPage(), test::oneItemPage(), test::hostilePage()}) {
        const Json json = Json::parse(weekJson(page));
        std::vector<std::string> keys;
        collectKeys(json, keys);
        ASSERT_FALSE(keys.empty());
        for (const auto& key : keys) {
            EXPECT_EQ(key.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_"),
                      std::string::npos)
                << key;
        }
    }
}

TEST(WeekJson, HoldsTheFigures) {
    const Json json = Json::parse(weekJson(test::fullPage()));
    EXPECT_EQ(json["job"]["name"], "14 Alder Street");
    EXPECT_EQ(json["today"], "2026-05-15");
    EXPECT_EQ(json["week"], 6);
    EXPECT_EQ(json["since"]["against"], "review");
    EXPECT_EQ(json["since"]["on"], "2026-05-08");
    EXPECT_EQ(json["will_cost"]["forecast"], "123320.00");
    EXPECT_EQ(json["will_cost"]["over"], "2140.00");
    EXPECT_EQ(json["will_cost"]["over_before"], "900.00");
    EXPECT_EQ(json["will_finish"]["on"], "2026-06-02");
    EXPECT_EQ(json["will_finish"]["working_days_late"], 2);
    EXPECT_EQ(json["will_earn"]["profit"], "50100.00");
    EXPECT_EQ(json["will_earn"]["percent_of_resale"], 15.0);
    EXPECT_EQ(json["level"]["hairline"], "2423.60");
    EXPECT_EQ(json["curve"].size(), 9U);
    EXPECT_EQ(json["curve"][6]["earned"], "91420.00");
    EXPECT_TRUE(json["curve"][7]["earned"].is_null());
    EXPECT_EQ(json["movers"]["largest"].size(), 4U);
    EXPECT_EQ(json["movers"]["total"], "1240.00");
    EXPECT_EQ(json["if_signed"], "1350.00");
    EXPECT_EQ(json["unknowns_expected"], "610.00");
    EXPECT_EQ(json["by_trade"][3]["trade"], "Electrical");
    EXPECT_EQ(json["by_trade"][3]["early"], "860.00");
    EXPECT_EQ(json["total"]["held"], "7214.00");
    EXPECT_EQ(json["by_room"][1]["done_percent"], 41.0);
    EXPECT_EQ(json["next_14_days"][0]["late"], true);
    EXPECT_EQ(json["next_14_days"][3]["amount"], "2410.00");
    EXPECT_TRUE(json["next_14_days"][5]["on"].is_null());
    EXPECT_EQ(json["papers_missing"][1]["amount"], "214.60");
    EXPECT_EQ(json["on_monday"][0]["barred"], true);
    EXPECT_EQ(json["undated"], 2);
}

TEST(WeekJson, SaysNullWhereNothingIsKnown) {
    const Json json = Json::parse(weekJson(test::emptyPage()));
    EXPECT_TRUE(json["level"].is_null());
    EXPECT_TRUE(json["movers"].is_null());
    EXPECT_TRUE(json["contingency"].is_null());
    EXPECT_TRUE(json["will_finish"]["on"].is_null());
    EXPECT_TRUE(json["curve"].is_array());
    EXPECT_TRUE(json["photos"].is_array());
}

TEST(WeekJson, TakesTextThatIsNotUtf8) {
    auto page = test::emptyPage();
    page.job = "House \xFF";
    EXPECT_EQ(Json::parse(weekJson(page))["job"]["name"], "House \uFFFD");
}

}  // namespace

}  // namespace ledgerboard::report
