#pragma once

#include <vtkPolyData.h>
#include <vtkSmartPointer.h>
#include <vtkUnsignedCharArray.h>

#include <optional>
#include <vector>

#include "geometry/surface/surface.h"

namespace scalpmark::viewer {

/// A surface as the renderer takes it: corners with the surface's smooth normals.
[[nodiscard]] vtkSmartPointer<vtkPolyData> skin_mesh(const geometry::Surface& skin);
/// Some of its faces only; coloured where there are colours of all the surface's corners.
[[nodiscard]] vtkSmartPointer<vtkPolyData> skin_mesh(const geometry::Surface& skin,
                                                     const std::vector<int>& faces,
                                                     vtkUnsignedCharArray* colours = nullptr);

/// A surface of fewer triangles to be drawn instead while things move; nothing is ever computed on it. Takes
/// a second or so. Nothing where the surface is small enough, or open (thin_triangles.h keeps closed ones).
[[nodiscard]] std::optional<geometry::Surface> thin_skin(const geometry::Surface& skin);

}  // namespace scalpmark::viewer
