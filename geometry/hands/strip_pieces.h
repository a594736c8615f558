#pragma once

#include <vector>

namespace scalpmark::geometry {

/// The most of a strip that fits on a page laid crosswise, beside its tab and the lines that prove the
/// print's size, mm: of A4 (ISO 216), and of Letter (ANSI/ASME Y14.1), the shorter.
inline constexpr double a4_piece_mm = 253, letter_piece_mm = 235;

/// A part of a strip that fits on a page: what of the strip is printed on it.
struct StripPiece {
  double from_mm = 0, to_mm = 0;
  int glued_before = 0,
      glued_behind = 0;  ///< the number of the seam at either end; 0 for an end of the strip

  friend bool operator==(const StripPiece&, const StripPiece&) = default;
};

/// Cuts a strip into as few pieces as fit, all of one length; seams are numbered on from `first_seam`.
[[nodiscard]] std::vector<StripPiece> strip_pieces(double length_mm, double most_mm, int first_seam);

/// How many seams there are from a strip's beginning to a place on it.
[[nodiscard]] int seams_before(double at_mm, double length_mm, double most_mm);

}  // namespace scalpmark::geometry
