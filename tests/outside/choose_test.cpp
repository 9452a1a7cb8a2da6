// Protects choosing against published cases of the multiple-choice knapsack, through `work choose`.
// [S]: the number stands in the source; [C]: worked out by hand from the source's inputs.
// An option's value is its value in the source plus its cost, so that value less cost is the
// source's.
#include <gtest/gtest.h>
#include <string>
#include <utility>
#include <vector>

#include "tests/outside/worked.h"

namespace {

using ledgerboard::outside::expectExact;
using ledgerboard::outside::worked;

struct Option {
    int cost;
    int value;
};

nlohmann::json choose(const std::vector<std::vector<Option>>& classes, int limit) {
    nlohmann::json in{{"cash", limit}, {"alternates", nlohmann::json::array()}};
    for (const auto& one : classes) {
        nlohmann::json options = nlohmann::json::array();
        const std::string name = "c" + std::to_string(in.at("alternates").size() + 1);
        for (const Option& option : one) {
            options.push_back({{"id", name + "/" + std::to_string(options.size() + 1)},
                               {"cost", option.cost},
                               {"value", option.value + option.cost}});
        }
        in.at("alternates").push_back({{"id", name}, {"options", options}});
    }
    return worked("choose", in.dump());
}

std::vector<std::vector<Option>> valuedAtCost(const std::vector<std::vector<int>>& classes) {
    std::vector<std::vector<Option>> out;
    for (const auto& one : classes) {
        out.emplace_back();
        for (const int cost : one) {
            out.back().push_back({cost, cost});
        }
    }
    return out;
}

// A public library's unit tests of the multiple-choice knapsack [S]: value equals cost.
TEST(ChooseOutside, ValueEqualsCost) {
    const auto first = valuedAtCost({{1}, {1, 2, 3}, {2}});
    for (const auto& [limit, most] : {std::pair(7, 6), std::pair(5, 5), std::pair(4, 4)}) {
        const auto out = choose(first, limit);
        expectExact(out, "/best/value_less_cost", most);
        expectExact(out, "/best/cost", most);
        EXPECT_EQ(out.at("proven"), true);
    }
    expectExact(choose(valuedAtCost({{0}, {47, 94}, {11, 29}}), 100), "/best/value_less_cost", 76);
}

// Five classes with a limit of 20 [C]: 9 + 0 + 10 + 15 + 7 = 41 for 4 + 0 + 5 + 8 + 3 = 20, and by
// no other set: of the 216 sets those of 41 and more cost more than 20.
TEST(ChooseOutside, FiveClasses) {
    const std::vector<std::vector<Option>> classes = {{{0, 0}, {4, 9}, {7, 13}},
                                                      {{0, 0}, {3, 5}, {6, 11}, {9, 14}},
                                                      {{0, 0}, {2, 4}, {5, 10}},
                                                      {{0, 0}, {5, 8}, {8, 15}},
                                                      {{0, 0}, {1, 2}, {3, 7}}};
    const auto out = choose(classes, 20);
    expectExact(out, "/best/value_less_cost", 41);
    expectExact(out, "/best/cost", 20);
    EXPECT_EQ(out.at("/best/options"_json_pointer),
              nlohmann::json({"c1/2", "c2/1", "c3/3", "c4/3", "c5/3"}));
    // The dearest set of the frontier is the best one; each earns more than the one before.
    const auto& frontier = out.at("frontier");
    EXPECT_EQ(frontier.back().at("options"), out.at("/best/options"_json_pointer));
    for (std::size_t k = 1; k < frontier.size(); ++k) {
        EXPECT_GT(frontier[k].at("cost"), frontier[k - 1].at("cost"));
        EXPECT_GT(frontier[k].at("value_less_cost"), frontier[k - 1].at("value_less_cost"));
    }
}

}  // namespace
