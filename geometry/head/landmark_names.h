#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "geometry/base/side.h"
#include "geometry/head/landmarks.h"

namespace scalpmark::geometry {

/// Where a label stands in the 10-5 lattice. Rows run front to back in steps of 5 % of the midline (0 = Nz, 2
/// = Fpz, 10 = Cz, 18 = Oz, 20 = Iz). Columns run left to right: 0 = the contour through Nz and T9, 1 = 5 %
/// above it, 2 = the contour through Fpz and T7, 3..9 = eighths of the row up to the midline 10, then
/// mirrored to 20.
struct LatticeName {
  std::string name;
  int row = 0, column = 0;
  LandmarkSystem since = LandmarkSystem::ten_five;  ///< the smallest system that has it
};

/// All 345 labels of the 10-5 system (Oostenveld and Praamstra 2001), front to back, left to right.
[[nodiscard]] const std::vector<LatticeName>& lattice_names();

/// The name at a place of the lattice. Where two share it (rows 1, 2, 18 and 19 beside the midline), the
/// first.
[[nodiscard]] const std::string& lattice_name(int row, int column);

/// The label's mirror image if it stands on the other side (F3 and F4 for the right: F4), itself if it stands
/// on this side or on the midline. A label the 10-5 system does not have is given back as it is.
[[nodiscard]] std::string label_on_side(const std::string& label, Side side);

/// The side a label stands on: odd numbers left, even right; empty on the midline.
[[nodiscard]] std::optional<Side> side_of_label(const std::string& label);

}  // namespace scalpmark::geometry
