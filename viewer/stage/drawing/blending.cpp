#include "viewer/stage/drawing/blending.h"

#include <vtkObjectFactory.h>

namespace scalpmark::viewer {

vtkStandardNewMacro(BlendingRenderer)

void BlendingRenderer::DeviceRenderTranslucentPolygonalGeometry(vtkFrameBufferObjectBase* /*into*/) {
  UpdateTranslucentPolygonalGeometry();
}

}  // namespace scalpmark::viewer
