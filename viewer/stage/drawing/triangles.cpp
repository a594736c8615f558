#include "viewer/stage/drawing/triangles.h"

#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkIdTypeArray.h>
#include <vtkNew.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkUnsignedCharArray.h>

#include <algorithm>

namespace scalpmark::viewer {

namespace {

template <typename Array, typename Value>
bool holds(vtkDataArray* held, int components, const std::vector<Value>& wanted) {
  auto* array = Array::SafeDownCast(held);
  return array != nullptr && array->GetNumberOfComponents() == components &&
         array->GetNumberOfValues() == static_cast<vtkIdType>(wanted.size()) &&
         std::equal(wanted.begin(), wanted.end(), array->GetPointer(0));
}

}  // namespace

void set_triangles(vtkPolyData& data, const std::vector<float>& coordinates,
                   const std::vector<unsigned char>& shades, int components) {
  if (data.GetPoints() != nullptr && holds<vtkFloatArray>(data.GetPoints()->GetData(), 3, coordinates) &&
      holds<vtkUnsignedCharArray>(data.GetPointData()->GetScalars(), components, shades))
    return;
  const auto count = static_cast<vtkIdType>(coordinates.size() / 3);
  vtkNew<vtkFloatArray> places;
  places->SetNumberOfComponents(3);
  places->SetNumberOfTuples(count);
  std::copy(coordinates.begin(), coordinates.end(), places->GetPointer(0));
  vtkNew<vtkUnsignedCharArray> colours;
  colours->SetNumberOfComponents(components);
  colours->SetNumberOfTuples(count);
  std::copy(shades.begin(), shades.end(), colours->GetPointer(0));
  vtkNew<vtkPoints> points;
  points->SetData(places);
  vtkNew<vtkIdTypeArray> corners;
  corners->SetNumberOfValues(count);
  for (vtkIdType i = 0; i < count; ++i) corners->SetValue(i, i);
  vtkNew<vtkCellArray> cells;
  cells->SetData(3, corners);
  data.SetPoints(points);
  data.SetPolys(cells);
  data.GetPointData()->SetScalars(colours);
  data.Modified();
}

}  // namespace scalpmark::viewer
