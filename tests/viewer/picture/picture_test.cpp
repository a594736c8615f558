#include "viewer/picture/picture.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <optional>

#include "tests/support/drawn_pixels.h"
#include "tests/support/laid_on_lopsided.h"
#include "viewer/picture/display.h"
#include "viewer/stage/scene/palette.h"
#include "viewer/words/error.h"

using namespace scalpmark;
using namespace scalpmark::viewer;

namespace {

tests::LaidOnLopsided laid(geometry::Side side) {
  return tests::laid_on_lopsided(side, "figure-8-70", geometry::TapeDistances::worked_out);
}

bool alike(Colour a, Colour b) {
  return std::abs(a.red - b.red) < 14 && std::abs(a.green - b.green) < 14 && std::abs(a.blue - b.blue) < 14;
}

/// The middle of the pixels of one colour within `reach` of a place; empty when there are none.
std::optional<Pixel> middle_of(const std::string& pixels, Colour colour, const Pixel& near, double reach) {
  double x = 0, y = 0;
  int count = 0;
  for (int j = static_cast<int>(near.y - reach); j <= static_cast<int>(near.y + reach); ++j)
    for (int i = static_cast<int>(near.x - reach); i <= static_cast<int>(near.x + reach); ++i) {
      if (i < 0 || j < 0 || i >= tests::usual_size.width || j >= tests::usual_size.height) continue;
      if (!alike(tests::colour_at(pixels, i, j), colour)) continue;
      x += i + 0.5;
      y += j + 0.5;
      ++count;
    }
  if (count == 0) return {};
  return Pixel{x / count, y / count};
}

/// Where a stage's pixel is in the picture.
Pixel in_picture(const Pixel& p) {
  return {p.x / Picture::pixel_ratio(), p.y / Picture::pixel_ratio()};
}

}  // namespace

TEST_CASE("each kind of mark is drawn where the plan says, and only when the head does not hide it") {
  const Display display;
  const tests::LaidOnLopsided s = laid(geometry::Side::left);
  Picture picture(display, tests::usual_size);
  Stage& stage = picture.stage();
  for (const Thing thing :
       {Thing::landmarks, Thing::start, Thing::hotspot, Thing::treatment, Thing::grid, Thing::edge_marks}) {
    Shown shown;
    shown.things = {Thing::skin, thing};
    stage.show(s.head, s.the_case, s.plan, shown);
    for (const View view : all_views()) {
      stage.look(view);
      const std::string pixels = picture.draw();
      int seen = 0;
      for (const SeenMark& m : stage.marks()) {
        if (m.thing != thing) continue;
        INFO(name_of(view) << ", " << m.name);
        // The head is convex, so what faces the eye is seen and what faces away is not.
        const double facing = m.normal.dot(stage.sight().toward_eye);
        if (std::abs(facing) < 0.15) continue;
        CHECK(m.visible == (facing > 0));
        const Pixel there = in_picture(stage.project(m.at));
        const double reach = reach_px(m.shape) + 2;
        const auto middle = middle_of(pixels, m.colour, there, reach);
        if (facing < 0) continue;
        ++seen;
        REQUIRE(middle);
        // Marks of one colour may lie side by side on the grid or under the edge; alone they are centred.
        if (thing != Thing::grid && thing != Thing::edge_marks && thing != Thing::landmarks) {
          CHECK(std::abs(middle->x - there.x) < 1.5);
          CHECK(std::abs(middle->y - there.y) < 1.5);
          // The renderer's own pick: a point of the mark itself (a ring has a hole).
          const double aside = m.shape == Shape::ring ? 10.5 : 0;
          const Eigen::Vector3d x = m.along * stage.sight().mm(aside);
          CHECK(stage.pick(stage.project(m.at + x)) == thing);
        }
      }
      if (thing == Thing::landmarks) CHECK(seen > 15);
    }
  }
}

TEST_CASE("a mark behind the head leaves no trace in the picture") {
  const Display display;
  const tests::LaidOnLopsided s = laid(geometry::Side::left);
  Picture picture(display, tests::usual_size);
  Stage& stage = picture.stage();
  Shown shown;
  shown.things = {Thing::skin, Thing::treatment, Thing::hotspot, Thing::start};
  stage.show(s.head, s.the_case, s.plan, shown);
  stage.look(View::right);
  const std::string pixels = picture.draw();
  for (const SeenMark& m : stage.marks()) {
    if (m.thing == Thing::landmarks || m.normal.dot(stage.sight().toward_eye) > -0.15) continue;
    CHECK_FALSE(middle_of(pixels, m.colour, in_picture(stage.project(m.at)), 20));
  }
}

TEST_CASE("left and right are where the patient has them, in every view") {
  const Display display;
  for (const auto side : {geometry::Side::left, geometry::Side::right}) {
    const tests::LaidOnLopsided s = laid(side);
    Picture picture(display, tests::usual_size);
    Stage& stage = picture.stage();
    stage.show(s.head, s.the_case, s.plan, {});
    const double way = side == geometry::Side::left ? -1 : 1;
    const auto x_of = [&](const Eigen::Vector3d& p) { return stage.project(p).x; };
    const auto caption_x = [&](const std::string& text) -> std::optional<double> {
      for (const auto& c : stage.captions())
        if (c.text == text) return 0.5 * (c.box.left + c.box.right);
      return {};
    };
    for (const View view : {View::front, View::back, View::above}) {
      stage.look(view);
      (void)picture.draw();
      // Facing the patient, their left is on the right of the picture.
      const double mirrored = view == View::front ? -1 : 1;
      CHECK((x_of(s.plan.hotspot.pulse) - x_of(s.plan.axes.origin)) * way * mirrored > 0);
      const auto left = caption_x("Patient's left"), right = caption_x("Patient's right");
      REQUIRE(left);
      REQUIRE(right);
      CHECK((*right - *left) * mirrored > 0);
    }
    for (const View view : {View::left, View::right}) {
      stage.look(view);
      (void)picture.draw();
      CHECK(caption_x(view == View::left ? "Patient's left side" : "Patient's right side"));
      const auto front = caption_x("Front"), back = caption_x("Back");
      REQUIRE(front);
      REQUIRE(back);
      CHECK((*front < *back) == (view == View::left));
      CHECK((x_of(s.plan.fiducials.nasion) < x_of(s.plan.fiducials.inion)) == (view == View::left));
    }
  }
}

TEST_CASE("labels keep clear of each other and of the captions, and the chief ones are always there") {
  const Display display;
  const tests::LaidOnLopsided s = laid(geometry::Side::right);
  for (const PictureSize other : {PictureSize{1280, 800}, PictureSize{1920, 1080}, PictureSize{640, 480}}) {
    Picture picture(display, other);
    Stage& stage = picture.stage();
    stage.show(s.head, s.the_case, s.plan, {});
    for (const View view : all_views()) {
      stage.look(view);
      (void)picture.draw();
      INFO(name_of(view) << " " << other.width);
      const auto& labels = stage.labels();
      for (size_t i = 0; i < labels.size(); ++i) {
        for (size_t j = 0; j < i; ++j) CHECK_FALSE(labels[i].box.overlaps(labels[j].box));
        for (const auto& c : stage.captions()) CHECK_FALSE(labels[i].box.overlaps(c.box));
        // Text of at least 13 pixels is at least that high in its box.
        CHECK(labels[i].box.height() / Picture::pixel_ratio() >= 13);
      }
      if (other.width < 1280) continue;
      for (const SeenMark& m : stage.marks())
        if (m.visible && m.thing == Thing::treatment)
          CHECK(std::any_of(labels.begin(), labels.end(), [](const PlacedLabel& l) {
            return l.wish.text.find("Treatment site") != std::string::npos;
          }));
    }
  }
}

TEST_CASE("the coil stands outside the head and its centre over the pulse point") {
  const Display display;
  const tests::LaidOnLopsided s = laid(geometry::Side::left);
  Picture picture(display, tests::usual_size);
  Stage& stage = picture.stage();
  Shown shown;
  shown.things = {Thing::skin, Thing::coil};
  stage.show(s.head, s.the_case, s.plan, shown);
  stage.look(View::square_on);
  (void)picture.draw();
  const auto& p = s.plan.treatment;
  const Pixel pulse = stage.project(p.pulse), edge = stage.project(p.edge);
  // Seen square on, forward is up, so the front axis leaves it by the coil's angle, toward the midline (here
  // to the right), and the edge is centre_to_edge_mm away.
  const double angle_deg = std::atan2(edge.x - pulse.x, pulse.y - edge.y) * 180 / 3.14159265358979;
  CHECK(angle_deg == Approx(p.angle_deg).margin(0.1));
  CHECK(std::hypot(edge.x - pulse.x, edge.y - pulse.y) * stage.sight().mm_per_px ==
        Approx(s.the_case.coil.centre_to_edge_mm).margin(0.1));
}

TEST_CASE("a picture of a size that cannot be drawn is refused") {
  CHECK_THROWS_AS(check_size({100, 100}), ViewerError);
  CHECK_THROWS_AS(check_size({5000, 800}), ViewerError);
  CHECK_NOTHROW(check_size({640, 480}));
}
