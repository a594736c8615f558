#include "viewer/stage/stage.h"

#include <vtkCamera.h>
#include <vtkCellPicker.h>
#include <vtkCommand.h>
#include <vtkNew.h>
#include <vtkRenderWindow.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "viewer/stage/aim.h"
#include "viewer/stage/captions.h"
#include "viewer/stage/overlay.h"
#include "viewer/stage/things/angle.h"
#include "viewer/stage/things/coil.h"
#include "viewer/stage/things/cortex.h"
#include "viewer/stage/things/edge_marks.h"
#include "viewer/stage/things/gaps.h"
#include "viewer/stage/things/grid.h"
#include "viewer/stage/things/landmarks.h"
#include "viewer/stage/things/legend.h"
#include "viewer/stage/things/sites.h"
#include "viewer/stage/things/skin.h"
#include "viewer/stage/things/tapes.h"
#include "viewer/stage/things/tolerance.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

/// A view takes in the skin from this far below the tragi up; necks and shoulders may be cut.
constexpr double below_tragi_mm = 85;
/// The column for numbers and legend, and the margin, pixels of a picture 800 high.
constexpr double column_px = 268, margin_px = 14;
/// Text is no smaller than 13 pixels: sizes stop shrinking here.
constexpr double smallest_scale = 1;
constexpr double usual_width_px = 1200, usual_height_px = 800;

Box pixel_box(const Mark& m, const Sight& sight) {
  const Pixel at = sight.project(m.at);
  const double reach = reach_px(m.shape) * sight.scale;
  if (m.shape != Shape::bar && m.shape != Shape::small_bar)
    return {at.x - reach, at.y - reach, at.x + reach, at.y + reach};
  const double x = std::abs(m.along.dot(sight.right())) * reach + 2 * sight.scale;
  const double y = std::abs(m.along.dot(sight.up)) * reach + 2 * sight.scale;
  return {at.x - x, at.y - y, at.x + x, at.y + y};
}

/// Cells that hold a corner of the skin; its triangles are smaller than a cell.
Coverage coverage(const geometry::Surface& skin, const Sight& sight) {
  Coverage c;
  c.cell_px = 16 * sight.scale;
  c.columns = 1 + static_cast<int>(sight.width_px / c.cell_px);
  c.rows = 1 + static_cast<int>(sight.height_px / c.cell_px);
  c.covered.assign(static_cast<size_t>(c.columns) * static_cast<size_t>(c.rows), false);
  for (const auto& v : skin.vertices()) {
    const Pixel at = sight.project(v);
    if (!(at.x >= 0 && at.y >= 0 && at.x < sight.width_px && at.y < sight.height_px)) continue;
    c.covered[static_cast<size_t>(at.y / c.cell_px) * static_cast<size_t>(c.columns) +
              static_cast<size_t>(at.x / c.cell_px)] = true;
  }
  return c;
}

}  // namespace

struct Stage::Parts {
  explicit Parts(vtkRenderer* r)
      : cortex(r),
        skin(r),
        gaps(r),
        tapes(r),
        landmarks(r),
        grid(r),
        tolerance(r),
        sites(r),
        angle(r),
        edge_marks(r),
        coil(r),
        overlay(r) {}

  // In the order of drawing.
  CortexBody cortex;
  Skin skin;
  Gaps gaps;
  Tapes tapes;
  Landmarks landmarks;
  Grid grid;
  ToleranceEllipses tolerance;
  Sites sites;
  Angle angle;
  EdgeMarkBars edge_marks;
  CoilBody coil;
  Overlay overlay;
  Captions captions;
  SideLabels sides;
  Legend legend;
  NumberTable numbers;
  CortexWords cortex_words;
  GapScale gap_scale;

  std::optional<geometry::Head> head;
  geometry::HeadAxes axes;
  geometry::Placement placement;
  bool with_labels = true, with_column = true, with_title = true, with_caution = true;
  bool changed = true, new_head = true;
  double pixel_ratio = 1;
  Sight sight;
  std::vector<PlacedLabel> labels;
  std::vector<Caption> taken;
  Coverage head_in_picture;

  /// The part of the picture that is the head's.
  [[nodiscard]] Box free_box(int width, int height, double scale) {
    return {with_column ? column_px * scale : margin_px * scale,
            (with_title ? Captions::top_px : margin_px) * scale, width - margin_px * scale,
            height - (with_caution ? captions.bottom(overlay, width, scale) : margin_px * scale)};
  }
};

namespace {

double scale_of(int width, int height, double ratio) {
  return std::max(smallest_scale * ratio, std::min(height / usual_height_px, width / usual_width_px));
}

}  // namespace

Stage::Stage(vtkRenderer* renderer) : renderer_(renderer), parts_(std::make_unique<Parts>(renderer)) {
  renderer_->SetBackground(palette::background.red / 255.0, palette::background.green / 255.0,
                           palette::background.blue / 255.0);
  observer_ = renderer_->AddObserver(vtkCommand::StartEvent, this, &Stage::refresh);
}

Stage::~Stage() {
  renderer_->RemoveObserver(observer_);
}

void Stage::show(const geometry::Head& head, const geometry::Case& entered, const geometry::Plan& plan,
                 const Shown& shown) {
  Parts& p = *parts_;
  p.placement = placement_shown(plan, shown);
  p.new_head = p.new_head || !p.head || !p.head->same_as(head);
  p.head = head;
  p.axes = plan.axes;
  p.with_labels = shown.has(Thing::labels);
  p.with_column = shown.has(Thing::legend) || shown.has(Thing::numbers) || shown.has(Thing::gaps) ||
                  (shown.has(Thing::cortex) && shown.under_coil != UnderCoil::lit);
  p.with_title = shown.has(Thing::title);
  p.with_caution = shown.caution;
  p.cortex.show(p.placement, shown);
  p.skin.show(head, shown);
  p.gaps.show(shown);
  p.tapes.show(head, plan, shown);
  p.landmarks.show(head, plan, shown);
  p.grid.show(head, entered, plan, shown);
  p.tolerance.show(head, shown);
  p.sites.show(head, entered, plan, shown);
  p.angle.show(head, p.placement, shown);
  p.edge_marks.show(head, entered, p.placement, shown);
  p.coil.show(entered.coil.model, p.placement, shown);
  p.captions.show(entered, plan, shown);
  p.sides.show(plan);
  p.legend.show(shown);
  p.numbers.show(entered, p.placement, shown);
  p.cortex_words.show(p.placement, shown);
  p.gap_scale.show(shown);
  p.changed = true;
}

void Stage::set_pixel_ratio(double ratio) {
  parts_->pixel_ratio = ratio;
  parts_->changed = true;
}

void Stage::set_thin_skin(const std::optional<geometry::Surface>& thin) {
  parts_->skin.set_thin(thin);
}
void Stage::set_moving(bool moving) {
  parts_->skin.set_moving(moving);
}
bool Stage::draws_thin_skin() const {
  return parts_->skin.draws_thin();
}

void Stage::look(View view) {
  look(gaze(view, parts_->axes, parts_->placement));
}

void Stage::look(const Gaze& gaze) {
  Parts& p = *parts_;
  if (!p.head) return;
  const int* size = renderer_->GetRenderWindow()->GetSize();
  const int width = std::max(1, size[0]), height = std::max(1, size[1]);
  const Box free = p.free_box(width, height, scale_of(width, height, p.pixel_ratio));
  const Vector3d right = gaze.up.cross(gaze.toward_eye);
  Eigen::Vector2d low = Eigen::Vector2d::Constant(std::numeric_limits<double>::infinity()), high = -low;
  const auto take_in = [&](const Vector3d& q) {
    const Eigen::Vector2d flat((q - p.axes.origin).dot(right), (q - p.axes.origin).dot(gaze.up));
    low = low.cwiseMin(flat);
    high = high.cwiseMax(flat);
  };
  for (const auto& v : p.head->skin().vertices())
    if ((v - p.axes.origin).dot(p.axes.up) > -below_tragi_mm) take_in(v);
  for (const auto& c : p.coil.corners()) take_in(c);
  const Eigen::Vector2d middle = 0.5 * (low + high);
  const double side_room = 0.9;  // for the side labels at the rims
  const double mm_per_px = std::max((high.x() - low.x()) / std::max(1.0, side_room * free.width()),
                                    (high.y() - low.y()) / std::max(1.0, 0.95 * free.height()));
  const Vector3d focus = p.axes.origin + middle.x() * right + middle.y() * gaze.up;
  aim(*renderer_, focus, gaze, 0.5 * mm_per_px * height);
  // The focus lies in the middle of the head's part of the picture, not of the picture.
  renderer_->GetActiveCamera()->SetWindowCenter(1 - (free.left + free.right) / width,
                                                (free.top + free.bottom) / height - 1);
  p.changed = true;
}

void Stage::refresh() {
  Parts& p = *parts_;
  if (!p.head) return;
  const int* size = renderer_->GetSize();
  const Sight s = sight_of(*renderer_, scale_of(size[0], size[1], p.pixel_ratio));
  if (!p.changed && s == p.sight) return;
  if (!(s == p.sight) || p.new_head) p.head_in_picture = coverage(p.head->skin(), s);
  p.changed = false;
  p.new_head = false;
  p.sight = s;

  p.gaps.draw(*p.head, s);
  p.tapes.draw(*p.head, s);
  p.landmarks.draw(*p.head, s);
  p.grid.draw(*p.head, s);
  p.tolerance.draw(*p.head, s);
  p.sites.draw(*p.head, s);
  p.angle.draw(*p.head, s);
  p.edge_marks.draw(*p.head, s);
  p.coil.draw(s);
  p.cortex.draw(s);

  p.overlay.begin(s);
  p.taken.clear();
  const Box free = p.free_box(s.width_px, s.height_px, s.scale);
  p.captions.draw(p.overlay, s, p.taken);
  const Pixel column{margin_px * s.scale, free.top + 4 * s.scale};
  const double numbers_end = p.numbers.draw(p.overlay, s, column, p.taken);
  p.cortex_words.draw(p.overlay, s, {column.x, numbers_end + 10 * s.scale},
                      (column_px - 2 * margin_px) * s.scale, p.taken);
  p.legend.draw(p.overlay, s, {margin_px * s.scale, free.bottom - 4 * s.scale}, p.taken);
  p.gap_scale.draw(p.overlay, {margin_px * s.scale, free.top, free.right, free.bottom - 4 * s.scale},
                   p.head_in_picture, p.taken);
  p.sides.draw(p.overlay, s, free, p.head_in_picture, p.taken);

  p.labels.clear();
  if (p.with_labels) {
    std::vector<LabelWish> wishes;
    p.gaps.wish(wishes, s);
    p.tapes.wish(wishes, s);
    p.landmarks.wish(wishes, s);
    p.tolerance.wish(wishes, s);
    p.sites.wish(wishes, s);
    p.angle.wish(wishes, s);
    p.edge_marks.wish(wishes, s);
    const auto style = [](const LabelWish& w) { return TextStyle{w.size_px, w.bold, w.colour, true}; };
    for (auto& w : wishes) {
      const TextSize measured = p.overlay.measure(w.text, style(w));
      w.width = measured.width + 2 * s.scale;
      w.height = measured.height;
    }
    std::vector<MarkInPicture> boxes;
    for (const auto& m : marks())
      if (m.visible)
        boxes.push_back({pixel_box(m, s), m.thing != Thing::landmarks && m.thing != Thing::grid});
    std::vector<Box> room;
    p.gaps.take_room(room, s);
    for (const Box& b : room) boxes.push_back({b, false});
    std::vector<Box> taken;
    for (const auto& c : p.taken) taken.push_back(c.box);
    p.labels = place_labels(std::move(wishes), free, taken, boxes, p.head_in_picture, s.scale);
    for (const auto& l : p.labels) {
      if (l.leader)
        p.overlay.line(l.wish.anchor,
                       {std::clamp(l.wish.anchor.x, l.box.left, l.box.right),
                        std::clamp(l.wish.anchor.y, l.box.top, l.box.bottom)},
                       1.1, palette::quiet_text);
      p.overlay.text(l.wish.text, {l.box.left + s.scale, l.box.top}, style(l.wish));
    }
  }
  p.overlay.done();
}

const Sight& Stage::sight() const {
  return parts_->sight;
}
const std::vector<PlacedLabel>& Stage::labels() const {
  return parts_->labels;
}
const std::vector<Caption>& Stage::captions() const {
  return parts_->taken;
}

std::vector<Mark> Stage::marks() const {
  std::vector<Mark> all;
  const Parts& p = *parts_;
  for (const auto* some : {&p.landmarks.marks(), &p.grid.marks(), &p.sites.marks(), &p.edge_marks.marks()})
    all.insert(all.end(), some->begin(), some->end());
  return all;
}

std::optional<Mark> Stage::mark_near(const Pixel& at, double reach_px) const {
  std::optional<Mark> best;
  double best_px = reach_px;
  for (const auto& m : marks()) {
    if (!m.visible) continue;
    const Pixel there = project(m.at);
    const double away = std::hypot(there.x - at.x, there.y - at.y);
    if (away <= best_px) {
      best_px = away;
      best = m;
    }
  }
  return best;
}

std::optional<Thing> Stage::pick(const Pixel& at) const {
  const Parts& p = *parts_;
  vtkNew<vtkCellPicker> picker;
  picker->SetTolerance(0);
  if (picker->Pick(at.x, p.sight.height_px - 1 - at.y, 0, renderer_) == 0) return {};
  const std::array<std::pair<const vtkActor*, Thing>, 8> known{{{p.skin.actor(), Thing::skin},
                                                                {p.tapes.actor(), Thing::tapes},
                                                                {p.landmarks.actor(), Thing::landmarks},
                                                                {p.grid.actor(), Thing::grid},
                                                                {p.tolerance.actor(), Thing::tolerance},
                                                                {p.sites.actor(), Thing::treatment},
                                                                {p.angle.actor(), Thing::angle},
                                                                {p.edge_marks.actor(), Thing::edge_marks}}};
  for (const auto& [actor, thing] : known) {
    if (actor != picker->GetActor()) continue;
    if (thing != Thing::treatment) return thing;
    // Start, hotspot and treatment site are drawn together; the nearest one is meant.
    std::optional<Thing> best;
    double best_px = std::numeric_limits<double>::infinity();
    for (const auto& m : p.sites.marks()) {
      const Pixel there = project(m.at);
      const double away = std::hypot(there.x - at.x, there.y - at.y);
      if (m.visible && away < best_px) {
        best_px = away;
        best = m.thing;
      }
    }
    return best;
  }
  return {};
}

std::optional<geometry::SurfacePoint> Stage::skin_at(const Pixel& at) const {
  const Parts& p = *parts_;
  if (!p.head) return {};
  return skin_under(p.head->skin(), p.sight, at);
}

}  // namespace scalpmark::viewer
