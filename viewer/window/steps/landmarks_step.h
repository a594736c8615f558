#pragma once

#include <QLineEdit>
#include <QPushButton>
#include <array>
#include <memory>
#include <vector>

#include "geometry/head/landmarks.h"
#include "viewer/window/fields/choice.h"
#include "viewer/window/session/session.h"
#include "viewer/window/steps/step.h"

namespace scalpmark::window {

/// Step 2: which landmarks are shown, one found by its label; on a scan or MRI, the four points placed by
/// clicks.
class LandmarksStep : public Step {
  Q_OBJECT
public:
  explicit LandmarksStep(Session& session, QWidget* parent = nullptr);

  void show_case();
  [[nodiscard]] StageContent stage_content(const HeldCoil& coil) const override;
  [[nodiscard]] geometry::LandmarkSystem system() const { return system_; }
  /// The label that was found last, or nothing.
  [[nodiscard]] const std::optional<geometry::Landmark>& found() const { return found_; }

  /// Turned until it faces the eye, up staying up.
  [[nodiscard]] viewer::Gaze gaze_at_found() const;

  /// The point that the next click on the bare skin places.
  [[nodiscard]] Fiducial wanted() const { return wanted_; }
  void want(Fiducial which);

  [[nodiscard]] QLineEdit* find() const { return find_; }
  [[nodiscard]] QPushButton* guess() const { return guess_; }
  [[nodiscard]] QPushButton* confirm() const { return confirm_; }
  void show_guessing(bool on);
  /// The landmark's tape distances; empty while none is found.
  [[nodiscard]] QString found_tapes() const { return found_ ? found_tapes_->text() : QString(); }
  [[nodiscard]] Choice* systems() const { return systems_; }
  [[nodiscard]] QPushButton* use_points() const { return use_points_; }
  [[nodiscard]] QPushButton* other_way_up() const { return other_way_up_; }
  [[nodiscard]] QPushButton* point_button(Fiducial which) const {
    return points_[static_cast<std::size_t>(which)];
  }

signals:
  void system_chosen();
  void guess_wanted();
  /// The guess of the wanted point is right as it is.
  void confirmed();
  void landmark_found();
  void fiducial_wanted();
  void turn_wanted();

private:
  void build_known();
  void build_placing();
  void look_for(const QString& label);
  void show_tapes_to_found();
  void show_points();

  Session& session_;
  geometry::LandmarkSystem system_ = geometry::LandmarkSystem::ten_ten;
  std::optional<geometry::Landmark> found_;
  /// Those of the system, while it is not the plan's own and head and system stay as they are.
  mutable std::shared_ptr<const std::vector<geometry::Landmark>> landmarks_;
  Fiducial wanted_ = Fiducial::nasion;
  Choice* systems_;
  QWidget *known_, *placing_;
  QLineEdit* find_;
  QLabel* found_text_;
  QLabel* found_tapes_;
  QLabel* place_text_;
  std::array<QPushButton*, 4> points_{};
  QPushButton *other_way_up_, *use_points_, *give_up_, *move_points_;
  QPushButton *guess_, *confirm_;
};

}  // namespace scalpmark::window
