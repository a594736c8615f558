#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "models/meshes/mesh_file.h"
#include "viewer/stage/scene/shown.h"
#include "viewer/words/error.h"

namespace CLI {
class App;
}

namespace scalpmark::viewer {

/// A command line that cannot be understood.
class UsageError : public ViewerError {
public:
  /// The terminal stays English.
  explicit UsageError(const std::string& sentence) : ViewerError(geometry::Message::verbatim(sentence)) {}
};

// Options that are chosen from names are read by our own look-ups: CLI11's CheckedTransformer would take the
// numbers behind the names as well, and lists them in what it says.

[[nodiscard]] std::string list_of(const std::vector<std::string>& names);
/// The parts between the separators, the last one left out if it is empty.
[[nodiscard]] std::vector<std::string> split(const std::string& text, char at);
/// A whole number of at most six characters, digits and sign only.
[[nodiscard]] std::optional<int> whole(const std::string& text);

/// Adds the case file that every command on a case needs.
void add_case(CLI::App& command, std::string& file,
              const std::string& help = "The case file (JSON): what was measured and chosen");

/// Adds what lengths are shown in: cm or in; refuses (UsageError) anything else.
void add_lengths(CLI::App& command);

/// Where the coil lies: start, hotspot, treatment, or a spot of the grid.
struct CoilPlace {
  std::string name = "treatment";
  CoilOn on = CoilOn::treatment;
  int row = 0, column = 0;
};
/// Refuses (UsageError, naming the option) anything else.
[[nodiscard]] CoilPlace coil_place(const std::string& option, const std::string& text);

/// mm, cm, m or in; refuses (UsageError) anything else.
[[nodiscard]] models::Unit unit_named(const std::string& text);

}  // namespace scalpmark::viewer
