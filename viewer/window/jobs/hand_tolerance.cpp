#include "viewer/window/jobs/hand_tolerance.h"

#include <atomic>
#include <thread>

namespace scalpmark::window {

namespace {

constexpr int at_rest_ms = 300;  // errors are often typed one after another

}  // namespace

HandTolerance::HandTolerance(QObject* parent) : QObject(parent), work_(at_rest_ms) {
  connect(&work_, &LatestWork::progressed, this, [this](double fraction) {
    fraction_ = fraction;
    emit changed();
  });
  connect(&work_, &LatestWork::failed, this, [this](const QString& sentence) {
    problem_ = sentence;
    emit changed();
  });
}

void HandTolerance::work_out(const geometry::Head& head, const models::CaseFile& kept,
                             const geometry::Plan& plan) {
  models::CaseFile asked = kept;
  asked.entered.label.clear();
  const std::string text = models::case_json(asked);
  if (text == asked_ && asked_skin_ == head.skin().vertices().data()) return;
  asked_ = text;
  asked_skin_ = head.skin().vertices().data();
  given_up_ = false;
  found_.reset();
  problem_.clear();
  fraction_ = 0;
  const auto found = std::make_shared<geometry::Tolerance>();
  work_.ask(
      [head, entered = kept.entered, plan, found](LatestWork::Job& job) {
        geometry::ToleranceOptions options;
        options.threads = std::max(1, static_cast<int>(std::thread::hardware_concurrency()) - 1);
        std::atomic<int> tried{0};
        const int each = std::max(1, options.placements / 50);
        options.between = [&] {
          job.stop_if_cancelled();
          const int now = ++tried;
          if (now % each == 0) job.tell({}, static_cast<double>(now) / options.placements);
        };
        *found = geometry::tolerance(head, entered, plan, entered.errors, options);
      },
      [this, found] {
        found_ = found;
        emit changed();
      });
  emit changed();
}

void HandTolerance::give_up() {
  work_.give_up();
  given_up_ = true;
  emit changed();
}

void HandTolerance::forget() {
  work_.give_up();
  asked_.clear();
  asked_skin_ = nullptr;
  given_up_ = false;
  found_.reset();
  problem_.clear();
}

}  // namespace scalpmark::window
