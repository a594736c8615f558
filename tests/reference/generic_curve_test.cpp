// Whether the generic head curves as a real one under the coil, at the places and for the tapes it was fitted
// to (so this holds the fit, and is no check of it elsewhere), against the template MRI head (ch2.nii.gz of
// Debian's mricron-data, fiducials of standard_1005.elc in python3-mne) scaled to the same tapes. That head's
// sides differ (at C3 the coil's edge hovers 14 mm over the skin below it, at C4 11), the generic head's do
// not, so it is held against the mean of the two.
#include <Eigen/Geometry>
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "geometry/head/landmarks.h"
#include "geometry/head/scale.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "models/generic/generic_head.h"
#include "tests/support/template_head.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using Eigen::Vector3d;

namespace {

/// Adults' tapes, mm: the bench head; a man's and a woman's near the means of the surveys (memory); a
/// large and a small head. The generic head was fitted for these.
const std::vector<MeasuredTapes>& five_sets() {
  static const std::vector<MeasuredTapes> sets{
      {362, 368, 565}, {370, 352, 574}, {345, 341, 561}, {385, 375, 600}, {335, 330, 535}};
  return sets;
}

/// Gaps from edge to skin and distances between the marks of two rules, mm.
struct UnderCoil {
  double drop_gap = 0, nearest_gap = 0, tape_drop = 0, tape_nearest = 0, drop_nearest = 0;
};

UnderCoil under(const Placement& p) {
  const EdgeMarks& m = p.edge_mark;
  REQUIRE(m.tape);
  REQUIRE(m.drop);
  REQUIRE(m.nearest);
  return {*p.drop_gap_mm, *p.nearest_gap_mm, (*m.tape - *m.drop).norm(), (*m.tape - *m.nearest).norm(),
          (*m.drop - *m.nearest).norm()};
}

void add(UnderCoil& sum, const UnderCoil& one, double share) {
  sum.drop_gap += share * one.drop_gap;
  sum.nearest_gap += share * one.nearest_gap;
  sum.tape_drop += share * one.tape_drop;
  sum.tape_nearest += share * one.tape_nearest;
  sum.drop_nearest += share * one.drop_nearest;
}

Case case_of(Side side, double angle_deg) {
  Case c;
  c.coil.model = models::coil("figure-8-70");
  c.coil.angle_deg = angle_deg;
  c.side = side;
  use_one_rule(c, MarkRule::tape);  // the coil then lies on the point that is named
  return c;
}

/// A landmark's name on the other side: "F4" for "F3".
std::string mirrored(const std::string& label) {
  const char last = label.back();
  if (last < '0' || last > '9') return label;
  return label.substr(0, label.size() - 1) + static_cast<char>(last % 2 == 1 ? last + 1 : last - 1);
}

/// Start, grid (its nine spots' mean: any of them may be the hotspot), treatment and landmarks of the left
/// side, each the mean of what it and its twin on the right have.
std::map<std::string, UnderCoil> both_sides(const Head& head, const std::vector<std::string>& labels,
                                            double angle_deg = 45) {
  std::map<std::string, UnderCoil> all;
  for (const Side side : {Side::left, Side::right}) {
    const Case c = case_of(side, angle_deg);
    const Plan plan = solve(head, c, TapeDistances::left_out);
    add(all["start"], under(plan.start), 0.5);
    for (const GridSpot& spot : plan.grid) add(all["hotspot"], under(spot.placement), 0.5 / 9);
    add(all["treatment"], under(plan.treatment), 0.5);
    for (const std::string& label : labels)
      for (const Landmark& mark : plan.landmarks)
        if (mark.name == (side == Side::left ? label : mirrored(label)))
          add(all[label], under(place_coil(head, c.coil, side, mark.on_skin, TapeDistances::left_out)), 0.5);
  }
  return all;
}

void check_like(const std::map<std::string, UnderCoil>& own, const std::map<std::string, UnderCoil>& real,
                double part, double mm) {
  REQUIRE(own.size() == real.size());
  for (const auto& [place, r] : real) {
    const UnderCoil& o = own.at(place);
    CAPTURE(place);
    CHECK(o.drop_gap == Approx(r.drop_gap).epsilon(part));
    CHECK(o.nearest_gap == Approx(r.nearest_gap).epsilon(part));
    CHECK(o.tape_drop == Approx(r.tape_drop).margin(mm));
    CHECK(o.tape_nearest == Approx(r.tape_nearest).margin(mm));
    CHECK(o.drop_nearest == Approx(r.drop_nearest).margin(mm));
  }
}

struct TwoHeads {
  Head own, real;
};
TwoHeads scaled_to(const MeasuredTapes& tapes) {
  return {scale_to_tapes(models::generic_head(), tapes).head,
          scale_to_tapes(tests::template_head(), tapes).head};
}

/// Along right (from the midline), front and up from half way between the tragi, mm.
Vector3d in_axes(const Head& head, const Vector3d& p) {
  const HeadAxes& axes = head.axes();
  const Vector3d q = p - axes.origin;
  return {q.dot(axes.right), q.dot(axes.front), q.dot(axes.up)};
}

/// The 10-10 positions in the head's axes, left and right made one.
std::map<std::string, Vector3d> positions(const Head& head) {
  std::map<std::string, Vector3d> all;
  const auto marks = landmarks(head, LandmarkSystem::ten_ten);
  const auto at = [&](const std::string& name) {
    for (const Landmark& mark : marks)
      if (mark.name == name) return in_axes(head, mark.at);
    return Vector3d(1e9, 1e9, 1e9);
  };
  for (const Landmark& mark : marks) {
    const Vector3d a = at(mark.name), b = at(mirrored(mark.name));
    all[mark.name] = 0.5 * (a + Vector3d(-b.x(), b.y(), b.z()));
  }
  return all;
}

}  // namespace

TEST_CASE("under the coil the generic head is the template's like, for five sets of tapes") {
  for (const MeasuredTapes& tapes : five_sets()) {
    CAPTURE(*tapes.nasion_inion_mm, *tapes.tragus_tragus_mm, *tapes.circumference_mm);
    const TwoHeads heads = scaled_to(tapes);
    const std::vector<std::string> labels{"F3", "C3", "P3", "Oz"};
    check_like(both_sides(heads.own, labels), both_sides(heads.real, labels), 0.10, 1.5);
  }
}

// The bounds are what the form drawn before had at best over these sets: vertex 6.31 mm, mean of all 4.10,
// furthest on the midline 7.77.
TEST_CASE(
    "the generic head's vertex, profile and landmarks lie nearer to the template's than those drawn before") {
  const std::set<std::string> profile{"Fpz", "AFz", "Fz", "FCz", "Cz", "CPz", "Pz", "POz", "Oz"};
  for (const MeasuredTapes& tapes : five_sets()) {
    CAPTURE(*tapes.nasion_inion_mm, *tapes.tragus_tragus_mm, *tapes.circumference_mm);
    const TwoHeads heads = scaled_to(tapes);
    const auto own = positions(heads.own), real = positions(heads.real);
    double sum_mm = 0, midline_mm = 0;
    for (const auto& [name, at] : real) {
      const double off_mm = (own.at(name) - at).norm();
      sum_mm += off_mm;
      if (profile.contains(name)) midline_mm = std::max(midline_mm, off_mm);
    }
    CHECK((own.at("Cz") - real.at("Cz")).norm() < 6.31);
    CHECK(sum_mm / static_cast<double>(real.size()) < 4.10);
    CHECK(midline_mm < 7.77);
  }
}
