#include "viewer/stage/drawing/label.h"

#include <vtkNew.h>
#include <vtkRenderer.h>

#include <catch2/catch.hpp>
#include <random>

#include "viewer/stage/drawing/overlay.h"

using namespace scalpmark::viewer;

namespace {

LabelWish wish(double x, double y, int priority, bool far) {
  LabelWish w;
  w.text = "p" + std::to_string(priority);
  w.anchor = {x, y};
  w.priority = priority;
  w.may_go_far = far;
  w.width = 60;
  w.height = 16;
  return w;
}

}  // namespace

TEST_CASE("labels never overlap each other, captions or the rim of the picture") {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> x(0, 800), y(0, 600);
  const Box canvas{0, 0, 800, 600};
  const std::vector<Box> taken{{0, 0, 300, 40}, {0, 400, 200, 600}};
  for (int round = 0; round < 20; ++round) {
    std::vector<LabelWish> wishes;
    for (int i = 0; i < 80; ++i) wishes.push_back(wish(x(random), y(random), i % 7, i % 5 == 0));
    const auto placed = place_labels(wishes, canvas, taken, {}, {}, 1);
    CHECK(placed.size() > 20);
    for (size_t i = 0; i < placed.size(); ++i) {
      CHECK(placed[i].box.inside(canvas));
      for (const auto& t : taken) CHECK_FALSE(placed[i].box.overlaps(t));
      for (size_t j = 0; j < i; ++j) CHECK_FALSE(placed[i].box.overlaps(placed[j].box));
    }
  }
}

TEST_CASE("where there is room for one label, the more important one gets it") {
  const Box canvas{0, 0, 90, 20};
  const auto placed = place_labels({wish(10, 10, 1, false), wish(12, 10, 5, false)}, canvas, {}, {}, {}, 1);
  REQUIRE(placed.size() == 1);
  CHECK(placed[0].wish.text == "p5");
}

TEST_CASE("a label that may go far stands beside the head, with a line back to its mark") {
  Coverage head;
  head.cell_px = 10;
  head.columns = 60;
  head.rows = 40;
  head.covered.assign(size_t{60} * 40, false);
  for (size_t r = 0; r < 40; ++r)
    for (size_t c = 0; c < 30; ++c) head.covered[r * 60 + c] = true;
  const auto placed = place_labels({wish(240, 200, 9, true)}, {0, 0, 600, 400}, {}, {}, head, 1);
  REQUIRE(placed.size() == 1);
  CHECK(head.share(placed[0].box) == 0);
  CHECK(placed[0].leader);
}

TEST_CASE("a label that must cover a mark covers a landmark's dot rather than the pulse point") {
  const Box canvas{0, 0, 130, 60};
  // Above and below the anchor there is room for one label each; a mark lies in either.
  const Box above{0, 0, 130, 26}, below{0, 34, 130, 60};
  for (const bool chief_above : {true, false}) {
    const auto placed = place_labels({wish(65, 30, 9, true)}, canvas, {},
                                     {{above, chief_above}, {below, !chief_above}}, {}, 1);
    REQUIRE(placed.size() == 1);
    CHECK(placed[0].box.overlaps(chief_above ? below : above));
    CHECK_FALSE(placed[0].box.overlaps(chief_above ? above : below));
  }
}

TEST_CASE("words are measured with their ground and without, whichever came first") {
  vtkNew<vtkRenderer> renderer;
  Overlay overlay(renderer);
  TextStyle plain, backed;
  backed.backed = true;
  const auto with = overlay.measure("nasion", backed), without = overlay.measure("nasion", plain);
  CHECK(with.height > without.height);
  CHECK(overlay.measure("nasion", backed).height == with.height);
  // Rows of a table stand as high as their numbers.
  CHECK(without.height == overlay.measure("vertex", plain).height);
}
