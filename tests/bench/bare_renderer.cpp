#include "tests/bench/bare_renderer.h"

#include <vtkActor.h>
#include <vtkCamera.h>
#include <vtkPolyDataMapper.h>
#include <vtkProperty.h>

#include "viewer/stage/drawing/skin_mesh.h"

namespace scalpmark::bench {

BareRenderer::BareRenderer(const geometry::Surface& skin, const QSize& size) {
  vtkNew<vtkPolyDataMapper> mapper;
  mapper->SetInputData(viewer::skin_mesh(skin));
  vtkNew<vtkActor> actor;
  actor->SetMapper(mapper);
  actor->GetProperty()->SetInterpolationToPhong();
  actor->GetProperty()->SetAmbient(0.46);
  actor->GetProperty()->SetDiffuse(0.56);
  actor->GetProperty()->SetSpecular(0);
  renderer_->AddActor(actor);
  window_->SetOffScreenRendering(1);
  window_->SetMultiSamples(0);
  window_->SetSize(size.width(), size.height());
  window_->AddRenderer(renderer_);
}

void BareRenderer::look_as(vtkRenderer& other) {
  renderer_->GetActiveCamera()->DeepCopy(other.GetActiveCamera());
  renderer_->SetBackground(other.GetBackground());
}

void BareRenderer::draw() {
  window_->Render();
  window_->WaitForCompletion();
}

}  // namespace scalpmark::bench
