// What a visit's answers and a course of visits put on the stage, as values.
#include <catch2/catch.hpp>
#include <cmath>
#include <set>

#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "tests/support/heads.h"
#include "viewer/stage/things/things.h"

using namespace scalpmark;
using namespace scalpmark::viewer;
using geometry::GridPosition;
using geometry::SeenAnswer;

namespace {

struct Staged {
  explicit Staged(geometry::Side side) : head(tests::lopsided_head(5)) {
    the_case.side = side;
    the_case.coil.model = models::coil("figure-8-70");
    plan = geometry::solve(head, the_case, geometry::TapeDistances::left_out);
  }
  [[nodiscard]] const Part& show_of(Thing thing, const Shown& shown) {
    scene = show(head, the_case, plan, shown);
    for (const Part& part : scene.parts)
      if (part.thing == thing) return part;
    FAIL("no such part");
    return scene.parts.front();
  }
  geometry::Head head;
  geometry::Case the_case;
  geometry::Plan plan;
  Scene scene{head.skin(), head.axes(), {}};
};

double length_of(const Line& line) {
  return (line.points.back() - line.points.front()).norm();
}

}  // namespace

TEST_CASE("each probed spot has a tally bar beside its real pulse point, filled as far as it answered") {
  Staged staged(GENERATE(geometry::Side::left, geometry::Side::right));
  geometry::Visit visit;
  const auto give = [&](int row, int column, int answered, int missed) {
    for (int i = 0; i < answered + missed; ++i)
      visit.pulses.push_back(
          {GridPosition{row, column}, 60, i < answered ? SeenAnswer::thumb : SeenAnswer::none, {}, {}});
  };
  give(0, 1, 3, 1);
  give(-1, 0, 0, 2);
  give(1, 1, 2, 0);
  Shown shown;
  shown.things = {Thing::skin, Thing::labels, Thing::answers, Thing::legend};
  shown.answers = std::make_shared<const geometry::VisitAnswers>(
      geometry::visit_answers(staged.plan, staged.the_case, visit));
  const Part& part = staged.show_of(Thing::answers, shown);
  REQUIRE(part.words.size() == 3);
  std::set<std::string> tallies;
  for (const PlacedWords& words : part.words) tallies.insert(words.label.text);
  CHECK(tallies == std::set<std::string>{"3/4", "0/2", "2/2"});
  // Frame, inside, and what is filled where something answered.
  REQUIRE(part.lines.size() == 3 + 3 + 2);
  int filled = 0;
  for (std::size_t i = 0; i + 1 < part.lines.size(); ++i) {
    if (part.lines[i].role != Role::text) continue;
    const double share = length_of(part.lines[i]) / length_of(part.lines[i - 1]);
    CHECK((share == Approx(0.75).margin(0.02) || share == Approx(1).margin(0.02)));
    ++filled;
  }
  filled += part.lines.back().role == Role::text;
  CHECK(filled == 2);
  // Each stands within half a step of a spot's pulse point, and on the skin.
  for (const Line& line : part.lines) {
    double nearest = 1e9;
    for (const auto& spot : staged.plan.grid)
      nearest =
          std::min(nearest, (0.5 * (line.points[0] + line.points.back()) - spot.placement.pulse).norm());
    CHECK(nearest < 5);
    for (const auto& at : line.points)
      CHECK((staged.head.skin().position(staged.head.skin().closest(at)) - at).norm() < 1e-6);
  }
  CHECK_FALSE(staged.scene.around.legend.empty());

  shown.answers = std::make_shared<const geometry::VisitAnswers>(
      geometry::visit_answers(staged.plan, staged.the_case, geometry::Visit{}));
  CHECK(staged.show_of(Thing::answers, shown).lines.empty());
  shown.answers.reset();
  CHECK(staged.show_of(Thing::answers, shown).lines.empty());
}

TEST_CASE("a course shows a disc a visit, names the last and those outside, and draws two ellipses") {
  Staged staged(geometry::Side::left);
  const auto& site = staged.plan.treatment;
  auto course = std::make_shared<CourseShown>();
  for (std::size_t i = 0; i < 5; ++i)
    course->visits.push_back({staged.head.skin().position(staged.head.skin().closest(
                                  site.pulse + static_cast<double>(i) * site.forward)),
                              i + 1, i == 2});
  course->ellipses =
      geometry::CourseEllipses{{site.pulse, site.pulse + site.forward}, {site.pulse, site.pulse}};
  Shown shown;
  shown.things = {Thing::skin, Thing::labels, Thing::course, Thing::legend};
  shown.course = course;
  const Part& part = staged.show_of(Thing::course, shown);
  REQUIRE(part.marks.size() == 5);
  std::set<std::string> named;
  for (const Mark& mark : part.marks) {
    CHECK(mark.shape == Shape::small_disc);  // a pulse point as laid
    if (mark.label) named.insert(mark.label->text);
  }
  CHECK(named == std::set<std::string>{"visit 3", "visit 5"});
  CHECK(part.lines.size() == 2);
  shown.course.reset();
  CHECK(staged.show_of(Thing::course, shown).marks.empty());
}
