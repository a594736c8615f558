#include "geometry/hands/tolerance.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "geometry/base/all_cores.h"
#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/hands/by_hand.h"
#include "geometry/hands/draws.h"
#include "geometry/hands/first_order.h"
#include "geometry/hands/scatter.h"
#include "geometry/plan/settings.h"

namespace scalpmark::geometry {

using Eigen::Matrix2d;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr int most_placements = 1'000'000;
constexpr double half_share = 0.5, most_share = 0.95;

void check_errors(const HandErrors& errors) {
  Case the_case;
  the_case.errors = errors;
  for (const Setting& s : settings()) {
    if (std::string_view(s.group) != "errors") continue;
    const double value = *std::get<double*>(s.in(the_case));
    if (!s.range.holds(value))
      throw GeometryError(Message::of("errors.%1 must be from %2 to %3 %4; correct it.", s.key,
                                      number(s.range.low), number(s.range.high), unit_of(s)));
  }
}

// Regions.

SkinEllipse ellipse_of(const EllipseForm& form) {
  const Eigen::SelfAdjointEigenSolver<Matrix2d> axes(form.shape);
  const auto reach = [&](int k) { return std::sqrt(std::max(0.0, axes.eigenvalues()[k]) * form.size); };
  SkinEllipse e;
  e.centre = form.centre;
  e.long_mm = reach(1);
  e.short_mm = reach(0);
  Vector2d along = axes.eigenvectors().col(1);
  if (along[0] < 0) along = -along;
  e.long_axis_deg = degrees(std::atan2(along[1], along[0]));
  return e;
}

void lay_on_skin(SkinEllipse& e, const ByHand& hand) {
  const double a = radians(e.long_axis_deg);
  const Vector2d along(std::cos(a), std::sin(a)), across(-along[1], along[0]);
  constexpr int corners = 72;
  for (int i = 0; i <= corners; ++i) {
    const double b = 2 * pi * (i % corners) / corners;
    e.outline.push_back(
        hand.laid_out(e.centre + e.long_mm * std::cos(b) * along + e.short_mm * std::sin(b) * across));
  }
}

Spread spread_of(const Scatter& scatter) {
  Spread s;
  s.mean = mean_of(scatter);
  s.covariance = covariance_of(scatter);
  s.mean_mm = mean_distance(scatter);
  s.half = ellipse_of(region_holding(half_share, scatter));
  s.most = ellipse_of(region_holding(most_share, scatter));
  return s;
}

/// Of placements tried.
struct Found {
  Spread spread;
  double half_mm = 0, most_mm = 0;
};

Found found_at(const std::vector<Vector2d>& offsets) {
  Found f;
  const auto count = static_cast<double>(offsets.size());
  std::vector<double> distances;
  distances.reserve(offsets.size());
  for (const auto& o : offsets) {
    distances.push_back(o.norm());
    f.spread.mean += o / count;
    f.spread.mean_mm += o.norm() / count;
  }
  for (const auto& o : offsets)
    f.spread.covariance += (o - f.spread.mean) * (o - f.spread.mean).transpose() / std::max(1.0, count - 1);
  f.spread.half = ellipse_of(region_holding(half_share, offsets));
  f.spread.most = ellipse_of(region_holding(most_share, offsets));
  f.half_mm = quantile(distances, half_share);
  f.most_mm = quantile(distances, most_share);
  return f;
}

// Causes.

/// Of the rule, used half as often.
std::vector<CauseShare> shares_of(const FirstOrder& first) {
  std::vector<CauseShare> all;
  const double square = mean_square(scatter_of(first, PulseLevel::skin, all_once()));
  const double depth_square = mean_square(scatter_of(first, PulseLevel::depth, all_once()));
  for (const Cause cause : all_causes) {
    const auto average = [&](const Times& times, PulseLevel level = PulseLevel::skin) {
      return mean_distance(scatter_of(first, level, times));
    };
    const auto part = [&](PulseLevel level, double of) {
      return of > 0 ? mean_square(scatter_of(first, level, only(cause))) / of : 0;
    };
    CauseShare s;
    s.cause = cause;
    s.share = part(PulseLevel::skin, square);
    s.alone_mm = average(only(cause));
    s.without_mm = average(but(cause, 0));
    s.halved_mm = average(but(cause, 0.5));
    s.depth_share = part(PulseLevel::depth, depth_square);
    s.depth_alone_mm = average(only(cause), PulseLevel::depth);
    all.push_back(s);
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const CauseShare& a, const CauseShare& b) { return a.share > b.share; });
  return all;
}

// Ways to mark.

/// Nothing where a mark of it falls off the head.
std::optional<WayTried> tried(const Head& head, const Case& the_case, const Plan& plan,
                              const HandErrors& errors, MarkingWay way, bool right_side, const AtDepth& depth,
                              const ToleranceOptions& options) {
  try {
    const ByHand hand(head, the_case, plan, errors, coil_places(the_case.coil, way, right_side), depth);
    const auto sources = error_sources(the_case, errors, hand.scope());
    FirstOrder f =
        first_order(hand, sources, the_case.coil.laid_by, errors, options.threads, options.between);
    const auto sure = hand.make({}, 1e-3);
    if (!sure) return {};
    f.without_error = sure->off;
    return WayTried{way,
                    right_side,
                    mean_distance(scatter_of(f, PulseLevel::skin, all_once())),
                    mean_distance(scatter_of(f, PulseLevel::depth, all_once())),
                    mean_angle_deg(f),
                    hand.marks()};
  } catch (const GeometryError&) {
    return {};
  }
}

bool is_better(const WayTried& a, const WayTried& b) {
  // Nobody tells a tenth of a millimetre; then the angle decides.
  constexpr double alike_mm = 0.1;
  return std::abs(a.mean_mm - b.mean_mm) > alike_mm ? a.mean_mm < b.mean_mm
                                                    : a.angle_mean_deg < b.angle_mean_deg;
}

std::vector<WayTried> ways_tried(const Head& head, const Case& the_case, const Plan& plan,
                                 const HandErrors& errors, const AtDepth& depth,
                                 const ToleranceOptions& options) {
  std::vector<WayTried> all;
  for (const MarkingWay way : all_marking_ways) {
    auto best = tried(head, the_case, plan, errors, way, true, depth, options);
    if (way == MarkingWay::front_and_side) {
      const auto left = tried(head, the_case, plan, errors, way, false, depth, options);
      if (left && (!best || is_better(*left, *best))) best = left;
    }
    if (best) all.push_back(std::move(*best));
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const WayTried& a, const WayTried& b) { return a.mean_mm > b.mean_mm; });
  if (all.size() > 1 && is_better(all[all.size() - 2], all.back()))
    std::swap(all[all.size() - 2], all.back());
  return all;
}

// Trying it.

/// Of the coil as planned; nothing of a coil without windings and where no sphere is like the head.
std::optional<MeantField> field_meant(const Head& head, const Case& the_case, const Plan& plan,
                                      double depth_mm) {
  try {
    return MeantField(head.skin(), the_case.coil, plan.treatment, depth_mm);
  } catch (const GeometryError&) {
    return {};
  }
}

/// Nothing where a wire would run through the place.
std::optional<double> share_left(const std::optional<MeantField>& field, const CoilPose& pose) {
  try {
    return field ? std::optional(field->left(pose)) : std::nullopt;
  } catch (const GeometryError&) {
    return {};
  }
}

void sample(Tolerance& t, const ByHand& hand, const std::vector<ErrorSource>& sources,
            const FirstOrder& first, MarkRule rule, const std::optional<MeantField>& field,
            const ToleranceOptions& options) {
  // Marks are met closely enough that what remains is nothing beside the errors.
  constexpr double exact_mm = 0.1;
  const std::array<MarkRule, 2> others = other_rules(rule);
  constexpr int rule_stream = 1000;  // past those of the sources
  std::vector<std::optional<ByHand::Made>> made(static_cast<size_t>(options.placements));
  std::vector<std::optional<double>> share(made.size());
  on_all_cores(
      made.size(),
      [&](size_t i) {
        if (options.between) options.between();
        const Draws draws(options.seed, static_cast<int>(i));
        ErrorsMade errors;
        OffByHand expected = OffByHand::Zero();
        for (size_t k = 0; k < sources.size(); ++k) {
          const double drawn = draws.normal(static_cast<int>(k));
          sources[k].in(errors) = sources[k].deviation * drawn;
          expected += drawn * first.by_source[k];
        }
        const double chance = draws.uniform(rule_stream);
        if (chance <= first.other_rule_share) {
          const size_t which = chance <= first.other_rule_share / 2 ? 0 : 1;
          errors.laid_by = others[which];
          expected += first.by_rule[which];
        }
        made[i] = hand.make(errors, exact_mm, expected);
        if (made[i]) share[i] = share_left(field, made[i]->pose);
      },
      options.threads);
  t.placements = options.placements;
  std::vector<Vector2d> skin, depth;
  for (const auto& m : made) {
    if (!m) continue;
    t.pulses.push_back(hand.skin().position(m->pulse));
    skin.push_back(on_skin(m->off));
    depth.push_back(at_depth(m->off));
  }
  t.lost = options.placements - static_cast<int>(skin.size());
  if (2 * t.lost > options.placements)
    throw GeometryError(Message::of(
        "With errors this large more than half of the trials fall off the head; make the errors smaller."));
  const Found on_the_skin = found_at(skin), below = found_at(depth);
  t.sampled = on_the_skin.spread;
  t.half_mm = on_the_skin.half_mm;
  t.most_mm = on_the_skin.most_mm;
  t.at_depth.sampled = below.spread;
  t.at_depth.half_mm = below.half_mm;
  t.at_depth.most_mm = below.most_mm;
  for (SkinEllipse* e : {&t.sampled.half, &t.sampled.most}) lay_on_skin(*e, hand);
  std::vector<double> left;
  for (const auto& s : share)
    if (s) left.push_back(*s);
  if (!left.empty()) t.field_left = {quantile(left, half_share), quantile(left, 1 - most_share)};
}

}  // namespace

Tolerance tolerance(const Head& head, const Case& the_case, const Plan& plan, const HandErrors& errors,
                    const ToleranceOptions& options) {
  check_errors(errors);
  if (options.placements < 0 || options.placements > most_placements)
    throw GeometryError(
        Message::of("The number of placements to try must be from 0 to 1000000; correct it."));
  Tolerance t;
  t.rule = the_case.coil.laid_by;
  t.at_depth.of_brain = plan.treatment.cortex.has_value();
  t.at_depth.depth_mm = t.at_depth.of_brain ? plan.treatment.cortex->median_mm : assumed_depth_mm;
  const auto field = field_meant(head, the_case, plan, t.at_depth.depth_mm);
  t.at_depth.of_field = field && field->has_lever();
  const AtDepth depth{t.at_depth.depth_mm, field ? field->lever() : TiltLever{}};
  const ByHand hand(head, the_case, plan, errors, coil_places(the_case.coil, MarkingWay::front), depth);
  const std::vector<ErrorSource> sources = error_sources(the_case, errors, hand.scope());
  head.skin().prepare();

  const FirstOrder first =
      first_order(hand, sources, the_case.coil.laid_by, errors, options.threads, options.between);
  t.first_order = spread_of(scatter_of(first, PulseLevel::skin, all_once()));
  for (SkinEllipse* e : {&t.first_order.half, &t.first_order.most}) lay_on_skin(*e, hand);
  t.at_depth.first_order = spread_of(scatter_of(first, PulseLevel::depth, all_once()));
  t.angle_mean_deg = mean_angle_deg(first);
  t.causes = shares_of(first);
  if (mean_square(scatter_of(first, PulseLevel::skin, all_once())) > 0)
    t.to_halve =
        *std::min_element(t.causes.begin(), t.causes.end(),
                          [](const CauseShare& a, const CauseShare& b) { return a.halved_mm < b.halved_mm; });
  if (options.compare_ways) t.ways = ways_tried(head, the_case, plan, errors, depth, options);
  if (options.placements > 0) sample(t, hand, sources, first, the_case.coil.laid_by, field, options);
  return t;
}

}  // namespace scalpmark::geometry
