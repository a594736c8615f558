#include "viewer/stage/drawing/label.h"

#include <vtkNew.h>
#include <vtkRenderer.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
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

TEST_CASE("a label without room is shortened to its name, and no number is cut at its decimal comma") {
  const auto shortened = [](const std::string& aside, bool by_name) {
    LabelWish w = wish(100, 100, 5, true);
    w.aside = aside;
    std::vector<LabelWish> wishes{w};
    CHECK(shorten(wishes, {w}, by_name));
    return wishes.front().text;
  };
  CHECK(shortened("treatment site, 5,0 cm forward of the hotspot", true) == "Treatment site");
  CHECK(shortened("treatment site, 5,0 cm forward of the hotspot", false) ==
        "Treatment site, 5,0 cm forward of the hotspot");
  CHECK(shortened("1,4 cm", true) == "1,4 cm");
  CHECK(shortened("1,4 cm", false) == "1,4 cm");
}

TEST_CASE("labels never overlap each other, captions or the rim of the picture") {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> x(0, 800), y(0, 600);
  const Box canvas{0, 0, 800, 600};
  const std::vector<Box> taken{{0, 0, 300, 40}, {0, 400, 200, 600}};
  for (int round = 0; round < 20; ++round) {
    std::vector<LabelWish> wishes;
    for (int i = 0; i < 80; ++i) wishes.push_back(wish(x(random), y(random), i % 7, i % 5 == 0));
    const auto placed = place_labels(wishes, {canvas, taken, {}, {}, {}, 1}).placed;
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
  const auto layout =
      place_labels({wish(10, 10, 1, false), wish(12, 10, 5, false)}, {canvas, {}, {}, {}, {}, 1});
  REQUIRE(layout.placed.size() == 1);
  CHECK(layout.placed[0].wish.text == "p5");
  REQUIRE(layout.without_room.size() == 1);
  CHECK(layout.without_room[0].text == "p1");
}

TEST_CASE("a label that may go far stands beside the head, with a line back to its mark") {
  Coverage head;
  head.cell_px = 10;
  head.columns = 60;
  head.rows = 40;
  head.covered.assign(size_t{60} * 40, false);
  for (size_t r = 0; r < 40; ++r)
    for (size_t c = 0; c < 30; ++c) head.covered[r * 60 + c] = true;
  const auto placed = place_labels({wish(240, 200, 9, true)}, {{0, 0, 600, 400}, {}, {}, {}, head, 1}).placed;
  REQUIRE(placed.size() == 1);
  CHECK(head.share(placed[0].box) == 0);
  CHECK(placed[0].leader);
}

TEST_CASE(
    "no label covers a symbol, close by it is nearer to its own, with a line it keeps clear of the others") {
  std::mt19937 random(11);
  std::uniform_real_distribution<double> x(40, 760), y(40, 560);
  int near = 0, far = 0;
  for (int round = 0; round < 30; ++round) {
    LabelGround ground{{0, 0, 800, 600}, {}, {}, {}, {}, 1};
    std::vector<LabelWish> wishes;
    for (int i = 0; i < 110; ++i) {
      const Pixel at{x(random), y(random)};
      ground.symbols.push_back({{at.x - 7, at.y - 7, at.x + 7, at.y + 7}, at});
      wishes.push_back(wish(at.x, at.y, i % 7, i % 2 == 0));
      wishes.back().clear_px = 9;
    }
    for (const PlacedLabel& label : place_labels(wishes, ground).placed) {
      double own = 1e9, others = 1e9;
      for (const SymbolInPicture& s : ground.symbols) {
        const bool is_own =
            std::hypot(s.at.x - label.wish.anchor.x, s.at.y - label.wish.anchor.y) < one_place_px;
        double& nearest = is_own ? own : others;
        nearest = std::min(nearest, distance_px(label.box, s.box));
      }
      CHECK(own > 0);
      CHECK(others > 0);
      if (label.leader)
        CHECK(others >= clear_of_others_px);
      else
        CHECK(own < others);
      ++(label.leader ? far : near);
    }
  }
  CHECK(near > 100);
  CHECK(far > 20);
}

TEST_CASE("a label would rather stand beside a line that is looked at than on it") {
  LabelGround ground{{0, 0, 400, 200}, {}, {}, {}, {}, 1};
  const auto alone = place_labels({wish(200, 100, 9, true)}, ground).placed;
  REQUIRE(alone.size() == 1);
  ground.lines = {alone[0].box};
  const auto beside = place_labels({wish(200, 100, 9, true)}, ground).placed;
  REQUIRE(beside.size() == 1);
  CHECK_FALSE(beside[0].box.overlaps(alone[0].box));
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
