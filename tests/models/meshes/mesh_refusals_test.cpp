// Meshes that are refused, or look odd and are not.
#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <limits>

#include "models/files/error.h"
#include "tests/support/mesh_files.h"

using namespace scalpmark;
using namespace scalpmark::tests;
using Eigen::Vector3d;
using models::ModelError;
using models::Unit;

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
        std::string("http://localhost/head.bin"), "file://" + (folder / "head.bin").string(),
        std::string(5000, 'x'), std::string(5000, 'x') + ".bin", std::string("two\nlines.bin")}) {
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
