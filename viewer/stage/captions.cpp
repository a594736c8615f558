#include "viewer/stage/captions.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "viewer/stage/camera.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

constexpr double margin_px = 14;

/// The text cut at a whole letter so that it is no wider than that, with an ellipsis.
std::string fitted(Overlay& overlay, const std::string& text, const TextStyle& style, double width) {
  if (overlay.measure(text, style).width <= width) return text;
  std::string cut = text;
  while (!cut.empty()) {
    // Step over the tail bytes of a UTF-8 letter.
    do cut.pop_back();
    while (!cut.empty() && (static_cast<unsigned char>(cut.back()) & 0xc0) == 0x80);
    if (!cut.empty() && static_cast<unsigned char>(cut.back()) >= 0xc0) continue;
    if (overlay.measure(cut + "\u2026", style).width <= width) return cut + "\u2026";
  }
  return "";
}

const TextStyle caution_style{13, false, palette::quiet_text, true};
constexpr double caution_rim_px = 8;  ///< between the caution and the rim of the picture

}  // namespace

std::vector<std::string> wrapped(Overlay& overlay, const std::string& text, const TextStyle& style,
                                 double width) {
  std::vector<std::string> lines{""};
  size_t at = 0;
  while (at < text.size()) {
    const size_t end = std::min(text.find(' ', at), text.size());
    const std::string word = text.substr(at, end - at);
    const std::string longer = lines.back().empty() ? word : lines.back() + " " + word;
    if (lines.back().empty() || overlay.measure(longer, style).width <= width)
      lines.back() = longer;
    else
      lines.push_back(word);
    at = end + 1;
  }
  return lines;
}

std::string caution_text() {
  return words(
      Words::tr("Training and illustration only; not a navigation or treatment device. Follow the device's "
                "instructions, local codes and the licensed clinician."));
}

void Captions::show(const geometry::Case& entered, const geometry::Plan& plan, const Shown& shown) {
  shown_ = shown.has(Thing::title);
  with_caution_ = shown.caution;
  title_ = entered.label.empty() ? words(Words::tr("Unnamed case")) : entered.label;
  head_ = shown.head_description;
  if (!head_.empty() && head_.front() >= 'a' && head_.front() <= 'z')
    head_.front() = static_cast<char>(head_.front() - 'a' + 'A');
  side_ = words(entered.side == geometry::Side::left ? Words::tr("Left side stimulated")
                                                     : Words::tr("Right side stimulated"));
  axes_ = plan.axes;
}

std::string Captions::foot() const {
  return shown_ || head_.empty() ? caution_text() : head_ + ". " + caution_text();
}

double Captions::bottom(Overlay& overlay, double width_px, double scale) const {
  double height = 2 * caution_rim_px * scale;
  for (const auto& line : wrapped(overlay, foot(), caution_style, width_px - 2 * margin_px * scale))
    height += overlay.measure(line, caution_style).height;
  return height;
}

void Captions::draw(Overlay& overlay, const Sight& sight, std::vector<Caption>& taken) const {
  const double margin = margin_px * sight.scale, width = sight.width_px - 2 * margin;
  if (shown_) {
    const TextStyle strong{19, true, palette::text, false}, quiet{14, false, palette::quiet_text, false};
    const std::string title = fitted(overlay, title_, strong, width);
    std::string second = head_.empty() ? side_ : head_ + ". " + side_;
    const std::string from = where_from(sight.toward_eye, axes_);
    second = fitted(overlay, from.empty() ? second + "." : words(Words::tr("%1, seen %2."), {second, from}),
                    quiet, width);
    const TextSize a = overlay.measure(title, strong), b = overlay.measure(second, quiet);
    const double top = 8 * sight.scale;
    overlay.text(title, {margin, top}, strong);
    overlay.text(second, {margin, top + a.height + 2 * sight.scale}, quiet);
    taken.push_back(
        {title + "; " + second,
         {margin, top, margin + std::max(a.width, b.width), top + a.height + b.height + 4 * sight.scale}});
  }
  if (!with_caution_) return;
  const std::string text = foot();
  const auto lines = wrapped(overlay, text, caution_style, width);
  double y = sight.height_px - caution_rim_px * sight.scale;
  double widest = 0;
  for (auto line = lines.rbegin(); line != lines.rend(); ++line) {
    const TextSize size = overlay.measure(*line, caution_style);
    y -= size.height;
    widest = std::max(widest, size.width);
    overlay.text(*line, {margin, y}, caution_style);
  }
  taken.push_back({text, {margin, y, margin + widest, static_cast<double>(sight.height_px)}});
}

void SideLabels::draw(Overlay& overlay, const Sight& sight, const Box& stage, const Coverage& head,
                      std::vector<Caption>& taken) const {
  const TextStyle style{16, true, palette::text, true};
  const auto box_of = [&](const std::string& text, double x_share, double y_share) {
    const TextSize size = overlay.measure(text, style);
    const double x = stage.left + x_share * (stage.width() - size.width);
    const double y = stage.top + y_share * (stage.height() - size.height);
    return Box{x, y, x + size.width, y + size.height};
  };
  const auto put = [&](const std::string& text, double x_share, double y_share) {
    const Box box = box_of(text, x_share, y_share);
    overlay.text(text, {box.left, box.top}, style);
    taken.push_back({text, box});
  };
  // Both at one height.
  const auto put_at_rims = [&](const std::string& left, const std::string& right) {
    constexpr std::array heights{0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9};
    double best = heights.front(), least = std::numeric_limits<double>::infinity();
    for (const double y : heights) {
      double covered = 0;
      for (const Box& box : {box_of(left, 0, y), box_of(right, 1, y)}) {
        covered += head.share(box);
        for (const Caption& other : taken) covered += box.overlaps(other.box) ? 1 : 0;
      }
      if (covered < least) {
        least = covered;
        best = y;
      }
    }
    put(left, 0, best);
    put(right, 1, best);
  };
  const double across = axes_.right.dot(sight.right()), along = axes_.front.dot(sight.right());
  if (std::abs(across) > 0.4) {
    if (across > 0)
      put_at_rims(words(Words::tr("Patient's left")), words(Words::tr("Patient's right")));
    else
      put_at_rims(words(Words::tr("Patient's right")), words(Words::tr("Patient's left")));
  } else {
    if (along > 0)
      put_at_rims(words(Words::tr("Back")), words(Words::tr("Front")));
    else
      put_at_rims(words(Words::tr("Front")), words(Words::tr("Back")));
    const double facing = axes_.right.dot(sight.toward_eye);
    if (std::abs(facing) > 0.4)
      put(words(facing > 0 ? Words::tr("Patient's right side") : Words::tr("Patient's left side")), 0.5, 0);
  }
  const double upward = axes_.front.dot(sight.up);
  if (std::abs(upward) > 0.6) {
    put(words(Words::tr("Front")), 0.5, upward > 0 ? 0 : 1);
    put(words(Words::tr("Back")), 0.5, upward > 0 ? 1 : 0);
  }
}

}  // namespace scalpmark::viewer
