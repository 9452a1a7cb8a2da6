// Kitchen, baths, basement and attic, each built once by its stage.
#include "demo-data/photos/builder.h"
#include "demo-data/photos/scenes.h"

namespace ledgerboard::photos {

using namespace paint_box;

namespace {

enum class State : std::uint8_t { Tired, Open, Done };

Scene settled(Builder& b) {
    b.scene.settle();
    return std::move(b.scene);
}

void range(Builder& b, double x, double z, double back, Colour colour) {
    b.box({x, 0.15, z}, {x + 2.5, 3.0, back}, plain(colour));
    b.box({x, 3.0, back - 0.3}, {x + 2.5, 3.9, back}, plain(colour));
    b.box({x + 0.2, 0.7, z - 0.05}, {x + 2.3, 2.3, z}, plain(kInk * 1.4));
    b.box({x + 0.2, 2.4, z - 0.14}, {x + 2.3, 2.48, z - 0.05}, plain(kSteel));
    for (int k = 0; k < 4; ++k) {
        b.cylinder({x + 0.65 + 1.2 * (k % 2), 3.0, z + 0.55 + 0.9 * (k / 2)}, 0.38, 0.05,
                   plain(kInk));
        b.egg({x + 0.4 + 0.55 * k, 2.72, z - 0.06}, {0.09, 0.09, 0.07}, plain(kInk));
    }
}

void kitchenOpened(Builder& b) {
    b.openWall(Side::Back, 0.06, 12.9, 8.4);
    b.openWall(Side::Left, 5.2, 14.9, 8.4);
    for (const double x : {2.05, 6.1, 10.0}) {
        b.box({x, 3.5, 14.6}, {x + 0.28, 3.9, 14.68}, plain({0.36, 0.44, 0.56}));
        b.box({x + 0.1, 3.9, 14.7}, {x + 0.16, 8.3, 14.74}, plain({0.86, 0.78, 0.45}));
    }
    b.box({0.5, 6.0, 14.66}, {12.5, 6.06, 14.72}, plain({0.86, 0.78, 0.45}));
    for (const double x : {7.2, 7.7}) {
        b.cylinder({x, 0, 14.72}, 0.07, 4.0, plain(kCopper));
    }
    b.cylinder({8.4, 0, 14.7}, 0.16, 8.4, plain(kInk * 1.5));
    b.sawhorses({4.2, 0, 9.4}, 3.6);
    b.ladder({10.6, 0, 10.6}, 6.2, -25);
    b.bucket({2.6, 0, 10.6}, kPorcelain);
    b.boards({8.8, 0, 12.6}, 5, 5.0, 78);
}

Scene kitchen(State state) {
    Builder b;
    const Colour wall = state == State::Tired ? Colour{0.70, 0.66, 0.44} : Colour{0.72, 0.72, 0.60};
    const Material floor =
        state == State::Tired
            ? patterned(Pattern::Checker, {0.62, 0.56, 0.46}, {0.42, 0.30, 0.24}, 0.75)
        : state == State::Open
            ? patterned(Pattern::Boards, kRawOak * 0.75, kDarkWood * 0.5, 0.6)
            : patterned(Pattern::Tile, {0.52, 0.50, 0.46}, {0.34, 0.33, 0.31}, 1.0);
    b.room(
        {13, 8.4, 15}, floor,
        state == State::Tired ? patterned(Pattern::Blotches, wall, wall * 0.82, 2.5) : plain(wall),
        state == State::Tired ? patterned(Pattern::Cracked, kPlaster, kStain, 1)
                              : plain(state == State::Open ? kPine * 0.6 : kPorcelain));
    const Colour trim = state == State::Done ? kPorcelain : Colour{0.60, 0.58, 0.50};
    if (state == State::Open) {
        kitchenOpened(b);
        for (double z = 1.0; z < 15; z += 1.333) {
            b.box({0, 7.8, z}, {13, 8.4, z + 0.13}, plain(kPine * 0.8));
        }
    } else if (state == State::Tired) {
        b.baseCabinets(0.0, 7.2, 12.9, {0.66, 0.62, 0.50}, {0.52, 0.30, 0.26}, true);
        b.wallCabinets(0.0, 4.0, 13.8, {0.66, 0.62, 0.50});
        range(b, 7.4, 12.8, 15, kPorcelain * 0.9);
        b.box({10.3, 0.1, 12.5}, {12.8, 5.4, 15}, plain(kPorcelain * 0.88));
        b.box({10.3, 3.9, 12.46}, {12.8, 3.96, 12.5}, plain(kInk));
        b.box({10.45, 2.6, 12.36}, {10.55, 3.8, 12.5}, plain(kSteel));
    } else {
        b.box({0.0, 2.96, 12.84}, {7.2, 3.0, 12.9}, plain(kRawOak));
        b.baseCabinets(0.0, 7.2, 12.9, kPorcelain * 0.95, kRawOak, false);
        b.wallCabinets(0.0, 4.0, 13.8, kPorcelain * 0.95);
        b.wallCabinets(7.4, 12.8, 13.8, kPorcelain * 0.95);
        b.baseCabinets(10.0, 13.0, 12.9, kPorcelain * 0.95, kRawOak, false);
        b.box({7.5, 0, 9.9}, {9.7, 2.4, 11.8}, plain({0.66, 0.52, 0.36}));
        b.box({7.5, 1.1, 9.88}, {9.7, 1.2, 11.82}, plain({0.80, 0.72, 0.58}));
    }
    b.window(Side::Back, 5.7, 2.4, 3.7, 7.0, trim, 10.0);
    b.window(Side::Left, 8.0, 2.6, 3.4, 7.0, trim, 6.0);
    b.fill({3, 7.6, 2}, {7, 0, 0}, {0, 0, 5}, {0, -1, 0}, 2.0);
    b.sun(38, -76, 1.7);
    b.scene.camera = {{10.6, 5.0, 0.7}, -17, -6, 76};
    return settled(b);
}

Builder bathroomShell(const Material& floor, const Material& walls) {
    Builder b;
    b.room({8.5, 8.2, 10.5}, floor, walls, plain(kPlaster));
    b.window(Side::Back, 5.6, 2.0, 4.2, 7.0, kPorcelain, 11.0);
    b.fill({2, 8.0, 0.5}, {5, 0, 0}, {0, 0, 3.5}, {0, -1, 0}, 3.2);
    b.scene.camera = {{6.4, 5.2, 0.5}, -15, -14, 80};
    return b;
}

Scene bathroomOpenedUp() {
    Builder b = bathroomShell(plain({0.16, 0.14, 0.12}), plain({0.26, 0.22, 0.18}));
    b.openWall(Side::Left, 0.1, 10.3, 8.1);
    b.openWall(Side::Back, 0.1, 4.4, 8.1);
    b.openWall(Side::Right, 3.0, 10.3, 8.1);
    for (int k = 0; k < 8; ++k) {
        const double z = 1.4 + 1.2 * k;
        const bool rotten = k >= 3 && k <= 5;
        b.box({0, 0.0, z}, {8.5, 0.75, z + 0.15},
              rotten ? patterned(Pattern::Blotches, kPine * 0.7, kInk * 1.2, 0.7)
                     : plain(kPine * 0.85));
        if (rotten) {
            b.box({0, 0.04, z + 0.15}, {5.6, 0.72, z + 0.3}, plain(kPine));
        }
    }
    b.box({5.4, 0.75, 0}, {8.5, 0.83, 6.2}, plain(kRawOak));
    b.box({6.0, 0.83, 7.0}, {8.5, 0.91, 10.4}, plain(kRawOak));
    b.cylinder({1.2, 0, 8.2}, 0.2, 3.0, plain(kInk * 1.5));
    b.cylinder({0.7, 0, 6.4}, 0.06, 5.0, plain(kCopper));
    b.cylinder({0.7, 0, 6.9}, 0.06, 5.0, plain(kCopper));
    b.toolBox({6.3, 0.83, 4.4}, kBrick);
    return settled(b);
}

Scene bathroomOld() {
    const Material pink = patterned(Pattern::Tile, {0.74, 0.56, 0.50}, {0.50, 0.44, 0.40}, 0.36);
    Builder b =
        bathroomShell(patterned(Pattern::Checker, {0.70, 0.68, 0.62}, {0.32, 0.34, 0.34}, 0.5),
                      patterned(Pattern::Blotches, {0.66, 0.62, 0.54}, kStain, 3.2));
    b.box({0, 0, 0}, {0.05, 4.5, 10.5}, pink);
    b.box({0, 0, 10.45}, {4.5, 4.5, 10.5}, pink);
    b.box({0, 4.5, 0}, {0.1, 4.7, 10.5}, plain(kInk * 1.6));
    b.tub({0.05, 0, 5.2}, {2.7, 1.75, 10.4}, {0.74, 0.58, 0.53});
    b.cylinder({2.6, 6.9, 5.3}, 0.03, 0.05, plain(kSteel));
    b.box({2.6, 6.85, 5.0}, {2.66, 6.91, 10.5}, plain(kSteel));
    for (int k = 0; k < 7; ++k) {
        b.box({2.58 + 0.12 * (k % 2), 1.9, 9.0 + 0.2 * k},
              {2.68 + 0.12 * (k % 2), 6.85, 9.22 + 0.2 * k}, plain({0.60, 0.60, 0.54}));
    }
    b.toilet({4.4, 0, 9.3}, 0);
    b.box({6.6, 2.5, 8.7}, {8.5, 2.9, 10.5}, plain({0.74, 0.58, 0.53}));
    b.cylinder({7.6, 0, 9.7}, 0.25, 2.5, plain({0.74, 0.58, 0.53}));
    b.egg({7.6, 2.9, 9.5}, {0.7, 0.06, 0.55}, plain({0.45, 0.38, 0.36}));
    return settled(b);
}

Scene bathroomHalfTiled() {
    const Material tile = patterned(Pattern::Courses, {0.82, 0.82, 0.78}, {0.50, 0.50, 0.48}, 0.25);
    Builder b =
        bathroomShell(patterned(Pattern::Blotches, {0.56, 0.55, 0.52}, {0.48, 0.47, 0.45}, 2.0),
                      plain({0.64, 0.66, 0.64}));
    b.box({0, 1.75, 0}, {0.06, 4.3, 10.5}, tile);  // rows up to half the height
    for (int k = 0; k < 9; ++k) {
        const double z = 10.4 - 0.6 * k;
        b.box({0, 4.3, z - 0.6}, {0.06, 4.3 + 0.25 * (1 + (k * 5) % 4), z}, tile);
    }
    b.box({0, 1.75, 10.44}, {3.0, 3.8, 10.5}, tile);
    b.tub({0.06, 0, 5.2}, {2.7, 1.75, 10.4}, kPorcelain);
    b.box({0.3, 1.77, 6.0}, {2.7, 1.86, 9.4}, plain({0.66, 0.52, 0.36}));
    b.box({3.4, 0, 7.0}, {8.5, 0.06, 10.5},
          patterned(Pattern::Tile, {0.44, 0.47, 0.48}, kPaper, 0.5));
    b.bucket({4.0, 0, 5.0}, kSlate);
    for (int k = 0; k < 3; ++k) {
        b.box({5.0, 0.32 * k, 4.2}, {6.1, 0.3 + 0.32 * k, 5.0},
              plain({0.62 + 0.03 * k, 0.50, 0.35}));
    }
    b.turned({3.2, 0.06, 4.0}, {0.9, 0.06, 0.4}, 30, 0, 0, plain(kSteel));
    b.box({6.7, 0, 8.7}, {8.3, 2.5, 10.2}, plain({0.66, 0.52, 0.36}));
    b.box({6.7, 1.2, 8.68}, {8.3, 1.32, 10.2}, plain({0.80, 0.72, 0.58}));
    return settled(b);
}

Scene halfBath(bool done) {
    Builder b;
    b.room({5.5, 8.0, 7.5},
           done ? patterned(Pattern::Tile, {0.46, 0.49, 0.50}, kPaper, 0.5)
                : patterned(Pattern::Checker, {0.60, 0.54, 0.42}, {0.46, 0.40, 0.30}, 0.5),
           done ? plain({0.70, 0.73, 0.66})
                : patterned(Pattern::Wallpaper, {0.62, 0.58, 0.46}, {0.48, 0.42, 0.28}, 0.6),
           plain(kPlaster));
    b.baseboards(0.5, plain(done ? kPorcelain : Colour{0.52, 0.38, 0.25}));
    b.toilet({1.7, 0, 6.3}, 0);
    const Colour basin = kPorcelain;
    b.box({3.5, 2.5, 6.0}, {5.3, 2.85, 7.5}, plain(basin));
    b.egg({4.4, 2.86, 6.7}, {0.65, 0.05, 0.5}, plain(basin * 0.75));
    b.cylinder({4.4, 0, 6.9}, 0.24, 2.5, plain(basin));
    b.cylinder({4.4, 2.85, 7.2}, 0.05, 0.4, plain(kSteel));
    b.box({3.7, 3.9, 7.40}, {5.1, 6.0, 7.5}, plain(kDarkWood));
    b.box({3.85, 4.05, 7.38}, {4.95, 5.85, 7.42},
          patterned(Pattern::Blotches, {0.62, 0.68, 0.70}, {0.74, 0.78, 0.78}, 1.2));
    b.window(Side::Left, 5.0, 1.7, 4.2, 6.6, done ? kPorcelain : Colour{0.52, 0.38, 0.25}, 8.0);
    b.fill({1, 7.8, 0.5}, {3.5, 0, 0}, {0, 0, 3.5}, {0, -1, 0}, 4.0);
    b.scene.camera = {{3.3, 5.0, 0.3}, -4, -14, 76};
    return settled(b);
}

Builder cellar() {
    Builder b;
    b.room({13, 7.4, 13}, patterned(Pattern::Blotches, {0.50, 0.49, 0.46}, {0.38, 0.37, 0.35}, 1.8),
           patterned(Pattern::Courses, {0.56, 0.55, 0.51}, {0.40, 0.39, 0.37}, 0.66),
           plain(kDarkWood));
    for (double x = 0.8; x < 13; x += 1.333) {
        b.box({x, 6.8, 0}, {x + 0.14, 7.4, 13}, plain(kPine * 0.5));
    }
    b.window(Side::Left, 9.0, 2.2, 5.2, 6.6, kSlate, 10.0);
    b.fill({4, 6.7, 3}, {5, 0, 0}, {0, 0, 4}, {0, -1, 0}, 6.0);
    b.cylinder({10.9, 0, 10.4}, 1.0, 4.6, plain({0.62, 0.63, 0.60}));
    b.cylinder({10.9, 4.6, 10.4}, 0.25, 2.8, plain(kSteel));
    b.cylinder({10.5, 4.6, 10.4}, 0.06, 2.8, plain(kCopper));
    b.cylinder({11.3, 4.6, 10.4}, 0.06, 2.8, plain(kCopper));
    b.scene.camera = {{6.2, 4.8, 0.8}, 2, -4, 72};
    return b;
}

Scene panel(bool done) {
    Builder b = cellar();
    b.box({3.4, 2.2, 12.85}, {8.2, 6.6, 13}, plain(done ? kRawOak : kPine * 0.6));
    if (done) {
        b.box({5.0, 2.6, 12.5}, {6.6, 6.0, 12.85}, plain({0.46, 0.48, 0.50}));
        b.box({5.15, 2.8, 12.45}, {6.45, 5.8, 12.5}, plain({0.40, 0.42, 0.44}));
        for (int k = 0; k < 20; ++k) {
            const double y = 3.1 + 0.23 * (k / 2);
            const double x = 5.32 + 0.52 * (k % 2);
            b.box({x, y, 12.40}, {x + 0.44, y + 0.17, 12.45}, plain(kInk * 1.3));
            b.box({x + 0.16, y + 0.05, 12.36}, {x + 0.28, y + 0.12, 12.40}, plain(kPaper));
        }
        b.turned({7.25, 4.3, 12.0}, {1.3, 3.2, 0.06}, -48, 0, 0, plain({0.48, 0.50, 0.52}));
        for (int k = 0; k < 5; ++k) {
            b.box({5.2 + 0.27 * k, 6.0, 12.66}, {5.28 + 0.27 * k, 6.9, 12.74},
                  plain({0.86, 0.80, 0.52}));
        }
    } else {
        b.box({5.0, 3.6, 12.45}, {6.9, 5.6, 12.85}, plain(kInk * 1.4));
        for (int k = 0; k < 4; ++k) {
            b.egg({5.45 + 0.5 * (k % 2) + 0.25, 4.1 + 0.7 * (k / 2), 12.42}, {0.19, 0.19, 0.1},
                  plain(kOchre));
        }
        b.turned({4.4, 4.6, 12.2}, {1.2, 2.0, 0.06}, 52, 0, 0, plain(kInk * 1.7));
        b.turned({7.6, 5.2, 12.8}, {0.06, 3.2, 0.06}, 0, 38, 0, plain(kInk));
        b.turned({4.0, 6.0, 12.8}, {0.06, 2.2, 0.06}, 0, -30, 0, plain(kInk));
        b.box({6.0, 5.6, 12.7}, {6.07, 7.0, 12.78}, plain(kInk));
        b.box({2.0, 0, 10.8}, {3.8, 1.4, 12.2}, plain({0.62, 0.49, 0.33}));
    }
    return settled(b);
}

Scene attic(bool done) {
    Builder b;
    const double deep = 20;
    b.box({-9, -0.3, -2}, {9, 0, deep}, plain({0.30, 0.25, 0.20}));
    b.turned({-4.6, 4.4, deep / 2}, {14, 0.2, deep + 4}, 0, 45, 0,
             patterned(Pattern::Siding, kPine * 0.55, kDarkWood * 0.5, 0.6));
    b.turned({4.6, 4.4, deep / 2}, {14, 0.2, deep + 4}, 0, -45, 0,
             patterned(Pattern::Siding, kPine * 0.55, kDarkWood * 0.5, 0.6));
    for (double z = 0.5; z < deep; z += 2.0) {
        b.turned({-4.5, 4.2, z}, {13.6, 0.5, 0.16}, 0, 45, 0, plain(kPine * 0.75));
        b.turned({4.5, 4.2, z}, {13.6, 0.5, 0.16}, 0, -45, 0, plain(kPine * 0.75));
        b.box({-2.2, 6.6, z}, {2.2, 6.95, z + 0.14}, plain(kPine * 0.7));
    }
    for (double x = -8; x <= 8; x += 1.333) {
        b.box({x, 0, -2}, {x + 0.15, 0.6, deep}, plain(kPine * 0.7));
    }
    b.box({-9, 0, deep}, {9, 10, deep + 0.2},
          patterned(Pattern::Siding, kPine * 0.5, kDarkWood * 0.5, 0.5));
    Shape& pane = b.box({-1.2, 2.6, deep - 0.1}, {1.2, 5.6, deep},
                        patterned(Pattern::View, {1.05, 1.12, 1.15}, {0.42, 0.50, 0.38}, 1.0));
    pane.glows = true;
    pane.shadows = false;
    for (const double x : {-1.35, -0.06, 1.2}) {
        b.box({x, 2.5, deep - 0.3}, {x + 0.13, 5.7, deep - 0.1}, plain(kPaper * 0.8));
    }
    b.box({-1.35, 4.0, deep - 0.3}, {1.33, 4.13, deep - 0.1}, plain(kPaper * 0.8));
    b.box({-1.35, 5.6, deep - 0.3}, {1.33, 5.75, deep - 0.1}, plain(kPaper * 0.8));
    b.scene.lights.push_back(
        {{-1.2, 2.6, deep - 0.5}, {2.4, 0, 0}, {0, 3, 0}, {0, 0, -1}, {30, 29, 27}});
    b.fill({-2, 6.3, 1}, {4, 0, 0}, {0, 0, 4}, {0, -1, 0}, 3.2);
    if (done) {
        const Material fluff = patterned(Pattern::Carpet, {0.70, 0.68, 0.62}, kPaper, 1);
        b.box({-9, 0.6, 2.4}, {9, 0.78, deep}, fluff).group = 1;
        for (int k = 0; k < 160; ++k) {
            const double x = -8 + 16 * hash(k, 1, 1);
            const double z = 3.2 + (deep - 4) * hash(k, 2, 2);
            b.egg({x, 0.74, z}, {1.5 + hash(k, 3, 3), 0.16 + 0.14 * hash(k, 4, 4), 1.3}, fluff)
                .group = 1;
        }
        for (const double z : {7.0, 11.5}) {
            b.box({-2.6, 0.5, z}, {-2.4, 2.2, z + 0.05}, plain(kOchre));
        }
    } else {
        for (double z = 4.5; z < deep; z += 2.0) {
            b.cylinder({-1.2, 0.6, z}, 0.12, 0.35, plain(kPorcelain));
            b.cylinder({0.3, 0.6, z}, 0.12, 0.35, plain(kPorcelain));
        }
        b.box({-1.24, 0.9, 3}, {-1.16, 0.96, deep}, plain(kInk));
        b.box({0.26, 0.9, 3}, {0.34, 0.96, deep}, plain(kInk));
        b.turned({3.0, 1.2, 9}, {1.8, 1.3, 1.4}, 20, 0, 0, plain({0.62, 0.49, 0.33}));
        b.turned({-3.6, 1.0, 12}, {2.4, 1.1, 1.3}, -15, 0, 0, plain(kDarkWood));
    }
    b.scene.camera = {{0.4, 4.4, -1.2}, -1, -8, 76};
    return settled(b);
}

}  // namespace

Scene kitchenBefore() {
    return kitchen(State::Tired);
}

Scene kitchenDuring() {
    return kitchen(State::Open);
}

Scene kitchenAfter() {
    return kitchen(State::Done);
}

Scene bathroomBefore() {
    return bathroomOld();
}

Scene bathroomOpened() {
    return bathroomOpenedUp();
}

Scene bathroomTiling() {
    return bathroomHalfTiled();
}

Scene halfBathBefore() {
    return halfBath(false);
}

Scene halfBathAfter() {
    return halfBath(true);
}

Scene panelBefore() {
    return panel(false);
}

Scene panelAfter() {
    return panel(true);
}

Scene atticBefore() {
    return attic(false);
}

Scene atticAfter() {
    return attic(true);
}

}  // namespace ledgerboard::photos
