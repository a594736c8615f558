#pragma once

#include <vtkOpenGLRenderer.h>

#include <vector>

#include "viewer/stage/drawing/still_picture.h"

namespace scalpmark::viewer {

/// A renderer that blends what is translucent in the order of its actors, straight into the picture. Nothing
/// in it needs sorting: of a skin that is looked through only the nearest layer is drawn (nearest_layer.h),
/// and over it, of the coil, the sides toward the eye, windings before casing. VTK's way for any order draws
/// into several pictures of the whole size and takes a third of a frame.
/// In motion it may keep a copy of the opaque bodies: while the coil is dragged over them they stay as they
/// are from picture to picture, and drawing them takes longer than all else.
class BlendingRenderer : public vtkOpenGLRenderer {
public:
  static BlendingRenderer* New();
  vtkTypeMacro(BlendingRenderer, vtkOpenGLRenderer)

  void keep_bodies(bool keep) { keeps_bodies_ = keep; }

  void Clear() override;
  void DeviceRenderOpaqueGeometry(vtkFrameBufferObjectBase* into = nullptr) override;
  void DeviceRenderTranslucentPolygonalGeometry(vtkFrameBufferObjectBase* into = nullptr) override;
  void ReleaseGraphicsResources(vtkWindow* window) override;

protected:
  BlendingRenderer();

private:
  /// What the opaque bodies are drawn from.
  [[nodiscard]] StillPicture::Key bodies_and_view();

  bool keeps_bodies_ = false, put_back_ = false;
  StillPicture bodies_;
};

}  // namespace scalpmark::viewer
