#pragma once

#include <Eigen/Core>
#include <QObject>
#include <QString>
#include <array>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "geometry/head/fiducials.h"
#include "geometry/surface/surface.h"
#include "models/cases/case_file.h"

namespace scalpmark::window {

/// The four points a head hangs on.
enum class Fiducial { nasion, inion, left_tragus, right_tragus };
inline constexpr std::array<Fiducial, 4> all_fiducials{Fiducial::nasion, Fiducial::inion,
                                                       Fiducial::left_tragus, Fiducial::right_tragus};
[[nodiscard]] Eigen::Vector3d& point_of(geometry::Fiducials& fiducials, Fiducial which);
/// "nasion", "left tragus", ...
[[nodiscard]] QString name_of(Fiducial which);

/// A skin just read on which some of the four points are still to be placed.
struct UnplacedHead {
  models::HeadSource source;
  std::filesystem::path folder;
  geometry::Surface skin;
  std::vector<geometry::Message> notes;
  std::array<std::optional<Eigen::Vector3d>, 4> placed;  ///< in the order of all_fiducials
  std::array<bool, 4> guessed{};                         ///< by the computer; nobody has confirmed it yet

  [[nodiscard]] const std::optional<Eigen::Vector3d>& at(Fiducial which) const {
    return placed[static_cast<std::size_t>(which)];
  }
  [[nodiscard]] bool is_guess(Fiducial which) const { return guessed[static_cast<std::size_t>(which)]; }
  /// All four are there, and none is a guess that nobody confirmed.
  [[nodiscard]] bool complete() const;
  /// All four, which must be there.
  [[nodiscard]] geometry::Fiducials fiducials() const;
};

/// The skin whose four points are being placed, if there is one. A point stays where it was put until it is
/// moved or the skin is dropped; nothing here touches the case.
class Placing : public QObject {
  Q_OBJECT
public:
  using QObject::QObject;

  [[nodiscard]] const std::optional<UnplacedHead>& head() const { return head_; }
  void begin(UnplacedHead head);
  void place(Fiducial which, const std::optional<Eigen::Vector3d>& at);
  /// A computer's guess of all four, to be confirmed or moved one by one.
  void guess(const geometry::Fiducials& at);
  void confirm(Fiducial which);
  void drop();
  /// Why the four points do not make a head; empty when they do or are not all there.
  [[nodiscard]] QString problem() const;

signals:
  void changed();

private:
  std::optional<UnplacedHead> head_;
};

}  // namespace scalpmark::window
