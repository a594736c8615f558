#pragma once

#include <QButtonGroup>
#include <QCheckBox>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>
#include <array>

#include "viewer/window/fields/number_field.h"
#include "viewer/window/jobs/hand_tolerance.h"
#include "viewer/window/session/session.h"

namespace scalpmark::window {

/// "By hand, how far off?": folded away until it is asked for. How far off the pulse could be when the case
/// is measured, marked and laid by hand; the one habit that would shrink it most; what strips of paper gain;
/// and the errors it rests on, to be changed.
class TolerancePanel : public QWidget {
  Q_OBJECT
public:
  explicit TolerancePanel(Session& session, QWidget* parent = nullptr);

  void show_case();
  void set_unit(LengthUnit unit);
  void show_tolerance(const HandTolerance& tolerance);

  [[nodiscard]] bool is_open() const { return fold_->isChecked(); }
  /// Whether the regions are to be drawn.
  [[nodiscard]] bool on_head() const { return is_open() && on_head_->isChecked(); }

  [[nodiscard]] QPushButton* fold() const { return fold_; }
  [[nodiscard]] QCheckBox* on_head_box() const { return on_head_; }
  [[nodiscard]] QPushButton* stop() const { return stop_; }
  [[nodiscard]] QLabel* result() const { return result_; }
  [[nodiscard]] QString text() const { return result_->text(); }
  /// The way to mark that is chosen; nothing before any was compared.
  [[nodiscard]] std::optional<geometry::MarkingWay> way() const;
  /// Worst to best.
  [[nodiscard]] QRadioButton* way_button(int index) const;
  /// In the order of HandErrors.
  [[nodiscard]] NumberField* error(std::size_t index) const { return errors_[index]; }

signals:
  /// Opened, closed, the regions switched, or another way to mark chosen.
  void wanted();
  void stopped();
  void again();

private:
  void add_errors(QVBoxLayout& into);
  void add_ways(QVBoxLayout& into);
  void show_result();
  void show_ways();

  Session& session_;
  LengthUnit unit_ = LengthUnit::centimetre;
  std::shared_ptr<const geometry::Tolerance> shown_;
  std::shared_ptr<const geometry::WithStrips> strips_;
  bool shown_working_ = false;
  QString problem_;
  QPushButton *fold_, *stop_, *usual_;
  QWidget *body_, *work_row_;
  QCheckBox* on_head_;
  QLabel* result_;
  QProgressBar* progress_;
  std::array<NumberField*, 10> errors_{};
  QLabel *ways_heading_, *left_out_;
  std::optional<geometry::MarkingWay> way_picked_;
  QButtonGroup* ways_;
};

}  // namespace scalpmark::window
