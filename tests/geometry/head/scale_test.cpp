#include "geometry/head/scale.h"

#include <catch2/catch.hpp>

#include "geometry/base/error.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

namespace {
const Head& base() {
  static const Head head(sphere(1, 6, {76, 97, 92}),
                         {{0, 96, -12}, {0, -96, -12}, {-75, 0, -18}, {75, 0, -18}});
  return head;
}
}  // namespace

TEST_CASE("a head scaled to its tapes measures what was entered, within a tenth of a millimetre", "[slow]") {
  for (const auto& [ni, tt, c] :
       {std::array{362.0, 352.0, 565.0}, {340.0, 345.0, 545.0}, {375.0, 360.0, 590.0}}) {
    const ScaledHead scaled = scale_to_tapes(base(), {ni, tt, c});
    CHECK(scaled.head.tapes().nasion_inion_mm == Approx(ni).margin(0.1));
    CHECK(scaled.head.tapes().tragus_tragus_mm == Approx(tt).margin(0.1));
    CHECK(scaled.head.tapes().circumference_mm == Approx(c).margin(0.1));
  }
}

TEST_CASE("one tape scales all axes alike, two leave the third to follow") {
  const TapeMeasures own = base().tapes();
  const ScaledHead one = scale_to_tapes(base(), {own.nasion_inion_mm * 1.05, {}, {}});
  CHECK((one.factors - Eigen::Vector3d::Constant(1.05)).norm() < 1e-6);
  const ScaledHead two =
      scale_to_tapes(base(), {own.nasion_inion_mm * 1.04, {}, own.circumference_mm * 1.02});
  CHECK(two.head.tapes().nasion_inion_mm == Approx(own.nasion_inion_mm * 1.04).margin(0.1));
  CHECK(two.head.tapes().circumference_mm == Approx(own.circumference_mm * 1.02).margin(0.1));
  CHECK(two.factors.minCoeff() > 0.95);
  CHECK(two.factors.maxCoeff() < 1.12);
  CHECK((scale_to_tapes(base(), {}).factors - Eigen::Vector3d::Ones()).norm() == 0);
}

TEST_CASE("tapes that no head has are refused by name, with the range or the pair") {
  CHECK_THROWS_WITH(scale_to_tapes(base(), {270, {}, {}}),
                    Catch::Contains("nasion-inion") && Catch::Contains("28 cm"));
  CHECK_THROWS_WITH(scale_to_tapes(base(), {{}, 441, {}}),
                    Catch::Contains("tragus-tragus") && Catch::Contains("44 cm"));
  CHECK_THROWS_WITH(scale_to_tapes(base(), {{}, {}, 700}),
                    Catch::Contains("circumference") && Catch::Contains("66 cm"));
  CHECK_THROWS_WITH(scale_to_tapes(base(), {{}, {}, std::nan("")}), Catch::Contains("circumference"));
  CHECK_THROWS_WITH(scale_to_tapes(base(), {440, 290, {}}), Catch::Contains("nasion-inion") &&
                                                                Catch::Contains("tragus-tragus") &&
                                                                Catch::Contains("disagree"));
  CHECK_THROWS_WITH(scale_to_tapes(base(), {430, {}, 480}), Catch::Contains("disagree"));
}

TEST_CASE("a head scaled alike along all axes keeps its shape, face and ears too") {
  const ScaledHead scaled = scale_to_tapes(base(), {base().tapes().nasion_inion_mm * 1.07, {}, {}});
  const auto &was = base().skin().vertices(), &is = scaled.head.skin().vertices();
  const Eigen::Vector3d origin = base().axes().origin;
  double farthest = 0;
  for (size_t v = 0; v < was.size(); ++v)
    farthest = std::max(farthest, (is[v] - origin - 1.07 * (was[v] - origin)).norm());
  CHECK(farthest < 1e-3);
}
