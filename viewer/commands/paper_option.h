#pragma once

#include "viewer/sheet/sheet.h"

namespace CLI {
class App;
}

namespace scalpmark::viewer {

/// Adds --paper, a4 or letter; refuses (UsageError) anything else. `paper` outlives the command.
void add_paper(CLI::App& command, Paper& paper);

}  // namespace scalpmark::viewer
