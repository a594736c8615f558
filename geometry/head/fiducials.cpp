#include "geometry/head/fiducials.h"

#include <Eigen/Geometry>
#include <array>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/base/text.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

constexpr double too_close_mm = 20;
constexpr double shortest_line_mm = 100,
                 longest_line_mm = 300;  // adult heads measure 120 to 220 in both directions
constexpr double most_off_square_deg = 50;
constexpr double furthest_from_skin_mm = 15;
/// On a head the line from inion to nasion passes 10 to 30 mm above the tragi. Half a centimetre below is
/// swapped ears, not anatomy.
constexpr double lowest_midline_mm = -5;

struct Named {
  const char* name;
  Vector3d at;
};

std::array<Named, 4> named(const Fiducials& f) {
  return {{{"nasion", f.nasion},
           {"inion", f.inion},
           {"left tragus", f.left_tragus},
           {"right tragus", f.right_tragus}}};
}

void check_line(const Named& a, const Named& b) {
  const double length = (a.at - b.at).norm();
  if (length < shortest_line_mm || length > longest_line_mm)
    throw GeometryError(std::string("The straight line from ") + a.name + " to " + b.name + " is " +
                        to_text(length) + " mm; on a head it is " + to_text(shortest_line_mm) + " to " +
                        to_text(longest_line_mm) + " mm. Check both points and the unit.");
}

}  // namespace

HeadAxes head_axes(const Fiducials& fiducials) {
  const auto points = named(fiducials);
  for (const auto& p : points)
    if (!p.at.allFinite())
      throw GeometryError(std::string("The ") + p.name +
                          " has a coordinate that is not a number; enter it again.");
  for (size_t i = 0; i < 4; ++i)
    for (size_t j = i + 1; j < 4; ++j)
      if ((points[i].at - points[j].at).norm() < too_close_mm)
        throw GeometryError(std::string("The ") + points[i].name + " and the " + points[j].name + " are " +
                            to_text((points[i].at - points[j].at).norm()) +
                            " mm apart; place each at its own spot on the head.");
  check_line(points[0], points[1]);
  check_line(points[2], points[3]);
  HeadAxes axes;
  axes.origin = 0.5 * (fiducials.left_tragus + fiducials.right_tragus);
  axes.right = (fiducials.right_tragus - fiducials.left_tragus).normalized();
  const Vector3d midline = fiducials.nasion - fiducials.inion;
  const Vector3d front = midline - midline.dot(axes.right) * axes.right;
  const double off_square_deg = std::atan2(std::abs(midline.dot(axes.right)), front.norm()) * 180 / M_PI;
  if (off_square_deg > most_off_square_deg)
    throw GeometryError("The line from inion to nasion runs " + to_text(90 - off_square_deg) +
                        " degrees to the line between the tragi instead of about 90; check the four points.");
  axes.front = front.normalized();
  axes.up = axes.right.cross(axes.front);
  // Seen from above, the tragi must lie on either side of the midline.
  const Vector3d across = axes.up.cross(midline).normalized();
  const double left = (fiducials.left_tragus - fiducials.inion).dot(across);
  const double right = (fiducials.right_tragus - fiducials.inion).dot(across);
  if (left * right >= 0)
    throw GeometryError(
        "Both tragi lie on the same side of the line from inion to nasion; check the four points.");
  const double midline_height_mm = (fiducials.nasion - axes.origin).dot(axes.up);
  if (midline_height_mm < lowest_midline_mm)
    throw GeometryError(
        "The nasion and inion lie " + to_text(-midline_height_mm) +
        " mm below the tragi, as if left and right tragus were swapped (or nasion and inion); check "
        "the four points.");
  return axes;
}

SkinFiducials place_fiducials(const Surface& skin, const Fiducials& fiducials) {
  (void)head_axes(fiducials);
  SkinFiducials placed;
  const auto points = named(fiducials);
  const std::array<SurfacePoint*, 4> on_skin{&placed.nasion, &placed.inion, &placed.left_tragus,
                                             &placed.right_tragus};
  const std::array<Vector3d*, 4> at{&placed.at.nasion, &placed.at.inion, &placed.at.left_tragus,
                                    &placed.at.right_tragus};
  for (size_t i = 0; i < 4; ++i) {
    *on_skin[i] = skin.closest(points[i].at);
    *at[i] = skin.position(*on_skin[i]);
    const double off_mm = (*at[i] - points[i].at).norm();
    if (off_mm > furthest_from_skin_mm)
      throw GeometryError(std::string("The ") + points[i].name + " is " + to_text(off_mm) +
                          " mm away from the skin (at most " + to_text(furthest_from_skin_mm) +
                          "); place it on the head's surface.");
  }
  (void)head_axes(placed.at);
  return placed;
}

}  // namespace scalpmark::geometry
