#include "viewer/commands/run_alone.h"

#include <CLI/CLI.hpp>
#include <string_view>

#include "viewer/commands/commands.h"
#include "viewer/commands/exit_code.h"

namespace scalpmark::viewer {

namespace {

/// Thrown out of work that needs the whole program.
struct NeedsWhole {};

}  // namespace

std::optional<int> run_alone(int argc, const char* const* argv) noexcept {
  if (argc < 2 || std::string_view(argv[1]) != "solve") return {};
  bool whole = false;
  const int code = exit_code([&] {
    try {
      CLI::App app("", "scalpmark");
      app.require_subcommand(1);
      add_solve(app, [](const auto&, const auto&) -> geometry::TemplateBrain { throw NeedsWhole{}; });
      app.parse(argc, argv);
    } catch (const CLI::ParseError&) {  // help is one too
      whole = true;
    } catch (const NeedsWhole&) {
      whole = true;
    }
    return done;
  });
  if (whole) return {};
  return code;
}

}  // namespace scalpmark::viewer
