#include "geometry/coil/contact.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <optional>

#include "geometry/base/error.h"
#include "geometry/base/message.h"
#include "geometry/base/ranges.h"
#include "geometry/field/moved_coil.h"
#include "models/results/contact_file.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"
#include "viewer/words/contact_text.h"
#include "viewer/words/contact_words.h"

namespace scalpmark::viewer {

namespace {

struct ContactCommand {
  std::string in;
  Output out;
  CoilPlace place;
  geometry::ContactOptions options;
};

/// On the sphere alone: a brain's folds would let it jump. Nothing where no field is known.
std::optional<geometry::FieldAskew> field_of_tilt(const geometry::Surface& skin, const geometry::Coil& coil,
                                                  const geometry::Placement& placement,
                                                  const geometry::Tilt& tilt) {
  try {
    return geometry::field_askew(skin, coil, geometry::coil_field(skin, nullptr, coil, placement), tilt);
  } catch (const geometry::GeometryError&) {
    return {};
  }
}

void contact(const ContactCommand& o) {
  Shown shown;
  shown.coil_on = o.place.on;
  shown.row = o.place.row;
  shown.column = o.place.column;
  check_output(o.out, "scalpmark-contact", o.in);
  const models::Progress progress = SlowProgress();
  const bool askew = o.options.tilt.roll_deg != 0 || o.options.tilt.pitch_deg != 0;
  const SolvedCase solved =
      solve_case(o.in, progress, askew ? Brain::wanted : Brain::left_out, geometry::TapeDistances::left_out);
  progress(geometry::Message::verbatim("Laying the coil"), 0);
  const geometry::Placement& placement = placement_shown(solved.plan, shown);
  const geometry::Case& the_case = solved.file.the_case;
  geometry::ContactOptions options = o.options;
  options.cortex = solved.loaded.cortex.get();
  const auto found = geometry::contact(solved.loaded.head, the_case.coil, placement.pose(), options);
  const auto field =
      askew ? field_of_tilt(solved.loaded.head.skin(), the_case.coil.model, placement, o.options.tilt)
            : std::nullopt;
  const models::ContactAsked asked{o.place.name, placement, options, field, contact_sentences(found, field)};
  if (o.out.to_stdout()) {
    write_to_stdout(models::contact_json(found, the_case, asked));
    return;
  }
  if (!o.out.file.empty()) models::write_contact(o.out.file, found, the_case, asked);
  write_to_stdout(contact_text(found, the_case, asked.sentences, where_shown(shown)));
}

}  // namespace

void add_contact(CLI::App& program) {
  auto* command = program.add_subcommand(
      "contact",
      "Say how the coil rests: where it touches, the gap under each wing, whether an ear or the brow is in the "
      "way");
  const auto o = std::make_shared<ContactCommand>();
  add_case(*command, o->in, "The case file (JSON); its \"coil\" says which coil, and how it is laid");
  command
      ->add_option_function<std::string>(
          "--on", [o](const std::string& text) { o->place = coil_place("--on", text); },
          "Where the coil lies: treatment, hotspot, start, or a spot of the grid as ROW,COLUMN; without it, treatment")
      ->type_name("PLACE");
  command
      ->add_option("--roll", o->options.tilt.roll_deg,
                   "Tilted by so many degrees: its right side (seen from the handle) down, or up if "
                   "negative; says where the pulse goes instead")
      ->check(CLI::Range(-geometry::most_tilt_deg, geometry::most_tilt_deg))
      ->type_name("DEGREES");
  command
      ->add_option("--pitch", o->options.tilt.pitch_deg, "The same: its front edge up, or down if negative")
      ->check(CLI::Range(-geometry::most_tilt_deg, geometry::most_tilt_deg))
      ->type_name("DEGREES");
  command
      ->add_option("--cap", o->options.cap_mm,
                   "Thickness of the cap in mm, to hear whether the coil presses it in")
      ->check(CLI::Range(geometry::ranges::lift_mm.low, geometry::ranges::lift_mm.high))
      ->type_name("MM");
  add_output(*command, o->out,
             "Where all this and the gap at places 4 mm apart go as JSON as well; - for the standard "
             "output")
      ->type_name("FILE.json");
  command->callback([o] { contact(*o); });
}

}  // namespace scalpmark::viewer
