#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <string>

#include "viewer/window/fields/choice.h"
#include "viewer/window/fields/number_field.h"
#include "viewer/window/fields/spot_pad.h"
#include "viewer/window/session/session.h"
#include "viewer/window/steps/gap_panel.h"
#include "viewer/window/steps/step.h"

namespace scalpmark::window {

/// Step 5: the spot that answered, and where from there the treatment goes; other sites with their distances.
class SiteStep : public Step {
  Q_OBJECT
public:
  explicit SiteStep(Session& session, QWidget* parent = nullptr);

  void show_case();
  [[nodiscard]] StageContent stage_content(const HeldCoil& coil) const override;
  void set_unit(LengthUnit unit);

  [[nodiscard]] SpotPad* hotspot() const { return hotspot_; }
  [[nodiscard]] QString hotspot_heading() const { return hotspot_heading_->text(); }
  [[nodiscard]] Choice* rule() const { return rule_; }
  [[nodiscard]] Choice* drawn_by() const { return drawn_by_; }
  /// Shown while a landmark of the other side waits to be confirmed.
  [[nodiscard]] QPushButton* other_side() const { return other_side_; }
  [[nodiscard]] LengthField* distance() const { return distance_; }
  [[nodiscard]] QLineEdit* label() const { return label_; }
  [[nodiscard]] GapPanel* gaps() const { return gaps_; }
  [[nodiscard]] QTableWidget* alternatives() const { return alternatives_; }

signals:
  /// Another site is picked in the list, to be named on the stage.
  void other_site_named();

private:
  void add_label();
  void add_alternatives();
  void connect_fields();
  void take_label(bool by_key);
  void ask_about_side(const std::string& label);
  void choose_label(std::string label);

  Session& session_;
  LengthUnit unit_ = LengthUnit::centimetre;
  QLabel* hotspot_heading_;
  SpotPad* hotspot_;
  Choice *rule_, *drawn_by_;
  QLabel* shift_note_;
  LengthField* distance_;
  QWidget* label_row_;
  QLineEdit* label_;
  QPushButton* other_side_;
  std::string waiting_;  ///< the landmark of the other side that waits
  QTableWidget* alternatives_;
  GapPanel* gaps_;
};

}  // namespace scalpmark::window
