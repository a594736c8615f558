#pragma once

#include <vtkActor.h>
#include <vtkNew.h>
#include <vtkPolyData.h>
#include <vtkPolyDataMapper.h>
#include <vtkRenderer.h>
#include <vtkSmartPointer.h>

#include <Eigen/Core>
#include <vector>

#include "viewer/stage/scene/mark.h"
#include "viewer/stage/scene/palette.h"
#include "viewer/stage/scene/sight.h"

namespace scalpmark::viewer {

struct Ribbon;
struct Wedge;

/// Flat, evenly coloured triangles in space: what marks and lines are drawn with. Filled anew for each view,
/// since sizes are in pixels.
class Ink {
public:
  explicit Ink(vtkRenderer* renderer);
  /// Drawn by another actor, which is added to the renderer.
  Ink(vtkRenderer* renderer, vtkActor* actor);

  /// Throws away what was drawn; what follows is for this sight.
  void begin(const Sight& sight);

  /// The mark's shape with a white halo, laid tangent to the skin (tilted up where it would be seen too much
  /// from the side to read), a little toward the eye so that the skin does not swallow it.
  void mark(const Mark& mark, Colour colour);

  /// A line of even width facing the eye.
  void line(const std::vector<Eigen::Vector3d>& points, double width_px, Colour colour, double lift_mm);
  /// The same, dashed.
  void dashes(const Eigen::Vector3d& from, const Eigen::Vector3d& to, double width_px, Colour colour,
              double lift_mm);
  /// A round spot facing the eye.
  void spot(const Eigen::Vector3d& at, double radius_px, Colour colour, double lift_mm);

  /// A band lying on the skin, as wide as it is, with what is printed on it.
  void ribbon(const Ribbon& ribbon);

  /// With a halo.
  void wedge(const Wedge& wedge);

  /// Hands what was drawn over to the renderer.
  void done();

  [[nodiscard]] vtkActor* actor() const { return actor_; }

private:
  void triangle(const Eigen::Vector3d& a, const Eigen::Vector3d& b, const Eigen::Vector3d& c, Colour colour);

  Sight sight_;
  std::vector<float> points_;
  std::vector<unsigned char> colours_;
  vtkNew<vtkPolyData> data_;
  vtkNew<vtkPolyDataMapper> mapper_;
  vtkSmartPointer<vtkActor> actor_;
};

}  // namespace scalpmark::viewer
