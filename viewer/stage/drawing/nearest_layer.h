#pragma once

#include <vtkOpenGLActor.h>

namespace scalpmark::viewer {

/// A body of which, once it is translucent, only what lies nearest the eye is seen as a veil over what is
/// inside: its depth is drawn first, then its colour. Without that a nose before a cheek is two veils, and
/// looks like a dark patch. What lies farther and is translucent too (the coil behind the head) is hidden.
class NearestLayerActor : public vtkOpenGLActor {
public:
  static NearestLayerActor* New();
  vtkTypeMacro(NearestLayerActor, vtkOpenGLActor)
  void Render(vtkRenderer* renderer, vtkMapper* mapper) override;
};

}  // namespace scalpmark::viewer
