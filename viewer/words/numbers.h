#pragma once

#include <string>

namespace scalpmark::viewer {

/// What lengths are shown in, everywhere: on the stage, in sentences, on the sheet. Inside the program every
/// length is mm.
enum class LengthUnit { centimetre, inch };

/// For the whole program, as the language is. Centimetres until inches are chosen.
void set_length_unit(LengthUnit unit);
[[nodiscard]] LengthUnit length_unit();

/// A length as read from a tape: "5.0 cm", "1.97 in".
[[nodiscard]] std::string tape_length(double mm);
/// The same without its unit: "5.0".
[[nodiscard]] std::string tape_number(double mm);
/// Half of what a tape read, not rounded again: half of 34.5 cm is "17.25 cm".
[[nodiscard]] std::string half_of_tape(double mm);
/// "cm", "in".
[[nodiscard]] std::string tape_unit();
/// One of them within a sentence, where "in" could be taken for another word: "cm", "inch".
[[nodiscard]] std::string one_tape_unit();
/// Gaps, which no tape measures: "14.7 mm", "0.58 in".
[[nodiscard]] std::string small_length(double mm);
/// The same without its unit: "14.7".
[[nodiscard]] std::string small_number(double mm);
/// "mm", "in".
[[nodiscard]] std::string small_unit();
/// What is known to a millimetre at best, such as a depth: "20 mm", "0.8 in"; and without its unit.
[[nodiscard]] std::string rough_length(double mm);
[[nodiscard]] std::string rough_number(double mm);
/// From one long tick of a tape to the next, mm: a centimetre, an inch.
[[nodiscard]] double tape_tick_mm();
/// "45" and the degree sign; whole degrees.
[[nodiscard]] std::string in_degrees(double deg);
/// A coil's angle: "45° to the midline", "43° away from the midline" where it is negative.
[[nodiscard]] std::string coil_angle(double deg);

}  // namespace scalpmark::viewer
