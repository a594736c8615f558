#include <assimp/GltfMaterial.h>
#include <assimp/material.h>
#include <assimp/mesh.h>
#include <assimp/scene.h>

#include <algorithm>
#include <assimp/Exporter.hpp>
#include <bit>
#include <cmath>
#include <cstring>
#include <nlohmann/json.hpp>

#include "geometry/base/message.h"
#include "models/exports/export_file.h"
#include "models/files/error.h"
#include "models/files/made_by.h"

namespace scalpmark::models {

using Eigen::Vector3d;
using geometry::Message;
using nlohmann::ordered_json;

namespace {

static_assert(std::endian::native == std::endian::little, "GLB is little-endian, and written as it stands");

aiVector3D for_assimp(const Vector3d& v) {
  return {static_cast<ai_real>(v.x()), static_cast<ai_real>(v.y()), static_cast<ai_real>(v.z())};
}

/// `normals`: at each corner; none for things with flat faces, which viewers shade as such.
aiMesh* mesh_for_assimp(const std::string& name, const std::vector<Vector3d>& vertices,
                        const std::vector<geometry::Triangle>& triangles,
                        const std::vector<Vector3d>& normals) {
  auto* mesh = new aiMesh;
  mesh->mName = name;
  mesh->mPrimitiveTypes = aiPrimitiveType_TRIANGLE;
  mesh->mNumVertices = static_cast<unsigned>(vertices.size());
  mesh->mVertices = new aiVector3D[vertices.size()];
  std::transform(vertices.begin(), vertices.end(), mesh->mVertices, for_assimp);
  if (!normals.empty()) {
    mesh->mNormals = new aiVector3D[normals.size()];
    std::transform(normals.begin(), normals.end(), mesh->mNormals, for_assimp);
  }
  mesh->mNumFaces = static_cast<unsigned>(triangles.size());
  mesh->mFaces = new aiFace[triangles.size()];
  for (std::size_t f = 0; f < triangles.size(); ++f) {
    mesh->mFaces[f].mNumIndices = 3;
    mesh->mFaces[f].mIndices = new unsigned[3];
    for (std::size_t k = 0; k < 3; ++k) mesh->mFaces[f].mIndices[k] = static_cast<unsigned>(triangles[f][k]);
  }
  return mesh;
}

/// glTF's colours are linear in light; ours are as screens take them (sRGB, IEC 61966-2-1).
float linear(std::uint8_t value) {
  const double v = value / 255.0;
  return static_cast<float>(v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4));
}

aiMaterial* material_for_assimp(const std::string& name, const ExportColour& c) {
  auto* material = new aiMaterial;
  const aiString called(name);
  material->AddProperty(&called, AI_MATKEY_NAME);
  const aiColor4D colour(linear(c.red), linear(c.green), linear(c.blue), static_cast<float>(c.opacity));
  material->AddProperty(&colour, 1, AI_MATKEY_BASE_COLOR);
  const ai_real matte = 0;
  material->AddProperty(&matte, 1, AI_MATKEY_METALLIC_FACTOR);
  if (c.opacity < 1) {
    const aiString blend("BLEND");
    material->AddProperty(&blend, AI_MATKEY_GLTF_ALPHAMODE);
  }
  const int both_sides = 1;  // windings have no thickness
  material->AddProperty(&both_sides, 1, AI_MATKEY_TWOSIDED);
  return material;
}

/// A mesh, a material and a node each for the skin and for every part.
void fill(aiScene& scene, const ExportHead& head) {
  const std::size_t count = 1 + head.parts.size();
  scene.mNumMeshes = scene.mNumMaterials = static_cast<unsigned>(count);
  scene.mMeshes = new aiMesh*[count];
  scene.mMaterials = new aiMaterial*[count];
  scene.mRootNode = new aiNode("head");
  scene.mRootNode->mNumChildren = static_cast<unsigned>(count);
  scene.mRootNode->mChildren = new aiNode*[count];
  for (std::size_t i = 0; i < count; ++i) {
    const std::string name = i == 0 ? "skin" : head.parts[i - 1].name;
    scene.mMeshes[i] =
        i == 0
            ? mesh_for_assimp(name, head.skin.vertices(), head.skin.triangles(), head.skin.vertex_normals())
            : mesh_for_assimp(name, head.parts[i - 1].mesh.vertices, head.parts[i - 1].mesh.triangles, {});
    scene.mMaterials[i] = material_for_assimp(name, i == 0 ? head.skin_colour : head.parts[i - 1].colour);
    scene.mMeshes[i]->mMaterialIndex = static_cast<unsigned>(i);
    auto* node = new aiNode(name);
    node->mParent = scene.mRootNode;
    node->mNumMeshes = 1;
    node->mMeshes = new unsigned[1]{static_cast<unsigned>(i)};
    scene.mRootNode->mChildren[i] = node;
  }
}

/// From the head's frame in mm to glTF's: metres, +Y up, +Z to the front, so that +X is the patient's left
/// (Khronos, glTF 2.0 Specification, 3.4). By columns.
std::vector<double> to_gltf(const geometry::HeadAxes& axes) {
  Eigen::Matrix4d m = Eigen::Matrix4d::Identity();
  m.block<1, 3>(0, 0) = -axes.right.transpose() / 1000;
  m.block<1, 3>(1, 0) = axes.up.transpose() / 1000;
  m.block<1, 3>(2, 0) = axes.front.transpose() / 1000;
  return {m.data(), m.data() + m.size()};
}

constexpr std::size_t glb_header = 12, chunk_header = 8;

std::uint32_t whole_at(const std::string& bytes, std::size_t at) {
  std::uint32_t n = 0;
  std::memcpy(&n, bytes.data() + at, sizeof n);
  return n;
}

void set_whole(std::string& bytes, std::size_t at, std::size_t number) {
  const auto n = static_cast<std::uint32_t>(number);
  std::memcpy(bytes.data() + at, &n, sizeof n);
}

/// What Assimp cannot be told: who made it (first, so that it is found at once), the exact frame, and that no
/// extension is used, of which it names two all the same.
std::string with_our_heading(const std::string& glb, const geometry::HeadAxes& axes) {
  const std::size_t json_size = whole_at(glb, glb_header);
  const auto written = ordered_json::parse(glb.substr(glb_header + chunk_header, json_size));
  ordered_json json;
  json["asset"] = {{"version", "2.0"}, {"generator", made_by()}};
  for (const auto& [key, value] : written.items())
    if (key != "asset" && key != "extensionsUsed") json[key] = value;
  json["nodes"][json["scenes"][0]["nodes"][0].get<std::size_t>()]["matrix"] = to_gltf(axes);
  std::string text = json.dump();
  text.resize((text.size() + 3) / 4 * 4, ' ');
  std::string out =
      glb.substr(0, glb_header + chunk_header) + text + glb.substr(glb_header + chunk_header + json_size);
  set_whole(out, 8, out.size());
  set_whole(out, glb_header, text.size());
  return out;
}

}  // namespace

std::string glb_bytes(const ExportHead& head) {
  aiScene scene;
  fill(scene, head);
  Assimp::Exporter exporter;
  const aiExportDataBlob* blob = exporter.ExportToBlob(&scene, "glb2", 0);
  if (blob == nullptr || blob->size < glb_header + chunk_header)
    throw ModelError(
        Message::of("The head could not be written as glTF; close other programs and try again."));
  return with_our_heading({static_cast<const char*>(blob->data), blob->size}, head.axes);
}

}  // namespace scalpmark::models
