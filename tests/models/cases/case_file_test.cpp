#include "models/cases/case_file.h"

#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "geometry/base/ranges.h"
#include "models/files/error.h"
#include "models/files/strict_json.h"
#include "tests/support/json_schema.h"
#include "tests/support/sentence.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using models::ModelError;
using tests::is_sentence;
using tests::JsonSchema;
using tests::read_bytes;
using tests::sentence_of;
using tests::TemporaryFolder;
using tests::write_bytes;
namespace fs = std::filesystem;
namespace ranges = geometry::ranges;

namespace {

const std::string opening = R"({"format": "scalpmark-case", "version": 1, "head": {"kind": "generic"})";

std::string with(const std::string& key_and_value) {
  return opening + ", " + key_and_value + "}";
}

/// The cap came with version 2.
std::string in_version_2(std::string json) {
  const std::string one = "\"version\": 1";
  return json.replace(json.find(one), one.size(), "\"version\": 2");
}

std::string with_head(const std::string& head) {
  return R"({"format": "scalpmark-case", "version": 1, "head": )" + head + "}";
}

const std::string four =
    R"("nasion": [0, 90, 0], "inion": [0, -90, 0], "left_tragus": [-75, 0, 0], "right_tragus": [75, 0, 0])";

models::CaseFile parse(const std::string& json) {
  return models::parse_case(json, "/somewhere", "bench.json");
}

std::string refusal(const std::string& json) {
  return sentence_of<ModelError>([&] { (void)parse(json); });
}

bool same(const models::CaseFile& a, const models::CaseFile& b) {
  return models::case_json(a) == models::case_json(b) && a.folder == b.folder &&
         a.the_case.coil.model.model == b.the_case.coil.model.model;
}

struct Bad {
  std::string json;
  std::string said;  // what the sentence must name
};

/// Cases that both the reader and the schema refuse.
const std::vector<Bad> bad_by_both{
    {R"([1, 2])", "is not a Scalpmark case: it should be a group"},
    {R"("text")", "is not a Scalpmark case"},
    {R"({"version": 1, "head": {"kind": "generic"}})", "format is missing"},
    {R"({"format": "scalpmark-plan", "version": 1, "head": {"kind": "generic"}})",
     "format must be \"scalpmark-case\", but is \"scalpmark-plan\""},
    {R"({"format": "scalpmark-case", "head": {"kind": "generic"}})", "version is missing"},
    {R"({"format": "scalpmark-case", "version": 3, "head": {"kind": "generic"}})",
     "version must be from 1 to 2, but is 3"},
    {R"({"format": "scalpmark-case", "version": "1", "head": {"kind": "generic"}})",
     "version must be from 1 to 2, but is \"1\""},
    {R"({"format": "scalpmark-case", "version": 1})", "head is missing"},
    {with(R"("pitch": 3)"), "\"pitch\" is not a key known here"},
    {with(R"("search": {"pitch": 3})"), "search.\"pitch\" is not a key known here"},
    {with(R"("coil": {"angle": 3})"), "coil.\"angle\""},
    {with(R"("hotspot": {"col": 1})"), "hotspot.\"col\""},
    {with(R"("treatment": {"site": 1})"), "treatment.\"site\""},
    {with(R"("tape_mm": {"length": 300})"), "tape_mm.\"length\""},
    {in_version_2(with(R"("cap": {"brim": 20})")), "cap.\"brim\" is not a key known here"},
    {in_version_2(with(R"("cap": {"brim_over_nasion_mm": "two"})")),
     "cap.brim_over_nasion_mm must be a number"},
    {in_version_2(with(R"("cap": 20)")), "cap must be a group"},
    {with(R"("cap": {"brim_over_nasion_mm": 20})"), "\"cap\" is not a key known here"},
    {with(R"("label": 5)"), "label must be text in quotes, but is 5"},
    {with("\"label\": \"" + std::string(201, 'a') + "\""), "label must be at most 200 characters"},
    {with(R"("side": "Left")"), "side must be left or right, but is \"Left\""},
    {with(R"("side": null)"), "side must be left or right, but is null"},
    {with(R"("search": [])"), "search must be a group { }, but is a list of 0"},
    {with(R"("search": {"pitch_mm": "ten"})"),
     "bench.json: search.pitch_mm must be a number from 2 to 20 (mm), but is \"ten\"; correct it and read "
     "the "
     "case again."},
    {with(R"("search": {"pitch_mm": true})"), "search.pitch_mm must be a number"},
    {with(R"("search": {"pitch_mm": [10]})"), "search.pitch_mm must be a number"},
    {with(R"("search": {"pitch_mm": null})"), "search.pitch_mm must be a number"},
    {with(R"("search": {"grid_on": "skin"})"), "search.grid_on must be edge_marks or pulse_points"},
    {with(R"("coil": {"model": 70})"), "coil.model must be text in quotes"},
    {with(R"("coil": {"mark_rule": "laser"})"), "coil.mark_rule must be tape, drop or nearest"},
    {with(R"("hotspot": {"row": 2})"), "hotspot.row must be a whole number from -1 to 1, but is 2"},
    {with(R"("hotspot": {"column": 0.5})"), "hotspot.column must be a whole number from -1 to 1, but is 0.5"},
    {with(R"("treatment": {"rule": "beam"})"), "treatment.rule must be forward or landmark"},
    {with(R"("treatment": {"rule": "landmark"})"), "treatment.label is missing"},
    {with(R"("treatment": {"rule": "landmark", "label": 3})"), "treatment.label must be text"},
    {with(R"("treatment": {"rule": "landmark", "label": "F3", "distance_mm": 50})"),
     "treatment.distance_mm belongs to the rule forward"},
    {with(R"("treatment": {"label": "F3"})"), "treatment.label belongs to the rule landmark"},
    {with_head("7"), "head must be a group"},
    {with_head("{}"), "head.kind is missing"},
    {with_head(R"({"kind": "ct"})"), "head.kind must be generic, mesh or mri, but is \"ct\""},
    {with_head(R"({"kind": "generic", "file": "a.ply"})"), "head.file does not go with the generic head"},
    {with_head(R"({"kind": "generic", "unit": "mm"})"), "head.unit does not go with the generic head"},
    {with_head(R"({"kind": "generic", "nasion": [0, 0, 0]})"),
     "head.nasion does not go with the generic head"},
    {with_head("{\"kind\": \"mesh\", " + four + "}"), "head.file is missing"},
    {with_head("{\"kind\": \"mesh\", \"file\": \"\", " + four + "}"), "head.file must be the name of a file"},
    {with_head("{\"kind\": \"mesh\", \"file\": 3, " + four + "}"), "head.file must be text"},
    {with_head("{\"kind\": \"mesh\", \"file\": \"a.ply\", \"unit\": \"inch\", " + four + "}"),
     "head.unit must be mm, cm, m or in, but is \"inch\""},
    {with_head("{\"kind\": \"mri\", \"file\": \"a.nii\", \"unit\": \"mm\", " + four + "}"),
     "head.unit does not go with an mri head"},
    {with_head("{\"kind\": \"mri\", \"file\": \"a.nii\", \"ear\": 1, " + four + "}"), "head.\"ear\""},
    {with_head(
         R"({"kind": "mesh", "file": "a.ply", "nasion": [0, 90, 0], "inion": [0, -90, 0], "left_tragus": [-75, 0, 0]})"),
     "head.right_tragus is missing"},
    {with_head(
         R"({"kind": "mesh", "file": "a.ply", "nasion": [0, 90], "inion": [0, -90, 0], "left_tragus": [-75, 0, 0], "right_tragus": [75, 0, 0]})"),
     "head.nasion must be three numbers [x, y, z] in mm, but is a list of 2"},
    {with_head(
         R"({"kind": "mesh", "file": "a.ply", "nasion": [0, 90, "0"], "inion": [0, -90, 0], "left_tragus": [-75, 0, 0], "right_tragus": [75, 0, 0]})"),
     "head.nasion must be three numbers"},
};

struct RangedKey {
  std::string group, key;
  geometry::Range range;
};
const std::vector<RangedKey> ranged_keys{
    {"tape_mm", "nasion_inion", ranges::nasion_inion_mm},
    {"tape_mm", "tragus_tragus", ranges::tragus_tragus_mm},
    {"tape_mm", "circumference", ranges::circumference_mm},
    {"search", "lateral_mm", ranges::lateral_mm},
    {"search", "anterior_mm", ranges::anterior_mm},
    {"search", "pitch_mm", ranges::pitch_mm},
    {"coil", "angle_deg", ranges::angle_deg},
    {"coil", "centre_to_edge_mm", ranges::centre_to_edge_mm},
    {"coil", "lift_mm", ranges::lift_mm},
    {"hotspot", "row", ranges::spot},
    {"hotspot", "column", ranges::spot},
    {"hotspot", "forward_mm", ranges::hotspot_off_mm},
    {"hotspot", "outward_mm", ranges::hotspot_off_mm},
    {"treatment", "distance_mm", ranges::distance_mm},
    {"cap", "brim_over_nasion_mm", ranges::brim_over_nasion_mm},
    {"errors", "cap_forward_mm", ranges::error_mm},
    {"errors", "cap_side_mm", ranges::error_mm},
    {"errors", "cap_turn_deg", ranges::error_deg},
    {"errors", "cap_shift_mm", ranges::error_mm},
    {"answers", "step_percent", ranges::output_step_percent},
};

std::string with_number(const RangedKey& key, double value) {
  const bool whole = std::abs(value) < 1e6 && std::floor(value) == value;
  const std::string json =
      with("\"" + key.group + "\": {\"" + key.key +
           "\": " + (whole ? std::to_string(static_cast<int>(value)) : nlohmann::json(value).dump()) + "}");
  return key.group == "cap" || key.group == "answers" || key.key == "forward_mm" || key.key == "outward_mm"
             ? in_version_2(json)
             : json;
}

}  // namespace

TEST_CASE("a case with nothing but a head has the settings of common practice") {
  const models::CaseFile case_file =
      parse(R"({"format": "scalpmark-case", "version": 2, "head": {"kind": "generic"}})");
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
  const models::CaseFile named = parse(opening + R"(, "coil": {"mark_rule": "nearest"}})");
  CHECK(rules(named) == std::array{MarkRule::nearest, MarkRule::nearest, MarkRule::nearest});
  REQUIRE(named.notes.size() == 1);
  CHECK_THAT(english(named.notes.front()), Catch::Contains("version 1") && Catch::Contains("(nearest)"));
  CHECK(rules(parse(opening + "}")) == std::array{MarkRule::tape, MarkRule::tape, MarkRule::tape});
  CHECK(rules(parse(opening + R"(, "coil": {"angle_deg": 30}})")) ==
        std::array{MarkRule::tape, MarkRule::tape, MarkRule::tape});
  // Each version knows its own keys alone.
  const std::string two = R"({"format": "scalpmark-case", "version": 2, "head": {"kind": "generic"})";
  CHECK_THROWS_AS(parse(two + R"(, "coil": {"mark_rule": "tape"}})"), models::ModelError);
  CHECK_THROWS_AS(parse(opening + R"(, "coil": {"laid_by": "tape"}})"), models::ModelError);
  CHECK_THROWS_AS(parse(opening + R"(, "search": {"drawn_by": "tape"}})"), models::ModelError);
  CHECK_THROWS_AS(parse(opening + R"(, "treatment": {"drawn_by": "tape"}})"), models::ModelError);
}

TEST_CASE("every setting of a case is read") {
  const models::CaseFile case_file = parse(R"({"format": "scalpmark-case", "version": 2, "label": "Übung",
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
      parse(with_head("{\"kind\": \"mesh\", \"file\": \"scans/a.ply\", " + four + "}"));
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

TEST_CASE("the reader and the schema refuse the same cases") {
  const JsonSchema schema("case.schema.json");
  REQUIRE(schema.objection(opening + "}").empty());
  for (const Bad& bad : bad_by_both) {
    const std::string said = refusal(bad.json);
    CAPTURE(bad.json, said);
    CHECK(is_sentence(said));
    CHECK(said.rfind("bench.json", 0) == 0);
    CHECK(said.find(bad.said) != std::string::npos);
    CHECK_FALSE(schema.objection(bad.json).empty());
  }
}

TEST_CASE("one error for a cap put on again, as cases had it, is read as its slides and its turn, and said") {
  const auto read = parse(with(R"("errors": {"cap_shift_mm": 6})"));
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
  CHECK(parse(with(R"("errors": {"cap_shift_mm": 0})")).the_case.errors.cap_turn_deg == 0);
  const std::string again = models::case_json(read);
  CHECK(again.find("cap_shift_mm") == std::string::npos);
  CHECK(parse(again).the_case.errors == errors);
  CHECK_THAT(refusal(with(R"("errors": {"cap_shift_mm": 3, "cap_turn_deg": 2})")),
             Catch::Contains("errors.cap_shift_mm is an older word for what cap_turn_deg says too"));
}

TEST_CASE("ranges are the same in the reader and the schema, ends included") {
  const JsonSchema schema("case.schema.json");
  for (const RangedKey& key : ranged_keys) {
    CAPTURE(key.group, key.key);
    for (const double value : {key.range.low, key.range.high}) {
      CHECK(refusal(with_number(key, value)) == "(accepted)");
      CHECK(schema.objection(with_number(key, value)).empty());
    }
    for (const double value : {key.range.low - 0.001, key.range.high + 0.001, key.range.low - 1e300, 1e300}) {
      const std::string said = refusal(with_number(key, value));
      CAPTURE(value, said);
      CHECK(is_sentence(said));
      CHECK(said.find(key.group + "." + key.key + " must be a ") != std::string::npos);
      CHECK_FALSE(schema.objection(with_number(key, value)).empty());
    }
  }
}

TEST_CASE("a coil that does not ship and an unknown landmark are refused") {
  CHECK(refusal(with(R"("coil": {"model": "round-90"})")) ==
        "bench.json: coil.model must be a coil that ships (angled-8-150, figure-8-70, figure-8-90, "
        "round-100), but is \"round-90\"; correct it and "
        "read the case again.");
  CHECK(
      refusal(with(R"("treatment": {"rule": "landmark", "label": "Q9"})")).find("treatment.label must be") !=
      std::string::npos);
}

TEST_CASE("what is not JSON is refused with the place") {
  const std::vector<Bad> bad{
      {"", "bench.json is empty"},
      {" \n ", "bench.json is empty"},
      {"{", "ends too early"},
      {opening, "ends too early"},
      {"{\"format\": \"scalpmark-case\",\n  \"version\" 1}", "line 2, column 13"},
      {"hello", "line 1, column 1"},
      {opening + "} trailing", "does not belong there"},
      {opening + ", // comment\n}", "does not belong there"},
      {opening + ",}", "does not belong there"},
      {with("\"search\": {\"pitch_mm\": NaN}"), "does not belong there"},
      {with("\"search\": {\"pitch_mm\": Infinity}"), "does not belong there"},
      {with("\"search\": {\"pitch_mm\": 1e999}"), "the number 1e999 at line 1, column"},
      {with("\"search\": {\"pitch_mm\": -1e999}"), "too large"},
      {with("\"search\": {\"pitch_mm\": 0x10}"), "does not belong there"},
      {with("\"label\": \"\xff\xfe\""), "is not UTF-8"},
      {with("\"label\": \"\xc3\""), "is not UTF-8"},
      {with("\"label\": \"\\ud800\""), "does not belong there"},
      {with("\"label\": \"a\nb\""), "does not belong there"},
      {std::string("\0\0\0\0", 4), "holds zero bytes"},
      {opening + "}" + std::string("\0left", 5), "holds zero bytes"},
      {with("\"side\": \"left\", \"side\": \"right\""), "the key \"side\" is given twice"},
      {with("\"search\": {\"pitch_mm\": 5, \"pitch_mm\": 5}"), "the key \"pitch_mm\" is given twice"},
      {with_head("{\"kind\": \"mesh\", \"file\": \"a\\u0000b\", " + four + "}"),
       "head.file must be the name"},
  };
  for (const Bad& b : bad) {
    const std::string said = refusal(b.json);
    CAPTURE(b.json, said);
    CHECK(is_sentence(said));
    CHECK(said.rfind("bench.json", 0) == 0);
    CHECK(said.find(b.said) != std::string::npos);
  }
}

TEST_CASE("deep nesting is refused, however deep") {
  for (const std::size_t depth : {17UL, 1000UL, 500'000UL}) {
    CHECK(refusal(std::string(depth, '[')).find("nested deeper than 16") != std::string::npos);
    std::string groups;
    for (std::size_t i = 0; i < depth; ++i) groups += "{\"a\":";
    CHECK(refusal(groups).find("nested deeper than 16") != std::string::npos);
  }
  CHECK(refusal(std::string(16, '[') + std::string(16, ']')).find("is not a Scalpmark case") !=
        std::string::npos);
}

TEST_CASE("a hundred thousand unknown keys are refused like one") {
  std::string json = opening;
  for (int i = 0; i < 60'000; ++i) json += ",\"k" + std::to_string(i) + "\":1";
  CHECK(is_sentence(refusal(json + "}")));
}

TEST_CASE("a long value is shortened in its sentence, between characters") {
  std::string umlauts;
  for (int i = 0; i < 90; ++i) umlauts += "ü";
  const std::string said = refusal(with("\"side\": \"" + umlauts + "\""));
  CHECK(is_sentence(said));
  CHECK(said.size() < 200);
  CHECK(said.find("ü...") != std::string::npos);
}

TEST_CASE("a case file that is missing, a folder or over 8 MB is refused") {
  const TemporaryFolder folder;
  const auto refused = [](const fs::path& file) {
    return sentence_of<ModelError>([&] { (void)models::read_case(file); });
  };
  CHECK(refused(folder / "none.json").find("none.json does not exist") != std::string::npos);
  CHECK(refused(folder.path()).find("is a folder") != std::string::npos);
  write_bytes(folder / "big.json", opening + "}" + std::string(8'000'000, ' '));
  CHECK(refused(folder / "big.json").find("larger than") != std::string::npos);
  write_bytes(folder / "deep.json", std::string(500'000, '['));
  CHECK(refused(folder / "deep.json").find("deep.json is nested deeper") != std::string::npos);
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
