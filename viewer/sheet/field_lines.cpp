#include "viewer/sheet/field_lines.h"

#include <cmath>

#include "geometry/base/error.h"
#include "geometry/field/moved_coil.h"
#include "viewer/words/field_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

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
    const auto whole = [](double cm2) { return std::to_string(std::lround(cm2)); };
    t.rows.push_back(
        {words(Words::tr("Strongest, 2 cm under the skin")),
         words(Words::tr("about %1 from the pulse point"), {tape_length(field.map.from_pulse_mm)})});
    t.rows.push_back(
        {words(Words::tr("Patch")),
         words(Words::tr("over 71 % of that on about %1 cm\u00b2, over half on about %2 cm\u00b2"),
               {whole(field.map.seven_tenths.area_cm2), whole(field.map.half.area_cm2)})});
    if (const auto five = ratio_of(moved, geometry::CoilMoved::gap, 5))
      t.rows.push_back({words(Words::tr("A gap of 5 mm more")),
                        words(Words::tr("leaves about %1 of it", "a percentage"), {about_percent(*five)})});
  } catch (const geometry::GeometryError&) {
    t.rows.clear();  // no windings, or no round head: nothing is known
  }
  return t;
}

}  // namespace scalpmark::viewer
