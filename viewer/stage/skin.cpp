#include "viewer/stage/skin.h"

#include <vtkProperty.h>

#include "viewer/palette.h"
#include "viewer/stage/surface_data.h"

namespace scalpmark::viewer {

Skin::Skin(vtkRenderer* renderer) {
  actor_->SetMapper(mapper_);
  auto* look = actor_->GetProperty();
  look->SetInterpolationToPhong();
  look->SetColor(palette::skin.red / 255.0, palette::skin.green / 255.0, palette::skin.blue / 255.0);
  look->SetAmbient(0.46);
  look->SetDiffuse(0.56);
  look->SetSpecular(0);
  renderer->AddActor(actor_);
}

void Skin::show(const geometry::Head& head, const Shown& shown) {
  actor_->SetVisibility(shown.has(Thing::skin));
  actor_->GetProperty()->SetOpacity(shown.skin_opacity);
  // Of a skin that is looked through, only the near side: the far one would lie as a second veil over what is
  // inside.
  actor_->GetProperty()->SetBackfaceCulling(shown.skin_opacity < 1);
  // Copies of a surface share their vertices, so their address tells whether this head is already drawn.
  if (drawn_ && &drawn_->vertices() == &head.skin().vertices()) return;
  drawn_ = head.skin();
  mapper_->SetInputData(surface_data(*drawn_));
}

}  // namespace scalpmark::viewer
