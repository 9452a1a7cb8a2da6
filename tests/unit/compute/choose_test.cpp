// Protects the best set of options and the frontier: figures worked by hand for what each rule
// means, and over small made-up cases every set tried one by one, written here a second time.
#include "core/compute/choose.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <tuple>

#include "tests/support/made_up_alternates.h"
#include "tests/unit/compute/sample_job.h"

namespace ledgerboard::compute {
namespace {

using model::Money;
using model::Quantity;
using tests::MadeUpAlternates;
using tests::madeUpAlternates;
using Options = std::vector<std::size_t>;

WeighedOption option(const char* cost, const char* days, const char* value) {
    WeighedOption out;
    out.cost = tests::money(cost);
    out.days = tests::amountOf(days);
    out.value = tests::money(value);
    return out;
}

const WeighedOption kNone;

OptionSet best(const ChooseInput& input) {
    auto found = bestSetOf(input);
    EXPECT_TRUE(found.ok() && found.value().proven && found.value().set);
    return found.ok() && found.value().set ? *found.value().set : OptionSet{};
}

// Every set tried. Sums in ten-thousandths of a cent.
struct Tried {
    Options options;
    Money cost;
    Quantity days;
    std::int64_t net = 0;
};

std::int64_t netOf(const ChooseInput& input, const Options& options) {
    Money cost;
    Money value;
    Quantity days;
    double variance = 0;
    for (std::size_t k = 0; k < options.size(); ++k) {
        const WeighedOption& one = input.alternates[k][options[k]];
        cost += one.cost;
        value += one.value;
        days += one.days;
        variance += one.valueDeviation * one.valueDeviation;
    }
    const std::int64_t kept = input.keptShare.basisPoints();
    std::int64_t gain =
        kept * value.minor() -
        std::llround(input.deviations * static_cast<double>(kept) * std::sqrt(variance));
    if (input.ceiling) {
        const std::int64_t resale = kept * input.resale.minor();
        const std::int64_t ceiling = kept * input.ceiling->minor();
        gain = std::min(resale + gain, ceiling) - std::min(resale, ceiling);
    }
    return gain - std::int64_t{cost.minor()} * 10'000 -
           std::int64_t{input.dayCosts.minor()} * days.thousandths() * 10;
}

std::vector<Tried> tryAll(const ChooseInput& input) {
    std::vector<Tried> out;
    Options options(input.alternates.size(), 0);
    while (true) {
        Tried one{options, {}, {}, netOf(input, options)};
        for (std::size_t k = 0; k < options.size(); ++k) {
            one.cost += input.alternates[k][options[k]].cost;
            one.days += input.alternates[k][options[k]].days;
        }
        if (goesTogether(input, options) && (!input.cash || one.cost <= *input.cash) &&
            (!input.days || one.days <= *input.days)) {
            out.push_back(one);
        }
        std::size_t at = options.size();
        while (at > 0 && ++options[at - 1] == input.alternates[at - 1].size()) {
            options[--at] = 0;
        }
        if (at == 0) {
            return out;
        }
    }
}

using Rank = std::tuple<std::int64_t, std::int64_t, std::int64_t, Options>;

Rank rankOf(const Tried& one) {
    return {-one.net, one.cost.minor(), one.days.thousandths(), one.options};
}

using Figures = std::tuple<std::int64_t, std::int64_t, std::int64_t>;

std::vector<Figures> frontierByTrying(const std::vector<Tried>& all) {
    std::vector<Figures> out;
    for (const Tried& one : all) {
        const bool beaten = std::any_of(all.begin(), all.end(), [&](const Tried& other) {
            return other.cost <= one.cost && other.days <= one.days && other.net >= one.net &&
                   (other.cost < one.cost || other.days < one.days || other.net > one.net);
        });
        if (!beaten) {
            out.emplace_back(one.cost.minor(), one.days.thousandths(), one.net);
        }
    }
    std::sort(out.begin(), out.end());
    out.erase(std::unique(out.begin(), out.end()), out.end());
    return out;
}

void expectAsTried(const ChooseInput& input, std::uint64_t seed) {
    const std::vector<Tried> all = tryAll(input);
    const auto found = bestSetOf(input);
    ASSERT_TRUE(found.ok()) << seed;
    EXPECT_TRUE(found.value().proven) << seed;
    ASSERT_EQ(found.value().set.has_value(), !all.empty()) << seed;
    const auto frontier = frontierOf(input);
    ASSERT_TRUE(frontier.ok() && !frontier.value().cut) << seed;
    if (all.empty()) {
        EXPECT_TRUE(frontier.value().sets.empty()) << seed;
        return;
    }
    const Tried& first =
        *std::min_element(all.begin(), all.end(),
                          [](const Tried& a, const Tried& b) { return rankOf(a) < rankOf(b); });
    EXPECT_EQ(found.value().set->options, first.options) << seed;
    EXPECT_EQ(found.value().set->cost, first.cost) << seed;
    EXPECT_EQ(found.value().set->days, first.days) << seed;
    EXPECT_EQ(found.value().set->net, model::roundedMoney(first.net, 10'000)) << seed;
    std::vector<Figures> shown;
    for (const OptionSet& set : frontier.value().sets) {
        EXPECT_TRUE(goesTogether(input, set.options)) << seed;
        shown.emplace_back(set.cost.minor(), set.days.thousandths(), netOf(input, set.options));
        EXPECT_EQ(set.net, model::roundedMoney(std::get<2>(shown.back()), 10'000)) << seed;
    }
    EXPECT_TRUE(std::is_sorted(shown.begin(), shown.end())) << seed;
    EXPECT_TRUE(shown == frontierByTrying(all)) << seed;
}

TEST(Choose, WithoutAlternatesThereIsTheEmptySet) {
    const OptionSet set = best({});
    EXPECT_TRUE(set.options.empty());
    EXPECT_EQ(set.net, Money{});
    EXPECT_EQ(frontierOf({}).value().sets.size(), 1U);
}

TEST(Choose, CashAndDaysHold) {
    ChooseInput input;
    input.alternates = {{kNone, option("100", "1", "500"), option("300", "4", "900")}};
    EXPECT_EQ(best(input).options, Options{2});  // 900 - 300 = 600, more than 500 - 100 = 400
    input.cash = tests::money("299.99");
    EXPECT_EQ(best(input).options, Options{1});
    input.cash = tests::money("300");
    input.days = tests::amountOf("3.999");
    EXPECT_EQ(best(input).options, Options{1});
    input.days = tests::amountOf("4");
    EXPECT_EQ(best(input).options, Options{2});
}

// A second bath adds 12,000 and a third bedroom 15,000, but the street pays no more than 350,000
// for a house of 335,000: 15,000 in all. Less 9,000 and 8,000: -2,000. The bedroom alone: 7,000.
TEST(Choose, TheCeilingOfTheStreetCutsWhatSeveralAdd) {
    ChooseInput input;
    input.alternates = {{kNone, option("9000", "3", "12000")},
                        {kNone, option("8000", "3", "15000")}};
    input.resale = tests::money("335000");
    EXPECT_EQ(best(input).options, (Options{1, 1}));
    input.ceiling = tests::money("350000");
    const OptionSet set = best(input);
    EXPECT_EQ(set.options, (Options{0, 1}));
    EXPECT_EQ(set.net, tests::money("7000"));
    const OptionSet both = figuresOfSet(input, {1, 1}).value();
    EXPECT_EQ(both.value, tests::money("27000"));
    EXPECT_EQ(both.added, tests::money("15000"));
    EXPECT_EQ(both.net, tests::money("-2000"));
}

// A house that is worth more than the ceiling already gains nothing, and what an option takes away
// eats first what was beyond: min(100, 95) - min(100 - 8, 95) = 3.
TEST(Choose, AHouseBeyondTheCeiling) {
    ChooseInput input;
    input.alternates = {{kNone, option("1", "0", "20"), option("0", "0", "-8")}};
    input.resale = tests::money("100");
    input.ceiling = tests::money("95");
    EXPECT_EQ(best(input).options, Options{0});
    EXPECT_EQ(figuresOfSet(input, {1}).value().added, Money{});
    EXPECT_EQ(figuresOfSet(input, {2}).value().added, tests::money("-3"));
}

// Net = 10,000 x (1 - 6.5 %) - 4,000 - 3.5 x 80.17 = 9,350 - 4,000 - 280.595 = 5,069.405.
TEST(Choose, SellingAndDaysAreTakenOff) {
    ChooseInput input;
    input.alternates = {{kNone, option("4000", "3.5", "10000")}};
    input.keptShare = tests::percent("93.5");
    input.dayCosts = tests::money("80.17");
    EXPECT_EQ(best(input).net, tests::money("5069.41"));
}

// Values of 10,000 with deviations 3,000 and 4,000: their sum deviates by 5,000. At one deviation
// 20,000 - 5,000 = 15,000 is added; alone 7,000 and 6,000.
TEST(Choose, DeviationsOfValuesAddAsSquares) {
    ChooseInput input;
    input.alternates = {{kNone, option("5500", "0", "10000")},
                        {kNone, option("5500", "0", "10000")}};
    input.alternates[0][1].valueDeviation = 300'000;
    input.alternates[1][1].valueDeviation = 400'000;
    input.deviations = 1;
    EXPECT_EQ(best(input).options, (Options{1, 1}));
    EXPECT_EQ(best(input).net, tests::money("4000"));
    EXPECT_EQ(figuresOfSet(input, {1, 0}).value().net, tests::money("1500"));
    EXPECT_EQ(figuresOfSet(input, {0, 1}).value().net, tests::money("500"));
}

TEST(Choose, NeedsAndExcludesGoBothWays) {
    ChooseInput input;
    input.alternates = {{kNone, option("10", "0", "100")}, {kNone, option("50", "0", "40")}};
    EXPECT_EQ(best(input).options, (Options{1, 0}));
    input.alternates[0][1].needs = {{1, 1}};
    EXPECT_EQ(best(input).options, (Options{1, 1}));  // 90 - 10
    input.alternates[1][1].excludes = {{0, 1}};       // what it needs rules it out
    EXPECT_EQ(best(input).options, (Options{0, 0}));
    EXPECT_FALSE(goesTogether(input, {1, 1}));
}

TEST(Choose, AnOptionThatCannotBeIsNeverTaken) {
    ChooseInput input;
    input.alternates = {{kNone, option("0", "0", "100"), option("0", "0", "90")}};
    input.alternates[0][1].needs = {{0, 2}};  // another of its own alternate
    EXPECT_EQ(best(input).options, Options{2});
    input.alternates[0][2].excludes = {{0, 2}};  // itself
    EXPECT_EQ(best(input).options, Options{0});
    input.alternates[0][0].needs = {{0, 0}};  // itself: it may well be taken
    EXPECT_EQ(best(input).options, Options{0});
    input.alternates[0][0].needs = {{0, 1}};
    EXPECT_FALSE(bestSetOf(input).value().set);
    EXPECT_TRUE(frontierOf(input).value().sets.empty());
    EXPECT_FALSE(leastSetsOf(input).value().cheapest);
}

TEST(Choose, TiesGoToTheCheaperTheFasterTheFirstListed) {
    ChooseInput input;
    input.alternates = {{option("30", "1", "50"), option("20", "9", "40"), option("20", "3", "40"),
                         option("20", "3", "40")}};
    EXPECT_EQ(best(input).options, Options{2});
}

TEST(Choose, WhatTheLeastWouldTake) {
    ChooseInput input;
    input.alternates = {{option("100", "9", "0"), option("400", "2", "0")},
                        {option("50", "3", "0"), option("60", "1", "0")}};
    input.cash = tests::money("149");
    input.days = tests::amountOf("5");
    EXPECT_FALSE(bestSetOf(input).value().set);
    const LeastSets least = leastSetsOf(input).value();
    EXPECT_EQ(least.cheapest->cost, tests::money("150"));
    EXPECT_EQ(least.fastest->days, tests::amountOf("3"));
    EXPECT_EQ(least.cheapestInTime->cost, tests::money("450"));
    EXPECT_EQ(least.cheapestInTime->options, (Options{1, 0}));
}

TEST(Choose, RefusesWhatCannotBeCounted) {
    ChooseInput input;
    input.alternates = {{}};
    EXPECT_FALSE(bestSetOf(input).ok());
    input.alternates.assign(kMostAlternates + 1, {kNone});
    EXPECT_FALSE(frontierOf(input).ok());
    WeighedOption absurd;
    absurd.cost = Money::fromMinor(INT64_MAX);
    input.alternates = {{absurd}, {absurd}};
    EXPECT_FALSE(bestSetOf(input).ok());
    absurd.cost = Money{};
    absurd.days = Quantity::fromThousandths(INT64_MIN);
    input.alternates = {{absurd}};
    EXPECT_FALSE(bestSetOf(input).ok());
}

TEST(Choose, AStoppedSearchSaysSo) {
    const auto input = madeUpAlternates({.alternates = 8}, 3);
    const auto found = bestSetOf(input, 9);
    ASSERT_TRUE(found.ok());
    EXPECT_FALSE(found.value().proven);
    EXPECT_EQ(found.value().branches, 9U);
}

TEST(Choose, ACutFrontierSaysSoAndStillHoldsRealSets) {
    const auto input = madeUpAlternates({.alternates = 7}, 5);
    const auto frontier = frontierOf(input, 4);
    ASSERT_TRUE(frontier.ok());
    EXPECT_TRUE(frontier.value().cut);
    EXPECT_LE(frontier.value().sets.size(), 4U);
    EXPECT_FALSE(frontier.value().sets.empty());
    for (const OptionSet& set : frontier.value().sets) {
        EXPECT_LE(set.cost, *input.cash);
        EXPECT_LE(set.days, *input.days);
    }
}

TEST(ChooseAgainstTryingAll, LimitsOnly) {
    for (std::uint64_t seed = 1; seed <= 120; ++seed) {
        expectAsTried(madeUpAlternates({.alternates = 1 + seed % 5}, seed), seed);
    }
}

TEST(ChooseAgainstTryingAll, NeedsAndExcludes) {
    for (std::uint64_t seed = 1; seed <= 120; ++seed) {
        expectAsTried(madeUpAlternates({.alternates = 2 + seed % 4, .pairs = 1 + seed % 4}, seed),
                      seed);
    }
}

TEST(ChooseAgainstTryingAll, CeilingSellingAndDays) {
    for (std::uint64_t seed = 1; seed <= 120; ++seed) {
        expectAsTried(madeUpAlternates({.alternates = 1 + seed % 5,
                                        .pairs = seed % 3,
                                        .hasLimits = seed % 4 != 0,
                                        .hasCeiling = true,
                                        .hasDayCosts = true},
                                       seed),
                      seed);
    }
}

TEST(ChooseAgainstTryingAll, AtAChance) {
    for (std::uint64_t seed = 1; seed <= 120; ++seed) {
        auto input = madeUpAlternates({.alternates = 1 + seed % 4,
                                       .pairs = seed % 3,
                                       .hasCeiling = seed % 2 == 0,
                                       .hasDayCosts = true},
                                      seed);
        tests::MadeUp made(seed);
        for (auto& options : input.alternates) {
            for (auto& one : options) {
                one.valueDeviation = static_cast<double>(made.between(0, 300'000));
            }
        }
        input.deviations = seed % 5 == 0 ? -0.84 : 0.84;
        expectAsTried(input, seed);
    }
}

// Whatever is offered beside, and worse, changes nothing.
TEST(ChooseProperties, AnOptionNeverChosenChangesNothing) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        auto input = madeUpAlternates({.alternates = 6, .pairs = 2, .hasCeiling = true}, seed);
        const auto before = bestSetOf(input);
        ASSERT_TRUE(before.ok());
        WeighedOption worse = option("20000", "30", "-100");
        input.alternates[seed % 6].push_back(worse);
        const auto after = bestSetOf(input);
        ASSERT_TRUE(after.ok());
        ASSERT_EQ(before.value().set.has_value(), after.value().set.has_value()) << seed;
        if (before.value().set) {
            EXPECT_EQ(before.value().set->options, after.value().set->options) << seed;
            EXPECT_EQ(before.value().set->net, after.value().set->net) << seed;
        }
    }
}

// With too many sets to try: the frontier holds the best, and none of it beats another.
TEST(ChooseProperties, TheFrontierHoldsTheBest) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const auto input = madeUpAlternates(
            {.alternates = 10, .pairs = 2, .hasCeiling = seed % 2 == 0, .hasDayCosts = true}, seed);
        const auto found = bestSetOf(input);
        const auto frontier = frontierOf(input);
        ASSERT_TRUE(found.ok() && frontier.ok() && found.value().proven) << seed;
        ASSERT_FALSE(frontier.value().cut) << seed;
        if (!found.value().set) {
            EXPECT_TRUE(frontier.value().sets.empty()) << seed;
            continue;
        }
        const OptionSet& best = *found.value().set;
        const auto& sets = frontier.value().sets;
        EXPECT_TRUE(std::any_of(sets.begin(), sets.end(), [&](const OptionSet& set) {
            return set.net == best.net && set.cost == best.cost && set.days == best.days;
        })) << seed;
        // By cost, so only an earlier one can beat a later one: with as few days and as much net.
        std::map<std::int64_t, std::int64_t> most;
        for (const OptionSet& set : sets) {
            const std::int64_t net = netOf(input, set.options);
            EXPECT_LE(set.net, best.net) << seed;
            for (const auto& [days, earned] : most) {
                EXPECT_FALSE(days <= set.days.thousandths() && earned >= net) << seed;
            }
            auto& held = most.emplace(set.days.thousandths(), net).first->second;
            held = std::max(held, net);
        }
    }
}

}  // namespace
}  // namespace ledgerboard::compute
