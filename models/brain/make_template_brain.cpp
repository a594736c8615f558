#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <string>
#include <vector>

#include "geometry/head/head.h"
#include "geometry/head/landmarks.h"
#include "models/brain/gyrus_names.h"
#include "models/brain/template_brain.h"
#include "models/brain/template_names.h"
#include "models/files/error.h"
#include "models/files/safe_file.h"
#include "models/mri/mri_file.h"
#include "models/mri/nifti_volume.h"
#include "models/mri/volume_surface.h"

namespace scalpmark::models {

namespace fs = std::filesystem;
using geometry::Atlas;
using geometry::TemplateBrain;

namespace {

constexpr std::size_t brain_triangles = 80000;

/// Nasion, inion and tragi of the template's head, placed by hand on its skin, where the published 10-5
/// positions of that head have them too (standard_1005.elc of the Debian package python3-mne). mm, the
/// template's frame.
const geometry::Fiducials head_points{{0.0083, 86.811, -39.983},
                                      {0.0045, -118.565, -23.078},
                                      {-86.0761, -19.9897, -47.986},
                                      {85.7939, -20.0093, -48.031}};

/// The brain volume with its fluid taken for air. In it, fluid has about half of the median intensity, grey
/// matter 0.9, white matter 1.2; with this taken off, half way between nothing and grey matter lies half way
/// between fluid and grey matter.
geometry::Surface brain_surface(const fs::path& file, const Progress& progress) {
  constexpr double fluid_share = 0.42;
  Volume brain = read_nifti(file).volume;
  std::vector<float> tissue;
  std::copy_if(brain.value.begin(), brain.value.end(), std::back_inserter(tissue),
               [](float v) { return v > 0; });
  if (tissue.empty())
    throw ModelError(
        Message::of("%1 holds no brain; install the package mricron-data again.", file.string()));
  const auto middle = tissue.begin() + static_cast<std::ptrdiff_t>(tissue.size() / 2);
  std::nth_element(tissue.begin(), middle, tissue.end());
  const auto fluid = static_cast<float>(fluid_share * static_cast<double>(*middle));
  for (float& v : brain.value) v = std::max(0.0F, v - fluid);
  return surface_of(brain, file.string(), brain_triangles, progress);
}

/// The regions of a volume whose intensities are region numbers, cropped to where there are any.
Atlas atlas_of(const fs::path& file, std::vector<std::string> names) {
  const Volume volume = read_nifti(file).volume;
  std::array<int, 3> low = volume.size, high{-1, -1, -1};
  const auto for_voxels = [&](auto visit) {
    for (int k = 0; k < volume.size[2]; ++k)
      for (int j = 0; j < volume.size[1]; ++j)
        for (int i = 0; i < volume.size[0]; ++i)
          visit(std::array{i, j, k}, volume.value[volume.index(i, j, k)]);
  };
  for_voxels([&](const std::array<int, 3>& at, float v) {
    if (v == 0.0F) return;
    if (!(v > 0 && v < 256) || v != std::floor(v))
      throw ModelError(
          Message::of("%1 holds a voxel that is no region's number; install the package mricron-data again.",
                      file.string()));
    for (std::size_t a = 0; a < 3; ++a) {
      low[a] = std::min(low[a], at[a]);
      high[a] = std::max(high[a], at[a]);
    }
  });
  if (high[0] < 0)
    throw ModelError(
        Message::of("%1 holds no region; install the package mricron-data again.", file.string()));
  Atlas atlas;
  for (std::size_t a = 0; a < 3; ++a) atlas.size[a] = high[a] - low[a] + 1;
  Eigen::Affine3d to_mm(volume.world);
  to_mm.translate(Eigen::Vector3d(low[0], low[1], low[2]));
  atlas.to_voxel = to_mm.inverse();
  atlas.label.reserve(static_cast<std::size_t>(atlas.size[0]) * static_cast<std::size_t>(atlas.size[1]) *
                      static_cast<std::size_t>(atlas.size[2]));
  for_voxels([&](const std::array<int, 3>& at, float v) {
    for (std::size_t a = 0; a < 3; ++a)
      if (at[a] < low[a] || at[a] > high[a]) return;
    atlas.label.push_back(static_cast<std::uint8_t>(v));
  });
  atlas.names = std::move(names);
  return atlas;
}

std::vector<std::string> area_names() {
  std::vector<std::string> names(256);
  for (std::size_t i = 1; i < names.size(); ++i) names[i] = "Brodmann area " + std::to_string(i);
  return names;
}

}  // namespace

TemplateBrain make_template_brain(const TemplateFiles& files, const Progress& progress) {
  const TemplateNames names(files.folder);
  const auto part = [&](const Message& what, double from, double to) -> Progress {
    return [&progress, what, from, to](const Message&, double fraction) {
      if (progress) progress(what, from + (to - from) * fraction);
    };
  };
  geometry::Surface brain =
      brain_surface(names.brain, part(Message::of("Making the template's brain, once"), 0, 0.45));
  std::vector<TemplateBrain::Position> positions;
  {
    const Progress tell = part(Message::of("Measuring the template's head, once"), 0.45, 0.9);
    const geometry::Head head(read_mri(names.head, tell).skin, head_points);
    for (const auto& l : geometry::landmarks(head, geometry::LandmarkSystem::ten_ten))
      positions.push_back({l.name, l.at});
  }
  const Progress tell = part(Message::of("Reading the regions of the brain, once"), 0.9, 1);
  tell({}, 0);
  Atlas areas = atlas_of(names.areas, area_names());
  Atlas gyri = atlas_of(names.gyri, gyrus_names(read_whole(names.gyrus_text, TemplateNames::largest_file),
                                                names.gyrus_text.string()));
  tell({}, 1);
  return {std::move(brain), std::move(positions), std::move(areas), std::move(gyri)};
}

}  // namespace scalpmark::models
