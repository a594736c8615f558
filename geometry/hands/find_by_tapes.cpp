#include "geometry/hands/find_by_tapes.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <vector>

#include "geometry/base/error.h"
#include "geometry/base/text.h"
#include "geometry/head/face_region.h"
#include "geometry/head/on_head.h"
#include "geometry/paths/walk.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;
using Eigen::VectorXd;

namespace {

/// Tapes that miss each other by more were read wrongly or belong to another mark.
constexpr double most_miss_mm = 5;
/// Two meeting places this alike cannot be told apart by readings made to half a centimetre.
constexpr double as_good_mm = 1;
/// Places nearer to each other than this are one place.
constexpr double same_place_mm = 10;

struct Reading {
  const DistanceField* field;
  double mm;
};

std::vector<Reading> usable(const Head& head, const TapeReadings& r) {
  std::vector<Reading> all;
  const auto add = [&](const std::optional<double>& mm, const DistanceField& field, const Message& name) {
    if (!mm) return;
    if (!std::isfinite(*mm) || !(*mm > 0))
      throw GeometryError(Message::of("The tape from the %1 must be a length above 0; correct it.", name));
    all.push_back({&field, *mm});
  };
  const Head::Fields& f = head.fields();
  add(r.vertex_mm, f.vertex, Message::of("vertex"));
  add(r.nasion_mm, f.nasion, Message::of("nasion"));
  add(r.left_tragus_mm, f.left_tragus, Message::of("left tragus"));
  add(r.right_tragus_mm, f.right_tragus, Message::of("right tragus"));
  if (all.size() < 2)
    throw GeometryError(Message::of(
        "One tape is not enough to find a point again; give two or more of the distances to the vertex, the nasion and the two tragi."));
  return all;
}

VectorXd misses(const Surface& skin, const std::vector<Reading>& readings, const SurfacePoint& p) {
  VectorXd m(static_cast<Eigen::Index>(readings.size()));
  for (size_t i = 0; i < readings.size(); ++i)
    m[static_cast<Eigen::Index>(i)] = readings[i].field->at(skin, p) - readings[i].mm;
  return m;
}

/// Where to start looking: vertices that meet the tapes better than all their neighbours. A tape circle
/// crosses a triangle at any angle, so a meeting place may hide a few millimetres from its best vertex.
std::vector<SurfacePoint> starts(const Head& head, const std::vector<Reading>& readings) {
  const Surface& skin = head.skin();
  const size_t count = skin.vertices().size();
  std::vector<double> cost(count, 0);
  for (const Reading& r : readings)
    for (size_t v = 0; v < count; ++v) {
      const double miss = r.field->at_vertices()[v] - r.mm;
      cost[v] += miss * miss;
    }
  std::vector<bool> best(count, true);
  for (const Triangle& t : skin.triangles())
    for (size_t k = 0; k < 3; ++k) {
      const auto a = static_cast<size_t>(t[k]), b = static_cast<size_t>(t[(k + 1) % 3]);
      if (cost[a] < cost[b])
        best[b] = false;
      else if (cost[b] < cost[a])
        best[a] = false;
    }
  std::vector<int> found;
  constexpr double worth_a_look_mm = 30;
  for (size_t v = 0; v < count; ++v)
    if (best[v] && cost[v] < worth_a_look_mm * worth_a_look_mm && skin.face_at(static_cast<int>(v)) >= 0 &&
        !on_face(head, skin.vertices()[v]))
      found.push_back(static_cast<int>(v));
  std::sort(found.begin(), found.end(),
            [&](int a, int b) { return cost[static_cast<size_t>(a)] < cost[static_cast<size_t>(b)]; });
  constexpr size_t most_starts = 24;
  if (found.size() > most_starts) found.resize(most_starts);
  std::vector<SurfacePoint> points;
  for (const int v : found) {
    SurfacePoint p{skin.face_at(v), Vector3d::Zero()};
    for (int k = 0; k < 3; ++k)
      if (skin.triangle(p.face)[static_cast<size_t>(k)] == v) p.weights[k] = 1;
    points.push_back(p);
  }
  return points;
}

SurfacePoint stepped(const Head& head, const SurfacePoint& from, const Vector2d& by) {
  if (!(by.norm() > 0)) return from;
  const Directions d = directions_at(head, Side::left, from);
  return walk(head.skin(), from, (by[0] * d.forward + by[1] * d.outward).normalized(), by.norm()).end;
}

/// Levenberg-Marquardt over the skin, slopes by differences.
FoundByTapes refined(const Head& head, const std::vector<Reading>& readings, SurfacePoint at) {
  constexpr double probe_mm = 0.5, settled_mm = 1e-4, longest_step_mm = 15;
  const Surface& skin = head.skin();
  VectorXd miss = misses(skin, readings, at);
  double damping = 1e-3;
  for (int round = 0; round < 40; ++round) {
    Eigen::MatrixXd slope(miss.size(), 2);
    for (int k = 0; k < 2; ++k)
      slope.col(k) = (misses(skin, readings, stepped(head, at, probe_mm * Vector2d::Unit(k))) -
                      misses(skin, readings, stepped(head, at, -probe_mm * Vector2d::Unit(k)))) /
                     (2 * probe_mm);
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
      better = next_miss.squaredNorm() < miss.squaredNorm();
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
  return {at, miss.cwiseAbs().maxCoeff()};
}

}  // namespace

FoundByTapes find_by_tapes(const Head& head, const TapeReadings& given, const SurfacePoint* near) {
  const std::vector<Reading> readings = usable(head, given);
  const Surface& skin = head.skin();
  std::vector<FoundByTapes> places;
  for (const SurfacePoint& start : starts(head, readings)) {
    const FoundByTapes f = refined(head, readings, start);
    if (!on_face(head, skin.position(f.point))) places.push_back(f);
  }
  std::sort(places.begin(), places.end(),
            [](const FoundByTapes& a, const FoundByTapes& b) { return a.worst_mm < b.worst_mm; });
  if (places.empty() || places.front().worst_mm > most_miss_mm)
    throw GeometryError(
        places.empty()
            ? Message::of(
                  "These tapes do not meet on the skin; read them again, and check that they belong to one mark.")
            : Message::of(
                  "These tapes do not meet on the skin (the best place misses one by %1 mm); read them again, and check that they belong to one mark.",
                  number(places.front().worst_mm)));
  const FoundByTapes* chosen = &places.front();
  const Vector3d first = skin.position(chosen->point);
  for (const FoundByTapes& other : places) {
    if (other.worst_mm > std::min(most_miss_mm, places.front().worst_mm + as_good_mm)) break;
    const Vector3d at = skin.position(other.point);
    if ((at - first).norm() < same_place_mm) continue;
    if (!near)
      throw GeometryError(Message::of(
          "These tapes meet at two places on the head; add a third distance, or say which side."));
    const Vector3d wanted = skin.position(*near);
    if ((at - wanted).norm() < (skin.position(chosen->point) - wanted).norm()) chosen = &other;
  }
  return *chosen;
}

}  // namespace scalpmark::geometry
