#pragma once

#include <string>

#include "geometry/coil/coil.h"
#include "geometry/hands/hand_errors.h"
#include "geometry/head/scale.h"

namespace scalpmark::geometry {

enum class Side { left, right };

/// How an edge in the air becomes a mark on the skin: a tape along the skin from the pulse point; straight
/// down the coil's normal past its edge; the skin nearest to the edge.
enum class MarkRule { tape, drop, nearest };

enum class GridOn { edge_marks, pulse_points };
enum class TreatmentRule { forward, landmark };

struct SearchSettings {
  double lateral_mm = 50;
  double anterior_mm = 10;
  double pitch_mm = 10;
  GridOn grid_on = GridOn::edge_marks;
};

struct CoilSettings {
  double angle_deg = 45;          ///< from forward to the front axis, positive toward the midline
  double centre_to_edge_mm = 60;  ///< along the front axis
  double lift_mm = 0;             ///< for cap and hair, on top of what keeps the coil out of the head
  MarkRule mark_rule = MarkRule::tape;
};

struct HotspotNode {
  int row = 0;     ///< -1, 0, 1; +1 is forward
  int column = 0;  ///< -1, 0, 1; +1 is outward, away from the midline
};

struct TreatmentSettings {
  TreatmentRule rule = TreatmentRule::forward;
  double distance_mm = 50;  ///< for `forward`
  std::string label;        ///< for `landmark`: a 10-5 label
};

/// What the user entered, apart from where the head comes from. Lengths mm.
struct Case {
  std::string label;
  MeasuredTapes tape_mm;
  Side side = Side::left;
  SearchSettings search;
  CoilSettings coil;
  HotspotNode hotspot;
  TreatmentSettings treatment;
  HandErrors errors;  ///< for tolerance() alone; the plan does not depend on them
  Coil coil_model;    ///< looked up from the case's coil.model
};

}  // namespace scalpmark::geometry
