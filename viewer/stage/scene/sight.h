#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry>

namespace scalpmark::viewer {

/// A place in the picture: x to the right, y down, from the top left corner.
struct Pixel {
  double x = 0, y = 0;
};

/// How the stage is seen: parallel projection, so that a mark moved toward the eye stays at its pixel.
struct Sight {
  Eigen::Vector3d toward_eye = Eigen::Vector3d::UnitZ();  ///< unit
  Eigen::Vector3d up = Eigen::Vector3d::UnitY();          ///< unit, up in the picture
  Eigen::Vector3d focus = Eigen::Vector3d::Zero();        ///< drawn at focus_px
  Pixel focus_px;
  double mm_per_px = 1;
  double scale = 1;  ///< picture height / 800: sizes of marks and text grow with it
  int width_px = 0, height_px = 0;

  [[nodiscard]] Eigen::Vector3d right() const { return up.cross(toward_eye); }
  [[nodiscard]] Pixel project(const Eigen::Vector3d& p) const {
    return {focus_px.x + (p - focus).dot(right()) / mm_per_px, focus_px.y - (p - focus).dot(up) / mm_per_px};
  }
  /// The point drawn at a pixel, in the plane through the focus.
  [[nodiscard]] Eigen::Vector3d unproject(const Pixel& at) const {
    return focus + (at.x - focus_px.x) * mm_per_px * right() - (at.y - focus_px.y) * mm_per_px * up;
  }
  /// Millimetres of `px` pixels of a picture 800 high.
  [[nodiscard]] double mm(double px) const { return px * scale * mm_per_px; }

  friend bool operator==(const Sight& a, const Sight& b) {
    return a.toward_eye == b.toward_eye && a.up == b.up && a.focus == b.focus &&
           a.focus_px.x == b.focus_px.x && a.focus_px.y == b.focus_px.y && a.mm_per_px == b.mm_per_px &&
           a.scale == b.scale && a.width_px == b.width_px && a.height_px == b.height_px;
  }
};

}  // namespace scalpmark::viewer
