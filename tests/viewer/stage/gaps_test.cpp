// The map of gaps: what its colours say against rays cast by this test's own hand, and whether all of it
// reads.
#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <optional>

#include "geometry/coil/underside.h"
#include "tests/support/drawn_pixels.h"
#include "tests/support/laid_on_lopsided.h"
#include "viewer/picture/display.h"
#include "viewer/picture/picture.h"
#include "viewer/stage/scene/gap_colours.h"
#include "viewer/stage/scene/gaps_shown.h"

using namespace scalpmark;
using namespace scalpmark::viewer;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

int apart(Colour a, Colour b) {
  return std::max({std::abs(a.red - b.red), std::abs(a.green - b.green), std::abs(a.blue - b.blue)});
}

/// The gap that a colour stands for: the scale read backward.
double gap_of(Colour c) {
  double best = 0;
  int least = 1000;
  for (double mm = 0; mm <= gap_scale_top_mm; mm += 0.1)
    if (const int away = apart(c, gap_colour(mm)); away < least) {
      least = away;
      best = mm;
    }
  CHECK(least < 8);  // it is on the scale at all
  return best;
}

/// Straight through every triangle, nothing of the kernel's own search (Moller and Trumbore 1997).
std::optional<double> first_hit(const geometry::Surface& skin, const Vector3d& from, const Vector3d& way) {
  std::optional<double> nearest;
  for (int f = 0; f < static_cast<int>(skin.triangles().size()); ++f) {
    const Vector3d& a = skin.corner(f, 0);
    const Vector3d u = skin.corner(f, 1) - a, v = skin.corner(f, 2) - a;
    const Vector3d p = way.cross(v);
    const double det = u.dot(p);
    if (std::abs(det) < 1e-12) continue;
    const Vector3d t = from - a, q = t.cross(u);
    const double x = t.dot(p) / det, y = way.dot(q) / det, far = v.dot(q) / det;
    if (x < 0 || y < 0 || x + y > 1 || far < -1e-6) continue;
    if (!nearest || far < *nearest) nearest = far;
  }
  return nearest;
}

/// Height of the coil's lowest underside over its face at a place, from the parts as they are in the file.
std::optional<double> underside_at(const geometry::Coil& coil, const Vector2d& p) {
  std::optional<double> lowest;
  for (const auto& part : coil.parts) {
    const double b = part.bend_deg * M_PI / 180;
    const Vector2d flat((p.x() - std::sin(b) * part.bottom_mm) / std::cos(b), p.y());
    if (!geometry::within(part.outline, flat)) continue;
    const double z = std::cos(b) * part.bottom_mm - std::sin(b) * flat.x();
    lowest = lowest ? std::min(*lowest, z) : z;
  }
  return lowest;
}

}  // namespace

TEST_CASE(
    "the scale rises evenly in lightness, and no two of its centimetres look alike to the colour blind") {
  // Relative luminance by Rec. 709; yellow over blue is what red-green blindness leaves.
  const auto luminance = [](Colour c) {
    const auto linear = [](double v) {
      v /= 255;
      return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(c.red) + 0.7152 * linear(c.green) + 0.0722 * linear(c.blue);
  };
  // CIE 1976 lightness.
  const auto lightness = [&](Colour c) { return 116 * std::cbrt(luminance(c) + 0.0) - 16; };
  for (double mm = 5; mm <= gap_scale_top_mm; mm += 5) {
    const double step = lightness(gap_colour(mm)) - lightness(gap_colour(mm - 5));
    CHECK(step > 4);
    CHECK(step < 12);
  }
  CHECK(gap_colour(-1) == gap_colour(0));
  CHECK(gap_colour(500) == gap_colour(gap_scale_top_mm));
}

TEST_CASE("the map's colours are the gaps that rays cast by hand find, with every coil on both sides") {
  const Display display;
  for (const auto& coil : models::coils())
    for (const auto side : {geometry::Side::left, geometry::Side::right}) {
      const tests::LaidOnLopsided s = tests::laid_on_lopsided(side, coil.model);
      const geometry::Placement& p = s.plan.treatment;
      Shown shown;
      shown.things = {Thing::skin, Thing::gaps};
      shown.gaps = gaps_under(s.head, s.the_case, p);
      Picture picture(display, tests::usual_size);
      Stage& stage = picture.stage();
      stage.show(s.head, s.the_case, s.plan, shown);
      stage.look(View::square_on);
      const std::string pixels = picture.draw();
      const double scale_px = Picture::pixel_ratio();
      std::vector<Pixel> drawn_over;
      for (const auto& touch : shown.gaps->contact.touches) drawn_over.push_back(stage.project(touch.skin));
      for (const auto& wing : shown.gaps->contact.wings)
        drawn_over.push_back(
            stage.project(p.pulse + wing.centre.x() * p.front.cross(p.normal) + wing.centre.y() * p.front));
      drawn_over.push_back(stage.project(p.pulse));
      int compared = 0;
      for (int i = -9; i <= 9; ++i)
        for (int j = -5; j <= 5; ++j) {
          const Vector2d under(9.7 * i, 9.7 * j);
          const auto height = underside_at(coil, under);
          // Next to a rim pixels mix.
          bool near_rim = false;
          for (const Vector2d& aside : {Vector2d(3, 0), Vector2d(-3, 0), Vector2d(0, 3), Vector2d(0, -3)}) {
            const auto other = underside_at(coil, under + aside);
            near_rim = near_rim || !other || (height && std::abs(*other - *height) > 2);
          }
          if (!height || near_rim) continue;
          const Vector3d from = p.pulse + under.x() * p.front.cross(p.normal) + under.y() * p.front +
                                (p.lift_mm + *height) * p.normal;
          const auto gap = first_hit(s.head.skin(), from, -p.normal);
          if (!gap || *gap > 48 || std::abs(std::remainder(*gap, 10)) < 1.2) continue;
          const Pixel there = stage.project(from);
          const bool hidden = std::any_of(drawn_over.begin(), drawn_over.end(), [&](const Pixel& o) {
            return std::hypot(o.x - there.x, o.y - there.y) < 18 * scale_px;
          });
          if (hidden) continue;
          INFO(coil.model << " at " << under.transpose());
          CHECK(gap_of(tests::colour_at(pixels, Pixel{there.x / scale_px, there.y / scale_px})) ==
                Approx(*gap).margin(1));
          ++compared;
        }
      INFO(coil.model);
      CHECK(compared > 20);
    }
}

TEST_CASE("with the map of gaps, labels, legend, scale and numbers keep clear of each other") {
  const Display display;
  for (const auto& [coil, side] :
       {std::pair("figure-8-70", geometry::Side::left), std::pair("angled-8-150", geometry::Side::right),
        std::pair("round-100", geometry::Side::left)}) {
    const tests::LaidOnLopsided s = tests::laid_on_lopsided(side, coil);
    Shown shown;
    shown.things.insert(Thing::gaps);
    shown.gaps = gaps_under(s.head, s.the_case, s.plan.treatment);
    for (const PictureSize other : {PictureSize{1280, 800}, PictureSize{1920, 1080}}) {
      Picture picture(display, other);
      Stage& stage = picture.stage();
      stage.show(s.head, s.the_case, s.plan, shown);
      for (const View view : all_views()) {
        stage.look(view);
        (void)picture.draw();
        INFO(coil << " " << name_of(view) << " " << other.width);
        const auto& labels = stage.labels();
        const auto& captions = stage.captions();
        for (size_t i = 0; i < labels.size(); ++i) {
          for (size_t j = 0; j < i; ++j) CHECK_FALSE(labels[i].box.overlaps(labels[j].box));
          for (const auto& c : captions) CHECK_FALSE(labels[i].box.overlaps(c.box));
        }
        for (size_t i = 0; i < captions.size(); ++i)
          for (size_t j = 0; j < i; ++j) {
            INFO(captions[i].text << " / " << captions[j].text);
            CHECK_FALSE(captions[i].box.overlaps(captions[j].box));
          }
        CHECK(std::any_of(captions.begin(), captions.end(),
                          [](const Caption& c) { return c.text.find("Gap under the coil, mm") == 0; }));
        if (view == View::square_on)
          CHECK(std::any_of(labels.begin(), labels.end(),
                            [](const PlacedLabel& l) { return l.wish.text.find("touches") == 0; }));
      }
    }
  }
}
