#include <CLI/CLI.hpp>

#include "viewer/commands/options.h"

namespace scalpmark::viewer {

void add_case(CLI::App& command, std::string& file, const std::string& help) {
  command.add_option("CASE", file, help)->required()->type_name("FILE");
}

}  // namespace scalpmark::viewer
