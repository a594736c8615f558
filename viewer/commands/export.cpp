#include <CLI/CLI.hpp>
#include <memory>

#include "models/files/safe_file.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"
#include "viewer/exports/export_scene.h"

namespace scalpmark::viewer {

namespace {

struct ExportAsked {
  std::string in;
  Output out;
  bool above_brow = false;
};

models::ExportFormat format_asked(const ExportAsked& asked) {
  const auto format = models::export_format_of(asked.out.file);
  if (!format)
    throw UsageError(
        "--out is \"" + asked.out.file +
        "\"; its ending says what to write: .glb for other viewers, .ply with colours, .stl for a printer.");
  if (asked.above_brow && *format != models::ExportFormat::stl)
    throw UsageError("--above-brow is for a print; give --out a name that ends in .stl, or leave it out.");
  return *format;
}

/// A scanned head is a person's, and so is its face.
void say_whose_face(const SolvedCase& solved, bool above_brow) {
  if (solved.file.head.kind == models::HeadKind::generic || above_brow) return;
  say({geometry::Message::of(
      "The file holds the face of the person who was scanned; give it to nobody who must not know them.")});
}

void write_export(const ExportAsked& asked) {
  const models::ExportFormat format = format_asked(asked);
  check_output(asked.out, models::own_format_of(format), asked.in);
  const models::Progress progress = SlowProgress();
  const SolvedCase solved =
      solve_case(asked.in, progress, Brain::left_out, geometry::TapeDistances::left_out);
  progress(geometry::Message::verbatim("Making the head solid"), 0);
  models::write_whole(asked.out.file, export_plan(solved.loaded.head, solved.file.the_case, solved.plan,
                                                  format, asked.above_brow));
  say_whose_face(solved, asked.above_brow);
}

}  // namespace

void add_export(CLI::App& program) {
  auto* command = program.add_subcommand(
      "export",
      "Write the head with its marks, tapes and coil for other viewers, or its marks raised for a 3D printer");
  const auto asked = std::make_shared<ExportAsked>();
  add_case(*command, asked->in);
  add_output(*command, asked->out,
             "Where it goes; .glb for other viewers, .ply with colours, .stl for a printer, at true size")
      ->required()
      ->type_name("FILE.glb|.ply|.stl");
  command->add_flag(
      "--above-brow", asked->above_brow,
      "Of a print: cut flat at the brim of the case's cap, above the brow, so that it stands and shows no face");
  command->callback([asked] { write_export(*asked); });
}

}  // namespace scalpmark::viewer
