#pragma once

#include <vector>

namespace scalpmark::geometry {

struct QuadratureNode {
  double at = 0;
  double weight = 0;
};

/// Gauss and Legendre's rule on 0 to 1: the weights sum to 1, and a polynomial of degree 2 `count` - 1 or
/// less is integrated exactly but for rounding. Nodes by Newton on the three-term recurrence (Press et al.,
/// Numerical Recipes, memory). `count` is from 1 to 5000.
[[nodiscard]] std::vector<QuadratureNode> gauss_legendre(int count);

}  // namespace scalpmark::geometry
