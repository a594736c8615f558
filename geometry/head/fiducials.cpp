#include "geometry/head/fiducials.h"

#include <Eigen/Geometry>
#include <array>
#include <cmath>

#include "geometry/base/angles.h"
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
  Message name;
  Vector3d at;
};

std::array<Named, 4> named(const Fiducials& f) {
  return {{{Message::of("nasion"), f.nasion},
           {Message::of("inion"), f.inion},
           {Message::of("left tragus"), f.left_tragus},
           {Message::of("right tragus"), f.right_tragus}}};
}

void check_line(const Named& a, const Named& b) {
  const double length = (a.at - b.at).norm();
  if (length < shortest_line_mm || length > longest_line_mm)
    throw GeometryError(Message::of(
        "The straight line from %1 to %2 is %3 mm; on a head it is %4 to %5 mm. Check both points and the unit.",
        a.name, b.name, number(length), number(shortest_line_mm), number(longest_line_mm)));
}

}  // namespace

HeadAxes head_axes(const Fiducials& fiducials) {
  const auto points = named(fiducials);
  for (const auto& p : points)
    if (!p.at.allFinite())
      throw GeometryError(
          Message::of("The %1 has a coordinate that is not a number; enter it again.", p.name));
  for (size_t i = 0; i < 4; ++i)
    for (size_t j = i + 1; j < 4; ++j)
      if ((points[i].at - points[j].at).norm() < too_close_mm)
        throw GeometryError(
            Message::of("The %1 and the %2 are %3 mm apart; place each at its own spot on the head.",
                        points[i].name, points[j].name, number((points[i].at - points[j].at).norm())));
  check_line(points[0], points[1]);
  check_line(points[2], points[3]);
  HeadAxes axes;
  axes.origin = 0.5 * (fiducials.left_tragus + fiducials.right_tragus);
  axes.right = (fiducials.right_tragus - fiducials.left_tragus).normalized();
  const Vector3d midline = fiducials.nasion - fiducials.inion;
  const Vector3d front = midline - midline.dot(axes.right) * axes.right;
  const double off_square_deg = degrees(std::atan2(std::abs(midline.dot(axes.right)), front.norm()));
  if (off_square_deg > most_off_square_deg)
    throw GeometryError(Message::of(
        "The line from inion to nasion runs %1 degrees to the line between the tragi instead of about 90; check the four points.",
        number(90 - off_square_deg)));
  axes.front = front.normalized();
  axes.up = axes.right.cross(axes.front);
  // Seen from above, the tragi must lie on either side of the midline.
  const Vector3d across = axes.up.cross(midline).normalized();
  const double left = (fiducials.left_tragus - fiducials.inion).dot(across);
  const double right = (fiducials.right_tragus - fiducials.inion).dot(across);
  if (left * right >= 0)
    throw GeometryError(Message::of(
        "Both tragi lie on the same side of the line from inion to nasion; check the four points."));
  const double midline_height_mm = (fiducials.nasion - axes.origin).dot(axes.up);
  if (midline_height_mm < lowest_midline_mm)
    throw GeometryError(Message::of(
        "The nasion and inion lie %1 mm below the tragi, as if left and right tragus were swapped (or nasion and inion); check the four points.",
        number(-midline_height_mm)));
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
      throw GeometryError(
          Message::of("The %1 is %2 mm away from the skin (at most %3); place it on the head's surface.",
                      points[i].name, number(off_mm), number(furthest_from_skin_mm)));
  }
  (void)head_axes(placed.at);
  return placed;
}

}  // namespace scalpmark::geometry
