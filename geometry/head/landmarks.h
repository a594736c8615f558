#pragma once

#include <Eigen/Core>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/head/head.h"
#include "geometry/tapes/tape.h"

namespace scalpmark::geometry {

/// Which positions to construct; each includes the ones before it.
enum class LandmarkSystem { ten_twenty, ten_ten, ten_five };

struct Landmark {
  std::string name;  ///< "Fpz", "C3", ...; the newer labels (T7, T8, P7, P8)
  SurfacePoint on_skin;
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
};

/// The positions on this head, Nz and Iz included: 21 + 2 of the 10-20 system, the 10-10 system, or all 345
/// of the 10-5 system (Oostenveld and Praamstra 2001, Clin Neurophysiol 112:713-719). Order: front to back,
/// left to right in a row.
[[nodiscard]] std::vector<Landmark> landmarks(const Head& head, LandmarkSystem system);

/// The one with this name, as written in the literature; null where there is none.
[[nodiscard]] const Landmark* find(const std::vector<Landmark>& all, std::string_view name);

/// One position by its label, case-insensitive; T3, T4, T5, T6 are understood as T7, T8, P7, P8. Empty when
/// there is no such label in the 10-5 system.
[[nodiscard]] std::optional<Landmark> landmark(const Head& head, std::string_view label);

/// Marks a position on its tape, at a share of the tape's length, and says where it was marked.
using MarkOnTape = std::function<SectionPoint(const std::string& name, const Tape& tape, double share)>;

/// The same position made as it is made on a head, mark by mark: each that its tapes run through (Fpz, Oz,
/// T7, T8, Fz, F7, F8 for F3), and itself at the end, once each; the tapes run through where `mark` says that
/// they were marked. The vertex is that of `tapes`.
[[nodiscard]] std::optional<Landmark> landmark(const Surface& skin, const VertexTapes& tapes,
                                               std::string_view label, const MarkOnTape& mark);

/// The label as written in the literature ("f3" -> "F3", "T5" -> "P7"); empty when there is none.
[[nodiscard]] std::optional<std::string> canonical_label(std::string_view label);

/// All labels of a system, in the order of landmarks().
[[nodiscard]] const std::vector<std::string>& landmark_labels(LandmarkSystem system);

}  // namespace scalpmark::geometry
