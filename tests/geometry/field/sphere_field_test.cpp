#include "geometry/field/sphere_field.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "geometry/answers/gauss_legendre.h"
#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "tests/support/sentence.h"
#include "tests/support/windings.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

const Vector3d centre(7, -4, 11);

/// A coil of no symmetry beside a head of 85 mm about `centre`: askew, off its middle, one wing bent.
std::vector<Turn> odd_turns() {
  Coil coil = figure_of_eight();
  coil.windings[1].bend_deg = 20;
  coil.windings[1].turns = 4;
  const Vector3d out = Vector3d(0.5, 0.3, 0.8).normalized();
  CoilFrame frame;
  frame.normal = (out + Vector3d(0.1, -0.05, 0)).normalized();
  frame.front = frame.normal.cross(Vector3d(0.2, 0.9, 0.1)).normalized();
  frame.origin = centre + 96 * out;
  return turns_of(coil, frame);
}

/// Points within 70 mm of the centre, the same each time.
std::vector<Vector3d> points_inside(int count, double within_mm = 70) {
  std::mt19937 random(5);
  std::uniform_real_distribution<double> one(-1, 1);
  std::vector<Vector3d> points;
  while (static_cast<int>(points.size()) < count) {
    const Vector3d p(one(random), one(random), one(random));
    if (p.norm() < 1 && p.norm() > 0.05) points.emplace_back(centre + within_mm * p);
  }
  return points;
}

/// What the wires' change of current adds to the magnetic field, T/s for 1 A/s: Biot and Savart.
Vector3d magnetic(const std::vector<Turn>& turns, const Vector3d& at) {
  constexpr int pieces = 720;
  Vector3d sum(0, 0, 0);
  for (const Turn& t : turns)
    for (int i = 0; i < pieces; ++i) {
      const double a = 2 * pi * i / pieces;
      const Vector3d away = at - t.centre - t.radius_mm * (std::cos(a) * t.along + std::sin(a) * t.across);
      const Vector3d dl = 2 * pi / pieces * t.radius_mm * (std::cos(a) * t.across - std::sin(a) * t.along);
      sum += dl.cross(away) / std::pow(away.norm(), 3);
    }
  return 1e-7 * 1000 * sum;  // mm to m
}

/// By reciprocity (Sarvas 1987, equation 25): a unit dipole at r sends this much flux through a small loop of
/// unit area at R that faces n; the loop's field at r along the dipole is its opposite. V/m for 1 A/us and
/// mm2, both places from the centre, mm.
Vector3d field_of_loop(const Vector3d& r, const Vector3d& R, const Vector3d& n) {
  const Vector3d away = R - r;
  const double a = away.norm(), far = R.norm(), F = a * (far * a + far * far - r.dot(R));
  const Vector3d gradient =
      (a * a / far + away.dot(R) / a + 2 * a + 2 * far) * R - (a + 2 * far + away.dot(R) / a) * r;
  return -0.1 * (F * r.cross(n) - gradient.dot(n) * r.cross(R)) / (F * F);
}

/// The vector potential of a ring with 1 A/us, V/m, at a place so far across from its axis and along it, by
/// complete elliptic integrals (Jackson, Classical Electrodynamics, 5.37, memory); mu0 / pi is 4e-7. Over the
/// middle of a sphere it has no radial part, so with the sign turned it is the field.
double potential_of_ring(double radius, double across, double along) {
  const double k = std::sqrt(4 * radius * across / (std::pow(radius + across, 2) + along * along));
  return 4e-7 * 1e6 / k * std::sqrt(radius / across) *
         ((1 - k * k / 2) * std::comp_ellint_1(k) - std::comp_ellint_2(k));
}

}  // namespace

// Heller and van Hulsteyn 1992: a sphere's induced field has no radial part, whatever the coil.
TEST_CASE("the field has no radial part anywhere, and none at all at the centre") {
  const SphereField field(centre, odd_turns());
  for (const Vector3d& p : points_inside(200)) {
    const Vector3d e = field.at(p);
    CHECK(std::abs(e.dot((p - centre).normalized())) < 1e-12 * e.norm());
  }
  CHECK(field.at(centre).norm() == 0);
  CHECK(field.at(centre + Vector3d(1e-6, 0, 0)).norm() < 1e-6);
}

// Maxwell: no charge inside a head that conducts evenly, and curl E = -dB/dt with the wires' own B, by Biot
// and Savart. With the radial part these leave one field only.
TEST_CASE("the field has no divergence, and its curl is the wires' changing magnetic field") {
  const std::vector<Turn> turns = odd_turns();
  const SphereField field(centre, turns);
  constexpr double h = 0.05;  // mm
  for (const Vector3d& p : points_inside(60)) {
    Eigen::Matrix3d slope;  // column k: by the k-th coordinate, V/m for 1 A/us and mm
    for (int k = 0; k < 3; ++k)
      slope.col(k) = (field.at(p + h * Vector3d::Unit(k)) - field.at(p - h * Vector3d::Unit(k))) / (2 * h);
    const Vector3d curl(slope(2, 1) - slope(1, 2), slope(0, 2) - slope(2, 0), slope(1, 0) - slope(0, 1));
    const Vector3d expected = -1e6 / 1000 * magnetic(turns, p);  // 1 A/us; to mm
    CHECK(std::abs(slope.trace()) < 1e-6 * slope.norm());
    CHECK((curl - expected).norm() < 1e-5 * expected.norm());
  }
}

TEST_CASE("under a ring over the middle the field is the ring's vector potential") {
  for (const double radius : {15.0, 43.0, 70.0})
    for (const double height : {88.0, 95.0}) {
      Turn turn;
      turn.centre = centre + Vector3d(0, 0, height);
      turn.radius_mm = radius;
      const SphereField field(centre, {turn});
      for (const double across : {2.0, 20.0, 43.0, 60.0})
        for (const double up : {-30.0, 20.0, 60.0}) {
          const double A = potential_of_ring(radius, across, height - up);
          CAPTURE(radius, height, across, up, A);
          // To the right of the axis the current runs along +y, and what drives it back along -y.
          const Vector3d e = field.at(centre + Vector3d(across, 0, up));
          CHECK((e - Vector3d(0, -A, 0)).norm() < 1e-7 * A);
        }
    }
}

TEST_CASE("a small ring is a magnetic dipole, wherever it lies and however it is turned") {
  for (const Vector3d& n : {Vector3d(0, 0, 1), Vector3d(1, 0, 0), Vector3d(0.6, -0.48, 0.64)}) {
    Turn turn;
    turn.centre = centre + Vector3d(30, 20, 88);
    turn.along = n.unitOrthogonal();
    turn.across = n.cross(turn.along);
    turn.radius_mm = 0.02;
    const SphereField field(centre, {turn});
    for (const Vector3d& p : points_inside(40)) {
      const Vector3d expected = pi * 0.02 * 0.02 * field_of_loop(p - centre, turn.centre - centre, n);
      CHECK((field.at(p) - expected).norm() < 1e-5 * expected.norm());
    }
  }
}

// A turn is as good as the small loops that fill its disc (Sarvas 1987 for each), so many that their sum is
// right to ten digits where the wires are not nearer than 20 mm.
TEST_CASE("the field is that of all small loops of the turns' discs, within 1e-6 of the strongest") {
  const std::vector<Turn> turns = odd_turns();
  const SphereField field(centre, turns);
  const auto radii = gauss_legendre(40);
  constexpr int around = 160;
  double strongest = 0, worst = 0;
  for (const Vector3d& p : points_inside(30, 76)) {
    Vector3d sum(0, 0, 0);
    for (const Turn& t : turns)
      for (const auto& radius : radii)
        for (int i = 0; i < around; ++i) {
          const double a = 2 * pi * i / around, r = radius.at * t.radius_mm;
          const Vector3d at = t.centre + r * (std::cos(a) * t.along + std::sin(a) * t.across);
          sum += radius.weight * t.radius_mm * r * 2 * pi / around *
                 field_of_loop(p - centre, at - centre, t.along.cross(t.across));
        }
    strongest = std::max(strongest, sum.norm());
    worst = std::max(worst, (field.at(p) - sum).norm());
  }
  CHECK(worst < 1e-6 * strongest);
}

TEST_CASE("close to the wires more nodes are taken: the field is that of very many") {
  Turn turn;
  turn.centre = centre + Vector3d(0, 0, 93);
  turn.radius_mm = 40;
  const SphereField field(centre, {turn});
  for (const double below : {0.3, 1.0, 3.0, 8.0, 20.0}) {
    const double e = field.at(centre + Vector3d(40, 0, 93 - below)).norm();
    CAPTURE(below);
    CHECK(e == Approx(potential_of_ring(40, 40, below)).epsilon(1e-6));
  }
}

TEST_CASE("fields add up: two windings are the sum of each, and a turned current turns the field round") {
  const std::vector<Turn> all = odd_turns();
  const std::vector<Turn> first(all.begin(), all.begin() + 9), rest(all.begin() + 9, all.end());
  const SphereField both(centre, all), one(centre, first), other(centre, rest);
  std::vector<Turn> turned = first;
  for (Turn& t : turned) t.across = -t.across;
  const SphereField against(centre, turned);
  for (const Vector3d& p : points_inside(50)) {
    CHECK((both.at(p) - one.at(p) - other.at(p)).norm() < 1e-13);
    CHECK((one.at(p) + against.at(p)).norm() < 1e-7 * one.at(p).norm());
  }
}

TEST_CASE("a coil and head that are turned and moved together have their field turned with them") {
  Eigen::Affine3d motion(Eigen::AngleAxisd(1.1, Vector3d(0.3, -0.5, 0.8).normalized()));
  motion.translation() = Vector3d(40, -20, 15);
  std::vector<Turn> moved = odd_turns();
  for (Turn& t : moved) {
    t.centre = motion * t.centre;
    t.along = motion.linear() * t.along;
    t.across = motion.linear() * t.across;
  }
  const SphereField before(centre, odd_turns()), after(motion * centre, moved);
  for (const Vector3d& p : points_inside(50))
    CHECK((after.at(motion * p) - motion.linear() * before.at(p)).norm() < 1e-12);
}

TEST_CASE("points past the nearest wire and coils without windings are refused in a sentence") {
  const SphereField field(centre, odd_turns());
  CHECK(field.reach_mm() > 85);
  CHECK(is_sentence(
      sentence_of<GeometryError>([&] { (void)field.at(centre + Vector3d(field.reach_mm(), 0, 0)); })));
  CHECK(is_sentence(sentence_of<GeometryError>([&] { (void)field.at(Vector3d::Constant(NAN)); })));
  CHECK(is_sentence(sentence_of<GeometryError>([] { (void)SphereField(centre, {}); })));
}
