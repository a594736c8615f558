#include "viewer/window/stage_view/turntable.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace scalpmark::window {

using Eigen::AngleAxisd;
using Eigen::Matrix3d;
using Eigen::Quaterniond;
using Eigen::Vector3d;
using viewer::Gaze;

namespace {

constexpr double steepest_deg = 89;
constexpr double radians = std::numbers::pi / 180;

Matrix3d frame(const Gaze& gaze) {
  Matrix3d columns;
  columns << gaze.up.cross(gaze.toward_eye), gaze.up, gaze.toward_eye;
  return columns;
}

}  // namespace

Gaze turned(const Gaze& gaze, const Vector3d& head_up, double around_deg, double over_deg) {
  const double rise_deg = std::asin(std::clamp(gaze.toward_eye.dot(head_up), -1.0, 1.0)) / radians;
  // Level direction the eye looks from; from straight above, the picture's down stands for it.
  Vector3d level = gaze.toward_eye - gaze.toward_eye.dot(head_up) * head_up;
  if (level.norm() < std::cos(steepest_deg * radians) * 0.5)
    level = rise_deg > 0 ? Vector3d(-(gaze.up - gaze.up.dot(head_up) * head_up))
                         : Vector3d(gaze.up - gaze.up.dot(head_up) * head_up);
  level = AngleAxisd(around_deg * radians, head_up) * level.normalized();
  const double rise = std::clamp(rise_deg + over_deg, -steepest_deg, steepest_deg) * radians;
  Gaze out;
  out.toward_eye = std::cos(rise) * level + std::sin(rise) * head_up;
  out.up = (head_up - head_up.dot(out.toward_eye) * out.toward_eye).normalized();
  return out;
}

Gaze between(const Gaze& from, const Gaze& to, double share) {
  const Quaterniond a(frame(from)), b(frame(to));
  const Matrix3d m = a.slerp(share, b).toRotationMatrix();
  return {m.col(2), m.col(1)};
}

}  // namespace scalpmark::window
