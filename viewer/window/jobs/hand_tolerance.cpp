#include "viewer/window/jobs/hand_tolerance.h"

#include <atomic>
#include <thread>

namespace scalpmark::window {

namespace {

constexpr int errors_at_rest_ms = 300;  // errors are often typed one after another
constexpr int few_placements = 300;     // a tenth of a second; the mean is then known to some 4 in 100

}  // namespace

HandTolerance::HandTolerance(QObject* parent) : QObject(parent), work_(errors_at_rest_ms) {
  connect(&work_, &LatestWork::progressed, this, [this](double fraction) {
    fraction_ = fraction;
    if (!found_ && rough_ && rough_->is_there) found_ = rough_->found;
    emit changed();
  });
  connect(&work_, &LatestWork::failed, this, [this](const QString& sentence) {
    problem_ = sentence;
    emit changed();
  });
}

void HandTolerance::work_out(const geometry::Head& head, const models::CaseFile& case_file,
                             const geometry::Plan& plan) {
  geometry::Case asked = case_file.the_case;
  asked.label.clear();
  asked.answers = {};
  asked.visits.clear();
  if (asked_ == asked && asked_head_->same_as(head)) return;
  asked_ = asked;
  asked_head_.emplace(head);
  given_up_ = false;
  found_.reset();
  strips_.reset();
  problem_.clear();
  fraction_ = 0;
  const auto found = std::make_shared<geometry::Tolerance>();
  const auto strips = std::make_shared<geometry::WithStrips>();
  rough_ = std::make_shared<Rough>();
  work_.ask(
      [head, the_case = case_file.the_case, plan, found, strips, rough = rough_](LatestWork::Job& job) {
        // A first figure at once; what follows refines it.
        *rough->found = geometry::tolerance(head, the_case, plan, the_case.errors,
                                            {.placements = few_placements, .compare_ways = false});
        rough->is_there = true;
        job.tell({}, 0);
        geometry::ToleranceOptions options;
        options.threads = std::max(1, static_cast<int>(std::thread::hardware_concurrency()) - 1);
        std::atomic<int> tried{0};
        const int each = std::max(1, options.placements / 50);
        options.between = [&] {
          job.stop_if_cancelled();
          const int now = ++tried;
          if (now % each == 0) job.tell({}, static_cast<double>(now) / options.placements);
        };
        *found = geometry::tolerance(head, the_case, plan, the_case.errors, options);
        *strips = geometry::with_strips(head, the_case, plan, the_case.errors, {}, options.threads);
      },
      [this, found, strips] {
        found_ = found;
        strips_ = strips;
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
  asked_.reset();
  asked_head_.reset();
  given_up_ = false;
  found_.reset();
  strips_.reset();
  problem_.clear();
}

}  // namespace scalpmark::window
