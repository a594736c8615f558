#include "viewer/stage/drawing/captions.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "viewer/stage/scene/camera.h"
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

TextStyle caution_style(double share) {
  return {13 * share, false, palette::quiet_text, true};
}
/// Between the caution and the rim of the picture: as its letters, small where they are.
double caution_rim_px(double share) {
  return 8 * std::min(1.0, share);
}

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

void draw_title(Overlay& overlay, const Sight& sight, const Surroundings::Title& title,
                const geometry::HeadAxes& axes, std::vector<Caption>& taken) {
  const double margin = margin_px * sight.scale, width = sight.width_px - 2 * margin;
  const TextStyle strong{19, true, palette::text, false}, quiet{14, false, palette::quiet_text, false};
  const std::string first = fitted(overlay, title.name, strong, width);
  const std::string from = where_from(sight.toward_eye, axes);
  const std::string second = fitted(
      overlay, from.empty() ? title.about + "." : words(Words::tr("%1, seen %2."), {title.about, from}),
      quiet, width);
  const TextSize a = overlay.measure(first, strong), b = overlay.measure(second, quiet);
  const double top = 8 * sight.scale;
  overlay.text(first, {margin, top}, strong);
  overlay.text(second, {margin, top + a.height + 2 * sight.scale}, quiet);
  taken.push_back(
      {first + "; " + second,
       {margin, top, margin + std::max(a.width, b.width), top + a.height + b.height + 4 * sight.scale}});
}

void draw_headline(Overlay& overlay, const Sight& sight, const std::string& headline, const Box& stage,
                   std::vector<Caption>& taken) {
  TextStyle style{22, true, palette::text, true};
  double width = stage.width();
  if (wrapped(overlay, headline, style, width).size() > 1) {
    style.size_px = 20;
    width *= 0.9;  // clear of what stands in the column beside it
  }
  // Under the words that name a side, which stand at the upper rim.
  const double top = stage.top + 26 * sight.scale, middle = stage.left + 0.5 * stage.width();
  double y = top, widest = 0;
  for (const auto& line : wrapped(overlay, headline, style, width)) {
    const std::string fits = fitted(overlay, line, style, width);
    const TextSize size = overlay.measure(fits, style);
    overlay.text(fits, {middle - 0.5 * size.width, y}, style);
    widest = std::max(widest, size.width);
    y += size.height;
  }
  taken.push_back({headline, {middle - 0.5 * widest, top, middle + 0.5 * widest, y}});
}

double caution_height(Overlay& overlay, const std::string& caution, double share, double width_px,
                      double scale) {
  const TextStyle style = caution_style(share);
  double height = 2 * caution_rim_px(share) * scale;
  for (const auto& line : wrapped(overlay, caution, style, width_px - 2 * margin_px * scale))
    height += overlay.measure(line, style).height;
  return height;
}

double fitting_caution_share(Overlay& overlay, const std::string& caution, double share, double width_px,
                             double height_px, double scale) {
  constexpr double most_of_picture = 0.15, least_px = 12, step = 0.95;
  while (caution_height(overlay, caution, share, width_px, scale) >= most_of_picture * height_px &&
         caution_style(share * step).size_px * scale >= least_px)
    share *= step;
  return share;
}

void draw_caution(Overlay& overlay, const Sight& sight, const std::string& caution, double share,
                  std::vector<Caption>& taken) {
  const TextStyle style = caution_style(share);
  const double margin = margin_px * sight.scale, width = sight.width_px - 2 * margin;
  const auto lines = wrapped(overlay, caution, style, width);
  double y = sight.height_px - caution_rim_px(share) * sight.scale;
  double widest = 0;
  for (auto line = lines.rbegin(); line != lines.rend(); ++line) {
    const TextSize size = overlay.measure(*line, style);
    y -= size.height;
    widest = std::max(widest, size.width);
    overlay.text(*line, {margin, y}, style);
  }
  taken.push_back({caution, {margin, y, margin + widest, static_cast<double>(sight.height_px)}});
}

namespace {

const TextStyle side_style{16, true, palette::text, true};

/// The name of a side, in one line or in as many as it has words.
struct SideName {
  std::vector<std::string> lines;
  double width = 0, height = 0;

  SideName(Overlay& overlay, const std::string& name, bool in_words) {
    lines = in_words ? wrapped(overlay, name, side_style, 0) : std::vector{name};
    for (const std::string& line : lines) {
      const TextSize size = overlay.measure(line, side_style);
      width = std::max(width, size.width);
      height += size.height;
    }
  }
  [[nodiscard]] Box at(const Box& stage, double x_share, double y_share) const {
    const double x = stage.left + x_share * (stage.width() - width),
                 y = stage.top + y_share * (stage.height() - height);
    return {x, y, x + width, y + height};
  }
};

void put(Overlay& overlay, const std::string& text, const SideName& name, const Box& box,
         std::vector<Caption>& taken) {
  double y = box.top;
  for (const std::string& line : name.lines) {
    overlay.text(line, {box.left, y}, side_style);
    y += overlay.measure(line, side_style).height;
  }
  taken.push_back({text, box});
}

/// Both at one height, where they cover least; in several lines where one line would lie on what is shown.
void put_at_rims(Overlay& overlay, const std::string& left, const std::string& right, const Box& stage,
                 const Coverage& busy, std::vector<Caption>& taken) {
  constexpr std::array heights{0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9, 0.03, 0.97};
  double least = std::numeric_limits<double>::infinity();
  Box best_left, best_right;
  bool best_in_words = false;
  for (const bool in_words : {false, true}) {
    if (least <= 0) break;
    const SideName a(overlay, left, in_words), b(overlay, right, in_words);
    for (const double y : heights) {
      double covered = 0;
      const Box on_left = a.at(stage, 0, y), on_right = b.at(stage, 1, y);
      for (const Box& box : {on_left, on_right}) {
        covered += busy.share(box);
        // Words over words are worse than both names over the head.
        for (const Caption& other : taken) covered += box.overlaps(other.box) ? 3 : 0;
      }
      if (covered >= least) continue;
      least = covered;
      best_left = on_left;
      best_right = on_right;
      best_in_words = in_words;
    }
  }
  put(overlay, left, SideName(overlay, left, best_in_words), best_left, taken);
  put(overlay, right, SideName(overlay, right, best_in_words), best_right, taken);
}

}  // namespace

void draw_sides(Overlay& overlay, const Sight& sight, const geometry::HeadAxes& axes, const Box& stage,
                const Coverage& busy, std::vector<Caption>& taken) {
  const auto put_one = [&](const std::string& text, double x_share, double y_share) {
    const SideName name(overlay, text, false);
    put(overlay, text, name, name.at(stage, x_share, y_share), taken);
  };
  const auto at_rims = [&](const std::string& left, const std::string& right) {
    put_at_rims(overlay, left, right, stage, busy, taken);
  };
  const double across = axes.right.dot(sight.right()), along = axes.front.dot(sight.right()),
               facing = axes.right.dot(sight.toward_eye), upward = axes.front.dot(sight.up);
  // Those in the middle first: those at the rims keep off them.
  if (std::abs(across) <= 0.4 && std::abs(facing) > 0.4)
    put_one(words(facing > 0 ? Words::tr("Patient's right side") : Words::tr("Patient's left side")), 0.5, 0);
  if (std::abs(upward) > 0.6) {
    put_one(words(Words::tr("Front")), 0.5, upward > 0 ? 0 : 1);
    put_one(words(Words::tr("Back")), 0.5, upward > 0 ? 1 : 0);
  }
  if (across > 0.4)
    at_rims(words(Words::tr("Patient's left")), words(Words::tr("Patient's right")));
  else if (across < -0.4)
    at_rims(words(Words::tr("Patient's right")), words(Words::tr("Patient's left")));
  else if (along > 0)
    at_rims(words(Words::tr("Back")), words(Words::tr("Front")));
  else
    at_rims(words(Words::tr("Front")), words(Words::tr("Back")));
}

}  // namespace scalpmark::viewer
