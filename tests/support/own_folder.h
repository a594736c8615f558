#pragma once

#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

namespace scalpmark::tests {

/// A folder of this test's process, gone afterwards.
struct OwnFolder {
  std::filesystem::path path =
      std::filesystem::temp_directory_path() / ("scalpmark-test-" + std::to_string(getpid()));
  OwnFolder() { std::filesystem::create_directories(path); }
  ~OwnFolder() {
    std::error_code error;
    std::filesystem::remove_all(path, error);
  }
  OwnFolder(const OwnFolder&) = delete;
  OwnFolder& operator=(const OwnFolder&) = delete;
  [[nodiscard]] std::string file(const std::string& name) const { return (path / name).string(); }
};

/// The bytes of a file; empty where there is none.
[[nodiscard]] inline std::string slurp(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

}  // namespace scalpmark::tests
