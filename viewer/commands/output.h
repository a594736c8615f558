#pragma once

#include <string>

#include "models/files/output_guard.h"
#include "viewer/commands/solved_case.h"

namespace CLI {
class App;
class Option;
}  // namespace CLI

namespace scalpmark::viewer {

/// Where a result goes: a file, "-" for the standard output, nothing when it is not asked for.
struct Output {
  std::string file;
  bool force = false;  ///< also over a file of another kind
  [[nodiscard]] bool to_stdout() const { return file == "-"; }
  [[nodiscard]] bool to_file() const { return !file.empty() && !to_stdout(); }
};

/// Adds --out and --force; the option for what else is to be said of --out.
CLI::Option* add_output(CLI::App& command, Output& output, const std::string& help);

/// Adds --no-brain; `brain` outlives the command.
void add_no_brain(CLI::App& command, Brain& brain);

/// Refuses (ViewerError, ModelError), before any work, an output that is one of the inputs, and without
/// --force one that is there already and not of the kind (models/files/own_files.h) that is to be written.
void check_output(const Output& output, const std::string& format, const std::vector<models::Input>& inputs);
/// The same for a command on a case, whose inputs are the case, its head and the template.
void check_output(const Output& output, const std::string& format, const std::string& case_file);

}  // namespace scalpmark::viewer
