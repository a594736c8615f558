#pragma once

#include <vtkActor.h>
#include <vtkNew.h>
#include <vtkPolyData.h>
#include <vtkPolyDataMapper.h>
#include <vtkRenderer.h>

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "viewer/stage/gaps_shown.h"
#include "viewer/stage/ink.h"
#include "viewer/stage/label.h"
#include "viewer/stage/overlay.h"
#include "viewer/stage/things.h"

namespace scalpmark::viewer {

/// The skin under the coil coloured by the gap over it, as far as the scale goes (gap_colours.h), unlit so
/// that colours can be compared with the scale; a thin line at every 10 mm; a cross where the coil touches;
/// the gap under the middle of each wing in figures. Its triangles go to the renderer once per placement.
class Gaps {
public:
  explicit Gaps(vtkRenderer* renderer);
  void show(const Shown& shown);
  void draw(const geometry::Head& head, const Sight& sight);
  void wish(std::vector<LabelWish>& labels, const Sight& sight) const;
  /// What labels are to leave free.
  void take_room(std::vector<Box>& boxes, const Sight& sight) const;
  [[nodiscard]] vtkActor* actor() const { return actor_; }

private:
  struct Place {
    std::string text;
    Eigen::Vector3d at = Eigen::Vector3d::Zero();
    bool touches = false, visible = false;
  };
  void build();

  std::shared_ptr<const GapsShown> gaps_;
  std::vector<std::array<Eigen::Vector3d, 2>> level_lines_;
  std::vector<Place> places_;
  vtkNew<vtkPolyData> data_;
  vtkNew<vtkPolyDataMapper> mapper_;
  vtkNew<vtkActor> actor_;
  Ink ink_;
};

/// The colours' scale in mm with what the gap is under each wing and what is hit, as a block that stands
/// where nothing else does.
class GapScale {
public:
  void show(const Shown& shown);
  /// Draws it within `free`, clear of the boxes taken, and adds its own.
  void draw(Overlay& overlay, const Box& free, const Coverage& head, std::vector<Caption>& taken) const;

private:
  struct Line {
    std::string text;
    bool strong = false;
  };
  std::vector<Line> lines_;  ///< below the scale
};

}  // namespace scalpmark::viewer
