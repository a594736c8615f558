#pragma once

#include <string>
#include <vector>

#include "geometry/plan/plan.h"

namespace scalpmark::viewer {

/// A length that staff copy down, one of those by which the treatment's marks are found again.
struct TapeToRead {
  std::string mark;  ///< "Site mark"
  std::string from;  ///< "the vertex"
  double mm = 0;
};
/// The site's four, then the edge mark's; none of those that are not worked out, or of a mark that is not
/// there.
[[nodiscard]] std::vector<TapeToRead> find_again(const geometry::Plan& plan);

/// What tapes are read in, within a sentence: "cm", "inches".
[[nodiscard]] std::string tape_unit_in_words();

}  // namespace scalpmark::viewer
