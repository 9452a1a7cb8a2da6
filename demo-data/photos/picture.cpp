#include "demo-data/photos/picture.h"

#include <array>
#include <cstdio>
#include <memory>
#include <numbers>
#include <turbojpeg.h>
#include <utility>

namespace ledgerboard::photos {

namespace {

constexpr int kCoarse = 3;  // light is soft: a third of the detail is enough
constexpr int kCoarseWidth = kWidth / kCoarse;
constexpr int kCoarseHeight = kHeight / kCoarse;
constexpr double kFar = 400.0;
constexpr int kLightSamplesAcross = 2;
constexpr int kOpenSamples = 5;

struct View {
    Vec at;
    Vec right;
    Vec up;
    Vec forward;
    double spread;

    explicit View(const Camera& camera) : at(camera.at) {
        const double turn = camera.turnDegrees * std::numbers::pi / 180.0;
        const double tilt = camera.tiltDegrees * std::numbers::pi / 180.0;
        forward = {std::sin(turn) * std::cos(tilt), std::sin(tilt),
                   std::cos(turn) * std::cos(tilt)};
        right = {std::cos(turn), 0, -std::sin(turn)};
        up = cross(forward, right);
        spread = std::tan(camera.wideDegrees * std::numbers::pi / 360.0);
    }

    // The ray through a point of the picture, in pixels.
    [[nodiscard]] Ray through(double x, double y) const {
        const double h = (2.0 * x / kWidth - 1.0) * spread;
        const double v = (1.0 - 2.0 * y / kHeight) * spread * kHeight / kWidth;
        return {at, unit(forward + right * h + up * v)};
    }
};

struct Lit {
    int shape = -1;
    Vec normal;
    Colour light;
};

// Two directions square to `n`.
std::array<Vec, 2> beside(Vec n) {
    const Vec a = unit(cross(std::abs(n.y) < 0.9 ? Vec{0, 1, 0} : Vec{1, 0, 0}, n));
    return {a, cross(n, a)};
}

// Share of the half sphere over a place that is open for a few feet: corners are darker.
double openness(const Scene& scene, Vec place, Vec n, int x, int y) {
    const auto [a, b] = beside(n);
    double open = 0;
    for (int k = 0; k < kOpenSamples; ++k) {
        const double turn = 2.0 * std::numbers::pi * (k + hash(x, y, k)) / kOpenSamples;
        const double out = std::sqrt(hash(y, x, k + 50));
        const Vec to = a * (out * std::cos(turn)) + b * (out * std::sin(turn)) +
                       n * std::sqrt(std::max(0.0, 1.0 - out * out));
        const Hit hit = scene.nearest({place, unit(to)}, 3.5);
        open += hit.shape < 0 ? 1.0 : 0.25 + 0.55 * hit.distance / 3.5;
    }
    return open / kOpenSamples;
}

Colour lightFrom(const Scene& scene, const Light& light, Vec place, Vec n, int x, int y) {
    const double area = length(cross(light.across, light.up));
    double sum = 0;
    for (int k = 0; k < kLightSamplesAcross * kLightSamplesAcross; ++k) {
        const double s = (k % kLightSamplesAcross + hash(x, y, k + 100)) / kLightSamplesAcross;
        const double t = (k / kLightSamplesAcross + hash(y, x, k + 200)) / kLightSamplesAcross;
        const Vec way = light.corner + light.across * s + light.up * t - place;
        const double distance = length(way);
        const Vec to = way * (1.0 / distance);
        const double facing = dot(to, n);
        const double leaving = -dot(to, light.normal);
        if (facing <= 0 || leaving <= 0 || scene.blocked({place, to}, distance - 0.02)) {
            continue;
        }
        sum += facing * leaving * area / (distance * distance + 2.0);
    }
    return light.colour * (sum / (kLightSamplesAcross * kLightSamplesAcross));
}

Colour lightAt(const Scene& scene, const Hit& hit, Vec place, int x, int y) {
    const Vec from = place + hit.normal * 1e-3;
    const double up = 0.86 + 0.14 * hit.normal.y;
    Colour light = scene.ambient * (up * openness(scene, from, hit.normal, x, y));
    const double facing = dot(hit.normal, scene.sun.toward);
    if (facing > 0 && scene.sunny({from, scene.sun.toward})) {
        light = light + scene.sun.colour * facing;
    }
    for (const Light& one : scene.lights) {
        light = light + lightFrom(scene, one, from, hit.normal, x, y);
    }
    return light;
}

std::vector<Lit> coarseLight(const Scene& scene, const View& view) {
    std::vector<Lit> lit(static_cast<std::size_t>(kCoarseWidth) * kCoarseHeight);
    for (int y = 0; y < kCoarseHeight; ++y) {
        for (int x = 0; x < kCoarseWidth; ++x) {
            const Ray ray = view.through(kCoarse * (x + 0.5), kCoarse * (y + 0.5));
            const Hit hit = scene.nearest(ray, kFar);
            if (hit.shape >= 0) {
                const Vec place = ray.from + ray.to * hit.distance;
                lit[static_cast<std::size_t>(y * kCoarseWidth + x)] = {
                    hit.shape, hit.normal, lightAt(scene, hit, place, x, y)};
            }
        }
    }
    return lit;
}

// The light on one pixel: the mean over neighbours on the same face, or its own where there are
// none.
Colour softLight(const Scene& scene, const std::vector<Lit>& lit, const Hit& hit, Vec place, int x,
                 int y) {
    Colour sum;
    double weight = 0;
    constexpr int kReach = 2;
    for (int dy = -kReach; dy <= kReach; ++dy) {
        for (int dx = -kReach; dx <= kReach; ++dx) {
            const int cx = x / kCoarse + dx;
            const int cy = y / kCoarse + dy;
            if (cx < 0 || cy < 0 || cx >= kCoarseWidth || cy >= kCoarseHeight) {
                continue;
            }
            const Lit& one = lit[static_cast<std::size_t>(cy * kCoarseWidth + cx)];
            if (one.shape == hit.shape && dot(one.normal, hit.normal) > 0.9) {
                const double w = 1.0 / (1.5 + dx * dx + dy * dy);
                sum = sum + one.light * w;
                weight += w;
            }
        }
    }
    return weight > 0 ? sum * (1.0 / weight) : lightAt(scene, hit, place, x, y);
}

// What is met along one line of the picture, at two places a pixel.
using Line = std::vector<Hit>;

Line lineAt(const Scene& scene, const View& view, int y) {
    Line line;
    line.reserve(2 * kWidth + 2);
    for (int x = 0; x < 2 * kWidth + 2; ++x) {
        line.push_back(scene.nearest(view.through(0.5 * x + 0.25, 0.5 * y + 0.25), kFar));
    }
    return line;
}

// How black the line between two neighbouring places is: an outline more than a crease.
double inkBetween(const Scene& scene, const Hit& a, const Hit& b) {
    if (a.shape == b.shape && (a.shape < 0 || dot(a.normal, b.normal) > 0.7)) {
        return 0.0;
    }
    if (a.shape < 0 || b.shape < 0) {
        return 0.8;
    }
    const int group = scene.shapes[static_cast<std::size_t>(a.shape)].group;
    if (group != 0 && group == scene.shapes[static_cast<std::size_t>(b.shape)].group) {
        return 0.0;
    }
    return std::abs(a.distance - b.distance) > 0.15 ? 0.8 : 0.5;
}

struct Dab {
    Colour colour;
    double ink = 0;
};

// One pixel, from the four places in it and their neighbours: `lines` are four, from its upper one.
Dab dabAt(const Scene& scene, const View& view, const std::vector<Lit>& lit,
          const std::array<Line, 4>& lines, int x, int y) {
    Dab dab;
    Hit lastHit;
    Colour lastLight;
    for (std::size_t k = 0; k < 4; ++k) {
        const std::size_t row = k / 2;
        const std::size_t column = 2 * static_cast<std::size_t>(x) + k % 2;
        const Hit& hit = lines[row][column];
        const Ray ray = view.through(x + 0.25 + 0.5 * static_cast<double>(k % 2),
                                     y + 0.25 + 0.5 * static_cast<double>(row));
        if (hit.shape < 0) {
            dab.colour =
                dab.colour + mix(scene.sky, {0.97, 0.95, 0.90}, clamp01(1.0 - 2.2 * ray.to.y));
        } else {
            const Vec place = ray.from + ray.to * hit.distance;
            Colour colour = scene.surface(hit, place);
            if (!scene.shapes[static_cast<std::size_t>(hit.shape)].glows) {
                if (hit.shape != lastHit.shape || dot(hit.normal, lastHit.normal) < 0.95) {
                    lastHit = hit;
                    lastLight = softLight(scene, lit, hit, place, x, y);
                }
                colour = colour * lastLight;
            }
            dab.colour = dab.colour + colour;
        }
        dab.ink += std::max(inkBetween(scene, hit, lines[row][column + 2]),
                            inkBetween(scene, hit, lines[row + 2][column]));
    }
    dab.colour = dab.colour * 0.25;
    dab.ink *= 0.25;
    return dab;
}

std::uint8_t byteOf(double value) {
    return static_cast<std::uint8_t>(std::lround(255.0 * clamp01(value)));
}

// From light to paper: bright parts bend over, colours fade a little toward the paper, ink and
// grain on top.
Colour onPaper(const Dab& dab, int x, int y) {
    constexpr Colour kPaper{0.955, 0.935, 0.885};
    constexpr Colour kInk{0.13, 0.12, 0.13};
    const auto bend = [](double v) {
        const double exposed = 1.0 - std::exp(-1.55 * std::max(v, 0.0));
        return std::pow(exposed, 1.0 / 1.9);
    };
    Colour c{bend(dab.colour.x), bend(dab.colour.y), bend(dab.colour.z)};
    const double grey = 0.30 * c.x + 0.59 * c.y + 0.11 * c.z;
    c = mix(c, {grey, grey, grey}, 0.16);
    c = mix(c, c * kPaper, 0.75);
    c = mix(c, kInk, dab.ink * 0.72);
    const double fibre = noise(x * 0.11, y * 0.35, 71) + noise(x * 0.35, y * 0.11, 72) - 1.0;
    const double speck = hash(x, y, 73) - 0.5;
    const double dx = 2.0 * x / kWidth - 1.0;
    const double dy = 2.0 * y / kHeight - 1.0;
    const double edge = 1.0 - 0.13 * smoothStep(0.55, 1.9, dx * dx + dy * dy);
    return c * edge + Colour{1, 1, 1} * (0.014 * fibre + 0.030 * speck);
}

}  // namespace

Pixels paint(const Scene& scene) {
    const View view(scene.camera);
    const std::vector<Lit> lit = coarseLight(scene, view);
    Pixels pixels;
    pixels.reserve(static_cast<std::size_t>(kWidth) * kHeight * 3);
    std::array<Line, 4> lines{lineAt(scene, view, 0), lineAt(scene, view, 1)};
    for (int y = 0; y < kHeight; ++y) {
        lines[2] = lineAt(scene, view, 2 * y + 2);
        lines[3] = lineAt(scene, view, 2 * y + 3);
        for (int x = 0; x < kWidth; ++x) {
            const Colour c = onPaper(dabAt(scene, view, lit, lines, x, y), x, y);
            pixels.push_back(byteOf(c.x));
            pixels.push_back(byteOf(c.y));
            pixels.push_back(byteOf(c.z));
        }
        lines[0] = std::move(lines[2]);
        lines[1] = std::move(lines[3]);
    }
    return pixels;
}

std::string writeJpeg(const Pixels& pixels, const std::string& path) {
    constexpr int kQuality = 82;
    const std::unique_ptr<void, int (*)(tjhandle)> press(tjInitCompress(), &tjDestroy);
    unsigned char* bytes = nullptr;
    unsigned long size = 0;
    if (!press || tjCompress2(press.get(), pixels.data(), kWidth, 0, kHeight, TJPF_RGB, &bytes,
                              &size, TJSAMP_420, kQuality, TJFLAG_ACCURATEDCT) != 0) {
        return path + ": the JPEG library could not make the picture";
    }
    const std::unique_ptr<unsigned char, void (*)(unsigned char*)> owned(bytes, &tjFree);
    const std::unique_ptr<FILE, int (*)(FILE*)> file(std::fopen(path.c_str(), "wb"), &std::fclose);
    if (!file || std::fwrite(bytes, 1, size, file.get()) != size || std::fflush(file.get()) != 0) {
        return path + ": could not be written; is there room, and may you write in that folder?";
    }
    return {};
}

}  // namespace ledgerboard::photos
