#include "viewer/words/course_text.h"

#include <cmath>

#include "geometry/base/message.h"
#include "viewer/words/course_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/plain_text.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

std::string visit_line(std::size_t i, const geometry::Course& course, const geometry::Visit& visit) {
  std::string out = "  " + to_the_right(std::to_string(i + 1), 3) + "  " + padded(iso(visit.date), 12) +
                    padded(visit.by, 6);
  const auto& offset = course.offsets[i];
  if (!offset) return out + "  marks not known\n";
  const auto tenths = [](double value) { return geometry::to_text(geometry::Number{value, 1, true}); };
  out +=
      to_the_right(tenths(offset->pulse_off_mm), 8) + to_the_right(tenths(offset->forward_mm), 9) +
      to_the_right(tenths(offset->toward_midline_mm), 9) +
      to_the_right(geometry::to_text(geometry::Number{std::round(offset->angle_off_deg) + 0.0, 0, true}), 7);
  return out + (course.outside[i] ? "  outside" : "") + "\n";
}

}  // namespace

std::string course_text(const geometry::Course& course, const geometry::Visits& visits) {
  if (visits.empty()) return "This case has no visits yet.\n";
  std::string out = "  No.  Date        By        mm off  forward  midline    deg\n";
  for (const geometry::CourseStretch& stretch : course.stretches) {
    if (stretch.first > 0) out += "  Marked anew; what follows has the new marks for reference.\n";
    for (std::size_t i = stretch.first; i < stretch.first + stretch.count; ++i)
      out += visit_line(i, course, *visits[i]);
    for (const auto& said :
         {limits_sentence(stretch), drift_sentence(stretch), angle_drift_sentence(stretch)})
      if (!said.empty()) out += wrapped_text(words(said));
    out += "\n";
  }
  return out + wrapped_text(
                   "mm off: pulse of the coil laid by the visit's marks, along the skin from the wanted "
                   "site; forward and toward the midline are straight. Training and illustration only.");
}

}  // namespace scalpmark::viewer
