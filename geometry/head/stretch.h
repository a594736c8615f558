#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/head/head.h"

namespace scalpmark::geometry {

/// How a head changes when its cranium is made broader, longer or higher (method ours). The cranium is scaled
/// by `factors` along right, front and up about the point half way between the tragi. The face about the
/// nasion and each ear about its tragus are scaled alike in all directions, by the geometric mean of the
/// factors, so that nose, eyes, lips, chin and ears keep their own proportions; between, one passes smoothly
/// (without a jump in slope) into the other. The four fiducials move as the cranium does. Equal factors scale
/// everything alike; a symmetric head stays symmetric. Where the parts lie is told from the fiducials, in
/// units of the head's length. As long as no factor is more than half as much again as another nothing folds:
/// the map is one to one, in space and so on the skin.
class Stretch {
public:
  explicit Stretch(const Head& head);

  [[nodiscard]] Eigen::Vector3d moved(const Eigen::Vector3d& p, const Eigen::Vector3d& factors) const;

  /// The head so stretched. `near_vertex`: where its vertex is looked for first.
  [[nodiscard]] Head stretched(const Eigen::Vector3d& factors, const SurfacePoint& near_vertex) const;

private:
  /// How much of a place moves with the face and with either ear, each 0 to 1, together at most 1.
  struct Shares {
    double face = 0, left_ear = 0, right_ear = 0;
  };
  [[nodiscard]] Shares shares(const Eigen::Vector3d& p) const;
  [[nodiscard]] Eigen::Vector3d moved(const Eigen::Vector3d& p, const Shares& with,
                                      const Eigen::Matrix3d& cranium, const Eigen::Matrix3d& off) const;

  Head head_;
  Eigen::Matrix3d axes_;  ///< columns right, front, up
  double unit_mm_ = 1;    ///< what a millimetre on the generic head is on this one
  std::vector<Shares> of_vertices_;
};

}  // namespace scalpmark::geometry
