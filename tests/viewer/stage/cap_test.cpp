#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <memory>

#include "geometry/hands/cap_veil.h"
#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "tests/support/round_head.h"
#include "viewer/stage/things/things.h"

using namespace scalpmark;
using namespace scalpmark::viewer;

namespace {

Part cap_of(const Scene& scene) {
  return *std::find_if(scene.parts.begin(), scene.parts.end(),
                       [](const Part& part) { return part.thing == Thing::cap; });
}

}  // namespace

TEST_CASE("the cap lies over the skin as far as its brim, its arrow from the brim to the nasion") {
  const geometry::Case c = [] {
    geometry::Case right;
    right.side = geometry::Side::right;
    right.coil.model = models::coil("figure-8-70");
    return right;
  }();
  const geometry::Plan plan = geometry::solve(tests::coarse_lop(), c, geometry::TapeDistances::left_out);
  const geometry::Cap cap = geometry::cap_on(tests::coarse_lop(), 25);
  Shown shown;
  shown.things = {Thing::cap, Thing::legend};
  const auto is_bare = [&] {
    const Part part = cap_of(show(tests::coarse_lop(), c, plan, shown));
    return !part.body && part.lines.empty();
  };
  CHECK(is_bare());  // nobody said where it sits
  shown.cap = std::make_shared<const geometry::CapVeil>(geometry::cap_veil(tests::coarse_lop(), cap));
  const Scene scene = show(tests::coarse_lop(), c, plan, shown);
  const Part part = cap_of(scene);
  REQUIRE(part.body);
  CHECK(part.body->opacity < 0.5);
  CHECK_FALSE(part.pickable);  // clicks go through to the skin
  // Cloth inside the brim's plane alone, just over the skin.
  for (const auto& v : part.body->surface.vertices()) CHECK(cap.brim.height(v) > -0.6);
  REQUIRE(part.lines.size() == 4);  // brim, arrow, two barbs
  for (const auto& p : part.lines[0].points) CHECK(std::abs(cap.brim.height(p)) < 1e-6);
  CHECK((part.lines[1].points.front() - cap.front_at).norm() < 0.1);
  for (const size_t line : {1U, 2U, 3U})
    CHECK((part.lines[line].points.back() - plan.fiducials.nasion).norm() < 0.1);
  REQUIRE(scene.around.legend.size() == 1);
  CHECK(scene.around.legend.front().role == Role::cap);
  shown.things.erase(Thing::cap);
  CHECK(is_bare());
}
