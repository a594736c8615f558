#include "viewer/window/frame/point_placing.h"

#include <algorithm>

namespace scalpmark::window {

namespace {

constexpr double search_look_mm = 200;  // across the picture, where one of the four points is looked for
constexpr double close_look_mm = 140;   // where it is placed already

// Ways a head may stand in its file: up and front.
struct Standing {
  Eigen::Vector3d up, front;
};
std::vector<Standing> standings() {
  const Eigen::Vector3d x = Eigen::Vector3d::UnitX(), y = Eigen::Vector3d::UnitY(),
                        z = Eigen::Vector3d::UnitZ();
  return {{z, y}, {y, z},  {z, -y}, {y, -z}, {z, x}, {z, -x},
          {y, x}, {y, -x}, {-z, y}, {-y, z}, {x, y}, {-x, y}};
}

viewer::Gaze gaze_at(Fiducial which, const Standing& standing) {
  const Eigen::Vector3d right = standing.front.cross(standing.up);
  switch (which) {
    case Fiducial::nasion:
      return {standing.front, standing.up};
    case Fiducial::inion:
      return {-standing.front, standing.up};
    case Fiducial::left_tragus:
      return {-right, standing.up};
    case Fiducial::right_tragus:
      break;
  }
  return {right, standing.up};
}

/// Where a point is, or where it is to be looked for from those placed already: the inion behind the nasion,
/// the tragi beside the middle between the two. For the camera only; nothing is placed there. Nothing where
/// there is nothing to go by.
std::optional<Eigen::Vector3d> expected_place(const UnplacedHead& head, Fiducial which,
                                              const Eigen::Vector3d& toward_eye) {
  if (head.at(which)) return head.at(which);
  const auto &nasion = head.at(Fiducial::nasion), &inion = head.at(Fiducial::inion);
  std::optional<Eigen::Vector3d> through;
  if (which == Fiducial::inion && nasion)
    through = nasion;
  else if (which != Fiducial::nasion && nasion && inion)
    through = 0.5 * (*nasion + *inion);
  if (!through) return {};
  constexpr double outside_mm = 500;
  const auto hit = head.skin.ray_hit(*through + outside_mm * toward_eye, -toward_eye, outside_mm);
  if (!hit) return {};
  return head.skin.position(hit->point);
}

}  // namespace

PointPlacing::PointPlacing(Session& session, StageView& stage, LandmarksStep& step)
    : session_(session), stage_(stage), step_(step) {
  connect(&step_, &LandmarksStep::fiducial_wanted, this, [this] { face(step_.wanted()); });
  connect(&step_, &LandmarksStep::turn_wanted, this, &PointPlacing::turn_over);
  connect(&stage_, &StageView::fiducial_dragged, this, [this](Fiducial which, const Eigen::Vector3d& to) {
    put(which, to, QStringLiteral("%1 %2").arg(static_cast<int>(which)).arg(drags_));
  });
  connect(&step_, &LandmarksStep::guess_wanted, this, [this] {
    if (!session_.unplaced()) return;
    step_.show_guessing(true);
    guess_.work_out(session_.unplaced()->skin);
  });
  connect(&guess_, &PointGuess::found, this, [this](const geometry::Fiducials& at) {
    step_.show_guessing(false);
    if (!session_.unplaced()) return;
    session_.guess_points(at);
    go_on();
  });
  connect(&guess_, &PointGuess::failed, this, [this](const QString& sentence) {
    step_.show_guessing(false);
    step_.set_problem(sentence);
  });
  connect(&step_, &LandmarksStep::confirmed, this, [this] {
    session_.confirm_point(step_.wanted());
    if (session_.unplaced()) go_on();
  });
  connect(&session_, &Session::unplaced_changed, this, [this] {
    if (session_.unplaced() || !guess_.is_working()) return;
    guess_.give_up();
    step_.show_guessing(false);
  });
  connect(&stage_, &StageView::let_go, this, [this] { ++drags_; });
}

void PointPlacing::begin() {
  const UnplacedHead& head = *session_.unplaced();
  standing_ = 0;
  const bool none =
      std::none_of(head.placed.begin(), head.placed.end(), [](const auto& p) { return p.has_value(); });
  if (none && head.source.kind == models::HeadKind::mesh) {
    const auto extension = head.source.file.extension();
    if (extension == ".glb" || extension == ".gltf") standing_ = 1;  // these stand along y by their standard
  }
  step_.want(Fiducial::nasion);
}

void PointPlacing::face(Fiducial which) {
  if (!session_.unplaced()) return;
  const UnplacedHead& head = *session_.unplaced();
  stage_.set_wanted_point(which);
  const viewer::Gaze gaze = gaze_at(which, standings()[standing_]);
  if (const auto look_for = expected_place(head, which, gaze.toward_eye))
    stage_.look_at(gaze, look_for, head.at(which) ? close_look_mm : search_look_mm);
  else
    stage_.look_at(gaze);
}

void PointPlacing::turn_over() {
  standing_ = (standing_ + 1) % standings().size();
  face(step_.wanted());
}

void PointPlacing::put(Fiducial which, const Eigen::Vector3d& at, const QString& burst) {
  if (!session_.unplaced()) return;
  const std::optional<Eigen::Vector3d> before = session_.unplaced()->at(which);
  session_.place(which, at);
  if (session_.unplaced()) emit placed(which, before, burst);
}

void PointPlacing::place(const Eigen::Vector3d& at) {
  put(step_.wanted(), at, {});
  if (!session_.unplaced()) return;
  go_on();
}

void PointPlacing::go_on() {
  for (const Fiducial next : all_fiducials)
    if (!session_.unplaced()->at(next) || session_.unplaced()->is_guess(next)) {
      step_.want(next);
      return;
    }
  step_.show_case();
}

}  // namespace scalpmark::window
