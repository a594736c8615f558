#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <optional>

#include "viewer/window/fields/length_text.h"
#include "viewer/window/session/session.h"
#include "viewer/window/session/undo_list.h"

namespace scalpmark::window {

/// Over the stage while the tapes of the case do not fit the scan that is its head: whose head is it? Stays
/// until it is answered, wherever the worksheet is; no sheet leaves before.
class TapesQuestion : public QWidget {
  Q_OBJECT
public:
  TapesQuestion(Session& session, UndoList& undo, QWidget* parent = nullptr);

  void show_case();
  void set_unit(LengthUnit unit);
  [[nodiscard]] bool is_open() const { return open_; }
  [[nodiscard]] QString text() const { return open_ ? text_->text() : QString(); }
  [[nodiscard]] QPushButton* keep() const { return keep_; }
  [[nodiscard]] QPushButton* take_out() const { return take_out_; }
  [[nodiscard]] QPushButton* back() const { return back_; }

private:
  Session& session_;
  UndoList& undo_;
  LengthUnit unit_ = LengthUnit::centimetre;
  QLabel* text_;
  QPushButton *keep_, *take_out_, *back_;
  bool open_ = false;
  /// What was answered with "the same person's".
  std::optional<geometry::MeasuredTapes> kept_;
  std::optional<geometry::Head> kept_on_;
};

}  // namespace scalpmark::window
