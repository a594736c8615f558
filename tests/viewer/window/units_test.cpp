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
  w.worksheet().check()->tolerance()->fold()->click();
  w.set_field(true);
  w.set_gaps(true);
  for (int step = 0; step <= Worksheet::save_index; ++step) {
    w.worksheet().go_to(static_cast<Worksheet::StepIndex>(step));
    QTest::qWait(20);
    check_stage("step " + std::to_string(step + 1));
    for (const QLabel* label :
         w.worksheet().step(static_cast<Worksheet::StepIndex>(step))->findChildren<QLabel*>()) {
      // The coil's own name stays what it is.
      if (!label->isVisible() || label->text().contains("coil,")) continue;
      INFO("panel of step " << step + 1 << ": " << label->text().toStdString());
      CHECK_FALSE(is_metric(label->text()));
    }
  }
  w.set_field(false);
  w.set_gaps(false);
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
  WhatIfControls* what_if = w.teach().panel().what_if();
  for (int kind = WhatIfControls::nothing + 1; what_if->button(static_cast<WhatIfControls::Kind>(kind));
       ++kind) {
    what_if->button(static_cast<WhatIfControls::Kind>(kind))->click();
    check_stage("what-if " + std::to_string(kind));
    INFO(w.teach().bar().caption().toStdString());
    CHECK_FALSE(is_metric(w.teach().bar().caption()));
  }
  what_if->clear();
  const viewer::SheetContent sheet = viewer::sheet_content(
      w.session().case_file(), w.session().head(), w.session().plan(), "today",
      viewer::off_by_hand(w.session().head().head, w.session().case_file().the_case, w.session().plan()));
  for (const viewer::SheetTable* table : {&sheet.measures, &sheet.search, &sheet.treatment, &sheet.tapes,
                                          &sheet.to_draw, &sheet.rules, &sheet.alternatives, &sheet.field}) {
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

// One inch is 25.4 mm (international yard and pound agreement, 1959).
TEST_CASE("what is refused and warned of, and errors of the hand, are in the unit that was chosen") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.set_unit(LengthUnit::inch);
  TolerancePanel& panel = *w.worksheet().check()->tolerance();
  w.worksheet().go_to(Worksheet::check_index);
  panel.fold()->click();
  // The case is another after each edit.
  const auto errors = [&w] { return w.session().case_file().the_case.errors; };
  QLineEdit* mark = panel.error(2)->edit();
  CHECK(mark->text() == length_text(errors().mark_mm, LengthUnit::inch));
  opened.type(mark, "0.1");
  CHECK(errors().mark_mm == Approx(2.54));
  opened.type(mark, "2 mm");
  CHECK(errors().mark_mm == Approx(2));
  opened.type(mark, "99");
  CHECK(panel.error(2)->problem().contains(" in."));
  QTest::keyClick(mark, Qt::Key_Escape);
  w.set_unit(LengthUnit::centimetre);
  CHECK(mark->text() == "2.0");
  opened.type(mark, "1,5");
  CHECK(errors().mark_mm == Approx(1.5));
  w.set_unit(LengthUnit::inch);
  // Two tapes that make no head.
  w.worksheet().go_to(Worksheet::measure_index);
  opened.type(w.worksheet().measure()->nasion_inion()->edit(), "11.1");
  opened.settle();
  bool said = false;
  for (const QLabel* label : w.findChildren<QLabel*>()) {
    if (!label->isVisible() || label->text().contains("coil,")) continue;
    INFO(label->text().toStdString());
    CHECK_FALSE(is_metric(label->text()));
    said = said || label->text().contains(" in");
  }
  CHECK(said);
  w.set_unit(LengthUnit::centimetre);
}
