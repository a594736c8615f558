#include "models/meshes/mesh_file.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <catch2/catch.hpp>
#include <limits>
#include <random>

#include "models/files/error.h"
#include "tests/support/mesh_writers.h"
#include "tests/support/sentence.h"
#include "tests/support/shapes.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using Eigen::Vector3d;
using geometry::Surface;
using models::ModelError;
using models::Unit;
using tests::is_sentence;
using tests::RawMesh;
using tests::TemporaryFolder;
using tests::write_bytes;

namespace {

const Vector3d semi_axes{0.75, 0.95, 0.85};

/// An adult head's size and no symmetry that hides a mix-up: an ellipsoid off the origin, mm.
RawMesh egg(int level = 4) {
  RawMesh mesh(tests::sphere(100, level, semi_axes));
  for (auto& v : mesh.vertices) v += Vector3d(3, -7, 11);
  return mesh;
}

double volume(const Surface& skin) {
  double six = 0;
  for (std::size_t f = 0; f < skin.triangles().size(); ++f) {
    const int face = static_cast<int>(f);
    six += skin.corner(face, 0).dot(skin.corner(face, 1).cross(skin.corner(face, 2)));
  }
  return six / 6;
}

/// The same triangles in space, whatever the order of vertices and triangles.
bool same_triangles(const Surface& a, const RawMesh& b, double within_mm = 1e-4) {
  if (a.triangles().size() != b.triangles.size() || a.vertices().size() != b.vertices.size()) return false;
  const Surface other(b.vertices, b.triangles);
  for (std::size_t f = 0; f < a.triangles().size(); ++f) {
    const int face = static_cast<int>(f);
    const Vector3d middle = (a.corner(face, 0) + a.corner(face, 1) + a.corner(face, 2)) / 3;
    const int match = other.closest(middle).face;
    for (int k = 0; k < 3; ++k) {
      double nearest = 1e9;
      for (int j = 0; j < 3; ++j)
        nearest = std::min(nearest, (a.corner(face, k) - other.corner(match, j)).norm());
      if (nearest > within_mm) return false;
    }
    if (a.face_normal(face).dot(other.face_normal(match)) < 0.999) return false;
  }
  return true;
}

bool says(const std::vector<geometry::Message>& notes, const std::string& words) {
  return std::any_of(notes.begin(), notes.end(), [&](const geometry::Message& note) {
    return english(note).find(words) != std::string::npos;
  });
}

models::SkinImport read_bytes_as(const std::string& name, const std::string& bytes,
                                 std::optional<Unit> unit = Unit::millimetre) {
  const TemporaryFolder folder;
  auto read = models::read_mesh(write_bytes(folder / name, bytes), unit);
  for (const std::string& note : english(read.notes)) {
    CAPTURE(note);
    CHECK(is_sentence(note));
  }
  return read;
}

models::SkinImport import_obj(const RawMesh& mesh) {
  return read_bytes_as("head.obj", tests::obj_text(mesh));
}

std::string refusal(const std::string& name, const std::string& bytes,
                    std::optional<Unit> unit = Unit::millimetre) {
  std::string said = tests::sentence_of<ModelError>([&] { (void)read_bytes_as(name, bytes, unit); });
  CAPTURE(said);
  CHECK(is_sentence(said));
  return said;
}

bool contains(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
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

TEST_CASE("the unit is inferred from the size, said, and checked when given") {
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

TEST_CASE("a mesh that cannot be a head's skin is refused") {
  // Flat, also when tilted.
  RawMesh sheet = egg();
  for (auto& v : sheet.vertices) v.z() *= 0.05;
  CHECK(contains(refusal("a.ply", tests::ply_text(sheet)), "is flat"));
  const Eigen::AngleAxisd tilt(0.7, Vector3d(1, 2, 0.5).normalized());
  for (auto& v : sheet.vertices) v = tilt * v;
  CHECK(contains(refusal("a.ply", tests::ply_text(sheet)), "is flat"));

  // Nothing but slivers.
  RawMesh line;
  line.vertices = {{0, 0, 0}, {200, 0, 0}, {100, 0, 0}};
  line.triangles = {{0, 1, 2}};
  CHECK(contains(refusal("a.obj", tests::obj_text(line)), "no triangle with an area"));

  // One-sided: a Moebius band.
  RawMesh band;
  const int steps = 60;
  for (int i = 0; i < steps; ++i) {
    const double turn = 2 * M_PI * i / steps;
    for (const double w : {-40.0, 40.0})
      band.vertices.emplace_back((100 + w * std::cos(turn / 2)) * std::cos(turn),
                                 (100 + w * std::cos(turn / 2)) * std::sin(turn), w * std::sin(turn / 2));
  }
  for (int i = 0; i < steps; ++i) {
    const int n = (i + 1) % steps, low = 2 * n + (n == 0 ? 1 : 0), high = 2 * n + (n == 0 ? 0 : 1);
    band.triangles.push_back({2 * i, low, 2 * i + 1});
    band.triangles.push_back({2 * i + 1, low, high});
  }
  CHECK(contains(refusal("a.obj", tests::obj_text(band)), "one side only"));
}

TEST_CASE("coordinates that are not finite are refused in every format") {
  const double nan = std::numeric_limits<double>::quiet_NaN(), inf = std::numeric_limits<double>::infinity();
  for (const double bad : {nan, inf, -inf, 1e300}) {
    CAPTURE(bad);
    RawMesh mesh = egg(3);
    mesh.vertices[17].y() = bad;
    refusal("a.obj", tests::obj_text(mesh));
    refusal("a.ply", tests::ply_text(mesh));
    refusal("a.stl", tests::stl_text(mesh));
    if (bad != 1e300) refusal("b.stl", tests::stl_bytes(mesh));
    if (bad != 1e300) refusal("a.glb", tests::glb_bytes(mesh));
  }
}

TEST_CASE("files that are no mesh are refused") {
  const TemporaryFolder folder;
  std::filesystem::create_directory(folder / "folder.ply");
  const auto refused = [](const std::filesystem::path& file) {
    return tests::sentence_of<ModelError>([&] { (void)models::read_mesh(file); });
  };
  CHECK(contains(refused(folder / "none.ply"), "does not exist"));
  CHECK(contains(refused(folder / "folder.ply"), "is a folder"));
  for (const char* name : {"a.obj", "a.ply", "a.stl", "a.gltf", "a.glb"}) {
    CAPTURE(name);
    refusal(name, "");
    refusal(name, "this is no mesh\n");
    refusal(name, std::string(1000, '\0'));
  }
  CHECK(contains(refusal("a.fbx", tests::obj_text(egg(3))), "not a mesh file read here"));
  CHECK(contains(refusal("a", tests::obj_text(egg(3))), "not a mesh file read here"));
  // A file of another kind under a mesh's name is not handed to another reader.
  refusal("a.glb", "<?xml version=\"1.0\"?><COLLADA></COLLADA>");
  RawMesh points = egg(3);
  points.triangles.clear();
  refusal("a.obj", tests::obj_text(points));
  refusal("a.ply", tests::ply_text(points));
}

TEST_CASE("a file cut short is refused or read as an open skin, never more") {
  const RawMesh head = egg(3);
  const std::vector<std::pair<std::string, std::string>> files{{"a.obj", tests::obj_text(head)},
                                                               {"a.ply", tests::ply_text(head)},
                                                               {"a.stl", tests::stl_text(head)},
                                                               {"b.stl", tests::stl_bytes(head)},
                                                               {"a.glb", tests::glb_bytes(head)}};
  for (const auto& [name, bytes] : files)
    for (int part = 1; part < 16; ++part) {
      CAPTURE(name, part);
      try {
        const auto read =
            read_bytes_as(name, bytes.substr(0, bytes.size() * static_cast<std::size_t>(part) / 16));
        CHECK(read.skin.triangles().size() <= head.triangles.size());
      } catch (const ModelError& error) {
        CHECK(is_sentence(error.what()));
      }
    }
}

TEST_CASE("a glTF that points elsewhere is refused") {
  const RawMesh head = egg(3);
  const TemporaryFolder folder;
  std::filesystem::create_directory(folder / "in");
  write_bytes(folder / "head.bin", tests::gltf_buffer(head));
  write_bytes(folder / "in" / "head.txt", tests::gltf_buffer(head));
  for (const std::string& uri :
       {std::string("../head.bin"), (folder / "head.bin").string(), std::string("head.txt"),
        std::string("missing.bin"), std::string("/etc/passwd"), std::string("../../../../etc/passwd"),
        std::string("http://localhost/head.bin"), "file://" + (folder / "head.bin").string()}) {
    CAPTURE(uri);
    const auto file =
        write_bytes(folder / "in" / "head.gltf",
                    tests::gltf_json(head, uri, tests::no_transform, tests::no_transform).dump());
    const std::string said = tests::sentence_of<ModelError>([&] { (void)models::read_mesh(file); });
    CAPTURE(said);
    CHECK(is_sentence(said));
    CHECK(contains(said, "points at"));
  }
}

// Khronos, "glTF 2.0 Specification" 2.0.1: what an accessor may reach (3.6.2.4), which corners a primitive
// needs (3.7.2.1), how a .glb begins (4.4).
TEST_CASE("a glTF that says what cannot be is refused, in text and in bytes") {
  const RawMesh head = egg(2);
  const nlohmann::json good = tests::gltf_json(head, "", tests::no_transform, tests::no_transform);
  const auto with = [&](const char* where, const nlohmann::json& value) {
    nlohmann::json spoilt = good;
    spoilt[nlohmann::json::json_pointer(where)] = value;
    return spoilt;
  };
  const auto without = [&](const char* where, const char* key) {
    nlohmann::json spoilt = good;
    spoilt[nlohmann::json::json_pointer(where)].erase(key);
    return spoilt;
  };
  const nlohmann::json zeros_but_one{{"count", 1},
                                     {"indices", {{"bufferView", 1}, {"componentType", 5125}}},
                                     {"values", {{"bufferView", 0}}}};
  nlohmann::json huge_zeros = with("/accessors/0/count", 900'000'000);
  huge_zeros["accessors"][0].erase("bufferView");
  huge_zeros["accessors"][0]["sparse"] = zeros_but_one;
  const std::vector<std::pair<nlohmann::json, const char*>> spoilt{
      {with("/accessors/0/count", 67), "longer than what it lies in"},
      {with("/accessors/0/count", 0), "missing or not usable"},
      {with("/accessors/0/count", -1), "missing or not usable"},
      {with("/accessors/0/count", "66"), "missing or not usable"},
      {with("/accessors/1/count", 4'000'000'000U), "missing or not usable"},
      {with("/accessors/1/byteOffset", 4), "longer than what it lies in"},
      {with("/accessors/1/componentType", 5124), "no known kind"},
      {with("/accessors/1/type", "VEC5"), "no known kind"},
      {with("/accessors/0/bufferView", 2), "does not exist"},
      {without("/accessors/0", "bufferView"), "missing or not usable"},
      {without("/accessors/1", "bufferView"), "missing or not usable"},
      {with("/accessors", 7), "not valid glTF"},
      {huge_zeros, "longer than what it lies in"},
      {with("/bufferViews/1/byteLength", 1540), "longer than what it lies in"},
      {with("/bufferViews/0/byteStride", 16), "longer than what it lies in"},
      {with("/bufferViews/0/buffer", 1), "does not exist"},
      {without("/buffers/0", "byteLength"), "missing or not usable"},
      {without("/meshes/0/primitives/0/attributes", "POSITION"), "missing or not usable"},
      {without("/meshes/0/primitives/0", "attributes"), "too few corners"},
      {with("/meshes/0/primitives/0/attributes/POSITION", 1), "no known kind"},
      {with("/meshes/0/primitives/0/indices", 0), "no known kind"},
      {with("/meshes/0/primitives/0/mode", 7), "no known kind"},
      {with("/meshes/0/primitives/0/mode", 2), "closed in a loop"},
      {with("/accessors/1/count", 2), "too few corners"},
      {with("/accessors/0/componentType", 5123), "whole numbers"},
      {with("/extensionsRequired", {"KHR_draco_mesh_compression"}), "is packed (KHR_draco"},
      {with("/extensionsRequired", {"EXT_meshopt_compression"}), "is packed (EXT_meshopt"},
      {with("/asset/version", "1.0"), "not glTF 2"},
      {without("/asset", "version"), "not valid glTF"},
      {nlohmann::json::array({good}), "not valid glTF"}};
  for (const auto& [json, why] : spoilt) {
    CAPTURE(json.dump().substr(0, 400), why);
    nlohmann::json alone = json;
    if (alone.is_object() && alone["buffers"][0].contains("byteLength"))
      alone["buffers"][0]["uri"] = "data:application/octet-stream;base64,";
    CHECK(contains(refusal("a.gltf", alone.dump()), why));
    CHECK(contains(refusal("a.glb", tests::glb_of(json, tests::gltf_buffer(head))), why));
  }
  const std::string glb = tests::glb_bytes(head);
  CHECK(contains(refusal("a.glb", glb.substr(0, 19)), "begin as a .glb"));
  CHECK(contains(refusal("a.glb", glb.substr(0, 400)), "ends before"));
  CHECK(contains(refusal("a.glb", glb.substr(0, glb.size() - 1)), "ends before"));
  CHECK(contains(refusal("a.gltf", good.dump()), "ends before"));  // names no file for its buffer
  std::string other = glb;
  other[other.find("BIN")] = 'b';
  CHECK(contains(refusal("a.glb", other), "ends before"));
  CHECK(contains(refusal("a.glb", good.dump()), "begin as a .glb"));
}

// The same: points and lines beside the triangles are left out; a stride that says nothing new, zeros after
// the text.
TEST_CASE("a glTF that looks odd and is allowed is read") {
  const RawMesh head = egg(2);
  const nlohmann::json good = tests::gltf_json(head, "", tests::no_transform, tests::no_transform);
  for (const int mode : {0, 1, 3}) {
    nlohmann::json with_lines = good;
    with_lines["meshes"][0]["primitives"].push_back(
        {{"attributes", {{"POSITION", 0}}}, {"indices", 1}, {"mode", mode}});
    const auto read = read_bytes_as("a.glb", tests::glb_of(with_lines, tests::gltf_buffer(head)));
    CHECK(read.skin.triangles().size() == head.triangles.size());
  }
  nlohmann::json odd = good;
  odd["meshes"][0]["primitives"][0].erase("mode");
  odd["accessors"][0]["byteOffset"] = 0;
  odd["bufferViews"][0]["byteStride"] = 12;
  if (odd.dump().size() % 4 == 0) odd["extras"] = "x";  // so that there is something to fill up
  std::string padded = tests::glb_of(odd, tests::gltf_buffer(head));
  CHECK(same_triangles(read_bytes_as("a.glb", padded).skin, head));
  const std::size_t end = padded.rfind('}') + 1;
  REQUIRE(padded[end] == ' ');
  for (std::size_t at = end; padded[at] == ' '; ++at) padded[at] = '\0';
  CHECK(same_triangles(read_bytes_as("a.glb", padded).skin, head));
}

TEST_CASE("a PLY whose header has no end is refused") {
  const TemporaryFolder folder;
  const std::string whole = tests::ply_text(egg(2));
  const auto file = tests::write_bytes(folder / "cut.ply", whole.substr(0, whole.find("end_header")));
  CHECK(is_sentence(tests::sentence_of<ModelError>([&] { (void)models::read_mesh(file); })));
}

TEST_CASE("a PLY file that promises more than it holds is refused, in text and in bytes") {
  const TemporaryFolder folder;
  const std::string text = tests::ply_text(egg(2)), bytes = tests::ply_bytes(egg(2));
  const auto replaced = [](std::string where, const std::string& from, const std::string& to) {
    const auto at = where.rfind(from);
    REQUIRE(at != std::string::npos);
    return where.replace(at, from.size(), to);
  };
  const auto last_face = text.rfind("\n3 ") + 1;
  const std::string before = text.substr(0, last_face);
  std::string long_list = bytes;
  long_list[long_list.size() - 13] = '\xff';  // the last face's number of corners
  for (const std::string& damaged :
       {before + "90000000 1 2 3\n",                         // a list shorter than it says
        before + "3 1 2\n",                                  // the same by one
        before + "-3 1 2 3\n", before + "x\n", before,       // no number; a line too few
        replaced(text, "element face ", "element face 9"),   // more faces than lines
        replaced(bytes, "element face ", "element face 9"),  // more than bytes
        replaced(bytes, "element vertex ", "element vertex 9999999999"),
        replaced(text, "element vertex ", "element vertex x"),
        replaced(text, "end_header\n", "end_header\v9\n"), replaced(text, "end_header\n", " end_header\n"),
        replaced(text, "element face ", "element vertex "),
        replaced(bytes, "element face ", "element vertex "),
        replaced(bytes, "end_header\n", "element face 0\nend_header\n"),
        replaced(bytes, "end_header\n", "element tristrips 0\nend_header\n"),
        replaced(text, "float z", "colour z"), bytes.substr(0, bytes.size() - 5), long_list}) {
    const auto file = tests::write_bytes(folder / "damaged.ply", damaged);
    const std::string said = tests::sentence_of<ModelError>([&] { (void)models::read_mesh(file); });
    CAPTURE(said);
    CHECK(is_sentence(said));
    CHECK(contains(said, "is damaged"));
  }
  // Whole, both are read.
  CHECK_NOTHROW(models::read_mesh(tests::write_bytes(folder / "text.ply", text)));
  CHECK_NOTHROW(models::read_mesh(tests::write_bytes(folder / "bytes.ply", bytes)));
}

TEST_CASE("a polygon with a corner that does not exist is refused before it is cut up") {
  const TemporaryFolder folder;
  const std::string text = tests::ply_text(egg(2));
  const auto file = tests::write_bytes(folder / "corner.ply",
                                       text.substr(0, text.rfind("\n3 ") + 1) + "4 0 1 2 90000000\n");
  const std::string said = tests::sentence_of<ModelError>([&] { (void)models::read_mesh(file); });
  CAPTURE(said);
  CHECK(contains(said, "a corner that does not exist"));
}
