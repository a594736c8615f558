#include "viewer/words/tolerance_text.h"

#include <cmath>

#include "geometry/base/text.h"
#include "viewer/words/numbers.h"
#include "viewer/words/plain_text.h"
#include "viewer/words/strips_words.h"
#include "viewer/words/tolerance_words.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::Cause;

namespace {

std::string size_of(Cause cause, const geometry::HandErrors& e) {
  const auto mm = [](double value) { return geometry::to_text(value) + " mm"; };
  switch (cause) {
    case Cause::fiducials:
      return mm(e.fiducial_mm);
    case Cause::tape:
      return mm(e.tape_mm);
    case Cause::marks:
      return mm(e.mark_mm);
    case Cause::angle:
      return geometry::to_text(e.angle_deg) + " degrees";
    case Cause::rule:
      return geometry::to_text(e.other_rule_percent) + " in 100";
    case Cause::cap:
      return geometry::to_text(e.cap_forward_mm) + ", " + mm(e.cap_side_mm) + ", " +
             geometry::to_text(e.cap_turn_deg) + " deg";
    case Cause::tilt:
      return geometry::to_text(e.tilt_deg) + " degrees";
    case Cause::sight:
      return geometry::to_text(e.sight_deg) + " degrees";
  }
  return "";
}

std::string ellipse_size(const geometry::SkinEllipse& e) {
  return tape_number(2 * e.long_mm) + " by " + tape_length(2 * e.short_mm);
}

/// The way an ellipse is longest, in words of the head.
std::string longest_way(const geometry::SkinEllipse& e) {
  const double a = e.long_axis_deg;
  if (std::abs(a) < 22.5) return "forward and backward";
  if (std::abs(a) > 67.5) return "toward and away from the midline";
  return a > 0 ? "from forward and outward to backward and inward"
               : "from forward and inward to backward and outward";
}

/// Worst to best.
std::string ways_table(const geometry::Tolerance& t) {
  std::string out =
      "  " + padded("Marked by", 38) + to_the_right("pulse off", 12) + to_the_right("angle off", 14) + "\n";
  for (const auto& w : t.ways)
    out += "  " + padded(words(way_name(w.way)), 38) + to_the_right(tape_length(w.mean_mm), 12) +
           to_the_right(geometry::to_text(w.angle_mean_deg, 0) + " degrees", 14) + "\n";
  return out +
         wrapped_text(words(best_way_sentence(t)) +
                      " On average and to first order; the site mark is used in each. " +
                      words(left_out_sentence(t))) +
         "\n";
}

}  // namespace

std::string tolerance_text(const geometry::Tolerance& t, const geometry::HandErrors& errors,
                           const geometry::WithStrips& strips) {
  const bool sampled = t.placements > 0;
  const geometry::Spread& spread = sampled ? t.sampled : t.first_order;
  std::string out = "How far off could the pulse be, at the treatment site, by hand?\n\n";
  const auto line = [&](const std::string& name, const std::string& value) {
    out += "  " + padded(name, 40) + to_the_right(value, 16) + "\n";
  };
  line("On average", tape_length(spread.mean_mm));
  if (sampled) {
    line("Half of the trials lie within", tape_length(t.half_mm));
    line("95 of 100 lie within", tape_length(t.most_mm));
  }
  line("Half lie in an ellipse of", ellipse_size(spread.half));
  line("95 of 100 in one of", ellipse_size(spread.most));
  out += wrapped_text("The ellipses are longest " + longest_way(spread.most) + ".");
  const geometry::DepthSpread& deep = t.at_depth;
  out += "\n";
  line("At the cortex, on average", tape_length((sampled ? deep.sampled : deep.first_order).mean_mm));
  if (sampled) line("95 of 100 lie there within", tape_length(deep.most_mm));
  out += wrapped_text(
      "The cortex is taken " + geometry::to_text(deep.depth_mm, 0) + " mm under the skin" +
      (deep.of_brain ? ", as the template's brain has it; a person's own differs."
                     : ", which is assumed: this plan knows no brain.") +
      (deep.of_field ? " There the pulse is where the field is strongest in a round model head." : ""));
  if (const auto left = field_left_sentence(t); !left.empty()) out += wrapped_text(words(left));
  line("Coil's angle, off on average", geometry::to_text(t.angle_mean_deg, 0) + " degrees");
  out += "\n  " + padded("What it comes from", 26) + to_the_right("error", 18) + to_the_right("alone", 10) +
         to_the_right("share", 9) + to_the_right("at cortex", 11) + "\n";
  for (const auto& c : t.causes)
    out += "  " + padded(words(cause_name(c.cause)), 26) + to_the_right(size_of(c.cause, errors), 18) +
           to_the_right(small_length(c.alone_mm), 10) +
           to_the_right(geometry::to_text(100 * c.share, 0) + " %", 9) +
           to_the_right(geometry::to_text(100 * c.depth_share, 0) + " %", 11) + "\n";
  if (const auto largest = largest_share_sentence(t, errors); !largest.empty())
    out += wrapped_text(words(largest));
  out += "\n" + wrapped_text(words(habit_sentence(t))) + "\n";
  out += wrapped_text(words(strips_sentence(strips)) + " Gluing to " +
                      geometry::to_text(strips.errors.gluing_mm) + " mm a seam and laying to " +
                      geometry::to_text(strips.errors.laying_mm) + " mm are assumed (--gluing, --laying).") +
         "\n";
  if (!t.ways.empty()) out += ways_table(t);
  std::string rests =
      "An error is the typical error in each direction: two of three stay within it. The case's \"errors\" change them. ";
  if (sampled) {
    rests += std::to_string(t.placements) + " trials were made on this head";
    rests += t.lost > 0 ? "; " + std::to_string(t.lost) + " could not be laid and are left out. " : ". ";
  }
  rests +=
      "Only measuring, marking and laying are counted, not whether the site is the right one. Training and "
      "illustration only.";
  return out + wrapped_text(rests);
}

}  // namespace scalpmark::viewer
