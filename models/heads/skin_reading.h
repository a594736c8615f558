#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>

#include "models/heads/head_source.h"
#include "models/meshes/mesh_file.h"
#include "models/meshes/skin_import.h"

namespace scalpmark::models {

/// What is to be read: a mesh (with its unit, if known) or an MRI.
struct SkinRequest {
  HeadKind kind = HeadKind::mesh;
  std::filesystem::path file;
  std::optional<Unit> unit;
};

/// A way to read a skin. Refuses what read_mesh and read_mri refuse (ModelError).
using SkinReading = std::function<SkinImport(const SkinRequest&, const Progress&)>;

/// Reads here, in this process. In a file of its own, for a program that leaves reading to others.
[[nodiscard]] SkinImport read_skin(const SkinRequest& request, const Progress& progress);

/// What a process that reads may use. More than enough for two million triangles or a 512-voxel volume.
struct ReadingLimits {
  std::uint64_t memory_mb = 4096;
  unsigned cpu_seconds = 300;
  int silent_seconds = 120;  ///< without a word, it counts as stuck
};

/// Reads in a process of its own, so that a file that crashes, stalls or bloats a library's reader is one
/// sentence (ModelError) to the user and nothing is lost. `program` is ours; it is started as
/// `program read-skin ...` and answers as answer_skin_request does. When `progress` throws, the process is
/// ended and the exception passed on.
[[nodiscard]] SkinReading read_apart(std::filesystem::path program, ReadingLimits limits = {});

/// The other end: reads `request` under `limits` (by `read_here`) and writes progress, notes and the skin, or
/// the refusing sentence, to the file descriptor `out`. Whether it could be written.
bool answer_skin_request(const SkinRequest& request, const ReadingLimits& limits, int out,
                         const SkinReading& read_here = read_skin);

}  // namespace scalpmark::models
