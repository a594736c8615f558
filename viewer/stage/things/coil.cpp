#include "viewer/stage/things/coil.h"

#include <vtkCellArray.h>
#include <vtkIdList.h>
#include <vtkMatrix4x4.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkPolygon.h>
#include <vtkProperty.h>

#include <cmath>
#include <numbers>

namespace scalpmark::viewer {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double casing_opacity = 0.22;
constexpr double windings_opacity = 0.4;
/// Windings are drawn inside the casing, this far over its flat face.
constexpr double windings_height_mm = 8;

struct Solid {
  vtkNew<vtkPoints> points;
  vtkNew<vtkCellArray> faces;

  vtkIdType point(const Vector2d& p, double z, double bend_deg) {
    const Vector3d at = geometry::bent({p.x(), p.y(), z}, bend_deg);
    return points->InsertNextPoint(at.data());
  }
  void quad(vtkIdType a, vtkIdType b, vtkIdType c, vtkIdType d) { faces->InsertNextCell({a, b, c, d}); }

  vtkNew<vtkPolyData> data() const {
    vtkNew<vtkPolyData> out;
    out->SetPoints(points);
    out->SetPolys(faces);
    return out;
  }
};

/// Triangles over an outline, as corner numbers; empty when it crosses itself.
std::vector<vtkIdType> fill(const std::vector<Vector2d>& outline) {
  vtkNew<vtkPolygon> polygon;
  for (size_t i = 0; i < outline.size(); ++i) {
    polygon->GetPoints()->InsertNextPoint(outline[i].x(), outline[i].y(), 0);
    polygon->GetPointIds()->InsertNextId(static_cast<vtkIdType>(i));
  }
  vtkNew<vtkIdList> triangles;
  if (polygon->Triangulate(triangles) == 0) return {};
  return {triangles->begin(), triangles->end()};
}

void add_part(Solid& solid, const geometry::CoilPart& part) {
  const auto n = static_cast<vtkIdType>(part.outline.size());
  if (n < 3) return;
  const vtkIdType first = solid.points->GetNumberOfPoints();
  for (const auto& p : part.outline) solid.point(p, part.bottom_mm, part.bend_deg);
  for (const auto& p : part.outline) solid.point(p, part.top_mm, part.bend_deg);
  const auto caps = fill(part.outline);
  for (size_t i = 0; i + 2 < caps.size(); i += 3) {
    solid.faces->InsertNextCell({first + n + caps[i], first + n + caps[i + 1], first + n + caps[i + 2]});
    solid.faces->InsertNextCell({first + caps[i], first + caps[i + 2], first + caps[i + 1]});
  }
  for (vtkIdType i = 0; i < n; ++i) {
    const vtkIdType j = (i + 1) % n;
    solid.quad(first + i, first + j, first + n + j, first + n + i);
  }
}

void add_windings(Solid& solid, const geometry::Winding& winding) {
  constexpr int corners = 72;
  const int turns = std::max(1, winding.turns);
  const double pitch = (winding.outer_mm - winding.inner_mm) / 2 / turns;
  for (int t = 0; t < turns; ++t) {
    const double inner = winding.inner_mm / 2 + t * pitch + 0.15 * pitch, outer = inner + 0.7 * pitch;
    const vtkIdType first = solid.points->GetNumberOfPoints();
    for (int i = 0; i < corners; ++i) {
      const double a = 2 * std::numbers::pi * i / corners;
      const Vector2d way(std::cos(a), std::sin(a));
      solid.point(winding.centre + inner * way, windings_height_mm, winding.bend_deg);
      solid.point(winding.centre + outer * way, windings_height_mm, winding.bend_deg);
    }
    for (vtkIdType i = 0; i < corners; ++i) {
      const vtkIdType j = (i + 1) % corners;
      solid.quad(first + 2 * i, first + 2 * i + 1, first + 2 * j + 1, first + 2 * j);
    }
  }
}

void set_colour(vtkProperty* look, Colour c, double opacity) {
  look->SetColor(c.red / 255.0, c.green / 255.0, c.blue / 255.0);
  look->SetOpacity(opacity);
}

bool same(const geometry::Coil& a, const geometry::Coil& b) {
  if (a.parts.size() != b.parts.size() || a.windings.size() != b.windings.size()) return false;
  for (size_t i = 0; i < a.parts.size(); ++i)
    if (a.parts[i].outline != b.parts[i].outline || a.parts[i].bottom_mm != b.parts[i].bottom_mm ||
        a.parts[i].bend_deg != b.parts[i].bend_deg || a.parts[i].top_mm != b.parts[i].top_mm)
      return false;
  for (size_t i = 0; i < a.windings.size(); ++i)
    if (a.windings[i].centre != b.windings[i].centre || a.windings[i].inner_mm != b.windings[i].inner_mm ||
        a.windings[i].bend_deg != b.windings[i].bend_deg ||
        a.windings[i].outer_mm != b.windings[i].outer_mm || a.windings[i].turns != b.windings[i].turns)
      return false;
  return true;
}

}  // namespace

CoilBody::CoilBody(vtkRenderer* renderer) : ink_(renderer) {
  windings_->SetMapper(windings_mapper_);
  casing_->SetMapper(casing_mapper_);
  set_colour(windings_->GetProperty(), palette::windings, windings_opacity);
  windings_->GetProperty()->LightingOff();
  set_colour(casing_->GetProperty(), palette::casing, casing_opacity);
  casing_->GetProperty()->SetAmbient(0.5);
  casing_->GetProperty()->SetDiffuse(0.5);
  casing_->GetProperty()->SetInterpolationToFlat();
  // Only the sides that face the eye: one layer of casing, so no sorting of translucent faces is needed. The
  // windings come before it.
  casing_->GetProperty()->BackfaceCullingOn();
  windings_->PickableOff();
  casing_->PickableOff();
  ink_.actor()->PickableOff();
  renderer->AddActor(windings_);
  renderer->AddActor(casing_);
}

void CoilBody::build(const geometry::Coil& coil) {
  Solid windings, casing;
  for (const auto& w : coil.windings) add_windings(windings, w);
  rims_.clear();
  for (const auto& part : coil.parts) {
    add_part(casing, part);
    for (const double z : {part.bottom_mm, part.top_mm}) {
      std::vector<Vector3d> rim;
      for (const auto& p : part.outline) rim.push_back(geometry::bent({p.x(), p.y(), z}, part.bend_deg));
      if (!rim.empty()) rim.push_back(rim.front());
      rims_.push_back(std::move(rim));
    }
  }
  windings_mapper_->SetInputData(windings.data());
  casing_mapper_->SetInputData(casing.data());
  built_ = coil;
}

void CoilBody::show(const geometry::Coil& coil, const geometry::Placement& placement, const Shown& shown) {
  shown_ = shown.has(Thing::coil);
  with_edge_ = shown.has(Thing::angle) || shown.has(Thing::edge_marks);
  placement_ = placement;
  if (rims_.empty() || !same(coil, built_)) build(coil);
  const Vector3d origin = placement.pulse + placement.lift_mm * placement.normal;
  const Vector3d x = placement.front.cross(placement.normal);
  vtkNew<vtkMatrix4x4> matrix;
  for (int r = 0; r < 3; ++r) {
    matrix->SetElement(r, 0, x[r]);
    matrix->SetElement(r, 1, placement.front[r]);
    matrix->SetElement(r, 2, placement.normal[r]);
    matrix->SetElement(r, 3, origin[r]);
  }
  // Colours are read off the map of gaps; nothing tints them.
  const bool only_rims = shown.has(Thing::gaps) && shown.gaps;
  for (vtkActor* actor : {windings_.Get(), casing_.Get()}) {
    actor->SetUserMatrix(matrix);
    actor->SetVisibility(shown_ && !only_rims);
  }
  corners_.clear();
  if (shown_)
    for (const auto& rim : rims_)
      for (const auto& p : rim)
        corners_.push_back(origin + p.x() * x + p.y() * placement.front + p.z() * placement.normal);
}

void CoilBody::draw(const Sight& sight) {
  ink_.begin(sight);
  if (shown_) {
    size_t first = 0;
    for (const auto& rim : rims_) {
      const auto from = corners_.begin() + static_cast<std::ptrdiff_t>(first);
      first += rim.size();
      ink_.line({from, corners_.begin() + static_cast<std::ptrdiff_t>(first)}, 1.3, palette::casing, 0);
    }
    if (with_edge_ && built_.front_mark) {
      const auto& mark = *built_.front_mark;
      const Vector3d x = placement_.front.cross(placement_.normal);
      const Vector3d middle = placement_.pulse + placement_.lift_mm * placement_.normal +
                              mark.centre.x() * x + mark.centre.y() * placement_.front;
      ink_.line({middle - mark.length_mm / 2 * x, middle + mark.length_mm / 2 * x}, 2.4, palette::front_axis,
                1);
    }
    if (with_edge_) ink_.spot(placement_.edge, 3.2, palette::front_axis, 1);
  }
  ink_.done();
}

}  // namespace scalpmark::viewer
