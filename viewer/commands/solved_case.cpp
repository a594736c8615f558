#include "viewer/commands/solved_case.h"

#include <atomic>
#include <future>
#include <iostream>
#include <mutex>
#include <utility>

#include "geometry/base/message.h"
#include "geometry/plan/plan_cortex.h"
#include "models/brain/add_cortex.h"
#include "models/cases/case_head.h"
#include "models/heads/kept_skins.h"
#include "models/heads/own_program.h"
#include "viewer/words/error.h"

namespace scalpmark::viewer {

namespace {

/// Thrown out of work that nobody waits for any more.
struct GivenUp {};

/// One voice for several threads, which ends them once it is given up.
class SharedProgress {
public:
  explicit SharedProgress(const models::Progress& progress) : progress_(progress) {}
  SharedProgress(const SharedProgress&) = delete;
  SharedProgress& operator=(const SharedProgress&) = delete;
  void give_up() { given_up_ = true; }
  void operator()(const geometry::Message& what, double fraction) {
    const std::lock_guard lock(speaking_);
    if (given_up_) throw GivenUp{};
    progress_(what, fraction);
  }

private:
  const models::Progress& progress_;
  std::mutex speaking_;
  std::atomic<bool> given_up_{false};
};

}  // namespace

// The template's brain is got ready while the head is, and brought under it while the plan is worked out.
SolvedCase solve_case(const std::string& file, const models::Progress& progress, Brain brain,
                      geometry::TapeDistances tapes, const models::TemplateMaking& make_brain) {
  auto read = models::read_case(file);
  SharedProgress shared(progress);
  const models::Progress tell = [&](const auto& what, double fraction) { shared(what, fraction); };
  std::future<models::LoadedTemplate> brain_of_template;
  std::future<geometry::Plan> planning;
  // A refusal does not wait for them.
  struct GivesUp {
    SharedProgress& shared;
    ~GivesUp() { shared.give_up(); }
  } const gives_up{shared};
  if (brain == Brain::wanted)
    brain_of_template = std::async([&] { return models::load_template_brain({}, tell, make_brain); });
  auto loaded = models::load_head(read, tell, models::read_once(models::read_apart(models::own_program())));
  planning = std::async([&, head = loaded.head] { return geometry::solve(head, read.the_case, tapes); });
  if (brain == Brain::wanted) models::add_loaded_cortex(loaded, [&] { return brain_of_template.get(); });
  tell(geometry::Message::verbatim("Working out the plan"), 0);
  auto plan = geometry::with_cortex(planning.get(), loaded.cortex.get());
  say(loaded.notes);
  say(plan.warnings);
  return {std::move(read), std::move(loaded), std::move(plan)};
}

void say(const std::vector<geometry::Message>& notes) {
  for (const auto& note : notes) std::cerr << english(note) << "\n";
}

void write_to_stdout(const std::string& text) {
  std::cout << text << std::flush;
  if (!std::cout)
    throw ViewerError(geometry::Message::of(
        "The result could not be written to the standard output; check where it leads."));
}

}  // namespace scalpmark::viewer
