#pragma once

#include <string>
#include <vector>

#include "viewer/page/page_data.h"

namespace scalpmark::viewer {

// What can be touched in a page, as HTML; what it does is its script's.

/// Whether a page has a person's own skin in it.
[[nodiscard]] bool shows_person_of(const HeadOfPage& head);

/// The head, and buttons to look at it from all sides.
[[nodiscard]] std::string stage_html(Face face);
/// A technician's choice of what is looked at; nothing for others, who go step by step.
[[nodiscard]] std::string scene_buttons(const std::vector<PageDrawn>& scenes, Face face);
[[nodiscard]] std::string step_buttons();
/// The numbers of the marks, one at a time: what opens it, and it.
[[nodiscard]] std::string next_mark_button();
[[nodiscard]] std::string next_mark_html();
[[nodiscard]] std::string move_coil_html();
/// Today's marks by their tapes; where the plan has no edge mark, a sentence in its place.
[[nodiscard]] std::string check_html(bool has_edge_mark);

}  // namespace scalpmark::viewer
