#pragma once

#include <QListWidget>

#include "viewer/window/session/pulse_log.h"

namespace scalpmark::window {

/// The pulses of the visit shown, the last on top. The keys 0 to 3 correct the answer of the chosen one; what
/// was noted first stays in its row.
class PulseList : public QListWidget {
  Q_OBJECT
public:
  explicit PulseList(PulseLog& log, QWidget* parent = nullptr);
  void show_log();

signals:
  void refused(const QString& sentence);

protected:
  void keyPressEvent(QKeyEvent* event) override;

private:
  PulseLog& log_;
};

}  // namespace scalpmark::window
