#include "viewer/page/page_parts.h"

#include <array>
#include <utility>

#include "geometry/base/message.h"
#include "models/files/safe_file.h"
#include "models/heads/own_program.h"
#include "viewer/words/error.h"

namespace scalpmark::viewer {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t largest_part = 32'000'000;  // bytes

constexpr std::array<std::pair<const char*, std::string PageParts::*>, 5> files{
    {{"page.js", &PageParts::script},
     {"worker.js", &PageParts::worker},
     {"page.css", &PageParts::look},
     {"kernel.wasm", &PageParts::kernel},
     {"licences.txt", &PageParts::licences}}};
constexpr const char* patterns_file = "patterns.txt";

bool has_all(const fs::path& folder) {
  std::error_code no_matter;
  for (const auto& [name, part] : files)
    if (!fs::is_regular_file(folder / name, no_matter)) return false;
  return fs::is_regular_file(folder / patterns_file, no_matter);
}

/// A pattern a line, with \n for a line's end and \\ for a stroke.
std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines(1);
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] == '\n')
      lines.emplace_back();
    else if (text[i] == '\\' && i + 1 < text.size())
      lines.back() += text[++i] == 'n' ? '\n' : text[i];
    else
      lines.back() += text[i];
  }
  if (lines.back().empty()) lines.pop_back();
  return lines;
}

}  // namespace

std::vector<fs::path> page_parts_folders() {
  const fs::path beside = models::own_program().parent_path();
  return {beside / "page", beside.parent_path() / "share" / "scalpmark" / "page"};
}

PageParts read_page_parts(const std::vector<fs::path>& folders) {
  for (const fs::path& folder : folders) {
    if (!has_all(folder)) continue;
    PageParts parts;
    for (const auto& [name, part] : files) parts.*part = models::read_whole(folder / name, largest_part);
    parts.patterns = lines_of(models::read_whole(folder / patterns_file, largest_part));
    return parts;
  }
  throw ViewerError(geometry::Message::of(
      "What a page for a browser is made of was not built with this program; run scripts/build release "
      "page_parts, and try again."));
}

}  // namespace scalpmark::viewer
