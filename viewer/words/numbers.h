#pragma once

#include <string>

namespace scalpmark::viewer {

/// A length as read from a tape: "5.0 cm".
[[nodiscard]] std::string in_cm(double mm);
/// The same without its unit: "5.0".
[[nodiscard]] std::string cm(double mm);
/// "14.7 mm": gaps, which no tape measures.
[[nodiscard]] std::string in_mm(double mm);
/// The same without its unit: "14.7".
[[nodiscard]] std::string millimetres(double mm);
/// "45" and the degree sign; whole degrees.
[[nodiscard]] std::string in_degrees(double deg);

}  // namespace scalpmark::viewer
