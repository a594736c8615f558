#pragma once

#include <vtkOpenGLRenderer.h>

namespace scalpmark::viewer {

/// A renderer that blends what is translucent in the order of its actors, straight into the picture. Nothing
/// in it needs sorting: of a skin that is looked through only the nearest layer is drawn (nearest_layer.h),
/// and over it, of the coil, the sides toward the eye, windings before casing. VTK's way for any order draws
/// into several pictures of the whole size and takes a third of a frame.
class BlendingRenderer : public vtkOpenGLRenderer {
public:
  static BlendingRenderer* New();
  vtkTypeMacro(BlendingRenderer, vtkOpenGLRenderer)

  void DeviceRenderTranslucentPolygonalGeometry(vtkFrameBufferObjectBase* into = nullptr) override;
};

}  // namespace scalpmark::viewer
