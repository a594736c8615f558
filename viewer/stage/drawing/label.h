#pragma once

#include <optional>
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
  friend bool operator==(const Box& a, const Box& b) = default;
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
  std::string aside;             ///< what is said beside the picture where it finds no room; empty: nothing
  std::optional<Pixel> only_along{};  ///< stands on this line through the anchor (unit), to either side
};

struct PlacedLabel {
  LabelWish wish;
  Box box;
  bool leader = false;
};

/// A symbol in the picture: what it takes up, and its place. A label is its own whose anchor lies there.
struct SymbolInPicture {
  Box box;
  Pixel at;
};
/// Symbols this near to each other, pixels of a picture 800 high, lie in one place: labels of one are the
/// other's, too.
inline constexpr double one_place_px = 3;
/// A label with a leader line keeps this far from all symbols but its own, pixels of a picture 800 high:
/// further than one without stands from its own.
inline constexpr double clear_of_others_px = 5;

[[nodiscard]] double distance_px(const Box& a, const Box& b);

/// What labels are placed around.
struct LabelGround {
  Box canvas;
  std::vector<Box> taken;  ///< no label stands there
  std::vector<SymbolInPicture> symbols;
  std::vector<Box> lines;  ///< labels would rather stand beside these: pieces of lines that are looked at
  Coverage head;           ///< labels that may go far rather stand beside it
  double scale = 1;
};

struct LabelLayout {
  std::vector<PlacedLabel> placed;
  std::vector<LabelWish> without_room;
};

/// Gives those without room that have a short text that text, or `by_name` what it begins with up to a comma
/// between words (that of 1,4 cm is none). Says whether there was another.
[[nodiscard]] bool shorten(std::vector<LabelWish>& wishes, const std::vector<LabelWish>& without_room,
                           bool by_name);

/// Places labels one by one, highest priority first, each at the best free spot around its anchor: no label
/// overlaps another, a taken box, a symbol or the canvas' rim. One that stands close by is nearer to its own
/// symbol than to any other; one with a leader line keeps clear of all others. Leader lines do not cross, and
/// pass no symbol but their own where there is a way round. A label without a spot is left out.
[[nodiscard]] LabelLayout place_labels(std::vector<LabelWish> wishes, const LabelGround& ground);

}  // namespace scalpmark::viewer
