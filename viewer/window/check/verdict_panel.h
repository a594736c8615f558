#pragma once

#include <QLabel>
#include <QWidget>
#include <optional>

#include "geometry/hands/check.h"
#include "viewer/window/steps/worksheet.h"

namespace scalpmark::window {

/// The verdict in type that can be read from two metres.
class VerdictPanel : public QWidget {
  Q_OBJECT
public:
  explicit VerdictPanel(QWidget* parent = nullptr);
  /// `doubt`: as verdict_text takes it.
  void show_check(const std::optional<geometry::Check>& check, const QString& problem,
                  const QString& doubt = {});

private:
  QLabel *headline_, *pulse_, *angle_, *reason_;
};

/// What Check mode puts on the stage: the check step, whichever step the worksheet is open at.
[[nodiscard]] StageContent check_content(const Worksheet& worksheet, const HeldCoil& coil);

}  // namespace scalpmark::window
