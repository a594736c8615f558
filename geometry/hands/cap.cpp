#include "geometry/hands/cap.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/head/vertex.h"
#include "geometry/tapes/tape.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// A ray that starts on the skin starts this far before it, mm, so that rounding does not let it miss; far
/// below what any tape reads.
constexpr double off_the_skin_mm = 1e-3;

Eigen::Matrix3d turn_of(const HeadAxes& axes, const CapSlip& slip) {
  // right x front = up: a right-handed turn about `right` takes the front up, about `front` the top to the
  // right, about `up` the front to the left.
  const Vector3d by = -radians(slip.forward_deg) * axes.right + radians(slip.side_deg) * axes.front -
                      radians(slip.turn_deg) * axes.up;
  const double angle = by.norm();
  if (!(angle > 0)) return Eigen::Matrix3d::Identity();
  return Eigen::AngleAxisd(angle, by / angle).toRotationMatrix();
}

/// Back onto the skin along the ray from the centre through `q`.
SurfacePoint on_ray(const Surface& skin, const Vector3d& centre, const Vector3d& q) {
  const Vector3d out = (q - centre).normalized();
  const auto outer = skin.ray_hit(q - off_the_skin_mm * out, out);
  const auto inner = skin.ray_hit(q + off_the_skin_mm * out, -out, (q - centre).norm());
  if (!outer && !inner)
    throw GeometryError(Message::of(
        "The cap would slip to where this head has no skin; take a smaller slip, or a scan that reaches lower."));
  return outer && (!inner || outer->distance_mm < inner->distance_mm) ? outer->point : inner->point;
}

/// The fit to the corners of the triangles that lie above the brim, each weighing as much as its triangle.
CapSphere sphere_under(const Surface& skin, const Plane& brim) {
  // |p - c|^2 = r^2 is linear in c and r^2 - |c|^2. About the brim's point, for the sake of rounding.
  Eigen::Matrix4d normal = Eigen::Matrix4d::Zero();
  Eigen::Vector4d right = Eigen::Vector4d::Zero();
  for (int f = 0; f < static_cast<int>(skin.triangles().size()); ++f) {
    const bool above =
        std::ranges::all_of(std::array{0, 1, 2}, [&](int k) { return brim.height(skin.corner(f, k)) > 0; });
    if (!above) continue;
    const double area = skin.face_area(f);
    for (int k = 0; k < 3; ++k) {
      const Vector3d p = skin.corner(f, k) - brim.point;
      const Eigen::Vector4d row(2 * p.x(), 2 * p.y(), 2 * p.z(), 1);
      normal += area * row * row.transpose();
      right += area * p.squaredNorm() * row;
    }
  }
  const Eigen::FullPivLU<Eigen::Matrix4d> lu(normal);
  if (!lu.isInvertible())
    throw GeometryError(
        Message::of("There is too little skin above the cap's brim; set the brim lower over the nasion."));
  const Eigen::Vector4d fit = lu.solve(right);
  const Vector3d c = fit.head<3>();
  return {brim.point + c, std::sqrt(fit[3] + c.squaredNorm())};
}

/// The tapes from the four points toward the vertex: their place at a length.
struct TapesUp {
  const VertexTapes& tapes;
  enum Point { nasion, left_tragus, right_tragus, inion };

  [[nodiscard]] const Tape& tape(Point from) const {
    return from == nasion || from == inion ? tapes.midline : tapes.coronal;
  }
  [[nodiscard]] SectionPoint at(Point from, double mm) const {
    const Tape& t = tape(from);
    return t.at_mm(from == nasion || from == left_tragus ? mm : t.length_mm() - mm);
  }
  [[nodiscard]] double to_vertex_mm(Point from) const { return tape(from).length_mm() / 2; }
};

}  // namespace

Cap cap_on(const Head& head, double brim_over_nasion_mm) {
  const Tape& midline = head.vertex_tapes().midline;
  const SectionPoint front = midline.at_mm(brim_over_nasion_mm);
  const Vector3d up = head.axes().up;
  const Vector3d top = head.skin().position(head.vertex());
  if (!(brim_over_nasion_mm > 0) || !(brim_over_nasion_mm < midline.length_mm() / 2) ||
      !((top - front.at).dot(up) > 0))
    throw GeometryError(Message::of(
        "The cap's brim must lie above the nasion and below the vertex, but is set %1 mm above the nasion; correct it.",
        number(brim_over_nasion_mm)));
  Cap cap;
  cap.brim = {front.at, up};
  cap.front = front.on_skin;
  cap.front_at = front.at;
  cap.sphere = sphere_under(head.skin(), cap.brim);
  return cap;
}

Vector3d turned_about(const HeadAxes& axes, const CapSphere& sphere, const Vector3d& at,
                      const CapSlip& slip) {
  return sphere.centre + turn_of(axes, slip) * (at - sphere.centre);
}

SurfacePoint slipped(const Head& head, const CapSphere& sphere, const SurfacePoint& point,
                     const CapSlip& slip) {
  if (slip == CapSlip{}) return point;
  return on_ray(head.skin(), sphere.centre,
                turned_about(head.axes(), sphere, head.skin().position(point), slip));
}

std::vector<Vector3d> brim_line(const Head& head, const Cap& cap, const CapSlip& slip) {
  const Surface& skin = head.skin();
  const Section section = follow_section(skin, cap.front, cap.brim.normal, head.axes().right);
  if (!section.closed)
    throw GeometryError(Message::of(
        "The skin ends before the cap's brim comes round the head; take a scan of the whole head, or set the brim higher over the nasion."));
  std::vector<Vector3d> line;
  line.reserve(section.points.size());
  for (const SectionPoint& p : section.points)
    line.push_back(skin.position(slipped(head, cap.sphere, p.on_skin, slip)));
  return line;
}

namespace {

/// How far apart one looks along a tape for where it passes the brim, mm: no brim runs so unevenly that it
/// would be passed twice in between.
constexpr double look_every_mm = 3;

/// How high the brim is over one of the points; below zero, roughly how far it lies below it.
double height_over(const Head& head, const Cap& cap, const CapSlip& slip, TapesUp::Point from) {
  const TapesUp tapes{head.vertex_tapes()};
  const CapSlip back = undone(slip);
  // What of the slipped cap lies on the tape at a length was so far above the brim's plane before the slip.
  const auto above = [&](double mm) {
    return cap.brim.height(head.skin().position(slipped(head, cap.sphere, tapes.at(from, mm).on_skin, back)));
  };
  const double at_point = above(0);
  if (at_point > 0) return -at_point;
  const double end = tapes.to_vertex_mm(from);
  double low = 0, high = std::min(look_every_mm, end);
  while (above(high) <= 0) {
    if (high >= end)
      throw GeometryError(
          Message::of("The cap has slipped so far that its brim lies over the vertex; put it on again."));
    low = high;
    high = std::min(high + look_every_mm, end);
  }
  constexpr int halvings = 32;  // of 3 mm: a billionth of a millimetre
  for (int i = 0; i < halvings; ++i) {
    const double middle = 0.5 * (low + high);
    (above(middle) <= 0 ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

}  // namespace

std::array<double, 4> signed_brim_heights(const Head& head, const Cap& cap, const CapSlip& slip) {
  return {height_over(head, cap, slip, TapesUp::nasion), height_over(head, cap, slip, TapesUp::left_tragus),
          height_over(head, cap, slip, TapesUp::right_tragus), height_over(head, cap, slip, TapesUp::inion)};
}

BrimHeights brim_heights(const Head& head, const Cap& cap, const CapSlip& slip) {
  const auto over = [](double mm) { return mm >= 0 ? std::optional(mm) : std::nullopt; };
  const auto [nasion, left, right, inion] = signed_brim_heights(head, cap, slip);
  return {over(nasion), over(left), over(right), over(inion)};
}

std::array<std::vector<Vector3d>, 4> height_lines(const Head& head, const BrimHeights& heights) {
  const VertexTapes& tapes = head.vertex_tapes();
  const auto up = [](const Tape& tape, const std::optional<double>& mm, bool from_start) {
    if (!mm) return std::vector<Vector3d>();
    const double end = tape.length_mm();
    return from_start ? tape.line_between(0, *mm) : tape.line_between(end, end - *mm);
  };
  return {up(tapes.midline, heights.nasion_mm, true), up(tapes.coronal, heights.left_tragus_mm, true),
          up(tapes.coronal, heights.right_tragus_mm, false), up(tapes.midline, heights.inion_mm, false)};
}

double arrow_beside_nasion_mm(const Head& head, const Cap& cap, const CapSlip& slip) {
  const HeadAxes& axes = head.axes();
  const Vector3d nasion = head.fiducials().at.nasion;
  // The arrow is cloth over the brow: a straight line between its ends, which go with the cap.
  const Vector3d from = turned_about(axes, cap.sphere, cap.front_at, slip),
                 to = turned_about(axes, cap.sphere, nasion, slip);
  const double drop = (to - from).dot(axes.up);
  if (!(drop < 0))
    throw GeometryError(Message::of(
        "The cap would be turned so far that its arrow no longer runs down the nose; put it on again."));
  const double share = (nasion - from).dot(axes.up) / drop;
  return (from + share * (to - from) - nasion).dot(axes.right);
}

}  // namespace scalpmark::geometry
