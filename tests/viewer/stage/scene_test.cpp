// What is on the stage as a value: nothing is drawn here.
#include "viewer/stage/scene/scene.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <set>

#include "geometry/coil/pose.h"
#include "geometry/hands/tolerance.h"
#include "geometry/hands/what_if.h"
#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "tests/support/heads.h"
#include "viewer/stage/things/things.h"
#include "viewer/words/error.h"

using namespace scalpmark;
using namespace scalpmark::viewer;
using Eigen::Vector3d;
using geometry::MarkRule;

namespace {

const geometry::Head& head() {
  static const geometry::Head lopsided = tests::lopsided_head(5);
  return lopsided;
}

geometry::Case case_of(geometry::Side side, MarkRule rule, const std::string& coil) {
  geometry::Case c;
  c.side = side;
  c.coil.model = models::coil(coil);
  c.coil.centre_to_edge_mm = c.coil.model.centre_to_edge_mm;
  geometry::use_one_rule(c, rule);
  return c;
}

geometry::Plan plan_of(const geometry::Case& c) {
  return geometry::solve(head(), c, geometry::TapeDistances::left_out);
}

Scene scene_of(const geometry::Case& c, std::set<Thing> things) {
  Shown shown;
  shown.things = std::move(things);
  return show(head(), c, plan_of(c), shown);
}

const Part& part_of(const Scene& scene, Thing thing) {
  for (const auto& part : scene.parts)
    if (part.thing == thing) return part;
  FAIL("no such part");
  return scene.parts.front();
}

std::vector<Mark> marks_of(const Scene& scene) {
  std::vector<Mark> all;
  for (const auto& part : scene.parts) all.insert(all.end(), part.marks.begin(), part.marks.end());
  return all;
}

const Mark* named(const std::vector<Mark>& marks, const std::string& name) {
  const auto found = std::find_if(marks.begin(), marks.end(), [&](const Mark& m) { return m.name == name; });
  return found == marks.end() ? nullptr : &*found;
}

std::set<std::string> names(const std::vector<Mark>& marks) {
  std::set<std::string> all;
  for (const auto& m : marks) all.insert(m.name);
  return all;
}

double length(const Scene& scene, const std::string& name) {
  double mm = 0;
  for (const auto& line : part_of(scene, Thing::tapes).lines)
    for (size_t i = 1; line.name == name && i < line.points.size(); ++i)
      mm += (line.points[i] - line.points[i - 1]).norm();
  return mm;
}

size_t count_of(const Part& part) {
  return part.spots.size() + part.lines.size() + part.wedges.size() + part.marks.size() + part.words.size() +
         (part.body ? 1 : 0) + (part.coil ? 1 : 0) + (part.gaps ? 1 : 0);
}

}  // namespace

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

TEST_CASE("of landmarks those named are shown, and the tragi; another system's stand in for the plan's") {
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
