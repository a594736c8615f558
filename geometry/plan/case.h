#pragma once

#include <string>

#include "geometry/base/side.h"
#include "geometry/coil/coil_setup.h"
#include "geometry/head/scale.h"
#include "geometry/plan/hand_errors.h"

namespace scalpmark::geometry {

enum class GridOn { edge_marks, pulse_points };
enum class TreatmentRule { forward, landmark };

struct SearchSettings {
  double lateral_mm = 50;
  double anterior_mm = 10;
  double pitch_mm = 10;
  GridOn grid_on = GridOn::edge_marks;
  MarkRule drawn_by = MarkRule::tape;  ///< its edge marks are measured before a coil is on the head

  friend bool operator==(const SearchSettings&, const SearchSettings&) = default;
};

struct GridPosition {
  int row = 0;     ///< -1, 0, 1; +1 is forward
  int column = 0;  ///< -1, 0, 1; +1 is outward, away from the midline

  friend bool operator==(const GridPosition&, const GridPosition&) = default;
};

struct TreatmentSettings {
  TreatmentRule rule = TreatmentRule::forward;
  double distance_mm = 50;             ///< for `forward`
  std::string label;                   ///< for `landmark`: a 10-5 label
  MarkRule drawn_by = MarkRule::drop;  ///< its edge mark is drawn with the coil in place

  friend bool operator==(const TreatmentSettings&, const TreatmentSettings&) = default;
};

/// The cap the marks are made on (hands/cap.h).
struct CapSettings {
  double brim_over_nasion_mm = 20;  ///< common practice, no source: two centimetres, the arrow down the nose

  friend bool operator==(const CapSettings&, const CapSettings&) = default;
};

/// What the user entered, apart from where the head comes from. Lengths mm.
struct Case {
  std::string label;
  MeasuredTapes tape_mm;
  Side side = Side::left;
  SearchSettings search;
  CoilSetup coil;
  GridPosition hotspot;
  bool hotspot_awaited = false;  ///< no spot has answered yet; the plan shows what holds if `hotspot` does
  TreatmentSettings treatment;
  CapSettings cap;    ///< as errors: the plan does not depend on it
  HandErrors errors;  ///< for tolerance() alone; the plan does not depend on them

  friend bool operator==(const Case&, const Case&) = default;
};

/// The spot that answered.
inline void take_hotspot(Case& the_case, GridPosition spot) {
  the_case.hotspot = spot;
  the_case.hotspot_awaited = false;
}

/// Whether the treatment site hangs on a spot that has not answered yet.
[[nodiscard]] inline bool site_is_open(const Case& the_case) {
  return the_case.hotspot_awaited && the_case.treatment.rule == TreatmentRule::forward;
}

/// One rule for drawing the marks and for laying the coil alike.
inline void use_one_rule(Case& the_case, MarkRule rule) {
  the_case.search.drawn_by = the_case.treatment.drawn_by = the_case.coil.laid_by = rule;
}

}  // namespace scalpmark::geometry
