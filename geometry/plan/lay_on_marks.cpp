#include "geometry/plan/lay_on_marks.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/head/face_region.h"
#include "geometry/head/on_head.h"
#include "geometry/paths/walk.h"
#include "geometry/plan/edge_marks.h"

namespace scalpmark::geometry {

using Eigen::Matrix3d;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// Two numbers a mark, and at most one each for the site and the angle.
constexpr int most_rows = 12;
/// Who asks for no more than a tenth of a millimetre gets along with the slopes there are.
constexpr double worth_measuring_mm = 0.05;
using Misses = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, most_rows, 1>;
using Slopes = Eigen::Matrix<double, Eigen::Dynamic, 3, 0, most_rows, 3>;
using Weights = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, most_rows, most_rows>;

/// The way in which the coil's front swings as its angle grows, in its face, unit.
Vector3d greater(const LaidPose& laid, double angle_deg) {
  const double a = radians(angle_deg);
  return -std::sin(a) * laid.forward + std::cos(a) * laid.inward;
}

/// The coil at one place and angle, and what it misses.
struct Tried {
  SurfacePoint pulse;
  double angle_deg = 0;
  LaidPose laid;
  Misses misses;  ///< mm, each weighed by how far off it may be
};

/// Steps are three lengths, mm: forward, outward, and the turn at the end of a lever.
class Laying {
public:
  Laying(const Head& head, const CoilSetup& setup, Side side, const LaidBy& by, const Tilt& tilt)
      : head_(head), setup_(setup), side_(side), by_(by), tilt_(tilt) {
    rows_ = 2 * static_cast<Eigen::Index>(by.marks.size()) + (by.site ? 1 : 0) + (by.angle_deg ? 1 : 0);
    if (by.marks.empty() || rows_ < 3 || rows_ > most_rows)
      throw GeometryError(Message::of(
          "A coil cannot be laid by so few marks; make an edge mark, and a site mark or a second edge mark."));
    lever_mm_ = by.marks.front().on_coil.norm();
    for (const MarkToMeet& m : by.marks) {
      const Vector3d at = head.skin().position(m.on_skin);
      if (on_face(head, at))
        throw GeometryError(Message::of("This edge mark lies on the face; move the mark."));
      targets_.push_back({at, directions_at(head, side, m.on_skin)});
    }
    if (by.site) site_ = head.skin().position(*by.site);
    weigh();
  }

  [[nodiscard]] bool just_enough() const { return rows_ == 3; }
  [[nodiscard]] double lever_mm() const { return lever_mm_; }

  /// Nothing where a place of the coil hangs past the head.
  [[nodiscard]] std::optional<Tried> at(const SurfacePoint& pulse, double angle_deg) {
    setup_.angle_deg = wrapped_deg(angle_deg);
    Tried t{pulse, angle_deg, pose_at(head_, setup_, side_, pulse, tilt_), Misses(rows_)};
    Eigen::Index row = 0;
    for (size_t i = 0; i < targets_.size(); ++i, row += 2) {
      const auto m =
          mark_of(head_, setup_, setup_.laid_by, t.laid, pulse, by_.marks[i].on_coil, Where::anywhere);
      if (!m) return {};
      const Target& target = targets_[i];
      const Vector3d d = target.at - head_.skin().position(*m);
      const Vector2d flat(d.dot(target.directions.forward), d.dot(target.directions.outward));
      // Far off, the plane foreshortens; the straight distance keeps the step honest.
      t.misses.segment<2>(row) =
          flat.norm() > 0 ? Vector2d(d.norm() * flat.normalized()) : Vector2d(d.norm(), 0);
    }
    if (by_.site)
      t.misses[row++] = (site_ - t.laid.pose.pulse).dot(greater(t.laid, angle_deg)) - by_.site_aside_mm;
    if (by_.angle_deg) t.misses[row] = lever_mm_ * radians(wrapped_deg(*by_.angle_deg - angle_deg));
    t.misses = weights_ * t.misses;
    return t;
  }

  [[nodiscard]] std::optional<Tried> stepped(const Tried& from, const Vector3d& step) {
    SurfacePoint pulse = from.pulse;
    const double mm = step.head<2>().norm();
    if (mm > 0) {
      const Directions d = directions_at(head_, side_, from.pulse);
      const Walk w =
          walk(head_.skin(), from.pulse, (step[0] * d.forward + step[1] * d.outward).normalized(), mm);
      if (w.reached_border) return {};
      pulse = w.end;
    }
    return at(pulse, from.angle_deg + degrees(step[2] / lever_mm_));
  }

  /// How the misses would follow a step if the head were a ball and the coil small.
  [[nodiscard]] Slopes rigid_slopes(const Tried& t) const {
    const CoilPose& pose = t.laid.pose;
    const Vector3d turning = greater(t.laid, t.angle_deg);
    Slopes s = Slopes::Zero(rows_, 3);
    Eigen::Index row = 0;
    for (size_t i = 0; i < targets_.size(); ++i, row += 2) {
      const Vector3d& on_coil = by_.marks[i].on_coil;
      const Vector3d swing = (on_coil.y() * turning + on_coil.x() * turning.cross(pose.normal)) / lever_mm_;
      s(row, 0) = s(row + 1, 1) = -1;
      s(row, 2) = -swing.dot(targets_[i].directions.forward);
      s(row + 1, 2) = -swing.dot(targets_[i].directions.outward);
    }
    if (by_.site) {
      const Directions d = directions_at(head_, side_, t.pulse);
      s(row, 0) = -d.forward.dot(turning);
      s(row, 1) = -d.outward.dot(turning);
      s(row, 2) = -(site_ - pose.pulse).dot(pose.front) / lever_mm_;
      ++row;
    }
    if (by_.angle_deg) s(row, 2) = -1;
    return weights_ * s;
  }

private:
  struct Target {
    Vector3d at;
    Directions directions;
  };

  /// Turns misses into such as are off independently of each other and alike, but for their scale: that of
  /// the mark that is off least.
  void weigh() {
    double least = 1e300;
    const auto in_all = [](const MarkToMeet& m) { return std::hypot(m.sd_mm, m.look_sd_mm); };
    for (const MarkToMeet& m : by_.marks) least = std::min(least, in_all(m));
    weights_ = Weights::Zero(rows_, rows_);
    const auto count = static_cast<Eigen::Index>(by_.marks.size());
    for (Eigen::Index i = 0; i < count; ++i) {
      const MarkToMeet& m = by_.marks[static_cast<size_t>(i)];
      // n marks of one look: their mean has n times the look's variance more than each by itself.
      double n = 0;
      for (const MarkToMeet& other : by_.marks) n += other.look == m.look ? 1 : 0;
      const double alone = least / m.sd_mm;
      const double together = least / std::sqrt(m.sd_mm * m.sd_mm + n * m.look_sd_mm * m.look_sd_mm);
      for (Eigen::Index j = 0; j < count; ++j) {
        if (by_.marks[static_cast<size_t>(j)].look != m.look) continue;
        const double weight = (i == j ? alone : 0) + (together - alone) / n;
        weights_(2 * i, 2 * j) = weights_(2 * i + 1, 2 * j + 1) = weight;
      }
    }
    Eigen::Index row = 2 * count;
    if (by_.site) {
      weights_(row, row) = least / by_.site_sd_mm;
      ++row;
    }
    if (by_.angle_deg) weights_(row, row) = least / (lever_mm_ * radians(by_.angle_sd_deg));
  }

  const Head& head_;
  CoilSetup setup_;
  Side side_;
  const LaidBy& by_;
  Tilt tilt_;
  std::vector<Target> targets_;
  Weights weights_;
  Vector3d site_ = Vector3d::Zero();
  double lever_mm_ = 1;
  Eigen::Index rows_ = 0;
};

Vector3d least_squares_step(const Slopes& slopes, const Misses& misses) {
  const Matrix3d normal = slopes.transpose() * slopes;
  // As good as nothing, and keeps a coil that a mark does not turn from spinning.
  const double damping = 1e-9 * normal.trace();
  return -(normal + damping * Matrix3d::Identity()).ldlt().solve(slopes.transpose() * misses);
}

Vector3d held_short(const Vector3d& step, double lever_mm) {
  constexpr double longest_step_mm = 25, longest_turn_deg = 20;
  const double most = std::max(step.head<2>().norm() / longest_step_mm,
                               std::abs(step[2]) / (lever_mm * radians(longest_turn_deg)));
  return most > 1 ? Vector3d(step / most) : step;
}

/// By differences over some way, so that the skin's grain does not count.
std::optional<Slopes> measured_slopes(Laying& laying, const Tried& at) {
  constexpr double probe_mm = 0.5;
  Slopes slopes(at.misses.size(), 3);
  for (int k = 0; k < 3; ++k) {
    const auto more = laying.stepped(at, probe_mm * Vector3d::Unit(k));
    const auto less = laying.stepped(at, -probe_mm * Vector3d::Unit(k));
    if (!more || !less) return {};
    slopes.col(k) = (more->misses - less->misses) / (2 * probe_mm);
  }
  return slopes;
}

/// Where the edge hangs past the head, the place to look from is further back.
std::optional<Tried> first_look(Laying& laying, const LayingSearch& search, const Head& head, Side side) {
  SurfacePoint from = search.near;
  auto now = laying.at(from, search.near_deg);
  for (double back_mm = 5; !now && back_mm <= 40; back_mm += 5) {
    const Directions d = directions_at(head, side, from);
    const double a = radians(search.near_deg);
    const Walk w = walk(head.skin(), from, -(std::cos(a) * d.forward - std::sin(a) * d.outward), 5);
    if (w.reached_border) break;
    from = w.end;
    now = laying.at(from, search.near_deg);
  }
  return now;
}

}  // namespace

LaidOnMarks lay_on_marks(const Head& head, const CoilSetup& setup, Side side, const LaidBy& by,
                         const LayingSearch& search) {
  Laying laying(head, setup, side, by, search.tilt);
  const auto refuse = [] {
    throw GeometryError(Message::of(
        "The coil cannot be laid with its edge over the edge mark and its centre line over the site mark; make both marks new."));
  };
  auto now = first_look(laying, search, head, side);
  if (!now) refuse();
  constexpr int most_rounds = 60;
  // What the grain of a scanned skin leaves.
  const double accepted_mm = std::max(0.02, search.wanted_mm);
  Tried best = *now;
  double next_step_mm = 1e300;
  Slopes slopes = laying.rigid_slopes(*now);
  // Where more is told than can be met, the best place hangs on the slopes: at the end they are measured.
  bool to_measure = !laying.just_enough() && search.wanted_mm < worth_measuring_mm;
  bool measured = false;
  double damping = 1;
  for (int round = 0; round < most_rounds; ++round) {
    const Vector3d whole = least_squares_step(slopes, now->misses);
    next_step_mm = whole.norm();
    if (next_step_mm <= search.wanted_mm) {
      if (!to_measure) break;
      to_measure = false;
      const auto exact = measured_slopes(laying, *now);
      if (!exact) break;
      slopes = *exact;
      measured = true;
      continue;
    }
    const Vector3d step = damping * held_short(whole, laying.lever_mm());
    auto next = laying.stepped(*now, step);
    if (!next) {
      damping *= 0.5;
      if (damping < 0.05) break;
      continue;
    }
    damping = 1;
    if (!measured) {
      const Misses wrong = next->misses - now->misses - slopes * step;
      slopes += wrong * step.transpose() / step.squaredNorm();
      // A secant gone wild (on a rough patch of skin) is worse than none.
      const Slopes rigid = laying.rigid_slopes(*next);
      if (!slopes.allFinite() || (slopes - rigid).norm() > 0.8 * rigid.norm()) slopes = rigid;
    }
    now = std::move(next);
    if (now->misses.norm() < best.misses.norm()) best = *now;
  }
  const bool settled = next_step_mm <= accepted_mm;
  if (!settled && !(laying.just_enough() && best.misses.norm() <= accepted_mm)) refuse();
  const Tried& found = settled ? *now : best;
  return {found.pulse, wrapped_deg(found.angle_deg), found.laid};
}

LaidOnMarks lay_on_marks(const Head& head, const CoilSetup& setup, Side side, const SurfacePoint& site_mark,
                         const SurfacePoint& edge_mark) {
  // From the site mark, the edge mark's direction is already the answer where the pulse falls on the site
  // mark.
  const Directions at_site = directions_at(head, side, site_mark);
  const Vector3d toward = head.skin().position(edge_mark) - head.skin().position(site_mark);
  LayingSearch search;
  search.near = site_mark;
  search.near_deg = degrees(std::atan2(-toward.dot(at_site.outward), toward.dot(at_site.forward)));
  LaidBy by;
  by.marks = {{front_edge(setup), edge_mark}};
  by.site = site_mark;
  return lay_on_marks(head, setup, side, by, search);
}

LaidCoil lay_on_both(const Head& head, const CoilSetup& setup, Side side, const LaidCoil& drawn,
                     TapeDistances tapes) {
  const LaidOnMarks laid = lay_on_marks(head, setup, side, drawn.wanted, *drawn.mark);
  CoilSetup turned = setup;
  turned.angle_deg = laid.angle_deg;
  LaidCoil coil = lay_for(head, turned, side, drawn.wanted, *drawn.mark, laid.pulse, tapes);
  coil.placement.tape_to_draw_mm = drawn.placement.tape_to_draw_mm;
  return coil;
}

}  // namespace scalpmark::geometry
