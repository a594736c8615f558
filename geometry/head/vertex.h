#pragma once

#include <optional>

#include "geometry/head/fiducials.h"
#include "geometry/head/head.h"
#include "geometry/tapes/tape.h"

namespace scalpmark::geometry {

/// The vertex and the tapes through it.
struct VertexTapes {
  SurfacePoint vertex;
  Tape midline;  ///< nasion to inion
  Tape coronal;  ///< left to right tragus
};

/// Finds the vertex: half way along nasion-inion and half way along tragus-tragus at once (Klem et al. 1999),
/// by halving the two tapes in turn until both hold within `settled_mm`. `guess` is any skin point near the
/// top of the head. Refuses (GeometryError) a skin on which the tapes cannot be laid or do not settle.
[[nodiscard]] VertexTapes find_vertex(const Surface& skin, const SkinFiducials& fiducials,
                                      const SurfacePoint& guess, double settled_mm = 1e-5);

/// The side tape from Fpz to Oz through T7 (left) or T8 (right), on the tapes given.
[[nodiscard]] Tape side_tape(const Surface& skin, const VertexTapes& tapes, bool left);

/// The three measures staff take.
[[nodiscard]] TapeMeasures measure(const Surface& skin, const VertexTapes& tapes);

}  // namespace scalpmark::geometry
