#include "viewer/teach/lesson.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/round_head.h"
#include "viewer/stage/things/things.h"

using namespace scalpmark;
using namespace scalpmark::viewer;

namespace {

geometry::Case plain_case() {
  geometry::Case c;
  c.coil.model = tests::flat_coil();
  geometry::use_one_rule(c, geometry::MarkRule::tape);
  return c;
}

}  // namespace

TEST_CASE("the lesson walks the procedure in the order in which staff do it") {
  const geometry::Case c = plain_case();
  const auto steps = lesson(c, geometry::solve(tests::coarse_ball(), c));
  std::vector<LessonTopic> topics;
  for (const auto& s : steps) topics.push_back(s.topic);
  using enum LessonTopic;
  CHECK(topics ==
        std::vector<LessonTopic>{measure, halve, cross, offset, forward, grid, twitch, site, mark_edge});
  for (const auto& s : steps) {
    CHECK_FALSE(s.title.empty());
    CHECK(s.caption.back() == '.');
    CHECK(s.shown.has(Thing::skin));
  }
}

// On the sphere both tapes are half great circles: 90 pi mm, 28.3 cm, half of it 14.1 cm (elementary
// geometry).
TEST_CASE("captions say the case's own numbers, in centimetres and whole degrees") {
  geometry::Case c = plain_case();
  c.side = geometry::Side::right;
  c.search.lateral_mm = 45;
  c.search.anterior_mm = -10;
  c.search.pitch_mm = 8;
  c.coil.angle_deg = 40;
  c.treatment.distance_mm = 55;
  const auto steps = lesson(c, geometry::solve(tests::coarse_ball(), c));
  const auto caption = [&](LessonTopic t) {
    return std::find_if(steps.begin(), steps.end(), [&](const LessonStep& s) { return s.topic == t; })
        ->caption;
  };
  CHECK_THAT(caption(LessonTopic::measure), Catch::Contains("28.3 cm"));
  CHECK_THAT(caption(LessonTopic::halve), Catch::Contains("is 14.15 cm"));
  CHECK_THAT(caption(LessonTopic::offset), Catch::Contains("4.5 cm") && Catch::Contains("right ear"));
  CHECK_THAT(caption(LessonTopic::forward),
             Catch::Contains("1.0 cm backward") && Catch::Contains("40\u00b0 toward the midline"));
  CHECK_THAT(caption(LessonTopic::grid), Catch::Contains("0.8 cm apart"));
  CHECK_THAT(caption(LessonTopic::twitch), Catch::Contains("left hand"));  // the other side's hand answers
  CHECK_THAT(caption(LessonTopic::site), Catch::Contains("5.5 cm forward"));
  CHECK_THAT(caption(LessonTopic::mark_edge), Catch::Contains("6.0 cm along the skin"));
}

TEST_CASE("each step shows only its own lines and landmarks, and all of them are in the plan") {
  for (const auto rule : {geometry::TreatmentRule::forward, geometry::TreatmentRule::landmark}) {
    geometry::Case c = plain_case();
    c.treatment.rule = rule;
    c.treatment.label = "af3";  // as typed
    const geometry::Plan plan = geometry::solve(tests::coarse_ball(), c);
    for (const auto& step : lesson(c, plan)) {
      const Scene scene = show(tests::coarse_ball(), c, plan, step.shown);
      std::set<std::string> lines, landmarks;
      for (const auto& part : scene.parts) {
        if (part.thing == Thing::tapes)
          for (const auto& l : part.lines) lines.insert(l.name);
        if (part.thing == Thing::landmarks)
          for (const auto& m : part.marks)
            if (m.name.find("tragus") == std::string::npos) landmarks.insert(m.name);
      }
      INFO(step.title);
      if (step.shown.has(Thing::landmarks)) {
        REQUIRE(step.shown.landmarks);
        CHECK(landmarks == *step.shown.landmarks);
      }
      if (step.shown.has(Thing::tapes)) {
        REQUIRE(step.shown.lines);
        CHECK(lines == *step.shown.lines);
      }
      CHECK(lines.empty() != step.shown.has(Thing::tapes));
    }
  }
}
