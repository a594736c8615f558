#include "models/meshes/scan_repair.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <sstream>

#include "geometry/base/text.h"
#include "geometry/head/guess_fiducials.h"
#include "geometry/head/head.h"
#include "geometry/plan/solve.h"
#include "models/files/error.h"
#include "models/generic/generic_head.h"
#include "models/meshes/mesh_file.h"
#include "tests/support/coils.h"
#include "tests/support/finer.h"
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

/// As scanners write it: binary, every corner with a normal and a colour.
std::string coloured_ply(const tests::RawMesh& scan) {
  std::string bytes =
      "ply\nformat binary_little_endian 1.0\nelement vertex " + std::to_string(scan.vertices.size()) +
      "\nproperty float x\nproperty float y\nproperty float z\nproperty float nx\nproperty float ny\n"
      "property float nz\nproperty uchar red\nproperty uchar green\nproperty uchar blue\n"
      "property uchar alpha\nelement face " +
      std::to_string(scan.triangles.size()) + "\nproperty list uchar int vertex_indices\nend_header\n";
  for (const auto& v : scan.vertices) {
    for (int k = 0; k < 3; ++k) tests::put_little_endian(bytes, static_cast<float>(v[k]));
    for (const float n : {0.0F, 0.0F, 1.0F}) tests::put_little_endian(bytes, n);
    for (const int c : {200, 160, 140, 255}) tests::put_little_endian(bytes, static_cast<std::uint8_t>(c));
  }
  for (const auto& t : scan.triangles) {
    tests::put_little_endian(bytes, std::uint8_t{3});
    for (const int corner : t) tests::put_little_endian(bytes, static_cast<std::int32_t>(corner));
  }
  return bytes;
}

/// The generic head with hair: its scalp, from the hairline to the nape, raised by `thick_mm` and roughened
/// by tufts of about a centimetre, `tufts_mm` up and down.
Surface with_hair(double thick_mm, double tufts_mm) {
  const Surface& bald = models::generic_head().skin();
  const auto rising = [](double from, double to, double x) {
    const double t = std::clamp((x - from) / (to - from), 0.0, 1.0);
    return t * t * (3 - 2 * t);
  };
  std::vector<Vector3d> vertices = bald.vertices();
  for (size_t v = 0; v < vertices.size(); ++v) {
    const Vector3d p = vertices[v];
    // Above a plane that rises from the nape over the ears to the forehead.
    const double hair = rising(0, 20, p.z() - 42 - 0.45 * p.y());
    const double tuft = std::sin(0.6 * p.x()) * std::sin(0.6 * p.y() + 1) * std::sin(0.6 * p.z() + 2);
    vertices[v] += hair * (thick_mm + 2 * tufts_mm * tuft) * bald.vertex_normals()[v];
  }
  return bald.moved(std::move(vertices));
}

std::string all_of(const std::vector<geometry::Message>& notes) {
  std::string all;
  for (const auto& n : english(notes)) all += n + "\n";
  return all;
}

}  // namespace

TEST_CASE("shoulders are cut off below the neck, also of a scan that lies on its back, and it is said",
          "[slow]") {
  const Surface whole = head_on_shoulders();
  const geometry::Head& generic = models::generic_head();
  for (const double lying_deg : {0.0, -90.0}) {
    const Eigen::AngleAxisd lying(lying_deg * M_PI / 180, Vector3d::UnitX());
    std::vector<Vector3d> turned = whole.vertices();
    for (auto& v : turned) v = lying * v;
    std::vector<geometry::Message> notes;
    const Surface cut = models::cut_shoulders(whole.moved(std::move(turned)), notes);
    REQUIRE(notes.size() == 1);
    CHECK(english(notes.front()) == "Cut the shoulders off below the neck.");
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
  std::vector<geometry::Message> notes;
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
  std::vector<geometry::Message> notes;
  const Surface closed = models::close_small_holes(Surface(ball.vertices(), open), 60, notes);
  REQUIRE(closed.borders().size() == 1);
  REQUIRE(notes.size() == 1);
  CHECK(english(notes.front()).starts_with("Closed 2 small holes, up to "));
  // The patch lies where the skin was, facing outward.
  const auto patch = closed.closest({0, 95, 0});
  CHECK(closed.position(patch).y() == Approx(90).margin(0.6));
  CHECK(closed.face_normal(patch.face).y() > 0.9);
}

TEST_CASE("a skin of too many triangles is thinned, moves by less than 0.3 mm, and both are said", "[slow]") {
  const Surface& generic = models::generic_head().skin();
  const Surface fine = tests::finer(generic, 2, 0.03);
  REQUIRE(fine.triangles().size() > 250'000);
  std::vector<geometry::Message> notes;
  const Surface thin = models::thin_to_size(fine, "scan.ply", notes);
  CHECK(thin.triangles().size() <= 250'000);
  CHECK(thin.is_closed());
  REQUIRE(notes.size() == 1);
  CHECK(english(notes.front()).find("Thinned the skin from " + std::to_string(fine.triangles().size())) == 0);
  // Every corner, and what is said of them.
  double farthest = 0;
  for (const Vector3d& p : fine.vertices())
    farthest = std::max(farthest, (p - thin.position(thin.closest(p))).norm());
  CHECK(farthest < 0.3);
  const std::string said = "more than " + geometry::to_text(farthest, 2) + " mm";
  CHECK(english(notes.front()).find(said) != std::string::npos);
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
    for (const auto& n : english(read.notes)) all += n + "\n";
    CHECK((all.find("inches") != std::string::npos) == !unit);
    CHECK(all.find("Kept the largest of 13 pieces") != std::string::npos);
    CHECK(all.find("Closed a small hole") != std::string::npos);
  }
}

TEST_CASE("a scan with grain is thinned up to its open neck, whose rim stays as it is", "[slow]") {
  const Surface& generic = models::generic_head().skin();
  std::vector<Triangle> open;
  for (const auto& t : generic.triangles())
    if (std::any_of(t.begin(), t.end(), [&](int v) { return generic.vertex(v).z() > -124; }))
      open.push_back(t);
  const Surface fine = tests::finer(Surface(generic.vertices(), open), 2, 0.08);
  REQUIRE(!fine.is_closed());
  std::vector<geometry::Message> notes;
  const Surface thin = models::thin_to_size(fine, "scan.ply", notes);
  CHECK(thin.triangles().size() <= 150'000);
  REQUIRE(thin.borders().size() == fine.borders().size());
  CHECK(thin.borders()[0].size() == fine.borders()[0].size());
  CHECK(all_of(notes).find("Thinned the skin") == 0);
}

TEST_CASE("a bust from a scanner, in inches or metres, tilted, coloured, in 200 shells, is read as a head",
          "[slow]") {
  const TemporaryFolder folder;
  const Eigen::Affine3d tilt =
      Eigen::Translation3d(900, -300, 150) * Eigen::AngleAxisd(0.6, Vector3d(1, 0.4, -0.2).normalized());
  tests::RawMesh scan(head_on_shoulders());
  for (auto& v : scan.vertices) v = tilt * v;
  const size_t own = scan.vertices.size();
  for (int i = 0; i < 199; ++i) {
    tests::RawMesh crumb(tests::sphere(1 + 0.02 * i, 1));
    for (auto& v : crumb.vertices)
      v += scan.vertices[static_cast<size_t>(i) * 97 % own] + Vector3d(12, 5, 30);
    scan.add(crumb);
  }
  const auto& points = models::generic_head().fiducials().at;
  for (const auto& [mm, name, unit] :
       {std::tuple(25.4, "inches", models::Unit::inch), std::tuple(1000.0, "metres", models::Unit::metre)}) {
    CAPTURE(name);
    const auto file = tests::write_bytes(folder / "bust.ply", coloured_ply(scan.times(1 / mm)));
    for (const std::optional<models::Unit> given : {std::optional<models::Unit>(), std::optional(unit)}) {
      const auto read = models::read_mesh(file, given);
      const std::string said = all_of(read.notes);
      CAPTURE(said);
      if (!given) CHECK(said.find("Took the numbers in the file for " + std::string(name)) == 0);
      CHECK(said.find("Kept the largest of 200 pieces") != std::string::npos);
      CHECK(said.find("Cut the shoulders off below the neck.") != std::string::npos);
      for (const auto& note : english(read.notes)) CHECK(note.ends_with('.'));
      for (const Vector3d& p : {points.nasion, points.inion, points.left_tragus, points.right_tragus})
        CHECK((read.skin.position(read.skin.closest(tilt * p)) - tilt * p).norm() < 0.05);
      const auto guess = geometry::guess_fiducials(models::generic_head(), read.skin);
      CHECK((guess.at.nasion - tilt * points.nasion).norm() < 15);
      CHECK((guess.at.inion - tilt * points.inion).norm() < 15);
    }
  }
}

TEST_CASE("a bare head in centimetres is not taken for one in inches", "[slow]") {
  const TemporaryFolder folder;
  // Cut off below the chin: 23 units long in centimetres, which in inches would be a bust.
  tests::RawMesh head(models::generic_head().skin());
  std::erase_if(head.triangles,
                [&](const Triangle& t) { return head.vertices[static_cast<size_t>(t[0])].z() < -90; });
  const auto read =
      models::read_mesh(tests::write_bytes(folder / "head.ply", tests::ply_text(head.times(0.1))));
  CHECK(english(read.notes.front()).find("Took the numbers in the file for centimetres") == 0);
  CHECK(english(read.notes.front()).find("in inches none") != std::string::npos);
  // What is no head at all says that the other unit would do as well.
  const auto egg = models::read_mesh(
      tests::write_bytes(folder / "egg.ply",
                         tests::ply_text(tests::RawMesh(tests::sphere(100, 5, {0.4, 1.0, 1.0})).times(0.1))));
  CHECK(english(egg.notes.front()).find("centimetres") != std::string::npos);
}

TEST_CASE("hair of 5 to 10 mm: tufts are said at import, thickness shows against the tapes entered",
          "[slow]") {
  const TemporaryFolder folder;
  const geometry::Head& bald = models::generic_head();
  const auto read = [&](const Surface& skin) {
    return models::read_mesh(tests::write_bytes(folder / "hair.ply", tests::ply_text(tests::RawMesh(skin))),
                             models::Unit::millimetre);
  };
  CHECK(all_of(read(bald.skin()).notes).find("rough") == std::string::npos);
  for (const double thick_mm : {5.0, 10.0}) {
    CAPTURE(thick_mm);
    const auto smooth = read(with_hair(thick_mm, 0)), tufted = read(with_hair(thick_mm, 1.2));
    CHECK(all_of(smooth.notes).find("rough") == std::string::npos);
    CHECK(all_of(tufted.notes).find("The skin is rough (") != std::string::npos);
    CHECK(all_of(tufted.notes).find("marks lie on the hair, not on the scalp") != std::string::npos);
    for (const Surface* skin : {&smooth.skin, &tufted.skin}) {
      const auto guess = geometry::guess_fiducials(bald, *skin);
      CHECK((guess.at.nasion - bald.fiducials().at.nasion).norm() < 15);
      CHECK((guess.at.inion - bald.fiducials().at.inion).norm() < 15);
      CHECK((guess.at.left_tragus - bald.fiducials().at.left_tragus).norm() < 15);
      CHECK((guess.at.right_tragus - bald.fiducials().at.right_tragus).norm() < 15);
      // The tapes taken on the head under its hair are shorter than those on the scan, and the plan says so.
      const geometry::Head head(*skin, bald.fiducials().at);
      geometry::Case the_case;
      the_case.coil.model = tests::flat_coil();
      the_case.tape_mm = {bald.tapes().nasion_inion_mm, bald.tapes().tragus_tragus_mm, {}};
      const auto plan = geometry::solve(head, the_case, geometry::TapeDistances::left_out);
      CHECK(head.tapes().nasion_inion_mm > bald.tapes().nasion_inion_mm + 5);
      CHECK(all_of(plan.warnings).find("nasion-inion") != std::string::npos);
    }
  }
}
