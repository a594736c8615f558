#include "viewer/commands/paper_option.h"

#include <CLI/CLI.hpp>
#include <string>

#include "viewer/commands/options.h"

namespace scalpmark::viewer {

void add_paper(CLI::App& command, Paper& paper) {
  command
      .add_option_function<std::string>(
          "--paper",
          [&paper](const std::string& text) {
            const auto named = paper_named(text);
            if (!named) throw UsageError("--paper is \"" + text + "\"; choose a4 or letter.");
            paper = *named;
          },
          "a4 or letter; without it, a4")
      ->type_name("PAPER");
}

}  // namespace scalpmark::viewer
