#include "geometry/plan/lay_on_marks.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/head/on_head.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

constexpr double settled_deg = 0.01;

/// The coil laid with its edge over the mark at one angle, and how far the site mark is off its centre line.
struct Turned {
  SurfacePoint pulse;
  double sideways_mm = 0;  ///< of the site mark, toward greater angles
};

Turned turned_to(const Head& head, CoilSetup setup, Side side, double angle_deg, const Vector3d& site,
                 const SurfacePoint& edge_mark, const SurfacePoint& near) {
  setup.angle_deg = wrapped_deg(angle_deg);
  MarkSearch search;
  search.near = &near;
  Turned t;
  t.pulse = pulse_for_mark(head, setup, setup.laid_by, side, edge_mark, search);
  const LaidPose laid = pose_at(head, setup, side, t.pulse);
  const double a = radians(setup.angle_deg);
  const Vector3d greater = -std::sin(a) * laid.forward + std::cos(a) * laid.inward;
  t.sideways_mm = (site - laid.pose.pulse).dot(greater);
  return t;
}

}  // namespace

LaidOnMarks lay_on_marks(const Head& head, const CoilSetup& setup, Side side, const SurfacePoint& site_mark,
                         const SurfacePoint& edge_mark) {
  const Surface& skin = head.skin();
  const Vector3d site = skin.position(site_mark), edge = skin.position(edge_mark);
  const double reach = setup.centre_to_edge_mm;
  // From the site mark, the edge mark's direction is already the answer where the pulse falls on the site
  // mark.
  const Directions at_site = directions_at(head, side, site_mark);
  const Vector3d toward = edge - site;
  double angle = degrees(std::atan2(-toward.dot(at_site.outward), toward.dot(at_site.forward)));
  Turned now = turned_to(head, setup, side, angle, site, edge_mark, site_mark);
  // Turning the coil about its edge by a small angle swings its centre by that angle times the centre's
  // distance.
  double degrees_per_mm = -degrees(1 / reach);
  constexpr int most_rounds = 30;
  constexpr double longest_turn_deg = 20;
  int round = 0;
  for (; round < most_rounds; ++round) {
    const double turn = std::clamp(degrees_per_mm * now.sideways_mm, -longest_turn_deg, longest_turn_deg);
    if (std::abs(turn) < settled_deg) break;
    const Turned next = turned_to(head, setup, side, angle + turn, site, edge_mark, now.pulse);
    const double change = next.sideways_mm - now.sideways_mm;
    // A slope of the wrong sign or a wild one is the skin's grain, not the coil's turning.
    const double slope = change != 0 ? turn / change : 0;
    if (slope < 0 && -slope < degrees(4 / reach) && -slope > degrees(0.25 / reach)) degrees_per_mm = slope;
    angle += turn;
    now = next;
  }
  if (round == most_rounds)
    throw GeometryError(Message::of(
        "The coil cannot be laid with its edge over the edge mark and its centre line over the site mark; make both marks new."));
  return {now.pulse, wrapped_deg(angle)};
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
