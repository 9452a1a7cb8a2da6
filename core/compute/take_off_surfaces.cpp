// Paint, tile, wall board and flooring: what covers a wall, a ceiling or a floor.
#include <array>

#include "core/compute/take_off_sizes.h"

namespace ledgerboard::compute {

namespace {

using model::Result;
using size_keys::area;
using size_keys::count;
using size_keys::feet;
using size_keys::feetSum;
using size_keys::waste;

constexpr double kSqInchesPerSqft = 144;
constexpr std::array<std::string_view, 1> kWidth = {"width_ft"};
constexpr std::array<std::string_view, 2> kHeightOrWidth = {"height_ft", "width_ft"};

constexpr std::array kPaintKeys = {
    feet("length_ft", "length of the room"),
    feet("width_ft", "width of the room"),
    SizeKey{"height_ft", SizeForm::Measure, 0.5, 60, {}, {}, {}, "floor to ceiling"},
    area("area to paint, instead of the room's sizes; a list is added up"),
    count("doors", "doors left unpainted"),
    SizeKey{"door_sqft", SizeForm::Measure, 1, 200, 20, kSecondaryText, {}, "area of one door"},
    count("windows", "windows"),
    SizeKey{"window_sqft", SizeForm::Measure, 1, 400, 15, kSecondaryText, {}, "area of one window"},
    SizeKey{"coats", SizeForm::Count, 1, 10, 2, kCommonPractice, {}, "coats of paint"},
    SizeKey{"sqft_per_gal",
            SizeForm::Measure,
            50,
            1'000,
            350,
            kSecondaryText,
            {},
            "what a gallon covers in one coat, of the 350 to 400 usually said"},
    SizeKey{"primer_coats", SizeForm::Count, 0, 5, 0, {}, {}, "coats of primer before"},
    SizeKey{"primer_sqft_per_gal",
            SizeForm::Measure,
            50,
            1'000,
            200,
            kSecondaryText,
            {},
            "what a gallon of primer covers, of the 200 to 300 usually said"},
    waste(10, kCommonPractice, "left in trays and rollers, of the 5 to 10 % usually said"),
    SizeKey{"can_gal", SizeForm::Measure, 0.1, 60, 1, kCommonPractice, {}, "gallons in one can"},
};

// Walls of a room less doors and windows, or the area as given.
Result<double> paintedArea(Sizes& sizes) {
    if (sizes.has("area_sqft")) {
        if (auto alone = refuseBeside(sizes, "area_sqft",
                                      {"length_ft", "width_ft", "height_ft", "doors", "windows"});
            !alone.ok()) {
            return alone.error();
        }
        return sizes.value("area_sqft");
    }
    if (auto whole = needAll(sizes, {"length_ft", "width_ft", "height_ft"},
                             "length_ft, width_ft and height_ft of the room, or area_sqft");
        !whole.ok()) {
        return whole.error();
    }
    const double walls =
        2 * (sizes.value("length_ft") + sizes.value("width_ft")) * sizes.value("height_ft");
    const double doors = sizes.value("doors");
    const double windows = sizes.value("windows");
    const double openings = (doors > 0 ? doors * sizes.value("door_sqft") : 0) +
                            (windows > 0 ? windows * sizes.value("window_sqft") : 0);
    if (openings >= walls) {
        return model::wrongUse(
            "doors and windows take up all of the walls: check doors, windows, "
            "door_sqft and window_sqft");
    }
    return walls - openings;
}

Result<TakeOff> paint(Sizes& sizes) {
    const auto painted = paintedArea(sizes);
    if (!painted.ok()) {
        return painted.error();
    }
    const double perCoat = painted.value() / sizes.value("sqft_per_gal");
    const double gallons = perCoat * sizes.value("coats");
    const double wastePercent = sizes.value("waste_percent");
    const double can = sizes.value("can_gal");
    TakeOff out;
    out.quantities = {{"area_sqft", painted.value()},
                      {"gallons_per_coat", perCoat},
                      {"gallons", gallons},
                      {"gallons_with_waste", withWaste(gallons, wastePercent)}};
    out.wastePercent = wastePercent;
    out.buy = {inPacks("paint", withWaste(gallons, wastePercent), can, "cans")};
    if (const double coats = sizes.value("primer_coats"); coats > 0) {
        const double primer = painted.value() * coats / sizes.value("primer_sqft_per_gal");
        out.quantities.push_back({"primer_gallons", primer});
        out.buy.push_back(inPacks("primer", withWaste(primer, wastePercent), can, "cans"));
    }
    return out;
}

constexpr SizeKey kBox{
    "box_sqft", SizeForm::Measure, 0.5, 500, {}, {}, {}, "what one box covers, as printed on it"};

constexpr std::array kTileKeys = {
    feet("length_ft", "length of the floor or wall"),
    feet("width_ft", "width of the floor"),
    feet("height_ft", "height of the wall, instead of a width"),
    area("area, instead of length and width; a list is added up"),
    SizeKey{"pattern", SizeForm::Word, 0, 0, {}, {}, "straight diagonal", "how the tile is laid"},
    SizeKey{"waste_percent",
            SizeForm::Measure,
            0,
            50,
            {},
            {},
            {},
            "cut off and broken; 10 straight, 15 diagonal where not given"},
    SizeKey{"tile_length_in", SizeForm::Measure, 0.25, 120, {}, {}, {}, "length of one tile"},
    SizeKey{"tile_width_in", SizeForm::Measure, 0.25, 120, {}, {}, {}, "width of one tile"},
    kBox,
};

double tileWaste(Sizes& sizes) {
    if (sizes.has("waste_percent")) {
        return sizes.value("waste_percent");
    }
    const bool diagonal = sizes.word("pattern") == "diagonal";
    const double usual = diagonal ? 15 : 10;
    sizes.assume(
        {"waste_percent", usual,
         diagonal ? "cut off and broken, laid diagonally" : "cut off and broken, laid straight",
         std::string(kCommonPractice)});
    return usual;
}

Result<TakeOff> tile(Sizes& sizes) {
    const auto flat = flatArea(sizes, kHeightOrWidth);
    if (!flat.ok()) {
        return flat.error();
    }
    const bool hasLength = sizes.has("tile_length_in");
    if (hasLength != sizes.has("tile_width_in")) {
        return model::wrongUse(std::string(hasLength ? "tile_width_in" : "tile_length_in") +
                               " is missing: give both sizes of one tile, or neither");
    }
    const double wastePercent = tileWaste(sizes);
    const double sqft = withWaste(flat.value(), wastePercent);
    TakeOff out = coveredArea(flat.value(), wastePercent);
    if (hasLength) {
        const double each =
            sizes.value("tile_length_in") * sizes.value("tile_width_in") / kSqInchesPerSqft;
        out.quantities.push_back({"tiles", flat.value() / each});
        if (!sizes.has("box_sqft")) {
            out.buy = {inPacks("tile", sqft, each, "tiles")};
            return out;
        }
    }
    out.buy = {covering(sizes, "tile", sqft, "box_sqft", "boxes")};
    return out;
}

constexpr std::array kFlooringKeys = {
    feet("length_ft", "length"),
    feet("width_ft", "width"),
    area("area, instead of length and width; a list is added up"),
    waste(10, kCommonPractice, "cut off at ends, of the 7 to 10 % usually said"),
    kBox,
};

Result<TakeOff> flooring(Sizes& sizes) {
    const auto flat = flatArea(sizes, kWidth);
    if (!flat.ok()) {
        return flat.error();
    }
    const double wastePercent = sizes.value("waste_percent");
    TakeOff out = coveredArea(flat.value(), wastePercent);
    out.buy = {
        covering(sizes, "flooring", withWaste(flat.value(), wastePercent), "box_sqft", "boxes")};
    return out;
}

constexpr std::array kWallBoardKeys = {
    feetSum("length_ft", "length of the walls or ceiling; a list is added up"),
    feet("height_ft", "height of the walls"),
    feet("width_ft", "width of a ceiling, instead of a height"),
    area("area, instead of the sizes; a list is added up"),
    size_keys::openings(),
    SizeKey{"sheet_sqft",
            SizeForm::Measure,
            8,
            100,
            32,
            kEstimatingTextbook,
            {},
            "area of one sheet (4 by 8 ft)"},
    waste(5, kEstimatingTextbook, "cut off and broken; crooked old rooms often take 10"),
    SizeKey{"tape_ft_per_1000_sqft",
            SizeForm::Measure,
            0,
            5'000,
            380,
            kEstimatingTextbook,
            {},
            "joint tape"},
    SizeKey{"roll_ft", SizeForm::Measure, 10, 2'000, 500, kCommonPractice, {}, "tape on one roll"},
    SizeKey{"compound_gal_per_1000_sqft",
            SizeForm::Measure,
            0,
            100,
            5,
            kEstimatingTextbook,
            {},
            "joint compound"},
    SizeKey{"pail_gal",
            SizeForm::Measure,
            0.5,
            10,
            4.5,
            kCommonPractice,
            {},
            "joint compound in one pail"},
};

Result<TakeOff> wallBoard(Sizes& sizes) {
    const auto area = areaLessOpenings(sizes);
    if (!area.ok()) {
        return area.error();
    }
    const double sqft = area.value();
    const double sheet = sizes.value("sheet_sqft");
    const double wastePercent = sizes.value("waste_percent");
    const double total = withWaste(sqft, wastePercent);
    const double tape = sqft / 1'000 * sizes.value("tape_ft_per_1000_sqft");
    const double compound = sqft / 1'000 * sizes.value("compound_gal_per_1000_sqft");
    TakeOff out;
    out.quantities = {{"area_sqft", sqft},
                      {"sheets", sqft / sheet},
                      {"sheets_rounded_up", roundedUp(sqft / sheet)},
                      {"sheets_with_waste", total / sheet},
                      {"tape_ft", tape},
                      {"compound_gal", compound}};
    out.wastePercent = wastePercent;
    out.buy = {inPacks("wall board", total, sheet, "sheets"),
               inPacks("joint tape", tape, sizes.value("roll_ft"), "rolls"),
               inPacks("joint compound", compound, sizes.value("pail_gal"), "pails")};
    return out;
}

constexpr std::string_view kOldPaint =
    "Built before 1978: old paint may hold lead, and paid work that disturbs it likely needs a "
    "lead-safe certified firm. Air out the room. Local codes and licensed practice decide.";
constexpr std::string_view kOldFloor =
    "Old floors, their glue and backing may hold asbestos: test before touching. Cutting tile and "
    "stone makes silica dust: wet or vacuum, masks. Local codes and licensed practice decide.";
constexpr std::string_view kOldWall =
    "Old plaster, texture and joint compound may hold asbestos, old paint lead: test before "
    "touching. A wall that may bear needs an engineer. Local codes and licensed practice decide.";

constexpr std::array kKinds = {
    TakeOffKind{
        "paint", "Paint on walls", kPaintKeys,
        R"({"what":"paint","length_ft":15,"width_ft":10,"height_ft":9,"doors":1,"windows":1})",
        kSecondaryText, kOldPaint, paint},
    TakeOffKind{"tile", "Tile on floors and walls", kTileKeys,
                R"({"what":"tile","length_ft":8,"width_ft":5,"pattern":"diagonal","box_sqft":11})",
                kGeometry, kOldFloor, tile},
    TakeOffKind{"wall-board", "Wall board on walls and ceilings", kWallBoardKeys,
                R"({"what":"wall-board","length_ft":148,"height_ft":8})", kEstimatingTextbook,
                kOldWall, wallBoard},
    TakeOffKind{"flooring", "Plank and sheet flooring", kFlooringKeys,
                R"({"what":"flooring","length_ft":14,"width_ft":12,"box_sqft":20})", kGeometry,
                kOldFloor, flooring},
};

}  // namespace

std::span<const TakeOffKind> surfaceTakeOffs() {
    return kKinds;
}

}  // namespace ledgerboard::compute
