#include <CLI/CLI.hpp>
#include <memory>
#include <optional>

#include "geometry/answers/visit_answers.h"
#include "models/results/answers_file.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"
#include "viewer/words/answers_text.h"

namespace scalpmark::viewer {

namespace {

struct AnswersCommand {
  std::string in;
  Output out;
  std::optional<std::size_t> visit;
  geometry::AnswersAsked asked;
};

/// The one asked for, or the last with pulses.
std::size_t visit_of(const AnswersCommand& o, const geometry::Visits& visits) {
  if (o.visit) {
    if (*o.visit > visits.size())
      throw UsageError("--visit is " + std::to_string(*o.visit) + ", but the case has " +
                       std::to_string(visits.size()) + " visits; name one of them, counted from 1.");
    return *o.visit;
  }
  for (std::size_t i = visits.size(); i > 0; --i)
    if (!visits[i - 1]->pulses.empty()) return i;
  throw ViewerError(geometry::Message::of(
      "No visit of the case has pulses, so there are no answers; log them in the window under Pulses, or add a table of them with scalpmark log."));
}

void run_answers(const AnswersCommand& o) {
  check_output(o.out, "scalpmark-answers", o.in);
  const SolvedCase solved =
      solve_case(o.in, SlowProgress(), Brain::left_out, geometry::TapeDistances::left_out);
  const geometry::Case& the_case = solved.file.the_case;
  const std::size_t visit = visit_of(o, the_case.visits);
  const auto answers = geometry::visit_answers(solved.plan, the_case, *the_case.visits[visit - 1], o.asked);
  if (o.out.to_stdout()) {
    write_to_stdout(models::answers_json(answers, the_case, visit));
    return;
  }
  if (o.out.to_file()) models::write_answers(o.out.file, answers, the_case, visit);
  write_to_stdout(answers_text(answers, the_case, visit));
}

}  // namespace

void add_answers(CLI::App& program) {
  auto* command = program.add_subcommand(
      "answers", "Say what the pulses of a visit tell about the spot and the threshold, and how surely");
  const auto o = std::make_shared<AnswersCommand>();
  add_case(*command, o->in);
  command->add_option("--visit", o->visit, "Which visit, counted from 1; without it, the last with pulses")
      ->check(CLI::Range(1, static_cast<int>(geometry::most_visits)))
      ->type_name("N");
  command
      ->add_option(
          "--spread", o->asked.spread,
          "Spread of the answers taken for known, as a share of the threshold; without it, each from "
          "0.03 to 0.15 is as likely")
      ->check(CLI::Range(0.01, 0.5))
      ->type_name("S");
  command
      ->add_option("--output", o->asked.output_percent,
                   "Output of the pulses that tell about the spot; without it, the one with most of them")
      ->check(CLI::Range(1, 100))
      ->type_name("PERCENT");
  add_output(*command, o->out, "Where all this goes as JSON as well; - for the standard output")
      ->type_name("FILE.json");
  command->callback([o] { run_answers(*o); });
}

}  // namespace scalpmark::viewer
