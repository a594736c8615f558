#pragma once

#include <Eigen/Core>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/head/fiducials.h"
#include "geometry/plan/plan.h"

namespace scalpmark::viewer {

enum class View { left, right, front, back, above, front_left, front_right, square_on };

/// "front-left", as written on the command line; "square-on" looks straight down on the coil.
[[nodiscard]] std::string_view name_of(View view);
[[nodiscard]] std::optional<View> view_named(std::string_view name);
[[nodiscard]] const std::vector<View>& all_views();

/// Which way one looks. Unit vectors, square to each other.
struct Gaze {
  Eigen::Vector3d toward_eye = Eigen::Vector3d::UnitY();
  Eigen::Vector3d up = Eigen::Vector3d::UnitZ();  ///< up in the picture
};

/// From above, the nose points up in the picture; square on the coil, forward does.
[[nodiscard]] Gaze gaze(View view, const geometry::HeadAxes& axes, const geometry::Placement& coil);

/// "from the front and the left", in the patient's sides.
[[nodiscard]] std::string where_from(const Eigen::Vector3d& toward_eye, const geometry::HeadAxes& axes);

}  // namespace scalpmark::viewer
