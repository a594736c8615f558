#include "viewer/window/practise/practise_content.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <utility>

#include "geometry/surface/directions.h"
#include "geometry/surface/patch_normal.h"
#include "viewer/stage/scene/practise_shown.h"
#include "viewer/words/exercise_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

using Eigen::Vector3d;
using geometry::Task;
using viewer::PractiseShown;
using viewer::Thing;

namespace {

constexpr double tape_normal_every_mm = 6;
constexpr double head_across_mm = 340;    ///< what of it an operator looks at
constexpr double replay_across_mm = 110;  ///< of the head, around one step
constexpr double seen_apart_mm = 1.5;     ///< places nearer to each other are drawn as one

Vector3d skin_normal(const geometry::Head& head, const Vector3d& at) {
  return head.skin().smooth_normal(head.skin().closest(at));
}

/// Fewer points than a section has, with the skin's normals between them blended.
PractiseShown::Tape shown_tape(const geometry::Head& head, const geometry::PulledTape& lies) {
  PractiseShown::Tape tape;
  double since_mm = tape_normal_every_mm;
  for (std::size_t i = 0; i < lies.line.size(); ++i) {
    if (i > 0) since_mm += (lies.line[i] - lies.line[i - 1]).norm();
    if (since_mm < tape_normal_every_mm && i + 1 < lies.line.size()) continue;
    since_mm = 0;
    tape.line.push_back(lies.line[i]);
    tape.normals.push_back(skin_normal(head, lies.line[i]));
  }
  return tape;
}

PractiseShown::Pencil pencil(const geometry::Head& head, PractiseShown::Pencil::Kind kind, const Vector3d& at,
                             const Vector3d& along, bool faint = false) {
  return {kind, at, skin_normal(head, at), along, faint};
}

PractiseShown::Pencil::Kind shown_kind(ExerciseRun::PencilKind kind) {
  using Kind = ExerciseRun::PencilKind;
  using ShownKind = PractiseShown::Pencil::Kind;
  return kind == Kind::point ? ShownKind::point : kind == Kind::line ? ShownKind::line : ShownKind::cross;
}

/// With another cap, or where someone else has drawn the marks, one's own are gone but for those on the skin
/// itself.
bool is_still_there(const ExerciseRun& run, const geometry::Step& drawn_at) {
  if (run.task() != Task::coil_on_given_marks && run.task() != Task::find_again) return true;
  return drawn_at.task == run.task() || drawn_at.task == Task::four_points || drawn_at.task == Task::vertex;
}

void add_drawn(const ExerciseRun& run, PractiseShown& shown) {
  for (const ExerciseRun::Drawn& each : run.drawn())
    if (is_still_there(run, each.step))
      shown.pencil.push_back(
          pencil(run.head(), shown_kind(each.kind), each.at, each.along, each.step.task != run.task()));
}

void add_given(const ExerciseRun& run, PractiseShown& shown) {
  const geometry::RightAnswers& answers = run.answers();
  const auto add = [&](const Vector3d& at, const Vector3d& along) {
    shown.pencil.push_back(pencil(run.head(), PractiseShown::Pencil::Kind::cross, at, along, true));
  };
  for (const geometry::Step& step : geometry::given_steps(answers.exercise, answers.the_case, run.task())) {
    const auto right = answers.right.find(step);
    if (right != answers.right.end() && right->second.at) add(*right->second.at, run.head().axes().right);
  }
  if (run.task() != Task::coil_on_given_marks) return;
  add(answers.given.site, answers.given.edge - answers.given.site);
  add(answers.given.edge, answers.given.edge - answers.given.site);
}

viewer::Shown bare(const ExerciseRun& run) {
  viewer::Shown shown;
  shown.things = {Thing::skin};
  shown.head_description = viewer::words(run.loaded().description);
  return shown;
}

viewer::View side_view(const ExerciseRun& run) {
  return run.answers().the_case.side == geometry::Side::left ? viewer::View::front_left
                                                             : viewer::View::front_right;
}

// --- replay

struct TruthLook {
  viewer::Shape shape = viewer::Shape::brackets;
  viewer::Role role = viewer::Role::found;
};

TruthLook truth_look(Task task) {
  using viewer::Role;
  using viewer::Shape;
  switch (task) {
    case Task::start:
      return {Shape::disc, Role::start};
    case Task::grid:
    case Task::edge_mark:
      return {Shape::bar, Role::edge_mark};
    case Task::hotspot:
      return {Shape::ring, Role::hotspot};
    case Task::site:
      return {Shape::diamond, Role::treatment};
    case Task::coil:
    case Task::coil_on_given_marks:
      return {Shape::hollow_disc, Role::pulse};
    case Task::four_points:
    case Task::three_tapes:
    case Task::vertex:
    case Task::find_again:
      break;
  }
  return {};
}

viewer::Note mark_note(const TruthLook& look, const Vector3d& at, const Vector3d& along,
                       const std::string& text) {
  viewer::Note note;
  note.shape = look.shape;
  note.role = look.role;
  note.at = at;
  note.along = along;
  note.text = text;
  return note;
}

viewer::Note line_note(std::vector<Vector3d> line, viewer::Role role, const std::string& text) {
  viewer::Note note;
  note.line = std::move(line);
  note.role = role;
  note.text = text;
  return note;
}

/// Straight over the skin, so that it is not lost in the head.
std::vector<Vector3d> over_skin(const geometry::Head& head, const Vector3d& from, const Vector3d& to) {
  constexpr int pieces = 12;
  std::vector<Vector3d> line;
  for (int i = 0; i <= pieces; ++i) {
    const Vector3d between = from + (to - from) * i / pieces;
    line.push_back(head.skin().position(head.skin().closest(between)));
  }
  return line;
}

std::string plan_line_of(const geometry::Step& step) {
  return step.which == 0 ? "midline" : step.which == 1 ? "coronal" : "circumference";
}

void show_tapes_of(const ExerciseRun& run, const geometry::StepScore& step, viewer::Shown& shown) {
  const auto name = plan_line_of(step.step);
  for (const auto& line : run.answers().plan.lines)
    if (line.name == name)
      shown.notes.push_back(line_note(line.points, viewer::Role::pulse,
                                      viewer::words(viewer::Words::tr("the tape as it lies right"))));
  if (!step.placed || step.placed->tape.size() < 2) return;
  try {
    const bool closed = step.step.which == 2;
    shown.notes.push_back(line_note(geometry::pull_tape(run.head(), step.placed->tape, closed).line,
                                    viewer::Role::todays, viewer::words(viewer::Words::tr("your tape"))));
  } catch (const std::exception&) {
    // A tape that cannot be laid any more is not shown.
  }
}

Vector3d front_at(const ExerciseRun& run, const Vector3d& pulse, double angle_deg) {
  geometry::CoilSetup setup = run.answers().the_case.coil;
  setup.angle_deg = angle_deg;
  return geometry::pose_at(run.head(), setup, run.answers().the_case.side, run.head().skin().closest(pulse))
      .pose.front;
}

void show_axis(const ExerciseRun& run, const geometry::Placed& coil, viewer::Role role,
               viewer::Shown& shown) {
  if (!coil.at || !coil.angle_deg) return;
  const Vector3d front = front_at(run, *coil.at, *coil.angle_deg);
  const double reach = run.answers().the_case.coil.centre_to_edge_mm;
  shown.notes.push_back(line_note(over_skin(run.head(), *coil.at, *coil.at + reach * front), role, {}));
}

Vector3d middle_of(const geometry::StepScore& step, const geometry::Head& head) {
  const Vector3d right = step.right.at.value_or(head.skin().position(head.vertex()));
  return step.placed && step.placed->at ? Vector3d(0.5 * (right + *step.placed->at)) : right;
}

StageLook close_look(const geometry::Head& head, const Vector3d& at, double across_mm) {
  const Vector3d normal = geometry::patch_normal(head.skin(), head.skin().closest(at), 20);
  const Vector3d forward = geometry::forward_along(head.axes(), normal);
  Vector3d up = forward - forward.dot(normal) * normal;
  // A face is looked at upright.
  if (std::abs(normal.dot(head.axes().up)) < 0.6) up = head.axes().up - head.axes().up.dot(normal) * normal;
  StageLook look;
  look.close_up = StageLook::CloseUp{{normal, up.normalized()}, at, across_mm};
  return look;
}

}  // namespace

viewer::Shown exercise_shown(const ExerciseRun& run, const std::optional<Vector3d>& by_keys) {
  viewer::Shown shown = bare(run);
  auto hands = std::make_shared<PractiseShown>();
  if (run.tape() && run.tape()->lies.line.size() > 1) hands->tape = shown_tape(run.head(), run.tape()->lies);
  add_given(run, *hands);
  add_drawn(run, *hands);
  if (run.finger()) hands->finger = PractiseShown::Finger{run.finger()->at, run.finger()->felt.share};
  hands->hand = by_keys;
  shown.practise = hands;
  if (run.coil()) {
    shown.things.insert(Thing::coil);
    shown.coil_on = viewer::CoilOn::elsewhere;
    shown.placement = run.coil()->placement;
  }
  return shown;
}

StageLook exercise_look(const ExerciseRun& run) {
  using viewer::View;
  StageLook look;
  switch (run.task()) {
    case Task::four_points:
      look.view = std::array{View::front, View::back, View::left,
                             View::right}[static_cast<std::size_t>(run.step().which)];
      break;
    case Task::three_tapes:
      look.view = run.step().which == 1 ? View::left : View::front;
      break;
    case Task::vertex:
      look.view = View::above;
      break;
    case Task::coil:
    case Task::coil_on_given_marks:
      return operators_look(run);
    default:
      look.view = side_view(run);
      break;
  }
  return look;
}

StageLook operators_look(const ExerciseRun& run, const std::optional<viewer::View>& from) {
  const geometry::HeadAxes& axes = run.head().axes();
  const bool left = run.answers().the_case.side == geometry::Side::left;
  const Vector3d out = left ? Vector3d(-axes.right) : axes.right;
  viewer::Gaze gaze;
  if (from && *from != viewer::View::square_on) {
    gaze = viewer::gaze(*from, axes, run.answers().plan.treatment);
  } else {
    // Beside and behind the chair, the head below the eyes.
    gaze.toward_eye = (-0.45 * axes.front + 0.5 * out + 0.75 * axes.up).normalized();
    gaze.up = (axes.front - axes.front.dot(gaze.toward_eye) * gaze.toward_eye).normalized();
  }
  StageLook look;
  look.close_up = StageLook::CloseUp{gaze, axes.origin + 80 * axes.up, head_across_mm, operators_eye_mm};
  return look;
}

viewer::Shown replay_shown(const ExerciseRun& run, const geometry::StepScore& step) {
  viewer::Shown shown = bare(run);
  shown.things.insert(Thing::labels);
  if (step.step.task == Task::three_tapes) {
    show_tapes_of(run, step, shown);
    return shown;
  }
  const Vector3d along = run.head().axes().right;
  if (step.right.at)
    shown.notes.push_back(mark_note(truth_look(step.step.task), *step.right.at, along,
                                    viewer::words(viewer::Words::tr("where it should be"))));
  show_axis(run, step.right, viewer::Role::pulse, shown);
  if (!step.placed || !step.placed->at) return shown;
  const Vector3d& mine = *step.placed->at;
  const bool carried = step.should_be && step.should_be->at && step.right.at &&
                       (*step.should_be->at - *step.right.at).norm() > seen_apart_mm;
  const Vector3d& aim = carried ? *step.should_be->at : *step.right.at;
  if (carried)
    shown.notes.push_back(mark_note({viewer::Shape::small_hollow_disc, viewer::Role::pulse}, aim, along,
                                    viewer::words(viewer::Words::tr("where it should be, by your marks"))));
  shown.notes.push_back(mark_note({viewer::Shape::pencil_cross, viewer::Role::todays}, mine, along,
                                  viewer::words(viewer::Words::tr("yours"))));
  if ((mine - aim).norm() > seen_apart_mm)
    shown.notes.push_back(line_note(over_skin(run.head(), mine, aim), viewer::Role::construction,
                                    viewer::small_length(step.own.mm)));
  show_axis(run, *step.placed, viewer::Role::todays, shown);
  return shown;
}

StageLook replay_look(const ExerciseRun& run, const geometry::StepScore& step) {
  if (step.step.task == Task::three_tapes) {
    StageLook look;
    look.view = step.step.which == 1 ? viewer::View::front : side_view(run);
    return look;
  }
  const double apart =
      step.placed && step.placed->at && step.right.at ? (*step.placed->at - *step.right.at).norm() : 0;
  return close_look(run.head(), middle_of(step, run.head()), std::max(replay_across_mm, 2 * apart));
}

viewer::Shown pulse_shown(const ExerciseRun& run, const geometry::PulseScore& pulse) {
  viewer::Shown shown = bare(run);
  shown.things.insert(Thing::labels);
  const Vector3d along = run.head().axes().right;
  shown.notes.push_back(mark_note({viewer::Shape::hollow_disc, viewer::Role::pulse}, pulse.aim, along,
                                  viewer::words(viewer::Words::tr("pulse wanted"))));
  shown.notes.push_back(mark_note({viewer::Shape::disc, viewer::Role::pulse}, pulse.real, along,
                                  viewer::words(viewer::Words::tr("your pulse"))));
  if ((pulse.real - pulse.aim).norm() > seen_apart_mm)
    shown.notes.push_back(line_note(over_skin(run.head(), pulse.real, pulse.aim), viewer::Role::construction,
                                    viewer::small_length(pulse.off.mm)));
  return shown;
}

StageLook pulse_look(const ExerciseRun& run, const geometry::PulseScore& pulse) {
  return close_look(run.head(), 0.5 * (pulse.real + pulse.aim),
                    std::max(replay_across_mm, 2 * (pulse.real - pulse.aim).norm()));
}

}  // namespace scalpmark::window
