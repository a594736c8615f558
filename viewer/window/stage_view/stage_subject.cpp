#include "viewer/window/stage_view/stage_subject.h"

namespace scalpmark::window {

StageSubject::StageSubject(vtkRenderWindow* window)
    : window_(window), stage_(plan_renderer_), bare_(bare_renderer_) {
  window_->AddRenderer(plan_renderer_);
  set_moving(false);
}

vtkRenderer* StageSubject::renderer() const {
  return bare_shown_ ? bare_renderer_.Get() : plan_renderer_.Get();
}

void StageSubject::show_plan(const geometry::Head& head, const geometry::Case& the_case,
                             const geometry::Plan& plan, const viewer::Shown& shown, double pixel_ratio) {
  if (bare_shown_) {
    window_->RemoveRenderer(bare_renderer_);
    window_->AddRenderer(plan_renderer_);
    bare_shown_ = false;
  }
  plan_ =
      ShownPlan{head, the_case, plan, viewer::placement_shown(plan, shown), shown.has(viewer::Thing::coil)};
  stage_.set_pixel_ratio(pixel_ratio);
  stage_.show(head, the_case, plan, shown);
}

void StageSubject::show_bare(const UnplacedHead& head) {
  if (!bare_shown_) {
    window_->RemoveRenderer(plan_renderer_);
    window_->AddRenderer(bare_renderer_);
    bare_shown_ = true;
  }
  bare_.show(head);
}

void StageSubject::refresh() {
  bare_shown_ ? bare_.refresh() : stage_.refresh();
}

// In motion nobody sees steps along an edge, and smoothing them costs as much as drawing the head.
void StageSubject::set_moving(bool moving) {
  stage_.set_moving(moving);
  plan_renderer_->keep_bodies(moving);
  for (vtkRenderer* r : {static_cast<vtkRenderer*>(plan_renderer_), bare_renderer_.Get()})
    r->SetUseFXAA(!moving);
}

}  // namespace scalpmark::window
