#include "viewer/sheet/field_lines.h"

#include <cmath>

#include "geometry/base/error.h"
#include "geometry/field/moved_coil.h"
#include "viewer/words/field_words.h"
#include "viewer/words/inch_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

/// Where the field is looked at, and the gap that is told.
constexpr double looked_at_mm = 20, told_gap_mm = 5;

/// "5 cm2", as a message has it, with its unit.
std::string area(double cm2) {
  return words(geometry::Message::of("%1 cm\u00b2", std::lround(cm2)));
}

/// "75 %": to the nearest five.
std::string about_percent(double share) {
  return std::to_string(5 * std::lround(20 * share)) + " %";
}

}  // namespace

SheetTable field_lines(const geometry::Head& head, const geometry::Case& the_case,
                       const geometry::Plan& plan) {
  SheetTable t{words(Words::tr("Induced field, in a round model head")),
               {{"", 0.3, false}, {"", 0.7, false}},
               {},
               words(field_caution())};
  try {
    const geometry::Coil& coil = the_case.coil.model;
    const auto field = geometry::coil_field(head.skin(), nullptr, coil, plan.treatment);
    const auto moved = geometry::moved_ratios(head.skin(), coil, field);
    t.rows.push_back(
        {words(Words::tr("Strongest, %1 under the skin"),
               {words(geometry::Message::of("%1 cm", geometry::number(looked_at_mm / 10)))}),
         words(Words::tr("about %1 from the pulse point"), {tape_length(field.map.from_pulse_mm)})});
    t.rows.push_back({words(Words::tr("Patch")),
                      words(Words::tr("over 71 % of that on about %1, over half on about %2"),
                            {area(field.map.seven_tenths.area_cm2), area(field.map.half.area_cm2)})});
    if (const auto five = ratio_of(moved, geometry::CoilMoved::gap, told_gap_mm))
      t.rows.push_back({words(Words::tr("A gap of %1 more"), {whole_length(told_gap_mm)}),
                        words(Words::tr("leaves about %1 of it", "a percentage"), {about_percent(*five)})});
  } catch (const geometry::GeometryError&) {
    t.rows.clear();  // no windings, or no round head: nothing is known
  }
  return t;
}

}  // namespace scalpmark::viewer
