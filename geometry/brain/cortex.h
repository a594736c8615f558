#pragma once

#include <Eigen/Core>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "geometry/brain/atlas.h"
#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

class Head;

/// One person's brain and where the 10-10 positions lie on that person's own head; mm, in the frame both came
/// in.
struct TemplateBrain {
  struct Position {
    std::string name;
    Eigen::Vector3d at = Eigen::Vector3d::Zero();
  };
  Surface surface;  ///< closed, outward
  std::vector<Position> landmarks;
  Atlas areas;  ///< Brodmann areas
  Atlas gyri;
};

/// What lies under a skin point. Of the template brain: a person's own brain differs.
struct CortexHit {
  double depth_mm =
      0;  ///< from skin to cortex along the direction asked for: one ray, which may meet a fissure
  Eigen::Vector3d point = Eigen::Vector3d::Zero();  ///< on the cortex, frame of the head
  std::vector<RegionShare> areas, gyri;             ///< of the sphere around the point, largest share first
  double nearest_mm = 0;  ///< from the skin point to the nearest cortex, whatever the direction
  double median_mm = 0;   ///< of the depths, along the direction, over a patch of 10 mm around
};

/// The template's brain brought under a head: by a thin-plate map fitted on the 10-10 positions the two heads
/// share, then pushed inward where it would come nearer to the skin than 6 mm. Const and thread-safe; copies
/// share.
class Cortex {
public:
  static constexpr double nearest_to_skin_mm = 6;
  static constexpr double sphere_radius_mm =
      10;                                 ///< shares of regions are counted in it, in the template's own mm
  static constexpr double patch_mm = 10;  ///< radius of the patch over which the depth's median is taken
  static constexpr double deepest_mm =
      60;  ///< a cortex further along than this is not the one under the coil

  /// Refuses (GeometryError): a template that shares too few positions with this head, or a skin under which
  /// the brain cannot be brought.
  Cortex(std::shared_ptr<const TemplateBrain> brain, const Head& head);

  [[nodiscard]] const Surface& surface() const { return surface_; }
  /// The farthest that any point had to be pushed, mm; 0 when none had to.
  [[nodiscard]] double pushed_mm() const { return pushed_mm_; }
  /// Of the brain's points, 0 to 1.
  [[nodiscard]] double pushed_share() const { return pushed_share_; }

  /// The first cortex met from a skin point in that direction (unit, into the head); empty where there is
  /// none within `deepest_mm`. Published depths are the way to the nearest cortex, or a mean over 18 mm
  /// squares of scalp (McConnell et al. 2001, Biol Psychiatry 49:454-459, memory): `nearest_mm` is the
  /// former, `median_mm` stands near the latter and is not moved by a fissure under it.
  [[nodiscard]] std::optional<CortexHit> under(const Eigen::Vector3d& skin,
                                               const Eigen::Vector3d& inward) const;

private:
  [[nodiscard]] double median_depth_mm(const Eigen::Vector3d& skin, const Eigen::Vector3d& inward,
                                       double in_the_middle_mm) const;

  std::shared_ptr<const TemplateBrain> brain_;
  Surface surface_, skin_;
  double pushed_mm_ = 0, pushed_share_ = 0;
};

}  // namespace scalpmark::geometry
