#include <vtkCellArray.h>
#include <vtkNew.h>
#include <vtkPLYWriter.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkUnsignedCharArray.h>

#include "geometry/base/message.h"
#include "models/exports/export_file.h"
#include "models/files/error.h"
#include "models/files/made_by.h"
#include "models/files/own_files.h"

namespace scalpmark::models {

namespace {

struct ColouredMesh {
  vtkNew<vtkPoints> points;
  vtkNew<vtkCellArray> faces;
  vtkNew<vtkUnsignedCharArray> colours;

  void add(const std::vector<Eigen::Vector3d>& vertices, const std::vector<geometry::Triangle>& triangles,
           const ExportColour& colour) {
    const vtkIdType first = points->GetNumberOfPoints();
    for (const auto& v : vertices) {
      points->InsertNextPoint(v.data());
      colours->InsertNextTuple3(colour.red, colour.green, colour.blue);
    }
    for (const auto& t : triangles) faces->InsertNextCell({first + t[0], first + t[1], first + t[2]});
  }
};

}  // namespace

std::string ply_bytes(const ExportHead& head) {
  ColouredMesh all;
  all.colours->SetNumberOfComponents(3);
  all.colours->SetName("colour");
  all.add(head.skin.vertices(), head.skin.triangles(), head.skin_colour);
  for (const ExportPart& part : head.parts) all.add(part.mesh.vertices, part.mesh.triangles, part.colour);
  vtkNew<vtkPolyData> data;
  data->SetPoints(all.points);
  data->SetPolys(all.faces);
  data->GetPointData()->SetScalars(all.colours);
  vtkNew<vtkPLYWriter> writer;
  writer->SetInputData(data);
  writer->SetFileTypeToBinary();
  writer->SetDataByteOrderToLittleEndian();
  writer->SetArrayName("colour");
  // By which own_files knows it: the comment without its first word, which the writer adds.
  const std::string comment(own_ply_comment.substr(std::string_view("comment ").size()));
  writer->AddComment(comment + ", with what was worked out on it; " + made_by());
  writer->WriteToOutputStringOn();
  if (writer->Write() == 0 || writer->GetOutputString().empty())
    throw ModelError(
        Message::of("The head could not be written as PLY; close other programs and try again."));
  return writer->GetOutputString();
}

}  // namespace scalpmark::models
