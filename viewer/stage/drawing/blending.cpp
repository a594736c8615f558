#include "viewer/stage/drawing/blending.h"

#include <vtkCamera.h>
#include <vtkCullerCollection.h>
#include <vtkObjectFactory.h>
#include <vtkOpenGLRenderWindow.h>
#include <vtkOpenGLState.h>

#include "viewer/stage/drawing/nearest_layer.h"
#include "viewer/stage/drawing/opengl_numbers.h"

namespace scalpmark::viewer {

vtkStandardNewMacro(BlendingRenderer)

namespace {

bool is_opaque_body(vtkProp* prop) {
  auto* body = NearestLayerActor::SafeDownCast(prop);
  return body != nullptr && body->HasOpaqueGeometry();
}

}  // namespace

BlendingRenderer::BlendingRenderer() {
  // All of the scene is in the picture; finding that out anew asks each actor for its bounds.
  Cullers->RemoveAllItems();
}

StillPicture::Key BlendingRenderer::bodies_and_view() {
  const int* size = GetSize();
  StillPicture::Key key{GetActiveCamera()->GetMTime(), static_cast<unsigned long long>(size[0]),
                        static_cast<unsigned long long>(size[1])};
  for (const double part : {GetBackground()[0], GetBackground()[1], GetBackground()[2]})
    key.push_back(static_cast<unsigned long long>(part * 1e6));
  for (int i = 0; i < PropArrayCount; ++i)
    if (is_opaque_body(PropArray[i])) key.push_back(PropArray[i]->GetRedrawMTime());
  return key;
}

void BlendingRenderer::Clear() {
  put_back_ = false;
  auto* window = vtkOpenGLRenderWindow::SafeDownCast(GetRenderWindow());
  if (keeps_bodies_ && window != nullptr && bodies_.put_back(*window, bodies_and_view())) {
    put_back_ = true;
    vtkOpenGLState* state = GetState();  // as VTK leaves it when it has cleared all
    state->vtkglEnable(opengl::depth_test);
    state->vtkglColorMask(1, 1, 1, 1);
    state->vtkglDepthMask(1);
    return;
  }
  Superclass::Clear();
}

void BlendingRenderer::DeviceRenderOpaqueGeometry(vtkFrameBufferObjectBase* into) {
  auto* window = vtkOpenGLRenderWindow::SafeDownCast(GetRenderWindow());
  if (!keeps_bodies_ || window == nullptr) {
    Superclass::DeviceRenderOpaqueGeometry(into);
    return;
  }
  if (!put_back_) {
    for (int i = 0; i < PropArrayCount; ++i)
      if (is_opaque_body(PropArray[i])) NumberOfPropsRendered += PropArray[i]->RenderOpaqueGeometry(this);
    bodies_.keep(*window, bodies_and_view());
  }
  for (int i = 0; i < PropArrayCount; ++i)
    if (!is_opaque_body(PropArray[i])) NumberOfPropsRendered += PropArray[i]->RenderOpaqueGeometry(this);
}

void BlendingRenderer::DeviceRenderTranslucentPolygonalGeometry(vtkFrameBufferObjectBase* /*into*/) {
  UpdateTranslucentPolygonalGeometry();
}

void BlendingRenderer::ReleaseGraphicsResources(vtkWindow* window) {
  bodies_.release(window);
  Superclass::ReleaseGraphicsResources(window);
}

}  // namespace scalpmark::viewer
