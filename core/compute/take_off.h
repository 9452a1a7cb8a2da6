// How much material does a piece of work take, and what must be bought for it?
//
// Sizes go in, and out come the bare quantities, the waste, what is bought (rounded up to what is
// sold), every assumption with where it comes from, and the usual caution of the work.
//
// Units: each key names its own at its end (_ft, _in, _sqft, _cuyd, _gal, _percent 0 to 100).
// Source: named with each figure; "common practice, no source" and "secondary text, not confirmed"
// say so. Every usual value is a key, so that a caller who knows better can give another.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/result.h"

namespace ledgerboard::compute {

enum class SizeForm {
    Measure,  // one number
    Sum,      // one number, or a list of numbers that are added up
    Count,    // one whole number
    Word,     // one of a few words
};

// One key that a kind of work understands.
struct SizeKey {
    std::string_view name;
    SizeForm form = SizeForm::Measure;
    double least = 0;  // of each number given, both ends allowed
    double most = 0;
    std::optional<double> usual{};   // what counts where the key isn't given
    std::string_view usualSource{};  // empty: the usual value is nothing, and no assumption
    std::string_view words{};        // for a Word: "straight diagonal", the first is the usual one
    std::string_view says{};
};

// One key as the caller gave it. Exactly one of `numbers` and `word` is filled.
struct GivenSize {
    std::string key;
    std::vector<double> numbers;
    std::string word;
};

struct Figure {
    std::string_view key;
    double value = 0;
};

struct Purchase {
    std::string what;
    double needed = 0;  // with waste, in `unit`
    double bought = 0;  // `needed` rounded up to what is sold
    std::string unit;
};

// A value nobody gave. `says` tells what it is, `source` where it comes from.
struct Assumption {
    std::string key;
    double value = 0;
    std::string says;
    std::string source;
};

struct TakeOff {
    std::vector<Figure> quantities;      // without waste, unrounded
    std::optional<double> wastePercent;  // empty: this work is counted, it has no waste
    std::vector<Purchase> buy;
    std::vector<Assumption> assumed;  // in the order they were used
    std::string_view source;          // of the arithmetic
    std::string_view caution;
};

class Sizes;

// One kind of work: what it is called, which keys it takes, how it is taken off.
struct TakeOffKind {
    std::string_view what;
    std::string_view says;
    std::span<const SizeKey> keys;
    std::string_view example;  // JSON
    std::string_view source;
    std::string_view caution;
    model::Result<TakeOff> (*compute)(Sizes& sizes);
};

// All kinds, in the order in which they are listed to people.
[[nodiscard]] std::span<const TakeOffKind> takeOffKinds();

// Takes off `what`. Errors (WrongUse), each naming the key: no such kind; a key it does not take,
// or twice the same; a number missing, not finite, or outside the key's range; two ways of giving
// the same size at once.
[[nodiscard]] model::Result<TakeOff> takeOff(std::string_view what,
                                             std::span<const GivenSize> given);

}  // namespace ledgerboard::compute
