#include "geometry/head/stretch.h"

#include <algorithm>
#include <cmath>

namespace scalpmark::geometry {

using Eigen::Matrix3d;
using Eigen::Vector3d;

namespace {

// Places of the parts on the generic head, mm along front and up; from the nasion for the face, from the
// tragus for an ear. Each pair: where the part is whole, and where nothing of it is left. The wider apart,
// the gentler the passage between; these keep it one to one with room to spare.
constexpr double nasion_from_inion_mm = 192;
struct Passage {
  double whole_mm, none_mm;
};
constexpr Passage face_back{-24, -84};  // from the eye's outer corner and the chin back to the jaw's corner
constexpr Passage face_up{6, 56};       // from the brow up the forehead
constexpr Passage face_aside{36,
                             96};  // from the middle of the eye to beyond the cheek, which follows in part
constexpr Passage ear_front{8, 42}, ear_back{-40, -90}, ear_up{37, 90}, ear_down{-34, -90};
constexpr Passage ear_inward{60, 12};  // from the midline: an ear is not the middle of the neck

/// 0 at `none`, 1 at `whole`. Cubic: the skin's facing changes smoothly, and no quicker than need be.
double passing(const Passage& passage, double mm) {
  const double t = std::clamp((mm - passage.none_mm) / (passage.whole_mm - passage.none_mm), 0.0, 1.0);
  return t * t * (3 - 2 * t);
}

}  // namespace

Stretch::Stretch(const Head& head) : head_(head) {
  const HeadAxes& axes = head.axes();
  axes_ << axes.right, axes.front, axes.up;
  const Fiducials& f = head.fiducials().at;
  unit_mm_ = (f.nasion - f.inion).norm() / nasion_from_inion_mm;
  of_vertices_.reserve(head.skin().vertices().size());
  for (const Vector3d& v : head.skin().vertices()) of_vertices_.push_back(shares(v));
}

Stretch::Shares Stretch::shares(const Vector3d& p) const {
  const Fiducials& f = head_.fiducials().at;
  const Vector3d from_nasion = axes_.transpose() * (p - f.nasion) / unit_mm_;
  Shares with;
  with.face = passing(face_back, from_nasion.y()) * passing(face_up, from_nasion.z()) *
              passing(face_aside, std::abs(from_nasion.x()));
  for (const bool left : {true, false}) {
    const Vector3d& tragus = left ? f.left_tragus : f.right_tragus;
    const Vector3d from_tragus = axes_.transpose() * (p - tragus) / unit_mm_;
    const double side_mm = axes_.col(0).dot(p - head_.axes().origin) / unit_mm_;
    (left ? with.left_ear : with.right_ear) =
        passing(ear_front, from_tragus.y()) * passing(ear_back, from_tragus.y()) *
        passing(ear_up, from_tragus.z()) * passing(ear_down, from_tragus.z()) *
        passing(ear_inward, left ? -side_mm : side_mm) * (1 - with.face);
  }
  return with;
}

Vector3d Stretch::moved(const Vector3d& p, const Shares& with, const Matrix3d& cranium,
                        const Matrix3d& off) const {
  const Vector3d& origin = head_.axes().origin;
  Vector3d to = origin + cranium * (p - origin);
  if (with.face == 0 && with.left_ear == 0 && with.right_ear == 0) return to;
  const Fiducials& f = head_.fiducials().at;
  to += off * (with.face * (p - f.nasion) + with.left_ear * (p - f.left_tragus) +
               with.right_ear * (p - f.right_tragus));
  return to;
}

Vector3d Stretch::moved(const Vector3d& p, const Vector3d& factors) const {
  const Matrix3d cranium = axes_ * factors.asDiagonal() * axes_.transpose();
  return moved(p, shares(p), cranium, std::cbrt(factors.prod()) * Matrix3d::Identity() - cranium);
}

Head Stretch::stretched(const Vector3d& factors, const SurfacePoint& near_vertex) const {
  const Matrix3d cranium = axes_ * factors.asDiagonal() * axes_.transpose();
  const Matrix3d off = std::cbrt(factors.prod()) * Matrix3d::Identity() - cranium;
  std::vector<Vector3d> to = head_.skin().vertices();
  for (size_t v = 0; v < to.size(); ++v) to[v] = moved(to[v], of_vertices_[v], cranium, off);
  return {head_.skin().moved(std::move(to)), head_.fiducials(), near_vertex};
}

}  // namespace scalpmark::geometry
