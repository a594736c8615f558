#pragma once

#include <optional>
#include <vector>

#include "geometry/base/message.h"
#include "geometry/field/coil_field.h"
#include "geometry/field/moved_coil.h"

namespace scalpmark::viewer {

/// "In a round model head (radius 8.9 cm, ...)": what is said before anything else of a field.
[[nodiscard]] geometry::Message round_head_sentence(const geometry::CoilField& field);
/// Where it is strongest, and how large the patches are.
[[nodiscard]] geometry::Message patch_sentence(const geometry::CoilField& field);
/// The same in few words, for the stage.
[[nodiscard]] geometry::Message field_remark(const geometry::CoilField& field);
/// How large that is, as things of every day are: "a walnut".
[[nodiscard]] geometry::Message size_of_patch(double cm2);
/// Whether it is strongest in a ring around the coil's axis, as under a round coil.
[[nodiscard]] bool is_ring(const geometry::FieldMap& map);
/// Along which line it runs.
[[nodiscard]] geometry::Message field_line_sentence(const geometry::FieldMap& map);
/// What a gap leaves of it, beside what was measured.
[[nodiscard]] geometry::Message gap_loss_sentence(const std::vector<geometry::MovedRatio>& moved);
/// All of these, in this order.
[[nodiscard]] std::vector<geometry::Message> field_sentences(const geometry::CoilField& field,
                                                             const std::vector<geometry::MovedRatio>& moved);
/// That it is no dose and nobody's own field.
[[nodiscard]] geometry::Message field_caution();

/// What is left for a way of moving: empty where it was not worked out.
[[nodiscard]] std::optional<double> ratio_of(const std::vector<geometry::MovedRatio>& moved,
                                             geometry::CoilMoved how, double by);

}  // namespace scalpmark::viewer
