#include "viewer/words/contact_text.h"

#include <cmath>

#include "viewer/words/contact_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/plain_text.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

/// Nearer than this a place is the centre itself.
constexpr double at_centre_mm = 3;

}  // namespace

std::string place_under_coil(const Eigen::Vector2d& under) {
  if (under.norm() < at_centre_mm) return words(Words::tr("at its centre"));
  std::string aside, along;
  if (std::abs(under.x()) >= 0.5)
    aside = words(under.x() > 0 ? Words::tr("%1 right of its centre") : Words::tr("%1 left of its centre"),
                  {tape_length(std::abs(under.x()))});
  if (std::abs(under.y()) >= 0.5)
    along = words(under.y() > 0 ? Words::tr("%1 toward its front") : Words::tr("%1 toward its handle"),
                  {tape_length(std::abs(under.y()))});
  return aside + (aside.empty() || along.empty() ? "" : ", ") + along;
}

std::string contact_text(const geometry::Contact& c, const geometry::Case& the_case,
                         const std::vector<geometry::Message>& sentences, const std::string& where) {
  std::string out = wrapped_text(the_case.coil.model.title + ", " + where + ":") + "\n";
  for (const auto& sentence : sentences) out += wrapped_text(words(sentence));
  if (c.hits.empty()) out += wrapped_text("It touches neither an ear nor the brow.");
  out += "\nIt touches\n";
  for (const auto& t : c.touches)
    out += "  " + padded(words(region_name(t.region)), 20) +
           padded("with its " + words(part_name(t.part)), 24) + place_under_coil(t.under) + "\n";
  out += "\n" + padded("Gap, mm", 22) + to_the_right("smallest", 10) + to_the_right("middle", 10) +
         to_the_right("average", 10) + to_the_right("largest", 10) + "\n";
  const auto mm = [](double value) { return to_the_right(small_length(value), 10); };
  out += padded("  under the centre", 22) + to_the_right("", 10) + mm(c.lift_mm) + "\n";
  for (const auto& w : c.wings) {
    out += padded("  under the " + words(wing_name(w.wing)), 22) + mm(w.least_mm) +
           (w.centre_mm ? mm(*w.centre_mm) : to_the_right("none", 10)) + mm(w.mean_mm) + mm(w.most_mm) + "\n";
    if (w.off_head >= 0.01)
      out += "    " + std::to_string(std::lround(100 * w.off_head)) + " % of it hangs past the head.\n";
  }
  out += "\n" + wrapped_text(
                    "Left and right are the coil's own, seen from its handle. The gap is measured along the "
                    "coil's axis. " +
                    (the_case.coil.lift_mm > 0
                         ? "It includes " + small_length(the_case.coil.lift_mm) + " for cap and hair. "
                         : std::string()) +
                    "Hair and skin give way; the head drawn does not. Training and illustration only.");
  return out;
}

}  // namespace scalpmark::viewer
