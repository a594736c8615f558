#pragma once

#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "geometry/plan/solve.h"
#include "models/brain/template_brain.h"
#include "models/cases/case_file.h"
#include "models/heads/load_head.h"

namespace scalpmark::viewer {

/// A case as it was read, its head and its plan.
struct SolvedCase {
  models::CaseFile file;
  models::LoadedHead loaded;
  geometry::Plan plan;
};

enum class Brain { wanted, left_out };

/// Reads a case file and its head, solves it, and says on stderr what is to be noted about them. The
/// template's brain is made by `make_brain` where it is not kept yet.
[[nodiscard]] SolvedCase solve_case(const std::string& file, const models::Progress& progress,
                                    Brain brain = Brain::left_out,
                                    geometry::TapeDistances tapes = geometry::TapeDistances::each_path,
                                    const models::TemplateMaking& make_brain = models::make_template_brain);

/// Notes, each on its own line of stderr.
void say(const std::vector<geometry::Message>& notes);
/// Refuses (ViewerError) when the standard output does not take it.
void write_to_stdout(const std::string& text);

}  // namespace scalpmark::viewer
