#include "models/mri/mri_file.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>
#include <set>

#include "models/files/error.h"
#include "tests/support/mri_scans.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using namespace scalpmark::tests;
using Eigen::Matrix4d;
using Eigen::Vector3d;

namespace {

models::SkinImport read(const NiftiFile& file, const std::string& name = "head.nii") {
  const TemporaryFolder folder;
  file.write(folder / name);
  return models::read_mri(folder / name);
}

long euler_number(const geometry::Surface& skin) {
  std::set<std::pair<int, int>> edges;
  for (const auto& t : skin.triangles())
    for (std::size_t k = 0; k < 3; ++k) edges.insert(std::minmax(t[k], t[(k + 1) % 3]));
  return static_cast<long>(skin.vertices().size()) - static_cast<long>(edges.size()) +
         static_cast<long>(skin.triangles().size());
}

struct Distance {
  double mean = 0, worst = 0, shift = 0;  // mm; shift = signed mean, positive = too far out
};

Distance from_ellipsoid(const geometry::Surface& skin,
                        const std::function<bool(const Vector3d&)>& counts = {}) {
  Distance d;
  double n = 0;
  for (const auto& v : skin.vertices()) {
    if (counts && !counts(v)) continue;
    const double out = outside_by(v);
    d.mean += std::abs(out);
    d.shift += out;
    d.worst = std::max(d.worst, std::abs(out));
    ++n;
  }
  REQUIRE(n > 1000);
  d.mean /= n;
  d.shift /= n;
  return d;
}

/// What every skin must be: closed, one sphere-like piece, outward, within the budget of triangles.
void check_is_a_skin(const geometry::Surface& skin) {
  CHECK(skin.is_closed());
  CHECK(euler_number(skin) == 2);
  CHECK(skin.triangles().size() <= 150000);
  double six = 0;
  for (const auto& t : skin.triangles())
    six += skin.vertex(t[0]).dot(skin.vertex(t[1]).cross(skin.vertex(t[2])));
  CHECK(six > 0);
}

}  // namespace

TEST_CASE("the skin of a blurred ellipsoid is found to a tenth of a millimetre") {
  const auto found = read(usual_scan([](const Vector3d& p) { return 900 * head_at(p); }));
  check_is_a_skin(found.skin);
  const Distance d = from_ellipsoid(found.skin);
  CAPTURE(d.mean, d.worst, d.shift);
  CHECK(d.mean < 0.1);
  CHECK(d.worst < 0.5);
  CHECK(found.notes.empty());
}

TEST_CASE("a cavity, a channel to the air and a crumb outside leave no mark on the skin") {
  const auto found = read(usual_scan([](const Vector3d& p) {
    double tissue = head_at(p);
    tissue *= 1 - edge((p - Vector3d(10, 20, 5)).norm() - 25);   // a cavity
    const double off_axis = std::hypot(p.y() + 10, p.z() - 10);  // an ear canal, 5 mm wide
    if (p.x() > 0) tissue *= 1 - edge(off_axis - 2.5, 0.8);
    return 900 * std::max(tissue, edge((p - Vector3d(-70, 85, -70)).norm() - 4));  // a crumb in the air
  }));
  check_is_a_skin(found.skin);
  const Distance d = from_ellipsoid(
      found.skin, [](const Vector3d& v) { return v.x() < 0 || std::hypot(v.y() + 10, v.z() - 10) > 8; });
  CAPTURE(d.mean, d.worst, d.shift);
  CHECK(d.mean < 0.1);
  CHECK(d.worst < 0.5);
  for (const auto& v : found.skin.vertices()) CHECK_FALSE(outside_by(v) < -15);  // no further down the canal
}

TEST_CASE("noise in air and tissue does not break up the skin", "[slow]") {
  std::mt19937 random(7);
  for (const double sigma : {0.05, 0.08}) {
    std::normal_distribution<double> noise(0, sigma);
    // Magnitude images: the air's noise is Rayleigh distributed (Gudbjartsson and Patz 1995, Magn Reson Med
    // 34:910).
    const auto found = read(usual_scan(
        [&](const Vector3d& p) { return 900 * std::hypot(head_at(p) + noise(random), noise(random)); }));
    check_is_a_skin(found.skin);
    const Distance d = from_ellipsoid(found.skin);
    CAPTURE(sigma, d.mean, d.worst, d.shift);
    CHECK(d.mean < 0.35);
    CHECK(std::abs(d.shift) < 0.15);
    CHECK(d.worst < 2);
  }
}

TEST_CASE("uneven illumination by a factor of two moves the skin by little") {
  const auto found =
      read(usual_scan([](const Vector3d& p) { return 900 * head_at(p) * std::pow(2, p.x() / 144 + 0.2); }));
  check_is_a_skin(found.skin);
  const Distance d = from_ellipsoid(found.skin);
  CAPTURE(d.mean, d.worst, d.shift);
  CHECK(d.mean < 0.15);
  CHECK(d.worst < 0.6);
}

TEST_CASE("a neck cut off by the volume ends in a flat face, airway and all") {
  const auto found =
      read(scan(placed({1.6, 1.6, 1.6}, {-79.3, -98.6, -40}), {100, 124, 80}, [](const Vector3d& p) {
        const double airway = edge(std::hypot(p.x(), p.y() + 5) - 9);
        return 900 * head_at(p) * (p.z() < 0 ? 1 - airway : 1);
      }));
  check_is_a_skin(found.skin);
  const double floor_z = -40 - 0.8;  // half a voxel past the last slice
  double lowest = 0;
  for (const auto& v : found.skin.vertices()) lowest = std::min(lowest, v.z());
  CHECK(lowest == Approx(floor_z).margin(0.01));
  int on_floor = 0;
  for (const auto& v : found.skin.vertices()) {
    if (v.z() < floor_z + 0.1) ++on_floor;
    if (outside_by(v) < -3) CHECK(v.z() == Approx(floor_z).margin(0.1));
  }
  CHECK(on_floor > 1000);
  const Distance d = from_ellipsoid(found.skin, [&](const Vector3d& v) { return v.z() > floor_z + 3; });
  CHECK(d.mean < 0.1);
}

TEST_CASE("voxels longer one way still give the skin") {
  const auto found = read(scan(placed({1.1, 1.3, 2.5}, {-79.3, -98.6, -87.1}), {145, 152, 71},
                               [](const Vector3d& p) { return 900 * head_at(p); }));
  check_is_a_skin(found.skin);
  const Distance d = from_ellipsoid(found.skin);
  CAPTURE(d.mean, d.worst, d.shift);
  CHECK(d.mean < 0.15);
}

namespace {

/// A head that is lopsided in every direction, so that a flipped axis shows.
const Vector3d lopsided_centre{4, -7, 11};

double lopsided(const Vector3d& p) {
  const double bump = edge((p - lopsided_centre - Vector3d(50, 50, 50)).norm() - 22);
  return 900 * std::max(head_at(p - lopsided_centre), bump);
}

void check_lopsided(const models::SkinImport& found) {
  check_is_a_skin(found.skin);
  double mean = 0, worst = 0;
  for (const auto& v : found.skin.vertices()) {
    const double outside = std::abs(
        std::min(outside_by(v - lopsided_centre), (v - lopsided_centre - Vector3d(50, 50, 50)).norm() - 22));
    mean += outside;
    worst = std::max(worst, outside);
  }
  CHECK(mean / static_cast<double>(found.skin.vertices().size()) < 0.1);
  CHECK(worst < 1.5);  // in the crease about the bump
}

const Vector3d lopsided_low = lopsided_centre - Vector3d(82, 101, 90);
const Matrix4d upright = placed({1.6, 1.6, 1.6}, lopsided_low);
const std::array<int, 3> upright_size{104, 128, 114};

}  // namespace

TEST_CASE("the same head gives the same skin however its voxels are stored", "[slow]") {
  SECTION("right-handed sform") {
    check_lopsided(read(scan(upright, upright_size, lopsided)));
  }
  SECTION("left-handed sform, gzipped") {
    Matrix4d m = upright;
    m.col(3) += m.col(0) * (upright_size[0] - 1);
    m.col(0) *= -1;
    check_lopsided(read(scan(m, upright_size, lopsided), "head.nii.gz"));
  }
  SECTION("slices from left to right, turned by 20 degrees, other byte order") {
    Matrix4d m = Matrix4d::Identity();
    const Eigen::Matrix3d turned = Eigen::AngleAxisd(0.35, Vector3d(1, 2, 3).normalized()).toRotationMatrix();
    m.col(0).head<3>() = turned * Vector3d(0, 1.7, 0);
    m.col(1).head<3>() = turned * Vector3d(0, 0, -1.7);
    m.col(2).head<3>() = turned * Vector3d(-1.7, 0, 0);
    const std::array<int, 3> turned_size{130, 120, 110};
    m.col(3).head<3>() = lopsided_centre - m.topLeftCorner<3, 3>() * Vector3d(64.5, 59.5, 54.5);
    NiftiFile file = scan(m, turned_size, lopsided);
    file.swapped = true;
    check_lopsided(read(file));
  }
  SECTION("16 bits with slope and intercept") {
    NiftiFile file = scan(upright, upright_size, lopsided);
    file.kind = NiftiFile::Kind::i16;
    file.slope = -0.05F;
    file.intercept = 700;
    for (double& v : file.value) v = (v - 700) / -0.05;
    check_lopsided(read(file));
  }
  SECTION("qform only, turned, with slices in reverse (qfac -1)") {
    // Rotation from the quaternion and qfac as nifti1.h defines them (method 2), by Eigen instead.
    const Eigen::Quaterniond q(Eigen::AngleAxisd(0.4, Vector3d(2, -1, 1).normalized()));
    Matrix4d m = Matrix4d::Identity();
    m.topLeftCorner<3, 3>() = q.toRotationMatrix() * Vector3d(1.7, 1.6, -1.5).asDiagonal();
    const std::array<int, 3> turned_size{118, 140, 134};
    m.col(3).head<3>() = lopsided_centre - m.topLeftCorner<3, 3>() * Vector3d(58.5, 69.5, 66.5);
    NiftiFile file = scan(m, turned_size, lopsided);
    file.sform = {};
    file.sform_code = 0;
    file.qform_code = 1;
    file.pixdim[0] = -1;
    const double sign = q.w() < 0 ? -1 : 1;
    file.quaternion = {static_cast<float>(sign * q.x()), static_cast<float>(sign * q.y()),
                       static_cast<float>(sign * q.z()), static_cast<float>(m(0, 3)),
                       static_cast<float>(m(1, 3)),      static_cast<float>(m(2, 3))};
    check_lopsided(read(file));
  }
}

TEST_CASE("the same head gives the same skin whatever its header says beside", "[slow]") {
  SECTION("an sform beside qfac -1 goes before the qform") {
    NiftiFile file = scan(upright, upright_size, lopsided);
    file.pixdim[0] = -1;
    file.qform_code = 1;
    file.quaternion = {0, 0, 0, 300, 300, 300};
    check_lopsided(read(file));
  }
  SECTION("a frame in metres") {
    NiftiFile file = scan(upright, upright_size, lopsided);
    for (float& f : file.sform) f *= 0.001F;
    for (std::size_t i = 1; i <= 3; ++i) file.pixdim[i] *= 0.001F;
    file.units = 1;
    check_lopsided(read(file));
  }
  SECTION("the first of two volumes, said") {
    NiftiFile file = scan(upright, upright_size, lopsided);
    const std::vector<double> first = file.value;
    file.value.insert(file.value.end(), first.rbegin(), first.rend());
    file.dim[0] = 4;
    file.dim[4] = 2;
    const auto found = read(file);
    check_lopsided(found);
    REQUIRE(found.notes.size() == 1);
    CHECK(english(found.notes[0]) == "Took the first of 2 volumes in the file.");
  }
  SECTION("one volume in four dimensions, some voxels without a number, said") {
    NiftiFile file = scan(upright, upright_size, lopsided);
    file.dim[0] = 4;
    file.value[5] = std::numeric_limits<double>::quiet_NaN();
    file.value[file.value.size() / 2] = std::numeric_limits<double>::infinity();
    const auto found = read(file);
    check_lopsided(found);
    REQUIRE(found.notes.size() == 1);
    CHECK(english(found.notes[0]) == "Took 2 voxels without a number for air.");
  }
  SECTION("a broken sform beside a sound qform") {
    NiftiFile file = scan(upright, upright_size, lopsided);
    file.sform = {};
    file.qform_code = 1;
    file.quaternion = {0,
                       0,
                       0,
                       static_cast<float>(lopsided_low.x()),
                       static_cast<float>(lopsided_low.y()),
                       static_cast<float>(lopsided_low.z())};
    const auto found = read(file);
    check_lopsided(found);
    CHECK(found.notes.size() == 1);
  }
}

TEST_CASE("progress is told and goes forward") {
  const TemporaryFolder folder;
  usual_scan([](const Vector3d& p) { return 900 * head_at(p); }).write(folder / "head.nii");
  std::vector<double> fractions;
  (void)models::read_mri(folder / "head.nii", [&](const geometry::Message& what, double fraction) {
    CHECK_FALSE(what.empty());
    fractions.push_back(fraction);
  });
  REQUIRE(fractions.size() >= 4);
  CHECK(std::is_sorted(fractions.begin(), fractions.end()));
  CHECK(fractions.back() == 1.0);
}

// The volume that the Debian package mricron-data installs: one person averaged over 27 scans, 1 mm, cropped
// at the neck and at the ears.
TEST_CASE("the template head comes out as one clean skin", "[slow]") {
  const std::filesystem::path file = "/usr/share/mricron/templates/ch2.nii.gz";
  if (!std::filesystem::exists(file)) {
    WARN("skipped: " << file << " is not there; install mricron-data");
    return;
  }
  const auto found = models::read_mri(file);
  CHECK(found.skin.is_closed());
  CHECK(found.skin.triangles().size() <= 150000);
  CHECK(found.skin.triangles().size() > 100000);
  CHECK(euler_number(found.skin) == 2);
  Eigen::AlignedBox3d box;
  for (const auto& v : found.skin.vertices()) box.extend(v);
  // The volume's own sides (header: 181 x 217 x 181 voxels from -90, -125, -71) and a head between them.
  CHECK(box.min().z() == Approx(-71.5).margin(0.1));
  CHECK(box.max().z() > 95);
  CHECK(box.max().z() < 109);
  CHECK(box.sizes().x() > 140);
  CHECK(box.sizes().x() < 181.1);
  CHECK(box.sizes().y() > 180);
  CHECK(box.sizes().y() < 217.1);
}
