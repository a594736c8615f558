#pragma once

#include <vtkNew.h>
#include <vtkRenderWindow.h>
#include <vtkRenderer.h>

#include <optional>

#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"
#include "viewer/stage/drawing/blending.h"
#include "viewer/stage/stage.h"
#include "viewer/window/stage_view/bare_skin.h"

namespace scalpmark::window {

/// A plan as the stage shows it, and where the coil lies on it.
struct ShownPlan {
  geometry::Head head;
  geometry::Case the_case;
  geometry::Plan plan;
  geometry::Placement placement;
  bool has_coil = false;
};

/// What the stage's picture is of: a plan on its head, or a bare skin on which points are being placed. One
/// of the two is in the window at a time; the plan stays what it was while a skin is shown.
class StageSubject {
public:
  explicit StageSubject(vtkRenderWindow* window);

  void show_plan(const geometry::Head& head, const geometry::Case& the_case, const geometry::Plan& plan,
                 const viewer::Shown& shown, double pixel_ratio);
  void show_bare(const UnplacedHead& head);
  [[nodiscard]] bool is_bare() const { return bare_shown_; }
  /// The plan shown now or last; nothing before the first.
  [[nodiscard]] const std::optional<ShownPlan>& plan() const { return plan_; }

  /// Brings marks and labels up to date with the camera, without drawing them.
  void refresh();
  /// Draws quickly what moves, or well what rests.
  void set_moving(bool moving);

  [[nodiscard]] viewer::Stage& stage() { return stage_; }
  [[nodiscard]] const viewer::Stage& stage() const { return stage_; }
  [[nodiscard]] BareSkin& bare() { return bare_; }
  [[nodiscard]] const BareSkin& bare() const { return bare_; }
  [[nodiscard]] vtkRenderer* plan_renderer() const { return plan_renderer_.Get(); }

  // Of whichever is in the window:
  [[nodiscard]] vtkRenderer* renderer() const;
  [[nodiscard]] const viewer::Sight& sight() const { return bare_shown_ ? bare_.sight() : stage_.sight(); }

private:
  vtkRenderWindow* window_;
  vtkNew<viewer::BlendingRenderer> plan_renderer_;
  vtkNew<vtkRenderer> bare_renderer_;
  viewer::Stage stage_;
  BareSkin bare_;
  bool bare_shown_ = false;
  std::optional<ShownPlan> plan_;
};

}  // namespace scalpmark::window
