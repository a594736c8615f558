// A day's use in some minutes, in the real window (at its smallest, so that software OpenGL has less to
// fill): edits by fields, keys and undo, with files opened in between, each drawn. Memory must stay flat:
// exit code 1 where it grew by more than 5 % after the first tenth. Run by hand: build/bench_long_use [EDITS]
// [FILES]; without numbers 20000 and 200.
#include <unistd.h>
#include <vtkCallbackCommand.h>
#include <vtkRenderWindow.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fstream>

#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

double memory_mb() {
  long pages = 0, resident = 0;
  std::ifstream("/proc/self/statm") >> pages >> resident;
  return static_cast<double>(resident) * static_cast<double>(sysconf(_SC_PAGESIZE)) / 1048576;
}

/// Ten files that come round again: nine heads measured differently, and a scan. As more heads come than the
/// window remembers, each is loaded anew.
class Files {
public:
  explicit Files(OpenedWindow& opened) : opened_(opened) {
    const auto& skin = opened.window.session().head().head.skin();
    models::write_ply(path("scan.ply").toStdString(), skin);
  }

  void open(int which) {
    Session& session = opened_.window.session();
    if (which % 10 == 9) {
      opened_.window.files().open_path(path("scan.ply"));
      opened_.settle();
      session.drop_unplaced();
      return;
    }
    models::CaseFile case_file = demo_case();
    case_file.the_case.tape_mm.nasion_inion_mm = 345 + which % 10 * 3;
    case_file.the_case.label = "Head " + std::to_string(which % 10);
    const QString file = path(QString("head-%1.json").arg(which % 10));
    models::write_case(file.toStdString(), case_file);
    opened_.window.files().open_path(file);
    opened_.settle();
  }

private:
  [[nodiscard]] QString path(const QString& name) const { return opened_.folder.filePath(name); }
  OpenedWindow& opened_;
};

/// One edit of a sort that comes round again, the `i`th since the file was opened; every one is drawn.
void edit(OpenedWindow& opened, int i) {
  MainWindow& w = opened.window;
  const auto change = [&](auto&& what) { (void)w.session().change("Edit", what); };
  switch (i % 12) {
    case 0:
      w.worksheet().go_to(Worksheet::site_index);
      opened.type(w.worksheet().site()->distance()->edit(), i % 24 == 0 ? "5.5" : "5");
      break;
    case 1:
      change([&](models::CaseFile& case_file) {
        case_file.the_case.side = i % 24 == 1 ? geometry::Side::right : geometry::Side::left;
      });
      break;
    case 2:
      change([&](models::CaseFile& case_file) { case_file.the_case.coil.angle_deg = 40 + i % 11; });
      break;
    case 3:
      change([&](models::CaseFile& case_file) { case_file.the_case.search.lateral_mm = 45 + i % 13; });
      break;
    case 4:
      w.session().undo();
      break;
    case 5:
      w.session().redo();
      break;
    case 6:
      QTest::keyClick(&w.stage(), Qt::Key_Up, Qt::ControlModifier);
      break;
    case 7:
      QTest::keyClick(&w.stage(), Qt::Key_Right, Qt::ShiftModifier);
      break;
    case 8:
      QTest::keyClick(&w.stage(), Qt::Key_Escape);
      break;
    case 9:
      change([&](models::CaseFile& case_file) {
        geometry::use_one_rule(case_file.the_case,
                               i % 24 == 9 ? geometry::MarkRule::drop : geometry::MarkRule::tape);
      });
      break;
    case 10:
      w.worksheet().go_to(static_cast<Worksheet::StepIndex>(i / 12 % 5));
      break;
    default:
      change(
          [&](models::CaseFile& case_file) { case_file.the_case.label = "Case " + std::to_string(i % 17); });
  }
  QApplication::processEvents();
}

}  // namespace

int main(int argc, char** argv) {
  const int edits = argc > 1 ? std::atoi(argv[1]) : 20000, files = argc > 2 ? std::atoi(argv[2]) : 200;
  if (edits < 100 || files < 10) {
    std::fputs("usage: bench_long_use [EDITS, 100 or more] [FILES, 10 or more]\n", stderr);
    return 2;
  }
  const TestSession bench(1, argv);
  OpenedWindow opened;
  opened.window.resize(opened.window.minimumSize());
  Files to_open(opened);
  int frames = 0;
  vtkNew<vtkCallbackCommand> count_frame;
  count_frame->SetClientData(&frames);
  count_frame->SetCallback([](vtkObject*, unsigned long, void* data, void*) { ++*static_cast<int*>(data); });
  opened.window.stage().render_window()->AddObserver(vtkCommand::StartEvent, count_frame);
  const auto begun = std::chrono::steady_clock::now();
  // At rest after each file, averaged over each tenth of the run; the first tenth fills what is kept.
  std::array<double, 10> sum_mb{};
  std::array<int, 10> samples{};
  const auto seconds = [&] {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count();
  };
  const int each = edits / files;
  for (int i = 0; i < edits; ++i) {
    if (i % each == 0) {
      opened.settle();  // what was begun for the last file ends, as it would in a day
      to_open.open(i / each);
      const auto tenth = static_cast<std::size_t>(std::min(9, 10 * i / edits));
      sum_mb[tenth] += memory_mb();
      ++samples[tenth];
    }
    edit(opened, i % each);
    if ((i + 1) % (edits / 10) == 0) {
      std::printf("%6d edits, %6.0f s, %5.0f MB\n", i + 1, seconds(), memory_mb());
      std::fflush(stdout);
    }
  }
  opened.settle();
  const double early_mb = sum_mb[1] / samples[1], late_mb = sum_mb[9] / samples[9];
  std::printf("%d edits and %d files in %.0f s, %.1f frames an edit\n", edits, files, seconds(),
              static_cast<double>(frames) / edits);
  std::printf("memory at rest %.0f MB in the second tenth, %.0f MB in the last (%+.1f %%)\n", early_mb,
              late_mb, 100 * (late_mb / early_mb - 1));
  return late_mb > 1.05 * early_mb ? 1 : 0;
}
