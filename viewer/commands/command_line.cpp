#include "viewer/commands/command_line.h"

#include <CLI/CLI.hpp>
#include <exception>
#include <filesystem>
#include <iostream>
#include <string>
#include <string_view>

#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/solved_case.h"
#include "viewer/words/trouble_words.h"

namespace scalpmark::viewer {

namespace {

constexpr int done = 0, failed = 1, misunderstood = 2;

int run(int argc, const char* const* argv, OpenWindow open_window) {
  if (argc > 1 && std::string_view(argv[1]) == "read-skin")
    return answer_reading({argv, argv + argc}) ? done : failed;
  CLI::App app(
      "Scalpmark: from tape measures and a head to pulse points and edge marks.\n"
      "Training and illustration only; not a navigation or treatment device.",
      "scalpmark");
  app.set_version_flag("--version", "scalpmark " SCALPMARK_VERSION, "Print the version and stop");
  app.set_help_flag("--help,-h", "Print this help and stop");
  app.require_subcommand(0, 1);
  app.footer(
      "Lengths in files are in millimetres, angles in degrees. Exit code: 0 done, 2 the command line was "
      "not\n"
      "understood, 1 anything else. Write a command's name and --help for its options.");
  std::string window_case;
  app.add_option("CASE", window_case,
                 "A case file to open the window on; without it, the window asks what to begin with")
      ->type_name("FILE");
  add_solve(app);
  add_picture(app);
  add_sheet(app);
  add_strips(app);
  add_page(app);
  add_check(app);
  add_answers(app);
  add_course(app);
  add_log(app);
  add_exercise(app);
  add_score(app);
  add_tolerance(app);
  add_contact(app);
  add_field(app);
  add_head(app);
  const auto no_such_file = [&] { return !window_case.empty() && !std::filesystem::exists(window_case); };
  try {
    app.parse(argc, argv);  // a command runs at its end
  } catch (const CLI::ExtrasError& e) {
    // A word with more after it was meant as a command, not as the window's case.
    if (no_such_file())
      throw UsageError("\"" + window_case +
                       "\" is an unknown command; write scalpmark --help for those there are.");
    throw UsageError(std::string(e.what()) + "; write scalpmark --help for how to call it.");
  } catch (const CLI::ParseError& e) {
    if (e.get_exit_code() == static_cast<int>(CLI::ExitCodes::Success)) {
      app.exit(e, std::cout, std::cerr);  // help or version
      return done;
    }
    throw UsageError(std::string(e.what()) + "; write scalpmark --help for how to call it.");
  }
  if (!app.get_subcommands().empty()) return done;
  if (no_such_file())
    throw UsageError("\"" + window_case +
                     "\" is neither a command nor a file; write scalpmark --help for how to call them.");
  return open_window(window_case);
}

int report(const char* sentence, int code) {
  std::cerr << "scalpmark: " << one_line(sentence) << std::endl;
  return code;
}

}  // namespace

int run_command_line(int argc, const char* const* argv, OpenWindow open_window) noexcept {
  try {
    return run(argc, argv, open_window);
  } catch (const UsageError& e) {
    return report(e.what(), misunderstood);
  } catch (const std::exception& e) {
    return report(geometry::english(message_of(e)).c_str(), failed);
  } catch (...) {
    return report("Something went wrong that the program has no words for; try again.", failed);
  }
}

}  // namespace scalpmark::viewer
