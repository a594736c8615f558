#include <CLI/CLI.hpp>
#include <charconv>
#include <memory>

#include "geometry/base/message.h"
#include "models/results/field_file.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"
#include "viewer/words/field_text.h"
#include "viewer/words/field_words.h"

namespace scalpmark::viewer {

namespace {

struct FieldCommand {
  std::string in;
  Output out;
  CoilPlace place;
  Brain brain = Brain::wanted;
  std::vector<Eigen::Vector3d> at;
};

Eigen::Vector3d place_named(const std::string& text) {
  const auto parts = split(text, ',');
  Eigen::Vector3d place;
  bool read = parts.size() == 3;
  for (std::size_t i = 0; read && i < 3; ++i) {
    const char* end = parts[i].data() + parts[i].size();
    double& number = place[static_cast<Eigen::Index>(i)];
    const auto [stopped, error] = std::from_chars(parts[i].data(), end, number);
    read = error == std::errc() && stopped == end && std::abs(number) <= 1000;
  }
  if (!read)
    throw UsageError(
        "--at is \"" + text +
        "\"; write three numbers in mm as X,Y,Z, each from -1000 to 1000, in the head file's frame.");
  return place;
}

void field(const FieldCommand& o) {
  Shown shown;
  shown.coil_on = o.place.on;
  shown.row = o.place.row;
  shown.column = o.place.column;
  check_output(o.out, "scalpmark-field", o.in);
  const models::Progress progress = SlowProgress();
  const SolvedCase solved = solve_case(o.in, progress, o.brain, geometry::TapeDistances::left_out);
  progress(geometry::Message::verbatim("Working out the field"), 0);
  const geometry::Case& the_case = solved.file.the_case;
  const geometry::Surface& skin = solved.loaded.head.skin();
  const geometry::Coil& coil = the_case.coil.model;
  const auto found =
      geometry::coil_field(skin, solved.loaded.cortex.get(), coil, placement_shown(solved.plan, shown));
  models::FieldAsked asked;
  asked.on = o.place.name;
  for (const Eigen::Vector3d& place : o.at) asked.at.push_back({place, found.field.at(place)});
  asked.moved = geometry::moved_ratios(skin, coil, found);
  asked.depth = geometry::depth_and_spread(found.field, found.round, found.laid.pose);
  asked.sentences = field_sentences(found, asked.moved);
  if (o.out.to_stdout()) {
    write_to_stdout(models::field_json(found, the_case, asked));
    return;
  }
  if (!o.out.file.empty()) models::write_field(o.out.file, found, the_case, asked);
  write_to_stdout(field_text(found, the_case, asked, where_shown(shown)));
}

}  // namespace

void add_field(CLI::App& program) {
  auto* command = program.add_subcommand(
      "field",
      "Say where the coil's induced field goes in a round model head: where it is strongest, how wide, how deep, "
      "along which line, what a gap leaves of it");
  const auto o = std::make_shared<FieldCommand>();
  add_case(*command, o->in, "The case file (JSON); its \"coil\" says which coil, and how it is laid");
  command
      ->add_option_function<std::string>(
          "--on", [o](const std::string& text) { o->place = coil_place("--on", text); },
          "Where the coil lies: treatment, hotspot, start, or a grid spot as ROW,COLUMN; without it, treatment")
      ->type_name("PLACE");
  command
      ->add_option_function<std::vector<std::string>>(
          "--at",
          [o](const std::vector<std::string>& texts) {
            for (const auto& text : texts) o->at.push_back(place_named(text));
          },
          "Also say the field at this place of the head, in mm of the head file's frame; may be given again")
      ->type_name("X,Y,Z")
      ->allow_extra_args(false);
  add_no_brain(*command, o->brain);
  add_output(*command, o->out, "Where all this goes as JSON as well; - for the standard output")
      ->type_name("FILE.json");
  command->callback([o] { field(*o); });
}

}  // namespace scalpmark::viewer
