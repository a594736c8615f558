#pragma once

#include <Eigen/Core>
#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>

namespace scalpmark::models {

/// Numbers as our files write them: lengths and angles to a thousandth, unit vectors to a millionth.
inline constexpr double length_steps = 1e3;     // per mm or degree
inline constexpr double direction_steps = 1e6;  // of a unit vector

[[nodiscard]] inline double rounded(double value, double steps) {
  return std::round(value * steps) / steps + 0.0;  // adding zero turns -0 into 0
}

[[nodiscard]] inline nlohmann::ordered_json number(double value) {
  return rounded(value, length_steps);
}

[[nodiscard]] inline nlohmann::ordered_json number(const std::optional<double>& value) {
  return value ? number(*value) : nlohmann::ordered_json(nullptr);
}

[[nodiscard]] inline nlohmann::ordered_json vector(const Eigen::Vector3d& v, double steps) {
  return {rounded(v.x(), steps), rounded(v.y(), steps), rounded(v.z(), steps)};
}

[[nodiscard]] inline nlohmann::ordered_json point(const Eigen::Vector3d& at) {
  return vector(at, length_steps);
}

[[nodiscard]] inline nlohmann::ordered_json point(const std::optional<Eigen::Vector3d>& at) {
  return at ? point(*at) : nlohmann::ordered_json(nullptr);
}

}  // namespace scalpmark::models
