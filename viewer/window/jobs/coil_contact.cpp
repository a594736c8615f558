#include "viewer/window/jobs/coil_contact.h"

namespace scalpmark::window {

namespace {

constexpr int coil_at_rest_ms = 200;  // a hand that drags pauses no longer than that

}  // namespace

CoilContact::CoilContact(QObject* parent) : QObject(parent), work_(coil_at_rest_ms) {
  connect(&work_, &LatestWork::failed, this, [this](const QString& sentence) {
    problem_ = sentence;
    emit changed();
  });
}

void CoilContact::look_under(const geometry::Head& head, const geometry::Case& the_case,
                             const geometry::Placement& placement) {
  const Asked asked{head, the_case.coil, placement.pulse, placement.normal, placement.front};
  if (asked_ && asked_->same_as(asked)) return;
  asked_.emplace(asked);
  gaps_.reset();
  problem_.clear();
  const auto found = std::make_shared<std::shared_ptr<const viewer::GapsShown>>();
  work_.ask([head, the_case, placement,
             found](LatestWork::Job&) { *found = viewer::gaps_under(head, the_case, placement); },
            [this, found] {
              gaps_ = *found;
              emit changed();
            });
}

void CoilContact::stop_looking() {
  work_.give_up();
  asked_.reset();
  gaps_.reset();
  problem_.clear();
}

}  // namespace scalpmark::window
