#pragma once

#include <optional>

#include "geometry/base/message.h"
#include "geometry/exercise/score.h"
#include "geometry/exercise/steadiness.h"
#include "geometry/hands/tolerance.h"
#include "viewer/words/cap_words.h"

namespace scalpmark::viewer {

/// "Four points", "Nine marks", ...: a task as a heading.
[[nodiscard]] geometry::Message task_name(geometry::Task task);
/// "nasion", "nasion-inion tape", "spot 1 forward", "coil on given marks", ...: in a table or a sentence.
[[nodiscard]] geometry::Message step_name(const geometry::Step& step);
/// What to do, one or two sentences, with this case's lengths and angle: "From the vertex 5.0 cm along the
/// tape toward the left ear, then 1.0 cm forward. Mark the place."
[[nodiscard]] geometry::Message task_order(const geometry::RightAnswers& answers, geometry::Task task,
                                           const LengthInWords& length = tape_length);
/// Of find_again: "8.3 cm from the vertex, 11.3 cm from the nasion, ...".
[[nodiscard]] geometry::Message written_distances(const geometry::TapeReadings& written,
                                                  const LengthInWords& length = tape_length);

/// "6.2 mm: 6.0 forward, 1.5 outward, 3 degrees too far toward the midline"; of a reading "4.0 mm too long".
[[nodiscard]] geometry::Message offset_in_words(const geometry::Step& step, const geometry::Offset& offset);

/// One sentence on the habit to mend, from the step with the largest own error; says so where there is none.
[[nodiscard]] geometry::Message habit_to_mend(const geometry::RightAnswers& answers,
                                              const geometry::Score& score);
/// The pulse at the end: wanted against real, and whether hands on this head do as well.
[[nodiscard]] geometry::Message pulse_sentence(const geometry::PulseScore& pulse,
                                               const geometry::Tolerance* hands);
/// Right, steady, both or neither, of the step that needs it most; says so where there are too few tries.
[[nodiscard]] geometry::Message steadiness_sentence(const std::vector<geometry::Steadiness>& steps);

/// What trained people do at such a step, with its source; empty where none is known.
[[nodiscard]] std::optional<geometry::Message> trained_people(const geometry::Step& step);
/// The same of the pulse and the coil's angle at the end.
[[nodiscard]] geometry::Message trained_pulse();
/// How far off careful hands are on this head, by what tolerance() says.
[[nodiscard]] geometry::Message hands_sentence(const geometry::Tolerance& hands);

/// That this is an exercise and no certificate of anything.
[[nodiscard]] geometry::Message not_a_certificate();

}  // namespace scalpmark::viewer
