#include "viewer/commands/solved_case.h"

#include <iostream>
#include <utility>

#include "geometry/base/message.h"
#include "geometry/plan/plan_cortex.h"
#include "models/brain/add_cortex.h"
#include "models/cases/case_head.h"
#include "models/heads/own_program.h"
#include "viewer/words/error.h"

namespace scalpmark::viewer {

SolvedCase solve_case(const std::string& file, const models::Progress& progress, Brain brain,
                      geometry::TapeDistances tapes) {
  auto read = models::read_case(file);
  auto loaded = models::load_head(read, progress, models::read_apart(models::own_program()));
  if (brain == Brain::wanted) models::add_cortex(loaded, {}, progress);
  progress(geometry::Message::verbatim("Working out the plan"), 0);
  auto plan = geometry::with_cortex(geometry::solve(loaded.head, read.the_case, tapes), loaded.cortex.get());
  say(loaded.notes);
  say(plan.warnings);
  return {std::move(read), std::move(loaded), std::move(plan)};
}

std::string one_line(const std::string& text) {
  std::string line;
  for (const char c : text) line += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
  while (!line.empty() && line.back() == ' ') line.pop_back();
  return line;
}

void say(const std::vector<geometry::Message>& notes) {
  for (const auto& note : notes) std::cerr << one_line(english(note)) << "\n";
}

void write_to_stdout(const std::string& text) {
  std::cout << text << std::flush;
  if (!std::cout)
    throw ViewerError(geometry::Message::of(
        "The result could not be written to the standard output; check where it leads."));
}

}  // namespace scalpmark::viewer
