#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QStringList>
#include <QWidget>

#include "viewer/window/frame/case_files.h"

namespace scalpmark::window {

/// What one begins with: a case used lately, a new one, one from a file, or the demo case. Lies over the
/// window until there is a case.
class StartPage : public QWidget {
  Q_OBJECT
public:
  StartPage(QWidget* over, CaseFiles& files, Session& session, const Settings& settings);

  /// Offers the files that are still there, newest first.
  void offer(const QStringList& recent);
  /// Why what was chosen did not open.
  void say(const QString& sentence);
  [[nodiscard]] QPushButton* demo() const { return demo_; }
  [[nodiscard]] QPushButton* fresh() const { return fresh_; }
  [[nodiscard]] QPushButton* open() const { return open_; }
  [[nodiscard]] QListWidget* recent() const { return recent_; }

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void build();

  QPushButton *demo_, *fresh_, *open_;
  QLabel* problem_;
  QWidget* lately_;
  QListWidget* recent_;
};

}  // namespace scalpmark::window
