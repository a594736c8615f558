#include "viewer/stage/scene/camera.h"

#include <Eigen/Geometry>
#include <array>
#include <cmath>
#include <utility>

#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

constexpr std::array<std::pair<View, std::string_view>, 8> view_names{{{View::left, "left"},
                                                                       {View::right, "right"},
                                                                       {View::front, "front"},
                                                                       {View::back, "back"},
                                                                       {View::above, "above"},
                                                                       {View::front_left, "front-left"},
                                                                       {View::front_right, "front-right"},
                                                                       {View::square_on, "square-on"}}};

/// Half way between front and side, a little from above, where coil and face are both seen.
constexpr double front_side_rise = 0.45;
/// A side counts in words from this share on (about 20 degrees).
constexpr double worth_naming = 0.35;

}  // namespace

std::string_view name_of(View view) {
  for (const auto& [v, name] : view_names)
    if (v == view) return name;
  return "";
}

std::optional<View> view_named(std::string_view name) {
  for (const auto& [view, n] : view_names)
    if (n == name) return view;
  return {};
}

const std::vector<View>& all_views() {
  static const std::vector<View> all = [] {
    std::vector<View> views;
    views.reserve(view_names.size());
    for (const auto& [view, name] : view_names) views.push_back(view);
    return views;
  }();
  return all;
}

Gaze gaze(View view, const geometry::HeadAxes& axes, const geometry::Placement& coil) {
  switch (view) {
    case View::left:
      return {-axes.right, axes.up};
    case View::right:
      return {axes.right, axes.up};
    case View::front:
      return {axes.front, axes.up};
    case View::back:
      return {-axes.front, axes.up};
    case View::above:
      return {axes.up, axes.front};
    case View::front_left:
    case View::front_right: {
      const Vector3d side = view == View::front_left ? Vector3d(-axes.right) : axes.right;
      const Vector3d way = (axes.front + side + front_side_rise * std::sqrt(2.0) * axes.up).normalized();
      return {way, (axes.up - axes.up.dot(way) * way).normalized()};
    }
    case View::square_on:
      return {coil.normal, (coil.forward - coil.forward.dot(coil.normal) * coil.normal).normalized()};
  }
  return {};
}

std::string where_from(const Vector3d& toward_eye, const geometry::HeadAxes& axes) {
  std::vector<std::string> sides;
  const auto add = [&](double share, const QString& positive, const QString& negative) {
    if (std::abs(share) >= worth_naming) sides.push_back(words(share > 0 ? positive : negative));
  };
  add(toward_eye.dot(axes.up), Words::tr("above"), Words::tr("below"));
  add(toward_eye.dot(axes.front), Words::tr("the front"), Words::tr("the back"));
  add(toward_eye.dot(axes.right), Words::tr("the patient's right"), Words::tr("the patient's left"));
  switch (sides.size()) {
    case 0:
      return "";
    case 1:
      return words(Words::tr("from %1"), {sides[0]});
    case 2:
      return words(Words::tr("from %1 and %2"), {sides[0], sides[1]});
    default:
      return words(Words::tr("from %1, %2 and %3"), {sides[0], sides[1], sides[2]});
  }
}

}  // namespace scalpmark::viewer
