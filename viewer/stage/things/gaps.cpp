#include "viewer/stage/things/gaps.h"

#include <vtkProperty.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "viewer/stage/gap_colours.h"
#include "viewer/stage/triangles.h"
#include "viewer/words/coil_words.h"
#include "viewer/words/contact_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

/// Toward the eye: over the skin's facets, under tapes and marks.
constexpr double map_over_skin_mm = 0.9, lines_over_skin_mm = 1.4, cross_over_skin_mm = 8;
constexpr double level_mm = 10, level_px = 0.9;
/// The cross is open in its middle, where a mark may lie: its arms reach from one radius to the other.
constexpr double cross_from_px = 5, cross_px = 13, cross_width_px = 2.4, cross_halo_px = 5, middle_px = 2.6;
/// Past the scale's end there is no colour: further down the skin turns away from the coil.
constexpr double last_drawn_mm = gap_scale_top_mm;
/// Touches this near to each other are one cross.
constexpr double one_touch_mm = 6;
/// A centre this far off the skin has its gap written beside it.
constexpr double clear_mm = 0.5;
constexpr int touch_priority = 95, middle_priority = 85;

// The block of the scale, pixels of a picture 800 high.
constexpr double bar_width_px = 200, bar_height_px = 12, tick_mm = 10, pad_px = 6;
const TextStyle title_style{14, true, palette::text, false}, tick_style{13, false, palette::text, false},
    strong_style{13, true, palette::text, false};

}  // namespace

Gaps::Gaps(vtkRenderer* renderer) : ink_(renderer) {
  mapper_->SetInputData(data_);
  actor_->SetMapper(mapper_);
  actor_->GetProperty()->LightingOff();
  actor_->PickableOff();
  ink_.actor()->PickableOff();
  actor_->SetVisibility(0);
  renderer->AddActor(actor_);
}

void Gaps::show(const Shown& shown) {
  const auto gaps = shown.has(Thing::gaps) ? shown.gaps : nullptr;
  if (gaps == gaps_) return;
  gaps_ = gaps;
  level_lines_.clear();
  places_.clear();
  actor_->SetVisibility(gaps_ && !gaps_->map.triangles.empty());
  if (gaps_) build();
}

void Gaps::build() {
  const geometry::GapMap& map = gaps_->map;
  const geometry::Contact& contact = gaps_->contact;
  std::vector<float> coordinates;
  std::vector<unsigned char> shades;
  coordinates.reserve(9 * map.triangles.size());
  shades.reserve(9 * map.triangles.size());
  const auto put = [&](const geometry::GapMap::Corner& corner) {
    for (int i = 0; i < 3; ++i) coordinates.push_back(static_cast<float>(corner.skin[i]));
    const Colour c = gap_colour(corner.gap_mm);
    shades.insert(shades.end(), {c.red, c.green, c.blue});
  };
  for (const auto& triangle : map.triangles) {
    std::array<const geometry::GapMap::Corner*, 3> corners{};
    for (size_t k = 0; k < 3; ++k) corners[k] = &map.corners[static_cast<size_t>(triangle[k])];
    // What of it is near enough: a triangle, or one or two corners cut off.
    std::vector<geometry::GapMap::Corner> near;
    for (size_t k = 0; k < 3; ++k) {
      const auto &a = *corners[k], &b = *corners[(k + 1) % 3];
      if (a.gap_mm <= last_drawn_mm) near.push_back(a);
      if ((a.gap_mm <= last_drawn_mm) == (b.gap_mm <= last_drawn_mm)) continue;
      const double share = (last_drawn_mm - a.gap_mm) / (b.gap_mm - a.gap_mm);
      near.push_back({a.at + share * (b.at - a.at), a.skin + share * (b.skin - a.skin), last_drawn_mm});
    }
    for (size_t k = 2; k < near.size(); ++k)
      for (const size_t corner : {size_t{0}, k - 1, k}) put(near[corner]);
    const auto [least, most] = std::minmax({corners[0]->gap_mm, corners[1]->gap_mm, corners[2]->gap_mm});
    for (double level = level_mm * std::ceil(least / level_mm); level < std::min(most, last_drawn_mm);
         level += level_mm) {
      if (level <= 0) continue;
      std::vector<Vector3d> ends;
      for (size_t k = 0; k < 3; ++k) {
        const auto &a = *corners[k], &b = *corners[(k + 1) % 3];
        if ((a.gap_mm < level) == (b.gap_mm < level)) continue;
        ends.push_back(a.skin + (level - a.gap_mm) / (b.gap_mm - a.gap_mm) * (b.skin - a.skin));
      }
      if (ends.size() == 2) level_lines_.push_back({ends[0], ends[1]});
    }
  }
  set_triangles(*data_, coordinates, shades, 3);

  for (const auto& touch : contact.touches) {
    const auto known = [&](const Place& p) { return (p.at - touch.skin).norm() < one_touch_mm; };
    if (std::none_of(places_.begin(), places_.end(), known))
      places_.push_back({touches(touch.region), touch.skin, true, false});
  }
  for (const auto& wing : contact.wings) {
    if (!wing.centre_mm || map.corners.empty()) continue;
    const auto& middle =
        *std::min_element(map.corners.begin(), map.corners.end(), [&](const auto& a, const auto& b) {
          return (a.at - wing.centre).squaredNorm() < (b.at - wing.centre).squaredNorm();
        });
    // A round coil's middle is the pulse point.
    if (contact.wings.size() > 1)
      places_.push_back(
          {words(wing_name(wing.wing)) + " " + in_mm(*wing.centre_mm), middle.skin, false, false});
  }
  if (contact.lift_mm >= clear_mm)
    places_.push_back(
        {words(Words::tr("centre %1"), {in_mm(contact.lift_mm)}), contact.pose.pulse, false, false});
}

void Gaps::draw(const geometry::Head& head, const Sight& sight) {
  const Vector3d over = map_over_skin_mm * sight.toward_eye;
  actor_->SetPosition(over.x(), over.y(), over.z());
  ink_.begin(sight);
  if (gaps_) {
    for (const auto& ends : level_lines_)
      ink_.line({ends[0], ends[1]}, level_px, palette::construction, lines_over_skin_mm);
    for (Place& place : places_) {
      place.visible = in_sight(head.skin(), place.at, calm_normal(head.skin(), place.at), sight);
      if (!place.visible) continue;
      if (!place.touches) {
        ink_.spot(place.at, middle_px + 1.4, palette::halo, cross_over_skin_mm - 0.2);
        ink_.spot(place.at, middle_px, palette::construction, cross_over_skin_mm);
        continue;
      }
      const double diagonal = std::sqrt(0.5);
      const Vector3d x = diagonal * sight.right(), y = diagonal * sight.up;
      for (const auto& [width, colour, lift] :
           {std::tuple(cross_halo_px, palette::halo, cross_over_skin_mm - 0.2),
            std::tuple(cross_width_px, palette::text, cross_over_skin_mm)}) {
        const double more = width > cross_width_px ? 0.5 * (width - cross_width_px) : 0;
        for (const Vector3d& arm : {Vector3d(x + y), Vector3d(x - y), Vector3d(-x - y), Vector3d(-x + y)})
          ink_.line(
              {place.at + sight.mm(cross_from_px - more) * arm, place.at + sight.mm(cross_px + more) * arm},
              width, colour, lift);
      }
    }
  }
  ink_.done();
}

void Gaps::wish(std::vector<LabelWish>& labels, const Sight& sight) const {
  for (const Place& place : places_) {
    if (!place.visible) continue;
    LabelWish wish;
    wish.text = place.text;
    wish.anchor = sight.project(place.at);
    wish.clear_px = (place.touches ? cross_px + 3 : middle_px + 3) * sight.scale;
    wish.may_go_far = true;
    wish.priority = place.touches ? touch_priority : middle_priority;
    wish.bold = place.touches;
    labels.push_back(wish);
  }
}

void Gaps::take_room(std::vector<Box>& boxes, const Sight& sight) const {
  for (const Place& place : places_) {
    if (!place.visible) continue;
    const Pixel at = sight.project(place.at);
    const double reach = (place.touches ? cross_px : middle_px + 1.4) * sight.scale;
    boxes.push_back({at.x - reach, at.y - reach, at.x + reach, at.y + reach});
  }
}

void GapScale::show(const Shown& shown) {
  lines_.clear();
  if (!shown.has(Thing::gaps) || !shown.gaps) return;
  const geometry::Contact& contact = shown.gaps->contact;
  for (const auto& wing : contact.wings)
    lines_.push_back({words(Words::tr("%1 %2 to %3", "a part of the coil and its gaps in mm"),
                            {words(wing_name(wing.wing)), millimetres(wing.least_mm), in_mm(wing.most_mm)})});
  if (geometry::on_wings(contact))
    lines_.push_back({words(Words::tr("rests on its wings, centre clear")), true});
  for (const auto& hit : contact.hits) lines_.push_back({hits(hit.region), true});
}

void GapScale::draw(Overlay& overlay, const Box& free, const Coverage& head,
                    std::vector<Caption>& taken) const {
  if (lines_.empty()) return;
  const double s = overlay.scale(), pad = pad_px * s, bar = bar_width_px * s;
  const std::string title = words(Words::tr("Gap under the coil, mm"));
  const TextSize title_size = overlay.measure(title, title_style);
  const TextSize tick_size = overlay.measure("50", tick_style);
  double width = std::max(bar + tick_size.width, title_size.width), text_height = 0;
  for (const Line& line : lines_) {
    const TextSize size = overlay.measure(line.text, line.strong ? strong_style : tick_style);
    width = std::max(width, size.width);
    text_height += size.height + 2 * s;
  }
  const double cross = 6 * s, row = std::max(tick_size.height, 2 * cross);
  width += 2 * pad;
  const double height = 2 * pad + title_size.height + 4 * s + bar_height_px * s + 3 * s + tick_size.height +
                        4 * s + text_height + row;

  // Above the legend, or in the corner where it covers least.
  std::vector<Box> corners;
  const auto box_at = [&](double left, double top) { return Box{left, top, left + width, top + height}; };
  double legend_top = free.bottom;
  for (const Caption& c : taken)
    if (c.is_legend) legend_top = c.box.top - 8 * s;
  corners.push_back(box_at(free.left, legend_top - height));
  corners.push_back(box_at(free.right - width, free.bottom - height));
  corners.push_back(box_at(free.right - width, free.top));
  corners.push_back(box_at(free.left, free.top));
  Box box = corners.front();
  double least = std::numeric_limits<double>::infinity();
  for (const Box& corner : corners) {
    double cost = head.share(corner);
    for (const Caption& c : taken) cost += corner.overlaps(c.box) ? 10 : 0;
    if (corner.top < free.top || corner.left < free.left) cost += 10;
    if (cost < least) {
      least = cost;
      box = corner;
    }
  }

  overlay.box(box, palette::halo, 0.8);
  double y = box.top + pad;
  const double x = box.left + pad;
  overlay.text(title, {x, y}, title_style);
  y += title_size.height + 4 * s;
  const double from = x + 4 * s;
  constexpr int pieces = 100;
  for (int i = 0; i < pieces; ++i)
    overlay.box({from + bar * i / pieces, y, from + bar * (i + 1) / pieces, y + bar_height_px * s},
                gap_colour((i + 0.5) * gap_scale_top_mm / pieces), 1);
  for (double mm = 0; mm <= gap_scale_top_mm; mm += tick_mm) {
    const double at = from + bar * mm / gap_scale_top_mm;
    overlay.line({at, y}, {at, y + (bar_height_px + 3) * s}, 1, palette::text);
    const std::string text = std::to_string(std::lround(mm));
    const TextSize size = overlay.measure(text, tick_style);
    overlay.text(text, {at - size.width / 2, y + (bar_height_px + 3) * s}, tick_style);
  }
  y += (bar_height_px + 3) * s + tick_size.height + 4 * s;
  const double middle = y + row / 2;
  overlay.line({x + s, middle - cross}, {x + s + 2 * cross, middle + cross}, cross_width_px, palette::text);
  overlay.line({x + s, middle + cross}, {x + s + 2 * cross, middle - cross}, cross_width_px, palette::text);
  overlay.text(words(Words::tr("touches; a line every 10 mm")),
               {x + 2 * cross + 8 * s, middle - tick_size.height / 2}, tick_style);
  y += row;
  std::string all = title;
  for (const Line& line : lines_) {
    const TextStyle& style = line.strong ? strong_style : tick_style;
    overlay.text(line.text, {x, y + 2 * s}, style);
    y += overlay.measure(line.text, style).height + 2 * s;
    all += "; " + line.text;
  }
  taken.push_back({all, box});
}

}  // namespace scalpmark::viewer
