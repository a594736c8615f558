#include "viewer/stage/drawing/through_skin_actor.h"

#include <vtkMapper.h>
#include <vtkObjectFactory.h>
#include <vtkOpenGLRenderer.h>
#include <vtkOpenGLState.h>

namespace scalpmark::viewer {

vtkStandardNewMacro(ThroughSkinActor)

namespace {

// OpenGL's own numbers (Khronos registry, gl.xml).
constexpr unsigned depth_test = 0x0B71, blend = 0x0BE2;

}  // namespace

ThroughSkinActor::ThroughSkinActor() {
  ForceOpaqueOn();
}

void ThroughSkinActor::Render(vtkRenderer* renderer, vtkMapper* mapper) {
  auto* drawn_by = vtkOpenGLRenderer::SafeDownCast(renderer);
  if (drawn_by == nullptr) return;
  vtkOpenGLState* state = drawn_by->GetState();
  const bool blended = state->GetEnumState(blend);
  state->vtkglDisable(depth_test);
  state->vtkglEnable(blend);
  vtkOpenGLActor::Render(renderer, mapper);
  state->vtkglEnable(depth_test);
  if (!blended) state->vtkglDisable(blend);
}

}  // namespace scalpmark::viewer
