#include "models/files/made_by.h"

#include "models/files/own_files.h"

namespace scalpmark::models {

const std::string& made_by() {
  static const std::string name = std::string(own_name) + " " SCALPMARK_VERSION;
  return name;
}

std::string program_version() {
  return SCALPMARK_VERSION;
}

}  // namespace scalpmark::models
