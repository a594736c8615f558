#pragma once

#include <vtkPolyData.h>
#include <vtkSmartPointer.h>

#include "geometry/surface.h"

namespace scalpmark::viewer {

/// A surface as the renderer takes it, with its vertex normals.
[[nodiscard]] vtkSmartPointer<vtkPolyData> surface_data(const geometry::Surface& surface);

}  // namespace scalpmark::viewer
