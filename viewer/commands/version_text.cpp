#include "viewer/commands/version_text.h"

#include <CLI/Version.hpp>
#include <QtGlobal>
#include <vector>

#include "models/files/built_on.h"
#include "models/files/made_by.h"
#include "viewer/commands/options.h"

namespace scalpmark::viewer {

std::string version_text() {
  std::vector<std::string> libraries = models::built_on();
  libraries.emplace_back(std::string("Qt ") + qVersion());
  libraries.emplace_back("CLI11 " CLI11_VERSION);
  return "scalpmark " + models::program_version() + "\nBuilt on " + list_of(libraries) +
         "; compiled by " SCALPMARK_COMPILER ".";
}

}  // namespace scalpmark::viewer
