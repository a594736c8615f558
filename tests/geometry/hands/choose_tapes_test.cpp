#include "geometry/hands/choose_tapes.h"

#include <Eigen/Eigenvalues>
#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <string>

#include "geometry/hands/find_by_tapes.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

std::string name(const ChosenTapes& c) {
  return std::string(c.vertex ? "v" : "") + (c.nasion ? "n" : "") + (c.left_tragus ? "l" : "") +
         (c.right_tragus ? "r" : "");
}

ChosenTapes chosen(const Head& head, const Vector3d& at) {
  return choose_tapes(head, {head.skin().closest(at)}).front();
}

}  // namespace

// On the sphere tapes run along great circles. The spread along the way they fix worst is 2.448 readings over
// the root of the smaller eigenvalue of their directions' squares (see find_by_tapes_test).
TEST_CASE("the tapes chosen on a sphere are those whose great circles cross best and meet once", "[slow]") {
  const std::map<char, Vector3d> from{
      {'v', {0, 0, 1}}, {'n', {0, 1, 0}}, {'l', {-1, 0, 0}}, {'r', {1, 0, 0}}};
  const auto spread = [&](const std::string& tapes, const Vector3d& n) {
    Eigen::Matrix3d squares = Eigen::Matrix3d::Zero();
    for (const char tape : tapes) {
      const Vector3d toward = (from.at(tape) - from.at(tape).dot(n) * n).normalized();
      squares += toward * toward.transpose();
    }
    // The smallest eigenvalue is that of n itself, 0; the next is the one.
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> axes(squares);
    return 2.5 * std::sqrt(5.991 / axes.eigenvalues()[1]);
  };
  // In front of the ears, where nasion and a tragus also meet on the face, which does not count; tapes from
  // the top and one or both sides meet in front and behind, from top and front left and right.
  const std::array once{"nl", "nr", "vnl", "vnr", "nlr"};
  for (const Vector3d& at : {Vector3d(-0.5, 0.3, 0.8), Vector3d(-0.2, 0.6, 0.77), Vector3d(0.7, 0.35, 0.62),
                             Vector3d(-70, 5, 56), Vector3d(-5, 40, 80)}) {
    const Vector3d n = at.normalized();
    double pair = 1e9, triple = 1e9;
    for (const std::string tapes : once)
      (tapes.size() == 2 ? pair : triple) = std::min(tapes.size() == 2 ? pair : triple, spread(tapes, n));
    const ChosenTapes c = chosen(ball(), 90 * n);
    CAPTURE(n.transpose(), name(c), pair, triple);
    CHECK(c.places == 1);
    CHECK(c.spread_mm == Approx(triple < 0.9 * pair ? triple : pair).epsilon(0.07));
    CHECK(c.spread_mm == Approx(spread(name(c), n)).epsilon(0.07));
  }
}

TEST_CASE("a tape without length is never asked for") {
  const ChosenTapes at_vertex = chosen(ball(), {0, 0, 90});
  CHECK_FALSE(at_vertex.vertex);
  CHECK(at_vertex.places == 1);
}

TEST_CASE("the chosen tapes find the mark with the spread that was said, and no two or three find it better",
          "[slow]") {
  const Head head = lopsided_head(5);
  const TapeFinder finder(head);
  for (const Vector3d& n : {Vector3d(-0.5, 0.3, 0.8), Vector3d(0.5, 0.5, 0.7), Vector3d(-0.1, 0.6, 0.8),
                            Vector3d(0.6, -0.3, 0.7)}) {
    const SurfacePoint mark = head.skin().closest(lopsided(n));
    const Head::Fields& f = head.fields();
    const TapeReadings all{f.vertex.at(head.skin(), mark), f.nasion.at(head.skin(), mark),
                           f.left_tragus.at(head.skin(), mark), f.right_tragus.at(head.skin(), mark)};
    const ChosenTapes c = choose_tapes(head, {mark}).front();
    CAPTURE(n.transpose(), name(c));
    for (unsigned set = 3; set < 15; ++set) {
      TapeReadings some;
      if ((set & 1U) != 0) some.vertex_mm = all.vertex_mm;
      if ((set & 2U) != 0) some.nasion_mm = all.nasion_mm;
      if ((set & 4U) != 0) some.left_tragus_mm = all.left_tragus_mm;
      if ((set & 8U) != 0) some.right_tragus_mm = all.right_tragus_mm;
      if (((set & 1U) != 0) + ((set & 2U) != 0) + ((set & 4U) != 0) + ((set & 8U) != 0) < 2) continue;
      const auto places = finder.find(some);
      const double spread_mm = places[nearest_place(head, places, mark)].spread_mm;
      const bool is_it = c.vertex == some.vertex_mm.has_value() && c.nasion == some.nasion_mm.has_value() &&
                         c.left_tragus == some.left_tragus_mm.has_value() &&
                         c.right_tragus == some.right_tragus_mm.has_value();
      if (is_it) {
        CHECK(c.places == places.size());
        CHECK(c.spread_mm == Approx(spread_mm).epsilon(0.05));
      }
      CHECK(c.places <= places.size());
      if (c.places == places.size()) CHECK(c.spread_mm < 1.17 * spread_mm);  // a tenth, and rough distances
    }
  }
}
