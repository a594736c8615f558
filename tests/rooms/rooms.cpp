#include "tests/rooms/rooms.h"

#include <algorithm>
#include <fstream>
#include <functional>
#include <regex>
#include <set>

namespace fs = std::filesystem;

namespace scalpmark::tests {

const RoomOrder& room_order() {
  static const RoomOrder order{
      {"", {"geometry", "models", "viewer", "tests"}},
      {"geometry",
       {"base", "surface", "paths", "tapes", "head", "brain", "coil", "plan", "field", "hands", "answers",
        "exercise"}},
      {"models",
       {"files", "generic", "meshes", "mri", "heads", "brain", "coils", "cases", "results", "exercises",
        "exports"}},
      {"viewer",
       {"words", "stage", "picture", "sheet", "teach", "practise", "page", "exports", "window", "commands",
        "whole.cpp", "main.cpp"}},
      {"viewer/window",
       {"fields", "jobs", "session", "stage_view", "steps", "teach", "check", "explain", "practise", "course",
        "frame"}},
  };
  return order;
}

const Strangers& strangers() {
  static const Strangers none{
      {"geometry", {"Q", "vtk", "filesystem", "fstream", "iostream", "chrono", "nlohmann", "assimp"}},
      {"models", {"Q"}},
  };
  return none;
}

namespace {

std::vector<Include> includes_of(const fs::path& file) {
  static const std::regex line_of_include(R"re(^\s*#\s*include\s*(["<])([^">]+)[">])re");
  std::ifstream in(file);
  std::vector<Include> found;
  int number = 0;
  for (std::string line; std::getline(in, line);) {
    ++number;
    if (std::smatch match; std::regex_search(line, match, line_of_include))
      found.push_back({match[2], match[1] == "\"", number});
  }
  return found;
}

/// The folders above a file with what lies in them on the way to it: ("", geometry), (geometry, base), ...
std::map<std::string, std::string> steps_to(const std::string& path) {
  std::map<std::string, std::string> steps;
  std::string folder;
  for (const auto& part : fs::path(path)) {
    steps[folder] = part.string();
    folder += (folder.empty() ? "" : "/") + part.string();
  }
  return steps;
}

/// Its place in the order, or the order's length.
size_t place_of(const std::vector<std::string>& rooms, const std::string& room) {
  return static_cast<size_t>(std::find(rooms.begin(), rooms.end(), room) - rooms.begin());
}

bool lies_in(const std::string& path, const std::string& folder) {
  return path.rfind(folder + "/", 0) == 0;
}

}  // namespace

std::vector<SourceFile> read_sources(const fs::path& top, const RoomOrder& order) {
  std::vector<SourceFile> sources;
  for (const auto& folder : order.at("")) {
    if (!fs::exists(top / folder)) continue;
    for (const auto& entry : fs::recursive_directory_iterator(top / folder)) {
      const auto ending = entry.path().extension();
      if (!entry.is_regular_file() || (ending != ".h" && ending != ".cpp")) continue;
      sources.push_back({fs::relative(entry.path(), top).generic_string(), includes_of(entry.path())});
    }
  }
  std::sort(sources.begin(), sources.end(), [](const auto& a, const auto& b) { return a.path < b.path; });
  return sources;
}

std::vector<std::string> against_order(const std::vector<SourceFile>& sources, const RoomOrder& order,
                                       const Strangers& strangers) {
  std::set<std::string> known;
  for (const auto& source : sources) known.insert(source.path);
  std::vector<std::string> wrong;
  for (const auto& source : sources) {
    const auto from = steps_to(source.path);
    for (const auto& [folder, rooms] : order)
      if (const auto step = from.find(folder);
          step != from.end() && place_of(rooms, step->second) == rooms.size())
        wrong.push_back(source.path + ": " + step->second + " has no place in the order of " + folder + "/");
    for (const auto& include : source.includes) {
      const std::string where = source.path + ":" + std::to_string(include.line) + ": " + include.name;
      if (!include.ours) {
        for (const auto& [folder, names] : strangers)
          if (lies_in(source.path, folder) && std::any_of(names.begin(), names.end(), [&](const auto& name) {
                return include.name.rfind(name, 0) == 0;
              }))
            wrong.push_back(where + " is not for " + folder + "/");
        continue;
      }
      if (known.count(include.name) == 0) {
        wrong.push_back(where + " is no file of ours, named from the top");
        continue;
      }
      const auto to = steps_to(include.name);
      for (const auto& [folder, rooms] : order) {
        const auto here = from.find(folder), there = to.find(folder);
        if (here != from.end() && there != to.end() &&
            place_of(rooms, there->second) > place_of(rooms, here->second))
          wrong.push_back(where + " lies below " + here->second);
      }
    }
  }
  return wrong;
}

std::vector<std::string> circles(const std::vector<SourceFile>& sources) {
  std::map<std::string, const SourceFile*> by_path;
  for (const auto& source : sources) by_path[source.path] = &source;
  std::vector<std::string> found;
  std::set<std::string> left;
  std::vector<std::string> way;
  const std::function<void(const SourceFile&)> follow = [&](const SourceFile& source) {
    if (left.count(source.path) != 0) return;
    if (const auto again = std::find(way.begin(), way.end(), source.path); again != way.end()) {
      std::string circle;
      for (auto at = again; at != way.end(); ++at) circle += *at + " -> ";
      found.push_back(circle + source.path);
      return;
    }
    way.push_back(source.path);
    for (const auto& include : source.includes)
      if (const auto next = by_path.find(include.name); include.ours && next != by_path.end())
        follow(*next->second);
    way.pop_back();
    left.insert(source.path);
  };
  for (const auto& source : sources) follow(source);
  return found;
}

}  // namespace scalpmark::tests
