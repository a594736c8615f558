// A day's use in some minutes, in the real window: edits by fields, keys and undo, with files opened in
// between, each drawn. Memory must stay flat: exit code 1 where it grew by more than 5 % after the first
// tenth. Run by hand: build/bench_long_use [EDITS] [FILES]; without numbers 20000 and 200.
#include <sys/resource.h>
#include <unistd.h>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fstream>

#include "models/mesh_file.h"
#include "tests/window/bench.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

double memory_mb() {
  long pages = 0, resident = 0;
  std::ifstream("/proc/self/statm") >> pages >> resident;
  return static_cast<double>(resident) * static_cast<double>(sysconf(_SC_PAGESIZE)) / 1048576;
}

/// A head measured a little differently each time, and a scan now and then.
class Files {
public:
  explicit Files(OpenedWindow& opened) : opened_(opened) {
    const auto& skin = opened.window.session().head().head.skin();
    models::write_ply(path("scan.ply").toStdString(), skin);
  }

  void open(int which) {
    Session& session = opened_.window.session();
    if (which % 10 == 9) {
      opened_.window.open_path(path("scan.ply"));
      opened_.settle();
      session.drop_unplaced();
      return;
    }
    models::CaseFile kept = demo_case();
    kept.entered.tape_mm.nasion_inion_mm = 345 + which % 7 * 5;
    kept.entered.label = "Head " + std::to_string(which % 10);
    const QString file = path(QString("head-%1.json").arg(which % 10));
    models::write_case(file.toStdString(), kept);
    opened_.window.open_path(file);
    opened_.settle();
  }

private:
  [[nodiscard]] QString path(const QString& name) const { return opened_.folder.filePath(name); }
  OpenedWindow& opened_;
};

/// One edit of a sort that comes round again; every one is drawn.
void edit(OpenedWindow& opened, int i) {
  MainWindow& w = opened.window;
  const auto change = [&](auto&& what) { (void)w.session().change("Edit", what); };
  switch (i % 12) {
    case 0:
      w.worksheet().go_to(Worksheet::treat_index);
      opened.type(w.worksheet().treat()->distance()->edit(), i % 24 == 0 ? "5.5" : "5");
      break;
    case 1:
      change([&](models::CaseFile& kept) {
        kept.entered.side = i % 24 == 1 ? geometry::Side::right : geometry::Side::left;
      });
      break;
    case 2:
      change([&](models::CaseFile& kept) { kept.entered.coil.angle_deg = 40 + i % 11; });
      break;
    case 3:
      change([&](models::CaseFile& kept) { kept.entered.search.lateral_mm = 45 + i % 13; });
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
      change([&](models::CaseFile& kept) {
        kept.entered.coil.mark_rule = i % 24 == 9 ? geometry::MarkRule::drop : geometry::MarkRule::tape;
      });
      break;
    case 10:
      w.worksheet().go_to(static_cast<Worksheet::StepIndex>(i / 12 % 5));
      break;
    default:
      change([&](models::CaseFile& kept) { kept.entered.label = "Case " + std::to_string(i % 17); });
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
  const Bench bench(1, argv);
  OpenedWindow opened;
  Files to_open(opened);
  const auto begun = std::chrono::steady_clock::now();
  double early_mb = 0, late_mb = 0;
  for (int i = 0; i < edits; ++i) {
    if (i % (edits / files) == 0) to_open.open(i / (edits / files));
    edit(opened, i);
    if (i == edits / 10) early_mb = memory_mb();
    if (i % (edits / 10) == 0)
      std::printf("%6d edits, %6.0f s, %5.0f MB\n", i,
                  std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count(),
                  memory_mb());
    std::fflush(stdout);
  }
  opened.settle();
  late_mb = memory_mb();
  std::printf(
      "%d edits and %d files in %.0f s; memory %.0f MB after a tenth, %.0f MB at the end (%+.1f %%)\n", edits,
      files, std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count(), early_mb,
      late_mb, 100 * (late_mb / early_mb - 1));
  return late_mb > 1.05 * early_mb ? 1 : 0;
}
