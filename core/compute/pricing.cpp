#include "core/compute/pricing.h"

#include <algorithm>

#include "core/model/check.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Money;
using model::Percent;
using model::Quantity;
using model::saying;
using model::Treatment;
using model::Wide;

char lowered(char c) {
    return static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
}

bool isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

std::string unitKey(std::string_view unit) {
    std::string key;
    for (const char c : unit) {
        if (!isSpace(c) && c != '.') {
            key += lowered(c);
        }
    }
    if (key.size() > 1 && key.back() == 's') {
        key.pop_back();
    }
    return key;
}

std::string workKey(std::string_view object, Treatment treatment) {
    return std::string(wordOf(treatment)) + "/" + folded(object);
}

// quantity x (1 + waste) in ten-millionths of a unit: exact.
Wide wastedTenMillionths(Quantity quantity, Percent waste) {
    return model::multiplyWide(quantity.thousandths(), Wide{10'000} + waste.basisPoints());
}

// The same in whole packs, in thousandths. Requires: pack > 0.
Wide packedThousandths(Wide wasted, Quantity pack) {
    const Wide onePack = model::multiplyWide(pack.thousandths(), 10'000);
    const Wide packs = (wasted + onePack - 1) / onePack;
    return model::multiplyWide(packs, pack.thousandths());
}

bool soldInPacks(const std::optional<Quantity>& pack) {
    return pack && *pack > Quantity{};
}

void requireNotNegative(Quantity quantity, Percent waste) {
    model::require(quantity >= Quantity{} && waste >= Percent{},
                   "a line's quantity and waste are not negative");
}

constexpr const char* kNoUnit = "no unit";

model::Saying unitSaid(const std::string& unit) {
    return unit.empty() ? saying("no unit") : model::asWritten(unit);
}

// Later "as of" wins, undated first; among equals the later row.
bool isNewer(const model::Price& a, const model::Price& b) {
    return a.asOf != b.asOf ? a.asOf > b.asOf : a.id > b.id;
}

Pricing pricedFromBook(const model::Item& item, Pricing pricing, const PriceBook& book) {
    std::string otherUnit;
    const model::Price* price = book.find(item.object, item.treatment, item.unit, &otherUnit);
    if (price == nullptr) {
        pricing.whyNot =
            (otherUnit.empty()
                 ? saying("the price book has no such object and treatment")
                 : saying("the price book has it by %1, not by %2",
                          unitSaid(otherUnit == kNoUnit ? "" : otherUnit), unitSaid(item.unit)))
                .text();
        return pricing;
    }
    if (!price->material && !price->labour) {
        pricing.whyNot = saying("its row of the price book has no material and no labour").text();
        return pricing;
    }
    const Percent waste = item.waste.value_or(price->waste.value_or(Percent{}));
    if (waste < Percent{}) {
        pricing.whyNot = saying("the waste in its row of the price book is below 0").text();
        return pricing;
    }
    const Quantity quantity = *item.quantity;
    pricing.by = PricedBy::PriceBook;
    pricing.price = price->id;
    pricing.line = lineCost(
        quantity, price->labour.value_or(Money{}), price->material.value_or(Money{}),
        item.waste.value_or(price->waste.value_or(Percent{})), item.pack ? item.pack : price->pack);
    if (!pricing.low && price->low) {
        pricing.low = times(quantity, *price->low);
    }
    if (!pricing.high && price->high) {
        pricing.high = times(quantity, *price->high);
    }
    return pricing;
}

}  // namespace

std::string folded(std::string_view text) {
    std::string out;
    for (const char c : text) {
        if (!isSpace(c)) {
            out += lowered(c);
        } else if (!out.empty() && out.back() != ' ') {
            out += ' ';
        }
    }
    if (!out.empty() && out.back() == ' ') {
        out.pop_back();
    }
    return out;
}

bool sameUnit(std::string_view a, std::string_view b) {
    return unitKey(a) == unitKey(b);
}

Money lineCost(Quantity quantity, Money labour, Money material, Percent waste,
               std::optional<Quantity> pack) {
    requireNotNegative(quantity, waste);
    const Wide wasted = wastedTenMillionths(quantity, waste);
    // Both parts in ten-millionths of a cent, so that the sum is rounded once.
    const Wide bought =
        soldInPacks(pack) ? model::multiplyWide(packedThousandths(wasted, *pack), 10'000) : wasted;
    const Wide labourPart =
        model::multiplyWide(model::multiplyWide(quantity.thousandths(), 10'000), labour.minor());
    const Wide materialPart = model::multiplyWide(bought, material.minor());
    Wide both = 0;
    if (__builtin_add_overflow(labourPart, materialPart, &both)) {
        throw model::OverflowError("the cost of a line is larger than can be kept");
    }
    return model::roundedMoney(both, 10'000'000);
}

Quantity materialQuantity(Quantity quantity, Percent waste, std::optional<Quantity> pack) {
    requireNotNegative(quantity, waste);
    const Wide wasted = wastedTenMillionths(quantity, waste);
    const Wide thousandths =
        soldInPacks(pack) ? packedThousandths(wasted, *pack) : (wasted + 9'999) / 10'000;
    return Quantity::fromThousandths(model::divideRounded(thousandths, 1));
}

PriceBook::PriceBook(const std::vector<model::Price>& prices) {
    for (const model::Price& price : prices) {
        byWork_[workKey(price.object, price.treatment)].push_back(&price);
    }
    for (auto& [work, rows] : byWork_) {
        std::sort(rows.begin(), rows.end(),
                  [](const model::Price* a, const model::Price* b) { return isNewer(*a, *b); });
    }
}

const model::Price* PriceBook::find(std::string_view object, Treatment treatment,
                                    std::string_view unit, std::string* otherUnit) const {
    const auto found = byWork_.find(workKey(object, treatment));
    if (found == byWork_.end()) {
        return nullptr;
    }
    for (const model::Price* price : found->second) {
        if (sameUnit(price->unit, unit)) {
            return price;
        }
    }
    if (otherUnit != nullptr) {
        const std::string& theirs = found->second.front()->unit;
        *otherUnit = theirs.empty() ? kNoUnit : theirs;
    }
    return nullptr;
}

Pricing priceOf(const model::Item& item, const PriceBook& book) {
    Pricing pricing;
    if (item.treatment == Treatment::Keep) {
        pricing.whyNot = saying("it is kept").text();
        return pricing;
    }
    pricing.low = item.costLow;
    pricing.high = item.costHigh;
    if (item.lumpSum) {
        pricing.by = PricedBy::LumpSum;
        pricing.line = *item.lumpSum;
        return pricing;
    }
    if (!item.quantity) {
        pricing.whyNot = saying("it has no quantity").text();
        return pricing;
    }
    if (*item.quantity < Quantity{} || item.waste.value_or(Percent{}) < Percent{}) {
        pricing.whyNot = saying("its quantity or waste is below 0").text();
        return pricing;
    }
    if (item.unitCostLabour || item.unitCostMaterial) {
        pricing.by = PricedBy::OwnUnitCosts;
        pricing.line = lineCost(*item.quantity, item.unitCostLabour.value_or(Money{}),
                                item.unitCostMaterial.value_or(Money{}),
                                item.waste.value_or(Percent{}), item.pack);
        return pricing;
    }
    return pricedFromBook(item, std::move(pricing), book);
}

model::Id<model::Kind::Option> countingOption(const model::Alternate& alternate) {
    return alternate.chosen.isNil() ? alternate.carried : alternate.chosen;
}

std::vector<Counting> countingOf(const model::JobRows& rows) {
    std::unordered_map<model::Id<model::Kind::Alternate>, model::Id<model::Kind::Option>> counting;
    for (const model::Alternate& alternate : rows.alternates) {
        counting.emplace(alternate.id, countingOption(alternate));
    }
    std::unordered_map<model::Id<model::Kind::Option>, bool> optionCounts;
    for (const model::Option& option : rows.options) {
        const auto found = counting.find(option.alternate);
        optionCounts.emplace(option.id, found == counting.end() || found->second == option.id);
    }
    std::vector<Counting> out;
    out.reserve(rows.items.size());
    for (const model::Item& item : rows.items) {
        const auto option = optionCounts.find(item.option);
        if (item.treatment == Treatment::Keep) {
            out.push_back(Counting::Kept);
        } else if (!item.option.isNil() && option != optionCounts.end() && !option->second) {
            out.push_back(Counting::NotCarried);
        } else {
            out.push_back(Counting::Counts);
        }
    }
    return out;
}

}  // namespace ledgerboard::compute
