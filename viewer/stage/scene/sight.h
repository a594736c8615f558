#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry>
#include <algorithm>

namespace scalpmark::viewer {

/// A place in the picture: x to the right, y down, from the top left corner.
struct Pixel {
  double x = 0, y = 0;
};

/// How the stage is seen: by parallel projection, so that lengths can be compared across the picture, or from
/// an eye at some distance, as somebody at the chair sees the head. Either way a mark moved along
/// way_to_eye() stays at its pixel.
struct Sight {
  Eigen::Vector3d toward_eye = Eigen::Vector3d::UnitZ();  ///< unit
  Eigen::Vector3d up = Eigen::Vector3d::UnitY();          ///< unit, up in the picture
  Eigen::Vector3d focus = Eigen::Vector3d::Zero();        ///< drawn at focus_px
  Pixel focus_px;
  double mm_per_px = 1;
  double scale = 1;  ///< picture height / 800: sizes of marks and text grow with it
  int width_px = 0, height_px = 0;
  double eye_mm = 0;  ///< from the focus to the eye; 0: by parallel projection

  [[nodiscard]] Eigen::Vector3d right() const { return up.cross(toward_eye); }
  [[nodiscard]] Pixel project(const Eigen::Vector3d& p) const {
    const double mm = mm_per_px / nearer(p);
    return {focus_px.x + (p - focus).dot(right()) / mm, focus_px.y - (p - focus).dot(up) / mm};
  }
  /// How much larger what is there looks than at the focus.
  [[nodiscard]] double nearer(const Eigen::Vector3d& p) const {
    if (eye_mm <= 0) return 1;
    constexpr double closest = 0.05;  // what is this near, in shares of eye_mm, or behind the eye is not seen
    return 1 / std::max(closest, 1 - (p - focus).dot(toward_eye) / eye_mm);
  }
  [[nodiscard]] Eigen::Vector3d eye() const { return focus + eye_mm * toward_eye; }
  /// From a place to the eye, unit.
  [[nodiscard]] Eigen::Vector3d way_to_eye(const Eigen::Vector3d& from) const {
    return eye_mm > 0 ? (eye() - from).normalized() : toward_eye;
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
           a.scale == b.scale && a.width_px == b.width_px && a.height_px == b.height_px &&
           a.eye_mm == b.eye_mm;
  }
};

}  // namespace scalpmark::viewer
