#include "viewer/stage/scene/gap_colours.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace scalpmark::viewer {

namespace {

// OKLab at the two ends; between them all but the bow toward green is straight.
constexpr double darkest = 0.32, lightest = 0.95;
constexpr double bluest = -0.11, yellowest = 0.13;
constexpr double bow_to_green = -0.075;

std::uint8_t encoded(double linear) {
  const double v = std::clamp(linear, 0.0, 1.0);
  const double s = v <= 0.0031308 ? 12.92 * v : 1.055 * std::pow(v, 1 / 2.4) - 0.055;  // IEC 61966-2-1
  return static_cast<std::uint8_t>(std::lround(255 * s));
}

}  // namespace

Colour gap_colour(double gap_mm) {
  const double t = std::clamp(gap_mm / gap_scale_top_mm, 0.0, 1.0);
  const double light = darkest + t * (lightest - darkest);
  const double a = bow_to_green * std::sin(std::numbers::pi * t);
  const double b = bluest + t * (yellowest - bluest);
  const double l = std::pow(light + 0.3963377774 * a + 0.2158037573 * b, 3);
  const double m = std::pow(light - 0.1055613458 * a - 0.0638541728 * b, 3);
  const double s = std::pow(light - 0.0894841775 * a - 1.2914855480 * b, 3);
  return {encoded(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s),
          encoded(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s),
          encoded(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s)};
}

}  // namespace scalpmark::viewer
