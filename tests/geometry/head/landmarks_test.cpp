#include "geometry/head/landmarks.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "geometry/base/error.h"
#include "geometry/head/landmark_names.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

std::map<std::string, Vector3d> by_name(const std::vector<Landmark>& all) {
  std::map<std::string, Vector3d> map;
  for (const auto& l : all) map[l.name] = l.at;
  return map;
}

double arc_deg(const Vector3d& a, const Vector3d& b) {
  return std::atan2(a.cross(b).norm(), a.dot(b)) * 180 / M_PI;
}

/// The circle through three points of a sphere, walked from a over b: where `fraction` of the arc a-b is
/// reached.
Vector3d on_circle(const Vector3d& a, const Vector3d& over, const Vector3d& b,
                   double fraction_of_first_half) {
  const Vector3d n = (over - a).cross(b - a).normalized();
  const Vector3d centre = n * n.dot(a);
  const Vector3d u = a - centre, w = over - centre;
  double angle = std::atan2(n.dot(u.cross(w)), u.dot(w));
  if (angle < 0) angle += 2 * M_PI;
  return centre + Eigen::AngleAxisd(angle * fraction_of_first_half, n) * u;
}

}  // namespace

// Jasper 1958; Klem et al. 1999 (Electroencephalogr Clin Neurophysiol Suppl 52:3-6): 10 and 20 % steps are 18
// and 36 degrees of arc on the idealised sphere. Values computed from the definitions.
TEST_CASE("on the idealised sphere the 10-20 positions stand at their angles") {
  const Head head = sphere_head(90, 7);
  const auto at = by_name(landmarks(head, LandmarkSystem::ten_ten));
  const Vector3d top(0, 0, 90);
  const auto direction = [](double from_top_deg,
                            double azimuth_deg) {  // azimuth from front, positive to the right
    const double t = from_top_deg * M_PI / 180, a = azimuth_deg * M_PI / 180;
    return Vector3d(90 * std::sin(t) * std::sin(a), 90 * std::sin(t) * std::cos(a), 90 * std::cos(t));
  };
  const double within_mm = 0.03;
  CHECK((at.at("Cz") - top).norm() < within_mm);
  CHECK((at.at("Fz") - direction(36, 0)).norm() < within_mm);
  CHECK((at.at("Fpz") - direction(72, 0)).norm() < within_mm);
  CHECK((at.at("Pz") - direction(36, 180)).norm() < within_mm);
  CHECK((at.at("Oz") - direction(72, 180)).norm() < within_mm);
  CHECK((at.at("C3") - direction(36, -90)).norm() < within_mm);
  CHECK((at.at("C4") - direction(36, 90)).norm() < within_mm);
  CHECK((at.at("T7") - direction(72, -90)).norm() < within_mm);
  CHECK((at.at("T8") - direction(72, 90)).norm() < within_mm);
  // The side tapes lie on the circle 72 degrees from the top: equal arcs of azimuth, 18 degrees a step.
  CHECK((at.at("Fp1") - direction(72, -18)).norm() < within_mm);
  CHECK((at.at("AF7") - direction(72, -36)).norm() < within_mm);
  CHECK((at.at("F7") - direction(72, -54)).norm() < within_mm);
  CHECK((at.at("FT8") - direction(72, 72)).norm() < within_mm);
  CHECK((at.at("TP8") - direction(72, 108)).norm() < within_mm);
  CHECK((at.at("P8") - direction(72, 126)).norm() < within_mm);
  CHECK((at.at("O2") - direction(72, 162)).norm() < within_mm);
  // Rows: the circle through F7, Fz and F8, in quarters from F7 to Fz.
  const Vector3d f7 = direction(72, -54), fz = direction(36, 0), f8 = direction(72, 54);
  CHECK((at.at("F5") - on_circle(f7, fz, f8, 0.25)).norm() < within_mm);
  CHECK((at.at("F3") - on_circle(f7, fz, f8, 0.5)).norm() < within_mm);
  CHECK((at.at("F1") - on_circle(f7, fz, f8, 0.75)).norm() < within_mm);
  CHECK((at.at("F4") - on_circle(f8, fz, f7, 0.5)).norm() < within_mm);
  CHECK(arc_deg(at.at("Fz"), at.at("Cz")) == Approx(36).margin(0.05));
}

TEST_CASE("the construction comes closer to the sphere's with second order as the mesh is refined") {
  double previous = 0;
  for (const int level : {4, 5, 6}) {
    const auto at = by_name(landmarks(sphere_head(90, level), LandmarkSystem::ten_twenty));
    const Vector3d ideal(-90 * std::sin(M_PI / 5), 0, 90 * std::cos(M_PI / 5));
    const double off = (at.at("C3") - ideal).norm();
    if (previous > 0) CHECK(previous / off > 2.5);
    previous = off;
  }
  CHECK(previous < 0.1);
}

// Oostenveld and Praamstra 2001, Clin Neurophysiol 112:713-719: 345 positions; the names follow from their
// rule.
TEST_CASE("the systems have their numbers of positions, each within the next") {
  CHECK(landmark_labels(LandmarkSystem::ten_five).size() == 345);
  CHECK(landmark_labels(LandmarkSystem::ten_twenty).size() == 21 + 2);
  const auto& ten = landmark_labels(LandmarkSystem::ten_ten);
  CHECK(ten.size() == 61 + 2);
  const auto& five = landmark_labels(LandmarkSystem::ten_five);
  const std::set<std::string> all(five.begin(), five.end());
  CHECK(all.size() == 345);
  for (const auto& name : ten) CHECK(all.count(name) == 1);
  for (const auto& name : landmark_labels(LandmarkSystem::ten_twenty))
    CHECK(std::find(ten.begin(), ten.end(), name) != ten.end());
  for (const char* name :
       {"NFpz", "N1h", "NFp1h", "AFp5h", "FFC3h", "FTT7h", "CCP1", "TPP9h", "POO10h", "OI1h", "I2h"})
    CHECK(all.count(name) == 1);
}

TEST_CASE("labels are understood in any case, and the older temporal labels too") {
  CHECK(canonical_label("f3") == std::string("F3"));
  CHECK(canonical_label("FPZ") == std::string("Fpz"));
  CHECK(canonical_label("T3") == std::string("T7"));
  CHECK(canonical_label("t6") == std::string("P8"));
  CHECK_FALSE(canonical_label("F33"));
  CHECK_FALSE(canonical_label(""));
  const Head head = lopsided_head(5);
  const auto at = by_name(landmarks(head, LandmarkSystem::ten_five));
  for (const char* name : {"F3", "AF3", "NFpz", "POO4h", "Cz", "T9", "O1"})
    CHECK((landmark(head, name)->at - at.at(name)).norm() < 1e-9);
}

TEST_CASE("a label changes to its partner when the side changes, and only then") {
  CHECK(label_on_side("F3", Side::right) == "F4");
  CHECK(label_on_side("f4", Side::left) == "F3");
  CHECK(label_on_side("F3", Side::left) == "F3");
  CHECK(label_on_side("Fz", Side::right) == "Fz");
  CHECK(label_on_side("T5", Side::right) == "P8");
  CHECK(label_on_side("AFp9h", Side::right) == "AFp10h");
  CHECK(label_on_side("O1h", Side::right) == "O2h");
  CHECK(label_on_side("nonsense", Side::right) == "nonsense");
}

TEST_CASE("on a mirror-symmetric head left and right landmarks mirror each other") {
  const Head head(sphere(1, 6, {76, 97, 90}), {{0, 96, -12}, {0, -96, -12}, {-75, 0, -14}, {75, 0, -14}});
  const auto labels = landmark_labels(LandmarkSystem::ten_five);
  const auto at = by_name(landmarks(head, LandmarkSystem::ten_five));
  for (const auto& l : labels) {
    // The mirrored label: the number's partner, odd with the next even.
    const size_t digit = l.find_first_of("0123456789");
    if (digit == std::string::npos) {
      CHECK(std::abs(at.at(l).x()) <
            5e-3);  // as far off the midline as the fiducials, brought onto facets, are
      continue;
    }
    size_t used = 0;
    const int number = std::stoi(l.substr(digit), &used);
    if (number % 2 == 0) continue;
    const std::string partner = l.substr(0, digit) + std::to_string(number + 1) + l.substr(digit + used);
    const Vector3d mirrored(-at.at(partner).x(), at.at(partner).y(), at.at(partner).z());
    INFO(l << " and " << partner);
    CHECK((at.at(l) - mirrored).norm() < 0.01);
    CHECK(at.at(l).x() < 0);
  }
}

TEST_CASE("landmarks follow the head through any rigid motion, and scale with it") {
  const Head head = lopsided_head(5);
  Eigen::Affine3d motion = Eigen::Affine3d::Identity();
  motion.translate(Vector3d(310, -77, 45));
  motion.rotate(Eigen::AngleAxisd(2.1, Vector3d(1, -2, 0.5).normalized()));
  const Head posed = moved_head(head, motion);
  Eigen::Affine3d larger = motion;
  larger.scale(1.1);
  const Head scaled = moved_head(head, larger);
  const auto original = landmarks(head, LandmarkSystem::ten_five);
  const auto moved = landmarks(posed, LandmarkSystem::ten_five);
  const auto grown = landmarks(scaled, LandmarkSystem::ten_five);
  for (size_t i = 0; i < original.size(); ++i) {
    CHECK((motion * original[i].at - moved[i].at).norm() < 1e-4);
    CHECK((larger * original[i].at - grown[i].at).norm() < 1e-4);
  }
  CHECK(scaled.tapes().circumference_mm == Approx(1.1 * head.tapes().circumference_mm).epsilon(1e-7));
}
