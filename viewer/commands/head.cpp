#include <CLI/CLI.hpp>
#include <algorithm>
#include <cctype>
#include <iomanip>
#include <memory>
#include <sstream>

#include "geometry/base/message.h"
#include "geometry/head/guess_fiducials.h"
#include "models/generic/generic_head.h"
#include "models/heads/kept_skins.h"
#include "models/heads/own_program.h"
#include "models/heads/skin_reading.h"
#include "models/meshes/mesh_file.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"

namespace scalpmark::viewer {

namespace {

struct HeadAsked {
  std::string in;
  Output out;
  bool guess = false, forget = false;
  std::optional<models::Unit> unit;
};

/// Whether the name is that of a NIfTI file, in capitals or not.
bool is_mri(const std::string& file) {
  std::string lower = file;
  std::transform(lower.begin(), lower.end(), lower.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return lower.ends_with(".nii") || lower.ends_with(".nii.gz");
}

/// The guess as lines that can be copied into a case once they are confirmed.
std::string guess_text(const geometry::FiducialGuess& guess) {
  std::ostringstream text;
  text
      << std::fixed << std::setprecision(1)
      << "A computer's first guess, not placed by hand: look at each point on the head, and confirm or move it before it is used."
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

void read_head(const HeadAsked& o) {
  if (o.forget) {
    const std::size_t count = models::KeptSkins().forget();
    if (count == 1)
      say({geometry::Message::verbatim("1 head was kept and is forgotten.")});
    else
      say({geometry::Message::verbatim(std::to_string(count) + " heads were kept and are forgotten.")});
    if (o.in.empty()) return;
  }
  if (o.in.empty()) throw UsageError("head needs a FILE; write scalpmark head --help for how to call it.");
  if (o.unit && is_mri(o.in))
    throw UsageError("--unit is for meshes; a NIfTI file says itself what its unit is.");
  if (o.out.file.empty() && !o.guess)
    throw UsageError("head needs --out for the skin, --guess for a first guess of the four points, or both.");
  check_output(o.out, "scalpmark-ply", {{geometry::Message::of("the scan"), o.in}});
  const models::Progress progress = SlowProgress();
  const auto kind = is_mri(o.in) ? models::HeadKind::mri : models::HeadKind::mesh;
  const auto found =
      models::read_once(models::read_apart(models::own_program()))({kind, o.in, o.unit}, progress);
  say(found.notes);
  if (o.guess) {
    progress(geometry::Message::verbatim("Looking for the four points"), 0);
    write_to_stdout(guess_text(geometry::guess_fiducials(models::generic_head(), found.skin)));
  }
  if (!o.out.file.empty()) models::write_ply(o.out.file, found.skin);
}

}  // namespace

void add_head(CLI::App& program) {
  auto* command = program.add_subcommand(
      "head", "Read a mesh or an MRI and write the skin found in it, as a PLY mesh in mm");
  const auto o = std::make_shared<HeadAsked>();
  command->add_option("FILE", o->in, "OBJ, PLY, STL, glTF or GLB mesh, or NIfTI volume (.nii, .nii.gz)")
      ->type_name("FILE");
  add_output(*command, o->out, "Where the skin goes")->type_name("HEAD.ply");
  command->add_flag("--guess", o->guess,
                    "Print a first guess of nasion, inion and tragi, to be confirmed on the head before use");
  command
      ->add_option_function<std::string>(
          "--unit", [o](const std::string& text) { o->unit = unit_named(text); },
          "Unit of a mesh: mm, cm, m or in; without it, told from its size")
      ->type_name("UNIT");
  command->add_flag(
      "--forget", o->forget,
      "Remove what was kept of heads read before, so that they open quickly; with FILE, before it is read");
  command->callback([o] { read_head(*o); });
}

}  // namespace scalpmark::viewer
