#pragma once

#include <QObject>
#include <QWidget>
#include <functional>

#include "models/cases/demo_case.h"
#include "viewer/window/frame/dialogs.h"
#include "viewer/window/frame/save_target.h"
#include "viewer/window/session/disk_version.h"
#include "viewer/window/session/session.h"
#include "viewer/window/session/settings.h"

namespace scalpmark::window {

using models::demo_case;

/// How cases and heads come in and are kept: asks for files, and before work is lost.
class CaseFiles : public QObject {
  Q_OBJECT
public:
  /// `window` stands under the dialogs.
  CaseFiles(Session& session, Settings& settings, QWidget& window);

  // Questions to the user; tests answer them in their own way.
  std::function<UnsavedAnswer()> ask_unsaved;
  std::function<bool(const Leftover&)> ask_recover;
  AskReplace ask_replace;
  std::function<ChangedAnswer(const QString& file)> ask_changed;

  /// The first start's note, leftovers of a crash, and the case to begin with (empty: `offers` asks for one).
  void begin(const QString& path);
  void start_new();
  void start_demo();
  void open();
  void open_head();
  /// Opens a case, or a head to be placed, as if chosen in the file dialog.
  void open_path(const QString& path);
  /// The same for another case than the one in work, which may be unsaved.
  void open_instead(const QString& path);
  /// Of a file dropped on the window.
  void take_dropped(const QString& path);
  // Whether it worked:
  bool save();
  bool save_as();
  bool save_to(const QString& path);
  /// Whether the case may be left: saved, or the user said so.
  [[nodiscard]] bool may_leave();

signals:
  /// There is nothing to begin with yet; it is to be asked for.
  void offers();
  /// What went wrong, or nothing (empty).
  void notice(const QString& sentence);
  void recent_changed();
  /// A case of its own begins, wherever the coil was.
  void starts_new();

private:
  void used(const QString& file);
  /// Whether the case may be written there: not over its scan, nor over somebody else's version unless both
  /// stay.
  [[nodiscard]] bool may_save_to(const QString& path);

  Session& session_;
  Settings& settings_;
  QWidget& window_;
  DiskVersion on_disk_;
};

}  // namespace scalpmark::window
