#pragma once

#include <cstdint>
#include <vector>

#include "tests/viewer/window/opened_window.h"

namespace scalpmark::window {

/// A window in which an exercise is done with real events: mouse and keys on the stage, as a trainee does it
/// who knows where everything belongs.
struct OpenedExercise : OpenedWindow {
  /// In Practise, choosing the head for `number`, the side and these tasks, and begun by its button.
  OpenedExercise(std::uint32_t number, geometry::Side side, const std::vector<geometry::Task>& tasks);
  /// The same beside another case, on that case's own head if asked for.
  OpenedExercise(const models::CaseFile& beside, bool own_head, std::uint32_t number, geometry::Side side,
                 const std::vector<geometry::Task>& tasks);

  [[nodiscard]] Practise& practise() { return window.practise(); }
  [[nodiscard]] ExerciseRun& run() { return window.practise().run(); }
  [[nodiscard]] const geometry::RightAnswers& right() { return run().answers(); }
  [[nodiscard]] StageView& stage() { return window.stage(); }
  [[nodiscard]] const Eigen::Vector3d& place_of(const geometry::Step& step) {
    return *right().right.at(step).at;
  }

  void key(int which, Qt::KeyboardModifiers with = Qt::NoModifier);
  /// Turns the head, by the keys for its sides, to where the skin there faces the eye most.
  void face(const Eigen::Vector3d& place);
  [[nodiscard]] QPoint pixel_of(const Eigen::Vector3d& place);
  void move_mouse(QPoint to, Qt::MouseButtons held);
  void drag(QPoint from, QPoint to, int pieces = 8);
  /// A cross in pencil, by a click.
  void mark(const Eigen::Vector3d& place);
  /// Pulls the tape on to a place, from its end or (`fresh`) from `from`.
  void pull(const Eigen::Vector3d& from, const Eigen::Vector3d& to, bool fresh);
  /// Carries the coil by its handle, and turns it by keys.
  void lay_coil(const Eigen::Vector3d& pulse, double angle_deg);
  void next_task();

  /// Does the task at hand as it ought to be done.
  void do_task();

private:
  [[nodiscard]] const geometry::Coil& coil_model();
  void do_tapes();
};

}  // namespace scalpmark::window
