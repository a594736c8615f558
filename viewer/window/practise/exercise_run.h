#pragma once

#include <QObject>
#include <QString>
#include <QTimer>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "geometry/exercise/attempt.h"
#include "geometry/exercise/feel.h"
#include "geometry/exercise/pulled_tape.h"
#include "geometry/exercise/right_answers.h"
#include "geometry/exercise/score.h"
#include "geometry/plan/placement.h"
#include "models/exercises/exercise_file.h"

namespace scalpmark::window {

/// One go at an exercise after the other, on one head: what lies on the head, what was put down, and which
/// task it is at. Mouse, keyboard and tests all come through here. Knows no widgets. Undo takes back the last
/// thing a hand did, up to the start of the try.
class ExerciseRun : public QObject {
  Q_OBJECT
public:
  enum class PencilKind { point, line, cross };
  /// A pencil's mark; a cross is the answer to the step it was drawn for, others are the trainee's own help.
  struct Drawn {
    PencilKind kind = PencilKind::cross;
    Eigen::Vector3d at = Eigen::Vector3d::Zero(), along = Eigen::Vector3d::UnitX();
    geometry::Step step;  ///< at which it was drawn
  };
  struct CoilHere {
    geometry::SurfacePoint at;
    double angle_deg = 0;
    geometry::Placement placement;
  };
  struct Tape {
    std::vector<Eigen::Vector3d> held_at;  ///< the last follows the hand
    bool closed = false;
    geometry::PulledTape lies;
  };

  explicit ExerciseRun(QObject* parent = nullptr);

  /// Milliseconds of a clock that only goes forward.
  std::function<std::int64_t()> clock_ms;

  /// Begins the first try on a head. What was done before is forgotten.
  void begin(const models::ExerciseSetup& setup, const models::LoadedHead& head,
             std::shared_ptr<const geometry::RightAnswers> answers);
  /// Another try on the same head. Refuses (false) one more than the exercise, or a result's file, allows.
  bool again();
  [[nodiscard]] bool may_try_again() const;
  /// Leaves the exercise; nothing of it stays.
  void leave();

  [[nodiscard]] bool is_on() const { return answers_ != nullptr && !over_; }
  [[nodiscard]] bool is_over() const { return answers_ != nullptr && over_; }
  [[nodiscard]] const models::ExerciseSetup& setup() const { return setup_; }
  [[nodiscard]] const models::LoadedHead& loaded() const { return *loaded_; }
  [[nodiscard]] const geometry::RightAnswers& answers() const { return *answers_; }
  [[nodiscard]] const std::shared_ptr<const geometry::RightAnswers>& shared_answers() const {
    return answers_;
  }
  [[nodiscard]] const geometry::Head& head() const { return answers_->head; }

  // --- the task
  [[nodiscard]] geometry::Task task() const { return step().task; }
  [[nodiscard]] std::size_t task_index() const { return task_; }
  [[nodiscard]] const std::vector<geometry::Task>& tasks() const { return setup_.exercise.tasks; }
  [[nodiscard]] const geometry::Step& step() const { return step_; }
  void go_to_step(const geometry::Step& step);
  /// The next task; after the last one the try is over.
  void next_task();
  void previous_task();
  void finish();
  [[nodiscard]] const geometry::Attempt& attempt() const { return now_.attempt; }
  [[nodiscard]] bool is_done(const geometry::Step& step) const;
  /// Seconds left of the exercise's limit; empty without one.
  [[nodiscard]] std::optional<int> seconds_left() const;
  [[nodiscard]] std::optional<int> tries_left() const;
  /// All tries that are over, the oldest first, and how each scores.
  [[nodiscard]] const std::vector<geometry::Attempt>& attempts() const { return attempts_; }
  [[nodiscard]] const std::vector<geometry::Score>& scores() const { return scores_; }
  /// The same, with the one at hand if something was put down in it.
  [[nodiscard]] std::vector<geometry::Attempt> attempts_so_far() const;
  /// Something was put down that no file has.
  [[nodiscard]] bool has_unsaved() const;
  /// All of it is in a file now.
  void mark_saved() { saved_ = attempts_so_far(); }

  // --- what hands do; places are brought onto the skin
  /// What follows until end_deed() is taken back as one.
  void begin_deed();
  void end_deed() { in_deed_ = false; }
  /// Puts the tape's zero there, and pulls it from there.
  void start_tape(const Eigen::Vector3d& at);
  void pull_tape_to(const Eigen::Vector3d& at);
  /// A finger holds it where its end is; it is pulled on from there.
  void hold_tape();
  /// Around the head, back to its zero.
  void close_tape();
  void lift_tape();
  void draw(PencilKind kind, const Eigen::Vector3d& at, const Eigen::Vector3d& along);
  void lay_coil(const geometry::SurfacePoint& at);
  void turn_coil(double by_deg);
  /// The coil stays where it is; in a task that asks for it that is the answer.
  void put_coil_down();
  void take_coil_off();
  /// Puts the coil on the head, over the vertex, its handle backward.
  void take_coil();
  /// The sentence of a refusal; empty where there is none. Nothing typed takes the reading back.
  QString type_reading(const geometry::Step& step, std::optional<double> mm);
  void press_finger(const std::optional<Eigen::Vector3d>& at);

  [[nodiscard]] const std::optional<Tape>& tape() const { return now_.tape; }
  [[nodiscard]] const std::vector<Drawn>& drawn() const { return now_.drawn; }
  [[nodiscard]] const std::optional<CoilHere>& coil() const { return now_.coil; }
  struct Finger {
    Eigen::Vector3d at;
    geometry::Felt felt;
  };
  [[nodiscard]] const std::optional<Finger>& finger() const { return finger_; }

  [[nodiscard]] bool can_undo() const { return is_on() && !before_.empty(); }
  [[nodiscard]] bool can_redo() const { return is_on() && !after_.empty(); }
  void undo();
  void redo();

signals:
  /// Something on the head or in the answers is another.
  void changed();
  /// Another task or step is asked for.
  void step_changed();
  void begun();
  /// A try is over and scored.
  void over();
  /// A second of the limit went by.
  void ticked();

private:
  /// All that undo brings back.
  struct OnHead {
    std::vector<Drawn> drawn;
    std::optional<Tape> tape;
    std::optional<CoilHere> coil;
    geometry::Attempt attempt;
  };

  void start_try();
  void set_step(std::size_t task, const geometry::Step& step);
  void go_on_from(const geometry::Step& step);
  void stop_clock();
  void forget_redo();
  [[nodiscard]] std::vector<Eigen::Vector3d> held_points() const;
  void lay_tape(std::vector<Eigen::Vector3d> held_at, bool closed);
  [[nodiscard]] std::optional<geometry::Placement> placed_coil(const geometry::SurfacePoint& at,
                                                               double angle_deg) const;

  models::ExerciseSetup setup_;
  std::shared_ptr<const models::LoadedHead> loaded_;
  std::shared_ptr<const geometry::RightAnswers> answers_;
  bool over_ = false, in_deed_ = false;
  std::size_t task_ = 0;
  geometry::Step step_;
  OnHead now_;
  std::vector<OnHead> before_, after_;
  std::optional<Finger> finger_;
  std::vector<geometry::Attempt> attempts_, saved_;
  std::vector<geometry::Score> scores_;
  std::int64_t task_began_ms_ = 0, try_began_ms_ = 0;
  QTimer second_;
};

}  // namespace scalpmark::window
