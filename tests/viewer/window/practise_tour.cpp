#include "tests/viewer/window/practise_tour.h"

#include <QScrollBar>
#include <cstdio>
#include <fstream>
#include <random>

#include "tests/viewer/window/in_german.h"
#include "tests/viewer/window/practise_hands.h"
#include "tests/viewer/window/tour_settings.h"

namespace scalpmark::window {

namespace {

using Eigen::Vector3d;
using geometry::Task;

const std::vector<Task> whole(geometry::all_tasks.begin(), geometry::all_tasks.end());
/// What differs most from screen to screen.
const std::vector<Task> some{Task::four_points,         Task::start,     Task::site, Task::edge_mark,
                             Task::coil_on_given_marks, Task::find_again};

struct PractiseSetting {
  const char* name;
  QSize size;
  geometry::Side side = geometry::Side::left;
  std::uint32_t number = 1;
  std::vector<Task> tasks = whole;
  bool dark = false, inches = false, german = false, mri = false;
};

class PractiseTour {
public:
  PractiseTour(const QString& folder, const PractiseSetting& s)
      : folder_(folder),
        name_(QString::fromLatin1(s.name)),
        opened_(
            s.mri ? models::read_case(SCALPMARK_SOURCE_DIR "/models/demo/template-mri.json") : demo_case(),
            s.mri, s.number, s.side, s.tasks) {
    emit opened_.window.menus().dark(s.dark);
    opened_.window.set_unit(s.inches ? LengthUnit::inch : LengthUnit::centimetre);
    opened_.window.resize(s.size);
    QTest::qWait(100);
  }
  ~PractiseTour() {
    opened_.window.set_unit(LengthUnit::centimetre);
    emit opened_.window.menus().dark(false);
  }
  PractiseTour(const PractiseTour&) = delete;
  PractiseTour& operator=(const PractiseTour&) = delete;

  void run() {
    while (opened_.run().is_on()) {
      const Task task = opened_.run().task();
      const std::string name = std::string(geometry::key_of(task));
      snap("1-" + name + "-begins");
      do_task(task);
      snap("1-" + name);
      opened_.next_task();
    }
    replay();
    a_class();
    opened_.practise().class_panel().done()->click();
    snap("4-setup");
    if (auto* scroll = qobject_cast<QScrollArea*>(&opened_.practise().column()))
      scroll->verticalScrollBar()->setValue(100000);
    snap("5-setup-end");
  }

private:
  /// As hands do: a few millimetres off.
  Vector3d beside(const Vector3d& at, double mm) {
    std::normal_distribution<double> off(0, mm);
    const auto& skin = opened_.run().head().skin();
    return skin.position(skin.closest(at + Vector3d(off(random_), off(random_), off(random_))));
  }

  void do_task(Task task) {
    if (task == Task::three_tapes) {
      opened_.do_task();
      return;
    }
    if (task == Task::four_points) {
      opened_.key(Qt::Key_F);
      const Vector3d nasion = opened_.place_of({task, 0});
      opened_.face(nasion);
      QTest::mousePress(&opened_.stage(), Qt::LeftButton, Qt::NoModifier, opened_.pixel_of(nasion));
      snap("1-four_points-finger");
      QTest::mouseRelease(&opened_.stage(), Qt::LeftButton, Qt::NoModifier, opened_.pixel_of(nasion));
    }
    if (task == Task::start) {
      // The tape from the vertex toward the ear, to be read beside the mark.
      opened_.key(Qt::Key_T);
      const auto& head = opened_.run().head();
      const Vector3d vertex = head.skin().position(head.vertex()), start = opened_.place_of({task, 0});
      opened_.pull(vertex, start, true);
      snap("1-start-tape");
      opened_.stage().look_at({head.skin().smooth_normal(head.skin().closest(start)), head.axes().front},
                              start, 90);
      snap("1-start-tape-near");
    }
    for (const geometry::Step& step : geometry::steps_of(task)) {
      const geometry::Placed& right = opened_.right().right.at(step);
      if (geometry::asked_in(task) == geometry::Asks::coil)
        opened_.lay_coil(beside(*right.at, 3), *right.angle_deg + 5);
      else
        opened_.mark(beside(*right.at, task == Task::vertex ? 5 : 2.5));
    }
  }

  void replay() {
    ScorePanel& panel = opened_.practise().score_panel();
    OpenedWindow::wait_until([&] { return !opened_.practise().is_working(); });
    snap("2-score");
    for (int i = 0; i < panel.table()->rowCount(); ++i) {
      panel.table()->setCurrentCell(i, 0);
      if (i == 0 || i == 4 || i == 6 || i == 7 || i == 9 || i + 4 >= panel.table()->rowCount())
        snap("2-replay-" + std::to_string(i));
    }
  }

  void a_class() {
    QStringList files;
    const models::ExerciseResult done{opened_.run().setup(), "", opened_.run().attempts()};
    for (int i = 0; i < 8; ++i) {
      models::ExerciseResult result = done;
      for (auto& [step, placed] : result.attempts.back().placed) {
        if (placed.at) placed.at = beside(*placed.at, 4);
        if (placed.angle_deg) *placed.angle_deg += std::normal_distribution<double>(0, 6)(random_);
      }
      files << opened_.folder.filePath(QStringLiteral("result-%1.json").arg(i));
      models::write_result(files.back().toStdString(), result);
    }
    files << opened_.folder.filePath(QStringLiteral("torn.json"));
    std::ofstream(files.back().toStdString()) << "{ \"format\": \"scalpmark-result\", ";
    opened_.practise().take_results(files);
    OpenedWindow::wait_until([&] { return opened_.practise().page() == Practise::Page::class_page; });
    snap("3-class");
    opened_.practise().save_class_page_to(folder_ + QStringLiteral("/practise-%1-class.pdf").arg(name_),
                                          viewer::Paper::a4);
  }

  void snap(const std::string& name) {
    QTest::qWait(400);  // until the panel has its new layout
    const QImage shot = opened_.shot();
    const QString file =
        QStringLiteral("%1/practise-%2-%3.png").arg(folder_, name_, QString::fromStdString(name));
    shot.save(file);
    std::printf("%s\n", qPrintable(file));
    say_mistaken(opened_.window, qPrintable(file));
  }

  QString folder_, name_;
  OpenedExercise opened_;
  std::mt19937 random_{5};
};

}  // namespace

void tour_of_practise(const QString& folder, const std::string& only) {
  using geometry::Side;
  const QSize small(960, 620), usual(1280, 800), large(1920, 1080);
  const PractiseSetting settings[]{
      {"usual", usual, Side::left, 12},
      {"large", large, Side::right, 40},
      {"small", small, Side::left, 7, some},
      {"german", small, Side::right, 3, some, false, false, true},
      {"inches-dark", usual, Side::right, 5, some, true, true},
      {"german-dark-large", large, Side::left, 9, some, true, false, true},
      {"mri", usual, Side::right, 2, some, false, true, false, true},
  };
  for (const PractiseSetting& s : settings) {
    if (!only.empty() && only != s.name) continue;
    const InGerman german(s.german);
    PractiseTour(folder, s).run();
  }
}

}  // namespace scalpmark::window
