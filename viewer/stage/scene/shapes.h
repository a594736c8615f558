#pragma once

#include <Eigen/Core>
#include <vector>

namespace scalpmark::viewer {

/// The shape of a mark says what it is, so that a grey print works too. Each means one thing; a ring is the
/// hotspot alone, and none goes round a disc or a dot.
enum class Shape {
  dot,                ///< landmark
  disc,               ///< pulse point
  small_disc,         ///< pulse point of a spot of the grid
  hollow_disc,        ///< where a pulse was wanted
  small_hollow_disc,  ///< where the pulse of such a spot was wanted
  bar,                ///< edge mark; its length lies along x
  small_bar,          ///< edge mark of a spot of the grid
  ring,               ///< hotspot
  diamond,            ///< treatment site
  small_diamond,      ///< where the treatment site might have been
  tag,                ///< one of several places that fit a mark's tapes; its tip lies along x
  brackets,           ///< four corners around a landmark that was asked for
  pencil_cross        ///< today's site mark, as a pencil draws it
};

/// Whether it stands upright before the eye; others lie on the skin.
[[nodiscard]] bool faces_eye(Shape shape);

/// How far the shape reaches from its centre, pixels of a picture 800 high.
[[nodiscard]] double reach_px(Shape shape);

/// The shape as triangles (three points each), counter-clockwise, same pixels, y up; made `grow_px` larger
/// all around (for its halo).
[[nodiscard]] std::vector<Eigen::Vector2d> triangles_px(Shape shape, double grow_px = 0);

}  // namespace scalpmark::viewer
