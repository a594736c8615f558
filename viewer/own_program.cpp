#include "viewer/own_program.h"

namespace scalpmark::viewer {

std::filesystem::path own_program() {
  return std::filesystem::read_symlink("/proc/self/exe").parent_path() / "scalpmark";
}

}  // namespace scalpmark::viewer
