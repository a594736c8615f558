#include "viewer/words/check_text.h"

#include <algorithm>

#include "geometry/base/text.h"
#include "viewer/words/cap_text.h"
#include "viewer/words/check_words.h"
#include "viewer/words/found_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/plain_text.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

/// "5.1 cm left, 6.2 cm forward, 8.0 cm up": from the middle between the tragi.
std::string whereabouts(const geometry::Head& head, const geometry::SurfacePoint& p) {
  const geometry::HeadAxes& axes = head.axes();
  const Eigen::Vector3d from = head.skin().position(p) - axes.origin;
  const auto part = [&](const Eigen::Vector3d& way, const char* there, const char* back) {
    const double mm = from.dot(way);
    return tape_length(std::abs(mm)) + " " + (mm < 0 ? back : there);
  };
  return part(axes.right, "right", "left") + ", " + part(axes.front, "forward", "backward") + ", " +
         part(axes.up, "up", "down");
}

std::string mark_text(const std::string& name, const std::optional<geometry::FoundMark>& mark,
                      const geometry::Head& head) {
  if (!mark) return name + ": not measured.\n";
  std::string out =
      wrapped_text(name + ": " + words(found_sentence(*mark, geometry::apart_mm(head, mark->places))));
  if (mark->places.size() < 2) return out;
  for (std::size_t i = 0; i < mark->places.size(); ++i)
    out += "  " + padded(place_tag(i), 3) + whereabouts(head, mark->places[i].point) + "\n     " +
           words(place_sentence(mark->places[i])) + "\n";
  return out;
}

}  // namespace

std::string check_text(const models::CheckFound& found, const geometry::Head& head) {
  const std::string cap = found.cap ? cap_text(*found.cap) + "\n" : "";
  const std::string training = wrapped_text("Training and illustration only.");
  if (found.cap && !found.site && !found.edge) return cap + training;
  std::string out = cap + mark_text("Site mark", found.site, head) + mark_text("Edge mark", found.edge, head);
  const bool several =
      (found.site && found.site->places.size() > 1) || (found.edge && found.edge->places.size() > 1);
  if (several) out += wrapped_text("Places are told from the middle between the tragi.");
  out += "\n";
  if (!found.check)
    out +=
        wrapped_text(!found.site || !found.edge
                         ? "Unsure: it takes both marks to say where the pulse goes; measure the other too."
                         : "Unsure: where the pulse goes depends on which of these places the marks are.");
  else if (!models::is_sure(found))
    out += wrapped_text("Unsure, as the marks are not known well enough: " +
                        words(check_sentence(*found.check)));
  else
    out += wrapped_text(words(check_sentence(*found.check)));
  return out + "\n" + training;
}

}  // namespace scalpmark::viewer
