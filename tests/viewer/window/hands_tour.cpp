#include "tests/viewer/window/hands_tour.h"

#include <QScrollBar>
#include <cstdio>

#include "models/coils/coil_library.h"
#include "models/generic/generic_head.h"
#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/opened_window.h"

namespace scalpmark::window {

namespace {

struct HandsSetting {
  const char* name;
  QSize size;
  geometry::Side side;
  LengthUnit unit;
  models::HeadKind head;
  const char* coil;
  double edge_mm;
  geometry::MarkRule drawn_by, laid_by;
};

models::CaseFile hands_case(const HandsSetting& s, const QString& folder) {
  models::CaseFile c = models::read_case(s.head == models::HeadKind::mri
                                             ? SCALPMARK_SOURCE_DIR "/models/demo/template-mri.json"
                                             : SCALPMARK_SOURCE_DIR "/models/demo/bench-head.json");
  if (s.head == models::HeadKind::mesh) {
    const geometry::Head& head = models::generic_head();
    const QString file = folder + QStringLiteral("/scan.ply");
    models::write_ply(file.toStdString(), head.skin());
    c.the_case.tape_mm = {};
    c.head = {models::HeadKind::mesh, file.toStdString(), models::Unit::millimetre, head.fiducials().at};
  }
  c.the_case.side = s.side;
  c.the_case.coil.model = models::coil(s.coil);
  c.the_case.coil.centre_to_edge_mm = s.edge_mm;
  c.the_case.treatment.drawn_by = s.drawn_by;
  c.the_case.coil.laid_by = s.laid_by;
  return c;
}

class HandsTour {
public:
  HandsTour(const HandsSetting& setting, const QString& folder) : setting_(setting), folder_(folder) {
    opened_.window.resize(setting.size);
    opened_.window.set_unit(setting.unit);
    Session& session = opened_.window.session();
    session.start(hands_case(setting, folder));
    OpenedWindow::wait_until(
        [&] { return session.case_file().head.kind == setting.head && session.is_ready(); });
    opened_.settle();
    QTest::qWait(100);
  }

  void run() {
    MainWindow& w = opened_.window;
    Worksheet& sheet = w.worksheet();
    const bool left = setting_.side == geometry::Side::left;
    sheet.go_to(Worksheet::measure_index);
    snap("0-measure");
    sheet.go_to(Worksheet::search_index);
    snap("1-search");
    sheet.go_to(Worksheet::site_index);
    snap("2-treat");
    w.stage().look(left ? viewer::View::left : viewer::View::right);
    snap("2-treat-from-the-side");
    places();
    by_hand();
    look_aside();
  }

private:
  /// Two tapes that meet on both sides of the head, then a third.
  void places() {
    MainWindow& w = opened_.window;
    CheckStep* check = w.worksheet().check();
    w.worksheet().go_to(Worksheet::check_index);
    const auto& treatment = w.session().plan().treatment;
    opened_.settle();
    if (!treatment.pulse_tape) return;
    check->tape_button(TodaysMark::site)->click();
    const auto typed = [&](std::size_t index, double mm) {
      const double per = setting_.unit == LengthUnit::inch ? 25.4 : 10;
      opened_.type(check->tape(TodaysMark::site, index)->edit(), QString::number(mm / per, 'f', 1));
    };
    typed(0, treatment.pulse_tape->vertex_mm);
    typed(1, treatment.pulse_tape->nasion_mm);
    opened_.settle();
    snap("3-places");
    const bool left = setting_.side == geometry::Side::left;
    typed(left ? 2 : 3, left ? treatment.pulse_tape->left_tragus_mm : treatment.pulse_tape->right_tragus_mm);
    w.visit().set(TodaysMark::edge,
                  w.session().head().head.skin().closest(*treatment.mark - 15 * treatment.forward));
    opened_.settle();
    w.worksheet().verticalScrollBar()->setValue(w.worksheet().verticalScrollBar()->maximum() / 2);
    snap("4-check");
    w.set_mode(Mode::check);
    snap("5-check-mode");
    w.set_mode(Mode::worksheet);
    w.visit().forget();
  }

  void by_hand() {
    MainWindow& w = opened_.window;
    w.worksheet().go_to(Worksheet::check_index);
    TolerancePanel& panel = *w.worksheet().check()->tolerance();
    panel.fold()->click();
    OpenedWindow::wait_until([&] { return w.by_hand().found() && !w.by_hand().found()->ways.empty(); });
    QTest::qWait(300);
    w.stage().look(viewer::View::square_on);
    for (int i = 0; i < 4; ++i) {
      if (!panel.way_button(i)->isVisible()) continue;
      panel.way_button(i)->click();
      w.worksheet().ensureWidgetVisible(panel.way_button(3));
      snap(("6-way-" + std::to_string(i)).c_str());
    }
    w.worksheet().ensureWidgetVisible(panel.error(9));
    snap("7-errors");
    panel.fold()->click();
  }

  void look_aside() {
    MainWindow& w = opened_.window;
    w.set_mode(Mode::teach);
    WhatIfControls& what_if = *opened_.teach.panel().what_if();
    if (what_if.button(WhatIfControls::aside)->isEnabled()) what_if.button(WhatIfControls::aside)->click();
    snap("8-look-aside");
    w.set_mode(Mode::worksheet);
  }

  void snap(const char* name) {
    QTest::qWait(600);  // until the panel has its new layout
    const QImage shot = opened_.shot();
    const QString file = QStringLiteral("%1/hands-%2-%3.png").arg(folder_, setting_.name, name);
    shot.save(file);
    std::printf("%s\n", qPrintable(file));
    std::fflush(stdout);
  }

  HandsSetting setting_;
  QString folder_;
  OpenedWindow opened_;
};

}  // namespace

void tour_of_hands(const QString& folder) {
  using geometry::MarkRule;
  using geometry::Side;
  const QSize small(960, 620), usual(1280, 800), large(1920, 1080);
  for (const HandsSetting& s :
       {HandsSetting{"small", small, Side::left, LengthUnit::centimetre, models::HeadKind::generic,
                     "figure-8-70", 60, MarkRule::drop, MarkRule::drop},
        HandsSetting{"far", large, Side::right, LengthUnit::inch, models::HeadKind::generic, "figure-8-90",
                     72, MarkRule::drop, MarkRule::nearest},
        HandsSetting{"mri", usual, Side::right, LengthUnit::inch, models::HeadKind::mri, "figure-8-70", 60,
                     MarkRule::tape, MarkRule::drop},
        HandsSetting{"scan", small, Side::right, LengthUnit::inch, models::HeadKind::mesh, "round-100", 58,
                     MarkRule::drop, MarkRule::drop}})
    HandsTour(s, folder).run();
}

}  // namespace scalpmark::window
