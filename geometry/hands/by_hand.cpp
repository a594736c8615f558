#include "geometry/hands/by_hand.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cassert>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/hands/cap_today.h"
#include "geometry/head/landmarks.h"
#include "geometry/head/on_head.h"
#include "geometry/head/vertex.h"
#include "geometry/plan/edge_marks.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/search.h"
#include "geometry/surface/triangle_math.h"
#include "geometry/tapes/laid_tape.h"

namespace scalpmark::geometry {

using Eigen::Matrix3d;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// No mark and no angle is surer than this: what is without error is met, and nothing is divided by zero.
constexpr double surest_mm = 0.05, surest_deg = 0.05;
/// A site mark that the planned coil's centre line misses by more is not one that coil was laid by.
constexpr double on_line_mm = 0.1;
/// Nobody looks at a mark from further aside.
constexpr double most_look_deg = 60;

/// Over that gap, past the coil.
double look_mm(double gap_mm, double look_deg) {
  return gap_mm * std::tan(radians(std::clamp(look_deg, -most_look_deg, most_look_deg)));
}
Vector2d look_mm(double gap_mm, const Vector2d& look_deg) {
  return {look_mm(gap_mm, look_deg[0]), look_mm(gap_mm, look_deg[1])};
}

/// Columns: forward, outward, away from the head.
Matrix3d frame_at(const Head& head, Side side, const SurfacePoint& at) {
  const Directions d = directions_at(head, side, at);
  Matrix3d f;
  f << d.forward, d.outward, head.skin().smooth_normal(at);
  return f;
}

bool none(const ErrorsMade& m) {
  return m.nasion.isZero(0) && m.inion.isZero(0) && m.left_tragus.isZero(0) && m.right_tragus.isZero(0);
}

}  // namespace

ByHand::ByHand(const Head& head, const Case& the_case, const Plan& plan, const HandErrors& errors,
               std::vector<CoilPlace> places, const AtDepth& depth, HeldByEye by_eye)
    : head_(head),
      case_(the_case),
      side_(side_of(plan.treatment)),
      aim_(plan.treatment),
      places_(std::move(places)),
      depth_(depth),
      by_eye_(by_eye == HeldByEye::yes) {
  const Surface& skin = head.skin();
  if (!aim_.mark)
    throw GeometryError(Message::of(
        "The treatment's edge mark falls off the head, so nobody can lay the coil on it; choose another marking rule or site."));
  pulse_ = skin.closest(aim_.pulse);
  start_ = skin.closest(plan.start.wanted);
  step_ = frame_at(head, side_, start_).transpose() * (plan.hotspot.pulse - plan.start.wanted);
  put_cap_on(errors);
  measure_gaps(errors);
  if (case_.treatment.rule == TreatmentRule::landmark) follow_landmark();
}

void ByHand::put_cap_on(const HandErrors& e) {
  if (e.cap_forward_mm > 0 || e.cap_side_mm > 0 || e.cap_turn_deg > 0)
    cap_ = cap_on(head_, case_.cap.brim_over_nasion_mm);
}

void ByHand::measure_gaps(const HandErrors& errors) {
  const Surface& skin = head_.skin();
  const SurfacePoint wanted = skin.closest(aim_.wanted);
  const LaidPose drawn = pose_at(head_, case_.coil, side_, wanted);
  const double drawn_lift_mm = lift_of(head_, case_.coil, drawn);
  const double pencil_mm = std::max(surest_mm, errors.mark_mm);
  const double slope = std::tan(radians(errors.sight_deg));
  const auto carried_by_eye = [](MarkRule rule) { return rule != MarkRule::tape; };
  for (const CoilPlace& place : places_) {
    const auto mark = mark_of(head_, case_.coil, case_.treatment.drawn_by, drawn, wanted, place.on_coil);
    if (!mark)
      throw GeometryError(Message::of("A mark of the coil's edge falls off the head; choose another."));
    const Vector3d at = skin.position(*mark);
    marks_.push_back(at);
    Carried c;
    if (carried_by_eye(case_.treatment.drawn_by))
      c.drawn_gap_mm = (place_of(drawn, place.on_coil, drawn_lift_mm) - at).norm();
    if (carried_by_eye(case_.coil.laid_by))
      c.laid_gap_mm = (place_of(aim_.pose(), place.on_coil, aim_.lift_mm) - at).norm();
    c.look_sd_mm = slope * std::hypot(c.drawn_gap_mm, c.laid_gap_mm);
    carried_.push_back(c);
    sure_.marks.push_back({place.on_coil, *mark, pencil_mm, c.look_sd_mm, place.look});
    scope_.looks = std::max(scope_.looks, place.look + 1);
  }
  scope_.coil_marks = places_.size();
  // Marks looked at in one have one look, over gaps that are nearly the same.
  for (MarkToMeet& m : sure_.marks) {
    double sum = 0, count = 0;
    for (size_t i = 0; i < places_.size(); ++i)
      if (places_[i].look == m.look) {
        sum += carried_[i].look_sd_mm;
        ++count;
      }
    m.look_sd_mm = sum / count;
  }

  const double aside = (aim_.wanted - aim_.pulse).dot(aim_.normal.cross(aim_.front));
  scope_.by_site = std::abs(aside) <= on_line_mm;
  if (carried_by_eye(case_.coil.laid_by))
    line_height_mm_ = aim_.lift_mm + height_over_centre(case_.coil.model);
  sure_.site_sd_mm = std::hypot(pencil_mm, slope * line_height_mm_);
  sure_.angle_sd_deg = std::max(surest_deg, errors.angle_deg);
}

void ByHand::follow_landmark() {
  const auto note = [this](const std::string&, const Tape& tape, double share) {
    scope_.landmark_shares.push_back(share);
    return tape.at(share);
  };
  (void)landmark(head_.skin(), head_.vertex_tapes(), case_.treatment.label, note);
  assert(scope_.landmark_shares.size() <= most_landmarks_on_way);
}

std::optional<ByHand::Made> ByHand::make(const ErrorsMade& m, double exact_mm,
                                         const OffByHand& expected) const {
  try {
    const Head felt = felt_head(m, exact_mm);
    const SurfacePoint site = nudged(felt, site_with(felt, m), m.site_mark);
    LaidBy by = sure_;
    if (!draw(felt, site, m, by)) return {};
    if (by_eye_ || !scope_.by_site) by.angle_deg = aim_.angle_deg + m.angle_deg;
    if (scope_.by_site) {
      by.site = with_cap(site, m);
      by.site_aside_mm = m.line_mm + look_mm(line_height_mm_, m.line_deg);
    }
    CoilSetup setup = case_.coil;
    setup.laid_by = m.laid_by.value_or(setup.laid_by);
    LayingSearch search;
    search.near = skin().closest(in_space(on_skin(expected)));
    search.near_deg = aim_.angle_deg + expected[4];
    search.wanted_mm = exact_mm;
    search.tilt = m.tilt;
    const LaidOnMarks laid = lay_on_marks(felt, setup, side_, by, search);
    return Made{laid.pulse, laid.pose.pose, off_of(laid, m.tilt)};
  } catch (const GeometryError&) {
    return {};  // off the skin, or marks that nothing fits
  }
}

bool ByHand::draw(const Head& felt, const SurfacePoint& site, const ErrorsMade& m, LaidBy& by) const {
  const LaidPose pose = pose_at(felt, case_.coil, side_, site);
  for (size_t i = 0; i < places_.size(); ++i) {
    const CoilMarkError& error = m.coil_marks[i];
    const LookError& look = m.looks[places_[i].look];
    const Carried& c = carried_[i];
    Vector3d place = places_[i].on_coil;
    if (error.read != 0) place *= 1 + error.read / place.norm();
    const auto mark = mark_of(felt, case_.coil, case_.treatment.drawn_by, pose, site, place);
    if (!mark) return false;
    // As the coil is laid, its edge seen over another place is a mark that lies there.
    const SurfacePoint drawn = nudged(felt, *mark, error.pencil + look_mm(c.drawn_gap_mm, look.drawn_deg));
    by.marks[i].on_skin = nudged(felt, with_cap(drawn, m), -look_mm(c.laid_gap_mm, look.laid_deg));
  }
  return true;
}

OffByHand ByHand::off_of(const LaidOnMarks& laid, const Tilt& tilt) const {
  const Vector3d pulse = skin().position(laid.pulse);
  OffByHand off;
  off.head<2>() = flat(pulse - aim_.pulse);
  const CoilPose& pose = laid.pose.pose;
  const Vector3d beside_axis = depth_.lever.right_per_roll * tilt.roll_deg * pose.right() +
                               depth_.lever.front_per_pitch * tilt.pitch_deg * pose.front;
  off.segment<2>(2) = flat(pulse - aim_.pulse - depth_.depth_mm * (pose.normal - aim_.normal) + beside_axis);
  // Against the head as it is, not as its four points were felt.
  const Vector3d& normal = laid.pose.pose.normal;
  const Vector3d forward = forward_along(head_.axes(), normal);
  const Vector3d inward =
      way_to(side_) < 0 ? Vector3d(forward.cross(normal)) : Vector3d(normal.cross(forward));
  const Vector3d& front = laid.pose.pose.front;
  off[4] = wrapped_deg(degrees(std::atan2(front.dot(inward), front.dot(forward))) - aim_.angle_deg);
  return off;
}

Vector2d ByHand::flat(const Vector3d& away) const {
  const Vector2d flat(away.dot(aim_.forward), -away.dot(aim_.inward));
  return flat.norm() > 0 ? Vector2d(away.norm() * flat.normalized()) : flat;
}

Vector3d ByHand::in_space(const Vector2d& offset) const {
  return aim_.pulse + offset[0] * aim_.forward - offset[1] * aim_.inward;
}

Vector3d ByHand::laid_out(const Vector2d& offset) const {
  const Vector3d way = in_space(offset) - aim_.pulse;
  if (!(way.norm() > 0)) return aim_.pulse;
  if (const auto tape = lay_tape(skin(), pulse_, way.normalized(), way.norm())) return tape->at;
  return skin().position(skin().closest(aim_.pulse + way));
}

SurfacePoint ByHand::nudged(const Head& head, const SurfacePoint& at, const Vector2d& by) const {
  if (by.isZero(0)) return at;
  const Directions d = directions_at(head, side_, at);
  return head.skin().closest(head.skin().position(at) + by[0] * d.forward + by[1] * d.outward);
}

SurfacePoint ByHand::with_cap(const SurfacePoint& mark, const ErrorsMade& m) const {
  if (!cap_) return mark;
  return slipped(head_, cap_->sphere, mark,
                 slip_by(*cap_, {m.cap_forward_mm, m.cap_side_mm, m.cap_turn_deg}));
}

/// The head as the four points felt for make it.
Head ByHand::felt_head(const ErrorsMade& m, double exact_mm) const {
  if (none(m)) return head_;
  const HeadAxes& axes = head_.axes();
  const Surface& skin = head_.skin();
  SkinFiducials felt = head_.fiducials();
  const auto move = [&](SurfacePoint& at, const Vector2d& by, const Vector3d& across) {
    const Vector3d normal = skin.smooth_normal(at);
    at = skin.closest(skin.position(at) + by[0] * tangent_part(axes.up, normal) +
                      by[1] * tangent_part(across, normal));
  };
  move(felt.nasion, m.nasion, axes.right);
  move(felt.inion, m.inion, axes.right);
  move(felt.left_tragus, m.left_tragus, axes.front);
  move(felt.right_tragus, m.right_tragus, axes.front);
  // Where the vertex then is, nearly: half way.
  const SurfacePoint guess =
      skin.closest(skin.position(head_.vertex()) + 0.5 * (m.inion[0] - m.nasion[0]) * axes.front +
                   0.5 * (m.left_tragus[0] - m.right_tragus[0]) * axes.right);
  return {skin, felt, guess, std::max(1e-5, 2 * exact_mm)};
}

SurfacePoint ByHand::site_with(const Head& felt, const ErrorsMade& m) const {
  if (case_.treatment.rule == TreatmentRule::landmark) return landmark_with(felt, m);
  const SurfacePoint start = nudged(felt, start_with(felt, m), m.start_mark);
  // The step from start to spot goes with the skin's directions at the start.
  SurfacePoint hotspot = start;
  if (!step_.isZero(1e-9)) {
    const Vector3d error(m.spot_read[0] + m.spot_mark[0], m.spot_read[1] + m.spot_mark[1], 0);
    hotspot =
        felt.skin().closest(felt.skin().position(start) + frame_at(felt, side_, start) * (step_ + error));
  }
  return forward_tape(felt, hotspot, case_.treatment.distance_mm + m.distance_read).at(1).on_skin;
}

SurfacePoint ByHand::start_with(const Head& felt, const ErrorsMade& m) const {
  const Surface& skin = felt.skin();
  const SurfacePoint vertex = nudged(felt, felt.vertex(), m.vertex_read + m.vertex_mark);
  const SkinFiducials& f = felt.fiducials();
  const Tape coronal = Tape::over(skin, f.left_tragus, vertex, f.right_tragus);
  return measure_start(felt, coronal, coronal.fraction_of(skin.position(vertex)) * coronal.length_mm(),
                       case_.side, case_.search.lateral_mm + m.lateral_read,
                       case_.search.anterior_mm + m.anterior_read)
      .anterior.at(1)
      .on_skin;
}

SurfacePoint ByHand::landmark_with(const Head& felt, const ErrorsMade& m) const {
  const Surface& skin = felt.skin();
  const SkinFiducials& f = felt.fiducials();
  const Vector2d vertex_off = m.vertex_read + m.vertex_mark;
  const SurfacePoint vertex = nudged(felt, felt.vertex(), vertex_off);
  const VertexTapes tapes = vertex_off.isZero(0)
                                ? felt.vertex_tapes()
                                : VertexTapes{vertex, Tape::over(skin, f.nasion, vertex, f.inion),
                                              Tape::over(skin, f.left_tragus, vertex, f.right_tragus)};
  size_t next = 0;
  const auto mark = [&](const std::string&, const Tape& tape, double share) {
    const LandmarkError error = next < m.landmarks.size() ? m.landmarks[next] : LandmarkError{};
    ++next;
    SectionPoint p = tape.at_mm(share * tape.length_mm() + error.read);
    if (!error.pencil.isZero(0)) {
      p.on_skin = nudged(felt, p.on_skin, error.pencil);
      p.at = skin.position(p.on_skin);
    }
    return p;
  };
  return landmark(skin, tapes, case_.treatment.label, mark)->on_skin;
}

}  // namespace scalpmark::geometry
