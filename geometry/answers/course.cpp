#include "geometry/answers/course.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "geometry/hands/scatter.h"

namespace scalpmark::geometry {

namespace {

using Offsets = std::vector<std::optional<VisitOffset>>;

std::optional<ControlLimits> limits_of(const CourseStretch& stretch, const Offsets& offsets,
                                       double VisitOffset::*value) {
  if (stretch.measured.size() < 2) return {};
  std::vector<double> values;
  for (const std::size_t i : stretch.measured) values.push_back((*offsets[i]).*value);
  return control_limits(values, std::min(values.size(), visits_for_limits));
}

std::vector<CourseStretch> stretches_of(const Offsets& offsets, const std::vector<bool>& marked_anew) {
  std::vector<CourseStretch> stretches;
  for (std::size_t i = 0; i < offsets.size(); ++i) {
    if (i == 0 || marked_anew[i]) {
      stretches.emplace_back();
      stretches.back().first = i;
    }
    ++stretches.back().count;
    if (offsets[i]) stretches.back().measured.push_back(i);
  }
  return stretches;
}

}  // namespace

std::optional<VisitOffset> offset_of(const VisitCheck& found) {
  if (!found.is_sure()) return {};
  const Check& check = *found.check;
  return VisitOffset{check.pulse_off_mm, check.forward_mm, -check.outward_mm, check.angle_error_deg};
}

Course course_of(std::vector<std::optional<VisitOffset>> offsets, const std::vector<bool>& marked_anew) {
  Course course;
  course.offsets = std::move(offsets);
  course.stretches = stretches_of(course.offsets, marked_anew);
  course.outside.assign(course.offsets.size(), false);
  for (CourseStretch& stretch : course.stretches) {
    stretch.distance = limits_of(stretch, course.offsets, &VisitOffset::pulse_off_mm);
    stretch.angle = limits_of(stretch, course.offsets, &VisitOffset::angle_off_deg);
    // A pulse nearer than ever is no fault.
    if (stretch.distance)
      std::erase_if(stretch.distance->outside, [&](std::size_t i) {
        return course.offsets[stretch.measured[i]]->pulse_off_mm < stretch.distance->low;
      });
    for (const auto& limits : {stretch.distance, stretch.angle})
      if (limits)
        for (const std::size_t i : limits->outside) course.outside[stretch.measured[i]] = true;
    std::vector<Eigen::Vector2d> places, angles;
    for (const std::size_t i : stretch.measured) {
      const VisitOffset& offset = *course.offsets[i];
      places.emplace_back(offset.forward_mm, offset.toward_midline_mm);
      angles.emplace_back(offset.angle_off_deg, 0);
    }
    stretch.place_drift = find_drift(places);
    stretch.angle_drift = find_drift(angles);
  }
  return course;
}

CheckedCourse check_course(const TapeFinder& finder, const Head& head, const Case& the_case, const Plan& plan,
                           const std::function<void()>& between) {
  CheckedCourse checked;
  Offsets offsets;
  std::vector<bool> marked_anew;
  for (const auto& visit : the_case.visits) {
    if (between) between();
    checked.checks.push_back(check_visit(finder, head, the_case, plan, *visit));
    offsets.push_back(offset_of(checked.checks.back()));
    marked_anew.push_back(visit->marked_anew);
  }
  checked.course = course_of(std::move(offsets), marked_anew);
  return checked;
}

std::optional<CourseEllipses> course_ellipses(const Head& head, const Plan& plan,
                                              const CourseStretch& stretch, const Course& course) {
  const auto count = static_cast<double>(stretch.measured.size());
  if (count < 3) return {};
  Scatter scatter;
  Eigen::Vector2d& mean = scatter.clusters.front().middle;
  const auto place = [&](std::size_t i) {
    return Eigen::Vector2d(course.offsets[i]->forward_mm, course.offsets[i]->toward_midline_mm);
  };
  for (const std::size_t i : stretch.measured) mean += place(i) / count;
  for (const std::size_t i : stretch.measured)
    scatter.covariance += (place(i) - mean) * (place(i) - mean).transpose() / (count - 1);
  const Placement& site = plan.treatment;
  const auto outline = [&](double share) {
    const EllipseForm form = region_holding(share, scatter);
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d> axes(form.shape);
    constexpr int corners = 72;
    std::vector<Eigen::Vector3d> points;
    for (int k = 0; k <= corners; ++k) {
      const double turn = 2 * std::numbers::pi * k / corners;
      const Eigen::Vector2d flat = form.centre + std::sqrt(form.size) * axes.eigenvectors() *
                                                     axes.eigenvalues().cwiseMax(0).cwiseSqrt().cwiseProduct(
                                                         Eigen::Vector2d(std::cos(turn), std::sin(turn)));
      points.push_back(head.skin().position(
          head.skin().closest(site.pulse + flat.x() * site.forward + flat.y() * site.inward)));
    }
    return points;
  };
  return CourseEllipses{outline(0.5), outline(0.95)};
}

}  // namespace scalpmark::geometry
