#pragma once

#include <Eigen/Core>
#include <array>
#include <memory>
#include <vector>

#include "geometry/coil/contact.h"
#include "geometry/coil/gap_map.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::viewer {

/// How a coil rests and the gaps under it, worked out for one placement: what Thing::gaps shows.
struct GapsShown {
  geometry::Contact contact;
  geometry::GapMap map;
  std::vector<std::array<Eigen::Vector3d, 2>> level_lines;  ///< pieces of them, a line every 10 mm of gap
};

/// Takes a tenth of a second or so on a large head; any thread.
[[nodiscard]] std::shared_ptr<const GapsShown> gaps_under(const geometry::Head& head,
                                                          const geometry::Case& the_case,
                                                          const geometry::Placement& placement);

}  // namespace scalpmark::viewer
