#include "geometry/hands/cap.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/hands/cap_slip.h"
#include "geometry/hands/cap_today.h"
#include "geometry/hands/cap_veil.h"
#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

constexpr double degree = M_PI / 180;

/// The rotation of a slip on the ball, whose axes are right x, front y, up z; the front turns up about +x.
Eigen::Matrix3d turned(const CapSlip& s) {
  const Vector3d by = degree * Vector3d(-s.forward_deg, s.side_deg, -s.turn_deg);
  return Eigen::AngleAxisd(by.norm(), by.normalized()).toRotationMatrix();
}

/// How far up the great circle from `from` (on the equator) over the pole the plane of a slipped brim is met:
/// from cos a (from . n) + sin a (z . n) = sin(brim / R).
double height_on_ball(const Vector3d& from, const CapSlip& slip, double brim_mm) {
  const Vector3d n = turned(slip) * Vector3d::UnitZ();
  const double level = n.dot(from), steep = n.z();
  return ball_mm *
         (std::asin(std::sin(brim_mm / ball_mm) / std::hypot(level, steep)) - std::atan2(level, steep));
}

/// Mirrored in the midline.
CapSlip mirrored(const CapSlip& s) {
  return {s.forward_deg, -s.side_deg, -s.turn_deg};
}

}  // namespace

// A sphere's closed form: everything follows from the tilted plane of the brim (elementary geometry).
TEST_CASE("on a sphere the brim of a slipped cap is where the tilted circle lies") {
  for (const double brim : {20.0, 35.0}) {
    const Cap cap = cap_on(ball(), brim);
    CHECK(cap.sphere.radius_mm == Approx(ball_mm).margin(1e-6));
    CHECK(cap.sphere.centre.norm() < 1e-6);
    for (const CapSlip& slip : {CapSlip{}, CapSlip{5, 0, 0}, CapSlip{-4, 0, 0}, CapSlip{0, 6, 0},
                                CapSlip{0, 0, 7}, CapSlip{3, -5, 6}, CapSlip{-6, 2, -9}}) {
      const BrimHeights h = brim_heights(ball(), cap, slip);
      CHECK(*h.nasion_mm == Approx(height_on_ball({0, 1, 0}, slip, brim)).margin(0.02));
      CHECK(*h.inion_mm == Approx(height_on_ball({0, -1, 0}, slip, brim)).margin(0.02));
      CHECK(*h.left_tragus_mm == Approx(height_on_ball({-1, 0, 0}, slip, brim)).margin(0.02));
      CHECK(*h.right_tragus_mm == Approx(height_on_ball({1, 0, 0}, slip, brim)).margin(0.02));
    }
  }
}

TEST_CASE(
    "a cap slid forward comes down over the forehead, to the right over the right ear, and turned points its arrow right") {
  const Cap cap = cap_on(ball(), 20);
  const double mm = ball_mm * degree;
  // Along the great circle of the slide itself the brim moves by the whole arc.
  CHECK(*brim_heights(ball(), cap, {5, 0, 0}).nasion_mm == Approx(20 - 5 * mm).margin(0.02));
  CHECK(*brim_heights(ball(), cap, {5, 0, 0}).inion_mm == Approx(20 + 5 * mm).margin(0.02));
  CHECK(*brim_heights(ball(), cap, {0, 5, 0}).right_tragus_mm == Approx(20 - 5 * mm).margin(0.02));
  CHECK(*brim_heights(ball(), cap, {0, 5, 0}).left_tragus_mm == Approx(20 + 5 * mm).margin(0.02));
  // Turned about the upright, a point of the equator goes round by R sin.
  CHECK(arrow_beside_nasion_mm(ball(), cap, {0, 0, 5}) ==
        Approx(ball_mm * std::sin(5 * degree)).margin(0.01));
  CHECK(arrow_beside_nasion_mm(ball(), cap, {0, 0, -5}) ==
        Approx(-ball_mm * std::sin(5 * degree)).margin(0.01));
  CHECK(std::abs(arrow_beside_nasion_mm(ball(), cap, {5, 0, 0})) < 0.01);
  // A brim that has come down below a point has no height over it.
  CHECK_FALSE(brim_heights(ball(), cap, {15, 0, 0}).nasion_mm.has_value());
}

TEST_CASE("a point of the skin slips as the sphere turns, and back again") {
  const Cap cap = cap_on(ball(), 20);
  const CapSlip slip{4, -3, 8};
  for (const Vector3d& at : {Vector3d(-0.5, 0.5, 0.8), Vector3d(0.3, -0.7, 0.6), Vector3d(0, 0.1, 1)}) {
    const SurfacePoint p = ball().skin().closest(ball_mm * at.normalized());
    const Vector3d from = ball().skin().position(p);
    const SurfacePoint moved = slipped(ball(), cap.sphere, p, slip);
    CHECK((ball().skin().position(moved) - turned(slip) * from).norm() < 0.03);
  }
  // On any head the undone slip leads back, since the skin is met once on each ray.
  const Cap other = cap_on(lop(), 25);
  const SurfacePoint p = lop().skin().closest(lopsided({-0.5, 0.6, 0.7}));
  const SurfacePoint there = slipped(lop(), other.sphere, p, slip);
  CHECK((lop().skin().position(there) - lop().skin().position(p)).norm() > 5);
  CHECK((lop().skin().position(slipped(lop(), other.sphere, there, undone(slip))) - lop().skin().position(p))
            .norm() < 1e-6);
}

TEST_CASE("a slipped point stays on its own skin where another lies over or under it") {
  // A flap 7 mm outside of the ball and one 10 mm inside, as an ear or a sinus would be.
  const Vector3d way = Vector3d(-0.5, 0.5, 0.7).normalized();
  const Vector3d a = way.unitOrthogonal(), b = way.cross(a);
  std::vector<Vector3d> corners = ball().skin().vertices();
  std::vector<Triangle> triangles = ball().skin().triangles();
  for (const double radius : {ball_mm + 7, ball_mm - 10}) {
    const int first = static_cast<int>(corners.size());
    for (const auto& [x, y] :
         {std::pair(-20, -20), std::pair(20, -20), std::pair(20, 20), std::pair(-20, 20)})
      corners.push_back(radius * way + x * a + y * b);
    triangles.insert(triangles.end(), {{first, first + 1, first + 2}, {first, first + 2, first + 3}});
  }
  const Head layered(Surface(corners, triangles), ball().fiducials().at);
  const CapSphere sphere{Vector3d::Zero(), ball_mm};
  for (int i = 0; i < 40; ++i) {
    // From corners and from the middles of triangles, so that the skin is met both outward and inward.
    const Vector3d from = ball_mm * (way + 0.1 * std::sin(i) * a + 0.1 * std::cos(1.7 * i) * b).normalized();
    const SurfacePoint p = ball().skin().closest(from);
    const Vector3d at = layered.skin().position(slipped(layered, sphere, p, {0.3, 0.4, -0.2}));
    CHECK(at.norm() == Approx(ball_mm).margin(0.1));
  }
}

TEST_CASE("the brim runs level with the head's axes, as high over the nasion as the case says") {
  for (const double brim : {5.0, 20.0, 25.0, 60.0}) {
    const Cap cap = cap_on(lop(), brim);
    CHECK(*brim_heights(lop(), cap).nasion_mm == Approx(brim).margin(1e-6));
    for (const Vector3d& p : brim_line(lop(), cap))
      CHECK(std::abs((p - cap.front_at).dot(lop().axes().up)) < 1e-6);
  }
}

TEST_CASE("the sphere under a cap does not depend on where the skin has many small triangles") {
  // The left half cut into three times as many.
  const Head plain = lopsided_head(5);
  std::vector<Vector3d> corners = plain.skin().vertices();
  std::vector<Triangle> triangles;
  for (const Triangle& t : plain.skin().triangles()) {
    const Vector3d a = corners[static_cast<size_t>(t[0])], b = corners[static_cast<size_t>(t[1])],
                   c = corners[static_cast<size_t>(t[2])];
    if ((a + b + c).x() > -15) {
      triangles.push_back(t);
      continue;
    }
    // Three about the middle: no corner on an edge, so the other half is left alone.
    const int m = static_cast<int>(corners.size());
    corners.push_back((a + b + c) / 3);
    triangles.insert(triangles.end(), {{t[0], t[1], m}, {t[1], t[2], m}, {t[2], t[0], m}});
  }
  const Head uneven(Surface(corners, triangles), plain.fiducials().at);
  const CapSphere one = cap_on(plain, 20).sphere, other = cap_on(uneven, 20).sphere;
  CHECK((one.centre - other.centre).norm() < 0.15);
  CHECK(one.radius_mm == Approx(other.radius_mm).margin(0.15));
}

TEST_CASE("the stretches that measure the heights lead from the four points to the brim") {
  const Cap cap = cap_on(lop(), 20);
  BrimHeights heights = brim_heights(lop(), cap);
  const auto lines = height_lines(lop(), heights);
  const Fiducials& f = lop().fiducials().at;
  const std::array from{f.nasion, f.left_tragus, f.right_tragus, f.inion};
  const std::array mm{*heights.nasion_mm, *heights.left_tragus_mm, *heights.right_tragus_mm,
                      *heights.inion_mm};
  for (size_t i = 0; i < lines.size(); ++i) {
    CHECK((lines[i].front() - from[i]).norm() < 0.01);
    CHECK(std::abs(cap.brim.height(lines[i].back())) < 0.01);
    double along = 0;
    for (size_t k = 1; k < lines[i].size(); ++k) along += (lines[i][k] - lines[i][k - 1]).norm();
    CHECK(along == Approx(mm[i]).margin(0.05));
  }
  heights.inion_mm.reset();
  CHECK(height_lines(lop(), heights)[3].empty());
}

TEST_CASE("a mirrored slip on a head that is the same on both sides mirrors the heights") {
  const Cap cap = cap_on(ball(), 25);
  const CapSlip slip{3, 4, -6};
  const BrimHeights h = brim_heights(ball(), cap, slip), m = brim_heights(ball(), cap, mirrored(slip));
  CHECK(*h.left_tragus_mm == Approx(*m.right_tragus_mm).margin(0.02));
  CHECK(*h.nasion_mm == Approx(*m.nasion_mm).margin(0.02));
  CHECK(arrow_beside_nasion_mm(ball(), cap, slip) ==
        Approx(-arrow_beside_nasion_mm(ball(), cap, mirrored(slip))).margin(0.01));
}

// The heights are those of the closed form, not the program's own.
TEST_CASE("heights of the closed form give back the slip within 0.2 degrees and 0.2 mm", "[slow]") {
  const double brim = 20;
  const Cap cap = cap_on(ball(), brim);
  for (const CapSlip& slip : {CapSlip{}, CapSlip{5, 0, 0}, CapSlip{0, -6, 0}, CapSlip{3, -5, 6},
                              CapSlip{-6, 2, -9}, CapSlip{8, 7, 0}}) {
    BrimReadings read;
    read.heights = {height_on_ball({0, 1, 0}, slip, brim), height_on_ball({-1, 0, 0}, slip, brim),
                    height_on_ball({1, 0, 0}, slip, brim), height_on_ball({0, -1, 0}, slip, brim)};
    const Vector3d front =
        turned(slip) * Vector3d(0, ball_mm * std::cos(brim / ball_mm), ball_mm * std::sin(brim / ball_mm));
    const Vector3d tip = turned(slip) * Vector3d(0, ball_mm, 0);
    read.arrow_mm = (front + front.z() / (front.z() - tip.z()) * (tip - front)).x();
    const FoundSlip found = find_slip(ball(), cap, read);
    CHECK(found.forward_said);
    CHECK(found.side_said);
    CHECK(found.turn_said);
    CHECK(std::abs(found.slip.forward_deg - slip.forward_deg) < 0.05);
    CHECK(std::abs(found.slip.side_deg - slip.side_deg) < 0.05);
    CHECK(std::abs(found.slip.turn_deg - slip.turn_deg) < 0.1);
    CHECK(found.worst_mm < 0.1);
    const CapMove back = move_back(cap, found.slip);
    const CapSlip by = slip_by(cap, back);
    CHECK(by.forward_deg == Approx(-found.slip.forward_deg).margin(1e-9));
    CHECK(by.side_deg == Approx(-found.slip.side_deg).margin(1e-9));
    CHECK(std::abs(back.forward_mm + ball_mm * degree * slip.forward_deg) < 0.1);
    CHECK(std::abs(back.right_mm + ball_mm * degree * slip.side_deg) < 0.1);
    CHECK(std::abs(back.turn_right_deg + slip.turn_deg) < 0.1);
  }
}

TEST_CASE("two heights say what they can and no more") {
  const Cap cap = cap_on(ball(), 20);
  const CapSlip slip{4, -3, 6};
  const BrimHeights all = brim_heights(ball(), cap, slip);
  const auto from = [&](bool nasion, bool left, bool right, bool inion) {
    BrimReadings read;
    if (nasion) read.heights.nasion_mm = all.nasion_mm;
    if (left) read.heights.left_tragus_mm = all.left_tragus_mm;
    if (right) read.heights.right_tragus_mm = all.right_tragus_mm;
    if (inion) read.heights.inion_mm = all.inion_mm;
    return read;
  };
  // One reading of 1.4 mm on a sphere of 90 mm: 0.89 degrees; two that see the same, 0.63.
  const FoundSlip both = find_slip(ball(), cap, from(true, true, false, false));
  CHECK(both.forward_said);
  CHECK(both.side_said);
  CHECK_FALSE(both.turn_said);
  CHECK(both.sd.forward_deg == Approx(1.4 / (ball_mm * degree)).epsilon(0.05));
  CHECK(both.slip.turn_deg == Approx(0).margin(0.3));
  CHECK(both.sd.turn_deg == Approx(10).epsilon(0.02));

  const FoundSlip ends = find_slip(ball(), cap, from(true, false, false, true));
  CHECK(ends.forward_said);
  CHECK_FALSE(ends.side_said);
  CHECK_FALSE(ends.turn_said);
  CHECK(ends.sd.forward_deg == Approx(1.4 / (ball_mm * degree) / std::sqrt(2.0)).epsilon(0.05));

  const FoundSlip ears = find_slip(ball(), cap, from(false, true, true, false));
  CHECK_FALSE(ears.forward_said);
  CHECK(ears.side_said);

  // The arrow goes with the side as well: at the nasion's level, beside a tragus, it says the turn.
  BrimReadings with_arrow = from(true, true, false, false);
  with_arrow.arrow_mm = arrow_beside_nasion_mm(ball(), cap, slip);
  const FoundSlip three = find_slip(ball(), cap, with_arrow);
  CHECK(three.turn_said);
  CHECK(three.slip.turn_deg == Approx(slip.turn_deg).margin(0.05));
  CHECK(three.slip.side_deg == Approx(slip.side_deg).margin(0.05));
}

TEST_CASE("a reading that is off by its error puts the slip off by its own", "[slow]") {
  const Cap cap = cap_on(lop(), 20);
  BrimReadings read;
  read.heights = brim_heights(lop(), cap);
  read.arrow_mm = arrow_beside_nasion_mm(lop(), cap);
  const FoundSlip still = find_slip(lop(), cap, read);
  CHECK(std::abs(still.slip.forward_deg) + std::abs(still.slip.side_deg) + std::abs(still.slip.turn_deg) <
        1e-3);
  // The spread of slips from readings spoiled one at a time by one standard deviation, added as variances
  // (JCGM 100:2008, 5.1).
  Vector3d variance = Vector3d::Zero();
  const auto add = [&](std::optional<double> BrimHeights::*which) {
    BrimReadings spoiled = read;
    (which ? *(spoiled.heights.*which) : *spoiled.arrow_mm) += 1.4;
    const CapSlip s = find_slip(lop(), cap, spoiled).slip;
    variance += Vector3d(s.forward_deg, s.side_deg, s.turn_deg).cwiseAbs2();
  };
  for (const auto which : {&BrimHeights::nasion_mm, &BrimHeights::left_tragus_mm,
                           &BrimHeights::right_tragus_mm, &BrimHeights::inion_mm})
    add(which);
  add(nullptr);
  CHECK(still.sd.forward_deg == Approx(std::sqrt(variance[0])).epsilon(0.03));
  CHECK(still.sd.side_deg == Approx(std::sqrt(variance[1])).epsilon(0.03));
  CHECK(still.sd.turn_deg == Approx(std::sqrt(variance[2])).epsilon(0.03));
}

TEST_CASE("brim heights that make no sense are refused in a sentence") {
  const Cap cap = cap_on(ball(), 20);
  BrimReadings read;
  CHECK_THROWS_AS(find_slip(ball(), cap, read), GeometryError);
  read.heights.nasion_mm = 20;
  CHECK_THROWS_WITH(find_slip(ball(), cap, read), Catch::Contains("two or more"));
  read.heights.inion_mm = -3;
  CHECK_THROWS_WITH(find_slip(ball(), cap, read), Catch::Contains("inion"));
  read.heights.inion_mm = std::nan("");
  CHECK_THROWS_WITH(find_slip(ball(), cap, read), Catch::Contains("inion"));
  // Front and back 3 cm too high: no slip does that.
  read.heights = {50, {}, {}, 50};
  CHECK_THROWS_WITH(find_slip(ball(), cap, read), Catch::Contains("3 cm"));
  read.heights = {20, {}, {}, 20};
  read.arrow_mm = 80;
  CHECK_THROWS_WITH(find_slip(ball(), cap, read), Catch::Contains("arrow"));
  CHECK_THROWS_AS(cap_on(ball(), 0), GeometryError);
  CHECK_THROWS_AS(cap_on(ball(), 200), GeometryError);
  CHECK_THROWS_AS(cap_on(ball(), std::nan("")), GeometryError);
}

TEST_CASE("a cap that sits as it should leaves the pulse where it is planned, a slid one takes it along",
          "[slow]") {
  for (const Side side : {Side::left, Side::right}) {
    Case c;
    c.coil.model = flat_coil();
    c.side = side;
    c.cap.brim_over_nasion_mm = 25;
    const Plan plan = solve(ball(), c, TapeDistances::left_out);
    const Cap cap = cap_on(ball(), 25);
    BrimReadings read;
    read.heights = brim_heights(ball(), cap);
    const CapToday still = cap_today(ball(), c, plan, read);
    CHECK(still.sits);
    CHECK(still.check.pulse_off_mm < 0.05);

    // Both marks turn with the sphere, and so does the coil laid over them: the pulse goes where the turn
    // takes it, and the coil keeps its place among the marks.
    const CapSlip slip{4, 2, -5};
    read.heights = {height_on_ball({0, 1, 0}, slip, 25),
                    height_on_ball({-1, 0, 0}, slip, 25),
                    height_on_ball({1, 0, 0}, slip, 25),
                    {}};
    read.arrow_mm = arrow_beside_nasion_mm(ball(), cap, slip);
    const CapToday now = cap_today(ball(), c, plan, read);
    CHECK_FALSE(now.sits);
    const Vector3d wanted = turned(slip) * plan.treatment.pulse;
    CHECK((now.check.as_laid.pulse - wanted).norm() < 0.3);
    CHECK((now.check.as_laid.pulse - plan.treatment.pulse).norm() > 3);
    CHECK(now.back.forward_mm == Approx(-4 * ball_mm * degree).margin(0.1));
    CHECK(now.back.right_mm == Approx(-2 * ball_mm * degree).margin(0.1));
    CHECK(now.back.turn_right_deg == Approx(5).margin(0.1));
    // Each reading's 1.4 mm moves the pulse by about as much.
    CHECK(now.pulse_sd_mm > 1);
    CHECK(now.pulse_sd_mm < 4);
  }
}

TEST_CASE("the cloth of a cap ends at its brim, wherever that has slipped") {
  for (const CapSlip& slip : {CapSlip{}, CapSlip{4, -6, 8}}) {
    const Cap cap = cap_on(lop(), 25);
    const CapVeil veil = cap_veil(lop(), cap, slip);
    CHECK(veil.cloth.borders().size() == 1);
    // Each corner of the rim lies on the brim, but for how far the cloth is off the skin and the triangles'
    // sag; none lies outside.
    double worst = 0;
    for (const int v : veil.cloth.borders().front()) {
      double away = 1e9;
      for (size_t i = 1; i < veil.brim.size(); ++i) {
        const Vector3d along = veil.brim[i] - veil.brim[i - 1], to = veil.cloth.vertex(v) - veil.brim[i - 1];
        const double t = std::clamp(to.dot(along) / std::max(1e-12, along.squaredNorm()), 0.0, 1.0);
        away = std::min(away, (to - t * along).norm());
      }
      worst = std::max(worst, away);
    }
    CHECK(worst < 0.6);
    CHECK((veil.arrow.front() - lop().skin().position(slipped(lop(), cap.sphere, cap.front, slip))).norm() <
          0.01);
    CHECK((veil.arrow.back() -
           lop().skin().position(slipped(lop(), cap.sphere, lop().fiducials().nasion, slip)))
              .norm() < 0.01);
    CHECK((veil.brim.front() - veil.brim.back()).norm() < 1e-9);
  }
}

TEST_CASE("what the readings do not say of a cap is neither told nor done", "[slow]") {
  Case c;
  c.coil.model = flat_coil();
  const Plan plan = solve(lop(), c, TapeDistances::left_out);
  const Cap cap = cap_on(lop(), c.cap.brim_over_nasion_mm);
  const BrimHeights h = brim_heights(lop(), cap, {5, 0, 0});
  BrimReadings ends;
  ends.heights.nasion_mm = h.nasion_mm;
  ends.heights.inion_mm = h.inion_mm;
  // On a lopsided head the two ends see a little of the side as well, and the smallest slip that fits has
  // some.
  CHECK(std::abs(find_slip(lop(), cap, ends).slip.side_deg) > 0.02);
  const CapToday now = cap_today(lop(), c, plan, ends);
  CHECK(now.found.slip.side_deg == 0);
  CHECK(now.found.slip.turn_deg == 0);
  CHECK(now.back.right_mm == 0);
  CHECK(now.back.turn_right_deg == 0);
  CHECK(now.found.slip.forward_deg == Approx(5).margin(0.3));
  // The readings' own errors alone: unsaid parts would put ten degrees, over a centimetre, on top.
  CHECK(now.pulse_sd_mm < 2);
}
