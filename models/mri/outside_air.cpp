#include "models/mri/outside_air.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

#include "geometry/base/index.h"
#include "models/mri/distance_map.h"

namespace scalpmark::models {

using geometry::at;

namespace {

using Size = std::array<int, 3>;

// What the flooding ball may not pass is closed: nostrils, ear canals and folds are narrower than 8 mm.
constexpr double ball_mm = 4;
// How far air may creep past the ball's reach, into folds behind the ear and the corner of the eye.
constexpr double creep_mm = 4;

/// Coarse voxels that the ball covers when it comes in from an edge of the box. The ball may also roll
/// outside the box, past a head that nearly touches its side; there the voxels at the side go on unchanged,
/// so that an airway cut open at the neck is a tube without an end and is not entered.
Mask flood_with_ball(const Coarse& coarse, const Mask& tissue) {
  const Size inner = coarse.grid.size;
  Size margin{}, size{};
  for (std::size_t a = 0; a < 3; ++a) {
    margin[a] = static_cast<int>(std::ceil(ball_mm / coarse.mm[static_cast<int>(a)])) + 2;
    size[a] = inner[a] + 2 * margin[a];
  }
  const Grid grid(size);
  const auto inner_index = [&](const Size& p) {
    std::array<std::size_t, 3> q{};
    for (std::size_t a = 0; a < 3; ++a) q[a] = at(std::clamp(p[a] - margin[a], 0, inner[a] - 1));
    return q[0] + at(inner[0]) * (q[1] + at(inner[1]) * q[2]);
  };
  Mask blocked(grid.count());
  for (std::size_t v = 0; v < blocked.size(); ++v) blocked[v] = tissue[inner_index(grid.place(v))];

  const std::vector<float> clear = squared_distance(grid, coarse.mm, blocked);
  const float reach = static_cast<float>(ball_mm * ball_mm);
  Mask reached(grid.count(), 0);
  std::vector<std::size_t> waiting;
  for (std::size_t v = 0; v < reached.size(); ++v) {
    if (clear[v] <= reach) continue;
    const Size p = grid.place(v);
    int sides = 0;
    for (std::size_t a = 0; a < 3; ++a) sides += p[a] == 0 || p[a] == size[a] - 1;
    if (sides < 2) continue;
    reached[v] = 1;
    waiting.push_back(v);
  }
  while (!waiting.empty()) {
    const std::size_t v = waiting.back();
    waiting.pop_back();
    grid.for_neighbours(v, [&](std::size_t w, std::size_t) {
      if (reached[w] || clear[w] <= reach) return;
      reached[w] = 1;
      waiting.push_back(w);
    });
  }

  const std::vector<float> from_centre = squared_distance(grid, coarse.mm, reached);
  Mask covered(coarse.grid.count(), 0);
  for (std::size_t v = 0; v < covered.size(); ++v) {
    Size p = coarse.grid.place(v);
    for (std::size_t a = 0; a < 3; ++a) p[a] += margin[a];
    const std::size_t w = at(p[0]) + at(size[0]) * (at(p[1]) + at(size[1]) * at(p[2]));
    covered[v] = from_centre[w] <= reach;
  }
  return covered;
}

/// From the ball's flood, air creeps voxel by voxel up to the skin.
Mask creep_to_skin(const Coarse& coarse, const Volume& scan, const Mask& covered, const Mask& tissue) {
  const Grid grid(scan.size);
  Mask outside(grid.count(), 0);
  std::vector<std::size_t> front, next;
  std::size_t v = 0;
  for (int k = 0; k < scan.size[2]; ++k)
    for (int j = 0; j < scan.size[1]; ++j) {
      const std::size_t row = coarse.over({0, j, k});
      for (int i = 0; i < scan.size[0]; ++i, ++v) outside[v] = covered[row + at(i / coarse.block[0])];
    }
  for (v = 0; v < outside.size(); ++v)
    if (outside[v]) {
      bool edge = false;
      grid.for_neighbours(v, [&](std::size_t w, std::size_t) { edge = edge || (!outside[w] && !tissue[w]); });
      if (edge) front.push_back(v);
    }
  // A coarse voxel that holds some tissue is out of the ball's reach; its own size adds to the way.
  const double way_mm = coarse.mm.maxCoeff() + creep_mm;
  const int rounds = static_cast<int>(std::ceil(way_mm / scan.voxel_mm().minCoeff()));
  for (int round = 0; round < rounds && !front.empty(); ++round) {
    next.clear();
    for (const std::size_t u : front)
      grid.for_neighbours(u, [&](std::size_t w, std::size_t) {
        if (outside[w] || tissue[w]) return;
        outside[w] = 1;
        next.push_back(w);
      });
    front.swap(next);
  }
  return outside;
}

/// Of what is not outside, only the largest connected body stays.
void keep_largest_body(const Volume& scan, Mask& outside) {
  const Grid grid(scan.size);
  std::vector<std::size_t> best, body, waiting;
  Mask seen = outside;
  for (std::size_t v = 0; v < seen.size(); ++v) {
    if (seen[v]) continue;
    body.assign(1, v);
    seen[v] = 1;
    for (std::size_t n = 0; n < body.size(); ++n)
      grid.for_neighbours(body[n], [&](std::size_t w, std::size_t) {
        if (seen[w]) return;
        seen[w] = 1;
        body.push_back(w);
      });
    if (body.size() > best.size()) best.swap(body);
  }
  std::fill(outside.begin(), outside.end(), std::uint8_t{1});
  for (const std::size_t v : best) outside[v] = 0;
}

/// Keeps of a mask only what a cross of one voxel all round fits into, and two voxels about that: hairs and
/// cracks of one or two voxels go, the rest stays as it is. Past the sides of the volume the mask goes on
/// unchanged.
Mask without_hairs(const Grid& grid, const Mask& mask) {
  Mask core = mask;
  std::vector<std::size_t> front, next;
  for (std::size_t v = 0; v < mask.size(); ++v)
    if (mask[v]) grid.for_neighbours(v, [&](std::size_t w, std::size_t) { core[v] = core[v] && mask[w]; });
  for (std::size_t v = 0; v < mask.size(); ++v) {
    if (!mask[v] || core[v]) continue;
    bool touches = false;
    grid.for_neighbours(v, [&](std::size_t w, std::size_t) { touches = touches || core[w]; });
    if (touches) front.push_back(v);
  }
  for (const std::size_t v : front) core[v] = 1;
  for (const std::size_t v : front)
    grid.for_neighbours(v, [&](std::size_t w, std::size_t) {
      if (core[w] || !mask[w]) return;
      next.push_back(w);
    });
  for (const std::size_t v : next) core[v] = 1;
  return core;
}

}  // namespace

std::optional<Mask> outside_air(const Coarse& coarse, const Volume& scan, const Mask& tissue) {
  // A coarse voxel is air only if all of it is: thin skin must not leak.
  Mask rough(coarse.grid.count(), 0);
  std::size_t v = 0;
  for (int k = 0; k < scan.size[2]; ++k)
    for (int j = 0; j < scan.size[1]; ++j) {
      const std::size_t row = coarse.over({0, j, k});
      for (int i = 0; i < scan.size[0]; ++i, ++v) rough[row + at(i / coarse.block[0])] |= tissue[v];
    }
  const Mask covered = flood_with_ball(coarse, rough);
  if (std::none_of(covered.begin(), covered.end(), [](std::uint8_t c) { return c != 0; })) return {};
  Mask outside = creep_to_skin(coarse, scan, covered, tissue);
  const Grid grid(scan.size);
  outside = without_hairs(grid, outside);
  for (std::uint8_t& o : outside) o = !o;
  outside = without_hairs(grid, outside);
  for (std::uint8_t& o : outside) o = !o;
  keep_largest_body(scan, outside);
  return outside;
}

}  // namespace scalpmark::models
