// Roof, baseboard, insulation and fixtures.
#include <array>
#include <cmath>

#include "core/compute/take_off_sizes.h"

namespace ledgerboard::compute {

namespace {

using model::Result;
using size_keys::area;
using size_keys::count;
using size_keys::feet;
using size_keys::feetSum;
using size_keys::waste;

constexpr double kSqftPerSquare = 100;
constexpr double kRiseRun = 12;
constexpr std::array<std::string_view, 1> kWidth = {"width_ft"};

constexpr std::array kRoofKeys = {
    feet("length_ft", "length seen from above, overhangs included"),
    feet("width_ft", "width seen from above, overhangs included"),
    area("area seen from above, instead of length and width; a list is added up"),
    SizeKey{"rise_in", SizeForm::Measure, 0, 48, {}, {}, {}, "rise in inches over 12 of run"},
    SizeKey{"hip_valley_run_ft",
            SizeForm::Sum,
            0.1,
            size_keys::kMostFt,
            {},
            {},
            {},
            "level run of the common rafters beside each hip and valley; a list is added up"},
    waste(10, kCommonPractice, "cut off, starter and ridge"),
    SizeKey{"bundles_per_square",
            SizeForm::Measure,
            1,
            10,
            3,
            kSecondaryText,
            {},
            "bundles in a square of 100 sq ft; read the bundle"},
};

Result<TakeOff> roof(Sizes& sizes) {
    const auto flat = flatArea(sizes, kWidth);
    if (!flat.ok()) {
        return flat.error();
    }
    if (!sizes.has("rise_in")) {
        return model::wrongUse("rise_in is missing: say how many inches it rises over 12 of run");
    }
    const double slope = sizes.value("rise_in") / kRiseRun;
    const double factor = std::sqrt(1 + slope * slope);
    const double hipFactor = std::sqrt(2 + slope * slope);
    const double sqft = flat.value() * factor;
    const double wastePercent = sizes.value("waste_percent");
    const double squares = withWaste(sqft, wastePercent) / kSqftPerSquare;
    TakeOff out;
    out.quantities = {{"slope_factor", factor},
                      {"hip_valley_factor", hipFactor},
                      {"area_sqft", sqft},
                      {"squares", sqft / kSqftPerSquare},
                      {"squares_with_waste", squares}};
    if (sizes.has("hip_valley_run_ft")) {
        out.quantities.push_back(
            {"hip_valley_length_ft", sizes.value("hip_valley_run_ft") * hipFactor});
    }
    out.wastePercent = wastePercent;
    out.buy = {inPacks("shingles", squares * sizes.value("bundles_per_square"), 1, "bundles")};
    return out;
}

constexpr std::array kBaseboardKeys = {
    feet("length_ft", "length of the room"),
    feet("width_ft", "width of the room"),
    feetSum("perimeter_ft", "length of the walls, instead of the room's sizes; a list is added up"),
    count("doors", "doors to leave out"),
    SizeKey{"door_width_ft",
            SizeForm::Measure,
            1,
            30,
            3,
            kCommonPractice,
            {},
            "width of one door with its casing"},
    waste(10, kCommonPractice, "cut off at corners"),
    SizeKey{"stick_ft", SizeForm::Measure, 1, 40, 16, kCommonPractice, {}, "length as sold"},
};

Result<double> perimeter(Sizes& sizes) {
    if (sizes.has("perimeter_ft")) {
        if (auto alone = refuseBeside(sizes, "perimeter_ft", {"length_ft", "width_ft"});
            !alone.ok()) {
            return alone.error();
        }
        return sizes.value("perimeter_ft");
    }
    if (auto whole = needAll(sizes, {"length_ft", "width_ft"},
                             "length_ft and width_ft of the room, or perimeter_ft");
        !whole.ok()) {
        return whole.error();
    }
    return 2 * (sizes.value("length_ft") + sizes.value("width_ft"));
}

Result<TakeOff> baseboard(Sizes& sizes) {
    const auto around = perimeter(sizes);
    if (!around.ok()) {
        return around.error();
    }
    const double doors = sizes.value("doors");
    const double run = around.value() - (doors > 0 ? doors * sizes.value("door_width_ft") : 0);
    if (!(run > 0)) {
        return model::wrongUse("doors take up all of the walls: check doors and door_width_ft");
    }
    const double wastePercent = sizes.value("waste_percent");
    const double total = withWaste(run, wastePercent);
    const double stick = sizes.value("stick_ft");
    TakeOff out;
    out.quantities = {{"length_ft", run}, {"length_with_waste_ft", total}};
    out.wastePercent = wastePercent;
    out.buy = {inPacks("baseboard", total, stick, "lengths")};
    return out;
}

constexpr std::array kInsulationKeys = {
    feetSum("length_ft", "length of the walls or floor; a list is added up"),
    feet("height_ft", "height of the walls"),
    feet("width_ft", "width of a floor or attic, instead of a height"),
    area("area, instead of the sizes; a list is added up"),
    size_keys::openings(),
    waste(5, kCommonPractice, "cut off; framing isn't taken out of the area"),
    SizeKey{"bag_sqft",
            SizeForm::Measure,
            1,
            1'000,
            {},
            {},
            {},
            "what one bag covers at the depth wanted, as printed on it"},
};

Result<TakeOff> insulation(Sizes& sizes) {
    const auto area = areaLessOpenings(sizes);
    if (!area.ok()) {
        return area.error();
    }
    const double wastePercent = sizes.value("waste_percent");
    TakeOff out = coveredArea(area.value(), wastePercent);
    out.buy = {
        covering(sizes, "insulation", withWaste(area.value(), wastePercent), "bag_sqft", "bags")};
    return out;
}

constexpr std::array kFixtureKeys = {
    feet("length_ft", "length of the room"),
    feet("width_ft", "width of the room"),
    SizeKey{"ceiling_ft", SizeForm::Measure, 5, 60, {}, {}, {}, "floor to ceiling"},
    SizeKey{"spacing_share",
            SizeForm::Measure,
            0.1,
            2,
            0.5,
            kSecondaryText,
            {},
            "greatest spacing, as a share of the ceiling height; half of it to the wall"},
};

// Lights of one row along `ftLong`: no further apart than `spacing`, half of that from each wall.
double lightsAlong(double ftLong, double spacing) {
    return std::fmax(1, roundedUp(ftLong / spacing));
}

Result<TakeOff> fixtures(Sizes& sizes) {
    if (auto whole = needAll(sizes, {"length_ft", "width_ft", "ceiling_ft"},
                             "length_ft, width_ft and ceiling_ft");
        !whole.ok()) {
        return whole.error();
    }
    const double ftLong = sizes.value("length_ft");
    const double ftWide = sizes.value("width_ft");
    const double spacing = sizes.value("ceiling_ft") * sizes.value("spacing_share");
    const double along = lightsAlong(ftLong, spacing);
    const double across = lightsAlong(ftWide, spacing);
    TakeOff out;
    out.quantities = {{"greatest_spacing_ft", spacing},
                      {"greatest_to_wall_ft", spacing / 2},
                      {"lights_along_length", along},
                      {"lights_along_width", across},
                      {"spacing_along_length_ft", ftLong / along},
                      {"spacing_along_width_ft", ftWide / across}};
    out.buy = {{"recessed lights", along * across, along * across, "each"}};
    return out;
}

constexpr std::string_view kHeights =
    "Working at height: fall protection, sound ladders, power lines kept clear. Old roofing may "
    "hold asbestos. Local codes and licensed practice decide.";
constexpr std::string_view kOldTrim =
    "Built before 1978: old trim paint may hold lead; test before cutting or sanding it. Local "
    "codes and licensed practice decide.";
constexpr std::string_view kAttic =
    "Loose pebbles in an attic may hold asbestos, and old wiring must not be buried: have both "
    "looked at first. Masks and eye cover. Local codes and licensed practice decide.";
constexpr std::string_view kWiring =
    "Wiring is for a licensed electrician, usually with a permit. Power off before a ceiling is "
    "opened; old ceilings may hold asbestos. Local codes and licensed practice decide.";

constexpr std::array kKinds = {
    TakeOffKind{"roof", "Shingles on pitched roofs", kRoofKeys,
                R"({"what":"roof","area_sqft":2000,"rise_in":6})", kFieldGuide, kHeights, roof},
    TakeOffKind{"baseboard", "Baseboard around rooms", kBaseboardKeys,
                R"({"what":"baseboard","length_ft":14,"width_ft":12,"doors":2})", kGeometry,
                kOldTrim, baseboard},
    TakeOffKind{"insulation", "Insulation in walls and attics", kInsulationKeys,
                R"({"what":"insulation","length_ft":40,"width_ft":25,"bag_sqft":50})", kGeometry,
                kAttic, insulation},
    TakeOffKind{"fixtures", "Recessed lights in a ceiling", kFixtureKeys,
                R"({"what":"fixtures","length_ft":15,"width_ft":12,"ceiling_ft":8})",
                kSecondaryText, kWiring, fixtures},
};

}  // namespace

std::span<const TakeOffKind> otherTakeOffs() {
    return kKinds;
}

}  // namespace ledgerboard::compute
