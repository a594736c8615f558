#pragma once

#include <string>
#include <vector>

#include "models/brain/template_brain.h"

namespace CLI {
class App;
}

namespace scalpmark::viewer {

// Each adds one command to the program's command line: its words, its options, and what is done once they are
// read.

/// Makes the template's brain by `make_brain` where it is not kept yet.
void add_solve(CLI::App& program, const models::TemplateMaking& make_brain = models::make_template_brain);
void add_picture(CLI::App& program);
void add_sheet(CLI::App& program);
void add_strips(CLI::App& program);
void add_page(CLI::App& program);
void add_export(CLI::App& program);
void add_tolerance(CLI::App& program);
void add_contact(CLI::App& program);
void add_field(CLI::App& program);
void add_check(CLI::App& program);
void add_answers(CLI::App& program);
void add_course(CLI::App& program);
void add_exercise(CLI::App& program);
void add_score(CLI::App& program);
void add_log(CLI::App& program);
void add_head(CLI::App& program);

/// `scalpmark read-skin KIND UNIT MEMORY_MB CPU_SECONDS FILE`: how the program calls itself to read a file
/// apart (models/heads/skin_reading.h). Not for people, so it is in no help. `words` are all of the command
/// line. False where the file was not read; what was wrong has been answered then.
[[nodiscard]] bool answer_reading(const std::vector<std::string>& words);

}  // namespace scalpmark::viewer
