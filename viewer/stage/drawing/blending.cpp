#include "viewer/stage/drawing/blending.h"

#include <vtkObjectFactory.h>

#include "viewer/stage/drawing/nearest_layer.h"

namespace scalpmark::viewer {

vtkStandardNewMacro(BlendingRenderer)

void BlendingRenderer::DeviceRenderOpaqueGeometry(vtkFrameBufferObjectBase* into) {
  if (!keeps_) {
    vtkOpenGLRenderer::DeviceRenderOpaqueGeometry(into);
    return;
  }
  std::vector<vtkProp*> bodies, others;
  for (int i = 0; i < PropArrayCount; ++i) {
    vtkProp* prop = PropArray[i];
    const bool is_body =
        NearestLayerActor::SafeDownCast(prop) != nullptr && prop->HasTranslucentPolygonalGeometry() == 0;
    (is_body ? bodies : others).push_back(prop);
  }
  kept_.draw(*this, bodies);
  for (vtkProp* prop : others) prop->RenderOpaqueGeometry(this);
}

void BlendingRenderer::DeviceRenderTranslucentPolygonalGeometry(vtkFrameBufferObjectBase* /*into*/) {
  UpdateTranslucentPolygonalGeometry();
}

void BlendingRenderer::ReleaseGraphicsResources(vtkWindow* window) {
  kept_.release(window);
  vtkOpenGLRenderer::ReleaseGraphicsResources(window);
}

}  // namespace scalpmark::viewer
