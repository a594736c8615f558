#pragma once

#include <QAction>
#include <QMainWindow>
#include <QMenu>
#include <QSlider>
#include <array>

#include "viewer/stage/scene/camera.h"
#include "viewer/stage/scene/shown.h"
#include "viewer/window/fields/length_text.h"
#include "viewer/window/session/settings.h"
#include "viewer/window/session/undo_list.h"

namespace scalpmark::window {

/// The menus, and the keys that reach what they hold. They say what is wanted and know nobody who does it.
class Menus : public QObject {
  Q_OBJECT
public:
  /// In the window's menu bar. Digits choose a view only where `stage` has the keys.
  Menus(QMainWindow& window, QWidget& stage, const Settings& settings);

  void show_history(const UndoList& history);
  /// In place of what was done to the case: what hands did in an exercise.
  void show_hands_undo(bool can_undo, bool can_redo);
  void show_recent(const QStringList& files);
  void show_skin_opacity(double opacity);
  void show_gaps(bool on) { gaps_->setChecked(on); }
  void show_field(bool on) { field_->setChecked(on); }
  void show_projected(bool on) { projected_->setChecked(on); }
  void show_locked(bool on);
  void show_type_size(TypeSize size) { sizes_[static_cast<std::size_t>(size)]->setChecked(true); }

  [[nodiscard]] bool legend() const { return legend_->isChecked(); }
  [[nodiscard]] bool numbers() const { return numbers_->isChecked(); }
  /// Never remembered: a patient's room has other people's eyes.
  [[nodiscard]] bool label_in_explain() const { return label_in_explain_->isChecked(); }

signals:
  void new_case();
  void open();
  void open_recent(const QString& file);
  void save();
  void save_as();
  void save_picture();
  void save_sheet();
  void save_export();
  void print_sheet();
  /// What was kept of scans read before.
  void forget_heads();
  void save_page();
  void save_strips();
  void undo();
  void redo();
  void copy_picture();
  void look(viewer::View view);
  void lay_coil(viewer::CoilOn place);
  void skin_opacity(double opacity);
  void gaps(bool on);
  void field(bool on);
  /// Legend or numbers, or the label in Explain, were switched.
  void readings_switched();
  void label_switched();
  void unit(LengthUnit unit);
  void dark(bool on);
  void type_size(TypeSize size);
  void projected(bool on);
  void locked(bool on);
  void animated(bool on);

private:
  template <typename Act>
  QAction* add(QMenu* menu, const QString& text, const QKeySequence& key, Act&& act);
  template <typename Act>
  QAction* add_switch(QMenu* menu, const QString& text, bool on, Act&& act);
  void build_file();
  void build_edit();
  void build_view(QWidget& stage, const Settings& settings);
  void add_views(QMenu* menu, QWidget& stage);
  void add_coil_places(QMenu* menu);
  void add_skin(QMenu* menu);
  void build_help();
  void add_looks(QMenu* menu, const Settings& settings);

  QMainWindow& window_;
  QMenu* recent_ = nullptr;
  QAction *undo_ = nullptr, *redo_ = nullptr, *brain_ = nullptr, *gaps_ = nullptr, *field_ = nullptr;
  QAction *legend_ = nullptr, *numbers_ = nullptr, *label_in_explain_ = nullptr;
  QAction *projected_ = nullptr, *locked_ = nullptr;
  std::array<QAction*, 3> sizes_{};
  QSlider* skin_ = nullptr;
};

}  // namespace scalpmark::window
