#pragma once

#include <vtkOpenGLActor.h>

namespace scalpmark::viewer {

/// What lies under the skin and is seen all the same: drawn over everything before it, whatever is nearer,
/// and leaving no depth, so that what comes later (marks, the coil) lies over it. Its colours' opacity counts
/// although it is drawn among opaque things, before the marks.
class ThroughSkinActor : public vtkOpenGLActor {
public:
  static ThroughSkinActor* New();
  vtkTypeMacro(ThroughSkinActor, vtkOpenGLActor)
  void Render(vtkRenderer* renderer, vtkMapper* mapper) override;

protected:
  ThroughSkinActor();
};

}  // namespace scalpmark::viewer
