#include "viewer/window/frame/main_window.h"

// Placing nasion, inion and tragi on a skin that has none yet, and today's marks.

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
  const auto placed = [&](Fiducial f) { return head.placed[static_cast<std::size_t>(f)]; };
  if (placed(which)) return placed(which);
  const auto nasion = placed(Fiducial::nasion), inion = placed(Fiducial::inion);
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

void MainWindow::show_unplaced() {
  mode_button(Mode::teach)->setEnabled(!session_.unplaced());  // no lesson on a head without its points
  worksheet_->show_case();
  if (session_.unplaced()) {
    const auto& placed = session_.unplaced()->placed;
    const bool fresh = !stage_->is_bare();
    refresh_stage();
    stage_->set_pointing(true);
    if (fresh) {
      set_mode(Mode::worksheet);  // the points are placed from there
      worksheet_->go_to(Worksheet::landmarks_index);
      bare_up_ = 0;
      const bool none =
          std::none_of(placed.begin(), placed.end(), [](const auto& p) { return p.has_value(); });
      if (none && session_.unplaced()->source.kind == models::HeadKind::mesh) {
        const auto extension = session_.unplaced()->source.file.extension();
        if (extension == ".glb" || extension == ".gltf")
          bare_up_ = 1;  // these stand along y by their standard
      }
      worksheet_->landmarks()->want(Fiducial::nasion);
    }
  } else {
    stage_->set_pointing(worksheet_->check()->wanted().has_value());
    show_step();
  }
}

void MainWindow::face_fiducial(Fiducial which) {
  if (!session_.unplaced()) return;
  stage_->set_wanted_point(which);
  const Standing standing = standings()[static_cast<std::size_t>(bare_up_)];
  const viewer::Gaze gaze = gaze_at(which, standing);
  const auto look_for = expected_place(*session_.unplaced(), which, gaze.toward_eye);
  if (look_for)
    stage_->look_at(
        gaze, look_for,
        session_.unplaced()->placed[static_cast<std::size_t>(which)] ? close_look_mm : search_look_mm);
  else
    stage_->look_at(gaze);
}

void MainWindow::turn_bare_head() {
  bare_up_ = (bare_up_ + 1) % static_cast<int>(standings().size());
  face_fiducial(worksheet_->landmarks()->wanted());
}

void MainWindow::point_on_skin(const Eigen::Vector3d& at) {
  if (session_.unplaced()) {
    LandmarksStep* step = worksheet_->landmarks();
    const Fiducial which = step->wanted();
    session_.place(which, at);
    if (!session_.unplaced()) return;
    // On to the next one that is missing.
    for (const Fiducial next : all_fiducials)
      if (!session_.unplaced()->placed[static_cast<std::size_t>(next)]) {
        step->want(next);
        return;
      }
    step->show_case();
    return;
  }
  if (const auto wanted = worksheet_->check()->wanted(); wanted && session_.is_ready())
    visit_.set(*wanted, session_.head().head.skin().closest(at));
}

}  // namespace scalpmark::window
