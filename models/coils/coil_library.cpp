#include "models/coils/coil_library.h"

#include <algorithm>

#include "models/coils/coil_file.h"
#include "models/files/embedded_data.h"
#include "models/files/error.h"

namespace scalpmark::models {

const std::vector<geometry::Coil>& coils() {
  static const std::vector<geometry::Coil> all = [] {
    std::vector<geometry::Coil> read;
    for (const EmbeddedFile& file : embedded_files())
      if (file.name.starts_with("data/coils/")) read.push_back(parse_coil(file.text, std::string(file.name)));
    return read;
  }();
  return all;
}

const geometry::Coil& coil(const std::string& model) {
  const auto found =
      std::find_if(coils().begin(), coils().end(), [&](const auto& c) { return c.model == model; });
  if (found != coils().end()) return *found;
  std::string known;
  for (const auto& c : coils()) known += (known.empty() ? "" : ", ") + c.model;
  throw ModelError(
      Message::of("The coil \"%1\" does not ship with this program; choose one of: %2.", model, known));
}

}  // namespace scalpmark::models
