#include "viewer/stage/drawing/nearest_layer.h"

#include <vtkMapper.h>
#include <vtkObjectFactory.h>
#include <vtkOpenGLRenderer.h>
#include <vtkOpenGLState.h>

namespace scalpmark::viewer {

vtkStandardNewMacro(NearestLayerActor)

void NearestLayerActor::Render(vtkRenderer* renderer, vtkMapper* mapper) {
  auto* drawn_by = vtkOpenGLRenderer::SafeDownCast(renderer);
  if (drawn_by != nullptr && IsRenderingTranslucentPolygonalGeometry()) {
    vtkOpenGLState* state = drawn_by->GetState();
    state->vtkglColorMask(0, 0, 0, 0);
    state->vtkglDepthMask(1);
    mapper->Render(renderer, this);
    state->vtkglColorMask(1, 1, 1, 1);
  }
  vtkOpenGLActor::Render(renderer, mapper);
}

}  // namespace scalpmark::viewer
