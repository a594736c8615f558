#pragma once

#include "geometry/hands/check.h"
#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// Limits of a check that careful hands meet: as good as tape and pencil get on this head. 95 of 100 pairs of
/// marks that are made anew, the four points felt for, tapes read and pencils held with the case's errors,
/// lie within, to first order; nobody looks aside, tilts, takes another rule or puts a cap on anew. Refuses
/// as tolerance() does.
[[nodiscard]] CheckLimits careful_limits(const Head& head, const Case& the_case, const Plan& plan);

}  // namespace scalpmark::geometry
