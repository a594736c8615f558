#include "viewer/stage/drawing/ink.h"

#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkIdTypeArray.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkProperty.h>
#include <vtkUnsignedCharArray.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "viewer/stage/drawing/triangles.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

/// Marks lie this far over the skin, toward the eye, and each layer over the one before.
constexpr double mark_lift_mm = 3, layer_lift_mm = 0.6, halo_below_mm = 0.3;
constexpr double halo_px = 1.5;
/// A mark is never seen flatter than this (the cosine of its tilt).
constexpr double flattest = 0.5;

}  // namespace

Ink::Ink(vtkRenderer* renderer) : Ink(renderer, vtkSmartPointer<vtkActor>::New()) {}

Ink::Ink(vtkRenderer* renderer, vtkActor* actor) : actor_(actor) {
  mapper_->SetInputData(data_);
  mapper_->ScalarVisibilityOn();
  actor_->SetMapper(mapper_);
  actor_->GetProperty()->LightingOff();
  renderer->AddActor(actor_);
}

void Ink::begin(const Sight& sight) {
  sight_ = sight;
  points_.clear();
  colours_.clear();
}

void Ink::triangle(const Vector3d& a, const Vector3d& b, const Vector3d& c, Colour colour) {
  for (const Vector3d* p : {&a, &b, &c}) {
    for (int i = 0; i < 3; ++i) points_.push_back(static_cast<float>((*p)[i]));
    colours_.insert(colours_.end(), {colour.red, colour.green, colour.blue});
  }
}

void Ink::mark(const Mark& mark, Colour colour) {
  // Tilt the shape's plane toward the eye where the skin is seen from the side.
  Vector3d normal = mark.normal;
  const Vector3d to_eye = sight_.way_to_eye(mark.at);
  const double facing = normal.dot(to_eye);
  if (facing < flattest) {
    const Vector3d aside = normal - facing * to_eye;
    const double length = aside.norm();
    normal = length > 1e-9 ? Vector3d(flattest * to_eye + std::sqrt(1 - flattest * flattest) / length * aside)
                           : to_eye;
  }
  if (faces_eye(mark.shape)) normal = sight_.toward_eye;
  Vector3d x =
      faces_eye(mark.shape) ? sight_.right() : Vector3d(mark.along - mark.along.dot(normal) * normal);
  if (x.norm() < 1e-6) x = normal.unitOrthogonal();
  x.normalize();
  const Vector3d y = normal.cross(x);
  // Where a mark is tilted up, its lower half must still clear the skin; the same for all, so that layers
  // hold.
  const double lift_mm = mark_lift_mm + layer_lift_mm * mark.layer() +
                         sight_.mm(reach_px(Shape::bar)) * std::clamp(1 - facing, 0.0, 1.0);
  const auto draw = [&](double grow, Colour shade, double lift) {
    const Vector3d at = mark.at + lift * to_eye;
    const auto corner = [&](const Eigen::Vector2d& p) -> Vector3d {
      return at + sight_.mm(p.x()) * x + sight_.mm(p.y()) * y;
    };
    const auto flat = triangles_px(mark.shape, grow);
    for (size_t i = 0; i + 2 < flat.size(); i += 3)
      triangle(corner(flat[i]), corner(flat[i + 1]), corner(flat[i + 2]), shade);
  };
  draw(halo_px, palette::halo, lift_mm - halo_below_mm);
  draw(0, colour, lift_mm);
}

void Ink::line(const std::vector<Vector3d>& points, double width_px, Colour colour, double lift_mm) {
  if (points.size() < 2) return;
  const double half = 0.5 * sight_.mm(width_px);
  const auto flat = [&](const Vector3d& v) -> Vector3d {
    return v - v.dot(sight_.toward_eye) * sight_.toward_eye;
  };
  std::vector<Vector3d> across(points.size(), Vector3d::Zero());
  Vector3d last = sight_.right();
  for (size_t i = 0; i < points.size(); ++i) {
    const Vector3d way = flat(points[std::min(i + 1, points.size() - 1)] - points[i == 0 ? 0 : i - 1]);
    if (way.norm() > 1e-9) last = sight_.toward_eye.cross(way).normalized();
    across[i] = half * last;
  }
  for (size_t i = 1; i < points.size(); ++i) {
    const Vector3d a = points[i - 1] + lift_mm * sight_.way_to_eye(points[i - 1]),
                   b = points[i] + lift_mm * sight_.way_to_eye(points[i]);
    triangle(a - across[i - 1], b - across[i], b + across[i], colour);
    triangle(a - across[i - 1], b + across[i], a + across[i - 1], colour);
  }
}

void Ink::dashes(const Vector3d& from, const Vector3d& to, double width_px, Colour colour, double lift_mm) {
  const double dash_mm = sight_.mm(5);
  const Vector3d way = to - from;
  const double length = (way - way.dot(sight_.toward_eye) * sight_.toward_eye).norm();
  const int pieces = std::clamp(static_cast<int>(length / dash_mm), 1, 400) | 1;  // odd: ends with a dash
  for (int i = 0; i < pieces; i += 2)
    line({from + way * i / pieces, from + way * (i + 1) / pieces}, width_px, colour, lift_mm);
}

void Ink::spot(const Vector3d& at, double radius_px, Colour colour, double lift_mm) {
  constexpr int corners = 20;
  const double r = sight_.mm(radius_px);
  const Vector3d centre = at + lift_mm * sight_.way_to_eye(at);
  const auto rim = [&](int i) -> Vector3d {
    const double a = 2 * std::numbers::pi * i / corners;
    return centre + r * std::cos(a) * sight_.right() + r * std::sin(a) * sight_.up;
  };
  for (int i = 0; i < corners; ++i) triangle(centre, rim(i), rim(i + 1), colour);
}

void Ink::ribbon(const Ribbon& ribbon) {
  const Colour colour = colour_of(ribbon.role), rim = colour_of(ribbon.rim);
  std::vector<Vector3d> left, right;
  left.reserve(ribbon.points.size());
  right.reserve(ribbon.points.size());
  for (std::size_t i = 0; i < ribbon.points.size(); ++i) {
    const Vector3d lift = ribbon.lift_mm * sight_.way_to_eye(ribbon.points[i]);
    left.push_back(ribbon.points[i] + lift - ribbon.half_mm * ribbon.across[i]);
    right.push_back(ribbon.points[i] + lift + ribbon.half_mm * ribbon.across[i]);
  }
  for (std::size_t i = 1; i < left.size(); ++i) {
    triangle(left[i - 1], left[i], right[i], colour);
    triangle(left[i - 1], right[i], right[i - 1], colour);
  }
  constexpr double print_over_mm = 0.9;  // less lets the band break the digits on a curved head
  for (const auto& edge : {left, right}) line(edge, ribbon.rim_px, rim, print_over_mm);
  for (const auto& stroke : ribbon.print) line(stroke, ribbon.print_px, rim, ribbon.lift_mm + print_over_mm);
}

void Ink::wedge(const Wedge& wedge) {
  constexpr double halo_below_wedge_mm = 0.2;
  const auto draw = [&](double grow_px, Colour colour, double lift_mm) {
    const Vector3d tip = wedge.at + lift_mm * sight_.toward_eye - sight_.mm(2 * grow_px) * sight_.up;
    const Vector3d top =
        wedge.at + lift_mm * sight_.toward_eye + sight_.mm(wedge_height_px + grow_px) * sight_.up;
    const Vector3d half = sight_.mm(wedge_half_px + 1.5 * grow_px) * sight_.right();
    triangle(tip, top + half, top - half, colour);
  };
  draw(wedge_halo_px, palette::halo, wedge.lift_mm - halo_below_wedge_mm);
  draw(0, palette::text, wedge.lift_mm);
}

void Ink::done() {
  set_triangles(*data_, points_, colours_, 3);
  actor_->SetVisibility(!points_.empty());
}

}  // namespace scalpmark::viewer
