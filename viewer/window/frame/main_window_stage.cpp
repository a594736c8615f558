#include <algorithm>
#include <cmath>
#include <utility>

#include "geometry/paths/walk.h"
#include "viewer/stage/scene/palette.h"
#include "viewer/window/frame/main_window.h"
#include "viewer/window/frame/status_line.h"
#include "viewer/words/head_text.h"
#include "viewer/words/sentences.h"

// What the stage shows for the step and the mode, where it looks from, and the coil in the hand.

namespace scalpmark::window {

using viewer::CoilOn;
using viewer::Thing;
using viewer::View;

namespace {

constexpr double skin_in_explain = 0.4;  // still a head, with the brain in it

}  // namespace

viewer::Shown MainWindow::shown_now() const {
  viewer::Shown shown;
  shown.coil_on = coil_.on;
  shown.row = coil_.row;
  shown.column = coil_.column;
  shown.placement = coil_.placement;
  std::set<Thing> things{Thing::skin, Thing::labels};
  const auto with = [&](std::initializer_list<Thing> more) { things.insert(more.begin(), more.end()); };
  if (mode_ == Mode::explain) {
    shown.things = {Thing::skin, Thing::treatment, Thing::coil};
    look_through_skin(shown);
    return shown;
  }
  shown.head_description = viewer::head_in_words(session_.kept(), session_.head());
  switch (mode_ == Mode::check ? Worksheet::check_index : worksheet_->current()) {
    case Worksheet::measure_index:
      with({Thing::tapes});
      break;
    case Worksheet::landmarks_index:
      with({Thing::landmarks, Thing::tapes});
      break;
    case Worksheet::search_index:
      with({Thing::grid, Thing::start, Thing::coil, Thing::angle, Thing::edge_marks, Thing::tapes});
      break;
    case Worksheet::treat_index:
      with({Thing::hotspot, Thing::treatment, Thing::alternatives, Thing::coil, Thing::angle,
            Thing::edge_marks});
      break;
    case Worksheet::check_index:
      with({Thing::treatment, Thing::coil, Thing::angle, Thing::edge_marks});
      if (visit_.check()) {
        shown.coil_on = CoilOn::elsewhere;
        shown.placement = visit_.check()->as_laid;
      }
      break;
    case Worksheet::keep_index:
      with({Thing::landmarks, Thing::grid, Thing::start, Thing::hotspot, Thing::treatment, Thing::coil,
            Thing::angle, Thing::edge_marks});
      break;
  }
  const bool coil = things.contains(Thing::coil);
  if (numbers_ && coil) things.insert(Thing::numbers);
  if (legend_ && coil) things.insert(Thing::legend);
  shown.things = std::move(things);
  look_through_skin(shown);
  return shown;
}

void MainWindow::look_through_skin(viewer::Shown& shown) const {
  shown.skin_opacity = skin_opacity_;
  if (!session_.has_cortex() || !looks_through_skin()) return;
  shown.things.insert(Thing::cortex);
  if (mode_ == Mode::explain) {
    // Whose brain it is not, the panel says in words for patients.
    shown.under_coil = viewer::UnderCoil::lit;
    shown.skin_opacity = std::min(skin_opacity_, skin_in_explain);
  } else if (!shown.has(Thing::coil)) {
    shown.under_coil = viewer::UnderCoil::left_out;
  }
}

void MainWindow::set_skin_opacity(double opacity) {
  const double before = std::exchange(skin_opacity_, opacity);
  skin_slider_->setValue(static_cast<int>(std::lround(100 * opacity)));
  brain_->setChecked(opacity < 1);
  if (opacity < 1 && before == 1) want_cortex();
  refresh_stage();
}

void MainWindow::want_cortex() {
  no_cortex_.clear();  // it may have been installed since
  session_.want_cortex();
}

void MainWindow::say_no_cortex() {
  // Nothing for a patient to read; it is said when that is over.
  if (mode_ == Mode::explain || no_cortex_.isEmpty()) return;
  show_notice(no_cortex_);
}

std::vector<StageNote> MainWindow::notes_now() const {
  std::vector<StageNote> notes;
  if (mode_ == Mode::explain) return notes;
  const geometry::Surface& skin = session_.head().head.skin();
  if (mode_ == Mode::check || worksheet_->current() == Worksheet::check_index) {
    const auto add = [&](TodaysMark which, viewer::Shape shape, viewer::Colour colour, const QString& text) {
      if (const auto& mark = visit_.mark(which)) {
        StageNote note;
        note.shape = shape;
        note.colour = colour;
        note.at = skin.position(*mark);
        if (visit_.check()) note.along = visit_.check()->as_laid.front.cross(visit_.check()->as_laid.normal);
        note.text = text;
        notes.push_back(note);
      }
    };
    add(TodaysMark::site, viewer::Shape::ring, viewer::okabe_ito::black, tr("today's site mark"));
    add(TodaysMark::edge, viewer::Shape::bar, viewer::okabe_ito::black, tr("today's edge mark"));
  } else if (worksheet_->current() == Worksheet::landmarks_index) {
    if (const auto& found = worksheet_->landmarks()->found()) {
      StageNote note;
      note.shape = viewer::Shape::ring;
      note.colour = viewer::palette::edge_mark;
      note.at = found->at;
      note.text = QString::fromStdString(found->name);
      notes.push_back(note);
    }
  }
  return notes;
}

void MainWindow::refresh_stage() {
  if (session_.unplaced()) {
    status_->clear();
    stage_->show_bare(*session_.unplaced());
    return;
  }
  if (!session_.is_ready()) return;
  stage_->set_thin_skin(session_.thin_skin());
  if (mode_ == Mode::teach && lesson_) {
    LessonStage lesson = lesson_->stage(session_);
    lesson.shown.head_description = viewer::head_in_words(session_.kept(), session_.head());
    look_through_skin(lesson.shown);
    stage_->show_plan(session_.head().head, session_.kept().entered, session_.plan(), lesson.shown,
                      std::move(lesson.notes));
    stage_->set_coil_movable(false);
    return;
  }
  viewer::Shown shown = shown_now();
  add_looked_into(shown);
  if (worksheet_->current() == Worksheet::landmarks_index &&
      worksheet_->landmarks()->system() != geometry::LandmarkSystem::ten_ten) {
    if (!other_landmarks_)
      other_landmarks_ = std::make_shared<const std::vector<geometry::Landmark>>(
          geometry::landmarks(session_.head().head, worksheet_->landmarks()->system()));
    shown.other_landmarks = other_landmarks_;
  }
  const geometry::Plan& plan = session_.plan();
  stage_->show_plan(session_.head().head, session_.kept().entered, plan, shown, notes_now());
  stage_->set_coil_movable(mode_ != Mode::explain &&
                           !(shown.coil_on == CoilOn::elsewhere && !coil_.in_hand()));
  worksheet_->search()->show_node(coil_.on == CoilOn::node
                                      ? std::optional(geometry::HotspotNode{coil_.row, coil_.column})
                                  : coil_.on == CoilOn::start ? std::optional(geometry::HotspotNode{0, 0})
                                                              : std::nullopt);
  const geometry::Placement& placement = viewer::placement_shown(plan, shown);
  from_site_mm_ = pulse_from_site_mm(session_.head().head.skin(), plan, placement);
  status_->setText(status_line(from_site_mm_, placement, session_.kept().entered.coil.mark_rule));
}

void MainWindow::look_for_step() {
  if (!session_.is_ready() || session_.unplaced()) return;
  if (mode_ == Mode::teach && lesson_) {
    lesson_->look();
    return;
  }
  const bool left = session_.kept().entered.side == geometry::Side::left;
  if (mode_ == Mode::explain) {
    stage_->look(left ? View::front_left : View::front);
    return;
  }
  switch (worksheet_->current()) {
    case Worksheet::measure_index:
    case Worksheet::landmarks_index:
      stage_->look(left ? View::front_left : View::right);
      break;
    case Worksheet::search_index:
    case Worksheet::treat_index:
    case Worksheet::check_index:
      stage_->look(View::square_on);
      break;
    case Worksheet::keep_index:
      stage_->look(left ? View::left : View::right);
      break;
  }
}

void MainWindow::show_step() {
  stage_->draw_once([this] {
    refresh_stage();
    look_for_step();
  });
}

void MainWindow::lay_coil(const HeldCoil& coil) {
  if (!session_.is_ready()) return;
  coil_ = coil;
  // Its tape distances follow it once the head's fields are there; they are worked out while it rests.
  if (coil.in_hand() && !session_.has_fields())
    coil_rests_.start();
  else
    coil_rests_.stop();
  refresh_stage();
}

void MainWindow::turn_coil(double by_deg) {
  if (!session_.is_ready()) return;
  const geometry::Placement& now = placement_of(session_.plan(), coil_);
  const auto& head = session_.head().head;
  double angle = now.angle_deg + by_deg;
  if (angle > 180) angle -= 360;
  if (angle < -180) angle += 360;
  const geometry::SurfacePoint at = coil_.in_hand() ? coil_.at : head.skin().closest(now.pulse);
  if (const auto held = hold_coil(head, session_.kept().entered, at, angle, session_.tapes()))
    lay_coil(*held);
}

void MainWindow::nudge_coil(double forward_mm, double outward_mm) {
  if (!session_.is_ready()) return;
  const geometry::Placement& now = placement_of(session_.plan(), coil_);
  const auto& head = session_.head().head;
  const geometry::SurfacePoint at = coil_.in_hand() ? coil_.at : head.skin().closest(now.pulse);
  const geometry::Directions ways = geometry::directions_at(head, session_.kept().entered.side, at);
  const Eigen::Vector3d way = forward_mm * ways.forward + outward_mm * ways.outward;
  try {
    const geometry::Walk walk = geometry::walk(head.skin(), at, way.normalized(), way.norm());
    const auto angle = coil_.in_hand() ? coil_.angle_deg : std::nullopt;
    if (const auto held = hold_coil(head, session_.kept().entered, walk.end, angle, session_.tapes()))
      lay_coil(*held);
  } catch (const std::exception& error) {
    show_notice(viewer::translated(error.what()));
  }
}

}  // namespace scalpmark::window
