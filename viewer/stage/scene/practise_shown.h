#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

namespace scalpmark::viewer {

/// What hands have laid and drawn on a head in an exercise, as it is drawn: places in the head's frame, mm.
/// There is no length among it: a tape is read off its print.
struct PractiseShown {
  /// A measuring tape as it lies on the skin, from its zero to where the hand holds it.
  struct Tape {
    std::vector<Eigen::Vector3d> line;
    std::vector<Eigen::Vector3d> normals;  ///< the skin's, at each point
  };
  std::optional<Tape> tape;

  struct Pencil {
    enum class Kind { point, line, cross };
    Kind kind = Kind::cross;
    Eigen::Vector3d at = Eigen::Vector3d::Zero();
    Eigen::Vector3d normal = Eigen::Vector3d::UnitZ();
    Eigen::Vector3d along = Eigen::Vector3d::UnitX();  ///< of a line
    bool faint = false;                                ///< drawn at an earlier task
  };
  std::vector<Pencil> pencil;

  /// A finger pressed on the skin: the bone under it, 0 (flat) to 1 (the top of a bump).
  struct Finger {
    Eigen::Vector3d at = Eigen::Vector3d::Zero();
    double bump = 0;
  };
  std::optional<Finger> finger;
  /// Where keys hold the tool that is in the hand.
  std::optional<Eigen::Vector3d> hand;
};

}  // namespace scalpmark::viewer
