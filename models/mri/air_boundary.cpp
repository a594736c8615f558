#include "models/mri/air_boundary.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>

#include "models/files/error.h"
#include "models/mri/coarse_grid.h"
#include "models/mri/dark_and_bright.h"
#include "models/mri/outside_air.h"
#include "models/mri/skin_intensity.h"
#include "models/mri/voxel_grid.h"

namespace scalpmark::models {

namespace {

using Size = std::array<int, 3>;

[[noreturn]] void no_head(const std::string& name, const Message& why) {
  throw ModelError(Message::of(
      "%1 shows no head that stands out from the air (%2); choose a scan of the whole head with air around it.",
      name, why));
}

/// Where air and body meet in a checkerboard (on a face of four voxels), a contour has no single answer and
/// could touch itself; the air voxel nearest to the level joins the body. Repeats until none is left.
void settle_checkerboards(Volume& block, float level) {
  const Grid grid(block.size);
  const auto inside = [&](std::size_t v) { return block.value[v] >= level; };
  bool changed = true;
  for (int round = 0; changed && round < 50; ++round) {
    changed = false;
    for (int k = 0; k < block.size[2]; ++k)
      for (int j = 0; j < block.size[1]; ++j)
        for (int i = 0; i < block.size[0]; ++i) {
          const Size p{i, j, k};
          const std::size_t v = block.index(i, j, k);
          for (std::size_t a = 0; a < 3; ++a) {
            const std::size_t b = (a + 1) % 3;
            if (p[a] + 1 >= block.size[a] || p[b] + 1 >= block.size[b]) continue;
            const std::size_t va = v + static_cast<std::size_t>(grid.step[a]);
            const std::size_t vb = v + static_cast<std::size_t>(grid.step[b]);
            const std::size_t vab = va + static_cast<std::size_t>(grid.step[b]);
            if (inside(v) != inside(vab) || inside(va) != inside(vb) || inside(v) == inside(va)) continue;
            const std::size_t one = inside(v) ? va : v, other = inside(v) ? vb : vab;
            block.value[block.value[one] > block.value[other] ? one : other] = level + 0.02F;
            changed = true;
          }
        }
  }
}

void check_extent(const Volume& scan, const Mask& outside, const std::string& name) {
  Eigen::AlignedBox3d box;
  std::size_t v = 0;
  for (int k = 0; k < scan.size[2]; ++k)
    for (int j = 0; j < scan.size[1]; ++j)
      for (int i = 0; i < scan.size[0]; ++i, ++v)
        if (!outside[v]) box.extend((scan.world * Eigen::Vector4d(i, j, k, 1)).head<3>());
  if (box.isEmpty()) no_head(name, Message::of("nothing is brighter than the air"));
  // A head leaves much of its box to the air; a box full of noise does not.
  constexpr double least_air = 0.03;
  const auto air = static_cast<double>(std::count(outside.begin(), outside.end(), std::uint8_t{1}));
  if (air < least_air * static_cast<double>(outside.size()))
    no_head(name, Message::of("hardly any air around it"));
  const Eigen::Vector3d extent = box.sizes();
  const auto rounded = [](double mm) { return std::lround(mm); };
  if (extent.minCoeff() < 100 || extent.maxCoeff() > 400)
    no_head(name, Message::of("what stands out is %1 x %2 x %3 mm", rounded(extent[0]), rounded(extent[1]),
                              rounded(extent[2])));
}

Mask outside_or_refuse(const Coarse& coarse, const Volume& scan, const Mask& tissue,
                       const std::string& name) {
  std::optional<Mask> outside = outside_air(coarse, scan, tissue);
  if (!outside) no_head(name, Message::of("no air at the edges of the volume"));
  check_extent(scan, *outside, name);
  return *std::move(outside);
}

}  // namespace

AirBoundary find_air_boundary(const Volume& scan, const std::string& name) {
  const auto global = dark_and_bright(scan);
  if (!global) no_head(name, Message::of("every voxel is alike"));
  const Coarse coarse(scan);

  Mask tissue(scan.value.size());
  for (std::size_t v = 0; v < tissue.size(); ++v) tissue[v] = scan.value[v] >= global->threshold;
  Mask outside = outside_or_refuse(coarse, scan, tissue, name);

  // Half way between air and the skin nearby, from place to place. A fifth of the global threshold is the
  // least that still stands out from noise.
  const CoarseField skin = skin_intensity(coarse, scan, outside, tissue);
  const float least = 0.2F * (global->threshold - global->dark);
  Volume relative;  // 0 = air, 0.5 = the skin's edge, 1 = skin
  relative.size = scan.size;
  relative.value.resize(scan.value.size());
  skin.for_each(scan.size, [&](std::size_t v, float s) {
    const float half = std::max(least, 0.5F * (s - global->dark));
    relative.value[v] = 0.5F * (scan.value[v] - global->dark) / half;
    tissue[v] = relative.value[v] >= 0.5F;
  });
  outside = outside_or_refuse(coarse, scan, tissue, name);

  AirBoundary result;
  Volume& block = result.block;
  const float level = result.level;
  block.size = {scan.size[0] + 2, scan.size[1] + 2, scan.size[2] + 2};
  block.world = scan.world;
  block.world.col(3) -= scan.world.col(0) + scan.world.col(1) + scan.world.col(2);
  block.value.assign(Grid(block.size).count(), 0.0F);
  // Raised and lowered voxels stay clear of the level, so that no contour comes within a hair of a voxel.
  constexpr float clear = 0.02F;
  std::size_t v = 0;
  for (int k = 0; k < scan.size[2]; ++k)
    for (int j = 0; j < scan.size[1]; ++j)
      for (int i = 0; i < scan.size[0]; ++i, ++v) {
        const float r = relative.value[v];
        float& b = block.value[block.index(i + 1, j + 1, k + 1)];
        if (outside[v])
          b = r < level ? std::clamp(r, -level, level - clear) : 0.0F;
        else
          b = r >= level ? std::max(r, level + clear) : std::clamp(2 * level - r, level + clear, 3 * level);
      }
  settle_checkerboards(block, level);
  // A cut-off neck ends half a voxel past the last one: mirrored about the level.
  const Size n = block.size;
  for (std::size_t a = 0; a < 3; ++a) {
    const std::size_t b = (a + 1) % 3, c = (a + 2) % 3;
    for (const bool far : {false, true}) {
      Size p{};
      for (p[c] = 1; p[c] + 1 < n[c]; ++p[c])
        for (p[b] = 1; p[b] + 1 < n[b]; ++p[b]) {
          p[a] = far ? n[a] - 2 : 1;
          const float last = block.value[block.index(p[0], p[1], p[2])];
          p[a] = far ? n[a] - 1 : 0;
          if (last >= level) block.value[block.index(p[0], p[1], p[2])] = 2 * level - last;
        }
    }
  }
  return result;
}

}  // namespace scalpmark::models
