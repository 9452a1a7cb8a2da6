// Which sizes were given for a take-off, are they sensible, and which usual values stand in for the
// rest? For the files take_off_*.cpp alone; callers include take_off.h.
#pragma once

#include <initializer_list>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/compute/take_off.h"
#include "core/model/result.h"

namespace ledgerboard::compute {

// Where usual values come from.
inline constexpr std::string_view kNavfac = "NAVFAC P-405 by NAVEDTRA 14070 p. 103";
inline constexpr std::string_view kEstimatingTextbook = "estimating textbook p. 203";
inline constexpr std::string_view kFieldGuide = "trade field guide; exact by geometry";
inline constexpr std::string_view kSecondaryText = "secondary text, not confirmed";
inline constexpr std::string_view kCommonPractice = "common practice, no source";
inline constexpr std::string_view kGeometry = "geometry";

// The sizes of one take-off, checked against the table of its kind.
class Sizes {
  public:
    // Errors (WrongUse): as takeOff, but for the keys that belong together.
    [[nodiscard]] static model::Result<Sizes> from(const TakeOffKind& kind,
                                                   std::span<const GivenSize> given);

    [[nodiscard]] bool has(std::string_view key) const;

    // The number given (a list added up), else the usual value, which is then noted as assumed.
    // Requires: the key is in the table, and is given or has a usual value.
    [[nodiscard]] double value(std::string_view key);

    // The word given, else the usual one. Requires: the key is in the table as a Word.
    [[nodiscard]] std::string_view word(std::string_view key) const;

    // Notes an assumption that is no plain usual value.
    void assume(Assumption assumption);

    [[nodiscard]] const std::vector<Assumption>& assumed() const { return assumed_; }

  private:
    struct Held {
        std::string key;
        double number = 0;
        std::string word;
    };

    [[nodiscard]] const Held* find(std::string_view key) const;

    std::span<const SizeKey> keys_;
    std::vector<Held> held_;
    std::vector<Assumption> assumed_;
};

// Area of something flat: area_sqft, or length_ft times one of `acrossKeys`.
// Errors (WrongUse): neither or both given, or two of `acrossKeys`.
[[nodiscard]] model::Result<double> flatArea(Sizes& sizes,
                                             std::span<const std::string_view> acrossKeys);

// The same along height_ft or width_ft, less openings_sqft. Errors: as flatArea; openings that take
// up all of it.
[[nodiscard]] model::Result<double> areaLessOpenings(Sizes& sizes);

// Errors (WrongUse): one of `keys` isn't given: "KEY is missing: give `instead`".
[[nodiscard]] model::Result<void> needAll(const Sizes& sizes,
                                          std::initializer_list<std::string_view> keys,
                                          std::string_view instead);

// Errors (WrongUse): one of `others` is given beside `key`, which replaces them.
[[nodiscard]] model::Result<void> refuseBeside(const Sizes& sizes, std::string_view key,
                                               std::initializer_list<std::string_view> others);

// `amount` rounded up to whole multiples of `step`. A hair above a whole one, as left by binary
// fractions (110.00000000000001 / 11), still is that one. Requires: step > 0.
[[nodiscard]] double roundedUp(double amount, double step = 1);

// What is bought of `amount`, in whole packs of `perPack` each. Requires: perPack > 0.
[[nodiscard]] Purchase inPacks(std::string what, double amount, double perPack, std::string unit);

// The same where the caller may know what a pack covers: packs of `packKey`, else square feet.
[[nodiscard]] Purchase covering(Sizes& sizes, std::string what, double sqft,
                                std::string_view packKey, std::string packUnit);

// What every covering begins with: its area, bare and with waste.
[[nodiscard]] TakeOff coveredArea(double sqft, double wastePercent);

// Keys that several kinds share.
namespace size_keys {

inline constexpr double kMostFt = 2'000;
inline constexpr double kMostSqft = 1'000'000;

[[nodiscard]] constexpr SizeKey feet(std::string_view name, std::string_view says) {
    return {name, SizeForm::Measure, 0.1, kMostFt, {}, {}, {}, says};
}

[[nodiscard]] constexpr SizeKey feetSum(std::string_view name, std::string_view says) {
    return {name, SizeForm::Sum, 0.1, kMostFt, {}, {}, {}, says};
}

[[nodiscard]] constexpr SizeKey area(std::string_view says) {
    return {"area_sqft", SizeForm::Sum, 0.1, kMostSqft, {}, {}, {}, says};
}

[[nodiscard]] constexpr SizeKey waste(double usual, std::string_view source,
                                      std::string_view says = "bought beyond the quantity") {
    return {"waste_percent", SizeForm::Measure, 0, 50, usual, source, {}, says};
}

// None where not given.
[[nodiscard]] constexpr SizeKey openings() {
    return {"openings_sqft",
            SizeForm::Sum,
            0,
            kMostSqft,
            0,
            {},
            {},
            "doors and windows to leave out; a list is added up"};
}

[[nodiscard]] constexpr SizeKey count(std::string_view name, std::string_view says) {
    return {name, SizeForm::Count, 0, 1'000, 0, {}, {}, says};
}

}  // namespace size_keys

// What is still to be written down once, not in each kind: 1 + waste.
[[nodiscard]] double withWaste(double quantity, double wastePercent);

// The tables, one per file.
[[nodiscard]] std::span<const TakeOffKind> groundTakeOffs();   // slab, sod, gravel
[[nodiscard]] std::span<const TakeOffKind> surfaceTakeOffs();  // paint, tile, wall-board, flooring
[[nodiscard]] std::span<const TakeOffKind>
otherTakeOffs();  // roof, baseboard, insulation, fixtures

}  // namespace ledgerboard::compute
