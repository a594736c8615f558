#pragma once

#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "geometry/brain/cortex.h"
#include "geometry/coil/pose.h"
#include "geometry/head/landmarks.h"
#include "geometry/head/usual_size.h"
#include "geometry/plan/case.h"

namespace scalpmark::geometry {

/// Tape distances along the skin, mm, to the four points that can be found again without a cap.
struct TapeFrom {
  double vertex_mm = 0, nasion_mm = 0, left_tragus_mm = 0, right_tragus_mm = 0;
};

/// How a plan gets its tape distances. The two ways agree to a fiftieth of a millimetre.
enum class TapeDistances {
  worked_out,  ///< looked up in the head's distance fields: at once, after the first time, which takes
               ///< seconds
  each_path,   ///< each by its own shortest path: a second or less a plan, with nothing to wait for first
  treatment_alone,  ///< each_path of the treatment's placement, a quarter of the work; the others are left
                    ///< out
  left_out,         ///< not at all (a picture, a coil in motion)
};

/// One mark per rule; empty where the mark would fall off the head (over the face, past the skin's border).
struct EdgeMarks {
  std::optional<Eigen::Vector3d> tape, drop, nearest;
  [[nodiscard]] const std::optional<Eigen::Vector3d>& by(MarkRule rule) const {
    return rule == MarkRule::tape ? tape : rule == MarkRule::drop ? drop : nearest;
  }
};

/// The coil laid at one place: over an edge mark that was drawn for a pulse point wanted, or on a pulse point
/// outright. Head-file frame, mm.
struct Placement {
  Eigen::Vector3d wanted = Eigen::Vector3d::Zero();    ///< on the skin, where the pulse was to go
  Eigen::Vector3d pulse = Eigen::Vector3d::Zero();     ///< on the skin, under the centre of the coil as laid
  double wanted_to_pulse_mm = 0;                       ///< tape distance
  Eigen::Vector3d normal = Eigen::Vector3d::UnitZ();   ///< of the coil's face, away from the head, unit
  Eigen::Vector3d front = Eigen::Vector3d::UnitY();    ///< front axis, unit, square to normal
  Eigen::Vector3d forward = Eigen::Vector3d::UnitY();  ///< parasagittal direction in the coil's face, unit
  Eigen::Vector3d inward = Eigen::Vector3d::UnitX();   ///< toward the midline, in the coil's face, unit
  double angle_deg = 45;
  double lift_mm = 0;                              ///< of the coil's face over the pulse point, in all
  Eigen::Vector3d edge = Eigen::Vector3d::Zero();  ///< the middle of the coil's front edge, in the air
  EdgeMarks edge_mark;                             ///< of the coil as laid, by each rule
  /// The edge mark on the skin, over which the coil is laid (by CoilSetup::laid_by). Empty where it would
  /// fall off the head.
  std::optional<Eigen::Vector3d> mark;
  /// How long the tape from the wanted point along the front axis must be for a mark over which the coil,
  /// laid, has its pulse at the wanted point. Empty where there is none, and for a coil laid outright.
  std::optional<double> tape_to_draw_mm;
  std::optional<double> drop_gap_mm, nearest_gap_mm;  ///< from edge to skin
  std::optional<TapeFrom> pulse_tape;                 ///< empty where left out
  std::optional<TapeFrom> edge_mark_tape;             ///< of `mark`; empty without one, and where left out
  std::vector<Eigen::Vector3d> tape_line;             ///< from pulse point to tape mark, for drawing
  /// Straight under the coil; empty for a head without a cortex, and where there is none under the coil.
  std::optional<CortexHit> cortex;

  [[nodiscard]] LaidPose pose() const { return {{pulse, normal, front}, forward, inward}; }
};

/// The side a placement was laid on, read off its directions.
[[nodiscard]] Side side_of(const Placement& placement);

struct GridSpot {
  int row = 0, column = 0;
  Placement placement;
};

struct TreatmentAlternative {
  TreatmentRule rule = TreatmentRule::forward;
  double distance_mm = 0;  ///< for forward
  std::string label;       ///< for landmark: "F3"; "F3-AF3" is half way between the two
  Eigen::Vector3d pulse = Eigen::Vector3d::Zero();
  double tape_from_treatment_mm = 0;
};

/// A line on the skin, for drawing; length along it.
struct PlanLine {
  std::string name;  ///< "midline", "coronal", "circumference", "lateral", "anterior", "treatment"
  std::vector<Eigen::Vector3d> points;
  double length_mm = 0;
};

/// Everything computed from a head and a case. Immutable once made.
struct Plan {
  TapeMeasures tapes;
  Fiducials fiducials;
  HeadAxes axes;
  std::vector<Landmark> landmarks;  ///< 10-10, Nz and Iz included
  Placement start;
  std::vector<GridSpot> grid;  ///< nine, rows -1..1, columns -1..1 within a row
  Placement hotspot, treatment;
  std::vector<TreatmentAlternative> treatment_alternatives;
  std::vector<PlanLine> lines;
  std::vector<Message> warnings;  ///< one sentence each
  /// Of the tapes entered, where they make an unusual head; its sentence is among the warnings.
  std::optional<SizeCaution> size_caution;
};

}  // namespace scalpmark::geometry
