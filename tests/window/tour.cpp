#include <QDir>
#include <QPainter>
#include <cstdio>

#include "bench.h"
#include "models/mesh_file.h"
#include "viewer/window/theme.h"

// Walks through every screen and saves each as a picture, so that people can look at all of them in one go.
// usage: window_tour [FOLDER [lesson]]; with "lesson" the lesson's screens alone.

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

class Tour {
public:
  Tour(const QString& folder, QSize size) : folder_(folder), size_(size) {
    QDir().mkpath(folder);
    opened_.window.resize(size);
    QTest::qWait(50);
  }

  void run() {
    MainWindow& w = opened_.window;
    Worksheet& sheet = w.worksheet();
    const auto step = [&](Worksheet::StepIndex index, const char* name) {
      sheet.go_to(index);
      snap(name);
    };
    step(Worksheet::measure_index, "01-measure");
    sheet.measure()->nasion_inion()->edit()->setFocus();
    opened_.type(sheet.measure()->nasion_inion()->edit(), "99");
    snap("02-measure-bad-entry");
    QTest::keyClick(sheet.measure()->nasion_inion()->edit(), Qt::Key_Escape);
    opened_.type(sheet.measure()->nasion_inion()->edit(), "28");
    opened_.settle();
    snap("03-measure-tapes-disagree");
    w.session().start(demo_case());
    opened_.settle();
    step(Worksheet::landmarks_index, "04-landmarks");
    opened_.type(sheet.landmarks()->find(), "f4");
    snap("05-landmark-found");
    sheet.landmarks()->systems()->button(2)->click();
    snap("06-landmarks-10-5");
    sheet.landmarks()->systems()->button(1)->click();
    step(Worksheet::search_index, "07-search");
    sheet.search()->nodes()->button(1, 1)->click();
    snap("08-search-node");
    w.stage().look(viewer::View::left);
    snap("09-search-left");
    step(Worksheet::treat_index, "10-treat");
    sheet.treat()->rule()->button(1)->click();
    snap("11-treat-landmark");
    w.session().undo();
    w.stage().look(viewer::View::front_left);
    snap("12-treat-front-left");
    step(Worksheet::check_index, "13-check-empty");
    const auto& skin = w.session().head().head.skin();
    const auto& treatment = w.session().plan().treatment;
    w.visit().set(TodaysMark::site, skin.closest(treatment.pulse + Eigen::Vector3d(2, 1, 0)));
    w.visit().set(TodaysMark::edge, skin.closest(*treatment.edge_mark.tape + Eigen::Vector3d(2, 1, 0)));
    snap("14-check-good");
    for (const auto& [which, at] : {std::pair(TodaysMark::site, treatment.pulse),
                                    std::pair(TodaysMark::edge, *treatment.edge_mark.tape)})
      w.visit().set(which, skin.closest(at - 15 * treatment.forward));
    snap("15-check-off");
    w.set_mode(Mode::check);
    snap("16-check-mode");
    w.set_mode(Mode::worksheet);
    step(Worksheet::keep_index, "17-keep");
    w.stage().look(viewer::View::above);
    snap("18-above");
    w.set_mode(Mode::explain);
    QTest::qWait(200);
    snap("19-explain");
    w.set_mode(Mode::worksheet);
    QTest::qWait(200);
    w.resize(size_);
    sheet.search()->side()->button(1)->click();
    step(Worksheet::search_index, "20-right-side");
    w.session().undo();
    const QString mesh = opened_.folder.filePath("scan.ply");
    models::write_ply(mesh.toStdString(), skin);
    w.open_path(mesh);
    opened_.settle();
    snap("21-place-nasion");
    const auto known = w.session().head().head.fiducials().at;
    w.session().place(Fiducial::nasion, known.nasion);
    w.worksheet().landmarks()->want(Fiducial::left_tragus);
    snap("22-place-left-tragus");
    w.session().drop_unplaced();
    apply_theme(*qApp, true);
    step(Worksheet::treat_index, "23-dark");
    apply_theme(*qApp, false);
    lesson();
  }

  void lesson() {
    opened_.window.set_mode(Mode::teach);
    lesson_steps("30-lesson");
    WhatIfControls& what_if = *opened_.teach.panel().what_if();
    const auto spoil = [&](WhatIfControls::Kind kind, const char* name) {
      what_if.button(kind)->click();
      snap(name);
    };
    spoil(WhatIfControls::vertex, "41-what-if-vertex");
    spoil(WhatIfControls::tape, "42-what-if-tape");
    spoil(WhatIfControls::turned, "43-what-if-turned");
    opened_.type(what_if.turned_by()->edit(), "900");
    snap("44-what-if-bad-entry");
    QTest::keyClick(what_if.turned_by()->edit(), Qt::Key_Escape);
    spoil(WhatIfControls::rule, "45-what-if-rule");
    opened_.window.session().change(
        "Side", [](models::CaseFile& kept) { kept.entered.side = geometry::Side::right; });
    snap("46-what-if-right-side");
    what_if.button(WhatIfControls::vertex)->click();
    what_if.vertex_way()->button(3)->click();
    snap("47-what-if-vertex-right-side");
    opened_.teach.player().go_to(0);
    lesson_steps("50-lesson-right");
    opened_.window.session().undo();
    opened_.window.set_mode(Mode::worksheet);
  }

private:
  void lesson_steps(const char* name) {
    LessonPlayer& player = opened_.teach.player();
    for (int i = 0; i < player.count(); ++i) {
      player.go_to(i);
      snap(QStringLiteral("%1-%2").arg(name).arg(i + 1).toLatin1());
    }
  }

  void snap(const char* name) {
    QTest::qWait(30);
    QWidget& w = opened_.window;
    QImage shot = w.grab().toImage();
    // grab() leaves out what OpenGL drew.
    if (opened_.window.stage().isVisible()) {
      QPainter painter(&shot);
      painter.drawImage(opened_.window.stage().mapTo(&w, QPoint(0, 0)), opened_.window.stage().picture());
    }
    const QString file = QStringLiteral("%1/%2-%3.png").arg(folder_).arg(size_.height()).arg(name);
    shot.save(file);
    std::printf("%s\n", qPrintable(file));
  }

  OpenedWindow opened_;
  QString folder_;
  QSize size_;
};

}  // namespace

int main(int argc, char** argv) {
  const QString folder = argc > 1 ? QString::fromLocal8Bit(argv[1]) : QStringLiteral("build/tour");
  const Bench bench(argc, argv);
  for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
    Tour tour(folder, size);
    if (argc > 2 && QString::fromLocal8Bit(argv[2]) == QLatin1String("lesson"))
      tour.lesson();
    else
      tour.run();
  }
}
