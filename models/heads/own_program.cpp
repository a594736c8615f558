#include "models/heads/own_program.h"

namespace scalpmark::models {

std::filesystem::path own_program() {
  return std::filesystem::read_symlink("/proc/self/exe").parent_path() / "scalpmark";
}

}  // namespace scalpmark::models
