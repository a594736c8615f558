#include "models/meshes/triangle_soup.h"

#include <assimp/BaseImporter.h>
#include <assimp/MemoryIOWrapper.h>
#include <assimp/config.h>
#include <assimp/importerdesc.h>
#include <assimp/postprocess.h>
#include <assimp/scene.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <assimp/IOSystem.hpp>
#include <assimp/Importer.hpp>
#include <cctype>
#include <memory>
#include <sstream>
#include <stdexcept>

#include "models/files/cut_short.h"
#include "models/files/error.h"
#include "models/files/safe_file.h"
#include "models/meshes/gltf_check.h"
#include "models/meshes/ply_check.h"
#include "models/meshes/print_marks.h"

// Debian's Assimp is built with its assertions on: a damaged file can fail one, and the program would end
// there. The call goes through the dynamic linker, so that this definition takes the place of the library's
// and turns it into an exception, which ReadFile passes on as a failed read. (The library does not export
// setAiAssertHandler, which is meant for this.)
namespace Assimp {
void aiAssertViolation(const char* expression, const char* file, int line);
void aiAssertViolation(const char* expression, const char*, int) {
  throw std::runtime_error(std::string("the file is damaged; it fails the check ") + expression);
}
}  // namespace Assimp

namespace scalpmark::models {

namespace fs = std::filesystem;
using Eigen::Vector3d;

namespace {

constexpr std::size_t largest_file = std::size_t{512} << 20U;  // bytes
constexpr std::size_t most_triangles = 10'000'000;

std::string lower(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return text;
}

/// The kind of mesh by the end of the file's name: "obj", "ply", ...
std::string kind_of(const fs::path& file) {
  const std::string end = lower(file.extension().string());
  for (const char* kind : {"obj", "ply", "stl", "gltf", "glb"})
    if (end == std::string(".") + kind) return kind;
  throw ModelError(Message::of(
      "%1 is not a mesh file read here; choose an .obj, .ply, .stl, .gltf or .glb file.", file.string()));
}

/// A message of Assimp's as part of a sentence.
std::string one_line(std::string text) {
  for (char& c : text)
    if (static_cast<unsigned char>(c) < 32 || static_cast<unsigned char>(c) > 126) c = ' ';
  if (text.size() > 120) text = text.substr(0, 120) + "...";
  return text;
}

class OwnedStream : public Assimp::IOStream {
public:
  explicit OwnedStream(std::string bytes)
      : bytes_(std::move(bytes)),
        stream_(reinterpret_cast<const std::uint8_t*>(bytes_.data()), bytes_.size()) {}
  std::size_t Read(void* into, std::size_t size, std::size_t count) override {
    return size == 0 ? 0 : stream_.Read(into, size, count);
  }
  std::size_t Write(const void*, std::size_t, std::size_t) override { return 0; }
  aiReturn Seek(std::size_t offset, aiOrigin origin) override { return stream_.Seek(offset, origin); }
  [[nodiscard]] std::size_t Tell() const override { return stream_.Tell(); }
  [[nodiscard]] std::size_t FileSize() const override { return bytes_.size(); }
  void Flush() override {}

private:
  std::string bytes_;
  Assimp::MemoryIOStream stream_;
};

/// All that Assimp gets to see of the disk: the file itself, under a name of ours, and a glTF's data files
/// beside it.
class OnlyBeside : public Assimp::IOSystem {
public:
  OnlyBeside(std::string name, std::string bytes, fs::path folder, bool with_data_files)
      : name_(std::move(name)),
        bytes_(std::move(bytes)),
        folder_(std::move(folder)),
        with_data_files_(with_data_files) {}

  [[nodiscard]] bool Exists(const char* file) const override {
    if (is_the_file(file)) return true;
    std::error_code ignored;
    return is_data_file(file) && fs::is_regular_file(folder_ / plain(file), ignored);
  }
  [[nodiscard]] char getOsSeparator() const override { return '/'; }
  Assimp::IOStream* Open(const char* file, const char*) override {
    if (is_the_file(file)) return new OwnedStream(bytes_);
    if (!with_data_files_) return nullptr;  // materials and pictures: not wanted
    if (!is_data_file(file)) {
      refused_ = Message::of("points at %1, which is not a .bin file beside it", cut_short(plain(file)));
      return nullptr;
    }
    try {
      return new OwnedStream(read_whole(folder_ / plain(file), largest_file));
    } catch (const ModelError&) {
      refused_ = Message::of("points at %1, which cannot be read", cut_short(plain(file)));
      return nullptr;
    }
  }
  void Close(Assimp::IOStream* stream) override { delete stream; }

  /// What was asked for and not given; empty when nothing.
  [[nodiscard]] const Message& refused() const { return refused_; }

private:
  [[nodiscard]] static std::string plain(std::string_view file) {
    while (file.starts_with("./")) file.remove_prefix(2);
    return std::string(file);
  }
  [[nodiscard]] bool is_the_file(std::string_view file) const { return plain(file) == name_; }
  [[nodiscard]] bool is_data_file(std::string_view file) const {
    const std::string name = plain(file);
    return with_data_files_ && name.find_first_of("/\\:") == std::string::npos &&
           lower(name).ends_with(".bin");
  }

  std::string name_, bytes_;
  fs::path folder_;
  bool with_data_files_;
  Message refused_;
};

/// Only the readers of this kind, so that no other of Assimp's many sees the bytes.
std::vector<std::unique_ptr<Assimp::BaseImporter>> keep_readers_of(Assimp::Importer& importer,
                                                                   const std::string& kind) {
  std::vector<std::unique_ptr<Assimp::BaseImporter>> others;
  for (std::size_t i = importer.GetImporterCount(); i-- > 0;) {
    std::istringstream ends(importer.GetImporterInfo(i)->mFileExtensions);
    bool reads = false;
    for (std::string end; ends >> end;) reads = reads || end == kind;
    if (reads) continue;
    Assimp::BaseImporter* other = importer.GetImporter(i);
    if (importer.UnregisterLoader(other) == aiReturn_SUCCESS) others.emplace_back(other);
  }
  return others;
}

Eigen::Affine3d transform_of(const aiMatrix4x4& m) {
  Eigen::Matrix4d out;
  out << static_cast<double>(m.a1), static_cast<double>(m.a2), static_cast<double>(m.a3),
      static_cast<double>(m.a4), static_cast<double>(m.b1), static_cast<double>(m.b2),
      static_cast<double>(m.b3), static_cast<double>(m.b4), static_cast<double>(m.c1),
      static_cast<double>(m.c2), static_cast<double>(m.c3), static_cast<double>(m.c4), 0, 0, 0, 1;
  return Eigen::Affine3d(out);
}

void append(Mesh& mesh, const aiMesh& part, const Eigen::Affine3d& placed, const std::string& name) {
  const auto first = static_cast<int>(mesh.vertices.size());
  if (mesh.triangles.size() + part.mNumFaces > most_triangles ||
      mesh.vertices.size() + part.mNumVertices > 3 * most_triangles)
    throw ModelError(Message::of("%1 has more than %2 triangles; thin it in the program that made it.", name,
                                 most_triangles));
  for (unsigned v = 0; v < part.mNumVertices; ++v) {
    const aiVector3D& p = part.mVertices[v];
    mesh.vertices.push_back(
        placed * Vector3d(static_cast<double>(p.x), static_cast<double>(p.y), static_cast<double>(p.z)));
    if (!mesh.vertices.back().allFinite() || mesh.vertices.back().cwiseAbs().maxCoeff() > 1e12)
      throw ModelError(
          Message::of("%1 has a coordinate that is not a usable number (vertex %2); export it again.", name,
                      mesh.vertices.size()));
  }
  for (unsigned f = 0; f < part.mNumFaces; ++f) {
    const aiFace& face = part.mFaces[f];
    if (face.mNumIndices != 3) continue;  // points and lines
    geometry::Triangle t{};
    for (unsigned k = 0; k < 3; ++k) t[k] = first + static_cast<int>(face.mIndices[k]);
    mesh.triangles.push_back(t);
  }
}

/// Assimp cuts polygons into triangles without looking whether their corners exist.
void check_corners(const aiScene& scene, const std::string& name) {
  for (unsigned m = 0; m < scene.mNumMeshes; ++m)
    for (unsigned f = 0; f < scene.mMeshes[m]->mNumFaces; ++f) {
      const aiFace& face = scene.mMeshes[m]->mFaces[f];
      if (std::any_of(face.mIndices, face.mIndices + face.mNumIndices,
                      [&](unsigned v) { return v >= scene.mMeshes[m]->mNumVertices; }))
        throw ModelError(
            Message::of("%1 has a triangle with a corner that does not exist; export it again.", name));
    }
}

bool has_polygons(const aiScene& scene) {
  for (unsigned m = 0; m < scene.mNumMeshes; ++m)
    for (unsigned f = 0; f < scene.mMeshes[m]->mNumFaces; ++f)
      if (scene.mMeshes[m]->mFaces[f].mNumIndices > 3) return true;
  return false;
}

struct Placed {
  const aiNode* node;
  Eigen::Affine3d to_file;
};

}  // namespace

Mesh read_triangle_soup(const fs::path& file) {
  const std::string name = file.string();
  std::error_code ignored;
  if (fs::is_directory(file, ignored))
    throw ModelError(Message::of("%1 is a folder; choose a mesh file in it.", name));
  if (!fs::exists(file, ignored)) throw ModelError(Message::of("%1 does not exist; check the name.", name));
  const std::string kind = kind_of(file);
  std::string bytes = read_whole(file, largest_file);
  if (bytes.empty()) throw ModelError(Message::of("%1 is empty; export it again.", name));
  if (kind == "ply") check_ply(bytes, name);
  if (kind == "stl") bytes = without_print_marks(std::move(bytes));
  if (kind == "gltf" || kind == "glb") check_gltf(bytes, kind == "glb", name);

  std::vector<std::unique_ptr<Assimp::BaseImporter>> not_used;
  Assimp::Importer importer;
  not_used = keep_readers_of(importer, kind);
  auto* disk =
      new OnlyBeside("mesh." + kind, std::move(bytes), file.parent_path(), kind == "gltf" || kind == "glb");
  importer.SetIOHandler(disk);  // which owns it from here
  Mesh mesh;
  const aiScene* scene = nullptr;
  std::string why;
  const auto ask = [&](const auto& work) {
    try {
      scene = work();
      why = importer.GetErrorString();
    } catch (const std::exception& error) {
      scene = nullptr;
      why = error.what();
    }
  };
  ask([&] { return importer.ReadFile("mesh." + kind, 0); });
  if (scene != nullptr) {
    check_corners(*scene, name);
    if (has_polygons(*scene)) ask([&] { return importer.ApplyPostProcessing(aiProcess_Triangulate); });
  }
  if (!disk->refused().empty())
    throw ModelError(Message::of("%1 %2; export it as one .glb file.", name, disk->refused()));
  if (scene == nullptr || scene->mRootNode == nullptr)
    throw ModelError(why.empty() ? Message::of("%1 could not be read as a mesh; export it again.", name)
                                 : Message::of("%1 could not be read as a mesh (%2); export it again.", name,
                                               one_line(why)));

  std::vector<Placed> waiting{{scene->mRootNode, transform_of(scene->mRootNode->mTransformation)}};
  while (!waiting.empty()) {
    const Placed here = waiting.back();
    waiting.pop_back();
    for (unsigned m = 0; m < here.node->mNumMeshes; ++m)
      append(mesh, *scene->mMeshes[here.node->mMeshes[m]], here.to_file, name);
    for (unsigned c = here.node->mNumChildren; c-- > 0;) {
      const aiNode* child = here.node->mChildren[c];
      waiting.push_back({child, here.to_file * transform_of(child->mTransformation)});
    }
  }
  if (mesh.triangles.empty())
    throw ModelError(Message::of("%1 holds no triangles; choose a mesh of the head's skin.", name));
  return mesh;
}

}  // namespace scalpmark::models
