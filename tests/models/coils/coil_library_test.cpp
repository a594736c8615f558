#include "models/coils/coil_library.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <filesystem>
#include <set>

#include "models/coils/coil_file.h"
#include "models/files/error.h"
#include "tests/support/json_schema.h"
#include "tests/support/sentence.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using Eigen::Vector2d;
using models::ModelError;
using tests::is_sentence;
using tests::JsonSchema;
using tests::sentence_of;

namespace {

namespace fs = std::filesystem;

bool inside(const std::vector<Vector2d>& outline, const Vector2d& p) {
  bool in = false;
  for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
    const Vector2d &a = outline[i], &b = outline[j];
    if ((a.y() > p.y()) != (b.y() > p.y()) &&
        p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x())
      in = !in;
  }
  return in;
}

const geometry::CoilPart& part(const geometry::Coil& coil, const std::string& name) {
  const auto found =
      std::find_if(coil.parts.begin(), coil.parts.end(), [&](const auto& p) { return p.name == name; });
  REQUIRE(found != coil.parts.end());
  return *found;
}

std::string with_outline(const std::string& outline,
                         const std::string& heights = R"("bottom_mm": 0, "top_mm": 20)") {
  return R"({"format": "scalpmark-coil", "version": 1, "model": "m", "title": "t", "source": "s",
    "contact_patch_mm": 15, "centre_to_edge_mm": 60, "windings": [],
    "front_mark": {"centre": [0, 60], "length_mm": 10},
    "parts": [{"name": "casing", )" +
         heights + R"(, "outline": )" + outline + "}]}";
}

std::string coil_refusal(const std::string& json) {
  return sentence_of<ModelError>([&] { (void)models::parse_coil(json, "coil.json"); });
}

}  // namespace

TEST_CASE("a winding says how high its wires lie and which way its current runs, and is refused without") {
  const auto with_winding = [](const std::string& rest) {
    std::string json = with_outline("[[-60, -60], [60, -60], [60, 60], [-60, 60]]");
    json.replace(json.find("[]"), 2,
                 R"([{"centre": [0, 0], "inner_mm": 50, "outer_mm": 90, "turns": 9)" + rest + "}]");
    return json;
  };
  const auto read =
      models::parse_coil(with_winding(R"(, "height_mm": 8, "current": "clockwise")"), "coil.json");
  CHECK(read.windings.front().height_mm == 8);
  CHECK(read.windings.front().clockwise);
  CHECK_FALSE(
      models::parse_coil(with_winding(R"(, "height_mm": 0, "current": "counter-clockwise")"), "coil.json")
          .windings.front()
          .clockwise);
  for (const char* rest :
       {"", R"(, "height_mm": 8)", R"(, "current": "clockwise")",
        R"(, "height_mm": -1, "current": "clockwise")", R"(, "height_mm": 8, "current": "left")"})
    CHECK(is_sentence(coil_refusal(with_winding(rest))));
}

// Under the fold of a figure-of-eight both currents run the same way; else its field would cancel there.
TEST_CASE("of two windings one runs clockwise and the other does not, and wires lie inside their casing") {
  for (const geometry::Coil& coil : models::coils()) {
    CAPTURE(coil.model);
    for (const geometry::Winding& w : coil.windings) {
      CHECK(w.height_mm > 0);
      CHECK(w.height_mm < 18);  // the thinnest casing
    }
    if (coil.windings.size() == 2) CHECK(coil.windings[0].clockwise != coil.windings[1].clockwise);
  }
}

TEST_CASE("the figure-of-eight coil has the published windings") {
  const geometry::Coil& coil = models::coil("figure-8-70");
  REQUIRE(coil.windings.size() == 2);
  for (const geometry::Winding& winding : coil.windings) {
    // Thielscher and Kammer 2002 (memory): 56 mm inside, 87 mm outside, nine turns, two wings side by side.
    CHECK(winding.inner_mm == 56);
    CHECK(winding.outer_mm == 87);
    CHECK(winding.turns == 9);
    CHECK(winding.centre.y() == 0);
  }
  CHECK(coil.windings[0].centre.x() == -coil.windings[1].centre.x());
  const double apart = std::abs(coil.windings[0].centre.x() - coil.windings[1].centre.x());
  CHECK(apart >= 87);
  CHECK(apart < 92);
}

TEST_CASE("every coil's casing holds its windings, and its front mark lies on its front edge") {
  for (const geometry::Coil& coil : models::coils()) {
    CAPTURE(coil.model);
    REQUIRE_FALSE(coil.windings.empty());
    for (const geometry::Winding& winding : coil.windings)
      for (int i = 0; i < 72; ++i) {
        const Vector2d at = winding.centre +
                            winding.outer_mm / 2 * Vector2d(std::cos(i * M_PI / 36), std::sin(i * M_PI / 36));
        CHECK(std::any_of(coil.parts.begin(), coil.parts.end(), [&](const geometry::CoilPart& p) {
          return p.name != "handle" && p.bend_deg == winding.bend_deg && inside(p.outline, at);
        }));
      }
    REQUIRE(coil.front_mark);
    CHECK(coil.front_mark->centre == Vector2d(0, coil.centre_to_edge_mm));
    // On the edge: some part of the casing ends there, and none reaches past it.
    const auto reaches = [&](double y) {
      return std::any_of(coil.parts.begin(), coil.parts.end(), [&](const geometry::CoilPart& p) {
        return inside(p.outline, {0, y});
      });
    };
    CHECK(reaches(coil.centre_to_edge_mm - 0.1));
    CHECK_FALSE(reaches(coil.centre_to_edge_mm + 0.1));
  }
}

TEST_CASE(
    "the coils that ship: two flat figures of eight, an angled one bent alike on both sides, a round one") {
  std::set<std::string> known;
  for (const auto& coil : models::coils()) known.insert(coil.model);
  CHECK(known == std::set<std::string>{"figure-8-70", "figure-8-90", "angled-8-150", "round-100"});
  const geometry::Coil& angled = models::coil("angled-8-150");
  const auto& right = part(angled, "right wing");
  const auto& left = part(angled, "left wing");
  CHECK(right.bend_deg == 15);  // lowers the right side: toward the head
  CHECK(left.bend_deg == -15);
  REQUIRE(left.outline.size() == right.outline.size());
  for (const Vector2d& corner : right.outline)
    CHECK(std::any_of(left.outline.begin(), left.outline.end(), [&](const Vector2d& other) {
      return (other - Vector2d(-corner.x(), corner.y())).norm() < 0.11;  // written to a tenth
    }));
  CHECK(models::coil("figure-8-90").windings.front().outer_mm >
        models::coil("figure-8-70").windings.front().outer_mm);
  CHECK(models::coil("round-100").windings.size() == 1);
  CHECK_FALSE(models::coil("round-100").note.empty());
}

TEST_CASE("the casing holds the windings, its front edge lies 6 cm from the centre, the handle behind") {
  const geometry::Coil& coil = models::coil("figure-8-70");
  const auto& casing = part(coil, "casing").outline;
  for (const geometry::Winding& winding : coil.windings)
    for (int i = 0; i < 72; ++i) {
      const double angle = i * M_PI / 36;
      CHECK(
          inside(casing, winding.centre + winding.outer_mm / 2 * Vector2d(std::cos(angle), std::sin(angle))));
    }
  // Centre to front edge 6 cm: common practice, no source.
  CHECK(coil.centre_to_edge_mm == 60);
  CHECK(inside(casing, {0, 59.9}));
  CHECK_FALSE(inside(casing, {0, 60.1}));
  for (const Vector2d& corner : casing)
    CHECK(std::find(casing.begin(), casing.end(), Vector2d(-corner.x(), corner.y())) != casing.end());
  const auto& handle = part(coil, "handle");
  CHECK(handle.bottom_mm > 0);
  double rear = 0;
  for (const Vector2d& corner : handle.outline) {
    CHECK(corner.y() < 0);
    rear = std::min(rear, corner.y());
  }
  CHECK(rear < -150);
}

TEST_CASE("a coil that does not ship is refused, naming those that do") {
  const std::string said = sentence_of<ModelError>([] { (void)models::coil("round-90"); });
  CHECK(is_sentence(said));
  CHECK(said.find("round-90") != std::string::npos);
  CHECK(said.find("figure-8-70") != std::string::npos);
}

TEST_CASE("every coil file that ships is valid by its schema, compiled in, and found by its model") {
  const JsonSchema schema("coil.schema.json");
  std::set<std::string> models;
  for (const auto& file : fs::directory_iterator(fs::path(SCALPMARK_SOURCE_DIR) / "models/data/coils")) {
    CAPTURE(file.path());
    const std::string text = tests::read_bytes(file.path());
    CHECK(schema.objection(text).empty());
    const geometry::Coil read = models::parse_coil(text, file.path().string());
    CHECK(read.model == file.path().stem());
    CHECK(models::coil(read.model).parts.size() == read.parts.size());
    models.insert(read.model);
  }
  CHECK(models.size() == models::coils().size());
}

TEST_CASE("a coil file with a bad outline or height is refused") {
  const std::string square = "[[-10, -10], [10, -10], [10, 10], [-10, 10]]";
  REQUIRE(coil_refusal(with_outline(square)) == "(accepted)");
  const std::vector<std::pair<std::string, std::string>> bad{
      {with_outline("[[-10, -10], [10, -10]]"), "at least three points"},
      {with_outline("[[-10, 10], [10, 10], [10, -10], [-10, -10]]"), "counter-clockwise"},
      {with_outline("[[-10, -10], [10, 10], [10, -10], [-10, 10]]"), "cross or touch itself"},
      {with_outline("[[-10, -10], [10, -10], [10, -10], [0, 10]]"), "cross or touch itself"},
      {with_outline("[[0, 0], [10, 0], [5, 0]]"), "cross or touch itself"},
      {with_outline("[[0, 0], [600, 0], [5, 9]]"), "outline[1] must be two numbers from -500 to 500"},
      {with_outline("[[0, 0], [10, 0, 1], [5, 9]]"), "outline[1] must be two numbers"},
      {with_outline("7"), "outline must be a list"},
      {with_outline(square, R"("bottom_mm": 5, "top_mm": 5)"), "parts[0].top_mm must be more than bottom_mm"},
      {with_outline(square, R"("bottom_mm": -1, "top_mm": 5)"), "parts[0].bottom_mm must be a number from 0"},
      {with_outline(square, R"("bottom_mm": 0, "top_mm": 5, "bend_deg": 61)"),
       "parts[0].bend_deg must be a number from -60"},
      {with_outline(square, R"("bottom_mm": 0)"), "parts[0].top_mm is missing"},
  };
  for (const auto& [json, expected] : bad) {
    const std::string said = coil_refusal(json);
    CAPTURE(json, said);
    CHECK(is_sentence(said));
    CHECK(said.find(expected) != std::string::npos);
  }
}
