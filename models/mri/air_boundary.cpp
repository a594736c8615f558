#include "models/mri/air_boundary.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <cstdint>

#include "models/files/error.h"
#include "models/mri/dark_and_bright.h"
#include "models/mri/distance_map.h"
#include "models/mri/voxel_grid.h"

namespace scalpmark::models {

namespace {

using Size = std::array<int, 3>;

// What the flooding ball may not pass is closed: nostrils, ear canals and folds are narrower than 8 mm.
constexpr double ball_mm = 4;
// How far air may creep past the ball's reach, into folds behind the ear and the corner of the eye.
constexpr double creep_mm = 4;
// The skin's own intensity is read at this depth: past the blurred edge, in the 5 to 7 mm of the scalp
// (memory).
constexpr double skin_from_mm = 1.4, skin_to_mm = 5.1;
// Uneven illumination is followed over this distance (half width of the averaging).
constexpr double illumination_mm = 16;

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

[[noreturn]] void no_head(const std::string& name, const Message& why) {
  throw ModelError(Message::of(
      "%1 shows no head that stands out from the air (%2); choose a scan of the whole head with air around it.",
      name, why));
}

// --- Coarse grid: the ball's flood, and the skin's intensity from place to place
// ------------------------------------------------------------------------------------------------

struct Coarse {
  Size block{};  // fine voxels along each side of a coarse one
  Grid grid{Size{}};
  Eigen::Vector3d mm;

  explicit Coarse(const Volume& scan) {
    constexpr double about_mm = 2;
    Size size{};
    const Eigen::Vector3d fine = scan.voxel_mm();
    for (std::size_t a = 0; a < 3; ++a) {
      block[a] = std::max(1, static_cast<int>(std::lround(about_mm / fine[static_cast<int>(a)])));
      size[a] = (scan.size[a] + block[a] - 1) / block[a];
      mm[static_cast<int>(a)] = fine[static_cast<int>(a)] * block[a];
    }
    grid = Grid(size);
  }
};

/// A field on the coarse grid, read between its centres.
struct Field {
  const Coarse& coarse;
  std::vector<float> value;

  /// Calls visit(fine index, field value) for every voxel of the scan.
  template <class Visit>
  void for_each(const Size& size, Visit visit) const {
    struct Between {
      std::size_t low = 0, high = 0;
      float f = 0;
    };
    std::array<std::vector<Between>, 3> place;
    for (std::size_t a = 0; a < 3; ++a)
      for (int i = 0; i < size[a]; ++i) {
        const double x = std::clamp((i + 0.5) / coarse.block[a] - 0.5, 0.0, coarse.grid.size[a] - 1.0);
        const int low = std::min(static_cast<int>(x), std::max(0, coarse.grid.size[a] - 2));
        place[a].push_back(
            {at(low), at(std::min(low + 1, coarse.grid.size[a] - 1)), static_cast<float>(x - low)});
      }
    const std::size_t nx = at(coarse.grid.size[0]), ny = at(coarse.grid.size[1]);
    std::vector<float> row(nx);
    std::size_t v = 0;
    for (const Between& z : place[2])
      for (const Between& y : place[1]) {
        const float* r00 = &value[nx * (y.low + ny * z.low)];
        const float* r10 = &value[nx * (y.high + ny * z.low)];
        const float* r01 = &value[nx * (y.low + ny * z.high)];
        const float* r11 = &value[nx * (y.high + ny * z.high)];
        for (std::size_t i = 0; i < nx; ++i)
          row[i] =
              (1 - z.f) * ((1 - y.f) * r00[i] + y.f * r10[i]) + z.f * ((1 - y.f) * r01[i] + y.f * r11[i]);
        for (const Between& x : place[0]) visit(v++, (1 - x.f) * row[x.low] + x.f * row[x.high]);
      }
  }
};

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

// --- Fine grid
// ------------------------------------------------------------------------------------------------

/// From the ball's flood, air creeps voxel by voxel up to the skin.
Mask outside_air(const Coarse& coarse, const Volume& scan, const Mask& covered, const Mask& tissue) {
  const Grid grid(scan.size);
  Mask outside(grid.count(), 0);
  std::vector<std::size_t> front, next;
  std::size_t v = 0;
  for (int k = 0; k < scan.size[2]; ++k)
    for (int j = 0; j < scan.size[1]; ++j) {
      const std::size_t row = at(coarse.grid.size[0]) *
                              (at(j / coarse.block[1]) + at(coarse.grid.size[1]) * at(k / coarse.block[2]));
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

/// Mean intensity just under the skin, spread over the coarse grid; illumination differs from place to place.
Field skin_intensity(const Coarse& coarse, const Volume& scan, const Mask& outside, const Mask& tissue) {
  const Grid grid(scan.size);
  const Eigen::Vector3d mm = scan.voxel_mm();
  std::vector<float> sum(coarse.grid.count(), 0), count(coarse.grid.count(), 0);
  Mask depth(grid.count(), 0);  // layers of voxels under the outside air
  std::vector<std::size_t> front, next;
  for (std::size_t v = 0; v < outside.size(); ++v) {
    if (outside[v]) continue;
    grid.for_neighbours(v, [&](std::size_t w, std::size_t) {
      if (outside[w]) depth[v] = 1;
    });
    if (depth[v]) front.push_back(v);
  }
  const double layer_mm = mm.mean();
  const int first = std::max(1, static_cast<int>(std::lround(skin_from_mm / layer_mm)) + 1);
  const int last = std::max(first, static_cast<int>(std::lround(skin_to_mm / layer_mm)));
  double total = 0, totals = 0;
  for (int layer = 1; layer <= last && !front.empty(); ++layer) {
    next.clear();
    for (const std::size_t v : front) {
      if (layer >= first && tissue[v]) {
        const Size p = grid.place(v);
        const std::size_t c =
            at(p[0] / coarse.block[0]) +
            at(coarse.grid.size[0]) *
                (at(p[1] / coarse.block[1]) + at(coarse.grid.size[1]) * at(p[2] / coarse.block[2]));
        sum[c] += scan.value[v];
        count[c] += 1;
        total += static_cast<double>(scan.value[v]);
        totals += 1;
      }
      grid.for_neighbours(v, [&](std::size_t w, std::size_t) {
        if (outside[w] || depth[w]) return;
        depth[w] = 1;
        next.push_back(w);
      });
    }
    front.swap(next);
  }
  // Three passes of a running mean are close to a Gaussian.
  const Grid& g = coarse.grid;
  std::vector<float> line, mean;
  for (std::vector<float>* field : {&sum, &count})
    for (int pass = 0; pass < 3; ++pass)
      for (std::size_t a = 0; a < 3; ++a) {
        const int n = g.size[a];
        const int half =
            std::max(1, static_cast<int>(std::lround(illumination_mm / coarse.mm[static_cast<int>(a)])));
        const std::size_t b = (a + 1) % 3, c = (a + 2) % 3;
        std::vector<double> before(at(n) + 1);
        for (int j = 0; j < g.size[c]; ++j)
          for (int i = 0; i < g.size[b]; ++i) {
            float* start = field->data() + i * g.step[b] + j * g.step[c];
            for (int q = 0; q < n; ++q)
              before[at(q) + 1] = before[at(q)] + static_cast<double>(start[q * g.step[a]]);
            for (int q = 0; q < n; ++q)
              start[q * g.step[a]] = static_cast<float>(
                  (before[at(std::min(n, q + half + 1))] - before[at(std::max(0, q - half))]) /
                  (2 * half + 1));
          }
      }
  const float everywhere = totals > 0 ? static_cast<float>(total / totals) : 0;
  Field skin{coarse, std::move(sum)};
  for (std::size_t c = 0; c < skin.value.size(); ++c)
    skin.value[c] = count[c] > 1e-6F ? skin.value[c] / count[c] : everywhere;
  return skin;
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

struct Separated {
  Mask outside, tissue;
};

Separated separate(const Coarse& coarse, const Volume& scan, Mask tissue, const std::string& name) {
  // A coarse voxel is air only if all of it is: thin skin must not leak.
  Mask rough(coarse.grid.count(), 0);
  std::size_t v = 0;
  for (int k = 0; k < scan.size[2]; ++k)
    for (int j = 0; j < scan.size[1]; ++j) {
      const std::size_t row = at(coarse.grid.size[0]) *
                              (at(j / coarse.block[1]) + at(coarse.grid.size[1]) * at(k / coarse.block[2]));
      for (int i = 0; i < scan.size[0]; ++i, ++v) rough[row + at(i / coarse.block[0])] |= tissue[v];
    }
  const Mask covered = flood_with_ball(coarse, rough);
  if (std::none_of(covered.begin(), covered.end(), [](std::uint8_t c) { return c != 0; }))
    no_head(name, Message::of("no air at the edges of the volume"));
  Mask outside = outside_air(coarse, scan, covered, tissue);
  const Grid grid(scan.size);
  outside = without_hairs(grid, outside);
  for (std::uint8_t& o : outside) o = !o;
  outside = without_hairs(grid, outside);
  for (std::uint8_t& o : outside) o = !o;
  keep_largest_body(scan, outside);
  return {std::move(outside), std::move(tissue)};
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

}  // namespace

AirBoundary find_air_boundary(const Volume& scan, const std::string& name) {
  const auto global = dark_and_bright(scan);
  if (!global) no_head(name, Message::of("every voxel is alike"));
  const Coarse coarse(scan);

  Mask tissue(scan.value.size());
  for (std::size_t v = 0; v < tissue.size(); ++v) tissue[v] = scan.value[v] >= global->threshold;
  Separated parts = separate(coarse, scan, std::move(tissue), name);
  check_extent(scan, parts.outside, name);

  // Half way between air and the skin nearby, from place to place. A fifth of the global threshold is the
  // least that still stands out from noise.
  const Field skin = skin_intensity(coarse, scan, parts.outside, parts.tissue);
  const float least = 0.2F * (global->threshold - global->dark);
  Volume relative;  // 0 = air, 0.5 = the skin's edge, 1 = skin
  relative.size = scan.size;
  relative.value.resize(scan.value.size());
  tissue = std::move(parts.tissue);
  skin.for_each(scan.size, [&](std::size_t v, float s) {
    const float half = std::max(least, 0.5F * (s - global->dark));
    relative.value[v] = 0.5F * (scan.value[v] - global->dark) / half;
    tissue[v] = relative.value[v] >= 0.5F;
  });
  parts = separate(coarse, scan, std::move(tissue), name);
  check_extent(scan, parts.outside, name);

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
        if (parts.outside[v])
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
