#include "demo-data/photos/material.h"

namespace ledgerboard::photos {

namespace {

double fraction(double value) {
    return value - std::floor(value);
}

std::int64_t whole(double value) {
    return static_cast<std::int64_t>(std::floor(value));
}

// Three sizes of noise laid over each other.
double cloud(double u, double v, std::int64_t seed) {
    return 0.55 * noise(u, v, seed) + 0.30 * noise(2.1 * u, 2.1 * v, seed + 1) +
           0.15 * noise(4.3 * u, 4.3 * v, seed + 2);
}

Colour boards(const Material& m, double u, double v) {
    const std::int64_t row = whole(u / m.size);
    const double along = v / 5.0 + hash(row, 1, 7);
    const std::int64_t piece = whole(along);
    const double tone = 0.80 + 0.34 * hash(row, piece, 3);
    const double streak = 0.92 + 0.16 * noise(u * 22.0, v * 1.3, row);
    const double across = fraction(u / m.size);
    const double seam = std::min(across, 1.0 - across) * m.size;
    const double end = std::min(fraction(along), 1.0 - fraction(along)) * 5.0;
    const double dark = std::min(smoothStep(0.0, 0.025, seam), smoothStep(0.0, 0.03, end));
    return mix(m.other, m.main * (tone * streak), dark);
}

Colour tiles(const Material& m, double u, double v, double shift, double aspect) {
    const std::int64_t row = whole(v / m.size);
    const double moved = u / (m.size * aspect) + (row % 2 != 0 ? shift : 0.0);
    const double across = fraction(moved);
    const double up = fraction(v / m.size);
    const double joint =
        std::min(std::min(across, 1.0 - across) * m.size * aspect, std::min(up, 1.0 - up) * m.size);
    const double tone = 0.92 + 0.15 * hash(whole(moved), row, 5);
    const double wear = 0.95 + 0.10 * noise(u * 6.0, v * 6.0, 11);
    return mix(m.other, m.main * (tone * wear), smoothStep(0.012, 0.03, joint));
}

Colour wallpaper(const Material& m, double u, double v) {
    const double stripe = fraction(u / m.size);
    Colour ground = stripe < 0.5 ? m.main : mix(m.main, m.other, 0.30);
    const std::int64_t column = whole(u / m.size * 2.0);
    const double du = (fraction(u / m.size * 2.0) - 0.5) * m.size * 0.5;
    const double dv =
        (fraction(v / (m.size * 1.1) + (column % 2 != 0 ? 0.5 : 0.0)) - 0.5) * m.size * 1.1;
    const double angle = std::atan2(dv, du);
    const double petal = 0.085 * m.size * (1.0 + 0.45 * std::cos(5.0 * angle));
    if (du * du + dv * dv < petal * petal * 2.2) {
        ground = mix(m.other, ground, 0.15);
    }
    return ground * (0.90 + 0.16 * cloud(u * 0.6, v * 0.6, 21));
}

Colour cracked(const Material& m, double u, double v) {
    const double stain = smoothStep(0.52, 0.70, cloud(u * 0.28, v * 0.28, 41));
    Colour base = mix(m.main, m.other, 0.55 * stain);
    const double line = 2.0 * noise(v * 0.8, 3.0, 43) + 0.5 * noise(v * 4.0, 5.0, 44);
    const double away = std::abs(fraction(u / 7.0) * 7.0 - 2.0 - line);
    base = mix(m.other * 0.35, base, smoothStep(0.008, 0.035, away));
    return base * (0.97 + 0.06 * cloud(u, v, 45));
}

Colour view(const Material& m, double u, double v) {
    const double hill = 3.4 + 1.3 * cloud(u * 0.5, 0.0, 51);
    const Colour sky = mix(m.main * 1.05, m.main, clamp01((v - 3.0) / 5.0));
    return mix(m.other, sky, smoothStep(hill - 0.25, hill + 0.25, v));
}

}  // namespace

double noise(double u, double v, std::int64_t seed) {
    const std::int64_t iu = whole(u);
    const std::int64_t iv = whole(v);
    const double fu = smoothStep(0.0, 1.0, u - std::floor(u));
    const double fv = smoothStep(0.0, 1.0, v - std::floor(v));
    const double low = hash(iu, iv, seed) * (1.0 - fu) + hash(iu + 1, iv, seed) * fu;
    const double high = hash(iu, iv + 1, seed) * (1.0 - fu) + hash(iu + 1, iv + 1, seed) * fu;
    return low * (1.0 - fv) + high * fv;
}

Colour colourAt(const Material& m, double u, double v) {
    switch (m.pattern) {
        case Pattern::Plain:
            return m.main * (0.97 + 0.06 * cloud(u * 1.2, v * 1.2, 1));
        case Pattern::Boards:
            return boards(m, u, v);
        case Pattern::Tile:
            return tiles(m, u, v, 0.0, 1.0);
        case Pattern::Courses:
            return tiles(m, u, v, 0.5, 2.0);
        case Pattern::Wallpaper:
            return wallpaper(m, u, v);
        case Pattern::Blotches:
            return mix(m.main, m.other, smoothStep(0.42, 0.66, cloud(u / m.size, v / m.size, 31)));
        case Pattern::Carpet:
            return m.main *
                   (0.80 + 0.22 * noise(u * 26.0, v * 26.0, 3) + 0.14 * cloud(u * 0.5, v * 0.5, 4));
        case Pattern::Siding: {
            const double up = fraction(v / m.size);
            return mix(m.other, m.main * (0.94 + 0.10 * up), smoothStep(0.02, 0.14, up));
        }
        case Pattern::Shingle:
            return tiles(m, u, v, 0.5, 1.6) * (0.85 + 0.3 * noise(u * 9.0, v * 9.0, 6));
        case Pattern::Checker:
            return (whole(u / m.size) + whole(v / m.size)) % 2 != 0
                       ? m.other * (0.92 + 0.14 * cloud(u, v, 8))
                       : m.main * (0.90 + 0.16 * cloud(u, v, 9));
        case Pattern::Cracked:
            return cracked(m, u, v);
        case Pattern::Grass:
            return mix(m.main, m.other, cloud(u * 1.1, v * 1.1, 61)) *
                   (0.85 + 0.3 * noise(u * 12.0, v * 5.0, 62));
        case Pattern::View:
            return view(m, u, v);
    }
    return m.main;
}

}  // namespace ledgerboard::photos
