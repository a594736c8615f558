#pragma once

#include <string>
#include <vector>

#include "viewer/stage/drawing/label.h"
#include "viewer/stage/drawing/overlay.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// The text as lines no wider than that, broken between words.
[[nodiscard]] std::vector<std::string> wrapped(Overlay& overlay, const std::string& text,
                                               const TextStyle& style, double width);

/// What the title takes from the top, pixels of a picture 800 high.
inline constexpr double title_px = 64;
/// Draws the title and the way one looks, and adds the box they take.
void draw_title(Overlay& overlay, const Sight& sight, const Surroundings::Title& title,
                const geometry::HeadAxes& axes, std::vector<Caption>& taken);

/// Words in large type over the head's part of the picture, in its middle.
void draw_headline(Overlay& overlay, const Sight& sight, const std::string& headline, const Box& stage,
                   std::vector<Caption>& taken);

/// How large a caution's letters are where the picture is low: as `share` says, or so much smaller that it
/// takes less than 15 % of the height, but 12 pixels of the screen.
[[nodiscard]] double fitting_caution_share(Overlay& overlay, const std::string& caution, double share,
                                           double width_px, double height_px, double scale);

/// `share`: of the usual size of its letters. What the caution takes from the bottom of a picture so wide,
/// pixels: more where it needs two lines.
[[nodiscard]] double caution_height(Overlay& overlay, const std::string& caution, double share,
                                    double width_px, double scale);
void draw_caution(Overlay& overlay, const Sight& sight, const std::string& caution, double share,
                  std::vector<Caption>& taken);

/// The patient's left and right (or front and back, seen from the side) at the rims of the head's part of the
/// picture, at the height nearest to the middle where what is shown (`busy`: head and coil) leaves room for
/// them, a word a line where it leaves no more.
void draw_sides(Overlay& overlay, const Sight& sight, const geometry::HeadAxes& axes, const Box& stage,
                const Coverage& busy, std::vector<Caption>& taken);

}  // namespace scalpmark::viewer
