#pragma once

#include <memory>
#include <string>
#include <vector>

#include "geometry/hands/tolerance.h"
#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::viewer {

/// A picture for the sheet: rows from the top, three bytes a pixel.
struct SheetView {
  std::string caption;
  int width = 0, height = 0;
  std::string rgb;
};

/// The three views of the printed sheet: the treated side, above, and from the front and the treated side.
/// Text in them is sized to be read on paper. Drawn one at a time, since each takes a good part of a second
/// without a graphics card and a window wants to answer in between. Has a display of its own (see display.h)
/// for as long as it lives, and refuses (ViewerError) where none can be had; all calls from one thread.
class SheetViews {
public:
  /// `by_hand`: how far off hands could put the pulse (sheet/content.h), drawn where the face is seen; may be
  /// none.
  SheetViews(const geometry::Head& head, const geometry::Case& the_case, const geometry::Plan& plan,
             std::shared_ptr<const geometry::Tolerance> by_hand);
  ~SheetViews();
  SheetViews(const SheetViews&) = delete;
  SheetViews& operator=(const SheetViews&) = delete;

  static constexpr int count = 3;
  [[nodiscard]] SheetView draw(int which);

private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

/// All of them.
[[nodiscard]] std::vector<SheetView> sheet_views(const geometry::Head& head, const geometry::Case& the_case,
                                                 const geometry::Plan& plan,
                                                 std::shared_ptr<const geometry::Tolerance> by_hand);

}  // namespace scalpmark::viewer
