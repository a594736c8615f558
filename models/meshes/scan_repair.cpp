#include "models/meshes/scan_repair.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <array>
#include <cmath>
#include <unordered_map>

#include "geometry/base/all_cores.h"
#include "geometry/base/error.h"
#include "geometry/base/index.h"
#include "geometry/head/guess_fiducials.h"
#include "models/files/error.h"
#include "models/generic/generic_head.h"
#include "models/meshes/mesh_repair.h"
#include "models/meshes/thin_scan.h"

namespace scalpmark::models {

using Eigen::Vector3d;
using geometry::Surface;
using geometry::Triangle;

using geometry::at;

namespace {

constexpr std::size_t many_triangles = 250'000, wanted_triangles = 150'000;
constexpr double most_error_mm = 0.3;

double around_mm(const Surface& skin, const std::vector<int>& loop) {
  double sum = 0;
  for (std::size_t i = 0; i < loop.size(); ++i)
    sum += (skin.vertex(loop[(i + 1) % loop.size()]) - skin.vertex(loop[i])).norm();
  return sum;
}

/// The extents of a skin along its own main directions, smallest first.
Vector3d main_extents(const std::vector<Vector3d>& points) {
  Vector3d middle = Vector3d::Zero();
  for (const auto& p : points) middle += p / static_cast<double>(points.size());
  Eigen::Matrix3d spread = Eigen::Matrix3d::Zero();
  for (const auto& p : points) spread += (p - middle) * (p - middle).transpose();
  const Eigen::Matrix3d axes = Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d>(spread).eigenvectors();
  Vector3d low = Vector3d::Constant(1e300), high = -low;
  for (const auto& p : points) {
    const Vector3d turned = axes.transpose() * p;
    low = low.cwiseMin(turned);
    high = high.cwiseMax(turned);
  }
  Vector3d extents = high - low;
  std::sort(extents.data(), extents.data() + 3);
  return extents;
}

/// How far the corners of a skin's triangles lie from another skin at most.
double farthest_mm(const Surface& from, const Surface& to) {
  to.prepare();
  const auto& all = from.vertices();
  constexpr std::size_t parts = 64;
  std::array<double, parts> farthest{};
  geometry::on_all_cores(parts, [&](std::size_t part) {
    for (std::size_t v = part; v < all.size(); v += parts)
      if (from.face_at(static_cast<int>(v)) >= 0)
        farthest[part] = std::max(farthest[part], (all[v] - to.position(to.closest(all[v]))).norm());
  });
  return *std::max_element(farthest.begin(), farthest.end());
}

}  // namespace

Surface close_small_holes(const Surface& skin, double most_around_mm, std::vector<Message>& notes) {
  if (skin.is_closed()) return skin;
  // Where the skin itself runs along a border; the patch runs the other way.
  std::unordered_map<int, int> next;
  for (int f = 0; f < static_cast<int>(skin.triangles().size()); ++f)
    for (int k = 0; k < 3; ++k)
      if (skin.neighbour(f, k).face < 0) next[skin.triangle(f)[at(k)]] = skin.triangle(f)[at((k + 1) % 3)];
  std::vector<Vector3d> vertices = skin.vertices();
  std::vector<Triangle> triangles = skin.triangles();
  std::size_t closed = 0;
  double longest_mm = 0;
  for (const auto& loop : skin.borders()) {
    const double mm = around_mm(skin, loop);
    if (mm > most_around_mm) continue;
    ++closed;
    longest_mm = std::max(longest_mm, mm);
    const bool along = next[loop[0]] == loop[1 % loop.size()];
    Vector3d middle = Vector3d::Zero();
    for (const int v : loop) middle += skin.vertex(v) / static_cast<double>(loop.size());
    const int centre = static_cast<int>(vertices.size());
    vertices.push_back(middle);
    for (std::size_t i = 0; i < loop.size(); ++i) {
      const int a = loop[i], b = loop[(i + 1) % loop.size()];
      if (along)
        triangles.push_back({b, a, centre});
      else
        triangles.push_back({a, b, centre});
    }
  }
  if (closed == 0) return skin;
  notes.push_back(
      closed == 1
          ? Message::of("Closed a small hole, up to %1 mm around.", geometry::number(longest_mm))
          : Message::of("Closed %1 small holes, up to %2 mm around.", closed, geometry::number(longest_mm)));
  return {std::move(vertices), std::move(triangles)};
}

Surface thin_to_size(const Surface& skin, const std::string& name, std::vector<Message>& notes,
                     const std::function<void(double)>& told) {
  const std::size_t count = skin.triangles().size();
  if (count <= many_triangles) return skin;
  const auto cannot = [&](const Message& why) {
    return ModelError(Message::of(
        "%1 has %2 triangles and cannot be thinned (%3); thin it to 150 000 in the program that made it.",
        name, count, why));
  };
  try {
    double moved_mm = 0;
    for (const std::size_t wanted : {wanted_triangles, many_triangles}) {
      Mesh mesh = thin_scan({skin.vertices(), skin.triangles()}, wanted, told);
      if (mesh.triangles.size() > many_triangles)
        throw cannot(Message::of("its borders alone have too many corners"));
      Surface thinner(std::move(mesh.vertices), std::move(mesh.triangles));
      moved_mm = farthest_mm(skin, thinner);
      if (moved_mm > most_error_mm) continue;
      notes.push_back(
          Message::of("Thinned the skin from %1 to %2 triangles; no corner was moved by more than %3 mm.",
                      count, thinner.triangles().size(), geometry::number(moved_mm, 2)));
      return thinner;
    }
    throw cannot(Message::of("the skin would move by %1 mm", geometry::number(moved_mm, 2)));
  } catch (const geometry::GeometryError& error) {
    throw cannot(error.message());
  }
}

Surface cut_shoulders(const Surface& skin, std::vector<Message>& notes) {
  // Heads with their neck are at most about 260 mm from nose to nape and 340 from crown to neck (generic
  // head, scaled to the largest tapes); shoulders are broader than the first and a chest goes with them.
  constexpr double broad_mm = 300;
  constexpr double neck_mm = 125;  // below the tragi of the generic head, which ends at 132
  if (main_extents(skin.vertices())[1] < broad_mm) return skin;
  try {
    const geometry::Head& generic = generic_head();
    const auto guess = geometry::guess_fiducials(generic, skin);
    const Eigen::Affine3d back = guess.fit.inverse();
    std::vector<char> above(skin.vertices().size());
    for (std::size_t v = 0; v < above.size(); ++v)
      above[v] = (back * skin.vertices()[v] - generic.axes().origin).dot(generic.axes().up) > -neck_mm;
    Mesh kept{skin.vertices(), {}};
    for (const auto& t : skin.triangles())
      if (above[at(t[0])] && above[at(t[1])] && above[at(t[2])]) kept.triangles.push_back(t);
    if (kept.triangles.size() == skin.triangles().size() || kept.triangles.empty()) return skin;
    std::vector<Message> own_notes;
    Mesh head = repair_mesh(std::move(kept), "The head above the shoulders", own_notes);
    Surface cut(std::move(head.vertices), std::move(head.triangles));
    notes.emplace_back(Message::of("Cut the shoulders off below the neck."));
    return cut;
  } catch (const geometry::GeometryError&) {
    return skin;
  }
}

void note_roughness(const Surface& skin, std::vector<Message>& notes) {
  constexpr double reach_mm = 5, rough_mm = 0.25, bare_share = 0.7;
  constexpr int places = 400;
  constexpr std::size_t fewest = 8;  // a coarse mesh has no roughness to measure
  double area = 0;
  const int faces = static_cast<int>(skin.triangles().size());
  for (int f = 0; f < faces; ++f) area += skin.face_area(f);
  std::vector<double> off_plane_mm;
  std::vector<int> seen_from(at(faces), -1), waiting;
  double next = 0, passed = 0;
  for (int f = 0; f < faces; ++f) {
    passed += skin.face_area(f);
    if (passed < next) continue;
    next = passed + area / places;
    // From triangle to triangle: for four hundred places a search tree would take longer to build.
    const Vector3d middle = skin.position({f});
    std::vector<Vector3d> around;
    waiting.assign(1, f);
    seen_from[at(f)] = f;
    while (!waiting.empty()) {
      const int here = waiting.back();
      waiting.pop_back();
      if ((skin.corner(here, 0) - middle).norm() < reach_mm) around.push_back(skin.corner(here, 0));
      for (int k = 0; k < 3; ++k) {
        const int other = skin.neighbour(here, k).face;
        if (other < 0 || seen_from[at(other)] == f) continue;
        seen_from[at(other)] = f;
        const auto in_reach = [&](int corner) {
          return (skin.corner(other, corner) - middle).norm() < reach_mm;
        };
        if (in_reach(0) || in_reach(1) || in_reach(2)) waiting.push_back(other);
      }
    }
    if (around.size() < fewest) continue;
    Vector3d centre = Vector3d::Zero();
    for (const auto& p : around) centre += p / static_cast<double>(around.size());
    Eigen::Matrix3d spread = Eigen::Matrix3d::Zero();
    for (const auto& p : around) spread += (p - centre) * (p - centre).transpose();
    const double least = Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d>(spread).eigenvalues()[0];
    off_plane_mm.push_back(std::sqrt(std::max(0.0, least / static_cast<double>(around.size()))));
  }
  if (off_plane_mm.size() < places / 4) return;
  const auto hairy = off_plane_mm.begin() +
                     static_cast<std::ptrdiff_t>(bare_share * static_cast<double>(off_plane_mm.size()));
  std::nth_element(off_plane_mm.begin(), hairy, off_plane_mm.end());
  if (*hairy > rough_mm)
    notes.push_back(Message::of(
        "The skin is rough (%1 mm up and down within a centimetre), as hair is: marks lie on the hair, not on the scalp; compare the tapes with those of the head itself.",
        geometry::number(*hairy)));
}

}  // namespace scalpmark::models
