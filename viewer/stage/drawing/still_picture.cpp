#include "viewer/stage/drawing/still_picture.h"

#include <vtkOpenGLState.h>
#include <vtkTextureObject.h>

namespace scalpmark::viewer {

namespace {

// OpenGL's own numbers (Khronos registry, gl.xml).
constexpr unsigned colours_and_depths = 0x4000 | 0x0100, nearest_pixel = 0x2600;
constexpr unsigned read_from = 0x8CA8, draw_into = 0x8CA9;
constexpr int depth_bits = 32, colour_type = VTK_UNSIGNED_CHAR;  // as VTK makes a window's own

/// Depths are copied between equals only.
int depth_format(vtkOpenGLFramebufferObject& buffer) {
  vtkTextureObject* depths = buffer.GetDepthAttachmentAsTextureObject();
  return depths == nullptr ? 0
                           : static_cast<int>(depths->GetInternalFormat(depths->GetVTKDataType(), 1, false));
}

}  // namespace

bool StillPicture::put_back(vtkOpenGLRenderWindow& window, const Key& drawn_from) {
  return kept_ == drawn_from && copy(window, Way::out);
}

void StillPicture::keep(vtkOpenGLRenderWindow& window, const Key& drawn_from) {
  const bool again = drawn_last_ == drawn_from;
  drawn_last_ = drawn_from;
  if (again && copy(window, Way::in)) kept_ = drawn_from;
}

void StillPicture::release(vtkWindow* window) {
  forget();
  copy_->ReleaseGraphicsResources(window);
}

bool StillPicture::copy(vtkOpenGLRenderWindow& window, Way way) {
  vtkOpenGLFramebufferObject* drawn = window.GetRenderFramebuffer();
  const int* size = window.GetSize();
  const int all[4] = {0, size[0], 0, size[1]};
  vtkOpenGLState* state = window.GetState();
  state->PushFramebufferBindings();
  copy_->SetContext(&window);
  if (copy_->GetFBOIndex() == 0)
    copy_->PopulateFramebuffer(size[0], size[1], true, 1, colour_type, true, depth_bits, 0,
                               window.GetStencilCapable() != 0);
  else
    copy_->Resize(size[0], size[1]);
  const bool alike = depth_format(*drawn) != 0 && depth_format(*drawn) == depth_format(*copy_) &&
                     drawn->GetMultiSamples() == 0;
  if (alike) {
    vtkOpenGLFramebufferObject *from = way == Way::in ? drawn : copy_.Get(),
                               *to = way == Way::in ? copy_.Get() : drawn;
    from->Bind(read_from);
    from->ActivateReadBuffer(0);
    to->Bind(draw_into);
    to->ActivateDrawBuffer(0);
    vtkOpenGLFramebufferObject::Blit(all, all, colours_and_depths, nearest_pixel);
  }
  state->PopFramebufferBindings();
  return alike;
}

}  // namespace scalpmark::viewer
