#pragma once

#include <string>
#include <vector>

namespace scalpmark::viewer {

// Words that come out of data files, in the language of the desktop; English where nobody has translated
// them.

/// A shipped coil's title or note.
[[nodiscard]] std::string coil_text(const std::string& english);

/// A region of the brain as the atlases name it: "Brodmann area 9", "left middle frontal gyrus".
[[nodiscard]] std::string region_text(const std::string& english);

/// What translators are shown of both, for a test that nothing shipped is missing.
[[nodiscard]] std::vector<std::string> translatable_data();

}  // namespace scalpmark::viewer
