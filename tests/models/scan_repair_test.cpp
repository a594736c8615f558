#include "models/scan_repair.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <sstream>

#include "geometry/head.h"
#include "models/error.h"
#include "models/generic_head.h"
#include "models/mesh_file.h"
#include "tests/support/mesh_writers.h"
#include "tests/support/shapes.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using Eigen::Vector3d;
using geometry::Surface;
using geometry::Triangle;
using tests::TemporaryFolder;

namespace {

/// The generic head on shoulders: its base taken off, and the neck's rim drawn out in rings to a chest 440 mm
/// wide.
Surface head_on_shoulders() {
  const Surface& head = models::generic_head().skin();
  double lowest = 1e9;
  for (const auto& v : head.vertices()) lowest = std::min(lowest, v.z());
  std::vector<Triangle> open;
  for (const auto& t : head.triangles()) {
    bool base = true;
    for (const int v : t) base = base && head.vertex(v).z() < lowest + 6;
    if (!base) open.push_back(t);
  }
  const Surface cut(head.vertices(), open);
  const std::vector<int>* rim = nullptr;
  for (const auto& loop : cut.borders())
    if (rim == nullptr || loop.size() > rim->size()) rim = &loop;
  std::vector<Vector3d> vertices = cut.vertices();
  // Which way the skin runs along the rim, seen from its triangles.
  bool along = false;
  for (const auto& t : open)
    for (size_t k = 0; k < 3; ++k) along = along || (t[k] == (*rim)[0] && t[(k + 1) % 3] == (*rim)[1]);
  Vector3d middle = Vector3d::Zero();
  for (const int v : *rim) middle += cut.vertex(v) / static_cast<double>(rim->size());
  std::vector<int> last = *rim;
  for (int ring = 1; ring <= 30; ++ring) {
    const double out = std::min(1.0, ring / 15.0), down = 6.0 * ring;
    std::vector<int> now;
    for (const int v : *rim) {
      const Vector3d off = cut.vertex(v) - middle;
      const double a = std::atan2(off.y(), off.x());
      const Vector3d chest(220 * std::cos(a), 120 * std::sin(a), 0);
      now.push_back(static_cast<int>(vertices.size()));
      vertices.push_back(middle + (1 - out) * off + out * chest - Vector3d(0, 0, down));
    }
    for (size_t i = 0; i < now.size(); ++i) {
      const size_t j = (i + 1) % now.size();
      const int a = last[i], b = last[j], c = now[i], d = now[j];
      if (along) {
        open.push_back({b, a, c});
        open.push_back({b, c, d});
      } else {
        open.push_back({a, b, c});
        open.push_back({c, b, d});
      }
    }
    last = now;
  }
  return {std::move(vertices), std::move(open)};
}

/// Each triangle cut into four, corners shifted by up to `grain_mm`.
Surface finer(const Surface& skin, double grain_mm) {
  std::vector<Vector3d> vertices = skin.vertices();
  std::vector<Triangle> triangles;
  std::map<std::pair<int, int>, int> middles;
  const auto middle = [&](int a, int b) {
    const auto [found, added] = middles.emplace(std::minmax(a, b), static_cast<int>(vertices.size()));
    if (added) {
      const double phase = static_cast<double>(vertices.size());
      vertices.push_back(0.5 * (skin.vertex(a) + skin.vertex(b)) +
                         grain_mm * Vector3d(std::sin(phase), std::sin(2.7 * phase), std::sin(4.3 * phase)));
    }
    return found->second;
  };
  for (const auto& [a, b, c] : skin.triangles()) {
    const int ab = middle(a, b), bc = middle(b, c), ca = middle(c, a);
    for (const Triangle& t : {Triangle{a, ab, ca}, {ab, b, bc}, {bc, c, ca}, {ab, bc, ca}})
      triangles.push_back(t);
  }
  return {std::move(vertices), std::move(triangles)};
}

}  // namespace

TEST_CASE("shoulders are cut off below the neck, also of a scan that lies on its back, and it is said") {
  const Surface whole = head_on_shoulders();
  const geometry::Head& generic = models::generic_head();
  for (const double lying_deg : {0.0, -90.0}) {
    const Eigen::AngleAxisd lying(lying_deg * M_PI / 180, Vector3d::UnitX());
    std::vector<Vector3d> turned = whole.vertices();
    for (auto& v : turned) v = lying * v;
    std::vector<std::string> notes;
    const Surface cut = models::cut_shoulders(whole.moved(std::move(turned)), notes);
    REQUIRE(notes.size() == 1);
    CHECK(notes.front() == "Cut the shoulders off below the neck.");
    double lowest = 1e9, broadest = 0;
    for (const auto& v : cut.vertices()) {
      const Vector3d upright = lying.inverse() * v;
      lowest = std::min(lowest, upright.z());
      broadest = std::max(broadest, std::abs(upright.x()));
    }
    CHECK(lowest > -150);
    CHECK(lowest < -100);
    CHECK(broadest < 110);
    // The head is all there: its points lie on the skin.
    for (const Vector3d& p : {generic.fiducials().at.nasion, generic.fiducials().at.left_tragus})
      CHECK((cut.position(cut.closest(lying * p)) - lying * p).norm() < 0.01);
  }
}

TEST_CASE("a head without shoulders is not cut") {
  std::vector<std::string> notes;
  const Surface& skin = models::generic_head().skin();
  CHECK(models::cut_shoulders(skin, notes).triangles().size() == skin.triangles().size());
  CHECK(notes.empty());
}

TEST_CASE("small holes are closed and said, large ones stay open") {
  const Surface ball = tests::sphere(90, 6);
  std::vector<Triangle> open;
  for (int f = 0; f < static_cast<int>(ball.triangles().size()); ++f) {
    const Vector3d middle = ball.position({f});
    const bool small = (middle - Vector3d(0, 90, 0)).norm() < 4 || (middle - Vector3d(90, 0, 0)).norm() < 3;
    const bool neck = middle.z() < -70;
    if (!small && !neck) open.push_back(ball.triangle(f));
  }
  std::vector<std::string> notes;
  const Surface closed = models::close_small_holes(Surface(ball.vertices(), open), 60, notes);
  REQUIRE(closed.borders().size() == 1);
  REQUIRE(notes.size() == 1);
  CHECK(notes.front().starts_with("Closed 2 small holes, up to "));
  // The patch lies where the skin was, facing outward.
  const auto patch = closed.closest({0, 95, 0});
  CHECK(closed.position(patch).y() == Approx(90).margin(0.6));
  CHECK(closed.face_normal(patch.face).y() > 0.9);
}

TEST_CASE("a skin of too many triangles is thinned, moves by less than 0.3 mm, and both are said") {
  const Surface& generic = models::generic_head().skin();
  const Surface fine = finer(generic, 0.03);
  REQUIRE(fine.triangles().size() > 250'000);
  std::vector<std::string> notes;
  const Surface thin = models::thin_to_size(fine, "scan.ply", notes);
  CHECK(thin.triangles().size() <= 250'000);
  CHECK(thin.is_closed());
  REQUIRE(notes.size() == 1);
  CHECK(notes.front().find("Thinned the skin from " + std::to_string(fine.triangles().size())) == 0);
  double farthest = 0;
  for (size_t i = 3; i < fine.vertices().size(); i += 41)
    farthest =
        std::max(farthest, (fine.vertices()[i] - thin.position(thin.closest(fine.vertices()[i]))).norm());
  CHECK(farthest < 0.3);
  CHECK(models::thin_to_size(generic, "scan.ply", notes).triangles().size() == generic.triangles().size());
  CHECK(notes.size() == 1);
}

TEST_CASE("a coloured scan in inches, in many shells, with a hole, is read as a head in mm") {
  const TemporaryFolder folder;
  tests::RawMesh scan(tests::sphere(100, 5, {0.75, 0.95, 0.85}));
  std::erase_if(scan.triangles, [&](const Triangle& t) {
    return (scan.vertices[static_cast<size_t>(t[0])] - Vector3d(0, 95, 0)).norm() < 5;
  });
  for (int i = 0; i < 12; ++i) {
    tests::RawMesh crumb(tests::sphere(4 + i, 2));
    for (auto& v : crumb.vertices) v += Vector3d(20 * i - 120, -60, 110);
    scan.add(crumb);
  }
  std::ostringstream ply;
  ply.precision(9);
  ply << "ply\nformat ascii 1.0\nelement vertex " << scan.vertices.size()
      << "\nproperty float x\nproperty float y\nproperty float z\nproperty uchar red\nproperty uchar green\n"
         "property uchar blue\nelement face "
      << scan.triangles.size() << "\nproperty list uchar int vertex_indices\nend_header\n";
  for (const auto& v : scan.vertices)
    ply << v.x() / 25.4 << ' ' << v.y() / 25.4 << ' ' << v.z() / 25.4 << " 200 160 140\n";
  for (const auto& [a, b, c] : scan.triangles) ply << "3 " << a << ' ' << b << ' ' << c << '\n';
  const auto file = tests::write_bytes(folder / "scan.ply", ply.str());
  for (const std::optional<models::Unit> unit :
       {std::optional<models::Unit>(), std::optional(models::Unit::inch)}) {
    const auto read = models::read_mesh(file, unit);
    CHECK(read.skin.is_closed());
    double tallest = 0;
    for (const auto& v : read.skin.vertices()) tallest = std::max(tallest, v.y());
    CHECK(tallest == Approx(95).margin(0.5));
    std::string all;
    for (const auto& n : read.notes) all += n + "\n";
    CHECK((all.find("inches") != std::string::npos) == !unit);
    CHECK(all.find("Kept the largest of 13 pieces") != std::string::npos);
    CHECK(all.find("Closed a small hole") != std::string::npos);
  }
}
