// Points, directions and colours of the painted rooms: three numbers and what is done with them.
//
// Units: lengths in feet, x to the right, y up, z into the picture; colours 0 to 1, linear light.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace ledgerboard::photos {

struct Vec {
    double x = 0;
    double y = 0;
    double z = 0;
};

using Colour = Vec;

[[nodiscard]] constexpr Vec operator+(Vec a, Vec b) {
    return {a.x + b.x, a.y + b.y, a.z + b.z};
}

[[nodiscard]] constexpr Vec operator-(Vec a, Vec b) {
    return {a.x - b.x, a.y - b.y, a.z - b.z};
}

[[nodiscard]] constexpr Vec operator*(Vec a, double k) {
    return {a.x * k, a.y * k, a.z * k};
}

// Part by part, as light on a colour.
[[nodiscard]] constexpr Vec operator*(Vec a, Vec b) {
    return {a.x * b.x, a.y * b.y, a.z * b.z};
}

[[nodiscard]] constexpr double dot(Vec a, Vec b) {
    return a.x * b.x + a.y * b.y + a.z * b.z;
}

[[nodiscard]] constexpr Vec cross(Vec a, Vec b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

[[nodiscard]] inline double length(Vec a) {
    return std::sqrt(dot(a, a));
}

[[nodiscard]] inline Vec unit(Vec a) {
    return a * (1.0 / std::max(length(a), 1e-12));
}

[[nodiscard]] constexpr Vec mix(Vec a, Vec b, double share) {
    return a * (1.0 - share) + b * share;
}

[[nodiscard]] inline double clamp01(double value) {
    return std::clamp(value, 0.0, 1.0);
}

// 0 below `from`, 1 above `to`, smooth between.
[[nodiscard]] inline double smoothStep(double from, double to, double value) {
    const double t = clamp01((value - from) / (to - from));
    return t * t * (3.0 - 2.0 * t);
}

// 0 to 1, always the same for the same three numbers: the only chance in these pictures.
[[nodiscard]] inline double hash(std::int64_t a, std::int64_t b, std::int64_t c) {
    auto h = static_cast<std::uint64_t>(a) * 0x9E3779B97F4A7C15ULL;
    h ^= static_cast<std::uint64_t>(b) * 0xC2B2AE3D27D4EB4FULL + (h << 13U);
    h ^= static_cast<std::uint64_t>(c) * 0x165667B19E3779F9ULL + (h >> 7U);
    h = (h ^ (h >> 31U)) * 0xD6E8FEB86659FD93ULL;
    h = (h ^ (h >> 29U)) * 0xBF58476D1CE4E5B9ULL;
    return static_cast<double>((h ^ (h >> 32U)) >> 11U) * (1.0 / 9007199254740992.0);
}

}  // namespace ledgerboard::photos
