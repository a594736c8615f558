#pragma once

#include <string>
#include <vector>

#include "geometry/coil/contact.h"
#include "geometry/plan/case.h"

namespace scalpmark::viewer {

/// How a coil rests as a technician reads it on a terminal: in the words given, then where it touches and the
/// gap under each wing as a table. `where` is "on the treatment site". Plain text, lines of at most 80
/// characters.
[[nodiscard]] std::string contact_text(const geometry::Contact& contact, const geometry::Case& the_case,
                                       const std::vector<geometry::Message>& sentences,
                                       const std::string& where);

/// "1.2 cm left of its centre, 0.4 cm toward its front": a place of the coil's underside, as seen from the
/// handle.
[[nodiscard]] std::string place_under_coil(const Eigen::Vector2d& under);

}  // namespace scalpmark::viewer
