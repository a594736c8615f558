#include "geometry/head/guess_fiducials.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"

namespace scalpmark::geometry {

using Eigen::Affine3d;
using Eigen::Matrix3d;
using Eigen::Vector3d;

namespace {

/// The fitted head counts from this far below its tragi up: what every head that can be worked with has.
/// Chin, nape and neck may be cut off.
constexpr double below_tragi_mm = 30;
/// Of the pairs, the farthest are left out while the head is looked for: hair, a collar, what one of the two
/// lacks. Once it is found nearly all count, since nose and ears, which tell how far it is tilted, are small.
constexpr double kept_at_first = 0.85, kept_at_last = 0.97;
/// Pairs whose surfaces face further apart than this (a cosine) are no pairs.
constexpr double facing_alike = 0.5;
constexpr double worst_misfit_mm = 12;
/// At the last, what hair cannot cover says where the head is, and the rest only how it is shaped: hair of a
/// centimetre would else stretch and nod the head, and carry nasion and tragi away by more than 20 mm.
constexpr double weight_under_hair = 0.1;
constexpr double smallest_scale = 0.6, largest_scale = 1.5;

struct Sample {
  Vector3d at, normal;
};

/// About `count` points spread evenly over a surface's area.
std::vector<Sample> spread(const Surface& surface, int count) {
  double area = 0;
  const int faces = static_cast<int>(surface.triangles().size());
  for (int f = 0; f < faces; ++f) area += surface.face_area(f);
  std::vector<Sample> samples;
  double next = 0.5 * area / count, passed = 0;
  for (int f = 0; f < faces; ++f) {
    passed += surface.face_area(f);
    if (passed < next) continue;
    while (next <= passed) next += area / count;
    const SurfacePoint middle{f};
    samples.push_back({surface.position(middle), surface.smooth_normal(middle)});
  }
  return samples;
}

bool on_border(const Surface& s, const SurfacePoint& p) {
  if (s.is_closed()) return false;
  for (int k = 0; k < 3; ++k)
    if (p.weights[k] > 0.02 && s.is_border_vertex(s.triangle(p.face)[static_cast<size_t>(k)])) return true;
  return false;
}

/// A place of the model (its own frame) and of the skin that belong together.
struct Pair {
  Vector3d model, skin, normal;  // the skin's normal
  double mm = 0;
};

class HeadFit {
public:
  HeadFit(const Head& model, const Surface& skin) : model_(model), skin_(skin) {}

  [[nodiscard]] bool counts(const Vector3d& p) const {
    return (p - model_.axes().origin).dot(model_.axes().up) > -below_tragi_mm;
  }

  /// Face and ears: from the tragi up to the brow, in front of the ears' rims.
  [[nodiscard]] bool bare(const Vector3d& p) const {
    constexpr double above_brow_mm = 20, behind_tragus_mm = -40, beside_mm = 62, before_tragus_mm = 25;
    const Vector3d from = p - model_.axes().origin;
    const double nasion_mm = (model_.fiducials().at.nasion - model_.axes().origin).dot(model_.axes().up);
    const double front_mm = from.dot(model_.axes().front);
    return from.dot(model_.axes().up) < nasion_mm + above_brow_mm &&
           (front_mm > before_tragus_mm ||
            (front_mm > behind_tragus_mm && std::abs(from.dot(model_.axes().right)) > beside_mm));
  }

  void sample(int count, double kept_share) {
    kept_share_ = kept_share;
    model_samples_.clear();
    for (const Sample& s : spread(model_.skin(), count))
      if (counts(s.at)) model_samples_.push_back(s);
    skin_samples_ = spread(skin_, count);
  }

  /// From sample to nearest sample, both ways: for a first approach from afar, where a search on triangles is
  /// slow.
  [[nodiscard]] std::vector<Pair> rough_pairs(const Affine3d& fit) const {
    Eigen::Matrix3Xd there(3, static_cast<Eigen::Index>(model_samples_.size()));
    for (size_t i = 0; i < model_samples_.size(); ++i)
      there.col(static_cast<Eigen::Index>(i)) = fit * model_samples_[i].at;
    std::vector<Pair> found;
    Eigen::VectorXd nearest_mm2 = Eigen::VectorXd::Constant(there.cols(), 1e300);
    std::vector<size_t> nearest(model_samples_.size(), 0);
    std::vector<Pair> others;
    for (size_t j = 0; j < skin_samples_.size(); ++j) {
      const Vector3d& at = skin_samples_[j].at;
      double least = 1e300;
      Eigen::Index whose = 0;
      for (Eigen::Index i = 0; i < there.cols(); ++i) {
        const double mm2 = (there.col(i) - at).squaredNorm();
        if (mm2 < least) {
          least = mm2;
          whose = i;
        }
        if (mm2 < nearest_mm2[i]) {
          nearest_mm2[i] = mm2;
          nearest[static_cast<size_t>(i)] = j;
        }
      }
      others.push_back(
          {model_samples_[static_cast<size_t>(whose)].at, at, skin_samples_[j].normal, std::sqrt(least)});
    }
    for (size_t i = 0; i < model_samples_.size(); ++i) {
      const Sample& s = skin_samples_[nearest[i]];
      found.push_back(
          {model_samples_[i].at, s.at, s.normal, std::sqrt(nearest_mm2[static_cast<Eigen::Index>(i)])});
    }
    found = trimmed(std::move(found));
    // The skin has parts that the model has not, by far more than the other way round.
    const double reach = found.empty() ? 0 : std::max_element(found.begin(), found.end(), nearer)->mm;
    std::erase_if(others, [&](const Pair& p) { return p.mm > reach; });
    found.insert(found.end(), others.begin(), others.end());
    return found;
  }

  /// Pairs both ways, the farthest left out.
  [[nodiscard]] std::vector<Pair> pairs(const Affine3d& fit) const {
    std::vector<Pair> found;
    const Matrix3d normals = fit.linear().inverse().transpose();
    const Affine3d back = fit.inverse();
    for (const Sample& s : model_samples_) {
      const Vector3d there = fit * s.at;
      const SurfacePoint nearest = skin_.closest(there);
      const Vector3d normal = skin_.smooth_normal(nearest), at = skin_.position(nearest);
      if (normal.dot((normals * s.normal).normalized()) < facing_alike || on_border(skin_, nearest)) continue;
      found.push_back({s.at, at, normal, (at - there).norm()});
    }
    const size_t from_model = found.size();
    for (const Sample& s : skin_samples_) {
      const SurfacePoint nearest = model_.skin().closest(back * s.at);
      const Vector3d at = model_.skin().position(nearest);
      if (!counts(at)) continue;
      if (s.normal.dot((normals * model_.skin().smooth_normal(nearest)).normalized()) < facing_alike)
        continue;
      found.push_back({at, s.at, s.normal, (s.at - fit * at).norm()});
    }
    // Each way keeps its share, so that a large skin does not outvote the head that is looked for.
    const auto middle = found.begin() + static_cast<std::ptrdiff_t>(from_model);
    std::vector<Pair> kept = trimmed({found.begin(), middle});
    const std::vector<Pair> others = trimmed({middle, found.end()});
    kept.insert(kept.end(), others.begin(), others.end());
    return kept;
  }

  /// How badly it fits: the root of the mean square distance of pairs, those that the model lacks counted
  /// too.
  [[nodiscard]] double misfit_mm(const Affine3d& fit, bool rough = false) const {
    constexpr double unpaired_mm = 15;
    const auto all = rough ? rough_pairs(fit) : pairs(fit);
    double sum = 0;
    for (const Pair& p : all) sum += p.mm * p.mm;
    const double missing = std::max(
        0.0, kept_share_ * static_cast<double>(model_samples_.size()) - static_cast<double>(all.size()));
    return std::sqrt((sum + unpaired_mm * unpaired_mm * missing) /
                     std::max(1.0, static_cast<double>(all.size()) + missing));
  }

  /// One round of closest points, rigid and scaled (Umeyama 1991).
  bool step_to_points(Affine3d& fit) const {
    const auto all = rough_pairs(fit);
    if (all.size() < 20) return false;
    Eigen::Matrix3Xd from(3, static_cast<Eigen::Index>(all.size())), to = from;
    for (size_t i = 0; i < all.size(); ++i) {
      from.col(static_cast<Eigen::Index>(i)) = all[i].model;
      to.col(static_cast<Eigen::Index>(i)) = all[i].skin;
    }
    fit.matrix() = Eigen::umeyama(from, to, true);
    if (!fit.matrix().allFinite()) return false;
    const double scale = std::cbrt(fit.linear().determinant());
    return scale > smallest_scale && scale < largest_scale;
  }

  /// One round by tangent planes: an affine step, of which every part that the skin says little about stays
  /// small. `freely` or not, scaling all axes alike. Returns the length of the step, mm at the size of a
  /// head.
  double step_to_planes(Affine3d& fit, bool freely, double scalp_weight = 1) const {
    constexpr double head_mm = 90, longest_mm = 12;  // a longer step trusts the planes too far
    // Of the pairs' weight; turning and scaling alike are free, bending a head out of its shape costs.
    constexpr double give = 1e-4, shape_give = 5e-3;
    const auto all = pairs(fit);
    double weight = 1;
    // Shift; turn; scale alike; two stretches and three shears.
    using Step = Eigen::Matrix<double, 12, 1>;
    Eigen::Matrix<double, 12, 12> system = Eigen::Matrix<double, 12, 12>::Zero();
    Step right = Step::Zero();
    const Vector3d centre = fit * model_.axes().origin;
    for (const Pair& p : all) {
      const Vector3d there = fit * p.model, arm = (there - centre) / head_mm;
      const Vector3d& n = p.normal;
      Step row;
      row << n, arm.cross(n), n.dot(arm), n.x() * arm.x() - n.y() * arm.y(),
          n.y() * arm.y() - n.z() * arm.z(), n.x() * arm.y() + n.y() * arm.x(),
          n.y() * arm.z() + n.z() * arm.y(), n.z() * arm.x() + n.x() * arm.z();
      if (!freely) row.tail<5>().setZero();
      const double off = n.dot(p.skin - there);
      const double counts_for = bare(p.model) ? 1 : scalp_weight;
      system += counts_for * row * row.transpose();
      right += counts_for * off * row;
      weight += counts_for;
    }
    system.diagonal().head<7>().array() += give * weight;
    system.diagonal().tail<5>().array() += shape_give * weight;
    Step step = system.ldlt().solve(right);
    if (!step.allFinite()) return 0;
    if (step.norm() > longest_mm) step *= longest_mm / step.norm();
    const Step d = step / head_mm;
    Matrix3d shape = (1 + d[6]) * Matrix3d::Identity();
    shape += Vector3d(d[7], d[8] - d[7], -d[8]).asDiagonal();
    shape(0, 1) += d[9];
    shape(1, 0) += d[9];
    shape(1, 2) += d[10];
    shape(2, 1) += d[10];
    shape(2, 0) += d[11];
    shape(0, 2) += d[11];
    const Vector3d turn = d.segment<3>(3);
    const Matrix3d rotation = turn.norm() > 0
                                  ? Eigen::AngleAxisd(turn.norm(), turn.normalized()).toRotationMatrix()
                                  : Matrix3d::Identity();
    const Matrix3d linear = rotation * shape * fit.linear();
    fit.translation() = centre + step.head<3>() - linear * model_.axes().origin;
    fit.linear() = linear;
    return step.norm();
  }

private:
  static bool nearer(const Pair& a, const Pair& b) { return a.mm < b.mm; }
  [[nodiscard]] std::vector<Pair> trimmed(std::vector<Pair> part) const {
    const auto kept = static_cast<std::ptrdiff_t>(kept_share_ * static_cast<double>(part.size()));
    std::nth_element(part.begin(), part.begin() + kept, part.end(), nearer);
    part.resize(static_cast<size_t>(kept));
    return part;
  }

  const Head& model_;
  const Surface& skin_;
  std::vector<Sample> model_samples_, skin_samples_;
  double kept_share_ = kept_at_first;
};

/// The 24 ways to turn a cube onto itself.
std::vector<Matrix3d> quarter_turns() {
  std::vector<Matrix3d> turns;
  for (int a = 0; a < 3; ++a)
    for (const double sign : {1.0, -1.0}) {
      const Vector3d up = sign * Vector3d::Unit(a);
      for (int b = 0; b < 3; ++b)
        for (const double front_sign : {1.0, -1.0}) {
          if (b == a) continue;
          const Vector3d front = front_sign * Vector3d::Unit(b);
          Matrix3d turn;
          turn << front.cross(up), front, up;
          turns.push_back(turn);
        }
    }
  return turns;
}

/// The middle of what lies within a head's height of the top, and the top.
Vector3d middle_of_top(const std::vector<Vector3d>& points, const Vector3d& up, double height_mm) {
  double top = -1e300;
  for (const auto& p : points) top = std::max(top, p.dot(up));
  Vector3d low = Vector3d::Constant(1e300), high = -low;
  for (const auto& p : points)
    if (p.dot(up) > top - height_mm) {
      low = low.cwiseMin(p);
      high = high.cwiseMax(p);
    }
  const Vector3d middle = 0.5 * (low + high);
  return middle + (top - middle.dot(up)) * up;
}

}  // namespace

FiducialGuess guess_fiducials(const Head& model, const Surface& skin) {
  constexpr int coarse = 600, fine = 600, finest = 1200;
  constexpr int coarse_rounds = 20, fine_rounds = 12, last_rounds = 30;
  constexpr size_t best_kept = 3;
  constexpr double top_mm = 120, settled_mm = 0.02;
  // The model as it stands: right, front, up.
  Matrix3d own;
  own << model.axes().right, model.axes().front, model.axes().up;
  const Vector3d model_top = middle_of_top(model.skin().vertices(), model.axes().up, top_mm);

  struct Candidate {
    Affine3d fit;
    double misfit_mm;
  };
  const auto keep_best = [](std::vector<Candidate>& all, size_t count) {
    std::sort(all.begin(), all.end(),
              [](const Candidate& a, const Candidate& b) { return a.misfit_mm < b.misfit_mm; });
    if (all.size() > count) all.resize(count);
  };
  std::vector<Candidate> candidates;
  HeadFit fit(model, skin);
  fit.sample(coarse, kept_at_first);
  for (const Matrix3d& turn : quarter_turns()) {
    Affine3d start = Affine3d::Identity();
    start.linear() = turn * own.transpose();
    start.translation() = middle_of_top(skin.vertices(), turn.col(2), top_mm) - start.linear() * model_top;
    bool good = true;
    for (int round = 0; round < coarse_rounds && good; ++round) good = fit.step_to_points(start);
    if (good) candidates.push_back({start, fit.misfit_mm(start, true)});
  }
  keep_best(candidates, best_kept);
  fit.sample(fine, kept_at_last);
  const auto settle = [&](Affine3d& at, int rounds, bool freely) {
    for (int round = 0; round < rounds; ++round)
      if (fit.step_to_planes(at, freely) < settled_mm) break;
  };
  for (Candidate& c : candidates) {
    settle(c.fit, fine_rounds, false);
    c.misfit_mm = fit.misfit_mm(c.fit);
  }
  keep_best(candidates, 1);
  const Message no_head = Message::of(
      "No head could be made out in this skin, so its four points cannot be guessed; place them by hand.");
  if (candidates.empty()) throw GeometryError(no_head);
  // A head is nearly round from ear to ear over the top, so a wrong nod fits almost as well: others are
  // tried.
  const Affine3d found = candidates.front().fit;
  for (const double nod_deg : {-30.0, -15.0, 0.0, 15.0, 30.0}) {
    const Vector3d centre = model.axes().origin + 40 * model.axes().up;
    Candidate c{found * Eigen::Translation3d(centre) *
                    Eigen::AngleAxisd(radians(nod_deg), model.axes().right) * Eigen::Translation3d(-centre),
                0};
    settle(c.fit, fine_rounds, true);
    c.misfit_mm = fit.misfit_mm(c.fit);
    candidates.push_back(c);
  }
  keep_best(candidates, 1);
  Candidate best = candidates.front();
  fit.sample(finest, kept_at_last);
  settle(best.fit, last_rounds, true);
  for (int round = 0; round < last_rounds; ++round)
    if (fit.step_to_planes(best.fit, true, weight_under_hair) < settled_mm) break;
  FiducialGuess guess;
  guess.fit = best.fit;
  guess.misfit_mm = fit.misfit_mm(best.fit);
  guess.scale = std::cbrt(best.fit.linear().determinant());
  if (!(guess.misfit_mm < worst_misfit_mm) || !(guess.scale > smallest_scale && guess.scale < largest_scale))
    throw GeometryError(no_head);
  const auto onto = [&](const Vector3d& p) { return skin.position(skin.closest(best.fit * p)); };
  const Fiducials& points = model.fiducials().at;
  guess.at = {onto(points.nasion), onto(points.inion), onto(points.left_tragus), onto(points.right_tragus)};
  return guess;
}

}  // namespace scalpmark::geometry
