// How do the tests of this folder ask the program for a figure and compare it with a source's?
#pragma once

#include <array>
#include <cmath>
#include <cstdio>
#include <gtest/gtest.h>
#include <string>
#include <string_view>

#include <nlohmann/json.hpp>

#include "desktop/cli/work/work.h"

namespace ledgerboard::outside {

// What `work name` answers to `input`. A failed test and null where it refuses.
inline nlohmann::json worked(std::string_view name, std::string_view input) {
    auto out = work::runWork(name, nlohmann::json::parse(input));
    if (!out.ok()) {
        ADD_FAILURE() << name << ": " << out.error().message;
        return nullptr;
    }
    return out.value();
}

// The number at `pointer` ("/eac/remaining_at_cpi"). A failed test and NaN where there is none.
inline double figure(const nlohmann::json& out, const std::string& pointer) {
    const nlohmann::json::json_pointer at(pointer);
    if (!out.contains(at) || !out.at(at).is_number()) {
        ADD_FAILURE() << "no number at " << pointer << " in " << out.dump();
        return std::nan("");
    }
    return out.at(at).get<double>();
}

// Equal to the 10 significant digits that `work` prints.
inline void expectExact(const nlohmann::json& out, const std::string& pointer, double expected) {
    const double most = std::abs(expected) * 1e-9 + 1e-12;
    EXPECT_NEAR(figure(out, pointer), expected, most) << pointer;
}

// Rounded as a source printed it.
inline std::string asPrinted(double number, int decimals) {
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%.*f", decimals, number);
    return text.data();
}

}  // namespace ledgerboard::outside
