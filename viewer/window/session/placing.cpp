#include "viewer/window/session/placing.h"

#include <algorithm>

#include "geometry/head/head.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

Eigen::Vector3d& point_of(geometry::Fiducials& fiducials, Fiducial which) {
  switch (which) {
    case Fiducial::nasion:
      return fiducials.nasion;
    case Fiducial::inion:
      return fiducials.inion;
    case Fiducial::left_tragus:
      return fiducials.left_tragus;
    case Fiducial::right_tragus:
      break;
  }
  return fiducials.right_tragus;
}

QString name_of(Fiducial which) {
  switch (which) {
    case Fiducial::nasion:
      return Placing::tr("nasion");
    case Fiducial::inion:
      return Placing::tr("inion");
    case Fiducial::left_tragus:
      return Placing::tr("left tragus");
    case Fiducial::right_tragus:
      break;
  }
  return Placing::tr("right tragus");
}

bool UnplacedHead::complete() const {
  return std::all_of(placed.begin(), placed.end(), [](const auto& point) { return point.has_value(); }) &&
         std::none_of(guessed.begin(), guessed.end(), [](bool is_guess) { return is_guess; });
}

geometry::Fiducials UnplacedHead::fiducials() const {
  geometry::Fiducials fiducials;
  for (const Fiducial each : all_fiducials) point_of(fiducials, each) = *at(each);
  return fiducials;
}

void Placing::begin(UnplacedHead head) {
  head_ = std::move(head);
  emit changed();
}

void Placing::place(Fiducial which, const std::optional<Eigen::Vector3d>& at) {
  if (!head_) return;
  head_->placed[static_cast<std::size_t>(which)] = at;
  head_->guessed[static_cast<std::size_t>(which)] = false;
  emit changed();
}

void Placing::guess(const geometry::Fiducials& at) {
  if (!head_) return;
  geometry::Fiducials points = at;
  for (const Fiducial each : all_fiducials) {
    head_->placed[static_cast<std::size_t>(each)] = point_of(points, each);
    head_->guessed[static_cast<std::size_t>(each)] = true;
  }
  emit changed();
}

void Placing::confirm(Fiducial which) {
  if (!head_ || !head_->at(which)) return;
  head_->guessed[static_cast<std::size_t>(which)] = false;
  emit changed();
}

void Placing::drop() {
  if (!head_) return;
  head_.reset();
  emit changed();
}

QString Placing::problem() const {
  if (!head_ || !head_->complete()) return {};
  try {
    (void)geometry::place_fiducials(head_->skin, head_->fiducials());
    return {};
  } catch (const std::exception& error) {
    return viewer::translated(error);
  }
}

}  // namespace scalpmark::window
