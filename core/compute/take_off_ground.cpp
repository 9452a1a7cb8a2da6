// Slab, sod and gravel: what lies on the ground.
#include <array>

#include "core/compute/take_off_sizes.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Result;
using size_keys::area;
using size_keys::feet;
using size_keys::waste;

constexpr double kCuftPerCuyd = 27;
constexpr double kInchesPerFoot = 12;
constexpr std::array<std::string_view, 1> kWidth = {"width_ft"};

constexpr SizeKey kOrderStep{"order_step_cuyd",
                             SizeForm::Measure,
                             0.05,
                             10,
                             1,
                             kCommonPractice,
                             {},
                             "the least step it is sold in, in cubic yards; ask the yard"};

constexpr std::array kSlabKeys = {
    feet("length_ft", "length"),
    feet("width_ft", "width"),
    area("area, instead of length and width; a list is added up"),
    SizeKey{"thickness_in", SizeForm::Measure, 0.5, 60, {}, {}, {}, "thickness in inches"},
    SizeKey{"volume_cuft",
            SizeForm::Sum,
            0.01,
            1'000'000,
            {},
            {},
            {},
            "volume, instead of area and thickness; a list (walls, footing, slab) is added up"},
    waste(10, kNavfac, "lost in forms, ground and mixer"),
    kOrderStep,
    SizeKey{"bag_cuft",
            SizeForm::Measure,
            0.05,
            5,
            0.6,
            kCommonPractice,
            {},
            "what one bag of dry mix makes (80 lb); read the bag"},
};

Result<double> slabVolume(Sizes& sizes) {
    if (sizes.has("volume_cuft")) {
        if (auto alone = refuseBeside(sizes, "volume_cuft",
                                      {"length_ft", "width_ft", "area_sqft", "thickness_in"});
            !alone.ok()) {
            return alone.error();
        }
        return sizes.value("volume_cuft");
    }
    auto flat = flatArea(sizes, kWidth);
    if (!flat.ok()) {
        return model::wrongUse(
            model::saying("%1, or volume_cuft", model::Saying(flat.error().message)));
    }
    if (!sizes.has("thickness_in")) {
        return model::wrongUse("thickness_in is missing: say how thick the slab is, in inches");
    }
    return flat.value() * sizes.value("thickness_in") / kInchesPerFoot;
}

Result<TakeOff> slab(Sizes& sizes) {
    const auto volume = slabVolume(sizes);
    if (!volume.ok()) {
        return volume.error();
    }
    const double wastePercent = sizes.value("waste_percent");
    const double cuft = withWaste(volume.value(), wastePercent);
    const double cuyd = cuft / kCuftPerCuyd;
    TakeOff out;
    out.quantities = {{"volume_cuft", volume.value()},
                      {"volume_cuyd", volume.value() / kCuftPerCuyd},
                      {"volume_with_waste_cuyd", cuyd}};
    out.wastePercent = wastePercent;
    const double bag = sizes.value("bag_cuft");
    out.buy = {
        {"ready-mixed concrete", cuyd, roundedUp(cuyd, sizes.value("order_step_cuyd")), "cu yd"},
        inPacks("or instead, dry mix", cuft, bag, "bags")};
    return out;
}

constexpr std::array kSodKeys = {
    feet("length_ft", "length"),
    feet("width_ft", "width"),
    area("area, instead of length and width; a list is added up"),
    waste(10, kSecondaryText, "cut off at edges, of the 5 to 10 % usually said"),
    SizeKey{"pallet_sqft",
            SizeForm::Measure,
            50,
            2'000,
            450,
            kSecondaryText,
            {},
            "what one pallet covers; ask the farm"},
};

Result<TakeOff> sod(Sizes& sizes) {
    const auto flat = flatArea(sizes, kWidth);
    if (!flat.ok()) {
        return flat.error();
    }
    const double wastePercent = sizes.value("waste_percent");
    TakeOff out = coveredArea(flat.value(), wastePercent);
    out.buy = {inPacks("sod", withWaste(flat.value(), wastePercent), sizes.value("pallet_sqft"),
                       "pallets")};
    return out;
}

constexpr std::array kGravelKeys = {
    feet("length_ft", "length"),
    feet("width_ft", "width"),
    area("area, instead of length and width; a list is added up"),
    SizeKey{"depth_in", SizeForm::Measure, 0.25, 120, {}, {}, {}, "depth in inches once packed"},
    waste(10, kCommonPractice, "lost, and packed down"),
    SizeKey{"tons_per_cuyd",
            SizeForm::Measure,
            0.5,
            3,
            1.4,
            kCommonPractice,
            {},
            "weight of a cubic yard in tons of 2,000 lb; ask the yard"},
    kOrderStep,
};

Result<TakeOff> gravel(Sizes& sizes) {
    const auto flat = flatArea(sizes, kWidth);
    if (!flat.ok()) {
        return flat.error();
    }
    if (!sizes.has("depth_in")) {
        return model::wrongUse("depth_in is missing: say how deep the gravel lies, in inches");
    }
    const double cuft = flat.value() * sizes.value("depth_in") / kInchesPerFoot;
    const double wastePercent = sizes.value("waste_percent");
    const double cuyd = withWaste(cuft / kCuftPerCuyd, wastePercent);
    TakeOff out;
    out.quantities = {{"area_sqft", flat.value()},
                      {"volume_cuft", cuft},
                      {"volume_cuyd", cuft / kCuftPerCuyd},
                      {"volume_with_waste_cuyd", cuyd},
                      {"weight_with_waste_tons", cuyd * sizes.value("tons_per_cuyd")}};
    out.wastePercent = wastePercent;
    out.buy = {{"gravel", cuyd, roundedUp(cuyd, sizes.value("order_step_cuyd")), "cu yd"}};
    return out;
}

constexpr std::string_view kDigging =
    "Have buried lines located before digging. Wet concrete burns skin and eyes. Local codes and "
    "licensed practice decide thickness, steel and footings.";

constexpr std::array kKinds = {
    TakeOffKind{"slab", "Concrete in slabs, walls and footings", kSlabKeys,
                R"({"what":"slab","length_ft":20,"width_ft":16,"thickness_in":4})", kNavfac,
                kDigging, slab},
    TakeOffKind{"sod", "Sod", kSodKeys, R"({"what":"sod","length_ft":60,"width_ft":30})",
                kSecondaryText, "Have buried lines located before digging.", sod},
    TakeOffKind{"gravel", "Gravel in drives, paths and beds", kGravelKeys,
                R"({"what":"gravel","length_ft":40,"width_ft":10,"depth_in":4})", kGeometry,
                "Have buried lines located before digging.", gravel},
};

}  // namespace

std::span<const TakeOffKind> groundTakeOffs() {
    return kKinds;
}

}  // namespace ledgerboard::compute
