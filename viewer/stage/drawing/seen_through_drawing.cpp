#include "viewer/stage/drawing/seen_through_drawing.h"

#include <vtkProperty.h>

#include <cmath>

#include "viewer/stage/drawing/triangles.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

SeenThroughDrawing::SeenThroughDrawing(vtkRenderer* renderer) : renderer_(renderer), ink_(renderer, lines_) {
  draw_last();
  mapper_->SetInputData(data_);
  tints_->SetMapper(mapper_);
  tints_->GetProperty()->LightingOff();
  tints_->GetProperty()->BackfaceCullingOn();
  for (vtkActor* actor : {tints_.Get(), lines_.Get()}) {
    actor->PickableOff();
    actor->SetVisibility(0);
  }
}

void SeenThroughDrawing::draw_last() {
  for (vtkActor* actor : {tints_.Get(), lines_.Get()}) {  // lines over the tints
    renderer_->RemoveActor(actor);
    renderer_->AddActor(actor);
  }
}

void SeenThroughDrawing::show(const std::optional<SeenThrough>& through) {
  through_ = through;
  tints_->SetVisibility(through.has_value());
  if (!through) return;
  std::vector<float> coordinates;
  std::vector<unsigned char> shades;
  for (const Tint& tint : through->tints) {
    const Colour c = colour_of(tint.role);
    const auto opacity = static_cast<unsigned char>(std::lround(255 * tint.opacity));
    for (const auto& triangle : tint.triangles)
      for (const Vector3d& corner : triangle) {
        for (int i = 0; i < 3; ++i) coordinates.push_back(static_cast<float>(corner[i]));
        shades.insert(shades.end(), {c.red, c.green, c.blue, opacity});
      }
  }
  set_triangles(*data_, coordinates, shades, 4);
}

void SeenThroughDrawing::draw(const Sight& sight) {
  ink_.begin(sight);
  if (through_) {
    const auto faces_eye = [&](const Vector3d& at) {
      return (at - through_->inside).dot(sight.toward_eye) > 0;
    };
    for (const Tint& tint : through_->tints)
      for (const auto& ends : tint.outline)
        if (faces_eye(ends[0]))
          ink_.line({ends[0], ends[1]}, tint.outline_px, colour_of(Role::construction), 0);
    for (const Line& line : through_->lines)
      if (faces_eye(line.points.front()))
        ink_.line(line.points, line.width_px, colour_of(line.role), line.lift_mm);
  }
  ink_.done();
}

}  // namespace scalpmark::viewer
