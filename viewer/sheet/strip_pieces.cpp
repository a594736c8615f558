#include "viewer/sheet/strip_pieces.h"

#include <algorithm>
#include <cmath>

namespace scalpmark::viewer {

std::vector<StripPiece> strip_pieces(double length_mm, double most_mm, int first_seam) {
  const int count = std::max(1, static_cast<int>(std::ceil(length_mm / most_mm)));
  std::vector<StripPiece> pieces;
  for (int i = 0; i < count; ++i)
    pieces.push_back({length_mm * i / count, length_mm * (i + 1) / count, i > 0 ? first_seam + i - 1 : 0,
                      i + 1 < count ? first_seam + i : 0});
  return pieces;
}

}  // namespace scalpmark::viewer
