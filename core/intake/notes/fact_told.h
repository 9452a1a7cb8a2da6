// The facts told in the notes and the figures told without a word for them, while they are settled.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/intake/notes/facts.h"

namespace ledgerboard::intake {

constexpr std::int64_t kThousandDollars = 1'000'000;  // in thousandths

// `value` as a share of `whole` in percent; 0 where there is no whole.
[[nodiscard]] inline std::int64_t percentOf(std::int64_t value, std::int64_t whole) {
    return whole <= 0 ? 0 : value / 1000 * 100 / (whole / 1000 == 0 ? 1 : whole / 1000);
}

[[nodiscard]] inline bool within(std::int64_t value, std::int64_t low, std::int64_t high) {
    return value >= low && value <= high;
}

struct ToldFacts {
    std::vector<ToldFact> told;
    const std::vector<LooseFigure>& loose;
    int last = 0;  // the last sentence of the notes

    [[nodiscard]] bool has(std::string_view name) const;

    // The sum first told for that fact; 0 where none was.
    [[nodiscard]] std::int64_t first(std::string_view name) const;

    // Sentences to the nearest fact; many where there is none.
    [[nodiscard]] int farFromFacts(int at) const;

    // Whether the figure is told among the facts, or where the notes close, with hardly a word.
    [[nodiscard]] bool isAmongFacts(const LooseFigure& figure) const;

    // "Eighty three", of a house of 1983.
    [[nodiscard]] bool isYear(const LooseFigure& figure) const;

    // Makes the figure a fact, unless it is one.
    void add(const std::string& name, const LooseFigure& figure, const std::string& value);

    // Takes out the facts that lost their name, and of two alike the second.
    void dropNameless();

  private:
    [[nodiscard]] bool hasCompany(const LooseFigure& figure) const;
};

// Gives each sum the part of the deal that it suits best, and drops what contradicts the rest.
void settleSums(ToldFacts& facts);

}  // namespace ledgerboard::intake
