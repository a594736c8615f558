// The stage as an eye half a metre away sees it.
#include <vtkCamera.h>
#include <vtkGenericOpenGLRenderWindow.h>
#include <vtkNew.h>
#include <vtkRenderer.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/angles.h"
#include "tests/support/shapes.h"
#include "viewer/stage/drawing/aim.h"
#include "viewer/stage/scene/mark.h"

using namespace scalpmark;
using namespace scalpmark::viewer;
using Eigen::Vector3d;

namespace {

struct Seen {
  vtkNew<vtkGenericOpenGLRenderWindow> window;
  vtkNew<vtkRenderer> renderer;

  Seen(const Gaze& gaze, const Vector3d& focus, double eye_mm) {
    window->SetSize(900, 660);
    window->AddRenderer(renderer);
    aim(*renderer, focus, gaze, 120, eye_mm);
    renderer->GetActiveCamera()->SetWindowCenter(0.12, -0.05);
  }
  [[nodiscard]] Sight sight() { return sight_of(*renderer, 1); }
  /// Where VTK itself draws a point.
  [[nodiscard]] Pixel by_vtk(const Vector3d& p) {
    double x = p.x(), y = p.y(), z = p.z();
    renderer->WorldToView(x, y, z);
    return {(x + 1) / 2 * 900, (1 - y) / 2 * 660};
  }
};

const Gaze from_aside{Vector3d(0.48, -0.6, 0.64), Vector3d(-0.4, 0.5, 0.768750).normalized()};

Gaze square(Gaze gaze) {
  gaze.up = (gaze.up - gaze.up.dot(gaze.toward_eye) * gaze.toward_eye).normalized();
  return gaze;
}

}  // namespace

TEST_CASE("where a point is seen from an eye near by is where VTK draws it") {
  for (const double eye_mm : {0.0, 500.0, 800.0}) {
    Seen seen(square(from_aside), Vector3d(5, -8, 40), eye_mm);
    const Sight sight = seen.sight();
    CHECK(sight.eye_mm == Approx(eye_mm));
    for (const Vector3d& p :
         {Vector3d(0, 0, 0), Vector3d(70, -20, 90), Vector3d(-60, 80, 10), Vector3d(5, -8, 40)}) {
      const Pixel ours = sight.project(p), theirs = seen.by_vtk(p);
      INFO("eye " << eye_mm << ", " << p.transpose());
      CHECK(ours.x == Approx(theirs.x).margin(0.01));
      CHECK(ours.y == Approx(theirs.y).margin(0.01));
    }
  }
}

TEST_CASE("the skin found under a pixel is drawn at that pixel, from near and from afar") {
  const geometry::Surface ball = tests::sphere(90, 5);
  for (const double eye_mm : {0.0, 500.0}) {
    Seen seen(square(from_aside), Vector3d::Zero(), eye_mm);
    const Sight sight = seen.sight();
    for (const Pixel at : {Pixel{400, 300}, Pixel{300, 420}, Pixel{520, 250}}) {
      const auto found = skin_under(ball, sight, at);
      REQUIRE(found);
      const Vector3d place = ball.position(*found);
      const Pixel there = sight.project(place);
      CHECK(there.x == Approx(at.x).margin(0.01));
      CHECK(there.y == Approx(at.y).margin(0.01));
      // The near side, and nothing between it and the eye.
      CHECK(in_sight(ball, place, place.normalized(), sight));
    }
  }
}

TEST_CASE("an edge that hovers over the skin is seen over other skin as the eye moves aside") {
  // An edge 20 mm over a plane, seen from an eye 500 mm from the focus: the place of the plane it hides is
  // away from the foot of the edge by gap times the slope of the line from the eye (similar triangles).
  const Gaze down{Vector3d::UnitZ(), Vector3d::UnitY()};
  Seen seen(down, Vector3d::Zero(), 500);
  const Sight sight = seen.sight();
  const Vector3d edge(60, 0, 20), eye = sight.eye();
  const double slope = (edge.x() - eye.x()) / (eye.z() - edge.z());
  const Vector3d hides(edge.x() + slope * edge.z(), 0, 0);
  const Pixel at_edge = sight.project(edge), at_skin = sight.project(hides);
  CHECK(at_edge.x == Approx(at_skin.x).margin(1e-6));
  CHECK(hides.x() - edge.x() == Approx(2.5));
  // By parallel projection it would hide its own foot.
  Seen parallel(down, Vector3d::Zero(), 0);
  CHECK(parallel.sight().project(edge).x == Approx(parallel.sight().project({60, 0, 0}).x));
}

TEST_CASE("what is lifted toward a near eye stays at its pixel") {
  Seen seen(square(from_aside), Vector3d(0, 0, 40), 500);
  const Sight sight = seen.sight();
  const Vector3d at(50, 30, 80);
  const Pixel before = sight.project(at), after = sight.project(at + 12 * sight.way_to_eye(at));
  CHECK(after.x == Approx(before.x).margin(1e-9));
  CHECK(after.y == Approx(before.y).margin(1e-9));
}
