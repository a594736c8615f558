#include "geometry/plan/edge_marks.h"

#include <Eigen/Geometry>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/head/face_region.h"
#include "geometry/tapes/laid_tape.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// An edge further than this over the skin, straight down, has no head under it.
constexpr double most_gap_mm = 80;
/// The sight line starts this far over the edge, so that skin that rises over the edge itself is still met.
constexpr double sight_start_mm = 30;

MarkOnSkin allowed(const Head& head, MarkOnSkin mark, Where where) {
  if (mark && where == Where::scalp && on_face(head, head.skin().position(*mark))) return {};
  return mark;
}

}  // namespace

MarkOnSkin tape_mark(const Head& head, const SurfacePoint& pulse, const Vector3d& heading, double length_mm,
                     Where where, std::vector<Vector3d>* line) {
  auto tape = lay_tape(head.skin(), pulse, heading, length_mm);
  if (!tape) return {};
  if (line) *line = std::move(tape->line);
  return allowed(head, tape->end, where);
}

MarkBelow drop_mark(const Head& head, const LaidPose& laid, const Vector3d& place, Where where,
                    const Look& look) {
  Vector3d up = laid.pose.normal;
  if (look.front_deg != 0 || look.right_deg != 0)
    up = (up + std::tan(radians(look.front_deg)) * laid.pose.front +
          std::tan(radians(look.right_deg)) * laid.pose.right())
             .normalized();
  const auto hit = head.skin().ray_hit(place + sight_start_mm * up, -up, sight_start_mm + most_gap_mm);
  if (!hit) return {};
  return {allowed(head, hit->point, where), hit->distance_mm - sight_start_mm};
}

MarkBelow nearest_mark(const Head& head, const Vector3d& place, Where where) {
  const auto p = nearest_skin(head.skin(), place);
  if (!p) return {};
  return {allowed(head, *p, where), (head.skin().position(*p) - place).norm()};
}

double lift_of(const Head& head, const CoilSetup& setup, const LaidPose& laid) {
  return clearing_lift(head.skin(), setup.model, laid.pose) + setup.lift_mm;
}

Vector3d place_of(const LaidPose& laid, const Vector3d& on_coil, double lift_mm) {
  const Vector3d ahead =
      laid.pose.pulse + (lift_mm + on_coil.z()) * laid.pose.normal + on_coil.y() * laid.pose.front;
  return on_coil.x() == 0 ? ahead : Vector3d(ahead + on_coil.x() * laid.pose.right());
}

MarkOnSkin mark_of(const Head& head, const CoilSetup& setup, MarkRule rule, const LaidPose& laid,
                   const SurfacePoint& pulse, const Vector3d& on_coil, Where where, const Look& look) {
  switch (rule) {
    case MarkRule::tape: {
      if (on_coil.x() == 0) return tape_mark(head, pulse, laid.pose.front, on_coil.y(), where);
      const double far_mm = std::hypot(on_coil.x(), on_coil.y());
      return tape_mark(head, pulse,
                       (on_coil.x() * laid.pose.right() + on_coil.y() * laid.pose.front) / far_mm, far_mm,
                       where);
    }
    case MarkRule::drop:
      // From any height the same, unless one looks aside.
      return drop_mark(head, laid,
                       place_of(laid, on_coil,
                                look.front_deg != 0 || look.right_deg != 0 ? lift_of(head, setup, laid) : 0),
                       where, look)
          .mark;
    case MarkRule::nearest:
      return nearest_mark(head, place_of(laid, on_coil, lift_of(head, setup, laid)), where).mark;
  }
  return {};
}

}  // namespace scalpmark::geometry
