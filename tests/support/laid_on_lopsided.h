#pragma once

#include <string>

#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "tests/support/heads.h"

/// A coil laid on a head of closed form whose halves differ, for what is drawn of it.
namespace scalpmark::tests {

struct LaidOnLopsided {
  geometry::Head head = lopsided_head(5);
  geometry::Case the_case;
  geometry::Plan plan;
};

inline LaidOnLopsided laid_on_lopsided(geometry::Side side, const std::string& coil,
                                       geometry::TapeDistances tapes = geometry::TapeDistances::left_out) {
  LaidOnLopsided laid;
  laid.the_case.label = "Test bench";
  laid.the_case.side = side;
  laid.the_case.coil.model = models::coil(coil);
  laid.the_case.coil.centre_to_edge_mm = laid.the_case.coil.model.centre_to_edge_mm;
  geometry::use_one_rule(laid.the_case, geometry::MarkRule::tape);
  laid.plan = geometry::solve(laid.head, laid.the_case, tapes);
  return laid;
}

}  // namespace scalpmark::tests
