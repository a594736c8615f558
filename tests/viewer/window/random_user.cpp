#include "tests/viewer/window/random_user.h"

#include <QAbstractButton>
#include <QLineEdit>

#include "geometry/plan/solve.h"

namespace scalpmark::window {

namespace {

bool opens_a_dialog(const QAbstractButton& button) {
  const QString text = button.text();
  // "Picture..." and the like; saving asks for a name as long as the case has none.
  return text.contains(QChar(0x2026)) || text == "Save case";
}

std::string named(const QWidget& widget) {
  const QString name = widget.accessibleName();
  if (!name.isEmpty()) return name.toStdString();
  if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) return button->text().toStdString();
  return widget.metaObject()->className();
}

bool same(const geometry::Placement& a, const geometry::Placement& b) {
  constexpr double rounding_mm = 1e-9;
  return (a.pulse - b.pulse).norm() < rounding_mm && (a.front - b.front).norm() < rounding_mm &&
         a.mark.has_value() == b.mark.has_value() && (!a.mark || (*a.mark - *b.mark).norm() < rounding_mm);
}

}  // namespace

RandomUser::RandomUser(OpenedWindow& opened, unsigned seed) : opened_(opened), random_(seed) {
  // Should a dialog come up after all, it is closed as one does who did not want it.
  constexpr int soon_ms = 200;
  closes_dialogs_.setInterval(soon_ms);
  QObject::connect(&closes_dialogs_, &QTimer::timeout, [] {
    if (QWidget* dialog = QApplication::activeModalWidget()) dialog->close();
  });
  closes_dialogs_.start();
}

template <typename Widget>
Widget* RandomUser::anything_in_sight() {
  QList<Widget*> all;
  for (Widget* each : opened_.window.findChildren<Widget*>())
    if (each->isVisible() && each->isEnabled()) all << each;
  return all.isEmpty() ? nullptr : all[any(static_cast<int>(all.size()))];
}

std::string RandomUser::type_somewhere() {
  auto* edit = anything_in_sight<QLineEdit>();
  if (!edit) return "nothing to type into";
  static const QStringList entries{"5", "5.5",  "36.2",  "1.0", "0",   "44",  "-12", "F3",   "C4",  "abc",
                                   "",  "9999", "2 1/4", "37",  "6.1", "3,4", "0.7", "12.3", "Fp2", "55"};
  const QString entry = entries[any(static_cast<int>(entries.size()))];
  edit->setFocus();
  edit->selectAll();
  QTest::keyClick(edit, Qt::Key_Delete);
  QTest::keyClicks(edit, entry);
  const int how = any(4);
  if (how < 3) QTest::keyClick(edit, how == 0 ? Qt::Key_Tab : how == 1 ? Qt::Key_Return : Qt::Key_Escape);
  return "typed \"" + entry.toStdString() + "\" into " + named(*edit);
}

std::string RandomUser::press_something() {
  auto* button = anything_in_sight<QAbstractButton>();
  if (!button || opens_a_dialog(*button)) return "nothing to press";
  const std::string what = "pressed " + named(*button);
  if (any(2) == 0) {
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Space);
  } else {
    QTest::mouseClick(button, Qt::LeftButton, Qt::NoModifier, QPoint(8, button->height() / 2));
  }
  return what;
}

std::string RandomUser::drag_somewhere() {
  StageView& stage = opened_.window.stage();
  if (!stage.isVisible() || stage.width() < 50) return "no stage";
  const QPoint from(any(stage.width()), any(stage.height()));
  const QPoint by(any(121) - 60, any(121) - 60);
  const Qt::MouseButton button = any(5) == 0 ? Qt::RightButton : Qt::LeftButton;
  QTest::mousePress(&stage, button, Qt::NoModifier, from);
  const int steps = any(4);  // none is a click
  for (int i = 1; i <= steps; ++i) {
    QMouseEvent move(QEvent::MouseMove, from + by * i / steps, stage.mapToGlobal(from + by * i / steps),
                     Qt::NoButton, button, Qt::NoModifier);
    QApplication::sendEvent(&stage, &move);
  }
  QTest::mouseRelease(&stage, button, Qt::NoModifier, steps > 0 ? from + by : from);
  return "dragged on the stage";
}

std::string RandomUser::press_a_key() {
  struct Stroke {
    Qt::Key key;
    Qt::KeyboardModifiers with;
    const char* what;
  };
  static const std::vector<Stroke> strokes{{Qt::Key_Z, Qt::ControlModifier, "undo"},
                                           {Qt::Key_Z, Qt::ControlModifier, "undo"},
                                           {Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier, "redo"},
                                           {Qt::Key_Escape, Qt::NoModifier, "Esc"},
                                           {Qt::Key_Left, Qt::NoModifier, "turn"},
                                           {Qt::Key_Right, Qt::ShiftModifier, "turn more"},
                                           {Qt::Key_Up, Qt::ControlModifier, "move"},
                                           {Qt::Key_Down, Qt::AltModifier, "turn the head"},
                                           {Qt::Key_T, Qt::ControlModifier, "lay on the site"},
                                           {Qt::Key_H, Qt::ControlModifier, "lay on the hotspot"},
                                           {Qt::Key_G, Qt::ControlModifier, "gaps"},
                                           {Qt::Key_J, Qt::ControlModifier, "projected"},
                                           {Qt::Key_PageDown, Qt::NoModifier, "page down"},
                                           {Qt::Key_Space, Qt::NoModifier, "space"},
                                           {Qt::Key_3, Qt::NoModifier, "view"},
                                           {Qt::Key_Plus, Qt::NoModifier, "zoom"}};
  const Stroke& stroke = strokes[static_cast<std::size_t>(any(static_cast<int>(strokes.size())))];
  if (any(3) > 0) opened_.window.stage().setFocus();
  QWidget* to = opened_.window.focusWidget() ? opened_.window.focusWidget() : &opened_.window.stage();
  if (const auto* button = qobject_cast<QAbstractButton*>(to); button && opens_a_dialog(*button))
    to = &opened_.window.stage();
  QTest::keyClick(to, stroke.key, stroke.with);
  return std::string("key: ") + stroke.what;
}

std::string RandomUser::act() {
  MainWindow& w = opened_.window;
  switch (any(12)) {
    case 0:
    case 1:
    case 2:
      return type_somewhere();
    case 3:
    case 4:
    case 5:
      return press_something();
    case 6:
    case 7:
      return drag_somewhere();
    case 8: {
      const int step = any(Worksheet::save_index + 1);
      w.worksheet().go_to(static_cast<Worksheet::StepIndex>(step));
      return "went to step " + std::to_string(step + 1);
    }
    case 9: {
      // Work under way is waited for now and then, so that its end is met in every state.
      QTest::qWait(any(200));
      return "waited";
    }
    default:
      return press_a_key();
  }
}

std::string wrong_state(MainWindow& w) {
  const Session& session = w.session();
  if (!session.is_ready()) return "there is no plan";
  const geometry::Case& now = session.case_file().the_case;
  const geometry::Plan expected =
      geometry::solve(session.head().head, now, geometry::TapeDistances::left_out);
  const geometry::Plan& shown = session.plan();
  if (!same(shown.start, expected.start)) return "the start is not that of the case";
  if (!same(shown.hotspot, expected.hotspot)) return "the hotspot is not that of the case";
  if (!same(shown.treatment, expected.treatment)) return "the treatment is not that of the case";
  for (std::size_t i = 0; i < expected.grid.size(); ++i)
    if (!same(shown.grid[i].placement, expected.grid[i].placement)) return "a spot is not that of the case";
  if (!(session.case_file() == session.history().now()))
    return "the case is not the one that undo counts from";
  // The head is the one that the tapes scale: within what scaling promises.
  if (session.case_file().head.kind == models::HeadKind::generic && now.tape_mm.nasion_inion_mm &&
      std::abs(*now.tape_mm.nasion_inion_mm - shown.tapes.nasion_inion_mm) > 0.2)
    return "the head is not scaled to the tapes";
  // On the stage: a diamond of the site is the plan's.
  for (const viewer::SeenMark& mark : w.stage().stage().marks())
    if (mark.name == "treatment" && !session.unplaced() && (mark.at - shown.treatment.wanted).norm() > 0.01)
      return "the stage shows another site than the plan";
  // In the fields, where nothing typed waits.
  const auto differs = [](const NumberField* field, double value) {
    return !field->edit()->isModified() && field->value() != value;
  };
  if (differs(w.worksheet().search()->lateral(), now.search.lateral_mm))
    return "a field shows another lateral length";
  if (differs(w.worksheet().search()->angle(), now.coil.angle_deg)) return "a field shows another angle";
  if (differs(w.worksheet().site()->distance(), now.treatment.distance_mm))
    return "a field shows another distance";
  if (w.visit().check() && !(w.visit().mark(TodaysMark::site) && w.visit().mark(TodaysMark::edge)))
    return "there is a check without marks";
  if (w.coil().in_hand() && !w.coil().placement) return "a coil in the hand lies nowhere";
  return "";
}

}  // namespace scalpmark::window
