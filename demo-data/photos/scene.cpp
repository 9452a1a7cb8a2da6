#include "demo-data/photos/scene.h"

#include <numeric>
#include <utility>

namespace ledgerboard::photos {

namespace {

constexpr double kTouching = 1e-5;

Vec into(const Shape& shape, Vec v) {
    if (!shape.isTurned) {
        return v;
    }
    return {dot(v, shape.axes[0]), dot(v, shape.axes[1]), dot(v, shape.axes[2])};
}

Vec outOf(const Shape& shape, Vec v) {
    if (!shape.isTurned) {
        return v;
    }
    return shape.axes[0] * v.x + shape.axes[1] * v.y + shape.axes[2] * v.z;
}

// Where a line enters and leaves the stretch between -half and half; false where it never does.
bool stretch(double from, double to, double half, double& enter, double& leave, int axis,
             int& enteredBy) {
    if (std::abs(to) < 1e-12) {
        return std::abs(from) <= half;
    }
    double a = (-half - from) / to;
    double b = (half - from) / to;
    if (a > b) {
        std::swap(a, b);
    }
    if (a > enter) {
        enter = a;
        enteredBy = axis;
    }
    leave = std::min(leave, b);
    return enter <= leave;
}

struct Local {
    double distance = -1;
    Vec normal;
};

Local meetBox(Vec from, Vec to, Vec half) {
    double enter = -1e30;
    double leave = 1e30;
    int by = 0;
    if (!stretch(from.x, to.x, half.x, enter, leave, 0, by) ||
        !stretch(from.y, to.y, half.y, enter, leave, 1, by) ||
        !stretch(from.z, to.z, half.z, enter, leave, 2, by)) {
        return {};
    }
    Vec normal;
    if (by == 0) {
        normal.x = to.x > 0 ? -1 : 1;
    } else if (by == 1) {
        normal.y = to.y > 0 ? -1 : 1;
    } else {
        normal.z = to.z > 0 ? -1 : 1;
    }
    return {enter, normal};
}

Local meetEllipsoid(Vec from, Vec to, Vec half) {
    const Vec inverse{1 / half.x, 1 / half.y, 1 / half.z};
    const Vec o = from * inverse;
    const Vec d = to * inverse;
    const double a = dot(d, d);
    const double b = dot(o, d);
    const double root = b * b - a * (dot(o, o) - 1.0);
    if (root < 0) {
        return {};
    }
    const double t = (-b - std::sqrt(root)) / a;
    return {t, unit((o + d * t) * inverse)};
}

Local meetCylinder(Vec from, Vec to, Vec half) {
    double enter = -1e30;
    double leave = 1e30;
    int by = 1;
    if (!stretch(from.y, to.y, half.y, enter, leave, 1, by)) {
        return {};
    }
    const double a = to.x * to.x + to.z * to.z;
    const double b = from.x * to.x + from.z * to.z;
    const double c = from.x * from.x + from.z * from.z - half.x * half.x;
    if (a < 1e-12) {
        return c <= 0 ? Local{enter, {0, to.y > 0 ? -1.0 : 1.0, 0}} : Local{};
    }
    const double root = b * b - a * c;
    if (root < 0) {
        return {};
    }
    const double in = (-b - std::sqrt(root)) / a;
    const double out = (-b + std::sqrt(root)) / a;
    if (std::max(in, enter) > std::min(out, leave)) {
        return {};
    }
    if (in > enter) {
        const Vec at = from + to * in;
        return {in, unit({at.x, 0, at.z})};
    }
    return {enter, {0, to.y > 0 ? -1.0 : 1.0, 0}};
}

Local meet(const Shape& shape, const Ray& ray) {
    const Vec from = into(shape, ray.from - shape.centre);
    const Vec to = into(shape, ray.to);
    switch (shape.form) {
        case Form::Box:
            return meetBox(from, to, shape.half);
        case Form::Cylinder:
            return meetCylinder(from, to, shape.half);
        case Form::Ellipsoid:
            return meetEllipsoid(from, to, shape.half);
    }
    return {};
}

bool reaches(Vec low, Vec high, const Ray& ray, Vec inverse, double reach) {
    const double x0 = (low.x - ray.from.x) * inverse.x;
    const double x1 = (high.x - ray.from.x) * inverse.x;
    const double y0 = (low.y - ray.from.y) * inverse.y;
    const double y1 = (high.y - ray.from.y) * inverse.y;
    const double z0 = (low.z - ray.from.z) * inverse.z;
    const double z1 = (high.z - ray.from.z) * inverse.z;
    const double enter = std::max({std::min(x0, x1), std::min(y0, y1), std::min(z0, z1), 0.0});
    const double leave = std::min({std::max(x0, x1), std::max(y0, y1), std::max(z0, z1), reach});
    return enter <= leave;
}

Vec inverseOf(Vec to) {
    const auto one = [](double v) {
        return 1.0 / (std::abs(v) < 1e-9 ? (v < 0 ? -1e-9 : 1e-9) : v);
    };
    return {one(to.x), one(to.y), one(to.z)};
}

Vec least(Vec a, Vec b) {
    return {std::min(a.x, b.x), std::min(a.y, b.y), std::min(a.z, b.z)};
}

Vec most(Vec a, Vec b) {
    return {std::max(a.x, b.x), std::max(a.y, b.y), std::max(a.z, b.z)};
}

double part(Vec v, int axis) {
    return axis == 0 ? v.x : axis == 1 ? v.y : v.z;
}

}  // namespace

void Scene::settle() {
    lows_.clear();
    highs_.clear();
    for (const Shape& shape : shapes) {
        Vec half = shape.half;
        if (shape.form == Form::Cylinder) {
            half.z = half.x;
        }
        Vec reach;
        for (std::size_t k = 0; k < 3; ++k) {
            const Vec axis = shape.axes[k] * part(half, static_cast<int>(k));
            reach = reach + Vec{std::abs(axis.x), std::abs(axis.y), std::abs(axis.z)};
        }
        lows_.push_back(shape.centre - reach);
        highs_.push_back(shape.centre + reach);
    }
    order_.resize(shapes.size());
    std::iota(order_.begin(), order_.end(), 0);
    nodes_.clear();
    if (!shapes.empty()) {
        build(0, static_cast<int>(shapes.size()));
    }
}

int Scene::build(int first, int count) {
    Node node;
    node.low = {1e30, 1e30, 1e30};
    node.high = {-1e30, -1e30, -1e30};
    for (int k = first; k < first + count; ++k) {
        const auto shape = static_cast<std::size_t>(order_[static_cast<std::size_t>(k)]);
        node.low = least(node.low, lows_[shape]);
        node.high = most(node.high, highs_[shape]);
    }
    const int index = static_cast<int>(nodes_.size());
    nodes_.push_back(node);
    if (count <= 3) {
        nodes_.back().first = first;
        nodes_.back().count = count;
        return index;
    }
    const Vec size = node.high - node.low;
    const int axis = size.x > size.y && size.x > size.z ? 0 : size.y > size.z ? 1 : 2;
    const auto begin = order_.begin() + first;
    const int half = count / 2;
    std::nth_element(begin, begin + half, begin + count, [&](int a, int b) {
        const Vec ca = shapes[static_cast<std::size_t>(a)].centre;
        const Vec cb = shapes[static_cast<std::size_t>(b)].centre;
        return std::pair(part(ca, axis), a) < std::pair(part(cb, axis), b);
    });
    const int left = build(first, half);
    const int right = build(first + half, count - half);
    nodes_[static_cast<std::size_t>(index)].axis = axis;
    nodes_[static_cast<std::size_t>(index)].left = left;
    nodes_[static_cast<std::size_t>(index)].right = right;
    return index;
}

Hit Scene::nearest(const Ray& ray, double reach) const {
    Hit best;
    best.distance = reach;
    const Vec inverse = inverseOf(ray.to);
    std::array<int, 64> waiting{};
    std::size_t depth = nodes_.empty() ? 0 : 1;
    while (depth > 0) {
        const Node& node = nodes_[static_cast<std::size_t>(waiting[--depth])];
        if (!reaches(node.low, node.high, ray, inverse, best.distance)) {
            continue;
        }
        if (node.count == 0) {
            const bool leftFirst = part(ray.to, node.axis) > 0;
            waiting[depth++] = leftFirst ? node.right : node.left;
            waiting[depth++] = leftFirst ? node.left : node.right;
            continue;
        }
        for (int k = node.first; k < node.first + node.count; ++k) {
            const int index = order_[static_cast<std::size_t>(k)];
            const Shape& shape = shapes[static_cast<std::size_t>(index)];
            const Local local = meet(shape, ray);
            if (local.distance > kTouching && local.distance < best.distance) {
                best.distance = local.distance;
                best.shape = index;
                best.normal = outOf(shape, local.normal);
            }
        }
    }
    return best;
}

bool Scene::blocked(const Ray& ray, double reach) const {
    Ray rest = ray;
    for (int tries = 0; tries < 8; ++tries) {
        const Hit hit = nearest(rest, reach);
        if (hit.shape < 0) {
            return false;
        }
        if (shapes[static_cast<std::size_t>(hit.shape)].shadows) {
            return true;
        }
        rest.from = rest.from + rest.to * (hit.distance + 1e-3);
        reach -= hit.distance;
    }
    return false;
}

bool Scene::sunny(const Ray& ray) const {
    const Hit hit = nearest(ray, 1e4);
    return hit.shape < 0 ||
           shapes[static_cast<std::size_t>(hit.shape)].material.pattern == Pattern::View;
}

Colour Scene::surface(const Hit& hit, Vec place) const {
    const Shape& shape = shapes[static_cast<std::size_t>(hit.shape)];
    const Vec local = into(shape, place - shape.centre);
    const Vec at = local + shape.centre;
    const Vec n = into(shape, hit.normal);
    if (shape.form == Form::Cylinder && std::abs(n.y) < 0.5) {
        return colourAt(shape.material, std::atan2(local.z, local.x) * shape.half.x, at.y);
    }
    const double ax = std::abs(n.x);
    const double ay = std::abs(n.y);
    const double az = std::abs(n.z);
    if (ay >= ax && ay >= az) {
        return colourAt(shape.material, at.x, at.z);
    }
    return ax >= az ? colourAt(shape.material, at.z, at.y) : colourAt(shape.material, at.x, at.y);
}

}  // namespace ledgerboard::photos
