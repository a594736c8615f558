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

/// What a name there would cover; words over words are worse than both names over the head.
double covered_by(const Box& box, const Coverage& busy, const std::vector<Caption>& taken) {
  constexpr double words = 3;
  double covered = busy.share(box);
  for (const Caption& other : taken) covered += box.overlaps(other.box) ? words : 0;
  return covered;
}

/// Names at the left or right rim (`x_share`), where they cover least; in several lines where one line would
/// lie on what is shown. Says how much they cover.
double put_at_rims(Overlay& overlay, const std::vector<std::pair<std::string, double>>& names,
                   const Box& stage, const Coverage& busy, double bearable, std::vector<Caption>& taken) {
  constexpr std::array heights{0.5,  0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18,
                               0.82, 0.1,  0.9,  0.03, 0.97, 0.0,  1.0};
  double least = std::numeric_limits<double>::infinity(), best_y = 0.5;
  bool best_in_words = false;
  for (const bool in_words : {false, true}) {
    if (least <= 0) break;
    for (const double y : heights) {
      double covered = 0;
      for (const auto& [text, x] : names)
        covered += covered_by(SideName(overlay, text, in_words).at(stage, x, y), busy, taken);
      if (covered >= least) continue;
      least = covered;
      best_y = y;
      best_in_words = in_words;
    }
  }
  if (least <= bearable)
    for (const auto& [text, x] : names) {
      const SideName name(overlay, text, best_in_words);
      put(overlay, text, name, name.at(stage, x, best_y), taken);
    }
  return least;
}

/// Both at one height, or, where one would lie on other words there, each at its own.
void put_both_at_rims(Overlay& overlay, const std::string& left, const std::string& right, const Box& stage,
                      const Coverage& busy, std::vector<Caption>& taken) {
  constexpr double on_head = 2, anywhere = std::numeric_limits<double>::infinity();
  if (put_at_rims(overlay, {{left, 0.0}, {right, 1.0}}, stage, busy, on_head, taken) <= on_head) return;
  (void)put_at_rims(overlay, {{left, 0.0}}, stage, busy, anywhere, taken);
  (void)put_at_rims(overlay, {{right, 1.0}}, stage, busy, anywhere, taken);
}

}  // namespace

void draw_sides(Overlay& overlay, const Sight& sight, const geometry::HeadAxes& axes, const Box& stage,
                const Coverage& busy, std::vector<Caption>& taken) {
  // In the middle, or as little aside of it as keeps off other words.
  const auto put_one = [&](const std::string& text, double y_share) {
    constexpr std::array places{0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8};
    const SideName name(overlay, text, false);
    const auto is_free = [&](double x_share) {
      const Box box = name.at(stage, x_share, y_share);
      return std::none_of(taken.begin(), taken.end(), [&](const Caption& c) { return box.overlaps(c.box); });
    };
    const auto* place = std::find_if(places.begin(), places.end(), is_free);
    put(overlay, text, name, name.at(stage, place != places.end() ? *place : places.front(), y_share), taken);
  };
  const auto at_rims = [&](const std::string& left, const std::string& right) {
    put_both_at_rims(overlay, left, right, stage, busy, taken);
  };
  const double across = axes.right.dot(sight.right()), along = axes.front.dot(sight.right()),
               facing = axes.right.dot(sight.toward_eye), upward = axes.front.dot(sight.up);
  // Those in the middle first: those at the rims keep off them.
  if (std::abs(across) <= 0.4 && std::abs(facing) > 0.4)
    put_one(words(facing > 0 ? Words::tr("Patient's right side") : Words::tr("Patient's left side")), 0);
  if (std::abs(upward) > 0.6) {
    put_one(words(Words::tr("Front")), upward > 0 ? 0 : 1);
    put_one(words(Words::tr("Back")), upward > 0 ? 1 : 0);
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
