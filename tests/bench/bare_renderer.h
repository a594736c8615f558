#pragma once

#include <vtkNew.h>
#include <vtkRenderWindow.h>
#include <vtkRenderer.h>

#include <QSize>

#include "geometry/surface/surface.h"

namespace scalpmark::bench {

/// The named alternative for a frame of the stage: VTK alone with one mesh in it, lit as our skin is, drawn
/// out of sight (it puts nothing on a screen, which we do).
class BareRenderer {
public:
  BareRenderer(const geometry::Surface& skin, const QSize& size);
  /// Sees what that renderer sees.
  void look_as(vtkRenderer& other);
  /// Until the picture is drawn.
  void draw();

private:
  vtkNew<vtkRenderWindow> window_;
  vtkNew<vtkRenderer> renderer_;
};

}  // namespace scalpmark::bench
