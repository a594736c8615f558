#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <array>

#include "viewer/window/session/pulse_log.h"
#include "viewer/window/steps/pulse_pad.h"

namespace scalpmark::window {

/// Where pulses are logged with one hand, in type that can be read from two metres: the spot and the output
/// at hand, the spots, and what was seen. Keys while it has the focus: 0 none, 1 thumb, 2 index finger, 3
/// other; up and down the output, with Shift finely; left and right the spot; Backspace takes the last pulse
/// back.
class PulsePanel : public QWidget {
  Q_OBJECT
public:
  PulsePanel(Session& session, PulseLog& log, QWidget* parent = nullptr);

  void show_log();
  [[nodiscard]] PulsePad* pad() const { return pad_; }
  [[nodiscard]] QPushButton* answer_button(geometry::SeenAnswer answer) const {
    return answers_[static_cast<std::size_t>(answer)];
  }
  [[nodiscard]] QLabel* spot_label() const { return spot_; }
  [[nodiscard]] QLabel* output_label() const { return output_; }
  [[nodiscard]] QPushButton* back_button() const { return back_; }

  /// The answer a digit stands for.
  [[nodiscard]] static std::optional<geometry::SeenAnswer> answer_for(int key);

signals:
  void refused(const QString& sentence);

protected:
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

private:
  QWidget* make_readings();
  QWidget* make_answers();
  void log(geometry::SeenAnswer answer);

  Session& session_;
  PulseLog& log_;
  PulsePad* pad_;
  QLabel *spot_, *output_, *last_;
  std::array<QPushButton*, 4> answers_{};
  QPushButton* back_;
};

}  // namespace scalpmark::window
