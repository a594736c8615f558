#include "geometry/hands/check.h"

#include <catch2/catch.hpp>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

void click_at(MainWindow& w, const Eigen::Vector3d& at) {
  QTest::mouseClick(&w.stage(), Qt::LeftButton, Qt::NoModifier, w.stage().position_of(at).toPoint());
}

}  // namespace

TEST_CASE("today's marks clicked where the plan has them pass, the site clicked 2 cm back does not") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::check_index);
  QTest::qWait(50);
  const geometry::Placement treatment = w.session().plan().treatment;
  QTest::mouseClick(w.worksheet().check()->click_button(TodaysMark::site), Qt::LeftButton);
  CHECK(w.stage().is_pointing());
  click_at(w, treatment.pulse);
  REQUIRE(w.visit().mark(TodaysMark::site));
  // The edge mark is asked for next.
  CHECK(w.worksheet().check()->wanted() == TodaysMark::edge);
  click_at(w, *treatment.mark);
  REQUIRE(w.visit().check());
  CHECK_FALSE(w.stage().is_pointing());
  CHECK(w.visit().check()->verdict == geometry::Verdict::good);

  // Both marks 2 cm further back than planned: the pulse goes about 2 cm too far back.
  const auto& skin = w.session().head().head.skin();
  const Eigen::Vector3d back = -20 * treatment.forward;
  w.visit().set(TodaysMark::site, skin.closest(treatment.pulse + back));
  w.visit().set(TodaysMark::edge, skin.closest(*treatment.mark + back));
  REQUIRE(w.visit().check());
  CHECK(w.visit().check()->verdict != geometry::Verdict::good);
  CHECK(w.visit().check()->pulse_off_mm == Approx(20).margin(6));
  // What to do is said before how far off it is, and what marks that agree do not promise beside it.
  const VerdictText told = w.worksheet().check()->verdict();
  CHECK(told.headline.contains("Move"));
  CHECK(told.reason.startsWith("Move"));
  CHECK(told.reason.contains("cm forward"));
  OpenedWindow::wait_until([&] { return w.by_hand().found() && !w.by_hand().is_working(); });
  QTest::qWait(1);
  CHECK(w.worksheet().check()->verdict().by_hand.startsWith("By hand, expect about"));
  // The limits are the user's.
  opened.type(w.worksheet().check()->pulse_limit()->edit(), "4");
  opened.type(w.worksheet().check()->angle_limit()->edit(), "45");
  CHECK(w.visit().check()->verdict == geometry::Verdict::good);
}

TEST_CASE("today's marks are found by the tape distances the plan gives") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::check_index);
  const geometry::Placement treatment = w.session().plan().treatment;
  const auto enter = [&](TodaysMark which, const geometry::TapeFrom& from) {
    QTest::mouseClick(w.worksheet().check()->tape_button(which), Qt::LeftButton);
    const double lengths[]{from.vertex_mm, from.nasion_mm, from.left_tragus_mm};
    for (std::size_t i = 0; i < 3; ++i)
      opened.type(w.worksheet().check()->tape(which, i)->edit(),
                  length_text(lengths[i], LengthUnit::centimetre));
  };
  enter(TodaysMark::site, *treatment.pulse_tape);
  enter(TodaysMark::edge, *treatment.edge_mark_tape);
  opened.settle();
  REQUIRE(w.visit().check());
  // Tapes are typed to a millimetre.
  CHECK(w.visit().check()->pulse_off_mm < 3);
  CHECK(w.visit().check()->verdict == geometry::Verdict::good);
}

TEST_CASE(
    "where tapes fit two places the window asks, and takes the one nearer to the plan only when told to") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::check_index);
  const geometry::Placement treatment = w.session().plan().treatment;
  const geometry::TapeFrom site = *treatment.pulse_tape, edge = *treatment.edge_mark_tape;
  w.visit().set(TodaysMark::edge,
                geometry::TapeReadings{{}, edge.nasion_mm, edge.left_tragus_mm, edge.right_tragus_mm});
  w.visit().set(TodaysMark::site,
                geometry::TapeReadings{site.vertex_mm, {}, site.left_tragus_mm, site.right_tragus_mm});
  opened.settle();
  CHECK(w.visit().asked() == TodaysMark::site);
  CHECK_FALSE(w.visit().mark(TodaysMark::site));
  CHECK_FALSE(w.visit().check());
  CHECK(w.visit().doubt().startsWith("These tapes fit 2 places"));
  const auto tags = [&] {
    int seen = 0;
    for (const viewer::Mark& mark : w.stage().stage().marks()) seen += mark.shape == viewer::Shape::tag;
    return seen;
  };
  CHECK(tags() == 2);
  PlaceChoice* places = w.worksheet().check()->places(TodaysMark::site);
  REQUIRE(places->count() == 2);

  QTest::mouseClick(places->nearest(), Qt::LeftButton);
  REQUIRE(w.visit().check());
  CHECK(w.visit().check()->verdict == geometry::Verdict::good);
  CHECK(places->sentence().contains("nearest to the plan was taken"));
  CHECK(tags() == 0);

  // The other one, by its button; then by one more tape there is nothing left to choose.
  const std::size_t other = 1 - *w.visit().found(TodaysMark::site).taken;
  QTest::mouseClick(places->place(other), Qt::LeftButton);
  const bool good = w.visit().check() && w.visit().check()->verdict == geometry::Verdict::good;
  CHECK_FALSE(good);
  w.visit().set(TodaysMark::site, geometry::TapeReadings{site.vertex_mm, site.nasion_mm, site.left_tragus_mm,
                                                         site.right_tragus_mm});
  CHECK(places->count() == 0);
  REQUIRE(w.visit().check());
  CHECK(w.visit().doubt().isEmpty());

  // By keyboard.
  w.visit().set(TodaysMark::site,
                geometry::TapeReadings{site.vertex_mm, {}, site.left_tragus_mm, site.right_tragus_mm});
  REQUIRE(w.visit().asked());
  QTest::keyClick(&w, Qt::Key_B, Qt::ControlModifier | Qt::AltModifier);
  CHECK(w.visit().found(TodaysMark::site).taken == 1U);
}

TEST_CASE("the move that a check asks for leads to marks that agree, on either side") {
  for (const geometry::Side side : {geometry::Side::left, geometry::Side::right}) {
    models::CaseFile case_file = demo_case();
    case_file.the_case.side = side;
    OpenedWindow opened(case_file);
    MainWindow& w = opened.window;
    w.worksheet().go_to(Worksheet::check_index);
    const auto& skin = w.session().head().head.skin();
    const geometry::Placement planned = w.session().plan().treatment;
    const Eigen::Vector3d off = -12 * planned.forward + 8 * planned.inward;
    w.visit().set(TodaysMark::site, skin.closest(planned.wanted + off));
    w.visit().set(TodaysMark::edge, skin.closest(*planned.mark + off));
    REQUIRE(w.visit().check());
    const geometry::Check check = *w.visit().check();
    const QString told = w.worksheet().check()->verdict().reason;
    CHECK(told.contains("cm forward"));
    CHECK(told.contains("cm away from the midline"));
    // The way back that is said, gone from where the pulse is, ends at the planned pulse but for the curve of
    // the head.
    const Eigen::Vector3d back = -check.forward_mm * planned.forward + check.outward_mm * planned.inward;
    CHECK((check.as_laid.pulse + back - planned.pulse).norm() < 3);
    // Ticked lines are on the stage, from the old marks to the new.
    const geometry::MarkMoves moves = w.visit().moves();
    REQUIRE_FALSE(moves.site.empty());
    REQUIRE_FALSE(moves.edge.empty());
    CHECK((moves.edge.front() - skin.position(*w.visit().mark(TodaysMark::edge))).norm() < 0.01);
    w.visit().set(TodaysMark::site, skin.closest(moves.site.back()));
    w.visit().set(TodaysMark::edge, skin.closest(moves.edge.back()));
    REQUIRE(w.visit().check());
    CHECK(w.visit().check()->pulse_off_mm < 0.5);
    CHECK(w.worksheet().check()->verdict().kind == VerdictText::Kind::agrees);
    CHECK(w.worksheet().check()->verdict().reason.startsWith("The marks agree with the plan"));
  }
}

TEST_CASE("another head starts without marks") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.visit().set(TodaysMark::site, w.session().head().head.vertex());
  opened.type(w.worksheet().measure()->nasion_inion()->edit(), "37");
  opened.settle();
  CHECK_FALSE(w.visit().mark(TodaysMark::site));
}

TEST_CASE("the coil as laid gets its tape distances, and giving them up is not undone by what is shown") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const geometry::Placement planned = w.session().plan().treatment;
  const auto& skin = w.session().head().head.skin();
  w.visit().set(TodaysMark::site, skin.closest(planned.pulse));
  w.visit().set(TodaysMark::edge, skin.closest(*planned.mark));
  REQUIRE(w.visit().check());
  REQUIRE(w.session().is_working());
  w.session().cancel();
  CHECK_FALSE(w.session().is_working());
  QTest::qWait(200);
  CHECK_FALSE(w.session().is_working());
  REQUIRE(w.visit().check());
  CHECK(!w.visit().check()->as_laid.pulse_tape);
  // Entered again, they are wanted again.
  w.visit().set(TodaysMark::edge, skin.closest(*planned.mark));
  opened.settle();
  REQUIRE(w.visit().check());
  CHECK(w.visit().check()->as_laid.pulse_tape->vertex_mm ==
        Approx(planned.pulse_tape->vertex_mm).margin(0.3));
}

TEST_CASE("a verdict that grows from one line to many is read whole") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const int tall = GENERATE(800, 1080);  // with and without a scroll bar
  w.resize(1920, tall);
  w.worksheet().go_to(Worksheet::check_index);
  auto* verdict = w.worksheet().check()->findChild<QLabel*>("verdict");
  REQUIRE(verdict != nullptr);
  for (const double backward_mm : {2.0, 15.0, 2.0, 15.0}) {
    mark_today(w, backward_mm);
    // The panel finds its new layout between two pictures.
    OpenedWindow::wait_until([&] { return verdict->height() >= verdict->heightForWidth(verdict->width()); });
    CAPTURE(backward_mm, verdict->text().toStdString());
    // Room for the words as they break at the width that is left of the frame and its padding.
    QTextDocument words;
    words.setDocumentMargin(0);
    words.setDefaultFont(verdict->font());
    words.setHtml(verdict->text());
    words.setTextWidth(verdict->contentsRect().width());
    CHECK(verdict->contentsRect().height() >= words.size().height());
  }
}

TEST_CASE("limits say where they come from, and those that careful hands meet stand beside the strict ones") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::check_index);
  CheckStep& step = *w.worksheet().check();
  CHECK(step.limits_from()->text().contains("common practice"));
  CHECK(step.limits_from()->text().contains("no source"));
  step.careful_button()->click();
  const geometry::CheckLimits careful = w.visit().limits();
  CHECK(careful.pulse_mm > geometry::CheckLimits{}.pulse_mm);
  CHECK(step.limits_from()->text().contains("As good as tape and pencil get on this head"));
  step.careful_button()->click();
  CHECK(w.visit().limits().pulse_mm == geometry::CheckLimits{}.pulse_mm);
  CHECK(step.limits_from()->text().contains("common practice"));
  // Limits of another case are nobody's.
  step.careful_button()->click();
  w.session().change("Tape", [](models::CaseFile& f) { f.the_case.errors.tape_mm = 3; });
  step.show_case();
  CHECK(step.limits_from()->text() == "Your own limits.");
}
