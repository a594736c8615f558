// The generic head when its cranium is scaled: "face and ears keep plausible shape when the cranium is scaled
// by up to 15 %". What must stay is measured between named corners of the triangles, as with calipers.
#include <Eigen/Geometry>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>

#include "geometry/head/scale.h"
#include "geometry/head/stretch.h"
#include "models/generic/generic_head.h"

using namespace scalpmark;
using Eigen::Vector3d;

namespace {

const geometry::Head& own() {
  return models::generic_head();
}

const geometry::Stretch& stretch() {
  static const geometry::Stretch made(own());
  return made;
}

/// Breadth, length and height of the cranium, each 15 % less, as it is, and 15 % more.
std::vector<Vector3d> up_to_15_percent() {
  std::vector<Vector3d> all;
  for (const double breadth : {0.85, 1.0, 1.15})
    for (const double length : {0.85, 1.0, 1.15})
      for (const double height : {0.85, 1.0, 1.15}) all.emplace_back(breadth, length, height);
  return all;
}

/// Factors at the limit of what scale_to_tapes accepts: one half as much again as another.
std::vector<Vector3d> at_the_limit() {
  const double more = std::sqrt(1.5), less = 1 / more;
  std::vector<Vector3d> all;
  for (const double breadth : {less, more})
    for (const double length : {less, more})
      for (const double height : {less, more}) all.emplace_back(breadth, length, height);
  return all;
}

/// The corner nearest to a place.
int corner_at(const Vector3d& place) {
  const auto& all = own().skin().vertices();
  const auto nearest = std::min_element(all.begin(), all.end(), [&](const Vector3d& a, const Vector3d& b) {
    return (a - place).squaredNorm() < (b - place).squaredNorm();
  });
  return static_cast<int>(nearest - all.begin());
}

/// The corner that lies farthest along `way` within `reach_mm` of a place.
int farthest(const Vector3d& way, const Vector3d& place, double reach_mm) {
  int best = -1;
  for (int v = 0; v < static_cast<int>(own().skin().vertices().size()); ++v) {
    const Vector3d& p = own().skin().vertex(v);
    if ((p - place).norm() < reach_mm && (best < 0 || p.dot(way) > own().skin().vertex(best).dot(way)))
      best = v;
  }
  return best;
}

/// Width over height of one part.
struct Part {
  const char* name;
  int width_from, width_to, height_from, height_to;
  [[nodiscard]] double proportion(const geometry::Surface& skin) const {
    return (skin.vertex(width_from) - skin.vertex(width_to)).norm() /
           (skin.vertex(height_from) - skin.vertex(height_to)).norm();
  }
};

const std::vector<Part>& parts() {
  static const std::vector<Part> all = [] {
    const auto& at = own().fiducials().at;
    const Vector3d up = Vector3d::UnitZ(), front = Vector3d::UnitY();
    const auto ear = [&](double side) {
      const Vector3d middle(side * 80, -14, 0);
      return std::array{corner_at(side > 0 ? at.right_tragus : at.left_tragus), farthest(-front, middle, 25),
                        farthest(up, middle, 33), farthest(-up, middle - 20 * up, 16)};
    };
    const auto r = ear(1), l = ear(-1);
    const int nasion = corner_at(at.nasion), under_nose = corner_at({0, 98, -18.5});
    const int chin = farthest(front - 2 * up, {0, 85, -78}, 20);
    return std::vector<Part>{{"nose, wings and nasion to under it", corner_at({16, 97, -8}),
                              corner_at({-16, 97, -8}), nasion, under_nose},
                             {"right ear, tragus to rim and top to lobe", r[0], r[1], r[2], r[3]},
                             {"left ear, tragus to rim and top to lobe", l[0], l[1], l[2], l[3]},
                             {"right eye, corners and lids", corner_at({18, 80, 25}), corner_at({45, 76, 25}),
                              corner_at({31.5, 84, 33}), corner_at({31.5, 84, 18})},
                             {"mouth, corners and lips", corner_at({24, 88, -36}), corner_at({-24, 88, -36}),
                              corner_at({0, 100, -29}), corner_at({0, 96, -45})},
                             {"face, eyes' outer corners and nasion to chin", corner_at({45, 76, 25}),
                              corner_at({-45, 76, 25}), nasion, chin}};
  }();
  return all;
}

}  // namespace

TEST_CASE("nose, ears, eyes and mouth keep their proportions when the cranium changes by up to 15 %") {
  double most_if_only_stretched = 0;
  for (const Vector3d& factors : up_to_15_percent()) {
    CAPTURE(factors.transpose());
    const geometry::Head head = stretch().stretched(factors, own().vertex());
    // For comparison: every corner stretched with the cranium.
    const auto& axes = own().axes();
    std::vector<Vector3d> plain = own().skin().vertices();
    Eigen::Matrix3d frame;
    frame << axes.right, axes.front, axes.up;
    for (Vector3d& v : plain) v = frame * factors.asDiagonal() * frame.transpose() * v;
    const geometry::Surface stretched = own().skin().moved(std::move(plain));
    for (const Part& part : parts()) {
      CAPTURE(part.name);
      const double was = part.proportion(own().skin());
      CHECK(std::abs(part.proportion(head.skin()) / was - 1) < 0.05);
      most_if_only_stretched =
          std::max(most_if_only_stretched, std::abs(part.proportion(stretched) / was - 1));
    }
  }
  CHECK(most_if_only_stretched > 0.25);
}

TEST_CASE("the tapes of a cranium up to 15 % off are met, and the cranium is found again", "[slow]") {
  for (const Vector3d& factors : up_to_15_percent()) {
    CAPTURE(factors.transpose());
    const auto wanted = stretch().stretched(factors, own().vertex()).tapes();
    const auto scaled = geometry::scale_to_tapes(
        own(), {wanted.nasion_inion_mm, wanted.tragus_tragus_mm, wanted.circumference_mm});
    CHECK(scaled.head.tapes().nasion_inion_mm == Approx(wanted.nasion_inion_mm).margin(0.1));
    CHECK(scaled.head.tapes().tragus_tragus_mm == Approx(wanted.tragus_tragus_mm).margin(0.1));
    CHECK(scaled.head.tapes().circumference_mm == Approx(wanted.circumference_mm).margin(0.1));
    CHECK((scaled.factors - factors).norm() < 1e-4);
  }
}

TEST_CASE("a scaled head is closed and symmetric, its triangles well shaped and none turned over", "[slow]") {
  struct Before {
    bool operator()(const Vector3d& a, const Vector3d& b) const {
      return std::lexicographical_compare(a.data(), a.data() + 3, b.data(), b.data() + 3);
    }
  };
  // The halves of the unscaled head mirror each other exactly, so a corner's twin is found by its place.
  const auto& vertices = own().skin().vertices();
  std::map<Vector3d, size_t, Before> places;
  for (size_t v = 0; v < vertices.size(); ++v) places.emplace(vertices[v], v);
  std::vector<size_t> twins;
  for (const Vector3d& p : vertices) {
    const auto twin = places.find(Vector3d(p.x() == 0 ? 0 : -p.x(), p.y(), p.z()));
    REQUIRE(twin != places.end());
    twins.push_back(twin->second);
  }
  auto all = up_to_15_percent();
  for (const Vector3d& f : at_the_limit()) all.push_back(f);
  for (const Vector3d& factors : all) {
    CAPTURE(factors.transpose());
    const geometry::Surface skin = stretch().stretched(factors, own().vertex()).skin();
    CHECK(skin.is_closed());
    double asymmetry_mm = 0;
    for (size_t v = 0; v < twins.size(); ++v) {
      const Vector3d &p = skin.vertices()[v], &q = skin.vertices()[twins[v]];
      asymmetry_mm = std::max(asymmetry_mm, (p - Vector3d(-q.x(), q.y(), q.z())).norm());
    }
    CHECK(asymmetry_mm < 1e-6);
    size_t slim = 0, folded = 0;
    for (int f = 0; f < static_cast<int>(skin.triangles().size()); ++f) {
      double smallest_deg = 180;
      for (int k = 0; k < 3; ++k) {
        const Vector3d& a = skin.corner(f, k);
        const Vector3d p = skin.corner(f, (k + 1) % 3) - a, q = skin.corner(f, (k + 2) % 3) - a;
        smallest_deg = std::min(smallest_deg, std::atan2(p.cross(q).norm(), p.dot(q)) * 180 / M_PI);
        if (skin.face_normal(f).dot(skin.face_normal(skin.neighbour(f, k).face)) < 0) ++folded;
      }
      if (smallest_deg <= 15) ++slim;
    }
    CHECK(slim <= skin.triangles().size() / 100);
    CHECK(folded == 0);
  }
}
