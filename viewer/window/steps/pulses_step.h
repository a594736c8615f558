#pragma once

#include <QComboBox>
#include <QLineEdit>

#include "viewer/window/session/pulse_log.h"
#include "viewer/window/steps/answer_settings.h"
#include "viewer/window/steps/pulse_list.h"
#include "viewer/window/steps/pulse_panel.h"
#include "viewer/window/steps/step.h"
#include "viewer/window/steps/threshold_panel.h"

namespace scalpmark::window {

/// Step 4: pulses and what was seen of the hand, what that says of the spot, and the threshold.
class PulsesStep : public Step {
  Q_OBJECT
public:
  PulsesStep(Session& session, PulseLog& log, QWidget* parent = nullptr);

  void show_case();
  [[nodiscard]] StageContent stage_content(const HeldCoil& coil) const override;
  /// Where the keys for logging go.
  void take_keys() { panel_->setFocus(Qt::OtherFocusReason); }

  [[nodiscard]] QComboBox* visits() const { return visits_; }
  [[nodiscard]] QLineEdit* by() const { return by_; }
  [[nodiscard]] PulsePanel* panel() const { return panel_; }
  [[nodiscard]] PulseList* list() const { return list_; }
  [[nodiscard]] ThresholdPanel* threshold() const { return threshold_; }
  [[nodiscard]] AnswerSettingsFields* settings() const { return settings_; }
  [[nodiscard]] QPushButton* take_best() const { return take_best_; }
  [[nodiscard]] QPushButton* take_centre() const { return take_centre_; }
  [[nodiscard]] QPushButton* to_telling() const { return to_telling_; }
  [[nodiscard]] QString best_text() const { return best_->text(); }
  [[nodiscard]] QString centre_text() const { return centre_->text(); }

private:
  void add_visit_row();
  void add_place();
  void show_visits();
  void show_place();
  void take_hotspot(const geometry::GridPosition& spot, const geometry::HotspotOffGrid& off_grid);
  [[nodiscard]] static geometry::GridPosition offered(const QPushButton* button);
  void offer(QPushButton* button, const std::optional<geometry::GridPosition>& spot, const QString& text);

  Session& session_;
  PulseLog& log_;
  QComboBox* visits_;
  QLineEdit* by_;
  PulsePanel* panel_;
  PulseList* list_;
  QLabel *best_, *centre_;
  QPushButton *take_best_, *take_centre_, *to_telling_;
  ThresholdPanel* threshold_;
  AnswerSettingsFields* settings_;
};

}  // namespace scalpmark::window
