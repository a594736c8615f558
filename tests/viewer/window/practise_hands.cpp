#include "tests/viewer/window/practise_hands.h"

#include <QPolygonF>
#include <array>
#include <cmath>
#include <stdexcept>

namespace scalpmark::window {

using Eigen::Vector3d;
using geometry::Task;

OpenedExercise::OpenedExercise(std::uint32_t number, geometry::Side side, const std::vector<Task>& tasks)
    : OpenedExercise(demo_case(), false, number, side, tasks) {}

OpenedExercise::OpenedExercise(const models::CaseFile& beside, bool own_head, std::uint32_t number,
                               geometry::Side side, const std::vector<Task>& tasks)
    : OpenedWindow(beside) {
  QTest::mouseClick(window.mode_button(Mode::practise), Qt::LeftButton);
  SetupPanel& setup = practise().setup_panel();
  setup.head()->button(own_head ? 1 : 0)->click();
  setup.number()->setValue(static_cast<int>(number));
  setup.side()->button(side == geometry::Side::left ? 0 : 1)->click();
  for (const Task task : geometry::all_tasks) {
    const bool wanted = std::find(tasks.begin(), tasks.end(), task) != tasks.end();
    if (setup.task(task)->isChecked() != wanted) setup.task(task)->click();
  }
  QTest::mouseClick(setup.begin(), Qt::LeftButton);
  wait_until([this] { return run().is_on() || !practise().setup_panel().problem().isEmpty(); });
  if (!run().is_on()) throw std::runtime_error(practise().setup_panel().problem().toStdString());
  QTest::qWait(30);
}

void OpenedExercise::key(int which, Qt::KeyboardModifiers with) {
  QTest::keyClick(&stage(), static_cast<Qt::Key>(which), with);
}

void OpenedExercise::face(const Vector3d& place) {
  const geometry::Surface& skin = run().head().skin();
  const Vector3d normal = skin.smooth_normal(skin.closest(place));
  const geometry::HeadAxes& axes = run().head().axes();
  // As the keys 1 to 5 look at the head.
  const std::array<Vector3d, 5> eyes{axes.front, -axes.right, axes.right, -axes.front, axes.up};
  std::size_t best = 0;
  for (std::size_t i = 1; i < eyes.size(); ++i)
    if (normal.dot(eyes[i]) > normal.dot(eyes[best])) best = i;
  key(Qt::Key_1 + static_cast<int>(best));
  (void)stage().picture();
}

QPoint OpenedExercise::pixel_of(const Vector3d& place) {
  return stage().position_of(place).toPoint();
}

void OpenedExercise::move_mouse(QPoint to, Qt::MouseButtons held) {
  QMouseEvent move(QEvent::MouseMove, to, stage().mapToGlobal(to), Qt::NoButton, held, Qt::NoModifier);
  QApplication::sendEvent(&stage(), &move);
}

void OpenedExercise::drag(QPoint from, QPoint to, int pieces) {
  QTest::mousePress(&stage(), Qt::LeftButton, Qt::NoModifier, from);
  for (int i = 1; i <= pieces; ++i) move_mouse(from + (to - from) * i / pieces, Qt::LeftButton);
  QTest::mouseRelease(&stage(), Qt::LeftButton, Qt::NoModifier, to);
}

void OpenedExercise::mark(const Vector3d& place) {
  key(Qt::Key_X);
  face(place);
  QTest::mouseClick(&stage(), Qt::LeftButton, Qt::NoModifier, pixel_of(place));
}

void OpenedExercise::pull(const Vector3d& from, const Vector3d& to, bool fresh) {
  const Vector3d begin = fresh ? from : run().tape()->held_at.back();
  const auto is_seen = [&](const Vector3d& place) {
    constexpr double same_skin_mm = 2;
    const auto found = stage().stage().skin_at(stage().pixel_of(stage().position_of(place)));
    return found && (run().head().skin().position(*found) - place).norm() < same_skin_mm;
  };
  // From the side of the head that shows both of its ends.
  for (int view = Qt::Key_1; view <= Qt::Key_5; ++view) {
    key(view);
    (void)stage().picture();
    if (!is_seen(begin) || !is_seen(to)) continue;
    drag(pixel_of(begin), pixel_of(to));
    return;
  }
  throw std::runtime_error("No side of the head shows both ends of the tape.");
}

void OpenedExercise::lay_coil(const Vector3d& pulse, double angle_deg) {
  key(Qt::Key_C);
  face(pulse);
  // Carried twice: the handle moves in the picture as the coil tips over the head.
  for (int i = 0; i < 3; ++i) {
    (void)stage().picture();
    const geometry::Placement& now = run().coil()->placement;
    const Vector3d right = now.front.cross(now.normal);
    Vector3d handle = Vector3d::Zero();
    for (const auto& part : coil_model().parts)
      if (part.name == "handle") {
        for (const auto& p : part.outline)
          handle += (now.pulse + now.lift_mm * now.normal + p.x() * right + p.y() * now.front +
                     part.top_mm * now.normal) /
                    static_cast<double>(part.outline.size());
      }
    const QPoint from = pixel_of(handle);
    drag(from, from + pixel_of(pulse) - pixel_of(now.pulse));
  }
  const double turn = angle_deg - run().coil()->angle_deg;
  for (int i = 0; i < std::abs(std::lround(turn)); ++i) key(turn > 0 ? Qt::Key_Right : Qt::Key_Left);
}

const geometry::Coil& OpenedExercise::coil_model() {
  return right().the_case.coil.model;
}

void OpenedExercise::next_task() {
  QTest::mouseClick(practise().task_panel().next(), Qt::LeftButton);
}

void OpenedExercise::do_tapes() {
  const geometry::Head& head = run().head();
  const auto& at = head.fiducials().at;
  const auto landmark = [&](const std::string& name) {
    for (const auto& each : right().plan.landmarks)
      if (each.name == name) return each.at;
    throw std::runtime_error("no landmark " + name);
  };
  key(Qt::Key_T);
  // Read to half a centimetre off the print, as hands do, and typed.
  const auto read = [&](int which) {
    if (!run().tape()) throw std::runtime_error("No tape lies on the head.");
    const double read_mm = 5 * std::round(run().tape()->lies.length_mm / 5);
    type(practise().task_panel().reading(which)->edit(), QString::number(read_mm / 10, 'f', 1));
    stage().setFocus();
  };
  const auto pulled = [&](std::vector<Vector3d> stations) {
    for (std::size_t i = 1; i < stations.size(); ++i) pull(stations[i - 1], stations[i], i == 1);
  };
  const auto all = [&](const std::vector<std::string>& names) {
    std::vector<Vector3d> places;
    for (const std::string& name : names) places.push_back(landmark(name));
    return places;
  };
  std::vector<Vector3d> midline = all({"AFz", "Fz", "Cz", "Pz", "POz"});
  midline.insert(midline.begin(), at.nasion);
  midline.push_back(at.inion);
  pulled(midline);
  read(0);
  std::vector<Vector3d> coronal = all({"C5", "C3", "C4", "C6"});
  coronal.insert(coronal.begin(), at.left_tragus);
  coronal.push_back(at.right_tragus);
  pulled(coronal);
  read(1);
  // Held at both sides and the back.
  pulled(all({"Fpz", "AF7", "F7", "T7"}));
  for (const auto& stretch : {all({"P7", "PO7", "Oz"}), all({"PO8", "P8", "T8"})}) {
    key(Qt::Key_H);
    for (const Vector3d& station : stretch) pull({}, station, false);
  }
  key(Qt::Key_O);
  read(2);
}

void OpenedExercise::do_task() {
  const Task task = run().task();
  if (task == Task::three_tapes) {
    do_tapes();
    return;
  }
  for (const geometry::Step& step : geometry::steps_of(task)) {
    const geometry::Placed& wanted = right().right.at(step);
    if (geometry::asked_in(task) == geometry::Asks::coil)
      lay_coil(*wanted.at, *wanted.angle_deg);
    else
      mark(*wanted.at);
  }
}

}  // namespace scalpmark::window
