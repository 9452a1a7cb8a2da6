// The house from the gate, before the work, with the porch open and with the trim half painted.
#include "demo-data/photos/builder.h"
#include "demo-data/photos/scenes.h"

namespace ledgerboard::photos {

using namespace paint_box;

namespace {

enum class State : std::uint8_t { Tired, Porch, Trim };

void outsideWindow(Builder& b, double x, double y, double wide, double high, double z,
                   Colour frame) {
    b.box({x, y, z - 0.04}, {x + wide, y + high, z},
          patterned(Pattern::Blotches, {0.28, 0.33, 0.36}, {0.52, 0.58, 0.60}, 1.6));
    const Material wood = plain(frame);
    b.box({x - 0.35, y - 0.2, z - 0.14}, {x, y + high + 0.2, z}, wood);
    b.box({x + wide, y - 0.2, z - 0.14}, {x + wide + 0.35, y + high + 0.2, z}, wood);
    b.box({x - 0.45, y + high, z - 0.18}, {x + wide + 0.45, y + high + 0.4, z}, wood);
    b.box({x - 0.45, y - 0.2, z - 0.25}, {x + wide + 0.45, y, z}, wood);
    b.box({x, y + high / 2 - 0.06, z - 0.1}, {x + wide, y + high / 2 + 0.06, z}, wood);
    b.box({x + wide / 2 - 0.04, y + high / 2, z - 0.1}, {x + wide / 2 + 0.04, y + high, z}, wood);
}

void porch(Builder& b, State state, Colour trim) {
    const double z0 = 20;
    b.box({-7, 0, z0}, {7, 1.5, 26}, patterned(Pattern::Courses, kBrick, {0.60, 0.56, 0.50}, 0.26));
    if (state == State::Porch) {  // half of the floor is off, its joists show
        b.box({-7.1, 1.5, z0 - 0.1}, {0.5, 1.62, 26},
              patterned(Pattern::Boards, kRawOak, kInk, 0.3));
        for (double x = 1.2; x < 7; x += 1.2) {
            b.box({x, 1.5, z0}, {x + 0.16, 1.62, 26}, plain(kPine));
        }
        b.boards({-11.5, 0, 18.5}, 6, 7, 12);
        b.sawhorses({8.6, 0, 16.4}, 3.0);
    } else {
        b.box({-7.1, 1.5, z0 - 0.1}, {7.1, 1.62, 26},
              patterned(Pattern::Boards, state == State::Tired ? kSlate * 0.8 : kSlate, kInk, 0.3));
    }
    for (const double x : {-6.6, -2.3, 2.3, 6.6}) {
        b.box({x - 0.28, 1.62, z0 + 0.2}, {x + 0.28, 9.0, z0 + 0.76}, plain(trim));
        b.box({x - 0.42, 1.62, z0 + 0.06}, {x + 0.42, 2.1, z0 + 0.9}, plain(trim));
        b.box({x - 0.42, 8.7, z0 + 0.06}, {x + 0.42, 9.0, z0 + 0.9}, plain(trim));
    }
    b.box({-7.3, 9.0, z0}, {7.3, 9.7, z0 + 0.9}, plain(trim));
    b.turned({0, 10.9, 23.0}, {15.6, 0.25, 7.6}, 0, 0, -20,
             patterned(Pattern::Shingle, {0.36, 0.34, 0.33}, {0.22, 0.21, 0.21}, 0.45));
    for (int k = 0; k < 3; ++k) {
        b.box({-1.9, 0, z0 - 1.2 * (3 - k)}, {1.9, 0.5 * (k + 1) - 0.02, z0},
              plain({0.58, 0.57, 0.54}));
    }
    b.box({-1.5, 1.62, 25.8}, {1.5, 8.6, 26}, plain(trim));
    b.box({-1.2, 1.62, 25.7}, {1.2, 8.2, 25.85}, plain(kBrick * 0.8));
    b.box({-0.8, 5.4, 25.66}, {0.8, 7.6, 25.7}, plain({0.30, 0.34, 0.36}));
    outsideWindow(b, -5.6, 3.6, 2.6, 4.2, 26, trim);
    outsideWindow(b, 3.0, 3.6, 2.6, 4.2, 26, trim);
}

Scene outside(State state) {
    Builder b;
    const Colour trim = state == State::Trim ? kPorcelain : Colour{0.60, 0.56, 0.47};
    const Colour oldTrim{0.58, 0.53, 0.44};
    b.box({-80, -0.5, -20}, {80, 0, 120}, patterned(Pattern::Grass, kMoss, {0.52, 0.50, 0.34}, 1));
    b.box({-1.6, 0, -5}, {1.6, 0.04, 17},
          patterned(Pattern::Tile, {0.60, 0.59, 0.55}, {0.40, 0.39, 0.35}, 3.2));
    b.box({-11, 0, 26}, {11, 19, 46},
          patterned(Pattern::Siding, {0.66, 0.67, 0.60}, {0.40, 0.41, 0.37}, 0.5));
    b.box({-11.2, 0, 25.9}, {11.2, 1.4, 26},
          patterned(Pattern::Courses, kBrick, {0.60, 0.56, 0.50}, 0.26));
    b.turned({0, 23.2, 31.2}, {24.5, 0.3, 15.0}, 0, 0, -38,
             patterned(Pattern::Shingle, {0.38, 0.36, 0.35}, {0.22, 0.21, 0.21}, 0.5));
    b.box({-12.2, 18.5, 25.0}, {12.2, 19.1, 25.6}, plain(trim));
    if (state != State::Tired) {  // new gutters
        b.box({-12.3, 18.9, 24.6}, {12.3, 19.3, 25.0}, plain(kPorcelain));
        b.box({10.6, 1.0, 25.7}, {10.9, 18.9, 26}, plain(kPorcelain));
    } else {
        b.turned({-3, 18.75, 24.8}, {17, 0.35, 0.4}, 0, -1.6, 0, plain({0.46, 0.36, 0.28}));
    }
    b.box({6.2, 22, 32}, {8.6, 31, 34.4},
          patterned(Pattern::Courses, kBrick, {0.66, 0.62, 0.56}, 0.3));
    b.box({6.0, 30.6, 31.8}, {8.8, 31.1, 34.6}, plain({0.58, 0.57, 0.54}));
    outsideWindow(b, -8.8, 12.2, 2.7, 4.4, 26, state == State::Trim ? trim : oldTrim);
    outsideWindow(b, -1.35, 12.2, 2.7, 4.4, 26, state == State::Trim ? trim : oldTrim);
    outsideWindow(b, 6.1, 12.2, 2.7, 4.4, 26, oldTrim);
    for (const double x : {-11.1, 10.7}) {
        b.box({x, 1.4, 25.8}, {x + 0.4, 18.6, 26.2}, plain(x < 0 ? trim : oldTrim));
    }
    porch(b, state, trim);
    for (int k = 0; k < 16; ++k) {
        const double side = k % 2 == 0 ? -1.0 : 1.0;
        const double grown = 1.9;
        Shape& yew = b.egg({side * (8.2 + 3.2 * hash(k, 1, 1)), 1.0 + 1.1 * hash(k, 2, 2),
                            22.5 + 2.5 * hash(k, 3, 3)},
                           Vec{1, 1, 1} * (grown * (0.55 + 0.5 * hash(k, 4, 4))),
                           patterned(Pattern::Grass, kMoss * 0.72, kMoss * 0.95, 1));
        yew.group = k % 2 + 1;
    }
    if (state == State::Trim) {
        b.ladder({7.6, 0, 23.4}, 17.5, 0);
        b.bucket({4.6, 0, 18.6}, kPorcelain);
        b.box({3.4, 0.02, 16.8}, {10.5, 0.05, 20.4}, plain(kPaper * 0.85));
    }
    b.sun(40, 225, 1.9);
    b.scene.ambient = {0.42, 0.45, 0.50};
    b.scene.sky = {0.62, 0.72, 0.78};
    b.scene.camera = {{-6.5, 5.2, -6.5}, 11, 9, 62};
    b.scene.settle();
    return std::move(b.scene);
}

}  // namespace

Scene outsideBefore() {
    return outside(State::Tired);
}

Scene outsidePorch() {
    return outside(State::Porch);
}

Scene outsideTrim() {
    return outside(State::Trim);
}

}  // namespace ledgerboard::photos
