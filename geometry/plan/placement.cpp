#include "geometry/plan/placement.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/base/all_cores.h"
#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/base/text.h"
#include "geometry/coil/pose.h"
#include "geometry/head/face_region.h"
#include "geometry/head/on_head.h"
#include "geometry/paths/shortest_path.h"
#include "geometry/paths/walk.h"
#include "geometry/plan/edge_marks.h"
#include "geometry/surface/patch_normal.h"
#include "geometry/surface/triangle_math.h"
#include "geometry/tapes/laid_tape.h"

namespace scalpmark::geometry {

using Eigen::Matrix2d;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

std::optional<TapeFrom> tape_from(const Head& head, const SurfacePoint& p, TapeDistances wanted) {
  if (wanted != TapeDistances::worked_out) return {};
  const auto& fields = head.fields();
  const Surface& skin = head.skin();
  return TapeFrom{fields.vertex.at(skin, p), fields.nasion.at(skin, p), fields.left_tragus.at(skin, p),
                  fields.right_tragus.at(skin, p)};
}

/// The four points that tapes run from.
std::array<SurfacePoint, 4> tape_sources(const Head& head) {
  const SkinFiducials& f = head.fiducials();
  return {head.vertex(), f.nasion, f.left_tragus, f.right_tragus};
}

/// The way a line goes at its end, over its last few millimetres, so that the skin's grain does not count.
Vector3d way_at_end(const std::vector<Vector3d>& line) {
  constexpr double last_mm = 5;
  for (auto p = line.rbegin(); p != line.rend(); ++p)
    if ((line.back() - *p).norm() >= last_mm) return (line.back() - *p).normalized();
  return (line.back() - line.front()).normalized();
}

/// How long a tape along the front axis from the wanted point must be to end beside the mark over which the
/// coil has its pulse there; nothing where there is no such mark, where the skin ends first, or where the
/// mark lies so far aside that no such tape is one to it.
std::optional<double> tape_to_draw(const Head& head, const CoilSetup& setup, const LaidPose& laid,
                                   const SurfacePoint& wanted) {
  if (setup.laid_by == MarkRule::tape) return setup.centre_to_edge_mm;
  const MarkOnSkin mark = mark_of(head, setup, setup.laid_by, laid, wanted, front_edge(setup));
  if (!mark) return {};
  constexpr double settled_mm = 1e-3, most_aside_mm = 3, longest_mm = 300;
  constexpr int most_rounds = 12;
  const Vector3d target = head.skin().position(*mark);
  double length = setup.centre_to_edge_mm;
  for (int round = 0; round < most_rounds && length > 0 && length < longest_mm; ++round) {
    const auto tape = lay_tape(head.skin(), wanted, laid.pose.front, length);
    if (!tape) return {};
    const Vector3d missing = target - tape->at;
    const Vector3d way = way_at_end(tape->line);
    const double step = missing.dot(way);
    if (std::abs(step) < settled_mm)
      return (missing - step * way).norm() <= most_aside_mm ? std::optional(length) : std::nullopt;
    length += step;
  }
  return {};
}

}  // namespace

LaidPose pose_at(const Head& head, const CoilSetup& setup, Side side, const SurfacePoint& pulse,
                 const Tilt& tilt) {
  const Surface& skin = head.skin();
  LaidPose laid;
  laid.pose.pulse = skin.position(pulse);
  laid.pose.normal = patch_normal(skin, pulse, setup.model.contact_patch_mm);
  laid.forward = forward_along(head.axes(), laid.pose.normal);
  laid.inward = laid.forward.cross(laid.pose.normal);
  if (side == Side::right) laid.inward = -laid.inward;
  const double angle = radians(setup.angle_deg);
  laid.pose.front = std::cos(angle) * laid.forward + std::sin(angle) * laid.inward;
  if (tilt.roll_deg != 0 || tilt.pitch_deg != 0) laid.pose = tilted(laid.pose, tilt);
  return laid;
}

LaidCoil lay_coil(const Head& head, const CoilSetup& setup, Side side, const SurfacePoint& pulse,
                  TapeDistances tapes) {
  const Surface& skin = head.skin();
  const LaidPose laid = pose_at(head, setup, side, pulse);
  LaidCoil result;
  result.wanted = result.pulse = pulse;
  Placement& p = result.placement;
  p.wanted = p.pulse = laid.pose.pulse;
  p.normal = laid.pose.normal;
  p.front = laid.pose.front;
  p.forward = laid.forward;
  p.inward = laid.inward;
  p.angle_deg = setup.angle_deg;
  p.lift_mm = lift_of(head, setup, laid);
  p.edge = place_of(laid, front_edge(setup), p.lift_mm);

  const MarkOnSkin tape =
      tape_mark(head, pulse, laid.pose.front, setup.centre_to_edge_mm, Where::scalp, &p.tape_line);
  const MarkBelow drop = drop_mark(head, laid, p.edge);
  const MarkBelow nearest = nearest_mark(head, p.edge);
  if (tape) p.edge_mark.tape = skin.position(*tape);
  if (drop.mark) {
    p.edge_mark.drop = skin.position(*drop.mark);
    p.drop_gap_mm = drop.gap_mm;
  }
  if (nearest.mark) {
    p.edge_mark.nearest = skin.position(*nearest.mark);
    p.nearest_gap_mm = nearest.gap_mm;
  }
  result.mark = setup.laid_by == MarkRule::tape   ? tape
                : setup.laid_by == MarkRule::drop ? drop.mark
                                                  : nearest.mark;
  p.mark = p.edge_mark.by(setup.laid_by);
  p.pulse_tape = tape_from(head, pulse, tapes);
  if (result.mark) p.edge_mark_tape = tape_from(head, *result.mark, tapes);
  return result;
}

LaidCoil draw_and_lay(const Head& head, const CoilSetup& setup, MarkRule drawn_by, Side side,
                      const SurfacePoint& wanted, TapeDistances tapes) {
  const LaidPose there = pose_at(head, setup, side, wanted);
  const MarkOnSkin drawn = mark_of(head, setup, drawn_by, there, wanted, front_edge(setup));
  if (drawn && drawn_by != setup.laid_by) {
    MarkSearch search;
    search.near = &wanted;
    const SurfacePoint pulse = pulse_for_mark(head, setup, setup.laid_by, side, *drawn, search);
    return lay_for(head, setup, side, wanted, *drawn, pulse, tapes);
  }
  LaidCoil coil = lay_coil(head, setup, side, wanted, tapes);
  coil.placement.tape_to_draw_mm = tape_to_draw(head, setup, there, wanted);
  if (!drawn) {
    coil.mark.reset();
    coil.placement.mark.reset();
    coil.placement.edge_mark_tape.reset();
  }
  return coil;
}

LaidCoil lay_over(const Head& head, const CoilSetup& setup, MarkRule drawn_by, Side side,
                  const SurfacePoint& mark, const SurfacePoint& near, TapeDistances tapes) {
  MarkSearch search;
  search.near = &near;
  const SurfacePoint wanted = pulse_for_mark(head, setup, drawn_by, side, mark, search);
  if (drawn_by != setup.laid_by) {
    search.near = &wanted;
    const SurfacePoint pulse = pulse_for_mark(head, setup, setup.laid_by, side, mark, search);
    return lay_for(head, setup, side, wanted, mark, pulse, tapes);
  }
  LaidCoil coil = lay_coil(head, setup, side, wanted, tapes);
  coil.placement.tape_to_draw_mm = tape_to_draw(head, setup, pose_at(head, setup, side, wanted), wanted);
  return coil;
}

LaidCoil lay_for(const Head& head, const CoilSetup& setup, Side side, const SurfacePoint& wanted,
                 const SurfacePoint& mark, const SurfacePoint& pulse, TapeDistances tapes) {
  const Surface& skin = head.skin();
  LaidCoil coil = lay_coil(head, setup, side, pulse, tapes);
  coil.wanted = wanted;
  coil.mark = mark;
  Placement& p = coil.placement;
  p.wanted = skin.position(wanted);
  p.mark = skin.position(mark);
  p.wanted_to_pulse_mm = shortest_distances(skin, pulse, {wanted}).front();
  p.edge_mark_tape = tape_from(head, mark, tapes);
  p.tape_to_draw_mm = tape_to_draw(head, setup, pose_at(head, setup, side, wanted), wanted);
  return coil;
}

std::optional<SurfacePoint> edge_mark(const Head& head, const CoilSetup& setup, MarkRule rule, Side side,
                                      const SurfacePoint& pulse) {
  return mark_of(head, setup, rule, pose_at(head, setup, side, pulse), pulse, front_edge(setup));
}

SurfacePoint pulse_for_mark(const Head& head, const CoilSetup& setup, MarkRule rule, Side side,
                            const SurfacePoint& mark, const MarkSearch& search) {
  const Surface& skin = head.skin();
  const Vector3d target = skin.position(mark);
  if (on_face(head, target))
    throw GeometryError(Message::of("This edge mark lies on the face; move the mark."));
  // Distances in a plane laid at the mark; the pulse point is moved by the same numbers in its own plane.
  const Directions at_mark = directions_at(head, side, mark);
  const auto off_by = [&](const LaidPose& laid, const SurfacePoint& pulse) -> std::optional<Vector2d> {
    const MarkOnSkin m =
        mark_of(head, setup, rule, laid, pulse, front_edge(setup), Where::anywhere, search.look);
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
    const double angle = radians(setup.angle_deg);
    const auto back = step_from(mark, -setup.centre_to_edge_mm * Vector2d(std::cos(angle), -std::sin(angle)));
    if (!back)
      throw GeometryError(
          Message::of("The skin ends between this edge mark and the pulse point; move the mark."));
    pulse = *back;
  }
  constexpr double longest_step_mm = 25;
  const double accepted_mm = std::max(0.02, search.wanted_mm);
  constexpr int most_rounds = 60;
  LaidPose laid = pose_at(head, setup, side, pulse, search.tilt);
  auto off = off_by(laid, pulse);
  // Where the edge hangs past the head, the place to look from is further back.
  for (double back_mm = 5; !off && back_mm <= 40; back_mm += 5) {
    const double angle = radians(setup.angle_deg);
    const auto behind = step_from(pulse, -5 * Vector2d(std::cos(angle), -std::sin(angle)));
    if (!behind) break;
    pulse = *behind;
    laid = pose_at(head, setup, side, pulse, search.tilt);
    off = off_by(laid, pulse);
  }
  SurfacePoint best = pulse;
  double best_mm = off ? off->norm() : 1e300;
  Matrix2d inverse = Matrix2d::Identity();  // of how the mark follows the pulse (Broyden's secant update)
  double damping = 1;
  for (int round = 0; round < most_rounds && off && best_mm > search.wanted_mm; ++round) {
    Vector2d step = damping * (inverse * *off);
    if (step.norm() > longest_step_mm) step *= longest_step_mm / step.norm();
    const auto next = step_from(pulse, step);
    if (!next) break;
    const LaidPose next_laid = pose_at(head, setup, side, *next, search.tilt);
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
  if (!off && best_mm > accepted_mm)
    throw GeometryError(Message::of(
        "The coil's edge lies past the head wherever it could reach this mark; move the mark or choose another marking rule."));
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

Placement place_coil(const Head& head, const CoilSetup& setup, Side side, const SurfacePoint& pulse,
                     TapeDistances tapes) {
  return lay_coil(head, setup, side, pulse, tapes).placement;
}

Placement place_by_mark(const Head& head, const CoilSetup& setup, Side side, const SurfacePoint& mark,
                        TapeDistances tapes) {
  return lay_coil(head, setup, side, pulse_for_mark(head, setup, setup.laid_by, side, mark), tapes).placement;
}

}  // namespace scalpmark::geometry
