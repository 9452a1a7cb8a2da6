// Protects the take-off against published examples, through `work take-off`. [S]: the number stands
// in the source; [C]: worked out by hand from it, exactly; [2]: a secondary text, not confirmed;
// [CP]: common practice, no source.
#include <cmath>
#include <gtest/gtest.h>
#include <string>

#include "tests/outside/worked.h"

namespace {

using ledgerboard::outside::asPrinted;
using ledgerboard::outside::expectExact;
using ledgerboard::outside::figure;
using ledgerboard::outside::worked;

nlohmann::json takeOff(const std::string& input) {
    return worked("take-off", input);
}

// The source beside an assumed key; empty where the key was not assumed.
std::string sourceOf(const nlohmann::json& out, const std::string& key) {
    for (const auto& assumption : out.at("assumed")) {
        if (assumption.at("key") == key) {
            return assumption.at("source").get<std::string>();
        }
    }
    return {};
}

// NAVFAC P-405 by NAVEDTRA 14070 p. 103 [S]: walls 85.76 + 50.04, footing 133.32 + 69.32, slab
// 188.96 cu ft, 10 % waste. Exact [C]: 527.40 x 1.10 / 27 = 21.48667. The source prints 21; what is
// bought is rounded up, to 22.
TEST(TakeOffOutside, ConcreteOfWallsFootingAndSlab) {
    const auto out = takeOff(R"({"what":"slab","volume_cuft":[85.76,50.04,133.32,69.32,188.96]})");
    expectExact(out, "/quantities/volume_cuft", 527.40);
    expectExact(out, "/quantities/volume_with_waste_cuyd", 580.14 / 27);
    EXPECT_EQ(asPrinted(figure(out, "/quantities/volume_with_waste_cuyd"), 3), "21.487");
    EXPECT_EQ(std::floor(figure(out, "/quantities/volume_with_waste_cuyd")), 21);
    expectExact(out, "/waste_percent", 10);
    EXPECT_EQ(sourceOf(out, "waste_percent"), "NAVFAC P-405 by NAVEDTRA 14070 p. 103");
    expectExact(out, "/buy/0/bought", 22);
}

// [2]: 16 by 20 ft, 4 in thick: 106.667 cu ft, 3.95 cu yd.
TEST(TakeOffOutside, SlabOfSixteenByTwenty) {
    const auto out = takeOff(R"({"what":"slab","length_ft":16,"width_ft":20,"thickness_in":4})");
    EXPECT_EQ(asPrinted(figure(out, "/quantities/volume_cuft"), 3), "106.667");
    expectExact(out, "/quantities/volume_cuft", 320.0 / 3.0);
    EXPECT_EQ(asPrinted(figure(out, "/quantities/volume_cuyd"), 2), "3.95");
}

// Trade field guide [S], exact by geometry [C]: sqrt(1 + (rise/12)^2).
TEST(TakeOffOutside, RoofFactors) {
    const std::pair<int, const char*> factors[] = {{4, "1.054"},  {5, "1.083"}, {6, "1.118"},
                                                   {7, "1.158"},  {8, "1.202"}, {9, "1.250"},
                                                   {10, "1.302"}, {12, "1.414"}};
    for (const auto& [rise, printed] : factors) {
        const auto out =
            takeOff(R"({"what":"roof","area_sqft":1000,"rise_in":)" + std::to_string(rise) + "}");
        EXPECT_EQ(asPrinted(figure(out, "/quantities/slope_factor"), 3), printed) << rise;
        expectExact(out, "/quantities/slope_factor", std::hypot(12, rise) / 12);
        // Hips and valleys: sqrt(2 + (rise/12)^2), the same guide.
        expectExact(out, "/quantities/hip_valley_factor", std::sqrt(288.0 + rise * rise) / 12);
    }
}

// 2,000 sq ft at 6 in 12 with 10 %, squares of 100 sq ft: 20 x sqrt(1.25) x 1.1 = 24.60 [C]; three
// bundles a square [2]: 73.79, so 74.
TEST(TakeOffOutside, RoofOfTwoThousandSquareFeet) {
    const auto out = takeOff(R"({"what":"roof","area_sqft":2000,"rise_in":6})");
    EXPECT_EQ(asPrinted(figure(out, "/quantities/squares_with_waste"), 2), "24.60");
    expectExact(out, "/quantities/squares_with_waste", 22 * std::sqrt(1.25));
    expectExact(out, "/buy/0/bought", 74);
    EXPECT_EQ(out.at("/buy/0/unit"_json_pointer), "bundles");
    EXPECT_EQ(sourceOf(out, "bundles_per_square"), "secondary text, not confirmed");
}

// Estimating textbook p. 203 [S]: 148 ft of wall, 8 ft high: 1,184 sq ft, 37 sheets of 32.
TEST(TakeOffOutside, WallBoardOnWalls) {
    const auto out =
        takeOff(R"({"what":"wall-board","length_ft":148,"height_ft":8,"waste_percent":0})");
    expectExact(out, "/quantities/area_sqft", 1184);
    expectExact(out, "/quantities/sheets", 37);
    expectExact(out, "/buy/0/bought", 37);
}

// The same textbook [S]: ceiling 24 by 50, 38 sheets, 40 with 5 %. Exact [C]: 37.5 and 39.375.
TEST(TakeOffOutside, WallBoardOnACeiling) {
    const auto bare =
        takeOff(R"({"what":"wall-board","length_ft":50,"width_ft":24,"waste_percent":0})");
    expectExact(bare, "/quantities/sheets", 37.5);
    expectExact(bare, "/buy/0/bought", 38);
    const auto wasted = takeOff(R"({"what":"wall-board","length_ft":50,"width_ft":24})");
    expectExact(wasted, "/waste_percent", 5);
    expectExact(wasted, "/quantities/sheets_with_waste", 39.375);
    expectExact(wasted, "/buy/0/bought", 40);
}

// The same textbook [S]: per 1,000 sq ft, 380 ft of tape and 5 gal of compound.
TEST(TakeOffOutside, TapeAndCompound) {
    const auto out = takeOff(R"({"what":"wall-board","area_sqft":1000})");
    expectExact(out, "/quantities/tape_ft", 380);
    expectExact(out, "/quantities/compound_gal", 5);
    // Sold in rolls of 500 ft and pails of 4.5 gal [CP]: 0.76 and 1.11, so one roll and two pails.
    expectExact(out, "/buy/1/bought", 1);
    expectExact(out, "/buy/2/needed", 5 / 4.5);
    expectExact(out, "/buy/2/bought", 2);
    EXPECT_EQ(sourceOf(out, "roll_ft"), "common practice, no source");
    EXPECT_EQ(sourceOf(out, "pail_gal"), "common practice, no source");
    EXPECT_EQ(sourceOf(out, "tape_ft_per_1000_sqft"), "estimating textbook p. 203");
}

// [2]: a room of 10 by 15 by 9 with a door of 20 and a window of 15 sq ft: 415 sq ft, 1.19 gal a
// coat at 350 a gallon. By hand: 2 x 25 x 9 - 35 = 415.
TEST(TakeOffOutside, PaintOfARoom) {
    const auto out = takeOff(
        R"({"what":"paint","length_ft":10,"width_ft":15,"height_ft":9,"doors":1,"windows":1})");
    expectExact(out, "/quantities/area_sqft", 415);
    EXPECT_EQ(asPrinted(figure(out, "/quantities/gallons_per_coat"), 2), "1.19");
    expectExact(out, "/quantities/gallons_per_coat", 415.0 / 350.0);
    EXPECT_EQ(sourceOf(out, "sqft_per_gal"), "secondary text, not confirmed");
    // By hand: two coats, 10 % [CP], cans of a gallon: 2.6086, so 3.
    expectExact(out, "/buy/0/needed", 415.0 / 350.0 * 2 * 1.1);
    expectExact(out, "/buy/0/bought", 3);
}

// [2]: primer 200 to 300 sq ft a gallon; the low end is taken. By hand: 415/200 x 1.1 = 2.2825.
TEST(TakeOffOutside, PrimerOfARoom) {
    const auto out = takeOff(R"({"what":"paint","area_sqft":415,"primer_coats":1})");
    expectExact(out, "/quantities/primer_gallons", 2.075);
    expectExact(out, "/buy/1/needed", 2.2825);
    expectExact(out, "/buy/1/bought", 3);
}

// [2]: 450 sq ft a pallet, 5 to 10 % more. By hand: 1,800 x 1.10 / 450 = 4.4, so 5; at 5 %, 4.2.
TEST(TakeOffOutside, Sod) {
    const auto out = takeOff(R"({"what":"sod","length_ft":60,"width_ft":30})");
    expectExact(out, "/buy/0/needed", 4.4);
    expectExact(out, "/buy/0/bought", 5);
    const auto less = takeOff(R"({"what":"sod","length_ft":60,"width_ft":30,"waste_percent":5})");
    expectExact(less, "/buy/0/needed", 4.2);
}

// [2]: recessed lights no further apart than half the ceiling height, half of that to the wall. By
// hand for 8 ft: 4 ft and 2 ft; a room of 15 by 12 takes 4 rows (3.75 rounded up) of 3.
TEST(TakeOffOutside, RecessedLights) {
    const auto out = takeOff(R"({"what":"fixtures","length_ft":15,"width_ft":12,"ceiling_ft":8})");
    expectExact(out, "/quantities/greatest_spacing_ft", 4);
    expectExact(out, "/quantities/greatest_to_wall_ft", 2);
    expectExact(out, "/buy/0/bought", 12);
    EXPECT_TRUE(out.at("waste_percent").is_null());
}

// [CP]: tile 10 % laid straight, 15 % diagonally; flooring 7 to 10 %, of which 10.
TEST(TakeOffOutside, WasteOfTileAndFlooring) {
    const auto straight = takeOff(R"({"what":"tile","length_ft":10,"width_ft":10})");
    expectExact(straight, "/waste_percent", 10);
    expectExact(straight, "/quantities/area_with_waste_sqft", 110);
    expectExact(straight, "/buy/0/bought", 110);
    const auto diagonal =
        takeOff(R"({"what":"tile","length_ft":10,"width_ft":10,"pattern":"diagonal"})");
    expectExact(diagonal, "/waste_percent", 15);
    expectExact(diagonal, "/buy/0/bought", 115);
    EXPECT_EQ(sourceOf(diagonal, "waste_percent"), "common practice, no source");
    const auto plank = takeOff(R"({"what":"flooring","length_ft":10,"width_ft":10})");
    expectExact(plank, "/waste_percent", 10);
    EXPECT_EQ(sourceOf(plank, "waste_percent"), "common practice, no source");
}

// Geometry by hand [C], with waste as named: 40 x 10 x 4 in = 133.33 cu ft = 4.938 cu yd, 10 % more
// 5.432, so 6 yards; 52 ft of wall less two doors of 3 is 46, 10 % more 50.6, so 4 lengths of 16;
// 1,000 sq ft of attic, 5 % more, bags of 50: 21.
TEST(TakeOffOutside, GravelBaseboardInsulation) {
    const auto gravel = takeOff(R"({"what":"gravel","length_ft":40,"width_ft":10,"depth_in":4})");
    expectExact(gravel, "/quantities/volume_cuyd", 400.0 / 3.0 / 27.0);
    expectExact(gravel, "/buy/0/bought", 6);
    const auto baseboard =
        takeOff(R"({"what":"baseboard","length_ft":14,"width_ft":12,"doors":2})");
    expectExact(baseboard, "/quantities/length_ft", 46);
    expectExact(baseboard, "/quantities/length_with_waste_ft", 50.6);
    expectExact(baseboard, "/buy/0/bought", 4);
    const auto insulation =
        takeOff(R"({"what":"insulation","length_ft":40,"width_ft":25,"bag_sqft":50})");
    expectExact(insulation, "/buy/0/bought", 21);
}

}  // namespace
