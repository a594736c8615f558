#include "viewer/stage/things/angle.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "viewer/words/numbers.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

constexpr double line_mm = 46;
constexpr double arc_mm = 34;
constexpr double reach_of_drop_mm = 80;

}  // namespace

void Angle::show(const geometry::Head& head, const geometry::Placement& placement, const Shown& shown) {
  shown_ = shown.has(Thing::angle);
  forward_.clear();
  front_.clear();
  arc_.clear();
  if (!shown_) return;
  // From the coil's face straight down onto the skin, so that the angle on the skin is the coil's.
  const auto drop = [&](double angle_deg, double along_mm) -> Vector3d {
    const double a = angle_deg * std::numbers::pi / 180;
    const Vector3d way = std::cos(a) * placement.forward + std::sin(a) * placement.inward;
    const Vector3d above = placement.pulse + along_mm * way + reach_of_drop_mm / 2 * placement.normal;
    if (const auto hit = head.skin().ray_hit(above, -placement.normal, reach_of_drop_mm))
      return head.skin().position(hit->point);
    return head.skin().position(head.skin().closest(placement.pulse + along_mm * way));
  };
  for (double mm = 0; mm <= line_mm; mm += 2) {
    forward_.push_back(drop(0, mm));
    front_.push_back(drop(placement.angle_deg, mm));
  }
  const int steps = std::max(2, static_cast<int>(std::abs(placement.angle_deg) / 3));
  for (int i = 0; i <= steps; ++i) arc_.push_back(drop(placement.angle_deg * i / steps, arc_mm));
  label_at_ = drop(placement.angle_deg / 2, arc_mm);
  forward_end_ = forward_.back();
  normal_ = placement.normal;
  text_ = in_degrees(placement.angle_deg);
}

void Angle::draw(const geometry::Head& head, const Sight& sight) {
  ink_.begin(sight);
  in_sight_ = shown_ && in_sight(head.skin(), label_at_, normal_, sight);
  if (shown_) {
    ink_.line(forward_, 3.6, palette::halo, 1.9);
    ink_.line(front_, 3.6, palette::halo, 1.9);
    ink_.line(arc_, 3.6, palette::halo, 1.9);
    ink_.line(forward_, 2, palette::angle, 2.2);
    ink_.line(front_, 2, palette::front_axis, 2.2);
    ink_.line(arc_, 2, palette::angle, 2.2);
  }
  ink_.done();
}

void Angle::wish(std::vector<LabelWish>& labels, const Sight& sight) const {
  if (!in_sight_) return;
  LabelWish wish;
  wish.text = text_;
  wish.anchor = sight.project(label_at_);
  wish.clear_px = 5 * sight.scale;
  wish.priority = 97;
  wish.may_go_far = true;
  wish.bold = true;
  wish.size_px = 16;
  labels.push_back(wish);
}

}  // namespace scalpmark::viewer
