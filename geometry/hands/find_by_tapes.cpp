#include "geometry/hands/find_by_tapes.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "geometry/base/error.h"
#include "geometry/head/face_region.h"
#include "geometry/head/on_head.h"
#include "geometry/paths/walk.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;
using Eigen::VectorXd;

namespace {

constexpr std::array readings_in_order{&TapeReadings::vertex_mm, &TapeReadings::nasion_mm,
                                       &TapeReadings::left_tragus_mm, &TapeReadings::right_tragus_mm};

std::array<const DistanceField*, 4> fields_in_order(const Head& head) {
  const Head::Fields& f = head.fields();
  return {&f.vertex, &f.nasion, &f.left_tragus, &f.right_tragus};
}

Message name_in_order(size_t which) {
  switch (which) {
    case 0:
      return Message::of("vertex");
    case 1:
      return Message::of("nasion");
    case 2:
      return Message::of("left tragus");
    default:
      return Message::of("right tragus");
  }
}

FourTapes usable(const TapeReadings& readings) {
  FourTapes tapes;
  int count = 0;
  for (size_t i = 0; i < tapes.size(); ++i) {
    const std::optional<double>& mm = readings.*readings_in_order[i];
    if (!mm) continue;
    if (!std::isfinite(*mm) || !(*mm > 0))
      throw GeometryError(
          Message::of("The tape from the %1 must be a length above 0; correct it.", name_in_order(i)));
    tapes[i] = mm;
    ++count;
  }
  if (count < 2)
    throw GeometryError(Message::of(
        "One tape is not enough to find a point again; give two or more of the distances to the vertex, the nasion and the two tragi."));
  return tapes;
}

struct Reading {
  const DistanceField* field;
  double mm;
};

VectorXd misses(const Surface& skin, const std::vector<Reading>& readings, const SurfacePoint& p) {
  VectorXd m(static_cast<Eigen::Index>(readings.size()));
  for (size_t i = 0; i < readings.size(); ++i)
    m[static_cast<Eigen::Index>(i)] = readings[i].field->at(skin, p) - readings[i].mm;
  return m;
}

SurfacePoint stepped(const Head& head, const SurfacePoint& from, const Vector2d& by) {
  if (!(by.norm() > 0)) return from;
  const Directions d = directions_at(head, Side::left, from);
  return walk(head.skin(), from, (by[0] * d.forward + by[1] * d.outward).normalized(), by.norm()).end;
}

/// How the misses change a millimetre forward and outward, by differences.
Eigen::MatrixXd slopes(const Head& head, const std::vector<Reading>& readings, const SurfacePoint& at) {
  constexpr double probe_mm = 0.5;
  const Surface& skin = head.skin();
  Eigen::MatrixXd slope(static_cast<Eigen::Index>(readings.size()), 2);
  for (int k = 0; k < 2; ++k)
    slope.col(k) = (misses(skin, readings, stepped(head, at, probe_mm * Vector2d::Unit(k))) -
                    misses(skin, readings, stepped(head, at, -probe_mm * Vector2d::Unit(k)))) /
                   (2 * probe_mm);
  return slope;
}

/// Levenberg-Marquardt over the skin, from a place that is right as far as tape distances are straight within
/// a triangle.
SurfacePoint refined(const Head& head, const std::vector<Reading>& readings, SurfacePoint at) {
  constexpr double settled_mm = 1e-4, longest_step_mm = 2;
  const Surface& skin = head.skin();
  VectorXd miss = misses(skin, readings, at);
  double damping = 1e-3;
  for (int round = 0; round < 40; ++round) {
    const Eigen::MatrixXd slope = slopes(head, readings, at);
    const Eigen::Matrix2d normal = slope.transpose() * slope;
    bool better = false;
    double step_mm = 0;
    while (!better && damping < 1e6) {
      Vector2d step =
          -(normal + damping * Eigen::Matrix2d::Identity()).ldlt().solve(slope.transpose() * miss);
      if (!step.allFinite()) break;
      if (step.norm() > longest_step_mm) step *= longest_step_mm / step.norm();
      const SurfacePoint next = stepped(head, at, step);
      const VectorXd next_miss = misses(skin, readings, next);
      better = next_miss.squaredNorm() < miss.squaredNorm() && !on_face(head, skin.position(next));
      if (better) {
        step_mm = step.norm();
        at = next;
        miss = next_miss;
        damping = std::max(damping * 0.1, 1e-9);
      } else {
        damping *= 10;
      }
    }
    if (!better || step_mm < settled_mm) break;
  }
  return at;
}

}  // namespace

TapeFinder::TapeFinder(const Head& head)
    : head_(head), skin_(head, [&] {
        const auto fields = fields_in_order(head);
        return std::array{&fields[0]->at_vertices(), &fields[1]->at_vertices(), &fields[2]->at_vertices(),
                          &fields[3]->at_vertices()};
      }()) {}

std::vector<FoundPlace> TapeFinder::find(const TapeReadings& given, const FindOptions& options) const {
  if (!(options.reading_mm > 0) || !std::isfinite(options.reading_mm))
    throw GeometryError(Message::of("A tape's reading error must be a length above 0; correct it."));
  const FourTapes tapes = usable(given);
  const auto fields = fields_in_order(head_);
  std::vector<Reading> readings;
  for (size_t i = 0; i < tapes.size(); ++i)
    if (tapes[i]) readings.push_back({fields[i], *tapes[i]});
  std::vector<FoundPlace> places;
  for (const FittingPatch& patch : skin_.patches(tapes, options.reading_mm)) {
    FoundPlace place;
    place.point = refined(head_, readings, patch.best);
    const VectorXd miss = misses(head_.skin(), readings, place.point);
    place.misfit_mm = std::sqrt(miss.squaredNorm() / static_cast<double>(miss.size()));
    place.worst_mm = miss.cwiseAbs().maxCoeff();
    place.spread_mm = patch.spread_mm;
    places.push_back(place);
  }
  std::sort(places.begin(), places.end(),
            [](const FoundPlace& a, const FoundPlace& b) { return a.misfit_mm < b.misfit_mm; });
  const double most_misfit_mm =
      options.reading_mm * std::sqrt(most_squares_at_best / static_cast<double>(readings.size()));
  if (places.empty() || places.front().misfit_mm > most_misfit_mm)
    throw GeometryError(
        places.empty()
            ? Message::of(
                  "These tapes do not meet on the skin; read them again, and check that they belong to one mark.")
            : Message::of(
                  "These tapes do not meet on the skin (the best place misses one by %1 mm); read them again, and check that they belong to one mark.",
                  number(places.front().worst_mm)));
  return places;
}

TapeReadings tapes_to(const Head& head, const SurfacePoint& point) {
  TapeReadings tapes;
  const auto fields = fields_in_order(head);
  for (std::size_t i = 0; i < fields.size(); ++i)
    tapes.*readings_in_order[i] = fields[i]->at(head.skin(), point);
  return tapes;
}

std::vector<FoundPlace> find_by_tapes(const Head& head, const TapeReadings& readings,
                                      const FindOptions& options) {
  return TapeFinder(head).find(readings, options);
}

std::size_t nearest_place(const Head& head, const std::vector<FoundPlace>& places, const SurfacePoint& near) {
  const Vector3d wanted = head.skin().position(near);
  const auto away = [&](const FoundPlace& p) { return (head.skin().position(p.point) - wanted).norm(); };
  const auto nearest =
      std::min_element(places.begin(), places.end(),
                       [&](const FoundPlace& a, const FoundPlace& b) { return away(a) < away(b); });
  return static_cast<std::size_t>(nearest - places.begin());
}

double apart_mm(const Head& head, const std::vector<FoundPlace>& places) {
  double most = 0;
  for (const FoundPlace& a : places)
    for (const FoundPlace& b : places)
      most = std::max(most, (head.skin().position(a.point) - head.skin().position(b.point)).norm());
  return most;
}

FoundMark find_mark(const TapeFinder& finder, const TapeReadings& readings, const FindOptions& options) {
  FoundMark mark;
  mark.places = finder.find(readings, options);
  if (mark.places.size() == 1) mark.taken = 0;
  return mark;
}

void take_nearest(FoundMark& mark, const Head& head, const SurfacePoint& near) {
  mark.taken = nearest_place(head, mark.places, near);
  mark.nearest_to_plan = mark.places.size() > 1;
}

}  // namespace scalpmark::geometry
