#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace scalpmark::tests {

struct Include {
  std::string name;   ///< as written, without quotes or angle brackets
  bool ours = false;  ///< in quotes: a file of this tree, named from its top
  int line = 0;       ///< counted from 1
};

struct SourceFile {
  std::string path;  ///< from the top of the tree
  std::vector<Include> includes;
};

/// The folders (or single files) directly in a folder, in the order in which data go: each may include itself
/// and those before it. The key is the folder's path from the top of the tree, empty for the top itself.
using RoomOrder = std::map<std::string, std::vector<std::string>>;

/// Which headers of libraries a folder may not include: the beginnings of their names.
using Strangers = std::map<std::string, std::vector<std::string>>;

/// Scalpmark's own order.
[[nodiscard]] const RoomOrder& room_order();
[[nodiscard]] const Strangers& strangers();

/// Every .h and .cpp file in the top's folders that the order names, by path, with its includes.
[[nodiscard]] std::vector<SourceFile> read_sources(const std::filesystem::path& top, const RoomOrder& order);

/// One sentence for each file in a folder that the order does not name, and each include that is no file of
/// the tree, runs against the order, or takes in a stranger.
[[nodiscard]] std::vector<std::string> against_order(const std::vector<SourceFile>& sources,
                                                     const RoomOrder& order, const Strangers& strangers);

/// One sentence for each circle of files that include each other: "a.h -> b.h -> a.h".
[[nodiscard]] std::vector<std::string> circles(const std::vector<SourceFile>& sources);

}  // namespace scalpmark::tests
