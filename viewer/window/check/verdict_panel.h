#pragma once

#include <QLabel>
#include <QWidget>

#include "viewer/window/steps/verdict.h"
#include "viewer/window/steps/worksheet.h"

namespace scalpmark::window {

/// The verdict in type that can be read from two metres, in no more height than it needs: the head above it
/// is what one looks at.
class VerdictPanel : public QWidget {
  Q_OBJECT
public:
  explicit VerdictPanel(QWidget* parent = nullptr);
  void show_verdict(const VerdictText& text);
  /// Thrown on a wall, in letters larger still.
  void set_projected(bool projected);

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  void size_type();

  bool projected_ = false;
  QLabel *headline_, *pulse_, *angle_, *reason_, *by_hand_;
};

/// What Check mode puts on the stage: the check step, whichever step the worksheet is open at.
[[nodiscard]] StageContent check_content(const Worksheet& worksheet, const HeldCoil& coil);

}  // namespace scalpmark::window
