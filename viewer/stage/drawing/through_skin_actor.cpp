#include "viewer/stage/drawing/through_skin_actor.h"

#include <vtkMapper.h>
#include <vtkObjectFactory.h>
#include <vtkOpenGLRenderer.h>
#include <vtkOpenGLState.h>

#include "viewer/stage/drawing/opengl_numbers.h"

namespace scalpmark::viewer {

vtkStandardNewMacro(ThroughSkinActor)

ThroughSkinActor::ThroughSkinActor() {
  ForceOpaqueOn();
}

void ThroughSkinActor::Render(vtkRenderer* renderer, vtkMapper* mapper) {
  auto* drawn_by = vtkOpenGLRenderer::SafeDownCast(renderer);
  if (drawn_by == nullptr) return;
  vtkOpenGLState* state = drawn_by->GetState();
  const bool blended = state->GetEnumState(opengl::blend);
  state->vtkglDisable(opengl::depth_test);
  state->vtkglEnable(opengl::blend);
  vtkOpenGLActor::Render(renderer, mapper);
  state->vtkglEnable(opengl::depth_test);
  if (!blended) state->vtkglDisable(opengl::blend);
}

}  // namespace scalpmark::viewer
