#include "viewer/window/session/tapes_beside.h"

#include <QCoreApplication>
#include <cmath>
#include <optional>

namespace scalpmark::window {

namespace {

// A tape reads to half a centimetre; a head of its own that differs by more is not the one that was measured.
constexpr double worth_saying_mm = 5;

// What lupdate finds these texts under.
class TapeNames {
  Q_DECLARE_TR_FUNCTIONS(TapeNames)
};

}  // namespace

std::vector<TapeBeside> tapes_that_differ(const geometry::Case& the_case, const geometry::Plan& plan) {
  std::vector<TapeBeside> found;
  const auto compare = [&](const QString& name, const std::optional<double>& entered, double here) {
    if (entered && std::abs(*entered - here) > worth_saying_mm) found.push_back({name, *entered, here});
  };
  const geometry::MeasuredTapes& tapes = the_case.tape_mm;
  compare(TapeNames::tr("Nasion to inion"), tapes.nasion_inion_mm, plan.tapes.nasion_inion_mm);
  compare(TapeNames::tr("Tragus to tragus"), tapes.tragus_tragus_mm, plan.tapes.tragus_tragus_mm);
  compare(TapeNames::tr("Around the head"), tapes.circumference_mm, plan.tapes.circumference_mm);
  return found;
}

}  // namespace scalpmark::window
