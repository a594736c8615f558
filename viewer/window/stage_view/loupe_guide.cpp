#include "viewer/window/stage_view/loupe_guide.h"

#include "viewer/window/stage_view/eye.h"

namespace scalpmark::window {

using Eigen::Vector3d;

void LoupeGuide::leave() {
  pointer_.reset();
  loupe_.hide();
}

void LoupeGuide::place(const std::optional<Fiducial>& dragged, bool hand_is_free) {
  const BareSkin& bare = subject_.bare();
  if (!subject_.is_bare() || !bare.skin()) return;
  std::optional<Vector3d> at;
  if (dragged)
    at = bare.placed(*dragged);
  else if (pointer_ && hand_is_free) {
    if (const auto point = bare.skin_at(*pointer_)) at = bare.position(*point);
  }
  if (!at) at = bare.placed(wanted_);
  // From behind, a loupe would look through the head.
  const geometry::Surface& skin = *bare.skin();
  const viewer::Sight& sight = subject_.sight();
  if (!at || !viewer::in_sight(skin, *at, skin.smooth_normal(skin.closest(*at)), sight)) {
    loupe_.hide();
    return;
  }
  const viewer::Pixel there = sight.project(*at);
  loupe_.show(skin, *at, eye_of(*subject_.renderer()).gaze,
              there.x > 0.55 * sight.width_px && there.y > 0.5 * sight.height_px);
}

}  // namespace scalpmark::window
