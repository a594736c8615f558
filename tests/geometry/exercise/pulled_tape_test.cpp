#include "geometry/exercise/pulled_tape.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/head/landmarks.h"
#include "geometry/head/vertex.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"
#include "tests/support/sentence.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

Vector3d on_ball(double x, double y, double z) {
  return 90 * Vector3d(x, y, z).normalized();
}

}  // namespace

TEST_CASE("a tape pulled between two points of a sphere is the great circle's arc") {
  for (const auto& [a, b] : {std::pair(on_ball(0, 0, 1), on_ball(-0.5, 0.1, 0.8)),
                             std::pair(on_ball(0.3, 0.7, 0.6), on_ball(0.35, 0.65, 0.62)),
                             std::pair(on_ball(-0.6, 0.1, 0.7), on_ball(-0.5, 0.6, 0.5))}) {
    const PulledTape tape = pull_tape(ball(), {a, b});
    CHECK(tape.length_mm == Approx(arc_mm(a, b)).margin(0.1));
    CHECK((tape.line.front() - a).norm() < 0.1);
    CHECK((tape.line.back() - b).norm() < 0.1);
  }
}

TEST_CASE("from nasion to inion and from ear to ear a tape goes over the top, without being led there") {
  const Fiducials& f = ball().fiducials().at;
  for (const auto& [a, b] : {std::pair(f.nasion, f.inion), std::pair(f.left_tragus, f.right_tragus)}) {
    const PulledTape tape = pull_tape(ball(), {a, b});
    CHECK(tape.length_mm == Approx(90 * pi).margin(0.2));
    CHECK((tape.at_mm(tape.length_mm / 2) - Vector3d(0, 0, 90)).norm() < 0.5);
  }
  const Head lopsided = lopsided_head(5);
  const PulledTape midline =
      pull_tape(lopsided, {lopsided.fiducials().at.nasion, lopsided.fiducials().at.inion});
  CHECK(midline.length_mm == Approx(lopsided.tapes().nasion_inion_mm).epsilon(0.03));
}

TEST_CASE("held over the vertex, and around the head at four points, it measures what a plan measures") {
  const Head head = lopsided_head(5);
  const Fiducials& f = head.fiducials().at;
  const Vector3d vertex = head.skin().position(head.vertex());
  CHECK(pull_tape(head, {f.nasion, vertex, f.inion}).length_mm ==
        Approx(head.tapes().nasion_inion_mm).margin(0.02));
  CHECK(pull_tape(head, {f.left_tragus, vertex, f.right_tragus}).length_mm ==
        Approx(head.tapes().tragus_tragus_mm).margin(0.02));
  const auto at = [&](const char* label) { return landmark(head, label)->at; };
  CHECK(pull_tape(head, {at("Fpz"), at("T7"), at("Oz"), at("T8")}, true).length_mm ==
        Approx(head.tapes().circumference_mm).margin(0.02));
}

TEST_CASE("places along a tape's scale lie as far along it as they say") {
  const Vector3d a = on_ball(0, 0, 1), b = on_ball(-0.8, 0, 0.6);
  const PulledTape tape = pull_tape(ball(), {a, b});
  CHECK(arc_mm(a, tape.at_mm(50)) == Approx(50).margin(0.1));
  CHECK((tape.at_mm(-5) - tape.line.front()).norm() < 1e-9);
  CHECK((tape.at_mm(1e6) - tape.line.back()).norm() < 1e-9);
}

TEST_CASE("a tape bridges a hollow as a taut one does") {
  // A sphere with a dent under the tape's middle: the tape's length is hardly more than the great circle's.
  const Surface whole = sphere(90, 6);
  std::vector<Vector3d> moved = whole.vertices();
  for (Vector3d& v : moved) {
    const double from_top = (v - Vector3d(0, 0, 90)).norm();
    if (from_top < 20) v -= 6 * (0.5 + 0.5 * std::cos(pi * from_top / 20)) * v.normalized();
  }
  const Head dented(whole.moved(moved), {{0, 90, 0}, {0, -90, 0}, {-90, 0, 0}, {90, 0, 0}});
  const PulledTape tape = pull_tape(dented, {on_ball(-0.5, 0, 0.8), on_ball(0.5, 0, 0.8)});
  double lowest = 1e9;
  for (const Vector3d& at : tape.line) lowest = std::min(lowest, at.z());
  // The skin under it goes down to 84 mm; the tape's chord over the dent stays above 87.
  CHECK(tape.at_mm(tape.length_mm / 2).z() > 87);
  CHECK(tape.length_mm <= arc_mm(on_ball(-0.5, 0, 0.8), on_ball(0.5, 0, 0.8)) + 0.05);
}

TEST_CASE("a tape of three centimetres is as curved as the skin under it") {
  const Vector3d a = on_ball(-0.3, 0.2, 0.9), b = on_ball(-0.55, 0.3, 0.8);
  const double chord = (a - b).norm();
  REQUIRE(chord < 35);
  CHECK(arc_mm(a, b) - chord > 0.08);
  CHECK(pull_tape(ball(), {a, b}).length_mm == Approx(arc_mm(a, b)).margin(0.04));
}

TEST_CASE("a tape held at one point, or twice at the same, is refused") {
  const auto refused = [](const std::vector<Vector3d>& points) {
    return sentence_of<GeometryError>([&] { (void)pull_tape(ball(), points); });
  };
  CHECK(is_sentence(refused({})));
  CHECK(is_sentence(refused({on_ball(0, 0, 1)})));
  CHECK(is_sentence(refused({on_ball(0, 0, 1), on_ball(0, 0, 1)})));
}

TEST_CASE("a tape of millimetres on one flat triangle is straight, and no failure") {
  const Vector3d a = on_ball(0.2, 0.3, 0.9), b = a + Vector3d(0.4, 0.2, -0.15);
  CHECK(pull_tape(ball(), {a, b}).length_mm == Approx((a - b).norm()).epsilon(0.1));
}
