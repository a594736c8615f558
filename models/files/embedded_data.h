#pragma once

#include <string_view>
#include <vector>

namespace scalpmark::models {

/// A data file compiled into the program.
struct EmbeddedFile {
  std::string_view name;  ///< "data/coils/figure-8-70.json"
  std::string_view text;
};

[[nodiscard]] std::vector<EmbeddedFile> embedded_files();

}  // namespace scalpmark::models
