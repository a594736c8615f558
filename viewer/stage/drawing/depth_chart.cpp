#include "viewer/stage/drawing/depth_chart.h"

#include <vtkAutoInit.h>
#include <vtkAxis.h>
#include <vtkBrush.h>
#include <vtkContextScene.h>
#include <vtkDoubleArray.h>
#include <vtkFloatArray.h>
#include <vtkPen.h>
#include <vtkPlot.h>
#include <vtkStringArray.h>
#include <vtkTextProperty.h>

#include <algorithm>
#include <cmath>

#include "viewer/stage/drawing/free_corner.h"
#include "viewer/words/numbers.h"

// Charts are drawn by a module of their own.
VTK_MODULE_INIT(vtkRenderingContextOpenGL2)

namespace scalpmark::viewer {

namespace {

// Pixels of a picture 800 high.
constexpr double plot_width_px = 150, plot_height_px = 48, chart_pad_px = 6;
constexpr float curve_px = 2;
constexpr double most_of_it_busy = 0.02;
const TextStyle chart_title{14, true, palette::text, false}, chart_text{13, false, palette::text, false};
const char* const half_said = "50 %";
const char* const whole_said = "100 %";

/// From one tick to the next: two centimetres, an inch.
double depth_tick_mm() {
  return length_unit() == LengthUnit::inch ? tape_tick_mm() : 2 * tape_tick_mm();
}

void set_ticks(vtkAxis* axis, const std::vector<std::pair<double, std::string>>& ticks) {
  vtkNew<vtkDoubleArray> positions;
  vtkNew<vtkStringArray> labels;
  for (const auto& [at, said] : ticks) {
    positions->InsertNextValue(at);
    labels->InsertNextValue(said);
  }
  axis->SetCustomTickPositions(positions, labels);
}

}  // namespace

DepthChart::DepthChart(vtkRenderer* renderer) {
  for (const char* name : {"depth", "share"}) {
    vtkNew<vtkFloatArray> column;
    column->SetName(name);
    table_->AddColumn(column);
  }
  chart_->SetAutoSize(false);
  chart_->SetShowLegend(false);
  chart_->GetBackgroundBrush()->SetOpacityF(0);
  for (const int which : {vtkAxis::BOTTOM, vtkAxis::LEFT, vtkAxis::TOP, vtkAxis::RIGHT}) {
    vtkAxis* axis = chart_->GetAxis(which);
    axis->SetGridVisible(false);
    axis->SetBehavior(vtkAxis::FIXED);
    axis->SetVisible(which == vtkAxis::BOTTOM || which == vtkAxis::LEFT);
  }
  chart_->GetAxis(vtkAxis::LEFT)->SetTitle("");
  vtkPlot* plot = chart_->AddPlot(vtkChart::LINE);
  plot->SetInputData(table_, 0, 1);
  plot->SetColor(palette::text.red, palette::text.green, palette::text.blue, 255);
  actor_->GetScene()->AddItem(chart_);
  actor_->PickableOff();
  actor_->SetVisibility(0);
  renderer->AddViewProp(actor_);
}

void DepthChart::fill(const DepthCurve& curve) {
  const auto rows = static_cast<vtkIdType>(curve.points.size());
  bool same = table_->GetNumberOfRows() == rows;
  const auto value = [&](vtkIdType row, int column) {
    return static_cast<float>(curve.points[static_cast<size_t>(row)][column]);
  };
  for (vtkIdType i = 0; same && i < rows; ++i)
    for (const int k : {0, 1}) same = table_->GetValue(i, k).ToFloat() == value(i, k);
  if (same) return;
  table_->SetNumberOfRows(rows);
  for (vtkIdType i = 0; i < rows; ++i)
    for (const int k : {0, 1}) table_->SetValue(i, k, value(i, k));
  table_->Modified();
}

void DepthChart::set_axes(const DepthCurve& curve, double scale) {
  vtkAxis *depth = chart_->GetAxis(vtkAxis::BOTTOM), *share = chart_->GetAxis(vtkAxis::LEFT);
  for (vtkAxis* axis : {depth, share}) {
    set_type(axis->GetLabelProperties(), chart_text, scale);
    set_type(axis->GetTitleProperties(), chart_text, scale);
    axis->GetPen()->SetWidth(static_cast<float>(scale));
  }
  depth->SetTitle(curve.depth);
  const double deepest_mm = curve.points.back().x();
  depth->SetRange(0, deepest_mm);
  share->SetRange(0, 1);
  std::vector<std::pair<double, std::string>> depths;
  for (double mm = 0; mm <= deepest_mm; mm += depth_tick_mm())
    depths.emplace_back(mm, std::to_string(std::lround(mm / tape_tick_mm())));
  set_ticks(depth, depths);
  set_ticks(share, {{0.5, half_said}, {1.0, whole_said}});
  chart_->GetPlot(0)->GetPen()->SetWidth(curve_px * static_cast<float>(scale));
}

void DepthChart::draw(Overlay& overlay, const std::optional<DepthCurve>& curve, const Box& free,
                      double height_px, const Coverage& busy, std::vector<Caption>& taken) {
  actor_->SetVisibility(0);
  if (!curve || curve->points.size() < 2) return;
  const double s = overlay.scale(), pad = chart_pad_px * s;
  const TextSize title = overlay.measure(curve->title, chart_title),
                 text = overlay.measure(whole_said, chart_text),
                 depth = overlay.measure(curve->depth, chart_text);
  // Beside the plot half of the last depth, over it half of the whole's.
  const double width =
      2 * pad + std::max({title.width, text.width + (plot_width_px + 10) * s + text.height, depth.width});
  const double plot_height = (plot_height_px + 8) * s + 2.5 * text.height;
  const double height = 2 * pad + title.height + plot_height;
  const Box box = free_corner(width, height, 8 * s, free, busy, taken);
  // Rather no curve than one over head or coil or over what is written.
  const auto in_the_way = [&](const Caption& c) { return c.box.overlaps(box); };
  if (busy.share(box) > most_of_it_busy || std::any_of(taken.begin(), taken.end(), in_the_way)) return;
  overlay.box(box, palette::halo, 0.8);
  fill(*curve);
  set_axes(*curve, s);
  overlay.text(curve->title, {box.left + pad, box.top + pad}, chart_title);
  chart_->SetSize(vtkRectf(static_cast<float>(box.left + pad),
                           static_cast<float>(height_px - box.bottom + pad),
                           static_cast<float>(width - 2 * pad), static_cast<float>(plot_height)));
  actor_->SetVisibility(1);
  taken.push_back({curve->title + "; " + curve->depth, box});
}

}  // namespace scalpmark::viewer
