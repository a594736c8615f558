#pragma once

#include "geometry/hands/cap_slip.h"
#include "geometry/hands/check.h"

namespace scalpmark::geometry {

/// How to move a cap on a head: slid so far over the top, then turned.
struct CapMove {
  double forward_mm = 0;      ///< toward the nose; back is negative
  double right_mm = 0;        ///< toward the patient's right; left is negative
  double turn_right_deg = 0;  ///< the arrow to the patient's right; left is negative
};

/// The slip of a cap that has been moved so far.
[[nodiscard]] CapSlip slip_by(const Cap& cap, const CapMove& move);

/// What puts a slipped cap back. Lengths are those of the arc on the cap's sphere.
[[nodiscard]] CapMove move_back(const Cap& cap, const CapSlip& slip);

/// Where the coil goes that is laid by the plan's two treatment marks on a cap that has slipped: both marks
/// go with the cap (slipped()), then check_marks(). Refuses (GeometryError) a plan whose treatment has no
/// edge mark, and what slipped() and check_marks() refuse.
[[nodiscard]] Check check_slipped(const Head& head, const Case& the_case, const Plan& plan, const Cap& cap,
                                  const CapSlip& slip, const CheckLimits& limits = {},
                                  TapeDistances tapes = TapeDistances::left_out);

/// The cap as it sits today, what comes of it, and what to do.
struct CapToday {
  FoundSlip found;  ///< parts that the readings do not say are taken as 0
  Check check;      ///< of the coil laid by the marks on it
  CapMove back;     ///< what to do
  /// How far from check's pulse the real one may be, root mean square, for the readings' errors alone; a part
  /// of the slip that they do not say comes on top.
  double pulse_sd_mm = 0;
  /// No part that is said is off by more than two of its standard deviations: the readings cannot tell this
  /// cap from one put on as it should be.
  bool sits = false;
};

/// From today's brim heights: the slip, where the pulse goes, what to do. Parts of the slip that the readings
/// do not say are taken as none. Refuses (GeometryError) what cap_on(), find_slip() and check_slipped()
/// refuse.
[[nodiscard]] CapToday cap_today(const Head& head, const Case& the_case, const Plan& plan,
                                 const BrimReadings& today, const CheckLimits& limits = {},
                                 const SlipErrors& errors = {});

}  // namespace scalpmark::geometry
