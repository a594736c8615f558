#include "models/meshes/sound_skin.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <set>

#include "models/generic/generic_head.h"
#include "models/meshes/close_vertices.h"
#include "models/meshes/mesh_repair.h"
#include "tests/support/shapes.h"

using namespace scalpmark;
using Eigen::Vector3d;
using geometry::Surface;
using geometry::Triangle;
using models::Mesh;

namespace {

Mesh mesh_of(const Surface& skin) {
  return {skin.vertices(), skin.triangles()};
}

Mesh egg_mesh() {
  return mesh_of(tests::sphere(100, 3, {0.75, 0.95, 0.85}));
}

/// Its triangles by the places of their corners, each from its first corner in that order on.
std::multiset<std::vector<double>> places_of(const Mesh& mesh) {
  std::multiset<std::vector<double>> all;
  for (const Triangle& t : mesh.triangles) {
    std::vector<double> first;
    for (std::size_t turn = 0; turn < 3; ++turn) {
      std::vector<double> places;
      for (std::size_t k = 0; k < 3; ++k) {
        const Vector3d& v = mesh.vertices[static_cast<std::size_t>(t[(turn + k) % 3])];
        places.insert(places.end(), v.data(), v.data() + 3);
      }
      if (first.empty() || places < first) first = places;
    }
    all.insert(first);
  }
  return all;
}

}  // namespace

TEST_CASE("a sound mesh is a skin as it stands, and repairing it changes nothing") {
  Mesh open = egg_mesh();
  std::erase_if(open.triangles,
                [&](const Triangle& t) { return open.vertices[static_cast<std::size_t>(t[0])].z() < -60; });
  std::vector<geometry::Message> notes;
  open = models::repair_mesh(std::move(open), "open", notes);  // drops what no triangle uses any more
  REQUIRE(notes.empty());
  for (const Mesh& mesh : {egg_mesh(), open, mesh_of(models::generic_head().skin())}) {
    CAPTURE(mesh.triangles.size());
    const auto skin = models::skin_as_it_stands(mesh);
    REQUIRE(skin);
    CHECK(skin->vertices() == mesh.vertices);
    CHECK(skin->triangles() == mesh.triangles);
    CHECK_FALSE(models::has_close_vertices(mesh.vertices));
    const Mesh repaired = models::repair_mesh(mesh, "sound", notes);
    CHECK(notes.empty());
    CHECK(places_of(repaired) == places_of(mesh));
  }
}

TEST_CASE("a mesh with anything to mend is none as it stands") {
  const auto spoilt = [](const auto& spoil) {
    Mesh mesh = egg_mesh();
    spoil(mesh);
    return models::skin_as_it_stands(mesh).has_value();
  };
  const auto add = [](Mesh& mesh, const Mesh& other) {
    const int first = static_cast<int>(mesh.vertices.size());
    mesh.vertices.insert(mesh.vertices.end(), other.vertices.begin(), other.vertices.end());
    for (const auto& [a, b, c] : other.triangles) mesh.triangles.push_back({a + first, b + first, c + first});
  };
  // Vertex `b` becomes vertex `a`; the last one takes its number.
  const auto make_one = [](Mesh& mesh, int a, int b) {
    const int last = static_cast<int>(mesh.vertices.size()) - 1;
    for (Triangle& t : mesh.triangles)
      for (int& corner : t) corner = corner == b ? a : corner == last ? b : corner;
    mesh.vertices[static_cast<std::size_t>(b)] = Vector3d(mesh.vertices.back());
    mesh.vertices.pop_back();
  };
  CHECK(spoilt([](Mesh&) {}));
  CHECK_FALSE(spoilt([](Mesh& m) { m.triangles.push_back(m.triangles[7]); }));
  CHECK_FALSE(spoilt([](Mesh& m) {
    const Triangle t = m.triangles[7];
    m.triangles.push_back({t[1], t[0], t[2]});
  }));
  CHECK_FALSE(spoilt([](Mesh& m) { std::swap(m.triangles[7][0], m.triangles[7][1]); }));
  CHECK_FALSE(spoilt([](Mesh& m) {
    for (Triangle& t : m.triangles) std::swap(t[0], t[1]);
  }));
  CHECK_FALSE(spoilt([](Mesh& m) { m.triangles[7][0] = m.triangles[7][1]; }));
  CHECK_FALSE(spoilt([](Mesh& m) { m.triangles[7][0] = 100'000; }));
  CHECK_FALSE(spoilt([](Mesh& m) { m.triangles.clear(); }));
  CHECK_FALSE(spoilt([](Mesh& m) { m.vertices.emplace_back(0, 0, 0); }));
  CHECK_FALSE(spoilt([&](Mesh& m) { add(m, mesh_of(tests::sphere(5, 1))); }));
  // A fin on an edge, and another ball that touches in one vertex only.
  CHECK_FALSE(spoilt([](Mesh& m) {
    m.vertices.emplace_back(0, 0, 200);
    m.triangles.push_back({m.triangles[7][0], m.triangles[7][1], static_cast<int>(m.vertices.size()) - 1});
  }));
  CHECK_FALSE(spoilt([&](Mesh& m) {
    const int first_of_other = static_cast<int>(m.vertices.size());
    add(m, egg_mesh());
    make_one(m, 0, first_of_other);
  }));
  // One piece that touches itself in a vertex.
  CHECK_FALSE(spoilt([&](Mesh& m) { make_one(m, 0, 1); }));
}
