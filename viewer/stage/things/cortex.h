#pragma once

#include <vtkActor.h>
#include <vtkNew.h>
#include <vtkPolyDataMapper.h>
#include <vtkSmartPointer.h>

#include <optional>
#include <string>
#include <vector>

#include "geometry/head/head.h"
#include "viewer/stage/ink.h"
#include "viewer/stage/label.h"
#include "viewer/stage/overlay.h"

namespace scalpmark::viewer {

/// The template's brain under the skin, with the place under the coil lit and a line down to it from
/// the pulse point. Seen only where the skin is let through (Shown::skin_opacity) or left out. Its triangles
/// go to the renderer once per head.
class CortexBody {
public:
  explicit CortexBody(vtkRenderer* renderer);
  void show(const geometry::Placement& placement, const Shown& shown);
  void draw(const Sight& sight);
  [[nodiscard]] vtkActor* actor() const { return actor_; }

private:
  void light(const std::optional<geometry::CortexHit>& hit);

  std::optional<geometry::Surface> drawn_;
  std::optional<geometry::CortexHit> hit_;
  std::optional<Eigen::Vector3d> lit_;
  Eigen::Vector3d pulse_ = Eigen::Vector3d::Zero();
  bool shown_ = false;
  vtkSmartPointer<vtkPolyData> data_;
  vtkNew<vtkPolyDataMapper> mapper_;
  vtkNew<vtkActor> actor_;
  Ink ink_;
};

/// What lies under the coil, in words: depth, Brodmann area, gyrus, and that a person's own brain differs;
/// that alone, where the coil is not shown (Shown::under_coil).
class CortexWords {
public:
  void show(const geometry::Placement& placement, const Shown& shown);
  /// Draws them with their top left corner there, no wider than that, and adds the box they take.
  void draw(Overlay& overlay, const Sight& sight, const Pixel& top_left, double width_px,
            std::vector<Caption>& taken) const;
  [[nodiscard]] const std::vector<std::string>& lines() const { return lines_; }

private:
  std::vector<std::string> lines_;
};

/// "Brodmann area 9 (61 %), 46 (22 %)": the first one or two regions of a place; the words that both begin
/// with are said once.
[[nodiscard]] std::string shares_in_words(const std::vector<geometry::RegionShare>& shares);

}  // namespace scalpmark::viewer
