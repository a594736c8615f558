// The induced field on the stage: as a value, and as it is drawn, against the field itself.
#include <Eigen/Geometry>
#include <algorithm>
#include <catch2/catch.hpp>

#include "tests/support/brains.h"
#include "tests/support/drawn_pixels.h"
#include "tests/support/laid_on_lopsided.h"
#include "viewer/picture/display.h"
#include "viewer/picture/picture.h"
#include "viewer/stage/scene/field_shown.h"
#include "viewer/stage/things/things.h"

using namespace scalpmark;
using namespace scalpmark::viewer;
using Eigen::Vector3d;

namespace {

struct InField : tests::LaidOnLopsided {
  Shown shown;
};

InField in_field(geometry::Side side, const std::string& coil) {
  InField s{tests::laid_on_lopsided(side, coil, geometry::TapeDistances::left_out, {}), {}};
  s.shown.things = {Thing::skin, Thing::coil, Thing::treatment, Thing::field, Thing::labels, Thing::legend};
  s.shown.field = field_under(s.head, nullptr, s.the_case.coil.model, s.plan.treatment);
  return s;
}

const SeenThrough* through_of(const Scene& scene) {
  for (const Part& part : scene.parts)
    if (part.thing == Thing::field) return part.through ? &*part.through : nullptr;
  return nullptr;
}

bool says(const Surroundings& around, const std::string& words) {
  return std::any_of(around.remarks.begin(), around.remarks.end(),
                     [&](const Remark& r) { return r.text.find(words) != std::string::npos; });
}

}  // namespace

TEST_CASE("the field is two nested tints and a line with two ends alike, and says whose it is not") {
  for (const geometry::Side side : {geometry::Side::left, geometry::Side::right}) {
    const InField s = in_field(side, "figure-8-70");
    const Scene scene = show(s.head, s.the_case, s.plan, s.shown);
    const SeenThrough* through = through_of(scene);
    REQUIRE(through);
    REQUIRE(through->tints.size() == 2);
    CHECK(through->tints[0].triangles.size() > through->tints[1].triangles.size());
    for (const Tint& tint : through->tints) CHECK(tint.outline.size() > 20);
    // The line: along the field, through the strongest place, and the same at both ends.
    REQUIRE(through->lines.size() == 3);
    const auto& line = through->lines.front().points;
    const geometry::FieldThere& strongest = s.shown.field->map.strongest;
    CHECK((0.5 * (line[0] + line[1]) - strongest.point).norm() < 1e-9);
    CHECK(std::abs((line[1] - line[0]).normalized().dot(strongest.field.normalized())) == Approx(1));
    const auto length = [](const Line& l) { return (l.points[1] - l.points[0]).norm(); };
    CHECK(length(through->lines[1]) == Approx(length(through->lines[2])));
    CHECK(says(scene.around, "in a round model head"));
    CHECK(says(scene.around, "Not this patient's field"));
    REQUIRE(scene.around.depth_curve);
    CHECK(scene.around.depth_curve->points.front().y() == Approx(1));
    CHECK(scene.around.depth_curve->points.back().y() < 0.2);
    CHECK(std::any_of(scene.around.legend.begin(), scene.around.legend.end(),
                      [](const LegendRow& r) { return r.text.find("model") != std::string::npos; }));
  }
}

TEST_CASE("under a round coil the patch is a ring: no line is drawn and no curve under its centre") {
  const InField s = in_field(geometry::Side::left, "round-100");
  const Scene scene = show(s.head, s.the_case, s.plan, s.shown);
  const SeenThrough* through = through_of(scene);
  REQUIRE(through);
  CHECK(through->lines.empty());
  CHECK_FALSE(scene.around.depth_curve);
}

TEST_CASE("a coil of which no field is known is said to be one") {
  InField s = in_field(geometry::Side::left, "figure-8-70");
  s.the_case.coil.model.windings.clear();
  s.shown.field = field_under(s.head, nullptr, s.the_case.coil.model, s.plan.treatment);
  CHECK_FALSE(s.shown.field);
  const Scene scene = show(s.head, s.the_case, s.plan, s.shown);
  CHECK_FALSE(through_of(scene));
  CHECK(says(scene.around, "No field is known"));
}

TEST_CASE("without a column to read in the caution says whose field it is not") {
  InField s = in_field(geometry::Side::left, "figure-8-70");
  s.shown.things.erase(Thing::legend);
  const Scene scene = show(s.head, s.the_case, s.plan, s.shown);
  CHECK(through_of(scene));
  CHECK_FALSE(scene.around.depth_curve);
  CHECK(scene.around.remarks.empty());
  CHECK(scene.around.caution.find("round model head. Not this patient's field") != std::string::npos);
}

// Seen through the skin, which lies over it: yellower than the skin was, and the stronger in the middle. From
// the other side of the head nothing of it.
TEST_CASE("the patch is seen through the skin where it faces the eye, and not from behind") {
  const Display display;
  InField s = in_field(geometry::Side::left, "figure-8-70");
  s.shown.things = {Thing::skin, Thing::field};
  const geometry::CoilField& field = *s.shown.field;
  Vector3d wide = field.map.strongest.point;  // in the wider patch alone
  for (const auto& ends : field.map.half.outline) {
    const Vector3d inside = ends[0] + 0.15 * (field.map.strongest.point - ends[0]);
    if (field.field.at(inside).norm() < 0.65 * field.map.strongest.strength()) wide = inside;
  }
  Picture picture(display, tests::usual_size);
  const auto yellow = [&](View view, const Vector3d& place) {
    picture.stage().show(s.head, s.the_case, s.plan, s.shown);
    picture.stage().look(view);
    const std::string pixels = picture.draw();
    // Beside the line and off the outlines.
    const Vector3d across = (place - field.round.centre).cross(field.map.strongest.field).normalized();
    const Pixel there = picture.stage().project(place + 4 * across);
    const Colour c =
        tests::colour_at(pixels, Pixel{there.x / Picture::pixel_ratio(), there.y / Picture::pixel_ratio()});
    return 0.5 * (c.red + c.green) - c.blue;
  };
  const double core = yellow(View::square_on, field.map.strongest.point), rim = yellow(View::square_on, wide);
  const double behind = yellow(View::right, field.map.strongest.point);
  s.shown.things = {Thing::skin};
  const double bare = yellow(View::square_on, field.map.strongest.point);
  CHECK(bare < 30);
  CHECK(rim > bare + 30);
  CHECK(core > rim + 20);
  CHECK(behind < bare + 15);
  // A body that comes later, as a brain does, has what follows it drawn anew: the skin too, and the patch
  // over it.
  s.shown.cortex = std::make_shared<const geometry::Cortex>(tests::round_brain(60), s.head);
  s.shown.things = {Thing::skin, Thing::cortex, Thing::field};
  (void)yellow(View::square_on, field.map.strongest.point);
  s.shown.things = {Thing::skin, Thing::field};
  CHECK(yellow(View::square_on, field.map.strongest.point) == Approx(core).margin(3));
}

namespace {

/// How much yellower than blue the drawn brain is, on average over those of its corners that face the eye
/// squarely and where the field has a share of its strongest from `least` to `most`.
double yellow_on_brain(Picture& picture, const std::string& pixels, const geometry::CoilField& field,
                       const Vector3d& toward_eye, double least, double most) {
  double sum = 0;
  int count = 0;
  for (size_t i = 0; i < field.sheet.at.size(); ++i) {
    const double share = field.map.strengths[i] / field.map.strongest.strength();
    if (share < least || share > most) continue;
    if ((field.sheet.at[i] - field.round.centre).normalized().dot(toward_eye) < 0.8) continue;
    const Pixel there = picture.stage().project(field.sheet.at[i]);
    const Colour c =
        tests::colour_at(pixels, Pixel{there.x / Picture::pixel_ratio(), there.y / Picture::pixel_ratio()});
    sum += 0.5 * (c.red + c.green) - c.blue;
    ++count;
  }
  REQUIRE(count > 20);
  return sum / count;
}

}  // namespace

// What is lit is seen to be lit: on a brain under a skin that is looked through, for staff as tints and for a
// patient as a soft light, on both sides.
TEST_CASE("on the brain the lit place is seen to differ from the brain around it") {
  const Display display;
  for (const geometry::Side side : {geometry::Side::left, geometry::Side::right})
    for (const bool for_patient : {false, true}) {
      InField s = in_field(side, "figure-8-70");
      s.shown.cortex = std::make_shared<const geometry::Cortex>(tests::round_brain(72), s.head);
      s.plan.treatment.cortex = s.shown.cortex->under(s.plan.treatment.pulse, -s.plan.treatment.normal);
      REQUIRE(s.plan.treatment.cortex);
      s.shown.field = field_under(s.head, s.shown.cortex.get(), s.the_case.coil.model, s.plan.treatment);
      REQUIRE(s.shown.field);
      s.shown.things = {Thing::skin, Thing::cortex};
      if (for_patient)
        s.shown.under_coil = UnderCoil::lit;
      else
        s.shown.things.insert(Thing::field);
      s.shown.skin_opacity = 0.4;
      Picture picture(display, tests::usual_size);
      picture.stage().show(s.head, s.the_case, s.plan, s.shown);
      picture.stage().look(View::square_on);
      const std::string pixels = picture.draw();
      const auto yellow = [&](double least, double most) {
        return yellow_on_brain(picture, pixels, *s.shown.field, s.plan.treatment.normal, least, most);
      };
      CAPTURE(for_patient);
      const double lit = yellow(0.85, 1), between = yellow(0.55, 0.65), around = yellow(0.1, 0.4);
      CHECK(lit > around + 30);
      CHECK(lit > between + 8);
      CHECK(between > around + 5);
    }
}
