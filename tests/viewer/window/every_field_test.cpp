// A solve that lands never touches a field that is being typed into: every two fields that are neighbours in
// a step, with pauses between them, on both sides, in both units, with other coils and sites and on a scan.
#include <catch2/catch.hpp>

#include "models/coils/coil_library.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

/// The entries of a step that are in sight, in the order in which Tab goes through them.
std::vector<QLineEdit*> entries_of(MainWindow& w, Worksheet::StepIndex index) {
  Step* step = w.worksheet().step(index);
  std::vector<QLineEdit*> all;
  QWidget* begin = step->heading();
  for (QWidget* each = begin->nextInFocusChain(); each != begin; each = each->nextInFocusChain())
    if (auto* edit = qobject_cast<QLineEdit*>(each))
      if (step->isAncestorOf(edit) && edit->isVisible() && edit->isEnabled() && !edit->isReadOnly())
        all.push_back(edit);
  return all;
}

/// A little more than is there, or what a tape may well read.
QString other_number(const QLineEdit& edit) {
  QString text = edit.text();
  if (text.isEmpty()) return QStringLiteral("11.0");
  bool is_number = false;
  const double now = text.replace(',', '.').toDouble(&is_number);
  if (!is_number) return edit.text();
  const int decimals = text.contains('.') ? static_cast<int>(text.size() - text.indexOf('.') - 1) : 0;
  const double by = decimals == 0 ? 1 : std::pow(10.0, -decimals);
  return QString::number(now > 30 && decimals == 0 ? now - by : now + by, 'f', decimals);
}

/// Opens what a step has folded away.
void unfold(OpenedWindow& opened) {
  CheckStep* check = opened.window.worksheet().check();
  for (const TodaysMark which : {TodaysMark::site, TodaysMark::edge})
    if (!check->tape_button(which)->isChecked()) check->tape_button(which)->click();
  if (!check->cap()->by_brim()->isChecked()) check->cap()->by_brim()->click();
  if (!check->tolerance()->fold()->isChecked()) check->tolerance()->fold()->click();
}

struct Visited {
  int pairs = 0, kept_waiting = 0;
};

/// Types into one, goes on to the next by Tab, waits, and types there.
void type_on(OpenedWindow& opened, QLineEdit* first, QLineEdit* next, int pause_ms) {
  INFO(first->accessibleName().toStdString()
       << " then " << next->accessibleName().toStdString() << " and a pause of " << pause_ms << " ms");
  first->setFocus();
  first->selectAll();
  QTest::keyClicks(first, other_number(*first));
  for (int i = 0; i < 120 && QApplication::focusWidget() != next; ++i)
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  REQUIRE(QApplication::focusWidget() == next);
  const QString before = next->text();
  QTest::qWait(pause_ms);
  if (pause_ms >= 2000) opened.settle();
  CHECK(next->text() == before);
  QTest::keyClicks(next, "7");
  CHECK(next->text() == "7");
  QTest::qWait(1);
  CHECK(next->text() == "7");
  QTest::keyClick(next, Qt::Key_Escape);
}

Visited every_pair(OpenedWindow& opened, const std::vector<int>& pauses_ms, int longest_ms) {
  MainWindow& w = opened.window;
  Visited visited;
  std::size_t turn = 0;
  for (int step = Worksheet::measure_index; step <= Worksheet::save_index; ++step) {
    const auto index = static_cast<Worksheet::StepIndex>(step);
    w.worksheet().go_to(index);
    if (index == Worksheet::check_index) unfold(opened);
    QTest::qWait(20);
    const std::vector<QLineEdit*> entries = entries_of(w, index);
    for (std::size_t i = 1; i < entries.size(); ++i) {
      type_on(opened, entries[i - 1], entries[i], pauses_ms[turn++ % pauses_ms.size()]);
      ++visited.pairs;
    }
    // And once in each step until all that was begun is over.
    if (entries.size() > 1 && longest_ms > 0) {
      type_on(opened, entries[entries.size() - 2], entries.back(), longest_ms);
      ++visited.kept_waiting;
    }
  }
  return visited;
}

}  // namespace

TEST_CASE("every field that Tab leads to is typed over, whenever the plan of the entry before it arrives") {
  OpenedWindow opened;
  // At once, as tapes begin to be worked out, as they come, and long after.
  const Visited visited = every_pair(opened, {0, 120, 0, 600}, 3000);
  CHECK(visited.pairs >= 30);
  CHECK(visited.kept_waiting >= 4);
}

TEST_CASE("so it is on the other side, in inches, with another coil, a landmark, and in a small window") {
  models::CaseFile case_file = demo_case();
  geometry::Case& c = case_file.the_case;
  c.side = geometry::Side::right;
  c.coil.model = models::coil("figure-8-90");
  c.coil.centre_to_edge_mm = c.coil.model.centre_to_edge_mm;
  c.treatment.rule = geometry::TreatmentRule::landmark;
  c.treatment.label = "F3";
  OpenedWindow opened(case_file);
  opened.window.resize(960, 620);
  opened.window.set_unit(LengthUnit::inch);
  CHECK(every_pair(opened, {120, 0}, 0).pairs >= 30);
  opened.window.set_unit(LengthUnit::centimetre);
}

TEST_CASE("tapes that fit no place leave no mark of tapes before them standing") {
  for (const bool inches : {false, true}) {
    OpenedWindow opened;
    MainWindow& w = opened.window;
    w.set_unit(inches ? LengthUnit::inch : LengthUnit::centimetre);
    w.worksheet().go_to(Worksheet::check_index);
    CheckStep* check = w.worksheet().check();
    w.session().want_fields();
    opened.settle();
    const geometry::TapeFrom site = *w.session().plan().treatment.pulse_tape;
    mark_today(w, 0);
    REQUIRE(w.visit().check());
    check->tape_button(TodaysMark::site)->click();
    const auto typed = [&](std::size_t index, double mm) {
      const LengthUnit unit = inches ? LengthUnit::inch : LengthUnit::centimetre;
      opened.type(check->tape(TodaysMark::site, index)->edit(), length_text(mm, unit));
      opened.settle();
    };
    typed(0, site.vertex_mm);
    typed(1, site.nasion_mm);
    typed(2, site.left_tragus_mm);
    REQUIRE(w.visit().mark(TodaysMark::site));
    REQUIRE(w.visit().check());
    // 3 cm from both the vertex and the nasion, which lie some 18 cm apart: nowhere.
    typed(0, 30);
    typed(1, 30);
    CHECK_FALSE(w.visit().mark(TodaysMark::site));
    CHECK_FALSE(w.visit().check());
    INFO(check->tape(TodaysMark::site, 1)->problem().toStdString());
    CHECK(check->tape(TodaysMark::site, 1)->problem().contains("do not meet"));
    CHECK(check->tape(TodaysMark::site, 1)->problem().contains(inches ? " in)" : " mm)"));
    CHECK(check->verdict().kind != VerdictText::Kind::agrees);
    (void)w.stage().picture();
    for (const viewer::SeenMark& mark : w.stage().stage().marks())
      CHECK(mark.shape != viewer::Shape::pencil_cross);
    // Right again, it is found again.
    typed(0, site.vertex_mm);
    typed(1, site.nasion_mm);
    CHECK(w.visit().mark(TodaysMark::site));
    CHECK(w.visit().check());
    w.set_unit(LengthUnit::centimetre);
  }
}

TEST_CASE("a mark found by tapes goes with the tapes that are taken out again") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::check_index);
  w.session().want_fields();
  opened.settle();
  const geometry::TapeFrom site = *w.session().plan().treatment.pulse_tape;
  w.visit().set(TodaysMark::site,
                geometry::TapeReadings{site.vertex_mm, site.nasion_mm, site.left_tragus_mm, {}});
  REQUIRE(w.visit().mark(TodaysMark::site));
  w.visit().set(TodaysMark::site, geometry::TapeReadings{site.vertex_mm, {}, {}, {}});
  CHECK_FALSE(w.visit().mark(TodaysMark::site));
  // A mark that was clicked stays while the first of two tapes is typed.
  mark_today(w, 0);
  w.visit().set(TodaysMark::site, geometry::TapeReadings{site.vertex_mm, {}, {}, {}});
  CHECK(w.visit().mark(TodaysMark::site));
}
