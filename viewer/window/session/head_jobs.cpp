#include "viewer/window/session/head_jobs.h"

#include <algorithm>
#include <cassert>
#include <utility>

namespace scalpmark::window {

HeadJob& HeadJobs::begin(const QString& what, std::function<void(const HeadJob&)> finished) {
  assert(!job_);
  job_ = std::make_unique<HeadJob>();
  HeadJob* const job = job_.get();
  connect(job, &HeadJob::progressed, this, [this, job](const QString& now, double fraction) {
    if (job == job_.get()) emit working(now, fraction);
  });
  connect(job, &HeadJob::laid, this, [this, job] {
    if (job == job_.get()) emit laid();
  });
  connect(job, &HeadJob::measured, this, [this, job] {
    if (job == job_.get()) emit measured();
  });
  connect(job, &HeadJob::failed, this, [this, job](const QString& sentence) {
    if (job == job_.get()) emit failed(sentence);
  });
  connect(job, &HeadJob::finished, this, [this, job, finished = std::move(finished)] {
    if (job == job_.get()) finished(*job);
  });
  emit working(what, 0);
  return *job;
}

void HeadJobs::end() {
  if (!job_) return;
  job_->cancel();
  ended_.erase(std::remove_if(ended_.begin(), ended_.end(), [](const auto& job) { return job->is_over(); }),
               ended_.end());
  ended_.push_back(std::move(job_));  // we may be inside one of its signals
  emit rested();
}

}  // namespace scalpmark::window
