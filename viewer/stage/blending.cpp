#include "viewer/stage/blending.h"

#include <vtkObjectFactory.h>

namespace scalpmark::viewer {

vtkStandardNewMacro(BlendingRenderer)

void BlendingRenderer::DeviceRenderTranslucentPolygonalGeometry(vtkFrameBufferObjectBase* into) {
  if (any_order_)
    vtkOpenGLRenderer::DeviceRenderTranslucentPolygonalGeometry(into);
  else
    UpdateTranslucentPolygonalGeometry();
}

}  // namespace scalpmark::viewer
