#pragma once

#include <memory>
#include <utility>

namespace scalpmark::geometry {

/// A value whose copies share one place in memory until one of them is changed: for large parts of what is
/// copied at every edit (undo is a list of cases).
template <class Value>
class Shared {
public:
  Shared() : held_(std::make_shared<const Value>()) {}
  Shared(Value value)
      : held_(std::make_shared<const Value>(std::move(value))) {}  // NOLINT(google-explicit-constructor)

  [[nodiscard]] const Value& operator*() const { return *held_; }
  [[nodiscard]] const Value* operator->() const { return held_.get(); }

  friend bool operator==(const Shared& a, const Shared& b) { return a.held_ == b.held_ || *a == *b; }

private:
  std::shared_ptr<const Value> held_;
};

}  // namespace scalpmark::geometry
