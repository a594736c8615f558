#include <algorithm>
#include <catch2/catch.hpp>
#include <iostream>
#include <set>

#include "geometry/plan/placement.h"
#include "geometry/plan/plan_cortex.h"
#include "geometry/plan/solve.h"
#include "geometry/surface/patch_normal.h"
#include "models/coils/coil_library.h"
#include "models/generic/generic_head.h"
#include "tests/support/template_cortex.h"
#include "tests/support/vtk_depth.h"

using namespace scalpmark;
using namespace scalpmark::geometry;

// The brain, its Brodmann areas and its gyri: ch2bet.nii.gz, brodmann.nii.gz and aal.nii.gz of the Debian
// package mricron-data; the head is ch2.nii.gz of the same person. Positions are constructed by this program.

namespace {

/// A head and the template's brain under it.
struct Subject {
  const Head& head;
  const Cortex& cortex;
};

Case plain_case() {
  Case c;
  c.coil.model = models::coil("figure-8-70");
  use_one_rule(c, MarkRule::tape);
  return c;
}

CortexHit under(const Subject& subject, const char* label) {
  const auto at = landmark(subject.head, label);
  REQUIRE(at);
  const Placement p = with_cortex(
      place_coil(subject.head, plain_case().coil, Side::left, at->on_skin, TapeDistances::left_out),
      &subject.cortex);
  REQUIRE(p.cortex);
  return *p.cortex;
}

double share_of(const std::vector<RegionShare>& shares, const std::set<std::string>& names) {
  double sum = 0;
  for (const auto& s : shares)
    if (names.contains(s.name)) sum += s.share;
  return sum;
}

std::set<std::string> areas(std::initializer_list<int> numbers) {
  std::set<std::string> names;
  for (const int n : numbers) names.insert("Brodmann area " + std::to_string(n));
  return names;
}

/// The template head with its own brain, the generic head with the same brain under it.
std::vector<Subject> subjects() {
  static const Cortex under_generic(models::load_template_brain(tests::template_files()).brain,
                                    models::generic_head());
  return {{tests::template_head(), tests::template_cortex()}, {models::generic_head(), under_generic}};
}

}  // namespace

// Okamoto et al. 2004, NeuroImage 21:99-111: 10-20 positions projected onto the brains of 17 adults. C3 and
// C4 fall on the gyri either side of the central sulcus (areas 1 to 4 and 6), F3 and F4 on the middle frontal
// gyrus (areas 8, 9 and 46).
TEST_CASE("C3 and C4 lie over the central region, F3 and F4 over areas 8, 9 and 46, as published") {
  for (const Subject& subject : subjects()) {
    for (const char* label : {"C3", "C4"}) {
      const CortexHit hit = under(subject, label);
      INFO(label);
      CHECK(share_of(hit.areas, areas({1, 2, 3, 4, 6})) > 0.8);
      CHECK(share_of(hit.areas, areas({1, 2, 3, 4})) > 0.3);
      CHECK(share_of(hit.gyri, {"left precentral gyrus", "left postcentral gyrus", "right precentral gyrus",
                                "right postcentral gyrus"}) > 0.8);
    }
    for (const char* label : {"F3", "F4"}) {
      const CortexHit hit = under(subject, label);
      INFO(label);
      CHECK(share_of(hit.areas, areas({8, 9, 46})) > 0.8);
      CHECK(share_of(hit.gyri, {"left middle frontal gyrus", "right middle frontal gyrus"}) > 0.8);
    }
    // Left positions lie over the left half of the brain.
    CHECK(under(subject, "F3").gyri.front().name.starts_with("left"));
    CHECK(under(subject, "F4").gyri.front().name.starts_with("right"));
  }
}

// Scalp to cortex over the motor and the prefrontal cortex of adults: about 14 to 20 mm, single persons 10 to
// 25 (Kozel et al. 2000, J Neuropsychiatry Clin Neurosci 12:376-384; McConnell et al. 2001, Biol Psychiatry
// 49:454-459; Stokes et al. 2005, J Neurophysiol 94:4520-4527; all from memory, so the bounds are wide).
TEST_CASE("from skin to cortex it is as far at C3, C4, F3 and F4 as published") {
  for (const Subject& subject : subjects())
    for (const char* label : {"C3", "C4", "F3", "F4"}) {
      const CortexHit hit = under(subject, label);
      for (const double mm : {hit.nearest_mm, hit.median_mm}) {
        INFO(label << " " << mm << " mm");
        CHECK(mm > 10);
        CHECK(mm < 22);
      }
    }
}

// Depth by the two ways papers take it (McConnell et al. 2001, Biol Psychiatry 49:454-459, memory): to the
// nearest cortex, here by VTK's own search over the brain's triangles; and the mean over squares of 18 mm of
// scalp of straight lines down to the cortex, here on a grid of 3 mm by VTK's own ray caster.
TEST_CASE("depths agree with VTK's measured the papers' two ways, and do not jump with the pulse") {
  for (const Subject& subject : subjects()) {
    const tests::VtkDepth vtk(subject.head.skin(), subject.cortex.surface());
    for (const char* label : {"C3", "C4", "F3", "F4", "Fz", "F5", "AF3"}) {
      const CortexHit hit = under(subject, label);
      const auto at = landmark(subject.head, label);
      const Eigen::Vector3d inward = -geometry::patch_normal(subject.head.skin(), at->on_skin, 15);
      INFO(label);
      CHECK(hit.nearest_mm == Approx(vtk.nearest_mm(at->at)).margin(0.01));
      const double mean = vtk.mean_over_square_mm(at->at, inward, 18, 3);
      CAPTURE(hit.depth_mm, hit.nearest_mm, hit.median_mm, mean);
      CHECK(hit.median_mm == Approx(mean).margin(2.5));
      CHECK(hit.nearest_mm < mean + 0.5);
      // The same 3 mm aside, eight ways.
      for (int i = 0; i < 8; ++i) {
        const Eigen::Vector3d aside =
            3.0 * (Eigen::AngleAxisd(i * 0.785398, inward) * inward.unitOrthogonal());
        const auto near = subject.cortex.under(
            subject.head.skin().position(subject.head.skin().closest(at->at + aside)), inward);
        REQUIRE(near);
        CHECK(std::abs(near->nearest_mm - hit.nearest_mm) < 2.5);
        CHECK(std::abs(near->median_mm - hit.median_mm) < 2.5);
      }
    }
  }
}

TEST_CASE("the template's brain under the template's own head stays where its volume has it") {
  const auto brain = models::load_template_brain(tests::template_files()).brain;
  const Cortex& cortex = tests::template_cortex();
  double worst = 0;
  for (size_t i = 0; i < brain->surface.vertices().size(); ++i) {
    worst = std::max(worst, (cortex.surface().vertices()[i] - brain->surface.vertices()[i]).norm());
  }
  std::cout << "template brain under its own head: moved by " << worst << " mm at most, pushed by "
            << cortex.pushed_mm() << " mm over " << 100 * cortex.pushed_share() << " %\n";
  CHECK(worst < 3);
  CHECK(cortex.pushed_mm() < 3);
  CHECK(cortex.pushed_share() < 0.05);
}

TEST_CASE("the brain stays 6 mm under the skin of the template head and of the generic head") {
  for (const Subject& subject : subjects())
    for (const auto& v : subject.cortex.surface().vertices()) {
      const SurfacePoint nearest = subject.head.skin().closest(v);
      const Eigen::Vector3d away = v - subject.head.skin().position(nearest);
      if (away.norm() < Cortex::nearest_to_skin_mm) FAIL("only " << away.norm() << " mm");
      if (away.dot(subject.head.skin().smooth_normal(nearest)) > 0)
        FAIL("outside by " << away.norm() << " mm");
    }
}

// PubMed 20633422: in 12 adults the prefrontal site half way between F3 and AF3 lay in front of the 5 cm
// point.
TEST_CASE("on the template's cortex the 5 cm site lies behind the point half way between F3 and AF3") {
  const Head& head = tests::template_head();
  const Cortex& cortex = tests::template_cortex();
  const Plan plan = with_cortex(solve(head, plain_case(), TapeDistances::left_out), &cortex);
  REQUIRE(plan.treatment.cortex);
  const auto between = std::find_if(plan.treatment_alternatives.begin(), plan.treatment_alternatives.end(),
                                    [](const auto& a) { return a.label == "F3-AF3"; });
  REQUIRE(between != plan.treatment_alternatives.end());
  const Placement there =
      with_cortex(place_coil(head, plain_case().coil, Side::left, head.skin().closest(between->pulse),
                             TapeDistances::left_out),
                  &cortex);
  REQUIRE(there.cortex);
  CHECK((there.cortex->point - plan.treatment.cortex->point).dot(plan.axes.front) > 15);
}
