// What is on the stage as a value: nothing is drawn here.
#include "viewer/stage/scene/scene.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <set>

#include "geometry/coil/pose.h"
#include "geometry/hands/tolerance.h"
#include "geometry/hands/what_if.h"
#include "tests/viewer/stage/staged_scene.h"
#include "viewer/stage/things/things.h"
#include "viewer/words/error.h"
#include "viewer/words/numbers.h"

using namespace scalpmark;
using namespace scalpmark::viewer;
using namespace scalpmark::viewer::staged;
using Eigen::Vector3d;
using geometry::MarkRule;

TEST_CASE("only what is shown is in the scene") {
  const geometry::Case c = case_of(geometry::Side::left, MarkRule::tape, "figure-8-70");
  const geometry::Plan plan = plan_of(c);
  Shown shown;
  shown.things.clear();
  for (const auto& part : show(head(), c, plan, shown).parts) CHECK(count_of(part) == 0);
  for (const Thing thing : {Thing::skin, Thing::landmarks, Thing::tapes, Thing::grid, Thing::coil,
                            Thing::angle, Thing::edge_marks}) {
    INFO(name_of(thing));
    shown.things = {thing};
    for (const auto& part : show(head(), c, plan, shown).parts)
      CHECK((count_of(part) > 0) == (part.thing == thing));
  }
  // Start, hotspot and site are one part, one mark each.
  for (const Thing thing : {Thing::start, Thing::hotspot, Thing::treatment}) {
    const auto marks = marks_of(scene_of(c, {thing}));
    REQUIRE(marks.size() == 1);
    CHECK(marks.front().thing == thing);
  }
}

TEST_CASE("of landmarks those named are shown, and the tragi, another system's stand in for the plan's") {
  const geometry::Case c = case_of(geometry::Side::left, MarkRule::tape, "figure-8-70");
  const geometry::Plan plan = plan_of(c);
  Shown shown;
  shown.things = {Thing::landmarks};
  shown.landmarks = std::set<std::string>{"Cz", "F3"};
  CHECK(names(marks_of(show(head(), c, plan, shown))) ==
        std::set<std::string>{"Cz", "F3", "left tragus", "right tragus"});
  shown.landmarks.reset();
  shown.other_landmarks = std::make_shared<const std::vector<geometry::Landmark>>(
      geometry::landmarks(head(), geometry::LandmarkSystem::ten_twenty));
  // 21 positions of the 10-20 system (Jasper 1958), with the two fiducials Nz and Iz that are not
  // electrodes'.
  std::set<std::string> expected{"left tragus", "right tragus"};
  for (const auto& l : *shown.other_landmarks) expected.insert(l.name);
  CHECK(expected.size() < plan.landmarks.size());
  CHECK(names(marks_of(show(head(), c, plan, shown))) == expected);
}

TEST_CASE("tapes are laid one after the other, as far as the share of all their length says") {
  const geometry::Head ball = tests::sphere_head(90, 5);
  const geometry::Case c = case_of(geometry::Side::left, MarkRule::tape, "figure-8-70");
  const geometry::Plan plan = geometry::solve(ball, c, geometry::TapeDistances::left_out);
  Shown shown;
  shown.things = {Thing::tapes};
  shown.lines = std::set<std::string>{"midline", "coronal"};
  const auto laid = [&](std::set<std::string> fresh, double share) {
    shown.laying = Laying{std::move(fresh), share};
    return show(ball, c, plan, shown);
  };
  // Two half great circles: 90 pi mm each (elementary geometry), less what straight pieces cut short.
  const double tape_mm = length(laid({}, 0), "midline");
  CHECK(tape_mm == Approx(90 * M_PI).epsilon(0.01));
  CHECK(length(laid({}, 0), "circumference") == 0);  // not of these
  const Scene quarter = laid({"midline", "coronal"}, 0.25);
  CHECK(length(quarter, "midline") == Approx(tape_mm / 2).epsilon(0.01));
  CHECK(length(quarter, "coronal") == 0);
  const Scene most = laid({"midline", "coronal"}, 0.75);
  CHECK(length(most, "midline") == Approx(tape_mm));
  CHECK(length(most, "coronal") == Approx(tape_mm / 2).epsilon(0.01));
  // One that is there already stays.
  CHECK(length(laid({"coronal"}, 0), "midline") == Approx(tape_mm));
  CHECK(length(laid({"coronal"}, 0), "coronal") == 0);
  CHECK(length(laid({"coronal"}, 1), "coronal") == Approx(tape_mm).epsilon(0.01));
}

TEST_CASE("a tape has a tick at each centimetre, a longer one with its figure at each fifth") {
  const geometry::Head ball = tests::sphere_head(90, 5);
  const geometry::Case c = case_of(geometry::Side::left, MarkRule::tape, "figure-8-70");
  Shown shown;
  shown.things = {Thing::tapes, Thing::labels};
  shown.lines = std::set<std::string>{"midline"};
  const Scene scene = show(ball, c, geometry::solve(ball, c, geometry::TapeDistances::left_out), shown);
  const auto& lines = part_of(scene, Thing::tapes).lines;
  REQUIRE(lines.size() == 1);
  REQUIRE(lines[0].ticks.size() == 29);  // 0 to 28 cm of 28.3
  for (size_t cm = 0; cm < lines[0].ticks.size(); ++cm) {
    const Tick& tick = lines[0].ticks[cm];
    CHECK((tick.half_px > 3) == (cm % 5 == 0));
    CHECK(tick.label.has_value() == (cm > 0 && cm % 5 == 0));
    if (tick.label) CHECK(tick.label->text == std::to_string(cm));
    // From the nasion, 10 mm of arc are 10 / 90 of a radian.
    const Vector3d from = (lines[0].points.front() - scene.axes.origin).normalized(),
                   there = (tick.at - scene.axes.origin).normalized();
    CHECK(std::acos(std::clamp(from.dot(there), -1.0, 1.0)) * 90 ==
          Approx(10.0 * static_cast<double>(cm)).margin(1));
  }
}

TEST_CASE("without labels nothing of the scene has words beside it") {
  geometry::Case c = case_of(geometry::Side::right, MarkRule::nearest, "angled-8-150");
  const geometry::Plan plan = plan_of(c);
  Shown shown;
  shown.things.insert({Thing::alternatives, Thing::gaps});
  shown.gaps = gaps_under(head(), c, plan.treatment);
  const auto with_words = [](const Scene& scene) {
    size_t n = 0;
    for (const auto& part : scene.parts) {
      for (const auto& m : part.marks) n += m.label ? 1 : 0;
      for (const auto& s : part.spots) n += s.label ? 1 : 0;
      for (const auto& x : part.wedges) n += x.label ? 1 : 0;
      for (const auto& l : part.lines) {
        n += l.label ? 1 : 0;
        for (const auto& t : l.ticks) n += t.label ? 1 : 0;
      }
      n += part.words.size();
    }
    return n;
  };
  CHECK(with_words(show(head(), c, plan, shown)) > 60);
  shown.things.erase(Thing::labels);
  CHECK(with_words(show(head(), c, plan, shown)) == 0);
}

TEST_CASE("the legend explains each kind of mark that is there, and none that is not") {
  const geometry::Case c = case_of(geometry::Side::left, MarkRule::drop, "figure-8-90");
  const geometry::Plan plan = plan_of(c);
  for (const std::set<Thing>& things :
       {std::set<Thing>{Thing::landmarks, Thing::grid, Thing::start}, std::set<Thing>{Thing::edge_marks},
        std::set<Thing>{Thing::hotspot, Thing::treatment, Thing::alternatives}}) {
    Shown shown;
    shown.things = things;
    CHECK(show(head(), c, plan, shown).around.legend.empty());
    shown.things.insert(Thing::legend);
    const Scene scene = show(head(), c, plan, shown);
    std::set<std::pair<Shape, Role>> drawn, explained;
    for (const auto& m : marks_of(scene)) drawn.emplace(m.shape, m.role);
    for (const auto& row : scene.around.legend) explained.emplace(row.shape, row.role);
    CHECK(drawn == explained);
  }
}

TEST_CASE(
    "the coil's rims lie where the placement puts it, and over a map of gaps there is nothing else of it") {
  const geometry::Case c = case_of(geometry::Side::left, MarkRule::drop, "figure-8-70");
  const geometry::Plan plan = plan_of(c);
  Shown shown;
  shown.things = {Thing::coil};
  const Scene scene = show(head(), c, plan, shown);
  const auto& body = part_of(scene, Thing::coil).coil;
  REQUIRE(body);
  CHECK(body->filled);
  // The underside of the first part, as high over the pulse point as the plan lifts it.
  const double low = c.coil.model.parts[0].bottom_mm + plan.treatment.lift_mm;
  const auto edges = rims(*body);
  for (const auto& p : edges.front())
    CHECK((p - plan.treatment.pulse).dot(plan.treatment.normal) == Approx(low).margin(1e-9));
  shown.things.insert(Thing::gaps);
  shown.gaps = gaps_under(head(), c, plan.treatment);
  const Scene mapped = show(head(), c, plan, shown);
  CHECK_FALSE(part_of(mapped, Thing::coil).coil->filled);
  CHECK(part_of(mapped, Thing::gaps).gaps == shown.gaps);
  CHECK(mapped.around.gap_scale);
}

TEST_CASE("the scale of gaps has its figures in the unit that its title names") {
  const geometry::Case c = case_of(geometry::Side::left, MarkRule::drop, "figure-8-70");
  const geometry::Plan plan = plan_of(c);
  Shown shown;
  shown.things = {Thing::coil, Thing::gaps};
  shown.gaps = gaps_under(head(), c, plan.treatment);
  for (const auto unit : {LengthUnit::centimetre, LengthUnit::inch}) {
    set_length_unit(unit);
    const auto scale = show(head(), c, plan, shown).around.gap_scale;
    set_length_unit(LengthUnit::centimetre);
    REQUIRE(scale);
    const bool inches = unit == LengthUnit::inch;
    CHECK_THAT(scale->title, Catch::EndsWith(inches ? " in" : " mm"));
    CHECK(scale->ticks.size() == (inches ? 4 : 6));
    for (const auto& tick : scale->ticks) {
      CAPTURE(tick.text);
      CHECK(std::stod(tick.text) * (inches ? 25.4 : 1) == Approx(tick.mm).margin(1e-9));
    }
  }
}

TEST_CASE("every 10 mm of gap has its line: between corners on either side, as far as their gaps say") {
  const geometry::Case c = case_of(geometry::Side::left, MarkRule::drop, "figure-8-70");
  const auto gaps = gaps_under(head(), c, plan_of(c).treatment);
  REQUIRE(gaps->level_lines.size() > 50);
  for (const auto& ends : gaps->level_lines)
    for (const auto& end : ends) {
      // The gap that the map has there: along the edge of a triangle that the point lies on.
      double least = 100;
      for (const auto& t : gaps->map.triangles)
        for (size_t k = 0; k < 3; ++k) {
          const auto &a = gaps->map.corners[static_cast<size_t>(t[k])],
                     &b = gaps->map.corners[static_cast<size_t>(t[(k + 1) % 3])];
          const double whole = (b.skin - a.skin).norm(), part = (end - a.skin).norm();
          if (part + (b.skin - end).norm() > whole + 1e-6) continue;
          const double gap = a.gap_mm + part / whole * (b.gap_mm - a.gap_mm);
          least = std::min(least, std::abs(std::remainder(gap, 10)));
        }
      CHECK(least < 1e-3);
    }
}

TEST_CASE("what is remembered of one head is not taken for another's") {
  const geometry::Case c = case_of(geometry::Side::left, MarkRule::tape, "figure-8-70");
  const geometry::Head other = tests::sphere_head(90, 5);
  CalmNormals normals;
  for (const geometry::Head* one : {&head(), &other, &head()}) {
    const geometry::Plan plan = geometry::solve(*one, c, geometry::TapeDistances::left_out);
    // The same points on the second head as on the first: it is asked for them too.
    const auto remembered = marks_of(show(*one, c, plan, Shown{}, normals)),
               fresh = marks_of(show(*one, c, plan, Shown{}));
    REQUIRE(remembered.size() == fresh.size());
    for (size_t i = 0; i < fresh.size(); ++i) CHECK(remembered[i].normal == fresh[i].normal);
  }
  const Vector3d above(0, 0, 200);
  CHECK(normals.at(head().skin(), above) == calm_normal(head().skin(), above));
  CHECK(normals.at(other.skin(), above) == calm_normal(other.skin(), above));
}

TEST_CASE("a coil on a spot that the grid does not have is refused") {
  const geometry::Case c = case_of(geometry::Side::left, MarkRule::tape, "figure-8-70");
  Shown shown;
  shown.coil_on = CoilOn::spot;
  shown.row = 2;
  CHECK_THROWS_AS(show(head(), c, plan_of(c), shown), ViewerError);
}

TEST_CASE("a line of sight runs from the eye past the edge to the skin") {
  const geometry::Case c = case_of(geometry::Side::left, MarkRule::drop, "figure-8-70");
  const geometry::Plan plan = plan_of(c);
  Shown shown;
  shown.things = {Thing::sight, Thing::labels};
  shown.sight = geometry::if_looked_aside(head(), c, plan, 10, 0).sight;
  const Scene scene = show(head(), c, plan, shown);
  const Part& part = part_of(scene, Thing::sight);
  REQUIRE(part.lines.size() == 5);
  const std::vector<Vector3d>& ray = part.lines[0].points;
  REQUIRE(ray.size() == 3);
  CHECK(ray[1] == shown.sight->edge);
  CHECK(ray[2] == shown.sight->skin);
  const Vector3d way = (shown.sight->eye - shown.sight->skin).normalized();
  CHECK((ray[0] - ray[2]).normalized().isApprox(way, 1e-9));
  // The eye is strokes, no disc: two lids that open toward the skin alike, and its front between them.
  CHECK(part.spots.empty());
  for (const size_t lid : {size_t{1}, size_t{2}}) {
    CHECK(part.lines[lid].points.front() == shown.sight->eye);
    CHECK((part.lines[lid].points.back() - shown.sight->eye).normalized().dot(-way) ==
          Approx(std::cos(30 * M_PI / 180)).margin(1e-9));
  }
  CHECK((part.lines[1].points.back() - part.lines[2].points.back()).norm() > 15);
  for (const Vector3d& p : part.lines[3].points)
    CHECK((p - shown.sight->eye).norm() == Approx((ray[0] - shown.sight->eye).norm()));
  REQUIRE(part.words.size() == 1);
  CHECK(part.words[0].at == shown.sight->eye);
  CHECK(part.words[0].label.text == "eye");
}
