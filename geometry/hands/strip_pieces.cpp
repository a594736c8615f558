#include "geometry/hands/strip_pieces.h"

#include <algorithm>
#include <cmath>

namespace scalpmark::geometry {

std::vector<StripPiece> strip_pieces(double length_mm, double most_mm, int first_seam) {
  const int count = std::max(1, static_cast<int>(std::ceil(length_mm / most_mm)));
  std::vector<StripPiece> pieces;
  for (int i = 0; i < count; ++i)
    pieces.push_back({length_mm * i / count, length_mm * (i + 1) / count, i > 0 ? first_seam + i - 1 : 0,
                      i + 1 < count ? first_seam + i : 0});
  return pieces;
}

int seams_before(double at_mm, double length_mm, double most_mm) {
  int seams = 0;
  for (const StripPiece& piece : strip_pieces(length_mm, most_mm, 1))
    seams += piece.from_mm > 0 && piece.from_mm < at_mm;
  return seams;
}

}  // namespace scalpmark::geometry
