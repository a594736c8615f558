#pragma once

#include <string>
#include <vector>

namespace scalpmark::models {

/// Names of the regions of the template's gyrus atlas by number, from the atlas's own label text (a line a
/// region: number, short name, code), spelt out for people: "Frontal_Mid_L" becomes "left middle frontal
/// gyrus". A short name not known here keeps its words. The regions are those of Tzourio-Mazoyer et al. 2002,
/// NeuroImage 15:273-289 (memory). Refuses (ModelError, `name` says where) text without a line it can read.
[[nodiscard]] std::vector<std::string> gyrus_names(const std::string& text, const std::string& name);

}  // namespace scalpmark::models
