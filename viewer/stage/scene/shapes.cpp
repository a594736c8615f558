#include "viewer/stage/scene/shapes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace scalpmark::viewer {

using Eigen::Vector2d;

namespace {

struct Size {
  double reach = 0;
  double other = 0;  ///< ring, hollow disc: inner radius; bar, cross: half a stroke's width; brackets: an arm
};

Size size_of(Shape shape) {
  switch (shape) {
    case Shape::dot:
      return {3.2, 0};
    case Shape::disc:
      return {6.5, 0};
    case Shape::small_disc:
      return {4, 0};
    case Shape::hollow_disc:
      return {6.5, 4.4};
    case Shape::small_hollow_disc:
      return {4, 2.4};
    case Shape::bar:
      return {13, 2.6};
    case Shape::small_bar:
      return {6.5, 1.5};
    case Shape::ring:
      return {12.5, 8.8};
    case Shape::diamond:
      return {12.5, 0};
    case Shape::small_diamond:
      return {7, 0};
    case Shape::tag:
      return {11, 6.5};
    case Shape::brackets:
      return {13, 7};
    case Shape::pencil_cross:
      return {10, 1.5};
  }
  return {};
}

Vector2d on_circle(int i, int n, double radius) {
  const double a = 2 * std::numbers::pi * i / n;
  return {radius * std::cos(a), radius * std::sin(a)};
}

}  // namespace

bool faces_eye(Shape shape) {
  return shape == Shape::brackets || shape == Shape::diamond || shape == Shape::small_diamond;
}

double reach_px(Shape shape) {
  return size_of(shape).reach;
}

std::vector<Vector2d> triangles_px(Shape shape, double grow_px) {
  const Size size = size_of(shape);
  std::vector<Vector2d> out;
  const auto fan = [&](const std::vector<Vector2d>& corners) {
    for (size_t i = 2; i < corners.size(); ++i)
      out.insert(out.end(), {corners[0], corners[i - 1], corners[i]});
  };
  switch (shape) {
    case Shape::dot:
    case Shape::disc:
    case Shape::small_disc: {
      std::vector<Vector2d> circle;
      circle.reserve(28);
      for (int i = 0; i < 28; ++i) circle.push_back(on_circle(i, 28, size.reach + grow_px));
      fan(circle);
      break;
    }
    case Shape::hollow_disc:
    case Shape::small_hollow_disc:
    case Shape::ring: {
      const double inner = std::max(0.0, size.other - grow_px);
      for (int i = 0; i < 36; ++i) {
        const Vector2d a = on_circle(i, 36, size.reach + grow_px),
                       b = on_circle(i + 1, 36, size.reach + grow_px);
        const Vector2d c = on_circle(i, 36, inner), d = on_circle(i + 1, 36, inner);
        out.insert(out.end(), {c, a, b, c, b, d});
      }
      break;
    }
    case Shape::bar:
    case Shape::small_bar: {
      const double l = size.reach + grow_px, w = size.other + grow_px;
      fan({{-l, -w}, {l, -w}, {l, w}, {-l, w}});
      break;
    }
    case Shape::diamond:
    case Shape::small_diamond: {
      const double r = size.reach + std::numbers::sqrt2 * grow_px;
      fan({{0, -r}, {r, 0}, {0, r}, {-r, 0}});
      break;
    }
    case Shape::tag: {
      // A luggage tag: square at one end, a tip at the other.
      const double l = size.reach + grow_px, w = size.other + grow_px, shoulder = l - w;
      fan({{-l, -w}, {shoulder, -w}, {l, 0}, {shoulder, w}, {-l, w}});
      break;
    }
    case Shape::brackets: {
      constexpr double half_stroke = 1.2;
      const double out = size.reach + grow_px, in = size.reach - 2 * half_stroke - grow_px,
                   end = size.reach - size.other - grow_px;
      for (const double x : {-1.0, 1.0})
        for (const double y : {-1.0, 1.0}) {
          const auto arm = [&](const Vector2d& low, const Vector2d& high) {
            std::vector<Vector2d> box{{x * low.x(), y * low.y()},
                                      {x * high.x(), y * low.y()},
                                      {x * high.x(), y * high.y()},
                                      {x * low.x(), y * high.y()}};
            if (x * y < 0) std::reverse(box.begin(), box.end());  // counter-clockwise as mirrored, too
            fan(box);
          };
          arm({end, in}, {out, out});
          arm({in, end}, {out, out});
        }
      break;
    }
    case Shape::pencil_cross: {
      const double l = size.reach + grow_px, w = size.other + grow_px;
      for (const double turned : {-1.0, 1.0}) {
        const Vector2d x = Vector2d(1, turned).normalized(), y(-x.y(), x.x());
        fan({-l * x - w * y, l * x - w * y, l * x + w * y, -l * x + w * y});
      }
      break;
    }
  }
  return out;
}

}  // namespace scalpmark::viewer
