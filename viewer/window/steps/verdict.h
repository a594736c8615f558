#pragma once

#include <QLabel>
#include <QWidget>
#include <optional>

#include "geometry/hands/check.h"

namespace scalpmark::window {

/// A check in words.
struct VerdictText {
  QString headline;  ///< "On the site", "Move the coil"
  QString pulse, angle, reason;
  bool good = false;
};
/// Without a check, what is still missing.
[[nodiscard]] VerdictText verdict_text(const std::optional<geometry::Check>& check);

/// The verdict in type that can be read from two metres.
class VerdictPanel : public QWidget {
  Q_OBJECT
public:
  explicit VerdictPanel(QWidget* parent = nullptr);
  void show_check(const std::optional<geometry::Check>& check, const QString& problem);

private:
  QLabel *headline_, *pulse_, *angle_, *reason_;
};

}  // namespace scalpmark::window
