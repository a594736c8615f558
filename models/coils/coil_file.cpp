#include "models/coils/coil_file.h"

#include <algorithm>

#include "geometry/base/ranges.h"
#include "models/files/error.h"
#include "models/files/strict_json.h"

namespace scalpmark::models {

using Eigen::Vector2d;
using geometry::Range;

namespace {

// What a hand-held coil may measure, mm; our own limits, wide enough for any.
constexpr Range place_mm{-500, 500};
constexpr Range height_mm{0, 200};
constexpr Range diameter_mm{1, 500};
constexpr Range patch_mm{1, 50};
constexpr Range turn_count{1, 1000};
constexpr Range bend_deg{-60, 60};
constexpr std::size_t longest_source = 2000;  // characters

double cross(const Vector2d& a, const Vector2d& b) {
  return a.x() * b.y() - a.y() * b.x();
}

double signed_area(const std::vector<Vector2d>& outline) {
  double twice = 0;
  for (std::size_t i = 0; i < outline.size(); ++i)
    twice += cross(outline[i], outline[(i + 1) % outline.size()]);
  return twice / 2;
}

/// Whether the stretches a-b and c-d touch or cross.
bool meet(const Vector2d& a, const Vector2d& b, const Vector2d& c, const Vector2d& d) {
  const auto side = [](const Vector2d& from, const Vector2d& to, const Vector2d& p) {
    const double s = cross(to - from, p - from);
    return s > 0 ? 1 : s < 0 ? -1 : 0;
  };
  const auto between = [](const Vector2d& from, const Vector2d& to, const Vector2d& p) {
    return (p - from).dot(p - to) <= 0;
  };
  const int c_side = side(a, b, c), d_side = side(a, b, d), a_side = side(c, d, a), b_side = side(c, d, b);
  if (c_side * d_side < 0 && a_side * b_side < 0) return true;
  return (c_side == 0 && between(a, b, c)) || (d_side == 0 && between(a, b, d)) ||
         (a_side == 0 && between(c, d, a)) || (b_side == 0 && between(c, d, b));
}

bool crosses_itself(const std::vector<Vector2d>& outline) {
  const std::size_t n = outline.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Vector2d here = outline[(i + 1) % n] - outline[i];
    const Vector2d next = outline[(i + 2) % n] - outline[(i + 1) % n];
    if (here.isZero(0) || (cross(here, next) == 0 && here.dot(next) < 0)) return true;  // turns back
    for (std::size_t j = i + 2; j < n; ++j)
      if ((j + 1) % n != i && meet(outline[i], outline[i + 1], outline[j], outline[(j + 1) % n])) return true;
  }
  return false;
}

geometry::CoilPart read_part(const JsonGroup& group) {
  geometry::CoilPart part;
  group.require({"name", "bottom_mm", "top_mm", "outline"});
  group.text("name", part.name);
  std::string source;
  group.text("source", source, longest_source);
  group.number("bottom_mm", height_mm, Message::of("mm over the flat face"), part.bottom_mm);
  group.number("top_mm", height_mm, Message::of("mm over the flat face"), part.top_mm);
  if (!(part.top_mm > part.bottom_mm)) group.refuse("top_mm", Message::of("must be more than bottom_mm"));
  group.number("bend_deg", bend_deg, Message::of("degrees"), part.bend_deg);
  group.pairs("outline", place_mm, part.outline);
  if (part.outline.size() < 3) group.refuse("outline", Message::of("must have at least three points"));
  if (crosses_itself(part.outline)) group.refuse("outline", Message::of("must not cross or touch itself"));
  if (!(signed_area(part.outline) > 0)) group.refuse("outline", Message::of("must run counter-clockwise"));
  return part;
}

geometry::Winding read_winding(const JsonGroup& group) {
  geometry::Winding winding;
  group.require({"centre", "inner_mm", "outer_mm", "turns", "height_mm", "current"});
  std::string source;
  group.text("source", source, longest_source);
  group.pair("centre", place_mm, winding.centre);
  group.number("inner_mm", diameter_mm, Message::of("mm"), winding.inner_mm);
  group.number("outer_mm", diameter_mm, Message::of("mm"), winding.outer_mm);
  if (!(winding.outer_mm > winding.inner_mm))
    group.refuse("outer_mm", Message::of("must be more than inner_mm"));
  group.whole_number("turns", turn_count, winding.turns);
  group.number("bend_deg", bend_deg, Message::of("degrees"), winding.bend_deg);
  group.number("height_mm", height_mm, Message::of("mm over the flat face"), winding.height_mm);
  std::string current;
  group.text("current", current);
  if (current != "clockwise" && current != "counter-clockwise")
    group.refuse("current", Message::of("must be \"clockwise\" or \"counter-clockwise\""));
  winding.clockwise = current == "clockwise";
  return winding;
}

}  // namespace

geometry::Coil parse_coil(std::string_view text, const std::string& name) {
  const JsonSource source{name, Message::of("coil")};
  const nlohmann::json parsed = parse_strict(text, source);
  require_format(parsed, source, "scalpmark-coil", 1);
  const JsonGroup top(parsed, source,
                      {"format", "version", "model", "title", "note", "source", "contact_patch_mm",
                       "centre_to_edge_mm", "front_mark", "parts", "windings"});
  top.require({"model", "title", "source", "contact_patch_mm", "centre_to_edge_mm", "front_mark", "parts",
               "windings"});
  geometry::Coil coil;
  std::string from;
  top.text("model", coil.model);
  top.text("title", coil.title);
  top.text("note", coil.note);
  top.text("source", from, longest_source);
  top.number("contact_patch_mm", patch_mm, Message::of("mm"), coil.contact_patch_mm);
  top.number("centre_to_edge_mm", geometry::ranges::centre_to_edge_mm, Message::of("mm"),
             coil.centre_to_edge_mm);
  const JsonGroup mark = top.group("front_mark", {"source", "centre", "length_mm"});
  mark.require({"centre", "length_mm"});
  mark.text("source", from, longest_source);
  coil.front_mark.emplace();
  mark.pair("centre", place_mm, coil.front_mark->centre);
  mark.number("length_mm", diameter_mm, Message::of("mm"), coil.front_mark->length_mm);
  for (const JsonGroup& part :
       top.groups("parts", {"name", "source", "bottom_mm", "top_mm", "bend_deg", "outline"}))
    coil.parts.push_back(read_part(part));
  if (coil.parts.empty()) top.refuse("parts", Message::of("must list at least one part"));
  for (const JsonGroup& winding : top.groups("windings", {"source", "centre", "inner_mm", "outer_mm", "turns",
                                                          "bend_deg", "height_mm", "current"}))
    coil.windings.push_back(read_winding(winding));
  return coil;
}

}  // namespace scalpmark::models
