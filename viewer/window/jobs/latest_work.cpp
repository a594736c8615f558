#include "viewer/window/jobs/latest_work.h"

namespace scalpmark::window {

LatestWork::LatestWork(int rest_ms, QObject* parent) : QObject(parent) {
  rest_.setSingleShot(true);
  rest_.setInterval(rest_ms);
  connect(&rest_, &QTimer::timeout, this, &LatestWork::begin);
}

void LatestWork::ask(std::function<void(Job&)> work, std::function<void()> done) {
  drop_job();
  work_ = std::move(work);
  done_ = std::move(done);
  rest_.start();
}

void LatestWork::give_up() {
  rest_.stop();
  drop_job();
}

void LatestWork::drop_job() {
  given_up_.remove_if([](const auto& job) { return job->is_over(); });
  if (!job_) return;
  job_->cancel();
  given_up_.push_back(std::move(job_));  // we may be inside one of its signals
}

void LatestWork::begin() {
  job_ = std::make_unique<Job>();
  Job* const job = job_.get();
  connect(job, &BackgroundWork::progressed, this, [this, job](const QString&, double fraction) {
    if (job == job_.get()) emit progressed(fraction);
  });
  connect(job, &BackgroundWork::failed, this, [this, job](const QString& sentence) {
    if (job != job_.get()) return;
    drop_job();
    emit failed(sentence);
  });
  job->run([job, work = work_] { work(*job); },
           [this, job, done = done_] {
             if (job != job_.get()) return;
             drop_job();
             done();
           });
}

}  // namespace scalpmark::window
