#include "models/heads/own_program.h"

#include <system_error>

namespace scalpmark::models {

namespace fs = std::filesystem;

namespace {

fs::path own_folder() {
  return fs::read_symlink("/proc/self/exe").parent_path();
}

/// As built, both lie in one folder; as installed, the whole program lies where nobody looks for commands.
fs::path beside_or(const char* name, const char* installed) {
  fs::path beside = own_folder() / name;
  std::error_code wrong;
  if (fs::exists(beside, wrong)) return beside;
  const fs::path there = (own_folder() / installed / name).lexically_normal();
  return fs::exists(there, wrong) ? there : beside;
}

}  // namespace

fs::path own_program() {
  return beside_or("scalpmark", "../../bin");
}

fs::path whole_program() {
  return beside_or("scalpmark-whole", "../libexec/scalpmark");
}

}  // namespace scalpmark::models
