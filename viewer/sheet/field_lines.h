#pragma once

#include "viewer/sheet/content.h"

namespace scalpmark::viewer {

/// The induced field at the treatment site in three lines, rounded and as the model's: in a round model head,
/// 2 cm under its skin. Without rows where no field is known.
[[nodiscard]] SheetTable field_lines(const geometry::Head& head, const geometry::Case& the_case,
                                     const geometry::Plan& plan);

}  // namespace scalpmark::viewer
