#pragma once

#include <cstdint>
#include <string>

#include "viewer/picture/picture.h"

/// A picture of the usual size, and the colours in it.
namespace scalpmark::tests {

inline constexpr viewer::PictureSize usual_size{1280, 800};

inline viewer::Colour colour_at(const std::string& pixels, int x, int y) {
  const size_t i =
      3 * (static_cast<size_t>(y) * static_cast<size_t>(usual_size.width) + static_cast<size_t>(x));
  return {static_cast<std::uint8_t>(pixels[i]), static_cast<std::uint8_t>(pixels[i + 1]),
          static_cast<std::uint8_t>(pixels[i + 2])};
}

inline viewer::Colour colour_at(const std::string& pixels, const viewer::Pixel& p) {
  return colour_at(pixels, static_cast<int>(p.x), static_cast<int>(p.y));
}

}  // namespace scalpmark::tests
