#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "viewer/page/face.h"

namespace scalpmark::viewer {

/// What a page's script says, by short names, in the language the program's texts are in.
[[nodiscard]] nlohmann::ordered_json page_words(Face face);

/// How a page's script writes lengths as words/numbers does: so many mm to the unit, decimals, what stands
/// before those, and "%1 cm".
[[nodiscard]] nlohmann::ordered_json length_formats();

/// Those of the patterns that have another wording in that language.
[[nodiscard]] nlohmann::ordered_json translated_patterns(const std::vector<std::string>& patterns);

}  // namespace scalpmark::viewer
