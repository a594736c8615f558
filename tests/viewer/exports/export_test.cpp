#include <sys/wait.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>
#include <string>

#include "geometry/plan/solve.h"
#include "models/cases/case_file.h"
#include "models/cases/case_head.h"
#include "models/files/own_files.h"
#include "models/meshes/mesh_file.h"
#include "tests/support/own_folder.h"
#include "viewer/exports/export_scene.h"

using namespace scalpmark;
using Eigen::Vector3d;
using models::ExportFormat;
using tests::slurp;
using Folder = tests::OwnFolder;

namespace {

struct ExportedCase {
  models::CaseFile file;
  geometry::Head head;
  geometry::Plan plan;
};

ExportedCase solved_case(models::CaseFile file) {
  auto head = models::load_head(file).head;
  auto plan = geometry::solve(head, file.the_case, geometry::TapeDistances::each_path);
  return {std::move(file), std::move(head), std::move(plan)};
}

models::CaseFile worked_case() {
  return models::read_case(SCALPMARK_SOURCE_DIR "/models/demo/bench-head.json");
}

/// Off the defaults: the right side, another coil, another rule, a narrow grid whose marks nearly touch.
models::CaseFile odd_case() {
  models::CaseFile file = models::default_case();
  geometry::take_hotspot(file.the_case, {1, -1});
  file.the_case.side = geometry::Side::right;
  file.the_case.tape_mm = {340.0, 350.0, 540.0};
  file.the_case.search.pitch_mm = 6;
  geometry::use_one_rule(file.the_case, geometry::MarkRule::tape);
  return file;
}

std::string written(const Folder& folder, const ExportedCase& solved, ExportFormat format,
                    bool above_brow = false) {
  static constexpr const char* names[]{"head.glb", "head.ply", "head.stl"};
  std::string file = folder.file(names[static_cast<int>(format)]);
  std::ofstream(file, std::ios::binary)
      << viewer::export_plan(solved.head, solved.file.the_case, solved.plan, format, above_brow);
  return file;
}

/// From the head's frame to the file's, mm: glTF has +Y up, +Z to the front, +X to the patient's left
/// (Khronos, glTF 2.0 Specification, 3.4).
Eigen::Matrix3d frame_of(const geometry::HeadAxes& axes, ExportFormat format) {
  if (format != ExportFormat::glb) return Eigen::Matrix3d::Identity();
  Eigen::Matrix3d m;
  m << -axes.right.transpose(), axes.up.transpose(), axes.front.transpose();
  return m;
}

/// The worst distance between what two plans say, in mm, `turned` bringing the other into this one's frame.
double furthest_apart(const geometry::Plan& a, const geometry::Plan& b, const Eigen::Matrix3d& turned) {
  double worst = 0;
  const auto compare = [&](const Vector3d& p, const Vector3d& q) {
    worst = std::max(worst, (p - turned * q).norm());
  };
  const auto placement = [&](const geometry::Placement& p, const geometry::Placement& q) {
    compare(p.wanted, q.wanted);
    compare(p.pulse, q.pulse);
    REQUIRE(p.mark.has_value() == q.mark.has_value());
    if (p.mark) compare(*p.mark, *q.mark);
    for (const auto rule : {geometry::MarkRule::tape, geometry::MarkRule::drop, geometry::MarkRule::nearest})
      if (p.edge_mark.by(rule) && q.edge_mark.by(rule)) compare(*p.edge_mark.by(rule), *q.edge_mark.by(rule));
    worst = std::max(worst, std::abs(p.pulse_tape->vertex_mm - q.pulse_tape->vertex_mm));
    worst = std::max(worst, std::abs(p.pulse_tape->left_tragus_mm - q.pulse_tape->left_tragus_mm));
  };
  placement(a.start, b.start);
  placement(a.hotspot, b.hotspot);
  placement(a.treatment, b.treatment);
  for (size_t i = 0; i < a.grid.size(); ++i) placement(a.grid[i].placement, b.grid[i].placement);
  REQUIRE(a.landmarks.size() == b.landmarks.size());
  for (size_t i = 0; i < a.landmarks.size(); ++i) compare(a.landmarks[i].at, b.landmarks[i].at);
  worst = std::max(worst, std::abs(a.tapes.nasion_inion_mm - b.tapes.nasion_inion_mm));
  worst = std::max(worst, std::abs(a.tapes.circumference_mm - b.tapes.circumference_mm));
  return worst;
}

/// ExportedCase anew on the skin that is found in the file.
geometry::Plan read_back(const ExportedCase& solved, const std::string& file,
                         const Eigen::Matrix3d& to_file) {
  const auto skin = models::read_mesh(file).skin;
  const geometry::Fiducials& f = solved.head.fiducials().at;
  const geometry::Head head(
      skin, {to_file * f.nasion, to_file * f.inion, to_file * f.left_tragus, to_file * f.right_tragus});
  return geometry::solve(head, solved.file.the_case, geometry::TapeDistances::each_path);
}

/// What admesh says of a file: its own words and figures.
std::string admesh(const Folder& folder, const std::string& file) {
  REQUIRE(std::system(("admesh '" + file + "' >'" + folder.file("admesh") + "' 2>&1").c_str()) == 0);
  return slurp(folder.file("admesh"));
}

double figure(const std::string& text, const std::string& before) {
  std::smatch found;
  REQUIRE(std::regex_search(text, found, std::regex(before + R"(\s*[:=]?\s*(-?[0-9.]+))")));
  return std::stod(found[1]);
}

/// One shell, no open edge, volume positive, nothing that admesh has to mend.
void check_printable(const std::string& said) {
  INFO(said);
  CHECK(figure(said, "Number of parts") == 1);
  CHECK(figure(said, "Volume") > 0);
  for (const char* trouble : {"Degenerate facets", "Edges fixed", "Facets removed", "Facets added",
                              "Facets reversed", "Backwards edges", "Normals fixed"})
    CHECK(figure(said, trouble) == 0);
  // Before and after mending: "with 1 disconnected edge", ... and the sum.
  std::smatch open;
  REQUIRE(
      std::regex_search(said, open, std::regex(R"(Total disconnected facets\s*:\s*([0-9]+)\s+([0-9]+))")));
  CHECK(open[1] == "0");
  CHECK(open[2] == "0");
}

}  // namespace

TEST_CASE("reading an export back gives the same plan within a tenth of a millimetre, whatever the format") {
  const Folder folder;
  const models::CaseFile scan = models::read_case(SCALPMARK_SOURCE_DIR "/models/demo/template-mri.json");
  for (const models::CaseFile& file : {worked_case(), odd_case(), scan}) {
    const ExportedCase solved = solved_case(file);
    for (const auto format : {ExportFormat::glb, ExportFormat::ply, ExportFormat::stl}) {
      const Eigen::Matrix3d to_file = frame_of(solved.head.axes(), format);
      const auto again = read_back(solved, written(folder, solved, format), to_file);
      INFO("format " << static_cast<int>(format));
      const double apart = furthest_apart(solved.plan, again, to_file.transpose());
      UNSCOPED_INFO("apart " << apart);
      CHECK(apart < 0.1);
    }
  }
}

TEST_CASE("a print is one closed skin at true size by admesh, whole and cut flat above the brow") {
  const Folder folder;
  const models::CaseFile scan = models::read_case(SCALPMARK_SOURCE_DIR "/models/demo/template-mri.json");
  for (const models::CaseFile& file : {worked_case(), odd_case(), scan}) {
    const ExportedCase solved = solved_case(file);
    for (const bool above_brow : {false, true}) {
      const std::string said = admesh(folder, written(folder, solved, ExportFormat::stl, above_brow));
      check_printable(said);
      // True size: as wide as the skin, and marks may stand out of it by 1.2 mm.
      double low = 1e9, high = -1e9;
      for (const auto& v : solved.head.skin().vertices()) {
        low = std::min(low, v.y());
        high = std::max(high, v.y());
      }
      if (!above_brow) {
        CHECK(figure(said, "Min Y") == Approx(low).margin(1.3));
        CHECK(figure(said, "Max Y") == Approx(high).margin(1.3));
      }
    }
  }
}

TEST_CASE("a GLB is valid by the Khronos validator, and its nodes have the names of what they show") {
  const std::string modules = SCALPMARK_SOURCE_DIR "/build/reference/npm/node_modules";
  INFO("scripts/reference-data fetches the validator");
  REQUIRE(std::filesystem::exists(modules + "/gltf-validator"));
  const Folder folder;
  for (const models::CaseFile& file : {worked_case(), odd_case()}) {
    const ExportedCase solved = solved_case(file);
    const std::string glb = written(folder, solved, ExportFormat::glb);
    const int status = std::system(("node '" SCALPMARK_SOURCE_DIR "/tests/npm/validate.js' '" + modules +
                                    "' '" + glb + "' >'" + folder.file("said") + "' 2>&1")
                                       .c_str());
    INFO(slurp(folder.file("said")));
    CHECK((WIFEXITED(status) && WEXITSTATUS(status) == 0));
    const std::string bytes = slurp(glb);
    std::uint32_t size = 0;
    std::memcpy(&size, bytes.data() + 12, sizeof size);
    const auto json = nlohmann::json::parse(bytes.substr(20, size));
    std::set<std::string> names;
    for (const auto& node : json["nodes"]) names.insert(node["name"]);
    for (const char* name : {"skin", "Nz", "Iz", "Cz", "left tragus", "right tragus", "C3", "F4", "hotspot",
                             "treatment", "pulse", "coil casing", "coil windings", "tape midline",
                             "tape coronal", "tape treatment", "grid +1 -1 edge mark"}) {
      INFO(name);
      CHECK(names.contains(name));
    }
    CHECK(json["nodes"].size() == names.size());  // each name once
    // The bench head's start lies under the hotspot's ring; the other case's is a step and more away.
    CHECK(names.contains("start") == (file.the_case.side == geometry::Side::right));
  }
}

TEST_CASE("every export is known for one of ours, and for no other kind") {
  const Folder folder;
  const ExportedCase solved = solved_case(worked_case());
  for (const auto format : {ExportFormat::glb, ExportFormat::ply, ExportFormat::stl})
    CHECK(models::own_format_of(written(folder, solved, format)) == models::own_format_of(format));
}

TEST_CASE("a mark in a PLY has the colour the stage gives it") {
  const Folder folder;
  const ExportedCase solved = solved_case(worked_case());
  const std::string bytes = slurp(written(folder, solved, ExportFormat::ply));
  const std::string header = bytes.substr(0, bytes.find("end_header\n") + 11);
  INFO(header);
  for (const char* line : {"format binary_little_endian 1.0\n", "property float x\n", "property uchar red\n"})
    CHECK(header.find(line) != std::string::npos);
  std::smatch found;
  REQUIRE(std::regex_search(header, found, std::regex("element vertex ([0-9]+)")));
  const size_t count = std::stoul(found[1]);
  std::set<std::array<unsigned char, 3>> colours;
  for (size_t i = 0; i < count; ++i) {
    const auto* c = reinterpret_cast<const unsigned char*>(bytes.data()) + header.size() + i * 15 + 12;
    colours.insert({c[0], c[1], c[2]});
  }
  for (const auto role : {viewer::Role::skin, viewer::Role::treatment, viewer::Role::hotspot,
                          viewer::Role::edge_mark, viewer::Role::landmark, viewer::Role::tape}) {
    const auto c = viewer::colour_of(role);
    CHECK(colours.contains({c.red, c.green, c.blue}));
  }
}
