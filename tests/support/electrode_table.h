#pragma once

#include <Eigen/Core>
#include <fstream>
#include <map>
#include <sstream>
#include <string>

namespace scalpmark::tests {

/// The positions of an ASA electrode file (.elc): "Positions", one x y z a line, "Labels", then the labels.
/// mm. Empty when the file is missing.
inline std::map<std::string, Eigen::Vector3d> read_electrode_table(const std::string& file) {
  std::ifstream in(file);
  std::vector<Eigen::Vector3d> positions;
  std::map<std::string, Eigen::Vector3d> table;
  std::string line;
  bool in_positions = false;
  size_t label = 0;
  bool in_labels = false;
  while (std::getline(in, line)) {
    if (line.rfind("Positions", 0) == 0) {
      in_positions = true;
      continue;
    }
    if (line.rfind("Labels", 0) == 0) {
      in_positions = false;
      in_labels = true;
      continue;
    }
    std::istringstream words(line);
    if (in_positions) {
      Eigen::Vector3d p;
      if (words >> p.x() >> p.y() >> p.z()) positions.push_back(p);
    } else if (in_labels) {
      std::string name;
      while (words >> name && label < positions.size()) table[name] = positions[label++];
    }
  }
  return table;
}

}  // namespace scalpmark::tests
