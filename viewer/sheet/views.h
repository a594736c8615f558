#pragma once

#include <string>
#include <vector>

#include "geometry/case.h"
#include "geometry/head.h"
#include "geometry/plan.h"

namespace scalpmark::viewer {

/// A picture for the sheet: rows from the top, three bytes a pixel.
struct SheetView {
  std::string caption;
  int width = 0, height = 0;
  std::string rgb;
};

/// The three views of the printed sheet: the treated side, above, and from the front and the treated side.
/// Text in them is sized to be read on paper. Needs a display (see display.h).
[[nodiscard]] std::vector<SheetView> sheet_views(const geometry::Head& head, const geometry::Case& entered,
                                                 const geometry::Plan& plan);

}  // namespace scalpmark::viewer
