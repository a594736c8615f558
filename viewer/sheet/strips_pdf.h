#pragma once

#include <string>
#include <vector>

#include "geometry/hands/strips.h"
#include "viewer/sheet/sheet.h"

namespace scalpmark::viewer {

/// What a page of strips says beside the strips themselves.
struct StripsContent {
  std::string label;  ///< the case's
  std::string date;
  geometry::Side side = geometry::Side::left;
  bool backward = false;  ///< the start lies behind the coronal tape
  double angle_deg = 45;
  double centre_to_edge_mm = 60;
  std::optional<double> tape_to_draw_mm;  ///< of the start's placement
  std::vector<geometry::CoilPart> coil;   ///< its parts' outlines, for the card's back
};
[[nodiscard]] StripsContent strips_content(const geometry::Case& the_case, const geometry::Plan& plan);

/// Strips at true size as the bytes of a PDF, on A4 or Letter laid crosswise: long ones in pieces that are
/// glued together at numbered marks, and at the end a card with the coil's angle, on whose back is the coil's
/// front. On every page a line of 10 cm each way to hold a ruler against. Refuses (ViewerError) what cannot
/// be drawn.
[[nodiscard]] std::string strips_pdf(const std::vector<geometry::Strip>& strips, const StripsContent& content,
                                     Paper paper);

}  // namespace scalpmark::viewer
