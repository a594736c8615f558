#include "geometry/answers/gauss_legendre.h"

#include <cassert>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/base/index.h"

namespace scalpmark::geometry {

std::vector<QuadratureNode> gauss_legendre(int count) {
  assert(count >= 1 && count <= 5000);
  std::vector<QuadratureNode> nodes(at(count));
  for (int i = 0; i < (count + 1) / 2; ++i) {
    double x = std::cos(pi * (i + 0.75) / (count + 0.5)), slope = 1;
    for (int turn = 0; turn < 10; ++turn) {  // three are enough from that start; rounding ends the rest
      double value = x, before = 1;
      for (int k = 2; k <= count; ++k) {
        const double next = ((2 * k - 1) * x * value - (k - 1) * before) / k;
        before = value;
        value = next;
      }
      slope = count * (x * value - before) / (x * x - 1);
      const double step = value / slope;
      x -= step;
      if (std::abs(step) < 1e-16) break;
    }
    const double weight = 1 / ((1 - x * x) * slope * slope);
    nodes[at(i)] = {0.5 * (1 - x), weight};
    nodes[at(count - 1 - i)] = {0.5 * (1 + x), weight};
  }
  return nodes;
}

}  // namespace scalpmark::geometry
