#pragma once

#include <optional>
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

/// Without one rule for all, a case's own: marks drawn by one rule, the coil laid by another.
inline LaidOnLopsided laid_on_lopsided(
    geometry::Side side, const std::string& coil,
    geometry::TapeDistances tapes = geometry::TapeDistances::left_out,
    std::optional<geometry::MarkRule> one_rule = geometry::MarkRule::tape) {
  LaidOnLopsided laid;
  laid.the_case.label = "Test bench";
  laid.the_case.side = side;
  laid.the_case.coil.model = models::coil(coil);
  laid.the_case.coil.centre_to_edge_mm = laid.the_case.coil.model.centre_to_edge_mm;
  if (one_rule) geometry::use_one_rule(laid.the_case, *one_rule);
  laid.plan = geometry::solve(laid.head, laid.the_case, tapes);
  return laid;
}

}  // namespace scalpmark::tests
