#include "viewer/commands/command_line.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <filesystem>
#include <iostream>
#include <numeric>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "viewer/commands/commands.h"
#include "viewer/commands/exit_code.h"
#include "viewer/commands/options.h"
#include "viewer/commands/version_text.h"

namespace scalpmark::viewer {

namespace {

/// What people come for, in the order of a course, and the commands that do it.
struct Trade {
  const char* what;
  std::vector<void (*)(CLI::App&)> commands;
};

const std::vector<Trade>& trades() {
  static const std::vector<Trade> all{
      {"Before the first visit: from tape measures to marks",
       {[](CLI::App& app) { add_solve(app); }, add_picture, add_sheet, add_strips}},
      {"At the chair: find marks again, count answers", {add_check, add_answers, add_log}},
      {"From visit to visit: do the marks drift?", {add_course}},
      {"For a class: a tape, a pencil and a coil in a trainee's hands", {add_exercise, add_score}},
      {"How far to trust it: hands, coil, field", {add_tolerance, add_contact, add_field}},
      {"A head of one's own: scan or MRI", {add_head}},
      {"To hand on: any browser, other viewers, a 3D printer", {add_page, add_export}},
  };
  return all;
}

void add_commands(CLI::App& app) {
  for (const Trade& trade : trades()) {
    const auto any = [](const CLI::App*) { return true; };
    const std::size_t before = app.get_subcommands(any).size();
    for (const auto add : trade.commands) add(app);
    const auto commands = app.get_subcommands([](CLI::App*) { return true; });
    for (std::size_t i = before; i < commands.size(); ++i) commands[i]->group(trade.what);
  }
}

/// How many letters are to be put in, left out or changed to make one word of the other (Levenshtein 1966).
std::size_t letters_apart(const std::string& a, const std::string& b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t before = std::exchange(row[0], i);
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t changed = before + (a[i - 1] == b[j - 1] ? 0 : 1);
      before = row[j];
      row[j] = std::min({changed, row[j] + 1, row[j - 1] + 1});
    }
  }
  return row.back();
}

/// A word with more after it was meant as a command, not as the window's case. Said before the options are
/// looked at, which are then those of no command.
void refuse_unknown_command(const CLI::App& app, int argc, const char* const* argv) {
  if (argc < 3 || argv[1][0] == '-' || std::filesystem::exists(argv[1])) return;
  const std::string word = argv[1];
  const CLI::App* nearest = nullptr;
  std::size_t apart = 3;  // more than a slip of the fingers
  for (const CLI::App* command : app.get_subcommands([](const CLI::App*) { return true; })) {
    if (command->get_name() == word) return;
    if (const std::size_t letters = letters_apart(word, command->get_name()); letters < apart) {
      nearest = command;
      apart = letters;
    }
  }
  throw UsageError("\"" + word + "\" is an unknown command" +
                   (nearest ? " (there is " + nearest->get_name() + ")" : "") +
                   "; write scalpmark --help for those there are.");
}

int run(int argc, const char* const* argv, OpenWindow open_window) {
  if (argc > 1 && std::string_view(argv[1]) == "read-skin")
    return answer_reading({argv, argv + argc}) ? done : failed;
  CLI::App app(
      "Scalpmark: from tape measures and a head to pulse points and edge marks.\n"
      "Training and illustration only; not a navigation or treatment device.",
      "scalpmark");
  app.set_version_flag("--version", version_text, "Print the version and what it is built on, and stop");
  app.set_help_flag("--help,-h", "Print this help and stop");
  app.require_subcommand(0, 1);
  app.get_formatter()->column_width(16);
  app.footer(
      "Write scalpmark COMMAND --help for its options. Lengths in files are in millimetres, angles in "
      "degrees.\n"
      "Exit code: 0 done, 2 the command line was not understood, 1 anything else.");
  std::string window_case;
  app.add_option("CASE", window_case,
                 "A case file to open the window on; without it, the window asks what to begin with")
      ->type_name("FILE");
  add_commands(app);
  refuse_unknown_command(app, argc, argv);
  const auto no_such_file = [&] { return !window_case.empty() && !std::filesystem::exists(window_case); };
  try {
    app.parse(argc, argv);  // a command runs at its end
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

}  // namespace

int run_command_line(int argc, const char* const* argv, OpenWindow open_window) noexcept {
  return exit_code([&] { return run(argc, argv, open_window); });
}

}  // namespace scalpmark::viewer
