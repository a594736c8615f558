#pragma once

#include <vtkOpenGLRenderer.h>

#include <vector>

#include "viewer/stage/drawing/kept_bodies.h"

namespace scalpmark::viewer {

/// A renderer that blends what is translucent in the order of its actors, straight into the picture. Nothing
/// in it needs sorting: of a skin that is looked through only the nearest layer is drawn (nearest_layer.h),
/// and over it, of the coil, the sides toward the eye, windings before casing. VTK's way for any order draws
/// into several pictures of the whole size and takes a third of a frame.
///
/// Skin and cortex are drawn before all else, and in a window kept from one picture to the next
/// (kept_bodies.h).
class BlendingRenderer : public vtkOpenGLRenderer {
public:
  static BlendingRenderer* New();
  vtkTypeMacro(BlendingRenderer, vtkOpenGLRenderer)

  /// For a stage of which many pictures are drawn; else that would be work for nothing.
  void keep_bodies() { keeps_ = true; }

  void DeviceRenderOpaqueGeometry(vtkFrameBufferObjectBase* into = nullptr) override;
  void DeviceRenderTranslucentPolygonalGeometry(vtkFrameBufferObjectBase* into = nullptr) override;
  void ReleaseGraphicsResources(vtkWindow* window) override;

private:
  bool keeps_ = false;
  KeptBodies kept_;
};

}  // namespace scalpmark::viewer
