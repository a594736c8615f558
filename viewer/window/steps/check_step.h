#pragma once

#include <QCheckBox>
#include <QPushButton>
#include <array>
#include <memory>

#include "viewer/window/fields/number_field.h"
#include "viewer/window/session/pulse_log.h"
#include "viewer/window/session/visit.h"
#include "viewer/window/steps/cap_fields.h"
#include "viewer/window/steps/gap_panel.h"
#include "viewer/window/steps/place_choice.h"
#include "viewer/window/steps/step.h"
#include "viewer/window/steps/tolerance_panel.h"
#include "viewer/window/steps/verdict.h"

namespace scalpmark::window {

/// Step 6: where today's site mark and edge mark are, and whether the coil laid by them is where the plan
/// wants it.
class CheckStep : public Step {
  Q_OBJECT
public:
  CheckStep(Session& session, Visit& visit, PulseLog& log, QWidget* parent = nullptr);

  void show_case();
  [[nodiscard]] StageContent stage_content(const HeldCoil& coil) const override;
  void set_unit(LengthUnit unit);
  /// The mark that the next click on the head sets; nothing when clicks are not asked for.
  [[nodiscard]] const std::optional<TodaysMark>& wanted() const { return wanted_; }
  void want(std::optional<TodaysMark> which);

  [[nodiscard]] QPushButton* click_button(TodaysMark which) const { return entry(which).click; }
  [[nodiscard]] QPushButton* tape_button(TodaysMark which) const { return entry(which).by_tape; }
  /// From vertex, nasion, left tragus, right tragus.
  [[nodiscard]] LengthField* tape(TodaysMark which, std::size_t index) const {
    return entry(which).tapes[index];
  }
  /// The check in words, as it is on this step and, larger, in Check mode.
  [[nodiscard]] VerdictText verdict() const;
  [[nodiscard]] QLabel* verdict_label() const { return verdict_; }
  /// How far off hands are, beside the verdict; nothing while it is not known.
  void show_by_hand(std::shared_ptr<const geometry::Tolerance> by_hand);
  [[nodiscard]] PlaceChoice* places(TodaysMark which) const { return entry(which).places; }
  /// Whether a place is to be chosen that the last call was not told of: the stage has to turn to it.
  [[nodiscard]] bool shows_new_question();
  [[nodiscard]] GapPanel* gaps() const { return gaps_; }
  [[nodiscard]] TolerancePanel* tolerance() const { return tolerance_; }
  [[nodiscard]] LengthField* pulse_limit() const { return pulse_limit_; }
  [[nodiscard]] CapFields* cap() const { return cap_; }
  [[nodiscard]] QPushButton* keep_button() const { return keep_; }
  [[nodiscard]] QCheckBox* marked_anew() const { return anew_; }
  [[nodiscard]] AngleField* angle_limit() const { return angle_limit_; }
  [[nodiscard]] QPushButton* careful_button() const { return careful_; }
  [[nodiscard]] QLabel* limits_from() const { return limits_from_; }

signals:
  void point_wanted();

private:
  struct Entry {
    QPushButton *click = nullptr, *by_tape = nullptr;
    QWidget* tape_rows = nullptr;
    std::array<LengthField*, 4> tapes{};
    PlaceChoice* places = nullptr;
  };
  [[nodiscard]] const Entry& entry(TodaysMark which) const {
    return entries_[static_cast<std::size_t>(which)];
  }
  void show_verdict();
  /// Says where the limits come from.
  void show_limits();
  /// To those that careful hands meet, or back to the strict ones.
  void switch_limits();
  void add_entry(TodaysMark which, const QString& name);
  void add_keys();
  void show_places(StageContent& content) const;
  void add_keeping();
  void show_keeping();
  /// Today's marks and brim go into today's visit.
  void keep();

  Session& session_;
  Visit& visit_;
  PulseLog& log_;
  LengthUnit unit_ = LengthUnit::centimetre;
  std::shared_ptr<const geometry::Tolerance> by_hand_;
  std::optional<TodaysMark> wanted_, asked_;
  std::array<Entry, 2> entries_;
  CapFields* cap_;
  QPushButton *forget_, *careful_, *keep_;
  QCheckBox* anew_;
  bool keeps_when_measured_ = false;
  QLabel* limits_from_;
  std::optional<geometry::CheckLimits> careful_limits_;  ///< of the case beside
  std::optional<geometry::Case> careful_for_;
  QLabel* verdict_;
  LengthField* pulse_limit_;
  AngleField* angle_limit_;
  GapPanel* gaps_;
  TolerancePanel* tolerance_;
};

}  // namespace scalpmark::window
