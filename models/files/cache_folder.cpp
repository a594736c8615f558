#include "models/files/cache_folder.h"

#include <cstdlib>

namespace scalpmark::models {

std::filesystem::path cache_folder() {
  namespace fs = std::filesystem;
  // A relative path in XDG_CACHE_HOME is to be ignored (XDG Base Directory Specification 0.8).
  const char* given = std::getenv("XDG_CACHE_HOME");
  if (given != nullptr && fs::path(given).is_absolute()) return fs::path(given) / "scalpmark";
  const char* home = std::getenv("HOME");
  if (home != nullptr && fs::path(home).is_absolute()) return fs::path(home) / ".cache" / "scalpmark";
  return {};
}

}  // namespace scalpmark::models
