#include <QApplication>
#include <QDir>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QSlider>
#include <QWidgetAction>

#include "viewer/window/frame/dialogs.h"
#include "viewer/window/frame/main_window.h"
#include "viewer/window/frame/theme.h"

// The menus, and the keys that reach what they hold.

namespace scalpmark::window {

using viewer::CoilOn;
using viewer::View;

namespace {

struct ViewKey {
  View view;
  const char* name;
  int digit;
};
constexpr ViewKey view_keys[]{
    {View::front, QT_TRANSLATE_NOOP("scalpmark::window::MainWindow", "From the front"), 1},
    {View::left, QT_TRANSLATE_NOOP("scalpmark::window::MainWindow", "From the patient's left"), 2},
    {View::right, QT_TRANSLATE_NOOP("scalpmark::window::MainWindow", "From the patient's right"), 3},
    {View::back, QT_TRANSLATE_NOOP("scalpmark::window::MainWindow", "From the back"), 4},
    {View::above, QT_TRANSLATE_NOOP("scalpmark::window::MainWindow", "From above"), 5},
    {View::square_on, QT_TRANSLATE_NOOP("scalpmark::window::MainWindow", "Square on the coil"), 6}};

}  // namespace

void MainWindow::build_menus() {
  const auto add = [this](QMenu* menu, const QString& text, const QKeySequence& key, auto&& act) {
    auto* action = menu->addAction(text);
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, act);
    return action;
  };
  QMenu* file = menuBar()->addMenu(tr("&File"));
  add(file, tr("&New case"), QKeySequence::New, [this] {
    if (!may_leave()) return;
    coil_ = {};
    session_.start(models::default_case());
  });
  add(file, tr("&Open\u2026"), QKeySequence::Open, [this] { open(); });
  recent_menu_ = file->addMenu(tr("&Recent"));
  file->addSeparator();
  save_action_ = add(file, tr("&Save"), QKeySequence::Save, [this] { save(); });
  add(file, tr("Save &as\u2026"), QKeySequence("Ctrl+Shift+S"), [this] { save_as(); });
  add(file, tr("Save a &picture\u2026"), QKeySequence("Ctrl+Shift+P"), [this] { save_picture(); });
  add(file, tr("Save a s&heet\u2026"), QKeySequence("Ctrl+E"), [this] { save_sheet(); });
  add(file, tr("P&rint the sheet\u2026"), QKeySequence::Print, [this] { print_sheet(); });
  file->addSeparator();
  add(file, tr("&Quit"), QKeySequence("Ctrl+Q"), [this] { close(); });

  QMenu* edit = menuBar()->addMenu(tr("&Edit"));
  undo_ = add(edit, tr("&Undo"), QKeySequence::Undo, [this] { session_.undo(); });
  redo_ = add(edit, tr("&Redo"), QKeySequence("Ctrl+Shift+Z"), [this] { session_.redo(); });
  edit->addSeparator();
  add(edit, tr("&Copy picture"), QKeySequence("Ctrl+Shift+C"), [this] { copy_picture(); });

  QMenu* view = menuBar()->addMenu(tr("&View"));
  for (const ViewKey& each : view_keys) {
    auto* action = add(view, tr(each.name), QKeySequence(QString::number(each.digit)),
                       [this, each] { stage_->look(each.view); });
    // A digit typed into a field is a digit.
    action->setShortcutContext(Qt::WidgetShortcut);
    stage_->addAction(action);
    auto* anywhere = new QAction(this);
    anywhere->setShortcut(QKeySequence(QStringLiteral("Alt+%1").arg(each.digit)));
    connect(anywhere, &QAction::triggered, action, &QAction::trigger);
    addAction(anywhere);
  }
  view->addSeparator();
  QMenu* lay = view->addMenu(tr("Lay the coil &on"));
  const auto lay_on = [this](CoilOn on) {
    return [this, on] {
      HeldCoil coil;
      coil.on = on;
      lay_coil(coil);
    };
  };
  add(lay, tr("the treatment site"), QKeySequence("Ctrl+T"), lay_on(CoilOn::treatment));
  add(lay, tr("the hotspot"), QKeySequence("Ctrl+H"), lay_on(CoilOn::hotspot));
  add(lay, tr("the search start"), QKeySequence("Ctrl+B"), lay_on(CoilOn::start));
  view->addSeparator();
  auto* opacity = new QWidget;
  auto* opacity_row = new QHBoxLayout(opacity);
  opacity_row->setContentsMargins(28, 4, 12, 4);
  auto* opacity_label = new QLabel(tr("Skin"));
  skin_slider_ = new QSlider(Qt::Horizontal);
  skin_slider_->setRange(20, 100);
  skin_slider_->setValue(100);
  skin_slider_->setAccessibleName(tr("Skin opacity in percent"));
  opacity_label->setBuddy(skin_slider_);
  opacity_row->addWidget(opacity_label);
  opacity_row->addWidget(skin_slider_, 1);
  auto* opacity_action = new QWidgetAction(view);
  opacity_action->setDefaultWidget(opacity);
  view->addAction(opacity_action);
  connect(skin_slider_, &QSlider::valueChanged, this,
          [this](int percent) { set_skin_opacity(percent / 100.0); });
  const auto toggle = [&](const QString& text, bool on, auto&& act) {
    auto* action = view->addAction(text);
    action->setCheckable(true);
    action->setChecked(on);
    connect(action, &QAction::toggled, this, act);
    return action;
  };
  brain_ = toggle(tr("&Brain under the skin"), false, [this](bool on) {
    if (on != (skin_opacity_ < 1)) set_skin_opacity(on ? viewer::skin_over_cortex : 1);
  });
  brain_->setShortcut(QKeySequence("Ctrl+Shift+B"));
  toggle(tr("&Legend"), legend_, [this](bool on) {
    legend_ = on;
    refresh_stage();
  });
  toggle(tr("&Numbers on the stage"), numbers_, [this](bool on) {
    numbers_ = on;
    refresh_stage();
  });
  gaps_action_ = toggle(tr("&Gap under the coil"), gaps_, [this](bool on) { set_gaps(on); });
  gaps_action_->setShortcut(QKeySequence("Ctrl+G"));
  toggle(tr("Case's &label in Explain"), label_in_explain_, [this](bool on) {
    label_in_explain_ = on;
    show_explain_heading();
  });
  view->addSeparator();
  toggle(tr("Lengths in &inches"), settings_.unit == LengthUnit::inch, [this](bool on) {
    set_unit(on ? LengthUnit::inch : LengthUnit::centimetre);
    settings_.unit = on ? LengthUnit::inch : LengthUnit::centimetre;
    settings_.write();
  });
  toggle(tr("&Dark"), settings_.dark, [this](bool on) {
    apply_theme(*qApp, on);
    settings_.dark = on;
    settings_.write();
  });
  toggle(tr("Glid&e between views"), settings_.animated, [this](bool on) {
    stage_->set_animated(on);
    settings_.animated = on;
    settings_.write();
  });
  add(view, tr("&Full screen"), QKeySequence(Qt::Key_F11),
      [this] { isFullScreen() ? showNormal() : showFullScreen(); });

  QMenu* help = menuBar()->addMenu(tr("&Help"));
  add(help, tr("&Keys"), QKeySequence(Qt::Key_F1), [this] { show_keys(this); });
  add(help, tr("Cautions and &about"), QKeySequence(), [this] { show_about(this); });
  show_recent();
}

void MainWindow::show_recent() {
  recent_menu_->clear();
  for (const QString& file : settings_.recent) {
    auto* action = recent_menu_->addAction(QDir::toNativeSeparators(file));
    connect(action, &QAction::triggered, this, [this, file] {
      if (may_leave()) open_path(file);
    });
  }
  recent_menu_->setEnabled(!settings_.recent.isEmpty());
}

}  // namespace scalpmark::window
