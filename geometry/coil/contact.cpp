#include "geometry/coil/contact.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "geometry/base/error.h"
#include "geometry/coil/underside.h"
#include "geometry/head/face_region.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double ear_behind_mm = 45, ear_before_mm = 8, ear_below_mm = 40, ear_above_mm = 35;
/// How far in from the tragus an ear reaches: not through the head.
constexpr double ear_inward_mm = 25;
constexpr double brow_mm = 20;
/// A centre this far from the skin is clear of it; a touch this far from the centre line is a wing's.
constexpr double clear_mm = 0.5, beside_centre_mm = 8;
/// A roll smaller than this nobody sees.
constexpr double even_deg = 0.5;

constexpr std::array regions{Region::scalp, Region::left_ear, Region::right_ear, Region::face};

bool on_ear(const Head& head, const Vector3d& tragus, double outward_sign, const Vector3d& at) {
  const HeadAxes& axes = head.axes();
  const Vector3d d = at - tragus;
  const double ahead = d.dot(axes.front), above = d.dot(axes.up), out = outward_sign * d.dot(axes.right);
  return ahead > -ear_behind_mm && ahead < ear_before_mm && above > -ear_below_mm && above < ear_above_mm &&
         out > -ear_inward_mm;
}

/// Highest rise of each region over each piece of the coil that is pressed against it.
struct Rises {
  std::vector<Underside> pieces;
  std::vector<std::array<std::optional<Rise>, regions.size()>> by_piece;

  [[nodiscard]] double lift_without(std::optional<Region> left_out) const {
    double lift = 0;
    for (const auto& piece : by_piece)
      for (const Region r : regions)
        if (r != left_out && piece[static_cast<size_t>(r)])
          lift = std::max(lift, piece[static_cast<size_t>(r)]->mm);
    return lift;
  }
};

Rises rises_of(const Head& head, const Coil& coil, const CoilPose& pose) {
  const Surface& skin = head.skin();
  Rises rises;
  rises.pieces = undersides(coil);
  for (const Underside& piece : rises.pieces) {
    auto& own = rises.by_piece.emplace_back();
    for (const Region r : regions)
      own[static_cast<size_t>(r)] = highest_rise(skin, piece, pose, -deepest_gap_mm, [&](int face) {
        const Vector3d middle = (skin.corner(face, 0) + skin.corner(face, 1) + skin.corner(face, 2)) / 3;
        return region_of(head, middle) == r;
      });
  }
  return rises;
}

/// The least gap over all of the left (or right) half of the coil's face, no lift: most negative rise first.
double rise_beside(const Surface& skin, const std::vector<Underside>& pieces, const CoilPose& pose,
                   bool right) {
  double most = -deepest_gap_mm;
  for (const Underside& piece : pieces) {
    double middle = 0;
    for (const auto& p : piece.outline) middle += p.x() / static_cast<double>(piece.outline.size());
    if (std::abs(middle) < 1 || (middle > 0) != right) continue;
    if (const auto rise = highest_rise(skin, piece, pose, most)) most = rise->mm;
  }
  return most;
}

/// The roll about the pulse point at which both wings rest, by halving.
std::optional<double> roll_to_rest(const Surface& skin, const Coil& coil, const CoilPose& pose) {
  const auto pieces = undersides(coil);
  const auto right_more = [&](double roll_deg) {
    const CoilPose rolled = tilted(pose, {roll_deg, 0});
    return rise_beside(skin, pieces, rolled, true) - rise_beside(skin, pieces, rolled, false);
  };
  double low = -20, high = 20;  // rolling right side down presses the right wing
  if (right_more(low) > 0 || right_more(high) < 0) return {};
  for (int i = 0; i < 30; ++i) {
    const double middle = 0.5 * (low + high);
    (right_more(middle) < 0 ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

bool is_handle(const CoilPart& part) {
  return part.name == "handle";
}

std::vector<GapPoint> map_of_gaps(const Surface& skin, const std::vector<Underside>& pieces,
                                  const CoilPose& pose, double lift_mm, double step_mm) {
  std::vector<GapPoint> map;
  const Vector3d right = pose.right();
  for (const Underside& piece : pieces) {
    if (piece.is_wall) continue;
    Vector2d low = piece.outline.front(), high = low;
    for (const auto& p : piece.outline) {
      low = low.cwiseMin(p);
      high = high.cwiseMax(p);
    }
    // Whole steps from the coil's centre, so that it is among them and both sides are alike.
    const auto first = [&](double mm) { return static_cast<int>(std::ceil(mm / step_mm)); };
    for (int i = first(low.x()); i * step_mm <= high.x(); ++i)
      for (int j = first(low.y()); j * step_mm <= high.y(); ++j) {
        const Vector2d at(i * step_mm, j * step_mm);
        if (!within(piece.outline, at)) continue;
        GapPoint g;
        g.part = piece.part;
        g.at = at;
        g.on_coil =
            pose.pulse + at.x() * right + at.y() * pose.front + (lift_mm + piece.height_at(at)) * pose.normal;
        if (const auto hit = skin.ray_hit(g.on_coil, -pose.normal, deepest_gap_mm))
          g.gap_mm = hit->distance_mm;
        map.push_back(g);
      }
  }
  return map;
}

/// Straight below a place of the coil's underside; empty past the head, and where the coil has a hole.
std::optional<double> gap_below(const Surface& skin, const std::vector<Underside>& pieces,
                                const CoilPose& pose, double lift_mm, const Vector2d& at) {
  const auto height = lowest_over(pieces, at);
  if (!height) return {};
  const Vector3d from =
      pose.pulse + at.x() * pose.right() + at.y() * pose.front + (lift_mm + *height) * pose.normal;
  const auto hit = skin.ray_hit(from, -pose.normal, deepest_gap_mm);
  return hit ? std::optional(hit->distance_mm) : std::nullopt;
}

std::vector<WingGap> wing_gaps(const Surface& skin, const Coil& coil, const std::vector<Underside>& pieces,
                               const Contact& c) {
  const bool two = coil.windings.size() != 1;
  std::vector<WingGap> wings;
  for (const bool right : {false, true}) {
    if (!two && right) break;
    WingGap w;
    w.wing = !two ? Wing::whole : right ? Wing::right : Wing::left;
    w.least_mm = std::numeric_limits<double>::infinity();
    int below = 0, all = 0;
    for (const GapPoint& g : c.map) {
      if (is_handle(coil.parts[g.part])) continue;
      if (two && (right ? g.at.x() <= 0 : g.at.x() >= 0)) continue;
      ++all;
      if (!g.gap_mm) continue;
      ++below;
      w.least_mm = std::min(w.least_mm, *g.gap_mm);
      w.most_mm = std::max(w.most_mm, *g.gap_mm);
      w.mean_mm += *g.gap_mm;
    }
    if (below == 0) w.least_mm = 0;
    w.mean_mm /= std::max(1, below);
    w.off_head = all > 0 ? 1 - static_cast<double>(below) / all : 0;
    for (const Winding& winding : coil.windings) {
      const Vector3d middle = bent({winding.centre.x(), winding.centre.y(), 0}, winding.bend_deg);
      if (two && (right ? middle.x() <= 0 : middle.x() >= 0)) continue;
      w.centre = middle.head<2>();
      w.centre_mm = gap_below(skin, pieces, c.pose, c.lift_mm, w.centre);
    }
    wings.push_back(w);
  }
  return wings;
}

/// Turns the pose, so that the coil clears the head with its centre over the pulse point.
void hold_askew(Contact& c, const Head& head, const Coil& coil, const LaidPose& laid, const Cortex* cortex) {
  const CoilPose meant = c.pose;
  const TiltedCoil t = tilt_coil(head.skin(), coil, meant, c.tilt);
  if (!t.meets)
    throw GeometryError(
        Message::of("Tilted this far, the coil's axis passes the head; enter a smaller tilt."));
  AskewAxis axis;
  axis.skin = head.skin().position(*t.meets);
  axis.skin_moved_mm = t.moved_mm;
  axis.skin_way = eight_ways(axis.skin - meant.pulse, laid);
  if (cortex != nullptr) {
    axis.cortex = cortex->under(axis.skin, t.axis);
    const auto under = cortex->under(meant.pulse, -meant.normal);
    if (axis.cortex && under) {
      axis.cortex_moved_mm = (axis.cortex->point - under->point).norm();
      axis.cortex_way = eight_ways(axis.cortex->point - under->point, laid);
    }
  }
  c.pose = {axis.skin, t.pose.normal, t.pose.front};
  c.askew = axis;
}

}  // namespace

EightWays eight_ways(const Vector3d& by, const LaidPose& laid) {
  const double ahead = by.dot(laid.forward), out = -by.dot(laid.inward);
  const double all = std::hypot(ahead, out);
  if (all < touching_mm) return {};
  const double counts = 0.38 * all;  // the eight ways a compass card names
  const auto sign = [&](double value) { return std::abs(value) < counts ? 0 : value > 0 ? 1 : -1; };
  return {sign(ahead), sign(out)};
}

Region region_of(const Head& head, const Vector3d& at) {
  const Fiducials& f = head.fiducials().at;
  if (on_ear(head, f.left_tragus, -1, at)) return Region::left_ear;
  if (on_ear(head, f.right_tragus, 1, at)) return Region::right_ear;
  if (on_face(head, at - brow_mm * head.axes().up)) return Region::face;
  return Region::scalp;
}

Contact contact(const Head& head, const CoilSetup& setup, const LaidPose& laid,
                const ContactOptions& options) {
  const Coil& coil = setup.model;
  if (coil.parts.empty())
    throw GeometryError(Message::of("This coil has no casing, so it rests on nothing; choose another."));
  if (!(options.cap_mm >= 0 && options.cap_mm <= 30))
    throw GeometryError(Message::of("A cap's thickness must be from 0 to 30 mm; correct it."));
  if (!(options.map_step_mm >= 1 && options.map_step_mm <= 20))
    throw GeometryError(Message::of("The steps of the gap map must be from 1 to 20 mm; correct them."));
  Contact c;
  const Tilt& tilt = options.tilt;
  if (!(std::abs(tilt.roll_deg) <= most_tilt_deg && std::abs(tilt.pitch_deg) <= most_tilt_deg))
    throw GeometryError(Message::of("Either tilt must be from -30 to 30 degrees; correct it."));
  c.pose = laid.pose;
  c.tilt = tilt;
  c.cap_mm = options.cap_mm;
  if (tilt.roll_deg != 0 || tilt.pitch_deg != 0) hold_askew(c, head, coil, laid, options.cortex);
  const Rises rises = rises_of(head, coil, c.pose);
  c.resting_lift_mm = rises.lift_without({});
  c.lift_mm = c.resting_lift_mm + setup.lift_mm;

  bool touches_left = false, touches_right = false;
  double least_over_scalp = std::numeric_limits<double>::infinity();
  for (size_t i = 0; i < rises.pieces.size(); ++i)
    for (const Region r : regions) {
      const auto& rise = rises.by_piece[i][static_cast<size_t>(r)];
      if (!rise) continue;
      const double gap = c.resting_lift_mm - rise->mm;
      if (r == Region::scalp) least_over_scalp = std::min(least_over_scalp, gap + setup.lift_mm);
      if (gap > touching_mm) continue;
      const std::string& part = coil.parts[rises.pieces[i].part].name;
      c.touches.push_back({part, r, rise->skin, rise->under});
      touches_left = touches_left || rise->under.x() < -beside_centre_mm;
      touches_right = touches_right || rise->under.x() > beside_centre_mm;
      if (r == Region::scalp) continue;
      const auto same = [&](const Obstacle& o) { return o.region == r; };
      if (std::none_of(c.hits.begin(), c.hits.end(), same))
        c.hits.push_back({r, part, rise->skin, c.resting_lift_mm - rises.lift_without(r)});
    }
  const bool centre_clear = c.resting_lift_mm > clear_mm;
  c.rests_on_wings = centre_clear && touches_left && touches_right;
  const bool is_bent =
      std::any_of(coil.parts.begin(), coil.parts.end(), [](const CoilPart& p) { return p.bend_deg != 0; });
  if (is_bent && c.hits.empty()) c.rock_deg = roll_to_rest(head.skin(), coil, c.pose);
  c.map = map_of_gaps(head.skin(), rises.pieces, c.pose, c.lift_mm, options.map_step_mm);
  c.wings = wing_gaps(head.skin(), coil, rises.pieces, c);
  c.presses_cap_mm = std::max(0.0, options.cap_mm - least_over_scalp);
  return c;
}

bool on_wings(const Contact& c) {
  return c.rests_on_wings ||
         (c.hits.empty() && c.resting_lift_mm > clear_mm && c.rock_deg && std::abs(*c.rock_deg) < even_deg);
}

bool on_centre(const Contact& c) {
  return c.resting_lift_mm < clear_mm;
}

bool rocks(const Contact& c) {
  return c.rock_deg && std::abs(*c.rock_deg) >= even_deg;
}

TiltedCoil tilt_coil(const Surface& skin, const Coil& coil, const CoilPose& pose, const Tilt& tilt) {
  TiltedCoil t;
  t.pose = tilted(pose, tilt);
  t.axis = -t.pose.normal;
  t.centre = pose.pulse;
  const double out_per_lift = 1 / std::max(0.1, t.pose.normal.dot(pose.normal));
  constexpr double settled_mm = 1e-4;
  for (int round = 0; round < 50; ++round) {
    CoilPose there = t.pose;
    there.pulse = t.centre;
    const double lift = clearing_lift(skin, coil, there);
    if (lift < settled_mm) break;
    t.centre += lift * out_per_lift * pose.normal;
  }
  if (const auto hit = skin.ray_hit(t.centre, t.axis, deepest_gap_mm)) {
    t.meets = hit->point;
    t.moved_mm = (skin.position(hit->point) - pose.pulse).norm();
  }
  return t;
}

}  // namespace scalpmark::geometry
