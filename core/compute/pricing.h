// What does an item cost before anything is signed or billed, and does it count at all?
//
// Line = quantity x labour + quantity x (1 + waste) x material, the material rounded up to whole
// packs where it is sold in packs; a lump sum replaces both. Rounded to money once, at the end.
// Source: project decision (the trade's usual line; packs are rounded up since a part of one is not
// sold).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/model/rows.h"

namespace ledgerboard::compute {

// Small letters (ASCII), one space between words, none at the ends: how names are compared.
[[nodiscard]] std::string folded(std::string_view text);

// The same unit? Compared folded, without spaces, dots and a plural s: "Sq. ft." is "sqft".
[[nodiscard]] bool sameUnit(std::string_view a, std::string_view b);

// Quantity x labour + quantity x (1 + waste) x material, in whole packs where `pack` is more than
// 0. Requires: quantity and waste not negative. Errors: OverflowError.
[[nodiscard]] model::Money lineCost(model::Quantity quantity, model::Money labour,
                                    model::Money material, model::Percent waste,
                                    std::optional<model::Quantity> pack);

// How much material that is: quantity x (1 + waste), in whole packs; a part of a thousandth of a
// unit is rounded up.
[[nodiscard]] model::Quantity materialQuantity(model::Quantity quantity, model::Percent waste,
                                               std::optional<model::Quantity> pack);

// The price book, ready to be asked. Keeps pointers into the list it was made from, which must
// outlive it. Threads: any number may ask.
class PriceBook {
  public:
    explicit PriceBook(const std::vector<model::Price>& prices);

    // The price of an object and treatment in a unit: of several the one with the latest "as of",
    // among equals the one entered last. Null where there is none. `otherUnit` (may be null) is set
    // to the unit it is priced by where only the unit did not agree.
    [[nodiscard]] const model::Price* find(std::string_view object, model::Treatment treatment,
                                           std::string_view unit, std::string* otherUnit) const;

  private:
    std::unordered_map<std::string, std::vector<const model::Price*>> byWork_;
};

enum class PricedBy { Nothing, LumpSum, OwnUnitCosts, PriceBook };

struct Pricing {
    PricedBy by = PricedBy::Nothing;
    model::Money line;                // the likely cost; 0 where not priced
    std::optional<model::Money> low;  // empty where nobody said
    std::optional<model::Money> high;
    model::Id<model::Kind::Price> price;  // row of the price book taken, nil where none
    std::string whyNot;  // where not priced: what is missing, as a clause ("it has no quantity")
};

// Prices an item: its lump sum; else its own unit costs (one entered, the other is 0); else the
// price book. Waste and pack are the item's own where entered, else those of the price row taken.
// Low and high are the item's own, else (priced from the book) those of the price row x quantity.
// A kept item costs nothing. Errors: OverflowError.
[[nodiscard]] Pricing priceOf(const model::Item& item, const PriceBook& book);

// Does it count in budget, plan and percent?
enum class Counting {
    Counts,
    Kept,        // treatment keep: no cost, days or mark
    NotCarried,  // belongs to an option that is neither chosen nor carried meanwhile
};

// The option of an alternate that counts: the chosen one, else the one carried, else none (nil).
[[nodiscard]] model::Id<model::Kind::Option> countingOption(const model::Alternate& alternate);

// One for each of rows.items, in the same order. An item that names an option that is not in the
// job, or one whose alternate is not, counts.
[[nodiscard]] std::vector<Counting> countingOf(const model::JobRows& rows);

}  // namespace ledgerboard::compute
