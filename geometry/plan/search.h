#pragma once

#include <optional>
#include <vector>

#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/plan.h"
#include "geometry/tapes/tape.h"

namespace scalpmark::geometry {

/// How the search's start is measured: out from the vertex along the tape from tragus to tragus over it, then
/// forward along the parasagittal tape.
struct StartTapes {
  std::vector<Eigen::Vector3d> lateral;  ///< from the vertex to the side point, for drawing
  Tape anterior;                         ///< from the side point to the start
};

/// The start as measured from a vertex marked at `vertex_mm` along `coronal` (left to right tragus). Refuses
/// (GeometryError) a skin that ends before the tapes do. Whether it lies on the face is not looked at.
[[nodiscard]] StartTapes measure_start(const Head& head, const Tape& coronal, double vertex_mm, Side side,
                                       double lateral_mm, double anterior_mm);

/// A spot's place on a grid with that middle, whole steps from it: outward by a laid tape, then forward by
/// the parasagittal tape. Refuses (GeometryError) a skin that ends before the tapes do.
[[nodiscard]] SurfacePoint grid_place(const Head& head, Side side, const SurfacePoint& middle,
                                      double pitch_mm, const GridPosition& spot);

/// The start, and the nine spots around it with the coil laid on each, rows -1 to 1, columns -1 to 1 within a
/// row. Refuses (GeometryError) what falls off the head.
struct LaidSearch {
  StartTapes tapes;
  LaidCoil start;
  std::vector<GridSpot> spots;  ///< without their placements, which are those of `coils`
  std::vector<LaidCoil> coils;
  size_t hotspot = 4;                ///< the spot that the case says answers, an index into both
  std::optional<LaidCoil> off_grid;  ///< the coil on a hotspot between spots

  /// Where the treatment is measured from.
  [[nodiscard]] const LaidCoil& on_hotspot() const { return off_grid ? *off_grid : coils[hotspot]; }
};
[[nodiscard]] LaidSearch lay_search(const Head& head, const Case& the_case, TapeDistances tapes);

}  // namespace scalpmark::geometry
