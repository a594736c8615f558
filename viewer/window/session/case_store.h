#pragma once

#include <QObject>
#include <QString>
#include <QTimer>

#include "viewer/window/session/case_history.h"
#include "viewer/window/session/recovery.h"

namespace scalpmark::window {

/// Where the case in work is kept: its file, if it was ever saved, and a copy that outlives a crash for as
/// long as the case differs from its file.
class CaseStore : public QObject {
  Q_OBJECT
public:
  CaseStore(const CaseHistory& history, const QString& recovery_folder, QObject* parent = nullptr);

  [[nodiscard]] const QString& file() const { return file_; }
  /// A case came into force that belongs to this file (empty: to none).
  void belongs_to(const QString& file);
  /// Writes the case in force. Returns it as it was written: where its head lies is said from its new folder.
  /// Refusals (models::ModelError) are passed on, and all is then as it was.
  models::CaseFile write(const QString& path);

  [[nodiscard]] Recovery& recovery() { return recovery_; }
  /// Writes the copy now instead of a moment after the last edit.
  void keep_copy();

signals:
  void refused(const QString& sentence);

private:
  void forget_copy();

  const CaseHistory& history_;
  QString file_;
  Recovery recovery_;
  QTimer autosave_;
};

}  // namespace scalpmark::window
