#include "viewer/window/jobs/background_work.h"

#include <malloc.h>

#include <utility>

#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

// Thrown through the work when the user gave up on it; not an error.
struct Cancelled {};

}  // namespace

BackgroundWork::~BackgroundWork() {
  stop();
}

void BackgroundWork::stop() {
  cancel();
  if (thread_.joinable()) thread_.join();
}

// Qt's events only say that there is something. What there is goes through a queue with a lock of its own,
// which the thread sanitizer sees, so that it watches over all that passes from thread to thread here.
void BackgroundWork::post(std::function<void()> to_do) {
  {
    const std::lock_guard lock(posted_lock_);
    posted_.push_back(std::move(to_do));
  }
  QMetaObject::invokeMethod(this, "take_posted", Qt::QueuedConnection);
}

void BackgroundWork::take_posted() {
  std::function<void()> to_do;
  {
    const std::lock_guard lock(posted_lock_);
    to_do = std::move(posted_.front());
    posted_.pop_front();
  }
  to_do();
}

void BackgroundWork::hand_over(std::function<void()> to_do) {
  post([this, to_do = std::move(to_do)] {
    if (!cancelled_) to_do();
  });
}

void BackgroundWork::stop_if_cancelled() const {
  if (cancelled_) throw Cancelled{};
}

void BackgroundWork::tell(const QString& what, double fraction) {
  stop_if_cancelled();
  hand_over([this, what, fraction] { emit progressed(what, fraction); });
}

void BackgroundWork::run(std::function<void()> work, std::function<void()> done) {
  if (thread_.joinable()) thread_.join();  // the former piece is over, or this would not be called
  over_ = false;
  thread_ = std::thread([this, work = std::move(work), done = std::move(done)] {
    QString problem;
    try {
      work();
    } catch (const Cancelled&) {
      cancelled_ = true;
    } catch (const std::exception& error) {
      problem = viewer::translated(error);
    }
    post([this, problem, done] {
      over_ = true;
      if (!cancelled_) {
        if (problem.isEmpty())
          done();
        else
          emit failed(problem);
      }
      // What the work had for itself goes back to the system; it would stay with the thread's own store, and
      // a day's edits would pile up many of those.
      malloc_trim(0);
    });
  });
}

}  // namespace scalpmark::window
