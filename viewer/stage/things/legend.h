#pragma once

#include <string>
#include <vector>

#include "viewer/stage/label.h"
#include "viewer/stage/overlay.h"
#include "viewer/stage/things.h"

namespace scalpmark::viewer {

/// What each shape means, for the things that are shown.
class Legend {
public:
  void show(const Shown& shown);
  /// Draws it with its bottom left corner there, and adds the box it takes.
  void draw(Overlay& overlay, const Sight& sight, const Pixel& bottom_left,
            std::vector<Caption>& taken) const;
  [[nodiscard]] bool empty() const { return rows_.empty(); }

private:
  enum class Sample { shape, line, coil, lit };
  struct Row {
    Sample sample = Sample::shape;
    Shape shape = Shape::dot;
    Colour colour;
    std::string text;
  };
  std::vector<Row> rows_;
};

/// The numbers staff copy down, for the placement shown: angle, and tape distances from the four points that
/// can be found again without a cap.
class NumberTable {
public:
  void show(const geometry::Case& entered, const geometry::Placement& placement, const Shown& shown);
  /// Draws it with its top left corner there, adds the box it takes, and says where it ends (y of its
  /// bottom).
  double draw(Overlay& overlay, const Sight& sight, const Pixel& top_left, std::vector<Caption>& taken) const;

private:
  struct Row {
    std::string name, pulse, edge;
  };
  std::string where_, angle_;
  std::vector<Row> rows_;
};

}  // namespace scalpmark::viewer
