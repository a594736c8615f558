#pragma once

#include <vector>

#include "geometry/surface.h"

namespace scalpmark::geometry {

/// Tape distances from one skin point to everywhere: exact on the mesh at the vertices (as in
/// shortest_path.h), unfolded from the three corners within a face. Worked out once per head and source, then
/// looked up.
class DistanceField {
public:
  DistanceField(const Surface& skin, const SurfacePoint& source);

  /// mm from the source to `p` along the skin; infinity on a separate piece of skin.
  [[nodiscard]] double at(const Surface& skin, const SurfacePoint& p) const;
  [[nodiscard]] const std::vector<double>& at_vertices() const { return mm_; }

private:
  SurfacePoint source_;
  std::vector<double> mm_;
};

}  // namespace scalpmark::geometry
