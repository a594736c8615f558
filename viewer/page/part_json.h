#pragma once

#include <nlohmann/json.hpp>

#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

// What a page in a browser is given to draw: values of stage/scene as JSON. Places in mm (to 0.01),
// directions to 0.0001, sizes in pixels of a picture 800 high, colours as "#rrggbb". What is empty is left
// out.

/// A place, a direction.
[[nodiscard]] nlohmann::ordered_json place_json(const Eigen::Vector3d& at);
[[nodiscard]] nlohmann::ordered_json direction_json(const Eigen::Vector3d& way);
/// Places one after the other: x, y, z, x, y, z, ...
[[nodiscard]] nlohmann::ordered_json places_json(const std::vector<Eigen::Vector3d>& places);
[[nodiscard]] std::string colour_json(Role role);

/// Marks, lines, spots, wedges and words of a part; bodies and coils are not among them.
[[nodiscard]] nlohmann::ordered_json part_json(const Part& part);

/// The shapes, by their number: triangles, the same grown for the halo, and whether they face the eye.
[[nodiscard]] nlohmann::ordered_json shapes_json();

}  // namespace scalpmark::viewer
