#include "viewer/words/field_text.h"

#include <cmath>

#include "geometry/base/text.h"
#include "viewer/words/field_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/plain_text.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::CoilMoved;

namespace {

constexpr std::size_t name_wide = 40, number_wide = 12;

std::string whole_percent(double share) {
  return std::to_string(std::lround(100 * share)) + " %";
}

/// Of what is left: the strongest place lies a little aside of the coil's centre, and a small tilt can bring
/// it nearer.
std::string left_percent(double share) {
  return std::lround(100 * share) > 100 ? "all of it" : whole_percent(share);
}

std::string line(const std::string& name, const std::string& value) {
  return "  " + padded(name, name_wide) + to_the_right(value, number_wide) + "\n";
}

std::string name_of(const geometry::MovedRatio& m) {
  const std::string mm = geometry::to_text(m.by, 0) + " mm", deg = geometry::to_text(m.by, 0) + " degrees";
  switch (m.moved) {
    case CoilMoved::gap:
      return "a gap of " + mm;
    case CoilMoved::roll:
      return "tilted by " + deg + " to a side";
    case CoilMoved::pitch:
      return "tilted by " + deg + " to its front";
    case CoilMoved::ahead:
      return "slid by " + mm + " along its front axis";
    case CoilMoved::aside:
      return "slid by " + mm + " to its side";
    case CoilMoved::turn:
      return "turned by " + deg;
  }
  return "";
}

std::string by_depth(const geometry::FieldMap& map) {
  std::string out = "\n" + line("Under the coil's centre, depth", "V/m at 1 A/us");
  for (const auto& d : map.under_centre)
    if (std::fmod(d.depth_mm, 10) == 0)
      out += line("  " + small_length(d.depth_mm), geometry::to_text(d.field, 3));
  return out;
}

}  // namespace

std::string field_text(const geometry::CoilField& field, const geometry::Case& the_case,
                       const models::FieldAsked& asked, const std::string& where) {
  std::string out = wrapped_text(the_case.coil.model.title + ", " + where + ":") + "\n";
  for (const auto& sentence : asked.sentences) out += wrapped_text(words(sentence));
  for (const auto& there : asked.at)
    out += "\n" + line("At the place asked for", geometry::to_text(there.strength(), 3));
  out += by_depth(field.map);
  out += "\n" + line("What is left at its strongest place with", "");
  for (const auto& m : asked.moved) out += line("  " + name_of(m), left_percent(m.ratio));
  out += "\n" + line("Half-value depth", tape_length(asked.depth.half_depth_mm)) +
         line("Spread", geometry::to_text(asked.depth.spread_cm2, 1) + " cm2");
  out += wrapped_text(
      "Both after Deng et al. 2013, from a brain that begins 15 mm under the round skin. Fields are in volts per "
      "metre while the coil's current changes by 1 A/us; the device decides by how much it does.");
  return out + "\n" + wrapped_text(words(field_caution()));
}

}  // namespace scalpmark::viewer
