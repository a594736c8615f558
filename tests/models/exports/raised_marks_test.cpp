#include "models/exports/raised_marks.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <numbers>

#include "models/exports/closed_skin.h"
#include "models/exports/finer_near.h"
#include "models/files/error.h"
#include "models/meshes/mesh_pieces.h"
#include "models/meshes/print_marks.h"
#include "tests/support/shapes.h"

using namespace scalpmark;
using Eigen::Vector2d;
using Eigen::Vector3d;
using models::MarkOnSkin;
using models::Mesh;

namespace {

double volume_of(const Mesh& mesh) {
  double six = 0;
  for (const auto& t : mesh.triangles)
    six += mesh.vertices[static_cast<size_t>(t[0])].dot(
        mesh.vertices[static_cast<size_t>(t[1])].cross(mesh.vertices[static_cast<size_t>(t[2])]));
  return six / 6;
}

double area_of(const Mesh& mesh) {
  double area = 0;
  for (const auto& t : mesh.triangles) area += models::triangle_area(mesh, t);
  return area;
}

/// Every edge has two triangles, which run along it both ways.
bool is_closed(const Mesh& mesh) {
  std::map<std::pair<int, int>, int> uses;
  for (const auto& t : mesh.triangles)
    for (size_t k = 0; k < 3; ++k) ++uses[{t[k], t[(k + 1) % 3]}];
  for (const auto& [edge, count] : uses) {
    const auto back = uses.find({edge.second, edge.first});
    if (count != 1 || back == uses.end() || back->second != 1) return false;
  }
  return true;
}

Mesh ball(int level) {
  const auto surface = tests::sphere(90, level);
  return {surface.vertices(), surface.triangles()};
}

/// A disc, a ring or a bar on the ball's surface, where the direction leads.
MarkOnSkin mark_on_ball(const Vector3d& way, const std::vector<Vector2d>& triangles) {
  MarkOnSkin mark;
  mark.normal = way.normalized();
  mark.at = 90 * mark.normal;
  mark.along = mark.normal.unitOrthogonal();
  mark.triangles = triangles;
  return mark;
}

std::vector<Vector2d> ring(double inner, double outer) {
  std::vector<Vector2d> out;
  constexpr int n = 48;
  const auto at = [&](int i, double r) {
    const double a = 2 * std::numbers::pi * i / n;
    return Vector2d(r * std::cos(a), r * std::sin(a));
  };
  for (int i = 0; i < n; ++i) {
    out.insert(out.end(), {at(i, inner), at(i, outer), at(i + 1, outer)});
    if (inner > 0) out.insert(out.end(), {at(i, inner), at(i + 1, outer), at(i + 1, inner)});
  }
  return out;
}

std::vector<Vector2d> bar(double half_long, double half_wide) {
  return {{-half_long, -half_wide}, {half_long, -half_wide}, {half_long, half_wide},
          {-half_long, -half_wide}, {half_long, half_wide},  {-half_long, half_wide}};
}

double flat_area(const std::vector<Vector2d>& triangles) {
  double area = 0;
  for (size_t i = 0; i + 2 < triangles.size(); i += 3) {
    const Vector2d a = triangles[i + 1] - triangles[i], b = triangles[i + 2] - triangles[i];
    area += 0.5 * std::abs(a.x() * b.y() - a.y() * b.x());
  }
  return area;
}

}  // namespace

TEST_CASE("triangles made finer near a place leave the surface where it was, and closed") {
  for (const int level : {2, 5}) {
    Mesh mesh = ball(level);
    const double area = area_of(mesh), volume = volume_of(mesh);
    const Vector3d at = 90 * Vector3d(1, 2, 3).normalized();
    const auto near = models::make_finer_near(mesh, {{at, 4}}, 0.5);
    REQUIRE(near.size() == mesh.triangles.size());
    CHECK(is_closed(mesh));
    CHECK(area_of(mesh) == Approx(area).epsilon(1e-9));
    CHECK(volume_of(mesh) == Approx(volume).epsilon(1e-9));
    for (size_t f = 0; f < near.size(); ++f)
      for (size_t k = 0; k < 3; ++k)
        if (near[f]) {
          const auto& t = mesh.triangles[f];
          CHECK(
              (mesh.vertices[static_cast<size_t>(t[k])] - mesh.vertices[static_cast<size_t>(t[(k + 1) % 3])])
                  .norm() <= 0.5);
        }
  }
}

TEST_CASE(
    "a raised mark adds its area times its height, on coarse and on fine triangles, and the skin stays closed") {
  for (const int level : {2, 4, 6})
    for (const auto& shape : {ring(0, 2.6), ring(3.5, 5), bar(5.2, 1.04)}) {
      const Mesh skin = ball(level);
      MarkOnSkin mark = mark_on_ball({0.3, -0.5, 0.8}, shape);
      // On the flat triangle of a coarse ball the mark lies under the sphere.
      const geometry::Surface surface(skin.vertices, skin.triangles);
      mark.at = surface.position(surface.closest(mark.at));
      const auto print = models::with_raised_marks(skin, {mark});
      CHECK(is_closed(print.mesh));
      CHECK(models::largest_piece(print.mesh).pieces == 1);
      // A lifted patch sweeps its flat area times the height, whatever it looks like. The outline is met
      // within 0.05 mm.
      double around = 0;
      for (const double r : shape.size() == 6 ? std::vector<double>{4.0} : std::vector<double>{5.0, 3.5})
        around += 2 * std::numbers::pi * r;
      const double wanted = models::print_mark_mm * flat_area(shape);
      INFO("level " << level << ", " << shape.size() / 3 << " triangles");
      CHECK(volume_of(print.mesh) - volume_of(skin) ==
            Approx(wanted).margin(models::print_mark_mm * 0.05 * around));
      // Its top stands 1.2 mm over the skin.
      double highest = 0;
      for (size_t f = 0; f < print.is.size(); ++f)
        if (print.is[f] == 1)
          for (const int v : print.mesh.triangles[f]) {
            const Vector3d p =
                print.mesh.vertices[static_cast<size_t>(v)] - models::print_mark_mm * mark.normal;
            highest = std::max(highest, (surface.position(surface.closest(p)) - p).norm());
          }
      CHECK(highest < 1e-6);
    }
}

TEST_CASE("a raised disc's wall stands on its outline, within 0.05 mm") {
  const Mesh skin = ball(5);
  const geometry::Surface surface(skin.vertices, skin.triangles);
  MarkOnSkin mark = mark_on_ball({0.3, -0.5, 0.8}, ring(0, 4));
  mark.at = surface.position(surface.closest(mark.at));
  const auto print = models::with_raised_marks(skin, {mark});
  int feet = 0;
  for (size_t f = 0; f < print.is.size(); ++f) {
    if ((print.is[f] & models::print_mark::first_wall) == 0) continue;
    const auto& t = print.mesh.triangles[f];
    const Vector3d foot = print.mesh.vertices[static_cast<size_t>(t[0])],
                   top = print.mesh.vertices[static_cast<size_t>(t[1])];
    CHECK((top - foot - models::print_mark_mm * mark.normal).norm() < 1e-9);
    const Vector3d away = foot - mark.at;
    CHECK((away - away.dot(mark.normal) * mark.normal).norm() == Approx(4).margin(0.05));
    ++feet;
  }
  CHECK(feet > 30);
}

TEST_CASE("marks that overlap stand out as one, and those apart each for itself") {
  const Mesh skin = ball(6);
  const MarkOnSkin disc = mark_on_ball({1, 1, 1}, ring(0, 3));
  MarkOnSkin over = disc, beside = mark_on_ball({-1, 1, 1}, bar(5, 1));
  over.triangles = bar(6, 1);
  over.at += 5 * over.along;  // the bar's end lies in the disc
  over.at = 90 * over.at.normalized();
  const auto print = models::with_raised_marks(skin, {disc, over, beside});
  CHECK(is_closed(print.mesh));
  CHECK(models::largest_piece(print.mesh).pieces == 1);
  const auto highest = *std::max_element(print.is.begin(), print.is.end(), [](auto a, auto b) {
    return (a & models::print_mark::most) < (b & models::print_mark::most);
  });
  CHECK((highest & models::print_mark::most) == 2);
}

TEST_CASE("a skin with a hole is closed, and one cut flat stands on a plane and stays closed") {
  const auto whole = tests::sphere(90, 5);
  std::vector<geometry::Triangle> open;
  for (const auto& t : whole.triangles()) {
    double highest = -1e9;
    for (const int v : t) highest = std::max(highest, whole.vertex(v).z());
    if (highest > -60) open.push_back(t);
  }
  Mesh with_hole{whole.vertices(), open};
  models::drop_unused_vertices(with_hole);
  const geometry::Surface skin(with_hole.vertices, with_hole.triangles);
  REQUIRE_FALSE(skin.is_closed());
  const Mesh closed = models::closed_skin(skin);
  CHECK(is_closed(closed));
  CHECK(volume_of(closed) > 0.9 * volume_of(ball(5)));
  const Vector3d up = Vector3d(0.1, -0.2, 1).normalized();
  const Mesh cut = models::cut_flat(closed, 20 * up, up);
  CHECK(is_closed(cut));
  double lowest = 1e9;
  for (const auto& v : cut.vertices) lowest = std::min(lowest, v.dot(up));
  CHECK(lowest == Approx(20).margin(1e-6));
  // A cap of a sphere: pi h^2 (3R - h) / 3.
  const double h = 70;
  CHECK(volume_of(cut) == Approx(std::numbers::pi * h * h * (270 - h) / 3).epsilon(0.01));
  CHECK_THROWS_AS(models::cut_flat(closed, 95 * up, up), models::ModelError);
  CHECK_THROWS_AS(models::cut_flat(closed, -95 * up, up), models::ModelError);
}
