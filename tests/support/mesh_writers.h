#pragma once

#include <Eigen/Core>
#include <array>
#include <cstdint>
#include <cstring>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "geometry/surface/surface.h"

namespace scalpmark::tests {

/// Triangles to be written as a mesh file byte by byte, good or bad.
struct RawMesh {
  std::vector<Eigen::Vector3d> vertices;
  std::vector<geometry::Triangle> triangles;

  RawMesh() = default;
  explicit RawMesh(const geometry::Surface& skin) : vertices(skin.vertices()), triangles(skin.triangles()) {}

  void add(const RawMesh& other) {
    const int first = static_cast<int>(vertices.size());
    vertices.insert(vertices.end(), other.vertices.begin(), other.vertices.end());
    for (const auto& [a, b, c] : other.triangles) triangles.push_back({a + first, b + first, c + first});
  }
  [[nodiscard]] RawMesh times(double factor) const {
    RawMesh scaled = *this;
    for (auto& v : scaled.vertices) v *= factor;
    return scaled;
  }
};

template <class Number>
void put_little_endian(std::string& bytes, Number number) {
  std::array<char, sizeof(Number)> raw{};
  std::memcpy(raw.data(), &number, sizeof(Number));  // the tests run on little-endian machines
  bytes.append(raw.data(), raw.size());
}

inline std::string obj_text(const RawMesh& mesh) {
  std::ostringstream out;
  out.precision(9);
  for (const auto& v : mesh.vertices) out << "v " << v.x() << ' ' << v.y() << ' ' << v.z() << '\n';
  for (const auto& [a, b, c] : mesh.triangles) out << "f " << a + 1 << ' ' << b + 1 << ' ' << c + 1 << '\n';
  return out.str();
}

/// Binary, little-endian.
inline std::string ply_bytes(const RawMesh& mesh) {
  std::string out =
      "ply\nformat binary_little_endian 1.0\nelement vertex " + std::to_string(mesh.vertices.size()) +
      "\nproperty float x\nproperty float y\nproperty float z\nelement face " +
      std::to_string(mesh.triangles.size()) + "\nproperty list uchar int vertex_indices\nend_header\n";
  const auto put = [&](auto number) {
    out.append(reinterpret_cast<const char*>(&number),
               sizeof number);  // the machines we know are little-endian
  };
  for (const auto& v : mesh.vertices)
    for (int k = 0; k < 3; ++k) put(static_cast<float>(v[k]));
  for (const auto& t : mesh.triangles) {
    put(std::uint8_t{3});
    for (const int corner : t) put(std::int32_t{corner});
  }
  return out;
}

inline std::string ply_text(const RawMesh& mesh) {
  std::ostringstream out;
  out.precision(9);
  out << "ply\nformat ascii 1.0\nelement vertex " << mesh.vertices.size()
      << "\nproperty float x\nproperty float y\nproperty float z\nelement face " << mesh.triangles.size()
      << "\nproperty list uchar int vertex_indices\nend_header\n";
  for (const auto& v : mesh.vertices) out << v.x() << ' ' << v.y() << ' ' << v.z() << '\n';
  for (const auto& [a, b, c] : mesh.triangles) out << "3 " << a << ' ' << b << ' ' << c << '\n';
  return out.str();
}

inline std::string stl_text(const RawMesh& mesh) {
  std::ostringstream out;
  out.precision(9);
  out << "solid head\n";
  for (const auto& t : mesh.triangles) {
    out << "facet normal 0 0 0\nouter loop\n";
    for (const int i : t) {
      const auto& v = mesh.vertices[static_cast<std::size_t>(i)];
      out << "vertex " << v.x() << ' ' << v.y() << ' ' << v.z() << '\n';
    }
    out << "endloop\nendfacet\n";
  }
  out << "endsolid head\n";
  return out.str();
}

inline std::string stl_bytes(const RawMesh& mesh) {
  std::string bytes(80, '\0');
  put_little_endian(bytes, static_cast<std::uint32_t>(mesh.triangles.size()));
  for (const auto& t : mesh.triangles) {
    for (int i = 0; i < 3; ++i) put_little_endian(bytes, 0.0F);
    for (const int i : t)
      for (int k = 0; k < 3; ++k)
        put_little_endian(bytes, static_cast<float>(mesh.vertices[static_cast<std::size_t>(i)][k]));
    put_little_endian(bytes, std::uint16_t{0});
  }
  return bytes;
}

/// Vertices as floats, then corner indices: the buffer of a glTF file.
inline std::string gltf_buffer(const RawMesh& mesh) {
  std::string bytes;
  for (const auto& v : mesh.vertices)
    for (int k = 0; k < 3; ++k) put_little_endian(bytes, static_cast<float>(v[k]));
  for (const auto& t : mesh.triangles)
    for (const int i : t) put_little_endian(bytes, static_cast<std::uint32_t>(i));
  return bytes;
}

/// The buffer as a URI that holds it (RFC 2397), in base64 (RFC 4648).
inline std::string data_uri(const std::string& bytes) {
  constexpr const char* letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  std::string uri = "data:application/octet-stream;base64,";
  for (std::size_t i = 0; i < bytes.size(); i += 3) {
    std::uint32_t three = 0;
    for (std::size_t k = 0; k < 3; ++k)
      three = three << 8U | (i + k < bytes.size() ? static_cast<unsigned char>(bytes[i + k]) : 0U);
    for (std::size_t k = 0; k < 4; ++k)
      uri += i + k > bytes.size() ? '=' : letters[three >> (18U - 6U * k) & 63U];
  }
  return uri;
}

/// A glTF 2.0 scene of one mesh under two nodes, whose transforms are the ones given (column-major).
/// `uri` empty: the buffer comes with the file (GLB).
inline nlohmann::json gltf_json(const RawMesh& mesh, const std::string& uri,
                                const std::array<double, 16>& outer, const std::array<double, 16>& inner) {
  const std::size_t vertex_bytes = 12 * mesh.vertices.size(), index_bytes = 12 * mesh.triangles.size();
  Eigen::Vector3f low = Eigen::Vector3f::Constant(1e30F), high = -low;
  for (const auto& v : mesh.vertices) {
    low = low.cwiseMin(v.cast<float>());
    high = high.cwiseMax(v.cast<float>());
  }
  nlohmann::json buffer{{"byteLength", vertex_bytes + index_bytes}};
  if (!uri.empty()) buffer["uri"] = uri;
  using nlohmann::json;
  json root;
  root["asset"] = {{"version", "2.0"}};
  root["scene"] = 0;
  root["scenes"] = json::array({{{"nodes", json::array({0})}}});
  root["nodes"] =
      json::array({{{"children", json::array({1})}, {"matrix", outer}}, {{"mesh", 0}, {"matrix", inner}}});
  root["meshes"] = json::array(
      {{{"primitives", json::array({{{"attributes", {{"POSITION", 0}}}, {"indices", 1}, {"mode", 4}}})}}});
  root["buffers"] = json::array({buffer});
  root["bufferViews"] =
      json::array({{{"buffer", 0}, {"byteOffset", 0}, {"byteLength", vertex_bytes}},
                   {{"buffer", 0}, {"byteOffset", vertex_bytes}, {"byteLength", index_bytes}}});
  root["accessors"] = json::array({{{"bufferView", 0},
                                    {"componentType", 5126},
                                    {"count", mesh.vertices.size()},
                                    {"type", "VEC3"},
                                    {"min", {low.x(), low.y(), low.z()}},
                                    {"max", {high.x(), high.y(), high.z()}}},
                                   {{"bufferView", 1},
                                    {"componentType", 5125},
                                    {"count", 3 * mesh.triangles.size()},
                                    {"type", "SCALAR"}}});
  return root;
}

inline constexpr std::array<double, 16> no_transform{1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1};

/// A .glb file of a description and its buffer.
inline std::string glb_of(const nlohmann::json& description, const std::string& buffer) {
  std::string text = description.dump();
  text.resize((text.size() + 3) / 4 * 4, ' ');
  std::string bytes;
  const auto word = [&](std::size_t n) { put_little_endian(bytes, static_cast<std::uint32_t>(n)); };
  word(0x46546C67);
  word(2);
  word(12 + 8 + text.size() + 8 + buffer.size());
  word(text.size());
  word(0x4E4F534A);
  bytes += text;
  word(buffer.size());
  word(0x004E4942);
  return bytes + buffer;
}

inline std::string glb_bytes(const RawMesh& mesh, const std::array<double, 16>& outer = no_transform,
                             const std::array<double, 16>& inner = no_transform) {
  return glb_of(gltf_json(mesh, "", outer, inner), gltf_buffer(mesh));
}

}  // namespace scalpmark::tests
