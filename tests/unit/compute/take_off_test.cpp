// Protects the take-off at its edges: what each key may be, keys that exclude each other, rounding
// up, and that every value nobody gave is named with its source. Published examples are in
// tests/outside.
#include "core/compute/take_off.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <set>
#include <string>
#include <vector>

#include "core/compute/take_off_sizes.h"

namespace {

using namespace ledgerboard::compute;

GivenSize size(std::string key, double number) {
    return {std::move(key), {number}, {}};
}

GivenSize word(std::string key, std::string text) {
    return {std::move(key), {}, std::move(text)};
}

std::string refusal(std::string_view what, const std::vector<GivenSize>& given) {
    const auto out = takeOff(what, given);
    return out.ok() ? "accepted" : out.error().message;
}

bool names(const std::string& message, const std::string& key) {
    return message != "accepted" && message.find(key) != std::string::npos;
}

// Sizes that each kind is content with.
std::vector<GivenSize> sound(std::string_view what) {
    if (what == "slab") {
        return {size("length_ft", 20), size("width_ft", 16), size("thickness_in", 4)};
    }
    if (what == "gravel") {
        return {size("length_ft", 20), size("width_ft", 16), size("depth_in", 4)};
    }
    if (what == "roof") {
        return {size("length_ft", 20), size("width_ft", 16), size("rise_in", 6)};
    }
    if (what == "paint") {
        return {size("length_ft", 20), size("width_ft", 16), size("height_ft", 8)};
    }
    if (what == "fixtures") {
        return {size("length_ft", 20), size("width_ft", 16), size("ceiling_ft", 8)};
    }
    return {size("length_ft", 20), size("width_ft", 16)};
}

TEST(TakeOff, KnowsElevenKinds) {
    const std::set<std::string_view> expected = {"slab",      "paint",      "tile",    "wall-board",
                                                 "roof",      "flooring",   "sod",     "gravel",
                                                 "baseboard", "insulation", "fixtures"};
    std::set<std::string_view> known;
    for (const TakeOffKind& kind : takeOffKinds()) {
        known.insert(kind.what);
        EXPECT_FALSE(kind.source.empty()) << kind.what;
        EXPECT_FALSE(kind.caution.empty()) << kind.what;
    }
    EXPECT_EQ(known, expected);
    EXPECT_TRUE(names(refusal("fence", {}), "fence"));
    EXPECT_TRUE(names(refusal("", {}), "slab"));
}

TEST(TakeOff, EveryKindBuysWholePacksOfFiniteFigures) {
    for (const TakeOffKind& kind : takeOffKinds()) {
        const auto out = takeOff(kind.what, sound(kind.what));
        ASSERT_TRUE(out.ok()) << kind.what << ": " << out.error().message;
        ASSERT_FALSE(out.value().buy.empty()) << kind.what;
        for (const Purchase& purchase : out.value().buy) {
            EXPECT_GE(purchase.bought, purchase.needed) << kind.what;
            EXPECT_LT(purchase.bought, purchase.needed + 1) << kind.what;
            EXPECT_EQ(purchase.bought, std::floor(purchase.bought)) << kind.what;
        }
        for (const Figure& figure : out.value().quantities) {
            EXPECT_TRUE(std::isfinite(figure.value) && figure.value > 0)
                << kind.what << " " << figure.key;
        }
    }
}

// Whatever was not given and was used stands among the assumptions, with a source.
TEST(TakeOff, EveryUsualValueIsNamedWithItsSource) {
    for (const TakeOffKind& kind : takeOffKinds()) {
        const auto out = takeOff(kind.what, sound(kind.what));
        ASSERT_TRUE(out.ok());
        for (const Assumption& assumption : out.value().assumed) {
            EXPECT_FALSE(assumption.source.empty()) << kind.what << " " << assumption.key;
            EXPECT_FALSE(assumption.says.empty()) << kind.what << " " << assumption.key;
        }
        if (out.value().wastePercent) {
            const auto& assumed = out.value().assumed;
            EXPECT_EQ(std::count_if(assumed.begin(), assumed.end(),
                                    [](const Assumption& a) { return a.key == "waste_percent"; }),
                      1)
                << kind.what;
        }
    }
}

TEST(TakeOff, AGivenValueIsNotAnAssumption) {
    auto given = sound("sod");
    given.push_back(size("waste_percent", 0));
    given.push_back(size("pallet_sqft", 400));
    const auto out = takeOff("sod", given);
    ASSERT_TRUE(out.ok());
    EXPECT_TRUE(out.value().assumed.empty());
    EXPECT_EQ(out.value().buy.at(0).bought, 1);  // 320 / 400
}

// Every numeric key of every kind: below its least, above its most, and no number at all.
TEST(TakeOff, EveryKeyKeepsToItsRange) {
    int tried = 0;
    for (const TakeOffKind& kind : takeOffKinds()) {
        for (const SizeKey& key : kind.keys) {
            if (key.form == SizeForm::Word) {
                continue;
            }
            const std::string name(key.name);
            ASSERT_LT(key.least, key.most) << name;
            for (const double wrong : {-1.0, key.least - 0.01, key.most * 1.01 + 1, 1e300,
                                       std::numeric_limits<double>::infinity(),
                                       std::numeric_limits<double>::quiet_NaN()}) {
                EXPECT_TRUE(names(refusal(kind.what, {size(name, wrong)}), name))
                    << kind.what << " " << name << " " << wrong;
                ++tried;
            }
            if (key.usual) {
                EXPECT_GE(*key.usual, key.least) << name;
                EXPECT_LE(*key.usual, key.most) << name;
            }
        }
    }
    EXPECT_GT(tried, 300);
}

TEST(TakeOff, UnknownAndDoubledKeys) {
    for (const TakeOffKind& kind : takeOffKinds()) {
        auto given = sound(kind.what);
        given.push_back(size("lenght_ft", 3));
        EXPECT_TRUE(names(refusal(kind.what, given), "lenght_ft")) << kind.what;
        given.back() = size("length_ft", 3);
        EXPECT_TRUE(names(refusal(kind.what, given), "length_ft")) << kind.what;
    }
}

TEST(TakeOff, MissingSizesAreNamed) {
    EXPECT_TRUE(names(refusal("slab", {}), "length_ft"));
    EXPECT_TRUE(names(refusal("slab", {size("length_ft", 4)}), "width_ft"));
    EXPECT_TRUE(
        names(refusal("slab", {size("length_ft", 4), size("width_ft", 4)}), "thickness_in"));
    EXPECT_TRUE(names(refusal("gravel", {size("area_sqft", 40)}), "depth_in"));
    EXPECT_TRUE(names(refusal("roof", {size("area_sqft", 40)}), "rise_in"));
    EXPECT_TRUE(names(refusal("paint", {size("length_ft", 4), size("width_ft", 4)}), "height_ft"));
    EXPECT_TRUE(
        names(refusal("fixtures", {size("length_ft", 4), size("width_ft", 4)}), "ceiling_ft"));
    EXPECT_TRUE(names(refusal("baseboard", {size("width_ft", 4)}), "length_ft"));
    EXPECT_TRUE(names(refusal("wall-board", {size("length_ft", 4)}), "height_ft or width_ft"));
    EXPECT_TRUE(names(refusal("tile", {size("area_sqft", 40), size("tile_length_in", 12)}),
                      "tile_width_in"));
}

TEST(TakeOff, TwoWaysAtOnceAreRefused) {
    EXPECT_TRUE(
        names(refusal("flooring", {size("area_sqft", 40), size("width_ft", 4)}), "area_sqft"));
    EXPECT_TRUE(
        names(refusal("slab", {size("volume_cuft", 40), size("width_ft", 4)}), "volume_cuft"));
    EXPECT_TRUE(names(refusal("paint", {size("area_sqft", 40), size("doors", 1)}), "doors"));
    EXPECT_TRUE(names(refusal("baseboard", {size("perimeter_ft", 40), size("width_ft", 4)}),
                      "perimeter_ft"));
    EXPECT_TRUE(names(
        refusal("wall-board", {size("length_ft", 4), size("height_ft", 4), size("width_ft", 4)}),
        "height_ft"));
}

TEST(TakeOff, OpeningsCannotTakeAllOfTheWall) {
    EXPECT_TRUE(names(refusal("wall-board", {size("area_sqft", 40), size("openings_sqft", 40)}),
                      "openings_sqft"));
    EXPECT_TRUE(names(refusal("insulation", {size("area_sqft", 40), size("openings_sqft", 41)}),
                      "openings_sqft"));
    EXPECT_TRUE(names(refusal("paint", {size("length_ft", 4), size("width_ft", 4),
                                        size("height_ft", 8), size("doors", 7)}),
                      "doors"));
    EXPECT_TRUE(names(refusal("baseboard", {size("perimeter_ft", 9), size("doors", 3)}), "doors"));
}

TEST(TakeOff, FormsOfValues) {
    EXPECT_TRUE(names(refusal("tile", {size("pattern", 3)}), "straight diagonal"));
    EXPECT_TRUE(names(refusal("tile", {word("pattern", "herring")}), "pattern"));
    EXPECT_TRUE(names(refusal("tile", {word("pattern", "straight diagonal")}), "pattern"));
    EXPECT_TRUE(names(refusal("tile", {word("pattern", "")}), "pattern"));
    EXPECT_TRUE(names(refusal("tile", {word("length_ft", "8")}), "length_ft"));
    EXPECT_TRUE(names(refusal("paint", {size("coats", 1.5)}), "whole number"));
    EXPECT_TRUE(names(refusal("sod", {{"width_ft", {1, 2}, {}}}), "width_ft"));
    EXPECT_TRUE(names(refusal("sod", {{"area_sqft", {1, -2}, {}}}), "area_sqft"));
    EXPECT_TRUE(
        names(refusal("sod", {{"area_sqft", std::vector<double>(1001, 1.0), {}}}), "area_sqft"));
}

TEST(TakeOff, AListIsAddedUp) {
    const auto listed = takeOff("flooring", std::vector<GivenSize>{{"area_sqft", {40, 60}, {}}});
    ASSERT_TRUE(listed.ok());
    EXPECT_EQ(listed.value().quantities.at(0).value, 100);
}

TEST(TakeOff, TileInBoxesOrPieces) {
    const auto boxes =
        takeOff("tile", std::vector<GivenSize>{size("area_sqft", 100), size("box_sqft", 11)});
    ASSERT_TRUE(boxes.ok());
    EXPECT_EQ(boxes.value().buy.at(0).unit, "boxes");
    EXPECT_EQ(boxes.value().buy.at(0).bought, 10);  // 110 / 11, exactly
    const auto pieces =
        takeOff("tile", std::vector<GivenSize>{size("area_sqft", 100), size("tile_length_in", 24),
                                               size("tile_width_in", 12)});
    ASSERT_TRUE(pieces.ok());
    EXPECT_EQ(pieces.value().buy.at(0).unit, "tiles");
    EXPECT_EQ(pieces.value().buy.at(0).bought, 55);  // 110 sq ft of 2 sq ft each
}

// Binary fractions must not buy one more than is needed, nor real need one less.
TEST(TakeOff, RoundingUp) {
    EXPECT_EQ(roundedUp(withWaste(100, 10) / 11), 10);
    EXPECT_EQ(roundedUp(10.000001), 11);
    EXPECT_EQ(roundedUp(0.2), 1);
    EXPECT_EQ(roundedUp(0), 0);
    EXPECT_DOUBLE_EQ(roundedUp(4.345, 0.25), 4.5);
    EXPECT_DOUBLE_EQ(roundedUp(0.3, 0.1), 0.3);
}

}  // namespace
