#pragma once

#include <cstddef>
#include <vector>

#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// One side of an edge: the triangle that uses it, and which of its edges it is (edge k runs from corner k to
/// the next). `low` and `high`: its ends, by number.
struct EdgeUse {
  int low = 0, high = 0;
  int face = 0, edge = 0;
  [[nodiscard]] bool same_edge(const EdgeUse& o) const { return low == o.low && high == o.high; }
};

/// Every use of every edge, those of one edge side by side: in order of their ends, then of their faces.
[[nodiscard]] std::vector<EdgeUse> edge_uses(const Mesh& mesh);

/// Calls visit(first, last) for the uses of each edge.
template <class Visit>
void for_edges(const std::vector<EdgeUse>& uses, Visit visit) {
  for (std::size_t i = 0, j = 0; i < uses.size(); i = j) {
    while (j < uses.size() && uses[i].same_edge(uses[j])) ++j;
    visit(i, j);
  }
}

}  // namespace scalpmark::models
