#pragma once

#include "geometry/hands/tolerance.h"

namespace scalpmark::geometry {

/// How far off hands are that lay strips of paper (strips.h) in place of reading a tape. One standard
/// deviation, mm.
struct StripErrors {
  double gluing_mm = 0.3;  ///< each seam, from a line to a line. A guess, no source.
  double laying_mm = 1;    ///< a strip's beginning on its point or mark, and its slack. A guess, no source.

  friend bool operator==(const StripErrors&, const StripErrors&) = default;
};

/// The same placement measured by strips and by a tape: how far the pulse is off on average, on the skin, to
/// first order, mm.
struct WithStrips {
  StripErrors errors;
  double mean_mm = 0, tapes_mean_mm = 0;    ///< all causes together
  double alone_mm = 0, tapes_alone_mm = 0;  ///< were measuring the only cause
  int strips_laid = 0,
      tapes_read = 0;  ///< what of the case is measured so, and what a tape still is needed for
};

/// What strips gain over a tape that is read, in tolerance()'s own chain of errors. Where a strip has the
/// mark that is wanted (halves and positions of the 10-20 system on the long tapes, the ways out and forward
/// to the start and from the hotspot to the site, and the edge mark on the card) its laying comes in the
/// reading's place, and the gluing of as many seams as lie between its beginning and the mark, on the shorter
/// of A4 and Letter. The step to a spot of the grid is read still, and so are positions that no strip has (F3
/// is found from F7 and Fz, which one has). The way out to the start is on the strip that gave the vertex: it
/// was laid already. Refuses (GeometryError) an error below 0 or over 10 mm, and what tolerance() refuses.
[[nodiscard]] WithStrips with_strips(const Head& head, const Case& the_case, const Plan& plan,
                                     const HandErrors& errors, const StripErrors& strip_errors = {},
                                     int threads = 0);

}  // namespace scalpmark::geometry
