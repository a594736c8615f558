#include "viewer/stage/things/skin.h"

#include <vtkProperty.h>

#include "viewer/stage/palette.h"
#include "viewer/stage/skin_mesh.h"

namespace scalpmark::viewer {

Skin::Skin(vtkRenderer* renderer) {
  actor_->SetMapper(mapper_);
  auto* look = actor_->GetProperty();
  look->SetInterpolationToPhong();
  look->SetColor(palette::skin.red / 255.0, palette::skin.green / 255.0, palette::skin.blue / 255.0);
  look->SetAmbient(0.46);
  look->SetDiffuse(0.56);
  look->SetSpecular(0);
  thin_actor_->SetMapper(thin_mapper_);
  thin_actor_->SetProperty(look);
  thin_actor_->PickableOff();
  renderer->AddActor(actor_);
  renderer->AddActor(thin_actor_);
  choose();
}

void Skin::choose() {
  actor_->SetVisibility(shown_ && !draws_thin());
  thin_actor_->SetVisibility(shown_ && draws_thin());
}

void Skin::set_thin(const std::optional<geometry::Surface>& thin) {
  const bool same = thin && thin_ ? &thin->vertices() == &thin_->vertices() : !thin && !thin_;
  if (same) return;
  thin_ = thin;
  if (thin_) thin_mapper_->SetInputData(skin_mesh(*thin_));
  choose();
}

void Skin::set_moving(bool moving) {
  moving_ = moving;
  choose();
}

void Skin::show(const geometry::Head& head, const Shown& shown) {
  shown_ = shown.has(Thing::skin);
  choose();
  actor_->GetProperty()->SetOpacity(shown.skin_opacity);
  // Of a skin that is looked through, only the near side: the far one would lie as a second veil over what is
  // inside.
  actor_->GetProperty()->SetBackfaceCulling(shown.skin_opacity < 1);
  // Copies of a surface share their vertices, so their address tells whether this head is already drawn.
  if (drawn_ && &drawn_->vertices() == &head.skin().vertices()) return;
  drawn_ = head.skin();
  mapper_->SetInputData(skin_mesh(*drawn_));
}

}  // namespace scalpmark::viewer
