#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>

#include "viewer/stage/drawing/label.h"
#include "viewer/stage/stage.h"

namespace scalpmark::tests {

/// What is wrong with where a stage's labels stand, a line each: one over another or over a symbol, one
/// without a line nearer to another symbol than to its own, one with a line close to another symbol.
inline std::string mistaken_labels(const viewer::Stage& stage) {
  const viewer::Sight& sight = stage.sight();
  const auto box_of = [&](const viewer::SeenMark& m) {
    // As a mark's shape is drawn: a bar lies along its line, others reach the same everywhere.
    const viewer::Pixel at = sight.project(m.at);
    const double reach = viewer::reach_px(m.shape) * sight.scale;
    double x = reach, y = reach;
    if (m.shape == viewer::Shape::bar || m.shape == viewer::Shape::small_bar) {
      x = std::abs(m.along.dot(sight.right())) * reach + 2 * sight.scale;
      y = std::abs(m.along.dot(sight.up)) * reach + 2 * sight.scale;
    }
    return viewer::Box{at.x - x, at.y - y, at.x + x, at.y + y};
  };
  std::string wrong;
  const auto& labels = stage.labels();
  for (std::size_t i = 0; i < labels.size(); ++i) {
    const viewer::PlacedLabel& label = labels[i];
    for (std::size_t j = 0; j < i; ++j)
      if (label.box.overlaps(labels[j].box))
        wrong += "\"" + label.wish.text + "\" over \"" + labels[j].wish.text + "\"\n";
    double own = std::numeric_limits<double>::infinity();
    double others = std::numeric_limits<double>::infinity();
    std::string nearest;
    for (const viewer::SeenMark& m : stage.marks()) {
      if (!m.visible) continue;
      const double away = viewer::distance_px(label.box, box_of(m));
      const viewer::Pixel at = sight.project(m.at);
      if (std::hypot(at.x - label.wish.anchor.x, at.y - label.wish.anchor.y) <
          viewer::one_place_px * sight.scale) {
        own = std::min(own, away);
        if (away == 0) wrong += "\"" + label.wish.text + "\" over its own " + m.name + "\n";
      } else if (away < others) {
        others = away;
        nearest = m.name;
      }
    }
    if (!std::isfinite(own)) {
      // A dot that is no mark is told by its label alone, which keeps 3 px or less off what it names.
      const viewer::Pixel& at = label.wish.anchor;
      const double dot = std::max(0.0, label.wish.clear_px - 3 * sight.scale);
      own = std::max(0.0, viewer::distance_px(label.box, {at.x, at.y, at.x, at.y}) - dot);
    }
    const double least = label.leader ? viewer::clear_of_others_px * sight.scale - 1e-6 : own;
    if (others < least)
      wrong += "\"" + label.wish.text + "\" " + std::to_string(others) + " px from " + nearest +
               (label.leader ? ", with a line" : ", " + std::to_string(own) + " from its own") + "\n";
  }
  return wrong;
}

}  // namespace scalpmark::tests
