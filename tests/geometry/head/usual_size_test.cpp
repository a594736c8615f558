#include "geometry/head/usual_size.h"

#include <catch2/catch.hpp>

#include "geometry/head/scale.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

namespace {

Head usual_head() {
  const Surface ball = sphere(1, 5);
  std::vector<Eigen::Vector3d> moved = ball.vertices();
  for (auto& v : moved) v = v.cwiseProduct(Eigen::Vector3d(75, 97, 128));
  return {ball.moved(std::move(moved)), {{0, 97, 0}, {0, -97, 0}, {-75, 0, 0}, {75, 0, 0}}};
}

/// A head of three half-ellipses, as long, broad and high as usual (surveys, memory), scaled to the tapes.
std::optional<SizeCaution> caution_of(const MeasuredTapes& tapes) {
  return size_caution(scale_to_tapes(usual_head(), tapes).head, tapes);
}

bool says(const std::optional<SizeCaution>& caution, const std::string& text) {
  return caution && english(caution->sentence).find(text) != std::string::npos;
}

}  // namespace

TEST_CASE("tapes of a usual head are no caution, nor those of one a little larger or smaller") {
  const TapeMeasures own = usual_head().tapes();
  for (const double by : {0.97, 1.0, 1.03})
    CHECK_FALSE(caution_of({own.nasion_inion_mm * by, own.tragus_tragus_mm * by, own.circumference_mm * by}));
  CHECK_FALSE(caution_of({}));
}

TEST_CASE("one tape 4 cm off is a caution that names it, with what it should read about") {
  const TapeMeasures own = usual_head().tapes();
  const MeasuredTapes right{own.nasion_inion_mm, own.tragus_tragus_mm, own.circumference_mm};
  MeasuredTapes wrong = right;
  *wrong.tragus_tragus_mm -= 42;
  const auto caution = caution_of(wrong);
  REQUIRE(caution);
  INFO(english(caution->sentence));
  CHECK(says(caution, "tragus-tragus tape of about"));
  CHECK((says(caution, "narrower than nearly all") || says(caution, "lower than nearly all")));
}
