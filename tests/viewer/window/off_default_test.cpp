// What nobody may be misled by, away from the demo case's settings: on the right side, with a larger coil,
// with the site across the head, on a scan, in inches, in German and in a small window.
#include <catch2/catch.hpp>

#include "models/coils/coil_library.h"
#include "tests/viewer/window/every_screen.h"
#include "tests/viewer/window/in_german.h"
#include "tests/viewer/window/opened_window.h"
#include "viewer/words/in_hand_words.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

struct Setting {
  const char* name;
  geometry::Side side = geometry::Side::left;
  const char* coil = "figure-8-70";
  const char* landmark = "";
  bool inches = false, german = false;
  QSize size{1280, 800};
};

const std::vector<Setting>& off_the_default() {
  using geometry::Side;
  static const std::vector<Setting> all{
      {"right", Side::right},
      {"figure-8-90", Side::right, "figure-8-90"},
      {"across the head", Side::left, "figure-8-70", "F4"},
      {"inches", Side::right, "figure-8-70", "", true},
      {"German", Side::left, "figure-8-70", "", false, true},
      {"small", Side::right, "angled-8-150", "", true, false, QSize(960, 620)}};
  return all;
}

models::CaseFile case_of(const Setting& s) {
  models::CaseFile file = demo_case();
  geometry::Case& c = file.the_case;
  c.side = s.side;
  c.coil.model = models::coil(s.coil);
  c.coil.centre_to_edge_mm = c.coil.model.centre_to_edge_mm;
  if (*s.landmark != '\0') {
    c.treatment.rule = geometry::TreatmentRule::landmark;
    c.treatment.label = s.landmark;
  }
  return file;
}

bool says_in_hand(MainWindow& w) {
  (void)w.stage().picture();
  const auto& captions = w.stage().stage().captions();
  return std::any_of(captions.begin(), captions.end(), [](const viewer::Caption& caption) {
    return caption.text == viewer::in_hand_headline();
  });
}

void move_coil_by_keys(MainWindow& w) {
  w.stage().setFocus();
  for (int i = 0; i < 4; ++i)
    QTest::keyClick(&w.stage(), Qt::Key_Down, Qt::ControlModifier | Qt::ShiftModifier);
}

/// The site is on the stage, its mark named or said to be out of sight.
bool names_site_and_mark(MainWindow& w) {
  (void)w.stage().picture();
  const viewer::Stage& stage = w.stage().stage();
  bool site = false, mark = false;
  for (const viewer::SeenMark& each : stage.marks()) {
    if (each.shape == viewer::Shape::diamond) site = true;
    if (each.thing == viewer::Thing::edge_marks) mark = true;
  }
  std::size_t said = 0;
  for (const auto& label : stage.labels())
    if (label.wish.priority == viewer::label_priority::site ||
        label.wish.priority == viewer::label_priority::edge_mark)
      ++said;
  return site && mark && said >= 2;
}

}  // namespace

TEST_CASE(
    "off the default as well: a coil in the hand, undo, marks to move, units and labels mislead nobody") {
  for (const Setting& s : off_the_default()) {
    INFO(s.name);
    const InGerman german(s.german);
    OpenedWindow opened(case_of(s));
    MainWindow& w = opened.window;
    w.resize(s.size);
    w.set_unit(s.inches ? LengthUnit::inch : LengthUnit::centimetre);
    const geometry::Placement site = w.session().plan().treatment;
    w.worksheet().go_to(Worksheet::site_index);
    QTest::qWait(50);
    CHECK(names_site_and_mark(w));
    CHECK_THAT(mistaken_texts(w), Catch::Equals(""));

    // In the hand it says so; what is saved is the site; one undo puts it back.
    move_coil_by_keys(w);
    REQUIRE(w.coil().in_hand());
    CHECK(says_in_hand(w));
    CHECK_THAT(mistaken_texts(w), Catch::Equals(""));
    w.worksheet().go_to(Worksheet::save_index);
    QTest::qWait(20);
    CHECK_FALSE(says_in_hand(w));
    CHECK_THAT(mistaken_texts(w), Catch::Equals(""));
    w.worksheet().go_to(Worksheet::site_index);
    for (int i = 0; i < 4 && w.coil().in_hand(); ++i)
      QTest::keyClick(&w.stage(), Qt::Key_Z, Qt::ControlModifier);
    CHECK_FALSE(w.coil().in_hand());
    CHECK(case_json(w.session().case_file()) == case_json(case_of(s)));

    // Marks that lie behind the plan are told by the move, and the move leads to marks that agree.
    w.worksheet().go_to(Worksheet::check_index);
    mark_today(w, 15);
    REQUIRE(w.visit().check());
    CHECK(w.worksheet().check()->verdict().kind == VerdictText::Kind::move);
    CHECK(w.visit().check()->pulse_off_mm == Approx(15).margin(5));
    const geometry::MarkMoves moves = w.visit().moves();
    const auto& skin = w.session().head().head.skin();
    w.visit().set(TodaysMark::site, skin.closest(moves.site.back()));
    w.visit().set(TodaysMark::edge, skin.closest(moves.edge.back()));
    REQUIRE(w.visit().check());
    CHECK((w.visit().check()->as_laid.pulse - site.pulse).norm() < 1);
    CHECK(w.worksheet().check()->verdict().kind == VerdictText::Kind::agrees);
    w.set_unit(LengthUnit::centimetre);
  }
}

TEST_CASE("an open hotspot is an if, and so is the site, on either side and in either unit") {
  for (const bool right : {false, true}) {
    models::CaseFile file = models::default_case();
    file.the_case.side = right ? geometry::Side::right : geometry::Side::left;
    file.the_case.coil.model = models::coil("figure-8-90");
    OpenedWindow opened(file);
    MainWindow& w = opened.window;
    w.resize(960, 620);
    w.set_unit(right ? LengthUnit::inch : LengthUnit::centimetre);
    w.worksheet().go_to(Worksheet::site_index);
    QTest::qWait(30);
    (void)w.stage().picture();
    std::string said;
    for (const auto& label : w.stage().stage().labels()) said += label.wish.text + "\n";
    for (const auto& caption : w.stage().stage().captions())
      if (!caption.is_legend) said += caption.text + "\n";
    INFO(said);
    // In full, or in short where the stage has no room.
    CHECK((said.find("if that one answers") != std::string::npos ||
           said.find("ite if the middle spot answers") != std::string::npos));
    CHECK_THAT(mistaken_texts(w), Catch::Equals(""));
    mark_today(w, 0);
    CHECK(w.visit().doubt().contains("No spot of the grid has answered yet"));
    w.set_unit(LengthUnit::centimetre);
  }
}
