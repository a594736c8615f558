#pragma once

#include <QPushButton>
#include <array>
#include <memory>
#include <optional>
#include <vector>

#include "geometry/hands/cap_veil.h"
#include "viewer/window/fields/number_field.h"
#include "viewer/window/session/session.h"
#include "viewer/window/steps/step.h"

namespace scalpmark::window {

/// Step 1: which head, and the three tape measures; what was measured beside what the head on the stage
/// measures; how high the cap's brim is to be.
class MeasureStep : public Step {
  Q_OBJECT
public:
  explicit MeasureStep(Session& session, QWidget* parent = nullptr);

  void show_case();
  [[nodiscard]] StageContent stage_content(const HeldCoil& coil) const override;
  void set_unit(LengthUnit unit);

  [[nodiscard]] LengthField* nasion_inion() const { return nasion_inion_; }
  [[nodiscard]] LengthField* tragus_tragus() const { return tragus_tragus_; }
  [[nodiscard]] LengthField* circumference() const { return circumference_; }
  [[nodiscard]] LengthField* brim() const { return brim_; }
  [[nodiscard]] QString brim_heights() const { return brim_heights_->text(); }
  [[nodiscard]] QPushButton* work_out() const { return work_out_; }
  [[nodiscard]] QPushButton* open_head() const { return open_head_; }

signals:
  void head_wanted();

private:
  LengthField* add_tape(const QString& name, const geometry::Range& allowed,
                        std::optional<double> geometry::MeasuredTapes::*which);

  /// The cap on the head in force, worked out when either is another.
  void put_cap_on();

  Session& session_;
  LengthUnit unit_ = LengthUnit::centimetre;
  QLabel *head_, *measured_, *brim_heights_;
  QPushButton *open_head_, *generic_head_, *work_out_;
  LengthField *nasion_inion_, *tragus_tragus_, *circumference_, *brim_;
  std::optional<geometry::Head> cap_on_head_;
  double cap_brim_mm_ = 0;
  std::shared_ptr<const geometry::CapVeil> cap_;  ///< none where this head takes no cap
  geometry::BrimHeights heights_;
  std::array<std::vector<Eigen::Vector3d>, 4> height_lines_;
  QString no_cap_;  ///< why
};

}  // namespace scalpmark::window
