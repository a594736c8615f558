#include "viewer/window/practise/exercise_run.h"

#include <algorithm>
#include <chrono>
#include <utility>

#include "geometry/base/error.h"
#include "models/exercises/result_file.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

using Eigen::Vector3d;
using geometry::Task;

namespace {

constexpr std::size_t most_undone = 200;
/// A tape shorter than this lies nowhere.
constexpr double shortest_tape_mm = 1.5;

double within_half_turn(double deg) {
  while (deg > 180) deg -= 360;
  while (deg < -180) deg += 360;
  return deg;
}

}  // namespace

ExerciseRun::ExerciseRun(QObject* parent)
    : QObject(parent), clock_ms([] {
        const auto now = std::chrono::steady_clock::now().time_since_epoch();
        return std::chrono::duration_cast<std::chrono::milliseconds>(now).count();
      }) {
  second_.setInterval(1000);
  connect(&second_, &QTimer::timeout, this, [this] {
    if (!is_on()) return;
    if (seconds_left().value_or(1) <= 0)
      finish();
    else
      emit ticked();
  });
}

void ExerciseRun::begin(const models::ExerciseSetup& setup, const models::LoadedHead& head,
                        std::shared_ptr<const geometry::RightAnswers> answers) {
  setup_ = setup;
  loaded_ = std::make_shared<models::LoadedHead>(head);
  answers_ = std::move(answers);
  attempts_.clear();
  saved_.clear();
  scores_.clear();
  start_try();
}

bool ExerciseRun::may_try_again() const {
  return answers_ && tries_left().value_or(1) > 0 && attempts_.size() < models::most_attempts;
}

bool ExerciseRun::again() {
  if (!may_try_again()) return false;
  start_try();
  return true;
}

void ExerciseRun::leave() {
  second_.stop();
  answers_.reset();
  loaded_.reset();
  over_ = false;
  now_ = {};
  before_.clear();
  after_.clear();
  finger_.reset();
  emit changed();
}

void ExerciseRun::start_try() {
  over_ = false;
  in_deed_ = false;
  now_ = {};
  before_.clear();
  after_.clear();
  finger_.reset();
  task_ = 0;
  step_ = geometry::steps_of(tasks().front()).front();
  try_began_ms_ = task_began_ms_ = clock_ms();
  second_.start();
  emit begun();
  emit step_changed();
  emit changed();
}

// --- the task

void ExerciseRun::stop_clock() {
  const std::int64_t began_ms = std::exchange(task_began_ms_, clock_ms());
  now_.attempt.seconds[task()] += static_cast<double>(task_began_ms_ - began_ms) / 1000;
}

void ExerciseRun::set_step(std::size_t task, const geometry::Step& step) {
  if (task != task_) {
    stop_clock();
    // A tape is lifted and the coil taken off before something else is begun.
    now_.tape.reset();
    now_.coil.reset();
    finger_.reset();
    before_.clear();
    after_.clear();
  }
  task_ = task;
  step_ = step;
  emit step_changed();
  emit changed();
}

void ExerciseRun::go_to_step(const geometry::Step& step) {
  if (!is_on()) return;
  const auto found = std::find(tasks().begin(), tasks().end(), step.task);
  if (found != tasks().end()) set_step(static_cast<std::size_t>(found - tasks().begin()), step);
}

void ExerciseRun::next_task() {
  if (!is_on()) return;
  if (task_ + 1 >= tasks().size())
    finish();
  else
    set_step(task_ + 1, geometry::steps_of(tasks()[task_ + 1]).front());
}

void ExerciseRun::previous_task() {
  if (is_on() && task_ > 0) set_step(task_ - 1, geometry::steps_of(tasks()[task_ - 1]).front());
}

void ExerciseRun::finish() {
  if (!is_on()) return;
  stop_clock();
  second_.stop();
  over_ = true;
  finger_.reset();
  attempts_.push_back(now_.attempt);
  scores_.push_back(geometry::score(*answers_, now_.attempt));
  emit over();
}

bool ExerciseRun::is_done(const geometry::Step& step) const {
  return geometry::placed_for(now_.attempt, step) != nullptr;
}

/// After an answer the next step of the same task that has none is asked for, those before it last.
void ExerciseRun::go_on_from(const geometry::Step& step) {
  auto steps = geometry::steps_of(step.task);
  std::rotate(steps.begin(), std::find(steps.begin(), steps.end(), step), steps.end());
  const auto open =
      std::find_if(steps.begin(), steps.end(), [this](const geometry::Step& s) { return !is_done(s); });
  if (open == steps.end()) return;
  step_ = *open;
  emit step_changed();
}

std::optional<int> ExerciseRun::seconds_left() const {
  if (!answers_ || !setup_.exercise.minutes) return {};
  const int gone = over_ ? 0 : static_cast<int>((clock_ms() - try_began_ms_) / 1000);
  return std::max(0, 60 * *setup_.exercise.minutes - gone);
}

std::optional<int> ExerciseRun::tries_left() const {
  if (!answers_ || !setup_.exercise.tries) return {};
  return std::max(0, *setup_.exercise.tries - static_cast<int>(attempts_.size()));
}

std::vector<geometry::Attempt> ExerciseRun::attempts_so_far() const {
  std::vector<geometry::Attempt> all = attempts_;
  if (is_on() && !now_.attempt.placed.empty()) all.push_back(now_.attempt);
  return all;
}

bool ExerciseRun::has_unsaved() const {
  return answers_ && attempts_so_far() != saved_;
}

// --- undo

void ExerciseRun::forget_redo() {
  after_.clear();
}

void ExerciseRun::begin_deed() {
  if (!is_on() || in_deed_) return;
  before_.push_back(now_);
  if (before_.size() > most_undone) before_.erase(before_.begin());
  forget_redo();
  in_deed_ = true;
}

void ExerciseRun::undo() {
  if (!can_undo()) return;
  in_deed_ = false;
  after_.push_back(std::exchange(now_, before_.back()));
  before_.pop_back();
  emit changed();
}

void ExerciseRun::redo() {
  if (!can_redo()) return;
  in_deed_ = false;
  before_.push_back(std::exchange(now_, after_.back()));
  after_.pop_back();
  emit changed();
}

// --- tape

void ExerciseRun::lay_tape(std::vector<Vector3d> held_at, bool closed) {
  const std::size_t held = held_at.size();
  Tape tape{std::move(held_at), closed, {}};
  if (held >= 2 && (tape.held_at[held - 2] - tape.held_at[held - 1]).norm() < shortest_tape_mm) {
    // Its end has only just left the last place where it is held.
    if (held == 2)
      tape.lies.line = tape.held_at;
    else if (now_.tape)
      return;
  } else if (held >= 2) {
    try {
      tape.lies = geometry::pull_tape(head(), tape.held_at, closed);
    } catch (const geometry::GeometryError&) {
      return;  // the tape stays as it last lay
    }
  }
  now_.tape = std::move(tape);
  emit changed();
}

void ExerciseRun::start_tape(const Vector3d& at) {
  if (!is_on()) return;
  begin_deed();
  now_.tape.reset();
  lay_tape({at, at}, false);
}

void ExerciseRun::pull_tape_to(const Vector3d& at) {
  if (!is_on() || !now_.tape || now_.tape->held_at.empty()) return;
  begin_deed();
  std::vector<Vector3d> held_at = now_.tape->held_at;
  held_at.back() = at;
  lay_tape(std::move(held_at), false);
}

void ExerciseRun::hold_tape() {
  if (!is_on() || !now_.tape || now_.tape->closed) return;
  const auto& held = now_.tape->held_at;
  if ((held[held.size() - 2] - held.back()).norm() < shortest_tape_mm) return;
  begin_deed();
  std::vector<Vector3d> more = held;
  more.push_back(more.back());
  now_.tape->held_at = std::move(more);
  emit changed();
}

void ExerciseRun::close_tape() {
  if (!is_on() || !now_.tape || now_.tape->closed) return;
  std::vector<Vector3d> held = now_.tape->held_at;
  // An end that is at the zero already, or has not left the last hold, is no place of its own.
  while (held.size() > 2 && ((held.back() - held.front()).norm() < 12 ||
                             (held.back() - held[held.size() - 2]).norm() < shortest_tape_mm))
    held.pop_back();
  if (held.size() < 3) return;
  begin_deed();
  lay_tape(std::move(held), true);
  end_deed();
}

void ExerciseRun::lift_tape() {
  if (!is_on() || !now_.tape) return;
  begin_deed();
  now_.tape.reset();
  end_deed();
  emit changed();
}

// --- pencil and finger

void ExerciseRun::draw(PencilKind kind, const Vector3d& at, const Vector3d& along) {
  if (!is_on()) return;
  const geometry::Step step = step_;
  const bool answers = kind == PencilKind::cross && geometry::asked_in(step.task) == geometry::Asks::mark;
  begin_deed();
  if (answers) {
    std::erase_if(now_.drawn, [&](const Drawn& d) { return d.kind == PencilKind::cross && d.step == step; });
    geometry::put_mark(now_.attempt, step, at);
  }
  now_.drawn.push_back({kind, at, along, step});
  end_deed();
  if (answers) go_on_from(step);
  emit changed();
}

void ExerciseRun::press_finger(const std::optional<Vector3d>& at) {
  if (!is_on()) return;
  finger_.reset();
  if (at) finger_ = Finger{*at, geometry::feel(head(), *at)};
  emit changed();
}

// --- coil

std::optional<geometry::Placement> ExerciseRun::placed_coil(const geometry::SurfacePoint& at,
                                                            double angle_deg) const {
  geometry::CoilSetup setup = answers_->the_case.coil;
  setup.angle_deg = angle_deg;
  try {
    return geometry::place_coil(head(), setup, geometry::side_of(answers_->plan.treatment), at,
                                geometry::TapeDistances::left_out);
  } catch (const geometry::GeometryError&) {
    return {};  // the coil stays where it last could lie
  }
}

void ExerciseRun::take_coil() {
  if (!is_on() || now_.coil) return;
  const auto placement = placed_coil(head().vertex(), 0);
  if (!placement) return;
  begin_deed();
  now_.coil = CoilHere{head().vertex(), 0, *placement};
  end_deed();
  emit changed();
}

void ExerciseRun::take_coil_off() {
  if (!is_on() || !now_.coil) return;
  begin_deed();
  now_.coil.reset();
  if (geometry::asked_in(task()) == geometry::Asks::coil) geometry::rub_out(now_.attempt, step_);
  end_deed();
  emit changed();
}

void ExerciseRun::lay_coil(const geometry::SurfacePoint& at) {
  if (!is_on() || !now_.coil) return;
  const auto placement = placed_coil(at, now_.coil->angle_deg);
  if (!placement) return;
  begin_deed();
  now_.coil = CoilHere{at, now_.coil->angle_deg, *placement};
  emit changed();
}

void ExerciseRun::turn_coil(double by_deg) {
  if (!is_on() || !now_.coil) return;
  const double angle = within_half_turn(now_.coil->angle_deg + by_deg);
  const auto placement = placed_coil(now_.coil->at, angle);
  if (!placement) return;
  begin_deed();
  now_.coil = CoilHere{now_.coil->at, angle, *placement};
  emit changed();
}

void ExerciseRun::put_coil_down() {
  if (!is_on() || !now_.coil) return;
  if (geometry::asked_in(task()) == geometry::Asks::coil)
    geometry::lay_coil_down(now_.attempt, step_, now_.coil->placement.pulse, now_.coil->angle_deg);
  end_deed();
  emit changed();
}

// --- readings

std::vector<Vector3d> ExerciseRun::held_points() const {
  if (!now_.tape) return {};
  std::vector<Vector3d> held = now_.tape->held_at;
  // Held where its end is, it was not pulled on from there.
  if (held.size() > 2 && (held.back() - held[held.size() - 2]).norm() < shortest_tape_mm) held.pop_back();
  return held;
}

QString ExerciseRun::type_reading(const geometry::Step& step, std::optional<double> mm) {
  if (!is_on()) return {};
  end_deed();
  begin_deed();
  try {
    if (mm)
      geometry::type_reading(now_.attempt, step, *mm, held_points());
    else
      geometry::rub_out(now_.attempt, step);
  } catch (const geometry::GeometryError& refusal) {
    before_.pop_back();
    end_deed();
    return viewer::translated(refusal);
  }
  end_deed();
  step_ = step;
  if (mm) go_on_from(step);
  emit step_changed();
  emit changed();
  return {};
}

}  // namespace scalpmark::window
