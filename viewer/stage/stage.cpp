#include "viewer/stage/stage.h"

#include <vtkCamera.h>
#include <vtkCellPicker.h>
#include <vtkCommand.h>
#include <vtkNew.h>
#include <vtkRenderWindow.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "viewer/stage/drawing/aim.h"
#include "viewer/stage/drawing/captions.h"
#include "viewer/stage/drawing/coverage.h"
#include "viewer/stage/drawing/depth_chart.h"
#include "viewer/stage/drawing/gap_drawing.h"
#include "viewer/stage/drawing/legend.h"
#include "viewer/stage/drawing/overlay.h"
#include "viewer/stage/drawing/part_drawing.h"
#include "viewer/stage/drawing/remarks.h"
#include "viewer/stage/drawing/stage_room.h"
#include "viewer/stage/things/things.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

/// A view takes in the skin from this far below the tragi up; necks and shoulders may be cut.
constexpr double below_tragi_mm = 85;
/// Text is no smaller than 13 pixels: sizes stop shrinking here.
constexpr double smallest_scale = 1;
constexpr double usual_width_px = 1200, usual_height_px = 800;
const TextStyle aside_style{13, false, palette::text, true};

double scale_of(int width, int height, double ratio) {
  return std::max(smallest_scale * ratio, std::min(height / usual_height_px, width / usual_width_px));
}

Box pixel_box(const Mark& m, const Sight& sight) {
  const Pixel at = sight.project(m.at);
  const double reach = reach_px(m.shape) * sight.scale;
  if (m.shape != Shape::bar && m.shape != Shape::small_bar)
    return {at.x - reach, at.y - reach, at.x + reach, at.y + reach};
  const double x = std::abs(m.along.dot(sight.right())) * reach + 2 * sight.scale;
  const double y = std::abs(m.along.dot(sight.up)) * reach + 2 * sight.scale;
  return {at.x - x, at.y - y, at.x + x, at.y + y};
}

/// The visible mark nearest to a pixel; on equal terms the one drawn later.
const SeenMark* nearest(const std::vector<SeenMark>& marks, const Pixel& at, const Sight& sight,
                        double reach_px) {
  const SeenMark* best = nullptr;
  for (const auto& m : marks) {
    if (!m.visible) continue;
    const Pixel there = sight.project(m.at);
    const double away = std::hypot(there.x - at.x, there.y - at.y);
    if (away > reach_px) continue;
    reach_px = away;
    best = &m;
  }
  return best;
}

}  // namespace

struct Stage::Parts {
  explicit Parts(vtkRenderer* r) : renderer(r), overlay(r), depth_chart(r) {}

  vtkRenderer* renderer;
  std::optional<Scene> scene;
  CalmNormals normals;
  std::vector<std::unique_ptr<PartDrawing>> drawings;  ///< one for each part of a scene
  Overlay overlay;
  DepthChart depth_chart;
  std::optional<geometry::Surface> thin;
  bool moving = false;
  bool changed = true, new_head = true;
  double pixel_ratio = 1;
  Sight sight;
  std::vector<PlacedLabel> labels;
  std::vector<Caption> taken;
  std::optional<Box> covered;
  Coverage head_in_picture, busy;  ///< the head alone; with the coil

  [[nodiscard]] BodyDrawing* skin() const {
    for (size_t i = 0; i < drawings.size(); ++i)
      if (scene->parts[i].thing == Thing::skin) return drawings[i]->body();
    return nullptr;
  }

  void show_parts() {
    while (drawings.size() < scene->parts.size()) drawings.push_back(std::make_unique<PartDrawing>(renderer));
    bool others_follow = false;
    for (size_t i = 0; i < drawings.size(); ++i) {
      if (others_follow) drawings[i]->draw_last();
      if (drawings[i]->show(scene->parts[i])) others_follow = true;
    }
    if (BodyDrawing* body = skin()) body->set_thin(thin);
    choose_bodies();
  }

  void choose_bodies() {
    for (const auto& drawing : drawings)
      if (BodyDrawing* body = drawing->body()) body->set_moving(moving);
  }

  [[nodiscard]] Coverage with_coil(Coverage coverage) const {
    for (const Part& part : scene->parts)
      if (part.coil)
        for (const auto& rim : rims(*part.coil)) cover(coverage, rim, sight);
    return coverage;
  }

  void draw_around(const Surroundings& around, const Box& free) {
    const double s = sight.scale;
    if (around.title) draw_title(overlay, sight, *around.title, scene->axes, taken);
    if (!around.headline.empty()) draw_headline(overlay, sight, around.headline, free, taken);
    if (!around.caution.empty())
      draw_caution(overlay, sight, around.caution,
                   caution_share_of(overlay, around, sight.width_px, sight.height_px, s), taken);
    const Pixel column{stage_margin_px * s, free.top + 4 * s};
    const double numbers_end =
        around.numbers ? draw_numbers(overlay, sight, *around.numbers, column, taken) : column.y;
    const double column_end = column.x + (column_px - 2 * stage_margin_px) * s;
    draw_remarks(overlay, sight, around.remarks, {column.x, numbers_end + 10 * s, column_end, free.bottom},
                 taken);
    draw_legend(overlay, sight, around.legend, {stage_margin_px * s, free.bottom - 4 * s}, taken);
    if (around.gap_scale)
      draw_gap_scale(overlay, *around.gap_scale,
                     {stage_margin_px * s, free.top, free.right, free.bottom - 4 * s}, head_in_picture,
                     taken);
    busy = with_coil(head_in_picture);
    depth_chart.draw(overlay, around.depth_curve,
                     {stage_margin_px * s, free.top, free.right, free.bottom - 4 * s}, sight.height_px, busy,
                     taken);
    draw_sides(overlay, sight, scene->axes, free, busy, taken);
  }

  void draw_labels(const Box& free) {
    const double s = sight.scale;
    std::vector<LabelWish> wishes;
    LabelGround ground;
    ground.canvas = free;
    ground.head = head_in_picture;
    ground.scale = s;
    std::vector<std::string> unseen;
    for (const auto& drawing : drawings) {
      wishes.insert(wishes.end(), drawing->wishes().begin(), drawing->wishes().end());
      for (const auto& m : drawing->marks())
        if (m.visible) ground.symbols.push_back({pixel_box(m, sight), sight.project(m.at)});
      ground.symbols.insert(ground.symbols.end(), drawing->symbols().begin(), drawing->symbols().end());
      ground.lines.insert(ground.lines.end(), drawing->lines().begin(), drawing->lines().end());
      unseen.insert(unseen.end(), drawing->unseen().begin(), drawing->unseen().end());
    }
    const auto style = [](const LabelWish& w) { return TextStyle{w.size_px, w.bold, w.colour, true}; };
    const auto measure = [&](LabelWish& w) {
      const TextSize measured = overlay.measure(w.text, style(w));
      w.width = measured.width + 2 * s;
      w.height = measured.height;
    };
    for (auto& w : wishes) measure(w);
    for (const auto& c : taken) ground.taken.push_back(c.box);
    LabelLayout layout = place_labels(wishes, ground);
    Asides asides = said_aside(layout, unseen, ground);
    // What has no room beside its mark in full may have it in short: kept where less is left unsaid then, or
    // less has to be said aside. By its name alone only where it would be left unsaid.
    std::vector<LabelWish> without_room = layout.without_room;
    for (const bool by_name : {false, true}) {
      if (by_name && asides.unsaid == 0) break;
      if (!shorten(wishes, without_room, by_name)) continue;
      for (auto& w : wishes) measure(w);
      LabelLayout shorter = place_labels(wishes, ground);
      Asides others = said_aside(shorter, unseen, ground);
      without_room = shorter.without_room;
      if (std::pair(others.unsaid, others.said.size()) >= std::pair(asides.unsaid, asides.said.size()))
        continue;
      layout = std::move(shorter);
      asides = std::move(others);
    }
    labels = std::move(layout.placed);
    for (const auto& l : labels) {
      if (l.leader)
        overlay.line(l.wish.anchor,
                     {std::clamp(l.wish.anchor.x, l.box.left, l.box.right),
                      std::clamp(l.wish.anchor.y, l.box.top, l.box.bottom)},
                     1.1, palette::quiet_text);
      overlay.text(l.wish.text, {l.box.left + s, l.box.top}, style(l.wish));
    }
    for (const Caption& aside : asides.said)
      overlay.text(aside.text, {aside.box.left, aside.box.top}, aside_style);
    taken.insert(taken.end(), asides.said.begin(), asides.said.end());
  }

  /// What is important and has no label at its mark, a line each in the free corner that is nearest to the
  /// top left one.
  struct Asides {
    std::vector<Caption> said;
    std::size_t unsaid = 0;  ///< where there is no room for them either
  };
  Asides said_aside(const LabelLayout& layout, const std::vector<std::string>& unseen, LabelGround ground) {
    Asides asides;
    const auto say = [&](const std::string& text) {
      if (const auto at = free_place(overlay.measure(text, aside_style), layout.placed, ground)) {
        asides.said.push_back({text, *at});
        ground.taken.push_back(*at);
      } else {
        ++asides.unsaid;
      }
    };
    for (const std::string& each : unseen) say(words(Words::tr("Not seen from here: %1"), {each}));
    for (const LabelWish& w : layout.without_room)
      if (!w.aside.empty())
        say(words(Words::tr("No room beside its mark: %1"),
                  {w.text.size() < w.aside.size() ? w.aside : w.text}));
    return asides;
  }

  [[nodiscard]] std::optional<Box> free_place(const TextSize& size, const std::vector<PlacedLabel>& placed,
                                              const LabelGround& ground) const {
    const double s = sight.scale, step = 6 * s;
    const Box all{stage_margin_px * s, ground.canvas.top, ground.canvas.right, ground.canvas.bottom};
    const auto is_free = [&](const Box& box) {
      const auto hits = [&](const auto& other) { return box.overlaps(other.box); };
      return std::none_of(ground.taken.begin(), ground.taken.end(),
                          [&](const Box& other) { return box.overlaps(other); }) &&
             std::none_of(placed.begin(), placed.end(), hits) &&
             std::none_of(ground.symbols.begin(), ground.symbols.end(), hits);
    };
    for (const bool on_head_too : {false, true})
      for (double x = all.left; x + size.width <= all.right; x += 8 * step)
        for (double y = all.top; y + size.height <= all.bottom; y += step) {
          const Box box{x, y, x + size.width, y + size.height};
          if (is_free(box) && (on_head_too || busy.share(box) == 0)) return box;
        }
    return {};
  }
};

Stage::Stage(vtkRenderer* renderer) : renderer_(renderer), parts_(std::make_unique<Parts>(renderer)) {
  renderer_->SetBackground(palette::background.red / 255.0, palette::background.green / 255.0,
                           palette::background.blue / 255.0);
  renderer_->GetActiveCamera()->ParallelProjectionOn();
  observer_ = renderer_->AddObserver(vtkCommand::StartEvent, this, &Stage::refresh);
}

Stage::~Stage() {
  renderer_->RemoveObserver(observer_);
}

void Stage::show(const geometry::Head& head, const geometry::Case& the_case, const geometry::Plan& plan,
                 const Shown& shown) {
  show(viewer::show(head, the_case, plan, shown, parts_->normals));
}

void Stage::show(Scene scene) {
  Parts& p = *parts_;
  p.new_head = p.new_head || !p.scene || !same_surface(p.scene->skin, scene.skin);
  p.scene = std::move(scene);
  p.show_parts();
  p.changed = true;
}

void Stage::set_pixel_ratio(double ratio) {
  parts_->pixel_ratio = ratio;
  parts_->changed = true;
}

bool Stage::set_covered(const std::optional<Box>& part) {
  const bool fresh = part != parts_->covered;
  parts_->covered = part;
  parts_->changed = parts_->changed || fresh;
  return fresh;
}

void Stage::set_thin_skin(const std::optional<geometry::Surface>& thin) {
  parts_->thin = thin;
  if (BodyDrawing* skin = parts_->skin()) skin->set_thin(thin);
}
void Stage::set_moving(bool moving) {
  parts_->moving = moving;
  parts_->choose_bodies();
}
bool Stage::draws_thin_skin() const {
  return parts_->moving && parts_->thin;
}

void Stage::look(View view) {
  if (const auto& scene = parts_->scene) look(gaze(view, scene->axes, scene->placement));
}

void Stage::look(const Gaze& gaze) {
  Parts& p = *parts_;
  if (!p.scene) return;
  const int* size = renderer_->GetRenderWindow()->GetSize();
  const int width = std::max(1, size[0]), height = std::max(1, size[1]);
  const double scale = scale_of(width, height, p.pixel_ratio);
  const Box free = room_for_head(p.overlay, with_room(p.scene->around, width, scale), width, height, scale);
  const geometry::HeadAxes& axes = p.scene->axes;
  const Vector3d right = gaze.up.cross(gaze.toward_eye);
  Eigen::Vector2d low = Eigen::Vector2d::Constant(std::numeric_limits<double>::infinity()), high = -low;
  const auto take_in = [&](const Vector3d& q) {
    const Eigen::Vector2d flat((q - axes.origin).dot(right), (q - axes.origin).dot(gaze.up));
    low = low.cwiseMin(flat);
    high = high.cwiseMax(flat);
  };
  for (const auto& v : p.scene->skin.vertices())
    if ((v - axes.origin).dot(axes.up) > -below_tragi_mm) take_in(v);
  for (const auto& part : p.scene->parts)
    if (part.coil)
      for (const auto& rim : rims(*part.coil))
        for (const auto& c : rim) take_in(c);
  const Eigen::Vector2d middle = 0.5 * (low + high);
  const double side_room = 0.9;  // for the side labels at the rims
  const double mm_per_px = std::max((high.x() - low.x()) / std::max(1.0, side_room * free.width()),
                                    (high.y() - low.y()) / std::max(1.0, 0.95 * free.height()));
  const Vector3d focus = axes.origin + middle.x() * right + middle.y() * gaze.up;
  aim(*renderer_, focus, gaze, 0.5 * mm_per_px * height);
  // The focus lies in the middle of the head's part of the picture, not of the picture.
  renderer_->GetActiveCamera()->SetWindowCenter(1 - (free.left + free.right) / width,
                                                (free.top + free.bottom) / height - 1);
  p.changed = true;
}

void Stage::refresh() {
  Parts& p = *parts_;
  if (!p.scene) return;
  // Sizes of text are in pixels of the picture already; a widget would scale them again on a dense screen.
  if (auto* window = renderer_->GetRenderWindow()) window->SetDPI(72);
  const int* size = renderer_->GetSize();
  const Sight s = sight_of(*renderer_, scale_of(size[0], size[1], p.pixel_ratio));
  if (!p.changed && s == p.sight) return;
  if (!(s == p.sight) || p.new_head) p.head_in_picture = coverage_of(p.scene->skin, s);
  p.changed = false;
  p.new_head = false;
  p.sight = s;
  for (size_t i = 0; i < p.drawings.size(); ++i) p.drawings[i]->draw(p.scene->parts[i], p.scene->skin, s);
  p.overlay.begin(s);
  p.taken.clear();
  if (p.covered) p.taken.push_back({"", *p.covered});
  const Surroundings around = with_room(p.scene->around, s.width_px, s.scale);
  const Box free = room_for_head(p.overlay, around, s.width_px, s.height_px, s.scale);
  p.draw_around(around, free);
  p.draw_labels(free);
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

std::vector<SeenMark> Stage::marks() const {
  std::vector<SeenMark> all;
  for (const auto& drawing : parts_->drawings)
    all.insert(all.end(), drawing->marks().begin(), drawing->marks().end());
  return all;
}

std::optional<SeenMark> Stage::mark_near(const Pixel& at, double reach_px) const {
  const std::vector<SeenMark> all = marks();
  const SeenMark* best = nearest(all, at, sight(), reach_px);
  return best != nullptr ? std::optional(*best) : std::nullopt;
}

std::optional<Thing> Stage::pick(const Pixel& at) const {
  const Parts& p = *parts_;
  vtkNew<vtkCellPicker> picker;
  picker->SetTolerance(0);
  if (picker->Pick(at.x, p.sight.height_px - 1 - at.y, 0, renderer_) == 0) return {};
  for (size_t i = 0; i < p.drawings.size(); ++i) {
    if (!p.drawings[i]->has(picker->GetActor())) continue;
    // Start, hotspot and treatment site are drawn together; the nearest one is meant.
    const auto* mark = nearest(p.drawings[i]->marks(), at, p.sight, std::numeric_limits<double>::infinity());
    return mark != nullptr ? mark->thing : p.scene->parts[i].thing;
  }
  return {};
}

std::optional<geometry::SurfacePoint> Stage::skin_at(const Pixel& at) const {
  const Parts& p = *parts_;
  if (!p.scene) return {};
  return skin_under(p.scene->skin, p.sight, at);
}

}  // namespace scalpmark::viewer
