#include "viewer/stage/things/cortex.h"

#include <vtkPointData.h>
#include <vtkPolyData.h>
#include <vtkProperty.h>
#include <vtkUnsignedCharArray.h>

#include <algorithm>
#include <cmath>

#include "viewer/stage/captions.h"
#include "viewer/stage/skin_mesh.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

constexpr double lit_radius_mm = 12;

Colour mixed(Colour a, Colour b, double share_of_b) {
  const auto mix = [&](std::uint8_t x, std::uint8_t y) {
    return static_cast<std::uint8_t>(std::lround((1 - share_of_b) * x + share_of_b * y));
  };
  return {mix(a.red, b.red), mix(a.green, b.green), mix(a.blue, b.blue)};
}

std::string percent(double share) {
  return std::to_string(std::lround(100 * share)) + "\u00a0%";  // never broken between lines
}

}  // namespace

CortexBody::CortexBody(vtkRenderer* renderer) : ink_(renderer) {
  actor_->SetMapper(mapper_);
  auto* look = actor_->GetProperty();
  look->SetInterpolationToPhong();
  look->SetAmbient(0.3);
  look->SetDiffuse(0.75);
  look->SetSpecular(0);
  actor_->PickableOff();
  ink_.actor()->PickableOff();
  renderer->AddActor(actor_);
}

void CortexBody::show(const geometry::Placement& placement, const Shown& shown) {
  shown_ = shown.has(Thing::cortex) && shown.cortex;
  actor_->SetVisibility(shown_);
  hit_ = shown.under_coil == UnderCoil::left_out ? std::nullopt : placement.cortex;
  pulse_ = placement.pulse;
  if (!shown_) return;
  const geometry::Surface& brain = shown.cortex->surface();
  const bool known = drawn_ && &drawn_->vertices() == &brain.vertices();
  if (!known) {
    drawn_ = brain;
    data_ = skin_mesh(brain);
    mapper_->SetInputData(data_);
  }
  const std::optional<Vector3d> point = hit_ ? std::optional<Vector3d>(hit_->point) : std::nullopt;
  if (!known || point != lit_) light(hit_);
  lit_ = point;
}

void CortexBody::light(const std::optional<geometry::CortexHit>& hit) {
  vtkNew<vtkUnsignedCharArray> colours;
  colours->SetNumberOfComponents(3);
  colours->SetNumberOfTuples(static_cast<vtkIdType>(drawn_->vertices().size()));
  for (size_t i = 0; i < drawn_->vertices().size(); ++i) {
    const double away = hit ? (drawn_->vertices()[i] - hit->point).norm() / lit_radius_mm : 1;
    const Colour c = away < 1 ? mixed(palette::cortex, palette::lit, std::min(1.0, 1.6 * (1 - away * away)))
                              : palette::cortex;
    colours->SetTypedComponent(static_cast<vtkIdType>(i), 0, c.red);
    colours->SetTypedComponent(static_cast<vtkIdType>(i), 1, c.green);
    colours->SetTypedComponent(static_cast<vtkIdType>(i), 2, c.blue);
  }
  data_->GetPointData()->SetScalars(colours);
  data_->Modified();
}

void CortexBody::draw(const Sight& sight) {
  ink_.begin(sight);
  if (shown_ && hit_) {
    const Vector3d& point = hit_->point;
    ink_.line({pulse_, point}, 2.5, palette::construction, 0.5);
    ink_.spot(point, 8, palette::construction, 1.5);
    ink_.spot(point, 6, palette::lit, 2);
  }
  ink_.done();
}

std::string shares_in_words(const std::vector<geometry::RegionShare>& shares) {
  constexpr double worth_saying = 0.15;
  if (shares.empty()) return words(Words::tr("no named region"));
  std::string text = shares[0].name + " (" + percent(shares[0].share) + ")";
  if (shares.size() < 2 || shares[1].share < worth_saying) return text;
  const std::string &first = shares[0].name, &second = shares[1].name;
  // Words they begin with alike are said once.
  size_t from = 0;
  for (size_t i = 0; i < std::min(first.size(), second.size()) && first[i] == second[i]; ++i)
    if (first[i] == ' ') from = i + 1;
  return text + ", " + second.substr(from) + " (" + percent(shares[1].share) + ")";
}

void CortexWords::show(const geometry::Placement& placement, const Shown& shown) {
  lines_.clear();
  if (!shown.has(Thing::cortex) || !shown.cortex || shown.under_coil == UnderCoil::lit) return;
  if (shown.under_coil == UnderCoil::left_out) {
    lines_.push_back(words(Words::tr("Under the skin")));
    lines_.push_back(words(Words::tr("The brain as on the template; a person's own brain differs.")));
    return;
  }
  lines_.push_back(words(Words::tr("Under the coil")));
  if (placement.cortex) {
    lines_.push_back(words(Words::tr("%1 from skin to cortex"), {in_mm(placement.cortex->depth_mm)}));
    lines_.push_back(shares_in_words(placement.cortex->areas));
    lines_.push_back(shares_in_words(placement.cortex->gyri));
  } else {
    lines_.push_back(words(Words::tr("no cortex straight below")));
  }
  lines_.push_back(words(Words::tr("All this on the template; a person's own brain differs.")));
}

void CortexWords::draw(Overlay& overlay, const Sight& sight, const Pixel& top_left, double width_px,
                       std::vector<Caption>& taken) const {
  if (lines_.empty()) return;
  double y = top_left.y, widest = 0;
  std::string all;
  for (size_t i = 0; i < lines_.size(); ++i) {
    const bool first = i == 0, last = i + 1 == lines_.size();
    const TextStyle style{last ? 13.0 : 14.0, first, last ? palette::quiet_text : palette::text, false};
    for (const auto& line : wrapped(overlay, lines_[i], style, width_px)) {
      const TextSize size = overlay.measure(line, style);
      overlay.text(line, {top_left.x, y}, style);
      widest = std::max(widest, size.width);
      y += size.height + 2 * sight.scale;
    }
    all += (all.empty() ? "" : "; ") + lines_[i];
  }
  taken.push_back({all, {top_left.x, top_left.y, top_left.x + widest, y}});
}

}  // namespace scalpmark::viewer
