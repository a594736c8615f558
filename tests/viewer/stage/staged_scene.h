#pragma once

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>
#include <string>
#include <vector>

#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "tests/support/heads.h"
#include "viewer/stage/scene/scene.h"
#include "viewer/stage/things/things.h"

/// Scenes of a lopsided head, and what is asked of them.
namespace scalpmark::viewer::staged {

inline const geometry::Head& head() {
  static const geometry::Head lopsided = tests::lopsided_head(5);
  return lopsided;
}

inline geometry::Case case_of(geometry::Side side, geometry::MarkRule rule, const std::string& coil) {
  geometry::Case c;
  c.side = side;
  c.coil.model = models::coil(coil);
  c.coil.centre_to_edge_mm = c.coil.model.centre_to_edge_mm;
  geometry::use_one_rule(c, rule);
  return c;
}

inline geometry::Plan plan_of(const geometry::Case& c) {
  return geometry::solve(head(), c, geometry::TapeDistances::left_out);
}

inline Scene scene_of(const geometry::Case& c, std::set<Thing> things) {
  Shown shown;
  shown.things = std::move(things);
  return show(head(), c, plan_of(c), shown);
}

inline const Part& part_of(const Scene& scene, Thing thing) {
  for (const auto& part : scene.parts)
    if (part.thing == thing) return part;
  FAIL("no such part");
  return scene.parts.front();
}

inline std::vector<Mark> marks_of(const Scene& scene) {
  std::vector<Mark> all;
  for (const auto& part : scene.parts) all.insert(all.end(), part.marks.begin(), part.marks.end());
  return all;
}

inline const Mark* named(const std::vector<Mark>& marks, const std::string& name) {
  const auto found = std::find_if(marks.begin(), marks.end(), [&](const Mark& m) { return m.name == name; });
  return found == marks.end() ? nullptr : &*found;
}

inline std::set<std::string> names(const std::vector<Mark>& marks) {
  std::set<std::string> all;
  for (const auto& m : marks) all.insert(m.name);
  return all;
}

inline double length(const Scene& scene, const std::string& name) {
  double mm = 0;
  for (const auto& line : part_of(scene, Thing::tapes).lines)
    for (size_t i = 1; line.name == name && i < line.points.size(); ++i)
      mm += (line.points[i] - line.points[i - 1]).norm();
  return mm;
}

inline size_t count_of(const Part& part) {
  return part.spots.size() + part.lines.size() + part.wedges.size() + part.marks.size() + part.words.size() +
         (part.body ? 1 : 0) + (part.coil ? 1 : 0) + (part.gaps ? 1 : 0);
}

}  // namespace scalpmark::viewer::staged
