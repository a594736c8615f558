#include "geometry/hands/find_by_tapes.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/paths/shortest_path.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

const Head& ball() {
  static const Head head = sphere_head(90, 6);
  return head;
}

const Head& lop() {
  static const Head head = lopsided_head(6);
  return head;
}

double arc_mm(const Vector3d& a, const Vector3d& b) {
  return 90 * std::atan2(a.cross(b).norm(), a.dot(b));
}

TapeReadings read(const Head& head, const SurfacePoint& p) {
  const auto& f = head.fiducials();
  const auto d = shortest_distances(head.skin(), p, {head.vertex(), f.nasion, f.left_tragus, f.right_tragus});
  return {d[0], d[1], d[2], d[3]};
}

}  // namespace

// Great-circle arcs to the top, the front and the sides (elementary geometry): nothing of the program's own.
TEST_CASE("great-circle arcs find the sphere's point again", "[slow]") {
  const Vector3d top(0, 0, 90), front(0, 90, 0), left(-90, 0, 0), right(90, 0, 0);
  for (const Vector3d& n : {Vector3d(-0.5, 0.2, 0.8), Vector3d(0.4, 0.5, 0.7), Vector3d(-0.3, -0.6, 0.5)}) {
    const Vector3d p = 90 * n.normalized();
    const double v = arc_mm(p, top), f = arc_mm(p, front), l = arc_mm(p, left), r = arc_mm(p, right);
    const auto off = [&](const TapeReadings& t) {
      return (ball().skin().position(find_by_tapes(ball(), t).point) - p).norm();
    };
    CHECK(off({v, f, l, r}) < 0.1);
    CHECK(off({v, f, l, {}}) < 0.1);
    CHECK(off({v, f, {}, r}) < 0.1);
  }
}

TEST_CASE("tapes read on a lopsided head find the point again within 0.1 mm", "[slow]") {
  for (const Vector3d& n : {Vector3d(-0.5, 0.2, 0.8), Vector3d(0.45, 0.6, 0.6), Vector3d(-0.6, 0.5, 0.4),
                            Vector3d(0.05, -0.4, 0.9), Vector3d(-0.2, 0.1, 1)}) {
    const SurfacePoint p = lop().skin().closest(lopsided(n));
    const Vector3d at = lop().skin().position(p);
    const TapeReadings all = read(lop(), p);
    const auto off = [&](const TapeReadings& t, const SurfacePoint* near) {
      const FoundByTapes found = find_by_tapes(lop(), t, near);
      CHECK(found.worst_mm < 0.05);
      return (lop().skin().position(found.point) - at).norm();
    };
    const SurfacePoint roughly = lop().skin().closest(at + Vector3d(3, -3, 2));
    CHECK(off(all, nullptr) < 0.1);
    CHECK(off({all.vertex_mm, all.nasion_mm, all.left_tragus_mm, {}}, &roughly) < 0.1);
    CHECK(off({{}, all.nasion_mm, all.left_tragus_mm, {}}, &roughly) < 0.1);
    CHECK(off({all.vertex_mm, {}, {}, all.right_tragus_mm}, &roughly) < 0.1);
  }
}

TEST_CASE("readings to half a centimetre still find the point within a tape's reading") {
  const SurfacePoint p = lop().skin().closest(lopsided(Vector3d(-0.5, 0.3, 0.8)));
  TapeReadings t = read(lop(), p);
  for (auto* mm : {&t.vertex_mm, &t.nasion_mm, &t.left_tragus_mm, &t.right_tragus_mm})
    *mm = 5 * std::round(**mm / 5);
  const FoundByTapes found = find_by_tapes(lop(), t);
  CHECK(found.worst_mm > 0);
  CHECK(found.worst_mm <= 2.5);
  CHECK((lop().skin().position(found.point) - lop().skin().position(p)).norm() < 5);
}

TEST_CASE("two tapes that meet left and right need a third, or a place to look near") {
  const Vector3d top(0, 0, 90), front(0, 90, 0);
  const Vector3d p = 90 * Vector3d(-0.5, 0.3, 0.8).normalized();
  const TapeReadings two{arc_mm(p, top), arc_mm(p, front), {}, {}};
  CHECK_THROWS_WITH(find_by_tapes(ball(), two), Catch::Contains("two places"));
  const SurfacePoint left = ball().skin().closest({-60, 0, 60}), right = ball().skin().closest({60, 0, 60});
  CHECK((ball().skin().position(find_by_tapes(ball(), two, &left).point) - p).norm() < 0.1);
  CHECK((ball().skin().position(find_by_tapes(ball(), two, &right).point) - Vector3d(-p.x(), p.y(), p.z()))
            .norm() < 0.1);
  // Nasion and one tragus also meet on the cheek; the face does not count.
  const TapeReadings cheek{{}, arc_mm(p, front), arc_mm(p, {-90, 0, 0}), {}};
  CHECK((ball().skin().position(find_by_tapes(ball(), cheek).point) - p).norm() < 0.1);
}

TEST_CASE("tapes that do not belong to one point are refused in a sentence") {
  CHECK_THROWS_WITH(find_by_tapes(ball(), {40.0, 40.0, {}, {}}), Catch::Contains("do not meet"));
  CHECK_THROWS_WITH(find_by_tapes(ball(), {900.0, 900.0, {}, {}}), Catch::Contains("do not meet"));
  CHECK_THROWS_WITH(find_by_tapes(ball(), {50.0, {}, {}, {}}), Catch::Contains("One tape is not enough"));
  CHECK_THROWS_WITH(find_by_tapes(ball(), {50.0, {}, -3.0, {}}), Catch::Contains("left tragus"));
  CHECK_THROWS_WITH(find_by_tapes(ball(), {50.0, std::nan(""), {}, {}}), Catch::Contains("nasion"));
  // A good set with one tape misread by 3 cm.
  TapeReadings t = read(ball(), ball().skin().closest({-50, 30, 70}));
  *t.left_tragus_mm += 30;
  CHECK_THROWS_AS(find_by_tapes(ball(), t), GeometryError);
}
