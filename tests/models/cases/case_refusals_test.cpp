// Cases that are refused: by the reader and by the schema alike.
#include <catch2/catch.hpp>
#include <cmath>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "geometry/base/ranges.h"
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
    {case_with(R"("pitch": 3)"), "\"pitch\" is not a key known here"},
    {case_with(R"("search": {"pitch": 3})"), "search.\"pitch\" is not a key known here"},
    {case_with(R"("coil": {"angle": 3})"), "coil.\"angle\""},
    {case_with(R"("hotspot": {"col": 1})"), "hotspot.\"col\""},
    {case_with(R"("treatment": {"site": 1})"), "treatment.\"site\""},
    {case_with(R"("tape_mm": {"length": 300})"), "tape_mm.\"length\""},
    {case_in_version_2(case_with(R"("cap": {"brim": 20})")), "cap.\"brim\" is not a key known here"},
    {case_in_version_2(case_with(R"("cap": {"brim_over_nasion_mm": "two"})")),
     "cap.brim_over_nasion_mm must be a number"},
    {case_in_version_2(case_with(R"("cap": 20)")), "cap must be a group"},
    {case_with(R"("cap": {"brim_over_nasion_mm": 20})"), "\"cap\" is not a key known here"},
    {case_with(R"("label": 5)"), "label must be text in quotes, but is 5"},
    {case_with("\"label\": \"" + std::string(201, 'a') + "\""), "label must be at most 200 characters"},
    {case_with(R"("side": "Left")"), "side must be left or right, but is \"Left\""},
    {case_with(R"("side": null)"), "side must be left or right, but is null"},
    {case_with(R"("search": [])"), "search must be a group { }, but is a list of 0"},
    {case_with(R"("search": {"pitch_mm": "ten"})"),
     "bench.json: search.pitch_mm must be a number from 2 to 20 (mm), but is \"ten\"; correct it and read "
     "the "
     "case again."},
    {case_with(R"("search": {"pitch_mm": true})"), "search.pitch_mm must be a number"},
    {case_with(R"("search": {"pitch_mm": [10]})"), "search.pitch_mm must be a number"},
    {case_with(R"("search": {"pitch_mm": null})"), "search.pitch_mm must be a number"},
    {case_with(R"("search": {"grid_on": "skin"})"), "search.grid_on must be edge_marks or pulse_points"},
    {case_with(R"("coil": {"model": 70})"), "coil.model must be text in quotes"},
    {case_with(R"("coil": {"mark_rule": "laser"})"), "coil.mark_rule must be tape, drop or nearest"},
    {case_with(R"("hotspot": {"row": 2})"), "hotspot.row must be a whole number from -1 to 1, but is 2"},
    {case_with(R"("hotspot": {"column": 0.5})"),
     "hotspot.column must be a whole number from -1 to 1, but is 0.5"},
    {case_with(R"("treatment": {"rule": "beam"})"), "treatment.rule must be forward or landmark"},
    {case_with(R"("treatment": {"rule": "landmark"})"), "treatment.label is missing"},
    {case_with(R"("treatment": {"rule": "landmark", "label": 3})"), "treatment.label must be text"},
    {case_with(R"("treatment": {"rule": "landmark", "label": "F3", "distance_mm": 50})"),
     "treatment.distance_mm belongs to the rule forward"},
    {case_with(R"("treatment": {"label": "F3"})"), "treatment.label belongs to the rule landmark"},
    {case_with_head("7"), "head must be a group"},
    {case_with_head("{}"), "head.kind is missing"},
    {case_with_head(R"({"kind": "ct"})"), "head.kind must be generic, mesh or mri, but is \"ct\""},
    {case_with_head(R"({"kind": "generic", "file": "a.ply"})"),
     "head.file does not go with the generic head"},
    {case_with_head(R"({"kind": "generic", "unit": "mm"})"), "head.unit does not go with the generic head"},
    {case_with_head(R"({"kind": "generic", "nasion": [0, 0, 0]})"),
     "head.nasion does not go with the generic head"},
    {case_with_head("{\"kind\": \"mesh\", " + four_points + "}"), "head.file is missing"},
    {case_with_head("{\"kind\": \"mesh\", \"file\": \"\", " + four_points + "}"),
     "head.file must be the name of a file"},
    {case_with_head("{\"kind\": \"mesh\", \"file\": 3, " + four_points + "}"), "head.file must be text"},
    {case_with_head("{\"kind\": \"mesh\", \"file\": \"a.ply\", \"unit\": \"inch\", " + four_points + "}"),
     "head.unit must be mm, cm, m or in, but is \"inch\""},
    {case_with_head("{\"kind\": \"mri\", \"file\": \"a.nii\", \"unit\": \"mm\", " + four_points + "}"),
     "head.unit does not go with an mri head"},
    {case_with_head("{\"kind\": \"mri\", \"file\": \"a.nii\", \"ear\": 1, " + four_points + "}"),
     "head.\"ear\""},
    {case_with_head(
         R"({"kind": "mesh", "file": "a.ply", "nasion": [0, 90, 0], "inion": [0, -90, 0], "left_tragus": [-75, 0, 0]})"),
     "head.right_tragus is missing"},
    {case_with_head(
         R"({"kind": "mesh", "file": "a.ply", "nasion": [0, 90], "inion": [0, -90, 0], "left_tragus": [-75, 0, 0], "right_tragus": [75, 0, 0]})"),
     "head.nasion must be three numbers [x, y, z] in mm, but is a list of 2"},
    {case_with_head(
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
      case_with("\"" + key.group + "\": {\"" + key.key + "\": " +
                (whole ? std::to_string(static_cast<int>(value)) : nlohmann::json(value).dump()) + "}");
  return key.group == "cap" || key.group == "answers" || key.key == "forward_mm" || key.key == "outward_mm"
             ? case_in_version_2(json)
             : json;
}

}  // namespace

TEST_CASE("the reader and the schema refuse the same cases") {
  const JsonSchema schema("case.schema.json");
  REQUIRE(schema.objection(case_opening + "}").empty());
  for (const Bad& bad : bad_by_both) {
    const std::string said = case_refusal(bad.json);
    CAPTURE(bad.json, said);
    CHECK(is_sentence(said));
    CHECK(said.rfind("bench.json", 0) == 0);
    CHECK(said.find(bad.said) != std::string::npos);
    CHECK_FALSE(schema.objection(bad.json).empty());
  }
}

TEST_CASE("ranges are the same in the reader and the schema, ends included") {
  const JsonSchema schema("case.schema.json");
  for (const RangedKey& key : ranged_keys) {
    CAPTURE(key.group, key.key);
    for (const double value : {key.range.low, key.range.high}) {
      CHECK(case_refusal(with_number(key, value)) == "(accepted)");
      CHECK(schema.objection(with_number(key, value)).empty());
    }
    for (const double value : {key.range.low - 0.001, key.range.high + 0.001, key.range.low - 1e300, 1e300}) {
      const std::string said = case_refusal(with_number(key, value));
      CAPTURE(value, said);
      CHECK(is_sentence(said));
      CHECK(said.find(key.group + "." + key.key + " must be a ") != std::string::npos);
      CHECK_FALSE(schema.objection(with_number(key, value)).empty());
    }
  }
}

TEST_CASE("a coil that does not ship and an unknown landmark are refused") {
  CHECK(case_refusal(case_with(R"("coil": {"model": "round-90"})")) ==
        "bench.json: coil.model must be a coil that ships (angled-8-150, figure-8-70, figure-8-90, "
        "round-100), but is \"round-90\"; correct it and "
        "read the case again.");
  CHECK(case_refusal(case_with(R"("treatment": {"rule": "landmark", "label": "Q9"})"))
            .find("treatment.label must be") != std::string::npos);
}

TEST_CASE("what is not JSON is refused with the place") {
  const std::vector<Bad> bad{
      {"", "bench.json is empty"},
      {" \n ", "bench.json is empty"},
      {"{", "ends too early"},
      {case_opening, "ends too early"},
      {"{\"format\": \"scalpmark-case\",\n  \"version\" 1}", "line 2, column 13"},
      {"hello", "line 1, column 1"},
      {case_opening + "} trailing", "does not belong there"},
      {case_opening + ", // comment\n}", "does not belong there"},
      {case_opening + ",}", "does not belong there"},
      {case_with("\"search\": {\"pitch_mm\": NaN}"), "does not belong there"},
      {case_with("\"search\": {\"pitch_mm\": Infinity}"), "does not belong there"},
      {case_with("\"search\": {\"pitch_mm\": 1e999}"), "the number 1e999 at line 1, column"},
      {case_with("\"search\": {\"pitch_mm\": -1e999}"), "too large"},
      {case_with("\"search\": {\"pitch_mm\": 0x10}"), "does not belong there"},
      {case_with("\"label\": \"\xff\xfe\""), "is not UTF-8"},
      {case_with("\"label\": \"\xc3\""), "is not UTF-8"},
      {case_with("\"label\": \"\\ud800\""), "does not belong there"},
      {case_with("\"label\": \"a\nb\""), "does not belong there"},
      {std::string("\0\0\0\0", 4), "holds zero bytes"},
      {case_opening + "}" + std::string("\0left", 5), "holds zero bytes"},
      {case_with("\"side\": \"left\", \"side\": \"right\""), "the key \"side\" is given twice"},
      {case_with("\"search\": {\"pitch_mm\": 5, \"pitch_mm\": 5}"), "the key \"pitch_mm\" is given twice"},
      {case_with_head("{\"kind\": \"mesh\", \"file\": \"a\\u0000b\", " + four_points + "}"),
       "head.file must be the name"},
  };
  for (const Bad& b : bad) {
    const std::string said = case_refusal(b.json);
    CAPTURE(b.json, said);
    CHECK(is_sentence(said));
    CHECK(said.rfind("bench.json", 0) == 0);
    CHECK(said.find(b.said) != std::string::npos);
  }
}

TEST_CASE("deep nesting is refused, however deep") {
  for (const std::size_t depth : {17UL, 1000UL, 500'000UL}) {
    CHECK(case_refusal(std::string(depth, '[')).find("nested deeper than 16") != std::string::npos);
    std::string groups;
    for (std::size_t i = 0; i < depth; ++i) groups += "{\"a\":";
    CHECK(case_refusal(groups).find("nested deeper than 16") != std::string::npos);
  }
  CHECK(case_refusal(std::string(16, '[') + std::string(16, ']')).find("is not a Scalpmark case") !=
        std::string::npos);
}

TEST_CASE("a hundred thousand unknown keys are refused like one") {
  std::string json = case_opening;
  for (int i = 0; i < 60'000; ++i) json += ",\"k" + std::to_string(i) + "\":1";
  CHECK(is_sentence(case_refusal(json + "}")));
}

TEST_CASE("a long value is shortened in its sentence, between characters") {
  std::string umlauts;
  for (int i = 0; i < 90; ++i) umlauts += "ü";
  const std::string said = case_refusal(case_with("\"side\": \"" + umlauts + "\""));
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
  write_bytes(folder / "big.json", case_opening + "}" + std::string(8'000'000, ' '));
  CHECK(refused(folder / "big.json").find("larger than") != std::string::npos);
  write_bytes(folder / "deep.json", std::string(500'000, '['));
  CHECK(refused(folder / "deep.json").find("deep.json is nested deeper") != std::string::npos);
}
