#include "geometry/hands/with_strips.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "geometry/base/error.h"
#include "geometry/hands/by_hand.h"
#include "geometry/hands/first_order.h"
#include "geometry/hands/scatter.h"
#include "geometry/hands/strip_pieces.h"
#include "geometry/hands/strips.h"
#include "geometry/head/vertex.h"

namespace scalpmark::geometry {

namespace {

constexpr double most_strip_error_mm = 10;

/// A place of a strip: how far hands put it off, with the strip laid, and what gluing alone adds between two.
class StripHand {
public:
  StripHand(const std::vector<Strip>& strips, const StripErrors& errors) : strips_(strips), errors_(errors) {}

  /// Nothing where no strip of that kind has the mark.
  [[nodiscard]] std::optional<double> laid(StripKind kind, StripMarkKind what,
                                           const std::string& label = {}) const {
    const Strip* strip = strip_of(kind);
    const StripMark* mark = strip ? mark_of(*strip, what, label) : nullptr;
    if (!mark) return {};
    return std::hypot(errors_.laying_mm, glued(seams(*strip, mark->at_mm)));
  }
  [[nodiscard]] std::optional<double> laid_landmark(const std::string& label) const {
    for (const StripKind kind : {StripKind::midline, StripKind::coronal, StripKind::around})
      if (const auto error = laid(kind, StripMarkKind::landmark, label)) return error;
    return {};
  }
  /// The card's edge mark, in one piece.
  [[nodiscard]] double card() const { return errors_.laying_mm; }
  /// From the vertex's mark out to the start's on the coronal strip, which lies there already.
  [[nodiscard]] double from_half_out() const {
    const Strip* strip = strip_of(StripKind::coronal);
    const StripMark *half = mark_of(*strip, StripMarkKind::half, {}),
                    *out = mark_of(*strip, StripMarkKind::out, {});
    return glued(std::abs(seams(*strip, half->at_mm) - seams(*strip, out->at_mm)));
  }

private:
  [[nodiscard]] const Strip* strip_of(StripKind kind) const {
    const auto found =
        std::find_if(strips_.begin(), strips_.end(), [&](const Strip& s) { return s.kind == kind; });
    return found == strips_.end() ? nullptr : &*found;
  }
  [[nodiscard]] static const StripMark* mark_of(const Strip& strip, StripMarkKind what,
                                                const std::string& label) {
    const auto found = std::find_if(strip.marks.begin(), strip.marks.end(),
                                    [&](const StripMark& m) { return m.what == what && m.label == label; });
    return found == strip.marks.end() ? nullptr : &*found;
  }
  [[nodiscard]] static int seams(const Strip& strip, double at_mm) {
    return seams_before(at_mm, strip.length_mm, letter_piece_mm);
  }
  [[nodiscard]] double glued(int seams) const { return std::sqrt(seams) * errors_.gluing_mm; }

  const std::vector<Strip>& strips_;
  StripErrors errors_;
};

/// The names of the landmarks that are marked on the way to the case's, in order; the last is its own.
std::vector<std::string> landmarks_on_way(const Head& head, const Case& the_case) {
  std::vector<std::string> names;
  if (the_case.treatment.rule != TreatmentRule::landmark) return names;
  const auto note = [&](const std::string& name, const Tape& tape, double share) {
    names.push_back(name);
    return tape.at(share);
  };
  (void)landmark(head.skin(), head.vertex_tapes(), the_case.treatment.label, note);
  return names;
}

/// What a source of reading is once strips are laid; nothing where a tape is read still.
std::optional<double> by_strip(const ErrorSource& source, const StripHand& hand,
                               const std::vector<std::string>& on_way) {
  ErrorsMade made;
  const double* place = &source.in(made);
  if (place == &made.vertex_read[0]) return hand.laid(StripKind::midline, StripMarkKind::half);
  if (place == &made.vertex_read[1]) return hand.laid(StripKind::coronal, StripMarkKind::half);
  if (place == &made.lateral_read) return hand.from_half_out();
  if (place == &made.anterior_read) return hand.laid(StripKind::to_the_start, StripMarkKind::start);
  if (place == &made.distance_read) return hand.laid(StripKind::to_the_site, StripMarkKind::site);
  // An index of landmarks may be past the coil's marks.
  if (source.index < made.coil_marks.size() && place == &made.coil_marks[source.index].read)
    return hand.card();
  if (source.index < on_way.size() && place == &made.landmarks[source.index].read)
    return hand.laid_landmark(on_way[source.index]);
  return {};
}

void check_strip_errors(const StripErrors& errors) {
  for (const double value : {errors.gluing_mm, errors.laying_mm})
    if (!(value >= 0 && value <= most_strip_error_mm))
      throw GeometryError(
          Message::of("The errors of gluing and of laying a strip must be from 0 to %1 mm; correct them.",
                      number(most_strip_error_mm)));
}

}  // namespace

WithStrips with_strips(const Head& head, const Case& the_case, const Plan& plan, const HandErrors& errors,
                       const StripErrors& strip_errors, int threads) {
  check_strip_errors(strip_errors);
  const ByHand by_hand(head, the_case, plan, errors, coil_places(the_case.coil, MarkingWay::front), {});
  head.skin().prepare();
  std::vector<ErrorSource> sources = error_sources(the_case, errors, by_hand.scope());
  const auto all = [&] { return first_order(by_hand, sources, the_case.coil.laid_by, errors, threads, {}); };
  const auto average = [](const FirstOrder& first, const Times& times) {
    return mean_distance(scatter_of(first, PulseLevel::skin, times));
  };
  WithStrips w;
  w.errors = strip_errors;
  const FirstOrder tapes = all();
  w.tapes_mean_mm = average(tapes, all_once());
  w.tapes_alone_mm = average(tapes, only(Cause::tape));
  const std::vector<Strip> strips_there = strips(head, the_case, plan);
  const StripHand hand(strips_there, strip_errors);
  const std::vector<std::string> on_way = landmarks_on_way(head, the_case);
  for (ErrorSource& source : sources) {
    if (source.cause != Cause::tape) continue;
    if (const auto error = by_strip(source, hand, on_way)) {
      source.deviation = *error;
      ++w.strips_laid;
    } else {
      ++w.tapes_read;
    }
  }
  const FirstOrder laid = all();
  w.mean_mm = average(laid, all_once());
  w.alone_mm = average(laid, only(Cause::tape));
  return w;
}

}  // namespace scalpmark::geometry
