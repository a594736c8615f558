#pragma once

#include <Eigen/Core>
#include <memory>
#include <optional>
#include <variant>
#include <vector>

#include "geometry/field/coil_field.h"
#include "geometry/hands/after_search.h"
#include "geometry/hands/cap_veil.h"
#include "geometry/hands/mistakes.h"
#include "viewer/stage/scene/shown.h"

namespace scalpmark::viewer {

using geometry::CapSlipped;
using geometry::CoilTurned;
using geometry::LookedAside;
using geometry::Mistake;
using geometry::OtherRule;
using geometry::StandsOff;
using geometry::TapeMisread;
using geometry::VertexOff;

/// What one of several mistakes does alone, told where all of them are.
struct MistakeAlone {
  geometry::Placement really;
  double off_mm = 0;
  std::vector<Eigen::Vector3d> pulse_line;  ///< on the skin, from meant to there; empty if the same
};

/// What one mistake does, or two at once, beside what was meant.
struct MistakeOutcome {
  std::vector<Mistake> mistakes;
  std::vector<MistakeAlone> alone;      ///< of each, where there are several
  CoilOn meant_on = CoilOn::treatment;  ///< start or treatment: the placement that was missed
  geometry::Placement meant;
  geometry::WhatIf result;
  /// Of the field at the place where it was to be strongest, 2 cm under the skin of a round model head, along
  /// its line there: what is left, 0 to 1 (below 0: turned round). Empty where none is known.
  std::optional<double> field_left;
  std::shared_ptr<const geometry::CoilField> field;  ///< of the real coil; null where none is known
  double edge_mark_off_mm = 0;  ///< along the skin, by the case's rule; 0 where either falls off the head
  std::shared_ptr<const geometry::CapVeil> cap;        ///< as it sits, where that is the mistake
  std::vector<Eigen::Vector3d> pulse_line, edge_line;  ///< on the skin, from meant to real; empty if the same
  /// Of what is wrong before the search, where the site is measured from what answers: what the search leaves
  /// of it.
  std::optional<geometry::SiteAfterSearch> after_search;

  /// The first mistake of a kind; null where there is none.
  template <class Kind>
  [[nodiscard]] const Kind* made() const {
    for (const Mistake& mistake : mistakes)
      if (const auto* one = std::get_if<Kind>(&mistake)) return one;
    return nullptr;
  }
};

/// Works it out by geometry/hands/mistakes.h. At least one mistake. Refuses (GeometryError) what that
/// refuses.
[[nodiscard]] MistakeOutcome outcome_of(const geometry::Head& head, const geometry::Case& the_case,
                                        const geometry::Plan& plan, const std::vector<Mistake>& mistakes);

}  // namespace scalpmark::viewer
