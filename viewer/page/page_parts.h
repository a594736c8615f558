#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace scalpmark::viewer {

/// What every page is made of, built apart from the program (viewer/page/CMakeLists.txt, target page_parts).
struct PageParts {
  std::string script;                 ///< JavaScript, one bundle
  std::string worker;                 ///< the same for what works beside the page
  std::string look;                   ///< CSS
  std::string kernel;                 ///< WebAssembly
  std::string licences;               ///< of what is bundled, as its authors want it to be kept
  std::vector<std::string> patterns;  ///< of all messages that the kernel may say (geometry/base/message.h)
};

/// Where they may lie: page/ beside the program, and where packages put it.
[[nodiscard]] std::vector<std::filesystem::path> page_parts_folders();

/// From the first of the folders that has them all. Refuses (ViewerError, saying what to run) where none has.
[[nodiscard]] PageParts read_page_parts(
    const std::vector<std::filesystem::path>& folders = page_parts_folders());

}  // namespace scalpmark::viewer
