#pragma once

#include <string>
#include <vector>

#include "viewer/stage/label.h"
#include "viewer/stage/overlay.h"
#include "viewer/stage/things.h"

namespace scalpmark::viewer {

/// The line that is on every picture.
[[nodiscard]] std::string caution_text();

/// The text as lines no wider than that, broken between words.
[[nodiscard]] std::vector<std::string> wrapped(Overlay& overlay, const std::string& text,
                                               const TextStyle& style, double width);

/// Title, the way one looks, and the caution.
class Captions {
public:
  void show(const geometry::Case& entered, const geometry::Plan& plan, const Shown& shown);
  /// Draws them and adds the boxes they take.
  void draw(Overlay& overlay, const Sight& sight, std::vector<Caption>& taken) const;
  /// What the title takes from the top, pixels of a picture 800 high.
  static constexpr double top_px = 64;
  /// What the caution takes from the bottom of a picture so wide, pixels: more where it needs two lines.
  [[nodiscard]] double bottom(Overlay& overlay, double width_px, double scale) const;

private:
  /// Which head it is, where no title says so, and the line that is on every picture.
  [[nodiscard]] std::string foot() const;

  std::string title_, head_, side_;
  geometry::HeadAxes axes_;
  bool shown_ = false, with_caution_ = true;
};

/// The patient's left and right (or front and back, seen from the side) at the rims of the head's part of the
/// picture, at the height nearest to the middle where the head leaves room for them.
class SideLabels {
public:
  void show(const geometry::Plan& plan) { axes_ = plan.axes; }
  void draw(Overlay& overlay, const Sight& sight, const Box& stage, const Coverage& head,
            std::vector<Caption>& taken) const;

private:
  geometry::HeadAxes axes_;
};

}  // namespace scalpmark::viewer
