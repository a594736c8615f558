#pragma once

#include <vector>

namespace scalpmark::viewer {

/// A part of a strip that fits on a page: what of the strip is printed on it.
struct StripPiece {
  double from_mm = 0, to_mm = 0;
  int glued_before = 0,
      glued_behind = 0;  ///< the number of the seam at either end; 0 for an end of the strip

  friend bool operator==(const StripPiece&, const StripPiece&) = default;
};

/// Cuts a strip into as few pieces as fit, all of one length; seams are numbered on from `first_seam`.
[[nodiscard]] std::vector<StripPiece> strip_pieces(double length_mm, double most_mm, int first_seam);

}  // namespace scalpmark::viewer
