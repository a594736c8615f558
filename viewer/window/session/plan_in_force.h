#pragma once

#include <memory>

#include "geometry/plan/placement.h"
#include "geometry/plan/plan.h"
#include "viewer/window/session/head_cache.h"

namespace scalpmark::window {

/// The head in force and the plan that was solved on it: both or neither.
struct PlanInForce {
  PreparedHead on;
  std::shared_ptr<const geometry::Plan> plan;
  bool has_tapes = false;  ///< whether the plan has its tape distances

  [[nodiscard]] bool is_ready() const { return plan != nullptr; }
  [[nodiscard]] const geometry::Head& head() const { return on.head->head; }
  /// Whether tape distances can be looked up anywhere on the head (its distance fields are there).
  [[nodiscard]] bool has_fields() const { return is_ready() && head().has_fields(); }
  [[nodiscard]] bool has_cortex() const { return is_ready() && on.head->cortex; }
  /// The distance fields, as whoever lays a coil on this head passes them on so as not to wait.
  [[nodiscard]] geometry::TapeDistances tapes() const {
    return has_fields() ? geometry::TapeDistances::worked_out : geometry::TapeDistances::left_out;
  }
};

/// Whether one plan does for both cases, on the same head; a name for the sheet changes nothing, nor does how
/// far off hands are, nor what was seen at visits.
[[nodiscard]] bool same_plan(models::CaseFile a, models::CaseFile b);

}  // namespace scalpmark::window
