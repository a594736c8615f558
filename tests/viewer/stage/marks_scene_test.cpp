// The marks of what is on the stage as a value: nothing is drawn here.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <set>

#include "geometry/coil/pose.h"
#include "geometry/hands/tolerance.h"
#include "geometry/hands/what_if.h"
#include "tests/viewer/stage/staged_scene.h"
#include "viewer/stage/scene/scene.h"
#include "viewer/stage/things/things.h"
#include "viewer/words/error.h"

using namespace scalpmark;
using namespace scalpmark::viewer;
using namespace scalpmark::viewer::staged;
using Eigen::Vector3d;
using geometry::MarkRule;

TEST_CASE("the treatment site is where the pulse is wanted, and the pulse where the coil really has it") {
  for (const auto side : {geometry::Side::left, geometry::Side::right}) {
    geometry::Case c = case_of(side, MarkRule::tape, "figure-8-70");
    c.coil.laid_by = MarkRule::nearest;
    const geometry::Plan plan = plan_of(c);
    REQUIRE(plan.treatment.wanted_to_pulse_mm > 3);
    const auto marks = marks_of(show(head(), c, plan, Shown{}));
    const Mark *treatment = named(marks, "treatment"), *pulse = named(marks, "pulse"),
               *wanted = named(marks, "wanted");
    REQUIRE((treatment && pulse && wanted));
    CHECK(treatment->at == plan.treatment.wanted);
    CHECK(wanted->at == plan.treatment.wanted);
    CHECK(wanted->shape == Shape::hollow_disc);
    CHECK(pulse->at == plan.treatment.pulse);
    CHECK(pulse->shape == Shape::disc);
  }
}

TEST_CASE("each shape is one thing, on either side of the head") {
  for (const auto side : {geometry::Side::left, geometry::Side::right}) {
    const geometry::Case c = case_of(side, MarkRule::drop, "round-100");
    const geometry::Plan plan = plan_of(c);
    const auto marks = marks_of(show(head(), c, plan, Shown{}));
    const Mark *treatment = named(marks, "treatment"), *hotspot = named(marks, "hotspot"),
               *pulse = named(marks, "pulse"), *edge = named(marks, "edge mark drop");
    REQUIRE((treatment && hotspot && pulse && edge));
    CHECK(treatment->shape == Shape::diamond);
    CHECK(hotspot->shape == Shape::ring);
    CHECK(pulse->shape == Shape::disc);
    CHECK(edge->shape == Shape::bar);
    for (const auto& m : marks) {
      INFO(m.name);
      CHECK((m.shape == Shape::ring) == (m.thing == Thing::hotspot));
      CHECK((m.shape == Shape::dot) == (m.thing == Thing::landmarks));
    }
    CHECK(pulse->at == plan.treatment.pulse);
    REQUIRE(plan.treatment.edge_mark.drop);
    CHECK(edge->at == *plan.treatment.edge_mark.drop);
    // The bar lies along the coil's edge, square to where the coil's front points.
    CHECK(std::abs(edge->along.dot(plan.treatment.front)) < 0.35);
    // Right of the midline on the right.
    const double aside = (hotspot->at - plan.axes.origin).dot(plan.axes.right);
    CHECK((side == geometry::Side::right ? aside : -aside) > 20);
  }
}

TEST_CASE("the chosen rule's edge mark is strong, the others faint, and one alone can be shown") {
  const char* const mark_names[] = {"edge mark tape", "edge mark drop", "edge mark nearest"};
  for (const auto chosen : {MarkRule::tape, MarkRule::drop, MarkRule::nearest}) {
    const geometry::Case c = case_of(geometry::Side::right, chosen, "figure-8-70");
    const geometry::Plan plan = plan_of(c);
    Shown shown;
    shown.things = {Thing::edge_marks, Thing::labels};
    const auto all = marks_of(show(head(), c, plan, shown));
    for (const auto rule : {MarkRule::tape, MarkRule::drop, MarkRule::nearest}) {
      const Mark* mark = named(all, mark_names[static_cast<int>(rule)]);
      REQUIRE(mark != nullptr);
      CHECK((mark->role == Role::edge_mark) == (rule == chosen));
      REQUIRE(mark->label);
      CHECK(mark->label->bold == (rule == chosen));
    }
    for (const auto only : {MarkRule::tape, MarkRule::drop, MarkRule::nearest}) {
      shown.only_rule = only;
      CHECK(names(marks_of(show(head(), c, plan, shown))) ==
            std::set<std::string>{"pulse", mark_names[static_cast<int>(only)]});
    }
  }
}

TEST_CASE("the marks of the way to mark that is chosen are shown, of the best where none is") {
  const geometry::Case c = case_of(geometry::Side::right, MarkRule::drop, "figure-8-70");
  const geometry::Plan plan = plan_of(c);
  Shown shown;
  shown.things = {Thing::way_marks};
  const auto shown_at = [&] {
    const Scene scene = show(head(), c, plan, shown);
    const Part& part = part_of(scene, Thing::way_marks);
    std::vector<Vector3d> at;
    for (const Mark& m : part.marks) at.push_back(m.at);
    for (const Line& l : part.lines) at.insert(at.end(), l.points.begin(), l.points.end());
    return at;
  };
  CHECK(shown_at().empty());  // nothing was worked out
  shown.tolerance = std::make_shared<const geometry::Tolerance>(
      geometry::tolerance(head(), c, plan, {}, {.placements = 0}));
  REQUIRE(shown.tolerance->ways.size() > 1);
  CHECK(shown_at() == shown.tolerance->ways.back().marks);
  for (const auto& way : shown.tolerance->ways) {
    shown.marking_way = way.way;
    CHECK(shown_at() == way.marks);
  }
}
