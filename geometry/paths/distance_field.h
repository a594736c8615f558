#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// Tape distances from one skin point to everywhere: exact on the mesh at the vertices (as in
/// shortest_path.h). Within a face: the best of the straight lines through the face's edges to where the
/// source appears unfolded (kept for four places of each edge), and of the ways over its corners. Worked out
/// once per head and source, then looked up.
class DistanceField {
public:
  /// `watch` is called many times a second meanwhile; what it throws is thrown here.
  DistanceField(const Surface& skin, const SurfacePoint& source, const std::function<void()>& watch = {});

  /// mm from the source to `p` along the skin; infinity on a separate piece of skin.
  [[nodiscard]] double at(const Surface& skin, const SurfacePoint& p) const;
  [[nodiscard]] const std::vector<double>& at_vertices() const { return mm_; }

private:
  /// How the source is seen from a face through one of its edges (see EdgeView in windows.h), for lines that
  /// cross the edge from `low` to `high` mm from its start.
  struct View {
    float x, y, before_mm, low, high;
    std::int32_t edge;
  };
  SurfacePoint source_;
  std::vector<double> mm_;
  std::vector<View> views_;                // of all faces, in their order
  std::vector<std::uint32_t> first_view_;  // of each face, and the end of the last
};

}  // namespace scalpmark::geometry
