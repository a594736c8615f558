#pragma once

#include <string>

#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::viewer {

/// "5.0 cm forward of the hotspot"; "at F3"; "5.0 cm forward of the middle spot, if that one answers" while
/// no hotspot was found.
[[nodiscard]] std::string site_in_words(const geometry::Case& the_case);

/// Another site: "5.5 cm forward of the hotspot", "F3", "half way between F3 and AF3".
[[nodiscard]] std::string other_site_in_words(const geometry::TreatmentAlternative& site);
/// The same where it is plain that lengths count from the hotspot: "5.5 cm forward".
[[nodiscard]] std::string other_site_in_short(const geometry::TreatmentAlternative& site);

/// The spot that answered; "not found yet" until it is.
[[nodiscard]] std::string hotspot_in_words(const geometry::Case& the_case);

/// A spot of the grid: "the start", "one step forward, one step outward".
[[nodiscard]] std::string spot_in_words(int row, int column);

}  // namespace scalpmark::viewer
