#pragma once

#include <vector>

class vtkPolyData;

namespace scalpmark::viewer {

/// Makes `data` the triangles of `coordinates` (x, y, z of each corner, three corners a triangle, none
/// shared) in `shades`, of so many `components` a corner (3: red, green, blue; 4: and how opaque). What
/// it has already is not given to it again, since whatever is new goes to the graphics driver anew.
void set_triangles(vtkPolyData& data, const std::vector<float>& coordinates,
                   const std::vector<unsigned char>& shades, int components);

}  // namespace scalpmark::viewer
