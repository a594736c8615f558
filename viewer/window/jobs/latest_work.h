#pragma once

#include <QObject>
#include <QTimer>
#include <functional>
#include <list>
#include <memory>

#include "viewer/window/jobs/background_work.h"

namespace scalpmark::window {

/// Work of which only the latest asking counts: it begins when nothing newer was asked for a moment, runs in
/// a thread of its own, and falls silent when something newer is asked for or it is given up.
class LatestWork : public QObject {
  Q_OBJECT
public:
  /// What the work may call from within.
  struct Job : BackgroundWork {
    ~Job() override { stop(); }
    using BackgroundWork::run;
    using BackgroundWork::stop_if_cancelled;
    using BackgroundWork::tell;
  };

  explicit LatestWork(int rest_ms, QObject* parent = nullptr);

  /// `work` runs in the thread, then `done` here.
  void ask(std::function<void(Job&)> work, std::function<void()> done);
  void give_up();
  /// Asked for and not answered yet.
  [[nodiscard]] bool is_waiting() const { return rest_.isActive() || job_ != nullptr; }

signals:
  void progressed(double fraction);
  void failed(const QString& sentence);

private:
  void begin();
  void drop_job();

  QTimer rest_;
  std::function<void(Job&)> work_;
  std::function<void()> done_;
  std::unique_ptr<Job> job_;
  std::list<std::unique_ptr<Job>> given_up_;  // their threads still ending
};

}  // namespace scalpmark::window
