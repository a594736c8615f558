#include "models/cases/case_file.h"

#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "geometry/base/ranges.h"
#include "models/files/error.h"
#include "models/files/strict_json.h"
#include "tests/support/case_texts.h"
#include "tests/support/json_schema.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using namespace scalpmark::tests;
using models::ModelError;
namespace fs = std::filesystem;
namespace ranges = geometry::ranges;

namespace {

bool same(const models::CaseFile& a, const models::CaseFile& b) {
  return models::case_json(a) == models::case_json(b) && a.folder == b.folder &&
         a.the_case.coil.model.model == b.the_case.coil.model.model;
}

}  // namespace

TEST_CASE("a case with nothing but a head has the settings of common practice") {
  const models::CaseFile case_file =
      parsed_case(R"({"format": "scalpmark-case", "version": 2, "head": {"kind": "generic"}})");
  CHECK(case_file.notes.empty());
  CHECK(case_file.head.kind == models::HeadKind::generic);
  CHECK(case_file.the_case.label.empty());
  CHECK_FALSE(case_file.the_case.tape_mm.nasion_inion_mm);
  CHECK(case_file.the_case.side == geometry::Side::left);
  // Common practice, no source: 5 cm toward the ear, 1 cm forward, points 1 cm apart, coil at 45 degrees with
  // its edge 6 cm from its centre, treatment 5 cm forward.
  CHECK(case_file.the_case.search.lateral_mm == 50);
  CHECK(case_file.the_case.search.anterior_mm == 10);
  CHECK(case_file.the_case.search.pitch_mm == 10);
  CHECK(case_file.the_case.search.grid_on == geometry::GridOn::edge_marks);
  CHECK(case_file.the_case.coil.angle_deg == 45);
  CHECK(case_file.the_case.coil.centre_to_edge_mm == 60);
  CHECK(case_file.the_case.coil.lift_mm == 0);
  // The search's marks are measured before a coil is on the head, the treatment's drawn with the coil in
  // place, and the coil is laid by looking at its edge (common practice, no source).
  CHECK(case_file.the_case.search.drawn_by == geometry::MarkRule::tape);
  CHECK(case_file.the_case.treatment.drawn_by == geometry::MarkRule::drop);
  CHECK(case_file.the_case.coil.laid_by == geometry::MarkRule::drop);
  CHECK(case_file.the_case.coil.model.model == "figure-8-70");
  CHECK(case_file.the_case.hotspot.row == 0);
  CHECK(case_file.the_case.hotspot.column == 0);
  CHECK(case_file.the_case.treatment.rule == geometry::TreatmentRule::forward);
  CHECK(case_file.the_case.treatment.distance_mm == 50);
  // The brim two centimetres above the nasion (common practice, no source).
  CHECK(case_file.the_case.cap.brim_over_nasion_mm == 20);
  CHECK(case_file.folder == "/somewhere");
}

TEST_CASE("a case of version 1 keeps its one rule for drawing and laying alike, and that is said") {
  using geometry::MarkRule;
  const auto rules = [](const models::CaseFile& case_file) {
    return std::array{case_file.the_case.search.drawn_by, case_file.the_case.treatment.drawn_by,
                      case_file.the_case.coil.laid_by};
  };
  const models::CaseFile named = parsed_case(case_opening + R"(, "coil": {"mark_rule": "nearest"}})");
  CHECK(rules(named) == std::array{MarkRule::nearest, MarkRule::nearest, MarkRule::nearest});
  REQUIRE(named.notes.size() == 1);
  CHECK_THAT(english(named.notes.front()), Catch::Contains("version 1") && Catch::Contains("(nearest)"));
  CHECK(rules(parsed_case(case_opening + "}")) == std::array{MarkRule::tape, MarkRule::tape, MarkRule::tape});
  CHECK(rules(parsed_case(case_opening + R"(, "coil": {"angle_deg": 30}})")) ==
        std::array{MarkRule::tape, MarkRule::tape, MarkRule::tape});
  // Each version knows its own keys alone.
  const std::string two = R"({"format": "scalpmark-case", "version": 2, "head": {"kind": "generic"})";
  CHECK_THROWS_AS(parsed_case(two + R"(, "coil": {"mark_rule": "tape"}})"), models::ModelError);
  CHECK_THROWS_AS(parsed_case(case_opening + R"(, "coil": {"laid_by": "tape"}})"), models::ModelError);
  CHECK_THROWS_AS(parsed_case(case_opening + R"(, "search": {"drawn_by": "tape"}})"), models::ModelError);
  CHECK_THROWS_AS(parsed_case(case_opening + R"(, "treatment": {"drawn_by": "tape"}})"), models::ModelError);
}

TEST_CASE("every setting of a case is read") {
  const models::CaseFile case_file =
      parsed_case(R"({"format": "scalpmark-case", "version": 2, "label": "Übung",
    "head": {"kind": "mesh", "file": "scans/a b.ply", "unit": "cm", "nasion": [1, 2, 3], "inion": [4, 5, 6],
             "left_tragus": [7, 8, 9.5], "right_tragus": [-1e1, 0, 0]},
    "tape_mm": {"nasion_inion": 361.5, "circumference": 570}, "side": "right",
    "search": {"lateral_mm": 45, "anterior_mm": -5, "pitch_mm": 8, "grid_on": "pulse_points",
               "drawn_by": "drop"},
    "coil": {"model": "figure-8-70", "angle_deg": -30, "centre_to_edge_mm": 55, "lift_mm": 2, "laid_by": "nearest"},
    "hotspot": {"row": 1, "column": -1}, "treatment": {"rule": "landmark", "label": "f4", "drawn_by": "tape"}})");
  CHECK(case_file.the_case.search.drawn_by == geometry::MarkRule::drop);
  CHECK(case_file.the_case.treatment.drawn_by == geometry::MarkRule::tape);
  CHECK(case_file.the_case.label == "Übung");
  CHECK(case_file.head.kind == models::HeadKind::mesh);
  CHECK(case_file.head.file == "scans/a b.ply");
  CHECK(case_file.head.unit == models::Unit::centimetre);
  REQUIRE(case_file.head.fiducials);
  CHECK(case_file.head.fiducials->nasion == Eigen::Vector3d(1, 2, 3));
  CHECK(case_file.head.fiducials->inion == Eigen::Vector3d(4, 5, 6));
  CHECK(case_file.head.fiducials->left_tragus == Eigen::Vector3d(7, 8, 9.5));
  CHECK(case_file.head.fiducials->right_tragus == Eigen::Vector3d(-10, 0, 0));
  CHECK(case_file.the_case.tape_mm.nasion_inion_mm == 361.5);
  CHECK_FALSE(case_file.the_case.tape_mm.tragus_tragus_mm);
  CHECK(case_file.the_case.tape_mm.circumference_mm == 570.0);
  CHECK(case_file.the_case.side == geometry::Side::right);
  CHECK(case_file.the_case.search.lateral_mm == 45);
  CHECK(case_file.the_case.search.anterior_mm == -5);
  CHECK(case_file.the_case.search.pitch_mm == 8);
  CHECK(case_file.the_case.search.grid_on == geometry::GridOn::pulse_points);
  CHECK(case_file.the_case.coil.angle_deg == -30);
  CHECK(case_file.the_case.coil.centre_to_edge_mm == 55);
  CHECK(case_file.the_case.coil.lift_mm == 2);
  CHECK(case_file.the_case.coil.laid_by == geometry::MarkRule::nearest);
  CHECK(case_file.the_case.hotspot.row == 1);
  CHECK(case_file.the_case.hotspot.column == -1);
  CHECK(case_file.the_case.treatment.rule == geometry::TreatmentRule::landmark);
  CHECK(case_file.the_case.treatment.label == "F4");
}

TEST_CASE("a case written and read again is the same case") {
  std::vector<models::CaseFile> cases{models::default_case()};
  models::CaseFile mesh = models::default_case();
  mesh.head.kind = models::HeadKind::mesh;
  mesh.head.file = "scan \"one\".ply";
  mesh.head.unit = models::Unit::metre;
  mesh.head.fiducials =
      geometry::Fiducials{{0.1, 1.0 / 3, -0.0}, {1e-7, -118.565, 0}, {-86, 1, 2}, {86, 3, 4}};
  mesh.the_case.label = "line\nend, tab\t, \\, ü, 頭";
  mesh.the_case.search.lateral_mm = 47.3;
  mesh.the_case.tape_mm.tragus_tragus_mm = 1.0 / 3 + 360;
  mesh.the_case.hotspot = {-1, 1};
  mesh.the_case.treatment = {geometry::TreatmentRule::landmark, 50, "AFz"};
  cases.push_back(mesh);
  models::CaseFile mri = mesh;
  mri.head.kind = models::HeadKind::mri;
  mri.head.unit.reset();
  mri.the_case.side = geometry::Side::right;
  mri.the_case.coil.laid_by = geometry::MarkRule::drop;
  mri.the_case.cap.brim_over_nasion_mm = 25.4;
  cases.push_back(mri);
  const JsonSchema schema("case.schema.json");
  for (const auto& case_file : cases) {
    const std::string json = models::case_json(case_file);
    CAPTURE(json);
    CHECK(schema.objection(json).empty());
    const models::CaseFile again = models::parse_case(json, case_file.folder, "again.json");
    CHECK(same(again, case_file));
    if (case_file.head.fiducials) {
      CHECK(again.head.fiducials->nasion == case_file.head.fiducials->nasion);
      CHECK(again.head.file == case_file.head.file);
      CHECK(again.the_case.label == case_file.the_case.label);
      CHECK(again.the_case.cap == case_file.the_case.cap);
      CHECK(again.the_case.tape_mm.tragus_tragus_mm == case_file.the_case.tape_mm.tragus_tragus_mm);
    }
  }
}

TEST_CASE("a case on disk belongs to its owner alone and is found with its head from a new folder") {
  const TemporaryFolder folder;
  fs::create_directory(folder / "scans");
  fs::create_directory(folder / "other");
  models::CaseFile case_file =
      parsed_case(case_with_head("{\"kind\": \"mesh\", \"file\": \"scans/a.ply\", " + four_points + "}"));
  case_file.folder = folder.path();
  models::write_case(folder / "a.json", case_file);
  struct stat status {};
  REQUIRE(::stat((folder / "a.json").c_str(), &status) == 0);
  CHECK((status.st_mode & 0777U) == 0600);
  CHECK(models::read_case(folder / "a.json").head.file == "scans/a.ply");
  CHECK(models::read_case(folder / "a.json").folder == folder.path());
  models::write_case(folder / "other" / "b.json", case_file);
  const models::CaseFile moved = models::read_case(folder / "other" / "b.json");
  CHECK(moved.folder / moved.head.file == folder / "scans" / "a.ply");
  models::write_case(folder / "scans" / "c.json", case_file);
  CHECK(models::read_case(folder / "scans" / "c.json").head.file == "a.ply");
}

TEST_CASE("a head without its four points cannot be kept") {
  models::CaseFile case_file = models::default_case();
  case_file.head.kind = models::HeadKind::mesh;
  case_file.head.file = "a.ply";
  CHECK(is_sentence(sentence_of<ModelError>([&] { (void)models::case_json(case_file); })));
  case_file.head.fiducials.emplace();
  case_file.head.file = "not\xffutf8.ply";
  const TemporaryFolder folder;
  CHECK(is_sentence(sentence_of<ModelError>([&] { models::write_case(folder / "a.json", case_file); })));
  case_file.head.file = "a.ply";
  case_file.the_case.search.lateral_mm = std::numeric_limits<double>::quiet_NaN();
  CHECK(is_sentence(sentence_of<ModelError>([&] { models::write_case(folder / "a.json", case_file); })));
  CHECK(folder.count() == 0);
}

TEST_CASE("one error for a cap put on again, as cases had it, is read as its slides and its turn, and said") {
  const auto read = parsed_case(case_with(R"("errors": {"cap_shift_mm": 6})"));
  const geometry::HandErrors& errors = read.the_case.errors;
  CHECK(errors.cap_forward_mm == 6);
  CHECK(errors.cap_side_mm == 6);
  // Six millimetres at the brim over the nose, some 90 mm from the upright, are 4 degrees.
  CHECK(errors.cap_turn_deg == Approx(6.0 / 90 * 180 / M_PI).margin(0.3));
  CHECK(errors.tape_mm == geometry::HandErrors{}.tape_mm);
  REQUIRE_FALSE(read.notes.empty());
  CHECK_THAT(english(read.notes.back()),
             Catch::Contains("one error for the cap (6 mm)") && Catch::Contains("4 degrees"));
  // Marks on the skin are on no cap.
  CHECK(parsed_case(case_with(R"("errors": {"cap_shift_mm": 0})")).the_case.errors.cap_turn_deg == 0);
  const std::string again = models::case_json(read);
  CHECK(again.find("cap_shift_mm") == std::string::npos);
  CHECK(parsed_case(again).the_case.errors == errors);
  CHECK_THAT(case_refusal(case_with(R"("errors": {"cap_shift_mm": 3, "cap_turn_deg": 2})")),
             Catch::Contains("errors.cap_shift_mm is an older word for what cap_turn_deg says too"));
}

TEST_CASE("the demo cases and the starting values that ship are valid by their schemas and read") {
  const fs::path root = fs::path(SCALPMARK_SOURCE_DIR) / "models";
  const JsonSchema case_schema("case.schema.json"), starting_schema("starting-values.schema.json");
  int count = 0;
  for (const auto& entry : fs::directory_iterator(root / "demo")) {
    if (entry.path().extension() != ".json") continue;
    CAPTURE(entry.path());
    CHECK(case_schema.objection(read_bytes(entry.path())).empty());
    const models::CaseFile case_file = models::read_case(entry.path());
    CHECK_FALSE(case_file.the_case.label.empty());
    ++count;
  }
  CHECK(count >= 2);
  for (const auto& entry : fs::directory_iterator(root / "data/starting_values"))
    CHECK(starting_schema.objection(read_bytes(entry.path())).empty());
  CHECK(same(models::default_case(),
             models::parse_case(R"({"format": "scalpmark-case", "version": 2, "head": {"kind": "generic"}})",
                                "", "default")));
}
