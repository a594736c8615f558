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
/// Without a check, what is still missing.
[[nodiscard]] VerdictText verdict_text(const std::optional<geometry::Check>& check);

}  // namespace scalpmark::window
