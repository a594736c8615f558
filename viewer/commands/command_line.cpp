#include "viewer/commands/command_line.h"

#include <fcntl.h>
#include <unistd.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <exception>
#include <filesystem>
#include <future>
#include <iomanip>
#include <iostream>
#include <new>
#include <sstream>
#include <string>

#include "geometry/base/ranges.h"
#include "geometry/coil/contact.h"
#include "geometry/hands/tolerance.h"
#include "geometry/head/guess_fiducials.h"
#include "geometry/plan/solve.h"
#include "models/brain/add_cortex.h"
#include "models/cases/case_file.h"
#include "models/generic/generic_head.h"
#include "models/heads/load_head.h"
#include "models/heads/own_program.h"
#include "models/meshes/mesh_file.h"
#include "models/results/contact_file.h"
#include "models/results/plan_file.h"
#include "models/results/tolerance_file.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/picture/picture.h"
#include "viewer/sheet/sheet.h"
#include "viewer/stage/scene/gaps_shown.h"
#include "viewer/words/contact_text.h"
#include "viewer/words/error.h"
#include "viewer/words/head_text.h"
#include "viewer/words/tolerance_text.h"

namespace scalpmark::viewer {

namespace {

constexpr int done = 0, failed = 1, misunderstood = 2;

/// A command line that cannot be understood.
class UsageError : public ViewerError {
public:
  using ViewerError::ViewerError;
};

/// One line whatever the text holds, so that an error is one sentence on stderr.
std::string one_line(const std::string& text) {
  std::string line;
  for (const char c : text) line += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
  while (!line.empty() && line.back() == ' ') line.pop_back();
  return line;
}

std::string list_of(const std::vector<std::string>& names) {
  std::string text;
  for (const auto& n : names) text += (text.empty() ? "" : ", ") + n;
  return text;
}

std::vector<std::string> thing_names() {
  std::vector<std::string> names;
  for (const Thing t : all_things()) names.emplace_back(name_of(t));
  return names;
}

std::vector<std::string> view_names() {
  std::vector<std::string> names;
  for (const View v : all_views()) names.emplace_back(name_of(v));
  return names;
}

std::vector<std::string> split(const std::string& text, char at) {
  std::vector<std::string> parts;
  std::istringstream in(text);
  for (std::string part; std::getline(in, part, at);) parts.push_back(part);
  return parts;
}

/// A whole number, digits and sign only.
bool whole(const std::string& text, int& value) {
  if (text.empty() || text.size() > 6) return false;
  const size_t first = text[0] == '-' || text[0] == '+' ? 1 : 0;
  if (first == text.size() || text.find_first_not_of("0123456789", first) != std::string::npos) return false;
  value = std::stoi(text);
  return true;
}

PictureSize size_from(const std::string& text) {
  const auto parts = split(text, 'x');
  PictureSize size;
  if (parts.size() != 2 || !whole(parts[0], size.width) || !whole(parts[1], size.height))
    throw UsageError("--size is \"" + text + "\"; write width and height in pixels, such as 1600x1200.");
  try {
    check_size(size);
  } catch (const ViewerError& e) {
    throw UsageError(e.what());
  }
  return size;
}

View view_from(const std::string& text) {
  if (const auto view = view_named(text)) return *view;
  throw UsageError("--from is \"" + text + "\"; choose one of " + list_of(view_names()) + ".");
}

void things_from(const std::string& text, Shown& shown) {
  shown.things.clear();
  for (const auto& name : split(text, ',')) {
    const auto thing = thing_named(name);
    if (!thing)
      throw UsageError("--show has \"" + name + "\"; choose from " + list_of(thing_names()) +
                       ", separated by commas.");
    shown.things.insert(*thing);
  }
  if (shown.things.empty()) throw UsageError("--show is empty; choose from " + list_of(thing_names()) + ".");
}

void coil_on_from(const char* option, const std::string& text, Shown& shown) {
  const auto node = split(text, ',');
  if (text == "start")
    shown.coil_on = CoilOn::start;
  else if (text == "hotspot")
    shown.coil_on = CoilOn::hotspot;
  else if (text == "treatment")
    shown.coil_on = CoilOn::treatment;
  else if (node.size() == 2 && whole(node[0], shown.row) && whole(node[1], shown.column) &&
           std::abs(shown.row) <= 1 && std::abs(shown.column) <= 1)
    shown.coil_on = CoilOn::node;
  else
    throw UsageError(
        std::string(option) + " is \"" + text +
        "\"; choose start, hotspot, treatment, or a grid node as ROW,COLUMN, each from -1 to 1.");
}

std::optional<models::Unit> unit_from(const std::string& text) {
  if (text.empty()) return {};
  if (text == "mm") return models::Unit::millimetre;
  if (text == "cm") return models::Unit::centimetre;
  if (text == "m") return models::Unit::metre;
  if (text == "in") return models::Unit::inch;
  throw UsageError("--unit is \"" + text + "\"; choose mm, cm, m or in.");
}

/// Whether the name is that of a NIfTI file, in capitals or not.
bool is_mri(const std::string& file) {
  std::string lower = file;
  std::transform(lower.begin(), lower.end(), lower.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return lower.ends_with(".nii") || lower.ends_with(".nii.gz");
}

void say(const std::vector<std::string>& notes) {
  for (const auto& note : notes) std::cerr << one_line(note) << "\n";
}

struct Solved {
  models::CaseFile kept;
  models::LoadedHead loaded;
  geometry::Plan plan;
};

enum class Brain { wanted, left_out };

Solved solve_case(const std::string& file, const models::Progress& progress, Brain brain = Brain::left_out,
                  geometry::TapeDistances tapes = geometry::TapeDistances::each_path) {
  auto kept = models::read_case(file);
  auto loaded = models::load_head(kept, progress, models::read_apart(models::own_program()));
  if (brain == Brain::wanted) models::add_cortex(loaded, {}, progress);
  progress("Working out the plan", 0);
  auto plan = geometry::solve(loaded.head, kept.entered, tapes);
  say(loaded.notes);
  say(plan.warnings);
  return {std::move(kept), std::move(loaded), std::move(plan)};
}

void write_to_stdout(const std::string& text) {
  std::cout << text << std::flush;
  if (!std::cout)
    throw ViewerError("The result could not be written to the standard output; check where it leads.");
}

struct Options {
  bool guess = false;
  std::string in, out, from, size = "1600x1200", show, coil_on = "treatment", unit, paper = "a4";
  double roll_deg = 0, pitch_deg = 0, cap_mm = 0;
  int placements = 10000;
  unsigned seed = 1;
};

void solve_command(const Options& o) {
  const Solved solved = solve_case(o.in, SlowProgress(), Brain::wanted);
  if (o.out == "-")
    write_to_stdout(models::plan_json(solved.plan));
  else
    models::write_plan(o.out, solved.plan);
}

void picture_command(const Options& o) {
  Shown shown;
  if (!o.show.empty()) things_from(o.show, shown);
  coil_on_from("--coil-on", o.coil_on, shown);
  const PictureSize size = size_from(o.size);
  std::optional<View> view;
  if (!o.from.empty()) view = view_from(o.from);
  const models::Progress progress = SlowProgress();
  using Tapes = geometry::TapeDistances;
  const Tapes tapes = !shown.has(Thing::numbers)           ? Tapes::left_out
                      : shown.coil_on == CoilOn::treatment ? Tapes::treatment_alone
                                                           : Tapes::each_path;
  // The head is read and the plan worked out while the driver gets ready to draw. What is wrong with the case
  // is said before what is wrong with the display.
  auto solving = std::async(std::launch::async, [&] {
    return solve_case(o.in, progress, shown.has(Thing::cortex) ? Brain::wanted : Brain::left_out,
                      Tapes::left_out);
  });
  std::optional<PreparedPicture> picture;
  std::exception_ptr no_picture;
  try {
    picture.emplace(size);
  } catch (const ViewerError&) {
    no_picture = std::current_exception();
  }
  Solved solved = solving.get();
  if (no_picture) std::rethrow_exception(no_picture);
  const geometry::Head& head = solved.loaded.head;
  const geometry::Case& entered = solved.kept.entered;
  std::future<geometry::Plan> measuring;
  if (tapes != Tapes::left_out)
    measuring = std::async(std::launch::async, [&] { return geometry::solve(head, entered, tapes); });
  if (!view) view = entered.side == geometry::Side::left ? View::left : View::right;
  shown.head_description = head_in_words(solved.kept, solved.loaded);
  if (shown.has(Thing::tolerance)) {
    progress("Trying placements by hand", 0);
    shown.tolerance = std::make_shared<const geometry::Tolerance>(
        geometry::tolerance(head, entered, solved.plan, entered.errors));
  }
  if (shown.has(Thing::gaps)) shown.gaps = gaps_under(head, entered, placement_shown(solved.plan, shown));
  if (head.cortex() != nullptr) shown.skin_opacity = skin_over_cortex;
  progress("Drawing", 0);
  // The head is on the stage by the time its tape distances are known.
  picture->show(head, entered, solved.plan, shown, *view);
  if (measuring.valid()) {
    solved.plan = measuring.get();
    picture->show(head, entered, solved.plan, shown, *view);
  }
  picture->write(o.out);
}

void sheet_command(const Options& o) {
  const auto paper = paper_named(o.paper);
  if (!paper) throw UsageError("--paper is \"" + o.paper + "\"; choose a4 or letter.");
  const models::Progress progress = SlowProgress();
  const Solved solved = solve_case(o.in, progress, Brain::wanted);
  progress("Drawing the sheet", 0);
  write_sheet(o.out, solved.kept, solved.loaded, solved.plan, *paper);
}

void tolerance_command(const Options& o) {
  const models::Progress progress = SlowProgress();
  const Solved solved = solve_case(o.in, progress, Brain::left_out, geometry::TapeDistances::left_out);
  progress("Trying placements by hand", 0);
  geometry::ToleranceOptions options;
  options.placements = o.placements;
  options.seed = o.seed;
  const geometry::HandErrors& errors = solved.kept.entered.errors;
  const auto found =
      geometry::tolerance(solved.loaded.head, solved.kept.entered, solved.plan, errors, options);
  if (o.out == "-") {
    write_to_stdout(models::tolerance_json(found, solved.plan, errors, options));
    return;
  }
  if (!o.out.empty()) models::write_tolerance(o.out, found, solved.plan, errors, options);
  write_to_stdout(tolerance_text(found, errors));
}

void contact_command(const Options& o) {
  Shown shown;
  coil_on_from("--on", o.coil_on, shown);
  geometry::ContactOptions options;
  options.tilt = {o.roll_deg, o.pitch_deg};
  options.cap_mm = o.cap_mm;
  const models::Progress progress = SlowProgress();
  const bool askew = o.roll_deg != 0 || o.pitch_deg != 0;
  const Solved solved =
      solve_case(o.in, progress, askew ? Brain::wanted : Brain::left_out, geometry::TapeDistances::left_out);
  progress("Laying the coil", 0);
  const geometry::Placement& placement = placement_shown(solved.plan, shown);
  const geometry::Case& entered = solved.kept.entered;
  const auto found = geometry::contact(solved.loaded.head, entered, placement, options);
  const models::ContactAsked asked{o.coil_on, placement, options};
  if (o.out == "-") {
    write_to_stdout(models::contact_json(found, entered, asked));
    return;
  }
  if (!o.out.empty()) models::write_contact(o.out, found, entered, asked);
  write_to_stdout(contact_text(found, entered, where_shown(shown)));
}

/// The guess as lines that can be copied into a case once they are confirmed.
std::string guess_text(const geometry::FiducialGuess& guess) {
  std::ostringstream text;
  text << std::fixed << std::setprecision(1) << geometry::guess_caution
       << "\nThe generic head was fitted to this skin and lies " << guess.misfit_mm
       << " mm from it, root mean square.\n";
  const auto line = [&](const char* name, const Eigen::Vector3d& p) {
    text << "\"" << name << "\": [" << p.x() << ", " << p.y() << ", " << p.z() << "]\n";
  };
  line("nasion", guess.at.nasion);
  line("inion", guess.at.inion);
  line("left_tragus", guess.at.left_tragus);
  line("right_tragus", guess.at.right_tragus);
  return text.str();
}

void head_command(const Options& o) {
  const auto unit = unit_from(o.unit);
  if (unit && is_mri(o.in))
    throw UsageError("--unit is for meshes; a NIfTI file says itself what its unit is.");
  if (o.out.empty() && !o.guess)
    throw UsageError("head needs --out for the skin, --guess for a first guess of the four points, or both.");
  const models::Progress progress = SlowProgress();
  const auto kind = is_mri(o.in) ? models::HeadKind::mri : models::HeadKind::mesh;
  const auto found = models::read_apart(models::own_program())({kind, o.in, unit}, progress);
  say(found.notes);
  if (o.guess) {
    progress("Looking for the four points", 0);
    write_to_stdout(guess_text(geometry::guess_fiducials(models::generic_head(), found.skin)));
  }
  if (!o.out.empty()) models::write_ply(o.out, found.skin);
}

/// `scalpmark read-skin KIND UNIT MEMORY_MB CPU_SECONDS FILE`: how the program calls itself to read a file
/// apart (models/heads/skin_reading.h). Not for people, so it is not in the help.
int answer_reading(const std::vector<std::string>& words) {
  if (words.size() != 7) throw UsageError("read-skin is for the program's own use; use head.");
  models::ReadingLimits limits;
  limits.memory_mb = std::stoul(words[4]);
  limits.cpu_seconds = static_cast<unsigned>(std::stoul(words[5]));
  const models::SkinRequest request{words[2] == "mri" ? models::HeadKind::mri : models::HeadKind::mesh,
                                    words[6], words[3] == "any" ? std::nullopt : unit_from(words[3])};
  // What libraries print must not get between the answers.
  const int answers_to = ::dup(STDOUT_FILENO);
  const int nowhere = ::open("/dev/null", O_WRONLY);
  if (answers_to < 0 || nowhere < 0 || ::dup2(nowhere, STDOUT_FILENO) < 0) return failed;
  return models::answer_skin_request(request, limits, answers_to) ? done : failed;
}

int run(int argc, const char* const* argv, OpenWindow open_window) {
  if (argc > 1 && std::string_view(argv[1]) == "read-skin") return answer_reading({argv, argv + argc});
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
  Options o;
  std::string window_case;
  app.add_option("CASE", window_case, "A case file to open the window on; without it, the demo case")
      ->type_name("FILE");

  auto* solve = app.add_subcommand("solve", "Compute the plan of a case and write it as JSON");
  solve->add_option("CASE", o.in, "The case file (JSON): what was measured and chosen")
      ->required()
      ->type_name("FILE");
  solve->add_option("--out", o.out, "Where the plan goes; - for the standard output")
      ->required()
      ->type_name("PLAN.json");

  auto* picture = app.add_subcommand("picture", "Draw the plan of a case on its head, as a PNG picture");
  picture->add_option("CASE", o.in, "The case file (JSON): what was measured and chosen")
      ->required()
      ->type_name("FILE");
  picture->add_option("--out", o.out, "Where the picture goes")->required()->type_name("FILE.png");
  picture
      ->add_option(
          "--from", o.from,
          "Where to look from: " + list_of(view_names()) + "; without it, the side that is stimulated")
      ->type_name("VIEW");
  picture->add_option("--size", o.size, "Width and height in pixels; without it, 1600x1200")
      ->type_name("WxH");
  picture->add_option("--show", o.show, "What to show, separated by commas: " + list_of(thing_names()))
      ->type_name("LIST");
  picture
      ->add_option(
          "--coil-on", o.coil_on,
          "Where the coil lies: start, hotspot, treatment, or a grid node as ROW,COLUMN; without it, "
          "treatment")
      ->type_name("PLACE");

  auto* sheet = app.add_subcommand("sheet", "Write the placement sheet of a case, as a PDF file to print");
  sheet->add_option("CASE", o.in, "The case file (JSON): what was measured and chosen")
      ->required()
      ->type_name("FILE");
  sheet->add_option("--out", o.out, "Where the sheet goes")->required()->type_name("FILE.pdf");
  sheet->add_option("--paper", o.paper, "a4 or letter; without it, a4")->type_name("PAPER");

  auto* tolerance = app.add_subcommand(
      "tolerance", "Say how far off the pulse could be when a case is measured, marked and laid by hand");
  tolerance->add_option("CASE", o.in, "The case file (JSON); its \"errors\" say how far off hands are")
      ->required()
      ->type_name("FILE");
  tolerance
      ->add_option("--out", o.out,
                   "Where the regions and shares go as JSON as well; - for the standard output")
      ->type_name("FILE.json");
  tolerance->add_option("--placements", o.placements, "How many placements to try; without it, 10000")
      ->check(CLI::Range(0, 1000000))
      ->type_name("N");
  tolerance->add_option("--seed", o.seed, "The same number gives the same placements; without it, 1")
      ->type_name("N");

  auto* contact = app.add_subcommand(
      "contact",
      "Say how the coil rests: where it touches, the gap under each wing, whether an ear or the brow is in "
      "the way");
  contact->add_option("CASE", o.in, "The case file (JSON); its \"coil\" says which coil, and how it is laid")
      ->required()
      ->type_name("FILE");
  contact
      ->add_option(
          "--on", o.coil_on,
          "Where the coil lies: treatment, hotspot, start, or a grid node as ROW,COLUMN; without it, "
          "treatment")
      ->type_name("PLACE");
  contact
      ->add_option("--roll", o.roll_deg,
                   "Held askew by so many degrees: its right side (seen from the handle) down, or up if "
                   "negative; says where the pulse goes instead")
      ->check(CLI::Range(-geometry::most_tilt_deg, geometry::most_tilt_deg))
      ->type_name("DEGREES");
  contact->add_option("--pitch", o.pitch_deg, "The same: its front edge up, or down if negative")
      ->check(CLI::Range(-geometry::most_tilt_deg, geometry::most_tilt_deg))
      ->type_name("DEGREES");
  contact->add_option("--cap", o.cap_mm, "Thickness of the cap in mm, to hear whether the coil presses it in")
      ->check(CLI::Range(geometry::ranges::lift_mm.low, geometry::ranges::lift_mm.high))
      ->type_name("MM");
  contact
      ->add_option("--out", o.out,
                   "Where all this and the gap at places 4 mm apart go as JSON as well; - for the standard "
                   "output")
      ->type_name("FILE.json");

  auto* head =
      app.add_subcommand("head", "Read a mesh or an MRI and write the skin found in it, as a PLY mesh in mm");
  head->add_option("FILE", o.in, "OBJ, PLY, STL, glTF or GLB mesh, or NIfTI volume (.nii, .nii.gz)")
      ->required()
      ->type_name("FILE");
  head->add_option("--out", o.out, "Where the skin goes")->type_name("HEAD.ply");
  head->add_flag("--guess", o.guess,
                 "Print a first guess of nasion, inion and tragi, to be confirmed on the head before use");
  head->add_option("--unit", o.unit, "Unit of a mesh: mm, cm, m or in; without it, told from its size")
      ->type_name("UNIT");

  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& e) {
    if (e.get_exit_code() == static_cast<int>(CLI::ExitCodes::Success)) {
      app.exit(e, std::cout, std::cerr);  // help or version
      return done;
    }
    throw UsageError(std::string(e.what()) + "; write scalpmark --help for how to call it.");
  }
  if (solve->parsed())
    solve_command(o);
  else if (picture->parsed())
    picture_command(o);
  else if (sheet->parsed())
    sheet_command(o);
  else if (tolerance->parsed())
    tolerance_command(o);
  else if (contact->parsed())
    contact_command(o);
  else if (head->parsed())
    head_command(o);
  else if (!window_case.empty() && !std::filesystem::exists(window_case))
    throw UsageError("\"" + window_case +
                     "\" is neither a command nor a file; write scalpmark --help for how to call them.");
  else
    return open_window(window_case);
  return done;
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
  } catch (const std::bad_alloc&) {
    return report("There is not enough memory for this; close other programs or use a smaller file.", failed);
  } catch (const std::exception& e) {
    return report(e.what(), failed);
  } catch (...) {
    return report("Something went wrong that the program has no words for; try again.", failed);
  }
}

}  // namespace scalpmark::viewer
