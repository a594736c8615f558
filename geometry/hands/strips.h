#pragma once

#include <string>
#include <vector>

#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// Which way over the head a strip of paper is laid.
enum class StripKind {
  midline,       ///< nasion to inion over the vertex
  coronal,       ///< left to right tragus over the vertex
  around,        ///< from Fpz over T7, Oz and T8 back to Fpz
  to_the_start,  ///< parasagittal, forward (backward for a start behind it) from the place on the coronal
                 ///< tape
  to_the_site    ///< parasagittal, forward from the hotspot; for a site so many mm in front of it
};

enum class StripMarkKind {
  landmark,  ///< by its label
  half,      ///< the vertex: both tapes' halves lie on each other
  out,       ///< on the coronal tape: from here forward to the start
  start,
  hotspot,
  site
};

struct StripMark {
  double at_mm = 0;  ///< from the tape's beginning
  StripMarkKind what = StripMarkKind::landmark;
  std::string label{};  ///< of a landmark, and "Nz", "Iz"; empty for a tragus and for the others

  friend bool operator==(const StripMark&, const StripMark&) = default;
};

/// A strip of paper for one head: a tape with its marks already on it, so that nothing is read.
struct Strip {
  StripKind kind = StripKind::midline;
  double length_mm = 0;
  std::vector<StripMark> marks;  ///< ascending, both ends among them
};

/// The strips of this head and plan: lengths of the taut tapes (tapes/tape.h) that the plan's landmarks,
/// start and site were found with. Those of no length are left out (a start straight on the coronal tape, a
/// site that is a landmark).
[[nodiscard]] std::vector<Strip> strips(const Head& head, const Case& the_case, const Plan& plan);

}  // namespace scalpmark::geometry
