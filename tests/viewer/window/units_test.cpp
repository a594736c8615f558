#include <QRegularExpression>
#include <catch2/catch.hpp>

#include "tests/viewer/window/opened_window.h"
#include "viewer/sheet/content.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

// A number followed by a metric unit, or the unit alone in a table's heading.
bool is_metric(const QString& text) {
  static const QRegularExpression metric(QStringLiteral("(\\d ?(cm|mm)\\b)|(^|[ ,:])(cm|mm)( |$)"));
  return metric.match(text).hasMatch();
}

std::vector<QString> on_stage(MainWindow& w) {
  (void)w.stage().picture();
  std::vector<QString> texts;
  for (const auto& label : w.stage().stage().labels())
    texts.push_back(QString::fromStdString(label.wish.text));
  for (const auto& caption : w.stage().stage().captions())
    texts.push_back(QString::fromStdString(caption.text));
  texts.push_back(w.status_text());
  return texts;
}

}  // namespace

TEST_CASE("inches chosen, everything is in inches: panel, stage, lesson, verdict, sheet") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.set_unit(LengthUnit::inch);
  w.worksheet().go_to(Worksheet::check_index);
  mark_today(w, 20);
  OpenedWindow::wait_until([&] { return w.by_hand().found() && !w.by_hand().is_working(); });
  const auto check_stage = [&](const std::string& where) {
    for (const QString& text : on_stage(w)) {
      INFO(where << ": " << text.toStdString());
      CHECK_FALSE(is_metric(text));
    }
  };
  for (int step = 0; step <= Worksheet::save_index; ++step) {
    w.worksheet().go_to(static_cast<Worksheet::StepIndex>(step));
    QTest::qWait(20);
    check_stage("step " + std::to_string(step + 1));
    for (const QLabel* label :
         w.worksheet().step(static_cast<Worksheet::StepIndex>(step))->findChildren<QLabel*>()) {
      // The coil's own name, and errors that are entered in millimetres, stay what they are.
      if (!label->isVisible() || label->text() == "mm" || label->text().contains("coil,")) continue;
      INFO("panel of step " << step + 1 << ": " << label->text().toStdString());
      CHECK_FALSE(is_metric(label->text()));
    }
  }
  CHECK_FALSE(is_metric(w.worksheet().check()->verdict().reason));
  CHECK_FALSE(is_metric(w.worksheet().check()->verdict().by_hand));
  CHECK(w.worksheet().check()->verdict().pulse.contains(" in "));
  w.set_mode(Mode::teach);
  for (int i = 0; i < w.teach().player().count(); ++i) {
    w.teach().player().go_to(i);
    check_stage("lesson " + std::to_string(i + 1));
    INFO(w.teach().bar().caption().toStdString());
    CHECK_FALSE(is_metric(w.teach().bar().caption()));
  }
  const viewer::SheetContent sheet = viewer::sheet_content(
      w.session().case_file(), w.session().head(), w.session().plan(), "today",
      viewer::off_by_hand(w.session().head().head, w.session().case_file().the_case, w.session().plan()));
  for (const viewer::SheetTable* table : {&sheet.measures, &sheet.search, &sheet.treatment, &sheet.tapes,
                                          &sheet.to_draw, &sheet.rules, &sheet.alternatives}) {
    for (const auto& column : table->columns) CHECK_FALSE(is_metric(QString::fromStdString(column.heading)));
    for (const auto& row : table->rows)
      for (const auto& cell : row) {
        INFO(cell);
        CHECK_FALSE(is_metric(QString::fromStdString(cell)));
      }
  }
  // 36.2 cm are 14.25 inches of 25.4 mm.
  CHECK(sheet.measures.rows.front()[1] == "14.25");
  w.set_mode(Mode::worksheet);
  w.worksheet().go_to(Worksheet::site_index);
  w.set_unit(LengthUnit::centimetre);
  CHECK(w.status_text().contains(" mm from the site"));
}
