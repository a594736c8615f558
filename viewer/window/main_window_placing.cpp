#include "viewer/window/main_window.h"

// Placing nasion, inion and tragi on a skin that has none yet, and today's marks.

namespace scalpmark::window {

namespace {

constexpr double close_look_mm = 140;  // across the picture, for placing one of the four points

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

}  // namespace

void MainWindow::show_unplaced() {
  worksheet_->show_case();
  if (session_.unplaced()) {
    const auto& placed = session_.unplaced()->placed;
    const bool fresh = !stage_->is_bare();
    refresh_stage();
    stage_->set_pointing(true);
    if (fresh) {
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
    refresh_stage();
    look_for_step();
  }
}

void MainWindow::face_fiducial(Fiducial which) {
  if (!session_.unplaced()) return;
  const UnplacedHead& head = *session_.unplaced();
  const Standing standing = standings()[static_cast<std::size_t>(bare_up_)];
  const Eigen::Vector3d right = standing.front.cross(standing.up);
  viewer::Gaze gaze;
  switch (which) {
    case Fiducial::nasion:
      gaze = {standing.front, standing.up};
      break;
    case Fiducial::inion:
      gaze = {-standing.front, standing.up};
      break;
    case Fiducial::left_tragus:
      gaze = {-right, standing.up};
      break;
    case Fiducial::right_tragus:
      gaze = {right, standing.up};
      break;
  }
  const auto& at = head.placed[static_cast<std::size_t>(which)];
  if (at)
    stage_->look_at(gaze, at, close_look_mm);
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
