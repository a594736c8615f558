#include "viewer/stage/drawing/coverage.h"

#include <algorithm>
#include <cmath>

namespace scalpmark::viewer {

namespace {

/// Even and odd crossings of the line to the right.
bool is_within(const std::vector<Pixel>& corners, double x, double y) {
  bool inside = false;
  for (size_t i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
    const Pixel &a = corners[i], &b = corners[j];
    if ((a.y > y) != (b.y > y) && x < a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y)) inside = !inside;
  }
  return inside;
}

}  // namespace

Coverage coverage_of(const geometry::Surface& skin, const Sight& sight) {
  Coverage c;
  c.cell_px = 16 * sight.scale;
  c.columns = 1 + static_cast<int>(sight.width_px / c.cell_px);
  c.rows = 1 + static_cast<int>(sight.height_px / c.cell_px);
  c.covered.assign(static_cast<size_t>(c.columns) * static_cast<size_t>(c.rows), false);
  for (const auto& v : skin.vertices()) {
    const Pixel at = sight.project(v);
    if (!(at.x >= 0 && at.y >= 0 && at.x < sight.width_px && at.y < sight.height_px)) continue;
    c.covered[static_cast<size_t>(at.y / c.cell_px) * static_cast<size_t>(c.columns) +
              static_cast<size_t>(at.x / c.cell_px)] = true;
  }
  return c;
}

void cover(Coverage& coverage, const std::vector<Eigen::Vector3d>& rim, const Sight& sight) {
  if (rim.empty()) return;
  std::vector<Pixel> corners;
  for (const auto& p : rim) corners.push_back(sight.project(p));
  const auto cell = [&](double px, int count) {
    return std::clamp(static_cast<int>(std::floor(px / coverage.cell_px)), 0, std::max(0, count - 1));
  };
  const auto mark = [&](int row, int column) {
    coverage.covered[static_cast<size_t>(row) * static_cast<size_t>(coverage.columns) +
                     static_cast<size_t>(column)] = true;
  };
  double left = corners[0].x, right = left, top = corners[0].y, bottom = top;
  for (const Pixel& p : corners) {
    left = std::min(left, p.x);
    right = std::max(right, p.x);
    top = std::min(top, p.y);
    bottom = std::max(bottom, p.y);
    if (p.x >= 0 && p.y >= 0 && p.x < sight.width_px && p.y < sight.height_px)
      mark(cell(p.y, coverage.rows), cell(p.x, coverage.columns));
  }
  if (right < 0 || bottom < 0 || left > sight.width_px || top > sight.height_px) return;
  for (int r = cell(top, coverage.rows); r <= cell(bottom, coverage.rows); ++r)
    for (int c = cell(left, coverage.columns); c <= cell(right, coverage.columns); ++c)
      if (is_within(corners, (c + 0.5) * coverage.cell_px, (r + 0.5) * coverage.cell_px)) mark(r, c);
}

}  // namespace scalpmark::viewer
