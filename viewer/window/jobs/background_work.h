#pragma once

#include <QObject>
#include <QString>
#include <atomic>
#include <deque>
#include <functional>
#include <mutex>
#include <string>
#include <thread>

namespace scalpmark::window {

/// Work in a thread of its own, so that the window never freezes. One piece of work at a time. The signals
/// arrive in the thread that made the object. Cancelled work falls silent at once; its thread ends at the
/// next report of progress (or look at whether it is cancelled), and the object's end waits for that.
class BackgroundWork : public QObject {
  Q_OBJECT
public:
  explicit BackgroundWork(QObject* parent = nullptr) : QObject(parent) {}
  ~BackgroundWork() override;

  void cancel() { cancelled_ = true; }
  [[nodiscard]] bool is_cancelled() const { return cancelled_; }
  /// Nothing runs (any more) in the thread.
  [[nodiscard]] bool is_over() const { return over_; }

signals:
  void progressed(const QString& what, double fraction);
  void finished();
  void failed(const QString& sentence);

protected:
  /// Cancels and waits for the thread. To be called by the destructor of a class whose work uses its members.
  void stop();
  /// Runs `work` and then `done`, that in the thread that made the object. An exception out of `work` is
  /// passed on as `failed`.
  void run(std::function<void()> work, std::function<void()> done);
  /// The same, with `finished` for an end.
  void run(std::function<void()> work) {
    run(std::move(work), [this] { emit finished(); });
  }
  /// Reports progress from within the work. Throws where the work was cancelled, which ends it.
  void tell(const QString& what, double fraction);
  /// The same without a report, from any thread of the work.
  void stop_if_cancelled() const;
  /// Hands something over to the thread that made the object, unless the work was cancelled.
  void hand_over(std::function<void()> to_do);

private slots:
  void take_posted();

private:
  /// Has something done in the thread that made the object.
  void post(std::function<void()> to_do);

  std::thread thread_;
  std::mutex posted_lock_;
  std::deque<std::function<void()>> posted_;
  std::atomic<bool> cancelled_{false}, over_{true};
};

}  // namespace scalpmark::window
