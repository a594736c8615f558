#include "geometry/hands/find_by_tapes.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "geometry/base/error.h"
#include "geometry/paths/shortest_path.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

const Vector3d top(0, 0, 90), front(0, 90, 0), left(-90, 0, 0), right(90, 0, 0);

/// The sphere with its tragi so far in front of the middle that the vertex tape and both tragus tapes tell a
/// place in front from its mirror image behind, a little.
const Head& tragi_in_front() {
  static const Head head(sphere(90, 6), {front, -front, {-89.5, 9.5, 0}, {89.5, 9.5, 0}});
  return head;
}

TapeReadings read(const Head& head, const SurfacePoint& p) {
  const auto& f = head.fiducials();
  const auto d = shortest_distances(head.skin(), p, {head.vertex(), f.nasion, f.left_tragus, f.right_tragus});
  return {d[0], d[1], d[2], d[3]};
}

/// From the place that was found, which must be the only one.
double off_mm(const Head& head, const TapeReadings& readings, const Vector3d& at) {
  const auto places = find_by_tapes(head, readings);
  CHECK(places.size() == 1);
  return (head.skin().position(places.front().point) - at).norm();
}

/// The place nearest to a point, of those found.
FoundPlace near(const Head& head, const std::vector<FoundPlace>& places, const Vector3d& at) {
  return places[nearest_place(head, places, head.skin().closest(at))];
}

}  // namespace

// Great-circle arcs to the top, the front and the sides (elementary geometry): nothing of the program's own.
TEST_CASE("great-circle arcs find the sphere's point again", "[slow]") {
  for (const Vector3d& n : {Vector3d(-0.5, 0.2, 0.8), Vector3d(0.4, 0.5, 0.7), Vector3d(-0.3, -0.6, 0.5)}) {
    const Vector3d p = 90 * n.normalized();
    const double v = arc_mm(p, top), f = arc_mm(p, front), l = arc_mm(p, left), r = arc_mm(p, right);
    CHECK(off_mm(ball(), {v, f, l, r}, p) < 0.1);
    CHECK(off_mm(ball(), {v, f, l, {}}, p) < 0.1);
    CHECK(off_mm(ball(), {v, f, {}, r}, p) < 0.1);
  }
}

TEST_CASE("tapes read on a lopsided head find the point again within 0.1 mm", "[slow]") {
  for (const Vector3d& n : {Vector3d(-0.5, 0.2, 0.8), Vector3d(0.45, 0.6, 0.6), Vector3d(-0.6, 0.5, 0.4),
                            Vector3d(0.05, -0.4, 0.9), Vector3d(-0.2, 0.1, 1)}) {
    const SurfacePoint p = lop().skin().closest(lopsided(n));
    const Vector3d at = lop().skin().position(p);
    const TapeReadings all = read(lop(), p);
    CHECK(off_mm(lop(), all, at) < 0.1);
    for (const TapeReadings& some : {TapeReadings{all.vertex_mm, all.nasion_mm, all.left_tragus_mm, {}},
                                     {{}, all.nasion_mm, all.left_tragus_mm, {}},
                                     {all.vertex_mm, {}, {}, all.right_tragus_mm}}) {
      const FoundPlace found = near(lop(), find_by_tapes(lop(), some), at);
      CHECK(found.worst_mm < 0.05);
      const double off = (lop().skin().position(found.point) - at).norm();
      // Two circles that nearly touch meet twice within one long place, and it says so.
      CHECK(off < (found.spread_mm > vague_mm ? found.spread_mm : 0.1));
    }
  }
}

TEST_CASE("readings to half a centimetre still find the point within a tape's reading", "[slow]") {
  const SurfacePoint p = lop().skin().closest(lopsided(Vector3d(-0.5, 0.3, 0.8)));
  TapeReadings t = read(lop(), p);
  for (auto* mm : {&t.vertex_mm, &t.nasion_mm, &t.left_tragus_mm, &t.right_tragus_mm})
    *mm = 5 * std::round(**mm / 5);
  const auto places = find_by_tapes(lop(), t);
  REQUIRE(places.size() == 1);
  const FoundPlace& found = places.front();
  CHECK(found.worst_mm > 0);
  CHECK(found.worst_mm <= 2.5);
  CHECK(found.misfit_mm >
        0.5 * found.worst_mm);  // a root mean square of four is no less than half the largest
  CHECK(found.misfit_mm <= found.worst_mm);
  CHECK((lop().skin().position(found.point) - lop().skin().position(p)).norm() < found.spread_mm);
}

TEST_CASE("all places where the tapes meet are told: left and right, front and back, and none on the face",
          "[slow]") {
  const Vector3d p = 90 * Vector3d(-0.5, 0.5, 0.7).normalized();
  const auto both = [&](const TapeReadings& readings, const Vector3d& mirror) {
    const auto places = find_by_tapes(ball(), readings);
    REQUIRE(places.size() == 2);
    for (const Vector3d& at : {p, mirror}) {
      const FoundPlace found = near(ball(), places, at);
      CHECK((ball().skin().position(found.point) - at).norm() < 0.1);
      CHECK(found.worst_mm < 0.05);
    }
    CHECK(apart_mm(ball(), places) == Approx((p - mirror).norm()).margin(0.2));
  };
  both({arc_mm(p, top), arc_mm(p, front), {}, {}}, {-p.x(), p.y(), p.z()});
  // Top and both sides lie in one plane.
  both({arc_mm(p, top), {}, arc_mm(p, left), arc_mm(p, right)}, {p.x(), -p.y(), p.z()});
  // Nasion and one tragus also meet on the cheek; the face does not count.
  CHECK(off_mm(ball(), {{}, arc_mm(p, front), arc_mm(p, left), {}}, p) < 0.1);
}

TEST_CASE("a place that fits worse is told too, up to five standard deviations and no further", "[slow]") {
  const Head& head = tragi_in_front();
  const SurfacePoint p = head.skin().closest({-45, 50, 60});
  const TapeReadings all = read(head, p);
  const TapeReadings three{all.vertex_mm, {}, all.left_tragus_mm, all.right_tragus_mm};
  const auto found = [&](double reading_mm) {
    return find_by_tapes(head, three, {.reading_mm = reading_mm});
  };
  const auto places = found(4);
  REQUIRE(places.size() == 2);
  // What the three tapes miss the mirror image by, in all.
  const double sum_mm = std::sqrt(3.0) * places[1].misfit_mm;
  CHECK(sum_mm > 10);
  CHECK((head.skin().position(places[0].point) - head.skin().position(p)).norm() < 0.1);
  CHECK(apart_mm(head, places) > 60);
  CHECK(found(sum_mm / 5.1).size() == 1);
  CHECK(found(sum_mm / 4.9).size() == 2);
  // Read less well, in the end all between them fits: one place then, so wide that it says so.
  for (const double reading_mm : {sum_mm / 3.5, sum_mm / 2.5, sum_mm / 1.5})
    if (const auto wide = found(reading_mm); wide.size() == 1)
      CHECK(2.5 * wide[0].spread_mm > apart_mm(head, places));
    else
      CHECK(wide.size() == 2);
}

// Two tapes that meet at an angle c fix the point worst along the bisector that both miss alike: their
// squared slopes' smaller eigenvalue is 1 - |cos c|. 95 of 100 of two normal errors lie within 2.448 of their
// standard deviations (chi squared, two degrees of freedom, -2 ln 0.05 = 5.991).
TEST_CASE("the predicted spread of two tapes is that of two circles that cross", "[slow]") {
  const double within = std::sqrt(-2 * std::log(0.05));
  for (const Vector3d& n : {Vector3d(-0.6, 0, 0.8), Vector3d(-0.5, -0.3, 0.8), Vector3d(-0.7, 0.3, 0.6)}) {
    const Vector3d p = 90 * n.normalized();
    const Vector3d to_top = (top - top.dot(n) / n.squaredNorm() * n).normalized(),
                   to_front = (front - front.dot(n) / n.squaredNorm() * n).normalized();
    const double expected = 2.5 * within / std::sqrt(1 - std::abs(to_top.dot(to_front)));
    const FoundPlace found =
        near(ball(), find_by_tapes(ball(), {arc_mm(p, top), arc_mm(p, front), {}, {}}), p);
    CAPTURE(n.transpose(), expected);
    CHECK(found.spread_mm == Approx(expected).epsilon(0.13));  // circles are not straight lines
    const FoundPlace half = near(
        ball(), find_by_tapes(ball(), {arc_mm(p, top), arc_mm(p, front), {}, {}}, {.reading_mm = 0.5}), p);
    CHECK(half.spread_mm == Approx(expected / 5).epsilon(0.05));  // a few triangles
  }
}

TEST_CASE("tapes that touch rather than cross are one place with a long spread, and not sure", "[slow]") {
  // On the midline the circles about top and front touch.
  const Vector3d p = 90 * Vector3d(0, 0.6, 0.8).normalized();
  const TapeFinder finder(ball());
  FoundMark mark = find_mark(finder, {arc_mm(p, top), arc_mm(p, front), {}, {}});
  REQUIRE(mark.places.size() == 1);
  CHECK(mark.taken == 0U);
  // 2.448 standard deviations off along both tapes at once, the point may be this far aside: x^2 / 2 times
  // the sum of the cotangents of both arcs over 90 mm.
  const double a = arc_mm(p, top) / 90, b = arc_mm(p, front) / 90;
  const double bend = (1 / std::tan(a) + 1 / std::tan(b)) / (2 * 90);
  const double aside = std::sqrt(2 * std::sqrt(5.991 / 2) * 2.5 / bend);
  CHECK(mark.places[0].spread_mm == Approx(aside).epsilon(0.25));
  CHECK(mark.places[0].spread_mm > vague_mm);
  CHECK_FALSE(mark.is_sure());
  // A tragus settles it.
  mark = find_mark(finder, {arc_mm(p, top), arc_mm(p, front), arc_mm(p, left), {}});
  CHECK(mark.is_sure());
}

TEST_CASE("of several places none is taken until somebody asks for the one nearest to the plan", "[slow]") {
  const Vector3d p = 90 * Vector3d(-0.5, 0.3, 0.8).normalized();
  const TapeFinder finder(ball());
  FoundMark mark = find_mark(finder, {arc_mm(p, top), arc_mm(p, front), {}, {}});
  CHECK_FALSE(mark.taken);
  CHECK_FALSE(mark.is_sure());
  for (const double side : {-1.0, 1.0}) {
    take_nearest(mark, ball(), ball().skin().closest({side * 60, 0, 60}));
    REQUIRE(mark.taken);
    CHECK(mark.nearest_to_plan);
    CHECK(mark.is_sure());
    CHECK((ball().skin().position(mark.places[*mark.taken].point) -
           Vector3d(side * std::abs(p.x()), p.y(), p.z()))
              .norm() < 0.1);
  }
  // A mark with one place is that place, whoever asks.
  mark = find_mark(finder, {arc_mm(p, top), arc_mm(p, front), arc_mm(p, left), {}});
  take_nearest(mark, ball(), ball().skin().closest({60, 0, 60}));
  CHECK(mark.taken == 0U);
  CHECK_FALSE(mark.nearest_to_plan);
}

TEST_CASE("tapes that do not belong to one point are refused in a sentence", "[slow]") {
  CHECK_THROWS_WITH(find_by_tapes(ball(), {40.0, 40.0, {}, {}}), Catch::Contains("do not meet"));
  CHECK_THROWS_WITH(find_by_tapes(ball(), {900.0, 900.0, {}, {}}), Catch::Contains("do not meet"));
  CHECK_THROWS_WITH(find_by_tapes(ball(), {50.0, {}, {}, {}}), Catch::Contains("One tape is not enough"));
  CHECK_THROWS_WITH(find_by_tapes(ball(), {50.0, {}, -3.0, {}}), Catch::Contains("left tragus"));
  CHECK_THROWS_WITH(find_by_tapes(ball(), {50.0, std::nan(""), {}, {}}), Catch::Contains("nasion"));
  CHECK_THROWS_WITH(find_by_tapes(ball(), {50.0, 80.0, {}, {}}, {.reading_mm = 0}),
                    Catch::Contains("above 0"));
  // A good set with one tape misread by 3 cm, and by what a reading may be off.
  const TapeReadings good = read(ball(), ball().skin().closest({-50, 30, 70}));
  // The tragi's tapes check each other; nothing else checks the nasion's.
  for (const auto tape : {&TapeReadings::left_tragus_mm, &TapeReadings::right_tragus_mm}) {
    TapeReadings t = good;
    *(t.*tape) += 30;
    CHECK_THROWS_AS(find_by_tapes(ball(), t), GeometryError);
    *(t.*tape) -= 25;
    CHECK_NOTHROW(find_by_tapes(ball(), t));
  }
}
