#include "viewer/commands/output.h"

#include <CLI/CLI.hpp>

#include "geometry/base/message.h"
#include "models/cases/case_inputs.h"
#include "viewer/words/error.h"

namespace scalpmark::viewer {

CLI::Option* add_output(CLI::App& command, Output& output, const std::string& help) {
  command.add_flag(
      "--force", output.force,
      "Write --out over a file that is there, also one of another kind; never over what is read");
  return command.add_option("--out", output.file, help);
}

void add_no_brain(CLI::App& command, Brain& brain) {
  command.add_flag_callback(
      "--no-brain", [&brain] { brain = Brain::left_out; },
      "Leave out the template's brain, which takes some seconds to make the first time");
}

void check_output(const Output& output, const std::string& format, const std::vector<models::Input>& inputs) {
  if (!output.to_file()) return;
  models::refuse_input_as_output(output.file, inputs);
  if (!output.force && models::replaces_another_kind(output.file, format))
    throw ViewerError(geometry::Message::of(
        "%1 is there already and holds something else; choose another name, or write --force to replace it.",
        output.file));
}

void check_output(const Output& output, const std::string& format, const std::string& case_file) {
  if (output.to_file())
    check_output(output, format, models::inputs_of(case_file, models::read_case(case_file)));
}

}  // namespace scalpmark::viewer
