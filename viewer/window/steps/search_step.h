#pragma once

#include <QComboBox>
#include <QLabel>

#include "viewer/window/fields/choice.h"
#include "viewer/window/fields/number_field.h"
#include "viewer/window/fields/spot_pad.h"
#include "viewer/window/session/session.h"
#include "viewer/window/steps/rules_picture.h"
#include "viewer/window/steps/step.h"

namespace scalpmark::window {

/// Step 3: side, offsets, grid, coil; and the coil laid on any spot.
class SearchStep : public Step {
  Q_OBJECT
public:
  explicit SearchStep(Session& session, QWidget* parent = nullptr);

  void show_case();
  [[nodiscard]] StageContent stage_content(const HeldCoil& coil) const override;
  void set_unit(LengthUnit unit);
  /// The spot the coil is on, if any.
  void show_coil(const HeldCoil& coil);

  [[nodiscard]] Choice* side() const { return side_; }
  [[nodiscard]] LengthField* lateral() const { return lateral_; }
  [[nodiscard]] LengthField* anterior() const { return anterior_; }
  [[nodiscard]] LengthField* pitch() const { return pitch_; }
  [[nodiscard]] Choice* grid_on() const { return grid_on_; }
  [[nodiscard]] QComboBox* coil() const { return coil_; }
  [[nodiscard]] AngleField* angle() const { return angle_; }
  [[nodiscard]] LengthField* centre_to_edge() const { return centre_to_edge_; }
  [[nodiscard]] LengthField* lift() const { return lift_; }
  [[nodiscard]] Choice* drawn_by() const { return drawn_by_; }
  [[nodiscard]] Choice* laid_by() const { return laid_by_; }
  /// What to do where the coil has its pulse away from the point measured; empty elsewhere.
  [[nodiscard]] QString shift_note() const;
  [[nodiscard]] RulesPicture* rules() const { return rules_; }
  [[nodiscard]] SpotPad* spots() const { return spots_; }
  /// Takes the spot that the coil is on as the hotspot.
  [[nodiscard]] QPushButton* answered() const { return answered_; }

signals:
  void spot_wanted(int row, int column);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void add_coils();
  void add_pad();
  void add_rules();
  void show_rules(const HeldCoil& coil);
  void connect_fields();
  LengthField* add_length(const QString& name, const geometry::Range& allowed,
                          std::function<double&(geometry::Case&)> setting);
  void show_answered();
  void change(const QString& what, const std::function<void(models::CaseFile&)>& edit);

  Session& session_;
  LengthUnit unit_ = LengthUnit::centimetre;
  Choice *side_, *grid_on_, *drawn_by_, *laid_by_;
  LengthField *lateral_, *anterior_, *pitch_, *centre_to_edge_, *lift_;
  QComboBox* coil_;
  QLabel *coil_note_, *shift_note_;
  AngleField* angle_;
  RulesPicture* rules_;
  SpotPad* spots_;
  QPushButton* answered_;
  std::optional<geometry::GridPosition> tried_;  ///< the spot that the coil is on
};

}  // namespace scalpmark::window
