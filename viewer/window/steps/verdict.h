#pragma once

#include <QString>
#include <optional>

#include "geometry/hands/check.h"

namespace scalpmark::window {

/// A check in words.
struct VerdictText {
  QString headline;  ///< "On the site", "Move the coil"
  QString pulse, angle, reason;
  bool good = false;
};
/// Without a check, what is still missing. `doubt`: why the marks are not known well enough for a verdict, or
/// nothing.
[[nodiscard]] VerdictText verdict_text(const std::optional<geometry::Check>& check,
                                       const QString& doubt = {});

}  // namespace scalpmark::window
