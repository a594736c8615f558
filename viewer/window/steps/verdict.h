#pragma once

#include <QString>
#include <optional>

#include "geometry/hands/check.h"
#include "geometry/hands/tolerance.h"
#include "viewer/window/fields/length_text.h"

namespace scalpmark::window {

/// A check in words.
struct VerdictText {
  enum class Kind { none, agrees, move, unsure };
  Kind kind = Kind::none;
  QString headline;  ///< "The marks agree with the plan", "Move the coil"
  QString pulse, angle, reason;
  QString by_hand;  ///< what that does not promise; empty while it is not known
};
/// Without a check, what is still missing, or `problem`: why the marks fit no coil. `doubt`: why the marks
/// are not known well enough for a verdict, or nothing. `by_hand`: how far off hands are, once it is known.
[[nodiscard]] VerdictText verdict_text(const std::optional<geometry::Check>& check,
                                       const QString& problem = {}, const QString& doubt = {},
                                       const geometry::Tolerance* by_hand = nullptr,
                                       LengthUnit unit = LengthUnit::centimetre);

}  // namespace scalpmark::window
