#pragma once

#include <stdexcept>

#include "geometry/exercise/score.h"
#include "tests/support/coils.h"

/// What tests of an exercise's score start from.
namespace scalpmark::tests {

inline geometry::Case usual_case() {
  geometry::Case c;
  c.coil.model = flat_coil();
  c.hotspot = {0, 1};
  return c;
}

inline const geometry::StepScore& of_step(const geometry::Score& score, const geometry::Step& step) {
  for (const geometry::StepScore& s : score.steps)
    if (s.step == step) return s;
  throw std::out_of_range(geometry::key_of(step));
}

}  // namespace scalpmark::tests
