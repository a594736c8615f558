#pragma once

#include <QString>
#include <functional>
#include <optional>
#include <string>

#include "geometry/base/ranges.h"
#include "viewer/words/numbers.h"

namespace scalpmark::window {

using viewer::LengthUnit;

/// "cm", "in".
[[nodiscard]] QString unit_name(LengthUnit unit);

/// As read off a tape, without the unit: centimetres with one decimal, inches with two.
[[nodiscard]] QString length_text(double mm, LengthUnit unit);

/// With the unit: "36.2 cm".
[[nodiscard]] QString length_with_unit(double mm, LengthUnit unit);

/// The same, for whoever makes sentences of lengths (viewer/words).
[[nodiscard]] std::function<std::string(double mm)> in_unit(LengthUnit unit);

/// What was typed into a length field: a length, nothing, or a sentence that says what is wrong with it.
struct LengthReading {
  std::optional<double> mm;
  QString problem;  ///< empty when the entry can be used
};

/// Reads a length typed in `unit`: a decimal point or comma, an optional unit of its own (mm, cm, in, "),
/// fractions of an inch ("14 1/4"). An empty entry is neither a length nor a problem. `name` and `allowed`
/// (mm) go into the sentence.
[[nodiscard]] LengthReading read_length(const QString& typed, LengthUnit unit, const geometry::Range& allowed,
                                        const QString& name);

/// The same for an angle in whole degrees. `degrees` is empty for an empty entry.
struct AngleReading {
  std::optional<double> degrees;
  QString problem;
};
[[nodiscard]] AngleReading read_angle(const QString& typed, const geometry::Range& allowed,
                                      const QString& name);

}  // namespace scalpmark::window
