#include "viewer/window/jobs/field_under_coil.h"

namespace scalpmark::window {

std::shared_ptr<const geometry::CoilField> FieldUnderCoil::look_under(
    const geometry::Head& head, const std::shared_ptr<const geometry::Cortex>& brain,
    const geometry::Coil& coil, const geometry::Placement& placement) {
  const geometry::CoilFrame frame = geometry::frame_of(placement.pose().pose, placement.lift_mm);
  const bool known = head_ && head_->same_as(head) && brain_ == brain && frame.origin == frame_.origin &&
                     frame.front == frame_.front && frame.normal == frame_.normal && coil_ == coil;
  if (known) return field_;
  head_.emplace(head);
  brain_ = brain;
  coil_ = coil;
  frame_ = frame;
  field_ = viewer::field_under(head, brain.get(), coil, placement);
  return field_;
}

}  // namespace scalpmark::window
