#pragma once

#include <vtkOpenGLRenderer.h>

namespace scalpmark::viewer {

/// A renderer that blends what is translucent in the order of its actors, straight into the picture, as long
/// as nothing in it needs sorting: of the coil only the sides toward the eye are drawn, windings before
/// casing. VTK's way for any order draws into several pictures of the whole size and takes a third of a
/// frame.
class BlendingRenderer : public vtkOpenGLRenderer {
public:
  static BlendingRenderer* New();
  vtkTypeMacro(BlendingRenderer, vtkOpenGLRenderer)

  /// Whether things may lie translucent behind each other in any order (a skin that is looked through).
  void set_any_order(bool any_order) { any_order_ = any_order; }

  void DeviceRenderTranslucentPolygonalGeometry(vtkFrameBufferObjectBase* into = nullptr) override;

private:
  bool any_order_ = false;
};

}  // namespace scalpmark::viewer
