#pragma once

#include <Eigen/Core>
#include <cmath>
#include <map>
#include <utility>
#include <vector>

#include "geometry/surface/surface.h"

namespace scalpmark::tests {

/// A skin as a scanner might deliver it: each triangle cut into `parts` x `parts`, and every new corner
/// shifted by up to about `grain_mm` one way or another, always the same.
inline geometry::Surface finer(const geometry::Surface& skin, int parts, double grain_mm) {
  using Eigen::Vector3d;
  std::vector<Vector3d> vertices = skin.vertices();
  std::vector<geometry::Triangle> triangles;
  triangles.reserve(skin.triangles().size() * static_cast<size_t>(parts) * static_cast<size_t>(parts));
  const auto add = [&](const Vector3d& p) {
    const double phase = static_cast<double>(vertices.size());
    vertices.push_back(p +
                       grain_mm * Vector3d(std::sin(phase), std::sin(2.7 * phase), std::sin(4.3 * phase)));
    return static_cast<int>(vertices.size()) - 1;
  };
  std::map<std::pair<int, int>, int> first_on_edge;
  // The k-th corner from a towards b, 0 to parts.
  const auto on_edge = [&](int a, int b, int k) {
    if (k == 0) return a;
    if (k == parts) return b;
    const auto key = std::minmax(a, b);
    const auto [found, fresh] = first_on_edge.try_emplace(key, static_cast<int>(vertices.size()));
    if (fresh)
      for (int i = 1; i < parts; ++i)
        add(skin.vertex(key.first) +
            static_cast<double>(i) / parts * (skin.vertex(key.second) - skin.vertex(key.first)));
    return found->second + (a < b ? k : parts - k) - 1;
  };
  for (const auto& [a, b, c] : skin.triangles()) {
    // Rows from a to the edge b-c.
    std::vector<std::vector<int>> rows(static_cast<size_t>(parts) + 1);
    for (int i = 0; i <= parts; ++i)
      for (int j = 0; j <= i; ++j) {
        int v = -1;
        if (j == 0)
          v = on_edge(a, b, i);
        else if (j == i)
          v = on_edge(a, c, i);
        else if (i == parts)
          v = on_edge(b, c, j);
        else
          v = add(skin.vertex(a) + (static_cast<double>(i - j) * (skin.vertex(b) - skin.vertex(a)) +
                                    static_cast<double>(j) * (skin.vertex(c) - skin.vertex(a))) /
                                       parts);
        rows[static_cast<size_t>(i)].push_back(v);
      }
    for (size_t i = 0; i + 1 < rows.size(); ++i)
      for (size_t j = 0; j <= i; ++j) {
        triangles.push_back({rows[i][j], rows[i + 1][j], rows[i + 1][j + 1]});
        if (j < i) triangles.push_back({rows[i][j], rows[i + 1][j + 1], rows[i][j + 1]});
      }
  }
  return {std::move(vertices), std::move(triangles)};
}

}  // namespace scalpmark::tests
