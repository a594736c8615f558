#include "geometry/hands/tolerance.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "geometry/base/all_cores.h"
#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/base/ranges.h"
#include "geometry/head/landmarks.h"
#include "geometry/head/on_head.h"
#include "geometry/head/vertex.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/search.h"
#include "geometry/surface/triangle_math.h"
#include "geometry/tapes/forward_tape.h"
#include "geometry/tapes/laid_tape.h"

namespace scalpmark::geometry {

using Eigen::Matrix2d;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr int most_placements = 1'000'000;

void check(double value, const Range& range, const char* name, const Message& unit) {
  if (!range.holds(value))
    throw GeometryError(Message::of("errors.%1 must be from %2 to %3 %4; correct it.", name,
                                    number(range.low), number(range.high), unit));
}

void check_errors(const HandErrors& e) {
  check(e.fiducial_mm, ranges::error_mm, "fiducial_mm", Message::of("mm"));
  check(e.tape_mm, ranges::error_mm, "tape_mm", Message::of("mm"));
  check(e.mark_mm, ranges::error_mm, "mark_mm", Message::of("mm"));
  check(e.angle_deg, ranges::error_deg, "angle_deg", Message::of("degrees"));
  check(e.tilt_deg, ranges::error_deg, "tilt_deg", Message::of("degrees"));
  check(e.cap_shift_mm, ranges::error_mm, "cap_shift_mm", Message::of("mm"));
  check(e.other_rule_percent, ranges::percent, "other_rule_percent", Message::of("percent"));
}

// What can slip in one placement.

/// mm and degrees, as in HandErrors; two numbers are forward (or up) and outward (or across).
struct Slips {
  Vector2d nasion{0, 0}, inion{0, 0}, left_tragus{0, 0}, right_tragus{0, 0};
  Vector2d vertex_read{0, 0};  ///< where the two tapes are halved
  double lateral_read = 0, anterior_read = 0, distance_read = 0, edge_read = 0;
  Vector2d node_read{0, 0}, landmark_read{0, 0};
  Vector2d vertex_mark{0, 0}, start_mark{0, 0}, node_mark{0, 0}, site_mark{0, 0}, edge_mark{0, 0};
  double angle_deg = 0;
  Vector2d cap{0, 0};
  Tilt tilt;
  std::optional<MarkRule> laid_by;  ///< another rule than the case's
};

/// One source of error: where it goes, and how large it is.
struct Slip {
  Cause cause;
  double deviation;
  double& (*place)(Slips&);
};

/// Halving a tape takes two readings: half of the whole one's error, and all of the half's.
const double halving = std::sqrt(1.25);

std::vector<Slip> slips_of(const Case& c, const HandErrors& e) {
  std::vector<Slip> all;
  const auto add = [&](Cause cause, double deviation, double& (*place)(Slips&)) {
    all.push_back({cause, deviation, place});  // with no error too: its number is its random sequence
  };
  const auto add_fiducial = [&](double& (*place)(Slips&)) { add(Cause::fiducials, e.fiducial_mm, place); };
  add_fiducial([](Slips& s) -> double& { return s.nasion[0]; });
  add_fiducial([](Slips& s) -> double& { return s.nasion[1]; });
  add_fiducial([](Slips& s) -> double& { return s.inion[0]; });
  add_fiducial([](Slips& s) -> double& { return s.inion[1]; });
  add_fiducial([](Slips& s) -> double& { return s.left_tragus[0]; });
  add_fiducial([](Slips& s) -> double& { return s.left_tragus[1]; });
  add_fiducial([](Slips& s) -> double& { return s.right_tragus[0]; });
  add_fiducial([](Slips& s) -> double& { return s.right_tragus[1]; });

  const auto read = [&](double times, double& (*place)(Slips&)) {
    add(Cause::tape, times * e.tape_mm, place);
  };
  const auto mark = [&](double& (*place)(Slips&)) { add(Cause::marks, e.mark_mm, place); };
  if (c.treatment.rule == TreatmentRule::landmark) {
    // A position of the 10-20 system is a share of two tapes.
    read(halving, [](Slips& s) -> double& { return s.landmark_read[0]; });
    read(halving, [](Slips& s) -> double& { return s.landmark_read[1]; });
  } else {
    read(halving, [](Slips& s) -> double& { return s.vertex_read[0]; });
    read(halving, [](Slips& s) -> double& { return s.vertex_read[1]; });
    mark([](Slips& s) -> double& { return s.vertex_mark[0]; });
    mark([](Slips& s) -> double& { return s.vertex_mark[1]; });
    if (c.search.lateral_mm != 0) read(1, [](Slips& s) -> double& { return s.lateral_read; });
    if (c.search.anterior_mm != 0) read(1, [](Slips& s) -> double& { return s.anterior_read; });
    mark([](Slips& s) -> double& { return s.start_mark[0]; });
    mark([](Slips& s) -> double& { return s.start_mark[1]; });
    if (c.hotspot.row != 0) read(1, [](Slips& s) -> double& { return s.node_read[0]; });
    if (c.hotspot.column != 0) read(1, [](Slips& s) -> double& { return s.node_read[1]; });
    if (c.hotspot.row != 0 || c.hotspot.column != 0) {
      mark([](Slips& s) -> double& { return s.node_mark[0]; });
      mark([](Slips& s) -> double& { return s.node_mark[1]; });
    }
    read(1, [](Slips& s) -> double& { return s.distance_read; });
  }
  mark([](Slips& s) -> double& { return s.site_mark[0]; });
  mark([](Slips& s) -> double& { return s.site_mark[1]; });
  // Only the tape rule measures from site to edge mark; the others look at the coil's own edge.
  if (c.treatment.drawn_by == MarkRule::tape) read(1, [](Slips& s) -> double& { return s.edge_read; });
  mark([](Slips& s) -> double& { return s.edge_mark[0]; });
  mark([](Slips& s) -> double& { return s.edge_mark[1]; });

  add(Cause::angle, e.angle_deg, [](Slips& s) -> double& { return s.angle_deg; });
  add(Cause::cap, e.cap_shift_mm, [](Slips& s) -> double& { return s.cap[0]; });
  add(Cause::cap, e.cap_shift_mm, [](Slips& s) -> double& { return s.cap[1]; });
  add(Cause::tilt, e.tilt_deg, [](Slips& s) -> double& { return s.tilt.roll_deg; });
  add(Cause::tilt, e.tilt_deg, [](Slips& s) -> double& { return s.tilt.pitch_deg; });
  return all;
}

// One placement, slips and all.

class Placing {
public:
  Placing(const Head& head, const Case& the_case, const Plan& plan)
      : head_(head), case_(the_case), side_(side_of(plan.treatment)), aim_(plan.treatment) {
    const Surface& skin = head.skin();
    site_ = skin.closest(plan.treatment.pulse);
    if (!plan.treatment.mark)
      throw GeometryError(Message::of(
          "The treatment's edge mark falls off the head, so nobody can lay the coil on it; choose another marking rule or site."));
    start_ = skin.closest(plan.start.wanted);
    step_ = local(frame_at(head, start_), plan.hotspot.pulse - plan.start.wanted);
  }

  /// Where the pulse goes; nothing when it falls off the head. `exact_mm`: how closely the vertex halves its
  /// tapes and the mark is met. `expected`: the offset from the planned pulse, nearly.
  [[nodiscard]] std::optional<SurfacePoint> pulse(const Slips& s, double exact_mm,
                                                  const Vector2d& expected = {0, 0}) const {
    try {
      const Head felt = felt_head(s, exact_mm);
      const SurfacePoint site = nudged(felt, site_with(felt, s), s.site_mark);
      // The mark is made...
      CoilSetup made = case_.coil;
      made.centre_to_edge_mm += s.edge_read;
      const auto mark = edge_mark(felt, made, case_.treatment.drawn_by, side_, site);
      if (!mark) return {};
      const SurfacePoint marked = nudged(felt, *mark, s.edge_mark + s.cap);
      // ... and the coil laid on it.
      CoilSetup laid = case_.coil;
      laid.angle_deg = wrapped_deg(laid.angle_deg + s.angle_deg);
      const SurfacePoint near = skin().closest(in_space(expected));
      MarkSearch search;
      search.near = &near;
      search.wanted_mm = exact_mm;
      search.tilt = s.tilt;
      return pulse_for_mark(felt, laid, s.laid_by.value_or(laid.laid_by), side_, marked, search);
    } catch (const GeometryError&) {
      return {};  // off the skin, or a mark that nothing reaches
    }
  }

  /// From the planned pulse, in the plane there: forward and outward.
  [[nodiscard]] Vector2d offset(const Vector3d& at) const {
    const Vector3d d = at - aim_.pulse;
    const Vector2d flat(d.dot(aim_.forward), -d.dot(aim_.inward));
    return flat.norm() > 0 ? Vector2d(d.norm() * flat.normalized()) : flat;
  }

  [[nodiscard]] const Surface& skin() const { return head_.skin(); }

  /// An offset laid out with a tape on the skin.
  [[nodiscard]] Vector3d on_skin(const Vector2d& offset) const {
    const Vector3d way = in_space(offset) - aim_.pulse;
    if (!(way.norm() > 0)) return aim_.pulse;
    if (const auto tape = lay_tape(skin(), site_, way.normalized(), way.norm())) return tape->at;
    return skin().position(skin().closest(aim_.pulse + way));
  }

private:
  [[nodiscard]] Vector3d in_space(const Vector2d& offset) const {
    return aim_.pulse + offset[0] * aim_.forward - offset[1] * aim_.inward;
  }

  using Frame = Eigen::Matrix3d;  ///< columns: forward, outward, away from the head

  [[nodiscard]] Frame frame_at(const Head& head, const SurfacePoint& at) const {
    const Directions d = directions_at(head, side_, at);
    Frame f;
    f << d.forward, d.outward, head.skin().smooth_normal(at);
    return f;
  }
  [[nodiscard]] static Vector3d local(const Frame& frame, const Vector3d& v) { return frame.transpose() * v; }

  /// A skin point moved along the skin by millimetres forward and outward.
  [[nodiscard]] SurfacePoint nudged(const Head& head, const SurfacePoint& at, const Vector2d& by) const {
    if (by.isZero(0)) return at;
    const Directions d = directions_at(head, side_, at);
    return head.skin().closest(head.skin().position(at) + by[0] * d.forward + by[1] * d.outward);
  }

  /// The head as the four points felt for make it.
  [[nodiscard]] Head felt_head(const Slips& s, double exact_mm) const {
    if (s.nasion.isZero(0) && s.inion.isZero(0) && s.left_tragus.isZero(0) && s.right_tragus.isZero(0))
      return head_;
    const HeadAxes& axes = head_.axes();
    const Surface& skin = head_.skin();
    SkinFiducials felt = head_.fiducials();
    const auto move = [&](SurfacePoint& at, const Vector2d& by, const Vector3d& across) {
      const Vector3d normal = skin.smooth_normal(at);
      at = skin.closest(skin.position(at) + by[0] * tangent_part(axes.up, normal) +
                        by[1] * tangent_part(across, normal));
    };
    move(felt.nasion, s.nasion, axes.right);
    move(felt.inion, s.inion, axes.right);
    move(felt.left_tragus, s.left_tragus, axes.front);
    move(felt.right_tragus, s.right_tragus, axes.front);
    // Where the vertex then is, nearly: half way.
    const SurfacePoint guess =
        skin.closest(skin.position(head_.vertex()) + 0.5 * (s.inion[0] - s.nasion[0]) * axes.front +
                     0.5 * (s.left_tragus[0] - s.right_tragus[0]) * axes.right);
    return {skin, felt, guess, std::max(1e-5, 2 * exact_mm)};
  }

  [[nodiscard]] SurfacePoint site_with(const Head& felt, const Slips& s) const {
    if (case_.treatment.rule == TreatmentRule::landmark)
      return nudged(felt, landmark(felt, case_.treatment.label)->on_skin, s.landmark_read);
    const SurfacePoint start = nudged(felt, start_with(felt, s), s.start_mark);
    // The step from start to node goes with the skin's directions at the start.
    SurfacePoint hotspot = start;
    if (!step_.isZero(1e-9)) {
      const Vector3d slip(s.node_read[0] + s.node_mark[0], s.node_read[1] + s.node_mark[1], 0);
      hotspot = felt.skin().closest(felt.skin().position(start) + frame_at(felt, start) * (step_ + slip));
    }
    return forward_tape(felt, hotspot, case_.treatment.distance_mm + s.distance_read).at(1).on_skin;
  }

  [[nodiscard]] SurfacePoint start_with(const Head& felt, const Slips& s) const {
    const Surface& skin = felt.skin();
    const SurfacePoint vertex = nudged(felt, felt.vertex(), s.vertex_read + s.vertex_mark);
    const SkinFiducials& f = felt.fiducials();
    const Tape coronal = Tape::over(skin, f.left_tragus, vertex, f.right_tragus);
    return measure_start(felt, coronal, coronal.fraction_of(skin.position(vertex)) * coronal.length_mm(),
                         case_.side, case_.search.lateral_mm + s.lateral_read,
                         case_.search.anterior_mm + s.anterior_read)
        .anterior.at(1)
        .on_skin;
  }

  Head head_;
  Case case_;
  Side side_;
  Placement aim_;
  SurfacePoint site_, start_;
  Vector3d step_ = Vector3d::Zero();  ///< from start to hotspot, in the start's frame
};

// Random numbers that depend on seed, placement and error alone.

/// The finalizer of SplitMix64 (Steele et al. 2014, OOPSLA).
std::uint64_t mixed(std::uint64_t x) {
  x += 0x9e3779b97f4a7c15U;
  x = (x ^ (x >> 30)) * 0xbf58476d1ce4e5b9U;
  x = (x ^ (x >> 27)) * 0x94d049bb133111ebU;
  return x ^ (x >> 31);
}

struct Draws {
  std::uint64_t state;
  Draws(std::uint64_t seed, int placement)
      : state(mixed(mixed(seed) ^ static_cast<std::uint64_t>(placement))) {}

  /// Above 0, up to 1.
  [[nodiscard]] double uniform(int stream) const {
    return (static_cast<double>(mixed(state + static_cast<std::uint64_t>(stream)) >> 11) + 1) * 0x1p-53;
  }
  /// Standard normal (Box and Muller 1958).
  [[nodiscard]] double normal(int stream) const {
    return std::sqrt(-2 * std::log(uniform(2 * stream))) * std::cos(2 * pi * uniform(2 * stream + 1));
  }
};

// Scatter and its ellipses.

constexpr double half_share = 0.5, most_share = 0.95;

/// The share of a flat normal scatter lies within this many squared deviations.
double normal_quantile(double share) {
  return -2 * std::log(1 - share);
}

SkinEllipse ellipse(const Vector2d& centre, const Matrix2d& covariance, double squared_deviations,
                    const Placing& placing) {
  const Eigen::SelfAdjointEigenSolver<Matrix2d> axes(covariance);
  const auto reach = [&](int k) {
    return std::sqrt(std::max(0.0, axes.eigenvalues()[k]) * squared_deviations);
  };
  SkinEllipse e;
  e.centre = centre;
  e.long_mm = reach(1);
  e.short_mm = reach(0);
  Vector2d along = axes.eigenvectors().col(1);
  if (along[0] < 0) along = -along;
  e.long_axis_deg = degrees(std::atan2(along[1], along[0]));
  const Vector2d across(-along[1], along[0]);
  constexpr int corners = 72;
  for (int i = 0; i <= corners; ++i) {
    const double a = 2 * pi * (i % corners) / corners;
    e.outline.push_back(
        placing.on_skin(centre + e.long_mm * std::cos(a) * along + e.short_mm * std::sin(a) * across));
  }
  return e;
}

/// The value that `share` of them do not exceed.
double quantile(std::vector<double> values, double share) {
  if (values.empty()) return 0;
  const auto at = static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1));
  std::nth_element(values.begin(), values.begin() + at, values.end());
  return values[static_cast<size_t>(at)];
}

// To first order.

/// How the pulse follows each slip of its own size, and the two other rules: forward, outward, mm.
struct Derivatives {
  std::vector<Vector2d> by_slip;
  std::array<Vector2d, 2> by_rule{Vector2d::Zero(), Vector2d::Zero()};
};

Derivatives derivatives(const Placing& placing, const std::vector<Slip>& slips, MarkRule rule,
                        const ToleranceOptions& options) {
  constexpr double exact_mm = 1e-3;
  const std::array<MarkRule, 2> others = other_rules(rule);
  Derivatives d;
  d.by_slip.assign(slips.size(), Vector2d::Zero());
  const auto off = [&](const Slips& s) -> std::optional<Vector2d> {
    const auto p = placing.pulse(s, exact_mm);
    if (!p) return {};
    return placing.offset(placing.skin().position(*p));
  };
  on_all_cores(
      slips.size() + others.size(),
      [&](size_t k) {
        if (options.between) options.between();
        if (k >= slips.size()) {
          Slips s;
          s.laid_by = others[k - slips.size()];
          // A rule whose mark would fall off the head is one that nobody can use here.
          d.by_rule[k - slips.size()] = off(s).value_or(Vector2d::Zero());
          return;
        }
        if (!(slips[k].deviation > 0)) return;
        Slips more, less;
        slips[k].place(more) = slips[k].deviation;
        slips[k].place(less) = -slips[k].deviation;
        const auto up = off(more), down = off(less);
        if (up || down)
          d.by_slip[k] = up && down ? Vector2d(0.5 * (*up - *down)) : up ? *up : Vector2d(-*down);
      },
      options.threads);
  return d;
}

/// Mean squares of the offset, by cause.
using Squares = std::array<Matrix2d, all_causes.size()>;

Squares squares_by_cause(const Derivatives& d, const std::vector<Slip>& slips, const HandErrors& errors) {
  Squares squares;
  squares.fill(Matrix2d::Zero());
  for (size_t k = 0; k < slips.size(); ++k)
    squares[static_cast<size_t>(slips[k].cause)] += d.by_slip[k] * d.by_slip[k].transpose();
  for (const auto& o : d.by_rule)
    squares[static_cast<size_t>(Cause::rule)] += errors.other_rule_percent / 100 / 2 * o * o.transpose();
  return squares;
}

void sample(Tolerance& t, const Placing& placing, const std::vector<Slip>& slips,
            const Derivatives& derivatives, const HandErrors& errors, MarkRule rule,
            const ToleranceOptions& options) {
  // Marks are met closely enough that what remains is nothing beside the errors.
  constexpr double exact_mm = 0.1;
  const std::array<MarkRule, 2> others = other_rules(rule);
  constexpr int rule_stream = 1000;  // past those of the slips
  std::vector<std::optional<SurfacePoint>> found(static_cast<size_t>(options.placements));
  on_all_cores(
      found.size(),
      [&](size_t i) {
        if (options.between) options.between();
        const Draws draws(options.seed, static_cast<int>(i));
        Slips s;
        Vector2d expected(0, 0);
        for (size_t k = 0; k < slips.size(); ++k) {
          const double drawn = draws.normal(static_cast<int>(k));
          slips[k].place(s) = slips[k].deviation * drawn;
          expected += drawn * derivatives.by_slip[k];
        }
        const double chance = 100 * draws.uniform(rule_stream);
        if (chance <= errors.other_rule_percent) {
          const size_t which = chance <= errors.other_rule_percent / 2 ? 0 : 1;
          s.laid_by = others[which];
          expected += derivatives.by_rule[which];
        }
        found[i] = placing.pulse(s, exact_mm, expected);
      },
      options.threads);
  t.placements = options.placements;
  std::vector<Vector2d> offsets;
  std::vector<double> distances;
  for (const auto& p : found) {
    if (!p) continue;
    t.pulses.push_back(placing.skin().position(*p));
    offsets.push_back(placing.offset(t.pulses.back()));
    distances.push_back(offsets.back().norm());
  }
  const auto count = static_cast<double>(offsets.size());
  t.lost = options.placements - static_cast<int>(offsets.size());
  if (2 * t.lost > options.placements)
    throw GeometryError(Message::of(
        "With errors this large more than half of the placements fall off the head; make the errors smaller."));
  Spread& spread = t.sampled;
  for (const auto& o : offsets) spread.mean += o / count;
  for (const auto& o : offsets)
    spread.covariance += (o - spread.mean) * (o - spread.mean).transpose() / std::max(1.0, count - 1);
  for (const double d : distances) spread.mean_mm += d / count;
  t.half_mm = quantile(distances, half_share);
  t.most_mm = quantile(distances, most_share);
  // The ellipses have the scatter's shape, and the size that holds the share.
  const Matrix2d& c = spread.covariance;
  if (c.determinant() > 1e-12) {
    const Matrix2d inverse = c.inverse();
    std::vector<double> deviations;
    deviations.reserve(offsets.size());
    for (const auto& o : offsets) deviations.push_back((o - spread.mean).dot(inverse * (o - spread.mean)));
    spread.half = ellipse(spread.mean, c, quantile(deviations, half_share), placing);
    spread.most = ellipse(spread.mean, c, quantile(deviations, most_share), placing);
  } else {
    spread.half = ellipse(spread.mean, c, normal_quantile(half_share), placing);
    spread.most = ellipse(spread.mean, c, normal_quantile(most_share), placing);
  }
}

}  // namespace

double mean_distance(const Matrix2d& covariance) {
  const Eigen::SelfAdjointEigenSolver<Matrix2d> axes(covariance);
  const double large = axes.eigenvalues()[1], small = std::max(0.0, axes.eigenvalues()[0]);
  if (!(large > 0)) return 0;
  return std::sqrt(2 * large / pi) * std::comp_ellint_2(std::sqrt(std::max(0.0, 1 - small / large)));
}

Tolerance tolerance(const Head& head, const Case& the_case, const Plan& plan, const HandErrors& errors,
                    const ToleranceOptions& options) {
  check_errors(errors);
  if (options.placements < 0 || options.placements > most_placements)
    throw GeometryError(
        Message::of("The number of placements to try must be from 0 to 1000000; correct it."));
  const Placing placing(head, the_case, plan);
  const std::vector<Slip> slips = slips_of(the_case, errors);
  head.skin().prepare();

  Tolerance t;
  t.rule = the_case.coil.laid_by;
  const Derivatives d = derivatives(placing, slips, the_case.coil.laid_by, options);
  const Squares squares = squares_by_cause(d, slips, errors);
  Matrix2d all = Matrix2d::Zero();
  for (const auto& s : squares) all += s;
  t.first_order.covariance = all;
  t.first_order.mean_mm = mean_distance(all);
  t.first_order.half = ellipse(Vector2d::Zero(), all, normal_quantile(half_share), placing);
  t.first_order.most = ellipse(Vector2d::Zero(), all, normal_quantile(most_share), placing);
  for (const Cause cause : all_causes) {
    const Matrix2d& own = squares[static_cast<size_t>(cause)];
    // Half an error is a quarter of its square; the other rule is used half as often.
    const double kept = cause == Cause::rule ? 0.5 : 0.25;
    t.causes.push_back({cause, all.trace() > 0 ? own.trace() / all.trace() : 0, mean_distance(own),
                        mean_distance(all - own), mean_distance(all - (1 - kept) * own)});
  }
  std::stable_sort(t.causes.begin(), t.causes.end(),
                   [](const CauseShare& a, const CauseShare& b) { return a.share > b.share; });
  const auto best =
      std::min_element(t.causes.begin(), t.causes.end(),
                       [](const CauseShare& a, const CauseShare& b) { return a.halved_mm < b.halved_mm; });
  if (all.trace() > 0) t.to_halve = *best;
  if (options.placements > 0) sample(t, placing, slips, d, errors, the_case.coil.laid_by, options);
  return t;
}

}  // namespace scalpmark::geometry
