// What stands in a room, where the light comes from and where the camera is: the shapes of one
// picture, and which of them a ray meets first.
//
// Units: feet.
#pragma once

#include <array>
#include <limits>
#include <vector>

#include "demo-data/photos/material.h"
#include "demo-data/photos/vec.h"

namespace ledgerboard::photos {

enum class Form : std::uint8_t { Box, Cylinder, Ellipsoid };

// A solid about its centre. A cylinder stands upright: half.x is its radius, half.y half its
// height. The axes turn it; their default leaves it square to the room.
struct Shape {
    Form form = Form::Box;
    Vec centre;
    Vec half;
    std::array<Vec, 3> axes{Vec{1, 0, 0}, Vec{0, 1, 0}, Vec{0, 0, 1}};
    bool isTurned = false;  // whether the axes differ from their default
    Material material;
    bool glows = false;  // a pane or a lamp: shows its own colour whatever the light
    bool shadows = true;
    int group = 0;  // no ink between shapes of one group, 0 apart
};

// A rectangle that gives light to the side its normal points to.
struct Light {
    Vec corner;
    Vec across;
    Vec up;
    Vec normal;
    Colour colour;
};

// Far away; shines through panes.
struct Sun {
    Vec toward{0, 1, 0};  // of length 1
    Colour colour{0, 0, 0};
};

struct Camera {
    Vec at;
    double turnDegrees = 0;  // to the right of straight in
    double tiltDegrees = 0;  // up
    double wideDegrees = 78;
};

struct Ray {
    Vec from;
    Vec to;  // direction, of length 1
};

struct Hit {
    double distance = std::numeric_limits<double>::infinity();
    int shape = -1;  // -1: nothing was met
    Vec normal;
};

class Scene {
  public:
    std::vector<Shape> shapes;
    std::vector<Light> lights;
    Sun sun;
    Camera camera;
    Colour ambient{0.37, 0.36, 0.34};
    Colour sky{0.80, 0.84, 0.86};

    // Sorts the shapes into a tree. Requires: called once, after the last shape, before any ray.
    void settle();

    // The nearest shape within `reach`.
    [[nodiscard]] Hit nearest(const Ray& ray, double reach) const;
    // Whether something that throws a shadow stands within `reach`.
    [[nodiscard]] bool blocked(const Ray& ray, double reach) const;
    // Whether the sun is met along the ray: through a pane or in the open.
    [[nodiscard]] bool sunny(const Ray& ray) const;
    // The colour of what was hit there, before light falls on it.
    [[nodiscard]] Colour surface(const Hit& hit, Vec place) const;

  private:
    struct Node {
        Vec low;
        Vec high;
        int first = 0;  // of order_
        int count = 0;  // 0: an inner node
        int left = -1;
        int right = -1;
        int axis = 0;  // along which left lies before right
    };

    int build(int first, int count);

    std::vector<Node> nodes_;
    std::vector<int> order_;
    std::vector<Vec> lows_;
    std::vector<Vec> highs_;
};

}  // namespace ledgerboard::photos
