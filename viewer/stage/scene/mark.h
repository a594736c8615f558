#pragma once

#include <Eigen/Core>
#include <optional>
#include <string>
#include <unordered_map>

#include "geometry/surface/surface.h"
#include "viewer/stage/scene/palette.h"
#include "viewer/stage/scene/shapes.h"
#include "viewer/stage/scene/sight.h"
#include "viewer/stage/scene/thing.h"

namespace scalpmark::viewer {

/// Text that wants to stand beside something of the scene, where there is room for it.
struct Label {
  std::string text;
  double clear_px = 6;      ///< it stays this far away, pixels of a picture 800 high
  int priority = 0;         ///< higher ones are placed first
  bool may_go_far = false;  ///< with a leader line; others stand close by or are left out
  Role role = Role::text;
  bool bold = false;
  double size_px = 14;  ///< of the letters, in a picture 800 high
  /// Said beside the picture where the mark is not seen or its label finds no room: "edge mark, drop rule";
  /// empty for what can be left out.
  std::string aside{};
};

/// The order of importance where room is short.
namespace label_priority {
inline constexpr int site = 110, edge_mark = 109, hotspot = 108, wanted = 107, angle = 106, tag = 105,
                     note = 104, start = 95, touch = 94, trials = 90, other_mark = 70, other_site = 60,
                     fiducial = 50;
}  // namespace label_priority

/// A mark lying on the skin.
struct Mark {
  Thing thing = Thing::landmarks;
  std::string name;  ///< "C3", "grid +1 0 pulse", "treatment", ...
  Shape shape = Shape::dot;
  Role role = Role::landmark;
  Eigen::Vector3d at = Eigen::Vector3d::Zero();       ///< where the plan says
  Eigen::Vector3d normal = Eigen::Vector3d::UnitZ();  ///< of the skin, calmed over a few millimetres
  Eigen::Vector3d along = Eigen::Vector3d::UnitX();   ///< the shape's x, square to the normal
  std::optional<Label> label;

  /// Marks of a higher layer lie over those of a lower one where they meet.
  [[nodiscard]] int layer() const;
};

/// A mark as it is seen.
struct SeenMark : Mark {
  Colour colour;
  bool visible = false;  ///< not behind the head
};

/// Whether two surfaces are one: copies share their corners.
[[nodiscard]] inline bool same_surface(const geometry::Surface& a, const geometry::Surface& b) {
  return &a.vertices() == &b.vertices();
}

/// The skin's direction at a point of it, averaged over a patch of 8 mm so that scanner noise does not tilt
/// marks.
[[nodiscard]] Eigen::Vector3d calm_normal(const geometry::Surface& skin, const Eigen::Vector3d& at);

/// The same, remembered: an edit of a case leaves most of what lies on a head where it was.
class CalmNormals {
public:
  [[nodiscard]] Eigen::Vector3d at(const geometry::Surface& skin, const Eigen::Vector3d& at);

private:
  struct Hash {
    std::size_t operator()(const Eigen::Vector3d& p) const;
  };
  std::optional<geometry::Surface> skin_;
  std::unordered_map<Eigen::Vector3d, Eigen::Vector3d, Hash> known_;
};

/// A mark at a skin point whose calm normal is given; `along` need not be square to it.
[[nodiscard]] Mark make_mark(Thing thing, std::string name, Shape shape, Role role, const Eigen::Vector3d& at,
                             const Eigen::Vector3d& normal, const Eigen::Vector3d& along);

/// Whether the head does not stand between a skin point and the eye.
[[nodiscard]] bool in_sight(const geometry::Surface& skin, const Eigen::Vector3d& at,
                            const Eigen::Vector3d& normal, const Sight& sight);

}  // namespace scalpmark::viewer
