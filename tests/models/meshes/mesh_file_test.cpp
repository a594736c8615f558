#include "models/meshes/mesh_file.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <catch2/catch.hpp>
#include <limits>
#include <random>

#include "models/files/error.h"
#include "tests/support/mesh_files.h"

using namespace scalpmark;
using namespace scalpmark::tests;
using Eigen::Vector3d;
using geometry::Surface;
using models::ModelError;
using models::Unit;

namespace {

double volume(const Surface& skin) {
  double six = 0;
  for (std::size_t f = 0; f < skin.triangles().size(); ++f) {
    const int face = static_cast<int>(f);
    six += skin.corner(face, 0).dot(skin.corner(face, 1).cross(skin.corner(face, 2)));
  }
  return six / 6;
}

}  // namespace

TEST_CASE("the same head as OBJ, PLY, STL, glTF and GLB gives the same skin") {
  const RawMesh head = egg();
  const std::vector<std::pair<std::string, std::string>> files{{"head.obj", tests::obj_text(head)},
                                                               {"head.ply", tests::ply_text(head)},
                                                               {"text.stl", tests::stl_text(head)},
                                                               {"bytes.STL", tests::stl_bytes(head)},
                                                               {"head.glb", tests::glb_bytes(head)}};
  for (const auto& [name, bytes] : files) {
    CAPTURE(name);
    const auto read = read_bytes_as(name, bytes);
    CHECK(read.notes.empty());
    CHECK(read.skin.is_closed());
    CHECK(same_triangles(read.skin, head));
  }
  const TemporaryFolder folder;
  write_bytes(folder / "head.bin", tests::gltf_buffer(head));
  write_bytes(folder / "head.gltf",
              tests::gltf_json(head, "head.bin", tests::no_transform, tests::no_transform).dump());
  CHECK(same_triangles(models::read_mesh(folder / "head.gltf", Unit::millimetre).skin, head));
  const std::string uri = tests::data_uri(tests::gltf_buffer(head));
  const std::string alone = tests::gltf_json(head, uri, tests::no_transform, tests::no_transform).dump();
  CHECK(same_triangles(read_bytes_as("head.gltf", alone).skin, head));
}

TEST_CASE("a skin written as PLY reads back as it was") {
  const RawMesh head = egg();
  const Surface skin(head.vertices, head.triangles);
  const TemporaryFolder folder;
  models::write_ply(folder / "head.ply", skin);
  const auto again = models::read_mesh(folder / "head.ply", Unit::millimetre);
  CHECK(again.notes.empty());
  CHECK(same_triangles(again.skin, head, 1e-5));
  CHECK(is_sentence(
      tests::sentence_of<ModelError>([&] { models::write_ply(folder / "none" / "head.ply", skin); })));
}

TEST_CASE("polygons are cut into triangles") {
  const std::string box =
      "v 0 0 0\nv 160 0 0\nv 160 180 0\nv 0 180 0\nv 0 0 200\nv 160 0 200\nv 160 180 200\nv 0 180 200\n"
      "f 4 3 2 1\nf 5 6 7 8\nf 1 2 6 5\nf 2 3 7 6\nf 3 4 8 7\nf 4 1 5 8\n";
  const auto read = read_bytes_as("box.obj", box);
  CHECK(read.skin.triangles().size() == 12);
  CHECK(read.skin.is_closed());
  CHECK(volume(read.skin) == Approx(160.0 * 180 * 200));
}

TEST_CASE("a glTF's nodes place, turn and scale its mesh") {
  const RawMesh head = egg();
  // Outer: metres to millimetres and 20 to the right; inner: a quarter turn about z. Column-major.
  const std::array<double, 16> outer{1000, 0, 0, 0, 0, 1000, 0, 0, 0, 0, 1000, 0, 20, 0, 0, 1};
  const std::array<double, 16> inner{0, 1, 0, 0, -1, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1};
  const auto read = read_bytes_as("head.glb", tests::glb_bytes(head.times(0.001), outer, inner));
  RawMesh expected = head;
  for (auto& v : expected.vertices) v = Vector3d(-v.y() + 20, v.x(), v.z());
  CHECK(same_triangles(read.skin, expected));
}

TEST_CASE("the unit is inferred from the size, said, and checked when given", "[slow]") {
  const RawMesh head = egg();
  const std::vector<std::pair<double, std::string>> sizes{
      {1, "millimetres"}, {0.1, "centimetres"}, {0.001, "metres"}};
  for (const auto& [factor, name] : sizes) {
    const auto read = read_bytes_as("head.stl", tests::stl_bytes(head.times(factor)), {});
    CHECK(says(read.notes, "for " + name));
    CHECK(same_triangles(read.skin, head));
  }
  CHECK(same_triangles(read_bytes_as("head.ply", tests::ply_text(head.times(0.1)), Unit::centimetre).skin,
                       head));
  CHECK(contains(refusal("head.ply", tests::ply_text(head.times(0.1)), Unit::millimetre),
                 "centimetres would fit"));
  CHECK(contains(refusal("head.ply", tests::ply_text(head.times(0.03)), {}), "not the size of a head"));
  CHECK(contains(refusal("head.ply", tests::ply_text(head.times(0.4))), "not the size of a head"));
  CHECK(contains(refusal("head.ply", tests::ply_text(head.times(5))), "not the size of a head"));
}

TEST_CASE("the largest of several pieces is kept, and said") {
  RawMesh mesh = egg();
  RawMesh crumb(tests::sphere(8, 2));
  for (auto& v : crumb.vertices) v.x() += 400;
  mesh.add(crumb);
  RawMesh inner(tests::sphere(60, 3));
  mesh.add(inner);
  const auto read = import_obj(mesh);
  CHECK(says(read.notes, "largest of 3 pieces"));
  CHECK(same_triangles(read.skin, egg()));
}

TEST_CASE("holes are allowed and reported with their size") {
  RawMesh mesh = egg();
  // Cut the neck off and take a piece out of the crown that is too large to be closed.
  std::erase_if(mesh.triangles, [&](const geometry::Triangle& t) {
    return std::all_of(t.begin(), t.end(),
                       [&](int i) { return mesh.vertices[static_cast<std::size_t>(i)].z() < -30; });
  });
  const auto one = import_obj(mesh);
  CHECK(one.skin.borders().size() == 1);
  CHECK(says(one.notes, "one hole"));
  std::erase_if(mesh.triangles, [&](const geometry::Triangle& t) {
    return std::all_of(t.begin(), t.end(),
                       [&](int i) { return mesh.vertices[static_cast<std::size_t>(i)].z() > 75; });
  });
  const auto two = import_obj(mesh);
  CHECK(two.skin.borders().size() == 2);
  CHECK(says(two.notes, "2 holes"));
  // The open skin still faces outward.
  int outward = 0;
  for (std::size_t f = 0; f < two.skin.triangles().size(); ++f) {
    const int face = static_cast<int>(f);
    if (two.skin.face_normal(face).dot(two.skin.corner(face, 0) - Vector3d(3, -7, 11)) > 0) ++outward;
  }
  CHECK(outward == static_cast<int>(two.skin.triangles().size()));
}

TEST_CASE("triangles turned inward, all or some, are turned outward, and said") {
  RawMesh mesh = egg();
  for (auto& t : mesh.triangles) std::swap(t[1], t[2]);
  const auto all = import_obj(mesh);
  CHECK(volume(all.skin) > 0);
  CHECK(says(all.notes, "Turned " + std::to_string(mesh.triangles.size()) + " triangles"));
  mesh = egg();
  std::mt19937 random(7);
  int turned = 0;
  for (auto& t : mesh.triangles)
    if (random() % 3 == 0) {
      std::swap(t[1], t[2]);
      ++turned;
    }
  const auto some = import_obj(mesh);
  CHECK(says(some.notes, "Turned " + std::to_string(turned) + " triangles"));
  CHECK(same_triangles(some.skin, egg()));
}

TEST_CASE("repeated vertices, repeated triangles and triangles without area go, and are said") {
  RawMesh mesh = egg();
  const std::size_t count = mesh.triangles.size();
  mesh.triangles.push_back({mesh.triangles[5][1], mesh.triangles[5][2], mesh.triangles[5][0]});
  mesh.triangles.push_back({mesh.triangles[9][1], mesh.triangles[9][0], mesh.triangles[9][2]});
  mesh.triangles.push_back({3, 3, 4});
  // A copy of a vertex a few hundred-thousandths of a millimetre away, used by one triangle.
  mesh.vertices.push_back(mesh.vertices[static_cast<std::size_t>(mesh.triangles[20][0])] +
                          Vector3d(3e-5, 0, 0));
  mesh.triangles[20][0] = static_cast<int>(mesh.vertices.size()) - 1;
  // A sliver that hangs on an edge.
  const auto [a, b, c] = mesh.triangles[40];
  mesh.vertices.push_back(
      (mesh.vertices[static_cast<std::size_t>(a)] + mesh.vertices[static_cast<std::size_t>(b)]) / 2);
  mesh.triangles.push_back({a, b, static_cast<int>(mesh.vertices.size()) - 1});
  const auto read = import_obj(mesh);
  CHECK(read.skin.triangles().size() == count);
  CHECK(read.skin.is_closed());
  CHECK(same_triangles(read.skin, egg()));
  CHECK(says(read.notes, "Left out 2 triangles that were there twice"));
  CHECK(says(read.notes, "without area"));
  CHECK(says(read.notes, "edges where more than two triangles met"));
}

TEST_CASE("a fin on the skin is taken off, pieces that touch in a point are parted") {
  RawMesh fin = egg();
  const auto [a, b, c] = fin.triangles[100];
  fin.vertices.push_back(1.3 * fin.vertices[static_cast<std::size_t>(a)]);
  fin.triangles.push_back({a, b, static_cast<int>(fin.vertices.size()) - 1});
  const auto without = import_obj(fin);
  CHECK(same_triangles(without.skin, egg()));
  CHECK(says(without.notes, "Left out 1 triangle at edges where more than two triangles met"));

  // Two holes that meet in one vertex: its triangles form two fans.
  RawMesh pinched = egg();
  const int middle = pinched.triangles[0][0];
  const Surface whole(pinched.vertices, pinched.triangles);
  const auto around = whole.faces_around(middle);
  REQUIRE(around.size() >= 4);
  std::vector<int> out{around[0], around[2]};
  std::sort(out.rbegin(), out.rend());
  for (const int f : out) pinched.triangles.erase(pinched.triangles.begin() + f);
  const auto parted = import_obj(pinched);
  CHECK(says(parted.notes, "Parted the skin at 1 point"));
  for (std::size_t v = 0; v < parted.skin.vertices().size(); ++v) {
    std::size_t uses = 0;
    for (const auto& t : parted.skin.triangles())
      uses += static_cast<std::size_t>(std::count(t.begin(), t.end(), static_cast<int>(v)));
    CHECK(parted.skin.faces_around(static_cast<int>(v)).size() == uses);
  }
}
