#include "models/generic/generic_head.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>

#include "geometry/head/vertex.h"
#include "geometry/tapes/tape.h"
#include "models/generic/half_mesh.h"

using namespace scalpmark;
using Eigen::Vector3d;

namespace {

const geometry::Surface& skin() {
  return models::generic_head().skin();
}

int faces() {
  return static_cast<int>(skin().triangles().size());
}

/// The smallest angle of a face, degrees.
double smallest_angle_deg(int f) {
  double smallest = 180;
  for (int k = 0; k < 3; ++k) {
    const Vector3d a = skin().corner(f, k);
    const Vector3d p = skin().corner(f, (k + 1) % 3) - a, q = skin().corner(f, (k + 2) % 3) - a;
    smallest = std::min(smallest, std::atan2(p.cross(q).norm(), p.dot(q)) * 180 / M_PI);
  }
  return smallest;
}

constexpr double hairline_mm = 75;

/// Over the whole head's part for coils and tapes: above the brow and clear of the ears.
bool on_scalp(const Vector3d& p) {
  return p.z() > 60;
}

}  // namespace

TEST_CASE("the generic head is one closed skin of well-shaped triangles") {
  CHECK(skin().is_closed());
  CHECK(faces() >= 60'000);
  CHECK(faces() <= 150'000);

  // A closed surface in one piece without handles: vertices - edges + faces = 2 (Euler).
  const long vertices = static_cast<long>(skin().vertices().size());
  CHECK(vertices - 3L * faces() / 2 + faces() == 2);

  // A vertex whose faces do not form one fan would be pinched.
  std::vector<int> corners(skin().vertices().size(), 0);
  for (const auto& t : skin().triangles())
    for (const int v : t) ++corners[static_cast<size_t>(v)];
  for (int v = 0; v < static_cast<int>(corners.size()); ++v)
    if (skin().faces_around(v).size() != static_cast<size_t>(corners[static_cast<size_t>(v)]))
      FAIL("vertex " << v << " is pinched");
  int slim = 0, folded = 0;
  double volume = 0;
  for (int f = 0; f < faces(); ++f) {
    if (smallest_angle_deg(f) <= 15) ++slim;
    for (int k = 0; k < 3; ++k)
      if (skin().face_normal(f).dot(skin().face_normal(skin().neighbour(f, k).face)) < 0) ++folded;
    volume += skin().corner(f, 0).dot(skin().corner(f, 1).cross(skin().corner(f, 2))) / 6;
  }
  CHECK(slim <= faces() / 100);
  CHECK(folded == 0);
  // Seen from outside, corners run counter-clockwise, so the volume is positive. An adult head and neck hold
  // about 4 to 6 litres (memory: segment mass 4 to 5 kg for the head alone).
  CHECK(volume > 3.5e6);
  CHECK(volume < 6.5e6);
}

TEST_CASE("the generic head's left mirrors its right") {
  struct Before {
    bool operator()(const Vector3d& a, const Vector3d& b) const {
      return std::lexicographical_compare(a.data(), a.data() + 3, b.data(), b.data() + 3);
    }
  };
  std::map<Vector3d, int, Before> places;
  for (int v = 0; v < static_cast<int>(skin().vertices().size()); ++v) places.emplace(skin().vertex(v), v);
  constexpr double within_mm = 1e-6;
  for (const Vector3d& p : skin().vertices()) {
    const auto twin = places.lower_bound(Vector3d(-p.x() - within_mm, -1e9, -1e9));
    bool found = false;
    for (auto i = twin; i != places.end() && i->first.x() <= -p.x() + within_mm && !found; ++i)
      found = (i->first - Vector3d(-p.x(), p.y(), p.z())).norm() <= within_mm;
    if (!found) FAIL("no twin for " << p.transpose());
  }
  const geometry::Head& head = models::generic_head();
  CHECK(std::abs(head.skin().position(head.vertex()).x()) < 1e-4);
}

TEST_CASE("the generic head's fiducials lie on its skin, where a finger finds them") {
  const geometry::Head& head = models::generic_head();
  const geometry::Fiducials& at = head.fiducials().at;
  for (const Vector3d& p : {at.nasion, at.inion, at.left_tragus, at.right_tragus}) {
    const auto nearest = skin().closest(p);
    CHECK((skin().position(nearest) - p).norm() < 1e-9);
  }
  // The frame: origin half way between the tragi, right is +x, the face looks along +y.
  CHECK((at.left_tragus + at.right_tragus).norm() < 1e-6);
  CHECK(at.right_tragus.x() > 0);
  CHECK(std::abs(at.right_tragus.y()) < 1e-3);
  CHECK(std::abs(at.right_tragus.z()) < 1e-3);
  CHECK(at.nasion.x() == Approx(0).margin(1e-9));
  CHECK(at.inion.x() == Approx(0).margin(1e-9));
  CHECK(at.nasion.y() > 0);

  // The nasion is the hollow between nose and forehead: higher and lower the midline lies further forward.
  const auto front_at = [](double z) {
    const auto hit = skin().ray_hit({0.01, 300, z}, -Vector3d::UnitY());
    REQUIRE(hit);
    return skin().position(hit->point).y();
  };
  CHECK(front_at(at.nasion.z() + 8) > at.nasion.y() + 1);
  CHECK(front_at(at.nasion.z() - 8) > at.nasion.y() + 1);
  // The tragus stands before a hollow: just behind it the skin lies deeper.
  const auto side = skin().ray_hit({300, -7, -1}, -Vector3d::UnitX());
  REQUIRE(side);
  CHECK(skin().position(side->point).x() < at.right_tragus.x() - 3);
}

TEST_CASE("no fiducial of the generic head lies in a crease") {
  const geometry::Head& head = models::generic_head();
  const auto& f = head.fiducials();
  for (const auto& p : {f.nasion, f.inion, f.left_tragus, f.right_tragus}) {
    const Vector3d at = skin().position(p), normal = skin().smooth_normal(p);
    // Facing within 3 mm of the point turns by less than 60 degrees.
    for (int face = 0; face < faces(); ++face)
      if ((skin().corner(face, 0) - at).norm() < 3) {
        if (skin().face_normal(face).dot(normal) < 0.5) FAIL("a crease at " << at.transpose());
      }
  }
}

TEST_CASE("the generic head has an adult's size, half way between men and women") {
  // Means and standard deviations of large anthropometric surveys (memory), mm, men and women: circumference
  // 574 (16), 561 (18); length 199 (7), 189 (7); breadth 154 (5), 147 (5); tragus over the vertex to tragus
  // 352 (13), 341 (14). Nasion over the vertex to inion about 360 (15). Here: half way between the means,
  // within the smaller of the two deviations.
  double front = -1e9, breadth = 0;
  Vector3d glabella = Vector3d::Zero();
  for (const Vector3d& p : skin().vertices()) {
    if (p.x() == 0 && p.z() > 40 && p.z() < 65 && p.y() > front) {
      front = p.y();
      glabella = p;
    }
    if (p.z() > 32) breadth = std::max(breadth, 2 * p.x());  // calipers above the ears
  }
  double length = 0;
  for (const Vector3d& p : skin().vertices())
    if (p.x() == 0 && p.z() > -20) length = std::max(length, (p - glabella).norm());
  CHECK(length == Approx(194).margin(7));
  CHECK(breadth == Approx(150.5).margin(5));

  const geometry::TapeMeasures& tapes = models::generic_head().tapes();
  CHECK(tapes.circumference_mm == Approx(567.5).margin(16));
  CHECK(tapes.tragus_tragus_mm == Approx(346.5).margin(13));
  CHECK(tapes.nasion_inion_mm == Approx(360).margin(15));
}

TEST_CASE("the generic head's nose, face and ears are as long as an adult's") {
  // Farkas 1994, Anthropometry of the Head and Face (memory), mm, men and women: nasion to under the nose
  // 54.8 (3.3), 50.6 (3.1); nasion to under the chin 124.7 (5.7), 111.4 (4.8); ear from top to lobe 62.7
  // (3.6), 59.5 (3.3). Half way between the means, within the smaller deviation.
  const auto front_at = [](double z) {
    const auto hit = skin().ray_hit({0.01, 300, z}, -Vector3d::UnitY());
    REQUIRE(hit);
    return skin().position(hit->point).y();
  };
  const Vector3d nasion = models::generic_head().fiducials().at.nasion;
  // Under the nose: where the midline, going down from the tip, turns from running back to running down.
  double under_nose = 0;
  while (front_at(under_nose - 0.5) < front_at(under_nose) - 0.5 || front_at(under_nose) > 105)
    under_nose -= 0.5;
  // Under the chin: the last place before the line from the front passes beneath it to the neck.
  double chin = -60;
  while (front_at(chin) > 70) chin -= 0.25;
  CHECK(nasion.z() - under_nose == Approx(52.7).margin(3.1));
  CHECK(nasion.z() - chin == Approx(118).margin(4.8));

  // The ear stands out beyond 78 mm from the midline; its lobe hangs free below, nearer to the jaw.
  double top = -1e9, lobe = 1e9;
  for (const Vector3d& p : skin().vertices()) {
    if (p.x() > 78) top = std::max(top, p.z());
    if (p.x() > 68.5 && p.z() < -10 && p.y() > -25 && p.y() < 0) lobe = std::min(lobe, p.z());
  }
  CHECK(top - lobe == Approx(61.1).margin(3.3));
}

TEST_CASE("the generic head is smooth and round where coil and tapes lie") {
  double sharpest_deg = 0;
  int hollow = 0, edges = 0;
  for (int f = 0; f < faces(); ++f)
    for (int k = 0; k < 3; ++k) {
      if (!on_scalp(skin().corner(f, k)) || !on_scalp(skin().corner(f, (k + 1) % 3))) continue;
      const int other = skin().neighbour(f, k).face;
      const Vector3d n = skin().face_normal(f), m = skin().face_normal(other);
      const Vector3d e = skin().corner(f, (k + 1) % 3) - skin().corner(f, k);
      const double turn_deg = std::atan2(n.cross(m).dot(e.normalized()), n.dot(m)) * 180 / M_PI;
      sharpest_deg = std::max(sharpest_deg, std::abs(turn_deg));
      ++edges;
      // Between brow and forehead a head is a little hollow; from the hairline's height up it is round.
      if (turn_deg < -1 && skin().corner(f, k).z() > hairline_mm) ++hollow;
    }
  REQUIRE(edges > 10'000);
  // Triangles of 2.5 mm on a sphere of 50 mm, the tightest curve of a scalp, meet at up to 3 degrees.
  CHECK(sharpest_deg < 6);
  CHECK(hollow == 0);
}

TEST_CASE("the generic head is always the same") {
  const geometry::Surface again = models::generic::mirrored(models::generic::compiled_in_half());
  CHECK(again.vertices() == skin().vertices());
  CHECK(again.triangles() == skin().triangles());
  CHECK(&models::generic_head() == &models::generic_head());
}
