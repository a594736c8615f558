#include "geometry/hands/check.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <optional>
#include <utility>

#include "geometry/base/message.h"
#include "geometry/hands/cap_today.h"
#include "geometry/hands/find_by_tapes.h"
#include "models/results/check_file.h"
#include "viewer/commands/brim_option.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"
#include "viewer/words/check_text.h"

namespace scalpmark::viewer {

namespace {

using geometry::TapeReadings;

struct CheckCommand {
  std::string in;
  Output out;
  std::optional<TapeReadings> site, edge;
  std::optional<geometry::BrimReadings> brim;
  bool nearest = false;
  geometry::CheckLimits limits;
};

constexpr std::array<std::pair<const char*, std::optional<double> TapeReadings::*>, 4> named_tapes{
    {{"vertex", &TapeReadings::vertex_mm},
     {"nasion", &TapeReadings::nasion_mm},
     {"left_tragus", &TapeReadings::left_tragus_mm},
     {"right_tragus", &TapeReadings::right_tragus_mm}}};

/// "vertex=83.1,nasion=113"
TapeReadings tapes_from(const std::string& option, const std::string& text) {
  const std::string how =
      "; write two or more of vertex, nasion, left_tragus and right_tragus with their tape "
      "distance in mm, as " +
      option + " vertex=83.1,nasion=113.";
  TapeReadings readings;
  int count = 0;
  for (const std::string& part : split(text, ',')) {
    const auto equals = part.find('=');
    const std::string name = part.substr(0, equals);
    const auto tape =
        std::find_if(named_tapes.begin(), named_tapes.end(), [&](const auto& t) { return name == t.first; });
    if (tape == named_tapes.end()) throw UsageError(option + " has \"" + name + "\"" + how);
    std::optional<double>& mm = readings.*tape->second;
    if (mm) throw UsageError(option + " has " + name + " twice" + how);
    double value = 0;
    if (equals == std::string::npos || !CLI::detail::lexical_cast(part.substr(equals + 1), value) ||
        !std::isfinite(value) || !(value > 0))
      throw UsageError(option + " has \"" + part + "\"" + how);
    mm = value;
    ++count;
  }
  if (count < 2) throw UsageError(option + " is \"" + text + "\"" + how);
  return readings;
}

/// Of several places that fit none is taken, unless the one nearest to the plan was asked for.
geometry::FoundMark found_mark(const geometry::TapeFinder& finder, const geometry::Head& head,
                               const TapeReadings& readings, const Eigen::Vector3d& planned, bool nearest) {
  geometry::FoundMark mark = geometry::find_mark(finder, readings);
  if (nearest) geometry::take_nearest(mark, head, head.skin().closest(planned));
  return mark;
}

models::CheckFound check_today(const CheckCommand& o, const SolvedCase& solved) {
  const geometry::Head& head = solved.loaded.head;
  const geometry::Placement& planned = solved.plan.treatment;
  const auto point = [&](const geometry::FoundMark& mark) { return mark.places[*mark.taken].point; };
  models::CheckFound found;
  found.limits = o.limits;
  if (o.brim) found.cap = geometry::cap_today(head, solved.file.the_case, solved.plan, *o.brim, o.limits);
  if (!o.site && !o.edge) return found;
  const geometry::TapeFinder finder(head);
  if (o.site) found.site = found_mark(finder, head, *o.site, planned.wanted, o.nearest);
  if (o.edge) found.edge = found_mark(finder, head, *o.edge, planned.mark.value_or(planned.edge), o.nearest);
  if (found.site && found.site->taken && found.edge && found.edge->taken)
    found.check = geometry::check_marks(head, solved.file.the_case, solved.plan, point(*found.site),
                                        point(*found.edge), o.limits);
  return found;
}

void run_check(const CheckCommand& o) {
  if (!o.site && !o.edge && !o.brim)
    throw UsageError(
        "check needs today's marks: give --site and --edge, each with two or more tape distances, as --site "
        "vertex=83.1,nasion=113; or today's cap with --brim nasion=25,inion=15.");
  check_output(o.out, "scalpmark-check", o.in);
  const models::Progress progress = SlowProgress();
  const SolvedCase solved = solve_case(o.in, progress, Brain::left_out, geometry::TapeDistances::left_out);
  if (o.site || o.edge) progress(geometry::Message::verbatim("Working out tape distances"), 0);
  const models::CheckFound today = check_today(o, solved);
  if (o.out.to_stdout()) {
    write_to_stdout(models::check_json(solved.loaded.head, today));
    return;
  }
  if (o.out.to_file()) models::write_check(o.out.file, solved.loaded.head, today);
  write_to_stdout(check_text(today, solved.loaded.head));
}

}  // namespace

void add_check(CLI::App& program) {
  auto* command = program.add_subcommand(
      "check",
      "Say where the coil laid over today's marks puts its pulse, the marks found by tape distances");
  const auto o = std::make_shared<CheckCommand>();
  add_case(*command, o->in);
  command
      ->add_option_function<std::string>(
          "--site", [o](const std::string& text) { o->site = tapes_from("--site", text); },
          "Tape distances in mm to today's site mark, two or more: vertex=83.1,nasion=113,right_tragus=228")
      ->type_name("TAPES");
  command
      ->add_option_function<std::string>(
          "--edge", [o](const std::string& text) { o->edge = tapes_from("--edge", text); },
          "The same to today's edge mark")
      ->type_name("TAPES");
  command
      ->add_option_function<std::string>(
          "--brim", [o](const std::string& text) { o->brim = brim_from("--brim", text); },
          "How today's cap sits: heights of its brim in mm over two or more of nasion, left_tragus, "
          "right_tragus and inion, and arrow with how far to the right of the nasion it passes: "
          "nasion=25,left_tragus=31,arrow=-6")
      ->type_name("HEIGHTS");
  command->add_flag(
      "--nearest", o->nearest,
      "Where tapes fit several places, take the one nearest to the plan, and say so; without it, "
      "all are told and none is taken");
  command->add_option("--pulse-limit", o->limits.pulse_mm, "How far off the pulse may be; without it, 5")
      ->check(CLI::Range(0.1, 50.0))
      ->type_name("MM");
  command->add_option("--angle-limit", o->limits.angle_deg, "How far off the angle may be; without it, 5")
      ->check(CLI::Range(0.1, 90.0))
      ->type_name("DEGREES");
  add_output(*command, o->out, "Where all this goes as JSON as well; - for the standard output")
      ->type_name("FILE.json");
  command->callback([o] { run_check(*o); });
}

}  // namespace scalpmark::viewer
