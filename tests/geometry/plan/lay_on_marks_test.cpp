#include "geometry/plan/lay_on_marks.h"

#include <Eigen/Dense>
#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"
#include "tests/support/sentence.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

// The ball in closed form, patient's left, tape rule: a mark lies at an arc of its distance on the coil.
Vector3d forward(const Vector3d& n) {
  return n.cross(Vector3d::UnitX()).normalized();
}
Vector3d outward(const Vector3d& n) {
  return n.cross(forward(n));
}
Vector3d mark_at(const Vector3d& n, double deg, const Vector3d& on_coil) {
  const double a = deg * M_PI / 180, s = on_coil.norm();
  const Vector3d front = std::cos(a) * forward(n) - std::sin(a) * outward(n), right = front.cross(n);
  return ball_mm * (std::cos(s / ball_mm) * n +
                    std::sin(s / ball_mm) * (on_coil.x() * right + on_coil.y() * front) / s);
}

CoilSetup by_tape() {
  CoilSetup setup;
  setup.model = flat_coil();
  setup.laid_by = MarkRule::tape;
  return setup;
}

}  // namespace

TEST_CASE("a coil laid by marks that disagree lies where the squares of what is missed are least") {
  const Vector3d n = Vector3d(-0.4, 0.5, 0.8).normalized();
  const Vector3d front(0, 60, 0), side(85, 0, 0);
  const Vector3d edge = mark_at(n, 47, front) + Vector3d(2, 1, 0),
                 beside = mark_at(n, 42, side) + Vector3d(0, 3, 0);
  const Vector3d site = ball_mm * n + 2.5 * outward(n);
  LaidBy by;
  by.marks = {{front, ball().skin().closest(edge), 1, 3, 0}, {side, ball().skin().closest(beside), 2, 3, 0}};
  by.site = ball().skin().closest(site);
  by.site_sd_mm = 1.5;
  by.angle_deg = 50;
  by.angle_sd_deg = 4;
  LayingSearch search;
  search.near = ball().skin().closest(ball_mm * n);
  for (const bool one_look : {true, false}) {
    by.marks[1].look = one_look ? 0 : 1;
    if (one_look) by.marks[1].sd_mm = by.marks[0].sd_mm = 1.5;
    const LaidOnMarks laid = lay_on_marks(ball(), by_tape(), Side::left, by, search);
    const auto missed = [&](const Vector3d& at, double deg) {
      // The inverse covariance of what may be off, written out.
      Eigen::Matrix<double, 6, 1> r;
      const auto put = [&](int row, const Vector3d& mark, const Vector3d& on_coil) {
        const Vector3d d = mark.normalized() * ball_mm - mark_at(at, deg, on_coil);
        r.segment<2>(row) << d.dot(forward(mark.normalized())), d.dot(outward(mark.normalized()));
      };
      put(0, edge, front);
      put(2, beside, side);
      const double a = deg * M_PI / 180;
      r[4] = (site.normalized() * ball_mm - ball_mm * at)
                 .dot(-std::sin(a) * forward(at) - std::cos(a) * outward(at));
      r[5] = 50 - deg;
      Eigen::Matrix<double, 6, 6> covariance = Eigen::Matrix<double, 6, 6>::Zero();
      for (int i = 0; i < 4; ++i)
        for (int j = 0; j < 4; ++j) {
          const double own = by.marks[static_cast<size_t>(i / 2)].sd_mm;
          if (i == j) covariance(i, j) = own * own + 9;
          if (one_look && i != j && i % 2 == j % 2) covariance(i, j) = 9;
        }
      covariance(4, 4) = 1.5 * 1.5;
      covariance(5, 5) = 16;
      return r.dot(covariance.inverse() * r);
    };
    const Vector3d found = ball().skin().position(laid.pulse).normalized();
    const double least = missed(found, laid.angle_deg);
    // Broyden's slopes are not exact, so a tenth of a millimetre is allowed.
    for (const double mm : {-0.3, 0.3}) {
      CHECK(missed((ball_mm * found + mm * forward(found)).normalized(), laid.angle_deg) > least);
      CHECK(missed((ball_mm * found + mm * outward(found)).normalized(), laid.angle_deg) > least);
      CHECK(missed(found, laid.angle_deg + mm) > least);
    }
    CHECK(least > 0.1);
  }
}

TEST_CASE("just enough marks are met exactly, however sure each is") {
  const Vector3d n = Vector3d(-0.3, 0.4, 0.85).normalized();
  const Vector3d front(0, 60, 0);
  for (const double sd : {0.1, 1.0, 8.0}) {
    LaidBy by;
    by.marks = {{front, ball().skin().closest(mark_at(n, 30, front)), sd}};
    by.angle_deg = 30;
    LayingSearch search;
    search.near = ball().skin().closest(ball_mm * Vector3d(-0.4, 0.4, 0.8).normalized());
    const LaidOnMarks laid = lay_on_marks(ball(), by_tape(), Side::left, by, search);
    CHECK((ball().skin().position(laid.pulse) - ball_mm * n).norm() < 0.05);
    CHECK(laid.angle_deg == Approx(30).margin(0.02));
  }
}

TEST_CASE("less than is enough to lay a coil by is refused in a sentence") {
  LaidBy by;
  by.marks = {{Vector3d(0, 60, 0), ball().skin().closest({0, 60, 60})}};
  LayingSearch search;
  search.near = ball().vertex();
  CHECK(is_sentence(
      sentence_of<GeometryError>([&] { (void)lay_on_marks(ball(), by_tape(), Side::left, by, search); })));
}
