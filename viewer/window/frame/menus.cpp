#include "viewer/window/frame/menus.h"

#include <QActionGroup>
#include <QDir>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenuBar>
#include <QSignalBlocker>
#include <QWidgetAction>
#include <cmath>
#include <utility>

#include "viewer/window/frame/dialogs.h"

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
    {View::front, QT_TRANSLATE_NOOP("scalpmark::window::Menus", "From the front"), 1},
    {View::left, QT_TRANSLATE_NOOP("scalpmark::window::Menus", "From the patient's left"), 2},
    {View::right, QT_TRANSLATE_NOOP("scalpmark::window::Menus", "From the patient's right"), 3},
    {View::back, QT_TRANSLATE_NOOP("scalpmark::window::Menus", "From the back"), 4},
    {View::above, QT_TRANSLATE_NOOP("scalpmark::window::Menus", "From above"), 5},
    {View::square_on, QT_TRANSLATE_NOOP("scalpmark::window::Menus", "Straight down on the coil"), 6}};

}  // namespace

Menus::Menus(QMainWindow& window, QWidget& stage, const Settings& settings)
    : QObject(&window), window_(window) {
  build_file();
  build_edit();
  build_view(stage, settings);
  build_help();
}

template <typename Act>
QAction* Menus::add(QMenu* menu, const QString& text, const QKeySequence& key, Act&& act) {
  auto* action = menu->addAction(text);
  action->setShortcut(key);
  connect(action, &QAction::triggered, this, std::forward<Act>(act));
  return action;
}

template <typename Act>
QAction* Menus::add_switch(QMenu* menu, const QString& text, bool on, Act&& act) {
  auto* action = menu->addAction(text);
  action->setCheckable(true);
  action->setChecked(on);
  connect(action, &QAction::toggled, this, std::forward<Act>(act));
  return action;
}

void Menus::build_file() {
  QMenu* file = window_.menuBar()->addMenu(tr("&File"));
  add(file, tr("&New case"), QKeySequence::New, &Menus::new_case);
  add(file, tr("&Open\u2026"), QKeySequence::Open, &Menus::open);
  recent_ = file->addMenu(tr("Re&cent"));
  file->addSeparator();
  add(file, tr("&Save"), QKeySequence::Save, &Menus::save);
  add(file, tr("Save &as\u2026"), QKeySequence("Ctrl+Shift+S"), &Menus::save_as);
  add(file, tr("Save a &picture\u2026"), QKeySequence("Ctrl+Shift+P"), &Menus::save_picture);
  add(file, tr("Save a s&heet\u2026"), QKeySequence("Ctrl+E"), &Menus::save_sheet);
  add(file, tr("&Export the head\u2026"), QKeySequence("Ctrl+Shift+E"), &Menus::save_export);
  add(file, tr("P&rint the sheet\u2026"), QKeySequence::Print, &Menus::print_sheet);
  add(file, tr("Save s&trips of paper\u2026"), QKeySequence("Ctrl+Shift+T"), &Menus::save_strips);
  add(file, tr("Save a pa&ge for a browser\u2026"), QKeySequence("Ctrl+Shift+W"), &Menus::save_page);
  file->addSeparator();
  add(file, tr("&Forget heads kept to open quickly"), QKeySequence(), &Menus::forget_heads);
  file->addSeparator();
  add(file, tr("&Quit"), QKeySequence("Ctrl+Q"), [this] { window_.close(); });
}

void Menus::build_edit() {
  QMenu* edit = window_.menuBar()->addMenu(tr("&Edit"));
  undo_ = add(edit, tr("&Undo"), QKeySequence::Undo, &Menus::undo);
  redo_ = add(edit, tr("&Redo"), QKeySequence("Ctrl+Shift+Z"), &Menus::redo);
  edit->addSeparator();
  locked_ = edit->addAction(tr("&Lock the plan"));
  locked_->setCheckable(true);
  locked_->setShortcut(QKeySequence("Ctrl+L"));
  connect(locked_, &QAction::triggered, this, &Menus::locked);
  edit->addSeparator();
  add(edit, tr("&Copy picture"), QKeySequence("Ctrl+Shift+C"), &Menus::copy_picture);
}

void Menus::add_views(QMenu* menu, QWidget& stage) {
  for (const ViewKey& each : view_keys) {
    auto* action = add(menu, tr(each.name), QKeySequence(QString::number(each.digit)),
                       [this, each] { emit look(each.view); });
    // A digit typed into a field is a digit.
    action->setShortcutContext(Qt::WidgetShortcut);
    stage.addAction(action);
    auto* anywhere = new QAction(&window_);
    anywhere->setShortcut(QKeySequence(QStringLiteral("Alt+%1").arg(each.digit)));
    connect(anywhere, &QAction::triggered, action, &QAction::trigger);
    window_.addAction(anywhere);
  }
}

void Menus::add_coil_places(QMenu* menu) {
  QMenu* lay = menu->addMenu(tr("Lay the coil &on"));
  const auto on = [this](CoilOn place) { return [this, place] { emit lay_coil(place); }; };
  add(lay, tr("the treatment site"), QKeySequence("Ctrl+T"), on(CoilOn::treatment));
  add(lay, tr("the hotspot"), QKeySequence("Ctrl+H"), on(CoilOn::hotspot));
  add(lay, tr("the search start"), QKeySequence("Ctrl+B"), on(CoilOn::start));
}

void Menus::add_skin(QMenu* menu) {
  auto* row_widget = new QWidget;
  auto* row = new QHBoxLayout(row_widget);
  row->setContentsMargins(28, 4, 12, 4);
  auto* label = new QLabel(tr("Skin"));
  skin_ = new QSlider(Qt::Horizontal);
  skin_->setRange(20, 100);
  skin_->setValue(100);
  skin_->setAccessibleName(tr("Skin opacity in percent"));
  label->setBuddy(skin_);
  row->addWidget(label);
  row->addWidget(skin_, 1);
  auto* action = new QWidgetAction(menu);
  action->setDefaultWidget(row_widget);
  menu->addAction(action);
  connect(skin_, &QSlider::valueChanged, this, [this](int percent) { emit skin_opacity(percent / 100.0); });
  brain_ = add_switch(menu, tr("&Brain under the skin"), false,
                      [this](bool on) { emit skin_opacity(on ? viewer::skin_over_cortex : 1); });
  brain_->setShortcut(QKeySequence("Ctrl+Shift+B"));
  field_ = add_switch(menu, tr("&Induced field (round model head)"), false, &Menus::field);
  field_->setShortcut(QKeySequence("Ctrl+I"));
}

void Menus::build_view(QWidget& stage, const Settings& settings) {
  QMenu* view = window_.menuBar()->addMenu(tr("&View"));
  add_views(view, stage);
  view->addSeparator();
  add_coil_places(view);
  view->addSeparator();
  add_skin(view);
  legend_ = add_switch(view, tr("&Legend"), true, &Menus::readings_switched);
  numbers_ = add_switch(view, tr("&Numbers on the stage"), true, &Menus::readings_switched);
  gaps_ = add_switch(view, tr("&Gap under the coil"), false, &Menus::gaps);
  gaps_->setShortcut(QKeySequence("Ctrl+G"));
  label_in_explain_ = add_switch(view, tr("&Case's label in Explain"), false, &Menus::label_switched);
  view->addSeparator();
  add_switch(view, tr("Lengths in inc&hes"), settings.unit == LengthUnit::inch,
             [this](bool on) { emit unit(on ? LengthUnit::inch : LengthUnit::centimetre); });
  add_looks(view, settings);
  add_switch(view, tr("Glid&e between views"), settings.animated, &Menus::animated);
  add(view, tr("&Full screen"), QKeySequence(Qt::Key_F11),
      [this] { window_.isFullScreen() ? window_.showNormal() : window_.showFullScreen(); });
}

void Menus::add_looks(QMenu* menu, const Settings& settings) {
  // The stage's colours are told apart on a light ground, on the screen as in print.
  add_switch(menu, tr("&Dark, except the stage"), settings.dark, &Menus::dark);
  QMenu* letters = menu->addMenu(tr("Text si&ze"));
  auto* group = new QActionGroup(this);
  const std::array<QString, 3> names{tr("&Usual"), tr("&Large"), tr("Lar&gest")};
  for (std::size_t i = 0; i < names.size(); ++i) {
    sizes_[i] = group->addAction(names[i]);
    sizes_[i]->setCheckable(true);
    letters->addAction(sizes_[i]);
    connect(sizes_[i], &QAction::triggered, this, [this, i] { emit type_size(static_cast<TypeSize>(i)); });
  }
  projected_ = add_switch(menu, tr("Pro&jected: Teach and Check for a whole room"), false, &Menus::projected);
  projected_->setShortcut(QKeySequence("Ctrl+J"));
  window_.addAction(projected_);  // also while there is no menu bar
}

void Menus::build_help() {
  QMenu* help = window_.menuBar()->addMenu(tr("&Help"));
  add(help, tr("&Keys"), QKeySequence(Qt::Key_F1), [this] { show_keys(&window_); });
  add(help, tr("Cautions and &about"), QKeySequence(), [this] { show_about(&window_); });
}

void Menus::show_history(const UndoList& history) {
  undo_->setEnabled(history.can_undo());
  redo_->setEnabled(history.can_redo());
  undo_->setText(history.can_undo() ? tr("&Undo: %1").arg(history.undo_name()) : tr("&Undo"));
  redo_->setText(history.can_redo() ? tr("&Redo: %1").arg(history.redo_name()) : tr("&Redo"));
}

void Menus::show_hands_undo(bool can_undo, bool can_redo) {
  undo_->setEnabled(can_undo);
  redo_->setEnabled(can_redo);
  undo_->setText(tr("&Undo"));
  redo_->setText(tr("&Redo"));
}

void Menus::show_locked(bool on) {
  locked_->setChecked(on);
}

void Menus::show_recent(const QStringList& files) {
  recent_->clear();
  for (const QString& file : files) {
    auto* action = recent_->addAction(QDir::toNativeSeparators(file));
    connect(action, &QAction::triggered, this, [this, file] { emit open_recent(file); });
  }
  recent_->setEnabled(!files.isEmpty());
}

void Menus::show_skin_opacity(double opacity) {
  const QSignalBlocker quiet_slider(skin_), quiet_switch(brain_);
  skin_->setValue(static_cast<int>(std::lround(100 * opacity)));
  brain_->setChecked(opacity < 1);
}

}  // namespace scalpmark::window
