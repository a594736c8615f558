// Two things go wrong at once in the lesson: picture, numbers and sentence show each and both together.
#include <algorithm>
#include <array>
#include <catch2/catch.hpp>

#include "geometry/hands/mistakes.h"
#include "tests/support/labels_told_apart.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

struct Lesson : OpenedWindow {
  explicit Lesson(const models::CaseFile& case_file = demo_case()) : OpenedWindow(case_file) {
    QTest::mouseClick(window.mode_button(Mode::teach), Qt::LeftButton);
    QTest::qWait(30);
  }
  [[nodiscard]] WhatIfControls& controls() { return *teach.panel().what_if(); }
  [[nodiscard]] QString caption() { return teach.bar().caption(); }
  void pick(WhatIfControls::Kind kind) {
    QTest::mouseClick(controls().button(kind), Qt::LeftButton, Qt::NoModifier, QPoint(8, 8));
    QTest::qWait(10);
  }
  void keep() {
    QTest::mouseClick(controls().keep(), Qt::LeftButton, Qt::NoModifier, QPoint(8, 8));
    QTest::qWait(10);
  }
  [[nodiscard]] QString length(double mm) { return length_with_unit(mm, LengthUnit::centimetre); }
  [[nodiscard]] bool has_label(const QString& text) {
    (void)window.stage().picture();
    const auto& labels = window.stage().stage().labels();
    return std::any_of(labels.begin(), labels.end(), [&](const viewer::PlacedLabel& l) {
      return QString::fromStdString(l.wish.text) == text;
    });
  }
};

models::CaseFile on_the(geometry::Side side) {
  models::CaseFile case_file = demo_case();
  case_file.the_case.side = side;
  return case_file;
}

}  // namespace

TEST_CASE("of two things that go wrong at once each is shown alone, and both together") {
  using viewer::CoilTurned;
  using viewer::TapeMisread;
  for (const geometry::Side side : {geometry::Side::left, geometry::Side::right}) {
    Lesson lesson(on_the(side));
    const Session& session = lesson.window.session();
    const geometry::Head& head = session.head().head;
    const geometry::Case& c = session.case_file().the_case;
    CHECK_FALSE(lesson.controls().keep()->isVisible());
    lesson.pick(WhatIfControls::tape);
    REQUIRE(lesson.controls().keep()->isVisible());
    lesson.keep();
    // Until a second is chosen the first is shown as it was, and said to be kept.
    CHECK(lesson.controls().kept_text().contains("read 0.5 cm too long"));
    REQUIRE(lesson.teach.outcome());
    CHECK(lesson.teach.outcome()->alone.empty());
    lesson.pick(WhatIfControls::turned);
    REQUIRE(lesson.teach.outcome());
    const viewer::MistakeOutcome& outcome = *lesson.teach.outcome();
    const TapeMisread first{geometry::Misread::treatment, 5};
    const CoilTurned second{10, false};
    const auto both = geometry::if_made(head, c, session.plan(), {first, second});
    const auto one = geometry::if_made(head, c, session.plan(), geometry::Mistake(first));
    const auto other = geometry::if_made(head, c, session.plan(), geometry::Mistake(second));
    CHECK(outcome.result.off_mm == Approx(both.off_mm));
    REQUIRE(outcome.alone.size() == 2);
    CHECK(outcome.alone[0].off_mm == Approx(one.off_mm));
    CHECK(outcome.alone[1].off_mm == Approx(other.off_mm));
    // In words,
    const QString said = lesson.caption();
    CHECK(said.contains("read 0.5 cm too long, and also with the coil turned 10"));
    CHECK(said.contains("the pulse goes " + lesson.length(both.off_mm) + " off the treatment site"));
    CHECK(said.contains("Alone, the first would put it " + lesson.length(one.off_mm) + " off, the second " +
                        lesson.length(other.off_mm)));
    // and on the stage: the three places of the pulse, each named.
    CHECK(lesson.has_label("wanted pulse point"));
    CHECK(lesson.has_label("real pulse point, both"));
    CHECK(lesson.has_label("the first alone, " + lesson.length(one.off_mm)));
    CHECK(lesson.has_label("the second alone, " + lesson.length(other.off_mm)));
    CHECK_THAT(tests::mistaken_labels(lesson.window.stage().stage()), Catch::Equals(""));
    for (const viewer::SeenMark& mark : lesson.window.stage().stage().marks()) {
      if (mark.name == "real pulse point, both") CHECK((mark.at - both.really.pulse).norm() < 1e-9);
      if (mark.name.starts_with("the first alone")) CHECK((mark.at - one.really.pulse).norm() < 1e-9);
      if (mark.name.starts_with("the second alone")) CHECK((mark.at - other.really.pulse).norm() < 1e-9);
    }
    // Dropped again, the second is the only one; nothing wrong takes both away.
    lesson.keep();
    CHECK(lesson.teach.outcome()->mistakes.size() == 1);
    CHECK(lesson.controls().kept_text().isEmpty());
    lesson.keep();
    lesson.pick(WhatIfControls::cap);
    CHECK(lesson.teach.outcome()->mistakes.size() == 2);
    lesson.pick(WhatIfControls::nothing);
    CHECK_FALSE(lesson.teach.outcome());
    CHECK_FALSE(lesson.controls().kept());
    CHECK_FALSE(lesson.controls().keep()->isVisible());
  }
}

TEST_CASE("two mistakes are chosen and changed by keys alone") {
  Lesson lesson;
  WhatIfControls& controls = lesson.controls();
  const auto key = [&](Qt::Key which) { QTest::keyClick(QApplication::focusWidget(), which); };
  const auto tab_to = [&](QWidget* wanted) {
    QWidget* target = wanted->focusProxy() ? wanted->focusProxy() : wanted;
    for (int i = 0; i < 200 && QApplication::focusWidget() != target; ++i) key(Qt::Key_Tab);
    return QApplication::focusWidget() == target;
  };
  // Radio buttons are one stop of Tab, and arrows choose among them.
  REQUIRE(tab_to(controls.button(WhatIfControls::nothing)));
  key(Qt::Key_Down);
  CHECK(controls.kind() == WhatIfControls::vertex);
  REQUIRE(tab_to(controls.keep()));
  key(Qt::Key_Space);
  REQUIRE(controls.kept());
  CHECK(std::holds_alternative<viewer::VertexOff>(*controls.kept()));
  CHECK(controls.kind() == WhatIfControls::nothing);
  bool reached = false;
  for (int i = 0; i < 200 && !reached; ++i) {
    key(Qt::Key_Tab);
    const auto* button = qobject_cast<QRadioButton*>(QApplication::focusWidget());
    reached = button != nullptr && button->objectName() == "whatIf";
  }
  REQUIRE(reached);
  // Arrows move among radio buttons; where none is chosen, Space chooses.
  for (int i = 0; i < 12 && QApplication::focusWidget() != controls.button(WhatIfControls::turned); ++i)
    key(Qt::Key_Down);
  key(Qt::Key_Space);
  REQUIRE(controls.kind() == WhatIfControls::turned);
  REQUIRE(lesson.teach.outcome());
  CHECK(lesson.teach.outcome()->mistakes.size() == 2);
  CHECK(lesson.teach.outcome()->meant_on == viewer::CoilOn::treatment);
  REQUIRE(tab_to(controls.turned_by()->edit()));
  const double before = lesson.teach.outcome()->result.off_mm;
  key(Qt::Key_Up);
  CHECK(lesson.teach.outcome()->result.off_mm != Approx(before));
  CHECK(lesson.caption().contains("turned 11"));
}

TEST_CASE("two mistakes that cannot be at once say so, and a step of the lesson takes both back") {
  Lesson lesson;
  lesson.pick(WhatIfControls::rule);
  lesson.keep();
  // One rule at a time, and no look where the rule needs none.
  CHECK_FALSE(lesson.controls().button(WhatIfControls::rule)->isEnabled());
  CHECK_FALSE(lesson.controls().button(WhatIfControls::aside)->isEnabled());
  lesson.pick(WhatIfControls::turned);
  REQUIRE(lesson.teach.outcome());
  CHECK(lesson.window.stage().isVisible());
  lesson.teach.player().go_to(3);
  CHECK_FALSE(lesson.teach.outcome());
  CHECK_FALSE(lesson.controls().kept());
  CHECK(lesson.controls().button(WhatIfControls::rule)->isEnabled());
  CHECK(lesson.controls().button(WhatIfControls::aside)->isEnabled());
  lesson.pick(WhatIfControls::aside);
  lesson.keep();
  lesson.pick(WhatIfControls::rule);
  CHECK(lesson.controls().problem().endsWith('.'));
  CHECK_FALSE(lesson.teach.outcome());
}

TEST_CASE("both before the search are told at its start, with what the search takes back") {
  Lesson lesson;
  lesson.pick(WhatIfControls::vertex);
  lesson.keep();
  lesson.pick(WhatIfControls::tape);
  QTest::mouseClick(lesson.controls().which_tape()->button(0), Qt::LeftButton, Qt::NoModifier, QPoint(8, 8));
  REQUIRE(lesson.teach.outcome());
  CHECK(lesson.teach.outcome()->meant_on == viewer::CoilOn::start);
  CHECK(lesson.caption().contains("the search starts"));
  CHECK(lesson.caption().contains("twitch"));
  CHECK(lesson.has_label("wanted search start"));
}

// Askew by little, the strongest place of a round model head's field can come a little nearer to the coil.
TEST_CASE("no tilt is said to leave more than all of the field") {
  Lesson lesson;
  lesson.pick(WhatIfControls::off);
  bool all = false;
  for (const int how : {1, 2}) {
    lesson.controls().off_how()->button(how)->click();
    for (const int deg : {1, 2, 3, 5, 8}) {
      lesson.type(lesson.controls().off_by()->edit(), QString::number(deg));
      INFO(lesson.caption().toStdString());
      CHECK_FALSE(lesson.caption().contains(QRegularExpression("10[0-9]\\s?%")));
      all = all || lesson.caption().contains("all of the field is left");
    }
  }
  CHECK(all);
}

TEST_CASE("what two mistakes make together is read whole, title and sentence, in a small window too") {
  for (const QSize size : {QSize(960, 620), QSize(1280, 800)}) {
    Lesson lesson;
    lesson.window.resize(size);
    lesson.teach.player().go_to(10);
    lesson.controls().button(WhatIfControls::turned)->click();
    lesson.controls().keep()->click();
    lesson.controls().button(WhatIfControls::off)->click();
    REQUIRE(lesson.teach.outcome());
    REQUIRE(lesson.teach.outcome()->mistakes.size() == 2);
    const QWidget& bar = lesson.teach.bar();
    const std::array<const QLabel*, 2> labels{lesson.teach.bar().title_label(),
                                              lesson.teach.bar().caption_label()};
    const auto needed = [](const QLabel& label) {
      return label.fontMetrics().boundingRect(QRect(0, 0, label.width(), 10000),
                                              label.wordWrap() ? Qt::TextWordWrap : 0, label.text());
    };
    const auto is_read_whole = [&](const QLabel* label) {
      const QRect in_bar(label->mapTo(&bar, QPoint(0, 0)), label->size());
      return bar.rect().contains(in_bar) && needed(*label).width() <= label->width() &&
             needed(*label).height() <= label->height();
    };
    // Laid out it is a little after the click, and stays so.
    (void)QTest::qWaitFor([&] { return std::all_of(labels.begin(), labels.end(), is_read_whole); }, 20000);
    QTest::qWait(50);
    for (const QLabel* label : labels) {
      INFO(size.width() << ": " << label->text().toStdString());
      CHECK(is_read_whole(label));
    }
    const QWidget& stage = lesson.window.stage();
    const int stage_end = stage.mapTo(&lesson.window, QPoint(0, stage.height())).y();
    CHECK(stage_end <= bar.mapTo(&lesson.window, QPoint(0, 0)).y() + 1);
  }
}
