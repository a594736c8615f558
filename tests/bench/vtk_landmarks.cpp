#include "tests/bench/vtk_landmarks.h"

#include <vtkCellArray.h>
#include <vtkCutter.h>
#include <vtkGenericCell.h>
#include <vtkNew.h>
#include <vtkPlane.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkStaticCellLocator.h>
#include <vtkStripper.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <limits>

namespace scalpmark::bench {

using Eigen::Vector3d;

struct VtkLandmarks::Parts {
  geometry::Fiducials fiducials;
  Vector3d top;
  vtkNew<vtkPolyData> skin;
  vtkNew<vtkPlane> plane;
  vtkNew<vtkCutter> cutter;
  vtkNew<vtkStripper> stripper;
  vtkNew<vtkStaticCellLocator> locator;

  Vector3d onto_skin(const Vector3d& q) {
    double near[3];
    vtkNew<vtkGenericCell> cell;
    vtkIdType id = 0;
    int sub = 0;
    double squared = 0;
    locator->FindClosestPoint(q.data(), near, cell, id, sub, squared);
    return {near[0], near[1], near[2]};
  }

  /// The taut line from a to b over a third point.
  std::vector<Vector3d> tape(const Vector3d& a, const Vector3d& over, const Vector3d& b) {
    const Vector3d normal = (over - a).cross(b - a).normalized();
    plane->SetOrigin(a.x(), a.y(), a.z());
    plane->SetNormal(normal.x(), normal.y(), normal.z());
    stripper->Update();
    vtkPolyData* lines = stripper->GetOutput();
    const Vector3d chord = (b - a).normalized();
    Vector3d rise = normal.cross(chord);
    if (rise.dot(over - a) < 0) rise = -rise;
    // Upper hull of what rises over the chord, as in geometry/tapes/tape.cpp.
    struct Flat {
      double x, y;
    };
    std::vector<Flat> flat{{0, 0}, {(b - a).norm(), 0}};
    // Of several lines (an ear cut on its own) the one that passes nearest to the third point.
    vtkIdType count = 0;
    const vtkIdType* ids = nullptr;
    std::vector<vtkIdType> best;
    double best_distance = std::numeric_limits<double>::infinity();
    const auto point = [&](vtkIdType i) {
      double p[3];
      lines->GetPoint(i, p);
      return Vector3d(p[0], p[1], p[2]);
    };
    lines->GetLines()->InitTraversal();
    while (lines->GetLines()->GetNextCell(count, ids)) {
      double distance = std::numeric_limits<double>::infinity();
      for (vtkIdType i = 0; i < count; ++i)
        distance = std::min(distance, (point(ids[i]) - over).squaredNorm());
      if (distance < best_distance) {
        best_distance = distance;
        best.assign(ids, ids + count);
      }
    }
    for (const vtkIdType i : best) {
      const Vector3d d = point(i) - a;
      if (d.dot(rise) > 0) flat.push_back({d.dot(chord), d.dot(rise)});
    }
    std::sort(flat.begin(), flat.end(),
              [](const Flat& p, const Flat& q) { return p.x != q.x ? p.x < q.x : p.y < q.y; });
    std::vector<Flat> hull;
    const auto sweep = [&](auto begin, auto end) {
      const size_t base = hull.size();
      for (auto p = begin; p != end; ++p) {
        while (hull.size() >= base + 2) {
          const Flat &q = hull[hull.size() - 2], &r = hull.back();
          if ((r.x - q.x) * (p->y - r.y) - (r.y - q.y) * (p->x - r.x) > 0) break;
          hull.pop_back();
        }
        hull.push_back(*p);
      }
      hull.pop_back();  // the next sweep starts with it
    };
    sweep(flat.begin(), flat.end());
    sweep(flat.rbegin(), flat.rend());
    // Counter-clockwise, b follows a along the chord; the tape is the rest, from a round to b.
    const auto is_start = [](const Flat& p) { return p.x == 0 && p.y == 0; };
    std::rotate(hull.begin(), std::find_if(hull.begin(), hull.end(), is_start) + 1, hull.end());
    std::reverse(hull.begin(), hull.end());
    std::vector<Vector3d> line;
    for (const Flat& p : hull) line.push_back(a + p.x * chord + p.y * rise);
    return line;
  }

  static double length(const std::vector<Vector3d>& line) {
    double mm = 0;
    for (size_t i = 1; i < line.size(); ++i) mm += (line[i] - line[i - 1]).norm();
    return mm;
  }

  Vector3d at(const std::vector<Vector3d>& line, double fraction) {
    double left = fraction * length(line);
    for (size_t i = 1; i < line.size(); ++i) {
      const double step = (line[i] - line[i - 1]).norm();
      if (left <= step) return onto_skin(line[i - 1] + left / step * (line[i] - line[i - 1]));
      left -= step;
    }
    return onto_skin(line.back());
  }

  static double fraction_of(const std::vector<Vector3d>& line, const Vector3d& q) {
    double best = std::numeric_limits<double>::infinity(), found = 0, along = 0;
    for (size_t i = 1; i < line.size(); ++i) {
      const Vector3d way = line[i] - line[i - 1];
      const double t = std::clamp((q - line[i - 1]).dot(way) / std::max(1e-12, way.squaredNorm()), 0.0, 1.0);
      const double distance = (line[i - 1] + t * way - q).norm();
      if (distance < best) {
        best = distance;
        found = along + t * way.norm();
      }
      along += way.norm();
    }
    return found / length(line);
  }
};

VtkLandmarks::VtkLandmarks(const geometry::Head& head) : parts_(new Parts) {
  parts_->fiducials = head.fiducials().at;
  parts_->top = head.skin().position(head.vertex());
  vtkNew<vtkPoints> points;
  points->SetDataTypeToDouble();
  for (const auto& v : head.skin().vertices()) points->InsertNextPoint(v.x(), v.y(), v.z());
  vtkNew<vtkCellArray> cells;
  for (const auto& t : head.skin().triangles()) {
    const vtkIdType ids[3] = {t[0], t[1], t[2]};
    cells->InsertNextCell(3, ids);
  }
  parts_->skin->SetPoints(points);
  parts_->skin->SetPolys(cells);
  parts_->cutter->SetInputData(parts_->skin);
  parts_->cutter->SetCutFunction(parts_->plane);
  parts_->stripper->JoinContiguousSegmentsOn();
  parts_->stripper->SetMaximumLength(1000000);
  parts_->stripper->SetInputConnection(parts_->cutter->GetOutputPort());
  parts_->locator->SetDataSet(parts_->skin);
  parts_->locator->BuildLocator();
}

VtkLandmarks::~VtkLandmarks() {
  delete parts_;
}

std::vector<Vector3d> VtkLandmarks::find() {
  Parts& p = *parts_;
  const auto& f = p.fiducials;
  std::vector<Vector3d> found;
  Vector3d vertex = p.top;
  std::vector<Vector3d> midline, coronal;
  // Ours settles in about six rounds; brought back onto the skin by the nearest point, this one never quite
  // does.
  for (int round = 0; round < 6; ++round) {
    midline = p.tape(f.nasion, vertex, f.inion);
    coronal = p.tape(f.left_tragus, p.at(midline, 0.5), f.right_tragus);
    vertex = p.at(coronal, 0.5);
  }
  for (int i = 2; i <= 18; i += 2) found.push_back(p.at(midline, i * 0.05));
  for (int i = 2; i <= 18; i += 2) found.push_back(p.at(coronal, i * 0.05));
  const Vector3d fpz = p.at(midline, 0.1), oz = p.at(midline, 0.9);
  const auto left = p.tape(fpz, p.at(coronal, 0.1), oz), right = p.tape(fpz, p.at(coronal, 0.9), oz);
  for (int i = 2; i <= 18; i += 2) {
    found.push_back(p.at(left, i * 0.05));
    found.push_back(p.at(right, i * 0.05));
  }
  for (const int row : {4, 6, 8, 12, 14, 16}) {
    const Vector3d top = p.at(midline, row * 0.05);
    const auto line = p.tape(p.at(left, row * 0.05), top, p.at(right, row * 0.05));
    const double middle = Parts::fraction_of(line, top);
    for (const double part : {0.25, 0.5, 0.75}) {
      if ((row == 4 || row == 16) && part != 0.5) continue;
      found.push_back(p.at(line, middle * part));
      found.push_back(p.at(line, 1 - (1 - middle) * part));
    }
  }
  return found;
}

}  // namespace scalpmark::bench
