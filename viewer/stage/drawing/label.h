#pragma once

#include <string>
#include <vector>

#include "viewer/stage/scene/palette.h"
#include "viewer/stage/scene/sight.h"

namespace scalpmark::viewer {

/// A box in the picture, pixels; y down.
struct Box {
  double left = 0, top = 0, right = 0, bottom = 0;
  [[nodiscard]] double width() const { return right - left; }
  [[nodiscard]] double height() const { return bottom - top; }
  [[nodiscard]] bool overlaps(const Box& o) const {
    return left < o.right && o.left < right && top < o.bottom && o.top < bottom;
  }
  [[nodiscard]] bool inside(const Box& o) const {
    return left >= o.left && right <= o.right && top >= o.top && bottom <= o.bottom;
  }
};

/// Text that has its fixed place around the head.
struct Caption {
  std::string text;
  Box box;
  bool is_legend = false;
};

/// Where the head is in the picture, coarsely: square cells, row by row from the top.
struct Coverage {
  double cell_px = 16;
  int columns = 0, rows = 0;
  std::vector<bool> covered;
  /// The share of a box that lies on the head, 0 to 1.
  [[nodiscard]] double share(const Box& box) const;
};

/// Text that wants to stand beside a place in the picture.
struct LabelWish {
  std::string text;
  Pixel anchor;
  double clear_px = 6;      ///< stay this far from the anchor: the reach of its mark
  int priority = 0;         ///< higher ones are placed first
  bool may_go_far = false;  ///< with a leader line back to the anchor; others stand close by or are left out
  Colour colour = palette::text;
  bool bold = false;
  double size_px = 14;           ///< of the text, in a picture 800 high
  double width = 0, height = 0;  ///< of the text's box with its margin, pixels; measured by the drawer
};

struct PlacedLabel {
  LabelWish wish;
  Box box;
  bool leader = false;
};

/// What a mark takes up of the picture. Chief ones, such as the pulse point, are covered last.
struct MarkInPicture {
  Box box;
  bool chief = false;
  bool symbol = true;  ///< means something of its own, so that a label near it is read as its name
  [[nodiscard]] Pixel middle() const { return {0.5 * (box.left + box.right), 0.5 * (box.top + box.bottom)}; }
};

/// How far a box is from a place, pixels; 0 inside.
[[nodiscard]] double away(const Box& box, const Pixel& from);

/// Places labels one by one, highest priority first, each at the best free spot around its anchor: no label
/// overlaps another, the `taken` boxes or the canvas' rim; marks (`marks`) are covered only when nothing else
/// is left, and never by a label of low priority; leader lines do not cross; labels that may go far rather
/// stand beside the head (`head`) than on it. A label stands nearer to its own symbol than to any other; one
/// with a leader, whose line tells, keeps clear of others all the same, and its line off them, as long as
/// there is a way. A label without a spot is left out.
[[nodiscard]] std::vector<PlacedLabel> place_labels(std::vector<LabelWish> wishes, const Box& canvas,
                                                    const std::vector<Box>& taken,
                                                    const std::vector<MarkInPicture>& marks,
                                                    const Coverage& head, double scale);

}  // namespace scalpmark::viewer
