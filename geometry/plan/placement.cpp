#include "geometry/plan/placement.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "geometry/base/all_cores.h"
#include "geometry/base/error.h"
#include "geometry/base/text.h"
#include "geometry/coil/pose.h"
#include "geometry/head/face_region.h"
#include "geometry/paths/shortest_path.h"
#include "geometry/paths/walk.h"
#include "geometry/surface/triangle_math.h"
#include "geometry/tapes/laid_tape.h"

namespace scalpmark::geometry {

using Eigen::Matrix2d;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// An edge further than this over the skin, straight down, has no head under it.
constexpr double most_gap_mm = 80;
/// The sight line starts this far over the edge, so that skin that rises over the edge itself is still met.
constexpr double sight_start_mm = 30;

/// The coil's directions at a skin point, before any lift.
struct Laid {
  CoilPose pose;
  Vector3d forward, inward;
};

Laid lay(const Head& head, const Case& entered, Side side, const SurfacePoint& pulse, const Tilt& tilt = {}) {
  const Surface& skin = head.skin();
  Laid laid;
  laid.pose.pulse = skin.position(pulse);
  laid.pose.normal = contact_normal(skin, pulse, entered.coil_model.contact_patch_mm);
  // The tangent of the section square to `right`. Where the skin faces straight left or right the section is
  // a point and its tangent is taken as front.
  Vector3d forward = laid.pose.normal.cross(head.axes().right);
  if (forward.norm() < 1e-6) forward = head.axes().front;
  laid.forward = tangent_part(forward, laid.pose.normal);
  laid.inward = laid.forward.cross(laid.pose.normal);
  if (side == Side::right) laid.inward = -laid.inward;
  const double angle = entered.coil.angle_deg * M_PI / 180;
  laid.pose.front = std::cos(angle) * laid.forward + std::sin(angle) * laid.inward;
  if (tilt.roll_deg != 0 || tilt.pitch_deg != 0) laid.pose = tilted(laid.pose, tilt);
  return laid;
}

/// A mark on the skin, if it falls on the head at all.
using Mark = std::optional<SurfacePoint>;

Mark on_scalp(const Head& head, Mark mark) {
  if (mark && on_face(head, head.skin().position(*mark))) return {};
  return mark;
}

Mark tape_mark(const Head& head, const Laid& laid, const SurfacePoint& pulse, double reach_mm,
               std::vector<Vector3d>* line = nullptr) {
  auto tape = lay_tape(head.skin(), pulse, laid.pose.front, reach_mm);
  if (!tape) return {};
  if (line) *line = std::move(tape->line);
  return on_scalp(head, tape->end);
}

struct Dropped {
  Mark mark;
  double gap_mm = 0;
};

Dropped drop_mark(const Head& head, const Laid& laid, const Vector3d& edge) {
  const Vector3d& normal = laid.pose.normal;
  const auto hit = head.skin().ray_hit(edge + sight_start_mm * normal, -normal, sight_start_mm + most_gap_mm);
  if (!hit) return {};
  return {on_scalp(head, hit->point), hit->distance_mm - sight_start_mm};
}

Dropped nearest_mark(const Head& head, const Vector3d& edge) {
  const auto p = nearest_skin(head.skin(), edge);
  if (!p) return {};
  return {on_scalp(head, *p), (head.skin().position(*p) - edge).norm()};
}

double lift_of(const Head& head, const Case& entered, const Laid& laid) {
  return clearing_lift(head.skin(), entered.coil_model, laid.pose) + entered.coil.lift_mm;
}

Vector3d edge_of(const Case& entered, const Laid& laid, double lift_mm) {
  return laid.pose.pulse + lift_mm * laid.pose.normal + entered.coil.centre_to_edge_mm * laid.pose.front;
}

Mark mark_by_rule(const Head& head, const Case& entered, const Laid& laid, const SurfacePoint& pulse) {
  switch (entered.coil.mark_rule) {
    case MarkRule::tape:
      return tape_mark(head, laid, pulse, entered.coil.centre_to_edge_mm);
    case MarkRule::drop:
      return drop_mark(head, laid, edge_of(entered, laid, 0)).mark;  // the same from any height
    case MarkRule::nearest:
      return nearest_mark(head, edge_of(entered, laid, lift_of(head, entered, laid))).mark;
  }
  return {};
}

TapeFrom tape_from(const Head& head, const SurfacePoint& p, TapeDistances wanted) {
  if (wanted != TapeDistances::worked_out) {
    constexpr double none = std::numeric_limits<double>::quiet_NaN();
    return {none, none, none, none};
  }
  const auto& fields = head.fields();
  const Surface& skin = head.skin();
  return {fields.vertex.at(skin, p), fields.nasion.at(skin, p), fields.left_tragus.at(skin, p),
          fields.right_tragus.at(skin, p)};
}

/// The four points that tapes run from.
std::array<SurfacePoint, 4> tape_sources(const Head& head) {
  const SkinFiducials& f = head.fiducials();
  return {head.vertex(), f.nasion, f.left_tragus, f.right_tragus};
}

}  // namespace

Directions directions_at(const Head& head, Side side, const SurfacePoint& at) {
  const Vector3d normal = head.skin().smooth_normal(at);
  Vector3d forward = normal.cross(head.axes().right);
  if (forward.norm() < 1e-6) forward = head.axes().front;
  Directions d;
  d.forward = tangent_part(forward, normal);
  const Vector3d to_left = normal.cross(d.forward);
  d.outward = side == Side::left ? to_left : Vector3d(-to_left);
  return d;
}

LaidCoil lay_coil(const Head& head, const Case& entered, Side side, const SurfacePoint& pulse,
                  TapeDistances tapes) {
  const Surface& skin = head.skin();
  const Laid laid = lay(head, entered, side, pulse);
  LaidCoil result;
  result.pulse = pulse;
  Placement& p = result.placement;
  p.pulse = laid.pose.pulse;
  p.normal = laid.pose.normal;
  p.front = laid.pose.front;
  p.forward = laid.forward;
  p.inward = laid.inward;
  p.angle_deg = entered.coil.angle_deg;
  p.lift_mm = lift_of(head, entered, laid);
  p.edge = edge_of(entered, laid, p.lift_mm);

  const Mark tape = tape_mark(head, laid, pulse, entered.coil.centre_to_edge_mm, &p.tape_line);
  const Dropped drop = drop_mark(head, laid, p.edge);
  const Dropped nearest = nearest_mark(head, p.edge);
  if (tape) p.edge_mark.tape = skin.position(*tape);
  if (drop.mark) {
    p.edge_mark.drop = skin.position(*drop.mark);
    p.drop_gap_mm = drop.gap_mm;
  }
  if (nearest.mark) {
    p.edge_mark.nearest = skin.position(*nearest.mark);
    p.nearest_gap_mm = nearest.gap_mm;
  }
  result.mark = entered.coil.mark_rule == MarkRule::tape   ? tape
                : entered.coil.mark_rule == MarkRule::drop ? drop.mark
                                                           : nearest.mark;
  p.pulse_tape = tape_from(head, pulse, tapes);
  if (head.cortex() != nullptr) p.cortex = head.cortex()->under(p.pulse, -p.normal);
  if (result.mark) p.edge_mark_tape = tape_from(head, *result.mark, tapes);
  return result;
}

std::optional<SurfacePoint> edge_mark(const Head& head, const Case& entered, Side side,
                                      const SurfacePoint& pulse) {
  return mark_by_rule(head, entered, lay(head, entered, side, pulse), pulse);
}

SurfacePoint pulse_for_mark(const Head& head, const Case& entered, Side side, const SurfacePoint& mark,
                            const SurfacePoint* near) {
  MarkSearch search;
  search.near = near;
  return pulse_for_mark(head, entered, side, mark, search);
}

SurfacePoint pulse_for_mark(const Head& head, const Case& entered, Side side, const SurfacePoint& mark,
                            const MarkSearch& search) {
  const Surface& skin = head.skin();
  const Vector3d target = skin.position(mark);
  // Distances in a plane laid at the mark; the pulse point is moved by the same numbers in its own plane.
  const Directions at_mark = directions_at(head, side, mark);
  const auto off_by = [&](const Laid& laid, const SurfacePoint& pulse) -> std::optional<Vector2d> {
    const Mark m = mark_by_rule(head, entered, laid, pulse);
    if (!m) return {};
    const Vector3d d = target - skin.position(*m);
    const Vector2d in_plane(d.dot(at_mark.forward), d.dot(at_mark.outward));
    // Far off, the plane foreshortens; the straight distance keeps the step honest.
    return in_plane.norm() > 0 ? Vector2d(d.norm() * in_plane.normalized()) : Vector2d(d.norm(), 0);
  };
  const auto step_from = [&](const SurfacePoint& from, const Vector2d& by) -> std::optional<SurfacePoint> {
    if (!(by.norm() > 0)) return from;
    const Directions d = directions_at(head, side, from);
    const Walk w = walk(skin, from, (by[0] * d.forward + by[1] * d.outward).normalized(), by.norm());
    if (w.reached_border) return {};
    return w.end;
  };

  SurfacePoint pulse;
  if (search.near) {
    pulse = *search.near;
  } else {
    const double angle = entered.coil.angle_deg * M_PI / 180;
    const auto back =
        step_from(mark, -entered.coil.centre_to_edge_mm * Vector2d(std::cos(angle), -std::sin(angle)));
    if (!back)
      throw GeometryError(
          Message::of("The skin ends between this edge mark and the pulse point; move the mark."));
    pulse = *back;
  }
  constexpr double longest_step_mm = 25;
  const double accepted_mm = std::max(0.02, search.wanted_mm);
  constexpr int most_rounds = 60;
  Laid laid = lay(head, entered, side, pulse, search.tilt);
  auto off = off_by(laid, pulse);
  SurfacePoint best = pulse;
  double best_mm = off ? off->norm() : 1e300;
  Matrix2d inverse = Matrix2d::Identity();  // of how the mark follows the pulse (Broyden's secant update)
  double damping = 1;
  for (int round = 0; round < most_rounds && off && best_mm > search.wanted_mm; ++round) {
    Vector2d step = damping * (inverse * *off);
    if (step.norm() > longest_step_mm) step *= longest_step_mm / step.norm();
    const auto next = step_from(pulse, step);
    if (!next) break;
    const Laid next_laid = lay(head, entered, side, *next, search.tilt);
    const auto next_off = off_by(next_laid, *next);
    if (!next_off) {
      damping *= 0.5;
      if (damping < 0.05) break;
      continue;
    }
    const Vector2d change = *off - *next_off;  // how far the mark came
    const Vector2d predicted = inverse * change;
    const double scale = step.dot(predicted);
    if (std::abs(scale) > 1e-12) inverse += (step - predicted) * (step.transpose() * inverse) / scale;
    // A secant gone wild (on a rough patch of skin) is worse than none.
    if (!inverse.allFinite() || inverse.norm() > 6) inverse = Matrix2d::Identity();
    pulse = *next;
    off = next_off;
    if (off->norm() < best_mm) {
      best_mm = off->norm();
      best = pulse;
    }
    damping = 1;
  }
  if (best_mm > accepted_mm)
    throw GeometryError(Message::of(
        "No pulse point puts the coil's edge over this mark (the nearest misses it by %1 mm); move the mark or choose another marking rule.",
        number(best_mm, 2)));
  return best;
}

void measure_tapes(const Head& head, const std::vector<LaidCoil*>& coils) {
  std::vector<SurfacePoint> points;
  for (const LaidCoil* coil : coils) {
    points.push_back(coil->pulse);
    if (coil->mark) points.push_back(*coil->mark);
  }
  const std::array<SurfacePoint, 4> sources = tape_sources(head);
  std::array<std::vector<double>, 4> mm;
  // The farthest first, which takes longest, so that no core is left alone with it.
  std::array<size_t, 4> order{0, 1, 2, 3};
  const auto far_mm = [&](size_t i) {
    return (head.skin().position(sources[i]) - head.skin().position(points[0])).norm();
  };
  std::sort(order.begin(), order.end(), [&](size_t a, size_t b) { return far_mm(a) > far_mm(b); });
  on_all_cores(order.size(),
               [&](size_t k) { mm[order[k]] = shortest_distances(head.skin(), sources[order[k]], points); });
  size_t i = 0;
  const auto next = [&] {
    const TapeFrom from{mm[0][i], mm[1][i], mm[2][i], mm[3][i]};
    ++i;
    return from;
  };
  for (LaidCoil* coil : coils) {
    coil->placement.pulse_tape = next();
    if (coil->mark) coil->placement.edge_mark_tape = next();
  }
}

Placement place_coil(const Head& head, const Case& entered, Side side, const SurfacePoint& pulse,
                     TapeDistances tapes) {
  return lay_coil(head, entered, side, pulse, tapes).placement;
}

Placement place_by_mark(const Head& head, const Case& entered, Side side, const SurfacePoint& mark,
                        TapeDistances tapes) {
  return lay_coil(head, entered, side, pulse_for_mark(head, entered, side, mark), tapes).placement;
}

}  // namespace scalpmark::geometry
