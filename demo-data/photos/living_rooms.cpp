// Living room, dining room, front bedroom and stairs. Each room is built once by its stage, so that
// the pictures from one spot match.
#include "demo-data/photos/builder.h"
#include "demo-data/photos/scenes.h"

namespace ledgerboard::photos {

using namespace paint_box;

namespace {

enum class State : std::uint8_t { Tired, Open, Done };

constexpr Colour kOldTrim{0.52, 0.38, 0.25};

Scene settled(Builder& b) {
    b.scene.settle();
    return std::move(b.scene);
}

void fireplace(Builder& b, double z0, double z1) {
    const Material brick = patterned(Pattern::Courses, kBrick, {0.70, 0.66, 0.60}, 0.24);
    b.box({0, 0, z0}, {0.7, 4.1, z1}, brick);
    b.box({0, 4.1, z0 + 0.5}, {0.45, 8.6, z1 - 0.5}, brick);
    b.box({0.66, 0.2, z0 + 1.2}, {0.72, 2.7, z1 - 1.2}, plain(kInk * 0.7));
    b.box({0, 4.05, z0 - 0.35}, {1.05, 4.3, z1 + 0.35}, plain(kOak));
    b.box({0, 3.75, z0 - 0.15}, {0.85, 4.05, z1 + 0.15}, plain(kOak * 0.85));
    b.box({0, 0, z0 - 0.2}, {2.0, 0.12, z1 + 0.2}, patterned(Pattern::Tile, kSlate, kInk, 0.5));
}

Scene livingRoom(State state) {
    Builder b;
    const Material floor = state == State::Tired
                               ? patterned(Pattern::Carpet, {0.52, 0.46, 0.36}, kStain, 1)
                               : patterned(Pattern::Boards, state == State::Open ? kRawOak : kOak,
                                           kDarkWood * 0.6, 0.21);
    const Material walls = state == State::Done ? plain(kWarmWhite)
                                                : patterned(Pattern::Blotches, {0.66, 0.62, 0.47},
                                                            {0.56, 0.51, 0.38}, 3.0);
    const Material ceiling = state == State::Tired
                                 ? patterned(Pattern::Cracked, kPlaster, kStain, 1)
                                 : plain(kPorcelain);
    b.room({14, 8.6, 16}, floor, walls, ceiling);
    const Colour trim = state == State::Done ? kPorcelain : kOldTrim;
    if (state != State::Open) {
        b.baseboards(0.55, plain(trim));
    }
    b.window(Side::Back, 4.4, 2.7, 2.6, 7.2, trim, 7.5);
    b.window(Side::Back, 8.4, 2.7, 2.6, 7.2, trim, 7.5);
    b.window(Side::Right, 10.5, 2.8, 2.6, 7.2, trim, 5.0);
    fireplace(b, 7.2, 12.8);
    b.fill({3, 8.3, 2}, {8, 0, 0}, {0, 0, 4}, {0, -1, 0}, 1.2);
    if (state == State::Tired) {
        b.turned({11.2, 0.65, 12.6}, {2.9, 1.3, 2.8}, 18, 0, 0, plain({0.38, 0.33, 0.30}));
        b.turned({11.5, 2.1, 13.9}, {2.9, 1.9, 0.7}, 18, 0, 0, plain({0.38, 0.33, 0.30}));
        b.turned({9.9, 1.6, 12.3}, {0.5, 0.8, 2.4}, 18, 0, 0, plain({0.34, 0.30, 0.27}));
        b.box({6.2, 0, 12.0}, {7.6, 1.2, 13.2}, plain({0.66, 0.52, 0.36}));
        b.box({6.4, 1.2, 12.2}, {7.5, 2.1, 13.1}, plain({0.62, 0.49, 0.33}));
    } else if (state == State::Open) {
        b.box({7.9, 0.25, 9.6}, {9.5, 1.35, 11.0}, plain(kSlate));
        b.cylinder({8.7, 0.0, 9.7}, 0.95, 0.4, plain(kSteel));
        b.turned({8.9, 2.4, 11.4}, {0.12, 2.6, 0.12}, 0, 0, 25, plain(kInk));
        b.turned({8.9, 3.5, 12.0}, {1.3, 0.12, 0.12}, 0, 0, 0, plain(kInk));
        b.egg({9.9, 1.0, 10.6}, {0.6, 0.9, 0.6}, plain({0.70, 0.64, 0.52}));
        b.toolBox({3.6, 0, 12.6}, kBrick);
        b.ladder({11.6, 0, 11.4}, 6.0, -35);
        b.bucket({5.9, 0, 13.4}, kPorcelain);
    }
    b.sun(34, 22, 1.7);
    b.scene.camera = {{12.6, 5.0, 0.8}, -24, -7, 78};
    return settled(b);
}

void builtIn(Builder& b) {
    const Material oak = plain(kOak);
    b.box({0, 0, 8.5}, {1.5, 3.0, 13.0}, oak);
    b.box({0, 3.0, 8.4}, {1.65, 3.15, 13.1}, plain(kOak * 0.85));
    b.box({0, 3.15, 8.7}, {0.9, 7.4, 12.8}, plain(kOak * 0.8));
    b.box({0, 7.4, 8.5}, {1.15, 7.7, 13.0}, oak);
    for (int k = 0; k < 3; ++k) {
        const double z = 8.85 + 1.32 * k;
        b.box({0.9, 3.9, z}, {0.93, 7.1, z + 1.15},
              patterned(Pattern::Blotches, {0.45, 0.50, 0.50}, {0.62, 0.66, 0.64}, 1.4));
        b.box({0.9, 5.45, z}, {0.97, 5.53, z + 1.15}, oak);
        b.box({0.9, 3.9, z + 0.54}, {0.97, 7.1, z + 0.61}, oak);
        b.box({1.5, 0.5, z}, {1.56, 2.7, z + 1.15}, plain(kOak * 0.9));
    }
}

Scene diningRoom(State state) {
    Builder b;
    const Material floor = patterned(Pattern::Boards, state == State::Done ? kOak : kOak * 0.55,
                                     kDarkWood * 0.5, 0.21);
    const Material paper =
        patterned(Pattern::Wallpaper, {0.66, 0.62, 0.50}, {0.46, 0.34, 0.28}, 0.7);
    const Material bare = patterned(Pattern::Blotches, kPlaster, {0.68, 0.62, 0.50}, 1.6);
    b.room({12, 8.6, 14}, floor,
           state == State::Done    ? plain({0.72, 0.74, 0.66})
           : state == State::Tired ? paper
                                   : bare,
           plain(kPorcelain));
    const Colour trim = state == State::Done ? kPorcelain : kOldTrim;
    b.baseboards(0.6, plain(trim));
    if (state == State::Open) {  // strips of paper still up on the back and right walls
        for (int k = 0; k < 7; ++k) {
            const double low = 0.8 + 6.0 * hash(k, 3, 1);
            const double x = 0.4 + 1.62 * k;
            b.box({x, low, 13.97}, {x + 1.3, 8.6, 14}, paper);
            const double z = 5.4 + 1.5 * k;
            b.box({11.97, 8.6 * hash(k, 5, 2), z}, {12, 8.6, z + 1.2}, paper);
            b.turned({2.5 + 1.2 * k, 0.12, 10.5 + 2.4 * hash(k, 8, 3)}, {1.3, 0.1, 0.6},
                     90 * hash(k, 9, 4), 6, 8, plain({0.66, 0.60, 0.48}));
        }
    }
    b.window(Side::Back, 6.2, 3.0, 2.4, 7.2, trim, 9.0);
    b.window(Side::Right, 9.5, 2.8, 2.4, 7.2, trim, 5.0);
    builtIn(b);
    b.fill({2, 8.3, 2}, {8, 0, 0}, {0, 0, 4}, {0, -1, 0}, 1.0);
    if (state == State::Tired) {
        b.cylinder({6, 6.3, 9}, 1.1, 0.16, plain(kDarkWood));
        b.box({5.97, 6.4, 8.97}, {6.03, 8.6, 9.03}, plain(kInk));
        for (int k = 0; k < 6; ++k) {
            const double a = k * 1.047;
            b.egg({6 + 1.05 * std::cos(a), 6.62, 9 + 1.05 * std::sin(a)}, {0.17, 0.26, 0.17},
                  plain({0.92, 0.86, 0.68}))
                .glows = true;
        }
        b.box({7.8, 0, 10.8}, {9.6, 1.4, 12.0}, plain({0.62, 0.49, 0.33}));
        b.box({8.0, 1.4, 11.0}, {9.3, 2.3, 12.0}, plain({0.66, 0.53, 0.37}));
    } else if (state == State::Open) {
        b.ladder({8.6, 0, 11.6}, 6.2, 20);
        b.bucket({6.4, 0, 10.4}, kSlate);
        b.bucket({9.9, 0, 9.4}, kPorcelain);
    } else {
        b.lamp({6, 8.6, 9}, 1.7);
    }
    b.sun(36, 20, 1.7);
    b.scene.camera = {{9.9, 5.0, 0.7}, -16, -5, 78};
    return settled(b);
}

Scene frontBedroom(State state) {
    Builder b;
    const bool done = state == State::Done;
    b.room({13, 8.2, 14},
           patterned(Pattern::Boards, done ? kOak : kOak * 0.55, kDarkWood * 0.5, 0.21),
           done ? plain({0.76, 0.77, 0.74})
                : patterned(Pattern::Wallpaper, {0.62, 0.60, 0.54}, {0.44, 0.46, 0.50}, 0.9),
           done ? plain(kPorcelain) : patterned(Pattern::Cracked, kPlaster, kStain, 1));
    const Colour trim = done ? kPorcelain : kOldTrim;
    b.baseboards(0.55, plain(trim));
    b.window(Side::Back, 4.0, 2.5, 2.4, 6.6, trim, 7.0);
    b.window(Side::Back, 8.4, 2.5, 2.4, 6.6, trim, 7.0);
    b.window(Side::Left, 8.6, 2.5, 2.4, 6.6, trim, 5.0);
    b.door(Side::Right, 9.4, 2.6, 6.7, plain(done ? kPorcelain : kOldTrim), trim);
    b.fill({3, 8.0, 2}, {7, 0, 0}, {0, 0, 4}, {0, -1, 0}, 1.0);
    if (!done) {
        const Material iron = plain(kInk * 1.5);
        for (const double x : {5.2, 8.6}) {
            b.cylinder({x, 0, 13.2}, 0.09, 4.2, iron);
            b.cylinder({x, 0, 8.4}, 0.09, 2.9, iron);
        }
        for (const double y : {2.4, 4.0}) {
            b.box({5.2, y, 13.15}, {8.6, y + 0.1, 13.25}, iron);
        }
        b.box({5.2, 2.6, 8.35}, {8.6, 2.7, 8.45}, iron);
        b.box({5.25, 1.3, 8.5}, {8.55, 2.0, 13.1}, plain({0.66, 0.62, 0.54}));
        b.box({9.7, 0, 11.6}, {10.9, 1.1, 12.8}, plain({0.62, 0.49, 0.33}));
    }
    b.sun(36, -24, 1.7);
    b.scene.camera = {{2.0, 5.0, 0.7}, 18, -6, 78};
    return settled(b);
}

Scene stairs(State state) {
    Builder b;
    const bool sanded = state == State::Open;
    b.room({9, 14, 18},
           patterned(Pattern::Boards, sanded ? kOak : kOak * 0.5, kDarkWood * 0.5, 0.21),
           sanded ? plain(kWarmWhite)
                  : patterned(Pattern::Blotches, {0.64, 0.61, 0.48}, {0.54, 0.49, 0.38}, 3.0),
           plain(kPlaster));
    const Colour trim = sanded ? kPorcelain : kOldTrim;
    const double x1 = 4.4;
    for (int k = 0; k < 14; ++k) {
        const double z = 5.5 + 0.82 * k;
        const double y = 0.62 * k;
        const bool finished = sanded && k < 3;
        const Colour tread = finished ? kOak : sanded ? kRawOak : kOak * 0.5;
        b.box({0, 0, z}, {x1, y + 0.54, z + 0.84}, plain(trim * 0.94));
        b.box({0, y + 0.54, z - 0.1}, {x1 + 0.12, y + 0.62, z + 0.84}, plain(tread));
        for (const double shift : {0.2, 0.6}) {
            const bool missing = !sanded && (k == 4 || k == 7) && shift > 0.5;
            if (!missing) {
                b.cylinder({x1 - 0.15, y + 0.62, z + shift}, 0.055, 2.35, plain(trim));
            }
        }
    }
    const double rise = std::atan2(0.62, 0.82) * 180.0 / 3.14159265358979;
    b.turned({x1 - 0.15, 3.05 + 0.31 * 13.4, 5.6 + 0.41 * 14}, {0.24, 0.18, 0.82 * 14 * 1.26}, 0, 0,
             -rise, plain(kDarkWood));
    b.box({x1 - 0.4, 0, 4.8}, {x1 + 0.1, 3.9, 5.3}, plain(sanded ? kOak : kOldTrim));
    b.box({x1 - 0.48, 3.9, 4.72}, {x1 + 0.18, 4.05, 5.38}, plain(kDarkWood));
    b.door(Side::Right, 10.5, 2.7, 6.8, plain(trim), trim);
    b.window(Side::Back, 6.8, 2.2, 8.2, 12.0, trim, 14.0);
    b.fill({5, 10.0, 1}, {3.6, 0, 0}, {0, 0, 5}, {0, -1, 0}, 3.4);
    if (sanded) {
        b.bucket({6.7, 0, 8.2}, kPorcelain);
        b.toolBox({6.0, 0, 6.3}, kMoss);
        b.box({5.0, 0, 5.2}, {9, 0.02, 12}, plain(kPaper * 0.85));
    } else {
        b.box({6.9, 0, 11.6}, {8.4, 1.3, 13.0}, plain({0.62, 0.49, 0.33}));
    }
    b.scene.camera = {{6.9, 4.9, 0.6}, -14, 6, 74};
    return settled(b);
}

}  // namespace

Scene livingRoomBefore() {
    return livingRoom(State::Tired);
}

Scene livingRoomDuring() {
    return livingRoom(State::Open);
}

Scene livingRoomAfter() {
    return livingRoom(State::Done);
}

Scene diningRoomBefore() {
    return diningRoom(State::Tired);
}

Scene diningRoomDuring() {
    return diningRoom(State::Open);
}

Scene diningRoomAfter() {
    return diningRoom(State::Done);
}

Scene frontBedroomBefore() {
    return frontBedroom(State::Tired);
}

Scene frontBedroomAfter() {
    return frontBedroom(State::Done);
}

Scene stairsBefore() {
    return stairs(State::Tired);
}

Scene stairsDuring() {
    return stairs(State::Open);
}

}  // namespace ledgerboard::photos
