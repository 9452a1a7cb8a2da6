// How is a room put together? Walls, windows, doors and the things that stand about in it.
//
// Units: feet; colours as seen. A room lies between x 0 and width, y 0 and height, z 0 and depth;
// the camera looks in along z.
#pragma once

#include "demo-data/photos/scene.h"

namespace ledgerboard::photos {

// Colours of the house.
namespace paint_box {
inline constexpr Colour kPaper{0.88, 0.85, 0.77};
inline constexpr Colour kWarmWhite{0.88, 0.83, 0.72};
inline constexpr Colour kOak{0.62, 0.43, 0.25};
inline constexpr Colour kRawOak{0.74, 0.60, 0.42};
inline constexpr Colour kDarkWood{0.30, 0.20, 0.13};
inline constexpr Colour kPine{0.76, 0.62, 0.42};
inline constexpr Colour kMoss{0.40, 0.45, 0.30};
inline constexpr Colour kBrick{0.58, 0.32, 0.25};
inline constexpr Colour kOchre{0.74, 0.56, 0.28};
inline constexpr Colour kSlate{0.36, 0.40, 0.43};
inline constexpr Colour kSteel{0.55, 0.56, 0.56};
inline constexpr Colour kInk{0.12, 0.12, 0.13};
inline constexpr Colour kStain{0.55, 0.45, 0.30};
inline constexpr Colour kPlaster{0.78, 0.76, 0.72};
inline constexpr Colour kPorcelain{0.90, 0.89, 0.86};
inline constexpr Colour kCopper{0.70, 0.42, 0.26};
}  // namespace paint_box

[[nodiscard]] Material plain(Colour colour);
[[nodiscard]] Material patterned(Pattern pattern, Colour main, Colour other, double size);

enum class Side : std::uint8_t { Left, Back, Right };

class Builder {
  public:
    Scene scene;

    // Low and high corner.
    Shape& box(Vec low, Vec high, const Material& material);
    // A box turned about its centre: `turn` about the upright axis, `lean` about the axis into the
    // picture, `tip` about the axis across it. Degrees.
    Shape& turned(Vec centre, Vec size, double turn, double lean, double tip,
                  const Material& material);
    Shape& cylinder(Vec foot, double radius, double height, const Material& material);
    Shape& egg(Vec centre, Vec half, const Material& material);

    // Six faces. Later shapes stand in front of them.
    void room(Vec size, const Material& floor, const Material& walls, const Material& ceiling);
    // Base boards along the three walls in view.
    void baseboards(double height, const Material& material);
    // A sash window with light behind it. `along` is measured on its wall, x on the back wall, z on
    // the others. Requires: room() came first.
    void window(Side side, double along, double width, double sill, double head, Colour frame,
                double strength);
    void door(Side side, double along, double width, double height, const Material& leaf,
              Colour frame);
    // Light from behind the camera or above, without a lamp to be seen.
    void fill(Vec corner, Vec across, Vec up, Vec normal, double strength);

    // Sun through the windows of one wall, `steep` degrees above level and `aside` degrees to the
    // right of the way into the picture.
    void sun(double steep, double aside, double strength);

    // Wall studs with dark bays between, in front of a wall from `from` to `to` along it.
    void openWall(Side side, double from, double to, double height);
    void ladder(Vec foot, double height, double turn);
    void bucket(Vec foot, Colour colour);
    void sawhorses(Vec foot, double span);
    void toolBox(Vec foot, Colour colour);
    void baseCabinets(double from, double to, double z, Colour front, Colour top, bool worn);
    void wallCabinets(double from, double to, double z, Colour front);
    void toilet(Vec foot, double turn);
    void tub(Vec low, Vec high, Colour colour);
    void vanity(Vec low, double width, Colour front);
    void lamp(Vec hook, double drop);
    void boards(Vec foot, int count, double length, double turn);

  private:
    // A box given by its place on a wall: along it, up, and out from it.
    void onWall(Side side, double a0, double a1, double y0, double y1, double out0, double out1,
                const Material& material, bool glows = false);

    Vec size_;
};

}  // namespace ledgerboard::photos
