// The names of the patient's sides at the rims of the stage keep off head, coil and other words.
#include <vtkNew.h>
#include <vtkRenderer.h>

#include <catch2/catch.hpp>

#include "viewer/stage/drawing/captions.h"

using namespace scalpmark;
using namespace scalpmark::viewer;

namespace {

constexpr int width = 500, height = 400;
constexpr Box stage{0, 0, width, height};

/// The head seen from above, as large as an ellipse in the middle of the stage.
Coverage head_as_large_as(double half_width, double half_height) {
  Coverage busy;
  busy.columns = width / 16 + 1;
  busy.rows = height / 16 + 1;
  for (int row = 0; row < busy.rows; ++row)
    for (int column = 0; column < busy.columns; ++column) {
      const double x = ((column + 0.5) * 16 - 0.5 * width) / half_width,
                   y = ((row + 0.5) * 16 - 0.5 * height) / half_height;
      busy.covered.push_back(x * x + y * y < 1);
    }
  return busy;
}

struct SideNames {
  Caption left, right;
};

SideNames names_on(const Coverage& busy, const std::vector<Caption>& there) {
  vtkNew<vtkRenderer> renderer;
  Overlay overlay(renderer);
  Sight sight;  // from above, the face up in the picture
  sight.width_px = width;
  sight.height_px = height;
  overlay.begin(sight);
  std::vector<Caption> taken = there;
  draw_sides(overlay, sight, geometry::HeadAxes(), stage, busy, taken);
  const auto named = [&](const std::string& name) {
    for (const Caption& c : taken)
      if (c.text == name) return c;
    FAIL(name + " is not named");
    return Caption();
  };
  return {named("Patient's left"), named("Patient's right")};
}

double middle_of(const Box& box) {
  return 0.5 * (box.top + box.bottom);
}

}  // namespace

TEST_CASE("the sides are named at the rims, at one height in the middle where there is room") {
  const auto [left, right] = names_on(head_as_large_as(100, 150), {});
  CHECK(left.box.left == 0);
  CHECK(right.box.right == Approx(width));
  CHECK(middle_of(left.box) == Approx(0.5 * height).margin(1));
  CHECK(middle_of(right.box) == middle_of(left.box));
}

TEST_CASE("the sides' names keep off a head that leaves room only above or below its middle, at one height") {
  const Coverage busy = head_as_large_as(0.5 * width, 0.3 * height);
  const auto [left, right] = names_on(busy, {});
  CHECK(busy.share(left.box) == 0);
  CHECK(busy.share(right.box) == 0);
  CHECK(middle_of(right.box) == middle_of(left.box));
}

TEST_CASE("where words stand at each rim but at no height both are free, each side has its name at its own") {
  // On the left all but the lowest quarter, on the right all but the highest: no height is free at both.
  const Caption on_left{"what the numbers say", {0, 0, 0.4 * width, 0.7 * height}};
  const Caption on_right{"another", {0.6 * width, 0.3 * height, width, height}};
  for (const double half_width : {50.0, 0.5 * width}) {
    const auto [left, right] = names_on(head_as_large_as(half_width, 0.5 * height), {on_left, on_right});
    CAPTURE(half_width, left.box.top, left.box.bottom, right.box.top, right.box.bottom);
    CHECK_FALSE(left.box.overlaps(on_left.box));
    CHECK_FALSE(right.box.overlaps(on_right.box));
    CHECK(left.box.left == 0);
    CHECK(right.box.right == Approx(width));
  }
}

TEST_CASE("the sides' names lie over the head rather than over words") {
  // Words above, and under them the head from rim to rim.
  const Caption words{"what the numbers say", {0, 0, width, 0.6 * height}};
  Coverage below = head_as_large_as(10 * width, 10 * height);
  below.covered.clear();
  for (int row = 0; row < below.rows; ++row)
    below.covered.insert(below.covered.end(), static_cast<size_t>(below.columns),
                         row * 16 >= words.box.bottom);
  const auto [left, right] = names_on(below, {words});
  CHECK_FALSE(left.box.overlaps(words.box));
  CHECK_FALSE(right.box.overlaps(words.box));
}

TEST_CASE("a side's name uses the room that is left at the very top or bottom of a rim") {
  const double letter = names_on(head_as_large_as(50, 50), {}).left.box.height();
  const Caption below{"a picture", {0, letter + 1, width, height}},
      above{"a picture", {0, 0, width, height - letter - 1}};
  for (const Caption& picture : {below, above}) {
    const auto [left, right] = names_on(head_as_large_as(50, 50), {picture});
    CHECK_FALSE(left.box.overlaps(picture.box));
    CHECK_FALSE(right.box.overlaps(picture.box));
  }
}

TEST_CASE("the words for front and back keep off each other and off the sides'") {
  vtkNew<vtkRenderer> renderer;
  Overlay overlay(renderer);
  Sight sight;
  sight.width_px = width;
  sight.height_px = height;
  overlay.begin(sight);
  std::vector<Caption> taken{{"a headline", {0.35 * width, 0, 0.65 * width, 30}}};
  draw_sides(overlay, sight, geometry::HeadAxes(), stage, head_as_large_as(100, 150), taken);
  REQUIRE(taken.size() == 5);
  for (size_t i = 0; i < taken.size(); ++i)
    for (size_t j = 0; j < i; ++j) {
      INFO(taken[i].text << " / " << taken[j].text);
      CHECK_FALSE(taken[i].box.overlaps(taken[j].box));
    }
  CHECK(taken[1].text == "Front");
  CHECK(taken[1].box.top == 0);
  CHECK(taken[2].text == "Back");
  CHECK(taken[2].box.bottom == Approx(height));
}
