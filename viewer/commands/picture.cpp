#include "viewer/picture/picture.h"

#include <CLI/CLI.hpp>
#include <exception>
#include <future>
#include <memory>
#include <optional>

#include "geometry/base/message.h"
#include "geometry/hands/cap_veil.h"
#include "geometry/hands/tolerance.h"
#include "geometry/plan/plan_cortex.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"
#include "viewer/picture/bounded_memory.h"
#include "viewer/stage/scene/field_shown.h"
#include "viewer/stage/scene/gaps_shown.h"
#include "viewer/words/head_text.h"

namespace scalpmark::viewer {

namespace {

struct PictureAsked {
  std::string in;
  Output out;
  PictureSize size;
  std::optional<View> view;
  Shown shown;
};

std::vector<std::string> thing_names() {
  std::vector<std::string> names;
  for (const Thing t : all_things())
    if (t != Thing::places) names.emplace_back(name_of(t));  // of today's marks, of which a case has none
  return names;
}

std::vector<std::string> view_names() {
  std::vector<std::string> names;
  for (const View v : all_views()) names.emplace_back(name_of(v));
  return names;
}

PictureSize size_from(const std::string& text) {
  const auto parts = split(text, 'x');
  const auto width = parts.size() == 2 ? whole(parts[0]) : std::nullopt,
             height = parts.size() == 2 ? whole(parts[1]) : std::nullopt;
  if (!width || !height)
    throw UsageError("--size is \"" + text + "\"; write width and height in pixels, such as 1600x1200.");
  const PictureSize size{*width, *height};
  try {
    check_size(size);
  } catch (const ViewerError& e) {
    throw UsageError(e.what());
  }
  return size;
}

View view_from(const std::string& text) {
  if (const auto view = view_named(text)) return *view;
  throw UsageError("--from is \"" + text + "\"; choose one of " + list_of(view_names()) + ".");
}

std::set<Thing> things_from(const std::string& text) {
  std::set<Thing> things;
  for (const auto& name : split(text, ',')) {
    const auto thing = thing_named(name);
    if (!thing || thing == Thing::places)
      throw UsageError("--show has \"" + name + "\"; choose from " + list_of(thing_names()) +
                       ", separated by commas.");
    things.insert(*thing);
  }
  if (things.empty()) throw UsageError("--show is empty; choose from " + list_of(thing_names()) + ".");
  return things;
}

/// The tape distances that the picture says.
geometry::TapeDistances tapes_for(const Shown& shown) {
  using Tapes = geometry::TapeDistances;
  if (!shown.has(Thing::numbers)) return Tapes::left_out;
  return shown.coil_on == CoilOn::treatment ? Tapes::treatment_alone : Tapes::each_path;
}

/// Of the last visit with pulses; none without one.
std::shared_ptr<const geometry::VisitAnswers> answers_shown(const SolvedCase& solved) {
  const geometry::Visits& visits = solved.file.the_case.visits;
  const auto last =
      std::find_if(visits.rbegin(), visits.rend(), [](const auto& visit) { return !visit->pulses.empty(); });
  if (last == visits.rend()) return nullptr;
  return std::make_shared<const geometry::VisitAnswers>(
      geometry::visit_answers(solved.plan, solved.file.the_case, **last));
}

void draw(const PictureAsked& o) {
  check_output(o.out, "scalpmark-png", o.in);
  const BoundedMemory bounded("a picture");
  Shown shown = o.shown;
  const models::Progress progress = SlowProgress();
  // The head is read and the plan worked out while the driver gets ready to draw. What is wrong with the case
  // is said before what is wrong with the display.
  auto solving = std::async(std::launch::async, [&] {
    return solve_case(o.in, progress, shown.has(Thing::cortex) ? Brain::wanted : Brain::left_out,
                      geometry::TapeDistances::left_out);
  });
  std::optional<PreparedPicture> picture;
  std::exception_ptr no_picture;
  try {
    picture.emplace(o.size);
  } catch (const ViewerError&) {
    no_picture = std::current_exception();
  }
  SolvedCase solved = solving.get();
  if (no_picture) std::rethrow_exception(no_picture);
  const geometry::Head& head = solved.loaded.head;
  const geometry::Case& the_case = solved.file.the_case;
  std::future<geometry::Plan> measuring;
  if (const auto tapes = tapes_for(shown); tapes != geometry::TapeDistances::left_out)
    measuring = std::async(std::launch::async, [&, tapes] {
      return geometry::with_cortex(geometry::solve(head, the_case, tapes), solved.loaded.cortex.get());
    });
  const View view = o.view.value_or(
      geometry::side_of(placement_shown(solved.plan, shown)) == geometry::Side::left ? View::left
                                                                                     : View::right);
  shown.head_description = head_in_words(solved.file, solved.loaded);
  if (shown.has(Thing::tolerance) || shown.has(Thing::way_marks)) {
    progress(geometry::Message::verbatim("Trying it many times"), 0);
    shown.tolerance = std::make_shared<const geometry::Tolerance>(
        geometry::tolerance(head, the_case, solved.plan, the_case.errors));
  }
  if (shown.has(Thing::answers)) shown.answers = answers_shown(solved);
  if (shown.has(Thing::course)) {
    progress(geometry::Message::verbatim("Finding the marks of all visits"), 0);
    shown.course = std::make_shared<const CourseShown>(course_shown(
        geometry::check_course(geometry::TapeFinder(head), head, the_case, solved.plan), head, solved.plan));
  }
  if (shown.has(Thing::gaps)) shown.gaps = gaps_under(head, the_case, placement_shown(solved.plan, shown));
  if (shown.has(Thing::cap))
    shown.cap = std::make_shared<const geometry::CapVeil>(
        geometry::cap_veil(head, geometry::cap_on(head, the_case.cap.brim_over_nasion_mm)));
  if (shown.has(Thing::field))
    shown.field = field_under(head, solved.loaded.cortex.get(), the_case.coil.model,
                              placement_shown(solved.plan, shown));
  shown.cortex = solved.loaded.cortex;
  if (shown.cortex) shown.skin_opacity = skin_over_cortex;
  progress(geometry::Message::verbatim("Drawing"), 0);
  // The head is on the stage by the time its tape distances are known.
  picture->show(head, the_case, solved.plan, shown, view);
  if (measuring.valid()) {
    solved.plan = measuring.get();
    picture->show(head, the_case, solved.plan, shown, view);
  }
  picture->write(o.out.file);
}

}  // namespace

void add_picture(CLI::App& program) {
  auto* command = program.add_subcommand("picture", "Draw the plan of a case on its head, as a PNG picture");
  const auto o = std::make_shared<PictureAsked>();
  add_case(*command, o->in);
  add_lengths(*command);
  add_output(*command, o->out, "Where the picture goes")->required()->type_name("FILE.png");
  command
      ->add_option_function<std::string>(
          "--from", [o](const std::string& text) { o->view = view_from(text); },
          "Where to look from: " + list_of(view_names()) + "; without it, the side that is stimulated")
      ->type_name("VIEW");
  command
      ->add_option_function<std::string>(
          "--size", [o](const std::string& text) { o->size = size_from(text); },
          "Width and height in pixels; without it, 1600x1200")
      ->type_name("WxH");
  command
      ->add_option_function<std::string>(
          "--show", [o](const std::string& text) { o->shown.things = things_from(text); },
          "What to show, separated by commas: " + list_of(thing_names()))
      ->type_name("LIST");
  command
      ->add_option_function<std::string>(
          "--coil-on",
          [o](const std::string& text) {
            const CoilPlace place = coil_place("--coil-on", text);
            o->shown.coil_on = place.on;
            o->shown.row = place.row;
            o->shown.column = place.column;
          },
          "Where the coil lies: start, hotspot, treatment, or a spot of the grid as ROW,COLUMN; without it, treatment")
      ->type_name("PLACE");
  command->callback([o] { draw(*o); });
}

}  // namespace scalpmark::viewer
