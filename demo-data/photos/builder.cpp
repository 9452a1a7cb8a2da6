#include "demo-data/photos/builder.h"

#include <numbers>

namespace ledgerboard::photos {

using namespace paint_box;

namespace {

Vec turnAbout(Vec v, int axis, double degrees) {
    const double a = degrees * std::numbers::pi / 180.0;
    const double c = std::cos(a);
    const double s = std::sin(a);
    if (axis == 0) {
        return {v.x, c * v.y - s * v.z, s * v.y + c * v.z};
    }
    if (axis == 1) {
        return {c * v.x + s * v.z, v.y, c * v.z - s * v.x};
    }
    return {c * v.x - s * v.y, s * v.x + c * v.y, v.z};
}

}  // namespace

Material plain(Colour colour) {
    return {Pattern::Plain, colour, colour, 1.0};
}

Material patterned(Pattern pattern, Colour main, Colour other, double size) {
    return {pattern, main, other, size};
}

Shape& Builder::box(Vec low, Vec high, const Material& material) {
    Shape shape;
    shape.centre = (low + high) * 0.5;
    shape.half = (high - low) * 0.5;
    shape.material = material;
    scene.shapes.push_back(shape);
    return scene.shapes.back();
}

Shape& Builder::turned(Vec centre, Vec size, double turn, double lean, double tip,
                       const Material& material) {
    Shape& shape = box(centre - size * 0.5, centre + size * 0.5, material);
    shape.isTurned = true;
    for (Vec& axis : shape.axes) {
        axis = turnAbout(turnAbout(turnAbout(axis, 0, tip), 2, lean), 1, turn);
    }
    return shape;
}

Shape& Builder::cylinder(Vec foot, double radius, double height, const Material& material) {
    Shape& shape = box(foot, foot + Vec{0, height, 0}, material);
    shape.form = Form::Cylinder;
    shape.half = {radius, height * 0.5, radius};
    return shape;
}

Shape& Builder::egg(Vec centre, Vec half, const Material& material) {
    Shape& shape = box(centre - half, centre + half, material);
    shape.form = Form::Ellipsoid;
    return shape;
}

void Builder::room(Vec size, const Material& floor, const Material& walls,
                   const Material& ceiling) {
    size_ = size;
    constexpr double kThick = 0.3;
    const Vec s = size;
    box({-kThick, -kThick, -kThick}, {s.x + kThick, 0, s.z + kThick}, floor);
    box({-kThick, s.y, -kThick}, {s.x + kThick, s.y + kThick, s.z + kThick}, ceiling);
    box({-kThick, 0, -kThick}, {0, s.y, s.z + kThick}, walls);
    box({s.x, 0, -kThick}, {s.x + kThick, s.y, s.z + kThick}, walls);
    box({0, 0, s.z}, {s.x, s.y, s.z + kThick}, walls);
    box({0, 0, -kThick}, {s.x, s.y, 0}, walls);
}

void Builder::onWall(Side side, double a0, double a1, double y0, double y1, double out0,
                     double out1, const Material& material, bool glows) {
    Shape* shape = nullptr;
    if (side == Side::Back) {
        shape = &box({a0, y0, size_.z - out1}, {a1, y1, size_.z - out0}, material);
    } else if (side == Side::Left) {
        shape = &box({out0, y0, a0}, {out1, y1, a1}, material);
    } else {
        shape = &box({size_.x - out1, y0, a0}, {size_.x - out0, y1, a1}, material);
    }
    shape->glows = glows;
    shape->shadows = !glows;
}

void Builder::baseboards(double height, const Material& material) {
    onWall(Side::Left, 0, size_.z, 0, height, 0, 0.07, material);
    onWall(Side::Right, 0, size_.z, 0, height, 0, 0.07, material);
    onWall(Side::Back, 0, size_.x, 0, height, 0, 0.07, material);
}

void Builder::window(Side side, double along, double width, double sill, double head, Colour frame,
                     double strength) {
    const double a0 = along - width / 2;
    const double a1 = along + width / 2;
    const double middle = (sill + head) / 2;
    const Material wood = plain(frame);
    onWall(side, a0, a1, sill, head, 0.0, 0.03,
           patterned(Pattern::View, {1.05, 1.12, 1.15}, {0.42, 0.50, 0.38}, 1.0), true);
    onWall(side, a0 - 0.35, a0, sill - 0.3, head + 0.4, 0, 0.14, wood);
    onWall(side, a1, a1 + 0.35, sill - 0.3, head + 0.4, 0, 0.14, wood);
    onWall(side, a0 - 0.45, a1 + 0.45, head, head + 0.42, 0, 0.16, wood);
    onWall(side, a0 - 0.5, a1 + 0.5, sill - 0.14, sill, 0, 0.38, wood);
    onWall(side, a0 - 0.35, a1 + 0.35, sill - 0.5, sill - 0.14, 0, 0.12, wood);
    onWall(side, a0, a1, middle - 0.07, middle + 0.07, 0, 0.12, wood);
    const double across = (a0 + a1) / 2;
    onWall(side, across - 0.035, across + 0.035, middle, head, 0, 0.08, wood);
    onWall(side, a0, a0 + 0.10, sill, head, 0, 0.10, wood);
    onWall(side, a1 - 0.10, a1, sill, head, 0, 0.10, wood);
    onWall(side, a0, a1, sill, sill + 0.14, 0, 0.10, wood);
    onWall(side, a0, a1, head - 0.10, head, 0, 0.10, wood);
    Light light;
    light.colour = Colour{1.0, 0.97, 0.90} * strength;
    light.up = {0, head - sill, 0};
    constexpr double kOut = 0.45;  // in front of the frame, so that it throws no shadow of its own
    if (side == Side::Back) {
        light.corner = {a0, sill, size_.z - kOut};
        light.across = {width, 0, 0};
        light.normal = {0, 0, -1};
    } else if (side == Side::Left) {
        light.corner = {kOut, sill, a0};
        light.across = {0, 0, width};
        light.normal = {1, 0, 0};
    } else {
        light.corner = {size_.x - kOut, sill, a0};
        light.across = {0, 0, width};
        light.normal = {-1, 0, 0};
    }
    scene.lights.push_back(light);
}

void Builder::door(Side side, double along, double width, double height, const Material& leaf,
                   Colour frame) {
    const double a0 = along - width / 2;
    const double a1 = along + width / 2;
    onWall(side, a0 - 0.35, a0, 0, height + 0.35, 0, 0.13, plain(frame));
    onWall(side, a1, a1 + 0.35, 0, height + 0.35, 0, 0.13, plain(frame));
    onWall(side, a0, a1, height, height + 0.35, 0, 0.13, plain(frame));
    onWall(side, a0, a1, 0, height, 0, 0.05, leaf);
    for (const auto& [low, high] : {std::pair(0.7, 2.6), std::pair(3.3, height - 0.5)}) {
        for (const double shift : {0.0, 0.5}) {
            const double p0 = a0 + width * (0.12 + shift * 0.84);
            onWall(side, p0, p0 + width * 0.34, low, high, 0.05, 0.08, plain(leaf.main * 0.90));
        }
    }
    const double knob = a1 - 0.25;
    onWall(side, knob - 0.07, knob + 0.07, 2.95, 3.10, 0.05, 0.22, plain(kOchre * 0.8));
}

void Builder::fill(Vec corner, Vec across, Vec up, Vec normal, double strength) {
    scene.lights.push_back({corner, across, up, normal, Colour{1.0, 0.96, 0.88} * strength});
}

void Builder::sun(double steep, double aside, double strength) {
    const double s = steep * std::numbers::pi / 180.0;
    const double a = aside * std::numbers::pi / 180.0;
    scene.sun.toward = {std::cos(s) * std::sin(a), std::sin(s), std::cos(s) * std::cos(a)};
    scene.sun.colour = Colour{1.0, 0.90, 0.70} * strength;
}

void Builder::openWall(Side side, double from, double to, double height) {
    onWall(side, from, to, 0, height, 0, 0.02, plain({0.24, 0.20, 0.17}));
    onWall(side, from, to, 0, 0.14, 0.02, 0.34, plain(kPine));
    onWall(side, from, to, height - 0.14, height, 0.02, 0.34, plain(kPine));
    for (double a = from; a <= to + 0.01; a += 1.333) {
        onWall(side, a - 0.065, a + 0.065, 0.14, height - 0.14, 0.02, 0.34,
               plain(kPine * (0.85 + 0.2 * hash(std::lround(a * 10), 2, 9))));
    }
}

void Builder::ladder(Vec foot, double height, double turn) {
    const Material wood = plain(kOchre);
    const Vec across = turnAbout({1, 0, 0}, 1, turn);
    const Vec in = turnAbout({0, 0, 1}, 1, turn);
    for (const double leg : {-1.0, 1.0}) {
        turned(foot + across * (0.65 * leg) + Vec{0, height / 2, 0}, {0.12, height, 0.22}, turn, 0,
               12, wood);
        turned(foot + across * (0.60 * leg) + in * (height * 0.42) + Vec{0, height / 2, 0},
               {0.10, height, 0.14}, turn, 0, -12, wood);
    }
    const double slope = std::tan(12 * std::numbers::pi / 180.0);
    for (double y = 1.0; y < height - 0.2; y += 1.0) {
        turned(foot + in * ((y - height / 2) * slope) + Vec{0, y, 0}, {1.25, 0.10, 0.36}, turn, 0,
               0, wood);
    }
}

void Builder::bucket(Vec foot, Colour colour) {
    cylinder(foot, 0.48, 1.15, plain(colour));
    cylinder(foot + Vec{0, 1.02, 0}, 0.51, 0.08, plain(colour * 0.85));
    cylinder(foot + Vec{0, 1.15, 0}, 0.42, 0.01, plain(colour * 0.35));
}

void Builder::sawhorses(Vec foot, double span) {
    const Material wood = plain(kPine);
    for (const double x : {0.0, span}) {
        for (const double z : {-0.9, 0.9}) {
            turned(foot + Vec{x - 0.3, 1.2, z}, {0.12, 2.5, 0.25}, 0, -13, 0, wood);
            turned(foot + Vec{x + 0.3, 1.2, z}, {0.12, 2.5, 0.25}, 0, 13, 0, wood);
        }
        box(foot + Vec{x - 0.1, 2.3, -1.3}, foot + Vec{x + 0.1, 2.6, 1.3}, wood);
    }
    box(foot + Vec{-1.2, 2.6, -0.35}, foot + Vec{span + 1.2, 2.72, 0.35}, plain(kRawOak));
    box(foot + Vec{-0.7, 2.72, -0.25}, foot + Vec{span + 1.6, 2.82, 0.15}, plain(kPaper));
}

void Builder::toolBox(Vec foot, Colour colour) {
    box(foot, foot + Vec{1.7, 0.75, 0.8}, plain(colour));
    box(foot + Vec{-0.03, 0.55, -0.03}, foot + Vec{1.73, 0.62, 0.83}, plain(colour * 0.7));
    box(foot + Vec{0.5, 1.0, 0.35}, foot + Vec{1.2, 1.08, 0.45}, plain(kInk));
    box(foot + Vec{0.5, 0.75, 0.36}, foot + Vec{0.57, 1.0, 0.44}, plain(kInk));
    box(foot + Vec{1.13, 0.75, 0.36}, foot + Vec{1.2, 1.0, 0.44}, plain(kInk));
}

void Builder::baseCabinets(double from, double to, double z, Colour front, Colour top, bool worn) {
    box({from, 0.3, z}, {to, 2.9, size_.z}, plain(front));
    box({from, 0, z + 0.2}, {to, 0.3, size_.z}, plain(kInk));
    box({from - 0.05, 2.9, z - 0.12}, {to + 0.05, 3.02, size_.z}, plain(top));
    const int doors = std::max(1, static_cast<int>(std::lround((to - from) / 1.6)));
    const double wide = (to - from) / doors;
    for (int k = 0; k < doors; ++k) {
        const double x = from + k * wide;
        if (worn && k == doors / 2) {  // one door is gone
            box({x + 0.08, 0.42, z - 0.005}, {x + wide - 0.08, 2.78, z}, plain(kInk * 1.6));
            continue;
        }
        box({x + 0.08, 0.42, z - 0.06}, {x + wide - 0.08, 2.15, z}, plain(front * 1.04));
        box({x + 0.28, 0.62, z - 0.075}, {x + wide - 0.28, 1.95, z}, plain(front * 0.93));
        box({x + 0.08, 2.25, z - 0.06}, {x + wide - 0.08, 2.78, z}, plain(front * 1.04));
        egg({x + wide / 2, 2.51, z - 0.1}, {0.06, 0.06, 0.06}, plain(kOchre * 0.7));
        egg({x + wide - 0.2, 1.95, z - 0.1}, {0.06, 0.06, 0.06}, plain(kOchre * 0.7));
    }
}

void Builder::wallCabinets(double from, double to, double z, Colour front) {
    box({from, 4.5, z}, {to, 7.2, size_.z}, plain(front));
    box({from - 0.05, 7.2, z - 0.1}, {to + 0.05, 7.4, size_.z}, plain(front * 1.03));
    const int doors = std::max(1, static_cast<int>(std::lround((to - from) / 1.4)));
    const double wide = (to - from) / doors;
    for (int k = 0; k < doors; ++k) {
        const double x = from + k * wide;
        box({x + 0.06, 4.58, z - 0.06}, {x + wide - 0.06, 7.12, z}, plain(front * 1.04));
        box({x + 0.26, 4.80, z - 0.075}, {x + wide - 0.26, 6.90, z}, plain(front * 0.93));
    }
}

void Builder::toilet(Vec foot, double turn) {
    const Material white = plain(kPorcelain);
    const Vec in = turnAbout({0, 0, 1}, 1, turn);
    turned(foot + in * 0.75 + Vec{0, 1.95, 0}, {1.5, 1.2, 0.62}, turn, 0, 0, white);
    turned(foot + in * 0.75 + Vec{0, 2.6, 0}, {1.6, 0.12, 0.72}, turn, 0, 0, white);
    cylinder(foot + in * 0.1, 0.42, 1.0, white);
    egg(foot - in * 0.25 + Vec{0, 1.10, 0}, {0.72, 0.34, 0.95}, white);
    egg(foot - in * 0.25 + Vec{0, 1.42, 0}, {0.74, 0.09, 0.97}, plain(kPorcelain * 0.95));
}

void Builder::tub(Vec low, Vec high, Colour colour) {
    const Material white = plain(colour);
    const double rim = 0.3;
    box(low, {high.x, low.y + 0.25, high.z}, white);
    box(low, {high.x, high.y, low.z + rim}, white);
    box({low.x, low.y, high.z - rim}, high, white);
    box({low.x, low.y, low.z}, {low.x + rim, high.y, high.z}, white);
    box({high.x - rim, low.y, low.z}, high, white);
}

void Builder::vanity(Vec low, double width, Colour front) {
    const double deep = 1.75;
    const Vec high = low + Vec{width, 2.6, deep};
    box(low + Vec{0, 0.3, 0}, high, plain(front));
    box(low + Vec{0.1, 0, 0.2}, {high.x - 0.1, 0.3, high.z}, plain(kInk));
    box({low.x - 0.08, high.y, low.z - 0.1}, {high.x + 0.08, high.y + 0.13, high.z},
        plain(kPorcelain));
    egg({low.x + width / 2, high.y + 0.10, low.z + 0.8}, {0.65, 0.07, 0.5},
        plain({0.66, 0.67, 0.66}));
    cylinder({low.x + width / 2, high.y + 0.13, high.z - 0.35}, 0.06, 0.55, plain(kSteel));
    box({low.x + width / 2 - 0.05, high.y + 0.6, high.z - 0.85},
        {low.x + width / 2 + 0.05, high.y + 0.69, high.z - 0.3}, plain(kSteel));
    for (const double x : {low.x + 0.08, low.x + width / 2 + 0.04}) {
        box({x, low.y + 0.42, low.z - 0.05}, {x + width / 2 - 0.12, high.y - 0.15, low.z},
            plain(front * 1.05));
    }
    box({low.x + 0.25, 4.0, high.z - 0.02}, {high.x - 0.25, 6.4, high.z + 0.1}, plain(kDarkWood));
    box({low.x + 0.4, 4.15, high.z - 0.04}, {high.x - 0.4, 6.25, high.z},
        patterned(Pattern::Blotches, {0.62, 0.68, 0.70}, {0.74, 0.78, 0.78}, 1.8));
}

void Builder::lamp(Vec hook, double drop) {
    box(hook + Vec{-0.025, -drop, -0.025}, hook + Vec{0.025, 0, 0.025}, plain(kInk));
    cylinder(hook + Vec{0, -0.1, 0}, 0.3, 0.1, plain(kOchre * 0.7));
    Shape& globe = egg(hook + Vec{0, -drop - 0.3, 0}, {0.5, 0.42, 0.5}, plain({1.15, 1.05, 0.85}));
    globe.glows = true;
    globe.shadows = false;
    fill(hook + Vec{-0.5, -drop - 0.8, -0.5}, {1, 0, 0}, {0, 0, 1}, {0, -1, 0}, 9.0);
}

void Builder::boards(Vec foot, int count, double length, double turn) {
    for (int k = 0; k < count; ++k) {
        turned(foot + Vec{0.06 * (hash(k, 4, 1) - 0.5), 0.06 + 0.1 * k, 0.5 * hash(k, 5, 2)},
               {length, 0.09, 0.45}, turn + 4.0 * (hash(k, 6, 3) - 0.5), 0, 0,
               plain(mix(kPine, kRawOak, hash(k, 7, 4))));
    }
}

}  // namespace ledgerboard::photos
